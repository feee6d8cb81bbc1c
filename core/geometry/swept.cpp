#include "core/geometry/swept.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace sillwright {
namespace {

using Eigen::Vector3d;

ProfilePoint square(ProfilePoint along) {
  return {-along.z, along.d};
}

double dot(ProfilePoint a, ProfilePoint b) {
  return a.d * b.d + a.z * b.z;
}

ProfilePoint minus(ProfilePoint a, ProfilePoint b) {
  return {a.d - b.d, a.z - b.z};
}

// Half the extent of the rectangle in a direction.
double extent(const Rectangle& rectangle, ProfilePoint direction) {
  return std::abs(dot(rectangle.along, direction)) * rectangle.halfLength +
         std::abs(dot(square(rectangle.along), direction)) * rectangle.halfThickness;
}

// The directions in which two rectangles that do not meet can be seen apart.
std::array<ProfilePoint, 4> directions(const Rectangle& first, const Rectangle& second) {
  return {first.along, square(first.along), second.along, square(second.along)};
}

// Widest gap between the two in one of the directions; negative where they overlap: the least shift that parts them.
double widestGap(const Rectangle& first, const Rectangle& second) {
  const ProfilePoint apart = minus(second.centre, first.centre);
  double widest = -std::numeric_limits<double>::infinity();
  for (const ProfilePoint direction : directions(first, second))
    widest = std::max(widest, std::abs(dot(apart, direction)) - extent(first, direction) - extent(second, direction));
  return widest;
}

// Calls with each corner, once for those that fall together where there is no length or thickness.
template <class Use> void forEachCorner(const Rectangle& rectangle, Use use) {
  const ProfilePoint across = square(rectangle.along);
  for (int i = 0; i < (rectangle.halfLength > 0 ? 2 : 1); ++i)
    for (int j = 0; j < (rectangle.halfThickness > 0 ? 2 : 1); ++j) {
      const double u = i == 0 ? -rectangle.halfLength : rectangle.halfLength;
      const double v = j == 0 ? -rectangle.halfThickness : rectangle.halfThickness;
      use(ProfilePoint{rectangle.centre.d + rectangle.along.d * u + across.d * v,
                       rectangle.centre.z + rectangle.along.z * u + across.z * v});
    }
}

// Where the point is in the frame of the rectangle.
ProfilePoint within(const Rectangle& rectangle, ProfilePoint point) {
  const ProfilePoint apart = minus(point, rectangle.centre);
  return {dot(apart, rectangle.along), dot(apart, square(rectangle.along))};
}

double squareFromCorners(const Rectangle& corners, const Rectangle& other) {
  double least = std::numeric_limits<double>::infinity();
  forEachCorner(corners, [&](ProfilePoint corner) {
    const ProfilePoint at = within(other, corner);
    const double beyond = std::max(0.0, std::abs(at.d) - other.halfLength);
    const double beside = std::max(0.0, std::abs(at.z) - other.halfThickness);
    least = std::min(least, beyond * beyond + beside * beside);
  });
  return least;
}

// Distance of the rectangles; 0 where they touch or overlap, and anything not below the limit where it is not below.
double distanceUnder(const Rectangle& first, const Rectangle& second, double limit) {
  const double widest = widestGap(first, second);
  if (widest <= 0)
    return 0;
  if (widest >= limit)
    return widest;
  return std::sqrt(std::min(squareFromCorners(first, second), squareFromCorners(second, first)));
}

// Shifts at which a corner of one comes near the other, which stands; `way` is where the corners go.
void addShiftsOfCorners(Interval& all, const Rectangle& corners, const Rectangle& other, ProfilePoint way,
                        double reach) {
  const Vector3d along(0, dot(way, other.along), dot(way, square(other.along)));
  const Vector3d half(0, other.halfLength, other.halfThickness);
  forEachCorner(corners, [&](ProfilePoint corner) {
    const ProfilePoint at = within(other, corner);
    if (const Interval near = shiftsNear(Path{{0, at.d, at.z}, along}, half, reach); near.from < near.to)
      all = hull(all, near);
  });
}

// Shifts that bring the stations of the first nearer than `reach` to those of the second; below 0, deeper into them.
Interval stationsBetween(Interval first, Interval second, double reach) {
  return {second.from - first.to - reach, second.to - first.from + reach};
}

} // namespace

Swept swept(const OrientedBox& box) {
  const Vector3d along = box.axes.col(1);
  return {{box.centre.x() - box.half.x(), box.centre.x() + box.half.x()},
          {{box.centre.y(), box.centre.z()}, {along.y(), along.z()}, box.half.y(), box.half.z()}};
}

std::optional<Swept> sweptAxis(const Capsule& bar) {
  const double d = bar.b.d - bar.a.d;
  const double z = bar.b.z - bar.a.z;
  const double length = std::hypot(d, z);
  if (bar.a.s != bar.b.s && length > 0)
    return std::nullopt;
  Swept axis{{std::min(bar.a.s, bar.b.s), std::max(bar.a.s, bar.b.s)}, {}};
  axis.section.centre = {(bar.a.d + bar.b.d) / 2, (bar.a.z + bar.b.z) / 2};
  axis.section.halfLength = length / 2;
  if (length > 0)
    axis.section.along = {d / length, z / length};
  return axis;
}

Interval stationsNear(const Swept& first, const Swept& second, double reach) {
  const double across = distanceUnder(first.section, second.section, reach);
  if (!(across < reach))
    return noShifts;
  return stationsBetween(first.stations, second.stations, std::sqrt((reach - across) * (reach + across)));
}

// Where rectangles begin to touch, a corner of one is on the other, so corners find the ends also of overlapping.
Interval depthsNear(const Swept& first, const Swept& second, double reach) {
  const double beside = std::max(0.0, gap(first.stations, second.stations));
  if (!(beside < reach))
    return noShifts;
  const double across = std::sqrt((reach - beside) * (reach + beside));
  Interval all = noShifts;
  addShiftsOfCorners(all, first.section, second.section, {1, 0}, across);
  addShiftsOfCorners(all, second.section, first.section, {-1, 0}, across);
  return all;
}

Interval stationsOverlapping(const Swept& first, const Swept& second, double depth) {
  if (!(-widestGap(first.section, second.section) > depth))
    return noShifts;
  return stationsBetween(first.stations, second.stations, -depth);
}

Interval depthsOverlapping(const Swept& first, const Swept& second, double depth) {
  const double widths = (first.stations.length() + second.stations.length()) / 2;
  if (!(widths - std::abs(first.stations.middle() - second.stations.middle()) > depth))
    return noShifts;
  const ProfilePoint apart = minus(first.section.centre, second.section.centre);
  Interval all = anyShift;
  for (const ProfilePoint direction : directions(first.section, second.section)) {
    const double room = extent(first.section, direction) + extent(second.section, direction) - depth;
    if (!(room > 0))
      return noShifts;
    all = overlap(all, shiftsBetween(dot(apart, direction), direction.d, {-room, room}));
  }
  return all;
}

} // namespace sillwright
