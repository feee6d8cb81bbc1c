// The close look: while a piece is in hand and the tape is too small to show sixteenths, a window in the emptiest part
// of the elevation with the same drawing at a scale at which it shows them.
#pragma once

#include "core/drawing/drawing.h"

namespace sillwright {

inline constexpr double closeLookScale = 55; // pt per inch: the least round one with sixteenths on the tape

// Where it is, and what it looks at; kept from frame to frame, so that neither jumps about under the hand.
struct CloseLook {
  Bounds box;         // page, with its head; nothing of it is drawn more than 1.5 pt outside
  double station = 0; // in its middle, in
  bool operator==(const CloseLook&) const = default;
};

} // namespace sillwright
