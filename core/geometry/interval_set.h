// Stations along a wall as a union of closed intervals. Inches.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/shapes.h"

namespace sillwright {

// What is left of a closed stretch when open ones are taken out of it: closed, from left to right, apart from each
// other. Where two of the open ones only touch, the point between them is left, as an interval without length.
std::vector<Interval> withoutOpen(Interval whole, std::vector<Interval> open);

// The interval that a station lies in, to within rounding; nothing where it is in none.
std::optional<Interval> partAt(const std::vector<Interval>& parts, double station);

// The station of the union that is nearest to another; the left one of two as near. Nothing where the union is empty.
std::optional<double> nearestIn(const std::vector<Interval>& parts, double station);

} // namespace sillwright
