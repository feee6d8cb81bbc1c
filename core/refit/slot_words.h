// Slots and slide room in words, as a tape reads them.
#pragma once

#include <string>

#include "core/base/length.h"
#include "core/refit/slots.h"

namespace sillwright {

// From the tape mark nearest to where a piece stands, at which it is set, to the last mark of its slot on either side;
// nothing where it stands in no slot.
std::optional<Room> roomInMarks(const PieceSlots& slots);

// How far a piece may be slid, in tape marks so that the last one is still good: "2 1/2\" left, 1 3/4\" right"; "none
// to the left, 1/2\" right"; "none here" where it stands in no slot.
std::string roomWords(const PieceSlots& slots, LengthStyle style);
// The same for a narrow column: "2 1/2\" | 1 3/4\"".
std::string roomShort(const PieceSlots& slots, LengthStyle style);
// The slot that a piece stands in, else the nearest to it; nothing where there is none.
std::optional<Interval> ownSlot(const PieceSlots& slots);
// "10\" to 1'-2 1/4\"", each end on the last tape mark inside; a slot between two marks by its middle, to a 64th.
std::string slotWords(Interval slot, LengthStyle style);
// "10\" to 1'-2 1/4\", 2'-0\" to 2'-6\"", each end on the last tape mark inside; "nowhere" where there is none.
std::string slotWords(const PieceSlots& slots, LengthStyle style);

// What stops a piece at the end of a slot, in two or three words: "bar V16", "nails off C3", "opening O1".
std::string stopWords(const WallLine& wall, const Stop& stop);

// The part of a slot between its first and its last tape mark; empty (to < from) where there is no mark in it.
Interval toMarks(Interval slot);

} // namespace sillwright
