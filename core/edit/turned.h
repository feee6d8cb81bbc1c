// A piece seen in a mirror that stands across its wall.
#pragma once

#include "core/model/lookup.h"

namespace sillwright {

// The same piece with left and right changed: a station s goes to `sum` - s (sum = twice the station of the mirror, in
// the wall frame, in; it is the sum of any two stations that change places). Splices, hooks, the side a rod hangs on,
// the marks of a panel's ends and a washer slid along its slot change with it. Id, mark and the column of a strap or
// rod stay. A rod stands where its column and side put it, so its column has to be turned as well. Not turned are
// types: nails whose rows are not alike left and right stay as the type has them. Turned twice about the same mirror it
// is the piece again, where the stations are whole sixty-fourths.
Piece turned(const Piece& piece, double sum, const HardwareTypes& types);

inline Side other(Side side) {
  return side == Side::Left ? Side::Right : Side::Left;
}

} // namespace sillwright
