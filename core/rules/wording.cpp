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
  default:
    return "in opening " + other;
  }
}

double stationOfRegion(const Finding& f) {
  if (f.rule == R::StrapMissing || f.rule == R::PanelEnds)
    return f.variant == 0 ? f.region.s.from : f.region.s.to;
  return f.region.s.middle();
}

const LimitRow* limitRow(const Job& job, const Finding& f) {
  const LimitRow* best = nullptr;
  for (const LimitRow& row : limitTable()) {
    if (row.rule != f.rule || row.level != f.level || row.wanted == Wanted::None)
      continue;
    if (!best || (row.key == LimitKey::BoltSpacingTall && job.limits->storeys > 2))
      best = &row;
  }
  return best;
}

std::string sourceText(const Source& source) {
  if (source.document.empty())
    return source.status == Status::Type ? "hardware type" : std::string(words(source.status));
  const std::string document(source.document);
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
  if (!f.correction)
    return {};
  const Correction& c = *f.correction;
  const bool more = c.by > 0;
  switch (c.field) {
  case Correction::Field::Station:
    return (more ? "right " : "left ") + correctionAmount(job, c);
  case Correction::Field::Depth:
    return (more ? "in " : "out ") + correctionAmount(job, c);
  case Correction::Field::Height:
  case Correction::Field::Projection:
    return (more ? "up " : "down ") + correctionAmount(job, c);
  case Correction::Field::Hook:
    return "hook inward";
  }
  return {};
}

std::string correctionWords(const Job& job, const Finding& f) {
  if (!f.correction)
    return {};
  if (f.correction->field == Correction::Field::Hook)
    return "turn its hook inward";
  return (f.correction->piece == f.pieces.front() ? "move it " : "move the other ") + correctionShort(job, f);
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
      text.append("; ").append(countsWords(change.counts)).append(" in this job: ").append(change.reason);
  return text;
}

} // namespace sillwright
