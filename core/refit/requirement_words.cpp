// Requirements in words: what is asked of what, with the numbers that it is asked in.
#include <cmath>

#include "core/refit/refit_words.h"
#include "core/refit/slot_words.h"
#include "core/refit/told.h"
#include "core/rules/bar_cover.h"
#include "core/rules/bolts_in_sill.h"
#include "core/rules/limit_words.h"
#include "core/rules/panel_ends.h"
#include "core/rules/rule_book.h"
#include "core/rules/word_parts.h"

namespace sillwright {

namespace {

using R = RuleId;

struct Asked : Told {
  const ResolvedLimits& limits;

  // " (IRC 2024 R403.1.6)", or with what the job changed it for.
  std::string source(LimitKey key) const {
    const LimitRow& row = limitTable()[static_cast<std::size_t>(key)];
    for (const LimitOverride& change : layout.limits->overrides)
      if (change.key == row.name)
        return " (changed for this job: " + change.reason + ")";
    return " (" + (row.source.document.empty() ? std::string(words(row.source.status)) : documentOf(row.source)) + ")";
  }
  // "3 1/2\" (7 diameters, ACI 318-19 …)" where the bolts are all as thick.
  std::string diameters(LimitKey key) const {
    const std::string factor = numberWords(limits[key]) + " diameters";
    const std::string from = source(key).substr(2);
    const auto thick = thickness();
    return thick ? much(limits[key] * *thick) + " (" + factor + ", " + from : factor + " (" + from;
  }
  const StrapBody* strap() const {
    for (const StrapBody& each : layout.straps)
      if (each.id == id(0))
        return &each;
    return nullptr;
  }

private:
  // Of the bolts that it is asked of; none where they differ.
  std::optional<double> thickness() const {
    std::optional<double> one;
    for (const AnchorBody& anchor : layout.anchors) {
      const bool meant = kind(0) == PieceKind::Sill ? !anchor.isRod : anchor.id == id(0);
      if (!meant)
        continue;
      if (one && std::abs(*one - anchor.diameter) > 1e-6)
        return std::nullopt;
      one = anchor.diameter;
    }
    return one;
  }
};

// ---- straps -----------------------------------------------------------------------------------------------------

std::string edgeWords(const Asked& a) {
  const StrapBody* strap = a.strap();
  const ConcreteFace* face = a.face();
  return "plate of " + a.name(0) + " at least " + a.much(strap ? strap->type->edgeMinimum : 0) +
         " (its type's minimum) from the " +
         (face ? faceName(*face) + ", at " + a.at(face->station)
               : std::string("ends, corners and steps of the concrete"));
}

std::string hookWords(const Asked& a) {
  const StrapBody* strap = a.strap();
  if (a.r.rule == R::StrapDepth)
    return "hook of " + a.name(0) + (strap ? " (" + a.much(strap->joint - strap->embeddedBox.z.from) + " deep)" : "") +
           " above the bottom of the concrete (" + a.much(-a.layout.bottom) + " below the pour line)";
  return "hook of " + a.name(0) + (strap ? " (" + a.much(strap->embeddedBox.d.to) + " in)" : "") +
         " short of the inside face of the concrete (" + a.much(a.layout.across.to) + " in)";
}

// "left end of panel P1, at 0'-0\"", and the mark that calls for something there: the panel is named, or the end is the
// one that the piece holds.
struct EndWords {
  std::string end;
  std::string mark;
};
EndWords endWords(const Asked& a, const Panel& panel, Side side) {
  const bool right = side == Side::Right;
  const std::string& mark = right ? panel.rightMark : panel.leftMark;
  return {std::string(right ? "right" : "left") + " end of " + namedPiece(*a.layout.wall, panel.id) + ", at " +
              a.at(right ? panel.to : panel.from),
          mark.empty() ? std::string("the plans call for it") : "mark " + mark + " calls for it"};
}
EndWords endWords(const Asked& a) {
  const std::optional<double> own = a.r.at ? std::optional(a.r.at->middle()) : stationOf(*a.layout.wall, a.id(0));
  for (const Id id : a.r.pieces)
    if (const Panel* panel = findIn(a.layout.wall->panels, id))
      return endWords(a, *panel, own && *own > (panel->from + panel->to) / 2 ? Side::Right : Side::Left);
  for (const PanelEnd& end : panelEnds(a.layout)) {
    const bool strap = end.strap && end.strap->id == a.id(0), column = end.column && end.column->id == a.id(0);
    if (strap || column)
      return endWords(a, *end.panel, end.side);
  }
  return {"end of its panel, beside " + a.placed(0), "the plans call for it"};
}

std::string columnWords(const Asked& a) {
  const Id column = a.id(1) ? a.id(1) : a.column();
  return column ? namedPiece(*a.layout.wall, column) + " (" + placeOfPiece(*a.layout.wall, column, a.style) + ")"
                : std::string("its column");
}

std::string strapWords(const Asked& a) {
  switch (a.r.rule) {
  case R::StrapEdge:
    return edgeWords(a);
  case R::StrapLean:
    return a.name(0) + ", out of plumb as read, with every nail on " + columnWords(a);
  case R::StrapLeanOpening:
    return a.name(0) + " out of " + a.against("the openings");
  case R::StrapColumn:
    return "every nail of " + a.name(0) + " on " + columnWords(a);
  case R::StrapSteel:
    return a.name(0) + " clear of " + a.against("the bars");
  case R::StrapMissing: {
    const EndWords end = endWords(a);
    return "a strap within " + a.much(endReach) + " of the " + end.end + ": " + end.mark;
  }
  default:
    return hookWords(a);
  }
}

// ---- bolts and washers ------------------------------------------------------------------------------------------

std::string countWords(const Asked& a) {
  const double least = boltsNeeded(a.layout, a.limits);
  return numberWords(least) + (least == 1 ? " bolt" : " bolts") + " or more in " + a.sill() +
         a.source(LimitKey::BoltCount);
}

// Which end of its piece of sill; both where none is named.
std::string sillEnd(const Asked& a) {
  const SillPiece* piece = a.sillPiece();
  if (!piece || !a.r.at)
    return {};
  return a.r.at->middle() < piece->box.s.middle() ? "left" : "right";
}

std::string farWords(const Asked& a) {
  const std::string end = sillEnd(a);
  const std::string which = end.empty() ? "first and last bolt" : end == "left" ? "first bolt" : "last bolt";
  return a.ofSill(which) + " at most " + a.much(a.limits[LimitKey::BoltEndFar]) + " from " +
         (end.empty() ? "its ends" : "its " + end + " end") + a.source(LimitKey::BoltEndFar);
}

std::string spacingWords(const Asked& a) {
  const Panel* panel = findIn(a.layout.wall->panels, a.id(1));
  const auto marked = panel ? markedSpacing(a.layout, *panel) : std::nullopt;
  if (marked)
    return a.ofSill("neighbouring bolts") + " at most " + a.much(*marked) + " apart under " + a.placed(1) +
           " (plans, its wall-end mark)";
  const SpacingLimit limit = spacingLimit(a.layout, a.limits, {});
  const bool tall = a.layout.limits->storeys > 2;
  return a.ofSill("neighbouring bolts") + " at most " + a.much(limit.inches) + " apart" +
         (limit.fromPlans ? " (plans)" : a.source(tall ? LimitKey::BoltSpacingTall : LimitKey::BoltSpacing));
}

std::string thirdWords(const Asked& a) {
  const SillPiece* piece = a.sillPiece();
  if (!piece)
    return a.bolts() + " in the middle third of its width";
  const double third = piece->box.d.length() / 3;
  const Interval marks = toMarks({third, 2 * third});
  return a.bolts() + " in the middle third of its width (" + a.much(marks.from) + " to " + a.much(marks.to) +
         " from its edges)" + a.source(LimitKey::BoltCount);
}

std::string sheathingWords(const Asked& a) {
  const Panel* panel = findIn(a.layout.wall->panels, a.id(1));
  const std::string strength =
      panel && panel->unitShear ? ", over " + numberWords(a.limits[LimitKey::WasherSheathingFrom]) + " plf" : "";
  return a.ofSill("washers") + " within " + a.much(a.limits[LimitKey::WasherSheathing]) +
         " of the sheathed edge under " + (a.id(1) ? a.placed(1) : std::string("a panel this strong")) + strength +
         a.source(LimitKey::WasherSheathing);
}

std::string washerWidths(const Asked& a) {
  for (const AnchorBody& anchor : a.layout.anchors)
    if (!anchor.isRod && anchor.washer)
      return " (" + a.much(anchor.washer->along) + " wide)";
  return {};
}

std::string gapWords(const Asked& a) {
  const std::string least = " at least " + a.diameters(LimitKey::BoltGap);
  return a.id(1) && a.kind(1) != PieceKind::Sill ? a.bolts() + least + " from " + a.placed(1)
                                                 : a.bolts() + least + " apart";
}

std::string boltWords(const Asked& a) {
  switch (a.r.rule) {
  case R::BoltCount:
    return countWords(a);
  case R::BoltEndFar:
    return farWords(a);
  case R::BoltEndNear:
    return a.bolts() + " from its ends at least " + a.diameters(LimitKey::BoltEndNearDiameters);
  case R::BoltSpacing:
    return spacingWords(a);
  case R::BoltThird:
    return thirdWords(a);
  case R::BoltOpening:
    return a.bolts() + " out of " + a.against("the openings");
  case R::BoltStud:
    return (a.id(1) ? a.ofSill("nuts") + " not under " : a.ofSill("bolts and washers") + " not under ") + a.obstacle();
  case R::BoltSteel:
  case R::BoltStrap:
    return a.bolts() + " clear of " + a.against("what is cast in beside them");
  case R::BoltSplice:
    return a.ofSill("washers") + " not over the splice" + (a.r.at ? " at " + a.at(a.r.at->middle()) : std::string());
  case R::BoltGap:
    return gapWords(a);
  case R::BoltHook:
    return a.ofSill("hooks of the bolts") + " inside the concrete";
  case R::WasherSheathing:
    return sheathingWords(a);
  case R::WasherSill:
    return a.ofSill("washers") + " wholly on the sill";
  case R::WasherColumn:
    return a.ofSill("washers") + " not under " + a.obstacle();
  default:
    return a.ofSill("washers") + washerWidths(a) + " side by side, none over another";
  }
}

// ---- framing, rods, bars ----------------------------------------------------------------------------------------

std::string rodWords(const Asked& a) {
  if (a.r.rule != R::RodOffset)
    return a.name(0) +
           (a.r.rule == R::RodSteel ? " clear of " + a.against("the bars") : " out of " + a.against("the openings"));
  std::string bracket;
  for (const AnchorBody& anchor : a.layout.anchors)
    if (anchor.isRod && anchor.id == a.id(0))
      bracket = ", " + a.much(anchor.rodType->bracketOffset) + " from the face of " +
                (a.id(1) ? a.placed(1) : std::string("its column"));
  return a.name(0) + " within " + a.much(a.limits[LimitKey::RodOffset]) + " of the line of its bracket" + bracket;
}

std::string barWords(const Asked& a) {
  for (const BarBody& bar : a.layout.bars)
    if (bar.id == a.id(0))
      return a.placed(0) + " covered by " + a.much(barCoverOf(a.layout, bar).formed) +
             " of concrete, against earth by " + a.much(barCoverOf(a.layout, bar).earth) + " (" +
             documentOf(rule(R::BarCover).source) + ")";
  return a.placed(0) + " covered by concrete";
}

std::string framingWords(const Asked& a) {
  switch (a.r.rule) {
  case R::ColumnSill:
    return a.placed(0) + " wholly on " + (a.id(1) ? a.placed(1) : std::string("a sill"));
  case R::ColumnOpening:
    return a.placed(0) + " out of " + a.against("the openings");
  case R::ColumnOverlap:
    return a.placed(0) + " clear of " + a.obstacle();
  case R::PanelEnds: {
    const EndWords end = endWords(a);
    return "a column within " + a.much(endReach) + " of the " + end.end;
  }
  default:
    return {};
  }
}

std::string ruleWords(const Asked& a) {
  if (!isOfPosition(a.r.rule))
    return std::string(rule(a.r.rule).meaning) + (a.id(0) ? " (" + a.placed(0) + ")" : std::string());
  if (a.r.rule <= R::StrapCapacity)
    return strapWords(a);
  if (a.r.rule <= R::WasherWasher)
    return boltWords(a);
  if (a.r.rule <= R::RodPlumb)
    return rodWords(a);
  return a.r.rule == R::BarCover ? barWords(a) : framingWords(a);
}

std::string leewayWords(const Asked& a) {
  const Column* column = findIn(a.layout.wall->columns, a.id(0));
  const double leeway = column ? column->leeway : 0;
  return leeway > 0 ? a.placed(0) + " within its leeway of " + a.much(leeway) + " either way"
                    : a.placed(0) + " where it is: its leeway is " + a.much(0);
}

std::string staysWords(const Asked& a) {
  const auto station = stationOf(*a.layout.wall, a.id(0));
  return a.name(0) + " stays where it is" + (station ? ", at " + a.at(*station) : std::string());
}

} // namespace

std::string requirementWords(const WallLayout& layout, const ResolvedLimits& limits, const Requirement& requirement,
                             LengthStyle style) {
  const Asked asked{{layout, requirement, style}, limits};
  switch (requirement.kind) {
  case Requirement::Kind::Leeway:
    return leewayWords(asked);
  case Requirement::Kind::Stays:
    return staysWords(asked);
  case Requirement::Kind::Rule:
    break;
  }
  return ruleWords(asked);
}

} // namespace sillwright
