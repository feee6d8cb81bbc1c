#include "core/gesture/typing.h"

#include <string_view>

namespace sillwright {

namespace {

// Signs a length can begin with, and can go on with.
bool beginsLength(char32_t key) {
  return (key >= U'0' && key <= U'9') || key == U'.' || key == U'½' || key == U'¼' || key == U'¾';
}

bool continuesLength(char32_t key) {
  static constexpr std::u32string_view signs = U" '\"/.-’′”″⁄½¼¾⅛⅜⅝⅞mcftin";
  return beginsLength(key) || signs.find(key) != std::u32string_view::npos;
}

} // namespace

bool isOfLength(const std::string& typed, char32_t key) {
  return typed.empty() ? beginsLength(key) : continuesLength(key);
}

std::string utf8(char32_t c) {
  std::string out;
  if (c < 0x80) {
    out += static_cast<char>(c);
  } else if (c < 0x800) {
    out += static_cast<char>(0xC0 | (c >> 6));
    out += static_cast<char>(0x80 | (c & 0x3F));
  } else {
    out += static_cast<char>(0xE0 | ((c >> 12) & 0x0F));
    out += static_cast<char>(0x80 | ((c >> 6) & 0x3F));
    out += static_cast<char>(0x80 | (c & 0x3F));
  }
  return out;
}

void dropLast(std::string& text) {
  while (!text.empty() && (static_cast<unsigned char>(text.back()) & 0xC0) == 0x80)
    text.pop_back();
  if (!text.empty())
    text.pop_back();
}

} // namespace sillwright
