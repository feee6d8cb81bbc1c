// Plate washers on sills: the least size, and the slot that lets one slide. In inches.
#pragma once

#include "core/standards/source.h"

namespace sillwright {

inline constexpr Source plateWasherSource{"IRC 2024 R602.11.1", Status::Published};
inline constexpr NamedNumber plateWasherThickness{"plate washer, thickness at least", 0.229, "in", plateWasherSource};
inline constexpr NamedNumber plateWasherSide{"plate washer, side at least", 3, "in", plateWasherSource};

// The sentence on slots was seen in IBC 2006; that IRC R602.11.1 has it too is from memory.
inline constexpr Source washerSlotSource{"IBC 2006 2305.3.11", Status::Published};
inline constexpr NamedNumber washerSlotOverBolt{"slot, wider than the bolt by at most", 0.1875, "in", washerSlotSource};
inline constexpr NamedNumber washerSlotLength{"slot, length at most", 1.75, "in", washerSlotSource};

inline constexpr Source washerEdgeSource{"SDPWS 2021 4.3.6.4.3", Status::Published};
inline constexpr NamedNumber washerEdge{"washer to the sheathed edge of the sill, at most", 0.5, "in",
                                        washerEdgeSource};
inline constexpr NamedNumber washerEdgeOver{"… where the nominal unit shear capacity is over", 400, "plf",
                                            washerEdgeSource};

} // namespace sillwright
