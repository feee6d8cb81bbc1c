// The part of a bent plate that lies between two depths and two heights. Inches, wall frame.
#pragma once

#include <optional>

#include "core/geometry/shapes.h"

namespace sillwright {

// The smallest box around the part of the plate's solid within the depths and heights (ends may be infinite); nothing
// where no part is, or where it only touches them. Exact up to rounding.
std::optional<Box3> partWithin(const Ribbon& plate, Interval depths, Interval heights);

} // namespace sillwright
