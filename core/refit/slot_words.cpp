#include "core/refit/slot_words.h"

#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"

namespace sillwright {

namespace {

// Slots that closed stretches border on end a hair early; that hair is no mark.
constexpr double hair = 8 * tolerance::same / tolerance::tapeMark;

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

Interval toMarks(Interval slot) {
  return {markOver(slot.from), markUnder(slot.to)};
}

} // namespace sillwright
