// Which strap holds which end of a panel, or stands beside an opening; which straps are pairs.
#pragma once

#include <optional>
#include <vector>

#include "core/model/layout.h"

namespace sillwright {

// Farthest a hold-down stands from the end of its panel, or from the opening it flanks, centre line to end (common
// practice: on the last column, behind trimmers).
inline constexpr double endReach = 12;

// The strap nearest to an end of a panel, in its half of the panel and within reach; null where there is none.
const StrapBody* strapAtEnd(const WallLayout& layout, const Panel& panel, Side end);

// An end of a panel with what stands at it; null where there is none.
struct PanelEnd {
  const Panel* panel = nullptr;
  Side side = Side::Left;
  const ColumnBody* column = nullptr; // the nearest within reach, trimmers aside
  const StrapBody* strap = nullptr;   // as above
  const AnchorBody* rod = nullptr;    // beside that column, where there is no strap
  const WallEndMark* mark = nullptr;  // of the plan's wall-end schedule

  // The line of what holds it down: strap or rod. Nothing where there is neither.
  std::optional<double> holdDown() const;
};

// Both ends of every panel, panels from left to right.
std::vector<PanelEnd> panelEnds(const WallLayout& layout);

// The strap that flanks an opening: nearest to its side, outside it and within reach.
const StrapBody* strapBeside(const WallLayout& layout, const Opening& opening, Side side);

// Two straps that belong together: of one panel, or at both sides of an opening.
struct StrapPair {
  const StrapBody* left = nullptr; // never null
  const StrapBody* right = nullptr;
  const Panel* panel = nullptr; // one of the two
  const Opening* opening = nullptr;

  // How far each stands from the end of the panel, or outside the opening; in.
  double leftDistance() const;
  double rightDistance() const;
};

// Panels first, in the order of the wall's lists. Two straps that are a pair in both ways stand there once, as the
// panel's.
std::vector<StrapPair> strapPairs(const WallLayout& layout);

} // namespace sillwright
