#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>

#include "tests/bench/bench.h"

namespace sillwright::bench {

double secondsPerCall(const std::function<void()>& call, int rounds) {
  using Clock = std::chrono::steady_clock;
  const auto timed = [&](int calls) {
    const auto from = Clock::now();
    for (int i = 0; i < calls; ++i)
      call();
    return std::chrono::duration<double>(Clock::now() - from).count();
  };
  int calls = 1;
  while (timed(calls) < 0.02 && calls < 1'000'000)
    calls *= 2;
  std::vector<double> times;
  for (int i = 0; i < rounds; ++i)
    times.push_back(timed(calls) / calls);
  std::nth_element(times.begin(), times.begin() + rounds / 2, times.end());
  return times[static_cast<std::size_t>(rounds / 2)];
}

const std::vector<Bench>& benches() {
  static const std::vector<Bench> table{
      {"drag", "a drag frame (edit, check, drawing, paint) in jobs of 100, 10,000 and 100,000 pieces", drag},
      {"recheck", "checking again after one move, at the same sizes", recheck},
      {"load", "reading a job file against parsing its JSON alone", load},
      {"start", "start to first paint against an empty main window", start}};
  return table;
}

} // namespace sillwright::bench

int main(int argc, char** argv) {
  using namespace sillwright::bench;
  if (argc == 2 && std::strcmp(argv[1], "--list") == 0) {
    for (const Bench& bench : benches())
      std::printf("%-10s %s\n", bench.name.c_str(), bench.about.c_str());
    return 0;
  }
  for (const Bench& bench : benches())
    if (argc == 2 && bench.name == argv[1]) {
      if (!std::getenv("QT_QPA_PLATFORM"))
        setenv("QT_QPA_PLATFORM", "offscreen", 1);
      for (const Measure& measure : bench.run(argc, argv))
        std::printf("%s %.4g %s\n", measure.name.c_str(), measure.value, measure.unit.c_str());
      return 0;
    }
  std::fprintf(stderr, "usage: bench --list | bench NAME\n");
  return 2;
}
