// True three-dimensional clear distances between the shapes of embedded hardware, in inches.
// Every function is exact up to rounding for all inputs, also for parallel, touching and degenerate (zero-length) ones.
// A plate without a profile is nowhere: infinitely far from everything, with empty bounds.
#pragma once

#include <optional>

#include "core/geometry/shapes.h"

namespace sillwright {

struct Clearance {
  // Clear distance between the two surfaces. Negative: they overlap. For bars it is the distance of the axes, or of
  // axis and solid, less the radii, so never below minus the radii; for two plates minus the least shift that parts the
  // two pieces.
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

// Heights of the profile, bottom to top, between which the plate is nearer than `within` to the bar; nothing where it
// never is. At each point of the profile the whole cross-section counts, width and thickness. Exact for each straight
// piece (to 1e-9 in along it); the answer is the hull over the pieces.
std::optional<Interval> heightsNearer(const Capsule& bar, const Ribbon& plate, double within);

// Smallest box along the axes that holds the shape.
Box3 bounds(const Capsule& bar);
Box3 bounds(const Ribbon& plate);

} // namespace sillwright
