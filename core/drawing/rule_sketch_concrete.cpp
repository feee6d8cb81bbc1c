// Concrete, earth, the pour line, forms and bars of the rules' pictures.
#include "core/drawing/rule_sketch_pieces.h"

namespace sillwright::sketch {

namespace {

constexpr double edgeWidth = 1.5;
constexpr double bladeHeight = 8, inchMarks = 4;

} // namespace

void concrete(Sketch& s, const Polygon2& outline, const std::vector<Polygon2>& edges) {
  s.fill(outline, Ink::Concrete);
  s.concreteMarks(outline);
  for (const Polygon2& edge : edges)
    s.path(edge, Ink::ConcreteLine, edgeWidth);
}

void concrete(Sketch& s, const Bounds& b, Edges edges) {
  std::vector<Polygon2> lines;
  if (edges.left)
    lines.push_back({{b.x0, b.y1}, {b.x0, b.y0}});
  if (edges.right)
    lines.push_back({{b.x1, b.y1}, {b.x1, b.y0}});
  if (edges.top)
    lines.push_back({{b.x0, b.y0}, {b.x1, b.y0}});
  if (edges.bottom)
    lines.push_back({{b.x0, b.y1}, {b.x1, b.y1}});
  concrete(s, rectangle(b.x0, b.y0, b.x1, b.y1), lines);
}

void earth(Sketch& s, const Bounds& b) {
  const Polygon2 outline = rectangle(b.x0, b.y0, b.x1, b.y1);
  s.fill(outline, Ink::Earth);
  s.earthMarks(outline);
  s.line({b.x0, b.y0}, {b.x1, b.y0}, Ink::EarthLine, 1);
}

void blade(Sketch& s, double x0, double x1, double y) {
  s.fill(Bounds{x0, y, x1, y + bladeHeight}, Ink::Blade);
  int mark = 1;
  for (double x = x0 + inchMarks; x < x1 - 0.5; x += inchMarks, ++mark)
    s.line({x, y}, {x, y + bladeHeight * (mark % 4 == 0 ? 0.6 : 0.32)}, Ink::BladeInk, 0.7);
  s.line({x0, y + bladeHeight}, {x1, y + bladeHeight}, Ink::BladeEdge, 0.8);
  s.line({x0, y}, {x1, y}, s.paper() ? Ink::Text : Ink::BladeInk, 1.5);
}

void pourLine(Sketch& s, double x0, double x1, double y) {
  if (s.paper())
    s.line({x0, y}, {x1, y}, Ink::Text, 1.2);
  else
    s.line({x0, y}, {x1, y}, Ink::BladeEdge, 2.4);
}

void formBoard(Sketch& s, const Bounds& b) {
  s.fill(b, Ink::Form);
  s.dashed(rectangle(b.x0, b.y0, b.x1, b.y1), 4, 2, Ink::FormLine, 0.8, true);
}

void bar(Sketch& s, Point2 a, Point2 b, double thick) {
  const double half = thick / 2;
  const Bounds body = a.x == b.x ? Bounds{a.x - half, a.y, a.x + half, b.y} : Bounds{a.x, a.y - half, b.x, a.y + half};
  s.box(body, Ink::BarFill, Ink::Bar, 0.6);
}

void barCut(Sketch& s, Point2 at, double radius) {
  s.disc(at, radius, Ink::BarFill);
  s.ring(at, radius, Ink::Bar, 0.8);
}

} // namespace sillwright::sketch
