// The three levels as drawn: a hatch over the exact region of a finding, a small sign, a label. Levels differ by stroke
// (crosses, zigzags, ticks), not by colour. All sizes in points.
#pragma once

#include <string>

#include "core/drawing/drawing.h"
#include "core/rules/level.h"

namespace sillwright {

Ink inkOf(Level level);

// Draws the hatch of a level over a region: ground knocked out, exact edges, pattern. A region narrower than 9 pt takes
// the strip form, whose exact long edges show as witness lines past its ends. k scales everything (1 on paper, 1 on
// screen: the screen scales whole drawings). Returns the box of pattern and witness lines.
Bounds drawFlag(Drawing& drawing, Level level, const Bounds& region, double k = 1);

// The small sign of a level (two crosses, a zigzag, four ticks), middle left at (x, cy).
void drawSwatch(Drawing& drawing, Level level, double x, double cy, double width, double height, Ink ink, double k = 1);

enum class LabelForm { OneLine, TwoLines, Tall };
struct LabelText {
  Level level = Level::Fix;
  std::string word;    // FIX, or CORREGIR
  std::string measure; // S1 · EDGE 3/8" < 1/2"
  std::string hint;    // move it right 1/8"; may be empty
};
struct Size {
  double width = 0, height = 0;
};
Size labelSize(const LabelText& text, LabelForm form, double k = 1);
// Draws the label with its top left at (x, y); returns its box.
Bounds drawLabel(Drawing& drawing, const LabelText& text, LabelForm form, double x, double y, double k = 1);

} // namespace sillwright
