// Inside the optimiser: with the bolts of a layout known, which reference each of them is and where the pieces stand.
#pragma once

#include "core/refit/sequence_steps.h"

namespace sillwright::sequence {

// Matches the bolts of each sill piece with its reference: cheapest, then each bolt in order the lowest it can. The
// rest of the reference is removed.
void matchReferences(const Steps& steps, Layout& layout);

// The anchored pieces at the least cost; of several ways the leftmost, piece by piece in the order given.
void settleAnchors(const Steps& steps, Layout& layout);

} // namespace sillwright::sequence
