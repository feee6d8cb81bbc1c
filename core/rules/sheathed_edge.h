// Between a bolt's plate washer and the sheathed edges of its sill.
#pragma once

#include <vector>

#include "core/model/layout.h"

namespace sillwright {

struct SheathedEdge {
  bool outside = true;
  Interval strip;      // depths from the washer to that edge of the sill; empty or less where the washer is past it
  bool strong = false; // a panel of more than `strongFrom` plf is nailed there
};

// For a bolt with a plate washer on a sill, an entry a sheathed side; none for anything else. strongFrom in plf.
std::vector<SheathedEdge> sheathedEdges(const WallLayout& layout, const AnchorBody& bolt, double strongFrom);

} // namespace sillwright
