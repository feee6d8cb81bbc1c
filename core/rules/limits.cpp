#include "core/rules/limits.h"

namespace sillwright {

namespace {

constexpr Source practice{"", Status::CommonPractice};
constexpr Source geometry{"", Status::Geometry};
constexpr Source sillBolts{"IRC 2024 R403.1.6", Status::Published};
constexpr Source tallBolts{"IRC 2024 R403.1.6.1", Status::Published};
constexpr Source washerEdge{"SDPWS 2021 4.3.6.4.3", Status::Published};
constexpr Source borrowedSpacing{"borrowed: ACI 318-19 25.2.1", Status::Published};
constexpr Source borrowedCover{"borrowed: ACI 318-19 Table 20.5.1.3.1", Status::Published};
constexpr Source nailDepth{"NDS 2018 12.1.6.4", Status::Published};
constexpr Source slender{"SDPWS 2021 4.3.3", Status::Published};
constexpr Source anchorSpacing{"ACI 318-19 Table 17.9.2(a)", Status::Published};
constexpr Source hookLeg{"ACI 318-19 17.6.3.2.2", Status::Published};
constexpr Source washerPlate{"IRC R602.11.1", Status::Published};
constexpr Source washerSlot{"IBC 2006 2305.3.11", Status::Published};
constexpr Source borrowedEmbed{"borrowed: IRC 2024 R403.1.6", Status::Published};
constexpr Source barSpacing{"ACI 318-19 25.2.1", Status::Published};
constexpr Source topBar{"IRC R403.1.3.1", Status::Published};
constexpr Source openingBar{"IRC R404 (county checklist)", Status::Published};
constexpr Source workmanship{"US residential workmanship guideline", Status::Published};
constexpr Source formWidths{"US government guide specification (ACI 117 values)", Status::Published};
constexpr Source statics{"", Status::Statics};
constexpr Source nailEdge{"NDS commentary", Status::FromMemory};

using K = LimitKey;
using R = RuleId;
using L = Level;
using W = Wanted;

constexpr std::array<LimitRow, static_cast<std::size_t>(K::Count)> table{{
    {K::StrapEdgeTarget, "strap.edge target", R::StrapEdge, 1, "in", L::Watch, W::AtLeast, practice},
    {K::StrapJoint, "strap.joint", R::StrapJoint, 0.125, "in", L::Fix, W::AtMost, practice},
    {K::StrapPair, "strap.pair", R::StrapPair, 0.125, "in", L::Fix, W::AtMost, practice},
    {K::StrapPlumb, "strap.plumb", R::StrapPlumb, 0.125, "in", L::Watch, W::AtMost, practice},
    {K::StrapNailEdge, "strap.nail-edge", R::StrapNailEdge, 2.5, "d", L::Watch, W::AtLeast, nailEdge},
    {K::StrapNailDepthLeast, "strap.nail-depth", R::StrapNailDepth, 6, "d", L::Fix, W::AtLeast, nailDepth},
    {K::StrapNailDepthFull, "strap.nail-depth full", R::StrapNailDepth, 10, "d", L::Watch, W::AtLeast, nailDepth},
    {K::StrapSteelTarget, "strap.steel target", R::StrapSteel, 1, "in", L::Watch, W::AtLeast, borrowedSpacing},
    {K::StrapDepthTarget, "strap.depth target", R::StrapDepth, 3, "in", L::Watch, W::AtLeast, borrowedCover},
    {K::StrapBackTarget, "strap.back target", R::StrapBack, 1.5, "in", L::Watch, W::AtLeast, borrowedCover},
    {K::BoltCount, "bolt.count", R::BoltCount, 2, "bolts", L::Fix, W::AtLeast, sillBolts},
    {K::BoltShortWall, "bolt.count one-bolt wall", R::BoltCount, 24, "in", L::Fix, W::None, sillBolts},
    {K::BoltNoWall, "bolt.count no-bolt wall", R::BoltCount, 12, "in", L::Fix, W::None, sillBolts},
    {K::BoltEndFar, "bolt.end-far", R::BoltEndFar, 12, "in", L::Fix, W::AtMost, sillBolts},
    {K::BoltEndNearDiameters, "bolt.end-near", R::BoltEndNear, 7, "d", L::Fix, W::AtLeast, sillBolts},
    {K::BoltSpacing, "bolt.spacing", R::BoltSpacing, 72, "in", L::Fix, W::AtMost, sillBolts},
    {K::BoltSpacingTall, "bolt.spacing over two storeys", R::BoltSpacing, 48, "in", L::Fix, W::AtMost, tallBolts},
    {K::BoltEmbed, "bolt.embed", R::BoltEmbed, 7, "in", L::Fix, W::AtLeast, sillBolts},
    {K::BoltThreadSpare, "bolt.thread spare", R::BoltThread, 0.25, "in", L::Watch, W::AtLeast, practice},
    {K::BoltStandoutThreads, "bolt.thread standout", R::BoltThread, 2, "threads", L::Fix, W::AtLeast, practice},
    {K::BoltSteelTarget, "bolt.steel target", R::BoltSteel, 1, "in", L::Watch, W::AtLeast, borrowedSpacing},
    {K::BoltStrapTarget, "bolt.strap target", R::BoltStrap, 1, "in", L::Watch, W::AtLeast, borrowedSpacing},
    {K::BoltGap, "bolt.gap", R::BoltGap, 4, "d", L::Fix, W::AtLeast, anchorSpacing},
    {K::BoltGapTorqued, "bolt.gap torqued", R::BoltGap, 6, "d", L::Ask, W::AtLeast, anchorSpacing},
    {K::BoltHookLeast, "bolt.hook least", R::BoltHook, 3, "d", L::Watch, W::AtLeast, hookLeg},
    {K::BoltHookMost, "bolt.hook most", R::BoltHook, 4.5, "d", L::Watch, W::AtMost, hookLeg},
    {K::BoltMatch, "bolt.match", R::BoltMatch, 0.25, "in", L::Watch, W::AtMost, practice},
    {K::WasherSide, "washer.size", R::WasherSize, 3, "in", L::Fix, W::AtLeast, washerPlate},
    {K::WasherThickness, "washer.size thickness", R::WasherSize, 0.229, "in", L::Fix, W::AtLeast, washerPlate},
    {K::WasherSheathing, "washer.sheathing", R::WasherSheathing, 0.5, "in", L::Fix, W::AtMost, washerEdge},
    {K::WasherSheathingFrom, "washer.sheathing over", R::WasherSheathing, 400, "plf", L::Fix, W::None, washerEdge},
    {K::WasherSlotWidth, "washer.slot wider than the bolt by", R::WasherSlot, 0.1875, "in", L::Fix, W::AtMost, washerSlot},
    {K::WasherSlotLength, "washer.slot length", R::WasherSlot, 1.75, "in", L::Fix, W::AtMost, washerSlot},
    {K::WasherColumnTarget, "washer.column target", R::WasherColumn, 0.125, "in", L::Watch, W::AtLeast, practice},
    {K::RodOffset, "rod.offset", R::RodOffset, 0.125, "in", L::Fix, W::AtMost, practice},
    {K::RodEdge, "rod.edge", R::RodEdge, 6, "d", L::Ask, W::AtLeast, anchorSpacing},
    {K::RodEmbed, "rod.embed", R::RodEmbed, 7, "in", L::Fix, W::AtLeast, borrowedEmbed},
    {K::RodSteelTarget, "rod.steel target", R::RodSteel, 1, "in", L::Watch, W::AtLeast, borrowedSpacing},
    {K::RodPlumb, "rod.plumb", R::RodPlumb, 0.125, "in", L::Watch, W::AtMost, practice},
    {K::ColumnOnSill, "column.sill", R::ColumnSill, 0, "in", L::Fix, W::AtMost, geometry},
    {K::PanelSlenderFull, "panel.slender full", R::PanelSlender, 2, "ratio", L::Watch, W::AtMost, slender},
    {K::PanelSlenderMost, "panel.slender", R::PanelSlender, 3.5, "ratio", L::Ask, W::AtMost, slender},
    {K::PanelLever, "panel.lever", R::PanelLever, 2, "%", L::Watch, W::AtMost, statics},
    {K::PanelLeverMost, "panel.lever most", R::PanelLever, 5, "%", L::Ask, W::AtMost, statics},
    {K::SillCorner, "sill.corner", R::SillCorner, 0.125, "in", L::Fix, W::AtMost, geometry},
    {K::SillPiece, "sill.piece", R::SillPiece, 240, "in", L::Watch, W::AtMost, practice},
    {K::BarClear, "bar.clear", R::BarClear, 1, "in", L::Watch, W::AtLeast, barSpacing},
    {K::BarTop, "bar.top", R::BarTop, 12, "in", L::Fix, W::None, topBar},
    {K::BarOpening, "bar.opening", R::BarOpening, 12, "in", L::Watch, W::AtMost, openingBar},
    {K::PourShot, "pour.shot", R::PourShot, 0.125, "in", L::Fix, W::AtMost, practice},
    {K::PourLevel, "pour.level", R::PourLevel, 0.5, "in", L::Watch, W::AtMost, workmanship},
    {K::PourLevelReach, "pour.level within", R::PourLevel, 240, "in", L::Watch, W::None, workmanship},
    {K::PourForm, "pour.form", R::PourForm, 0, "in", L::Fix, W::AtLeast, geometry},
    {K::FormSquareTarget, "form.square target", R::FormSquare, 0.25, "in", L::Watch, W::AtMost, practice},
    {K::FormSquare, "form.square", R::FormSquare, 0.5, "in", L::Watch, W::AtMost, workmanship},
    {K::FormThicker, "form.thickness thicker", R::FormThickness, 0.375, "in", L::Watch, W::AtMost, formWidths},
    {K::FormThinner, "form.thickness thinner", R::FormThickness, 0.25, "in", L::Watch, W::AtMost, formWidths},
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
