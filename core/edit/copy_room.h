// What room a piece takes up among its own kind; used where pieces are copied. Wall frame, in.
#pragma once

#include <vector>

#include "core/model/lookup.h"

namespace sillwright {

// The wall's list of one kind of piece.
template <class Item, class Wall> auto& listOf(Wall& wall) {
  if constexpr (std::is_same_v<Item, PourStep>)
    return wall.steps;
  else if constexpr (std::is_same_v<Item, Sill>)
    return wall.sills;
  else if constexpr (std::is_same_v<Item, Opening>)
    return wall.openings;
  else if constexpr (std::is_same_v<Item, Column>)
    return wall.columns;
  else if constexpr (std::is_same_v<Item, Panel>)
    return wall.panels;
  else if constexpr (std::is_same_v<Item, Strap>)
    return wall.straps;
  else if constexpr (std::is_same_v<Item, Bolt>)
    return wall.bolts;
  else if constexpr (std::is_same_v<Item, Rod>)
    return wall.rods;
  else if constexpr (std::is_same_v<Item, Bar>)
    return wall.bars;
  else
    return wall.shots;
}

bool isStretch(PieceKind kind); // step, sill, opening, panel

// Stations a piece takes up; of a bar where it is planned. Rods stand where their column is: not here.
Interval stationsTaken(const PourStep& piece, const HardwareTypes& types);
Interval stationsTaken(const Sill& piece, const HardwareTypes& types);
Interval stationsTaken(const Opening& piece, const HardwareTypes& types);
Interval stationsTaken(const Panel& piece, const HardwareTypes& types);
Interval stationsTaken(const Column& piece, const HardwareTypes& types);
Interval stationsTaken(const Strap& piece, const HardwareTypes& types);
Interval stationsTaken(const Bolt& piece, const HardwareTypes& types);
Interval stationsTaken(const Bar& piece, const HardwareTypes& types);
Interval stationsTaken(const GradeShot& piece, const HardwareTypes& types);

// Two of a kind cannot both be: they would lie in one another. Bars: where `there` is planned or was found.
bool inTheWay(const PourStep& there, const PourStep& piece, const HardwareTypes& types);
bool inTheWay(const Sill& there, const Sill& piece, const HardwareTypes& types);
bool inTheWay(const Opening& there, const Opening& piece, const HardwareTypes& types);
bool inTheWay(const Panel& there, const Panel& piece, const HardwareTypes& types);
bool inTheWay(const Column& there, const Column& piece, const HardwareTypes& types);
bool inTheWay(const Strap& there, const Strap& piece, const HardwareTypes& types);
bool inTheWay(const Bolt& there, const Bolt& piece, const HardwareTypes& types);
bool inTheWay(const Rod& there, const Rod& piece, const HardwareTypes& types);
bool inTheWay(const Bar& there, const Bar& piece, const HardwareTypes& types);
bool inTheWay(const GradeShot& there, const GradeShot& piece, const HardwareTypes& types);

// In its very place, of the same make: nothing would be gained by a second one.
bool standsThere(const Piece& there, const Piece& piece);

// The pour line of a wall with such steps; of overlapping steps the lowest.
double pourOf(const std::vector<PourStep>& steps, double station);
// The lowest concrete of a wall.
double bottomOf(const WallLine& wall);

} // namespace sillwright
