// Corners and walls held on the plan.
#include <algorithm>
#include <cmath>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/edit/operations.h"
#include "core/edit/wall_edits.h"
#include "core/geometry/wall_frame.h"
#include "core/gesture/held.h"

namespace sillwright {

namespace {

constexpr double freeStep = 1.0 / 64; // what a move without snapping is rounded to

Point2 unit(Point2 from, Point2 to) {
  const double length = distance(from, to);
  return length > 0 ? Point2{(to.x - from.x) / length, (to.y - from.y) / length} : Point2{1, 0};
}

// An x or y that another corner already has; the corner, where one is within reach.
const Corner* cornerInLine(const std::vector<Corner>& corners, Id own, double value, bool x, double reach) {
  const Corner* found = nullptr;
  for (const Corner& corner : corners) {
    const double off = std::abs((x ? corner.at.x : corner.at.y) - value);
    if (corner.id != own && off < reach) {
      reach = off;
      found = &corner;
    }
  }
  return found;
}

// Why what is shown cannot stay; empty where it can.
std::string planProblem(const Grip& grip, const Job& job, std::span<const Id> resized) {
  if (const std::string words = misfitIn(job, resized); !words.empty())
    return words;
  const auto clash = grip.clashed ? std::nullopt : clashIn(job, grip.changing, grip.standing);
  return clash ? words(job, *clash) : std::string();
}

Id otherEnd(const WallLine& wall, Id corner) {
  return wall.startCorner == corner ? wall.endCorner : wall.startCorner;
}

// Of the walls at a corner the one the corner is drawn along.
Id wallAlong(const Job& job, Id corner, Point2 from, Point2 to) {
  const Point2 way = unit(from, to);
  Id best;
  double most = -1;
  for (const Id id : job.walls.atCorner(corner)) {
    const Corner* far = findCorner(job, otherEnd(*job.walls.find(id), corner));
    const Point2 line = far ? unit(far->at, from) : Point2{};
    const double along = std::abs(line.x * way.x + line.y * way.y);
    if (along > most + tolerance::same) {
      most = along;
      best = id;
    }
  }
  return best;
}

Shown cornerAt(const Grip& grip, Point2 to) {
  const Id corner = grip.grabbed.piece;
  Shown shown{moveCorner(grip.base, corner, to), {}, "Move a corner"};
  shown.hand.kind = InHand::Kind::Corner;
  shown.hand.piece = grip.grabbed;
  shown.hand.changing = grip.base.walls.atCorner(corner);
  if (const Corner* before = findCorner(grip.base, corner))
    shown.hand.lengthOf = wallAlong(grip.base, corner, before->at, to);
  shown.hand.problem = planProblem(grip, shown.job, shown.hand.changing);
  return shown;
}

Point2 outwardOf(const Job& job, const WallLine& wall) {
  const Point2 along = unit(findCorner(job, wall.startCorner)->at, findCorner(job, wall.endCorner)->at);
  return {along.y, -along.x};
}

Shown wallOut(const Grip& grip, double out) {
  const WallLine& wall = *grip.base.walls.find(grip.grabbed.wall);
  const auto moved = moveWall(grip.base, wall.id, out);
  Shown shown{moved ? *moved : grip.base, {}, {}};
  shown.hand.kind = InHand::Kind::Wall;
  shown.hand.piece = grip.grabbed;
  shown.hand.moved = out;
  for (const Id corner : {wall.startCorner, wall.endCorner})
    for (const Id id : grip.base.walls.atCorner(corner))
      if (std::find(shown.hand.changing.begin(), shown.hand.changing.end(), id) == shown.hand.changing.end())
        shown.hand.changing.push_back(id);
  shown.hand.problem = moved ? planProblem(grip, shown.job, {}) : moved.problem().message;
  shown.name =
      "Move wall " + wall.mark + " " + printLength(std::abs(out), grip.base.units) + (out < 0 ? " in" : " out");
  return shown;
}

} // namespace

void lookRound(Grip& grip) {
  const WallLine* wall = grip.base.walls.find(grip.grabbed.wall);
  std::vector<Id> corners;
  if (grip.kind == InHand::Kind::Corner)
    corners = {grip.grabbed.piece};
  else if (wall)
    corners = {wall->startCorner, wall->endCorner};
  grip.changing = wallsAround(grip.base, corners);
  grip.standing = standingBut(grip.base, grip.changing);
  grip.clashed = clashIn(grip.base, grip.changing, grip.standing).has_value();
}

Shown cornerTo(const Grip& grip, const PointerAt& pointer) {
  if (pointer.keys.alt)
    return cornerAt(grip, {roundTo(pointer.plan.x, freeStep), roundTo(pointer.plan.y, freeStep)});
  Point2 to{roundTo(pointer.plan.x, tolerance::tapeMark), roundTo(pointer.plan.y, tolerance::tapeMark)};
  const std::vector<Corner>& corners = *grip.base.corners;
  const Corner* x = cornerInLine(corners, grip.grabbed.piece, pointer.plan.x, true, pointer.reach);
  const Corner* y = cornerInLine(corners, grip.grabbed.piece, pointer.plan.y, false, pointer.reach);
  to = {x ? x->at.x : to.x, y ? y->at.y : to.y};
  Shown shown = cornerAt(grip, to);
  for (const Corner* corner : {x, y})
    if (corner) {
      shown.hand.inLineWith.push_back({corner->at, to});
      shown.hand.snap = SnapReason::CornerLine;
    }
  return shown;
}

Shown wallTo(const Grip& grip, const PointerAt& pointer) {
  const WallLine* wall = grip.base.walls.find(grip.grabbed.wall);
  const Corner* from = wall ? findCorner(grip.base, wall->startCorner) : nullptr;
  if (!from || !findCorner(grip.base, wall->endCorner))
    return {grip.base, {}, {}};
  const Point2 outward = outwardOf(grip.base, *wall);
  const auto outOf = [&](Point2 p, Point2 q) { return (q.x - p.x) * outward.x + (q.y - p.y) * outward.y; };
  const double wanted = outOf(grip.start.plan, pointer.plan);
  if (pointer.keys.alt)
    return wallOut(grip, roundTo(wanted, freeStep));
  double out = roundTo(wanted, pointer.reach > 4 ? 1.0 : tolerance::tapeMark), least = pointer.reach;
  const Corner* inLine = nullptr;
  for (const Corner& corner : *grip.base.corners) {
    const double there = outOf(from->at, corner.at);
    if (corner.id == wall->startCorner || corner.id == wall->endCorner || std::abs(there - wanted) >= least)
      continue;
    least = std::abs(there - wanted);
    out = there;
    inLine = &corner;
  }
  Shown shown = wallOut(grip, out);
  if (inLine) {
    shown.hand.snap = SnapReason::CornerLine;
    shown.hand.inLineWith.push_back({inLine->at, findCorner(shown.job, wall->startCorner)->at});
  }
  return shown;
}

Shown planToLength(const Grip& grip, const InHand& now, double length) {
  if (grip.kind == InHand::Kind::Wall)
    return wallOut(grip, now.moved < 0 ? -length : length);
  const Id corner = grip.grabbed.piece;
  const Corner* at = findCorner(grip.base, corner);
  const WallLine* wall = grip.base.walls.find(now.lengthOf);
  const Corner* far = wall ? findCorner(grip.base, otherEnd(*wall, corner)) : nullptr;
  if (!at || !far)
    return {grip.base, now, {}};
  const Point2 line = unit(far->at, at->at);
  Shown shown = cornerAt(grip, {far->at.x + line.x * length, far->at.y + line.y * length});
  shown.hand.lengthOf = now.lengthOf;
  return shown;
}

} // namespace sillwright
