// What a carpenter marks and measures with: the tape along the pour line, its hook, the crow's foot. Sizes in points.
#pragma once

#include <functional>
#include <vector>

#include "core/drawing/drawing.h"

namespace sillwright {

enum class Pointing { Down, Up, Left, Right };
// A carpenter's crow's foot; the point of the V, with its stroke, at (x, y). size is the height of its middle line.
void drawCrowsFoot(Drawing& drawing, double x, double y, Pointing pointing, Ink ink, double size = 5, double width = 1);

// The leg of a bolt's hook seen from its end, in concrete: a cross points away from the eye, a dot comes toward it.
void drawHookEnd(Drawing& drawing, Point2 at, double radius, bool away, Ink ink);

// The end hook of a tape gripping the left end of the concrete: station 0.
void drawHook(Drawing& drawing, double x, double y, double bladeHeight, Ink ink, Ink ground, bool toTheRight = true);

struct TapeSpec {
  Interval stations;                 // what to draw, in
  std::function<double(double)> xOf; // station to x, pt; may fall (seen from inside)
  double y = 0;                      // the pour line
  double scale = 1;                  // pt per inch
  double blade = 17;                 // blade height, pt
  double numberSize = 11;
  std::vector<Interval> avoid; // x intervals covered by pieces in front of the blade
};
// The pour line as a tape: blade below y with feet, inches … sixteenths as the scale allows.
void drawTape(Drawing& drawing, const TapeSpec& tape);

// Smallest drawn division in inches, so that marks are 3.4 pt apart: 1/16 … 1, 3, 6, 12, and doubles of 12.
double tapeDivision(double scale);

} // namespace sillwright
