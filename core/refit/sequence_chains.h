// Inside the optimiser: groups that are linked by distances, and the marks along which bolts see them.
#pragma once

#include "core/refit/sequence_anchors.h"

namespace sillwright::sequence {

// Finds the links, leaves out the stances that would cost more than `most` (all anchored pieces together), and lays
// what then has one stance left over the grounds. Stances are sorted, those of the cheapest layouts of their chain
// first.
void linkGroups(const Problem& problem, Anchors& anchors, const Weight& most);

// The same with no groups: every bolt meets the easiest stance at the least cost. No layout becomes dearer.
Anchors eased(const Anchors& anchors);

// Groups linked one to the next.
struct Chain {
  Stretch reach; // from the reach of the first group to that of the last
  Weight least;  // of its groups and links
};

// Marks of a chain along which bolts meet the same: one group, or nothing between two of them. What is to the left of
// such a bolt need know only one thing of what is to the right: its state. In the reach of a group that is the stance,
// between two groups the face of the right one. State 0 stands for any of them: it acts as the easiest, and at the end
// the chain has cost its least, so it bounds the others: a layout in any other state costs at least its `excess` more.
struct Part {
  int chain = 0;
  int group = -1; // -1: between two groups
  Stretch marks;
  std::vector<Weight> before; // by state: least cost of the chain to its left
  std::vector<Weight> after;  // by state: its own, and least cost of the chain to its right
  std::vector<Weight> excess; // by state: least cost of the whole chain with it, above that of the chain; ascending
  std::vector<Weight> onward; // to the part on its right in the same chain: by state and state there, without states 0

  int states() const { return static_cast<int>(after.size()); }
  const Weight& to(int state, int next, int statesThere) const {
    return onward[static_cast<std::size_t>(state - 1) * (statesThere - 1) + next - 1];
  }
};

struct Chains {
  std::vector<Chain> chains; // left to right
  std::vector<Part> parts;   // left to right
};

Chains chainsOf(const Anchors& anchors);

} // namespace sillwright::sequence
