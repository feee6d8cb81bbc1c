#include "core/rules/wording.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "core/model/lookup.h"
#include "core/rules/limits.h"
#include "core/rules/rule_book.h"

namespace sillwright {

namespace {

using R = RuleId;

std::string nameOf(const Job& job, const Finding& f, std::size_t i) {
  if (i >= f.pieces.size())
    return {};
  const std::string mark = markOf(job, {f.wall, f.pieces[i]});
  return mark.empty() ? std::string("#").append(std::to_string(f.pieces[i].value)) : mark;
}

std::string number(double value) {
  std::array<char, 32> text{};
  const double rounded = std::round(value * 1e9) / 1e9 + 0.0;
  const auto end = std::to_chars(text.data(), text.data() + text.size(), rounded).ptr;
  return {text.data(), end};
}

// Finer and finer until the measure no longer reads like the limit it misses.
std::string measureWords(const Job& job, double value, double limit) {
  for (const int denominator : {16, 32, 64}) {
    const std::string text = printMeasure(value, job.units, denominator);
    if (text != printMeasure(limit, job.units, denominator))
      return text;
  }
  const bool metric = job.units == LengthStyle::Millimetres;
  return number(metric ? value * 25.4 : value) + (metric ? " mm" : "\"");
}

std::string length(const Job& job, double value) {
  return printMeasure(value, job.units);
}

std::string comparison(const Job& job, const Finding& f) {
  if (f.unit == Unit::Count)
    return number(f.measured) + (f.measured < f.limit ? " < " : " > ") + number(f.limit);
  return measureWords(job, f.measured, f.limit) + (f.measured < f.limit ? " < " : " > ") + length(job, f.limit);
}

std::string barLabel(const Job& job, const Finding& f, const std::string& kind) {
  const std::string other = kind + " " + nameOf(job, f, 1);
  return f.level == Level::Fix ? "TOUCHES " + other : other + " · " + comparison(job, f);
}

std::string by(const Job& job, const Finding& f, const std::string& fact) {
  return fact + " BY " + measureWords(job, std::abs(f.measured), 0);
}

std::string obstacleKind(const Job& job, const Finding& f) {
  const auto piece = f.pieces.size() > 1 ? findPiece(job, {f.wall, f.pieces[1]}) : std::nullopt;
  return piece && kindOf(*piece) == PieceKind::Rod ? "ROD" : "STRAP";
}

std::string nails(const Finding& f) {
  return number(f.measured) + (f.measured == 1 ? " NAIL " : " NAILS ");
}

std::string nailLabel(const Job& job, const Finding& f) {
  return f.rule == R::StrapSeam ? nails(f) + "ON THE SEAM" : nails(f) + "OFF " + nameOf(job, f, 1);
}

std::string overlapLabel(const Job& job, const Finding& f) {
  switch (f.rule) {
  case R::BoltStud:
    return by(job, f, f.variant == 1 ? std::string("UNDER ") + nameOf(job, f, 1) : "UNDER A STUD");
  case R::WasherColumn:
    return f.level == Level::Fix ? by(job, f, std::string("UNDER ") + nameOf(job, f, 1))
                                 : nameOf(job, f, 1) + " · " + comparison(job, f);
  case R::WasherWasher:
    return by(job, f, std::string("ON WASHER OF ") + nameOf(job, f, 1));
  case R::ColumnOverlap:
    return by(job, f, std::string("OVERLAPS ") + nameOf(job, f, 1));
  case R::BoltSplice:
    return "WASHER ON THE SPLICE";
  case R::WasherSill:
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
  case R::WasherSheathing:
    return "WASHER";
  case R::BarCover:
    return "COVER";
  case R::PourForm:
    return "FORM";
  default:
    return "";
  }
}

bool isOverlap(RuleId rule) {
  constexpr std::array rules{R::BoltStud,   R::WasherColumn, R::WasherWasher,  R::ColumnOverlap,    R::BoltSplice,
                             R::WasherSill, R::ColumnSill,   R::ColumnOpening, R::StrapLeanOpening, R::BoltOpening};
  return std::find(rules.begin(), rules.end(), rule) != rules.end();
}

std::string escaped(std::string_view text) {
  constexpr std::string_view digits = "0123456789abcdef";
  std::string out = "\"";
  for (const char c : text) {
    const auto code = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\')
      out += std::string("\\") + c;
    else if (code < 0x20)
      out += std::string("\\u00") + digits[code >> 4] + digits[code & 15];
    else
      out += c;
  }
  return out + "\"";
}

// Where the measure falls short, in words.
std::string placeWords(const Job& job, const Finding& f) {
  const std::string other = nameOf(job, f, 1);
  switch (f.rule) {
  case R::StrapEdge:
    return "plate to the edge of the concrete";
  case R::StrapJoint:
    return "joint line off the pour line";
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
    return f.variant == 0 ? "left end of the panel" : "right end of the panel";
  case R::BoltCount:
    return "piece of sill";
  case R::BoltEndFar:
  case R::BoltEndNear:
    return "bolt to the end of its sill piece";
  case R::BoltSpacing:
    return "between " + other + " and " + nameOf(job, f, 0);
  case R::BoltThird:
    return "bolt across the sill";
  case R::BoltEmbed:
    return "bolt in the concrete";
  case R::BoltThread:
    return "thread above the sill";
  case R::BoltStud:
    return "under lumber";
  case R::BoltSplice:
    return "splice of the sill";
  case R::WasherSheathing:
    return "washer to the sheathed edge";
  case R::WasherSill:
    return "edge of the sill";
  case R::WasherColumn:
    return "washer at " + other;
  case R::WasherWasher:
  case R::ColumnOverlap:
    return "with " + other;
  case R::ColumnSill:
    return "foot of the column";
  case R::BarCover:
    return "bar to the face of the concrete";
  case R::PourForm:
    return "form boards";
  default:
    return "in opening " + other;
  }
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

std::string correctionAmount(const Job& job, const Correction& c) {
  return length(job, std::abs(c.by));
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

std::string label(const Job& job, const Finding& f) {
  if (isOverlap(f.rule))
    return overlapLabel(job, f);
  switch (f.rule) {
  case R::StrapColumn:
  case R::StrapSeam:
    return nailLabel(job, f);
  case R::StrapSteel:
  case R::BoltSteel:
    return barLabel(job, f, "BAR");
  case R::BoltStrap:
    return barLabel(job, f, obstacleKind(job, f));
  case R::StrapMissing:
    return f.variant == 0 ? "NO STRAP AT THE LEFT END" : "NO STRAP AT THE RIGHT END";
  case R::StrapDepth:
  case R::StrapBack:
    if (f.level == Level::Fix)
      return by(job, f, f.rule == R::StrapDepth ? "THROUGH THE BOTTOM" : "THROUGH THE BACK");
    break;
  case R::BoltThread:
    if (f.variant == 1)
      return std::string("SPARE ") + comparison(job, f);
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

std::string markedLabel(const Job& job, const Finding& f) {
  const std::string mark = f.pieces.empty() ? std::string() : markOf(job, {f.wall, f.pieces.front()});
  return mark.empty() ? label(job, f) : mark + " · " + label(job, f);
}

std::string message(const Job& job, const Finding& f) {
  const RuleRow& row = rule(f.rule);
  std::string text(row.meaning);
  text.append(" ").append(nameOf(job, f, 0));
  if (f.pieces.size() > 1)
    text.append(" and ").append(nameOf(job, f, 1));
  if (isOverlap(f.rule) && f.level == Level::Fix)
    return text.append(": by ").append(measureWords(job, std::abs(f.measured), 0)).append(".");
  text.append(": ").append(row.measure).append(" ");
  const bool count = f.unit == Unit::Count;
  text += count ? number(f.measured) : measureWords(job, f.measured, f.limit);
  text += f.wanted == Wanted::AtMost ? ", at most " : ", at least ";
  return text + (count ? number(f.limit) : length(job, f.limit)) + ".";
}

std::string whereabouts(const Job& job, const Finding& f) {
  const WallLine* wall = job.walls.find(f.wall);
  const auto own = wall && !f.pieces.empty() ? stationOf(*wall, f.pieces.front()) : std::nullopt;
  const double station = own ? *own : f.region.s.middle();
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

std::string sourceWords(const Job& job, const Finding& f) {
  const LimitRow* row = limitRow(job, f);
  std::string text = sourceText(row ? row->source : rule(f.rule).source);
  if (f.rule == R::BoltSpacing && f.variant == 1)
    text = words(Status::Plans);
  for (const LimitOverride& change : job.limits->overrides)
    if (row && change.key == row->name)
      text.append("; changed for this job: ").append(change.reason);
  return text;
}

std::string json(const Job& job, const Finding& f) {
  std::string pieces;
  for (std::size_t i = 0; i < f.pieces.size(); ++i)
    pieces.append(i ? ", " : "").append(escaped(nameOf(job, f, i)));
  const Point3 at = middleOf(f.region);
  const std::string unit = f.unit == Unit::Inch ? "in" : f.unit == Unit::Count ? "count" : "ratio";
  return std::string("{\"rule\": ") + escaped(rule(f.rule).name) + ", \"level\": " + escaped(word(f.level)) +
         ", \"wall\": " + escaped(markOf(job, {f.wall, {}})) + ", \"pieces\": [" + pieces +
         "], \"measured\": " + number(f.measured) + ", \"limit\": " + number(f.limit) + ", \"unit\": \"" + unit +
         "\", \"label\": " + escaped(label(job, f)) + ", \"message\": " + escaped(message(job, f)) +
         ", \"source\": " + escaped(sourceWords(job, f)) + ", \"at\": {\"s\": " + number(at.s) +
         ", \"d\": " + number(at.d) + ", \"z\": " + number(at.z) + "}}";
}

} // namespace sillwright
