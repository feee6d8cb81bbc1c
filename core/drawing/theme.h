// The three palettes: what an ink looks like on a light screen, on a dark one, and on paper (black on white only).
#pragma once

#include <cstdint>
#include <string_view>

#include "core/drawing/drawing.h"

namespace sillwright {

enum class ThemeName { Light, Dark, Print };

struct Rgb {
  std::uint8_t r = 0, g = 0, b = 0;
  bool operator==(const Rgb&) const = default;
};

Rgb colour(ThemeName theme, Ink ink);
std::string_view name(Ink ink);

// Contrast ratio by WCAG 2 (1 … 21).
double contrast(Rgb a, Rgb b);

} // namespace sillwright
