#include "core/refit/sequence_sweep.h"

#include <algorithm>

namespace sillwright::sequence {
namespace {

// Least value among the marks of a window whose ends only ever move left.
class SlidingLeast {
public:
  void clear() {
    entries.clear();
    head = 0;
  }
  void add(Mark station, const Weight& value) {
    while (entries.size() > head && !(entries.back().value < value))
      entries.pop_back();
    entries.push_back({station, value});
  }
  Weight leastUpTo(Mark farthest) {
    while (head < entries.size() && entries[head].station > farthest)
      ++head;
    return head < entries.size() ? entries[head].value : kNever;
  }

private:
  struct Entry {
    Mark station;
    Weight value;
  };
  std::vector<Entry> entries;
  std::size_t head = 0;
};

// One way to go on from a bolt: to options at the same least gap, in one band of differences.
struct Way {
  std::vector<int> from; // options of the left bolt
  std::vector<int> to;   // options of the right bolt
  Mark nearest = 1;
  Mark farthest = kFar;
  Weight cost;
};

std::vector<Way> waysOf(const Steps& steps, const SillSteps& sill) {
  struct Alike {
    Mark gap;
    std::vector<int> from, to;
  };
  std::vector<Alike> kinds;
  for (int left = 0; left < steps.problem->depthOptions; ++left) {
    std::vector<Alike> here;
    for (int right = 0; right < steps.problem->depthOptions; ++right) {
      const Mark gap = steps.gap(left, right);
      const auto same = std::find_if(here.begin(), here.end(), [&](const Alike& kind) { return kind.gap == gap; });
      if (same == here.end())
        here.push_back({gap, {left}, {right}});
      else
        same->to.push_back(right);
    }
    for (const Alike& kind : here) {
      const auto same = std::find_if(kinds.begin(), kinds.end(),
                                     [&](const Alike& other) { return other.gap == kind.gap && other.to == kind.to; });
      if (same == kinds.end())
        kinds.push_back(kind);
      else
        same->from.push_back(left);
    }
  }
  std::vector<Way> ways;
  for (const Alike& kind : kinds)
    for (const GapBand& band : sill.bands)
      if (std::max(band.from, kind.gap) <= band.to)
        ways.push_back({kind.from, kind.to, std::max(band.from, kind.gap), band.to, band.cost});
  return ways;
}

std::size_t entryOf(const SillSteps& sill, int option, Mark station) {
  return static_cast<std::size_t>(option) * (sill.first.to - sill.first.from + 1) + (station - sill.first.from);
}

// The sweep over one sill piece; those to its right are done.
class SillSweep {
public:
  SillSweep(Sweep& givenSweep, int givenSill)
      : sweep(givenSweep), steps(sweep.steps), which(givenSill), sill(steps.sills[which]), table(sweep.tables[which]) {
    table.counts = sill.least + 1;
    table.uses = sill.references + 1;
    makeRoom();
    ways = waysOf(steps, sill);
    passed.resize(ways.size() * table.counts * table.uses);
    nextPassed.assign(ways.size(), sill.stretch.to);
  }

  void run() {
    for (Mark station = sill.stretch.to; station >= sill.stretch.from; --station)
      if (table.base[station - sill.stretch.from] != SillTable::kNone)
        stand(station);
    chartEntering();
  }

private:
  void chartEntering() {
    if (sill.first.from > sill.first.to)
      return;
    table.entering.assign(entryOf(sill, steps.problem->depthOptions, sill.first.from), kNever);
    for (int option = 0; option < steps.problem->depthOptions; ++option) {
      Weight least = kNever;
      for (Mark station = sill.first.to; station >= sill.first.from; --station) {
        for (int stance = 0; stance < table.stances[station - sill.stretch.from]; ++stance) {
          const Weight placing = sweep.placing(which, {station, option, stance}, 0, 0);
          if (!isNever(placing))
            least = std::min(least, placing + steps.endedBefore[station - steps.axis.from]);
        }
        table.entering[entryOf(sill, option, station)] = least;
      }
    }
  }

  void makeRoom() {
    std::size_t size = 0;
    for (Mark station = sill.stretch.from; station <= sill.stretch.to; ++station) {
      bool any = false;
      for (int option = 0; option < steps.problem->depthOptions; ++option)
        any = any || steps.anchors.grounds[which].at(station, option) != kBlocked;
      table.stances.push_back(steps.stancesAt(station));
      table.base.push_back(any ? size : SillTable::kNone);
      if (any)
        size +=
            static_cast<std::size_t>(steps.problem->depthOptions) * table.counts * table.uses * table.stances.back();
    }
    table.placing.assign(size, kNever);
    table.onward.assign(size, kNever);
  }

  std::size_t slot(Mark station, int option, int count, int used, int stance) const {
    return table.index(station - sill.stretch.from, option, count, used, stance);
  }

  void stand(Mark station) {
    enterGroup(steps.groupAt(station));
    gatherPassed(station);
    if (group >= 0)
      gatherWithin(station);
    for (std::size_t way = 0; way < ways.size(); ++way)
      for (const int option : ways[way].from)
        if (steps.anchors.grounds[which].at(station, option) != kBlocked)
          goOn(station, option, way);
    for (int option = 0; option < steps.problem->depthOptions; ++option)
      if (steps.anchors.grounds[which].at(station, option) != kBlocked)
        for (int stance = 0; stance < table.stances[station - sill.stretch.from]; ++stance) {
          leaveSill({station, option, stance});
          place({station, option, stance});
        }
  }

  void enterGroup(int next) {
    if (next == group)
      return;
    group = next;
    if (group < 0)
      return;
    stancesHere = static_cast<int>(steps.anchors.groups[group].stances.size());
    within.clear();
    within.resize(passed.size() * stancesHere);
    nextWithin.assign(ways.size(), std::min(steps.anchors.groups[group].reach.to, sill.stretch.to));
  }

  std::size_t queue(std::size_t way, int count, int used) const {
    return (way * table.counts + count) * table.uses + used;
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
    for (int count = 0; count < table.counts; ++count)
      for (int used = 0; used < table.uses; ++used)
        for (int stance = 0; stance < table.stances[next - sill.stretch.from]; ++stance) {
          Weight least = kNever;
          for (const int option : ways[way].to)
            least = std::min(least, table.placing[slot(next, option, count, used, stance)]);
          if (!isNever(least))
            add(queue(way, count, used), stance, least);
        }
  }

  void goOn(Mark station, int option, std::size_t way) {
    const Mark farthest = std::min(sill.farthestNext[station - sill.stretch.from], station + ways[way].farthest);
    const Mark beyond = group < 0 ? station : steps.anchors.groups[group].reach.to;
    for (int count = 0; count < table.counts; ++count)
      for (int used = 0; used < table.uses; ++used) {
        const std::size_t at = queue(way, count, used);
        const Weight past = beyond < farthest ? passed[at].leastUpTo(farthest) : kNever;
        for (int stance = 0; stance < table.stances[station - sill.stretch.from]; ++stance) {
          Weight& onward = table.onward[slot(station, option, count, used, stance)];
          if (!isNever(past))
            onward = std::min(onward, past + leaving(steps, {station, option, stance}) + ways[way].cost);
          if (group < 0)
            continue;
          const Weight near = within[at * stancesHere + stance].leastUpTo(farthest);
          if (!isNever(near))
            onward = std::min(onward, near + ways[way].cost);
        }
      }
  }

  void leaveSill(const Spot& spot) {
    if (spot.station < sill.last.from || spot.station > sill.last.to)
      return;
    const Weight rest = costToEnter(sweep, which + 1, spot);
    if (isNever(rest))
      return;
    for (int used = 0; used < table.uses; ++used) {
      Weight& onward = table.onward[slot(spot.station, spot.option, sill.least, used, spot.stance)];
      if (!isNever(sill.removalsFrom[used]))
        onward = std::min(onward, sill.removalsFrom[used] + rest);
    }
  }

  void place(const Spot& spot) {
    const Effect effect = steps.effectAt(which, spot.station, spot.option, spot.stance);
    if (effect == kBlocked)
      return;
    const Weight here = weightOf(effect);
    for (int count = 0; count < table.counts; ++count)
      for (int used = sill.references; used >= 0; --used) {
        const int after = sweep.capped(which, count + 1);
        const auto at = [&](int counted, int usedThen) {
          return slot(spot.station, spot.option, counted, usedThen, spot.stance);
        };
        Weight best = here + weightOf(0, 1, 0, 0, 0) + table.onward[at(after, used)];
        if (used < sill.references) {
          const Weight matching = steps.matching(which, used, spot.station, spot.option);
          best = std::min(best, here + matching + table.onward[at(after, used + 1)]);
          best = std::min(best, sill.removal[used] + table.placing[at(count, used + 1)]);
        }
        table.placing[at(count, used)] = isNever(best) ? kNever : best;
      }
  }

  Sweep& sweep;
  const Steps& steps;
  int which;
  const SillSteps& sill;
  SillTable& table;
  std::vector<Way> ways;
  std::vector<SlidingLeast> passed; // by way, count, used
  std::vector<Mark> nextPassed;     // by way
  int group = -1;
  int stancesHere = 1;
  std::vector<SlidingLeast> within; // by way, count, used, stance
  std::vector<Mark> nextWithin;
};

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
      best = std::min(best, sweep.tables[which].entering[entryOf(sill, option, nearest)]);
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

} // namespace

Weight Sweep::placing(int sill, const Spot& spot, int count, int used) const {
  const Mark mark = spot.station - steps.sills[sill].stretch.from;
  const SillTable& table = tables[sill];
  return table.base[mark] == SillTable::kNone ? kNever
                                              : table.placing[table.index(mark, spot.option, count, used, spot.stance)];
}

Weight Sweep::onward(int sill, const Spot& spot, int count, int used) const {
  const Mark mark = spot.station - steps.sills[sill].stretch.from;
  const SillTable& table = tables[sill];
  return table.base[mark] == SillTable::kNone ? kNever
                                              : table.onward[table.index(mark, spot.option, count, used, spot.stance)];
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

Sweep sweepOf(const Problem& problem) {
  Sweep sweep;
  sweep.steps = stepsOf(problem);
  if (!sweep.steps.anchors.possible)
    return sweep;
  sweep.tables.resize(sweep.steps.sills.size());
  for (int which = static_cast<int>(sweep.steps.sills.size()) - 1; which >= 0; --which)
    SillSweep(sweep, which).run();
  const Weight rest = costToEnter(sweep, 0, {});
  sweep.best = isNever(rest) ? kNever : sweep.steps.anchors.standing + rest;
  return sweep;
}

} // namespace sillwright::sequence
