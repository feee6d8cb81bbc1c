#include "core/refit/slots.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/refit/site.h"
#include "core/refit/targets.h"

namespace sillwright {

namespace {

std::vector<Blocked> blockedOn(const Site& site, Id piece) {
  Blocks blocks(site);
  for (const StrapBody& strap : site.layout.straps)
    if (strap.id == piece) {
      blockStrap(site, strap, blocks);
      blockByPanelEnds(site, strap, blocks);
    }
  for (const AnchorBody& anchor : site.layout.anchors)
    if (anchor.id == piece)
      (anchor.isRod ? blockRod : blockBolt)(site, anchor, blocks);
  for (const BarBody& bar : site.layout.bars)
    if (bar.id == piece)
      blockBar(site, bar, blocks);
  if (const Column* column = findIn(site.layout.wall->columns, piece))
    blockColumn(site, *column, blocks);
  return blocks.take();
}

// A column goes no farther than its leeway; all else anywhere along the wall.
Interval frameOf(const Site& site, Id piece) {
  const Column* column = findIn(site.layout.wall->columns, piece);
  return column ? overlap(grown(around(column->station, 0), column->leeway), site.whole) : site.whole;
}

PieceSlots slotsOf(const Site& site, Id id, PieceKind kind, double at, const std::vector<Blocked>& blocked) {
  std::vector<Interval> open;
  open.reserve(blocked.size());
  for (const Blocked& each : blocked)
    open.push_back(each.stations);
  PieceSlots slots{id, kind, at, withoutOpen(frameOf(site, id), std::move(open)), {}};
  if (const auto own = partAt(slots.slots, at))
    slots.room = Room{std::max(0.0, at - own->from), std::max(0.0, own->to - at)};
  return slots;
}

// The stretch that ends, or begins, where a slot begins or ends; of several the one that the rule book has first.
std::optional<Stop> stopAt(const std::vector<Blocked>& blocked, double end, bool left) {
  constexpr double hair = 1e-5;
  std::optional<Stop> stop;
  for (const Blocked& each : blocked)
    if (std::abs((left ? each.stations.to : each.stations.from) - end) < hair && (!stop || each.rule < stop->rule))
      stop = Stop{each.rule, each.by};
  return stop;
}

void addBounded(const std::vector<Blocked>& blocked, Interval within, std::vector<BoundedSlot>& slots) {
  std::vector<Interval> open;
  for (const Blocked& each : blocked)
    open.push_back(each.stations);
  for (const Interval slot : withoutOpen(within, std::move(open)))
    slots.push_back({slot, stopAt(blocked, slot.from, true), stopAt(blocked, slot.to, false), {}});
}

// On each column in turn, as far as that is the one it would take.
std::vector<BoundedSlot> onAnyColumn(const Site& site, const StrapBody& strap, bool isNew) {
  std::vector<BoundedSlot> slots;
  for (std::size_t i = 0; i < site.layout.columns.size(); ++i) {
    StrapBody moved = strap;
    moved.column = i;
    Blocks blocks(site);
    blockStrap(site, moved, blocks);
    if (!isNew)
      blockByPanelEnds(site, moved, blocks);
    const std::size_t first = slots.size();
    addBounded(blocks.take(), overlap(site.layout.columns[i].box.s, site.whole), slots);
    for (std::size_t k = first; k < slots.size(); ++k)
      slots[k].met = targetsMet(site.layout, site.limits, strap.id, slots[k].stations, i);
  }
  std::sort(slots.begin(), slots.end(),
            [](const BoundedSlot& a, const BoundedSlot& b) { return a.stations.from < b.stations.from; });
  return slots;
}

bool alikeButForStation(const Capsule& a, const Capsule& b) {
  const auto shape = [](const Capsule& bar) {
    return std::tuple(bar.radius, bar.b.s - bar.a.s, bar.a.d, bar.b.d, bar.a.z, bar.b.z);
  };
  return shape(a) == shape(b);
}

// Where a bar may stand does not depend on where it is: bars that are alike share what blocks them.
void addBars(const Site& site, std::vector<PieceSlots>& all) {
  std::vector<std::pair<const BarBody*, std::vector<Blocked>>> kinds;
  for (const BarBody& bar : site.layout.bars) {
    if (bar.bar->run != BarRun::Upright || bar.found)
      continue;
    auto kind = std::find_if(kinds.begin(), kinds.end(),
                             [&](const auto& known) { return alikeButForStation(known.first->body, bar.body); });
    if (kind == kinds.end()) {
      Blocks blocks(site);
      blockBar(site, bar, blocks);
      kind = kinds.insert(kinds.end(), {&bar, blocks.take()});
    }
    all.push_back(slotsOf(site, bar.id, PieceKind::Bar, (bar.body.a.s + bar.body.b.s) / 2, kind->second));
  }
}

} // namespace

bool isOfPosition(RuleId rule) {
  using R = RuleId;
  switch (rule) {
  case R::StrapEdge:
  case R::StrapLean:
  case R::StrapLeanOpening:
  case R::StrapColumn:
  case R::StrapSteel:
  case R::StrapDepth:
  case R::StrapBack:
  case R::StrapMissing:
  case R::BoltCount:
  case R::BoltEndFar:
  case R::BoltEndNear:
  case R::BoltSpacing:
  case R::BoltThird:
  case R::BoltOpening:
  case R::BoltStud:
  case R::BoltSteel:
  case R::BoltStrap:
  case R::BoltSplice:
  case R::BoltGap:
  case R::BoltHook:
  case R::WasherSheathing:
  case R::WasherSill:
  case R::WasherColumn:
  case R::WasherWasher:
  case R::ColumnSill:
  case R::ColumnOpening:
  case R::ColumnOverlap:
  case R::PanelEnds:
  case R::BarCover:
  case R::RodOffset:
  case R::RodSteel:
  case R::RodOpening:
    return true;
  default:
    return false;
  }
}

bool hasSlots(const WallLine& wall, Id piece) {
  const Bar* bar = findIn(wall.bars, piece);
  const bool movable = bar && bar->run == BarRun::Upright && !bar->found;
  const Column* column = findIn(wall.columns, piece);
  return movable || (column && column->leeway > 0) || findIn(wall.straps, piece) || findIn(wall.bolts, piece) ||
         findIn(wall.rods, piece);
}

std::vector<Blocked> blockedStretches(const WallLayout& layout, const ResolvedLimits& limits, Id piece) {
  return blockedOn(siteOf(layout, limits), piece);
}

std::optional<PieceSlots> slotsOf(const WallLayout& layout, const ResolvedLimits& limits, Id id) {
  const auto piece = findPiece(*layout.wall, id);
  const auto at = stationOf(*layout.wall, id);
  if (!piece || !at || !hasSlots(*layout.wall, id))
    return std::nullopt;
  const Site site = siteOf(layout, limits);
  return slotsOf(site, id, kindOf(*piece), *at, blockedOn(site, id));
}

std::vector<PieceSlots> slotsOf(const WallLayout& layout, const ResolvedLimits& limits) {
  const Site site = siteOf(layout, limits);
  std::vector<PieceSlots> all;
  const auto add = [&](Id id, PieceKind kind, double at, const auto& block) {
    Blocks blocks(site);
    block(blocks);
    all.push_back(slotsOf(site, id, kind, at, blocks.take()));
  };
  for (const Column& column : layout.wall->columns)
    if (column.leeway > 0)
      add(column.id, PieceKind::Column, column.station, [&](Blocks& blocks) { blockColumn(site, column, blocks); });
  for (const StrapBody& strap : layout.straps)
    add(strap.id, PieceKind::Strap, strap.strap->station, [&](Blocks& blocks) {
      blockStrap(site, strap, blocks);
      blockByPanelEnds(site, strap, blocks);
    });
  for (const AnchorBody& anchor : layout.anchors)
    add(anchor.id, anchor.isRod ? PieceKind::Rod : PieceKind::Bolt, anchor.station,
        [&](Blocks& blocks) { (anchor.isRod ? blockRod : blockBolt)(site, anchor, blocks); });
  addBars(site, all);
  return all;
}

std::vector<BoundedSlot> slotsInHand(const WallLayout& layout, const ResolvedLimits& limits, Id piece, bool isNew) {
  const Site site = siteOf(layout, limits);
  std::vector<BoundedSlot> slots;
  for (const StrapBody& strap : layout.straps)
    if (strap.id == piece)
      return onAnyColumn(site, strap, isNew);
  for (const AnchorBody& anchor : layout.anchors) {
    if (anchor.id != piece)
      continue;
    AnchorBody body = anchor;
    if (isNew)
      body.sillPiece.reset();
    Blocks blocks(site);
    (anchor.isRod ? blockRod : blockBolt)(site, body, blocks);
    addBounded(blocks.take(), site.whole, slots);
  }
  if (slots.empty() && hasSlots(*layout.wall, piece))
    addBounded(blockedOn(site, piece), frameOf(site, piece), slots);
  for (BoundedSlot& slot : slots)
    slot.met = targetsMet(layout, limits, piece, slot.stations);
  return slots;
}

} // namespace sillwright
