#include "core/standards/fasteners.h"

#include <array>

namespace sillwright {

namespace {

constexpr std::array<BoltHardware, 5> hardwareTable{{{0.500, 0.448, 0.7500, 0.132, 1.375, 13},
                                                     {0.625, 0.559, 0.9375, 0.160, 1.750, 11},
                                                     {0.750, 0.665, 1.1250, 0.177, 2.000, 10},
                                                     {0.875, 0.776, 1.3125, 0, 0, 9},
                                                     {1.000, 0.887, 1.5000, 0, 0, 8}}};

// The 3d nail is from memory.
constexpr std::array<NailSize, 5> nailTable{{{"3d common", 0.080, 1.25},
                                             {"6d common", 0.113, 2},
                                             {"8d common", 0.131, 2.5},
                                             {"10d common", 0.148, 3},
                                             {"16d common", 0.162, 3.5}}};

} // namespace

std::optional<BoltHardware> boltHardware(double diameter) {
  for (const auto& row : hardwareTable)
    if (row.diameter == diameter)
      return row;
  return std::nullopt;
}

std::span<const BoltHardware> boltHardwareTable() { return hardwareTable; }

std::span<const NailSize> commonNails() { return nailTable; }

} // namespace sillwright
