#include "core/drawing/plan_placer.h"

#include <cmath>

namespace sillwright {

double readable(double degrees) {
  while (degrees > 90 + 1e-6)
    degrees -= 180;
  while (degrees <= -90 + 1e-6)
    degrees += 180;
  return degrees;
}

// The first free middle for a box given about (0, 0): row by row away from the face, along the wall to both sides.
std::optional<Point2> Placer::beside(const PlanFrame& frame, double face, bool inside, Bounds box, const Spot& spot,
                                     bool overConcrete) const {
  const Point2 normal{std::abs(frame.inward.x), std::abs(frame.inward.y)};
  const double reach = normal.x * (box.x1 - box.x0) / 2 + normal.y * (box.y1 - box.y0) / 2;
  for (int row = 0; row < spot.rows; ++row)
    for (int i = 0; i <= 2 * spot.steps; ++i) {
      const double along = (i % 2 ? 1 : -1) * ((i + 1) / 2) * spot.step;
      const double station = spot.station + along / frame.scale;
      if (i > 0 && !spot.stations.contains(station))
        continue;
      const double out = (spot.clear + reach + row * spot.rowStep) / frame.scale;
      const Point2 middle = frame.page(station, inside ? face + out : face - out);
      const Bounds at = box.moved(middle.x, middle.y);
      if (overConcrete ? !room.taken(at) : room.free(at))
        return middle;
    }
  return std::nullopt;
}

// Outside, then inside; with `never` dropped, at last over concrete, and then far out.
bool Placer::placeText(PlanText& text, const PlanFrame& frame, double thickness, const Spot& spot, bool never) {
  text.middle = {};
  const Bounds box = boxOf(text).grown(apart);
  auto middle = beside(frame, 0, false, box, spot, false);
  if (!middle)
    middle = beside(frame, thickness, true, box, spot, false);
  if (!middle && never) {
    Spot wide = spot;
    wide.rows = 40;
    middle = beside(frame, 0, false, box, wide, false);
    if (!middle)
      middle = beside(frame, 0, false, box, wide, true);
  }
  if (!middle)
    return false;
  text.middle = *middle;
  takeText(text);
  return true;
}

} // namespace sillwright
