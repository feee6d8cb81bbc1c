#include "core/model/sill_reach.h"

namespace sillwright {

Interval sillReach(const WallPlace& place) {
  const double before = place.atStart && place.atStart->insideCorner ? place.atStart->thickness : 0;
  const double behind = place.atEnd && place.atEnd->insideCorner ? place.atEnd->thickness : 0;
  return {-before, place.length + behind};
}

} // namespace sillwright
