// Straps against the plan's wall-end schedule, and plumb as read.
#include <algorithm>
#include <cmath>

#include "core/rules/measure.h"
#include "core/rules/panel_ends.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

Box3 wholeOf(const StrapBody& strap) {
  return {strap.plate.s, strap.plate.d, hull(strap.plate.z, strap.depthOfHook)};
}

bool fits(const StrapType& type, const ColumnBody& column) {
  return type.columns.empty() || std::find(type.columns.begin(), type.columns.end(), column.makeUp) != type.columns.end();
}

} // namespace

void checkStrapPlumb(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  constexpr double gauge = 24;
  for (const StrapBody& strap : layout.straps) {
    const double out = std::abs(strap.lean) * gauge, limit = limits[LimitKey::StrapPlumb];
    if (!over(out, limit))
      continue;
    const double top = strap.lean * strap.type->exposedLength;
    const Interval leaned = hull(strap.plate.s, {strap.plate.s.from + top, strap.plate.s.to + top});
    report(drafts, layout, RuleId::StrapPlumb, Level::Watch, {strap.id},
           {out, limit, {leaned, strap.plate.d, strap.plate.z}, Wanted::AtMost, Unit::Inch,
            static_cast<std::uint8_t>(strap.lean < 0)});
  }
}

// Variants: 0 another type than the mark calls for, 1 a column its type may not be nailed to.
void checkStrapType(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  std::vector<Id> told; // a strap between two panels stands at an end of both
  for (const PanelEnd& end : panelEnds(layout)) {
    if (!end.strap || !end.mark || !end.mark->strapType || end.strap->strap->type == end.mark->strapType ||
        std::find(told.begin(), told.end(), end.strap->id) != told.end())
      continue;
    told.push_back(end.strap->id);
    report(drafts, layout, RuleId::StrapType, Level::Fix, {end.strap->id, end.panel->id},
           {1, 0, wholeOf(*end.strap), Wanted::AtMost, Unit::Count, 0});
  }
  for (const StrapBody& strap : layout.straps)
    if (strap.column && !fits(*strap.type, layout.columns[*strap.column]))
      report(drafts, layout, RuleId::StrapType, Level::Fix, {strap.id, layout.columns[*strap.column].id},
             {1, 0, strap.plate, Wanted::AtMost, Unit::Count, 1});
}

void checkStrapCapacity(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const PanelEnd& end : panelEnds(layout)) {
    if (!end.strap || !end.mark || !end.mark->requiredCapacity || !end.strap->type->statedCapacity)
      continue;
    const double stated = *end.strap->type->statedCapacity, required = *end.mark->requiredCapacity;
    if (under(stated, required))
      report(drafts, layout, RuleId::StrapCapacity, Level::Ask, {end.strap->id, end.panel->id},
             {stated, required, wholeOf(*end.strap), Wanted::AtLeast, Unit::Pound,
              static_cast<std::uint8_t>(end.side == Side::Right)});
  }
}

} // namespace sillwright
