// How much concrete lies over a piece of steel, face by face. Inches.
#pragma once

#include <vector>

#include "core/model/layout.h"
#include "core/rules/finding.h"

namespace sillwright {

// In the order in which findings number them. The last two: the face of a neighbour that the steel reaches into.
enum class CoverFace : std::uint8_t { Left, Right, Outside, Inside, Top, Bottom, FootingTop, CornerLeft, CornerRight };

struct Cover {
  CoverFace face = CoverFace::Outside;
  bool earth = false;  // the concrete is cast against earth there, else against a form or in the open
  double measured = 0; // less than zero: the steel comes out of the concrete
  Box3 region;         // between steel and face
};

// Of a box of steel inside a wall: every face of stem and footing that it lies behind. A step's riser counts only for
// steel on its high side. The corners of the box in plan are rounded by `round`: half the diameter of an upright bar.
// Faces with more than `enough` are left out.
std::vector<Cover> coversOf(const WallLayout& layout, const Box3& steel, double round = 0, double enough = 1e9);

// The field that changes a cover, and which way more of it is: +1 right, inward, up.
Correction::Field fieldOf(CoverFace face);
double wayToMore(CoverFace face);

} // namespace sillwright
