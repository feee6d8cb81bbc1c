// New pieces from the shelf: what a shelf key stands for, with sensible first values where it is put down.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/model/layout.h"
#include "core/model/lookup.h"

namespace sillwright {

// A thing of the shelf that can be put on a canvas.
struct ShelfItem {
  std::string key;   // "strap:12", "column:6x6", "opening:door" … stable; also what a drag carries
  std::string title; // "strap", "6x6"
  std::optional<PieceKind> kind = {}; // none: a starter
};

// Everything that can be put on a wall of this job, in the order of the shelf.
std::vector<ShelfItem> shelfOf(const Job& job);

// A piece without id and mark, at a station of the wall. A strap belongs to the column it lands on; a bolt gets the
// depth at which its washer satisfies the sheathed edge and the middle third, where one exists, and the projection its
// stack needs; a rod needs a column near by; a panel has the marks of its nearest neighbour. Problem: the key is
// unknown, or the piece cannot stand there. near: how far, in, a column may be to be meant.
Result<Piece> newPiece(const Job& job, const WallLayout& layout, const std::string& key, double station, double near);

// The shelf's first bolt as it would be put into a piece of sill that has none, or into the first one; nothing where
// there is no sill, or no bolt on the shelf.
std::optional<Bolt> boltToAdd(const Job& job, const WallLayout& layout);

// A panel that has just been put down, with what its ends call for: a strap on the column at each end whose mark names
// one, bolts in the sill under it. What stands already stays where it is; the job as it is where nothing can be added
// so that no FIX of position is left.
Job withEndsLaidOut(const Job& job, PieceRef panel);

// The column a strap at a station is nailed to: the one its centre line stands on, trimmers last; empty for none.
Id columnUnder(const WallLayout& layout, double station, double near);

} // namespace sillwright
