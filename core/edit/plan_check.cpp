#include "core/edit/plan_check.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <unordered_set>

#include "core/base/tolerance.h"
#include "core/model/lookup.h"
#include "core/model/plan_concrete.h"

namespace sillwright {

namespace {

constexpr double slight = tolerance::tapeMark / 2; // concrete that reaches in by less only touches

double turn(Point2 a, Point2 b, Point2 c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

// Each has an end on either side of the other.
bool cross(const Segment2& a, const Segment2& b) {
  const double eps = 1e-9;
  const auto parts = [&](const Segment2& line, const Segment2& ends) {
    const double one = turn(line.a, line.b, ends.a), two = turn(line.a, line.b, ends.b);
    return (one > eps && two < -eps) || (one < -eps && two > eps);
  };
  return parts(a, b) && parts(b, a);
}

Interval projected(const Polygon2& polygon, Point2 onto) {
  Interval span{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
  for (const Point2& p : polygon) {
    const double at = p.x * onto.x + p.y * onto.y;
    span = {std::min(span.from, at), std::max(span.to, at)};
  }
  return span;
}

// The least overlap of the two along the normals of the sides of `sides`.
double overlapAcross(const Polygon2& sides, const Polygon2& a, const Polygon2& b) {
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < sides.size(); ++i) {
    const Point2 from = sides[i], to = sides[(i + 1) % sides.size()];
    const double length = std::hypot(to.x - from.x, to.y - from.y);
    if (length < tolerance::same)
      continue;
    const Point2 normal{(to.y - from.y) / length, (from.x - to.x) / length};
    const Interval one = projected(a, normal), two = projected(b, normal);
    least = std::min({least, one.to - two.from, two.to - one.from});
  }
  return least;
}

bool boxesMeet(const StandingWall& a, const StandingWall& b) {
  return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}

// Both leave the corner the same way: the end of the shorter lies on the longer.
bool foldsBack(const StandingWall& a, const StandingWall& b) {
  const bool startA = a.startCorner == b.startCorner || a.startCorner == b.endCorner;
  const bool startB = b.startCorner == a.startCorner || b.startCorner == a.endCorner;
  const Point2 farA = startA ? a.face.b : a.face.a, farB = startB ? b.face.b : b.face.a;
  return distance(farA, b.face) < slight || distance(farB, a.face) < slight;
}

bool shareCorner(const StandingWall& a, const StandingWall& b) {
  return a.startCorner == b.startCorner || a.startCorner == b.endCorner || a.endCorner == b.startCorner ||
         a.endCorner == b.endCorner;
}

std::optional<PlanClash> clashBetween(const StandingWall& a, const StandingWall& b) {
  if (a.id == b.id || a.concrete.empty() || b.concrete.empty())
    return std::nullopt;
  if (shareCorner(a, b)) {
    const bool folds = foldsBack(a, b);
    return folds ? std::optional(PlanClash{PlanClash::Kind::FoldsBack, a.id, b.id}) : std::nullopt;
  }
  if (!boxesMeet(a, b) || depthOfOverlap(a.concrete, b.concrete) <= slight)
    return std::nullopt;
  return PlanClash{cross(a.face, b.face) ? PlanClash::Kind::Crosses : PlanClash::Kind::LiesOver, a.id, b.id};
}

std::optional<PlanClash> insideOut(const Job& job, std::span<const Id> walls) {
  std::unordered_set<Id> seen;
  for (const Id id : walls) {
    if (seen.contains(id))
      continue;
    Polygon2 corners;
    for (const Id each : ringOf(job, id)) {
      seen.insert(each);
      if (const Corner* corner = findCorner(job, job.walls.find(each)->startCorner))
        corners.push_back(corner->at);
    }
    if (corners.size() >= 3 && signedArea(corners) <= 0)
      return PlanClash{PlanClash::Kind::InsideOut, id, {}};
  }
  return std::nullopt;
}

} // namespace

StandingWall standing(const Job& job, const WallLine& wall) {
  const WallPlace place = placeOf(job, wall);
  StandingWall made{wall.id, wall.startCorner, wall.endCorner, wall.mark, {place.from, place.to}, {}, {}, {}};
  made.concrete = planConcrete(wall, place);
  if (const auto box = bounds(made.concrete)) {
    made.low = box->first;
    made.high = box->second;
  }
  return made;
}

std::vector<StandingWall> standingBut(const Job& job, std::span<const Id> walls) {
  const std::unordered_set<Id> left(walls.begin(), walls.end());
  std::vector<StandingWall> all;
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    if (!left.contains(job.walls[i].id))
      all.push_back(standing(job, job.walls[i]));
  return all;
}

double depthOfOverlap(const Polygon2& a, const Polygon2& b) {
  return std::min(overlapAcross(a, a, b), overlapAcross(b, a, b));
}

std::string words(const Job& job, const PlanClash& clash) {
  const std::string wall = "wall " + markOf(job, {clash.wall, {}}), other = "wall " + markOf(job, {clash.other, {}});
  switch (clash.kind) {
  case PlanClash::Kind::Crosses:
    return wall + " would cross " + other;
  case PlanClash::Kind::LiesOver:
    return wall + " would lie over " + other;
  case PlanClash::Kind::FoldsBack:
    return wall + " would fold back onto " + other;
  case PlanClash::Kind::InsideOut:
    return "the outline of " + wall + " would be turned inside out";
  }
  return {};
}

std::optional<PlanClash> clashOf(std::span<const StandingWall> walls, std::span<const StandingWall> others) {
  for (std::size_t i = 0; i < walls.size(); ++i) {
    for (std::size_t k = i + 1; k < walls.size(); ++k)
      if (const auto clash = clashBetween(walls[i], walls[k]))
        return clash;
    for (const StandingWall& other : others)
      if (const auto clash = clashBetween(walls[i], other))
        return clash;
  }
  return std::nullopt;
}

std::vector<Id> wallsAround(const Job& job, std::span<const Id> corners) {
  std::vector<Id> found;
  const auto add = [&](Id corner) {
    for (const Id wall : job.walls.atCorner(corner))
      if (std::find(found.begin(), found.end(), wall) == found.end())
        found.push_back(wall);
  };
  for (const Id corner : corners)
    add(corner);
  for (const Id id : std::vector<Id>(found)) {
    const WallLine& wall = *job.walls.find(id);
    add(wall.startCorner);
    add(wall.endCorner);
  }
  return found;
}

std::optional<PlanClash> clashIn(const Job& job, std::span<const Id> walls, std::span<const StandingWall> others) {
  std::vector<StandingWall> stand;
  for (const Id id : walls)
    if (const WallLine* wall = job.walls.find(id))
      stand.push_back(standing(job, *wall));
  if (const auto clash = clashOf(stand, others))
    return clash;
  return insideOut(job, walls);
}

std::optional<PlanClash> clashIn(const Job& job, std::span<const Id> walls) {
  return clashIn(job, walls, standingBut(job, walls));
}

} // namespace sillwright
