#include "ui/canvas/plan_grid.h"

#include <algorithm>
#include <cmath>

namespace sillwright {

namespace {

constexpr double square = 120; // in
constexpr double mostSquares = 400;

bool touch(const Bounds& a, const Bounds& b) {
  return a.x0 <= b.x1 && b.x0 <= a.x1 && a.y0 <= b.y1 && b.y0 <= a.y1;
}

double squareCount(const Bounds& box) { return ((box.x1 - box.x0) / square + 1) * ((box.y1 - box.y0) / square + 1); }

std::uint64_t key(std::int64_t column, std::int64_t row) {
  return static_cast<std::uint64_t>(column) << 32 ^ (static_cast<std::uint64_t>(row) & 0xFFFFFFFFu);
}

} // namespace

bool PlanGrid::isLarge(const Bounds& box) { return squareCount(box) > mostSquares; }

void PlanGrid::forSquares(const Bounds& box, const std::function<void(std::uint64_t)>& visit) const {
  const auto at = [](double v) { return static_cast<std::int64_t>(std::floor(v / square)); };
  for (std::int64_t column = at(box.x0); column <= at(box.x1); ++column)
    for (std::int64_t row = at(box.y0); row <= at(box.y1); ++row)
      visit(key(column, row));
}

void PlanGrid::set(Id wall, const Bounds& box) {
  remove(wall);
  boxes_[wall] = box;
  if (isLarge(box))
    large_.insert(wall);
  else
    forSquares(box, [&](std::uint64_t k) { squares_[k].push_back(wall); });
}

void PlanGrid::remove(Id wall) {
  const auto found = boxes_.find(wall);
  if (found == boxes_.end())
    return;
  if (large_.erase(wall) == 0)
    forSquares(found->second, [&](std::uint64_t k) {
      const auto at = squares_.find(k);
      std::erase(at->second, wall);
      if (at->second.empty())
        squares_.erase(at);
    });
  boxes_.erase(found);
}

void PlanGrid::clear() {
  boxes_.clear();
  squares_.clear();
  large_.clear();
}

bool PlanGrid::touches(Id wall, const Bounds& window) const {
  const auto found = boxes_.find(wall);
  return found != boxes_.end() && touch(found->second, window);
}

std::vector<Id> PlanGrid::inside(const Bounds& window) const {
  std::vector<Id> found(large_.begin(), large_.end());
  if (squareCount(window) > static_cast<double>(squares_.size())) { // all of the plan is in sight
    for (const auto& [wall, box] : boxes_)
      found.push_back(wall);
  } else {
    forSquares(window, [&](std::uint64_t k) {
      if (const auto at = squares_.find(k); at != squares_.end())
        found.insert(found.end(), at->second.begin(), at->second.end());
    });
  }
  std::erase_if(found, [&](Id wall) { return !touch(boxes_.at(wall), window); });
  std::sort(found.begin(), found.end());
  found.erase(std::unique(found.begin(), found.end()), found.end());
  return found;
}

} // namespace sillwright
