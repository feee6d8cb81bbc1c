// Walls cut in two, joined and moved on the plan: free functions from a job to a job, as core/edit/operations.h has
// them. Whether walls cross afterwards is not looked at: see plan_check.h. Plan and stations, inches.
#pragma once

#include <span>
#include <string>

#include "core/base/result.h"
#include "core/model/job.h"

namespace sillwright {

struct SplitWall {
  Job job;
  Id corner; // the new one
  Id second; // the new wall, right of it
};
// A new corner at a station of a wall. Pieces go to the half they stand in, rods with their column, readings with their
// piece; sills, steps and bars along are cut there; studs keep their places. The new wall has the next mark. Error: the
// station is not within the wall, or an opening, a panel or a column stands across it.
Result<SplitWall> splitWall(const Job& job, Id wall, double station);

// Two walls that meet in a corner made one: the one that ends there goes on, straight, to the end of the other, with
// the pieces of both: those of the first keep their distance from the left end, those of the second from the right end.
// What meets at the corner becomes one again: a sill with a splice there, a step, a bar along. Error: the corner is not
// of two walls, the walls are not alike, an outline would keep two walls only, or a piece would find no room.
Result<Job> joinAtCorner(const Job& job, Id corner);

// A wall moved out (+) or in, parallel to itself: its corners move along the walls they share with it, a free end
// square to the wall. Error: a neighbour is in line with it, a wall would keep no length, or a piece would stand past
// an end.
Result<Job> moveWall(const Job& job, Id wall, double out);

// The first piece that stands past an end of one of these walls, as a sentence; empty where all fit.
std::string misfitIn(const Job& job, std::span<const Id> walls);

} // namespace sillwright
