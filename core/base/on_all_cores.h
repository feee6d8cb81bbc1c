// Work shared out over all cores.
#pragma once

#include <atomic>
#include <cstddef>
#include <functional>

namespace sillwright {

// How many are done, of how many. Called by whichever thread is done with one, never by two at once.
using Progress = std::function<void(std::size_t done, std::size_t of)>;

// Calls work(i) once for every i below count, in no order, from as many threads as there are cores; this one is one of
// them. Returns when all are done, or, once `cancelled` is true, when those begun are. work must not throw.
void onAllCores(std::size_t count, const std::function<void(std::size_t)>& work, const Progress& progress = {},
                const std::atomic<bool>* cancelled = nullptr);

} // namespace sillwright
