// How far sills may reach at the ends of their wall.
#pragma once

#include "core/model/place.h"

namespace sillwright {

// Stations a sill may take up: the wall, and into the neighbour's concrete at an inside corner.
Interval sillReach(const WallPlace& place);

} // namespace sillwright
