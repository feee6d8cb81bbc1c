// Where a wall stands among its neighbours: all that a check or drawing of one wall needs from outside the wall itself.
#pragma once

#include <optional>
#include <vector>

#include "core/model/job.h"

namespace sillwright {

// The wall that shares a corner.
struct Neighbour {
  Id wall;
  bool insideCorner = false; // the concrete of the neighbour goes on past the end of this wall
  double turn = 0;           // degrees from this wall's direction to the neighbour's, + left (an outside corner)
  double thickness = 0;      // of the neighbour
  double sillInset = 0;
  double sillWidth = 0;      // of the neighbour's first sill at that corner; 0 where it has none
  double sillStart = 0;      // where that sill begins, from the corner along the neighbour; less than zero: past it
  EndFraming framing = EndFraming::RunsBy; // of the neighbour at that corner
  Interval stem{};               // heights there: top of its footing … its pour line
  Interval footingAcross{0, -1}; // depths of its footing; empty without one
  double bottom = 0;             // of its footing
  bool operator==(const Neighbour&) const = default;
};

// The taped distance from a corner of a wall to another corner, beside that of the plan.
struct TapedDiagonal {
  bool fromStart = true; // of the wall
  Id to; // corner
  double planned = 0;
  double measured = 0;
  bool operator==(const TapedDiagonal&) const = default;
};

struct WallPlace {
  Point2 from; // plan
  Point2 to;
  double length = 0;
  std::optional<Neighbour> atStart;
  std::optional<Neighbour> atEnd;
  std::vector<TapedDiagonal> diagonals{}; // from its corners, each told by the oldest wall there
  bool operator==(const WallPlace&) const = default;
};

WallPlace placeOf(const Job& job, const WallLine& wall);

} // namespace sillwright
