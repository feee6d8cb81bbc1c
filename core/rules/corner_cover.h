// The faces along a wall near its corners, where the concrete of a neighbour goes on behind or before them. Inches.
#pragma once

#include "core/model/layout.h"
#include "core/rules/concrete_cover.h"

namespace sillwright {

// A box of steel whose corners in plan are rounded.
struct RoundedBox {
  const Box3& box;
  double round = 0;
};

// Of a box of steel over the heights `own`, from the outside or the inside face of a layer (stem or footing) that takes
// up the depths `concrete`. Where a neighbour's concrete lies beyond that face the cover is measured past the edge
// where the two meet, and to the neighbour's own face for steel that reaches into it.
Cover sideCover(const WallLayout& layout, const RoundedBox& steel, Interval own, Interval concrete, CoverFace side,
                bool earth);

// The lowest concrete under a box; within a neighbour's concrete that may be deeper than this wall's.
double bottomUnder(const WallLayout& layout, const Box3& box);

} // namespace sillwright
