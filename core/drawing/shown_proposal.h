// A proposal of a refit as the elevation shows it. A plain value.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/model/layout.h"
#include "core/refit/refit.h"

namespace sillwright {

struct ShownProposal {
  Id wall;
  std::vector<Change> changes;             // those that would be taken over, left to right
  std::optional<std::size_t> current = {}; // of the changes, the one looked at
  std::shared_ptr<const WallLayout> after; // the wall with all of them
};

} // namespace sillwright
