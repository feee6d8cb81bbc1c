// Which strap holds which end of a panel, or stands beside an opening.
#pragma once

#include "core/model/layout.h"

namespace sillwright {

// Farthest a hold-down stands from the end of its panel, or from the opening it flanks, centre line to end (common
// practice: on the last column, behind trimmers).
inline constexpr double endReach = 12;

// The strap nearest to an end of a panel, in its half of the panel and within reach; null where there is none.
const StrapBody* strapAtEnd(const WallLayout& layout, const Panel& panel, Side end);

// The strap that flanks an opening: nearest to its side, outside it and within reach.
const StrapBody* strapBeside(const WallLayout& layout, const Opening& opening, Side side);

} // namespace sillwright
