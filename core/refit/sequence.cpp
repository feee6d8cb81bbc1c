#include "core/refit/sequence.h"

#include "core/refit/sequence_conflict.h"
#include "core/refit/sequence_walk.h"

namespace sillwright::sequence {
namespace {

bool isAsGood(const Problem& problem, Mark room, const Weight& best) {
  return sweepOf(tightened(problem, room)).best == best;
}

// Tightening only ever takes layouts away, so the rooms with the same cost are 0 … some largest one.
Mark largestRoom(const Problem& problem, const Weight& best) {
  Mark good = 0;
  Mark bad = 1;
  while (bad <= kMostRoom && isAsGood(problem, bad, best)) {
    good = bad;
    bad *= 2;
  }
  bad = bad > kMostRoom ? kMostRoom + 1 : bad;
  while (bad - good > 1) {
    const Mark middle = good + (bad - good) / 2;
    (isAsGood(problem, middle, best) ? good : bad) = middle;
  }
  return good;
}

} // namespace

std::variant<Layout, Conflict> layInOrder(const Problem& problem) {
  const Sweep sweep = sweepOf(problem);
  if (isNever(sweep.best))
    return conflictOf(problem);
  const Mark room = largestRoom(problem, sweep.best);
  const Problem roomy = tightened(problem, room);
  Layout layout = leftmostOf(room == 0 ? sweep : sweepOf(roomy));
  layout.room = room;
  return layout;
}

} // namespace sillwright::sequence
