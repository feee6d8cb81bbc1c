// Upright bars as they were found, from a pasted column of stations.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/edit/history.h"

namespace sillwright {

struct PastedBars {
  Job job;
  std::string name; // of the undo step: "Paste 6 bars as found"
  int added = 0;
  int found = 0; // bars that were there and have a found place now
  Selection bars;
};

// One bar a line: a station from the hook, for a new upright bar that was found there; or a mark of an upright bar of
// the wall, a tab or a blank, and the station where it was found. New bars are like the upright that stands nearest:
// its size, its place across the wall. Error: nothing is taken; place is "line 3".
Result<PastedBars> pasteBars(const Job& job, Id wall, std::string_view text);

} // namespace sillwright
