// Where a piece, standing in a slot, also meets every target. Inches.
#pragma once

#include <vector>

#include "core/model/layout.h"
#include "core/rules/limits.h"

namespace sillwright {

// The parts of a slot of a strap, a bolt or a rod in which nothing is asked or watched about where it stands; each
// holds a tape mark. At the height of the pour line where it is now; all of the slot for any other piece. A strap
// counts as on that column (an index of the layout's).
std::vector<Interval> targetsMet(const WallLayout& layout, const ResolvedLimits& limits, Id piece, Interval slot,
                                 std::optional<std::size_t> column = {});

} // namespace sillwright
