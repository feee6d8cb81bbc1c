// Patterns of cut materials, as plain marks and segments in points. They draw neither ground nor outline, except steel.
#pragma once

#include "core/drawing/drawing.h"

namespace sillwright {

// origin anchors the pattern, so that it does not swim when the outline changes.
void drawConcrete(Drawing& drawing, const Polygon2& outline, Point2 origin, double density = 1);
void drawEarth(Drawing& drawing, const Polygon2& outline, Point2 origin);
// Growth rings about a point past the lower left corner.
void drawWoodCut(Drawing& drawing, const Bounds& box);
// Solid where thinner than 2.2; else lined on its own ground, with its outline.
void drawSteelCut(Drawing& drawing, const Polygon2& outline);

} // namespace sillwright
