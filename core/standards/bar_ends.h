// How bars end: standard hooks and laps. In inches.
#pragma once

#include <optional>
#include <span>

#include "core/standards/source.h"

namespace sillwright {

// Standard 90° hook of a deformed bar, No. 3 to 8, in bar diameters.
inline constexpr Source hookSource{"ACI 318-19 Table 25.3.1", Status::Published};
inline constexpr NamedNumber hookBend{"90° hook, inside bend diameter at least", 6, "d", hookSource};
inline constexpr NamedNumber hookExtension{"90° hook, straight extension", 12, "d", hookSource};

struct StandardHook {
  double insideBendDiameter = 0;
  double extension = 0; // the straight part beyond the bend
};
std::optional<StandardHook> standardHook(int barNumber); // nothing outside 3 … 8

// Laps in foundation walls.
inline constexpr Source lapSource{"IRC 2024 Table R608.5.4(1)", Status::Published};

struct BarLap {
  int number = 0;
  double length = 0;
};
std::span<const BarLap> barLaps();
std::optional<double> lapLength(int barNumber); // nothing where the table has no row

} // namespace sillwright
