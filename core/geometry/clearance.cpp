#include "core/geometry/clearance.h"

#include <cmath>
#include <limits>

#include "core/geometry/oriented_box.h"

namespace sillwright {
namespace {

using Eigen::Vector3d;

constexpr double infinity = std::numeric_limits<double>::infinity();

Vector3d vector(const Point3& p) {
  return {p.s, p.d, p.z};
}

Point3 point(const Vector3d& v) {
  return {v.x(), v.y(), v.z()};
}

Segment3 axis(const Capsule& bar) {
  return {vector(bar.a), vector(bar.b)};
}

Clearance clearanceOf(const NearestPair& pair, double radii) {
  return {pair.distance() - radii, point(pair.onFirst), point(pair.onSecond)};
}

// Sheets without thickness that cross come out a rounding apart, so whether they overlap is asked for below this.
constexpr double roundingApart = 1e-9;

Clearance clearanceOf(const OrientedBox& first, const OrientedBox& second) {
  Clearance clear = clearanceOf(nearest(first, second), 0);
  if (clear.distance > roundingApart)
    return clear;
  if (const double depth = overlapDepth(first, second); depth > 0)
    clear.distance = -depth;
  return clear;
}

void keepNearer(Clearance& best, const Clearance& other) {
  if (other.distance < best.distance)
    best = other;
}

// Place of the end of the stretch of a piece nearer to the axis than target, going from `near`, the nearest place, to
// `far`, an end of the piece. Places are along the piece from its centre. The distance from the cross-section at a
// place to the axis is convex in the place, so there is one end on each side.
double endOfNearStretch(const Segment3& axis, const OrientedBox& piece, double near, double far, double target) {
  OrientedBox section = piece;
  section.half[1] = 0;
  const auto isNear = [&](double place) {
    section.centre = piece.centre + piece.axes.col(1) * place;
    return nearest(axis, section).distance() < target;
  };
  if (isNear(far))
    return far;
  while (std::abs(far - near) > 1e-9) {
    const double middle = (near + far) / 2;
    if (middle == near || middle == far)
      break;
    (isNear(middle) ? near : far) = middle;
  }
  return near;
}

std::optional<Interval> heightsNearer(const Segment3& axis, const OrientedBox& piece, double target) {
  const NearestPair pair = nearest(axis, piece);
  if (!(pair.distance() < target))
    return std::nullopt;
  const Vector3d along = piece.axes.col(1);
  const double half = piece.half[1];
  const double nearPlace = std::clamp(along.dot(pair.onSecond - piece.centre), -half, half);
  const auto height = [&](double end) {
    return piece.centre.z() + along.z() * endOfNearStretch(axis, piece, nearPlace, end, target);
  };
  const double from = height(-half);
  const double to = height(half);
  return Interval{std::min(from, to), std::max(from, to)};
}

} // namespace

double distance(const Point3& a, const Point3& b) {
  return (vector(b) - vector(a)).norm();
}

Clearance clearance(const Capsule& first, const Capsule& second) {
  return clearanceOf(nearest(axis(first), axis(second)), first.radius + second.radius);
}

Clearance clearance(const Capsule& bar, const Ribbon& plate) {
  Clearance best{infinity, bar.a, {plate.station, 0, 0}};
  for (const OrientedBox& piece : pieces(plate))
    keepNearer(best, clearanceOf(nearest(axis(bar), piece), bar.radius));
  return best;
}

Clearance clearance(const Capsule& bar, const Box3& box) {
  return clearanceOf(nearest(axis(bar), orientedBox(box)), bar.radius);
}

Clearance clearance(const Ribbon& first, const Ribbon& second) {
  Clearance best{infinity, {first.station, 0, 0}, {second.station, 0, 0}};
  const std::vector<OrientedBox> others = pieces(second);
  for (const OrientedBox& piece : pieces(first))
    for (const OrientedBox& other : others)
      keepNearer(best, clearanceOf(piece, other));
  return best;
}

std::optional<Interval> heightsNearer(const Capsule& bar, const Ribbon& plate, double within) {
  std::optional<Interval> heights;
  for (const OrientedBox& piece : pieces(plate))
    if (const auto found = heightsNearer(axis(bar), piece, within + bar.radius))
      heights = heights ? hull(*heights, *found) : *found;
  return heights;
}

Box3 bounds(const Capsule& bar) {
  const auto side = [&](double a, double b) { return grown({std::min(a, b), std::max(a, b)}, bar.radius); };
  return {side(bar.a.s, bar.b.s), side(bar.a.d, bar.b.d), side(bar.a.z, bar.b.z)};
}

Box3 bounds(const Ribbon& plate) {
  constexpr Interval nothing{infinity, -infinity};
  Box3 all{nothing, nothing, nothing};
  for (const OrientedBox& piece : pieces(plate)) {
    const Box3 box = bounds(piece);
    all = {hull(all.s, box.s), hull(all.d, box.d), hull(all.z, box.z)};
  }
  return all;
}

} // namespace sillwright
