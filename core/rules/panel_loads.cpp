#include "core/rules/panel_loads.h"

#include <algorithm>

#include "core/base/tolerance.h"
#include "core/model/lookup.h"
#include "core/standards/bolt_value.h"
#include "core/standards/species.h"
#include "core/standards/statics.h"

namespace sillwright {

namespace {

// From the end of a panel to the middle of the column that stands there on the plans.
std::optional<double> plannedInset(const PanelEnd& end) {
  if (!end.mark || !end.mark->column)
    return std::nullopt;
  return alongWall(*end.mark->column) / 2;
}

} // namespace

std::optional<double> leverOf(const PanelEnd& left, const PanelEnd& right) {
  const auto from = left.holdDown(), to = right.holdDown();
  if (!from || !to || *to - *from < tolerance::tapeMark)
    return std::nullopt;
  return *to - *from;
}

std::optional<double> plannedLever(const PanelEnd& left, const PanelEnd& right) {
  if (left.panel->lever)
    return left.panel->lever;
  const auto atLeft = plannedInset(left), atRight = plannedInset(right);
  if (!atLeft || !atRight)
    return std::nullopt;
  const double lever = left.panel->to - left.panel->from - *atLeft - *atRight;
  return lever > tolerance::tapeMark ? std::optional(lever) : std::nullopt;
}

std::optional<double> tieForceOf(const PanelEnd& left, const PanelEnd& right) {
  const Panel& panel = *left.panel;
  const auto lever = leverOf(left, right);
  if (!lever || !panel.designShear)
    return std::nullopt;
  const double length = panel.to - panel.from;
  return std::max(0.0, tieForce(*panel.designShear, panel.height, length, *lever, panel.deadLoad.value_or(0)));
}

std::optional<double> boltShearOf(const WallLayout& layout, const Panel& panel) {
  double sum = 0;
  for (const SillPiece& piece : layout.sills) {
    const bool under = overlap(piece.box.s, {panel.from, panel.to}).length() > tolerance::same;
    const Sill* sill = findIn(layout.wall->sills, piece.sill);
    if (under && (!sill || !speciesByName(sill->species)))
      return std::nullopt;
  }
  for (const AnchorBody& bolt : layout.anchors) {
    if (bolt.isRod || !bolt.sillPiece || bolt.station < panel.from || bolt.station > panel.to)
      continue;
    const SillPiece& piece = layout.sills[*bolt.sillPiece];
    const auto species = speciesByName(findIn(layout.wall->sills, piece.sill)->species);
    const auto value = sillBoltValue(bolt.diameter, dressedThickness(piece.nominal), *species, bolt.embedment);
    if (!value)
      return std::nullopt;
    sum += windOrSeismicDuration.value * value->reference();
  }
  return sum;
}

} // namespace sillwright
