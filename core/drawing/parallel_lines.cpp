#include "core/drawing/parallel_lines.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sillwright {

std::vector<Segment2> parallelLines(const Polygon2& outline, double degrees, double spacing, Point2 origin) {
  const double angle = degrees * std::numbers::pi / 180;
  const Point2 along{std::cos(angle), -std::sin(angle)};
  const Point2 across{-along.y, along.x};
  Interval reach{1, -1}, offsets{1, -1}; // of the outline along and across the lines
  for (const Point2 p : outline) {
    const double u = (p.x - origin.x) * along.x + (p.y - origin.y) * along.y;
    const double v = (p.x - origin.x) * across.x + (p.y - origin.y) * across.y;
    reach = reach.empty() ? Interval{u, u} : hull(reach, {u, u});
    offsets = offsets.empty() ? Interval{v, v} : hull(offsets, {v, v});
  }
  std::vector<Segment2> lines;
  if (reach.empty())
    return lines;
  const auto at = [&](double u, double v) {
    return Point2{origin.x + along.x * u + across.x * v, origin.y + along.y * u + across.y * v};
  };
  for (double k = std::ceil(offsets.from / spacing); k * spacing <= offsets.to; ++k) {
    const Segment2 whole{at(reach.from - 1, k * spacing), at(reach.to + 1, k * spacing)};
    const std::vector<Segment2> parts = clipped(whole, outline);
    lines.insert(lines.end(), parts.begin(), parts.end());
  }
  return lines;
}

} // namespace sillwright
