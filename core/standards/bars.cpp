#include "core/standards/bars.h"

#include <array>

namespace sillwright {

namespace {

constexpr std::array<BarSize, 6> table{
    {{3, 0.375, 0.376}, {4, 0.500, 0.668}, {5, 0.625, 1.043}, {6, 0.750, 1.502}, {7, 0.875, 2.044}, {8, 1.000, 2.670}}};

} // namespace

std::span<const BarSize> barSizes() {
  return table;
}

std::optional<BarSize> barSize(int number) {
  for (const auto& row : table)
    if (row.number == number)
      return row;
  return std::nullopt;
}

} // namespace sillwright
