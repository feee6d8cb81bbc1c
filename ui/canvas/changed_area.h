// What must be painted again when one drawing follows another.
#pragma once

#include <vector>

#include "core/drawing/drawing.h"

namespace sillwright {

// Boxes (pt) of everything that is in one of the drawings only, joined where they lie close together; at most `most`
// boxes. Empty when both look the same.
std::vector<Bounds> changedArea(const Drawing& before, const Drawing& after, std::size_t most = 12);

} // namespace sillwright
