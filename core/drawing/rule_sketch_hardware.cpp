// Straps, anchors and washers of the rules' pictures: solid above the pour line, open below it.
#include <algorithm>

#include "core/drawing/rule_sketch_pieces.h"

namespace sillwright::sketch {

namespace {

Ink faceOf(const Sketch& s) {
  return s.paper() ? Ink::Paper : Ink::SteelFace;
}

Ink shankOf(const Sketch& s) {
  return s.paper() ? Ink::Paper : Ink::SteelSoft;
}

void thread(Sketch& s, double x, double thick, double y0, double y1) {
  for (double y = y0 + 1.5; y < y1; y += 2)
    s.line({x - thick / 2, y + 0.6}, {x + thick / 2, y}, Ink::Steel, 0.5);
}

void nails(Sketch& s, const StrapFront& strap) {
  const double length = strap.joint - strap.top, step = length * 0.72 / std::max(1, strap.nails - 1);
  for (int i = 0; i < strap.nails; ++i) {
    const double down = length * 0.08 + i * step, lean = strap.lean * (1 - down / length);
    for (const double side : {-0.25, 0.25})
      s.disc({strap.x + lean + side * strap.width, strap.top + down}, std::max(0.9, strap.width * 0.06), Ink::Paper);
  }
}

// A plate washer and a nut seen from the side, and the end of the bolt.
void stackAbove(Sketch& s, double x, double top, double on, double thick, double washer, double nutAt) {
  const double plate = thick * 0.55, nut = thick * 1.9, high = thick * 0.95;
  if (washer > 0)
    s.fill(Bounds{x - washer / 2, on - plate, x + washer / 2, on}, Ink::Steel);
  const double seat = nutAt > 0 ? nutAt : washer > 0 ? on - plate : on;
  s.box({x - thick / 2, top, x + thick / 2, on}, s.paper() ? Ink::Paper : Ink::SteelSoft, Ink::Steel, 0.8);
  thread(s, x, thick, top, seat);
  s.box({x - nut / 2, seat - high, x + nut / 2, seat}, Ink::Steel, Ink::Steel, 0.4);
}

} // namespace

void strapFront(Sketch& s, const StrapFront& strap) {
  const double x0 = strap.x - strap.width / 2, x1 = strap.x + strap.width / 2;
  if (strap.bottom > strap.joint) {
    s.box({x0, strap.joint, x1, strap.bottom}, faceOf(s), Ink::Steel, 1);
    const double tip = strap.bottom - 6;
    s.dashed({{x0, tip}, {x1, tip}}, 2.4, 1.8, Ink::Steel, 0.8);
  }
  const Polygon2 plate{
      {x0, strap.joint}, {x0 + strap.lean, strap.top}, {x1 + strap.lean, strap.top}, {x1, strap.joint}};
  s.fill(plate, Ink::Steel);
  nails(s, strap);
  s.line({x0 - 4, strap.joint}, {x1 + 4, strap.joint}, Ink::Steel, 2.2);
}

void strapCut(Sketch& s, double x, double top, double joint, Point2 bend, Point2 tip) {
  s.path({{x, top}, {x, joint}, bend, tip}, Ink::Steel, 2.4);
}

void anchorFront(Sketch& s, const AnchorFront& a) {
  const double half = a.thick / 2;
  s.box({a.x - half, a.pour, a.x + half, a.bottom}, shankOf(s), Ink::Steel, 0.9);
  if (a.end == AnchorEnd::Hook)
    s.hookEnd({a.x, a.bottom}, std::max(a.thick * 0.78, 3.2), true);
  else if (a.end == AnchorEnd::Plate)
    s.box({a.x - a.thick * 1.6, a.bottom - 3, a.x + a.thick * 1.6, a.bottom}, shankOf(s), Ink::Steel, 0.9);
  if (a.on < a.pour)
    s.box({a.x - half, a.on, a.x + half, a.pour}, shankOf(s), Ink::Steel, 0.8);
  stackAbove(s, a.x, a.top, a.on, a.thick, a.washer, a.nutAt);
}

void anchorCut(Sketch& s, const AnchorCut& a) {
  const double half = a.thick / 2, tip = a.x + a.reach;
  if (a.reach == 0) {
    s.box({a.x - half, a.on, a.x + half, a.bottom}, faceOf(s), Ink::Steel, 0.9);
    s.box({a.x - a.thick * 1.6, a.bottom - 3.5, a.x + a.thick * 1.6, a.bottom}, faceOf(s), Ink::Steel, 0.9);
  } else {
    const double out = a.reach > 0 ? half : -half;
    const Polygon2 body{{a.x - out, a.on},         {a.x + out, a.on}, {a.x + out, a.bottom - a.thick},
                        {tip, a.bottom - a.thick}, {tip, a.bottom},   {a.x - out, a.bottom}};
    s.fill(body, faceOf(s));
    s.loop(body, Ink::Steel, 0.9);
  }
  stackAbove(s, a.x, a.top, a.on, a.thick, a.washer, 0);
}

void washerAbove(Sketch& s, Point2 at, double across, double bolt) {
  s.box(Bounds{at.x, at.y, at.x, at.y}.grown(across / 2), faceOf(s), Ink::Steel, 1.1);
  const double nut = bolt * 1.05, flat = nut * 0.866;
  const Polygon2 hexagon{{at.x - nut, at.y}, {at.x - nut / 2, at.y - flat}, {at.x + nut / 2, at.y - flat},
                         {at.x + nut, at.y}, {at.x + nut / 2, at.y + flat}, {at.x - nut / 2, at.y + flat}};
  s.fill(hexagon, shankOf(s));
  s.loop(hexagon, Ink::Steel, 0.8);
  s.disc(at, bolt * 0.55, Ink::Steel);
}

void anchorAbove(Sketch& s, Point2 at, double radius) {
  s.disc(at, radius, faceOf(s));
  s.ring(at, radius, Ink::Steel, 1);
  s.disc(at, radius * 0.45, Ink::Steel);
}

} // namespace sillwright::sketch
