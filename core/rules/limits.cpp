#include "core/rules/limits.h"

#include "core/standards/bars.h"
#include "core/standards/cast_in_anchors.h"
#include "core/standards/cover.h"
#include "core/standards/fasteners.h"
#include "core/standards/set_out.h"
#include "core/standards/shear_panels.h"
#include "core/standards/sill_bolts.h"
#include "core/standards/washers.h"

namespace sillwright {

namespace {

constexpr Source practice{"", Status::CommonPractice};
constexpr Source geometry{"", Status::Geometry};
constexpr Source statics{"", Status::Statics};
constexpr NamedNumber clearOfBars{"clear of bars", barClearance.value, "in", borrowed(barSpacingSource)};
constexpr Source borrowedCover = borrowed(coverSource);

using K = LimitKey;
using R = RuleId;
using L = Level;
using W = Wanted;

// A number of a standard as a limit; the unit as limits have it.
constexpr LimitRow limit(K key, std::string_view name, R rule, const NamedNumber& number, std::string_view unit,
                         L level, W wanted) {
  return {key, name, rule, number.value, unit, level, wanted, number.source};
}

constexpr std::array<LimitRow, static_cast<std::size_t>(K::Count)> table{{
    {K::StrapEdgeTarget, "strap.edge target", R::StrapEdge, 1, "in", L::Watch, W::AtLeast, practice},
    {K::StrapJoint, "strap.joint", R::StrapJoint, 0.125, "in", L::Fix, W::AtMost, practice},
    {K::StrapPair, "strap.pair", R::StrapPair, 0.125, "in", L::Fix, W::AtMost, practice},
    {K::StrapPlumb, "strap.plumb", R::StrapPlumb, 0.125, "in", L::Watch, W::AtMost, practice},
    limit(K::StrapNailEdge, "strap.nail-edge", R::StrapNailEdge, nailEdge, "d", L::Watch, W::AtLeast),
    limit(K::StrapNailDepthLeast, "strap.nail-depth", R::StrapNailDepth, nailDepthLeast, "d", L::Fix, W::AtLeast),
    limit(K::StrapNailDepthFull, "strap.nail-depth full", R::StrapNailDepth, nailDepthFull, "d", L::Watch, W::AtLeast),
    limit(K::StrapSteelTarget, "strap.steel target", R::StrapSteel, clearOfBars, "in", L::Watch, W::AtLeast),
    {K::StrapDepthTarget, "strap.depth target", R::StrapDepth, coverAgainstEarth, "in", L::Watch, W::AtLeast,
     borrowedCover},
    {K::StrapBackTarget, "strap.back target", R::StrapBack, coverFormed, "in", L::Watch, W::AtLeast, borrowedCover},
    limit(K::BoltCount, "bolt.count", R::BoltCount, boltsInPiece, "bolts", L::Fix, W::AtLeast),
    limit(K::BoltShortWall, "bolt.count one-bolt wall", R::BoltCount, oneBoltWall, "in", L::Fix, W::None),
    limit(K::BoltNoWall, "bolt.count no-bolt wall", R::BoltCount, noBoltWall, "in", L::Fix, W::None),
    limit(K::BoltEndFar, "bolt.end-far", R::BoltEndFar, boltEndFar, "in", L::Fix, W::AtMost),
    limit(K::BoltEndNearDiameters, "bolt.end-near", R::BoltEndNear, boltEndNear, "d", L::Fix, W::AtLeast),
    limit(K::BoltSpacing, "bolt.spacing", R::BoltSpacing, boltSpacing, "in", L::Fix, W::AtMost),
    limit(K::BoltSpacingTall, "bolt.spacing over two storeys", R::BoltSpacing, boltSpacingTall, "in", L::Fix,
          W::AtMost),
    limit(K::BoltEmbed, "bolt.embed", R::BoltEmbed, boltEmbedment, "in", L::Fix, W::AtLeast),
    {K::BoltThreadSpare, "bolt.thread spare", R::BoltThread, 0.25, "in", L::Watch, W::AtLeast, practice},
    {K::BoltStandoutThreads, "bolt.thread standout", R::BoltThread, 2, "threads", L::Fix, W::AtLeast, practice},
    limit(K::BoltSteelTarget, "bolt.steel target", R::BoltSteel, clearOfBars, "in", L::Watch, W::AtLeast),
    limit(K::BoltStrapTarget, "bolt.strap target", R::BoltStrap, clearOfBars, "in", L::Watch, W::AtLeast),
    limit(K::BoltGap, "bolt.gap", R::BoltGap, anchorSpacing, "d", L::Fix, W::AtLeast),
    limit(K::BoltGapTorqued, "bolt.gap torqued", R::BoltGap, torquedSpacing, "d", L::Ask, W::AtLeast),
    limit(K::BoltHookLeast, "bolt.hook least", R::BoltHook, hookLegLeast, "d", L::Watch, W::AtLeast),
    limit(K::BoltHookMost, "bolt.hook most", R::BoltHook, hookLegMost, "d", L::Watch, W::AtMost),
    {K::BoltMatch, "bolt.match", R::BoltMatch, 0.25, "in", L::Watch, W::AtMost, practice},
    limit(K::WasherSide, "washer.size", R::WasherSize, plateWasherSide, "in", L::Fix, W::AtLeast),
    limit(K::WasherThickness, "washer.size thickness", R::WasherSize, plateWasherThickness, "in", L::Fix, W::AtLeast),
    limit(K::WasherSheathing, "washer.sheathing", R::WasherSheathing, washerEdge, "in", L::Fix, W::AtMost),
    limit(K::WasherSheathingFrom, "washer.sheathing over", R::WasherSheathing, washerEdgeOver, "plf", L::Fix, W::None),
    limit(K::WasherSlotWidth, "washer.slot wider than the bolt by", R::WasherSlot, washerSlotOverBolt, "in", L::Fix,
          W::AtMost),
    limit(K::WasherSlotLength, "washer.slot length", R::WasherSlot, washerSlotLength, "in", L::Fix, W::AtMost),
    {K::WasherColumnTarget, "washer.column target", R::WasherColumn, 0.125, "in", L::Watch, W::AtLeast, practice},
    {K::RodOffset, "rod.offset", R::RodOffset, 0.125, "in", L::Fix, W::AtMost, practice},
    limit(K::RodEdge, "rod.edge", R::RodEdge, torquedEdge, "d", L::Ask, W::AtLeast),
    {K::RodEmbed, "rod.embed", R::RodEmbed, boltEmbedment.value, "in", L::Fix, W::AtLeast, borrowed(sillBoltSource)},
    limit(K::RodSteelTarget, "rod.steel target", R::RodSteel, clearOfBars, "in", L::Watch, W::AtLeast),
    {K::RodPlumb, "rod.plumb", R::RodPlumb, 0.125, "in", L::Watch, W::AtMost, practice},
    {K::ColumnOnSill, "column.sill", R::ColumnSill, 0, "in", L::Fix, W::AtMost, geometry},
    limit(K::PanelSlenderFull, "panel.slender full", R::PanelSlender, slenderFull, "ratio", L::Watch, W::AtMost),
    limit(K::PanelSlenderMost, "panel.slender", R::PanelSlender, slenderMost, "ratio", L::Ask, W::AtMost),
    {K::PanelLever, "panel.lever", R::PanelLever, 2, "%", L::Watch, W::AtMost, statics},
    {K::PanelLeverMost, "panel.lever most", R::PanelLever, 5, "%", L::Ask, W::AtMost, statics},
    {K::SillCorner, "sill.corner", R::SillCorner, 0.125, "in", L::Fix, W::AtMost, geometry},
    {K::SillPiece, "sill.piece", R::SillPiece, 240, "in", L::Watch, W::AtMost, practice},
    limit(K::BarClear, "bar.clear", R::BarClear, barClearance, "in", L::Watch, W::AtLeast),
    limit(K::BarTop, "bar.top", R::BarTop, topBarWithin, "in", L::Fix, W::None),
    limit(K::BarOpening, "bar.opening", R::BarOpening, openingBarWithin, "in", L::Watch, W::AtMost),
    {K::PourShot, "pour.shot", R::PourShot, 0.125, "in", L::Fix, W::AtMost, practice},
    limit(K::PourLevel, "pour.level", R::PourLevel, foundationLevel, "in", L::Watch, W::AtMost),
    limit(K::PourLevelReach, "pour.level within", R::PourLevel, foundationLevelWithin, "in", L::Watch, W::None),
    {K::PourForm, "pour.form", R::PourForm, 0, "in", L::Fix, W::AtLeast, geometry},
    {K::FormSquareTarget, "form.square target", R::FormSquare, 0.25, "in", L::Watch, W::AtMost, practice},
    limit(K::FormSquare, "form.square", R::FormSquare, squareDiagonal, "in", L::Watch, W::AtMost),
    limit(K::FormThicker, "form.thickness thicker", R::FormThickness, formThicker, "in", L::Watch, W::AtMost),
    limit(K::FormThinner, "form.thickness thinner", R::FormThickness, formThinner, "in", L::Watch, W::AtMost),
}};

constexpr bool inOrderOfKeys() {
  for (std::size_t i = 0; i < table.size(); ++i)
    if (static_cast<std::size_t>(table[i].key) != i)
      return false;
  return true;
}
static_assert(inOrderOfKeys());

} // namespace

std::span<const LimitRow> limitTable() {
  return table;
}

std::optional<LimitKey> limitKey(std::string_view name) {
  for (const LimitRow& row : table)
    if (row.name == name)
      return row.key;
  return std::nullopt;
}

ResolvedLimits resolvedValues(const JobLimits& limits) {
  ResolvedLimits resolved;
  for (const LimitRow& row : table)
    resolved.value[static_cast<std::size_t>(row.key)] = row.value;
  for (const LimitOverride& change : limits.overrides)
    if (const auto key = limitKey(change.key)) {
      resolved.value[static_cast<std::size_t>(*key)] = change.value;
      resolved.overridden[static_cast<std::size_t>(*key)] = true;
    }
  return resolved;
}

} // namespace sillwright
