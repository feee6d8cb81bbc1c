#include "core/drawing/free_places.h"

#include <cmath>

namespace sillwright {

namespace {

constexpr double cell = 64;

Interval reach(const Polygon2& outline, Point2 axis) {
  Interval found{1e300, -1e300};
  for (const Point2 p : outline)
    found = hull(found, around(p.x * axis.x + p.y * axis.y, 0));
  return found;
}

// Touching is apart.
bool apartAcrossAnEdgeOf(const Polygon2& outline, const Polygon2& other) {
  constexpr double touching = 1e-9;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Point2 a = outline[i];
    const Point2 b = outline[(i + 1) % outline.size()];
    const double length = std::hypot(b.x - a.x, b.y - a.y);
    if (length == 0)
      continue;
    const Point2 axis{(b.y - a.y) / length, (a.x - b.x) / length};
    if (gap(reach(outline, axis), reach(other, axis)) >= -touching)
      return true;
  }
  return false;
}

} // namespace

Bounds boundsOf(const Polygon2& outline) {
  const Interval x = reach(outline, {1, 0});
  const Interval y = reach(outline, {0, 1});
  return {x.from, y.from, x.to, y.to};
}

bool overlaps(const Polygon2& first, const Polygon2& second) {
  return !first.empty() && !second.empty() && !apartAcrossAnEdgeOf(first, second) &&
         !apartAcrossAnEdgeOf(second, first);
}

bool overlaps(const Polygon2& outline, const Bounds& box) {
  return overlaps(outline, rectangle(box.x0, box.y0, box.x1, box.y1));
}

void FreePlaces::enter(Cells& cells, const Bounds& box, std::uint32_t index) {
  for (auto i = std::int32_t(std::floor(box.x0 / cell)); i <= std::int32_t(std::floor(box.x1 / cell)); ++i)
    for (auto j = std::int32_t(std::floor(box.y0 / cell)); j <= std::int32_t(std::floor(box.y1 / cell)); ++j)
      cells[(std::uint64_t(std::uint32_t(i)) << 32) | std::uint32_t(j)].push_back(index);
}

template <class Test> bool FreePlaces::any(const Cells& cells, const Bounds& box, Test&& test) {
  for (auto i = std::int32_t(std::floor(box.x0 / cell)); i <= std::int32_t(std::floor(box.x1 / cell)); ++i)
    for (auto j = std::int32_t(std::floor(box.y0 / cell)); j <= std::int32_t(std::floor(box.y1 / cell)); ++j)
      if (const auto found = cells.find((std::uint64_t(std::uint32_t(i)) << 32) | std::uint32_t(j));
          found != cells.end())
        for (const std::uint32_t index : found->second)
          if (test(index))
            return true;
  return false;
}

void FreePlaces::take(const Bounds& box) {
  boxes_.push_back(box);
  enter(boxCells_, box, std::uint32_t(boxes_.size() - 1));
}

void FreePlaces::avoid(const Polygon2& outline) {
  if (outline.empty())
    return;
  outlines_.push_back(outline);
  enter(outlineCells_, boundsOf(outline), std::uint32_t(outlines_.size() - 1));
}

bool FreePlaces::taken(const Bounds& box) const {
  return any(boxCells_, box, [&](std::uint32_t i) { return boxes_[i].overlaps(box); });
}

bool FreePlaces::avoided(const Bounds& box) const {
  return any(outlineCells_, box, [&](std::uint32_t i) { return overlaps(outlines_[i], box); });
}

} // namespace sillwright
