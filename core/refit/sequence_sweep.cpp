#include "core/refit/sequence_sweep.h"

#include <algorithm>

#include "core/refit/sequence_views.h"
#include "core/refit/sequence_ways.h"

namespace sillwright::sequence {
namespace {

constexpr std::size_t kMostReserved = std::size_t{1} << 18;

// The sweep over one sill piece; those to its right are done.
class SillSweep {
public:
  SillSweep(Sweep& givenSweep, Views& givenViews, int givenSill)
      : sweep(givenSweep), steps(sweep.steps), views(givenViews), which(givenSill), sill(steps.sills[which]),
        table(sweep.tables[which]), options(steps.problem->depthOptions) {
    table.counts = sill.least + 1;
    table.options = options;
    ways = waysOf(steps, sill);
    waysFrom.resize(options);
    for (std::size_t way = 0; way < ways.size(); ++way)
      for (const int option : ways[way].from)
        waysFrom[option].push_back(way);
    passed.resize(ways.size() * table.counts * allUses());
    const std::size_t marks = sill.stretch.to - sill.stretch.from + 1;
    table.base.assign(marks, SillTable::kNone);
    const std::size_t whole = marks * options * table.counts * (allUses() + 1);
    table.placing.reserve(std::min(whole, kMostReserved));
    table.onward.reserve(std::min(whole, kMostReserved));
    table.states.assign(marks, 1);
    table.firstCount.assign(marks, 0);
    table.firstUse.assign(marks, 0);
    table.uses.assign(marks, 0);
    nextPassed.assign(ways.size(), sill.stretch.to);
    left.resize(static_cast<std::size_t>(options) * allUses());
  }

  void run() {
    for (Mark station = sill.stretch.to; station >= sill.stretch.from; --station)
      if (findLeft(station))
        stand(station);
    chartEntering();
  }

private:
  void chartEntering() {
    if (sill.first.from > sill.first.to)
      return;
    table.entering.assign(sill.entry(options, sill.first.from), kNever);
    for (int option = 0; option < options; ++option) {
      Weight least = kNever;
      for (Mark station = sill.first.to; station >= sill.first.from; --station) {
        const int partThere = steps.partAt(station);
        for (int state = Steps::firstState(partThere); state < table.states[station - sill.stretch.from]; ++state) {
          const Weight cost = sweep.placing(which, {station, option, state}, 0, 0);
          if (!isNever(cost))
            least = std::min(least, cost + entering(steps, partThere, state) + endedBefore(station));
        }
        table.entering[sill.entry(option, station)] = least;
      }
    }
  }

  int allUses() const { return sill.references + 1; }
  const Weight& endedBefore(Mark station) const { return steps.endedBefore[station - steps.axis.from]; }
  bool mayStand(Mark station, int option) const { return steps.anchors.grounds[which].at(station, option) != kBlocked; }

  // Fewest and most reference bolts used before a bolt there, as far as the bound lets it stand. Whether it does.
  bool findLeft(Mark station) {
    firstUse = allUses();
    lastUse = -1;
    if (sweep.bound.floor && !floorTable().holds(sill.stretch.to - station))
      return false;
    const Weight others = steps.anchors.standing + steps.allChains;
    for (int option = 0; option < options; ++option) {
      if (!mayStand(station, option))
        continue;
      for (int used = 0; used < allUses(); ++used) {
        Weight& here = left[option * allUses() + used];
        here = leftOf(station, option, used);
        if (isNever(here) || sweep.bound.most < others + here)
          continue;
        firstUse = std::min(firstUse, used);
        lastUse = std::max(lastUse, used);
      }
    }
    return firstUse <= lastUse;
  }

  const SillTable& floorTable() const {
    const std::vector<SillTable>& tables = sweep.bound.floor->tables;
    return tables[tables.size() - 1 - which];
  }

  // Least cost of all bolts left of this one, where so many references are used by them.
  Weight leftOf(Mark station, int option, int used) const {
    if (!sweep.bound.floor)
      return {};
    const SillTable& floor = floorTable();
    const Mark mark = sill.stretch.to - station; // seen from the other side
    const int there = sill.references - used;
    Weight least = kNever;
    if (!floor.holds(mark) || there < floor.firstUse[mark] || there >= floor.firstUse[mark] + floor.uses[mark])
      return least;
    for (int count = floor.firstCount[mark]; count < floor.counts; ++count)
      least = std::min(least, floor.onward[floor.index(mark, option, count, there, 0)]);
    return least;
  }

  // Where an entry of the mark in work stands among the others of that mark.
  std::size_t here(int state, int option, int count, int used) const {
    return ((static_cast<std::size_t>(state) * options + option) * table.counts + count) * width + used - firstUse;
  }

  void stand(Mark station) {
    enterPart(steps.partAt(station));
    gatherPassed(station);
    if (part >= 0)
      gatherWithin(station);
    width = lastUse - firstUse + 2;
    lookPast(station);
    states = 0;
    placing.clear();
    onward.clear();
    addStates(station, 1);
    if (part >= 0)
      addStates(station, statesWorth(station));
    store(station - sill.stretch.from);
  }

  void enterPart(int next) {
    if (next == part)
      return;
    part = next;
    views.lookFrom(which, part);
    statesHere = steps.statesIn(part);
    if (part < 0)
      return;
    chainEnd = steps.chains.chains[steps.part(part).chain].reach.to;
    within.clear();
    within.resize(passed.size() * statesHere);
    nextWithin.assign(ways.size(), std::min(chainEnd, sill.stretch.to));
  }

  std::size_t queue(std::size_t way, int count, int used) const {
    return (way * table.counts + count) * allUses() + used;
  }

  // Bolts to the right of the chain here, or right of this mark where there is none.
  void gatherPassed(Mark station) {
    for (std::size_t way = 0; way < ways.size(); ++way) {
      const Mark nearest = std::max(station + ways[way].nearest, part < 0 ? station : chainEnd + 1);
      for (Mark& next = nextPassed[way]; next >= nearest; --next)
        if (const Mark mark = next - sill.stretch.from; table.holds(mark))
          forEachUse(next, [&](int count, int used) {
            Weight least = kNever;
            for (int state = Steps::firstState(steps.partAt(next)); state < table.states[mark]; ++state)
              for (const int option : ways[way].to)
                least = std::min(least, table.placing[table.index(mark, option, count, used, state)] +
                                            entering(steps, steps.partAt(next), state));
            if (!isNever(least))
              passed[queue(way, count, used)].add(next, least + endedBefore(next));
          });
    }
  }

  // Bolts in the same chain, by state here.
  void gatherWithin(Mark station) {
    for (std::size_t way = 0; way < ways.size(); ++way)
      for (Mark& next = nextWithin[way]; next >= station + ways[way].nearest; --next)
        if (const Mark mark = next - sill.stretch.from; table.holds(mark))
          for (int state = 0; state < views.states(which, mark); ++state)
            if (const Weight* rows = views.placing(which, mark, state))
              forEachUse(next, [&](int count, int used) {
                Weight least = kNever;
                for (const int option : ways[way].to)
                  least = std::min(least, rows[table.row(mark, option, count, used)]);
                if (!isNever(least))
                  within[queue(way, count, used) * statesHere + state].add(next, least);
              });
  }

  // Counts and uses of the bolts left of one at `next`.
  template <typename Visit> void forEachUse(Mark next, Visit visit) const {
    const Mark mark = next - sill.stretch.from;
    const int last = table.firstUse[mark] + table.uses[mark] - 2;
    for (int count = table.firstCount[mark]; count < table.counts; ++count)
      for (int used = table.firstUse[mark]; used <= last && next <= sill.farthestAfter[count]; ++used)
        visit(count, used);
  }

  // Whether a bolt there can be the one that makes the count.
  bool canCount(Mark station, int count) const {
    return sill.least == 0 || (count > 0 && station <= sill.farthestAfter[count - 1]) ||
           (count == sill.least && station <= sill.farthestAfter[count]);
  }

  Mark farthestBy(Mark station, std::size_t way) const {
    return std::min(sill.farthestNext[station - sill.stretch.from], station + ways[way].farthest);
  }

  template <typename Visit> void forEachCountAfter(Mark station, Visit visit) const {
    for (int count = 0; count < table.counts; ++count)
      if (canCount(station, count))
        for (int used = std::max(firstUse, fewestAhead); used <= std::min(lastUse + 1, mostAhead); ++used)
          visit(count, used);
  }

  std::size_t pastIndex(std::size_t way, int count, int used) const {
    return (way * table.counts + count) * width + used - firstUse;
  }

  // The least of going on beyond the chain here, the same for all states up to what leaving the chain costs.
  void lookPast(Mark station) {
    past.assign(ways.size() * table.counts * width, kNever);
    for (std::size_t way = 0; way < ways.size(); ++way)
      if (const Mark farthest = farthestBy(station, way); farthest > (part < 0 ? station : chainEnd))
        forEachCountAfter(station, [&](int count, int used) {
          const Weight least = passed[queue(way, count, used)].leastUpTo(farthest);
          if (!isNever(least))
            past[pastIndex(way, count, used)] = least + ways[way].cost;
        });
  }

  // The states from those done up to so many.
  void addStates(Mark station, int upTo) {
    const int from = states;
    if (upTo <= from)
      return;
    states = upTo;
    placing.resize(here(states, 0, 0, firstUse), kNever);
    onward.resize(placing.size(), kNever);
    for (int state = from; state < states; ++state)
      for (int option = 0; option < options; ++option) {
        if (!mayStand(station, option))
          continue;
        const Effect effect = steps.effectAt(which, station, option, state);
        if (effect == kBlocked)
          continue;
        const Spot spot{station, option, state};
        for (const std::size_t way : waysFrom[option])
          goOn(spot, way);
        leaveSill(spot);
        place(spot, weightOf(effect));
      }
  }

  // How many of the states of the part the bound leaves, going by what state 0 costs.
  int statesWorth(Mark station) const {
    const std::vector<Weight>& excess = steps.part(part).excess;
    const Weight others = steps.anchors.standing + endedBefore(station) + entering(steps, part, 0);
    Weight spare{-1, 0};
    for (int option = 0; option < options; ++option)
      if (mayStand(station, option))
        for (int used = firstUse; used <= lastUse; ++used)
          for (int count = 0; count < table.counts; ++count)
            if (const Weight& cost = placing[here(0, option, count, used)]; !isNever(cost))
              spare = std::max(spare, sweep.bound.most - others - left[option * allUses() + used] - cost);
    return static_cast<int>(std::upper_bound(excess.begin(), excess.end(), spare) - excess.begin());
  }

  void goOn(const Spot& spot, std::size_t way) {
    const Weight leave = leaving(steps, spot);
    const Mark farthest = farthestBy(spot.station, way);
    forEachCountAfter(spot.station, [&](int count, int used) {
      Weight& then = onward[here(spot.state, spot.option, count, used)];
      if (const Weight& beyond = past[pastIndex(way, count, used)]; !isNever(beyond))
        then = std::min(then, beyond + leave);
      if (part < 0)
        return;
      const Weight near = within[queue(way, count, used) * statesHere + spot.state].leastUpTo(farthest);
      if (!isNever(near))
        then = std::min(then, near + ways[way].cost);
    });
  }

  void leaveSill(const Spot& spot) {
    if (spot.station < sill.last.from || spot.station > sill.last.to)
      return;
    const Weight rest = views.toEnter(which + 1, spot);
    if (isNever(rest))
      return;
    for (int used = firstUse; used <= std::min(lastUse + 1, sill.references); ++used)
      if (!isNever(sill.removalsFrom[used])) {
        Weight& then = onward[here(spot.state, spot.option, sill.least, used)];
        then = std::min(then, sill.removalsFrom[used] + rest);
      }
  }

  void place(const Spot& spot, const Weight& effect) {
    const Weight whole = steps.anchors.standing + endedBefore(spot.station) + entering(steps, part, spot.state);
    for (int used = lastUse; used >= firstUse; --used) {
      const Weight& before = left[spot.option * allUses() + used];
      if (isNever(before))
        continue;
      const Weight others = whole + before;
      const Weight matching = used < sill.references ? steps.matching(which, used, spot.station, spot.option) : kNever;
      for (int count = 0; count < table.counts; ++count) {
        if (spot.station > sill.farthestAfter[count])
          continue;
        const Weight cost = placingOf(spot, effect, matching, count, used);
        if (!isNever(cost) && !(sweep.bound.most < others + cost))
          placing[here(spot.state, spot.option, count, used)] = cost;
      }
    }
  }

  // Added, or matched with the next reference, or that one removed.
  Weight placingOf(const Spot& spot, const Weight& effect, const Weight& matching, int count, int used) const {
    const std::size_t after = here(spot.state, spot.option, sweep.capped(which, count + 1), used);
    Weight best = effect + weightOf(0, 1, 0, 0, 0) + onward[after];
    if (used == sill.references)
      return best;
    best = std::min(best, effect + matching + onward[after + 1]);
    if (used < lastUse)
      best = std::min(best, sill.removal[used] + placing[here(spot.state, spot.option, count, used + 1)]);
    return best;
  }

  // Keeps what the bound has left of the mark in work.
  void store(Mark mark) {
    int firstCount = table.counts;
    int first = lastUse + 1;
    int last = -1;
    for (int option = 0; option < options; ++option)
      for (int count = 0; count < table.counts; ++count)
        for (int used = firstUse; used <= lastUse; ++used)
          if (!isNever(placing[here(0, option, count, used)])) { // else no other state has any
            firstCount = std::min(firstCount, count);
            first = std::min(first, used);
            last = std::max(last, used);
          }
    if (last < 0)
      return;
    fewestAhead = std::min(fewestAhead, first);
    mostAhead = std::max(mostAhead, last);
    table.base[mark] = table.placing.size();
    table.states[mark] = states;
    table.firstCount[mark] = firstCount;
    table.firstUse[mark] = first;
    table.uses[mark] = last - first + 2;
    for (int state = 0; state < states; ++state)
      for (int option = 0; option < options; ++option)
        for (int count = firstCount; count < table.counts; ++count) {
          const auto from = static_cast<std::ptrdiff_t>(here(state, option, count, first));
          const auto to = static_cast<std::ptrdiff_t>(here(state, option, count, last + 2));
          table.placing.insert(table.placing.end(), placing.begin() + from, placing.begin() + to);
          table.onward.insert(table.onward.end(), onward.begin() + from, onward.begin() + to);
        }
  }

  Sweep& sweep;
  const Steps& steps;
  Views& views;
  int which;
  const SillSteps& sill;
  SillTable& table;
  int options;
  std::vector<Way> ways;
  std::vector<std::vector<std::size_t>> waysFrom; // by option of the left bolt
  std::vector<SlidingLeast> passed;               // by way, count, used
  std::vector<Mark> nextPassed;                   // by way
  std::vector<SlidingLeast> within;               // by way, count, used, state
  std::vector<Mark> nextWithin;
  int fewestAhead = 1 << 20; // of the references used before any bolt farther right
  int mostAhead = -1;
  int part = -2; // in work; -2: none yet
  Mark chainEnd = 0;
  int statesHere = 1;
  // Of the mark in work.
  int firstUse = 0;
  int lastUse = -1;
  int width = 0;
  int states = 0;
  std::vector<Weight> left; // by option and used: leftOf
  std::vector<Weight> past; // by way, count, used
  std::vector<Weight> placing;
  std::vector<Weight> onward;
};

} // namespace

Sweep sweepOf(const Problem& problem, Anchors anchors, const Bound& bound) {
  Sweep sweep;
  sweep.steps = stepsOf(problem, std::move(anchors));
  sweep.bound = bound;
  if (!sweep.steps.anchors.possible)
    return sweep;
  sweep.tables.resize(sweep.steps.sills.size());
  Views views(sweep);
  for (int which = static_cast<int>(sweep.steps.sills.size()) - 1; which >= 0; --which)
    SillSweep(sweep, views, which).run();
  const Weight rest = views.toEnter(0, {});
  const Weight best = isNever(rest) ? kNever : sweep.steps.anchors.standing + rest;
  sweep.best = bound.most < best ? kNever : best;
  return sweep;
}

Sweep sweepOf(const Problem& problem, const Bound& bound) {
  Weight most = bound.most;
  if (bound.floor) // the bolts cost at least so much
    most = most - (bound.floor->best - bound.floor->steps.anchors.standing);
  return sweepOf(problem, sortAnchors(problem, most), bound);
}

} // namespace sillwright::sequence
