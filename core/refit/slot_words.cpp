#include "core/refit/slot_words.h"

#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"

namespace sillwright {

namespace {

// Rounding only: where two solids touch is a FIX, and the slot ends no more than tolerance::same beyond it.
constexpr double hair = tolerance::rounding / tolerance::tapeMark;

double markUnder(double value) {
  return std::floor(value / tolerance::tapeMark + hair) * tolerance::tapeMark;
}
double markOver(double value) {
  return std::ceil(value / tolerance::tapeMark - hair) * tolerance::tapeMark;
}

std::string toOneSide(double room, const char* side, LengthStyle style) {
  return room <= 0 ? std::string("none to the ") + side : printMeasure(room, style) + " " + side;
}

constexpr const char* noneHere = "none here";

} // namespace

std::optional<Room> roomInMarks(const PieceSlots& slots) {
  if (!slots.room)
    return std::nullopt;
  const Interval marks = toMarks({slots.at - slots.room->left, slots.at + slots.room->right});
  const double at = roundTo(slots.at, tolerance::tapeMark);
  return Room{std::max(0.0, at - marks.from), std::max(0.0, marks.to - at)};
}

std::string roomWords(const PieceSlots& slots, LengthStyle style) {
  const std::optional<Room> room = roomInMarks(slots);
  if (!room)
    return noneHere;
  if (room->left <= 0 && room->right <= 0)
    return "none either way";
  return toOneSide(room->left, "left", style) + ", " + toOneSide(room->right, "right", style);
}

std::string roomShort(const PieceSlots& slots, LengthStyle style) {
  const std::optional<Room> room = roomInMarks(slots);
  return room ? printMeasure(room->left, style) + " | " + printMeasure(room->right, style) : noneHere;
}

std::optional<Interval> ownSlot(const PieceSlots& slots) {
  const auto nearest = nearestIn(slots.slots, slots.at);
  return nearest ? partAt(slots.slots, *nearest) : std::nullopt;
}

std::string slotWords(Interval slot, LengthStyle style) {
  const Interval marks = toMarks(slot);
  if (marks.empty())
    return printLength(slot.middle(), style, 64);
  const std::string from = printLength(marks.from, style);
  return marks.length() > 0 ? from + " to " + printLength(marks.to, style) : from;
}

std::string slotWords(const PieceSlots& slots, LengthStyle style) {
  std::string words;
  for (const Interval slot : slots.slots)
    if (!toMarks(slot).empty())
      words += (words.empty() ? "" : ", ") + slotWords(slot, style);
  return words.empty() ? "nowhere" : words;
}

std::string stopWords(const WallLine& wall, const Stop& stop) {
  using R = RuleId;
  const auto piece = findPiece(wall, stop.by);
  const std::string name = piece ? markOf(*piece) : std::string();
  const auto with = [&](const char* words) { return name.empty() ? std::string(words) : words + (" " + name); };
  switch (stop.rule) {
  case R::StrapEdge: return "end of the concrete";
  case R::StrapLean: return with("leans off");
  case R::StrapColumn: return with("nails off");
  case R::StrapLeanOpening: case R::BoltOpening: case R::RodOpening: return with("opening");
  case R::StrapSteel:
  case R::BoltSteel:
  case R::RodSteel:
    return piece ? with(std::string(tradeName(kindOf(*piece))).c_str()) : std::string("bar");
  case R::StrapDepth: return "bottom of the concrete";
  case R::StrapBack: return "inside face";
  case R::StrapMissing: return with("end of panel");
  case R::BoltCount: return "bolts of the sill";
  case R::BoltEndFar: return "far from the sill end";
  case R::BoltEndNear: return "near the sill end";
  case R::BoltSpacing: return with("spacing to");
  case R::BoltThird: return "middle third";
  case R::BoltStud: return name.empty() ? std::string("stud") : with("column");
  case R::BoltStrap: return piece && kindOf(*piece) == PieceKind::Strap ? with("strap") : with("anchor");
  case R::BoltSplice: return "splice";
  case R::BoltGap: return with("gap to");
  case R::BoltHook: return "hook";
  case R::WasherSheathing: return "sheathed edge";
  case R::WasherSill: return "washer off the sill";
  case R::WasherColumn: return with("washer at");
  case R::WasherWasher: return with("washer of");
  case R::RodOffset: return "bracket";
  default: return {};
  }
}

Interval toMarks(Interval slot) {
  return {markOver(slot.from), markUnder(slot.to)};
}

} // namespace sillwright
