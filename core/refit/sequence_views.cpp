#include "core/refit/sequence_views.h"

#include <algorithm>

namespace sillwright::sequence {

void Views::lookFrom(int sill, int part) {
  if (!steps.sameChain(here, part)) {
    here = part;
    bySill.assign(steps.sills.size(), {});
  }
  while (here != part)
    stepLeft(sill);
  chartCrossing(sill);
}

// Only bolts that one in this sill piece can still have next.
void Views::stepLeft(int sill) {
  --here;
  const Stretch& marks = steps.part(here).marks;
  const Mark reach = steps.chains.chains[steps.part(here).chain].reach.to;
  for (int which = sill; which < static_cast<int>(steps.sills.size()); ++which) {
    const SillSteps& there = steps.sills[which];
    Mark last = there.first.to;
    if (which == sill)
      last = marks.to < there.stretch.from
                 ? there.stretch.to
                 : std::max(last, there.farthestNext[std::min(marks.to, there.stretch.to) - there.stretch.from]);
    last = std::min({last, reach, there.stretch.to});
    View view;
    view.base.assign(there.stretch.to - there.stretch.from + 1, SillTable::kNone);
    for (Mark station = std::max(marks.to + 1, there.stretch.from); station <= last; ++station)
      if (sweep.tables[which].holds(station - there.stretch.from))
        see(which, station - there.stretch.from, view);
    bySill[which] = std::move(view);
  }
}

// `here` has just become the part to the left of what bySill still tells.
void Views::see(int sill, Mark mark, View& view) const {
  const Part& part = steps.part(here);
  const std::size_t rows = sweep.tables[sill].rows(mark);
  view.base[mark] = view.placing.size();
  view.placing.resize(view.placing.size() + part.states() * rows, kNever);
  Weight* seen = &view.placing[view.base[mark]];
  const int there = here + 1;
  const Mark station = mark + steps.sills[sill].stretch.from;
  const bool isNext = steps.partAt(station) == there;
  const View& before = bySill[sill];
  if (!isNext && (before.base.empty() || before.base[mark] == SillTable::kNone))
    return;
  const Weight* placing =
      isNext ? &sweep.tables[sill].placing[sweep.tables[sill].base[mark]] : &before.placing[before.base[mark]];
  const int statesThere = steps.statesIn(there);
  const int known = isNext ? sweep.tables[sill].states[mark] : statesThere;
  const Weight least = part.after[0] - steps.part(there).after[0];
  for (std::size_t row = 0; row < rows; ++row)
    seen[row] = plus(least, placing[row]);
  for (int state = 1; state < part.states(); ++state)
    for (int next = 1; next < known; ++next) {
      const Weight& cost = part.to(state, next, statesThere);
      if (isNever(cost))
        continue;
      for (std::size_t row = 0; row < rows; ++row)
        seen[state * rows + row] = std::min(seen[state * rows + row], plus(cost, placing[next * rows + row]));
    }
}

const Weight* Views::placing(int sill, Mark mark, int state) const {
  const SillTable& table = sweep.tables[sill];
  if (!table.holds(mark))
    return nullptr;
  if (steps.partAt(mark + steps.sills[sill].stretch.from) == here)
    return state < table.states[mark] ? &table.placing[table.base[mark] + state * table.rows(mark)] : nullptr;
  const View& view = bySill[sill];
  if (view.base.empty() || view.base[mark] == SillTable::kNone)
    return nullptr;
  return &view.placing[view.base[mark] + state * table.rows(mark)];
}

int Views::states(int sill, Mark mark) const {
  return steps.partAt(mark + steps.sills[sill].stretch.from) == here ? sweep.tables[sill].states[mark]
                                                                     : steps.statesIn(here);
}

void Views::chartCrossing(int sill) {
  crossing.assign(steps.sills.size(), {});
  if (here < 0)
    return;
  const Mark reach = steps.chains.chains[steps.part(here).chain].reach.to;
  const std::size_t states = steps.statesIn(here);
  for (std::size_t which = sill + 1; which < steps.sills.size() && reach >= steps.sills[which].first.from; ++which) {
    const SillSteps& there = steps.sills[which];
    const SillTable& table = sweep.tables[which];
    if (there.first.from > there.first.to)
      continue;
    std::vector<Weight>& least = crossing[which];
    least.assign(there.entry(steps.columns, there.first.from) * states, kNever);
    for (int option = 0; option < steps.columns; ++option)
      for (Mark station = std::min(reach, there.first.to); station >= there.first.from; --station) {
        const Mark mark = station - there.stretch.from;
        const bool first = table.holds(mark) && table.firstCount[mark] == 0 && table.firstUse[mark] == 0;
        for (std::size_t state = 0; state < states; ++state) {
          Weight& now = least[there.entry(option, station) * states + state];
          if (station < std::min(reach, there.first.to))
            now = least[there.entry(option, station + 1) * states + state];
          const Weight* rows = first ? placing(static_cast<int>(which), mark, static_cast<int>(state)) : nullptr;
          if (rows)
            now = std::min(now, rows[table.row(mark, option, 0, 0)]);
        }
      }
  }
}

namespace {

Mark nearestFirst(const Steps& steps, const SillSteps& sill, const Spot& left, int option) {
  return left.station < steps.axis.from ? sill.first.from
                                        : std::max(sill.first.from, left.station + steps.gap(left.option, option));
}

} // namespace

// The first bolt outside the chain that the left bolt stands in.
Weight Views::beyond(int which, const Spot& left) const {
  const SillSteps& sill = steps.sills[which];
  const int part = steps.partAt(left.station);
  Weight best = kNever;
  for (int option = 0; option < steps.columns; ++option) {
    Mark nearest = nearestFirst(steps, sill, left, option);
    if (part >= 0)
      nearest = std::max(nearest, steps.chains.chains[steps.part(part).chain].reach.to + 1);
    if (nearest <= sill.first.to)
      best = std::min(best, sweep.tables[which].entering[sill.entry(option, nearest)]);
  }
  return isNever(best) ? kNever : best + leaving(steps, left);
}

// The first bolt in the same chain.
Weight Views::within(int which, const Spot& left) const {
  const SillSteps& sill = steps.sills[which];
  Weight best = kNever;
  if (here < 0 || left.station < steps.axis.from || crossing[which].empty())
    return best;
  for (int option = 0; option < steps.columns; ++option)
    if (const Mark nearest = nearestFirst(steps, sill, left, option); nearest <= sill.first.to)
      best = std::min(best, crossing[which][sill.entry(option, nearest) * steps.statesIn(here) + left.state]);
  return best;
}

Weight Views::toEnter(int which, const Spot& left) const {
  if (which == static_cast<int>(steps.sills.size()))
    return steps.allChains + leaving(steps, left);
  Weight best = std::min(beyond(which, left), within(which, left));
  const SillSteps& sill = steps.sills[which];
  if (sill.least == 0 && !isNever(sill.removalsFrom[0])) {
    const Weight skipping = toEnter(which + 1, left);
    if (!isNever(skipping))
      best = std::min(best, sill.removalsFrom[0] + skipping);
  }
  return best;
}

Weight Sweep::placing(int sill, const Spot& spot, int count, int used) const {
  const SillTable& table = tables[sill];
  const Mark mark = spot.station - steps.sills[sill].stretch.from;
  if (!table.holds(mark) || spot.state >= table.states[mark] || count < table.firstCount[mark] ||
      used < table.firstUse[mark] || used >= table.firstUse[mark] + table.uses[mark])
    return kNever;
  return table.placing[table.index(mark, spot.option, count, used, spot.state)];
}

Weight Sweep::onward(int sill, const Spot& spot, int count, int used) const {
  const SillTable& table = tables[sill];
  const Mark mark = spot.station - steps.sills[sill].stretch.from;
  if (!table.holds(mark) || spot.state >= table.states[mark] || count < table.firstCount[mark] ||
      used < table.firstUse[mark] || used >= table.firstUse[mark] + table.uses[mark])
    return kNever;
  return table.onward[table.index(mark, spot.option, count, used, spot.state)];
}

} // namespace sillwright::sequence
