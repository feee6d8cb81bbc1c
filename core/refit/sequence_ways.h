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
  Weight least(std::size_t index) const {
    const Weight& fresh = newerLeast[index];
    if (older.empty() || index < older.back().from || index >= older.back().to)
      return fresh;
    return std::min(fresh, olderValues[older.back().at + index - older.back().from]);
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
