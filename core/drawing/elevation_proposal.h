// A proposal of a refit on the elevation; for the elevation's own files only.
#pragma once

#include <optional>
#include <vector>

#include "core/drawing/elevation_parts.h"

namespace sillwright::elevation {

// One change as it is told on the drawing.
struct Told {
  const Change& change;
  bool current;
  std::optional<Stand> before;
  std::optional<Stand> after;
  double x = 0;       // of the piece where it goes, or of one that is taken out where it is; page
  double top = 0;     // its upper edge, page
  Interval covered{}; // across the page, where it is and where it goes
};

// The ghosts of a proposal, with what is to be said of each; under everything that is written.
std::vector<Told> drawGhosts(Scene& scene);
// Says each change in a box above its piece, or beside it where it goes on past the window, and leads there.
void drawTags(Scene& scene, const std::vector<Told>& all);

} // namespace sillwright::elevation
