// Benchmarks: every figure is a ratio of two things timed in the same run, so that it means the same on any machine.
#pragma once

#include <functional>
#include <string>
#include <vector>

namespace sillwright::bench {

struct Measure {
  std::string name;
  double value = 0;
  std::string unit;
};

// Median seconds of one call, over `rounds` timings of as many calls as make a timing long enough to trust.
double secondsPerCall(const std::function<void()>& call, int rounds = 7);

// Seconds of the processor, so that what else the machine does matters less: of this one call; least of one call over
// `rounds` timings.
double processorSecondsOf(const std::function<void()>& call);
double leastProcessorSeconds(const std::function<void()>& call, int rounds = 5);

// How long one call takes against another, both timed in turn over `rounds` rounds: least time against least time, and
// the median of the rounds' own ratios.
struct Ratio {
  double ofLeast = 0;
  double median = 0;
};
Ratio secondsAgainst(const std::function<void()>& call, const std::function<void()>& against, int rounds = 15);

struct Bench {
  std::string name;
  std::string about;
  std::vector<Measure> (*run)(int& argc, char** argv);
};
const std::vector<Bench>& benches();

std::vector<Measure> drag(int& argc, char** argv);
std::vector<Measure> recheck(int& argc, char** argv);
std::vector<Measure> load(int& argc, char** argv);
std::vector<Measure> rules(int& argc, char** argv);
std::vector<Measure> refit(int& argc, char** argv);
std::vector<Measure> start(int& argc, char** argv);

} // namespace sillwright::bench
