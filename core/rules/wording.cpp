#include "core/rules/wording.h"

#include <cmath>

#include "core/model/lookup.h"
#include "core/rules/limit_words.h"
#include "core/rules/limits.h"
#include "core/rules/rule_book.h"
#include "core/rules/word_parts.h"

namespace sillwright {

namespace {

using R = RuleId;

// Where the measure falls short, in words.
std::string placeWords(const Job& job, const Finding& f) {
  const std::string other = nameOf(job, f, 1);
  switch (f.rule) {
  case R::StrapEdge:
    return "plate to " + edgeWords(f);
  case R::StrapJoint:
    return f.variant == 1 ? "joint line below the pour line" : "joint line above the pour line";
  case R::StrapPair:
    return "joint not level with " + other;
  case R::StrapLean:
  case R::StrapColumn:
    return other.empty() ? "no column behind it" : "nails past " + other;
  case R::StrapNailEdge:
    return "nails near a ply edge of " + other;
  case R::StrapSeam:
    return "nail row on the seam of " + other;
  case R::StrapSteel:
  case R::BoltSteel:
    return "beside bar " + other;
  case R::BoltStrap:
    return "beside " + other;
  case R::StrapDepth:
    return "hook to the bottom of the concrete";
  case R::StrapBack:
    return "hook to the inside face";
  case R::StrapHang:
    return "hanger on the form board";
  case R::StrapMissing:
  case R::PanelEnds:
    return f.variant == 0 ? "left end of the panel" : "right end of the panel";
  case R::StrapNailDepth:
    return "nails in " + other;
  case R::PanelSlender:
    return "middle of the panel";
  case R::BoltCount:
    return "piece of sill";
  case R::BoltEndFar:
  case R::BoltEndNear:
    return f.variant == 0 ? "bolt to the left end of its sill piece" : "bolt to the right end of its sill piece";
  case R::BoltSpacing:
    return "between " + other + " and " + nameOf(job, f, 0);
  case R::BoltThird:
    return "bolt across the sill";
  case R::BoltEmbed:
    return "bolt in the concrete";
  case R::BoltThread:
    return "thread above the sill";
  case R::BoltRunOut:
    return "thread under the nut";
  case R::BoltGap:
    return "beside " + other;
  case R::BoltCover:
    return "bolt to " + faceWords(f);
  case R::BoltHook:
    return "hook of the bolt";
  case R::BoltMatch:
    return "top of the bolt";
  case R::BoltStud:
    return "under lumber";
  case R::BoltSplice:
    return "splice of the sill";
  case R::WasherSheathing:
    return f.variant == 0 ? "washer to the sheathed outside edge" : "washer to the sheathed inside edge";
  case R::WasherSill:
    return f.variant == 4 ? "beyond the sill" : "edge of the sill";
  case R::WasherColumn:
    return "washer at " + other;
  case R::WasherWasher:
  case R::ColumnOverlap:
    return "with " + other;
  case R::ColumnSill:
    return "foot of the column";
  case R::BarCover:
    return "bar to " + faceWords(f);
  case R::PourForm:
    return "form boards";
  case R::StrapPlumb:
  case R::RodPlumb:
    return "out of plumb as read";
  case R::StrapType:
    return f.variant == 0 ? "type of the strap" : "column behind the strap";
  case R::StrapCapacity:
    return "strap at its mark";
  case R::BoltShear:
    return "bolts under the panel";
  case R::WasherSize:
    return "plate washer";
  case R::WasherSlot:
    return f.variant == 3 ? "washer slid on its bolt" : "slot of the washer";
  case R::RodOffset:
    return "rod to the line of its bracket";
  case R::RodEdge:
  case R::RodCover:
    return "rod to " + faceWords(f);
  case R::RodEmbed:
    return "rod in the concrete";
  case R::RodThread:
    return "thread above the sill";
  case R::RodSteel:
    return "beside bar " + other;
  case R::ColumnPlan:
    return "column at the panel end";
  case R::PanelLever:
    return "between the hold-downs of the panel";
  case R::PanelTie:
    return f.variant == 0 ? "left end of the panel" : "right end of the panel";
  case R::SillCorner:
    return f.variant % 2 == 0 ? "corner on the left" : "corner on the right";
  case R::SillConcrete:
    return f.variant < 4 ? "sill past the concrete" : "sill over the pour line";
  case R::SillMark:
  case R::SillPiece:
    return "piece of sill";
  case R::BarClear:
    return "beside bar " + other;
  case R::BarTop:
    return "top of the concrete";
  case R::BarOpening:
    return f.variant % 2 == 0 ? "left of the opening" : "right of the opening";
  case R::PourShot:
    return "top of the concrete at the shot";
  case R::PourLevel:
    return "between the two shots";
  case R::FormSquare:
    return "diagonal of the forms";
  case R::FormThickness:
    return "between the form boards";
  default:
    return "in opening " + other;
  }
}

double stationOfRegion(const Finding& f) {
  if (f.rule == R::StrapMissing || f.rule == R::PanelEnds || f.rule == R::PanelTie)
    return f.variant == 0 ? f.region.s.from : f.region.s.to;
  return f.region.s.middle();
}

const LimitRow* limitRow(const Job& job, const Finding& f) {
  const LimitRow* best = nullptr;
  for (const LimitRow& row : limitTable()) {
    if (row.rule != f.rule || row.level != f.ruleLevel || row.wanted == Wanted::None)
      continue;
    if (!best || (row.key == LimitKey::BoltSpacingTall && job.limits->storeys > 2))
      best = &row;
  }
  return best;
}

std::string sourceText(const Source& source) {
  if (source.document.empty())
    return source.status == Status::Type ? "hardware type" : std::string(words(source.status));
  const std::string document = documentOf(source);
  return source.status == Status::Published ? document : document + " (" + std::string(words(source.status)) + ")";
}

// A piece that stands in one place is there; of one that runs along the wall only the part found counts.
std::optional<double> ownStation(const WallLine& wall, Id id) {
  const auto piece = findPiece(wall, id);
  if (!piece)
    return std::nullopt;
  switch (kindOf(*piece)) {
  case PieceKind::Column:
  case PieceKind::Strap:
  case PieceKind::Bolt:
  case PieceKind::Rod:
    return stationOf(wall, id);
  case PieceKind::Bar:
    return std::get<Bar>(*piece).run == BarRun::Upright ? stationOf(wall, id) : std::nullopt;
  default:
    return std::nullopt;
  }
}

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

} // namespace

std::string_view word(Level level, Language language) {
  const bool spanish = language == Language::Spanish;
  switch (level) {
  case Level::Fix:
    return spanish ? "CORREGIR" : "FIX";
  case Level::Ask:
    return spanish ? "CONSULTAR" : "ASK";
  case Level::Watch:
    return spanish ? "VIGILAR" : "WATCH";
  }
  return "";
}

std::string markedLabel(const Job& job, const Finding& f) {
  const std::string mark = f.pieces.empty() ? std::string() : markOf(job, {f.wall, f.pieces.front()});
  return mark.empty() ? label(job, f) : mark + " · " + label(job, f);
}

std::string whatFallsShort(const Job& job, const Finding& f) { return placeWords(job, f); }

std::string whereabouts(const Job& job, const Finding& f) {
  const WallLine* wall = job.walls.find(f.wall);
  const auto own = wall && !f.pieces.empty() ? ownStation(*wall, f.pieces.front()) : std::nullopt;
  const double station = own ? *own : stationOfRegion(f);
  return placeWords(job, f) + ", at " + printLength(station, job.units);
}

std::string correctionShort(const Job& job, const Finding& f) {
  return f.correction ? wayShort(job, f, *f.correction) : std::string();
}

std::string wayShort(const Job& job, const Finding& f, const Correction& c) {
  const bool more = c.by > 0;
  switch (c.field) {
  case Correction::Field::Station:
    return (more ? "right " : "left ") + correctionAmount(job, c);
  case Correction::Field::Depth:
    return (more ? "in " : "out ") + correctionAmount(job, c);
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
  return f.correction ? wayWords(job, f, *f.correction) : std::string();
}

std::string adviceWords(const Finding& f) {
  if (f.correction)
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

std::string sourceWords(const Job& job, const Finding& f) {
  const LimitRow* row = limitRow(job, f);
  std::string text = sourceText(row ? row->source : rule(f.rule).source);
  if (f.rule == R::BoltSpacing && f.variant == 1)
    text = words(Status::Plans);
  if (f.rule == R::BoltHook && f.variant == 0) // which way it points is the trade's, how long it is the standard's
    text = words(Status::CommonPractice);
  if (f.rule == R::BoltHook && f.variant == 3)
    text = words(Status::Geometry);
  for (const LimitOverride& change : job.limits->overrides)
    if (row && change.key == row->name)
      text.append("; changed for this job: ").append(change.reason);
  for (const RuleOverride& change : job.limits->rules)
    if (change.rule == rule(f.rule).name)
      text.append("; counts ").append(countsWords(change.counts)).append(" in this job: ").append(change.reason);
  return text;
}

} // namespace sillwright
