// A wall's problem in parts that have nothing to do with each other: the piers on either side of a door.
#pragma once

#include "core/refit/wall_problem.h"

namespace sillwright {

// From left to right. Together they have the layouts of the whole problem, at the sum of their costs; each keeps all
// needs, and of the depth options only those that its sill pieces may have.
std::vector<WallProblem> partsOf(const WallProblem& whole);

// Some of what a part asks, and only of some of its pieces, from the least on: where one of these has no layout, the
// part has none, and there it is soon told why.
std::vector<WallProblem> smallerPartsOf(const WallProblem& part);

} // namespace sillwright
