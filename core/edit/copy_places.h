// Where copies go: to an end of a wall, under the pointer, to the other side of an opening or the other end of the
// wall. Stations in the wall frame, in.
#pragma once

#include <optional>

#include "core/edit/copies.h"
#include "core/edit/framing_ends.h"

namespace sillwright {

// Farthest that what belongs to an end stands from it.
inline constexpr double endOfWallReach = 12;

struct PastePlace {
  Carry carry;
  std::optional<FramingEnd> end; // to an end; nothing: at the station as it was asked for
};

// For pieces on the wall `wall` of the job. At an end they keep their distances from it, turned round where that end
// looks the other way:
// - with a column, not one of those copied: at the end that column stands at, from its outer face as the column they
//   belong to has them from its own; where they belong to none, from the end itself;
// - without, at an end near `station`, where they come from one themselves;
// - else their middle at `station`, moved by whole tape marks and kept on the wall.
PastePlace pastePlace(const Job& job, Id wall, const Copied& copied, std::optional<Id> column, double station);

// What is mirrored, and about what. An opening (alone, or the only one among what is selected) gives the line down its
// middle, a panel that of the wall's only opening; otherwise it is the middle of the wall. With an opening or panels
// alone selected it is all that stands in the pier: of an opening the pier at its side that has more in it (of equal
// ones the left), of panels theirs. All of a pier is what lies wholly in it; grade shots aside.
struct MirrorPlace {
  std::vector<Id> pieces;
  Carry carry;
  std::optional<Id> about; // the opening; nothing: the wall
};
// selected: pieces of that wall. Nothing where there is no such wall, or nothing to mirror.
std::optional<MirrorPlace> mirrorPlace(const Job& job, Id wall, std::span<const Id> selected);

} // namespace sillwright
