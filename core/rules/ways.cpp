// What to do about findings, in words: the moves that cure them, and advice where no single move does.
#include <cmath>

#include "core/rules/correction.h"
#include "core/rules/word_parts.h"
#include "core/rules/wording.h"

namespace sillwright {

namespace {

using R = RuleId;

std::string correctionAmount(const Job& job, const Correction& c) {
  return measureWords(job, std::abs(c.by), 0);
}

// The washer, how far it is slid, and what goes over its slot.
std::string washerWords(const Job& job, const Finding& f, const Correction& c) {
  const WasherType* type = findWasherType(*job.types, c.type);
  std::string words = type ? type->name : std::string("another washer");
  if (c.by != 0) {
    const bool along = type && type->slot && type->slot->direction == SlotDirection::Along;
    const std::string way = along ? (c.by > 0 ? " slid right " : " slid left ") : c.by > 0 ? " slid in " : " slid out ";
    words += way + correctionAmount(job, c);
  }
  return type && type->slot && f.rule != R::WasherSlot ? words + " with a cut washer" : words;
}

// Said of a move that ends on the far side of what is in the way: the hand that makes it must know.
std::string pastWords(const Job& job, const Finding& f, const Correction& c) {
  const std::string other = nameOf(job, f, c.piece == f.pieces.front() ? 1 : 0);
  return c.past ? " past " + (other.empty() ? std::string("it") : other) : std::string();
}

} // namespace

std::string correctionShort(const Job& job, const Finding& f) {
  const auto way = firstWay(f);
  return way ? wayShort(job, f, *way) : std::string();
}

std::string wayShort(const Job& job, const Finding& f, const Correction& c) {
  const bool more = c.by > 0;
  switch (c.field) {
  case Correction::Field::Station:
    return (more ? "right " : "left ") + correctionAmount(job, c) + pastWords(job, f, c);
  case Correction::Field::Depth:
    return (more ? "in " : "out ") + correctionAmount(job, c) + pastWords(job, f, c);
  case Correction::Field::Height:
  case Correction::Field::Projection:
    return (more ? "up " : "down ") + correctionAmount(job, c);
  case Correction::Field::LeftEnd:
    return (more ? "left end right " : "left end left ") + correctionAmount(job, c);
  case Correction::Field::RightEnd:
    return (more ? "right end right " : "right end left ") + correctionAmount(job, c);
  case Correction::Field::Hook:
    return "hook inward";
  case Correction::Field::CutWasher:
    return "cut washer on it";
  case Correction::Field::Washer:
    return washerWords(job, f, c);
  }
  return {};
}

std::string wayWords(const Job& job, const Finding& f, const Correction& c) {
  switch (c.field) {
  case Correction::Field::Hook:
    return "turn its hook inward";
  case Correction::Field::CutWasher:
    return "put a cut washer on it";
  case Correction::Field::LeftEnd:
  case Correction::Field::RightEnd:
    return "move its " + wayShort(job, f, c);
  case Correction::Field::Washer:
    return (f.rule == R::WasherSlot ? "slide it back: " : "put on ") + wayShort(job, f, c);
  default:
    return (c.piece == f.pieces.front() ? "move it " : "move the other ") + wayShort(job, f, c);
  }
}

std::string correctionWords(const Job& job, const Finding& f) {
  const auto way = firstWay(f);
  return way ? wayWords(job, f, *way) : std::string();
}

std::string adviceWords(const Finding& f) {
  if (firstWay(f))
    return {};
  switch (f.rule) {
  case R::StrapMissing:
    return "hang a strap there";
  case R::WasherSill:
    return f.variant == 4 ? "a longer sill, or move it onto one" : "no move found that clears it";
  case R::PanelEnds:
    return "put a column there";
  case R::StrapPlumb:
  case R::RodPlumb:
    return f.variant == 0 ? "push the top left" : "push the top right";
  case R::StrapType:
    return f.variant == 0 ? "the strap of the mark" : "another strap, or another column";
  case R::StrapCapacity:
  case R::PanelLever:
  case R::PanelTie:
    return "ask the engineer";
  case R::BoltShear:
    return "more bolts, or ask the engineer";
  case R::WasherSize:
  case R::WasherSlot:
    return "another washer";
  case R::WasherSheathing:
    return "a larger washer";
  case R::RodEmbed:
    return "a longer rod";
  case R::ColumnPlan:
    return "the column of the mark";
  case R::SillCorner:
    return "cut or lengthen a sill";
  case R::SillConcrete:
    return "move the sill onto the concrete";
  case R::SillMark:
    return "the sill of the mark";
  case R::SillPiece:
    return "splice it";
  case R::BarTop:
  case R::BarOpening:
    return "add a bar";
  case R::PourShot:
  case R::PourLevel:
    return "set the grade marks again";
  case R::FormSquare:
  case R::FormThickness:
    return "move the forms";
  case R::PanelSlender:
    return "a longer panel";
  case R::StrapNailDepth:
    return "longer nails";
  case R::BoltCount:
    return f.variant == 1 ? "no move found that clears it" : "add a bolt to the piece";
  case R::StrapColumn:
    return f.variant == 1 ? "put a column there, or choose the strap's" : "no move found that clears it";
  case R::StrapHang:
  case R::PourForm:
    return "change the form";
  case R::StrapDepth:
  case R::StrapBack:
    return "another strap, or more concrete";
  default:
    return "no move found that clears it";
  }
}

} // namespace sillwright
