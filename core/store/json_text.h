// The small grammar of JSON text: where strings and numbers end, and how characters are written.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace sillwright::json {

inline bool isBlank(char c) { return c == ' ' || c == '\n' || c == '\r' || c == '\t'; }

// Where a string ends: at is its closing quote, or where it goes wrong and message says how.
struct StringEnd {
  std::size_t at = 0;
  std::string_view message;
};
// begin: behind the opening quote.
StringEnd endOfString(std::string_view text, std::size_t begin);

// Length of the number at the start of text; 0 where there is none.
std::size_t lengthOfNumber(std::string_view text);

// Offset of the first byte that is not well-formed UTF-8 (overlong forms and surrogates are not); the size if all is.
std::size_t firstNotUtf8(std::string_view text);

// "line 3, character 14", 1-based.
std::string lineAndCharacter(std::string_view text, std::size_t offset);

} // namespace sillwright::json
