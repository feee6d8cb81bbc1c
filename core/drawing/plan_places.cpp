#include "core/drawing/plan_placer.h"

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

constexpr double overallOut = 112;

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
