// What lies under the pointer of a drawing.
#pragma once

#include <optional>
#include <span>

#include "core/drawing/drawing.h"

namespace sillwright {

// The topmost area at a page point (pt): one that contains it, else the nearest within reach (pt). Among areas that
// contain it, an end or a corner goes before a body, for it is the smaller thing to hit; so does a thin piece within
// reach that lies over a wide one.
std::optional<HitArea> topmost(std::span<const HitArea> areas, Point2 at, double reach);

} // namespace sillwright
