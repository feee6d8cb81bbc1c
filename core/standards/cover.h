// Concrete cover over steel, ACI 318-19 Table 20.5.1.3.1, in inches.
#pragma once

#include <span>

#include "core/standards/source.h"

namespace sillwright {

enum class Exposure { CastAgainstEarth, ExposedOrGround, Sheltered };

// One line of the table: the cover of bars No. smallest to largest (of those this program knows, 3 … 8).
struct CoverRow {
  Exposure exposure = Exposure::CastAgainstEarth;
  std::string_view name;
  int smallest = 3;
  int largest = 8;
  double cover = 3;
};

inline constexpr Source coverSource{"ACI 318-19 Table 20.5.1.3.1", Status::Published};
// What foundations of houses are held to as well.
inline constexpr Source foundationCoverSource{"ACI 318-19 Table 20.5.1.3.1; IRC 2024 R403.1.3.5", Status::Published};
inline constexpr double coverAgainstEarth = 3, coverFormed = 1.5, coverFormedLarge = 2, coverSheltered = 0.75;

std::span<const CoverRow> coverTable();

// barNumber 3 … 8. Sheltered is the row for walls not exposed to weather or ground. Numbers beyond the table take the
// row next to them.
double requiredCover(Exposure exposure, int barNumber);

} // namespace sillwright
