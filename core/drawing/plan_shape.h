// Walls in plan as rings of corners. Used by the plan's drawings only. Inches.
#pragma once

#include <vector>

#include "core/model/job.h"
#include "core/model/plan_concrete.h"

namespace sillwright {

// Corners of closed rings of walls, in the order of the walls. Walls that close no ring are in none.
std::vector<std::vector<Point2>> outlinesOf(const Job& job);

} // namespace sillwright
