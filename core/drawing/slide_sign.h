// The sign of slide room, between the amount to the left and the amount to the right.
#pragma once

#include "core/drawing/drawing.h"

namespace sillwright {

inline constexpr double slideSignReach = 9.5; // from its middle to either end, times the scale

// An arrow to both sides with a stroke in the middle, where the piece stands.
void drawSlideArrow(Drawing& drawing, Point2 middle, Ink ink, double scale = 1);
// The stroke is a filled diamond where every target is met.
void drawSlideDiamond(Drawing& drawing, Point2 middle, Ink ink, double scale = 1);

} // namespace sillwright
