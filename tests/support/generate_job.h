// Jobs of any size from a seed, for properties and benchmarks.
#pragma once

#include <cstddef>
#include <cstdint>

#include "core/model/job.h"

namespace sillwright {

// A valid job of exactly `pieces` pieces (at least 10): closed rectangles side by side, every wall framed and laid out,
// some pieces a little off their place, so that there is something to find. Equal arguments give equal jobs.
Job generateJob(std::uint64_t seed, std::size_t pieces);

} // namespace sillwright
