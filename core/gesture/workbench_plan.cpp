// Walls cut, joined and moved without the hand.
#include <cmath>

#include "core/base/length.h"
#include "core/edit/plan_check.h"
#include "core/edit/wall_edits.h"
#include "core/gesture/workbench.h"
#include "core/model/lookup.h"

namespace sillwright {

namespace {

// The problem where walls clash that stood clear before.
std::optional<Problem> newClash(const Job& before, const Job& after, const std::vector<Id>& walls) {
  const auto clash = clashIn(after, walls);
  return clash && !clashIn(before, walls) ? std::optional(Problem{"plan", words(after, *clash)}) : std::nullopt;
}

} // namespace

std::optional<Problem> Workbench::splitWall(Id wall, double station) {
  cancel();
  auto split = sillwright::splitWall(session_.base(), wall, station);
  if (!split)
    return split.problem();
  const std::string name = "Split wall " + markOf(job(), {wall, {}}) + " at " + printLength(station, job().units);
  session_.apply(std::move(split->job), name, {{wall, {}}});
  return std::nullopt;
}

std::optional<Problem> Workbench::takeCornerAway(Id corner) {
  cancel();
  const Job base = session_.base();
  auto joined = joinAtCorner(base, corner);
  if (!joined)
    return joined.problem();
  const std::vector<Id> walls = base.walls.atCorner(corner);
  const Id kept = joined->walls.find(walls.front()) ? walls.front() : walls.back();
  const WallLine& wall = *joined->walls.find(kept);
  if (auto problem = newClash(base, *joined, wallsAround(*joined, std::vector<Id>{wall.startCorner, wall.endCorner})))
    return problem;
  const std::string name =
      "Take away the corner of walls " + markOf(base, {walls.front(), {}}) + " and " + markOf(base, {walls.back(), {}});
  session_.apply(std::move(joined.value()), name, {{kept, {}}});
  return std::nullopt;
}

std::optional<Problem> Workbench::moveWall(Id id, double out) {
  cancel();
  const Job base = session_.base();
  auto moved = sillwright::moveWall(base, id, out);
  if (!moved)
    return moved.problem();
  const WallLine& wall = *base.walls.find(id);
  if (auto problem = newClash(base, *moved, wallsAround(base, std::vector<Id>{wall.startCorner, wall.endCorner})))
    return problem;
  session_.apply(std::move(moved.value()),
                 "Move wall " + wall.mark + " " + printLength(std::abs(out), base.units) + (out < 0 ? " in" : " out"));
  return std::nullopt;
}

} // namespace sillwright
