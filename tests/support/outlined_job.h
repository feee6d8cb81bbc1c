// What the sample jobs are put together from: corners in a ring, a wall from each to the next, openings and steps.
#pragma once

#include <vector>

#include "tests/support/fill_wall.h"

namespace sillwright::support {

// Without ids and marks; stations from the left end of its wall. sill: height of a window's sill.
Opening door(OpeningKind kind, double from, double to, double sill, double head);
PourStep step(double from, double to, double height);

// 8 in thick, 24 in high, on a footing of 16 x 8.
WallLine plainWall();

// Corners in order, counterclockwise, and a wall from each to the next, made like `like`; filled later by their plans.
// Framing of every other wall runs by at both its corners.
std::vector<WallLine> outline(Job& job, const std::vector<Point2>& points, const WallLine& like);
// Fills the walls by their plans and puts them into the job.
void build(Job& job, const std::vector<Point2>& points, std::vector<WallLine> walls, const std::vector<WallPlan>& plans,
           const std::vector<const char*>& titles, const Hardware& hardware);

} // namespace sillwright::support
