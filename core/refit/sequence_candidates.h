// Inside the optimiser: where each anchored piece may stand by itself, and what that costs.
#pragma once

#include "core/refit/sequence_weight.h"

namespace sillwright::sequence {

struct Candidate {
  Mark station;
  Weight cost;
};
using Candidates = std::vector<Candidate>;

Weight leastOf(const Candidates& candidates);

Effect effectOf(const Toll& toll, bool countWatch);
// The effect of ground on one station or difference.
Effect effectOf(const Ground& ground, Mark at, bool countWatch);

// Ascending by station.
Candidates candidatesOf(const Anchored& piece, bool countWatch);

// kBlocked where the difference is not allowed.
Effect effectOf(const Distance& distance, Mark difference, bool countWatch);

// Makes distances to pieces with one mark a matter of the other piece alone, until no further piece has come to one
// mark; they are no longer open.
void settle(const Problem& problem, std::vector<Candidates>& candidates, std::vector<const Distance*>& open);

// What the distance costs, if that is the same however the candidates let the difference go.
std::optional<Effect> constantEffect(const Distance& distance, const std::vector<Candidates>& candidates,
                                     bool countWatch);

} // namespace sillwright::sequence
