// Small tools that the rules share. Inches.
#pragma once

#include <functional>
#include <initializer_list>
#include <optional>

#include "core/base/tolerance.h"
#include "core/model/layout.h"
#include "core/rules/draft.h"
#include "core/rules/limits.h"

namespace sillwright {

inline bool under(double measured, double limit) {
  return measured < limit - tolerance::same;
}
inline bool over(double measured, double limit) {
  return measured > limit + tolerance::same;
}
// Two solids meet: no clear distance is left.
inline bool touching(double clear) {
  return clear < tolerance::same;
}

struct Shortfall {
  double measured = 0;
  double limit = 0;
  Box3 region;
  Wanted wanted = Wanted::AtLeast;
  Unit unit = Unit::Inch;
  std::uint8_t variant = 0;
};

// Files a finding; the first piece is the one to move.
Draft& report(Drafts& drafts, const WallLayout& layout, RuleId rule, Level level, std::initializer_list<Id> pieces,
              const Shortfall& shortfall);

// A change of a value by at least `by`, ending on a tape mark: never less than asked for.
double byToMark(double value, double by);
Correction move(Id piece, Correction::Field field, double value, double by);

// The value the job sets, else the value of the hardware type.
double ownOr(const ResolvedLimits& limits, LimitKey key, double ofType);

// The space between two boxes: along each axis their overlap where they overlap, else the gap.
Box3 between(const Box3& a, const Box3& b);
// Clear distance of two boxes seen in plan; negative where they overlap, by the shorter side of what they
// have in common.
double planGap(const Box3& a, const Box3& b);
// Nothing in one box comes as near to anything in the other.
bool apart(const Box3& a, const Box3& b, double by);
// A bolt with its washer and nut comes no higher than the foot of the wood: it stands on the low side of a step.
bool belowFoot(const WallLayout& layout, const AnchorBody& bolt, const Box3& wood);
Box3 overlapOf(const Box3& a, const Box3& b);
Interval betweenValues(double a, double b);

// Least moves, to tape marks, after which it is clear: to the nearer side first. Within 6 in; once clear it must stay
// so farther on (true for a convex obstacle).
std::vector<double> movesUntilClear(double value, const std::function<bool(double)>& isClear);

// Moves of a piece along the wall out of an overlap, to either side of the obstacle, the shorter first.
std::vector<Correction> movesApart(Id piece, double station, Interval piecesOwn, Interval obstacle, double apart = 0);

} // namespace sillwright
