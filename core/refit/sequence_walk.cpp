#include "core/refit/sequence_walk.h"

#include <algorithm>
#include <tuple>

namespace sillwright::sequence {
namespace {

// One of the ways the bolts chosen so far may be meant, in a best layout.
struct Live {
  int count = 0;
  int used = 0;
  int stance = 0;
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
      bolts.push_back({next.sill, next.station, next.option, std::nullopt});
      matchAll();
    }
    return bolts;
  }

private:
  Spot spotOf(const Live& live) const { return {spot.station, spot.option, live.stance}; }

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
      return !isNever(rest) && rest == steps.allGroups + leaving(steps, spotOf(live));
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
    const int group = spot.station < steps.axis.from ? -1 : steps.groupAt(spot.station);
    const bool within = group >= 0 && group == steps.groupAt(station);
    if (!within)
      rest = rest - leaving(steps, spotOf(live)) - steps.endedBefore[station - steps.axis.from];
    for (int stance = within ? live.stance : 0; stance < (within ? live.stance + 1 : steps.stancesAt(station));
         ++stance)
      if (sweep.placing(where, {station, option, stance}, count, used) == rest)
        take({where, station, option, {{count, used, stance, rest}}});
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
    const Spot at = {spot.station, spot.option, live.stance};
    const Weight effect = weightOf(steps.effectAt(sill, spot.station, spot.option, live.stance));
    const int count = sweep.capped(sill, live.count + 1);
    for (; !isNever(live.rest); live.rest = live.rest - here.removal[live.used], ++live.used) {
      keep(at, {count, live.used, live.stance, live.rest - effect - weightOf(0, 1, 0, 0, 0)});
      if (live.used == here.references)
        return;
      if (const Weight matching = steps.matching(sill, live.used, spot.station, spot.option); !isNever(matching))
        keep(at, {count, live.used + 1, live.stance, live.rest - effect - matching});
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
};

// Matches the bolts of one sill piece with its reference: cheapest, then each bolt in order the lowest it can.
class Matching {
public:
  Matching(const Steps& givenSteps, int givenSill, std::vector<PlacedBolt*> givenBolts)
      : steps(givenSteps), which(givenSill), bolts(std::move(givenBolts)), sill(steps.sills[which]),
        least((bolts.size() + 1) * (sill.references + 1), kNever) {
    for (std::size_t bolt = bolts.size() + 1; bolt-- > 0;)
      for (int used = sill.references; used >= 0; --used)
        at(bolt, used) = leastFrom(bolt, used);
  }

  void settle() {
    int used = 0;
    for (std::size_t bolt = 0; bolt < bolts.size(); ++bolt)
      used = settleOne(bolt, used);
  }

private:
  Weight& at(std::size_t bolt, int used) { return least[bolt * (sill.references + 1) + used]; }

  static Weight plus(const Weight& a, const Weight& b) { return isNever(a) || isNever(b) ? kNever : a + b; }

  Weight leastFrom(std::size_t bolt, int used) {
    if (bolt == bolts.size())
      return sill.removalsFrom[used];
    Weight best = plus(weightOf(0, 1, 0, 0, 0), at(bolt + 1, used));
    if (used < sill.references) {
      best = std::min(best, plus(matching(bolt, used), at(bolt + 1, used + 1)));
      best = std::min(best, plus(sill.removal[used], at(bolt, used + 1)));
    }
    return best;
  }

  Weight matching(std::size_t bolt, int reference) const {
    return steps.matching(which, reference, bolts[bolt]->station, bolts[bolt]->option);
  }

  int settleOne(std::size_t bolt, int used) {
    const Weight whole = at(bolt, used);
    Weight removals;
    for (int reference = used; reference < sill.references && !isNever(removals); ++reference) {
      if (plus(plus(removals, matching(bolt, reference)), at(bolt + 1, reference + 1)) == whole) {
        bolts[bolt]->reference = reference;
        return reference + 1;
      }
      removals = plus(removals, sill.removal[reference]);
    }
    return used;
  }

  const Steps& steps;
  int which;
  std::vector<PlacedBolt*> bolts;
  const SillSteps& sill;
  std::vector<Weight> least; // by bolt, references used
};

void matchReferences(const Steps& steps, Layout& layout) {
  for (int which = 0; which < static_cast<int>(steps.sills.size()); ++which) {
    std::vector<PlacedBolt*> bolts;
    for (PlacedBolt& bolt : layout.bolts)
      if (bolt.sillPiece == which)
        bolts.push_back(&bolt);
    Matching(steps, which, bolts).settle();
    for (int reference = 0; reference < steps.sills[which].references; ++reference)
      if (std::none_of(bolts.begin(), bolts.end(),
                       [&](const PlacedBolt* bolt) { return bolt->reference == reference; }))
        layout.removed.push_back({which, reference});
  }
}

// With the bolts known, every group takes its cheapest stance, of these the leftmost.
void settleGroups(const Steps& steps, Layout& layout) {
  for (const Group& group : steps.anchors.groups) {
    const auto costWithBolts = [&](const Stance& stance) {
      Weight cost = stance.cost;
      for (const PlacedBolt& bolt : layout.bolts)
        if (stance.effects.holds(bolt.station) && !isNever(cost))
          cost = cost + weightOf(stance.effects.at(bolt.station, bolt.option));
      return std::make_tuple(cost, stance.stations);
    };
    const Stance& best =
        *std::min_element(group.stances.begin(), group.stances.end(),
                          [&](const Stance& a, const Stance& b) { return costWithBolts(a) < costWithBolts(b); });
    for (std::size_t index = 0; index < group.pieces.size(); ++index)
      layout.anchored[group.pieces[index]] = best.stations[index];
  }
}

} // namespace

Layout leftmostOf(const Sweep& sweep) {
  Layout layout;
  layout.anchored = sweep.steps.anchors.stations;
  layout.cost = costOf(sweep.best);
  layout.bolts = Walk(sweep).bolts();
  matchReferences(sweep.steps, layout);
  settleGroups(sweep.steps, layout);
  return layout;
}

} // namespace sillwright::sequence
