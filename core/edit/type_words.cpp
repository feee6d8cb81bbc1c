#include "core/edit/type_words.h"

#include <charconv>
#include <cmath>

#include "core/base/tolerance.h"

namespace sillwright {
namespace {

constexpr double farthest = 1200; // in, as in job files

std::string_view trimmed(std::string_view text) {
  constexpr std::string_view blanks = " \t\r\n";
  const auto from = text.find_first_not_of(blanks);
  return from == std::string_view::npos ? std::string_view{}
                                        : text.substr(from, text.find_last_not_of(blanks) - from + 1);
}

// The parts between separators; an empty one at the very end is left out ("1; 2;").
std::vector<std::string_view> split(std::string_view text, std::string_view separators) {
  std::vector<std::string_view> parts;
  while (true) {
    const auto at = text.find_first_of(separators);
    const std::string_view part = trimmed(text.substr(0, at));
    if (at != std::string_view::npos || !part.empty())
      parts.push_back(part);
    if (at == std::string_view::npos)
      return parts;
    text.remove_prefix(at + 1);
  }
}

// Takes a word off the end; false where it does not stand there by itself.
bool takeWord(std::string_view& text, std::string_view word) {
  if (!text.ends_with(word))
    return false;
  const std::string_view before = text.substr(0, text.size() - word.size());
  if (!before.empty() && before.back() >= 'a' && before.back() <= 'z')
    return false;
  text = trimmed(before);
  return true;
}

Result<double> lengthIn(std::string_view text, LengthStyle style, const std::string& where) {
  const Result<double> read = parseLength(text, style);
  if (!read)
    return Problem{"", where + ": " + read.problem().message};
  if (std::abs(*read) > farthest)
    return Problem{"", where + ": is too far out"};
  return *read;
}

Result<ProfilePoint> parsePoint(std::string_view typed, LengthStyle style, const std::string& where) {
  const std::vector<std::string_view> parts = split(typed, ",");
  if (parts.size() != 2)
    return Problem{"", where + ": expected how far in, a comma, and how far down, such as 1/2, 2 down"};
  std::string_view down = parts[1];
  takeWord(down, "down");
  const Result<double> in = lengthIn(parts[0], style, where + ", in");
  if (!in)
    return in.problem();
  const Result<double> deep = lengthIn(down, style, where + ", down");
  if (!deep)
    return deep.problem();
  if (*deep < 0)
    return Problem{"", where + ": is above the joint line; depths are said down from it, without a sign"};
  return ProfilePoint{*in, *deep == 0 ? 0 : -*deep};
}

Result<double> parseNailRow(std::string_view typed, LengthStyle style, const std::string& where) {
  if (typed == "middle")
    return 0.0;
  const bool left = takeWord(typed, "left");
  const bool right = !left && takeWord(typed, "right");
  const Result<double> away = lengthIn(typed, style, where);
  if (!away)
    return away;
  if ((left || right) && *away < 0)
    return Problem{"", where + ": has a sign and a side; one of them will do"};
  return left ? -*away : *away;
}

} // namespace

std::string exactMeasure(double inches, LengthStyle style) {
  constexpr int finest = 64;
  std::string rounded = printMeasure(inches, style, finest);
  const Result<double> read = parseLength(rounded, style);
  if (read && std::abs(*read - inches) <= tolerance::same)
    return rounded;
  return style == LengthStyle::Millimetres ? plainDigits(inches * 25.4) + " mm" : plainDigits(inches) + "\"";
}

std::string bareMeasure(double inches, LengthStyle style) {
  std::string written = exactMeasure(inches, style);
  for (const std::string_view unit : {"\"", " mm"})
    if (written.ends_with(unit))
      written.erase(written.size() - unit.size());
  return written;
}

std::string printProfile(const std::vector<ProfilePoint>& profile, LengthStyle style) {
  std::string written;
  for (const ProfilePoint& point : profile) {
    if (!written.empty())
      written += "; ";
    written += bareMeasure(point.d, style) + ", " + bareMeasure(point.z == 0 ? 0 : -point.z, style);
    if (point.z < 0)
      written += " down";
  }
  return written;
}

Result<std::vector<ProfilePoint>> parseProfile(std::string_view typed, LengthStyle style) {
  std::vector<ProfilePoint> profile;
  for (const std::string_view part : split(typed, ";\n")) {
    const Result<ProfilePoint> point = parsePoint(part, style, "point " + std::to_string(profile.size() + 1));
    if (!point)
      return point.problem();
    profile.push_back(*point);
  }
  return profile;
}

std::string printNailRows(const std::vector<double>& rows, LengthStyle style) {
  std::string written;
  for (const double row : rows) {
    if (!written.empty())
      written += ", ";
    written += row == 0 ? "middle" : bareMeasure(std::abs(row), style) + (row < 0 ? " left" : " right");
  }
  return written;
}

Result<std::vector<double>> parseNailRows(std::string_view typed, LengthStyle style) {
  std::vector<double> rows;
  for (const std::string_view part : split(typed, ",;\n")) {
    const Result<double> row = parseNailRow(part, style, "row " + std::to_string(rows.size() + 1));
    if (!row)
      return row.problem();
    rows.push_back(*row);
  }
  return rows;
}

std::string printSlot(const std::optional<WasherSlot>& slot, LengthStyle style) {
  if (!slot)
    return {};
  return bareMeasure(slot->width, style) + " x " + bareMeasure(slot->length, style) +
         (slot->direction == SlotDirection::Along ? " along" : " across");
}

Result<std::optional<WasherSlot>> parseSlot(std::string_view typed, LengthStyle style) {
  typed = trimmed(typed);
  if (typed.empty() || typed == "none")
    return std::optional<WasherSlot>{};
  WasherSlot slot;
  if (takeWord(typed, "along"))
    slot.direction = SlotDirection::Along;
  else
    takeWord(typed, "across");
  const auto at = typed.find('x');
  if (at == std::string_view::npos)
    return Problem{"", "expected width x length, such as 11/16 x 1 3/4 across"};
  const Result<double> width = lengthIn(typed.substr(0, at), style, "width");
  if (!width)
    return width.problem();
  const Result<double> length = lengthIn(typed.substr(at + 1), style, "length");
  if (!length)
    return length.problem();
  constexpr double least = 1.0 / 1024;
  if (*width < least || *length < least)
    return Problem{"", "both numbers must be more than nothing"};
  slot.width = *width;
  slot.length = *length;
  return std::optional(slot);
}

std::string printColumns(const std::vector<MakeUp>& columns) {
  std::string written;
  for (const MakeUp& column : columns)
    written += (written.empty() ? "" : ", ") + print(column);
  return written.empty() ? "any" : written;
}

Result<std::vector<MakeUp>> parseColumns(std::string_view typed) {
  std::vector<MakeUp> columns;
  if (trimmed(typed) == "any")
    return columns;
  for (const std::string_view part : split(typed, ",;\n")) {
    const auto read = parseMakeUp(part);
    if (!read || !dressed(read->nominal.thickness) || !dressed(read->nominal.width))
      return Problem{"", "column " + std::to_string(columns.size() + 1) + ": expected a make-up such as 2-2x6 or 4x6"};
    columns.push_back(*read);
  }
  return columns;
}

} // namespace sillwright
