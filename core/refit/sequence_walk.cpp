#include "core/refit/sequence_walk.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "core/refit/sequence_settle.h"

namespace sillwright::sequence {
namespace {

// One of the ways the bolts chosen so far may be meant, in a best layout.
struct Live {
  int count = 0;
  int used = 0;
  int state = 0;
  Weight rest; // what everything to the right may cost, so that the whole is best
  bool operator==(const Live&) const = default;
};

struct NextBolt {
  int sill = 0;
  Mark station = kFar;
  int option = 0;
  std::vector<Live> lives; // before the bolt is matched
};

class Walk {
public:
  explicit Walk(const Sweep& givenSweep) : sweep(givenSweep), steps(sweep.steps) {}

  std::vector<PlacedBolt> bolts() {
    std::vector<PlacedBolt> bolts;
    lives = {{.rest = sweep.best - steps.anchors.standing}};
    while (!mayEnd()) {
      next = {};
      for (const Live& live : lives)
        lookOn(live);
      sill = next.sill;
      spot = {next.station, next.option, 0};
      gone.clear();
      bolts.push_back({next.sill, next.station, next.option, std::nullopt});
      matchAll();
    }
    return bolts;
  }

private:
  Spot spotOf(const Live& live) const { return {spot.station, spot.option, live.state}; }

  // What is left when the sill piece here is finished, if it can be.
  Weight restAfterSill(const Live& live) const {
    if (sill < 0)
      return live.rest;
    const SillSteps& here = steps.sills[sill];
    if (spot.station < here.last.from || spot.station > here.last.to || live.count < here.least ||
        isNever(here.removalsFrom[live.used]))
      return kNever;
    return live.rest - here.removalsFrom[live.used];
  }

  bool mayEnd() const {
    return std::any_of(lives.begin(), lives.end(), [&](const Live& live) {
      Weight rest = restAfterSill(live);
      for (std::size_t later = sill + 1; later < steps.sills.size() && !isNever(rest); ++later)
        rest = skipped(static_cast<int>(later), rest);
      return !isNever(rest) && rest == steps.allChains + leaving(steps, spotOf(live));
    });
  }

  Weight skipped(int later, const Weight& rest) const {
    const SillSteps& steps_ = steps.sills[later];
    return steps_.least > 0 || isNever(steps_.removalsFrom[0]) ? kNever : rest - steps_.removalsFrom[0];
  }

  void lookOn(const Live& live) {
    if (sill >= 0)
      lookInSill(live);
    Weight rest = restAfterSill(live);
    for (int later = sill + 1; later < static_cast<int>(steps.sills.size()) && !isNever(rest); ++later) {
      lookInLaterSill(live, later, rest);
      rest = skipped(later, rest);
    }
  }

  void lookInSill(const Live& live) {
    const SillSteps& here = steps.sills[sill];
    const Mark farthest = here.farthestNext[spot.station - here.stretch.from];
    for (Mark station = spot.station + 1; station <= farthest && station <= next.station; ++station) {
      const Mark difference = station - spot.station;
      const auto band = std::find_if(here.bands.begin(), here.bands.end(),
                                     [&](const GapBand& candidate) { return difference <= candidate.to; });
      for (int option = 0; option < steps.problem->depthOptions; ++option)
        if (difference >= steps.gap(spot.option, option))
          offer(live, sill, station, option, live.count, live.used, live.rest - band->cost);
    }
  }

  void lookInLaterSill(const Live& live, int later, const Weight& rest) {
    const SillSteps& there = steps.sills[later];
    for (Mark station = there.first.from; station <= there.first.to && station <= next.station; ++station)
      for (int option = 0; option < steps.problem->depthOptions; ++option)
        if (sill < 0 || station - spot.station >= steps.gap(spot.option, option))
          offer(live, later, station, option, 0, 0, rest);
  }

  // Takes the bolt as the next one if it belongs to a best layout and is the leftmost so far.
  void offer(const Live& live, int where, Mark station, int option, int count, int used, Weight rest) {
    if (station == next.station && option > next.option)
      return;
    const int here = steps.partAt(spot.station);
    const int there = steps.partAt(station);
    const SillTable& table = sweep.tables[where];
    const Mark mark = station - steps.sills[where].stretch.from;
    if (!table.holds(mark))
      return;
    if (!steps.sameChain(here, there))
      rest = rest - leaving(steps, spotOf(live)) - steps.endedBefore(station);
    for (int state = Steps::firstState(there); state < table.states[mark]; ++state) {
      const Weight before = here < 0 || !steps.sameChain(here, there) ? entering(steps, there, state)
                                                                      : goneAlong(live.state, there)[state - 1];
      if (!isNever(before) && sweep.placing(where, {station, option, state}, count, used) == rest - before)
        take({where, station, option, {{count, used, state, rest - before}}});
    }
  }

  const std::vector<Weight>& goneAlong(int state, int there) {
    std::vector<Weight>& cost = gone[{state, there}];
    if (cost.empty())
      cost = along(steps, steps.partAt(spot.station), state, there);
    return cost;
  }

  void take(const NextBolt& bolt) {
    if (std::tie(bolt.station, bolt.option) < std::tie(next.station, next.option) || next.lives.empty())
      next = bolt;
    else if (std::find(next.lives.begin(), next.lives.end(), bolt.lives[0]) == next.lives.end())
      next.lives.push_back(bolt.lives[0]);
  }

  // Every best way to go on from the bolt just placed: added, matched, after removing some references.
  void matchAll() {
    lives.clear();
    for (const Live& live : next.lives)
      match(live);
  }

  void match(Live live) {
    const SillSteps& here = steps.sills[sill];
    const Spot at = {spot.station, spot.option, live.state};
    const Weight effect = weightOf(steps.effectAt(sill, spot.station, spot.option, live.state));
    const int count = sweep.capped(sill, live.count + 1);
    for (; !isNever(live.rest); live.rest = live.rest - here.removal[live.used], ++live.used) {
      keep(at, {count, live.used, live.state, live.rest - effect - weightOf(0, 1, 0, 0, 0)});
      if (live.used == here.references)
        return;
      if (const Weight matching = steps.matching(sill, live.used, spot.station, spot.option); !isNever(matching))
        keep(at, {count, live.used + 1, live.state, live.rest - effect - matching});
      if (isNever(here.removal[live.used]))
        return;
    }
  }

  void keep(const Spot& at, const Live& live) {
    if (sweep.onward(sill, at, live.count, live.used) == live.rest &&
        std::find(lives.begin(), lives.end(), live) == lives.end())
      lives.push_back(live);
  }

  const Sweep& sweep;
  const Steps& steps;
  int sill = -1;
  Spot spot;
  std::vector<Live> lives;
  NextBolt next;
  std::map<std::pair<int, int>, std::vector<Weight>> gone; // from the bolt here, by state here and part there
};

} // namespace

Layout leftmostOf(const Sweep& sweep) {
  Layout layout;
  layout.cost = costOf(sweep.best);
  layout.bolts = Walk(sweep).bolts();
  matchReferences(sweep.steps, layout);
  settleAnchors(sweep.steps, layout);
  return layout;
}

} // namespace sillwright::sequence
