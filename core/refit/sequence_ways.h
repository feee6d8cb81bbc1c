// Inside the optimiser: windows of marks in which the next bolt may stand.
#pragma once

#include <algorithm>

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

// Least values among the marks of a window whose ends only ever move left; whole rows of values at once. Two stacks:
// what is new is only counted into one row, and turned over, once, when something old has to go.
class LeastRows {
public:
  void clear(std::size_t rowWidth);
  // The values from..to of a row; the others are never. Stations come from right to left.
  void add(Mark station, std::size_t from, std::size_t to, const Weight* values);
  // From now on only what stands at or left of it.
  void limit(Mark farthest);
  // Lowers the values at `to` to the least of a part of the row and `more`.
  void takeLeast(std::size_t fromIndex, std::size_t toIndex, const Weight& more, Weight* to) const {
    for (std::size_t index = fromIndex; index < toIndex; ++index)
      to[index - fromIndex] = std::min(to[index - fromIndex], newerLeast[index] + more);
    if (older.empty())
      return;
    const Entry& oldest = older.back();
    const Weight* values = &olderValues[oldest.at];
    for (std::size_t index = std::max(fromIndex, oldest.from); index < std::min(toIndex, oldest.to); ++index)
      to[index - fromIndex] = std::min(to[index - fromIndex], values[index - oldest.from] + more);
  }

private:
  struct Entry {
    Mark station;
    std::size_t from;
    std::size_t to;
    std::size_t at;
  };
  void turnOver(Mark farthest);

  std::vector<Entry> older; // the last one is the oldest; its values are the least of it and all before it here
  std::vector<Weight> olderValues;
  std::vector<Entry> newer; // the first one is the oldest
  std::vector<Weight> newerValues;
  std::vector<Weight> newerLeast; // of all of them, the whole row
};

} // namespace sillwright::sequence
