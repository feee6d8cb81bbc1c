#include "core/store/json_text.h"

#include <algorithm>
#include <cstdint>
#include <cstring>

#include "core/store/json_tree.h"

namespace sillwright {
namespace {

bool isDigit(char c) { return c >= '0' && c <= '9'; }

int hexDigit(char c) {
  if (isDigit(c))
    return c - '0';
  if (c >= 'a' && c <= 'f')
    return c - 'a' + 10;
  if (c >= 'A' && c <= 'F')
    return c - 'A' + 10;
  return -1;
}

// Four hexadecimal digits at offset; -1 where they are not.
int codeUnit(std::string_view text, std::size_t offset) {
  int unit = 0;
  for (std::size_t i = offset; i < offset + 4; ++i) {
    const int digit = i < text.size() ? hexDigit(text[i]) : -1;
    if (digit < 0)
      return -1;
    unit = unit * 16 + digit;
  }
  return unit;
}

bool isHighSurrogate(int unit) { return unit >= 0xD800 && unit < 0xDC00; }
bool isLowSurrogate(int unit) { return unit >= 0xDC00 && unit < 0xE000; }

// Length of the escape whose backslash is at offset; 0 where it is not one.
std::size_t lengthOfEscape(std::string_view text, std::size_t offset) {
  const char c = offset + 1 < text.size() ? text[offset + 1] : '\0';
  if (c != '\0' && std::string_view("\"\\/bfnrt").find(c) != std::string_view::npos)
    return 2;
  if (c != 'u')
    return 0;
  const int unit = codeUnit(text, offset + 2);
  if (unit < 0 || isLowSurrogate(unit))
    return 0;
  if (!isHighSurrogate(unit))
    return 6;
  const bool paired = text.substr(offset + 6, 2) == "\\u" && isLowSurrogate(codeUnit(text, offset + 8));
  return paired ? 12 : 0;
}

void appendUtf8(std::string& out, std::uint32_t point) {
  const auto byte = [&](std::uint32_t value) { out += static_cast<char>(value); };
  if (point < 0x80)
    return byte(point);
  if (point < 0x800) {
    byte(0xC0 | point >> 6);
  } else {
    if (point < 0x10000) {
      byte(0xE0 | point >> 12);
    } else {
      byte(0xF0 | point >> 18);
      byte(0x80 | (point >> 12 & 0x3F));
    }
    byte(0x80 | (point >> 6 & 0x3F));
  }
  byte(0x80 | (point & 0x3F));
}

// Appends what the escape at offset stands for; returns its length.
std::size_t appendEscape(std::string& out, std::string_view written, std::size_t offset) {
  const char c = written[offset + 1];
  if (c != 'u') {
    constexpr std::string_view names = "bfnrt";
    constexpr std::string_view meant = "\b\f\n\r\t";
    const std::size_t i = names.find(c);
    out += i == names.npos ? c : meant[i];
    return 2;
  }
  const int unit = codeUnit(written, offset + 2);
  if (!isHighSurrogate(unit)) {
    appendUtf8(out, static_cast<std::uint32_t>(unit));
    return 6;
  }
  const int low = codeUnit(written, offset + 8);
  appendUtf8(out, static_cast<std::uint32_t>(0x10000 + ((unit - 0xD800) << 10) + (low - 0xDC00)));
  return 12;
}

// Length of the well-formed UTF-8 sequence at offset (Unicode Standard, Table 3-7); 0 where there is none.
std::size_t lengthOfSequence(std::string_view text, std::size_t offset) {
  const auto byteAt = [&](std::size_t i) {
    return i < text.size() ? static_cast<unsigned char>(text[i]) : static_cast<unsigned char>(0);
  };
  const auto follows = [&](std::size_t i, unsigned low = 0x80, unsigned high = 0xBF) {
    return byteAt(i) >= low && byteAt(i) <= high;
  };
  const unsigned first = byteAt(offset);
  if (first < 0x80)
    return 1;
  if (first >= 0xC2 && first <= 0xDF)
    return follows(offset + 1) ? 2 : 0;
  if (first >= 0xE0 && first <= 0xEF) {
    const unsigned low = first == 0xE0 ? 0xA0 : 0x80;
    const unsigned high = first == 0xED ? 0x9F : 0xBF;
    return follows(offset + 1, low, high) && follows(offset + 2) ? 3 : 0;
  }
  if (first >= 0xF0 && first <= 0xF4) {
    const unsigned low = first == 0xF0 ? 0x90 : 0x80;
    const unsigned high = first == 0xF4 ? 0x8F : 0xBF;
    return follows(offset + 1, low, high) && follows(offset + 2) && follows(offset + 3) ? 4 : 0;
  }
  return 0;
}

} // namespace

namespace json {

StringEnd endOfString(std::string_view text, std::size_t begin) {
  std::size_t at = begin;
  while (at < text.size() && text[at] != '"') {
    if (static_cast<unsigned char>(text[at]) < 0x20)
      return {at, "a control character inside quotes"};
    if (text[at] != '\\') {
      ++at;
      continue;
    }
    const std::size_t length = lengthOfEscape(text, at);
    if (length == 0)
      return {at, "not an escape that means anything"};
    at += length;
  }
  return at < text.size() ? StringEnd{at, {}} : StringEnd{at, "the closing quote is missing"};
}

std::size_t lengthOfNumber(std::string_view text) {
  std::size_t at = 0;
  const auto digits = [&] {
    const std::size_t begin = at;
    while (at < text.size() && isDigit(text[at]))
      ++at;
    return at - begin;
  };
  const auto take = [&](std::string_view any) {
    const bool there = at < text.size() && any.find(text[at]) != any.npos;
    at += there;
    return there;
  };
  take("-");
  if (!take("0") && digits() == 0)
    return 0;
  if (take(".") && digits() == 0)
    return 0;
  if (take("eE")) {
    take("+-");
    if (digits() == 0)
      return 0;
  }
  return at;
}

std::size_t firstNotUtf8(std::string_view text) {
  std::size_t at = 0;
  while (at < text.size()) {
    std::uint64_t eight = 0;
    if (at + 8 <= text.size())
      std::memcpy(&eight, text.data() + at, 8);
    if (at + 8 <= text.size() && (eight & 0x8080808080808080u) == 0) {
      at += 8;
      continue;
    }
    const std::size_t length = lengthOfSequence(text, at);
    if (length == 0)
      return at;
    at += length;
  }
  return at;
}

std::string lineAndCharacter(std::string_view text, std::size_t offset) {
  const std::string_view before = text.substr(0, offset);
  const auto line = std::count(before.begin(), before.end(), '\n') + 1;
  const std::size_t newline = before.rfind('\n');
  const std::string_view within = newline == before.npos ? before : before.substr(newline + 1);
  const auto starts = [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; };
  const auto character = std::count_if(within.begin(), within.end(), starts) + 1;
  return "line " + std::to_string(line) + ", character " + std::to_string(character);
}

} // namespace json

std::string unescaped(std::string_view written) {
  std::string out;
  out.reserve(written.size());
  for (std::size_t at = 0; at < written.size();) {
    if (written[at] == '\\') {
      at += appendEscape(out, written, at);
      continue;
    }
    const std::size_t end = std::min(written.find('\\', at), written.size());
    out.append(written.substr(at, end - at));
    at = end;
  }
  return out;
}

void appendQuoted(std::string& out, std::string_view characters) {
  constexpr std::string_view hex = "0123456789abcdef";
  out += '"';
  for (const char c : characters) {
    if (c == '"' || c == '\\') {
      out += '\\';
      out += c;
    } else if (c == '\n') {
      out += "\\n";
    } else if (static_cast<unsigned char>(c) < 0x20) {
      out += "\\u00";
      out += hex[static_cast<unsigned char>(c) >> 4];
      out += hex[static_cast<unsigned char>(c) & 15];
    } else {
      out += c;
    }
  }
  out += '"';
}

std::string compact(std::string_view written) {
  std::string out;
  out.reserve(written.size());
  for (std::size_t at = 0; at < written.size(); ++at) {
    if (json::isBlank(written[at]))
      continue;
    if (written[at] != '"') {
      out += written[at];
      continue;
    }
    const std::size_t end = json::endOfString(written, at + 1).at;
    out.append(written.substr(at, end + 1 - at));
    at = end;
  }
  return out;
}

bool isUtf8(std::string_view text) { return json::firstNotUtf8(text) == text.size(); }

} // namespace sillwright
