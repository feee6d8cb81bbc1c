// What is in hand while a gesture runs: for the drawing (ghost, live distances) and the status line. A plain value.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/geometry/outline.h"
#include "core/model/lookup.h"
#include "core/refit/slots.h"

namespace sillwright {

enum class SnapReason : std::uint8_t {
  None,
  TapeMark,
  ColumnCentre,
  PairHeight,
  PourLine,
  BarMiddle,
  StudMiddle,
  WallEnd,
  OpeningEdge,
  CornerLine,
  FirstCorner,
  LastCorner,
  WallFace,
  SquareCorner
};
std::string_view words(SnapReason reason); // "column centre"

struct InHand {
  enum class Kind : std::uint8_t { Move, Resize, Place, Corner, Wall, RubberBand } kind = Kind::Move;
  PieceRef piece;              // the one the pointer holds
  std::optional<Piece> before; // as it was; nothing for a new piece
  double station = 0;          // of the piece (or of the end in hand) now
  double moved = 0;            // from where it was; + to the right
  SnapReason snap = SnapReason::None;
  Id snappedTo;
  std::string typed;   // a length being typed
  std::string problem; // why the typed length is refused, or ""
  std::vector<BoundedSlot> offered; // where the piece may stand, everything else left as it is
  std::optional<double> landing;   // where it goes when let go, if not where it is shown
  std::optional<std::pair<Point3, Point3>> band; // rubber band on the elevation
  // On the plan, for a corner or a whole wall (moved: + out):
  std::vector<Id> changing;         // walls whose length changes
  Id lengthOf;                      // the one whose length a typed length sets
  std::vector<Segment2> inLineWith; // from a corner to what is in line with it
};

} // namespace sillwright
