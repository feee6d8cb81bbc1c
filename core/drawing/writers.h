// Text back ends of the display list.
#pragma once

#include <string>

#include "core/drawing/drawing.h"
#include "core/drawing/theme.h"

namespace sillwright {

// A page as SVG: physical size in inches, viewBox in points, text as text, no raster, pattern, mask or clip.
// Coordinates have three decimals.
std::string toSvg(const Drawing& drawing, double widthPt, double heightPt, ThemeName theme, const std::string& title);

// One line a primitive, for comparing drawings in tests and by eye. Coordinates have two decimals.
std::string toText(const Drawing& drawing);

} // namespace sillwright
