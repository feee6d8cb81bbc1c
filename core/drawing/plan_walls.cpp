#include <algorithm>
#include <cmath>
#include <optional>

#include "core/base/tolerance.h"
#include "core/drawing/hatch.h"
#include "core/drawing/plan_places.h"
#include "core/model/lookup.h"

namespace sillwright {

namespace {

struct WallPen {
  Drawing& drawing;
  const WallLayout& layout;
  const PlanStyle& style;
  PlanFrame frame;
  Polygon2 outline; // page
  bool hand = false;
  bool paper = false;
};

Polygon2 strip(const PlanFrame& frame, Interval s, Interval d) {
  return {frame.page(s.from, d.from), frame.page(s.to, d.from), frame.page(s.to, d.to), frame.page(s.from, d.to)};
}

bool selected(const PlanStyle& style, Id wall) {
  return std::find(style.selection.begin(), style.selection.end(), PieceRef{wall, {}}) != style.selection.end();
}

// Faces are lines; a mitre is none, so that a ring of walls reads as one.
void drawFaces(WallPen& pen) {
  Drawing& d = pen.drawing;
  const Polygon2& o = pen.outline;
  d.fill(o, Ink::Concrete);
  if (pen.layout.wall->thickness * pen.frame.scale > 9)
    drawConcrete(d, o, o[0], 0.8);
  const double width = pen.paper ? 1.2 : 1;
  d.line(o[0], o[1], Ink::ConcreteLine, width);
  if (o.size() == 4)
    d.line(o[2], o[3], Ink::ConcreteLine, width);
  if (!pen.layout.place.atStart)
    d.line(o[0], o.back(), Ink::ConcreteLine, width);
  if (!pen.layout.place.atEnd)
    d.line(o[1], o[2], Ink::ConcreteLine, width);
}

void drawOpenings(WallPen& pen) {
  const double t = pen.layout.wall->thickness;
  for (const Opening& opening : pen.layout.wall->openings) {
    const Polygon2 gap = strip(pen.frame, {opening.from, opening.to}, {0, t});
    pen.drawing.fill(gap, Ink::Paper, pen.paper ? 1 : 0.6);
    pen.drawing.loop(gap, Ink::ConcreteLine, 0.6);
    if (opening.kind == OpeningKind::Window)
      pen.drawing.line(pen.frame.page(opening.from, t / 2), pen.frame.page(opening.to, t / 2), Ink::ConcreteLine, 0.6);
  }
}

void drawFooting(WallPen& pen, const Job& job) {
  const WallLine& wall = *pen.layout.wall;
  if (wall.footing.width <= 0)
    return;
  const auto depthOf = [](const WallLine& w, bool inside) {
    return inside ? w.footing.width - w.footing.projection : -w.footing.projection;
  };
  for (const bool inside : {false, true}) {
    const double depth = depthOf(wall, inside);
    const auto end = [&](bool atStart) {
      const auto& neighbour = atStart ? pen.layout.place.atStart : pen.layout.place.atEnd;
      const WallLine* other = neighbour ? job.walls.find(neighbour->wall) : nullptr;
      return pen.frame.page(mitreStation(pen.layout.place, atStart, depth, other ? depthOf(*other, inside) : 0), depth);
    };
    const Point2 line[] = {end(true), end(false)};
    pen.drawing.dashed(line, 4, 2, Ink::ConcreteLine, 0.5);
  }
}

void drawHardware(WallPen& pen) {
  for (const StrapBody& strap : pen.layout.straps) {
    const Interval s = strap.plate.s;
    pen.drawing.line(pen.frame.page(s.from, 0), pen.frame.page(s.to, 0), Ink::Steel, 2.4);
  }
  for (const AnchorBody& anchor : pen.layout.anchors) {
    const Point2 at = pen.frame.page(anchor.station, anchor.depth);
    if (anchor.isRod)
      pen.drawing.ring(at, 1.8, Ink::Steel, 0.9);
    else
      pen.drawing.disc(at, 1.3, Ink::Steel);
  }
}

// The worst level of the findings nearest to one of these stations, among all the stations of the wall's signs.
std::optional<Level> levelAt(const CheckedWall& wall, const std::vector<PlanSign>& signs, const PlanSign& sign) {
  std::optional<Level> worst;
  const auto away = [](const PlanSign& s, double station) {
    double nearest = 1e300;
    for (const double each : s.stations)
      nearest = std::min(nearest, std::abs(each - station));
    return nearest;
  };
  for (const Finding& finding : wall.findings) {
    const double station = finding.region.s.middle();
    const bool ours = std::none_of(signs.begin(), signs.end(), [&](const PlanSign& other) {
      return &other < &sign ? away(other, station) <= away(sign, station) : away(other, station) < away(sign, station);
    });
    if (ours && (!worst || finding.level < *worst))
      worst = finding.level;
  }
  return worst;
}

// An end where nothing was found: a ring in the wall itself, at its true place.
void drawClear(WallPen& pen, double station) {
  constexpr double radius = 2.2;
  const double near = 5 / pen.frame.scale;
  if (pen.frame.length < 2 * near)
    return;
  const Point2 at = pen.frame.page(std::clamp(station, near, pen.frame.length - near),
                                   pen.layout.wall->thickness / 2);
  pen.drawing.disc(at, radius, Ink::Paper);
  pen.drawing.ring(at, radius, pen.hand && !pen.paper ? Ink::Hand : Ink::Text2, 1.1);
}

void drawSigns(WallPen& pen, const CheckedWall& wall, const WallPlaces& places) {
  for (const PlanSign& sign : places.signs) {
    const auto level = levelAt(wall, places.signs, sign);
    if (!level) {
      if (!pen.layout.wall->panels.empty())
        for (const double station : sign.stations)
          drawClear(pen, station);
      continue;
    }
    const Point2 m = sign.middle;
    const Bounds box{m.x - signWidth / 2, m.y - signHeight / 2, m.x + signWidth / 2, m.y + signHeight / 2};
    pen.drawing.fillRect(box.x0, box.y0, box.x1, box.y1, Ink::Paper);
    drawSwatch(pen.drawing, *level, m.x - 6, m.y, 12, 8.4, inkOf(*level));
    pen.drawing.take("sign", box);
  }
}

void drawRunning(WallPen& pen, const WallPlaces& places) {
  if (places.running.empty())
    return;
  Drawing& d = pen.drawing;
  const PlanFrame& f = pen.frame;
  const bool inside = places.chain > 0;
  const double face = inside ? pen.layout.wall->thickness : 0;
  const double side = (inside ? 1 : -1) / f.scale;
  d.line(f.page(0, places.chain), f.page(f.length, places.chain), Ink::Dim, 0.7);
  d.ring(f.page(0, places.chain), 2.4, Ink::Dim, 1);
  for (const PlanMark& mark : places.running) {
    const double s = mark.station;
    d.line(f.page(s, face + side * 3), f.page(s, places.chain), Ink::Dim, 0.5);
    const double open = 2.4 / f.scale;
    const Point2 vee[] = {f.page(s - open, places.chain - side * 5), f.page(s, places.chain),
                          f.page(s + open, places.chain - side * 5)};
    d.polyline(vee, Ink::Dim, 1);
    drawPlanText(d, mark.value, Ink::Text);
  }
}

// The handle that moves the whole wall: a diamond in its middle, where the wall is long enough for one.
void addMiddle(WallPen& pen) {
  constexpr double half = 5, shortest = 50;
  if (!pen.hand || pen.paper || pen.frame.length * pen.frame.scale < shortest)
    return;
  const Point2 m = pen.frame.page(pen.frame.length / 2, pen.layout.wall->thickness / 2);
  const Polygon2 diamond{{m.x - half, m.y}, {m.x, m.y - half}, {m.x + half, m.y}, {m.x, m.y + half}};
  pen.drawing.fill(diamond, Ink::Paper);
  pen.drawing.loop(diamond, Ink::Hand, 1.4);
  pen.drawing.hit({pen.layout.wall->id, {}}, Bounds{m.x, m.y, m.x, m.y}.grown(half + 1), HitArea::Part::Corner);
}

void addHits(WallPen& pen) {
  const Id id = pen.layout.wall->id;
  const double depth = std::max(pen.layout.wall->thickness, 8 / pen.frame.scale);
  const bool square = std::abs(pen.frame.along.x) < 1e-9 || std::abs(pen.frame.along.y) < 1e-9;
  const int parts = square ? 1 : std::clamp(int(pen.frame.length / depth), 1, 200);
  for (int i = 0; i < parts; ++i) {
    const double step = pen.frame.length / parts;
    pen.drawing.hit({id, {}}, boundsOf(strip(pen.frame, {i * step, (i + 1) * step}, {0, depth})));
  }
  addMiddle(pen);
  const Id corners[] = {pen.layout.wall->startCorner, pen.layout.wall->endCorner};
  const double stations[] = {0, pen.frame.length};
  for (int i = 0; i < 2; ++i) {
    const Point2 at = pen.frame.page(stations[i], 0);
    pen.drawing.hit({id, corners[i]}, Bounds{at.x, at.y, at.x, at.y}.grown(6), HitArea::Part::Corner);
    if (!pen.hand || pen.paper)
      continue;
    pen.drawing.fillRect(at.x - 3, at.y - 3, at.x + 3, at.y + 3, Ink::Paper);
    pen.drawing.rect(at.x - 3, at.y - 3, at.x + 3, at.y + 3, Ink::Hand, 1.4);
  }
}

} // namespace

Drawing drawPlanWall(const Job& job, const CheckedWall& wall, const PlanStyle& style) {
  Drawing drawing;
  if (wall.layout.length < tolerance::same)
    return drawing;
  const WallLine& line = *wall.layout.wall;
  WallPen pen{drawing, wall.layout, style, PlanFrame(wall.layout.place, style.view), {}, false, false};
  pen.paper = style.medium == Medium::Paper;
  pen.hand = line.id == style.shown || selected(style, line.id);
  for (const Point2 p : planConcrete(line, wall.layout.place))
    pen.outline.push_back(style.view.page(p));
  if (pen.paper)
    drawFooting(pen, job);
  drawFaces(pen);
  drawOpenings(pen);
  if (pen.hand && !pen.paper)
    drawing.loop(pen.outline, Ink::Hand, 2.2);
  if (pen.paper)
    drawHardware(pen);
  std::optional<Bounds> name;
  const auto places = style.places ? style.places : planPlaces(job, style);
  if (const auto found = places->walls.find(line.id); found != places->walls.end()) {
    drawSigns(pen, wall, found->second);
    drawRunning(pen, found->second);
    if (found->second.mark)
      name = drawPlanText(drawing, *found->second.mark, pen.hand && !pen.paper ? Ink::Hand : Ink::Text);
    if (found->second.length)
      drawPlanText(drawing, *found->second.length, Ink::Text2);
  }
  addHits(pen);
  if (name)
    drawing.hit({line.id, {}}, *name, HitArea::Part::Name);
  return drawing;
}

} // namespace sillwright
