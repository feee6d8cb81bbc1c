// Inside the optimiser: the problem seen from the other side of the wall.
#pragma once

#include "core/refit/sequence_anchors.h"

namespace sillwright::sequence {

// Station s becomes -s; sill pieces, references and least gaps turn round. Layouts correspond one to one, at the same
// cost.
Problem mirrored(const Problem& problem);

// The same of anchors without groups; only what bolts need of them.
Anchors mirrored(const Anchors& anchors);

} // namespace sillwright::sequence
