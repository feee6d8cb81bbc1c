// Jobs in which nothing is as it should be, so that every rule has something to find.
#pragma once

#include <random>

#include "core/model/job.h"

namespace sillwright {

// Moves, resizes and turns pieces of every kind, concrete, forms and hardware types at random, most of them a little,
// on the marks of a tape. Everything stays: nothing is added but steps and splices, nothing removed but straps.
Job broken(const Job& job, std::mt19937& random);

} // namespace sillwright
