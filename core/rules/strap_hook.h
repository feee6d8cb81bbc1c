// Where the embedded part of a strap lies in the concrete. Inches.
#pragma once

#include <optional>

#include "core/rules/corner_cover.h"

namespace sillwright {

// From the lowest point of a strap's embedded part, by the box around it, to the bottom of the concrete under it.
double hookToBottom(const WallLayout& layout, const Box3& embedded);

// What of the embedded part is in the stem, below the joint line; below the top of the footing the concrete goes on
// behind the stem.
std::optional<Box3> partInStem(const WallLayout& layout, const Ribbon& embedded, double joint);
// From that part to the inside face of the stem.
Cover hookToInside(const WallLayout& layout, const Box3& part);

} // namespace sillwright
