// Patterns as plain segments: the flags of the three levels, the materials, the tape, crow's feet. All sizes in points.
// The numbers are the program's drawing language; see DEVELOPERS.md.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/rules/level.h"

namespace sillwright {

Ink inkOf(Level level);

// ---- flags ------------------------------------------------------------------------------------------------------
// Draws the hatch of a level over a region: ground knocked out, exact edges, pattern. A region narrower than 9 pt takes
// the strip form. k scales everything (1 on paper, 1 on screen: the screen scales whole drawings). Returns the box used.
Bounds drawFlag(Drawing& drawing, Level level, const Bounds& region, double k = 1);

// The small sign of a level (two crosses, a zigzag, four ticks), middle left at (x, cy).
void drawSwatch(Drawing& drawing, Level level, double x, double cy, double width, double height, Ink ink,
                double k = 1);

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

// ---- materials --------------------------------------------------------------------------------------------------
// origin anchors the pattern, so that it does not swim when the outline changes.
void drawConcrete(Drawing& drawing, const Polygon2& outline, Point2 origin, double density = 1);
void drawEarth(Drawing& drawing, const Polygon2& outline, Point2 origin);
// Growth rings about a point past the lower left corner.
void drawWoodCut(Drawing& drawing, const Bounds& box);
void drawSteelCut(Drawing& drawing, const Polygon2& outline);

// ---- marks ------------------------------------------------------------------------------------------------------
enum class Pointing { Down, Up, Left, Right };
// A carpenter's crow's foot; the point of the V at (x, y).
void drawCrowsFoot(Drawing& drawing, double x, double y, Pointing pointing, Ink ink, double size = 5, double width = 1);

// The end hook of a tape gripping the left end of the concrete: station 0.
void drawHook(Drawing& drawing, double x, double y, double bladeHeight, Ink ink, Ink ground, bool toTheRight = true);

struct TapeSpec {
  Interval stations;                  // what to draw, in
  std::function<double(double)> xOf;  // station to x, pt; may fall (seen from inside)
  double y = 0;                       // the pour line
  double scale = 1;                   // pt per inch
  double blade = 17;                  // blade height, pt
  double numberSize = 11;
  std::vector<Interval> avoid;        // x intervals covered by pieces in front of the blade
};
// The pour line as a tape: blade below y with feet, inches … sixteenths as the scale allows.
void drawTape(Drawing& drawing, const TapeSpec& tape);

// Smallest drawn division as a fraction of an inch: 1/16 … 1, 3, 6, 12.
double tapeDivision(double scale);

} // namespace sillwright
