// Finding things in a job by id, and treating all kinds of pieces alike.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/model/job.h"

namespace sillwright {

enum class PieceKind { Step, Sill, Opening, Column, Panel, Strap, Bolt, Rod, Bar, Shot };
using Piece = std::variant<PourStep, Sill, Opening, Column, Panel, Strap, Bolt, Rod, Bar, GradeShot>;

inline PieceKind kindOf(const Piece& piece) { return static_cast<PieceKind>(piece.index()); }
std::string_view tradeName(PieceKind kind); // "strap", "anchor bolt", "bar" …
std::string_view markPrefix(PieceKind kind); // "S", "B", "V" …

// Calls visit(list) for each of the wall's lists of pieces, in the order of PieceKind.
template <class Wall, class Visit> void forEachList(Wall& wall, Visit&& visit) {
  visit(wall.steps);
  visit(wall.sills);
  visit(wall.openings);
  visit(wall.columns);
  visit(wall.panels);
  visit(wall.straps);
  visit(wall.bolts);
  visit(wall.rods);
  visit(wall.bars);
  visit(wall.shots);
}

// The item of a list with that id; null where there is none.
template <class List> auto* findIn(List& list, Id id) {
  for (auto& item : list)
    if (item.id == id)
      return &item;
  return static_cast<decltype(list.data())>(nullptr);
}

std::optional<Piece> findPiece(const WallLine& wall, Id piece);
std::optional<Piece> findPiece(const Job& job, PieceRef ref);
Id idOf(const Piece& piece);
const std::string& markOf(const Piece& piece);
// Mark of a piece or wall by reference; empty where it is gone.
std::string markOf(const Job& job, PieceRef ref);

// Stations a piece takes up, from its own fields only (bars: their found place). Rods need their column: see layout.
std::optional<Interval> stationsOf(const Job& job, const WallLine& wall, Id piece);
// The one station a piece is dragged by: its centre line, or the middle of its stretch.
std::optional<double> stationOf(const WallLine& wall, Id piece);
// Every piece of the wall, in order of the lists.
std::vector<Id> piecesOf(const WallLine& wall);
std::size_t pieceCount(const WallLine& wall);

const Corner* findCorner(const Job& job, Id corner);
const WallEndMark* findMark(const Job& job, std::string_view mark);
// Length of the outside face; 0 where a corner is missing.
double wallLength(const Job& job, const WallLine& wall);

} // namespace sillwright
