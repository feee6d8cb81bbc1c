// Panels and columns against the plans: make-up, lever arm, tie force, shear into the bolts.
#include <algorithm>
#include <cmath>

#include "core/rules/anchor_checks.h"
#include "core/rules/measure.h"
#include "core/rules/panel_ends.h"
#include "core/rules/panel_loads.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

struct PanelPair {
  PanelEnd left;
  PanelEnd right;
};

std::vector<PanelPair> panelsOf(const WallLayout& layout) {
  const std::vector<PanelEnd> ends = panelEnds(layout);
  std::vector<PanelPair> pairs;
  for (std::size_t i = 0; i + 1 < ends.size(); i += 2)
    pairs.push_back({ends[i], ends[i + 1]});
  return pairs;
}

// In the concrete and over the sill, where a hold-down belongs.
Interval footOf(const WallLayout& layout, double station) {
  const double pour = pourAt(layout, station);
  return {pour - 6, pour + 12};
}

void checkColumn(const WallLayout& layout, const PanelEnd& end, std::vector<Id>& told, Drafts& drafts) {
  if (!end.column || !end.mark || !end.mark->column || end.column->makeUp == *end.mark->column ||
      std::find(told.begin(), told.end(), end.column->id) != told.end())
    return;
  told.push_back(end.column->id);
  report(drafts, layout, RuleId::ColumnPlan, Level::Fix, {end.column->id, end.panel->id},
         {1, 0, end.column->box, Wanted::AtMost, Unit::Count, static_cast<std::uint8_t>(end.side == Side::Right)});
}

// Hatched where the hold-down that stands farther in than the other falls short of the plan.
Box3 shortOf(const WallLayout& layout, const PanelPair& panel, double planned, double actual) {
  const double left = *panel.left.holdDown(), right = *panel.right.holdDown();
  const double by = planned - actual;
  const double inLeft = left - panel.left.panel->from, inRight = panel.right.panel->to - right;
  if (std::abs(inLeft - inRight) < tolerance::same) // both alike: all that lies between them
    return {{left, right}, layout.across, hull(footOf(layout, left), footOf(layout, right))};
  const bool atLeft = inLeft > inRight;
  const Interval s = atLeft ? Interval{left - by, left} : Interval{right, right + by};
  return {s, layout.across, footOf(layout, atLeft ? left : right)};
}

} // namespace

void checkColumnPlan(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  std::vector<Id> told;
  for (const PanelEnd& end : panelEnds(layout))
    checkColumn(layout, end, told, drafts);
}

void checkPanelLever(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const PanelPair& panel : panelsOf(layout)) {
    const auto planned = plannedLever(panel.left, panel.right);
    const auto actual = leverOf(panel.left, panel.right);
    if (!planned || !actual)
      continue;
    const double grows = (*planned / *actual - 1) * 100; // the tie force, for the same overturning
    const double most = limits[LimitKey::PanelLeverMost], watched = limits[LimitKey::PanelLever];
    const bool ask = over(grows, most);
    if (ask || over(grows, watched))
      report(drafts, layout, RuleId::PanelLever, ask ? Level::Ask : Level::Watch, {panel.left.panel->id},
             {grows, ask ? most : watched, shortOf(layout, panel, *planned, *actual), Wanted::AtMost, Unit::Percent});
  }
}

void checkPanelTie(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const PanelPair& panel : panelsOf(layout)) {
    const auto tie = tieForceOf(panel.left, panel.right);
    if (!tie)
      continue;
    for (const PanelEnd* end : {&panel.left, &panel.right}) {
      if (!end->mark || !end->mark->requiredCapacity || !over(*tie, *end->mark->requiredCapacity))
        continue;
      const double at = *end->holdDown();
      report(drafts, layout, RuleId::PanelTie, Level::Ask, {end->panel->id},
             {*tie, *end->mark->requiredCapacity, {around(at, 3), layout.across, footOf(layout, at)}, Wanted::AtMost,
              Unit::Pound, static_cast<std::uint8_t>(end->side == Side::Right)});
    }
  }
}

void checkBoltShear(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const Panel& panel : layout.wall->panels) {
    const auto held = boltShearOf(layout, panel);
    if (!held || !panel.designShear)
      continue;
    const double shear = *panel.designShear * (panel.to - panel.from) / 12; // plf
    if (!under(*held, shear))
      continue;
    const auto sill = sillAt(layout, (panel.from + panel.to) / 2);
    const double pour = pourAt(layout, (panel.from + panel.to) / 2);
    const Box3 region{{panel.from, panel.to},
                      sill ? layout.sills[*sill].box.d : layout.across,
                      sill ? layout.sills[*sill].box.z : Interval{pour, pour + dressedTwo}};
    report(drafts, layout, RuleId::BoltShear, Level::Ask, {panel.id},
           {*held, shear, region, Wanted::AtLeast, Unit::Pound});
  }
}

} // namespace sillwright
