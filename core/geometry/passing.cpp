#include "core/geometry/passing.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/geometry/clearance.h"
#include "core/geometry/near_path.h"
#include "core/geometry/oriented_box.h"
#include "core/geometry/swept.h"

namespace sillwright {
namespace {

using Eigen::Vector3d;

Vector3d vector(const Point3& p) {
  return {p.s, p.d, p.z};
}

Segment3 axis(const Capsule& bar) {
  return {vector(bar.a), vector(bar.b)};
}

Vector3d direction(Along along) {
  return along == Along::Station ? Vector3d::UnitX() : Vector3d::UnitY();
}

std::optional<BlockedShifts> blocked(Interval shifts) {
  if (!(shifts.from < shifts.to))
    return std::nullopt;
  return BlockedShifts{shifts.from, shifts.to};
}

Box3 boundsOfAxis(const Capsule& bar) {
  return bounds(Capsule{bar.a, bar.b, 0});
}

// Not less than the plate's own bounds, and quickly made.
Box3 wideBounds(const Ribbon& plate) {
  Interval d = noShifts;
  Interval z = noShifts;
  for (const ProfilePoint& point : plate.profile) {
    d = hull(d, {point.d, point.d});
    z = hull(z, {point.z, point.z});
  }
  const double half = std::max(0.0, plate.thickness) / 2;
  return {around(plate.station, std::max(0.0, plate.width)), grown(d, half), grown(z, half)};
}

// Whether the bounds stay at least the reach apart, however far the first is shifted. Overlapping bounds never do.
bool passesClear(const Box3& first, const Box3& second, Along along, double reach) {
  const double beside = along == Along::Station ? gap(first.d, second.d) : gap(first.s, second.s);
  const double apart = std::hypot(std::max(0.0, beside), std::max(0.0, gap(first.z, second.z)));
  return apart > 0 && apart >= reach;
}

Interval sweptNear(const Swept& first, const Swept& second, Along along, double reach) {
  return along == Along::Station ? stationsNear(first, second, reach) : depthsNear(first, second, reach);
}

// Two plates overlap by a depth, so how far one may go into the other has a meaning too.
Interval platesNear(const Swept& first, const Swept& second, Along along, double within) {
  if (within > 0)
    return sweptNear(first, second, along, within);
  return along == Along::Station ? stationsOverlapping(first, second, -within)
                                 : depthsOverlapping(first, second, -within);
}

Interval barNear(const Capsule& bar, const std::optional<Swept>& sweptBar, const OrientedBox& box, Along along,
                 double reach) {
  return sweptBar ? sweptNear(*sweptBar, swept(box), along, reach)
                  : shiftsNear(axis(bar), direction(along), box, reach);
}

std::vector<BlockedShifts> merged(std::vector<BlockedShifts> shifts) {
  std::sort(shifts.begin(), shifts.end(), [](const auto& a, const auto& b) { return a.from < b.from; });
  std::vector<BlockedShifts> apart;
  for (const BlockedShifts& next : shifts)
    if (!apart.empty() && next.from < apart.back().to)
      apart.back().to = std::max(apart.back().to, next.to);
    else
      apart.push_back(next);
  return apart;
}

} // namespace

std::optional<BlockedShifts> blockedShifts(const Capsule& first, const Capsule& second, Along along, double within) {
  const double reach = within + first.radius + second.radius;
  if (!(reach > 0) || passesClear(boundsOfAxis(first), boundsOfAxis(second), along, reach))
    return std::nullopt;
  if (const auto own = sweptAxis(first), other = sweptAxis(second); own && other)
    return blocked(sweptNear(*own, *other, along, reach));
  return blocked(shiftsNear(axis(first), direction(along), axis(second), reach));
}

std::optional<BlockedShifts> blockedShifts(const Capsule& bar, const Box3& box, Along along, double within) {
  const double reach = within + bar.radius;
  const OrientedBox solid = orientedBox(box);
  if (!(reach > 0) || passesClear(boundsOfAxis(bar), bounds(solid), along, reach))
    return std::nullopt;
  return blocked(barNear(bar, sweptAxis(bar), solid, along, reach));
}

std::vector<BlockedShifts> blockedShifts(const Capsule& bar, const Ribbon& plate, Along along, double within) {
  const double reach = within + bar.radius;
  if (!(reach > 0) || passesClear(boundsOfAxis(bar), wideBounds(plate), along, reach))
    return {};
  const std::optional<Swept> sweptBar = sweptAxis(bar);
  std::vector<BlockedShifts> all;
  for (const OrientedBox& piece : pieces(plate))
    if (const auto shifts = blocked(barNear(bar, sweptBar, piece, along, reach)))
      all.push_back(*shifts);
  return merged(std::move(all));
}

std::vector<BlockedShifts> blockedShifts(const Ribbon& plate, const Capsule& bar, Along along, double within) {
  std::vector<BlockedShifts> shifts = blockedShifts(bar, plate, along, within);
  std::reverse(shifts.begin(), shifts.end());
  for (BlockedShifts& each : shifts)
    each = {-each.to, -each.from};
  return shifts;
}

std::vector<BlockedShifts> blockedShifts(const Ribbon& first, const Ribbon& second, Along along, double within) {
  if (passesClear(wideBounds(first), wideBounds(second), along, within))
    return {};
  const std::vector<OrientedBox> others = pieces(second);
  std::vector<BlockedShifts> all;
  for (const OrientedBox& piece : pieces(first))
    for (const OrientedBox& other : others)
      if (const auto shifts = blocked(platesNear(swept(piece), swept(other), along, within)))
        all.push_back(*shifts);
  return merged(std::move(all));
}

} // namespace sillwright
