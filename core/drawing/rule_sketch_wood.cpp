// Lumber of the rules' pictures, and what is not there.
#include "core/drawing/rule_sketch_pieces.h"

namespace sillwright::sketch {

void wood(Sketch& s, const Bounds& b, double width) {
  s.box(b, Ink::Wood, Ink::WoodLine, width);
}

void woodCut(Sketch& s, const Bounds& b, double width) {
  s.fill(b, Ink::Wood);
  s.woodRings(b);
  s.rect(b, Ink::WoodLine, width);
}

void field(Sketch& s, const Bounds& b) {
  s.box(b, Ink::Wood2, Ink::WoodLine, 0.6);
}

void panel(Sketch& s, const Bounds& b, bool leftColumn, bool rightColumn) {
  const double head = b.y0 + panelPlate, sill = b.y1 - panelPlate;
  field(s, {b.x0, head, b.x1, sill});
  for (int stud = 1; stud < 4; ++stud) {
    const double x = b.x0 + (b.x1 - b.x0) * stud / 4;
    wood(s, {x - 2, head, x + 2, sill}, 0.5);
  }
  if (leftColumn)
    wood(s, {b.x0, head, b.x0 + panelColumn, sill});
  if (rightColumn)
    wood(s, {b.x1 - panelColumn, head, b.x1, sill});
  wood(s, {b.x0, b.y0, b.x1, head});
  wood(s, {b.x0, sill, b.x1, b.y1}, 1);
}

void levelUpright(Sketch& s, const Bounds& b) {
  const double x = (b.x0 + b.x1) / 2, y = (b.y0 + b.y1) / 2;
  s.box(b, Ink::Field, Ink::Text, 1.1);
  s.box({b.x0 + 3, y - 12, b.x1 - 3, y + 12}, Ink::Paper, Ink::Text2, 0.9);
  for (const double line : {-4.5, 4.5})
    s.line({b.x0 + 3, y + line}, {b.x1 - 3, y + line}, Ink::Text2, 0.8);
  s.disc({x, y}, 3, Ink::Text2);
}

void vial(Sketch& s, Point2 at, double off) {
  const Polygon2 glass{{at.x - 14, at.y - 6.5}, {at.x + 14, at.y - 6.5}, {at.x + 18, at.y - 2.5},
                       {at.x + 18, at.y + 2.5}, {at.x + 14, at.y + 6.5}, {at.x - 14, at.y + 6.5},
                       {at.x - 18, at.y + 2.5}, {at.x - 18, at.y - 2.5}};
  s.fill(glass, Ink::Paper);
  s.loop(glass, Ink::Text2, 1.1);
  for (const double x : {at.x - 6.5, at.x + 6.5})
    s.line({x, at.y - 6.5}, {x, at.y + 6.5}, Ink::Text2, 1);
  s.disc({at.x + off, at.y}, 3.8, Ink::Text2);
}

void ghost(Sketch& s, const Bounds& b) {
  s.dashed(rectangle(b.x0, b.y0, b.x1, b.y1), 5, 3, Ink::Text, 1.1, true);
}

void gauges(Sketch& s, double x, double y0, double y1, double held, std::string_view asked, std::string_view there) {
  constexpr double width = 18, gap = 26;
  const double top = y1 - (y1 - y0) * held, second = x + width + gap;
  s.box({x, y0, x + width, y1}, Ink::Panel, Ink::Text, 1);
  s.flag(Level::Ask, {second, y0, second + width, top});
  s.box({second, top, second + width, y1}, Ink::Steel, Ink::Steel, 1);
  s.witness({x + width + 2, y0}, {second - 2, y0});
  s.line({x - 5, y1}, {second + width + 5, y1}, Ink::Text, 1.2);
  s.say({x + width / 2, y1 + 12}, asked);
  s.say({second + width / 2, y1 + 12}, there);
}

} // namespace sillwright::sketch
