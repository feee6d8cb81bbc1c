// Walls in plan as outlines: mitres, rings of corners. Used by the plan's drawings only. Inches.
#pragma once

#include <vector>

#include "core/model/job.h"
#include "core/model/place.h"

namespace sillwright {

// Station where the line at a depth of this wall meets the line at neighbourDepth of the neighbour; the wall's own end
// where there is no neighbour or the two are in line.
double mitreStation(const WallPlace& place, bool atStart, double depth, double neighbourDepth);

// Corners of closed rings of walls, in the order of the walls. Walls that close no ring are in none.
std::vector<std::vector<Point2>> outlinesOf(const Job& job);

} // namespace sillwright
