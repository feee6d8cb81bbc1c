#include <algorithm>
#include <array>
#include <cmath>
#include <span>

#include "core/base/length.h"
#include "core/base/length_tokens.h"

namespace sillwright {
namespace {

using Kind = LengthToken::Kind;

constexpr double longest = 1'000'000;       // in
constexpr double millimetresPerInch = 25.4; // exact by definition of the inch

Problem expected(const LengthToken& where, const std::string& what) {
  return {"character " + std::to_string(where.character), "expected " + what};
}

struct Reader {
  std::span<const LengthToken> tokens; // the last is End

  const LengthToken& ahead(std::size_t by = 0) const { return tokens[std::min(by, tokens.size() - 1)]; }
  bool sees(Kind kind, std::size_t by = 0) const { return ahead(by).kind == kind; }
  bool seesFraction(std::size_t by = 0) const {
    return sees(Kind::VulgarFraction, by) || (sees(Kind::Number, by) && sees(Kind::Slash, by + 1));
  }
  LengthToken take() {
    const LengthToken token = ahead();
    if (tokens.size() > 1)
      tokens = tokens.subspan(1);
    return token;
  }
  bool takeIf(Kind kind) {
    const bool there = sees(kind);
    if (there)
      take();
    return there;
  }
};

// A number with or without a fraction, before any unit.
struct Quantity {
  LengthToken first;
  double value = 0;
  bool whole = false; // without decimal point and fraction
  bool fraction = false;
};

Result<double> checkedFraction(const LengthToken& numerator, const LengthToken& denominatorAt, double denominator) {
  constexpr std::array sensible = {2.0, 4.0, 8.0, 16.0, 32.0, 64.0};
  if (std::find(sensible.begin(), sensible.end(), denominator) == sensible.end())
    return expected(denominatorAt, "a fraction in halves, 4ths, 8ths, 16ths, 32nds or 64ths of an inch");
  if (numerator.value >= denominator)
    return expected(numerator, "a fraction less than one, such as 5/8");
  return numerator.value / denominator;
}

// Precondition: seesFraction().
Result<double> readFraction(Reader& reader) {
  const LengthToken numerator = reader.take();
  if (numerator.kind == Kind::VulgarFraction)
    return checkedFraction(numerator, numerator, numerator.denominator);
  if (!numerator.whole)
    return expected(numerator, "a whole number above the fraction's slash");
  reader.take();
  if (!reader.sees(Kind::Number) || !reader.ahead().whole)
    return expected(reader.ahead(), "a whole number below the fraction's slash, such as 8 or 16");
  const LengthToken denominator = reader.take();
  return checkedFraction(numerator, denominator, denominator.value);
}

// "3", "3.5", "5/8", "3 5/8", "3-5/8", "3½".
Result<Quantity> readQuantity(Reader& reader, const std::string& what) {
  Quantity quantity{reader.ahead()};
  if (!reader.seesFraction()) {
    if (!reader.sees(Kind::Number))
      return expected(reader.ahead(), what);
    quantity.value = reader.take().value;
    quantity.whole = quantity.first.whole;
    const std::size_t dash = reader.sees(Kind::Dash) ? 1 : 0;
    if (!reader.seesFraction(dash))
      return quantity;
    if (!quantity.whole)
      return expected(quantity.first, "a whole number before a fraction");
    reader.takeIf(Kind::Dash);
  }
  const Result<double> fraction = readFraction(reader);
  if (!fraction)
    return fraction.problem();
  quantity.value += *fraction;
  quantity.whole = false;
  quantity.fraction = true;
  return quantity;
}

Result<double> readAfterFootMark(Reader& reader, const Quantity& feet) {
  const bool dash = reader.takeIf(Kind::Dash);
  if (!dash && !reader.sees(Kind::Number) && !reader.sees(Kind::VulgarFraction))
    return feet.value * 12;
  if (!feet.whole)
    return expected(feet.first, "whole feet before inches");
  const Result<Quantity> inches = readQuantity(reader, "inches after the feet, such as 3 5/8");
  if (!inches)
    return inches.problem();
  reader.takeIf(Kind::InchMark);
  return feet.value * 12 + inches->value;
}

// "12-3", "12 3 5/8": the first of two bare numbers is feet.
Result<double> readAfterBareFeet(Reader& reader, const Quantity& feet, LengthStyle style) {
  if (!reader.takeIf(Kind::Dash) && !reader.ahead().blankBefore)
    return expected(reader.ahead(), "a number with at most one decimal point");
  const Result<Quantity> inches = readQuantity(reader, "inches after the dash, such as 3 5/8");
  if (!inches)
    return inches.problem();
  if (!feet.whole)
    return expected(feet.first, "whole feet before inches");
  const bool mark = reader.takeIf(Kind::InchMark);
  if (style == LengthStyle::Millimetres && !mark && !inches->fraction)
    return expected(inches->first, "one number of millimetres, or a foot mark before the inches");
  return feet.value * 12 + inches->value;
}

Result<double> readMetric(Reader& reader, const Quantity& quantity, double millimetresEach) {
  if (quantity.fraction)
    return expected(reader.ahead(), "an inch mark or nothing after a fraction");
  reader.take();
  return quantity.value * millimetresEach / millimetresPerInch;
}

Result<double> readUnsigned(Reader& reader, LengthStyle style) {
  const Result<Quantity> first = readQuantity(reader, "a length, such as 12'-3 5/8\" or 310 mm");
  if (!first)
    return first.problem();
  switch (reader.ahead().kind) {
  case Kind::FootMark:
    reader.take();
    return readAfterFootMark(reader, *first);
  case Kind::InchMark:
    reader.take();
    return first->value;
  case Kind::Millimetre:
    return readMetric(reader, *first, 1);
  case Kind::Centimetre:
    return readMetric(reader, *first, 10);
  case Kind::Metre:
    return readMetric(reader, *first, 1000);
  case Kind::Number:
  case Kind::Dash:
    if (!first->fraction)
      return readAfterBareFeet(reader, *first, style);
    break;
  default:
    break;
  }
  const bool bare = !first->fraction && style == LengthStyle::Millimetres;
  return bare ? first->value / millimetresPerInch : first->value;
}

} // namespace

Result<double> parseLength(std::string_view text, LengthStyle style) {
  const std::vector<LengthToken> tokens = lengthTokens(text);
  Reader reader{tokens};
  const bool negative = reader.takeIf(Kind::Dash);
  const LengthToken first = reader.ahead();
  const Result<double> length = readUnsigned(reader, style);
  if (!length)
    return length;
  if (!reader.sees(Kind::End))
    return expected(reader.ahead(), "the end of the length");
  if (!(*length <= longest))
    return expected(first, "a length of at most 1,000,000 inches");
  return negative && *length > 0 ? -*length : *length;
}

} // namespace sillwright
