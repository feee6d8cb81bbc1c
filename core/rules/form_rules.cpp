// Forms as taped: grade shots, thickness, diagonals.
#include <algorithm>
#include <cmath>

#include "core/rules/measure.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

constexpr double mark = 1; // in along the form that is hatched at a shot

Box3 atShot(const WallLayout& layout, const GradeShot& shot, Interval offPour) {
  const double pour = pourAt(layout, shot.station);
  return {around(shot.station, mark), layout.across, {pour + offPour.from, pour + offPour.to}};
}

} // namespace

void checkPourShot(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  const double limit = limits[LimitKey::PourShot];
  for (const GradeShot& shot : layout.wall->shots)
    if (over(std::abs(shot.reading), limit))
      report(drafts, layout, RuleId::PourShot, Level::Fix, {shot.id},
             {std::abs(shot.reading), limit, atShot(layout, shot, betweenValues(0, shot.reading)), Wanted::AtMost,
              Unit::Inch, static_cast<std::uint8_t>(shot.reading < 0)});
}

// The two shots of a wall that differ most among those within twenty feet of each other.
void checkPourLevel(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  const double reach = limits[LimitKey::PourLevelReach];
  const GradeShot* high = nullptr;
  const GradeShot* low = nullptr;
  for (const GradeShot& a : layout.wall->shots)
    for (const GradeShot& b : layout.wall->shots)
      if (!over(std::abs(a.station - b.station), reach) && (!high || a.reading - b.reading > high->reading - low->reading)) {
        high = &a;
        low = &b;
      }
  const double limit = limits[LimitKey::PourLevel];
  if (!high || !over(high->reading - low->reading, limit))
    return;
  const double pour = std::min(pourAt(layout, high->station), pourAt(layout, low->station));
  report(drafts, layout, RuleId::PourLevel, Level::Watch, {high->id, low->id},
         {high->reading - low->reading, limit,
          {betweenValues(high->station, low->station), layout.across, {pour + low->reading, pour + high->reading}},
          Wanted::AtMost});
}

void checkFormThickness(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const GradeShot& shot : layout.wall->shots) {
    if (!shot.width)
      continue;
    const double off = *shot.width - layout.wall->thickness;
    const double limit = limits[off > 0 ? LimitKey::FormThicker : LimitKey::FormThinner];
    if (!over(std::abs(off), limit))
      continue;
    Box3 region = atShot(layout, shot, {-layout.wall->stemHeight, 0});
    region.d = betweenValues(layout.wall->thickness, *shot.width);
    report(drafts, layout, RuleId::FormThickness, Level::Watch, {shot.id},
           {std::abs(off), limit, region, Wanted::AtMost, Unit::Inch, static_cast<std::uint8_t>(off < 0)});
  }
}

// Variants: 0 long, 1 short; 2 and 3 the same inside the limit but past the target.
void checkFormSquare(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  constexpr double triangle = 240; // in: the 20 ft side of 12-16-20
  for (const TapedDiagonal& diagonal : layout.place.diagonals) {
    if (diagonal.planned <= 0)
      continue;
    const double off = diagonal.measured - diagonal.planned;
    const double scaled = std::abs(off) * triangle / diagonal.planned;
    const double most = limits[LimitKey::FormSquare], target = limits[LimitKey::FormSquareTarget];
    const bool past = over(scaled, most);
    if (!past && !over(scaled, target))
      continue;
    const double hatched = std::min(layout.length, 12.0);
    const double pour = diagonal.fromStart ? layout.pour.front().height : layout.pour.back().height;
    const Interval s = diagonal.fromStart ? Interval{0, hatched} : Interval{layout.length - hatched, layout.length};
    report(drafts, layout, RuleId::FormSquare, Level::Watch, {layout.wall->id},
           {std::abs(off), (past ? most : target) * diagonal.planned / triangle,
            {s, layout.across, {pour - 1, pour}}, Wanted::AtMost, Unit::Inch,
            static_cast<std::uint8_t>((off < 0 ? 1 : 0) + (past ? 0 : 2))});
  }
}

} // namespace sillwright
