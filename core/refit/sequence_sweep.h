// Inside the optimiser: the dynamic programme. From right to left over the marks of the sill pieces it finds, for every
// bolt that could stand there, the least cost of everything to the right of it.
//
// What matters to the right of a bolt is: its station and option (gaps to the next one), how many bolts its sill piece
// has so far (only up to the least number), how many reference bolts are already matched or removed, and, inside the
// reach of a group of anchored pieces, the stance of that group. All of these are the state, so nothing is left out:
//  - gaps between bolts are asked of consecutive ones only, by the meaning of LeastGap and MostGap;
//  - anchored pieces see bolts only inside their group's reach, and each other only inside their group;
//  - between reaches the groups passed are independent, so they cost their least.
// The next bolt lies in a window of marks whose ends both move left with the bolt: least of a sliding window.
#pragma once

#include "core/refit/sequence_steps.h"

namespace sillwright::sequence {

// Costs by mark, option, count of bolts (up to the least number), reference bolts used, stance. Only what the bound
// leaves possible has room.
struct SillTable {
  int counts = 1;
  std::vector<std::size_t> base; // by mark; kNone where no bolt can stand
  std::vector<int> stances;      // by mark
  std::vector<int> firstCount;   // by mark: fewest bolts before a bolt there that the bound leaves
  std::vector<int> firstUse;     // by mark: fewest reference bolts used before a bolt there
  std::vector<int> uses;         // by mark: how many such numbers, and one more for those used after it
  std::vector<Weight> placing;   // before the bolt is placed: it, its matching and everything to the right of it
  std::vector<Weight> onward;    // after it is placed: everything to the right of it
  // By option and mark of the first window: least of placing the first bolt there or farther right, and what the groups
  // cost that end before it.
  std::vector<Weight> entering;

  static constexpr std::size_t kNone = static_cast<std::size_t>(-1);
  bool holds(Mark fromStart) const { return base[fromStart] != kNone; }
  std::size_t index(Mark fromStart, int option, int count, int used, int stance) const {
    const int rows = counts - firstCount[fromStart];
    const std::size_t row = (static_cast<std::size_t>(option) * rows + count - firstCount[fromStart]) * uses[fromStart];
    return base[fromStart] + (row + used - firstUse[fromStart]) * stances[fromStart] + stance;
  }
};

struct Sweep;

// What need not be looked at: layouts that cost more than `most`. `floor` knows the least cost of everything left of a
// bolt with the groups left out, and so the least a layout with that bolt can cost.
struct Bound {
  Weight most = {kNever.upper - 1, 0};
  const Sweep* floor = nullptr; // over the mirrored problem without reaches, done with at least the same `most`
};

struct Sweep {
  Steps steps;
  Bound bound;
  std::vector<SillTable> tables;
  Weight best = kNever; // of the whole problem

  int capped(int sill, int count) const { return count < steps.sills[sill].least ? count : steps.sills[sill].least; }
  // No bolt can stand at that mark, or the table's entry.
  Weight placing(int sill, const Spot& spot, int count, int used) const;
  Weight onward(int sill, const Spot& spot, int count, int used) const;
};

// Least cost of everything in the sill pieces from `which` on, after the last bolt left of them (or none: station
// -kFar).
Weight costToEnter(const Sweep& sweep, int which, const Spot& left);

// The problem (and the floor) must outlive the sweep. Its best is kNever where no layout costs at most bound.most.
Sweep sweepOf(const Problem& problem, const Bound& bound = {});

} // namespace sillwright::sequence
