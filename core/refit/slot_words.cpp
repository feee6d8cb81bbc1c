#include "core/refit/slot_words.h"

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
  const double marks = markUnder(room);
  return marks <= 0 ? std::string("none to the ") + side : printMeasure(marks, style) + " " + side;
}

} // namespace

std::string roomWords(const PieceSlots& slots, LengthStyle style) {
  if (!slots.room)
    return "not where it is";
  if (markUnder(slots.room->left) <= 0 && markUnder(slots.room->right) <= 0)
    return "none either way";
  return toOneSide(slots.room->left, "left", style) + ", " + toOneSide(slots.room->right, "right", style);
}

std::string roomShort(const PieceSlots& slots, LengthStyle style) {
  if (!slots.room)
    return "-";
  return printMeasure(markUnder(slots.room->left), style) + " | " + printMeasure(markUnder(slots.room->right), style);
}

std::string slotWords(const PieceSlots& slots, LengthStyle style) {
  std::string words;
  for (const Interval slot : slots.slots) {
    const Interval marks = toMarks(slot);
    if (marks.empty())
      continue;
    words += words.empty() ? "" : ", ";
    words += printLength(marks.from, style);
    if (marks.length() > 0)
      words += " to " + printLength(marks.to, style);
  }
  return words.empty() ? "nowhere" : words;
}

Interval toMarks(Interval slot) {
  return {markOver(slot.from), markUnder(slot.to)};
}

} // namespace sillwright
