#include "core/model/place.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/base/tolerance.h"
#include "core/model/lookup.h"

namespace sillwright {

namespace {

struct Direction {
  double x = 0, y = 0;
};

std::optional<Direction> directionOf(const Job& job, const WallLine& wall) {
  const Corner* from = findCorner(job, wall.startCorner);
  const Corner* to = findCorner(job, wall.endCorner);
  const double length = wallLength(job, wall);
  if (!from || !to || length < tolerance::same)
    return std::nullopt;
  return Direction{(to->at.x - from->at.x) / length, (to->at.y - from->at.y) / length};
}

double turnBetween(Direction a, Direction b) {
  return std::atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y) * 180.0 / std::numbers::pi;
}

// The pour line of a wall at one of its ends; of overlapping steps the lowest.
double pourAtEnd(const WallLine& wall, double length, bool atStart) {
  std::optional<double> height;
  for (const PourStep& step : wall.steps) {
    const bool there = atStart ? step.from < tolerance::same && step.to > tolerance::same
                               : step.to > length - tolerance::same && step.from < length - tolerance::same;
    if (there)
      height = std::min(height.value_or(step.height), step.height);
  }
  return height.value_or(0);
}

// The neighbour that carries the line of the foundation on: it starts where this wall ends, or ends where this starts.
std::optional<Neighbour> neighbourAt(const Job& job, const WallLine& wall, bool atStart) {
  const Id corner = atStart ? wall.startCorner : wall.endCorner;
  for (const Id id : job.walls.atCorner(corner)) {
    const WallLine* other = job.walls.find(id);
    if (id == wall.id || (atStart ? other->endCorner : other->startCorner) != corner)
      continue;
    const auto own = directionOf(job, wall);
    const auto theirs = directionOf(job, *other);
    if (!own || !theirs)
      return std::nullopt;
    Neighbour neighbour;
    neighbour.wall = id;
    neighbour.turn = atStart ? turnBetween(*theirs, *own) : turnBetween(*own, *theirs);
    neighbour.insideCorner = neighbour.turn < -1.0;
    neighbour.thickness = other->thickness;
    neighbour.sillInset = other->sillInset;
    neighbour.framing = atStart ? other->endFraming : other->startFraming;
    neighbour.stem = {-other->stemHeight, pourAtEnd(*other, wallLength(job, *other), !atStart)};
    neighbour.bottom = neighbour.stem.from - other->footing.depth;
    if (other->footing.width > 0)
      neighbour.footingAcross = {-other->footing.projection, other->footing.width - other->footing.projection};
    if (!other->sills.empty()) {
      const Sill& sill = atStart ? other->sills.back() : other->sills.front();
      neighbour.sillWidth = dressedWidth(sill.nominal);
      neighbour.sillStart = atStart ? wallLength(job, *other) - sill.to : sill.from;
    }
    return neighbour;
  }
  return std::nullopt;
}

// Told once: by the oldest wall at the diagonal's first corner.
std::vector<TapedDiagonal> diagonalsFrom(const Job& job, const WallLine& wall) {
  std::vector<TapedDiagonal> taped;
  for (const Diagonal& diagonal : *job.diagonals) {
    const Corner* from = findCorner(job, diagonal.from);
    const Corner* to = findCorner(job, diagonal.to);
    if ((diagonal.from != wall.startCorner && diagonal.from != wall.endCorner) || !from || !to)
      continue;
    const std::vector<Id> there = job.walls.atCorner(diagonal.from);
    if (*std::min_element(there.begin(), there.end()) == wall.id)
      taped.push_back({diagonal.from == wall.startCorner, diagonal.to,
                       std::hypot(to->at.x - from->at.x, to->at.y - from->at.y), diagonal.measured});
  }
  return taped;
}

} // namespace

WallPlace placeOf(const Job& job, const WallLine& wall) {
  WallPlace place;
  const Corner* from = findCorner(job, wall.startCorner);
  const Corner* to = findCorner(job, wall.endCorner);
  if (!from || !to)
    return place;
  place.from = from->at;
  place.to = to->at;
  place.length = wallLength(job, wall);
  place.atStart = neighbourAt(job, wall, true);
  place.atEnd = neighbourAt(job, wall, false);
  place.diagonals = diagonalsFrom(job, wall);
  return place;
}

} // namespace sillwright
