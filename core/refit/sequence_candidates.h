// Inside the optimiser: where each anchored piece may stand by itself, and what that costs.
#pragma once

#include "core/refit/sequence_anchors.h"

namespace sillwright::sequence {

struct Candidate {
  Mark station;
  Weight cost;
};
using Candidates = std::vector<Candidate>;

// Ascending by station.
Candidates candidatesOf(const Anchored& piece, bool countWatch);

// kNever where the difference is not allowed.
Weight weightOf(const Distance& distance, Mark difference, bool countWatch);

// Makes distances to pieces with one mark a matter of the other piece alone, until no further piece has come to one
// mark. Returns the distances that are left.
std::vector<const Distance*> settle(const Problem& problem, std::vector<Candidates>& candidates);

// Whether the distance says anything, as far as the outermost candidates let the difference go.
bool matters(const Distance& distance, const std::vector<Candidates>& candidates);

} // namespace sillwright::sequence
