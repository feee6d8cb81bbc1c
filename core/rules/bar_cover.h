// The concrete over a bar. Inches.
#pragma once

#include <vector>

#include "core/rules/concrete_cover.h"

namespace sillwright {

Box3 steelOf(const BarBody& bar);

// Every face that may fall short, and the covers that ACI 318-19 Table 20.5.1.3.1 asks for of a bar of that size.
struct BarCovers {
  double formed = 0;
  double earth = 0;
  double round = 0; // of the corners of its box in plan
  std::vector<Cover> measured;
};
BarCovers barCoverOf(const WallLayout& layout, const BarBody& bar);

} // namespace sillwright
