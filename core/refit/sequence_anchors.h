// Inside the optimiser: the anchored pieces, sorted by what they still have to do with bolts and with each other.
#pragma once

#include "core/refit/sequence_weight.h"

namespace sillwright::sequence {

// Effects on a bolt by station and depth option, for the stations of a stretch.
struct Row {
  Stretch stretch;
  int options = 1;
  std::vector<Effect> effects;

  Row() = default;
  Row(const Stretch& over, int depthOptions)
      : stretch(over), options(depthOptions),
        effects(static_cast<std::size_t>(over.to - over.from + 1) * depthOptions) {}
  bool holds(Mark station) const { return station >= stretch.from && station <= stretch.to; }
  Effect& at(Mark station, int option) {
    return effects[static_cast<std::size_t>(station - stretch.from) * options + option];
  }
  Effect at(Mark station, int option) const {
    return effects[static_cast<std::size_t>(station - stretch.from) * options + option];
  }
};

// Lays ground (shifted by some marks) over the effects of one option.
void lay(Row& row, int option, const Ground& ground, Mark shift, bool countWatch);
// The effect of ground on one station or difference.
Effect effectOf(const Ground& ground, Mark at, bool countWatch);

// Stations of the pieces of a group that act alike on every bolt; of these only the cheapest, then leftmost, is kept,
// because nothing else in the problem can tell them apart.
struct Stance {
  Weight cost;
  std::vector<Mark> stations; // of the group's pieces, in their order
  Row effects;                // on bolts in the group's reach
};

// Pieces that restrict each other or whose reaches overlap; all their combinations are tried. Groups have nothing to do
// with one another, except through the bolts between them.
struct Group {
  std::vector<int> pieces; // ascending
  Stretch reach;           // of bolts on whom it matters where these pieces stand; empty (from > to): none
  std::vector<Stance> stances = {};
  Weight least = {}; // of its stances
};

struct Anchors {
  bool possible = true;
  Weight standing;            // cost of the pieces that have one mark left, and of groups without reach
  std::vector<Mark> stations; // of those pieces; of the others not yet known
  std::vector<Group> groups;  // with a reach, left to right, reaches apart
  std::vector<Row> grounds;   // by sill piece: effects of its own ground and of the pieces that have one mark left
};

// Stances that cost more than `above` above the least of their group are left out.
Anchors sortAnchors(const Problem& problem, const Weight& above);

} // namespace sillwright::sequence
