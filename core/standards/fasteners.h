// Nuts, cut washers, threads and nails by size. All in inches.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/standards/source.h"

namespace sillwright {

inline constexpr Source nutSource{"ASME B18.2.2", Status::Published};
inline constexpr Source nutAcrossFlatsSource{"ASME B18.2.2", Status::FromMemory};
inline constexpr Source cutWasherSource{"ASME B18.21.1", Status::Published};
// What a nut and washers under it take of the thread.
inline constexpr Source threadStackSource{"ASME B18.2.2, B18.21.1", Status::Published};
inline constexpr std::string_view threadDocument = "ASME B1.1"; // how sure: by row
inline constexpr std::string_view nailDocument = "ASTM F1667, NDS 2018 Table L4";

struct BoltHardware {
  double diameter = 0;                 // nominal
  double nutThickness = 0;             // hex nut, largest
  double nutThicknessLeast = 0;        // hex nut, smallest
  double nutAcrossFlats = 0;           // nominal
  double cutWasherThickness = 0;       // type A wide, largest; 0 where not tabulated here
  double cutWasherOutsideDiameter = 0; // same
  double threadsPerInch = 0;           // UNC
  Status threads = Status::Published;  // of threadsPerInch
};

// Exact nominal diameter (1/2, 5/8, 3/4, 7/8, 1); nothing for any other.
std::optional<BoltHardware> boltHardware(double diameter);
std::span<const BoltHardware> boltHardwareTable();

struct NailSize {
  std::string_view name; // "10d common"
  double diameter = 0;
  double length = 0;
  Status status = Status::Published;
};
std::span<const NailSize> commonNails();
const NailSize* commonNail(std::string_view name); // null where the table has none of that name

// In diameters of the nail.
inline constexpr Source nailDepthSource{"NDS 2018 12.1.6.4", Status::Published};
inline constexpr NamedNumber nailDepthLeast{"nail in the main member, at least", 6, "d", nailDepthSource};
inline constexpr NamedNumber nailDepthFull{"nail in the main member, for its full value", 10, "d", nailDepthSource};
inline constexpr Source nailEdgeSource{"NDS commentary", Status::FromMemory};
inline constexpr NamedNumber nailEdge{"nail to the edge of the wood, at least", 2.5, "d", nailEdgeSource};

} // namespace sillwright
