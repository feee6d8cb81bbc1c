// Where a bolt along the wall comes nearer than so much to something that stands still. Inches.
#pragma once

#include <vector>

#include "core/model/layout.h"

namespace sillwright {

// Stations of the bolt, open stretches from left to right and apart, in which the clear distance of the steel is less
// than `within`.
std::vector<Interval> nearerThan(const AnchorBody& bolt, const BarBody& bar, double within);
std::vector<Interval> nearerThan(const AnchorBody& bolt, const StrapBody& strap, double within);
std::vector<Interval> nearerThan(const AnchorBody& bolt, const AnchorBody& rod, double within);

// Stations of the bolt at which a box of it and wood overlap along the wall, grown by `clear`; nothing where they are
// beside each other across it, or the bolt comes no higher than the foot of the wood.
std::optional<Interval> underWood(const AnchorBody& bolt, const Box3& own, const Box3& wood, double clear);

// Stations at which the axes of bolt and rod come nearer than that; nothing where they never do.
std::optional<Interval> axesNearerThan(const AnchorBody& bolt, const AnchorBody& other, double within);

} // namespace sillwright
