#include "core/base/length.h"

#include <algorithm>
#include <array>
#include <bit>
#include <charconv>
#include <cmath>

namespace sillwright {
namespace {

// Whole numbers of any size, free of the locale.
std::string digits(double whole) {
  std::array<char, 400> buffer;
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), whole, std::chars_format::fixed, 0);
  return {buffer.data(), end.ptr};
}

// A length as a whole number of parts of an inch, the sign apart, so that it is rounded only once.
struct Parts {
  bool negative = false;
  double inches = 0; // whole
  int numerator = 0;
  int denominator = 1;
};

Parts partsOf(double inches, int denominator) {
  Parts parts;
  parts.denominator = static_cast<int>(std::bit_floor(static_cast<unsigned>(std::clamp(denominator, 1, 64))));
  const double whole = std::floor(std::abs(inches));
  const double count = std::round((std::abs(inches) - whole) * parts.denominator);
  const bool carry = count >= parts.denominator;
  parts.inches = whole + (carry ? 1 : 0);
  parts.numerator = carry ? 0 : static_cast<int>(count);
  parts.negative = inches < 0 && (parts.inches > 0 || parts.numerator > 0);
  for (; parts.numerator > 0 && parts.numerator % 2 == 0; parts.numerator /= 2)
    parts.denominator /= 2;
  return parts;
}

std::string fraction(const Parts& parts) {
  return std::to_string(parts.numerator) + "/" + std::to_string(parts.denominator);
}

std::string mixed(double whole, const Parts& parts) {
  return parts.numerator == 0 ? digits(whole) : digits(whole) + " " + fraction(parts);
}

std::string signOf(bool negative) {
  return negative ? "-" : "";
}

constexpr const char* notALength = "?";

} // namespace

std::string feetInches(double inches, int denominator) {
  if (!std::isfinite(inches))
    return notALength;
  const Parts parts = partsOf(inches, denominator);
  const double feet = std::floor(parts.inches / 12);
  return signOf(parts.negative) + digits(feet) + "'-" + mixed(std::fmod(parts.inches, 12), parts) + "\"";
}

std::string inches(double inches, int denominator) {
  if (!std::isfinite(inches))
    return notALength;
  const Parts parts = partsOf(inches, denominator);
  const bool onlyFraction = parts.inches == 0 && parts.numerator > 0;
  return signOf(parts.negative) + (onlyFraction ? fraction(parts) : mixed(parts.inches, parts)) + "\"";
}

std::string millimetres(double inches) {
  const double length = std::abs(inches) * 25.4;
  if (!std::isfinite(length))
    return notALength;
  const double whole = std::floor(length);
  const double tenths = std::round((length - whole) * 10);
  const std::string number = tenths == 0    ? digits(whole)
                             : tenths == 10 ? digits(whole + 1)
                                            : digits(whole) + "." + digits(tenths);
  return signOf(inches < 0 && number != "0") + number + " mm";
}

std::string printLength(double inches, LengthStyle style, int denominator) {
  return style == LengthStyle::Millimetres ? millimetres(inches) : feetInches(inches, denominator);
}

std::string printMeasure(double inches, LengthStyle style, int denominator) {
  return style == LengthStyle::Millimetres ? millimetres(inches) : sillwright::inches(inches, denominator);
}

double roundTo(double inches, double step) {
  return step > 0 ? std::round(inches / step) * step : inches;
}

} // namespace sillwright
