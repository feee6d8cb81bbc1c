// Whether walls stand clear of one another in plan. Walls that share a corner meet there: they are held against each
// other only for folding back. Plan, inches.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/geometry/outline.h"
#include "core/model/job.h"

namespace sillwright {

// A wall as it stands in plan.
struct StandingWall {
  Id id;
  Id startCorner;
  Id endCorner;
  std::string mark;
  Segment2 face;     // outside, from left to right
  Polygon2 concrete; // counterclockwise, convex; see planConcrete
  Point2 low;        // box of the concrete
  Point2 high;
};
StandingWall standing(const Job& job, const WallLine& wall);
// All walls but those, in the order of the job.
std::vector<StandingWall> standingBut(const Job& job, std::span<const Id> walls);

// How far two convex outlines reach into each other: the least way one had to be moved for them to part. Not more than
// zero where they stand clear or only touch.
double depthOfOverlap(const Polygon2& a, const Polygon2& b);

struct PlanClash {
  enum class Kind : std::uint8_t {
    Crosses,   // the outside faces cross
    LiesOver,  // the concrete of one reaches into that of the other, by more than 1/32
    FoldsBack, // from a corner both share, one lies along the other
    InsideOut  // the outline the wall belongs to runs clockwise
  } kind = Kind::Crosses;
  Id wall;
  Id other; // empty for InsideOut
};
// "wall B would cross wall D"
std::string words(const Job& job, const PlanClash& clash);

// The first of `walls` that does not stand clear of the others or of one another. Looks closely only where boxes meet.
std::optional<PlanClash> clashOf(std::span<const StandingWall> walls, std::span<const StandingWall> others);

// The walls whose concrete changes when corners move: those at the corners, and those that meet them.
std::vector<Id> wallsAround(const Job& job, std::span<const Id> corners);

// The first clash of some walls of a job, with one another and with all others, or an outline of theirs that is turned
// inside out.
std::optional<PlanClash> clashIn(const Job& job, std::span<const Id> walls, std::span<const StandingWall> others);
std::optional<PlanClash> clashIn(const Job& job, std::span<const Id> walls);

} // namespace sillwright
