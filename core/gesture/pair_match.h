// The straps of a pair made alike: as of rule strap.pair, at both ends of a panel or at both sides of an opening.
#pragma once

#include "core/base/result.h"
#include "core/model/layout.h"

namespace sillwright {

struct PairMatch {
  PieceRef first;   // stays as it is
  PieceRef second;  // as far above its pour line as the first, and as far from the opening (from its end of the panel)
  Strap matched;    // the second as it becomes
  double along = 0; // moved; + to the right, in
  double up = 0;
};

// Selected: one strap or two, of which the first is the measure; or one opening or panel, of which the left strap is.
// One strap alone: that across the opening follows it, or else that at the other end of its panel.
// Problem: something else is selected, it has no pair (why), or the second would leave the wall.
Result<PairMatch> matchPair(const WallLayout& layout, const Selection& selected);

} // namespace sillwright
