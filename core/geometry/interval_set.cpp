#include "core/geometry/interval_set.h"

#include <cmath>

#include "core/base/tolerance.h"

namespace sillwright {

std::vector<Interval> withoutOpen(Interval whole, std::vector<Interval> open) {
  std::sort(open.begin(), open.end(), [](Interval a, Interval b) { return a.from < b.from; });
  std::vector<Interval> left;
  double from = whole.from;
  for (const Interval each : open) {
    if (each.to <= each.from || each.to <= from)
      continue;
    if (each.from > whole.to)
      break;
    if (each.from >= from)
      left.push_back({from, each.from});
    from = each.to;
  }
  if (from <= whole.to)
    left.push_back({from, whole.to});
  return left;
}

std::optional<Interval> partAt(const std::vector<Interval>& parts, double station) {
  for (const Interval part : parts)
    if (grown(part, tolerance::rounding).contains(station))
      return part;
  return std::nullopt;
}

std::optional<double> nearestIn(const std::vector<Interval>& parts, double station) {
  std::optional<double> best;
  for (const Interval part : parts) {
    const double at = std::clamp(station, part.from, part.to);
    if (!best || std::abs(at - station) < std::abs(*best - station))
      best = at;
  }
  return best;
}

} // namespace sillwright
