// Running dimensions of the walls in plan, on paper.
#include <algorithm>
#include <cmath>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/drawing/plan_placer.h"

namespace sillwright {

namespace {

constexpr double chainOut = 30;   // running dimension line from the face, pt
constexpr double chainReach = 64; // of its longest value beyond the line

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

} // namespace

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

} // namespace sillwright
