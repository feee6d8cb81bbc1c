#include "core/refit/sequence_candidates.h"

#include <algorithm>
#include <cstdlib>

namespace sillwright::sequence {
namespace {

bool blocks(const Blocked& interval, Mark at) {
  return at > interval.from && at < interval.to;
}

bool pays(const Toll& toll, Mark at) {
  return toll.closed ? at >= toll.from && at <= toll.to : at > toll.from && at < toll.to;
}

bool allows(const Distance& distance, Mark difference) {
  return std::any_of(distance.allowed.begin(), distance.allowed.end(),
                     [&](const Stretch& stretch) { return difference >= stretch.from && difference <= stretch.to; });
}

Weight movementOf(const Anchored& piece, Mark station) {
  if (!piece.reference)
    return {};
  const Mark moved = std::abs(station - *piece.reference);
  return sequence::weightOf(0, 0, piece.set && moved > 0 ? 1 : 0, 0, moved);
}

} // namespace

Effect effectOf(const Toll& toll, bool countWatch) {
  return toll.kind == Kind::Ask ? kAsk : countWatch ? kWatch : 0;
}

Effect effectOf(const Ground& ground, Mark at, bool countWatch) {
  Effect effect = 0;
  for (const Blocked& interval : ground.blocked)
    if (blocks(interval, at))
      return kBlocked;
  for (const Toll& toll : ground.tolls)
    if (pays(toll, at))
      effect += effectOf(toll, countWatch);
  return effect;
}

Effect effectOf(const Distance& distance, Mark difference, bool countWatch) {
  if (!allows(distance, difference))
    return kBlocked;
  Effect effect = 0;
  for (const Toll& toll : distance.tolls)
    if (pays(toll, difference))
      effect += effectOf(toll, countWatch);
  return effect;
}

Weight leastOf(const Candidates& candidates) {
  Weight least = kNever;
  for (const Candidate& candidate : candidates)
    least = std::min(least, candidate.cost);
  return least;
}

Candidates candidatesOf(const Anchored& piece, bool countWatch) {
  Stretch stretch{std::max(piece.own.from, piece.outermost.from), std::min(piece.own.to, piece.outermost.to)};
  if (piece.fixed)
    stretch = {std::max(stretch.from, *piece.reference), std::min(stretch.to, *piece.reference)};
  Candidates candidates;
  for (Mark station = stretch.from; station <= stretch.to; ++station)
    if (const Effect effect = effectOf(piece.ground, station, countWatch); effect != kBlocked)
      candidates.push_back({station, sequence::weightOf(effect) + movementOf(piece, station)});
  return candidates;
}

void settle(const Problem& problem, std::vector<Candidates>& candidates, std::vector<const Distance*>& open) {
  const auto settles = [&](const Distance* distance) {
    Candidates& left = candidates[distance->left];
    Candidates& right = candidates[distance->right];
    if (left.size() > 1 && right.size() > 1)
      return false;
    const bool leftStays = left.size() <= 1;
    const Candidates& still = leftStays ? left : right;
    Candidates& other = leftStays ? right : left;
    if (still.empty())
      return true;
    for (Candidate& candidate : other) {
      const Mark difference = candidate.station - still[0].station;
      candidate.cost =
          candidate.cost + weightOf(effectOf(*distance, leftStays ? difference : -difference, problem.countWatch));
    }
    std::erase_if(other, [](const Candidate& candidate) { return isNever(candidate.cost); });
    return true;
  };
  while (std::erase_if(open, settles) > 0)
    ;
}

std::optional<Effect> constantEffect(const Distance& distance, const std::vector<Candidates>& candidates,
                                     bool countWatch) {
  const Candidates& left = candidates[distance.left];
  const Candidates& right = candidates[distance.right];
  const Mark least = right.front().station - left.back().station;
  const Mark most = right.back().station - left.front().station;
  // Whether something begins or ends to hold at this difference, seen from the one before it.
  const auto changes = [&](Mark at) { return at > least && at <= most; };
  for (const Stretch& stretch : distance.allowed)
    if (changes(stretch.from) || changes(stretch.to + 1))
      return std::nullopt;
  for (const Toll& toll : distance.tolls)
    if (changes(toll.closed ? toll.from : toll.from + 1) || changes(toll.closed ? toll.to + 1 : toll.to))
      return std::nullopt;
  return effectOf(distance, least, countWatch);
}

} // namespace sillwright::sequence
