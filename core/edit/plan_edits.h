// Walls drawn on the plan: free functions from a job to a job, as core/edit/operations.h has them. Plan, inches.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/model/job.h"

namespace sillwright {

// What a newly drawn wall is like: the wall given, without its pieces and title; else the first wall of the job; in a
// job without walls a stem wall on a footing with studs at 16".
WallLine wallToDraw(const Job& job, Id like = {});

// The mark after the last wall's: A … Z, AA ….
std::string nextWallMark(const Job& job);

struct AddedWalls {
  Job job;
  std::vector<Id> walls; // in order of their marks
};
// Walls from corner to corner, each like `like` without its pieces; marks go on from the last used letter. A closed
// outline is turned so that it runs counterclockwise, with the wall between the first two corners still the first; an
// open chain that bends to the right is turned round, so that its outside is that of the bend. Whether walls cross or
// lie over others is not looked at: see plan_check.h. Error: fewer than three corners (open: two), or a wall of no
// length.
Result<AddedWalls> addWalls(const Job& job, std::span<const Point2> corners, bool closed, const WallLine& like);

} // namespace sillwright
