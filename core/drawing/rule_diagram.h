// A small explanatory picture for each rule of the rule book: the pieces it looks at, what is measured, and, hatched,
// where a wall falls short. Sizes in points.
#pragma once

#include <string_view>

#include "core/drawing/drawing.h"
#include "core/drawing/view.h"

namespace sillwright {

// Drawn on a ground of 220 x 130, as large as fits in the middle of the box, with everything in it: letters and strokes
// grow with it. At most three texts. Numbers are the defaults of the limits table. Empty for a name that is no rule.
Drawing ruleDiagram(std::string_view ruleName, const Bounds& box, Medium medium = Medium::Screen);

} // namespace sillwright
