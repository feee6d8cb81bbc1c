// By how much a shape may be shifted along the wall or across it before it comes too near another. Inches, wall frame;
// all numbers finite.
//
// Answers are in shifts of the first shape, positive to the right (station) or inward (depth), and agree with
// clearance(): a shift is blocked when clearance(first so shifted, second).distance < within. Exactly `within` apart is
// not blocked, so blocked shifts are open at both ends.
//
// `within` may be 0 or below too. A bar blocks nothing where `within` is not above minus the radii, because axes never
// come nearer than nothing; a plate without a profile blocks nothing.
//
// All by closed formulas. An end is exact to 1e-7 in where the shapes meet at an angle to the shift; where they graze,
// it is as exact as the distance (some 1e-13 in) lets it be: just outside the distance is `within` up to rounding.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/shapes.h"

namespace sillwright {

enum class Along { Station, Depth };

// All shifts strictly between the ends; from < to.
struct BlockedShifts {
  double from = 0;
  double to = 0;

  bool contains(double shift) const { return shift > from && shift < to; }
  bool operator==(const BlockedShifts&) const = default;
};

// Shapes that are convex block at most one stretch.
std::optional<BlockedShifts> blockedShifts(const Capsule& first, const Capsule& second, Along along, double within);
// An empty interval of the box counts as its middle.
std::optional<BlockedShifts> blockedShifts(const Capsule& bar, const Box3& box, Along along, double within);

// Each straight piece of a plate blocks at most one stretch. Sorted and apart: stretches that share a shift are made
// one; two that only touch stay two, because the shift where they touch is allowed (as far as rounding can tell).
std::vector<BlockedShifts> blockedShifts(const Capsule& bar, const Ribbon& plate, Along along, double within);
std::vector<BlockedShifts> blockedShifts(const Ribbon& plate, const Capsule& bar, Along along, double within);
std::vector<BlockedShifts> blockedShifts(const Ribbon& first, const Ribbon& second, Along along, double within);

} // namespace sillwright
