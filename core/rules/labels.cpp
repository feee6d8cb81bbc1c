// The short words of a flag: one measure against its limit, or the plain fact.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/model/lookup.h"
#include "core/rules/word_parts.h"
#include "core/rules/wording.h"

namespace sillwright {

namespace {

using R = RuleId;

std::string comparison(const Job& job, const Finding& f) {
  if (f.unit == Unit::Ratio)
    return ratioWords(f.measured, f.limit) + " > " + numberWords(f.limit);
  if (f.unit == Unit::Percent)
    return numberWords(std::round(f.measured * 10) / 10) + " % > " + numberWords(f.limit) + " %";
  if (f.unit == Unit::Pound)
    return poundWords(f.measured) + (f.measured < f.limit ? " < " : " > ") + poundWords(f.limit);
  if (f.unit == Unit::Count)
    return numberWords(f.measured) + (f.measured < f.limit ? " < " : " > ") + numberWords(f.limit);
  return measureWords(job, f.measured, f.limit) + (f.measured < f.limit ? " < " : " > ") + lengthWords(job, f.limit);
}

std::string barLabel(const Job& job, const Finding& f, const std::string& kind) {
  const std::string other = kind + " " + nameOf(job, f, 1);
  return f.ruleLevel == Level::Fix ? "TOUCHES " + other : other + " · " + comparison(job, f);
}

std::string by(const Job& job, const Finding& f, const std::string& fact) {
  return fact + " BY " + measureWords(job, std::abs(f.measured), 0);
}

std::string obstacleKind(const Job& job, const Finding& f) {
  const auto piece = f.pieces.size() > 1 ? findPiece(job, {f.wall, f.pieces[1]}) : std::nullopt;
  return piece && kindOf(*piece) == PieceKind::Rod ? "ROD" : "STRAP";
}

std::string nails(const Finding& f) {
  return numberWords(f.measured) + (f.measured == 1 ? " NAIL " : " NAILS ");
}

std::string nailLabel(const Job& job, const Finding& f) {
  if (f.rule == R::StrapColumn && f.variant == 1)
    return "NO COLUMN BEHIND IT";
  return f.rule == R::StrapSeam ? nails(f) + "ON THE SEAM" : nails(f) + "OFF " + nameOf(job, f, 1);
}

std::string overlapLabel(const Job& job, const Finding& f) {
  switch (f.rule) {
  case R::BoltStud:
    return by(job, f, f.variant == 1 ? std::string("UNDER ") + nameOf(job, f, 1) : "UNDER A STUD");
  case R::WasherColumn:
    return f.ruleLevel == Level::Fix ? by(job, f, std::string("UNDER ") + nameOf(job, f, 1))
                                     : nameOf(job, f, 1) + " · " + comparison(job, f);
  case R::WasherWasher:
    return by(job, f, std::string("ON WASHER OF ") + nameOf(job, f, 1));
  case R::ColumnOverlap:
    return by(job, f, std::string("OVERLAPS ") + nameOf(job, f, 1));
  case R::BoltSplice:
    return "WASHER ON THE SPLICE";
  case R::WasherSill:
    if (f.variant == 4)
      return "NO SILL ON IT";
    return by(job, f, "WASHER OFF THE SILL");
  case R::ColumnSill:
    return by(job, f, f.variant == 1 ? "OVER A SPLICE" : "OFF THE SILL");
  default:
    return by(job, f, "IN THE OPENING");
  }
}

std::string measureName(RuleId rule) {
  switch (rule) {
  case R::StrapEdge:
    return "EDGE";
  case R::StrapJoint:
    return "JOINT";
  case R::StrapPair:
    return "PAIR";
  case R::StrapLean:
    return "LEAN";
  case R::StrapNailEdge:
    return "NAIL EDGE";
  case R::StrapNailDepth:
    return "NAIL DEPTH";
  case R::PanelSlender:
    return "HIGH BY LONG";
  case R::StrapDepth:
    return "BOTTOM";
  case R::StrapBack:
    return "BACK";
  case R::StrapHang:
    return "HANG";
  case R::BoltCount:
    return "BOLTS";
  case R::BoltEndFar:
  case R::BoltEndNear:
    return "END";
  case R::BoltSpacing:
    return "SPACING";
  case R::BoltThird:
    return "THIRD";
  case R::BoltEmbed:
    return "EMBED";
  case R::BoltThread:
    return "THREAD";
  case R::BoltGap:
    return "GAP";
  case R::BoltCover:
    return "COVER";
  case R::BoltHook:
    return "HOOK";
  case R::BoltMatch:
    return "MATCH";
  case R::WasherSheathing:
    return "WASHER";
  case R::BarCover:
    return "COVER";
  case R::PourForm:
    return "FORM";
  case R::StrapPlumb:
  case R::RodPlumb:
    return "PLUMB";
  case R::StrapCapacity:
    return "CAPACITY";
  case R::BoltShear:
    return "BOLT SHEAR";
  case R::WasherSize:
    return "WASHER";
  case R::WasherSlot:
    return "SLOT";
  case R::RodOffset:
    return "OFFSET";
  case R::RodEdge:
    return "EDGE";
  case R::RodEmbed:
    return "EMBED";
  case R::RodThread:
    return "THREAD";
  case R::RodCover:
    return "COVER";
  case R::PanelLever:
    return "TIE GROWS";
  case R::PanelTie:
    return "TIE";
  case R::BarOpening:
    return "TO BAR";
  case R::PourShot:
    return "SHOT";
  case R::PourLevel:
    return "LEVEL";
  case R::FormSquare:
    return "SQUARE";
  case R::FormThickness:
    return "FORM WIDTH";
  default:
    return "";
  }
}

bool isOverlap(RuleId rule) {
  constexpr std::array rules{R::BoltStud,         R::WasherColumn, R::WasherWasher, R::ColumnOverlap,
                             R::BoltSplice,       R::WasherSill,   R::ColumnSill,   R::ColumnOpening,
                             R::StrapLeanOpening, R::BoltOpening,  R::RodOpening};
  return std::find(rules.begin(), rules.end(), rule) != rules.end();
}

} // namespace

std::string label(const Job& job, const Finding& f) {
  if (isOverlap(f.rule))
    return overlapLabel(job, f);
  switch (f.rule) {
  case R::StrapColumn:
  case R::StrapSeam:
    return nailLabel(job, f);
  case R::StrapSteel:
  case R::BoltSteel:
  case R::RodSteel:
    return barLabel(job, f, "BAR");
  case R::BarClear:
    return nameOf(job, f, 1) + " · " + comparison(job, f);
  case R::StrapType:
    return f.variant == 0 ? "NOT THE TYPE OF ITS MARK" : std::string("NOT FOR ") + nameOf(job, f, 1);
  case R::ColumnPlan:
    return "NOT AS ITS MARK";
  case R::SillMark:
    return "NOT THE SIZE OF ITS MARK";
  case R::SillCorner:
    return by(job, f, f.variant < 2 ? "CORNER OVERLAPS" : "CORNER OPEN");
  case R::SillConcrete:
    return by(job, f, f.variant < 4 ? "SILL OFF THE CONCRETE" : "SILL OFF THE POUR LINE");
  case R::SillPiece:
    return std::string("PIECE ") + printLength(f.measured, job.units) + " > " + printLength(f.limit, job.units);
  case R::BarTop:
    return by(job, f, "NO TOP BAR");
  case R::BoltStrap:
    return barLabel(job, f, obstacleKind(job, f));
  case R::PanelEnds:
    return f.variant == 0 ? "NO COLUMN AT THE LEFT END" : "NO COLUMN AT THE RIGHT END";
  case R::StrapMissing:
    return f.variant == 0 ? "NO STRAP AT THE LEFT END" : "NO STRAP AT THE RIGHT END";
  case R::StrapDepth:
  case R::StrapBack:
    if (f.ruleLevel == Level::Fix)
      return by(job, f, f.rule == R::StrapDepth ? "THROUGH THE BOTTOM" : "THROUGH THE BACK");
    break;
  case R::BoltThread:
    if (f.variant == 1)
      return std::string("SPARE ") + comparison(job, f);
    break;
  case R::RodThread:
    if (f.variant == 1)
      return std::string("SPARE ") + comparison(job, f);
    break;
  case R::WasherSize:
    if (f.variant == 0)
      return "NO PLATE WASHER";
    if (f.variant == 2)
      return "WASHER " + plateWords(job, f.measured) + " < " + plateWords(job, f.limit);
    break;
  case R::WasherSlot:
    if (f.variant == 2)
      return "NO CUT WASHER ON THE SLOT";
    if (f.variant == 3)
      return std::string("SLID ") + comparison(job, f);
    break;
  case R::BarOpening:
    if (f.variant >= 2)
      return f.variant == 2 ? "NO BAR ON ITS LEFT" : "NO BAR ON ITS RIGHT";
    break;
  case R::BoltRunOut:
    return by(job, f, "NO THREAD UNDER THE NUT");
  case R::BoltGap:
    return nameOf(job, f, 1) + " · " + "GAP " + comparison(job, f);
  case R::BoltHook:
    if (f.variant == 0)
      return "HOOK NOT INWARD";
    if (f.variant == 3)
      return by(job, f, "HOOK OUT OF THE CONCRETE");
    break;
  case R::BoltCount:
    if (f.variant == 1)
      return std::string("OFF MIDDLE ") + comparison(job, f);
    break;
  default:
    break;
  }
  return measureName(f.rule) + " " + comparison(job, f);
}

} // namespace sillwright
