#include "core/refit/sequence.h"

#include "core/refit/sequence_conflict.h"
#include "core/refit/sequence_mirror.h"
#include "core/refit/sequence_walk.h"

namespace sillwright::sequence {
namespace {

constexpr int kFewStates = 16;

// The least cost of everything on one side of each bolt, with every bolt met by the easiest of what a group can do. It
// does two things: it bounds the real sweep, which need only look at what costs no more than a guess, and it is the
// first guess. Whatever is guessed, the answer is exact: a guess that was too low finds nothing, and the next one is
// higher, at last without bound.
struct Floor {
  Problem problem;
  Anchors anchors;
  Weight most; // what it was bounded by
  Sweep sweep;

  // Mostly a bar has moved and few bolts need be others.
  explicit Floor(const Problem& given)
      : problem(mirrored(given)), anchors(mirrored(eased(sortAnchors(given, kAnything)))),
        most(weightOf(0, 2, 2, 0, 0)), sweep(sweepOf(problem, anchors, {.most = most, .anyOption = true})) {
    if (isNever(sweep.best))
      raise();
  }
  Floor(const Floor&) = delete;
  Floor& operator=(const Floor&) = delete;

  void raise() {
    if (most == kAnything)
      return;
    most = kAnything;
    sweep = sweepOf(problem, anchors, {.anyOption = true});
  }
};

// Any layout, the best where it is not curtailed.
Sweep firstSweep(const Problem& problem, Floor& floor) {
  const Weight least = floor.sweep.best;
  const Weight guesses[] = {least + weightOf(0, 0, 0, 0, 32), least + weightOf(0, 0, 0, 2, 160),
                            withAnyLower(least + weightOf(0, 0, 2, 0, 0)), least + weightOf(0, 2, 4, 0, 0), kAnything};
  Sweep sweep;
  for (const Weight& guess : guesses) {
    if (floor.most < guess)
      floor.raise();
    sweepAgain(sweep, problem, {.most = guess, .mostStates = kFewStates, .floor = &floor.sweep});
    if (!isNever(sweep.best) || (!sweep.curtailed && guess == kAnything))
      return sweep;
  }
  sweepAgain(sweep, problem, {.floor = &floor.sweep});
  return sweep;
}

// Looks at a few of the cheapest stances first: what they cost bounds what has to be looked at then.
Sweep bestSweep(const Problem& problem, Floor& floor) {
  Sweep sweep = firstSweep(problem, floor);
  for (int states = 4 * kFewStates; sweep.curtailed; states *= 16)
    sweepAgain(sweep, problem, {.most = sweep.best, .mostStates = states, .floor = &floor.sweep});
  return sweep;
}

// Tightening only ever takes layouts away, so the rooms with the same cost are 0 … some largest one.
Mark largestRoom(const Problem& problem, const Bound& bound, Sweep& tried) {
  const auto isAsGood = [&](Mark room) {
    sweepAgain(tried, tightened(problem, room), bound);
    return tried.best == bound.most;
  };
  Mark good = 0;
  Mark bad = 1;
  while (bad <= kMostRoom && isAsGood(bad)) {
    good = bad;
    bad *= 2;
  }
  bad = bad > kMostRoom ? kMostRoom + 1 : bad;
  while (bad - good > 1) {
    const Mark middle = good + (bad - good) / 2;
    (isAsGood(middle) ? good : bad) = middle;
  }
  return good;
}

} // namespace

std::variant<Layout, Conflict> layInOrder(const Problem& problem) {
  Floor floor(problem);
  const Sweep sweep = isNever(floor.sweep.best) ? Sweep{} : bestSweep(problem, floor);
  if (isNever(sweep.best))
    return conflictOf(problem);
  const Bound exact{.most = sweep.best, .floor = &floor.sweep};
  Sweep tried;
  const Mark room = largestRoom(problem, exact, tried);
  const Problem roomy = tightened(problem, room);
  if (room > 0)
    sweepAgain(tried, roomy, exact);
  Layout layout = leftmostOf(room == 0 ? sweep : tried);
  layout.room = room;
  return layout;
}

} // namespace sillwright::sequence
