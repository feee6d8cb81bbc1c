// Inside the optimiser: what it costs to go from one bolt to the next, with everything in between.
#pragma once

#include "core/refit/sequence_anchors.h"

namespace sillwright::sequence {

// Differences of neighbouring bolts of one sill piece from..to, in all of which the same tolls are paid.
struct GapBand {
  Mark from = 1;
  Mark to = kFar;
  Weight cost;
};

struct SillSteps {
  Stretch stretch;
  int least = 0;
  int references = 0;
  Stretch first;                    // where its first bolt may stand
  Stretch last;                     // where its last bolt may stand
  std::vector<GapBand> bands;       // ascending, without gaps from 1 on
  std::vector<Mark> farthestNext;   // by mark of a bolt: rightmost mark of the next one. Never decreases
  std::vector<Mark> farthestAfter;  // by count, up to the least: rightmost mark of a bolt with so many left of it
  std::vector<Weight> removal;      // by reference bolt: removing it
  std::vector<Weight> removalsFrom; // by reference bolt: removing it and all to its right; one more, 0, at the end

  // Index of an option and a mark of the first window in SillTable::entering.
  std::size_t entry(int option, Mark station) const {
    return static_cast<std::size_t>(option) * (first.to - first.from + 1) + (station - first.from);
  }
};

// By mark of a bolt of the sill piece: the rightmost mark that its most gaps leave to the next one. Never decreases.
std::vector<Mark> farthestNextOf(const SillPiece& sill);

struct Steps {
  const Problem* problem = nullptr;
  Anchors anchors;
  std::vector<SillSteps> sills;
  std::vector<Mark> leastGap;      // by option of the left bolt * depthOptions + option of the right one
  Stretch axis;                    // from the first mark of the first sill piece to the last of the last
  std::vector<int> groupOf;        // by mark of the axis: the group whose reach it lies in, or -1
  std::vector<Weight> begunBy;     // by mark: least costs of the groups whose reach begins there or before
  std::vector<Weight> endedBefore; // by mark: least costs of the groups whose reach ends before it
  Weight allGroups;

  Mark gap(int left, int right) const { return leastGap[left * problem->depthOptions + right]; }
  int groupAt(Mark station) const { return groupOf[station - axis.from]; }
  int stancesAt(Mark station) const;
  Effect effectAt(int sill, Mark station, int option, int stance) const;
  // Matching the reference bolt with a bolt there.
  Weight matching(int sill, int reference, Mark station, int option) const;
};

// A place a bolt stands at, with the stance of the group in whose reach it is (0 outside). Before the first bolt:
// station -kFar.
struct Spot {
  Mark station = -kFar;
  int option = 0;
  int stance = 0;
};

// What the groups cost that lie between two bolts in a row, and the group that the left one stands in when the right
// one has left it; to be added to the groups ended before the right one. Only where both are not in one reach.
Weight leaving(const Steps& steps, const Spot& left);

// Stances that cost more than `above` above the least of their group are left out.
Steps stepsOf(const Problem& problem, const Weight& above);

} // namespace sillwright::sequence
