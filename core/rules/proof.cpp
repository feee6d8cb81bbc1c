#include "core/rules/proof.h"

#include <algorithm>
#include <cmath>
#include <memory>

#include "core/base/tolerance.h"
#include "core/rules/correction.h"
#include "core/rules/rule_book.h"

namespace sillwright {

namespace {

Level atMost(Level level, RuleCounts counts) {
  const Level most = counts == RuleCounts::Ask ? Level::Ask : Level::Watch;
  return std::max(level, most);
}

void addDrafts(const RuleRow& row, const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  const auto& counts = limits.counts[static_cast<std::size_t>(row.id)];
  if (counts == RuleCounts::None)
    return;
  const std::size_t first = drafts.size();
  row.check(layout, limits, drafts);
  for (std::size_t i = first; counts && i < drafts.size(); ++i)
    drafts[i].finding.level = atMost(drafts[i].finding.level, *counts);
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

PieceKind kindOf(const WallLine& wall, Id piece) {
  std::size_t kind = 0, found = 0;
  forEachList(wall, [&](const auto& list) {
    if (findIn(list, piece))
      found = kind;
    ++kind;
  });
  return static_cast<PieceKind>(found);
}

constexpr double farthest = 48; // in; more is no correction but another layout

// The wall after a correction, and the rules to ask about it. One that is not asked again says what it said before:
// that never speaks against a correction, nor does it move the piece.
class After {
public:
  After(const WallLayout& layout, const Finding& finding, const Correction& correction)
      : wall_(std::make_shared<const WallLine>(corrected(*layout.wall, correction))),
        layout_(layOut(wall_, layout.types, layout.limits, layout.marks, layout.place)), rule_(finding.rule),
        moved_(kindOf(*wall_, correction.piece)) {}

  Drafts draftsOf(const RuleRow& row, const ResolvedLimits& limits) const {
    Drafts drafts;
    if (row.id == rule_ || mayChange(row, moved_))
      addDrafts(row, layout_, limits, drafts);
    return drafts;
  }

private:
  std::shared_ptr<const WallLine> wall_;
  WallLayout layout_;
  RuleId rule_;
  PieceKind moved_;
};

// How far a correction of what came in the way asks the moved piece on: its own move, or that of the other turned
// round.
double asMoveOf(const Correction& moved, const Finding& inTheWay, const Correction& next) {
  if (next.field != moved.field)
    return 0;
  if (next.piece == moved.piece)
    return next.by;
  const auto& pieces = inTheWay.pieces;
  const bool isTheOther = pieces.size() > 1 && pieces[1] == moved.piece && next.piece == pieces[0];
  return isTheOther ? -next.by : 0;
}

Drafts draftsAfter(const WallLayout& layout, const ResolvedLimits& limits, const Finding& finding,
                   const Correction& correction) {
  const After after(layout, finding, correction);
  Drafts drafts;
  for (const RuleRow& row : ruleBook())
    for (Draft& draft : after.draftsOf(row, limits))
      drafts.push_back(std::move(draft));
  return drafts;
}

} // namespace

Drafts draftsOf(const WallLayout& layout, const ResolvedLimits& limits) {
  Drafts drafts;
  for (const RuleRow& row : ruleBook())
    addDrafts(row, layout, limits, drafts);
  return drafts;
}

bool mayChange(const RuleRow& row, PieceKind moved) {
  switch (moved) {
  case PieceKind::Strap:
    return row.subject == "strap" || row.subject == "panel" || row.id == RuleId::BoltStrap;
  case PieceKind::Bolt:
    return row.subject == "bolt" || row.subject == "washer";
  case PieceKind::Rod:
    return row.subject == "rod" || row.subject == "panel" || row.id == RuleId::BoltStrap || row.id == RuleId::BoltGap;
  case PieceKind::Bar:
    return row.subject == "bar" || row.id == RuleId::StrapSteel || row.id == RuleId::BoltSteel ||
           row.id == RuleId::RodSteel;
  default:
    return true;
  }
}

bool proved(const WallLayout& layout, const ResolvedLimits& limits, const Drafts& before, const Finding& finding,
            const Correction& correction) {
  using Field = Correction::Field;
  const bool byAmount = correction.field != Field::Hook && correction.field != Field::Washer;
  if (correction.by == 0 && byAmount)
    return false;
  if (std::abs(correction.by) > farthest)
    return false;
  const After after(layout, finding, correction);
  return cures(finding, before, after.draftsOf(rule(finding.rule), limits)) && // the likeliest to object
         std::all_of(ruleBook().begin(), ruleBook().end(), [&](const RuleRow& row) {
           return row.id == finding.rule || cures(finding, before, after.draftsOf(row, limits));
         });
}

bool goesPast(const WallLayout& layout, const ResolvedLimits& limits, const Finding& finding,
              const Correction& correction) {
  using Field = Correction::Field;
  if ((correction.field != Field::Station && correction.field != Field::Depth) || finding.unit == Unit::Count)
    return false;
  Correction begun = correction;
  begun.by /= 16; // from a convex obstacle, worse at all is worse at once
  const Drafts there = After(layout, finding, begun).draftsOf(rule(finding.rule), limits);
  return std::any_of(there.begin(), there.end(), [&](const Draft& draft) {
    return sameMatter(draft.finding, finding) && asBad(draft.finding, finding) &&
           (draft.finding.level < finding.level || worsened(finding, draft.finding));
  });
}

std::optional<Correction> movedOn(const WallLayout& layout, const ResolvedLimits& limits, const Drafts& before,
                                  const Finding& finding, Correction move) {
  constexpr int obstacles = 8;
  for (int i = 0; i < obstacles && std::abs(move.by) <= farthest; ++i) {
    const Drafts after = draftsAfter(layout, limits, finding, move);
    if (i > 0 && cures(finding, before, after))
      return move;
    double on = 0;
    for (const Draft& draft : after) {
      if (draft.finding.level != Level::Fix)
        continue;
      for (const Correction& next : correctionsOf(draft))
        if (const double by = asMoveOf(move, draft.finding, next);
            by * move.by > 0 && (on == 0 || std::abs(by) < std::abs(on)))
          on = by;
    }
    if (on == 0)
      return std::nullopt;
    move.by += on;
  }
  return std::nullopt;
}

} // namespace sillwright
