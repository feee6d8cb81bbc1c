#include "core/base/on_all_cores.h"

#include <algorithm>
#include <mutex>
#include <thread>
#include <vector>

namespace sillwright {

void onAllCores(std::size_t count, const std::function<void(std::size_t)>& work, const Progress& progress,
                const std::atomic<bool>* cancelled) {
  std::atomic<std::size_t> next{0};
  std::mutex telling;
  std::size_t done = 0;
  const auto share = [&] {
    for (std::size_t i = next++; i < count && !(cancelled && *cancelled); i = next++) {
      work(i);
      const std::lock_guard lock(telling);
      ++done;
      if (progress)
        progress(done, count);
    }
  };
  const std::size_t threads = std::min<std::size_t>(std::max(1U, std::thread::hardware_concurrency()), count);
  std::vector<std::thread> others;
  for (std::size_t i = 1; i < threads; ++i)
    others.emplace_back(share);
  share();
  for (std::thread& other : others)
    other.join();
}

} // namespace sillwright
