// The faces across the ends of a wall's concrete, and what its neighbours add at the corners. Wall frame, inches.
#pragma once

#include <vector>

#include "core/geometry/shapes.h"
#include "core/model/place.h"

namespace sillwright {

// A vertical face of the concrete across the wall: an end, or the riser of a step.
struct ConcreteFace {
  enum class Kind { End, Corner, Step } kind = Kind::End;
  double station = 0; // at the outside face of the wall
  Interval z;
  Side concrete = Side::Right; // the side of the face on which the concrete is
  Id step{};                   // for a step
  double slant = 0;            // stations an inch of depth; not 0 where the corner is not square
};

// The station of a face where it comes nearest to a box.
double stationToward(const ConcreteFace& face, const Box3& box);
// Clear distance of a box from a face, square to the face and seen in plan; less than zero past it. The corners of the
// box in plan are rounded by `round`.
double distanceTo(const ConcreteFace& face, const Box3& box, double round = 0);

// The stem or the footing of a neighbour beside this wall: all between two depths of the neighbour, over some heights.
struct CornerConcrete {
  Side end = Side::Left; // of this wall
  bool insideCorner = false;
  bool footing = false;
  double corner = 0;           // station
  double sine = 1, cosine = 0; // of the turn; sine + at an outside corner
  Interval depths;             // of the neighbour
  Interval z;
  bool operator==(const CornerConcrete&) const = default;
};

// How deep in the neighbour a point of this wall lies.
double depthIn(const CornerConcrete& neighbour, double s, double d);
// Where a plane of the neighbour, so deep in it, meets depth d of this wall.
double stationAt(const CornerConcrete& neighbour, double depth, double d);
// The whole box, seen in plan, lies within the neighbour.
bool holds(const CornerConcrete& neighbour, const Box3& box);

// Two walls that go on nearly straight (within 6 degrees) have no corner: the concrete goes on.
bool goesStraightOn(const Neighbour& neighbour);

// Nothing where there is no neighbour, or where the line folds back onto itself.
std::vector<CornerConcrete> cornerConcrete(const WallPlace& place);

// Ends of the stem, or of the footing, between two heights. At an inside corner the concrete goes on through the
// neighbour's, as high and as deep as that is. `projection`: of the footing; 0 for the stem.
std::vector<ConcreteFace> endFaces(const WallPlace& place, const std::vector<CornerConcrete>& corners, Side end,
                                   Interval z, double projection);

} // namespace sillwright
