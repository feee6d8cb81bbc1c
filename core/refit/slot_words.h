// Slots and slide room in words, as a tape reads them.
#pragma once

#include <string>

#include "core/base/length.h"
#include "core/refit/slots.h"

namespace sillwright {

// How far a piece may be slid, rounded down to a tape mark so that the last mark is still good:
// "2 1/2\" left, 1 3/4\" right"; "none to the left, 1/2\" right"; "not where it is" where it stands in no slot.
std::string roomWords(const PieceSlots& slots, LengthStyle style);
// The same for a narrow column: "2 1/2 | 1 3/4"; "-" where it stands in no slot.
std::string roomShort(const PieceSlots& slots, LengthStyle style);
// "10\" to 1'-2 1/4\", 2'-0\" to 2'-6\"", each end on the last tape mark inside; "nowhere" where there is none.
std::string slotWords(const PieceSlots& slots, LengthStyle style);

// The part of a slot between its first and its last tape mark; empty (to < from) where there is no mark in it.
Interval toMarks(Interval slot);

} // namespace sillwright
