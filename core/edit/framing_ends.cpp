#include "core/edit/framing_ends.h"

#include <algorithm>

#include "core/base/tolerance.h"

namespace sillwright {

std::vector<FramingEnd> framingEndsOf(const WallLine& wall, double length) {
  std::vector<FramingEnd> ends{{0, Side::Left}, {length, Side::Right}};
  for (const Opening& opening : wall.openings) {
    ends.push_back({opening.from, Side::Right});
    ends.push_back({opening.to, Side::Left});
  }
  for (const Panel& panel : wall.panels) {
    ends.push_back({panel.from, Side::Left});
    ends.push_back({panel.to, Side::Right});
  }
  return ends;
}

std::optional<FramingEnd> endNear(const WallLine& wall, double length, Interval stretch, double reach) {
  std::optional<FramingEnd> nearest;
  double least = reach;
  for (const FramingEnd& end : framingEndsOf(wall, length)) {
    const double away = end.side == Side::Left ? stretch.from - end.station : end.station - stretch.to;
    if (away < -tolerance::same || away > least + tolerance::same)
      continue;
    const bool nearer = !nearest || away < least - tolerance::same;
    if (nearer || (end.side == Side::Left && nearest->side == Side::Right)) {
      nearest = end;
      least = std::min(least, away);
    }
  }
  return nearest;
}

Interval pierAt(const WallLine& wall, double length, double station) {
  Interval pier{0, length};
  for (const Opening& opening : wall.openings) {
    if (station > opening.from && station < opening.to)
      return {opening.from, opening.to};
    if (opening.to <= station)
      pier.from = std::max(pier.from, opening.to);
    else
      pier.to = std::min(pier.to, opening.from);
  }
  return pier;
}

} // namespace sillwright
