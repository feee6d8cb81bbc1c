// Inside the optimiser: the problem seen from the other side of the wall, and without what couples bolts to groups.
#pragma once

#include "core/refit/sequence_anchors.h"

namespace sillwright::sequence {

// Station s becomes -s; sill pieces, references and leasts gaps turn round. Layouts correspond one to one, at the same
// cost.
Problem mirrored(const Problem& problem);

// Without the ground between bolts and the pieces of these groups: no layout becomes dearer.
Problem withoutReaches(const Problem& problem, const std::vector<Group>& groups);

} // namespace sillwright::sequence
