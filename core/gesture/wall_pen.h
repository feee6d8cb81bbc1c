// The pen that draws walls on the plan, corner by corner. A value and functions on it; the workbench holds it. It keeps
// what it needs to know of the job, so that moving it does not grow with the job. Plan, inches.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/drawing/in_hand.h"
#include "core/drawing/shown_pen.h"
#include "core/edit/plan_check.h"
#include "core/edit/plan_edits.h"
#include "core/gesture/input.h"

namespace sillwright {

struct WallPen {
  // Of the job it draws on.
  Job blank; // without walls, but with the units and the ids that are still free
  WallLine like;
  std::vector<StandingWall> standing;
  std::vector<Point2> cornersThere;
  Point2 start; // where the first corner goes as long as no pointer says another place
  // Drawn so far.
  std::vector<Point2> corners;
  std::optional<Point2> alongFace; // direction of the face of a wall that the first corner stands on
  // In hand.
  std::optional<Point2> at;
  Point2 direction{1, 0};           // from the last corner, of length 1
  std::optional<PointerAt> pointer; // that leads; none while an arrow key does
  bool closes = false;
  bool ends = false;
  SnapReason snap = SnapReason::None;
  std::vector<Segment2> inLineWith;
  std::string typed;
  std::string problem; // why no corner can stand at the place in hand
  std::string refused; // why what was wanted last was not done; till the next key, or till the pointer is well away
  Point2 refusedAt;
};

// A pen that has drawn nothing yet. like: the wall that new ones shall be like.
WallPen penFor(const Job& job, Id like);
// The job has changed under it: what is drawn stays.
void follow(WallPen& pen, const Job& job, Id like);

// The pointer leads: to the first corner to close, to the last to leave it open, else square to the wall before or to
// the plan unless Alt is held, as far as a corner or the face of a wall near by or a round length. A typed length
// counts for the pointer's.
void aim(WallPen& pen, const PointerAt& pointer);
// An arrow leads: before the first corner by `step`, after it as a direction.
void aim(WallPen& pen, Point2 arrow, double step);

// One character of a length; '\b' takes one back, or the last corner where nothing is typed. False where the key is not
// for the pen.
bool typeAt(WallPen& pen, char32_t key);
// Sets a corner at the place in hand, and leads on from there. False, and pen.problem or pen.refused says why, where
// none can be.
bool setCorner(WallPen& pen);
bool takeCornerBack(WallPen& pen); // false where there is none

// What was drawn, closed or left open, as part of the job. Problem: why it cannot be.
Result<AddedWalls> finished(const WallPen& pen, const Job& job, bool closed);

void refuse(WallPen& pen, std::string why);

ShownPen shownOf(const WallPen& pen);

} // namespace sillwright
