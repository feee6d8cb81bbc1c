// Inside the optimiser: what bolts of one part of a chain see of the bolts to their right in the same chain.
#pragma once

#include "core/refit/sequence_sweep.h"

namespace sillwright::sequence {

// Of one sill piece: what it costs to go on with a bolt in a part farther right, by mark, state here, and the rows of
// the table there.
struct View {
  std::vector<std::size_t> base; // by mark of the sill piece; SillTable::kNone where there is none
  std::vector<Weight> placing;
};

class Views {
public:
  explicit Views(const Sweep& givenSweep) : sweep(givenSweep), steps(sweep.steps), bySill(steps.sills.size()) {}

  // From now on as seen by the bolts of that sill piece in that part; -1: none. Parts come from right to left.
  void lookFrom(int sill, int part);

  // Of a bolt in the same chain: one entry for each row of its mark's table, or null. State 0 and those that have one.
  const Weight* placing(int sill, Mark mark, int state) const;
  // How many states there have entries.
  int states(int sill, Mark mark) const;

  // Least cost of everything in the sill pieces from `which` on, after the last bolt left of them (or none: station
  // -kFar).
  Weight toEnter(int which, const Spot& left) const;

private:
  void stepLeft(int sill);
  void see(int sill, Mark mark, View& view) const;
  void chartCrossing(int sill);
  Weight beyond(int which, const Spot& left) const;
  Weight within(int which, const Spot& left) const;

  const Sweep& sweep;
  const Steps& steps;
  int here = -1; // the part looked from
  std::vector<View> bySill;
  // By sill piece farther right, option, mark of its first window, state here: least of placing its first bolt there or
  // farther right in the same chain.
  std::vector<std::vector<Weight>> crossing;
};

} // namespace sillwright::sequence
