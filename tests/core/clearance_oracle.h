// Slow and plain answers to compare clearances with. Nothing here shares code with what it checks: points, vectors and
// the solid of a plate are worked out again from the words of the header.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <random>
#include <vector>

#include "core/geometry/clearance.h"

namespace sillwright::oracle {

inline Point3 plus(Point3 a, Point3 b) {
  return {a.s + b.s, a.d + b.d, a.z + b.z};
}
inline Point3 times(Point3 a, double by) {
  return {a.s * by, a.d * by, a.z * by};
}
inline Point3 minus(Point3 a, Point3 b) {
  return plus(a, times(b, -1));
}
inline double dot(Point3 a, Point3 b) {
  return a.s * b.s + a.d * b.d + a.z * b.z;
}
inline double length(Point3 a) {
  return std::sqrt(dot(a, a));
}
inline Point3 lerp(Point3 a, Point3 b, double t) {
  return plus(times(a, 1 - t), times(b, t));
}

// Least value of a convex function over lo..hi by thirds.
template <class F> double leastOver(double lo, double hi, F f, int steps = 90) {
  for (int i = 0; i < steps; ++i) {
    const double a = lo + (hi - lo) / 3;
    const double b = hi - (hi - lo) / 3;
    (f(a) < f(b) ? hi : lo) = f(a) < f(b) ? b : a;
  }
  return f((lo + hi) / 2);
}

// One straight piece of a plate.
struct Piece {
  double station = 0;
  double halfWidth = 0;
  double halfThickness = 0;
  ProfilePoint from;
  ProfilePoint to;

  double extent() const { return std::hypot(to.d - from.d, to.z - from.z); }
  ProfilePoint along() const {
    return extent() > 0 ? ProfilePoint{(to.d - from.d) / extent(), (to.z - from.z) / extent()} : ProfilePoint{0, 1};
  }
  // The point at the place (0 … extent) along the profile, across (-1 … 1) and through (-1 … 1) the plate.
  Point3 at(double place, double across, double through) const {
    const ProfilePoint u = along();
    return {station + across * halfWidth, from.d + u.d * place - u.z * through * halfThickness,
            from.z + u.z * place + u.d * through * halfThickness};
  }
  std::array<Point3, 8> corners() const {
    std::array<Point3, 8> all;
    for (int i = 0; i < 8; ++i)
      all[i] = at(i & 1 ? extent() : 0, i & 2 ? 1 : -1, i & 4 ? 1 : -1);
    return all;
  }
  // From a point to the part of the piece between two places.
  double distanceTo(Point3 p, double lowest, double highest) const {
    const ProfilePoint u = along();
    const double d = p.d - from.d;
    const double z = p.z - from.z;
    const double place = d * u.d + z * u.z;
    const double beyond = std::max({lowest - place, 0.0, place - highest});
    const double off = std::max(0.0, std::abs(z * u.d - d * u.z) - halfThickness);
    const double beside = std::max(0.0, std::abs(p.s - station) - halfWidth);
    return std::sqrt(beyond * beyond + off * off + beside * beside);
  }
  double distanceTo(Point3 p) const { return distanceTo(p, 0, extent()); }
};

inline std::vector<Piece> piecesOf(const Ribbon& plate) {
  std::vector<Piece> pieces;
  const auto add = [&](ProfilePoint a, ProfilePoint b) {
    pieces.push_back({plate.station, plate.width / 2, plate.thickness / 2, a, b});
  };
  for (std::size_t i = 1; i < plate.profile.size(); ++i)
    if (!(plate.profile[i] == plate.profile[i - 1]))
      add(plate.profile[i - 1], plate.profile[i]);
  if (pieces.empty() && !plate.profile.empty())
    add(plate.profile[0], plate.profile[0]);
  return pieces;
}

inline double pointToSegment(Point3 p, Point3 a, Point3 b) {
  const Point3 u = minus(b, a);
  const double t = dot(u, u) > 0 ? std::clamp(dot(minus(p, a), u) / dot(u, u), 0.0, 1.0) : 0.0;
  return length(minus(p, lerp(a, b, t)));
}

inline double distanceToPlate(Point3 p, const Ribbon& plate) {
  double least = std::numeric_limits<double>::infinity();
  for (const Piece& piece : piecesOf(plate))
    least = std::min(least, piece.distanceTo(p));
  return least;
}

inline double barToBar(const Capsule& first, const Capsule& second) {
  return leastOver(0, 1, [&](double t) { return pointToSegment(lerp(first.a, first.b, t), second.a, second.b); }) -
         first.radius - second.radius;
}

inline double axisToPiece(const Capsule& bar, const Piece& piece) {
  return leastOver(0, 1, [&](double t) { return piece.distanceTo(lerp(bar.a, bar.b, t)); });
}

inline double barToPlate(const Capsule& bar, const Ribbon& plate) {
  double least = std::numeric_limits<double>::infinity();
  for (const Piece& piece : piecesOf(plate))
    least = std::min(least, axisToPiece(bar, piece));
  return least - bar.radius;
}

// Random shapes. A coarse grid makes parallel, touching, crossing, coincident and zero-length cases common.
class Shapes {
public:
  explicit Shapes(unsigned seed) : random_(seed) {}

  double number(double from, double to) { return std::uniform_real_distribution<double>(from, to)(random_); }
  int whole(int from, int to) { return std::uniform_int_distribution<int>(from, to)(random_); }
  double coordinate(bool grid) { return grid ? whole(-2, 2) : number(-3, 3); }
  Point3 point(bool grid) { return {coordinate(grid), coordinate(grid), coordinate(grid)}; }
  Capsule bar(bool grid) { return {point(grid), point(grid), grid ? whole(0, 2) * 0.25 : number(0, 0.5)}; }
  Ribbon plate(bool grid) {
    Ribbon plate{coordinate(grid), grid ? whole(0, 2) : number(0, 2), grid ? whole(0, 2) * 0.5 : number(0, 0.3), {}};
    for (int n = whole(1, 5); n > 0; --n)
      plate.profile.push_back({coordinate(grid), coordinate(grid)});
    return plate;
  }

private:
  std::mt19937 random_;
};

} // namespace sillwright::oracle
