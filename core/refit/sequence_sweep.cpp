#include "core/refit/sequence_sweep.h"

#include <algorithm>

#include "core/refit/sequence_views.h"
#include "core/refit/sequence_ways.h"

namespace sillwright::sequence {
namespace {

constexpr std::size_t kMostReserved = std::size_t{1} << 17;

// These entries, for which room is made.
void makeNever(std::vector<Weight>& weights, std::size_t from, std::size_t to) {
  if (weights.size() < to)
    weights.resize(to);
  std::fill(weights.begin() + static_cast<std::ptrdiff_t>(from), weights.begin() + static_cast<std::ptrdiff_t>(to),
            kNever);
}

// The sweep over one sill piece; those to its right are done.
class SillSweep {
public:
  SillSweep(Sweep& givenSweep, Views& givenViews, int givenSill)
      : sweep(givenSweep), steps(sweep.steps), views(givenViews), which(givenSill), sill(steps.sills[which]),
        table(sweep.tables[which]), columns(steps.columns), stride(sill.references + 2) {
    table.counts = sill.least + 1;
    table.options = columns;
    ways = waysOf(steps, sill);
    waysFrom.resize(columns);
    for (std::size_t way = 0; way < ways.size(); ++way)
      for (const int option : ways[way].from)
        waysFrom[option].push_back(way);
    passed.resize(ways.size());
    for (LeastRows& queue : passed)
      queue.clear(table.counts * stride);
    nextPassed.assign(ways.size(), sill.stretch.to);
    const std::size_t marks = sill.stretch.to - sill.stretch.from + 1;
    table.base.assign(marks, SillTable::kNone);
    for (std::vector<Weight>* entries : {&table.placing, &table.onward}) {
      entries->clear();
      entries->reserve(std::min(marks * columns * table.counts * stride, kMostReserved));
    }
    table.entering.clear();
    table.states.assign(marks, 1);
    table.firstCount.assign(marks, 0);
    table.firstUse.assign(marks, 0);
    table.uses.assign(marks, 0);
    left.resize(stride);
    counting.resize(table.counts);
    leastAhead.assign(stride, kNever);
    ahead.resize(stride);
  }

  void run() {
    for (Mark station = sill.stretch.to; station >= sill.stretch.from; --station)
      if (findLeft(station))
        stand(station);
    chartEntering();
    if (sweep.bound.anyOption) // nobody asks
      table.placing.clear();
  }

private:
  void chartEntering() {
    if (sill.first.from > sill.first.to)
      return;
    table.entering.assign(sill.entry(columns, sill.first.from), kNever);
    for (int option = 0; option < columns; ++option) {
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

  const Weight& endedBefore(Mark station) const { return steps.endedBefore(station); }

  // Calls visit(option) for the options of the problem that make one column of the table.
  template <typename Visit> void forEachOption(int column, Visit visit) const {
    const int last = columns == 1 ? steps.problem->depthOptions : column + 1;
    for (int option = column; option < last; ++option)
      visit(option);
  }

  bool mayStand(Mark station) const {
    const Row& ground = steps.anchors.grounds[which];
    for (int option = 0; option < ground.options; ++option)
      if (ground.at(station, option) != kBlocked)
        return true;
    return false;
  }

  // What the bolts left of one there cost, by references used by them, and fewest and most of these as far as the bound
  // lets it stand. Whether it does.
  bool findLeft(Mark station) {
    firstUse = stride;
    lastUse = -1;
    const Mark mark = sill.stretch.to - station; // seen from the other side
    if (!mayStand(station) || (sweep.bound.floor && !floorTable().holds(mark)))
      return false;
    const Weight most = sweep.bound.most - steps.anchors.standing - steps.allChains;
    if (sweep.bound.floor)
      takeLeft(mark);
    else
      countLeft(station);
    for (int used = 0; used <= sill.references; ++used) {
      if (most < left[used])
        continue;
      firstUse = std::min(firstUse, used);
      lastUse = std::max(lastUse, used);
    }
    return firstUse <= lastUse;
  }

  const SillTable& floorTable() const {
    const std::vector<SillTable>& tables = sweep.bound.floor->tables;
    return tables[tables.size() - 1 - which];
  }

  void takeLeft(Mark mark) {
    const SillTable& floor = floorTable();
    std::fill(left.begin(), left.end(), kNever);
    for (int count = floor.firstCount[mark]; count < floor.counts; ++count) {
      const Weight* onwardThere = &floor.onward[floor.index(mark, 0, count, floor.firstUse[mark], 0)];
      for (int there = floor.firstUse[mark]; there < floor.firstUse[mark] + floor.uses[mark]; ++there)
        if (there <= sill.references)
          left[sill.references - there] = std::min(left[sill.references - there], *onwardThere++);
    }
  }

  // Where nothing else is known: bolts that must be there and are none of the reference are added.
  void countLeft(Mark station) {
    const int fewest = static_cast<int>(std::lower_bound(sill.farthestWith.begin(), sill.farthestWith.end(), station) -
                                        sill.farthestWith.begin());
    for (int used = 0; used <= sill.references; ++used)
      left[used] = weightOf(0, std::max(0, fewest - used), 0, 0, 0);
  }

  void stand(Mark station) {
    width = lastUse - firstUse + 2;
    lookBack(station);
    if (sweep.bound.floor && !mayPay(station))
      return;
    enterPart(steps.partAt(station));
    gatherPassed(station);
    if (part >= 0)
      gatherWithin(station);
    leastCount = 0;
    while (station > sill.farthestAfter[leastCount])
      ++leastCount;
    for (int count = 0; count < table.counts; ++count)
      counting[count] = canCount(station, count);
    lookPast(station);
    states = 0;
    addStates(station, 1);
    if (part >= 0)
      addStates(station, statesWorth());
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
    within.resize(ways.size() * statesHere);
    for (LeastRows& queue : within)
      queue.clear(table.counts * stride);
    nextWithin.assign(ways.size(), std::min(chainEnd, sill.stretch.to));
  }

  // Bolts to the right of the chain here, or right of this mark where there is none.
  void gatherPassed(Mark station) {
    for (std::size_t way = 0; way < ways.size(); ++way) {
      const Mark nearest = std::max(station + ways[way].nearest, part < 0 ? station : chainEnd + 1);
      for (Mark& next = nextPassed[way]; next >= nearest; --next)
        if (const Mark mark = next - sill.stretch.from; table.holds(mark)) {
          const int partThere = steps.partAt(next);
          beginRow(mark);
          for (int state = Steps::firstState(partThere); state < table.states[mark]; ++state)
            addToRow(mark, ways[way], &table.placing[table.base[mark] + state * table.rows(mark)],
                     entering(steps, partThere, state) + endedBefore(next));
          passed[way].add(next, rowFrom, rowTo, row.data());
        }
    }
  }

  // Bolts in the same chain, by state here.
  void gatherWithin(Mark station) {
    for (std::size_t way = 0; way < ways.size(); ++way)
      for (Mark& next = nextWithin[way]; next >= station + ways[way].nearest; --next)
        if (const Mark mark = next - sill.stretch.from; table.holds(mark))
          for (int state = 0; state < views.states(which, mark); ++state)
            if (const Weight* placed = views.placing(which, mark, state)) {
              beginRow(mark);
              addToRow(mark, ways[way], placed, {});
              within[way * statesHere + state].add(next, rowFrom, rowTo, row.data());
            }
  }

  std::size_t column(int count, int used) const { return static_cast<std::size_t>(count) * stride + used; }

  // A row has all that the bolts left of a bolt at that mark may be: by count and used.
  void beginRow(Mark mark) {
    rowFrom = column(table.firstCount[mark], table.firstUse[mark]);
    const int lastUsed = table.firstUse[mark] + table.uses[mark] - 2;
    rowTo = column(table.counts - 1, lastUsed) + 1;
    makeNever(row, 0, rowTo - rowFrom);
  }

  // The least of the options that the way leads to. `placed` begins with the first entry of one state.
  void addToRow(Mark mark, const Way& way, const Weight* placed, const Weight& more) {
    for (const int option : way.to)
      for (int count = table.firstCount[mark]; count < table.counts; ++count) {
        const Weight* from = placed + table.row(mark, option, count, table.firstUse[mark]);
        Weight* to = &row[column(count, table.firstUse[mark]) - rowFrom];
        for (int used = 0; used + 1 < table.uses[mark]; ++used)
          to[used] = std::min(to[used], from[used] + more);
      }
  }

  // Whether a bolt there can be the one that makes the count.
  bool canCount(Mark station, int count) const {
    return sill.least == 0 || (count > 0 && station <= sill.farthestAfter[count - 1]) ||
           (count == sill.least && station <= sill.farthestAfter[count]);
  }

  Mark farthestBy(Mark station, std::size_t way) const {
    return std::min(sill.farthestNext[station - sill.stretch.from], station + ways[way].farthest);
  }

  // Of the mark in work, by used from firstUse on: where the entries of one state, option and count begin.
  std::size_t begin(int state, int option, int count) const {
    return ((static_cast<std::size_t>(state) * columns + option) * table.counts + count) * width;
  }
  std::size_t beginPast(std::size_t way, int count) const { return (way * table.counts + count) * width; }

  // The least of going on beyond the chain here, the same for all states up to what leaving the chain costs.
  void lookPast(Mark station) {
    firstThen = std::max(firstUse, fewestAhead);
    lastThen = std::min(lastUse + 1, mostAhead);
    makeNever(past, 0, beginPast(ways.size(), 0));
    for (std::size_t way = 0; way < ways.size(); ++way) {
      const Mark farthest = farthestBy(station, way);
      if (farthest <= (part < 0 ? station : chainEnd))
        continue;
      passed[way].limit(farthest);
      for (int count = 0; count < table.counts; ++count)
        if (counting[count] && firstThen <= lastThen)
          passed[way].takeLeast(column(count, firstThen), column(count, lastThen) + 1, ways[way].cost,
                                &past[beginPast(way, count) + firstThen - firstUse]);
    }
  }

  // What the bound leaves to a bolt here and all to its right, and what matching it costs, by used.
  void lookBack(Mark station) {
    limit.resize(width);
    const Weight others = steps.anchors.standing + endedBefore(station);
    for (int used = firstUse; used <= lastUse; ++used)
      limit[used - firstUse] = sweep.bound.most - others - left[used];
    matching.resize(static_cast<std::size_t>(width) * steps.problem->depthOptions);
    for (int option = 0; option < steps.problem->depthOptions; ++option) {
      Weight* match = &matching[option * width];
      for (int used = firstUse; used <= lastUse; ++used)
        *match++ = used < sill.references ? steps.matching(which, used, station, option) : kNever;
    }
  }

  // Whether the bound leaves a bolt here at all, going by what is left of it, what it costs to match it, and the least
  // that any bolt to its right goes on with, by used.
  bool mayPay(Mark station) {
    for (int used = firstUse; used <= lastUse + 1; ++used) {
      Weight& rest = ahead[used - firstUse];
      rest = leastAhead[used];
      if (station >= sill.last.from && used <= sill.references)
        rest = std::min(rest, sill.removalsFrom[used] + steps.allChains);
      rest = rest - endedBefore(station);
    }
    Weight least = kNever;
    for (int used = lastUse - firstUse; used >= 0; --used) {
      least = firstUse + used < sill.references ? least + sill.removal[firstUse + used] : kNever;
      least = std::min(least, weightOf(0, 1, 0, 0, 0) + ahead[used]);
      for (int option = 0; option < steps.problem->depthOptions; ++option)
        least = std::min(least, matching[option * width + used] + ahead[used + 1]);
      if (!(limit[used] < least))
        return true;
    }
    return false;
  }

  // The states from those done up to so many.
  void addStates(Mark station, int upTo) {
    const int from = states;
    if (upTo <= from)
      return;
    states = upTo;
    for (std::vector<Weight>* rows : {&placing, &onward}) {
      if (rows->size() < begin(states, 0, 0))
        rows->resize(begin(states, 0, 0));
      for (int state = from; state < states; ++state)
        for (int option = 0; option < columns; ++option)
          makeNever(*rows, begin(state, option, leastCount), begin(state, option, table.counts));
    }
    for (int state = from; state < states; ++state)
      for (int option = 0; option < columns; ++option)
        addState({station, option, state});
  }

  void addState(const Spot& spot) {
    bool gone = false;
    forEachOption(spot.option, [&](int option) {
      const Effect effect = steps.effectAt(which, spot.station, option, spot.state);
      if (effect == kBlocked)
        return;
      if (!gone)
        goOn(spot);
      gone = true;
      place(spot, option, weightOf(effect));
    });
  }

  // How many of the states of the part the bound leaves, going by what state 0 costs.
  int statesWorth() const {
    const std::vector<Weight>& excess = steps.part(part).excess;
    Weight spare{-1};
    for (int option = 0; option < columns; ++option)
      for (int count = leastCount; count < table.counts; ++count)
        for (int used = 0; used + 1 < width; ++used)
          if (const Weight& cost = placing[begin(0, option, count) + used]; !isNever(cost))
            spare = std::max(spare, limit[used] - cost - entering(steps, part, 0));
    const auto worth = static_cast<int>(std::upper_bound(excess.begin(), excess.end(), spare) - excess.begin());
    sweep.curtailed |= worth > sweep.bound.mostStates;
    return std::min(worth, sweep.bound.mostStates);
  }

  void goOn(const Spot& spot) {
    const Weight leave = leaving(steps, spot);
    for (const std::size_t way : waysFrom[spot.option])
      for (int count = 0; count < table.counts; ++count)
        if (counting[count]) {
          const Weight* beyond = &past[beginPast(way, count)];
          Weight* then = &onward[begin(spot.state, spot.option, count)];
          for (int used = firstThen - firstUse; used <= lastThen - firstUse; ++used)
            then[used] = std::min(then[used], beyond[used] + leave);
        }
    if (part >= 0)
      goOnWithin(spot);
    leaveSill(spot);
  }

  void goOnWithin(const Spot& spot) {
    for (const std::size_t way : waysFrom[spot.option]) {
      LeastRows& near = within[way * statesHere + spot.state];
      near.limit(farthestBy(spot.station, way));
      for (int count = 0; count < table.counts; ++count)
        if (counting[count] && firstThen <= lastThen)
          near.takeLeast(column(count, firstThen), column(count, lastThen) + 1, ways[way].cost,
                         &onward[begin(spot.state, spot.option, count) + firstThen - firstUse]);
    }
  }

  void leaveSill(const Spot& spot) {
    if (spot.station < sill.last.from || spot.station > sill.last.to)
      return;
    const Weight rest = views.toEnter(which + 1, spot);
    if (isNever(rest))
      return;
    Weight* then = &onward[begin(spot.state, spot.option, sill.least)];
    for (int used = firstUse; used <= std::min(lastUse + 1, sill.references); ++used)
      if (!isNever(sill.removalsFrom[used]))
        then[used - firstUse] = std::min(then[used - firstUse], sill.removalsFrom[used] + rest);
  }

  // Added, or matched with the next reference, or that one removed.
  void place(const Spot& spot, int option, const Weight& effect) {
    const Weight added = effect + weightOf(0, 1, 0, 0, 0);
    const Weight before = entering(steps, part, spot.state);
    const Weight* match = &matching[static_cast<std::size_t>(option) * width];
    for (int count = leastCount; count < table.counts; ++count) {
      const Weight* then = &onward[begin(spot.state, spot.option, sweep.capped(which, count + 1))];
      Weight* placed = &placing[begin(spot.state, spot.option, count)];
      for (int used = lastUse - firstUse; used >= 0; --used) {
        Weight best = added + then[used];
        if (firstUse + used < sill.references) {
          best = std::min(best, effect + match[used] + then[used + 1]);
          if (firstUse + used < lastUse)
            best = std::min(best, sill.removal[firstUse + used] + placed[used + 1]);
        }
        if (best < placed[used] && !(limit[used] < best + before))
          placed[used] = best;
      }
    }
  }

  // State 0 is below all others.
  void countAhead(Mark station) {
    const Weight more = entering(steps, part, 0) + endedBefore(station);
    for (int option = 0; option < columns; ++option)
      for (int count = leastCount; count < table.counts; ++count) {
        const Weight* placed = &placing[begin(0, option, count)];
        for (int used = firstUse; used <= lastUse; ++used)
          leastAhead[used] = std::min(leastAhead[used], placed[used - firstUse] + more);
      }
  }

  // Keeps what the bound has left of the mark in work.
  void store(Mark mark) {
    int firstCount = table.counts;
    int first = lastUse + 1;
    int last = -1;
    for (int option = 0; option < columns; ++option)
      for (int count = leastCount; count < table.counts; ++count)
        for (int used = firstUse; used <= lastUse; ++used)
          if (!isNever(placing[begin(0, option, count) + used - firstUse])) { // else no other state has any
            firstCount = std::min(firstCount, count);
            first = std::min(first, used);
            last = std::max(last, used);
          }
    if (last < 0)
      return;
    countAhead(mark + sill.stretch.from);
    fewestAhead = std::min(fewestAhead, first);
    mostAhead = std::max(mostAhead, last);
    table.base[mark] = table.placing.size();
    table.states[mark] = states;
    table.firstCount[mark] = firstCount;
    table.firstUse[mark] = first;
    table.uses[mark] = last - first + 2;
    for (int state = 0; state < states; ++state)
      for (int option = 0; option < columns; ++option)
        for (int count = firstCount; count < table.counts; ++count) {
          const auto from = static_cast<std::ptrdiff_t>(begin(state, option, count) + first - firstUse);
          const auto to = from + last + 2 - first;
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
  int columns; // depth options told apart
  int stride;  // of counts in a row
  std::vector<Way> ways;
  std::vector<std::vector<std::size_t>> waysFrom; // by option of the left bolt
  std::vector<LeastRows> passed;                  // by way: by count and used
  std::vector<Mark> nextPassed;                   // by way
  std::vector<LeastRows> within;                  // by way and state: by count and used
  std::vector<Mark> nextWithin;
  int fewestAhead = 1 << 20; // of the references used before any bolt farther right
  int mostAhead = -1;
  int part = -2; // in work; -2: none yet
  Mark chainEnd = 0;
  int statesHere = 1;
  std::vector<Weight> row; // one being gathered
  std::size_t rowFrom = 0;
  std::size_t rowTo = 0;
  // Of the mark in work.
  int firstUse = 0;
  int lastUse = -1;
  int width = 0;
  int leastCount = 0;         // of bolts left of it
  std::vector<char> counting; // by count: whether it may be with the one here
  int states = 0;
  int firstThen = 0; // the references that may be used after it
  int lastThen = -1;
  std::vector<Weight> left;     // by used, 0 the first
  std::vector<Weight> limit;    // by used, firstUse the first, as all these
  std::vector<Weight> matching; // by option of the problem, used
  std::vector<Weight> past;     // by way, count, used
  std::vector<Weight> ahead;    // by used
  std::vector<Weight>
      leastAhead; // by used, 0 the first: least of placing any bolt there and of the chains ended before
  std::vector<Weight> placing;
  std::vector<Weight> onward;
};

void sweepAgain(Sweep& sweep, const Problem& problem, Anchors anchors, const Bound& bound) {
  sweep.steps = stepsOf(problem, std::move(anchors), bound.anyOption);
  sweep.bound = bound;
  sweep.best = kNever;
  sweep.curtailed = false;
  if (!sweep.steps.anchors.possible)
    return;
  sweep.tables.resize(sweep.steps.sills.size());
  Views views(sweep);
  for (int which = static_cast<int>(sweep.steps.sills.size()) - 1; which >= 0; --which)
    SillSweep(sweep, views, which).run();
  const Weight rest = views.toEnter(0, {});
  const Weight best = isNever(rest) ? kNever : sweep.steps.anchors.standing + rest;
  sweep.best = bound.most < best ? kNever : best;
}

} // namespace

void sweepAgain(Sweep& sweep, const Problem& problem, const Bound& bound) {
  Weight most = bound.most;
  if (bound.floor) // the bolts cost at least so much
    most = most - (bound.floor->best - bound.floor->steps.anchors.standing);
  sweepAgain(sweep, problem, sortAnchors(problem, most), bound);
}

Sweep sweepOf(const Problem& problem, const Bound& bound) {
  Sweep sweep;
  sweepAgain(sweep, problem, bound);
  return sweep;
}

Sweep sweepOf(const Problem& problem, Anchors anchors, const Bound& bound) {
  Sweep sweep;
  sweepAgain(sweep, problem, std::move(anchors), bound);
  return sweep;
}

} // namespace sillwright::sequence
