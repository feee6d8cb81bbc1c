// Reinforcing bars No. 3 to 8 (ASTM A615): diameters in inches, weights in lb/ft.
#pragma once

#include <optional>
#include <span>

#include "core/standards/source.h"

namespace sillwright {

struct BarSize {
  int number = 4;
  double diameter = 0.5;
  double weight = 0.668;
};

inline constexpr Source barSource{"ASTM A615", Status::Published};

std::span<const BarSize> barSizes();
std::optional<BarSize> barSize(int number); // nothing outside 3 … 8

} // namespace sillwright
