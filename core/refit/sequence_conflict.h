// Inside the optimiser: why there is no layout.
#pragma once

#include "core/refit/sequence.h"

namespace sillwright::sequence {

// Of a problem that cannot be laid.
Conflict conflictOf(const Problem& problem);

} // namespace sillwright::sequence
