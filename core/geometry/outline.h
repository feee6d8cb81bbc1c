// Polygons in a plane (plan, or elevation with x = s and y = z), in inches or paper points. Closed, either direction,
// without a repeated last point. Tests are even-odd.
#pragma once

#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "core/geometry/shapes.h"

namespace sillwright {

struct Segment2 {
  Point2 a;
  Point2 b;
  bool operator==(const Segment2&) const = default;
};

// Inside by the even-odd rule over all rings together (a ring inside a ring is a hole). A point on an edge may be
// either.
bool inside(Point2 p, std::span<const Polygon2> rings);
bool inside(Point2 p, const Polygon2& ring);

// The parts of a segment inside the rings, in order from a to b.
std::vector<Segment2> clipped(const Segment2& segment, std::span<const Polygon2> rings);
std::vector<Segment2> clipped(const Segment2& segment, const Polygon2& ring);

// Distance from a point to the nearest point of the outline of the ring (not to its inside).
double distanceToOutline(Point2 p, const Polygon2& ring);
double distance(Point2 p, const Segment2& segment);

// Twice the signed area is positive for a counterclockwise ring.
double signedArea(const Polygon2& ring);

// True when no two edges cross or touch except neighbours at their common corner.
bool isSimple(const Polygon2& ring);

// Smallest (lower-left, upper-right). Nothing for no points.
std::optional<std::pair<Point2, Point2>> bounds(std::span<const Point2> points);

Polygon2 rectangle(double x0, double y0, double x1, double y1);

} // namespace sillwright
