// Inside the optimiser: the dynamic programme. From right to left over the marks of the sill pieces it finds, for every
// bolt that could stand there, the least cost of everything to the right of it.
//
// What matters to the right of a bolt is: its station and option (gaps to the next one), how many bolts its sill piece
// has so far (only up to the least number), how many reference bolts are already matched or removed, and, inside a
// chain of groups of anchored pieces, the state of the part it stands in. All of these are the state, so nothing is
// left out:
//  - gaps between bolts are asked of consecutive ones only, by the meaning of LeastGap and MostGap;
//  - anchored pieces see bolts only inside their group's reach, and each other only inside their group or chain;
//  - between chains the chains passed are independent, so they cost their least.
// The next bolt lies in a window of marks whose ends both move left with the bolt: least of a sliding window.
#pragma once

#include "core/refit/sequence_steps.h"

namespace sillwright::sequence {

// Costs by mark, state, option, count of bolts (up to the least number), reference bolts used. Only what the bound
// leaves possible has room; of the states only so many of the first.
struct SillTable {
  int counts = 1;
  int options = 1;
  std::vector<std::size_t> base; // by mark; kNone where no bolt can stand
  std::vector<int> states;       // by mark
  std::vector<int> firstCount;   // by mark: fewest bolts before a bolt there that the bound leaves
  std::vector<int> firstUse;     // by mark: fewest reference bolts used before a bolt there
  std::vector<int> uses;         // by mark: how many such numbers, and one more for those used after it
  std::vector<Weight> placing;   // before the bolt is placed: it, its matching and everything to the right of it
  std::vector<Weight> onward;    // after it is placed: everything to the right of it
  // By option and mark of the first window: least of placing the first bolt there or farther right, and what the chains
  // cost that end before it.
  std::vector<Weight> entering;

  static constexpr std::size_t kNone = static_cast<std::size_t>(-1);
  bool holds(Mark fromStart) const { return base[fromStart] != kNone; }
  // How many entries one state has at that mark.
  std::size_t rows(Mark fromStart) const {
    return static_cast<std::size_t>(options) * (counts - firstCount[fromStart]) * uses[fromStart];
  }
  // Of an entry among those of its state.
  std::size_t row(Mark fromStart, int option, int count, int used) const {
    const int perOption = counts - firstCount[fromStart];
    return (static_cast<std::size_t>(option) * perOption + count - firstCount[fromStart]) * uses[fromStart] + used -
           firstUse[fromStart];
  }
  std::size_t index(Mark fromStart, int option, int count, int used, int state) const {
    return base[fromStart] + state * rows(fromStart) + row(fromStart, option, count, used);
  }
};

struct Sweep;

// What need not be looked at: layouts that cost more than `most`. `floor` knows the least cost of everything left of a
// bolt with the groups eased, and so the least a layout with that bolt can cost.
struct Bound {
  Weight most = kAnything;
  bool anyOption = false; // see stepsOf. No layout becomes dearer; tables have only option 0
  int mostStates = 1 << 30; // of a part that are looked at. Fewer than there are: the best found may not be the best
  const Sweep* floor =
      nullptr; // over the mirrored problem with its anchors eased and anyOption, with at least the same `most`
};

struct Sweep {
  Steps steps;
  Bound bound;
  std::vector<SillTable> tables;
  Weight best = kNever;   // of the whole problem
  bool curtailed = false; // there were more than bound.mostStates to look at

  int capped(int sill, int count) const { return count < steps.sills[sill].least ? count : steps.sills[sill].least; }
  // No bolt can stand at that mark, or the table's entry.
  Weight placing(int sill, const Spot& spot, int count, int used) const;
  Weight onward(int sill, const Spot& spot, int count, int used) const;
};

// The problem (and the floor) must outlive the sweep. Its best is kNever where no layout costs at most bound.most.
Sweep sweepOf(const Problem& problem, const Bound& bound = {});
// With the anchors sorted already.
Sweep sweepOf(const Problem& problem, Anchors anchors, const Bound& bound);
// Into the tables of a sweep that is done with: they are large, and taking new memory for each costs more than to fill
// them.
void sweepAgain(Sweep& sweep, const Problem& problem, const Bound& bound);

} // namespace sillwright::sequence
