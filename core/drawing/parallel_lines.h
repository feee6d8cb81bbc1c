// Continuous parallel lines inside an outline: what hatches are made of.
#pragma once

#include <vector>

#include "core/geometry/outline.h"

namespace sillwright {

// Lines at `degrees` (counterclockwise on the page from the horizontal), `spacing` apart square to them, one of them
// through the origin; only their parts inside the outline. Precondition: spacing > 0.
std::vector<Segment2> parallelLines(const Polygon2& outline, double degrees, double spacing, Point2 origin);

} // namespace sillwright
