// Softwoods of sills and columns, and how hard a dowel may press on them.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>

#include "core/standards/source.h"

namespace sillwright {

struct Species {
  std::string_view name; // "Douglas Fir-Larch"
  double specificGravity = 0;
  std::array<std::string_view, 5> alsoWritten{}; // "DF-L"; unused places are empty
};

inline constexpr Source speciesSource{"NDS 2018 Table 12.3.3A", Status::Published};
inline constexpr Source dowelBearingSource{"NDS 2018 Table 12.3.3", Status::Published};

std::span<const Species> speciesTable();

// By name or as people write it, whatever the case, blanks and punctuation: "df-l", "Hem Fir", "S-P-F".
std::optional<Species> speciesByName(std::string_view written);

// Dowel bearing strength along and across the grain in psi, rounded to 50 psi; dowel diameter in inches. Dowels under
// 1/4 in press alike in every direction. Preconditions: specificGravity > 0, diameter > 0.
double bearingAlong(double specificGravity, double diameter);
double bearingAcross(double specificGravity, double diameter);

// The same at an angle to the grain in degrees (0 along, 90 across), by NDS 2018 12.3.4; not rounded.
double bearingAtAngle(double specificGravity, double diameter, double degrees);

inline constexpr NamedNumber concreteBearing{"concrete of 2,500 psi or more", 7500, "psi", dowelBearingSource};

} // namespace sillwright
