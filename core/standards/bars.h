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

inline constexpr Source barSpacingSource{"ACI 318-19 25.2.1", Status::Published};
inline constexpr NamedNumber barClearance{"between parallel bars, at least; never less than a bar", 1, "in",
                                          barSpacingSource};

// Where foundations of one- and two-family houses have bars.
inline constexpr Source topBarSource{"IRC 2024 R403.1.3.1", Status::Published};
inline constexpr NamedNumber topBarWithin{"bar along the top, from the top at most", 12, "in", topBarSource};
inline constexpr Source openingBarSource{"IRC R404 (county checklist)", Status::Published};
inline constexpr NamedNumber openingBarWithin{"upright bar beside an opening, from it at most", 12, "in",
                                              openingBarSource};

std::span<const BarSize> barSizes();
std::optional<BarSize> barSize(int number); // nothing outside 3 … 8

} // namespace sillwright
