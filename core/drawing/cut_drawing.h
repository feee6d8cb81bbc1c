// Cutting what is drawn to a box. All in page points.
#pragma once

#include "core/drawing/drawing.h"

namespace sillwright {

// The part of a polygon within the box. It may bend back along an edge of the box where the polygon leaves it twice.
Polygon2 cutTo(Polygon2 polygon, const Bounds& box);

// What of a drawing is within the box: areas and lines are cut at its edge (of a line along the edge half the width
// may stand past it), a text, a disc or a ring that is not wholly within is left out. Without hit areas and taken
// boxes.
Drawing cutTo(const Drawing& drawing, const Bounds& box);

} // namespace sillwright
