#include "core/refit/bolt_near.h"

#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"
#include "core/geometry/passing.h"
#include "core/rules/anchor_checks.h"
#include "core/rules/measure.h"

namespace sillwright {

namespace {

std::vector<BlockedShifts> shiftsOf(const Capsule& own, const Capsule& still, double within) {
  const auto blocked = blockedShifts(own, still, Along::Station, within);
  return blocked ? std::vector{*blocked} : std::vector<BlockedShifts>{};
}
std::vector<BlockedShifts> shiftsOf(const Capsule& own, const Ribbon& still, double within) {
  return blockedShifts(own, still, Along::Station, within);
}

std::vector<Interval> united(std::vector<Interval> open) {
  std::sort(open.begin(), open.end(), [](Interval a, Interval b) { return a.from < b.from; });
  std::vector<Interval> joined;
  for (const Interval each : open)
    if (!joined.empty() && each.from < joined.back().to)
      joined.back().to = std::max(joined.back().to, each.to);
    else
      joined.push_back(each);
  return joined;
}

template <class Part>
void add(const AnchorBody& bolt, const Part& still, const Box3& box, double within, std::vector<Interval>& open) {
  if (gap(bolt.steelBox.d, box.d) > within || gap(bolt.steelBox.z, box.z) > within)
    return;
  for (const Capsule& own : partsOf(bolt))
    for (const BlockedShifts& shift : shiftsOf(own, still, within))
      open.push_back(grown({bolt.station + shift.from, bolt.station + shift.to}, tolerance::rounding));
}

} // namespace

std::vector<Interval> nearerThan(const AnchorBody& bolt, const BarBody& bar, double within) {
  std::vector<Interval> open;
  add(bolt, bar.body, bar.box, within, open);
  return united(std::move(open));
}

std::vector<Interval> nearerThan(const AnchorBody& bolt, const StrapBody& strap, double within) {
  std::vector<Interval> open;
  if (strap.embedded.profile.size() > 1)
    add(bolt, strap.embedded, strap.embeddedBox, within, open);
  return united(std::move(open));
}

std::vector<Interval> nearerThan(const AnchorBody& bolt, const AnchorBody& rod, double within) {
  std::vector<Interval> open;
  for (const Capsule& part : partsOf(rod))
    add(bolt, part, rod.steelBox, within, open);
  return united(std::move(open));
}

std::optional<Interval> underWood(const AnchorBody& bolt, const Box3& own, const Box3& wood, double clear) {
  const double across = std::max(0.0, gap(own.d, wood.d));
  const bool beside = clear > 0 ? across >= clear : !under(gap(own.d, wood.d), 0);
  const double bearing = bolt.washerBox ? bolt.washerBox->z.from : bolt.pour;
  const double top = std::max({bolt.top, bearing, bolt.washerBox ? bolt.washerBox->z.to : bearing});
  if (beside || under(top, wood.z.from))
    return std::nullopt;
  const double along = std::sqrt(std::max(0.0, clear * clear - across * across));
  return grown(Interval{wood.s.from - (own.s.to - bolt.station), wood.s.to + (bolt.station - own.s.from)}, along);
}

std::optional<Interval> axesNearerThan(const AnchorBody& bolt, const AnchorBody& other, double within) {
  const double across = bolt.depth - other.depth;
  if (!under(std::abs(across), within) || overlap({bolt.bottom, bolt.pour}, {other.bottom, other.pour}).empty())
    return std::nullopt;
  return around(other.station, 2 * std::sqrt(within * within - across * across));
}

} // namespace sillwright
