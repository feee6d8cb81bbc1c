#include "core/store/field_checker.h"

#include <charconv>
#include <chrono>
#include <cmath>

namespace sillwright {
namespace {

std::string digits(double value) {
  char buffer[32];
  return {buffer, std::to_chars(buffer, buffer + sizeof buffer, value).ptr};
}

std::string_view tradeName(Refers refers) {
  switch (refers) {
  case Refers::ToStrapType: return "a strap type of this job";
  case Refers::ToBoltType: return "a bolt type of this job";
  case Refers::ToRodType: return "a rod type of this job";
  case Refers::ToWasherType: return "a washer type of this job";
  case Refers::ToCorner: return "a corner of this job";
  case Refers::ToOwnColumn: return "a column of this wall";
  case Refers::ToOwnPiece: return "a piece of this wall";
  }
  return "";
}

bool answers(const KnownIds::Known& known, Refers refers, Id wall) {
  using Kind = KnownIds::Kind;
  switch (refers) {
  case Refers::ToStrapType: return known.kind == Kind::StrapType;
  case Refers::ToBoltType: return known.kind == Kind::BoltType;
  case Refers::ToRodType: return known.kind == Kind::RodType;
  case Refers::ToWasherType: return known.kind == Kind::WasherType;
  case Refers::ToCorner: return known.kind == Kind::Corner;
  case Refers::ToOwnColumn: return known.kind == Kind::Column && known.wall == wall;
  case Refers::ToOwnPiece: return (known.kind == Kind::Column || known.kind == Kind::OtherPiece) && known.wall == wall;
  }
  return false;
}

// The whole number that exactly `length` digits at `at` make; -1 where they are not digits.
int wholeNumber(std::string_view text, std::size_t at, std::size_t length) {
  int value = 0;
  for (const char c : text.substr(at, length)) {
    if (c < '0' || c > '9')
      return -1;
    value = value * 10 + (c - '0');
  }
  return value;
}

} // namespace

std::string outsideWords(double value, double low, double high) {
  return digits(value) + " is outside " + digits(low) + " … " + digits(high);
}

bool isDay(std::string_view date) {
  if (date.size() != 10 || date[4] != '-' || date[7] != '-')
    return false;
  const int year = wholeNumber(date, 0, 4);
  const int month = wholeNumber(date, 5, 2);
  const int day = wholeNumber(date, 8, 2);
  if (year < 0 || month < 0 || day < 0)
    return false;
  return std::chrono::year_month_day(std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                                     std::chrono::day(static_cast<unsigned>(day)))
      .ok();
}

void FieldChecker::extra(const std::string& fields) {
  if (problem_ || fields.empty())
    return;
  const auto tree = parseJson(fields);
  if (!tree || tree->nodes[0].kind != JsonKind::Object)
    fail(place_, "holds unknown fields that are not a JSON object");
}

void FieldChecker::check(const FilePlace& place, double value, Range allowed) {
  if (!std::isfinite(value))
    fail(place, "is not a finite number");
  else if (value < allowed.low || value > allowed.high)
    fail(place, outsideWords(value, allowed.low, allowed.high));
}

void FieldChecker::check(const FilePlace& place, int value, Whole allowed) {
  if (value < allowed.low || value > allowed.high)
    fail(place, outsideWords(value, allowed.low, allowed.high));
}

void FieldChecker::check(const FilePlace& place, Id value, Refers allowed) {
  const auto found = known_.ids.find(value);
  if (found == known_.ids.end() || !answers(found->second, allowed, wall_))
    fail(place, std::to_string(value.value) + " is not " + std::string(tradeName(allowed)));
}

void FieldChecker::check(const FilePlace& place, const std::string& value, Date) {
  if (!isDay(value))
    fail(place, "\"" + value + "\" is not a day written as YYYY-MM-DD");
}

void FieldChecker::check(const FilePlace& place, const std::string& value, NotEmpty) {
  if (value.empty())
    fail(place, "is empty");
  else
    check(place, value, Anything{});
}

void FieldChecker::check(const FilePlace& place, const std::string& value, KnownMark) {
  if (!known_.marks.contains(value))
    fail(place, "\"" + value + "\" is not a mark of the wall-end schedule");
}

void FieldChecker::check(const FilePlace& place, const std::string& value, Anything) {
  if (!isUtf8(value))
    fail(place, "is not UTF-8 text");
}

void FieldChecker::check(const FilePlace& place, Nominal value, Anything) {
  if (!dressed(value.thickness) || !dressed(value.width))
    fail(place, "\"" + print(value) + "\" is not a size of lumber such as \"3x6\"");
}

void FieldChecker::check(const FilePlace& place, const MakeUp& value, Anything) {
  check(place, value.nominal, Anything{});
  if (!problem_ && (value.plies < 1 || value.plies > 9))
    fail(place, outsideWords(value.plies, 1, 9) + " plies");
}

} // namespace sillwright
