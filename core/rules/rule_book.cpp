#include "core/rules/rule_book.h"

#include <algorithm>
#include <tuple>

#include "core/rules/correction.h"
#include "core/rules/measure.h"
#include "core/rules/proof.h"
#include "core/rules/subjects.h"
#include "core/standards/bars.h"
#include "core/standards/bolt_value.h"
#include "core/standards/cast_in_anchors.h"
#include "core/standards/cover.h"
#include "core/standards/fasteners.h"
#include "core/standards/set_out.h"
#include "core/standards/shear_panels.h"
#include "core/standards/sill_bolts.h"
#include "core/standards/statics.h"
#include "core/standards/washers.h"

namespace sillwright {

namespace {

constexpr Source practice{"", Status::CommonPractice};
constexpr Source geometry{"", Status::Geometry};
constexpr Source ofType{"", Status::Type};
constexpr Source plans{"", Status::Plans};
constexpr Source statics{"", Status::Statics};

const std::vector<Level> fix{Level::Fix};
const std::vector<Level> fixWatch{Level::Fix, Level::Watch};
const std::vector<Level> fixAsk{Level::Fix, Level::Ask};
const std::vector<Level> askWatch{Level::Ask, Level::Watch};
const std::vector<Level> ask{Level::Ask};
const std::vector<Level> watch{Level::Watch};

using R = RuleId;

const std::vector<RuleRow>& table() {
  static const std::vector<RuleRow> rows{
      {R::StrapEdge, "strap.edge", "strap",
       "A strap keeps its distance from the ends, corners and steps of the concrete.",
       "plate edge to the nearest concrete end, corner or step", fixWatch, ofType, checkStrapEdge},
      {R::StrapJoint, "strap.joint", "strap", "The joint line of a strap is on the pour line.",
       "joint line above or below the pour line", fix, practice, checkStrapJoint},
      {R::StrapPair, "strap.pair", "strap",
       "The two straps of a panel, and the two beside an opening, hang at one height.",
       "difference of the joint heights above the pour line", fix, practice, checkStrapPair},
      {R::StrapLean, "strap.lean", "strap", "A strap out of plumb still has every nail on the column.",
       "stand-off of the nail that leaves the column first", fix, geometry, checkStrapLean},
      {R::StrapLeanOpening, "strap.lean-opening", "strap",
       "No part of a strap, lean included, is in the rough opening.", "depth of the plate inside the opening", fix,
       practice, checkStrapLeanOpening},
      {R::StrapPlumb, "strap.plumb", "strap", "A strap hangs plumb.", "out of plumb in 24 in, as read", watch, practice,
       checkStrapPlumb},
      {R::StrapColumn, "strap.column", "strap", "Every nail of a strap lands on its column.", "nails off the column",
       fix, geometry, checkStrapColumn},
      {R::StrapNailEdge, "strap.nail-edge", "strap", "Nails keep away from the edges of their ply.",
       "nail to the nearest edge of its ply", watch, nailEdgeSource, checkStrapNailEdge},
      {R::StrapSeam, "strap.seam", "strap", "No nail of a strap is on the seam between two plies.", "nails on a seam",
       ask, practice, checkStrapSeam},
      {R::StrapNailDepth, "strap.nail-depth", "strap", "The nails of a strap reach deep enough into the column.",
       "nail in the column, beyond plate and sheathing", fixWatch, nailDepthSource, checkStrapNailDepth},
      {R::StrapSteel, "strap.steel", "strap", "A strap does not touch the bars.",
       "clear distance from the strap to a bar", fixWatch, geometry, checkStrapSteel},
      {R::StrapDepth, "strap.depth", "strap", "The hook of a strap stays inside the concrete.",
       "lowest point of the strap to the bottom of the concrete", fixWatch, geometry, checkStrapDepth},
      {R::StrapBack, "strap.back", "strap", "The hook of a strap stays behind the inside face.",
       "hook to the inside face", fixWatch, geometry, checkStrapBack},
      {R::StrapHang, "strap.hang", "strap", "The hanger of a strap reaches the top of the form.",
       "form top above the joint line", fix, ofType, checkStrapHang},
      {R::StrapMissing, "strap.missing", "strap", "A panel end whose mark calls for a strap has one.",
       "straps at the panel end", fix, plans, checkStrapMissing},
      {R::StrapType, "strap.type", "strap",
       "A strap is of the type that the mark calls for, on a column it may be nailed to.",
       "type and column of the strap", fix, plans, checkStrapType},
      {R::StrapCapacity, "strap.capacity", "strap", "The stated capacity of a strap is what its mark requires.",
       "stated capacity against that required at the mark", ask, plans, checkStrapCapacity},
      {R::BoltCount, "bolt.count", "bolt", "Each piece of sill has enough bolts.", "bolts in a piece of sill", fix,
       sillBoltSource, checkBoltCount},
      {R::BoltEndFar, "bolt.end-far", "bolt", "The end bolts are near the ends of their sill piece.",
       "end bolt to the end of its piece", fix, sillBoltSource, checkBoltEndFar},
      {R::BoltEndNear, "bolt.end-near", "bolt", "Bolts are not too near the ends of their sill piece.",
       "bolt to the end of its piece", fix, sillBoltSource, checkBoltEndNear},
      {R::BoltSpacing, "bolt.spacing", "bolt", "Bolts of a sill piece are not too far apart.",
       "between neighbouring bolts", fix, sillBoltSource, checkBoltSpacing},
      {R::BoltThird, "bolt.third", "bolt", "Bolts stand in the middle third of the sill.",
       "bolt axis to the nearer edge of the sill", fix, sillBoltSource, checkBoltThird},
      {R::BoltEmbed, "bolt.embed", "bolt", "Bolts reach deep enough into the concrete.", "embedment", fix,
       sillBoltSource, checkBoltEmbed},
      {R::BoltThread, "bolt.thread", "bolt", "Bolts stand up far enough for sill, washers, nut and two threads.",
       "projection above the pour line", fixWatch, threadStackSource, checkBoltThread},
      {R::BoltOpening, "bolt.opening", "bolt", "No bolt stands in a door opening.",
       "depth of the bolt inside the opening", fix, geometry, checkBoltOpening},
      {R::BoltStud, "bolt.stud", "bolt", "No bolt, nut or washer is under a stud, and no bolt or nut under a column.",
       "clear distance, less than zero: overlap", fix, geometry, checkBoltStud},
      {R::BoltSteel, "bolt.steel", "bolt", "A bolt does not touch the bars.", "clear distance from the bolt to a bar",
       fixWatch, geometry, checkBoltSteel},
      {R::BoltStrap, "bolt.strap", "bolt", "A bolt does not touch straps or rods.",
       "clear distance from the bolt to a strap or rod", fixWatch, geometry, checkBoltStrap},
      {R::BoltSplice, "bolt.splice", "bolt", "No washer lies over a sill splice.",
       "washer to the splice, less than zero: overlap", fix, geometry, checkBoltSplice},
      {R::BoltRunOut, "bolt.run-out", "bolt",
       "The thread of a bolt reaches low enough for the nut to tighten on its washer.", "thread below the nut", fix,
       geometry, checkBoltRunOut},
      {R::BoltGap, "bolt.gap", "bolt", "Anchors that are cast in stand apart from each other.",
       "between the axes of two anchors", fixAsk, anchorSpacingSource, checkBoltGap},
      {R::BoltCover, "bolt.cover", "bolt", "Bolts and their hooks have enough concrete over them.",
       "bolt to the face of the concrete", ask, coverSource, checkBoltCover},
      {R::BoltHook, "bolt.hook", "bolt",
       "The hook of a bolt points inward, is neither short nor long, and stays in the concrete.",
       "face of the shank to the tip of the hook", fixWatch, hookLegSource, checkBoltHook},
      {R::BoltMatch, "bolt.match", "bolt", "The bolts of a wall stand up alike.",
       "projection against that of most bolts", watch, practice, checkBoltMatch},
      {R::BoltShear, "bolt.shear", "bolt", "The bolts under a panel together carry its shear.",
       "values of the bolts against the shear of the panel", ask, boltValueSource, checkBoltShear},
      {R::WasherSize, "washer.size", "washer", "Bolts have plate washers that are large and thick enough.",
       "side and thickness of the plate washer", fix, plateWasherSource, checkWasherSize},
      {R::WasherSheathing, "washer.sheathing", "washer",
       "Under a strong panel the plate washer reaches near the sheathed edge of the sill.",
       "washer edge to the sheathed edge of the sill", fix, washerEdgeSource, checkWasherSheathing},
      {R::WasherSlot, "washer.slot", "washer",
       "A slotted washer is slotted no wider and no longer than a cut washer over it covers.",
       "width and length of the slot, and what lies over it", fix, washerSlotSource, checkWasherSlot},
      {R::WasherSill, "washer.sill", "washer", "A plate washer lies wholly on the sill.",
       "part of the washer off the sill", fix, geometry, checkWasherSill},
      {R::WasherColumn, "washer.column", "washer", "A plate washer keeps clear of columns.",
       "washer to the column, less than zero: overlap", fixWatch, geometry, checkWasherColumn},
      {R::WasherWasher, "washer.washer", "washer", "Plate washers do not overlap.",
       "washer to washer, less than zero: overlap", fix, geometry, checkWasherWasher},
      {R::RodOffset, "rod.offset", "rod", "A rod stands off its column as far as its bracket needs.",
       "rod to the centre line of its bracket", fix, ofType, checkRodOffset},
      {R::RodEdge, "rod.edge", "rod", "A rod keeps away from the edges of the concrete.",
       "axis of the rod to the nearest edges of the concrete", ask, anchorSpacingSource, checkRodEdge},
      {R::RodEmbed, "rod.embed", "rod", "Rods reach deep enough into the concrete.", "embedment of the rod", fix,
       borrowed(sillBoltSource), checkRodEmbed},
      {R::RodThread, "rod.thread", "rod", "Rods stand up far enough for sill, washer, nut and two threads.",
       "projection of the rod above the pour line", fixWatch, threadStackSource, checkRodThread},
      {R::RodSteel, "rod.steel", "rod", "A rod does not touch the bars.", "clear distance from the rod to a bar",
       fixWatch, geometry, checkRodSteel},
      {R::RodCover, "rod.cover", "rod", "Rods and their feet have enough concrete over them.",
       "rod to the face of the concrete", ask, coverSource, checkRodCover},
      {R::RodOpening, "rod.opening", "rod", "No rod stands in a door opening.", "depth of the rod inside the opening",
       fix, geometry, checkRodOpening},
      {R::RodPlumb, "rod.plumb", "rod", "A rod stands plumb.", "out of plumb of the rod in 24 in, as read", watch,
       practice, checkRodPlumb},
      {R::ColumnSill, "column.sill", "column", "A column stands wholly on a sill and not over a splice.",
       "part of the column off its sill piece", fix, geometry, checkColumnSill},
      {R::ColumnOpening, "column.opening", "column", "No column stands in an opening.",
       "depth of the column inside the opening", fix, geometry, checkColumnOpening},
      {R::ColumnOverlap, "column.overlap", "column", "Columns do not overlap.",
       "column to column, less than zero: overlap", fix, geometry, checkColumnOverlap},
      {R::ColumnPlan, "column.plan", "column", "The column at a panel end is made up as its mark calls for.",
       "make-up of the column", fix, plans, checkColumnPlan},
      {R::PanelEnds, "panel.ends", "panel", "A shear panel has a column at each end.", "columns at the panel end", fix,
       practice, checkPanelEnds},
      {R::PanelSlender, "panel.slender", "panel", "A shear panel is not too high for its length.", "height by length",
       askWatch, slenderPanelSource, checkPanelSlender},
      {R::PanelLever, "panel.lever", "panel", "The hold-downs of a panel stand as far apart as on the plans.",
       "how much the tie force grows because they stand closer", askWatch, statics, checkPanelLever},
      {R::PanelTie, "panel.tie", "panel", "The tie force of a panel is no more than its mark provides for.",
       "tie force from the shear to carry, against the capacity required at the mark", ask, tieForceSource,
       checkPanelTie},
      {R::SillCorner, "sill.corner", "sill", "At a corner the sills meet without gap or overlap.",
       "gap or overlap between the sills at the corner", fix, geometry, checkSillCorner},
      {R::SillConcrete, "sill.concrete", "sill", "A sill lies wholly on concrete.", "part of the sill off the concrete",
       fix, geometry, checkSillConcrete},
      {R::SillMark, "sill.mark", "sill", "The sill at a panel end is of the size that its mark calls for.",
       "nominal size of the sill", fix, plans, checkSillMark},
      {R::SillPiece, "sill.piece", "sill", "No piece of sill is longer than the lumber.", "length of a piece of sill",
       watch, practice, checkSillPiece},
      {R::BarCover, "bar.cover", "bar", "Bars have enough concrete over them.", "bar to the face of the concrete", fix,
       foundationCoverSource, checkBarCover},
      {R::BarClear, "bar.clear", "bar", "Bars side by side leave room for the concrete between them.",
       "clear distance from bar to bar", watch, barSpacingSource, checkBarClear},
      {R::BarTop, "bar.top", "bar", "Where the job calls for it, a bar runs near the top of the concrete.",
       "length of wall without a No. 4 bar within 12 in of the top", fix, topBarSource, checkBarTop},
      {R::BarOpening, "bar.opening", "bar", "Where the job calls for it, an upright bar stands beside each opening.",
       "opening to the nearest upright bar", watch, openingBarSource, checkBarOpening},
      {R::PourShot, "pour.shot", "pour", "Each grade shot is at the pour line.",
       "grade shot above or below the pour line", fix, practice, checkPourShot},
      {R::PourLevel, "pour.level", "pour", "The top of the concrete is level.", "highest to lowest shot within 20 ft",
       watch, workmanshipSource, checkPourLevel},
      {R::PourForm, "pour.form", "pour", "The top of the form is nowhere under the pour line.",
       "form top above the pour line", fix, geometry, checkPourForm},
      {R::FormSquare, "form.square", "form", "The forms are square.",
       "taped diagonal against that of the plan; limits are for 20 ft and grow with it", watch, workmanshipSource,
       checkFormSquare},
      {R::FormThickness, "form.thickness", "form", "The forms stand as far apart as the concrete is thick.",
       "taped width between the forms against the plan", watch, concreteWorkSource, checkFormThickness},
  };
  return rows;
}

auto orderOf(const Finding& f) {
  return std::tuple(f.level, f.region.s.from, f.rule, f.region.s.to, f.pieces, f.variant, f.region.d.from,
                    f.region.z.from, f.measured);
}

// Of several moves the first will do; another washer is a way of its own, and past the obstacle only until one is found
// that does not go past it.
bool isNewWay(const Finding& finding, const Correction& correction) {
  return !finding.correction || correction.field == Correction::Field::Washer;
}

// Measured to an end, a face, a line or a target, which has no far side.
bool oneSided(RuleId rule) {
  switch (rule) {
  case R::StrapEdge:
  case R::StrapJoint:
  case R::StrapPair:
  case R::BoltEndFar:
  case R::BoltEndNear:
  case R::BoltSpacing:
  case R::BoltThird:
  case R::BoltCover:
  case R::WasherSheathing:
  case R::WasherSill:
  case R::RodOffset:
  case R::RodCover:
  case R::RodEdge:
  case R::BarCover:
    return true;
  default:
    return false;
  }
}

// Nothing to go past: a rule that measures to an end or a face says one move, and of two along the wall, in which
// pieces are alike to the left and to the right, the shorter goes to the nearer side.
bool cannotGoPast(const RuleId rule, const std::vector<Correction>& ways, const Correction& way) {
  if (oneSided(rule))
    return true;
  return way.field == Correction::Field::Station && std::any_of(ways.begin(), ways.end(), [&](const Correction& other) {
           return other.field == way.field && other.piece == way.piece && other.by * way.by < 0 &&
                  std::abs(other.by) >= std::abs(way.by);
         });
}

void addWay(const WallLayout& layout, const ResolvedLimits& limits, const Draft& draft, Correction way,
            Finding& finding) {
  way.past = !cannotGoPast(draft.finding.rule, draft.corrections, way) && goesPast(layout, limits, draft.finding, way);
  const auto& others = finding.otherWays;
  if (way.past && std::any_of(others.begin(), others.end(), [](const Correction& other) { return other.past; }))
    return;
  if (finding.correction || way.past)
    finding.otherWays.push_back(way);
  else
    finding.correction = way;
}

// Whether a piece may be asked to make way: columns, other anchors and straps, and bars that nobody has found in place.
bool makesWay(const WallLine& wall, Id id) {
  const auto piece = findPiece(wall, id);
  if (!piece)
    return false;
  if (const Bar* bar = std::get_if<Bar>(&*piece))
    return !bar->found;
  return std::holds_alternative<Column>(*piece) || std::holds_alternative<Strap>(*piece) ||
         std::holds_alternative<Bolt>(*piece);
}

// The moves of the first piece made by the second instead, the other way.
std::vector<Correction> byTheOther(const WallLine& wall, const Draft& draft) {
  std::vector<Correction> moves;
  const std::vector<Id>& pieces = draft.finding.pieces;
  if (draft.finding.level != Level::Fix || pieces.size() < 2 || !makesWay(wall, pieces[1]))
    return moves;
  for (const Correction& own : draft.corrections) {
    const bool along = own.field == Correction::Field::Station;
    if (own.piece != pieces[0] || (!along && own.field != Correction::Field::Depth))
      continue;
    const auto station = stationOf(wall, pieces[1]);
    moves.push_back({own.field, pieces[1], along && station ? byToMark(*station, -own.by) : -own.by});
  }
  return moves;
}

void tryWays(const WallLayout& layout, const ResolvedLimits& limits, const Drafts& before, const Draft& draft,
             const std::vector<Correction>& ways, Finding& finding) {
  constexpr std::size_t tries = 8;
  for (std::size_t i = 0; i < std::min(tries, ways.size()); ++i)
    if (isNewWay(finding, ways[i]) && proved(layout, limits, before, draft.finding, ways[i]))
      addWay(layout, limits, draft, ways[i], finding);
}

bool goesAlongOrAcross(Correction::Field field) {
  using Field = Correction::Field;
  return field == Field::Station || field == Field::Depth || field == Field::LeftEnd || field == Field::RightEnd;
}

void tryMovingOn(const WallLayout& layout, const ResolvedLimits& limits, const Drafts& before, const Draft& draft,
                 Finding& finding) {
  constexpr std::size_t tries = 4;
  if (draft.finding.level != Level::Fix)
    return;
  std::optional<Correction> least;
  for (std::size_t i = 0; i < std::min(tries, draft.corrections.size()); ++i) {
    if (!goesAlongOrAcross(draft.corrections[i].field) || draft.corrections[i].by == 0)
      continue;
    const auto farther = movedOn(layout, limits, before, draft.finding, draft.corrections[i]);
    if (farther && (!least || std::abs(farther->by) < std::abs(least->by)))
      least = farther;
  }
  if (least)
    addWay(layout, limits, draft, *least, finding);
}

} // namespace

ResolvedLimits resolve(const JobLimits& limits) {
  ResolvedLimits resolved = resolvedValues(limits);
  for (const RuleOverride& change : limits.rules)
    if (const auto id = ruleByName(change.rule))
      resolved.counts[static_cast<std::size_t>(*id)] = change.counts;
  return resolved;
}

std::span<const RuleRow> ruleBook() {
  return table();
}

const RuleRow& rule(RuleId id) {
  return table()[static_cast<std::size_t>(id)];
}

std::optional<RuleId> ruleByName(std::string_view name) {
  for (const RuleRow& row : table())
    if (row.name == name)
      return row.id;
  return std::nullopt;
}

Findings checkWall(const WallLayout& layout, const ResolvedLimits& limits) {
  const Drafts drafts = draftsOf(layout, limits);
  Findings findings;
  for (Draft draft : drafts) {
    draft.corrections = correctionsOf(draft);
    findings.push_back(draft.finding);
    tryWays(layout, limits, drafts, draft, draft.corrections, findings.back());
    if (!firstWay(findings.back()))
      tryMovingOn(layout, limits, drafts, draft, findings.back());
    if (!firstWay(findings.back()))
      tryWays(layout, limits, drafts, draft, byTheOther(*layout.wall, draft), findings.back());
  }
  std::sort(findings.begin(), findings.end(),
            [](const Finding& a, const Finding& b) { return orderOf(a) < orderOf(b); });
  return findings;
}

} // namespace sillwright
