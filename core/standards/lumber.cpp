#include "core/standards/lumber.h"

#include <array>
#include <cassert>
#include <charconv>

namespace sillwright {

namespace {

struct DressedSize {
  int nominal;
  double inches;
};

constexpr std::array<DressedSize, 7> dressedTable{
    {{2, dressedTwo}, {3, 2.5}, {4, 3.5}, {6, 5.5}, {8, 7.25}, {10, 9.25}, {12, 11.25}}};
constexpr std::array<int, 7> sizes{2, 3, 4, 6, 8, 10, 12};

double dressedOrZero(int nominal) {
  const auto found = dressed(nominal);
  assert(found);
  return found.value_or(0);
}

std::string_view withoutBlanks(std::string_view text) {
  while (!text.empty() && text.front() == ' ')
    text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ')
    text.remove_suffix(1);
  return text;
}

std::optional<int> nominalNumber(std::string_view text) {
  text = withoutBlanks(text);
  int number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc{} || end != text.data() + text.size() || !dressed(number))
    return std::nullopt;
  return number;
}

} // namespace

std::optional<double> dressed(int nominal) {
  for (const auto& row : dressedTable)
    if (row.nominal == nominal)
      return row.inches;
  return std::nullopt;
}

std::span<const int> nominalSizes() {
  return sizes;
}

double dressedThickness(Nominal size) {
  return dressedOrZero(size.thickness);
}
double dressedWidth(Nominal size) {
  return dressedOrZero(size.width);
}

std::string print(Nominal size) {
  return std::to_string(size.thickness) + "x" + std::to_string(size.width);
}

std::optional<Nominal> parseNominal(std::string_view written) {
  for (const std::string_view by : {"x", "X", "×"}) {
    const auto at = written.find(by);
    if (at == std::string_view::npos)
      continue;
    const auto thickness = nominalNumber(written.substr(0, at));
    const auto width = nominalNumber(written.substr(at + by.size()));
    if (thickness && width)
      return Nominal{*thickness, *width};
  }
  return std::nullopt;
}

} // namespace sillwright
