// Reinforcing bars No. 3 to 8 (ASTM A615): diameters in inches, weights in lb/ft.
#pragma once

#include <optional>

namespace sillwright {

struct BarSize {
  int number = 4;
  double diameter = 0.5;
  double weight = 0.668;
};

std::optional<BarSize> barSize(int number); // nothing outside 3 … 8

} // namespace sillwright
