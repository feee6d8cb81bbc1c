#include "core/model/plan_concrete.h"

#include <cmath>
#include <numbers>

#include "core/base/tolerance.h"
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

// Where the two mitre lines of a short wall meet: they start at the outside face and end past each other inside.
Point2 mitresMeet(double length, double innerStart, double innerEnd, double depth) {
  const double part = length / (innerStart + (length - innerEnd));
  return {innerStart * part, depth * part};
}

} // namespace

Id wallAfter(const Job& job, const WallLine& wall) {
  for (const Id id : job.walls.atCorner(wall.endCorner))
    if (id != wall.id && job.walls.find(id)->startCorner == wall.endCorner)
      return id;
  return {};
}

std::vector<Id> ringOf(const Job& job, Id wall) {
  std::vector<Id> ring;
  for (const WallLine* at = job.walls.find(wall); at && ring.size() < job.walls.size();) {
    ring.push_back(at->id);
    const Id after = wallAfter(job, *at);
    if (after == wall)
      return ring;
    at = job.walls.find(after);
  }
  return {};
}

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

} // namespace sillwright
