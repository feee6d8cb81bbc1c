// Walls seen from above: how they go on from one another, and the outline of the concrete of each. Plan, inches.
#pragma once

#include <vector>

#include "core/geometry/shapes.h"
#include "core/model/place.h"

namespace sillwright {

// The wall that carries the line on from the end of this one, as Neighbour has it; empty where there is none.
Id wallAfter(const Job& job, const WallLine& wall);
// The walls of a closed outline from this one on; empty where the walls after it do not come back to it.
std::vector<Id> ringOf(const Job& job, Id wall);

// Station where the line at a depth of this wall meets the line at neighbourDepth of the neighbour; the wall's own end
// where there is no neighbour or the two are in line.
double mitreStation(const WallPlace& place, bool atStart, double depth, double neighbourDepth);

// The concrete of one wall in plan, counterclockwise: outside face from left to right, then the inside face. Ends are
// cut on the line from the corner of the outside faces to that of the inside faces; square where there is no neighbour
// or the two walls are in line. Three points where the mitres of a short wall meet before the inside face. Empty for a
// wall of no length.
Polygon2 planConcrete(const WallLine& wall, const WallPlace& place);

} // namespace sillwright
