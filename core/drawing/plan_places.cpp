#include "core/drawing/plan_places.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/drawing/text_metrics.h"
#include "core/geometry/wall_frame.h"
#include "core/model/lookup.h"

namespace sillwright {

namespace {

constexpr double chainOut = 30;   // running dimension line from the face, pt
constexpr double chainReach = 64; // of its longest value beyond the line
constexpr double overallOut = 112;
constexpr double apart = 1; // between texts

double readable(double degrees) {
  while (degrees > 90 + 1e-6)
    degrees -= 180;
  while (degrees <= -90 + 1e-6)
    degrees += 180;
  return degrees;
}

struct Spot {
  double station = 0; // wanted
  Interval stations;  // allowed
  double clear = 4;   // between the face of the concrete and the box
  int rows = 1;
  double rowStep = 12;
  double step = 6;    // along the wall
  int steps = 8;      // to either side
};

struct Placer {
  const Job& job;
  const PlanStyle& style;
  FreePlaces room;
  std::vector<Polygon2> chains; // strips of running dimensions
  PlanPlaces places;

  std::optional<Point2> beside(const PlanFrame& frame, double face, bool inside, Bounds box, const Spot& spot,
                               bool overConcrete) const;
  bool placeText(PlanText& text, const PlanFrame& frame, double thickness, const Spot& spot, bool never);
  void takeText(const PlanText& text) { room.take(boxOf(text).grown(apart)); }
};

// The first free middle for a box given about (0, 0): row by row away from the face, along the wall to both sides.
std::optional<Point2> Placer::beside(const PlanFrame& frame, double face, bool inside, Bounds box, const Spot& spot,
                                     bool overConcrete) const {
  const Point2 normal{std::abs(frame.inward.x), std::abs(frame.inward.y)};
  const double reach = normal.x * (box.x1 - box.x0) / 2 + normal.y * (box.y1 - box.y0) / 2;
  for (int row = 0; row < spot.rows; ++row)
    for (int i = 0; i <= 2 * spot.steps; ++i) {
      const double along = (i % 2 ? 1 : -1) * ((i + 1) / 2) * spot.step;
      const double station = spot.station + along / frame.scale;
      if (i > 0 && !spot.stations.contains(station))
        continue;
      const double out = (spot.clear + reach + row * spot.rowStep) / frame.scale;
      const Point2 middle = frame.page(station, inside ? face + out : face - out);
      const Bounds at = box.moved(middle.x, middle.y);
      if (overConcrete ? !room.taken(at) : room.free(at))
        return middle;
    }
  return std::nullopt;
}

// Outside, then inside; with `never` dropped, at last over concrete, and then far out.
bool Placer::placeText(PlanText& text, const PlanFrame& frame, double thickness, const Spot& spot, bool never) {
  text.middle = {};
  const Bounds box = boxOf(text).grown(apart);
  auto middle = beside(frame, 0, false, box, spot, false);
  if (!middle)
    middle = beside(frame, thickness, true, box, spot, false);
  if (!middle && never) {
    Spot wide = spot;
    wide.rows = 40;
    middle = beside(frame, 0, false, box, wide, false);
    if (!middle)
      middle = beside(frame, 0, false, box, wide, true);
  }
  if (!middle)
    return false;
  text.middle = *middle;
  takeText(text);
  return true;
}

// ---- whole plan -------------------------------------------------------------------------------------------------

void addText(Placer& placer, std::vector<PlanText>& texts, PlanText text) {
  if (placer.style.medium == Medium::Screen && !placer.room.free(boxOf(text)))
    return;
  for (int i = 0; i < 60 && placer.room.taken(boxOf(text)); ++i)
    text.middle.y += 3;
  placer.takeText(text);
  texts.push_back(std::move(text));
}

void placeDiagonals(Placer& placer, const std::vector<Point2>& corners) {
  PlanDiagonals diagonals;
  std::copy(corners.begin(), corners.end(), diagonals.corner);
  const Point2* c = diagonals.corner;
  const double first = distance(c[0], c[2]);
  const double second = distance(c[1], c[3]);
  const auto at = [&](std::size_t a, std::size_t b, double part, double down) {
    const Point2 p = placer.style.view.page({c[a].x + (c[b].x - c[a].x) * part, c[a].y + (c[b].y - c[a].y) * part});
    return Point2{p.x, p.y + down};
  };
  const auto words = [&](double length) { return printLength(length, placer.job.units); };
  if (std::abs(first - second) <= tolerance::tapeMark + tolerance::same) {
    addText(placer, diagonals.texts, {words(first), at(0, 2, 0.5, -6), 0, 12, Weight::Regular});
    addText(placer, diagonals.texts, {"both diagonals", at(0, 2, 0.5, 8), 0, 9.5, Weight::Regular});
  } else {
    addText(placer, diagonals.texts, {words(first), at(0, 2, 0.28, 0), 0, 11, Weight::Regular});
    addText(placer, diagonals.texts, {words(second), at(1, 3, 0.28, 0), 0, 11, Weight::Regular});
  }
  placer.places.diagonals.push_back(std::move(diagonals));
}

// The width below and the height to the left of everything, clear of the running dimensions.
void placeOverall(Placer& placer, Point2 low, Point2 high) {
  const PlanView& view = placer.style.view;
  const Point2 a = view.page(low);
  const Point2 b = view.page(high);
  const auto words = [&](double length) { return printLength(length, placer.job.units); };
  PlanOverall width{{a.x, a.y + overallOut}, {b.x, a.y + overallOut}, {}};
  width.text = {words(high.x - low.x), {(a.x + b.x) / 2, a.y + overallOut - 8}, 0, 11.5, Weight::Bold};
  PlanOverall height{{a.x - overallOut, a.y}, {a.x - overallOut, b.y}, {}};
  height.text = {words(high.y - low.y), {a.x - overallOut - 8, (a.y + b.y) / 2}, 90, 11.5, Weight::Bold};
  for (PlanOverall* each : {&width, &height}) {
    placer.takeText(each->text);
    placer.places.overall.push_back(*each);
  }
}

void placeHook(Placer& placer, const WallLine& wall) {
  const PlanFrame frame(placeOf(placer.job, wall), placer.style.view);
  PlanText text{"hook", {}, 0, 9.5, Weight::Regular};
  const Bounds box = boxOf(text).grown(apart);
  for (const double out : {16.0, 26.0, 36.0, 50.0})
    for (const double back : {12.0, 22.0, 34.0, 0.0, -14.0}) {
      const Point2 middle = frame.page(-back / frame.scale, -out / frame.scale);
      if (!placer.room.free(box.moved(middle.x, middle.y)))
        continue;
      text.middle = middle;
      placer.takeText(text);
      placer.places.hook = text;
      return;
    }
}

// ---- one wall ---------------------------------------------------------------------------------------------------

// The free part of the inside face: between the mitres.
Interval insideStations(const WallLine& wall, const WallPlace& place) {
  const double t = wall.thickness;
  return {mitreStation(place, true, t, place.atStart ? place.atStart->thickness : 0),
          mitreStation(place, false, t, place.atEnd ? place.atEnd->thickness : 0)};
}

std::vector<double> signStations(const WallLine& wall, double length) {
  std::vector<double> stations;
  for (const Panel& panel : wall.panels) {
    stations.push_back(panel.from);
    stations.push_back(panel.to);
  }
  if (stations.empty())
    stations.push_back(length / 2);
  std::sort(stations.begin(), stations.end());
  return stations;
}

void placeSigns(Placer& placer, const WallLine& wall, const WallPlace& place, const PlanFrame& frame) {
  const Bounds box = Bounds{-signWidth / 2, -signHeight / 2, signWidth / 2, signHeight / 2}.grown(0.5);
  const Interval stations = grown(insideStations(wall, place), -(signWidth / 2 + 2) / frame.scale);
  std::vector<PlanSign>& signs = placer.places.walls[wall.id].signs;
  for (const double station : signStations(wall, place.length)) {
    Spot spot;
    spot.station = stations.empty() ? stations.middle() : std::clamp(station, stations.from, stations.to);
    spot.stations = stations;
    spot.rows = 2;
    spot.rowStep = signHeight + 2;
    spot.step = 3;
    auto middle = placer.beside(frame, wall.thickness, true, box, spot, false);
    if (!middle && signs.empty())
      middle = placer.beside(frame, 0, false, box, spot, false);
    if (!middle && signs.empty()) {
      spot.rows = 40;
      middle = placer.beside(frame, wall.thickness, true, box, spot, true);
    }
    if (!middle && signs.empty())
      continue;
    if (!middle) {
      signs.back().stations.push_back(station);
      continue;
    }
    placer.room.take(box.moved(middle->x, middle->y));
    signs.push_back({*middle, {station}});
  }
}

void placeMark(Placer& placer, const WallLine& wall, const WallPlace& place, const PlanFrame& frame) {
  const bool paper = placer.style.medium == Medium::Paper;
  PlanText mark{wall.mark, {}, 0, paper ? 12.0 : 12.5, Weight::Bold};
  Spot spot;
  spot.station = place.length / 2;
  spot.stations = {0, place.length};
  spot.rows = 4;
  // On a sheet every wall has its mark, if far out; on the screen a mark that strayed would name another wall.
  if (placer.placeText(mark, frame, wall.thickness, spot, paper))
    placer.places.walls[wall.id].mark = mark;
}

void placeLength(Placer& placer, const WallLine& wall, const WallPlace& place, const PlanFrame& frame) {
  PlanText text{printLength(place.length, placer.job.units), {}, frame.turn, 10, Weight::Regular};
  const double width = textWidth(text.words, text.size);
  if (place.length * frame.scale < width + 4)
    return;
  Spot spot;
  spot.station = place.length / 2;
  spot.stations = grown({0, place.length}, -width / 2 / frame.scale);
  spot.steps = 14;
  spot.rows = 2;
  if (placer.placeText(text, frame, wall.thickness, spot, false))
    placer.places.walls[wall.id].length = text;
}

// ---- running dimensions -----------------------------------------------------------------------------------------

std::vector<double> runningStations(const WallLine& wall, double length) {
  std::vector<double> stations{0, length};
  for (const Opening& opening : wall.openings)
    stations.insert(stations.end(), {opening.from, opening.to});
  for (const Panel& panel : wall.panels)
    stations.insert(stations.end(), {panel.from, panel.to});
  std::sort(stations.begin(), stations.end());
  const auto same = [](double a, double b) { return b - a < tolerance::tapeMark / 2; };
  stations.erase(std::unique(stations.begin(), stations.end(), same), stations.end());
  return stations;
}

Polygon2 chainStrip(const PlanFrame& frame, double face, bool inside) {
  const double side = inside ? 1 : -1;
  const double near = face + side * 2 / frame.scale;
  const double far = face + side * (chainOut + chainReach) / frame.scale;
  const double end = 6 / frame.scale;
  return {frame.page(-end, near), frame.page(frame.length + end, near), frame.page(frame.length + end, far),
          frame.page(-end, far)};
}

bool stripFree(const Placer& placer, const Polygon2& strip, Id own) {
  for (const Polygon2& other : placer.chains)
    if (overlaps(strip, other))
      return false;
  for (std::size_t i = 0; i < placer.job.walls.size(); ++i) {
    const WallLine& wall = placer.job.walls[i];
    if (wall.id == own)
      continue;
    Polygon2 concrete = planConcrete(wall, placeOf(placer.job, wall));
    for (Point2& p : concrete)
      p = placer.style.view.page(p);
    if (overlaps(strip, concrete))
      return false;
  }
  return true;
}

void placeValue(Placer& placer, const PlanFrame& frame, double chain, bool inside, double station,
                std::vector<PlanMark>& running) {
  PlanMark mark{station, {printLength(station, placer.job.units), {}, readable(frame.turn + 90), 9.5, Weight::Regular}};
  Spot spot;
  spot.station = station;
  spot.stations = {station - 60 / frame.scale, station + 60 / frame.scale};
  spot.clear = 6;
  spot.rows = 12;
  spot.step = 2;
  spot.steps = 12;
  const Bounds box = boxOf(mark.value).grown(apart);
  auto middle = placer.beside(frame, chain, inside, box, spot, true);
  if (!middle) {
    spot.rows = 60;
    middle = placer.beside(frame, chain, inside, box, spot, true);
  }
  mark.value.middle = middle.value_or(frame.page(station, chain));
  placer.takeText(mark.value);
  running.push_back(std::move(mark));
}

void placeRunning(Placer& placer, const WallLine& wall, const WallPlace& place, const PlanFrame& frame) {
  bool inside = false;
  Polygon2 strip = chainStrip(frame, 0, false);
  if (!stripFree(placer, strip, wall.id)) {
    Polygon2 other = chainStrip(frame, wall.thickness, true);
    inside = stripFree(placer, other, wall.id);
    if (inside)
      strip = other;
  }
  placer.chains.push_back(strip);
  WallPlaces& places = placer.places.walls[wall.id];
  places.chain = inside ? wall.thickness + chainOut / frame.scale : -chainOut / frame.scale;
  for (const double station : runningStations(wall, place.length))
    placeValue(placer, frame, places.chain, inside, station, places.running);
}

template <class Place> void forEachWall(const Job& job, const PlanView& view, Place&& place) {
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const WallLine& wall = job.walls[i];
    const WallPlace at = placeOf(job, wall);
    if (at.length >= tolerance::same)
      place(wall, at, PlanFrame(at, view));
  }
}

std::vector<Point2> cornersOf(const Job& job) {
  std::vector<Point2> corners;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const WallPlace place = placeOf(job, job.walls[i]);
    corners.insert(corners.end(), {place.from, place.to});
  }
  return corners;
}

void avoidConcrete(Placer& placer) {
  forEachWall(placer.job, placer.style.view, [&](const WallLine& wall, const WallPlace& place, const PlanFrame&) {
    Polygon2 outline = planConcrete(wall, place);
    for (Point2& p : outline)
      p = placer.style.view.page(p);
    placer.room.avoid(outline);
  });
}

} // namespace

PlanFrame::PlanFrame(const WallPlace& place, const PlanView& planView)
    : from(place.from), along{(place.to.x - place.from.x) / place.length, (place.to.y - place.from.y) / place.length},
      inward{-along.y, along.x}, length(place.length), scale(planView.scale), view(planView),
      turn(readable(std::atan2(along.y, along.x) * 180 / std::numbers::pi)) {}

Point2 PlanFrame::page(double s, double d) const {
  return view.page({from.x + along.x * s + inward.x * d, from.y + along.y * s + inward.y * d});
}

Bounds boxOf(const PlanText& text) {
  const double radians = text.turn * std::numbers::pi / 180;
  const double c = std::abs(std::cos(radians));
  const double s = std::abs(std::sin(radians));
  const double width = textWidth(text.words, text.size);
  const double height = text.size;
  const double x = (c * width + s * height) / 2;
  const double y = (s * width + c * height) / 2;
  return {text.middle.x - x, text.middle.y - y, text.middle.x + x, text.middle.y + y};
}

Bounds drawPlanText(Drawing& drawing, const PlanText& text, Ink ink, Ink halo) {
  const double radians = text.turn * std::numbers::pi / 180;
  const double down = text.size * capHeight / 2;
  TextStyle style;
  style.size = text.size;
  style.weight = text.weight;
  style.anchor = Anchor::Middle;
  style.turn = text.turn;
  style.halo = halo;
  const Point2 base{text.middle.x + std::sin(radians) * down, text.middle.y + std::cos(radians) * down};
  const Bounds box = drawing.text(base, text.words, ink, style);
  drawing.take(text.words, box);
  return box;
}

std::shared_ptr<const PlanPlaces> planPlaces(const Job& job, const PlanStyle& style) {
  Placer placer{job, style, {}, {}, {}};
  const auto box = planBounds(job);
  if (!box)
    return std::make_shared<const PlanPlaces>();
  const bool paper = style.medium == Medium::Paper;
  avoidConcrete(placer);
  const Point2 corner = style.view.page(box->second);
  placer.places.north = {corner.x + 26, corner.y - (paper ? 44 : 14)};
  placer.room.take({corner.x + 17, placer.places.north.y - 15, corner.x + 35, placer.places.north.y + 24});
  for (const auto& outline : outlinesOf(job))
    if (outline.size() == 4)
      placeDiagonals(placer, outline);
  forEachWall(job, style.view, [&](const WallLine& wall, const WallPlace& place, const PlanFrame& frame) {
    placeMark(placer, wall, place, frame);
    placeSigns(placer, wall, place, frame);
  });
  const WallLine* hooked = job.walls.find(style.shown ? style.shown : job.walls[0].id);
  if (hooked && wallLength(job, *hooked) >= tolerance::same)
    placeHook(placer, *hooked);
  forEachWall(job, style.view, [&](const WallLine& wall, const WallPlace& place, const PlanFrame& frame) {
    if (paper)
      placeRunning(placer, wall, place, frame);
    else
      placeLength(placer, wall, place, frame);
  });
  if (paper) // of the concrete, not of its footings
    if (const auto concrete = bounds(cornersOf(job)))
      placeOverall(placer, concrete->first, concrete->second);
  return std::make_shared<const PlanPlaces>(std::move(placer.places));
}

} // namespace sillwright
