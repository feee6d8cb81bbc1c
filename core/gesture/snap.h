// Where a dragged piece would rather stand, and why. Wall frame, inches.
#pragma once

#include "core/drawing/in_hand.h"
#include "core/model/layout.h"
#include "core/model/lookup.h"

namespace sillwright {

struct Snapped {
  double value = 0;
  SnapReason reason = SnapReason::None;
  Id to; // the column, the other strap …
};

// Station of a piece's centre line. Straps: column centres; bolts: middle between bars and between studs; columns:
// opening edges, wall ends and panel ends (by their faces); everything: 1/16. reach: how near counts, in.
Snapped snapStation(const WallLayout& layout, const Piece& piece, double station, double reach);
// Station of the end of a stretch (opening, sill, panel, step, bar).
Snapped snapEnd(const WallLayout& layout, const Piece& piece, double station, double reach);
// Height of a strap's joint over its pour line: 0, and the height of its pair.
Snapped snapHeight(const WallLayout& layout, const Strap& strap, double offset, double reach);

} // namespace sillwright
