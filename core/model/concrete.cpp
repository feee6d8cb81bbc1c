#include "core/model/concrete.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/base/tolerance.h"

namespace sillwright {

namespace {

constexpr double leastSine = 0.1;

double sineOf(const Neighbour& neighbour) {
  return std::sin(neighbour.turn * std::numbers::pi / 180.0);
}
double cosineOf(const Neighbour& neighbour) {
  const double cosine = std::cos(neighbour.turn * std::numbers::pi / 180.0);
  return std::abs(cosine) < tolerance::same ? 0 : cosine; // square corners exactly
}

double signOf(Side end) {
  return end == Side::Right ? 1 : -1;
}

void addNeighbour(const std::optional<Neighbour>& neighbour, Side end, double corner,
                  std::vector<CornerConcrete>& corners) {
  if (!neighbour || std::abs(sineOf(*neighbour)) < leastSine)
    return;
  CornerConcrete each{end,
                      neighbour->insideCorner,
                      false,
                      corner,
                      sineOf(*neighbour),
                      cosineOf(*neighbour),
                      {0, neighbour->thickness},
                      neighbour->stem};
  corners.push_back(each);
  if (neighbour->footingAcross.empty())
    return;
  each.footing = true;
  each.depths = neighbour->footingAcross;
  each.z = {neighbour->bottom, neighbour->stem.from};
  corners.push_back(each);
}

// Parts of an interval that others leave, bottom to top.
std::vector<Interval> without(Interval whole, std::vector<Interval> others) {
  std::sort(others.begin(), others.end(), [](Interval a, Interval b) { return a.from < b.from; });
  std::vector<Interval> left;
  double from = whole.from;
  for (const Interval other : others) {
    if (other.from > from + tolerance::same)
      left.push_back({from, std::min(other.from, whole.to)});
    from = std::max(from, other.to);
  }
  if (whole.to > from + tolerance::same)
    left.push_back({from, whole.to});
  return left;
}

} // namespace

double stationToward(const ConcreteFace& face, const Box3& box) {
  const double a = face.station + face.slant * box.d.from, b = face.station + face.slant * box.d.to;
  return face.concrete == Side::Right ? std::max(a, b) : std::min(a, b);
}

double distanceTo(const ConcreteFace& face, const Box3& box, double round) {
  const Interval s = grown(box.s, -round);
  const double at = stationToward(face, {s, grown(box.d, -round), box.z});
  const double along = face.concrete == Side::Right ? s.from - at : at - s.to;
  return along / std::hypot(1, face.slant) - round;
}

double depthIn(const CornerConcrete& neighbour, double s, double d) {
  return neighbour.cosine * d - neighbour.sine * signOf(neighbour.end) * (s - neighbour.corner);
}

double stationAt(const CornerConcrete& neighbour, double depth, double d) {
  return neighbour.corner + signOf(neighbour.end) * (neighbour.cosine * d - depth) / neighbour.sine;
}

bool holds(const CornerConcrete& neighbour, const Box3& box) {
  for (const double s : {box.s.from, box.s.to})
    for (const double d : {box.d.from, box.d.to})
      if (!grown(neighbour.depths, tolerance::same).contains(depthIn(neighbour, s, d)))
        return false;
  return true;
}

bool goesStraightOn(const Neighbour& neighbour) {
  return std::abs(sineOf(neighbour)) < leastSine && cosineOf(neighbour) > 0;
}

std::vector<CornerConcrete> cornerConcrete(const WallPlace& place) {
  std::vector<CornerConcrete> corners;
  addNeighbour(place.atStart, Side::Left, 0, corners);
  addNeighbour(place.atEnd, Side::Right, place.length, corners);
  return corners;
}

std::vector<ConcreteFace> endFaces(const WallPlace& place, const std::vector<CornerConcrete>& corners, Side end,
                                   Interval z, double projection) {
  const auto& neighbour = end == Side::Left ? place.atStart : place.atEnd;
  const double corner = end == Side::Left ? 0 : place.length;
  if (neighbour && goesStraightOn(*neighbour))
    return {};
  ConcreteFace face;
  face.kind = neighbour ? ConcreteFace::Kind::Corner : ConcreteFace::Kind::End;
  face.concrete = end == Side::Left ? Side::Right : Side::Left;
  face.station = corner + signOf(end) * projection;
  face.z = z;
  std::vector<ConcreteFace> faces;
  std::vector<Interval> taken;
  for (const CornerConcrete& each : corners) {
    if (each.end != end)
      continue;
    face.slant = stationAt(each, 0, 1) - stationAt(each, 0, 0);
    if (projection > 0 && each.insideCorner && !each.footing) // a footing that meets none goes on past the stem
      face.station = stationAt(each, each.depths.to, 0) + signOf(end) * projection;
    const bool fits = each.insideCorner || each.footing; // the stem of a neighbour at an outside corner ends with ours
    const Interval shared = overlap(z, each.z);
    if (!fits || (projection > 0 && !each.footing) || shared.length() < tolerance::same)
      continue;
    taken.push_back(shared);
    faces.push_back(face);
    faces.back().z = shared;
    faces.back().station = stationAt(each, each.insideCorner ? each.depths.to : std::min(each.depths.from, 0.0), 0);
  }
  for (ConcreteFace& each : faces)
    each.slant = face.slant;
  for (const Interval rest : without(z, taken)) {
    face.z = rest;
    faces.push_back(face);
  }
  return faces;
}

} // namespace sillwright
