// Inside the optimiser: the anchored pieces, sorted by what they still have to do with bolts and with each other.
#pragma once

#include "core/refit/sequence_candidates.h"

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
  std::size_t index(Mark station, int option) const {
    return static_cast<std::size_t>(station - stretch.from) * options + option;
  }
  Effect& at(Mark station, int option) { return effects[index(station, option)]; }
  Effect at(Mark station, int option) const { return effects[index(station, option)]; }
};

// Lays ground (shifted by some marks) over the effects of one option.
void lay(Row& row, int option, const Ground& ground, Mark shift, bool countWatch);

// Stations of the pieces of a group, and how they act on bolts.
struct Stance {
  Weight cost;
  std::vector<Mark> stations; // of the group's pieces, in their order
  Row effects;                // on bolts in the group's reach
};

// Pieces that restrict each other or whose reaches overlap; their combinations are tried. A combination is left out
// where another one costs no more, is no worse to any bolt and no worse to any piece outside: whatever the rest does,
// the other one will do. So of the stances only costs mean anything; where the pieces stand at last is found anew when
// the bolts are known (see settleAnchors).
struct Group {
  std::vector<int> pieces; // ascending
  Stretch reach;           // of bolts on whom it matters where these pieces stand; empty (from > to): none
  std::vector<Stance> stances = {};
  Row easiest = {}; // least effects of any of the stances
};

// Distances between pieces of two groups next to each other. Stances of the right group to which no stance of the left
// one makes a difference have the same face.
struct Link {
  int faces = 0;            // 0: nothing links the two
  std::vector<int> face;    // by stance of the right group
  std::vector<Weight> cost; // by stance of the left group and face
  const Weight& at(std::size_t left, int towards) const { return cost[left * faces + towards]; }
};

struct Anchors {
  bool possible = true;
  Weight standing;                    // cost of the pieces that no bolt and no group makes a difference to
  std::vector<Candidates> candidates; // by piece
  std::vector<const Distance*> open;  // that say anything
  std::vector<Group> groups;          // with a reach, left to right, reaches apart
  std::vector<Link> links;  // by group: to the one left of it. Otherwise groups have nothing to do with one another
  std::vector<Row> grounds; // by sill piece: effects of its own ground and of the pieces that have one mark left
};

// What costs more than `most` (all anchored pieces together) may be left out.
Anchors sortAnchors(const Problem& problem, const Weight& most);

} // namespace sillwright::sequence
