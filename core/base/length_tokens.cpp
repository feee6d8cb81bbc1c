#include "core/base/length_tokens.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <limits>
#include <string>

namespace sillwright {
namespace {

using Kind = LengthToken::Kind;

constexpr char32_t noCharacter = 0xFFFD;

struct Decoded {
  char32_t character = noCharacter;
  std::size_t bytes = 1;
};

Decoded decodeFirst(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned first = byte(0);
  if (first < 0x80)
    return {first, 1};
  const std::size_t size = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
  if (first < 0xC2 || first > 0xF4 || text.size() < size)
    return {};
  char32_t character = first & (0x7Fu >> size);
  for (std::size_t i = 1; i < size; ++i) {
    if ((byte(i) & 0xC0u) != 0x80u)
      return {};
    character = (character << 6) | (byte(i) & 0x3Fu);
  }
  return {character, size};
}

std::u32string decode(std::string_view text) {
  std::u32string characters;
  while (!text.empty()) {
    const Decoded next = decodeFirst(text);
    characters += next.character;
    text.remove_prefix(next.bytes);
  }
  return characters;
}

bool isOneOf(char32_t c, std::u32string_view set) {
  return set.find(c) != std::u32string_view::npos;
}

bool isDigit(char32_t c) {
  return c >= U'0' && c <= U'9';
}

bool isLetter(char32_t c) {
  return (c >= U'a' && c <= U'z') || (c >= U'A' && c <= U'Z');
}

bool isBlank(char32_t c) {
  return isOneOf(c, U" \t\r\n\u00A0\u202F\u205F\u3000") || (c >= U'\u2000' && c <= U'\u200A');
}

bool isDash(char32_t c) {
  return isOneOf(c, U"-\u2212\uFE63\uFF0D") || (c >= U'\u2010' && c <= U'\u2015');
}

bool isSlash(char32_t c) {
  return isOneOf(c, U"/\u2044\u2215");
}

bool isFootMark(char32_t c) {
  return isOneOf(c, U"'\u2019\u2018\u2032\u02B9\u00B4`");
}

bool isInchMark(char32_t c) {
  return isOneOf(c, U"\"\u201D\u201C\u2033\u02BA");
}

struct Vulgar {
  char32_t character;
  int numerator;
  int denominator;
};

constexpr std::array vulgarFractions = {Vulgar{U'½', 1, 2}, Vulgar{U'¼', 1, 4}, Vulgar{U'¾', 3, 4}, Vulgar{U'⅛', 1, 8},
                                        Vulgar{U'⅜', 3, 8}, Vulgar{U'⅝', 5, 8}, Vulgar{U'⅞', 7, 8}, Vulgar{U'⅓', 1, 3},
                                        Vulgar{U'⅔', 2, 3}, Vulgar{U'⅕', 1, 5}, Vulgar{U'⅖', 2, 5}, Vulgar{U'⅗', 3, 5},
                                        Vulgar{U'⅘', 4, 5}, Vulgar{U'⅙', 1, 6}, Vulgar{U'⅚', 5, 6}};

struct Unit {
  std::string_view name;
  Kind kind;
};

constexpr std::array unitNames = {
    Unit{"ft", Kind::FootMark},   Unit{"foot", Kind::FootMark}, Unit{"feet", Kind::FootMark},
    Unit{"in", Kind::InchMark},   Unit{"inch", Kind::InchMark}, Unit{"inches", Kind::InchMark},
    Unit{"mm", Kind::Millimetre}, Unit{"cm", Kind::Centimetre}, Unit{"m", Kind::Metre}};

class Scanner {
public:
  explicit Scanner(std::u32string text) : text_(std::move(text)) {}

  LengthToken next() {
    LengthToken token;
    const std::size_t before = at_;
    while (at_ < text_.size() && isBlank(text_[at_]))
      ++at_;
    token.blankBefore = at_ > before;
    token.character = at_ + 1;
    if (at_ < text_.size())
      read(token);
    return token;
  }

private:
  char32_t ahead(std::size_t by = 0) const { return at_ + by < text_.size() ? text_[at_ + by] : U'\0'; }

  void read(LengthToken& token) {
    const char32_t c = ahead();
    if (isDigit(c) || (c == U'.' && isDigit(ahead(1))))
      readNumber(token);
    else if (isLetter(c))
      token.kind = readUnit();
    else if (isFootMark(c))
      token.kind = readPrimes();
    else
      readSign(token);
  }

  void readNumber(LengthToken& token) {
    std::string digits;
    bool point = false;
    while (isDigit(ahead()) || (ahead() == U'.' && !point)) {
      point = point || ahead() == U'.';
      digits += static_cast<char>(ahead());
      ++at_;
    }
    token.kind = Kind::Number;
    token.whole = !point;
    token.value = valueOf(digits);
  }

  static double valueOf(const std::string& digits) {
    const std::size_t leading = std::min(digits.find_first_not_of('0'), digits.size());
    if (std::min(digits.find('.'), digits.size()) > leading + 15)
      return std::numeric_limits<double>::infinity();
    double value = 0; // stays 0 for a number too small for a double
    std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return value;
  }

  Kind readUnit() {
    std::string word;
    for (; isLetter(ahead()); ++at_)
      word += static_cast<char>(ahead() | 0x20u);
    const auto unit = std::find_if(unitNames.begin(), unitNames.end(), [&](const Unit& u) { return u.name == word; });
    if (unit == unitNames.end())
      return Kind::Unknown;
    if (ahead() == U'.' && !isDigit(ahead(1))) // "24 ft. 6 in."
      ++at_;
    return unit->kind;
  }

  // Two feet marks in a row are how an inch mark is typed where there is none.
  Kind readPrimes() {
    const bool twice = isFootMark(ahead(1));
    at_ += twice ? 2 : 1;
    return twice ? Kind::InchMark : Kind::FootMark;
  }

  void readSign(LengthToken& token) {
    const char32_t c = ahead();
    ++at_;
    const auto vulgar =
        std::find_if(vulgarFractions.begin(), vulgarFractions.end(), [&](const Vulgar& v) { return v.character == c; });
    if (vulgar != vulgarFractions.end()) {
      token.kind = Kind::VulgarFraction;
      token.value = vulgar->numerator;
      token.denominator = vulgar->denominator;
    } else {
      token.kind = isInchMark(c) ? Kind::InchMark : isDash(c) ? Kind::Dash : isSlash(c) ? Kind::Slash : Kind::Unknown;
    }
  }

  std::u32string text_;
  std::size_t at_ = 0;
};

} // namespace

std::vector<LengthToken> lengthTokens(std::string_view text) {
  Scanner scanner(decode(text));
  std::vector<LengthToken> tokens;
  do
    tokens.push_back(scanner.next());
  while (tokens.back().kind != Kind::End);
  return tokens;
}

} // namespace sillwright
