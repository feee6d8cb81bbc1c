// Edits of walls, corners and what belongs to the whole job.
#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"
#include "core/edit/operations.h"
#include "core/geometry/outline.h"

namespace sillwright {

namespace {

// A … Z, AA … AZ, BA …: the mark after a mark of letters.
std::string markAfter(std::string mark) {
  for (std::size_t i = mark.size(); i-- > 0;) {
    if (mark[i] != 'Z') {
      ++mark[i];
      return mark;
    }
    mark[i] = 'A';
  }
  return "A" + mark;
}

bool letters(const std::string& mark) {
  return !mark.empty() && std::all_of(mark.begin(), mark.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
}

std::string lastWallMark(const Job& job) {
  std::string last;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const std::string& mark = job.walls[i].mark;
    const bool later = mark.size() != last.size() ? mark.size() > last.size() : mark > last;
    if (letters(mark) && later)
      last = mark;
  }
  return last;
}

WallLine withoutPieces(WallLine wall) {
  forEachList(wall, [](auto& list) { list.clear(); });
  wall.readings.clear();
  return wall;
}

std::optional<Problem> outlineProblem(const Polygon2& ring) {
  if (ring.size() < 3)
    return Problem{"outline", "needs at least three corners"};
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point2 a = ring[i];
    const Point2 b = ring[(i + 1) % ring.size()];
    if (!(std::hypot(b.x - a.x, b.y - a.y) > tolerance::same))
      return Problem{"outline", "corner " + std::to_string(i + 1) + " and the next one are the same point"};
  }
  if (!isSimple(ring))
    return Problem{"outline", "crosses itself"};
  return std::nullopt;
}

} // namespace

Job moveCorner(const Job& job, Id corner, Point2 to) {
  if (!findCorner(job, corner) || !std::isfinite(to.x) || !std::isfinite(to.y))
    return job;
  for (const Id id : job.walls.atCorner(corner)) {
    const WallLine& wall = *job.walls.find(id);
    const Corner* other = findCorner(job, wall.startCorner == corner ? wall.endCorner : wall.startCorner);
    if (other && std::hypot(other->at.x - to.x, other->at.y - to.y) < tolerance::tapeMark)
      return job;
  }
  Job next = job;
  next.corners.edit([&](std::vector<Corner>& list) { findIn(list, corner)->at = to; });
  return next;
}

Job replaceWall(const Job& job, WallLine wall) {
  Job next = job;
  if (job.walls.find(wall.id))
    next.walls.replace(std::move(wall));
  return next;
}

Result<Job> addOutline(const Job& job, std::span<const Point2> corners, const WallLine& like) {
  Polygon2 ring(corners.begin(), corners.end());
  if (auto problem = outlineProblem(ring))
    return *problem;
  if (signedArea(ring) < 0)
    std::reverse(ring.begin(), ring.end());
  Job next = job;
  std::vector<Id> ids;
  std::vector<Corner> added;
  for (const Point2 at : ring) {
    ids.push_back(takeId(next));
    added.push_back({ids.back(), at, {}});
  }
  next.corners.edit([&](std::vector<Corner>& list) { list.insert(list.end(), added.begin(), added.end()); });
  std::string mark = lastWallMark(job);
  for (std::size_t i = 0; i < ids.size(); ++i) {
    WallLine wall = withoutPieces(like);
    wall.id = takeId(next);
    wall.mark = mark = markAfter(mark);
    wall.startCorner = ids[i];
    wall.endCorner = ids[(i + 1) % ids.size()];
    // At every corner one runs by and one butts.
    wall.startFraming = EndFraming::RunsBy;
    wall.endFraming = EndFraming::Butts;
    next.walls.add(std::move(wall));
  }
  return next;
}

Job setTitle(const Job& job, TitleBlock title) {
  Job next = job;
  next.title = std::move(title);
  return next;
}

Job setUnits(const Job& job, LengthStyle units) {
  Job next = job;
  next.units = units;
  return next;
}

Job setLimits(const Job& job, JobLimits limits) {
  Job next = job;
  next.limits = Shared<JobLimits>(std::move(limits));
  return next;
}

Job setTypes(const Job& job, HardwareTypes types) {
  Job next = job;
  next.types = Shared<HardwareTypes>(std::move(types));
  return next;
}

} // namespace sillwright
