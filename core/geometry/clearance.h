// True three-dimensional clear distances between the shapes of embedded hardware, in inches.
// Every function is exact up to rounding for all inputs, also for parallel, touching and degenerate (zero-length) ones.
#pragma once

#include <optional>

#include "core/geometry/shapes.h"

namespace sillwright {

struct Clearance {
  // Clear distance between the two surfaces. Negative: they overlap (by at least that much for two capsules).
  double distance = 0;
  // A pair of nearest points: on the axis or inside of the first shape, and of the second.
  Point3 onFirst;
  Point3 onSecond;
};

double distance(const Point3& a, const Point3& b);

// Two round bars: distance of the axes less both radii.
Clearance clearance(const Capsule& first, const Capsule& second);

// A round bar and a bent plate: distance from the axis to the solid of the plate, less the radius.
Clearance clearance(const Capsule& bar, const Ribbon& plate);

// A round bar and a box along the axes.
Clearance clearance(const Capsule& bar, const Box3& box);

// Two bent plates (a strap against a strap).
Clearance clearance(const Ribbon& first, const Ribbon& second);

// Heights of the plate, bottom to top, between which it is nearer than `within` to the bar; nothing where it never is.
// Exact for the union of boxes: the hull of those intervals over the straight pieces of the profile.
std::optional<Interval> heightsNearer(const Capsule& bar, const Ribbon& plate, double within);

// Smallest box along the axes that holds the shape.
Box3 bounds(const Capsule& bar);
Box3 bounds(const Ribbon& plate);

} // namespace sillwright
