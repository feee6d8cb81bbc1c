// Earth, concrete, form boards, bars and the pour line.
#include <algorithm>
#include <cmath>

#include "core/drawing/cut_drawing.h"
#include "core/drawing/elevation_parts.h"

namespace sillwright::elevation {

namespace {

Polygon2 onPage(const Scene& scene, const Polygon2& inches) {
  Polygon2 page;
  for (const Point2 p : inches)
    page.push_back({scene.x(p.x), scene.y(p.y)});
  return page;
}

double barWidth(const Scene& scene, const BarBody& bar) {
  return std::max(2 * bar.body.radius * scene.view.scale, scene.paper ? 3.0 : 1.9);
}

// Two dashes where the plan had a bar that was found elsewhere.
void drawWas(Scene& scene, const BarBody& bar, double width) {
  const BarPlace& was = bar.bar->planned;
  const double away = std::abs(was.a.s - bar.body.a.s);
  if (!bar.found || bar.bar->run != BarRun::Upright || away < 0.75 || !scene.sees(was.a.s))
    return;
  const double x = scene.x(was.a.s);
  for (const double side : {-0.5, 0.5}) {
    const Point2 line[] = {{x + side * width, scene.y(was.b.z)}, {x + side * width, scene.y(was.a.z)}};
    scene.drawing.dashed(line, 3, 2, Ink::BarPlan, 0.6);
  }
}

void drawBar(Scene& scene, const BarBody& bar) {
  const Interval s{std::min(bar.body.a.s, bar.body.b.s), std::max(bar.body.a.s, bar.body.b.s)};
  const Interval z{std::min(bar.body.a.z, bar.body.b.z), std::max(bar.body.a.z, bar.body.b.z)};
  const double width = barWidth(scene, bar);
  drawWas(scene, bar, width);
  if (!scene.sees(s))
    return;
  Bounds box = scene.box(s, z);
  if (bar.bar->run == BarRun::Upright)
    box = {box.x0 - width / 2, box.y0, box.x1 + width / 2, box.y1};
  else
    box = {box.x0, box.y0 - width / 2, box.x1, box.y1 + width / 2};
  const Ink edge = inkOf(scene, bar.id, bar.found ? Ink::Bar : Ink::BarPlan);
  fillBox(scene, box, isInHand(scene, bar.id) ? Ink::HandSoft : bar.found ? Ink::BarFill : Ink::Concrete, edge,
          edge == Ink::Bar || edge == Ink::BarPlan ? 0.6 : 1.4);
}

void drawRun(Scene& scene, const PourRun& run, Interval part) {
  const Interval s = overlap(part, scene.stations);
  if (s.length() <= 0)
    return;
  TapeSpec tape;
  tape.stations = s;
  tape.xOf = [&scene](double station) { return scene.x(station); };
  tape.y = scene.y(run.height);
  tape.scale = scene.view.scale;
  tape.blade = scene.blade;
  tape.numberSize = scene.paper ? 9.5 : scene.input.magnified ? 14 : 11;
  for (const AnchorBody& anchor : scene.wall.anchors)
    if (scene.sees(anchor.station) && run.s.contains(anchor.station))
      tape.avoid.push_back(around(scene.x(anchor.station), std::max(6.0, anchor.diameter * scene.view.scale + 2)));
  drawTape(scene.drawing, tape);
  Bounds box = scene.box(s, {run.height, run.height});
  box.y1 += scene.blade;
  scene.keepOff.push_back(box);
}

void board(Scene& scene, Interval s, Interval z) {
  const Bounds b = scene.within(scene.box(s, z));
  if (!scene.sees(s) || b.empty())
    return;
  scene.drawing.fillRect(b.x0, b.y0, b.x1, b.y1, Ink::Form);
  scene.drawing.dashedRect(b.x0, b.y0, b.x1, b.y1, 4, 2, Ink::FormLine, 0.7);
}

} // namespace

void drawGround(Scene& scene) {
  const WallLayout& w = scene.wall;
  const Interval along = w.footingAcross.empty() ? w.concrete : w.footingAlong;
  const double out = 26;
  const double deep = scene.paper ? 12 : 20;
  const double left = std::min(scene.x(along.from), scene.x(along.to));
  const double right = std::max(scene.x(along.from), scene.x(along.to));
  const double top = scene.y(w.footingAcross.empty() ? w.bottom + 4 : w.stemBottom);
  const double foot = scene.y(w.bottom);
  Polygon2 earth{{left - 2 * out, top}, {left, top}, {left, foot}, {right, foot}, {right, top},
                 {right + 2 * out, top}, {right + out, foot + deep}, {left - out, foot + deep}};
  const Polygon2 seen = cutTo(earth, scene.frame);
  if (seen.size() < 3)
    return;
  scene.drawing.fill(seen, Ink::Earth);
  drawEarth(scene.drawing, seen, {left, top});
  const Polygon2 frame = rectangle(scene.frame.x0, scene.frame.y0, scene.frame.x1, scene.frame.y1);
  for (const Segment2& line : {Segment2{{left - 2 * out, top}, {left, top}}, Segment2{{right, top}, {right + 2 * out, top}}})
    scene.drawing.segments(clipped(line, frame), Ink::EarthLine, 1);
}

void drawConcreteBody(Scene& scene) {
  const Polygon2 outline = onPage(scene, concreteOutline(scene.wall));
  const Bounds f = scene.frame.grown(4);
  const Polygon2 seen = cutTo(outline, f);
  if (seen.size() < 3)
    return;
  const Point2 anchor{scene.x(0), scene.y(0)};
  scene.drawing.fill(seen, Ink::Concrete);
  drawConcrete(scene.drawing, seen, anchor, scene.paper ? 0.75 : 1);
  const bool whole = std::all_of(outline.begin(), outline.end(), [&](Point2 p) { return f.contains(p); });
  if (whole)
    scene.drawing.loop(outline, Ink::ConcreteLine, 1.5);
  const Polygon2 frame = rectangle(f.x0, f.y0, f.x1, f.y1);
  for (std::size_t i = 0; i < outline.size() && !whole; ++i)
    scene.drawing.segments(clipped({outline[i], outline[(i + 1) % outline.size()]}, frame), Ink::ConcreteLine, 1.5);
  if (scene.wall.footingAcross.empty())
    return;
  const double y = scene.y(scene.wall.stemBottom);
  scene.drawing.segments(clipped({{scene.x(scene.wall.concrete.from), y}, {scene.x(scene.wall.concrete.to), y}}, frame),
                         Ink::ConcreteLine, 0.7);
}

void drawForms(Scene& scene) {
  const WallLayout& w = scene.wall;
  const double thick = w.wall->forms.outside;
  const double up = w.wall->formTop;
  for (const ConcreteFace& face : w.faces) {
    if (face.kind == ConcreteFace::Kind::Corner)
      continue;
    const Interval s = face.concrete == Side::Right ? Interval{face.station - thick, face.station}
                                                    : Interval{face.station, face.station + thick};
    const double foot = face.kind == ConcreteFace::Kind::Step ? face.z.from : w.stemBottom;
    board(scene, s, {foot, face.z.to + up});
  }
}

void drawBars(Scene& scene) {
  for (const BarRun run : {BarRun::Along, BarRun::Upright})
    for (const BarBody& bar : scene.wall.bars)
      if (bar.bar->run == run)
        drawBar(scene, bar);
}

void drawPourLine(Scene& scene) {
  for (const PourRun& run : scene.wall.pour)
    for (const Interval part : scene.view.shownParts(run.s))
      drawRun(scene, run, part);
  if (!scene.sees(0))
    return;
  const double y = scene.y(scene.wall.pour.front().height);
  drawHook(scene.drawing, scene.x(0), y, scene.blade, Ink::BladeInk, Ink::Blade, !scene.view.fromInside);
}

void drawFormTop(Scene& scene) {
  const WallLine& line = *scene.wall.wall;
  for (const PourRun& run : scene.wall.pour) {
    const Interval s = overlap(run.s, scene.stations);
    const double y = scene.y(run.height + line.formTop);
    if (line.formTop > 0 && s.length() > 0) {
      const Point2 top[] = {{scene.x(s.from), y}, {scene.x(s.to), y}};
      scene.drawing.dashed(top, 8, 3, Ink::FormLine, 0.9);
    }
  }
  for (const StudBody& stud : scene.wall.studs)
    if (scene.sees(stud.box.s))
      drawCrowsFoot(scene.drawing, scene.x(stud.box.s.middle()), scene.y(pourAt(scene.wall, stud.box.s.middle())),
                    Pointing::Down, Ink::WoodLine, 8, 1.2);
}

} // namespace sillwright::elevation
