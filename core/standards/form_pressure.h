// What fresh concrete presses on the form. Pressures in psf.
#pragma once

#include <optional>

#include "core/standards/source.h"

namespace sillwright {

inline constexpr Source formPressureSource{"ACI 347R-14", Status::Published};
inline constexpr Source formCoefficientSource{"ACI 347R-14", Status::FromMemory};
inline constexpr NamedNumber normalConcrete{"concrete of normal weight", 150, "pcf", formPressureSource};
inline constexpr NamedNumber formRateBelow{"wall formula holds for placing slower than", 7, "ft/h", formPressureSource};
inline constexpr NamedNumber formHeightMost{"wall formula holds for placing up to", 14, "ft", formPressureSource};
inline constexpr NamedNumber formPressureLeast{"wall pressure at least, times the weight coefficient", 600, "psf",
                                               formPressureSource};
inline constexpr NamedNumber usualCoefficient{"weight and chemistry coefficients of plain concrete", 1, "",
                                              formCoefficientSource};

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

// C_w C_c (150 + 9000 R / T), for walls. Nothing where the formula does not hold: placing 7 ft/h or faster, higher than
// 14 ft, or anything not more than zero.
std::optional<double> wallFormula(const FormPour& pour);

// The same, not under 600 C_w and never over the liquid head.
std::optional<double> formPressure(const FormPour& pour);

} // namespace sillwright
