// The framing a starter puts on a wall: sills, columns, panels. Stations in inches, wall frame.
#pragma once

#include <vector>

#include "core/model/job.h"

namespace sillwright {

// What stands on a wall: openings without ids and marks, stretches of panels.
struct FramedAs {
  std::vector<Opening> openings;
  std::vector<Interval> panels;
};

// From where to where the framing of a wall goes: at a corner by or up to that of its neighbour.
Interval framingOf(const Job& job, const WallLine& wall);

// Openings, sills between the doors, a post at each end of the framing, kings and trimmers at the openings, panels with
// the first mark of the plan, studs. Precondition: the wall is blank.
Job framed(const Job& job, Id wall, const FramedAs& as);

} // namespace sillwright
