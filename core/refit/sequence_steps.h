// Inside the optimiser: what it costs to go from one bolt to the next, with everything in between.
#pragma once

#include <cstdlib>

#include "core/refit/sequence_chains.h"

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
  std::vector<Mark>
      farthestWith; // by count, up to what it takes to come to the end: the same with just so many. Ascending
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
  Chains chains;
  std::vector<SillSteps> sills;
  int columns = 1;                 // depth options told apart
  std::vector<Mark> leastGap;      // by option of the left bolt * columns + option of the right one
  Stretch axis;                    // from the first mark of the first sill piece to the last of the last
  std::vector<int> partOf;         // by mark of the axis: the part of a chain that it lies in, or -1
  std::vector<int> chainsEnded;    // by mark: how many chains end before it
  std::vector<Weight> leastOf;     // by number of chains: what the first so many cost at least
  Weight allChains;

  Mark gap(int left, int right) const { return leastGap[left * columns + right]; }
  // Before the first mark there is no part.
  int partAt(Mark station) const { return station < axis.from ? -1 : partOf[station - axis.from]; }
  const Part& part(int index) const { return chains.parts[index]; }
  bool sameChain(int part, int other) const {
    return part >= 0 && other >= 0 && chains.parts[part].chain == chains.parts[other].chain;
  }
  // Least costs of the chains that end before a mark.
  const Weight& endedBefore(Mark station) const { return leastOf[chainsEnded[station - axis.from]]; }
  int statesIn(int part) const { return part < 0 ? 1 : chains.parts[part].states(); }
  // The first state that a bolt may really be in.
  static int firstState(int part) { return part < 0 ? 0 : 1; }
  Effect effectAt(int sill, Mark station, int option, int state) const;
  // Matching the reference bolt with a bolt there.
  Weight matching(int sill, int reference, Mark station, int option) const {
    const ReferenceBolt& bolt = problem->sillPieces[sill].reference[reference];
    const Mark shift = bolt.shift[option];
    if (shift >= kFar)
      return kNever;
    const Mark moved = std::abs(station - bolt.station) + shift;
    if (moved == 0)
      return {};
    return bolt.fixed ? kNever : weightOf(0, 0, bolt.set ? 1 : 0, 0, moved);
  }
};

// A place a bolt stands at, with the state of the part that it is in (0 outside). Before the first bolt: station -kFar.
struct Spot {
  Mark station = -kFar;
  int option = 0;
  int state = 0;
};

// What the chains cost that lie between two bolts in a row, and the chain that the left one stands in when the right
// one has left it; to be added to the chains ended before the right one. Only where both are not in one chain.
Weight leaving(const Steps& steps, const Spot& left);

// The chain up to a state; to be added where a bolt in it is the first in its chain.
inline Weight entering(const Steps& steps, int part, int state) {
  return part < 0 ? Weight{} : steps.part(part).before[state];
}

// From a state of a part to each state of it or of a part on its right in the same chain, without states 0.
std::vector<Weight> along(const Steps& steps, int part, int state, int toPart);

// `anchors` as sorted from the problem. `anyOption`: as if every bolt had the option that suits it best, the gaps to
// both sides and what it costs there apart: the options are not told apart, and gaps are the smallest.
Steps stepsOf(const Problem& problem, Anchors anchors, bool anyOption);

} // namespace sillwright::sequence
