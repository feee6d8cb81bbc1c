#include "core/geometry/plate_part.h"

#include "core/base/tolerance.h"
#include "core/geometry/oriented_box.h"

namespace sillwright {

namespace {

// A straight piece of the plate as seen along the wall: a convex outline.
using Section = std::vector<ProfilePoint>;

Section sectionOf(const OrientedBox& piece) {
  const auto corner = [&](double along, double square) {
    const Eigen::Vector3d at =
        piece.centre + piece.axes.col(1) * (along * piece.half[1]) + piece.axes.col(2) * (square * piece.half[2]);
    return ProfilePoint{at.y(), at.z()};
  };
  return {corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)};
}

// What is left of an outline where a coordinate is at least (sign 1) or at most (sign -1) an end.
Section cut(const Section& section, double ProfilePoint::*coordinate, double end, double sign) {
  Section left;
  for (std::size_t i = 0; i < section.size(); ++i) {
    const ProfilePoint& a = section[i];
    const ProfilePoint& b = section[(i + 1) % section.size()];
    const double inA = sign * (a.*coordinate - end);
    const double inB = sign * (b.*coordinate - end);
    if (inA >= 0)
      left.push_back(a);
    if ((inA > 0 && inB < 0) || (inA < 0 && inB > 0)) {
      const double part = inA / (inA - inB);
      left.push_back({a.d + (b.d - a.d) * part, a.z + (b.z - a.z) * part});
    }
  }
  return left;
}

Interval extent(const Section& section, double ProfilePoint::*coordinate) {
  Interval all{section.front().*coordinate, section.front().*coordinate};
  for (const ProfilePoint& point : section)
    all = hull(all, {point.*coordinate, point.*coordinate});
  return all;
}

bool onlyTouches(Interval own, Interval band) {
  return own.to < band.from + tolerance::same || own.from > band.to - tolerance::same;
}

} // namespace

std::optional<Box3> partWithin(const Ribbon& plate, Interval depths, Interval heights) {
  std::optional<Box3> part;
  for (const OrientedBox& piece : pieces(plate)) {
    Section section = sectionOf(piece);
    for (const double sign : {1.0, -1.0}) {
      section = cut(section, &ProfilePoint::d, sign > 0 ? depths.from : depths.to, sign);
      section = cut(section, &ProfilePoint::z, sign > 0 ? heights.from : heights.to, sign);
    }
    if (section.empty())
      continue;
    const Box3 own{around(plate.station, plate.width), extent(section, &ProfilePoint::d),
                   extent(section, &ProfilePoint::z)};
    if (onlyTouches(own.d, depths) || onlyTouches(own.z, heights))
      continue;
    part = part ? Box3{own.s, hull(part->d, own.d), hull(part->z, own.z)} : own;
  }
  return part;
}

} // namespace sillwright
