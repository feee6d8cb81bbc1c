#include "core/drawing/plain_number.h"

#include <array>
#include <charconv>
#include <cmath>

namespace sillwright {

std::string plainNumber(double value, int decimals) {
  if (!std::isfinite(value))
    return "0";
  std::array<char, 340> buffer{}; // the longest double has 309 figures before the point
  char* const begin = buffer.data();
  const auto written = std::to_chars(begin, begin + buffer.size(), value, std::chars_format::fixed, decimals);
  std::string text(begin, written.ptr);
  if (text.find('.') != std::string::npos) {
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
      text.pop_back();
  }
  return text == "-0" ? "0" : text;
}

} // namespace sillwright
