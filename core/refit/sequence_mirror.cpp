#include "core/refit/sequence_mirror.h"

#include <algorithm>

namespace sillwright::sequence {
namespace {

template <typename Interval> void turn(Interval& interval) {
  const Mark from = interval.from;
  interval.from = -interval.to;
  interval.to = -from;
}

void turn(Ground& ground) {
  for (Blocked& blocked : ground.blocked)
    turn<Blocked>(blocked);
  for (Toll& toll : ground.tolls)
    turn<Toll>(toll);
}

void turn(Anchored& piece) {
  turn<Stretch>(piece.own);
  turn<Stretch>(piece.outermost);
  turn(piece.ground);
  if (piece.reference)
    piece.reference = -*piece.reference;
}

void turn(SillPiece& sill) {
  turn<Stretch>(sill.stretch);
  std::swap(sill.first, sill.last);
  for (MostGap& gap : sill.most)
    turn<MostGap>(gap);
  for (Ground& ground : sill.options)
    turn(ground);
  for (ReferenceBolt& bolt : sill.reference)
    bolt.station = -bolt.station;
  std::reverse(sill.reference.begin(), sill.reference.end());
}

} // namespace

Problem mirrored(const Problem& problem) {
  Problem turned = problem;
  for (Anchored& piece : turned.anchored)
    turn(piece);
  for (Distance& distance : turned.distances)
    std::swap(distance.left, distance.right);
  for (Beside& beside : turned.besides)
    for (Ground& ground : beside.options)
      turn(ground);
  for (LeastGap& gap : turned.leastGaps)
    std::swap(gap.left, gap.right);
  for (SillPiece& sill : turned.sillPieces)
    turn(sill);
  std::reverse(turned.sillPieces.begin(), turned.sillPieces.end());
  return turned;
}

Problem withoutReaches(const Problem& problem, const std::vector<Group>& groups) {
  Problem plain = problem;
  std::erase_if(plain.besides, [&](const Beside& beside) {
    return std::any_of(groups.begin(), groups.end(), [&](const Group& group) {
      return std::find(group.pieces.begin(), group.pieces.end(), beside.anchored) != group.pieces.end();
    });
  });
  return plain;
}

} // namespace sillwright::sequence
