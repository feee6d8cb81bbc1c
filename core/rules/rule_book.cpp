#include "core/rules/rule_book.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <tuple>

#include "core/base/tolerance.h"
#include "core/rules/correction.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

constexpr Source practice{"", Status::CommonPractice};
constexpr Source geometry{"", Status::Geometry};
constexpr Source ofType{"", Status::Type};
constexpr Source plans{"", Status::Plans};
constexpr Source sillBolts{"IRC 2024 R403.1.6", Status::Published};
constexpr Source washerEdge{"SDPWS 2021 4.3.6.4.3", Status::Published};
constexpr Source cover{"ACI 318-19 Table 20.5.1.3.1", Status::Published};
constexpr Source nailDepth{"NDS 2018 12.1.6.4", Status::Published};
constexpr Source slender{"SDPWS 2021 4.3.3", Status::Published};
constexpr Source anchorSpacing{"ACI 318-19 Table 17.9.2(a)", Status::Published};
constexpr Source hookLeg{"ACI 318-19 17.6.3.2.2", Status::Published};
constexpr Source nuts{"ASME B18.2.2, B18.21.1", Status::Published};
constexpr Source nailEdge{"NDS commentary", Status::FromMemory};

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
      {R::StrapColumn, "strap.column", "strap", "Every nail of a strap lands on its column.", "nails off the column",
       fix, geometry, checkStrapColumn},
      {R::StrapNailEdge, "strap.nail-edge", "strap", "Nails keep away from the edges of their ply.",
       "nail to the nearest edge of its ply", watch, nailEdge, checkStrapNailEdge},
      {R::StrapSeam, "strap.seam", "strap", "No nail of a strap is on the seam between two plies.", "nails on a seam",
       ask, practice, checkStrapSeam},
      {R::StrapNailDepth, "strap.nail-depth", "strap", "The nails of a strap reach deep enough into the column.",
       "nail in the column, beyond plate and sheathing", fixWatch, nailDepth, checkStrapNailDepth},
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
      {R::BoltCount, "bolt.count", "bolt", "Each piece of sill has enough bolts.", "bolts in a piece of sill", fix,
       sillBolts, checkBoltCount},
      {R::BoltEndFar, "bolt.end-far", "bolt", "The end bolts are near the ends of their sill piece.",
       "end bolt to the end of its piece", fix, sillBolts, checkBoltEndFar},
      {R::BoltEndNear, "bolt.end-near", "bolt", "Bolts are not too near the ends of their sill piece.",
       "bolt to the end of its piece", fix, sillBolts, checkBoltEndNear},
      {R::BoltSpacing, "bolt.spacing", "bolt", "Bolts of a sill piece are not too far apart.",
       "between neighbouring bolts", fix, sillBolts, checkBoltSpacing},
      {R::BoltThird, "bolt.third", "bolt", "Bolts stand in the middle third of the sill.",
       "bolt axis to the nearer edge of the sill", fix, sillBolts, checkBoltThird},
      {R::BoltEmbed, "bolt.embed", "bolt", "Bolts reach deep enough into the concrete.", "embedment", fix, sillBolts,
       checkBoltEmbed},
      {R::BoltThread, "bolt.thread", "bolt", "Bolts stand up far enough for sill, washers, nut and two threads.",
       "projection above the pour line", fixWatch, nuts, checkBoltThread},
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
      {R::BoltRunOut, "bolt.run-out", "bolt", "The thread of a bolt reaches low enough for the nut to tighten on its washer.",
       "thread below the nut", fix, geometry, checkBoltRunOut},
      {R::BoltGap, "bolt.gap", "bolt", "Anchors that are cast in stand apart from each other.",
       "between the axes of two anchors", fixAsk, anchorSpacing, checkBoltGap},
      {R::BoltCover, "bolt.cover", "bolt", "Bolts and their hooks have enough concrete over them.",
       "bolt to the face of the concrete", ask, cover, checkBoltCover},
      {R::BoltHook, "bolt.hook", "bolt", "The hook of a bolt points inward, is neither short nor long, and stays in the concrete.",
       "face of the shank to the tip of the hook", fixWatch, hookLeg, checkBoltHook},
      {R::BoltMatch, "bolt.match", "bolt", "The bolts of a wall stand up alike.", "projection against that of most bolts",
       watch, practice, checkBoltMatch},
      {R::WasherSheathing, "washer.sheathing", "washer",
       "Under a strong panel the plate washer reaches near the sheathed edge of the sill.",
       "washer edge to the sheathed edge of the sill", fix, washerEdge, checkWasherSheathing},
      {R::WasherSill, "washer.sill", "washer", "A plate washer lies wholly on the sill.",
       "part of the washer off the sill", fix, geometry, checkWasherSill},
      {R::WasherColumn, "washer.column", "washer", "A plate washer keeps clear of columns.",
       "washer to the column, less than zero: overlap", fixWatch, geometry, checkWasherColumn},
      {R::WasherWasher, "washer.washer", "washer", "Plate washers do not overlap.",
       "washer to washer, less than zero: overlap", fix, geometry, checkWasherWasher},
      {R::ColumnSill, "column.sill", "column", "A column stands wholly on a sill and not over a splice.",
       "part of the column off its sill piece", fix, geometry, checkColumnSill},
      {R::ColumnOpening, "column.opening", "column", "No column stands in an opening.",
       "depth of the column inside the opening", fix, geometry, checkColumnOpening},
      {R::ColumnOverlap, "column.overlap", "column", "Columns do not overlap.",
       "column to column, less than zero: overlap", fix, geometry, checkColumnOverlap},
      {R::PanelEnds, "panel.ends", "panel", "A shear panel has a column at each end.", "columns at the panel end", fix,
       practice, checkPanelEnds},
      {R::PanelSlender, "panel.slender", "panel", "A shear panel is not too high for its length.", "height by length",
       askWatch, slender, checkPanelSlender},
      {R::BarCover, "bar.cover", "bar", "Bars have enough concrete over them.", "bar to the face of the concrete", fix,
       cover, checkBarCover},
      {R::PourForm, "pour.form", "pour", "The top of the form is nowhere under the pour line.",
       "form top above the pour line", fix, geometry, checkPourForm},
  };
  return rows;
}

auto orderOf(const Finding& f) {
  return std::tuple(f.level, f.region.s.from, f.rule, f.region.s.to, f.pieces, f.variant, f.region.d.from,
                    f.region.z.from, f.measured);
}

// How far the job lets a rule count; nothing where it leaves the rule as the book has it.
std::optional<RuleCounts> countsOf(const JobLimits& limits, std::string_view name) {
  for (const RuleOverride& change : limits.rules)
    if (change.rule == name)
      return change.counts;
  return std::nullopt;
}

Level atMost(Level level, RuleCounts counts) {
  return std::max(level, counts == RuleCounts::Ask ? Level::Ask : Level::Watch);
}

Drafts draftsOf(const WallLayout& layout, const ResolvedLimits& limits) {
  Drafts drafts;
  for (const RuleRow& row : table()) {
    const auto counts = countsOf(*layout.limits, row.name);
    if (counts == RuleCounts::None)
      continue;
    const std::size_t first = drafts.size();
    row.check(layout, limits, drafts);
    for (std::size_t i = first; counts && i < drafts.size(); ++i)
      drafts[i].finding.level = atMost(drafts[i].finding.level, *counts);
  }
  return drafts;
}

bool sameMatter(const Finding& a, const Finding& b) {
  return a.rule == b.rule && a.variant == b.variant && a.pieces == b.pieces;
}

bool asBad(const Finding& a, const Finding& b) {
  return a.level <= b.level;
}

// Farther past its limit than it was, at the same level.
bool worsened(const Finding& old, const Finding& now) {
  if (old.level != now.level || now.wanted == Wanted::None)
    return false;
  const double by = now.wanted == Wanted::AtLeast ? old.measured - now.measured : now.measured - old.measured;
  return by > tolerance::same;
}

// Getting worse there undoes the cure: the same rule on another side, or more nails off their wood.
bool countsAgainst(const Finding& cured, const Finding& other) {
  return other.rule == cured.rule || other.rule == RuleId::StrapColumn;
}

// Cured: gone or milder, nothing as bad has come, and nothing that counts against it is further off.
bool cures(const Finding& finding, const Drafts& before, const Drafts& after) {
  return std::none_of(after.begin(), after.end(), [&](const Draft& now) {
    if (!asBad(now.finding, finding))
      return false;
    return sameMatter(now.finding, finding) || std::none_of(before.begin(), before.end(), [&](const Draft& old) {
             return sameMatter(old.finding, now.finding) && asBad(old.finding, now.finding) &&
                    !(countsAgainst(finding, now.finding) && worsened(old.finding, now.finding));
           });
  });
}

bool proved(const WallLayout& layout, const ResolvedLimits& limits, const Drafts& before, const Finding& finding,
            const Correction& correction) {
  constexpr double farthest = 48; // in; more is no correction but another layout
  if (correction.by == 0 && correction.field != Correction::Field::Hook)
    return false;
  if (std::abs(correction.by) > farthest)
    return false;
  const auto wall = std::make_shared<const WallLine>(corrected(*layout.wall, correction));
  const WallLayout after = layOut(wall, layout.types, layout.limits, layout.marks, layout.place);
  return cures(finding, before, draftsOf(after, limits));
}

} // namespace

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
  constexpr std::size_t tries = 4;
  const Drafts drafts = draftsOf(layout, limits);
  Findings findings;
  for (const Draft& draft : drafts) {
    findings.push_back(draft.finding);
    for (std::size_t i = 0; i < std::min(tries, draft.corrections.size()); ++i)
      if (proved(layout, limits, drafts, draft.finding, draft.corrections[i])) {
        findings.back().correction = draft.corrections[i];
        break;
      }
  }
  std::sort(findings.begin(), findings.end(),
            [](const Finding& a, const Finding& b) { return orderOf(a) < orderOf(b); });
  return findings;
}

} // namespace sillwright
