#include "core/refit/sequence_sweep.h"

#include <algorithm>

#include "core/refit/sequence_ways.h"

namespace sillwright::sequence {
namespace {

constexpr std::size_t kMostReserved = std::size_t{1} << 20;

// The sweep over one sill piece; those to its right are done.
class SillSweep {
public:
  SillSweep(Sweep& givenSweep, int givenSill)
      : sweep(givenSweep), steps(sweep.steps), which(givenSill), sill(steps.sills[which]), table(sweep.tables[which]) {
    table.counts = sill.least + 1;
    ways = waysOf(steps, sill);
    passed.resize(ways.size() * table.counts * allUses());
    const std::size_t marks = sill.stretch.to - sill.stretch.from + 1;
    table.base.assign(marks, SillTable::kNone);
    // Address space, not memory: pages that are not written cost nothing, growing step by step would write them twice.
    const std::size_t whole = marks * steps.problem->depthOptions * table.counts * (allUses() + 1);
    table.placing.reserve(std::min(whole, kMostReserved));
    table.onward.reserve(std::min(whole, kMostReserved));
    table.stances.assign(marks, 1);
    table.firstCount.assign(marks, 0);
    table.firstUse.assign(marks, 0);
    table.uses.assign(marks, 0);
    nextPassed.assign(ways.size(), sill.stretch.to);
  }

  void run() {
    for (Mark station = sill.stretch.to; station >= sill.stretch.from; --station)
      if (const auto [first, last] = usesAt(station); first <= last)
        stand(station, first, last);
    chartEntering();
  }

private:
  void chartEntering() {
    if (sill.first.from > sill.first.to)
      return;
    table.entering.assign(sill.entry(steps.problem->depthOptions, sill.first.from), kNever);
    for (int option = 0; option < steps.problem->depthOptions; ++option) {
      Weight least = kNever;
      for (Mark station = sill.first.to; station >= sill.first.from; --station) {
        for (int stance = 0; stance < table.stances[station - sill.stretch.from]; ++stance) {
          const Weight cost = sweep.placing(which, {station, option, stance}, 0, 0);
          if (!isNever(cost))
            least = std::min(least, cost + steps.endedBefore[station - steps.axis.from]);
        }
        table.entering[sill.entry(option, station)] = least;
      }
    }
  }

  int allUses() const { return sill.references + 1; }

  // Fewest and most reference bolts used before a bolt there, as far as the bound lets it stand.
  std::pair<int, int> usesAt(Mark station) const {
    std::pair<int, int> uses{allUses(), -1};
    if (sweep.bound.floor && !floorTable().holds(sill.stretch.to - station))
      return uses;
    const Weight others = steps.anchors.standing + steps.allGroups;
    for (int option = 0; option < steps.problem->depthOptions; ++option) {
      if (steps.anchors.grounds[which].at(station, option) == kBlocked)
        continue;
      for (int used = 0; used < allUses(); ++used)
        if (!isNever(leftOf(station, option, used)) && !(sweep.bound.most < others + leftOf(station, option, used)))
          uses = {std::min(uses.first, used), std::max(uses.second, used)};
    }
    return uses;
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
    const int left = sill.references - used;
    Weight least = kNever;
    if (!floor.holds(mark) || left < floor.firstUse[mark] || left >= floor.firstUse[mark] + floor.uses[mark])
      return least;
    for (int count = floor.firstCount[mark]; count < floor.counts; ++count)
      least = std::min(least, floor.onward[floor.index(mark, option, count, left, 0)]);
    return least;
  }

  // Where a state of the mark in work stands among the others of that mark.
  std::size_t here(int option, int count, int used, int stance) const {
    return ((static_cast<std::size_t>(option) * table.counts + count) * (allUses() + 1) + used) * stancesHere + stance;
  }

  void stand(Mark station, int first, int last) {
    enterGroup(steps.groupAt(station));
    gatherPassed(station);
    if (group >= 0)
      gatherWithin(station);
    firstUse = first;
    lastUse = last;
    placing.assign(here(steps.problem->depthOptions, 0, 0, 0), kNever);
    onward.assign(placing.size(), kNever);
    for (std::size_t way = 0; way < ways.size(); ++way)
      for (const int option : ways[way].from)
        if (steps.anchors.grounds[which].at(station, option) != kBlocked)
          goOn(station, option, way);
    for (int option = 0; option < steps.problem->depthOptions; ++option)
      if (steps.anchors.grounds[which].at(station, option) != kBlocked)
        for (int stance = 0; stance < stancesHere; ++stance) {
          leaveSill({station, option, stance});
          place({station, option, stance});
        }
    store(station - sill.stretch.from);
  }

  // Keeps what the bound has left of the mark in work.
  void store(Mark mark) {
    int firstCount = table.counts;
    int first = lastUse + 1;
    int last = -1;
    for (int option = 0; option < steps.problem->depthOptions; ++option)
      for (int count = 0; count < table.counts; ++count)
        for (int used = firstUse; used <= lastUse; ++used)
          for (int stance = 0; stance < stancesHere; ++stance)
            if (!isNever(placing[here(option, count, used, stance)])) {
              firstCount = std::min(firstCount, count);
              first = std::min(first, used);
              last = std::max(last, used);
            }
    if (last < 0)
      return;
    fewestAhead = std::min(fewestAhead, first);
    mostAhead = std::max(mostAhead, last);
    table.base[mark] = table.placing.size();
    table.stances[mark] = stancesHere;
    table.firstCount[mark] = firstCount;
    table.firstUse[mark] = first;
    table.uses[mark] = last - first + 2;
    for (int option = 0; option < steps.problem->depthOptions; ++option)
      for (int count = firstCount; count < table.counts; ++count) {
        const auto from = static_cast<std::ptrdiff_t>(here(option, count, first, 0));
        const auto to = static_cast<std::ptrdiff_t>(here(option, count, last + 2, 0));
        table.placing.insert(table.placing.end(), placing.begin() + from, placing.begin() + to);
        table.onward.insert(table.onward.end(), onward.begin() + from, onward.begin() + to);
      }
  }

  void enterGroup(int next) {
    if (next == group)
      return;
    group = next;
    stancesHere = 1;
    if (group < 0)
      return;
    stancesHere = static_cast<int>(steps.anchors.groups[group].stances.size());
    within.clear();
    within.resize(passed.size() * stancesHere);
    nextWithin.assign(ways.size(), std::min(steps.anchors.groups[group].reach.to, sill.stretch.to));
  }

  std::size_t queue(std::size_t way, int count, int used) const {
    return (way * table.counts + count) * allUses() + used;
  }

  // Bolts to the right of the reach of the group here, or right of this mark where there is none.
  void gatherPassed(Mark station) {
    for (std::size_t way = 0; way < ways.size(); ++way) {
      Mark nearest = station + ways[way].nearest;
      if (group >= 0)
        nearest = std::max(nearest, steps.anchors.groups[group].reach.to + 1);
      for (Mark& next = nextPassed[way]; next >= nearest; --next)
        if (table.base[next - sill.stretch.from] != SillTable::kNone)
          forEachUse(way, next, [&](std::size_t at, int stance, const Weight& value) {
            (void)stance;
            passed[at].add(next, value + steps.endedBefore[next - steps.axis.from]);
          });
    }
  }

  // Bolts in the reach of the same group, by stance.
  void gatherWithin(Mark station) {
    for (std::size_t way = 0; way < ways.size(); ++way)
      for (Mark& next = nextWithin[way]; next >= station + ways[way].nearest; --next)
        if (table.base[next - sill.stretch.from] != SillTable::kNone)
          forEachUse(way, next, [&](std::size_t at, int stance, const Weight& value) {
            within[at * stancesHere + stance].add(next, value);
          });
  }

  // Calls add(queue, stance, cost) for all that a bolt at `next` may be there as.
  template <typename Add> void forEachUse(std::size_t way, Mark next, Add add) {
    const Mark mark = next - sill.stretch.from;
    const int last = table.firstUse[mark] + table.uses[mark] - 2;
    for (int count = table.firstCount[mark]; count < table.counts; ++count) {
      if (next > sill.farthestAfter[count])
        continue;
      for (int used = table.firstUse[mark]; used <= last; ++used)
        for (int stance = 0; stance < table.stances[mark]; ++stance) {
          Weight least = kNever;
          for (const int option : ways[way].to)
            least = std::min(least, table.placing[table.index(mark, option, count, used, stance)]);
          if (!isNever(least))
            add(queue(way, count, used), stance, least);
        }
    }
  }

  // Whether a bolt there can be the one that makes the count.
  bool canCount(Mark station, int count) const {
    return sill.least == 0 || (count > 0 && station <= sill.farthestAfter[count - 1]) ||
           (count == sill.least && station <= sill.farthestAfter[count]);
  }

  void goOn(Mark station, int option, std::size_t way) {
    const Mark farthest = std::min(sill.farthestNext[station - sill.stretch.from], station + ways[way].farthest);
    const Mark beyond = group < 0 ? station : steps.anchors.groups[group].reach.to;
    for (int count = 0; count < table.counts; ++count) {
      if (!canCount(station, count))
        continue;
      for (int used = std::max(firstUse, fewestAhead); used <= std::min(lastUse + 1, mostAhead); ++used) {
        const std::size_t at = queue(way, count, used);
        const Weight past = beyond < farthest ? passed[at].leastUpTo(farthest) : kNever;
        for (int stance = 0; stance < stancesHere; ++stance) {
          Weight& then = onward[here(option, count, used, stance)];
          if (!isNever(past))
            then = std::min(then, past + leaving(steps, {station, option, stance}) + ways[way].cost);
          if (group < 0)
            continue;
          const Weight near = within[at * stancesHere + stance].leastUpTo(farthest);
          if (!isNever(near))
            then = std::min(then, near + ways[way].cost);
        }
      }
    }
  }

  void leaveSill(const Spot& spot) {
    if (spot.station < sill.last.from || spot.station > sill.last.to)
      return;
    const Weight rest = costToEnter(sweep, which + 1, spot);
    if (isNever(rest))
      return;
    for (int used = firstUse; used <= std::min(lastUse + 1, sill.references); ++used)
      if (!isNever(sill.removalsFrom[used])) {
        Weight& then = onward[here(spot.option, sill.least, used, spot.stance)];
        then = std::min(then, sill.removalsFrom[used] + rest);
      }
  }

  void place(const Spot& spot) {
    const Effect effect = steps.effectAt(which, spot.station, spot.option, spot.stance);
    if (effect == kBlocked)
      return;
    for (int used = lastUse; used >= firstUse; --used) {
      const Weight left = leftOf(spot.station, spot.option, used);
      if (isNever(left))
        continue;
      const Weight others = steps.anchors.standing + steps.endedBefore[spot.station - steps.axis.from] + left;
      for (int count = 0; count < table.counts; ++count) {
        if (spot.station > sill.farthestAfter[count])
          continue;
        const Weight cost = placingOf(spot, weightOf(effect), count, used);
        if (!isNever(cost) && !(sweep.bound.most < others + cost))
          placing[here(spot.option, count, used, spot.stance)] = cost;
      }
    }
  }

  // Added, or matched with the next reference, or that one removed.
  Weight placingOf(const Spot& spot, const Weight& effect, int count, int used) const {
    const int after = sweep.capped(which, count + 1);
    Weight best = effect + weightOf(0, 1, 0, 0, 0) + onward[here(spot.option, after, used, spot.stance)];
    if (used == sill.references)
      return best;
    const Weight matching = steps.matching(which, used, spot.station, spot.option);
    best = std::min(best, effect + matching + onward[here(spot.option, after, used + 1, spot.stance)]);
    if (used < lastUse)
      best = std::min(best, sill.removal[used] + placing[here(spot.option, count, used + 1, spot.stance)]);
    return best;
  }

  Sweep& sweep;
  const Steps& steps;
  int which;
  const SillSteps& sill;
  SillTable& table;
  std::vector<Way> ways;
  std::vector<SlidingLeast> passed; // by way, count, used
  std::vector<Mark> nextPassed;     // by way
  std::vector<Weight> placing;      // of the mark in work, as the table's
  std::vector<Weight> onward;
  int firstUse = 0;
  int lastUse = 0;
  int fewestAhead = 1 << 20; // of the references used before any bolt farther right
  int mostAhead = -1;
  int group = -1;
  int stancesHere = 1;
  std::vector<SlidingLeast> within; // by way, count, used, stance
  std::vector<Mark> nextWithin;
};

} // namespace

Sweep sweepOf(const Problem& problem, const Bound& bound) {
  Sweep sweep;
  // A stance that costs more above the least of its group than the bound leaves above the floor is in no such layout.
  sweep.steps = stepsOf(problem, bound.floor ? bound.most - bound.floor->best : kNever);
  sweep.bound = bound;
  if (!sweep.steps.anchors.possible)
    return sweep;
  sweep.tables.resize(sweep.steps.sills.size());
  for (int which = static_cast<int>(sweep.steps.sills.size()) - 1; which >= 0; --which)
    SillSweep(sweep, which).run();
  const Weight rest = costToEnter(sweep, 0, {});
  const Weight best = isNever(rest) ? kNever : sweep.steps.anchors.standing + rest;
  sweep.best = bound.most < best ? kNever : best;
  return sweep;
}

} // namespace sillwright::sequence
