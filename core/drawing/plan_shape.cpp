#include "core/drawing/plan_shape.h"

#include <cmath>
#include <numbers>
#include <unordered_set>

#include "core/base/tolerance.h"
#include "core/drawing/plan.h"
#include "core/geometry/wall_frame.h"
#include "core/model/lookup.h"

namespace sillwright {

namespace {

constexpr double inLine = 1.0; // degrees

// The quarter turns of houses come out exact.
Point2 unitAt(double degrees) {
  if (std::abs(std::abs(degrees) - 90) < 1e-9)
    return {0, degrees > 0 ? 1.0 : -1.0};
  const double radians = degrees * std::numbers::pi / 180;
  return {std::cos(radians), std::sin(radians)};
}

// The wall that carries the line on from the end of this one, as Neighbour has it.
Id nextOf(const Job& job, const WallLine& wall) {
  for (const Id id : job.walls.atCorner(wall.endCorner))
    if (id != wall.id && job.walls.find(id)->startCorner == wall.endCorner)
      return id;
  return {};
}

// Where the two mitre lines of a short wall meet: they start at the outside face and end past each other inside.
Point2 mitresMeet(double length, double innerStart, double innerEnd, double depth) {
  const double part = length / (innerStart + (length - innerEnd));
  return {innerStart * part, depth * part};
}

} // namespace

double mitreStation(const WallPlace& place, bool atStart, double depth, double neighbourDepth) {
  const auto& neighbour = atStart ? place.atStart : place.atEnd;
  const double end = atStart ? 0 : place.length;
  if (!neighbour || std::abs(neighbour->turn) < inLine || std::abs(neighbour->turn) > 180 - inLine)
    return end;
  const Point2 turn = unitAt(neighbour->turn);
  const double along = (neighbourDepth - depth * turn.x) / turn.y;
  return atStart ? end + along : end - along;
}

Polygon2 planConcrete(const WallLine& wall, const WallPlace& place) {
  if (place.length < tolerance::same)
    return {};
  const auto frame = wallFrame(place.from, place.to);
  const double t = wall.thickness;
  const double start = mitreStation(place, true, t, place.atStart ? place.atStart->thickness : 0);
  const double end = mitreStation(place, false, t, place.atEnd ? place.atEnd->thickness : 0);
  if (end - start < tolerance::same) {
    const Point2 tip = mitresMeet(place.length, start, end, t);
    return {place.from, place.to, toPlan(frame, tip.x, tip.y)};
  }
  return {place.from, place.to, toPlan(frame, end, t), toPlan(frame, start, t)};
}

std::vector<std::vector<Point2>> outlinesOf(const Job& job) {
  std::vector<std::vector<Point2>> outlines;
  std::unordered_set<Id> seen;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    std::vector<Point2> corners;
    const Id first = job.walls[i].id;
    Id id = first;
    while (id && seen.insert(id).second) {
      const WallLine& wall = *job.walls.find(id);
      if (const Corner* corner = findCorner(job, wall.startCorner))
        corners.push_back(corner->at);
      id = nextOf(job, wall);
    }
    if (id == first && corners.size() >= 3)
      outlines.push_back(std::move(corners));
  }
  return outlines;
}

std::optional<std::pair<Point2, Point2>> planBounds(const Job& job) {
  std::vector<Point2> points;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const WallLine& wall = job.walls[i];
    const double by = wall.footing.width > 0 ? wall.footing.projection : 0;
    for (const Point2 p : planConcrete(wall, placeOf(job, wall))) {
      points.push_back({p.x - by, p.y - by});
      points.push_back({p.x + by, p.y + by});
    }
  }
  return bounds(points);
}

PlanView fitPlan(const Job& job, const Bounds& window) {
  // Marks, lengths, the north arrow; a small window takes them closer.
  const double margin = std::clamp(0.16 * std::min(window.x1 - window.x0, window.y1 - window.y0), 36.0, 46.0);
  PlanView view;
  const auto box = planBounds(job);
  if (!box)
    return {0.6, {(window.x0 + window.x1) / 2, (window.y0 + window.y1) / 2}};
  const double width = std::max(box->second.x - box->first.x, 1.0);
  const double height = std::max(box->second.y - box->first.y, 1.0);
  view.scale = std::max(1e-3, std::min((window.x1 - window.x0 - 2 * margin) / width,
                                       (window.y1 - window.y0 - 2 * margin) / height));
  view.origin = {(window.x0 + window.x1) / 2 - (box->first.x + box->second.x) / 2 * view.scale,
                 (window.y0 + window.y1) / 2 + (box->first.y + box->second.y) / 2 * view.scale};
  return view;
}

} // namespace sillwright
