// Two walls made one, and a wall moved parallel to itself.
#include <algorithm>
#include <cmath>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/edit/operations.h"
#include "core/edit/plan_check.h"
#include "core/edit/wall_edits.h"
#include "core/edit/wall_shift.h"
#include "core/model/plan_concrete.h"

namespace sillwright {

namespace {

// What differs between two walls, in the words of the card; empty where they can be one.
std::string difference(const WallLine& a, const WallLine& b) {
  if (a.kind != b.kind)
    return "kind";
  if (a.thickness != b.thickness)
    return "thickness";
  if (a.stemHeight != b.stemHeight)
    return "height of the stem";
  if (a.footing != b.footing)
    return "footing";
  if (a.formTop != b.formTop || a.forms != b.forms)
    return "form boards";
  if (a.sillInset != b.sillInset)
    return "inset of the sill";
  return a.wallHeight != b.wallHeight ? "height" : "";
}

// Stations all pieces of a wall take up together; empty without pieces.
Interval takenUp(const Job& job, const WallLine& wall) {
  Interval all{1e18, -1e18};
  for (const Id piece : piecesOf(wall))
    if (const auto s = stationsOf(job, wall, piece))
      all = hull(all, *s);
  return all;
}

// ---- what was cut at the corner ---------------------------------------------------------------------------------
bool meet(double left, double right) {
  return std::abs(left - right) < tolerance::same;
}

bool takeIn(Sill& left, const Sill& right) {
  if (!meet(left.to, right.from) || !(left.nominal == right.nominal) || left.species != right.species)
    return false;
  left.splices.push_back(left.to);
  left.splices.insert(left.splices.end(), right.splices.begin(), right.splices.end());
  left.to = right.to;
  return true;
}
bool takeIn(PourStep& left, const PourStep& right) {
  if (!meet(left.to, right.from) || left.height != right.height)
    return false;
  left.to = right.to;
  return true;
}
bool takeIn(Bar& left, const Bar& right) {
  const Point3 end = left.planned.b, start = right.planned.a;
  if (left.run != BarRun::Along || right.run != BarRun::Along || left.size != right.size || left.found || right.found ||
      !meet(end.s, start.s) || !meet(end.d, start.d) || !meet(end.z, start.z))
    return false;
  left.planned.b = right.planned.b;
  return true;
}
template <class Other> bool takeIn(Other&, const Other&) {
  return false;
}

template <class List> void append(List& list, const List& more) {
  for (const auto& piece : more)
    if (std::none_of(list.begin(), list.end(), [&](auto& before) { return takeIn(before, piece); }))
      list.push_back(piece);
}

void append(WallLine& wall, const WallLine& more) {
  append(wall.steps, more.steps);
  append(wall.sills, more.sills);
  append(wall.openings, more.openings);
  append(wall.columns, more.columns);
  append(wall.panels, more.panels);
  append(wall.straps, more.straps);
  append(wall.bolts, more.bolts);
  append(wall.rods, more.rods);
  append(wall.bars, more.bars);
  append(wall.shots, more.shots);
  for (const Reading& reading : more.readings)
    if (findPiece(wall, reading.piece))
      wall.readings.push_back(reading);
}

struct Meeting {
  const WallLine* first = nullptr;  // ends there
  const WallLine* second = nullptr; // starts there
};

Result<Meeting> meetingAt(const Job& job, Id corner) {
  const std::vector<Id> walls = job.walls.atCorner(corner);
  if (walls.empty())
    return Problem{"corner", "there is no such corner"};
  if (walls.size() == 1)
    return Problem{"corner",
                   "only wall " + markOf(job, {walls[0], {}}) + " ends there: remove the wall, or move its end"};
  if (walls.size() > 2)
    return Problem{"corner", "more than two walls meet there"};
  Meeting met;
  for (const Id id : walls) {
    const WallLine* wall = job.walls.find(id);
    (wall->endCorner == corner ? met.first : met.second) = wall;
  }
  if (!met.first || !met.second)
    return Problem{"corner", "the two walls look to different sides"};
  if (met.first->startCorner == met.second->endCorner || ringOf(job, met.first->id).size() == 3)
    return Problem{"corner", "an outline needs three corners"};
  return met;
}

// ---- lines ------------------------------------------------------------------------------------------------------
Point2 unit(Point2 from, Point2 to) {
  const double length = std::hypot(to.x - from.x, to.y - from.y);
  return {(to.x - from.x) / length, (to.y - from.y) / length};
}

// The other wall at one of its corners; null where it ends free.
const WallLine* otherAt(const Job& job, const WallLine& wall, Id corner) {
  for (const Id id : job.walls.atCorner(corner))
    if (id != wall.id)
      return job.walls.find(id);
  return nullptr;
}

} // namespace

std::string misfitIn(const Job& job, std::span<const Id> walls) {
  for (const Id id : walls) {
    const WallLine* wall = job.walls.find(id);
    const double length = wall ? wallLength(job, *wall) : 0;
    for (const Id piece : wall ? piecesOf(*wall) : std::vector<Id>{}) {
      const Piece found = *findPiece(*wall, piece);
      const auto s = std::holds_alternative<Bar>(found) ? std::nullopt : stationsOf(job, *wall, piece);
      if (!s)
        continue;
      const bool stretch = std::holds_alternative<Sill>(found) || std::holds_alternative<Opening>(found) ||
                           std::holds_alternative<Panel>(found) || std::holds_alternative<PourStep>(found);
      const std::string name = std::string(tradeName(kindOf(found))) + " " + markOf(found);
      if (s->middle() > length + tolerance::same)
        return name + " would stand past the end of wall " + wall->mark;
      if (stretch && s->to > length + tolerance::same)
        return name + " would reach past the end of wall " + wall->mark;
    }
  }
  return {};
}

Result<Job> joinAtCorner(const Job& job, Id corner) {
  const auto met = meetingAt(job, corner);
  if (!met)
    return met.problem();
  const WallLine &first = *met->first, &second = *met->second;
  if (const std::string what = difference(first, second); !what.empty())
    return Problem{"corner", "walls " + first.mark + " and " + second.mark + " are not alike: " + what};
  const Corner* from = findCorner(job, first.startCorner);
  const Corner* to = findCorner(job, second.endCorner);
  const double length = std::hypot(to->at.x - from->at.x, to->at.y - from->at.y);
  if (length < 1)
    return Problem{"corner", "nothing would be left between the corners beside it"};
  const Interval left = takenUp(job, first);
  Interval right = takenUp(job, second);
  const double by = length - wallLength(job, second);
  right = {right.from + by, right.to + by};
  const bool fits = (left.empty() || left.to < length + tolerance::same) &&
                    (right.empty() || right.from > -tolerance::same) &&
                    (left.empty() || right.empty() || left.to < right.from + tolerance::same);
  if (!fits)
    return Problem{"corner", "the pieces of walls " + first.mark + " and " + second.mark +
                                 " find no room on one wall of " + printLength(length, job.units)};
  WallLine joined = first, more = second;
  shiftWall(more, by);
  append(joined, more);
  joined.endCorner = second.endCorner;
  joined.endFraming = second.endFraming;
  if (second.studs && (!joined.studs || joined.studs->from == Side::Right)) // counted from the end that stays
    joined.studs = second.studs;
  Job next = job;
  next.walls.remove(second.id);
  next.walls.replace(std::move(joined));
  next.corners.edit(
      [&](std::vector<Corner>& list) { std::erase_if(list, [&](const Corner& c) { return c.id == corner; }); });
  const auto ofIt = [&](const Diagonal& d) { return d.from == corner || d.to == corner; };
  if (std::any_of(next.diagonals->begin(), next.diagonals->end(), ofIt))
    next.diagonals.edit([&](auto& list) { std::erase_if(list, ofIt); });
  return next;
}

Result<Job> moveWall(const Job& job, Id id, double out) {
  const WallLine* wall = job.walls.find(id);
  const Corner* from = wall ? findCorner(job, wall->startCorner) : nullptr;
  const Corner* to = wall ? findCorner(job, wall->endCorner) : nullptr;
  if (!from || !to || wallLength(job, *wall) < tolerance::same)
    return Problem{"wall", "there is no such wall"};
  const Point2 along = unit(from->at, to->at), outward{along.y, -along.x};
  Job next = job;
  for (const Corner* corner : {from, to}) {
    Point2 way = outward; // of the corner, for every inch out
    if (const WallLine* other = otherAt(job, *wall, corner->id)) {
      const Corner* far = findCorner(job, other->startCorner == corner->id ? other->endCorner : other->startCorner);
      const Point2 line = unit(far->at, corner->at);
      const double rise = line.x * outward.x + line.y * outward.y;
      if (std::abs(rise) < 0.02)
        return Problem{"wall",
                       "wall " + other->mark + " is in line with wall " + wall->mark + ": it cannot stay straight"};
      way = {line.x / rise, line.y / rise};
      const double left = std::hypot(corner->at.x - far->at.x, corner->at.y - far->at.y) + out / rise;
      if (left < 1)
        return Problem{"wall", "wall " + other->mark + " would be gone"};
    }
    const Point2 at{corner->at.x + way.x * out, corner->at.y + way.y * out};
    next.corners.edit([&](std::vector<Corner>& list) { findIn(list, corner->id)->at = at; });
  }
  const Corner *start = findCorner(next, wall->startCorner), *end = findCorner(next, wall->endCorner);
  if ((end->at.x - start->at.x) * along.x + (end->at.y - start->at.y) * along.y < 1)
    return Problem{"wall", "nothing would be left of wall " + wall->mark};
  const Id corners[] = {from->id, to->id};
  std::vector<Id> changed;
  for (const Id corner : corners)
    for (const Id each : next.walls.atCorner(corner))
      changed.push_back(each);
  if (const std::string words = misfitIn(next, changed); !words.empty())
    return Problem{"wall", words};
  return next;
}

} // namespace sillwright
