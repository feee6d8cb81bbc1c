// Where a wall stands in plan.
#pragma once

#include <Eigen/Geometry>

#include "core/geometry/shapes.h"

namespace sillwright {

// Takes (s, d) of the wall frame to (x, y) of the plan. from is the left end of the outside face seen from outside, to
// its right end; outside is to the right of the direction of travel, so d points to its left.
// Precondition: from and to differ.
Eigen::Isometry2d wallFrame(Point2 from, Point2 to);

Point2 toPlan(const Eigen::Isometry2d& frame, double s, double d);
// (s, d) of a plan point.
Point2 toWall(const Eigen::Isometry2d& frame, Point2 plan);

double distance(Point2 a, Point2 b);

} // namespace sillwright
