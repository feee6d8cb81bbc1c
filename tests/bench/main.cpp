#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>

#include "tests/bench/bench.h"

namespace sillwright::bench {

namespace {

double timed(const std::function<void()>& call, int calls) {
  using Clock = std::chrono::steady_clock;
  const auto from = Clock::now();
  for (int i = 0; i < calls; ++i)
    call();
  return std::chrono::duration<double>(Clock::now() - from).count();
}

int callsWorthTiming(const std::function<void()>& call) {
  int calls = 1;
  while (timed(call, calls) < 0.02 && calls < 1'000'000)
    calls *= 2;
  return calls;
}

double medianOf(std::vector<double> values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return *middle;
}

} // namespace

double secondsPerCall(const std::function<void()>& call, int rounds) {
  const int calls = callsWorthTiming(call);
  std::vector<double> times;
  for (int i = 0; i < rounds; ++i)
    times.push_back(timed(call, calls) / calls);
  return medianOf(times);
}

double processorSecondsOf(const std::function<void()>& call) {
  const std::clock_t from = std::clock();
  call();
  return static_cast<double>(std::clock() - from) / CLOCKS_PER_SEC;
}

double leastProcessorSeconds(const std::function<void()>& call, int rounds) {
  const int calls = callsWorthTiming(call);
  double least = 1e9;
  for (int i = 0; i < rounds; ++i)
    least = std::min(least, processorSecondsOf([&] {
                              for (int count = 0; count < calls; ++count)
                                call();
                            }) / calls);
  return least;
}

Ratio secondsAgainst(const std::function<void()>& call, const std::function<void()>& against, int rounds) {
  const int calls = callsWorthTiming(call), others = callsWorthTiming(against);
  double least = 1e9, leastOther = 1e9;
  std::vector<double> ratios;
  for (int i = 0; i < rounds; ++i) {
    const double one = timed(call, calls) / calls, other = timed(against, others) / others;
    least = std::min(least, one);
    leastOther = std::min(leastOther, other);
    ratios.push_back(one / other);
  }
  return {least / leastOther, medianOf(ratios)};
}

const std::vector<Bench>& benches() {
  static const std::vector<Bench> table{
      {"drag", "a drag frame (edit, check, drawing, paint) in jobs of 100, 10,000 and 100,000 pieces", drag},
      {"recheck", "checking again after one move, at the same sizes", recheck},
      {"rules", "a full check of 10,000 pieces against all distances to neighbours alone; re-checks in 100 and 100,000",
       rules},
      {"refit", "the slots of a wall against full checks of it; layouts in order: growth, and against a general solver",
       refit},
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
