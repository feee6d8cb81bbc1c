#include "core/refit/slots.h"

#include <algorithm>

#include "core/refit/site.h"

namespace sillwright {

namespace {

std::vector<Blocked> blockedOn(const Site& site, Id piece) {
  Blocks blocks(site);
  for (const StrapBody& strap : site.layout.straps)
    if (strap.id == piece)
      blockStrap(site, strap, blocks);
  for (const AnchorBody& anchor : site.layout.anchors)
    if (anchor.id == piece)
      (anchor.isRod ? blockRod : blockBolt)(site, anchor, blocks);
  return blocks.take();
}

std::optional<PieceSlots> slotsOn(const Site& site, Id id) {
  const auto piece = findPiece(*site.layout.wall, id);
  const auto at = stationOf(*site.layout.wall, id);
  if (!piece || !at || !hasSlots(*site.layout.wall, id))
    return std::nullopt;
  std::vector<Interval> open;
  for (const Blocked& each : blockedOn(site, id))
    open.push_back(each.stations);
  PieceSlots slots{id, kindOf(*piece), *at, withoutOpen(site.whole, std::move(open)), {}};
  if (const auto own = partAt(slots.slots, *at))
    slots.room = Room{std::max(0.0, *at - own->from), std::max(0.0, own->to - *at)};
  return slots;
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
  case R::RodOffset:
  case R::RodSteel:
  case R::RodOpening:
    return true;
  default:
    return false;
  }
}

bool hasSlots(const WallLine& wall, Id piece) {
  return findIn(wall.straps, piece) || findIn(wall.bolts, piece) || findIn(wall.rods, piece);
}

std::vector<Blocked> blockedStretches(const WallLayout& layout, const ResolvedLimits& limits, Id piece) {
  return blockedOn(siteOf(layout, limits), piece);
}

std::optional<PieceSlots> slotsOf(const WallLayout& layout, const ResolvedLimits& limits, Id piece) {
  return slotsOn(siteOf(layout, limits), piece);
}

std::vector<PieceSlots> slotsOf(const WallLayout& layout, const ResolvedLimits& limits) {
  const Site site = siteOf(layout, limits);
  std::vector<PieceSlots> all;
  for (const Id piece : piecesOf(*layout.wall))
    if (auto slots = slotsOn(site, piece))
      all.push_back(std::move(*slots));
  return all;
}

} // namespace sillwright
