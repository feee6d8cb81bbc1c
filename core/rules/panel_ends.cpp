#include "core/rules/panel_ends.h"

#include <cmath>

#include "core/base/tolerance.h"

namespace sillwright {

namespace {

// The strap nearest to a station among those whose centre line is on the wanted stretch; ties: the lower id.
const StrapBody* nearest(const WallLayout& layout, double station, Interval stretch) {
  const StrapBody* best = nullptr;
  double bestAway = 0;
  for (const StrapBody& strap : layout.straps) {
    const double at = strap.strap->station;
    if (!grown(stretch, tolerance::same).contains(at))
      continue;
    const double away = std::abs(at - station);
    if (!best || away < bestAway - tolerance::same || (away < bestAway + tolerance::same && strap.id < best->id)) {
      best = &strap;
      bestAway = away;
    }
  }
  return best;
}

} // namespace

const StrapBody* strapAtEnd(const WallLayout& layout, const Panel& panel, Side end) {
  const double middle = (panel.from + panel.to) / 2;
  if (end == Side::Left)
    return nearest(layout, panel.from, {panel.from, std::min(middle, panel.from + endReach)});
  return nearest(layout, panel.to, {std::max(middle, panel.to - endReach), panel.to});
}

const StrapBody* strapBeside(const WallLayout& layout, const Opening& opening, Side side) {
  if (side == Side::Left)
    return nearest(layout, opening.from, {opening.from - endReach, opening.from});
  return nearest(layout, opening.to, {opening.to, opening.to + endReach});
}

} // namespace sillwright
