// All the pieces of a wall carried along it.
#pragma once

#include "core/model/wall.h"

namespace sillwright {

// Stations of everything on the wall and of its readings become that much greater, in; bars where they are planned and
// where they were found. Rods hang on their columns.
void shiftWall(WallLine& wall, double by);

} // namespace sillwright
