// Inside the optimiser: from one sill piece into the next, and look-ups in the tables.
#include <algorithm>

#include "core/refit/sequence_sweep.h"

namespace sillwright::sequence {
namespace {

int groupAround(const Steps& steps, const Spot& left) {
  return left.station < steps.axis.from ? -1 : steps.groupAt(left.station);
}

Mark nearestFirst(const Steps& steps, const SillSteps& sill, const Spot& left, int option) {
  return left.station < steps.axis.from ? sill.first.from
                                        : std::max(sill.first.from, left.station + steps.gap(left.option, option));
}

// The first bolt outside the reach of the group that the left bolt stands in.
Weight enterBeyond(const Sweep& sweep, int which, const Spot& left) {
  const Steps& steps = sweep.steps;
  const SillSteps& sill = steps.sills[which];
  const int group = groupAround(steps, left);
  Weight best = kNever;
  for (int option = 0; option < steps.problem->depthOptions; ++option) {
    Mark nearest = nearestFirst(steps, sill, left, option);
    if (group >= 0)
      nearest = std::max(nearest, steps.anchors.groups[group].reach.to + 1);
    if (nearest <= sill.first.to)
      best = std::min(best, sweep.tables[which].entering[sill.entry(option, nearest)]);
  }
  if (isNever(best))
    return kNever;
  return best + leaving(steps, left);
}

// The first bolt in the reach of the same group.
Weight enterWithin(const Sweep& sweep, int which, const Spot& left) {
  const Steps& steps = sweep.steps;
  const SillSteps& sill = steps.sills[which];
  const int group = groupAround(steps, left);
  Weight best = kNever;
  if (group < 0)
    return best;
  const Mark farthest = std::min(sill.first.to, steps.anchors.groups[group].reach.to);
  for (int option = 0; option < steps.problem->depthOptions; ++option)
    for (Mark station = nearestFirst(steps, sill, left, option); station <= farthest; ++station)
      best = std::min(best, sweep.placing(which, {station, option, left.stance}, 0, 0));
  return best;
}

std::optional<std::size_t> entry(const SillTable& table, Mark mark, const Spot& spot, int count, int used) {
  if (table.base[mark] == SillTable::kNone || count < table.firstCount[mark] || used < table.firstUse[mark] ||
      used >= table.firstUse[mark] + table.uses[mark])
    return std::nullopt;
  return table.index(mark, spot.option, count, used, spot.stance);
}

} // namespace

Weight Sweep::placing(int sill, const Spot& spot, int count, int used) const {
  const auto at = entry(tables[sill], spot.station - steps.sills[sill].stretch.from, spot, count, used);
  return at ? tables[sill].placing[*at] : kNever;
}

Weight Sweep::onward(int sill, const Spot& spot, int count, int used) const {
  const auto at = entry(tables[sill], spot.station - steps.sills[sill].stretch.from, spot, count, used);
  return at ? tables[sill].onward[*at] : kNever;
}

Weight costToEnter(const Sweep& sweep, int which, const Spot& left) {
  const Steps& steps = sweep.steps;
  if (which == static_cast<int>(steps.sills.size()))
    return steps.allGroups + leaving(steps, left);
  Weight best = std::min(enterBeyond(sweep, which, left), enterWithin(sweep, which, left));
  const SillSteps& sill = steps.sills[which];
  if (sill.least == 0 && !isNever(sill.removalsFrom[0])) {
    const Weight skipping = costToEnter(sweep, which + 1, left);
    if (!isNever(skipping))
      best = std::min(best, sill.removalsFrom[0] + skipping);
  }
  return best;
}

} // namespace sillwright::sequence
