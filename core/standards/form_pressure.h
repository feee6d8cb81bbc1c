// What fresh concrete presses on the form. Pressures in psf.
#pragma once

#include <optional>

#include "core/standards/source.h"

namespace sillwright {

inline constexpr Source formPressureSource{"ACI 347R-14", Status::Published};
inline constexpr NamedNumber normalConcrete{"concrete of normal weight", 150, "pcf", formPressureSource};
inline constexpr NamedNumber slowRateBelow{"slow placing, rate less than", 7, "ft/h", formPressureSource};
inline constexpr NamedNumber slowHeightMost{"slow placing, height up to", 14, "ft", formPressureSource};
inline constexpr NamedNumber fastRateMost{"fast placing, rate up to", 15, "ft/h", formPressureSource};
inline constexpr NamedNumber formPressureLeast{"pressure at least, times the weight coefficient", 600, "psf",
                                               formPressureSource};
// Concrete of 140 to 150 pcf; cement of type I, II or III without retarders.
inline constexpr NamedNumber usualCoefficient{"weight and chemistry coefficients of plain concrete", 1, "",
                                              formPressureSource};

// All the way up as a liquid: unit weight in pcf, height in ft. Needs no document.
double liquidHead(double unitWeight, double height);

struct FormPour {
  double rate = 0;                                      // ft/h, how fast the concrete rises
  double temperature = 0;                               // °F, of the concrete
  double height = 0;                                    // ft
  double unitWeight = normalConcrete.value;             // pcf
  double weightCoefficient = usualCoefficient.value;    // C_w
  double chemistryCoefficient = usualCoefficient.value; // C_c
};

// For walls, placed slowly (under 7 ft/h and up to 14 ft): C_w C_c (150 + 9000 R / T); higher or faster up to 15 ft/h:
// C_w C_c (150 + 43400 / T + 2800 R / T). Nothing where neither holds: faster still, or anything not more than zero.
std::optional<double> wallFormula(const FormPour& pour);

// The same, not under 600 C_w and never over the liquid head.
std::optional<double> formPressure(const FormPour& pour);

} // namespace sillwright
