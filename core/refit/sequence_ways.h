// Inside the optimiser: windows of marks in which the next bolt may stand.
#pragma once

#include "core/refit/sequence_steps.h"

namespace sillwright::sequence {

// One way to go on from a bolt: to options at the same least gap, in one band of differences.
struct Way {
  std::vector<int> from; // options of the left bolt
  std::vector<int> to;   // options of the right bolt
  Mark nearest = 1;
  Mark farthest = kFar;
  Weight cost;
};

std::vector<Way> waysOf(const Steps& steps, const SillSteps& sill);

// Least value among the marks of a window whose ends only ever move left.
class SlidingLeast {
public:
  void clear() {
    entries.clear();
    head = 0;
  }
  void add(Mark station, const Weight& value) {
    while (entries.size() > head && !(entries.back().value < value))
      entries.pop_back();
    entries.push_back({station, value});
  }
  Weight leastUpTo(Mark farthest) {
    while (head < entries.size() && entries[head].station > farthest)
      ++head;
    return head < entries.size() ? entries[head].value : kNever;
  }

private:
  struct Entry {
    Mark station;
    Weight value;
  };
  std::vector<Entry> entries;
  std::size_t head = 0;
};

} // namespace sillwright::sequence
