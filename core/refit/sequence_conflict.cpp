#include "core/refit/sequence_conflict.h"

#include <span>

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

// Drops of these needs whatever can be dropped, one after another; what is left of them belongs to the conflict. Needs
// that can all be dropped at once could have been dropped one by one, so it tries many at once and halves where it
// fails.
void filter(std::span<const Need> needs, Problem& rest, Conflict& conflict) {
  Problem fewer = rest;
  for (const Need need : needs)
    fewer = without(fewer, need);
  if (!laysBare(fewer)) {
    rest = std::move(fewer);
    return;
  }
  if (needs.size() <= 1) {
    for (const Need need : needs)
      conflict.needs.push_back({need, std::nullopt});
    return;
  }
  filter(needs.first(needs.size() / 2), rest, conflict);
  filter(needs.subspan(needs.size() / 2), rest, conflict);
}

} // namespace

bool canBeLaid(const Problem& problem) {
  return laysBare(bare(problem));
}

std::optional<Mark> leastGiving(const Problem& problem, Need need) {
  return leastRelaxation(bare(problem), need);
}

Conflict conflictOf(const Problem& problem) {
  const Problem plain = bare(problem);
  Problem rest = plain;
  Conflict conflict;
  filter(needsOf(plain), rest, conflict);
  for (Relaxation& relaxation : conflict.needs)
    relaxation.by = leastRelaxation(plain, relaxation.need);
  return conflict;
}

} // namespace sillwright::sequence
