#include <algorithm>
#include <cmath>

#include "core/drawing/hatch.h"
#include "core/drawing/section_pen.h"
#include "core/standards/fasteners.h"

namespace sillwright {

namespace {

// The outline of one straight piece of a plate or bar, as thick as given.
Polygon2 pieceOf(Point2 a, Point2 b, double thickness) {
  const double length = std::max(std::hypot(b.x - a.x, b.y - a.y), 1e-9);
  const Point2 n{(a.y - b.y) / length * thickness / 2, (b.x - a.x) / length * thickness / 2};
  return {{a.x + n.x, a.y + n.y}, {b.x + n.x, b.y + n.y}, {b.x - n.x, b.y - n.y}, {a.x - n.x, a.y - n.y}};
}

void hit(SectionPen& pen, const Bounds& box) {
  pen.drawing.hit({pen.layout.wall->id, pen.input.piece}, box.grown(4));
}

void capsule(SectionPen& pen, const Capsule& c, Ink ground, Ink line) {
  const Point2 a{pen.x(c.a.d), pen.y(c.a.z)};
  const Point2 b{pen.x(c.b.d), pen.y(c.b.z)};
  const double r = c.radius * pen.input.view.scale;
  hit(pen, Bounds{std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)}.grown(r));
  if (a == b) // along the wall: the cut looks left, so a leg to the left points away
    return drawHookEnd(pen.drawing, a, std::max(r * 1.3, 3.0), c.b.s < c.a.s, line);
  // Flat ends lie a radius past the axis: see the layout.
  const double length = std::hypot(b.x - a.x, b.y - a.y);
  const Point2 u{(b.x - a.x) / length * r, (b.y - a.y) / length * r};
  const Polygon2 outline = pieceOf({a.x - u.x, a.y - u.y}, {b.x + u.x, b.y + u.y}, 2 * r);
  pen.drawing.fill(outline, ground);
  pen.drawing.loop(outline, line, 0.9);
}

void drawThread(SectionPen& pen, double length, double perInch) {
  if (perInch <= 0)
    return;
  const AnchorBody& a = *pen.anchor;
  double pitch = 1 / perInch;
  while (pitch * pen.input.view.scale < 1.5)
    pitch *= 2;
  std::vector<Segment2> ticks;
  for (double z = a.top; z > a.top - length; z -= pitch)
    ticks.push_back({{pen.x(a.depth - a.diameter / 2), pen.y(z)}, {pen.x(a.depth + a.diameter / 2), pen.y(z - 0.045)}});
  pen.drawing.segments(ticks, Ink::Steel, 0.45);
}

double layer(SectionPen& pen, double z, double width, double thickness, Ink ground) {
  const Bounds b = pen.box(around(pen.anchor->depth, width), {z, z + thickness});
  pen.drawing.fillRect(b.x0, b.y0, b.x1, b.y1, ground);
  pen.drawing.rect(b.x0, b.y0, b.x1, b.y1, Ink::Steel, 0.8);
  return z + thickness;
}

void drawStackParts(SectionPen& pen) {
  const AnchorBody& a = *pen.anchor;
  double z = a.sillPiece ? pen.layout.sills[*a.sillPiece].box.z.to : a.pour;
  if (a.washer && a.washerBox)
    z = layer(pen, a.washerBox->z.from, a.washer->across, a.washer->thickness, Ink::Steel);
  const auto parts = boltHardware(a.diameter);
  if (!a.bolt || !parts)
    return;
  if (a.bolt->cutWasher && parts->cutWasherThickness > 0)
    z = layer(pen, z, parts->cutWasherOutsideDiameter, parts->cutWasherThickness, Ink::SteelFace);
  layer(pen, z, parts->nutAcrossFlats, parts->nutThickness, Ink::SteelFace);
}

} // namespace

void drawSectionStrap(SectionPen& pen) {
  const StrapBody& strap = *pen.strap;
  const double thick = std::max(strap.type->plateThickness * pen.input.view.scale, 2.0);
  const double outside = strap.plate.d.middle();
  const double top = std::min(strap.plate.z.to, pen.seen.to);
  for (const NailBody& nail : strap.nails)
    if (nail.z < top)
      pen.drawing.line({pen.x(outside), pen.y(nail.z)}, {pen.x(outside + strap.type->nails.nailLength), pen.y(nail.z)},
                       Ink::SteelSoft, 0.6);
  std::vector<Point2> line{{pen.x(outside), pen.y(top)}};
  for (const ProfilePoint& p : strap.embedded.profile)
    line.push_back({pen.x(p.d), pen.y(p.z)});
  pen.drawing.polyline(line, Ink::Steel, thick);
  for (std::size_t i = 0; i + 1 < line.size(); ++i)
    hit(pen, {std::min(line[i].x, line[i + 1].x), std::min(line[i].y, line[i + 1].y),
              std::max(line[i].x, line[i + 1].x), std::max(line[i].y, line[i + 1].y)});
}

void drawSectionAnchor(SectionPen& pen) {
  const AnchorBody& a = *pen.anchor;
  for (const Capsule& foot : a.foot)
    capsule(pen, foot, Ink::SteelFace, Ink::Steel);
  capsule(pen, a.shank, Ink::SteelFace, Ink::Steel);
  if (a.boltType)
    drawThread(pen, a.boltType->threadLength, a.boltType->threadsPerInch);
  else
    drawThread(pen, a.rodType->threadLength, a.rodType->threadsPerInch);
  drawStackParts(pen);
}

} // namespace sillwright
