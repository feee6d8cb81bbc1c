// Typed lengths cut into tokens; used by the reader of lengths only.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

namespace sillwright {

struct LengthToken {
  enum class Kind {
    Number,         // value; whole when written without a decimal point
    VulgarFraction, // value over denominator
    Slash,
    Dash,
    FootMark,
    InchMark,
    Millimetre,
    Centimetre,
    Metre,
    Unknown,
    End,
  };

  Kind kind = Kind::End;
  std::size_t character = 1; // 1-based, counted in characters
  double value = 0;          // of a number (infinite when absurdly long), or the numerator of a vulgar fraction
  double denominator = 1;
  bool whole = false;
  bool blankBefore = false;
};

// The tokens of UTF-8 text; the last is always End. Bytes that are no UTF-8 become one Unknown each.
std::vector<LengthToken> lengthTokens(std::string_view text);

} // namespace sillwright
