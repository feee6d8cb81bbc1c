// What a rule found: data, no words. Words are made in rules/wording.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/base/ids.h"
#include "core/geometry/shapes.h"
#include "core/rules/level.h"

namespace sillwright {

// One number for each rule of the rule book; the table is in rules/rule_book.
enum class RuleId : std::uint8_t {
  StrapEdge, StrapJoint, StrapPair, StrapLean, StrapLeanOpening, StrapPlumb, StrapColumn, StrapNailEdge, StrapSeam,
  StrapNailDepth, StrapSteel, StrapDepth, StrapBack, StrapHang, StrapMissing, StrapType, StrapCapacity,
  BoltCount, BoltEndFar, BoltEndNear, BoltSpacing, BoltThird, BoltEmbed, BoltThread, BoltOpening, BoltStud, BoltSteel,
  BoltStrap, BoltSplice, BoltRunOut, BoltGap, BoltCover, BoltHook, BoltMatch, BoltShear,
  WasherSize, WasherSheathing, WasherSlot, WasherSill, WasherColumn, WasherWasher,
  RodOffset, RodEdge, RodEmbed, RodThread, RodSteel, RodCover, RodOpening, RodPlumb,
  ColumnSill, ColumnOpening, ColumnOverlap, ColumnPlan,
  PanelEnds, PanelSlender, PanelLever, PanelTie,
  SillCorner, SillConcrete, SillMark, SillPiece,
  BarCover, BarClear, BarTop, BarOpening,
  PourShot, PourLevel, PourForm,
  FormSquare, FormThickness,
  Count
};

enum class Unit : std::uint8_t { Inch, Count, Ratio, Percent, Pound };
// How measured stands to the limit when all is well.
enum class Wanted : std::uint8_t { AtLeast, AtMost, None };

// What to change so that the finding goes away: one field of one piece, by how much. LeftEnd and RightEnd are those of a
// stretch. Washer: another plate washer, slid by `by` in its slot, with a cut washer on it where it has one.
struct Correction {
  enum class Field : std::uint8_t { Station, Depth, Height, Projection, Hook, LeftEnd, RightEnd, Washer, CutWasher };
  Field field = Field::Station;
  Id piece;
  double by = 0; // in; + is right, inward, up
  Id type{};     // of the washer
  bool past = false; // through the thing that is in the way to its far side: on the way there it gets worse first
  bool operator==(const Correction&) const = default;
};

struct Finding {
  RuleId rule = RuleId::StrapEdge;
  Level level = Level::Fix; // as it counts in this job
  Level ruleLevel = Level::Fix; // as the rule book has it
  Id wall;
  std::vector<Id> pieces; // first the one to move, then what it collides with
  double measured = 0;
  double limit = 0;
  Unit unit = Unit::Inch;
  Wanted wanted = Wanted::AtLeast;
  Box3 region;            // exactly where the measure falls short
  std::optional<Correction> correction; // never past what is in the way
  std::vector<Correction> otherWays;    // further ones, as well proved; the only ones where every way goes past
  std::optional<Interval> window;    // washer.sheathing: of the bolt from that edge, where it and bolt.third are content
  std::uint8_t variant = 0; // which wording of its rule: see rules/wording
  bool operator==(const Finding&) const = default;
};

inline Point3 middleOf(const Box3& box) { return {box.s.middle(), box.d.middle(), box.z.middle()}; }

} // namespace sillwright
