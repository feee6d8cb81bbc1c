#include "core/geometry/outline.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/base/tolerance.h"
#include "core/geometry/wall_frame.h"

namespace sillwright {
namespace {

// Cuts of a segment nearer to each other than this mean the same corner and differ by rounding.
constexpr double sliver = tolerance::same / 1000;

// Twice the signed area of a, b, c: positive when c lies left of a to b.
double turn(Point2 a, Point2 b, Point2 c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

Point2 between(const Segment2& segment, double t) {
  if (t >= 1)
    return segment.b;
  return {segment.a.x + (segment.b.x - segment.a.x) * t, segment.a.y + (segment.b.y - segment.a.y) * t};
}

Segment2 edge(const Polygon2& ring, std::size_t i) {
  return {ring[i], ring[(i + 1) % ring.size()]};
}

// Does the edge cross the ray from p to the right? Half-open in y, so that a corner counts once, and the same for
// either direction of the edge, so that an edge there and back counts for nothing.
bool crossesRay(const Segment2& edge, Point2 p) {
  if ((edge.a.y > p.y) == (edge.b.y > p.y))
    return false;
  const bool up = edge.b.y > edge.a.y;
  return turn(up ? edge.a : edge.b, up ? edge.b : edge.a, p) > 0;
}

bool crossesOdd(Point2 p, const Polygon2& ring) {
  bool odd = false;
  for (std::size_t i = 0; i < ring.size(); ++i)
    odd ^= crossesRay(edge(ring, i), p);
  return odd;
}

// Fractions of the segment at which an edge may cross or touch it. Too many do no harm: each piece between them is
// tested by its middle.
void addCuts(const Segment2& segment, double length, const Segment2& edge, std::vector<double>& cuts) {
  const double near = tolerance::same * length; // a turn this small is that close to the line of the segment
  const double turnA = turn(segment.a, segment.b, edge.a);
  const double turnB = turn(segment.a, segment.b, edge.b);
  if (std::abs(turnA) <= near) { // the other corner is the first of the next edge
    const Point2 along{segment.b.x - segment.a.x, segment.b.y - segment.a.y};
    cuts.push_back(((edge.a.x - segment.a.x) * along.x + (edge.a.y - segment.a.y) * along.y) / (length * length));
  }
  if ((turnA > 0) == (turnB > 0))
    return;
  const double fromA = turn(edge.a, edge.b, segment.a);
  cuts.push_back(fromA / (fromA - turn(edge.a, edge.b, segment.b)));
}

std::vector<double> sortedCuts(const Segment2& segment, double length, std::span<const Polygon2> rings) {
  std::vector<double> cuts;
  for (const Polygon2& ring : rings)
    for (std::size_t i = 0; i < ring.size(); ++i)
      addCuts(segment, length, edge(ring, i), cuts);
  const auto atAnEnd = [&](double t) { return !(t * length > sliver && (1 - t) * length > sliver); };
  cuts.erase(std::remove_if(cuts.begin(), cuts.end(), atAnEnd), cuts.end());
  cuts.push_back(1);
  std::sort(cuts.begin(), cuts.end());
  return cuts;
}

// Distance between two segments; zero when they cross.
double distance(const Segment2& first, const Segment2& second) {
  const bool secondParts = (turn(first.a, first.b, second.a) > 0) != (turn(first.a, first.b, second.b) > 0);
  const bool firstParts = (turn(second.a, second.b, first.a) > 0) != (turn(second.a, second.b, first.b) > 0);
  if (firstParts && secondParts)
    return 0;
  return std::min(
      {distance(first.a, second), distance(first.b, second), distance(second.a, first), distance(second.b, first)});
}

// Two edges that share the corner: no fold back onto each other.
bool foldsBack(const Segment2& edge, const Segment2& next) {
  return distance(edge.a, next) <= tolerance::same || distance(next.b, edge) <= tolerance::same;
}

} // namespace

bool inside(Point2 p, std::span<const Polygon2> rings) {
  bool odd = false;
  for (const Polygon2& ring : rings)
    odd ^= crossesOdd(p, ring);
  return odd;
}

bool inside(Point2 p, const Polygon2& ring) {
  return crossesOdd(p, ring);
}

std::vector<Segment2> clipped(const Segment2& segment, std::span<const Polygon2> rings) {
  const double length = distance(segment.a, segment.b);
  if (!(length > 0))
    return inside(segment.a, rings) ? std::vector{segment} : std::vector<Segment2>{};
  std::vector<Segment2> parts;
  double from = 0;
  bool joins = false;
  for (const double to : sortedCuts(segment, length, rings)) {
    if ((to - from) * length <= sliver && to < 1)
      continue;
    const bool in = inside(between(segment, (from + to) / 2), rings);
    if (in && joins)
      parts.back().b = between(segment, to);
    else if (in)
      parts.push_back({between(segment, from), between(segment, to)});
    joins = in;
    from = to;
  }
  return parts;
}

std::vector<Segment2> clipped(const Segment2& segment, const Polygon2& ring) {
  return clipped(segment, std::span(&ring, 1));
}

double distanceToOutline(Point2 p, const Polygon2& ring) {
  double nearest = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < ring.size(); ++i)
    nearest = std::min(nearest, distance(p, edge(ring, i)));
  return nearest;
}

double distance(Point2 p, const Segment2& segment) {
  const Point2 along{segment.b.x - segment.a.x, segment.b.y - segment.a.y};
  const double squared = along.x * along.x + along.y * along.y;
  if (!(squared > 0))
    return distance(p, segment.a);
  const double t = ((p.x - segment.a.x) * along.x + (p.y - segment.a.y) * along.y) / squared;
  return distance(p, between(segment, std::clamp(t, 0.0, 1.0)));
}

double signedArea(const Polygon2& ring) {
  double doubled = 0;
  for (std::size_t i = 2; i < ring.size(); ++i) // about the first corner: exact far from the origin too
    doubled += turn(ring[0], ring[i - 1], ring[i]);
  return doubled / 2;
}

bool isSimple(const Polygon2& ring) {
  const std::size_t count = ring.size();
  if (count < 3)
    return false;
  for (std::size_t i = 0; i < count; ++i) {
    if (foldsBack(edge(ring, i), edge(ring, (i + 1) % count)))
      return false;
    for (std::size_t j = i + 2; j < count; ++j)
      if ((j + 1) % count != i && distance(edge(ring, i), edge(ring, j)) <= tolerance::same)
        return false;
  }
  return true;
}

std::optional<std::pair<Point2, Point2>> bounds(std::span<const Point2> points) {
  if (points.empty())
    return std::nullopt;
  Point2 low = points.front();
  Point2 high = points.front();
  for (const Point2 p : points) {
    low = {std::min(low.x, p.x), std::min(low.y, p.y)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y)};
  }
  return std::pair{low, high};
}

Polygon2 rectangle(double x0, double y0, double x1, double y1) {
  const auto [left, right] = std::minmax(x0, x1);
  const auto [bottom, top] = std::minmax(y0, y1);
  return {{left, bottom}, {right, bottom}, {right, top}, {left, top}};
}

} // namespace sillwright
