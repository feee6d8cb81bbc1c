// The sample jobs, built in code; the files in samples/ are written from these. All invented.
#pragma once

#include "core/model/job.h"

namespace sillwright::support {

// A 24'-0" front with a 16'-0" opening between two piers; nothing to fix.
Job boatShedFront();
// The same, in the middle of the work, with the upright bars found elsewhere: one FIX, one ASK, one WATCH.
Job boatShedFrontSteelMoved();
// The same, with two bars found where the strap of the left end was to hang: it has no place on its column.
Job boatShedFrontNoRoom();
// A whole small house: ten walls, two of them meeting at inside corners, doors, windows, a stepped pour line, rods.
Job ridgeHouse();
// A small garage with something of every subject done wrong: to practise on, and to see what findings look like.
Job punchListPractice();

} // namespace sillwright::support
