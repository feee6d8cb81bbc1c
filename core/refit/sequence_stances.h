// Inside the optimiser: what the pieces of one group can do together, without what never pays.
#pragma once

#include "core/refit/sequence_anchors.h"

namespace sillwright::sequence {

// Stances of the group, cheapest first; none where its pieces cannot stand together. `most`: what they may cost. Needs
// the candidates, open distances and grounds of the anchors.
std::vector<Stance> stancesOf(const Problem& problem, const Anchors& anchors, const Group& group, const Weight& most);

} // namespace sillwright::sequence
