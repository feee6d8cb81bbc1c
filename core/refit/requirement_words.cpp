// Requirements in words: what is asked of what, with the numbers that it is asked in.
#include "core/refit/asked.h"
#include "core/refit/refit_words.h"
#include "core/refit/slots.h"
#include "core/rules/bar_cover.h"
#include "core/rules/rule_book.h"

namespace sillwright {

namespace {

using R = RuleId;

// ---- straps -----------------------------------------------------------------------------------------------------

std::string edgeWords(const Asked& a) {
  const StrapType* type = a.strapType();
  const ConcreteFace* face = a.face();
  return "plate of " + a.strap(0) + " at least " + a.much(type ? type->edgeMinimum : 0) +
         " (its type's minimum) from the " +
         (face ? faceName(*face) + ", at " + a.at(face->station)
               : std::string("ends, corners and steps of the concrete"));
}

std::string hookWords(const Asked& a) {
  const StrapBody* strap = a.body();
  if (a.r.rule == R::StrapDepth)
    return "hook of " + a.strap(0) + (strap ? " (" + a.much(strap->joint - strap->embeddedBox.z.from) + " deep)" : "") +
           " above the bottom of the concrete (" + a.much(-a.layout.bottom) + " below the pour line)";
  return "hook of " + a.strap(0) + (strap ? " (" + a.much(strap->embeddedBox.d.to) + " in)" : "") +
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
  const Id column = a.id(1) ? a.id(1) : a.kind(0) == PieceKind::Column ? a.id(0) : a.column();
  return column ? namedPiece(*a.layout.wall, column) + " (" + placeOfPiece(*a.layout.wall, column, a.style) + ")"
                : std::string("its column");
}

std::string strapWords(const Asked& a) {
  switch (a.r.rule) {
  case R::StrapEdge:
    return edgeWords(a);
  case R::StrapLean:
    return a.strap(0) + ", out of plumb as read, with every nail on " + columnWords(a);
  case R::StrapLeanOpening:
    return a.strap(0) + " out of " + a.against("the openings");
  case R::StrapColumn:
    return a.kind(0) == PieceKind::Column ? "every nail of a " + a.placedStrap(0)
                                          : "every nail of " + a.strap(0) + " on " + columnWords(a);
  case R::StrapSteel:
    return a.strap(0) + " clear of " + a.against("the bars");
  case R::StrapMissing: {
    const EndWords end = endWords(a);
    return "a strap within " + a.much(endReach) + " of the " + end.end + ": " + end.mark;
  }
  default:
    return hookWords(a);
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
    return boltRequirement(a);
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
