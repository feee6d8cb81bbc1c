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

Anchors mirrored(const Anchors& anchors) {
  Anchors turned;
  turned.possible = anchors.possible;
  turned.standing = anchors.standing;
  for (auto ground = anchors.grounds.rbegin(); ground != anchors.grounds.rend(); ++ground) {
    Row row = *ground;
    turn<Stretch>(row.stretch);
    for (Mark station = row.stretch.from; station <= row.stretch.to; ++station)
      for (int option = 0; option < row.options; ++option)
        row.at(station, option) = ground->at(-station, option);
    turned.grounds.push_back(std::move(row));
  }
  return turned;
}

} // namespace sillwright::sequence
