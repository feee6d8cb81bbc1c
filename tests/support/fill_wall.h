// Lays a plausible wall out for samples and tests: framing round its openings, hardware at its panel ends, bolts along
// its sills, bars in its concrete. Everything is invented. Nothing here is used by the program.
#pragma once

#include <vector>

#include "core/model/job.h"

namespace sillwright::support {

// Types every sample uses; ids are taken from the job.
struct Hardware {
  Id strap, bolt, washer, rod;
};
Hardware addHardware(Job& job);

struct WallPlan {
  std::vector<Opening> openings;             // rising, without ids
  std::vector<Interval> panels;              // rising
  std::vector<PourStep> steps;               // without ids
  Nominal sill{2, 6};
  bool rods = false;                         // rods instead of straps
  double unitShear = 490;                    // plf
  double inAtStart = 0, inAtEnd = 0;         // how far in the framing starts where it butts
  double sillPastStart = 0, sillPastEnd = 0; // how far the sill goes on past an inside corner
};

// Running numbers of the marks of a job.
struct Marks {
  int strap = 1, bolt = 1, column = 1, trimmer = 1, upright = 1, along = 1, panel = 1, sill = 1, opening = 1, step = 1, rod = 1;
};

// wall: its id, mark, corners, concrete and forms are set; its lists are filled here.
void fillWall(Job& job, WallLine& wall, double length, const WallPlan& plan, const Hardware& hardware, Marks& marks);

} // namespace sillwright::support
