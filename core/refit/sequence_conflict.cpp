#include "core/refit/sequence_conflict.h"

#include <algorithm>

#include "core/refit/sequence_sweep.h"

namespace sillwright::sequence {
namespace {

// What can be laid does not depend on costs; without them there is less to sweep.
Problem bare(const Problem& problem) {
  Problem plain = problem;
  for (Anchored& piece : plain.anchored) {
    piece.ground.tolls.clear();
    if (!piece.fixed)
      piece.reference.reset();
  }
  for (Distance& distance : plain.distances)
    distance.tolls.clear();
  for (Beside& beside : plain.besides)
    for (Ground& ground : beside.options)
      ground.tolls.clear();
  for (SillPiece& sill : plain.sillPieces) {
    sill.gapTolls.clear();
    for (Ground& ground : sill.options)
      ground.tolls.clear();
    std::erase_if(sill.reference, [](const ReferenceBolt& bolt) { return !bolt.fixed; });
  }
  return plain;
}

bool laysBare(const Problem& plain) {
  return !isNever(sweepOf(plain).best);
}

// Giving way by more only ever adds layouts, so the amounts that are enough are all from some least one on.
std::optional<Mark> leastRelaxation(const Problem& plain, Need need) {
  Mark tooLittle = 0;
  Mark much = 1;
  const Mark most = kFar / 2; // more than any wall; what is blocked without end never gives
  while (!laysBare(relaxed(plain, need, much))) {
    if (much >= most)
      return std::nullopt;
    tooLittle = much;
    much = std::min(much * 4, most);
  }
  while (much - tooLittle > 1) {
    const Mark middle = tooLittle + (much - tooLittle) / 2;
    (laysBare(relaxed(plain, need, middle)) ? much : tooLittle) = middle;
  }
  return much;
}

} // namespace

bool canBeLaid(const Problem& problem) {
  return laysBare(bare(problem));
}

Conflict conflictOf(const Problem& problem) {
  const Problem plain = bare(problem);
  Problem rest = plain;
  Conflict conflict;
  for (const Need need : needsOf(plain)) {
    Problem fewer = without(rest, need);
    if (laysBare(fewer))
      conflict.needs.push_back({need, std::nullopt});
    else
      rest = std::move(fewer);
  }
  for (Relaxation& relaxation : conflict.needs)
    relaxation.by = leastRelaxation(plain, relaxation.need);
  return conflict;
}

} // namespace sillwright::sequence
