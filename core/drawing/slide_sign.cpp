#include "core/drawing/slide_sign.h"

namespace sillwright {

void drawSlideArrow(Drawing& drawing, Point2 middle, Ink ink, double scale) {
  const auto at = [&](double x, double y) { return Point2{middle.x + x * scale, middle.y + y * scale}; };
  drawing.line(at(-9, 0), at(9, 0), ink, 1.1 * scale);
  for (const double side : {-1.0, 1.0}) {
    const Point2 head[] = {at(side * 5.5, -3), at(side * 9.5, 0), at(side * 5.5, 3)};
    drawing.polyline(head, ink, scale);
  }
  drawing.line(at(0, -4), at(0, 4), ink, 1.1 * scale);
}

void drawSlideDiamond(Drawing& drawing, Point2 middle, Ink ink, double scale) {
  const auto at = [&](double x, double y) { return Point2{middle.x + x * scale, middle.y + y * scale}; };
  drawing.line(at(-8.5, 0), at(8.5, 0), ink, 1.4 * scale);
  const Point2 diamond[] = {at(0, -5), at(5, 0), at(0, 5), at(-5, 0)};
  drawing.fill(diamond, ink);
}

} // namespace sillwright
