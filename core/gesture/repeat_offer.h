// What a form for repeating pieces begins with.
#pragma once

#include "core/edit/repeat.h"
#include "core/model/layout.h"

namespace sillwright {

struct RepeatOffer {
  Id piece;      // the one whose copies are told of: the first selected that can be repeated
  Repeat repeat; // to the end, toward the side with more room
};
// Spacing: of two selected pieces of a kind, as they stand apart; else of bolts what the rule book and the plans allow
// at most, of bars 16 in, of straps 48 in (common practice: as studs stand). Nothing where none can be repeated.
std::optional<RepeatOffer> repeatOffer(const Job& job, const WallLayout& layout, std::span<const Id> selected);

} // namespace sillwright
