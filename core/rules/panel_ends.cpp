#include "core/rules/panel_ends.h"

#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"

namespace sillwright {

namespace {

// The strap nearest to a station among those whose centre line is on the wanted stretch; ties: the lower id.
const StrapBody* nearest(const WallLayout& layout, double station, Interval stretch) {
  const StrapBody* best = nullptr;
  double bestAway = 0;
  for (const StrapBody& strap : layout.straps) {
    const double at = strap.strap->station;
    if (!grown(stretch, tolerance::same).contains(at))
      continue;
    const double away = std::abs(at - station);
    if (!best || away < bestAway - tolerance::same || (away < bestAway + tolerance::same && strap.id < best->id)) {
      best = &strap;
      bestAway = away;
    }
  }
  return best;
}

const ColumnBody* columnAt(const WallLayout& layout, double station) {
  const ColumnBody* best = nullptr;
  double least = endReach;
  for (const ColumnBody& column : layout.columns) {
    const double away = std::max(gap(column.box.s, {station, station}), 0.0);
    if (column.role == ColumnRole::Trimmer || away >= least)
      continue;
    least = away;
    best = &column;
  }
  return best;
}

const AnchorBody* rodBeside(const WallLayout& layout, Id column) {
  for (const AnchorBody& anchor : layout.anchors)
    if (anchor.isRod && anchor.rod->column == column)
      return &anchor;
  return nullptr;
}

const WallEndMark* markNamed(const WallLayout& layout, const std::string& name) {
  for (const WallEndMark& row : *layout.marks)
    if (!name.empty() && row.mark == name)
      return &row;
  return nullptr;
}

} // namespace

std::optional<double> PanelEnd::holdDown() const {
  if (strap)
    return strap->strap->station;
  return rod ? std::optional(rod->station) : std::nullopt;
}

std::vector<PanelEnd> panelEnds(const WallLayout& layout) {
  std::vector<const Panel*> panels;
  for (const Panel& panel : layout.wall->panels)
    panels.push_back(&panel);
  std::stable_sort(panels.begin(), panels.end(), [](const Panel* a, const Panel* b) { return a->from < b->from; });
  std::vector<PanelEnd> ends;
  for (const Panel* panel : panels)
    for (const Side side : {Side::Left, Side::Right}) {
      PanelEnd end{panel, side, columnAt(layout, side == Side::Left ? panel->from : panel->to),
                   strapAtEnd(layout, *panel, side), nullptr,
                   markNamed(layout, side == Side::Left ? panel->leftMark : panel->rightMark)};
      if (!end.strap && end.column)
        end.rod = rodBeside(layout, end.column->id);
      ends.push_back(end);
    }
  return ends;
}

const StrapBody* strapAtEnd(const WallLayout& layout, const Panel& panel, Side end) {
  const double middle = (panel.from + panel.to) / 2;
  if (end == Side::Left)
    return nearest(layout, panel.from, {panel.from, std::min(middle, panel.from + endReach)});
  return nearest(layout, panel.to, {std::max(middle, panel.to - endReach), panel.to});
}

const StrapBody* strapBeside(const WallLayout& layout, const Opening& opening, Side side) {
  if (side == Side::Left)
    return nearest(layout, opening.from, {opening.from - endReach, opening.from});
  return nearest(layout, opening.to, {opening.to, opening.to + endReach});
}

double StrapPair::leftDistance() const {
  return panel ? left->strap->station - panel->from : opening->from - left->strap->station;
}

double StrapPair::rightDistance() const {
  return panel ? panel->to - right->strap->station : right->strap->station - opening->to;
}

std::vector<StrapPair> strapPairs(const WallLayout& layout) {
  std::vector<StrapPair> pairs;
  const auto add = [&](const StrapPair& pair) {
    const auto same = [&](const StrapPair& other) { return other.left == pair.left && other.right == pair.right; };
    if (pair.left && pair.right && pair.left != pair.right && std::none_of(pairs.begin(), pairs.end(), same))
      pairs.push_back(pair);
  };
  for (const Panel& panel : layout.wall->panels)
    add({strapAtEnd(layout, panel, Side::Left), strapAtEnd(layout, panel, Side::Right), &panel, nullptr});
  for (const Opening& opening : layout.wall->openings)
    add({strapBeside(layout, opening, Side::Left), strapBeside(layout, opening, Side::Right), nullptr, &opening});
  return pairs;
}

} // namespace sillwright
