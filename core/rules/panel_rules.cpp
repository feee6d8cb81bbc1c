// Shear panels: a column at each end, and not too slender.
#include <algorithm>

#include "core/rules/measure.h"
#include "core/rules/panel_ends.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

// A panel cannot be hatched higher than its wall.
double heightSeen(const WallLayout& layout, const Panel& panel) {
  return std::min(panel.height, layout.wall->wallHeight);
}

} // namespace

void checkPanelEnds(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  constexpr double ply = dressedTwo; // of the panel's end that is hatched: where the column should stand
  for (const PanelEnd& end : panelEnds(layout)) {
    if (end.column)
      continue;
    const Panel& panel = *end.panel;
    const Interval s = end.side == Side::Left ? Interval{panel.from, panel.from + ply}
                                              : Interval{panel.to - ply, panel.to};
    const double pour = pourAt(layout, s.middle());
    report(drafts, layout, RuleId::PanelEnds, Level::Fix, {panel.id},
           {0, 1, {s, layout.across, betweenValues(pour, heightSeen(layout, panel))}, Wanted::AtLeast, Unit::Count,
            static_cast<std::uint8_t>(end.side == Side::Right)});
  }
}

void checkPanelSlender(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const Panel& panel : layout.wall->panels) {
    const double length = panel.to - panel.from;
    if (length <= 0 || panel.height <= 0)
      continue;
    const double ratio = panel.height / length;
    const double most = limits[LimitKey::PanelSlenderMost], full = limits[LimitKey::PanelSlenderFull];
    const bool ask = over(ratio, most);
    if (!ask && !over(ratio, full))
      continue;
    const double limit = ask ? most : full;
    const double top = heightSeen(layout, panel);
    const Interval tooHigh{std::min(limit * length, std::max(top - 1, 0.0)), top}; // an inch where the wall cuts it off
    report(drafts, layout, RuleId::PanelSlender, ask ? Level::Ask : Level::Watch, {panel.id},
           {ratio, limit, {{panel.from, panel.to}, layout.across, tooHigh}, Wanted::AtMost, Unit::Ratio});
  }
}

} // namespace sillwright
