#include "core/edit/numbers.h"

#include <charconv>
#include <cmath>

namespace sillwright {

std::optional<double> readPlainNumber(std::string_view typed) {
  double value = 0;
  const auto read = std::from_chars(typed.data(), typed.data() + typed.size(), value);
  const bool all = read.ec == std::errc{} && read.ptr == typed.data() + typed.size() && std::isfinite(value);
  return all ? std::optional(value) : std::nullopt;
}

std::optional<double> readLoad(std::string_view typed) {
  for (const std::string_view unit : {"lbs", "lb", "plf"})
    if (typed.size() > unit.size() && typed.ends_with(unit)) {
      typed.remove_suffix(unit.size());
      break;
    }
  while (typed.ends_with(' '))
    typed.remove_suffix(1);
  std::string digits;
  const auto isDigit = [&](std::size_t i) { return i < typed.size() && typed[i] >= '0' && typed[i] <= '9'; };
  for (std::size_t i = 0; i < typed.size(); ++i) {
    const bool thousands = typed[i] == ',' && i > 0 && isDigit(i - 1) && isDigit(i + 1) && isDigit(i + 2) &&
                           isDigit(i + 3) && !isDigit(i + 4);
    if (!thousands)
      digits += typed[i];
  }
  return readPlainNumber(digits);
}

std::string plainDigits(double value) {
  char text[64];
  const auto end = std::to_chars(text, text + sizeof text, value, std::chars_format::fixed, 4).ptr;
  std::string digits(text, end);
  digits.erase(digits.find_last_not_of('0') + 1);
  if (digits.back() == '.')
    digits.pop_back();
  return digits == "-0" ? "0" : digits;
}

} // namespace sillwright
