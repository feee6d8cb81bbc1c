// Nuts, cut washers, threads and nails by size. All in inches.
#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace sillwright {

struct BoltHardware {
  double diameter = 0;        // nominal
  double nutThickness = 0;    // largest; hex nut, ASME B18.2.2
  double nutAcrossFlats = 0;  // nominal; ASME B18.2.2, from memory
  double cutWasherThickness = 0;       // largest; type A wide, ASME B18.21.1; 0 where not tabulated here
  double cutWasherOutsideDiameter = 0; // same
  double threadsPerInch = 0;           // UNC, ASME B1.1 (7/8 and 1 from memory)
};

// Exact nominal diameter (1/2, 5/8, 3/4, 7/8, 1); nothing for any other.
std::optional<BoltHardware> boltHardware(double diameter);
std::span<const BoltHardware> boltHardwareTable();

struct NailSize {
  std::string_view name; // "10d common"
  double diameter = 0;
  double length = 0;
};
std::span<const NailSize> commonNails(); // ASTM F1667 / NDS Table L4

} // namespace sillwright
