// Plain shapes. Lengths in inches.
// Plan frame: x right, y up on the page. Wall frame: s along the outside face of the concrete from the left end as seen
// from outside, d from the outside face inward, z up from the planned pour line.
#pragma once

#include <algorithm>
#include <vector>

namespace sillwright {

struct Point2 {
  double x = 0;
  double y = 0;
  bool operator==(const Point2&) const = default;
};

struct Point3 {
  double s = 0;
  double d = 0;
  double z = 0;
  bool operator==(const Point3&) const = default;
};

// Closed interval; empty when to < from.
struct Interval {
  double from = 0;
  double to = 0;

  double length() const { return to - from; }
  double middle() const { return (from + to) / 2; }
  bool empty() const { return to < from; }
  bool contains(double v) const { return v >= from && v <= to; }
  bool operator==(const Interval&) const = default;
};

inline Interval overlap(Interval a, Interval b) { return {std::max(a.from, b.from), std::min(a.to, b.to)}; }
// Free length between two intervals; negative by the depth of the overlap.
inline double gap(Interval a, Interval b) { return std::max(a.from, b.from) - std::min(a.to, b.to); }
inline Interval around(double centre, double width) { return {centre - width / 2, centre + width / 2}; }
inline Interval grown(Interval a, double by) { return {a.from - by, a.to + by}; }
inline Interval hull(Interval a, Interval b) { return {std::min(a.from, b.from), std::max(a.to, b.to)}; }

// A box along the axes of the wall frame: also the exact region of a finding, seen in elevation (s, z), section (d, z)
// and plan (s, d).
struct Box3 {
  Interval s;
  Interval d;
  Interval z;
  bool operator==(const Box3&) const = default;
};

// A round bar: all points within radius of the axis.
struct Capsule {
  Point3 a;
  Point3 b;
  double radius = 0;
  bool operator==(const Capsule&) const = default;
};

struct ProfilePoint {
  double d = 0;
  double z = 0;
  bool operator==(const ProfilePoint&) const = default;
};

// A bent plate: the profile, a polyline in (d, z), swept over width along s about station, with a thickness square to
// the profile. Its solid is the union of one box a straight piece of the profile.
struct Ribbon {
  double station = 0;
  double width = 0;
  double thickness = 0;
  std::vector<ProfilePoint> profile;
  bool operator==(const Ribbon&) const = default;
};

using Polygon2 = std::vector<Point2>;

} // namespace sillwright
