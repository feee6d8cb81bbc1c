// Where a shape that moves along a straight path is nearer than a reach to one that stands: the formulas that passing
// is made of. Inches; vectors are (s, d, z) or those of the frame of a box. Every function answers with the open
// interval of shifts along the path, from >= to where there are none. The shapes are convex, so there is never more
// than one. Reach must be above 0.
#pragma once

#include <limits>

#include <Eigen/Core>

#include "core/geometry/oriented_box.h"
#include "core/geometry/shapes.h"

namespace sillwright {

inline constexpr Interval noShifts{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
inline constexpr Interval anyShift{-std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};

// The point start + along t; along is a unit vector.
struct Path {
  Eigen::Vector3d start;
  Eigen::Vector3d along;
};

// Shifts at which value + rate t lies between the limits, not on them; all of them or none where the rate is 0.
Interval shiftsBetween(double value, double rate, Interval limits);

// A point against a box of half sizes about the origin, in its own frame.
Interval shiftsNear(const Path& point, const Eigen::Vector3d& half, double reach);

// A point against a segment.
Interval shiftsNear(const Path& point, const Segment3& segment, double reach);

// A segment against another, and against a box. `along` is a unit vector.
Interval shiftsNear(const Segment3& moving, const Eigen::Vector3d& along, const Segment3& other, double reach);
Interval shiftsNear(const Segment3& moving, const Eigen::Vector3d& along, const OrientedBox& box, double reach);

} // namespace sillwright
