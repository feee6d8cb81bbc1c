#include "core/standards/fasteners.h"

#include <array>

namespace sillwright {

namespace {

using S = Status;

constexpr std::array<BoltHardware, 5> hardwareTable{{{0.500, 0.448, 0.427, 0.7500, 0.132, 1.375, 13, S::Published},
                                                     {0.625, 0.559, 0.535, 0.9375, 0.160, 1.750, 11, S::Published},
                                                     {0.750, 0.665, 0.617, 1.1250, 0.177, 2.000, 10, S::Published},
                                                     {0.875, 0.776, 0.724, 1.3125, 0, 0, 9, S::FromMemory},
                                                     {1.000, 0.887, 0.831, 1.5000, 0, 0, 8, S::FromMemory}}};

constexpr std::array<NailSize, 5> nailTable{{{"3d common", 0.080, 1.25, S::FromMemory},
                                             {"6d common", 0.113, 2, S::Published},
                                             {"8d common", 0.131, 2.5, S::Published},
                                             {"10d common", 0.148, 3, S::Published},
                                             {"16d common", 0.162, 3.5, S::Published}}};

} // namespace

std::optional<BoltHardware> boltHardware(double diameter) {
  for (const auto& row : hardwareTable)
    if (row.diameter == diameter)
      return row;
  return std::nullopt;
}

std::span<const BoltHardware> boltHardwareTable() {
  return hardwareTable;
}

std::span<const NailSize> commonNails() {
  return nailTable;
}

const NailSize* commonNail(std::string_view name) {
  for (const NailSize& nail : nailTable)
    if (nail.name == name)
      return &nail;
  return nullptr;
}

} // namespace sillwright
