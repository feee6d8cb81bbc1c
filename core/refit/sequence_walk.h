// Inside the optimiser: from the finished sweep to the leftmost of the best layouts.
#pragma once

#include "core/refit/sequence_sweep.h"

namespace sillwright::sequence {

// The sweep's best must not be kNever. Room is left at 0.
Layout leftmostOf(const Sweep& sweep);

} // namespace sillwright::sequence
