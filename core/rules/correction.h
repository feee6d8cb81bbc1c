// Carries out the correction of a finding.
#pragma once

#include "core/model/wall.h"
#include "core/rules/finding.h"

namespace sillwright {

// The wall with the correction applied. A bar that was found moves where it was found. A field that the piece does not
// have, or a piece that is not there, changes nothing.
// Station moves whole pieces (a stretch keeps its length); Height is the joint line of a strap and the height of a bar.
WallLine corrected(const WallLine& wall, const Correction& correction);

// The correction of a finding and its other ways, the one offered first in front.
std::vector<Correction> allWays(const Finding& finding);
std::optional<Correction> firstWay(const Finding& finding);

} // namespace sillwright
