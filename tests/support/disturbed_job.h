// Jobs in which the steel turned out to be elsewhere, for refits.
#pragma once

#include <random>

#include "core/model/job.h"

namespace sillwright {

// A sound job in which the steel turned out to be elsewhere, and what was set is a little off. Some columns have
// leeway, some bolts are set, a strap or a bolt is missing here and there.
Job disturbed(Job job, std::mt19937& random);

// A sample or a generated job with little to find.
Job soundJob(std::uint64_t seed);

} // namespace sillwright
