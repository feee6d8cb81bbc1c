#include "core/geometry/near_path.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include <Eigen/Geometry>

namespace sillwright {
namespace {

using Eigen::Vector3d;

bool some(Interval shifts) {
  return shifts.from < shifts.to;
}

void add(Interval& all, Interval more) {
  if (some(more))
    all = hull(all, more);
}

// Shifts of the range at which a vector that grows evenly, off + rate t, is shorter than the reach. The squared length
// is a parabola, taken about its lowest place in the range: nothing cancels there.
Interval shiftsShorter(const Vector3d& off, const Vector3d& rate, Interval range, double reach) {
  const double curve = rate.squaredNorm();
  const double lowest = curve > 0 ? std::clamp(-off.dot(rate) / curve, range.from, range.to) : range.from;
  const Vector3d least = off + rate * lowest;
  const double value = least.squaredNorm() - reach * reach;
  if (!(value < 0))
    return noShifts;
  if (!(curve > 0))
    return range;
  const double slope = least.dot(rate);
  const double root = -(slope + std::copysign(std::sqrt(slope * slope - curve * value), slope));
  const double one = root / curve;
  const double other = value / root;
  return overlap({lowest + std::min(one, other), lowest + std::max(one, other)}, range);
}

// Between two neighbouring places of `at` no coordinate changes between inside and outside of the box.
Interval shiftsNearPart(const Path& point, const Vector3d& half, Interval part, double reach) {
  const Vector3d middle = point.start + point.along * part.middle();
  Vector3d off = Vector3d::Zero();
  Vector3d rate = Vector3d::Zero();
  for (int i = 0; i < 3; ++i)
    if (std::abs(middle[i]) > half[i]) {
      off[i] = point.start[i] - std::copysign(half[i], middle[i]);
      rate[i] = point.along[i];
    }
  return shiftsShorter(off, rate, part, reach);
}

// How two segments cross: their directions, and what is square to both. Made by projecting on the first, not by the
// cross product, so that for nearly parallel ones the plane still holds both up to rounding of their lengths.
struct Crossing {
  Vector3d along;  // unit, of the first
  Vector3d across; // unit, square to it in the plane of both
  Vector3d normal;
  double length = 0; // of the first
  double width = 0;  // of the second across the first
  double slant = 0;  // of the second along the first, for each inch across
};

std::optional<Crossing> crossing(const Vector3d& first, const Vector3d& second) {
  Crossing made;
  made.length = first.norm();
  if (!(made.length > 0))
    return std::nullopt;
  made.along = first / made.length;
  Vector3d across = second - made.along * made.along.dot(second);
  across -= made.along * made.along.dot(across);
  made.width = across.norm();
  if (!(made.width > 0))
    return std::nullopt;
  made.across = across / made.width;
  made.normal = made.along.cross(made.across);
  made.slant = made.along.dot(second) / made.width;
  return made;
}

// Shifts at which the lines are nearer than the reach and nearest between the ends of both segments. `apart` goes from
// the start of the first to that of the second; it changes by `rate` for each inch of shift.
Interval shiftsCrossing(const Crossing& made, const Vector3d& apart, const Vector3d& rate, double reach) {
  const double across = apart.dot(made.across);
  const double acrossRate = rate.dot(made.across);
  const Interval near = shiftsBetween(apart.dot(made.normal), rate.dot(made.normal), {-reach, reach});
  const Interval onSecond = shiftsBetween(across, acrossRate, {-made.width, 0});
  const Interval onFirst = shiftsBetween(apart.dot(made.along) - across * made.slant,
                                         rate.dot(made.along) - acrossRate * made.slant, {0, made.length});
  return overlap(near, overlap(onFirst, onSecond));
}

Vector3d corner(const Vector3d& half, int which) {
  return {which & 1 ? half.x() : -half.x(), which & 2 ? half.y() : -half.y(), which & 4 ? half.z() : -half.z()};
}

// The edges of a box about the origin where the segment passes them between its ends.
Interval shiftsCrossingEdges(const Segment3& moving, const Vector3d& along, const Vector3d& half, double reach) {
  Interval all = noShifts;
  for (int i = 0; i < 3; ++i) {
    const auto made = crossing(moving.b - moving.a, Vector3d::Unit(i) * (2 * half[i]));
    for (int which = 0; made && which < 8; ++which)
      if (!(which >> i & 1))
        add(all, shiftsCrossing(*made, corner(half, which) - moving.a, -along, reach));
  }
  return all;
}

} // namespace

Interval shiftsBetween(double value, double rate, Interval limits) {
  if (rate == 0)
    return value > limits.from && value < limits.to ? anyShift : noShifts;
  const double one = (limits.from - value) / rate;
  const double other = (limits.to - value) / rate;
  return {std::min(one, other), std::max(one, other)};
}

Interval shiftsNear(const Path& point, const Vector3d& half, double reach) {
  Interval range = anyShift;
  for (int i = 0; i < 3; ++i)
    range = overlap(range, shiftsBetween(point.start[i], point.along[i], {-half[i] - reach, half[i] + reach}));
  if (!some(range))
    return noShifts;
  std::array<double, 8> places; // both ends and up to six faces; what is not used stays an end
  places.fill(range.to);
  std::size_t count = 0;
  places[count++] = range.from;
  for (int i = 0; i < 3; ++i)
    for (const double face : {-half[i], half[i]})
      if (const double place = (face - point.start[i]) / point.along[i]; place > range.from && place < range.to)
        places[count++] = place;
  std::sort(places.begin(), places.end());
  Interval all = noShifts;
  for (std::size_t i = 1; i <= count; ++i)
    add(all, shiftsNearPart(point, half, {places[i - 1], places[i]}, reach));
  return all;
}

Interval shiftsNear(const Path& point, const Segment3& segment, double reach) {
  Interval all = noShifts;
  add(all, shiftsShorter(point.start - segment.a, point.along, anyShift, reach));
  const Vector3d direction = segment.b - segment.a;
  const double length = direction.norm();
  if (!(length > 0))
    return all;
  add(all, shiftsShorter(point.start - segment.b, point.along, anyShift, reach));
  const Vector3d unit = direction / length;
  const Vector3d off = point.start - segment.a;
  const double place = unit.dot(off);
  const double rate = unit.dot(point.along);
  const Interval beside = shiftsBetween(place, rate, {0, length});
  if (some(beside))
    add(all, shiftsShorter(off - unit * place, point.along - unit * rate, beside, reach));
  return all;
}

// The distance is least at an end of either, or between the ends of both.
Interval shiftsNear(const Segment3& moving, const Vector3d& along, const Segment3& other, double reach) {
  Interval all = noShifts;
  add(all, shiftsNear(Path{moving.a, along}, other, reach));
  add(all, shiftsNear(Path{moving.b, along}, other, reach));
  add(all, shiftsNear(Path{other.a, -along}, moving, reach));
  add(all, shiftsNear(Path{other.b, -along}, moving, reach));
  if (const auto made = crossing(moving.b - moving.a, other.b - other.a))
    add(all, shiftsCrossing(*made, other.a - moving.a, -along, reach));
  return all;
}

// The distance is least at an end of the segment, at a corner of the box, or between the ends of segment and edge.
// Where the segment only pierces faces it has no distance; the shifts at which that begins and ends are among the
// others.
Interval shiftsNear(const Segment3& moving, const Vector3d& along, const OrientedBox& box, double reach) {
  const auto local = [&](const Vector3d& v) -> Vector3d { return box.axes.transpose() * v; };
  const Segment3 own{local(moving.a - box.centre), local(moving.b - box.centre)};
  const Vector3d way = local(along);
  Interval all = noShifts;
  add(all, shiftsNear(Path{own.a, way}, box.half, reach));
  add(all, shiftsNear(Path{own.b, way}, box.half, reach));
  for (int which = 0; which < 8; ++which)
    add(all, shiftsNear(Path{corner(box.half, which), -way}, own, reach));
  add(all, shiftsCrossingEdges(own, way, box.half, reach));
  return all;
}

} // namespace sillwright
