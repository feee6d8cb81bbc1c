// Between a bolt's plate washer and the sheathed edges of its sill.
#pragma once

#include <vector>

#include "core/model/layout.h"
#include "core/rules/finding.h"

namespace sillwright {

struct SheathedEdge {
  bool outside = true;
  Interval strip;      // depths from the washer to that edge of the sill; empty or less where the washer is past it
  bool strong = false; // a panel of more than `strongFrom` plf is nailed there
};

// For a bolt with a plate washer on a sill, an entry a sheathed side; none for anything else. strongFrom in plf.
std::vector<SheathedEdge> sheathedEdges(const WallLayout& layout, const AnchorBody& bolt, double strongFrom);

// Where a bolt may stand, from the sheathed edge, so that it is in the middle third of a sill of that width and its washer
// reaches within `limit` of the edge and not past it; empty where there is no such place (to < from).
Interval boltWindow(double sillWidth, double washerAcross, double limit);

// Washers of the job's hardware that reach the edge with the bolt where it is: first one slid in its slot, then a larger
// one; the least larger of each.
std::vector<Correction> washersThatReach(const WallLayout& layout, const AnchorBody& bolt, const SheathedEdge& edge,
                                         double limit);

} // namespace sillwright
