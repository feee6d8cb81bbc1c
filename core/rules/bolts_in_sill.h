// What the rules ask of the bolts of a sill piece together. Inches.
#pragma once

#include "core/model/layout.h"
#include "core/rules/limits.h"

namespace sillwright {

// IRC R403.1.6 with its exceptions for short walls between two others: where one bolt will do it stands in the middle
// third of its piece.
double boltsNeeded(const WallLayout& layout, const ResolvedLimits& limits);

struct SpacingLimit {
  double inches = 0;
  bool fromPlans = false;
};

// Between two neighbouring bolts of a sill piece, over the stretch from one to the other: the least of the rule book's,
// the plans' and those of the marks of every panel that the stretch runs under.
// Nothing where neither mark of the panel says one. A stretch that only touches the panel is not under it.
std::optional<double> markedSpacing(const WallLayout& layout, const Panel& panel);
SpacingLimit spacingLimit(const WallLayout& layout, const ResolvedLimits& limits, Interval between);

// Of the sill that a piece belongs to, all that lies end to end with it.
Interval wholeSill(const WallLayout& layout, const SillPiece& piece);

} // namespace sillwright
