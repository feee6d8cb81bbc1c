// Anchor bolts, straps and upright bars again and again along their wall. Stations in the wall frame, in.
#pragma once

#include <optional>

#include "core/edit/copies.h"

namespace sillwright {

struct Repeat {
  double spacing = 0;       // middle to middle, more than 0
  std::optional<int> count; // of copies of each piece; nothing: to the end
  Side toward = Side::Right;
};

// How far copies of a piece may go: bolts and straps to the ends of their piece of sill (to the next splice; of the
// wall where there is no sill), less what the rule book keeps a bolt from the end, or half a strap; bars to the ends of
// the wall, less their cover.
struct RepeatRoom {
  Interval whole; // the piece of sill, or the wall
  Interval stations;
};
// Nothing for a piece of another kind.
std::optional<RepeatRoom> repeatRoom(const Job& job, PieceRef piece);
// Where copies are counted from: its station, of a bar where it is planned. Precondition: as above, not nothing.
double repeatedFrom(const WallLine& wall, Id piece);

// The stations that copies of one piece would have: as many as were asked for, but none out of its room.
std::vector<double> repeatStations(const Job& job, PieceRef piece, const Repeat& repeat);

// Copies of every piece that can be repeated; the others are left aside. What stands there already is not doubled.
Copies repeated(const Job& job, Id wall, std::span<const Id> pieces, const Repeat& repeat);

} // namespace sillwright
