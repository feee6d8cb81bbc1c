// How many bolts the programme allows, and where each of them can stand.
#pragma once

#include "core/refit/sequence.h"

namespace sillwright::sequence {

// Where each bolt can stand at all, if there are no more than so many: near enough to those before it, and near enough
// to the last window for those after it.
std::vector<Stretch> rangesOf(const SillPiece& sill, int slots);

} // namespace sillwright::sequence
