#include "core/drawing/theme.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace sillwright {
namespace {

struct Row {
  std::string_view name;
  std::uint32_t light = 0, dark = 0, print = 0; // 0xRRGGBB
};

// In the order of Ink. Paper is black on white: materials are told apart by pattern.
constexpr std::array<Row, static_cast<std::size_t>(Ink::Count)> table{{
    {"None", 0x000000, 0x000000, 0x000000},         {"Paper", 0xFBFAF5, 0x16191B, 0xFFFFFF},
    {"Panel", 0xF5F3EC, 0x1F2427, 0xFFFFFF},        {"Chrome", 0xE7E3D9, 0x2A2F32, 0xFFFFFF},
    {"Field", 0xFFFFFF, 0x15181A, 0xFFFFFF},        {"Rule", 0xC4BEB0, 0x454C50, 0x000000},
    {"Rule2", 0xDDD8CC, 0x343A3E, 0x000000},        {"Edge", 0x877F70, 0x7C868B, 0x000000},
    {"Text", 0x1E2326, 0xECE8DE, 0x000000},         {"Text2", 0x54595C, 0xAEB3B4, 0x000000},
    {"Wood", 0xF1E0BE, 0x453925, 0xFFFFFF},         {"Wood2", 0xF8F0DE, 0x26231C, 0xFFFFFF},
    {"WoodLine", 0x6F5126, 0xD0AF76, 0x000000},     {"WoodMark", 0xC6A66F, 0x7A6541, 0x000000},
    {"Concrete", 0xDCDDD9, 0x393E41, 0xFFFFFF},     {"ConcreteLine", 0x3E4447, 0xC3C8CA, 0x000000},
    {"ConcreteMark", 0x9B9F9C, 0x62696D, 0x000000}, {"Earth", 0xEDE5D4, 0x2B261D, 0xFFFFFF},
    {"EarthLine", 0x8B7A5C, 0x8F7D5D, 0x000000},    {"Steel", 0x31414D, 0xC2CED7, 0x000000},
    {"SteelSoft", 0x8695A0, 0x74838E, 0x000000},    {"SteelFace", 0xC5CFD6, 0x4D5962, 0xFFFFFF},
    {"Bar", 0x4A5964, 0x9FB0BC, 0x000000},          {"BarFill", 0x7C8B96, 0x6E7F8B, 0x000000},
    {"BarPlan", 0x8C979E, 0x7B878E, 0x000000},      {"Form", 0xF6E6C4, 0x3A311F, 0xFFFFFF},
    {"FormLine", 0x85632A, 0xBD9A55, 0x000000},     {"Blade", 0xF5D142, 0xD9B52F, 0xFFFFFF},
    {"BladeInk", 0x1B1911, 0x15130B, 0x000000},     {"BladeEdge", 0xC7A11B, 0x8F7413, 0x000000},
    {"BladeFoot", 0x1B1911, 0x15130B, 0x000000},    {"BladeFootInk", 0xF9E48A, 0xF2D970, 0xFFFFFF},
    {"Fix", 0xAE1F1B, 0xFF8577, 0x000000},          {"Ask", 0x1C4C9C, 0x93B9FF, 0x000000},
    {"Watch", 0x795000, 0xEDBB57, 0x000000},        {"FixOn", 0xFFFFFF, 0x2A0705, 0xFFFFFF},
    {"Hand", 0x00675C, 0x55D6C2, 0x000000},         {"HandSoft", 0xBFE3DB, 0x1D4B45, 0xFFFFFF},
    {"HandOn", 0xFFFFFF, 0x06231F, 0xFFFFFF},       {"Hover", 0xE4EFEA, 0x263531, 0xFFFFFF},
    {"Select", 0xD2E9E2, 0x21443E, 0xFFFFFF},       {"Dim", 0x3C4347, 0xC9CDCE, 0x000000},
}};

const Row& row(Ink ink) {
  return table[std::min(static_cast<std::size_t>(ink), table.size() - 1)];
}

double channel(std::uint8_t value) {
  const double v = value / 255.0;
  return v <= 0.03928 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
}

double luminance(Rgb c) {
  return 0.2126 * channel(c.r) + 0.7152 * channel(c.g) + 0.0722 * channel(c.b);
}

} // namespace

Rgb colour(ThemeName theme, Ink ink) {
  const Row& r = row(ink);
  const std::uint32_t v = theme == ThemeName::Light ? r.light : theme == ThemeName::Dark ? r.dark : r.print;
  return {static_cast<std::uint8_t>(v >> 16), static_cast<std::uint8_t>(v >> 8 & 0xFF),
          static_cast<std::uint8_t>(v & 0xFF)};
}

std::string_view name(Ink ink) {
  return row(ink).name;
}

double contrast(Rgb a, Rgb b) {
  const auto [dark, light] = std::minmax({luminance(a), luminance(b)});
  return (light + 0.05) / (dark + 0.05);
}

} // namespace sillwright
