#include "core/drawing/plan_shape.h"

#include <algorithm>
#include <unordered_set>

#include "core/drawing/plan.h"
#include "core/model/lookup.h"

namespace sillwright {

std::vector<std::vector<Point2>> outlinesOf(const Job& job) {
  std::vector<std::vector<Point2>> outlines;
  std::unordered_set<Id> seen;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    std::vector<Point2> corners;
    const Id first = job.walls[i].id;
    Id id = first;
    while (id && seen.insert(id).second) {
      const WallLine& wall = *job.walls.find(id);
      if (const Corner* corner = findCorner(job, wall.startCorner))
        corners.push_back(corner->at);
      id = wallAfter(job, wall);
    }
    if (id == first && corners.size() >= 3)
      outlines.push_back(std::move(corners));
  }
  return outlines;
}

std::optional<std::pair<Point2, Point2>> planBounds(const Job& job) {
  std::vector<Point2> points;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const WallLine& wall = job.walls[i];
    const double by = wall.footing.width > 0 ? wall.footing.projection : 0;
    for (const Point2 p : planConcrete(wall, placeOf(job, wall))) {
      points.push_back({p.x - by, p.y - by});
      points.push_back({p.x + by, p.y + by});
    }
  }
  return bounds(points);
}

PlanView fitPlan(const Job& job, const Bounds& window) {
  // Marks, lengths, the north arrow; a small window takes them closer.
  const double margin = std::clamp(0.16 * std::min(window.x1 - window.x0, window.y1 - window.y0), 36.0, 46.0);
  PlanView view;
  const auto box = planBounds(job);
  if (!box)
    return {0.6, {(window.x0 + window.x1) / 2, (window.y0 + window.y1) / 2}};
  const double width = std::max(box->second.x - box->first.x, 1.0);
  const double height = std::max(box->second.y - box->first.y, 1.0);
  view.scale = std::max(1e-3, std::min((window.x1 - window.x0 - 2 * margin) / width,
                                       (window.y1 - window.y0 - 2 * margin) / height));
  view.origin = {(window.x0 + window.x1) / 2 - (box->first.x + box->second.x) / 2 * view.scale,
                 (window.y0 + window.y1) / 2 + (box->first.y + box->second.y) / 2 * view.scale};
  return view;
}

} // namespace sillwright
