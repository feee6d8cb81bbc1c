// The look of the toolkit's own widgets in the colours of a theme.
#pragma once

#include <QPalette>
#include <QString>

#include "core/drawing/theme.h"

namespace sillwright {

enum class ThemeChoice { Light, Dark, System };

QPalette paletteOf(ThemeName theme);
QString styleSheetOf(ThemeName theme);
// What a choice means on this desktop: `desktop` is the palette the toolkit started with.
ThemeName themeFor(ThemeChoice choice, const QPalette& desktop);

} // namespace sillwright
