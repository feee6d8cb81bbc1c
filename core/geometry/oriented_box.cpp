#include "core/geometry/oriented_box.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include <Eigen/Geometry>

namespace sillwright {
namespace {

using Eigen::Vector3d;

Vector3d at(const Segment3& segment, double t) {
  return segment.a + (segment.b - segment.a) * t;
}

// Fraction of the segment nearest to the point.
double fractionNearest(const Segment3& segment, const Vector3d& point) {
  const Vector3d along = segment.b - segment.a;
  const double squared = along.squaredNorm();
  return squared > 0 ? std::clamp(along.dot(point - segment.a) / squared, 0.0, 1.0) : 0.0;
}

void keepNearer(NearestPair& best, const NearestPair& other) {
  if (other.distance() < best.distance())
    best = other;
}

// Fraction of the piece from..to of the moving point start + along t nearest to the box of half sizes about the origin.
// Within the piece no coordinate changes between inside and outside, so the squared distance is one parabola.
double nearestWithin(double from, double to, const Vector3d& start, const Vector3d& along, const Vector3d& half) {
  const Vector3d middle = start + along * ((from + to) / 2);
  double curve = 0;
  double slope = 0;
  for (int i = 0; i < 3; ++i)
    if (std::abs(middle[i]) > half[i]) {
      curve += along[i] * along[i];
      slope += along[i] * (start[i] - std::copysign(half[i], middle[i]));
    }
  return curve > 0 ? std::clamp(-slope / curve, from, to) : from;
}

// The squared distance of a point moving along a segment to a box is convex and made of parabolas that meet where a
// coordinate passes a face; the least of the least of each is the exact minimum.
double fractionNearest(const Vector3d& start, const Vector3d& along, const Vector3d& half) {
  std::array<double, 8> cuts; // both ends and up to six faces; what is not used stays an end
  cuts.fill(1);
  std::size_t count = 0;
  cuts[count++] = 0;
  for (int i = 0; i < 3; ++i)
    for (const double face : {-half[i], half[i]})
      if (const double t = (face - start[i]) / along[i]; t > 0 && t < 1)
        cuts[count++] = t;
  std::sort(cuts.begin(), cuts.end());
  double best = 0;
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 1; i <= count; ++i) {
    const double t = nearestWithin(cuts[i - 1], cuts[i], start, along, half);
    const Vector3d outside = ((start + along * t).cwiseAbs() - half).cwiseMax(0.0);
    if (outside.squaredNorm() < least) {
      least = outside.squaredNorm();
      best = t;
    }
  }
  return best;
}

// Each edge of the box against the other box; nearest points of boxes apart always involve an edge of one, and so does
// a common point of boxes that overlap.
NearestPair nearestOfEdges(const OrientedBox& edges, const OrientedBox& box) {
  NearestPair best{Vector3d::Zero(), Vector3d::Constant(std::numeric_limits<double>::infinity())};
  for (int along = 0; along < 3; ++along)
    for (const double u : {-1.0, 1.0})
      for (const double v : {-1.0, 1.0}) {
        Vector3d corner;
        corner[along] = -1;
        corner[(along + 1) % 3] = u;
        corner[(along + 2) % 3] = v;
        const Vector3d from = edges.centre + edges.axes * corner.cwiseProduct(edges.half);
        const Vector3d to = from + edges.axes.col(along) * (2 * edges.half[along]);
        keepNearer(best, nearest(Segment3{from, to}, box));
      }
  return best;
}

double reach(const OrientedBox& box, const Vector3d& direction) {
  return (box.axes.transpose() * direction).cwiseAbs().dot(box.half);
}

OrientedBox piece(const Ribbon& plate, ProfilePoint from, ProfilePoint to) {
  const double length = std::hypot(to.d - from.d, to.z - from.z);
  const Vector3d along =
      length > 0 ? Vector3d(0, (to.d - from.d) / length, (to.z - from.z) / length) : Vector3d(0, 0, 1);
  OrientedBox box;
  box.centre = {plate.station, (from.d + to.d) / 2, (from.z + to.z) / 2};
  box.axes.col(1) = along;
  box.axes.col(2) = Vector3d(0, -along.z(), along.y());
  box.half = Vector3d(plate.width, length, plate.thickness).cwiseMax(0.0) / 2;
  return box;
}

} // namespace

OrientedBox orientedBox(const Box3& box) {
  OrientedBox oriented;
  oriented.centre = {box.s.middle(), box.d.middle(), box.z.middle()};
  oriented.half = Vector3d(box.s.length(), box.d.length(), box.z.length()).cwiseMax(0.0) / 2;
  return oriented;
}

std::vector<OrientedBox> pieces(const Ribbon& plate) {
  std::vector<OrientedBox> boxes;
  const auto& profile = plate.profile;
  for (std::size_t i = 1; i < profile.size(); ++i)
    if (profile[i] != profile[i - 1])
      boxes.push_back(piece(plate, profile[i - 1], profile[i]));
  if (boxes.empty() && !profile.empty())
    boxes.push_back(piece(plate, profile.front(), profile.front()));
  return boxes;
}

NearestPair nearest(const Segment3& first, const Segment3& second) {
  const auto toSecond = [&](double t) {
    const Vector3d point = at(first, t);
    return NearestPair{point, at(second, fractionNearest(second, point))};
  };
  const auto toFirst = [&](const Vector3d& point) {
    return NearestPair{at(first, fractionNearest(first, point)), point};
  };
  // The distance is convex over both fractions: least at an end of either segment, or where the lines are nearest.
  NearestPair best = toSecond(0);
  keepNearer(best, toSecond(1));
  keepNearer(best, toFirst(second.a));
  keepNearer(best, toFirst(second.b));
  const Vector3d along = second.b - second.a;
  const Vector3d square = (first.b - first.a).cross(along);
  if (const double squared = square.squaredNorm(); squared > 0) {
    // By the cross product, not the difference of dot products, which loses all digits for nearly parallel lines.
    const double t = (second.a - first.a).cross(along).dot(square) / squared;
    keepNearer(best, toSecond(std::clamp(t, 0.0, 1.0)));
  }
  return best;
}

NearestPair nearest(const Segment3& segment, const OrientedBox& box) {
  const Vector3d start = box.axes.transpose() * (segment.a - box.centre);
  const Vector3d along = box.axes.transpose() * (segment.b - segment.a);
  const double t = fractionNearest(start, along, box.half);
  const Vector3d local = start + along * t;
  const Vector3d onBox = local.cwiseMax(-box.half).cwiseMin(box.half);
  const Vector3d onSegment = at(segment, t);
  // A point inside is its own nearest; taking it through the frame of the box and back would add rounding.
  return {onSegment, onSegment + box.axes * (onBox - local)};
}

NearestPair nearest(const OrientedBox& first, const OrientedBox& second) {
  NearestPair best = nearestOfEdges(first, second);
  const NearestPair reversed = nearestOfEdges(second, first);
  keepNearer(best, {reversed.onSecond, reversed.onFirst});
  return best;
}

double overlapDepth(const OrientedBox& first, const OrientedBox& second) {
  const Vector3d apart = second.centre - first.centre;
  double least = std::numeric_limits<double>::infinity();
  const auto look = [&](const Vector3d& direction) {
    least = std::min(least, reach(first, direction) + reach(second, direction) - std::abs(apart.dot(direction)));
  };
  for (int i = 0; i < 3; ++i) {
    look(first.axes.col(i));
    look(second.axes.col(i));
    for (int j = 0; j < 3; ++j) {
      const Vector3d square = first.axes.col(i).cross(second.axes.col(j));
      if (square.norm() > 1e-9) // else the two are parallel and the faces have it already
        look(square.normalized());
    }
  }
  return least;
}

Box3 bounds(const OrientedBox& box) {
  const Vector3d half = box.axes.cwiseAbs() * box.half;
  const auto side = [&](int i) { return Interval{box.centre[i] - half[i], box.centre[i] + half[i]}; };
  return {side(0), side(1), side(2)};
}

} // namespace sillwright
