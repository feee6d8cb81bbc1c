// The limits of the rule book with their defaults, and a job's overrides resolved. One place for every number.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "core/model/job.h"
#include "core/rules/finding.h"
#include "core/standards/source.h"

namespace sillwright {

enum class LimitKey : std::uint8_t {
  StrapEdgeTarget, // the minimum is the type's own
  StrapJoint,
  StrapPair,
  StrapPlumb,
  StrapNailEdge,   // nail diameters
  StrapNailDepthLeast, // nail diameters in the column
  StrapNailDepthFull,
  StrapSteelTarget,
  StrapDepthTarget,
  StrapBackTarget,
  BoltCount,
  BoltShortWall,    // walls up to this that join two others need only one bolt, in the middle third
  BoltNoWall,       // walls up to this that join two others need none
  BoltEndFar,
  BoltEndNearDiameters,
  BoltSpacing,
  BoltSpacingTall,  // over two storeys
  BoltEmbed,
  BoltThreadSpare,
  BoltStandoutThreads,
  BoltSteelTarget,
  BoltStrapTarget,
  BoltGap,        // diameters
  BoltGapTorqued, // diameters, where the nut is torqued
  BoltHookLeast,  // diameters, from the face of the shank to the tip
  BoltHookMost,
  BoltMatch,
  WasherSide,
  WasherThickness,
  WasherSheathing,
  WasherSheathingFrom, // plf
  WasherSlotWidth,     // more than the bolt is thick
  WasherSlotLength,
  WasherColumnTarget,
  RodOffset,
  RodEdge, // diameters
  RodEmbed,
  RodSteelTarget,
  RodPlumb,
  ColumnOnSill,
  PanelSlenderFull, // height by length
  PanelSlenderMost,
  PanelLever, // per cent that the tie force grows
  PanelLeverMost,
  SillCorner,
  SillPiece, // the longest lumber chosen
  BarClear,
  BarTop,
  BarOpening,
  PourShot,
  PourLevel,
  PourLevelReach,
  PourForm,
  FormSquareTarget, // in a triangle of 12, 16 and 20 ft
  FormSquare,
  FormThicker,
  FormThinner,
  Count
};

struct LimitRow {
  LimitKey key;
  std::string_view name; // as in job files: "strap.edge target"
  RuleId rule;
  double value;
  std::string_view unit; // "in", "d", "threads", "plf", "bolts"
  Level level;           // what it means to miss it
  Wanted wanted;
  Source source;
};

std::span<const LimitRow> limitTable();
std::optional<LimitKey> limitKey(std::string_view name);

// Defaults with the job's overrides applied; how far rules count is added by the rule book, which knows their names
// (see resolve there). Unknown names are left out (reading a job file refuses them).
struct ResolvedLimits {
  std::array<double, static_cast<std::size_t>(LimitKey::Count)> value{};
  std::array<bool, static_cast<std::size_t>(LimitKey::Count)> overridden{};
  std::array<std::optional<RuleCounts>, static_cast<std::size_t>(RuleId::Count)> counts{}; // rules set for the job
  double operator[](LimitKey key) const { return value[static_cast<std::size_t>(key)]; }
};
ResolvedLimits resolvedValues(const JobLimits& limits);

} // namespace sillwright
