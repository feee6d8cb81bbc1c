#include "ui/canvas/hit_test.h"

#include <algorithm>
#include <cmath>

namespace sillwright {

namespace {

double distanceTo(const Bounds& box, Point2 p) {
  const double dx = std::max({box.x0 - p.x, 0.0, p.x - box.x1});
  const double dy = std::max({box.y0 - p.y, 0.0, p.y - box.y1});
  return std::hypot(dx, dy);
}

bool isHandle(HitArea::Part part) {
  return part == HitArea::Part::FromEnd || part == HitArea::Part::ToEnd || part == HitArea::Part::Corner;
}

bool isWide(const Bounds& box) {
  constexpr double wide = 24; // pt
  return std::min(box.x1 - box.x0, box.y1 - box.y0) > wide;
}

} // namespace

std::optional<HitArea> topmost(std::span<const HitArea> areas, Point2 at, double reach) {
  const HitArea* inside = nullptr;
  const HitArea* handle = nullptr;
  const HitArea* near = nullptr;
  double nearest = reach;
  for (const HitArea& area : areas) { // later ones lie on top
    const double away = distanceTo(area.box, at);
    if (away == 0) {
      inside = &area;
      if (isHandle(area.part))
        handle = &area;
    } else if (away <= nearest) {
      near = &area;
      nearest = away;
    }
  }
  // Thin steel in front of a wide field is what was meant by a near miss.
  if (inside && near && near > inside && isWide(inside->box) && !isWide(near->box))
    inside = nullptr;
  const HitArea* found = handle ? handle : inside ? inside : near;
  return found ? std::optional(*found) : std::nullopt;
}

} // namespace sillwright
