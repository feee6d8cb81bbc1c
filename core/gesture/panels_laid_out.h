// Panels that come from a table, with what they need to stand.
#pragma once

#include <optional>
#include <vector>

#include "core/model/job.h"
#include "core/model/lookup.h"

namespace sillwright {

struct PanelToMake {
  Id wall;
  Panel panel;                // without its id
  std::optional<MakeUp> left; // posts; missing: as the mark of that end says, or 4x of the sill's width
  std::optional<MakeUp> right;
};

// Adds them in their order. Under each a sill where there is none, at each end a post where no column stands inside it,
// then straps and bolts as for a panel of the shelf. Bolts that stood there before and are in the way of what is new
// are laid out again with the rest, but for those that are ticked as set.
Job withPanels(const Job& job, const std::vector<PanelToMake>& panels);

} // namespace sillwright
