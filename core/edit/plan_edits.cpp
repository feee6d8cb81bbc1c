#include "core/edit/plan_edits.h"

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

std::optional<Problem> chainProblem(std::span<const Point2> corners, bool closed) {
  if (corners.size() < (closed ? 3u : 2u))
    return Problem{"outline", closed ? "needs at least three corners" : "needs at least two corners"};
  for (std::size_t i = 0; i + (closed ? 0 : 1) < corners.size(); ++i) {
    const Point2 a = corners[i];
    const Point2 b = corners[(i + 1) % corners.size()];
    if (!(std::hypot(b.x - a.x, b.y - a.y) > tolerance::same))
      return Problem{"outline", "corner " + std::to_string(i + 1) + " and the next one are the same point"};
  }
  return std::nullopt;
}

// Counterclockwise, with the wall from the first corner to the second still the first.
Polygon2 turnedOut(std::span<const Point2> corners, bool closed) {
  Polygon2 chain(corners.begin(), corners.end());
  if (signedArea(chain) >= 0)
    return chain;
  std::reverse(chain.begin(), chain.end());
  if (closed)
    std::rotate(chain.begin(), chain.end() - 2, chain.end());
  return chain;
}

} // namespace

WallLine wallToDraw(const Job& job, Id like) {
  const WallLine* found = job.walls.find(like);
  if (!found && !job.walls.empty())
    found = &job.walls[0];
  if (found) {
    WallLine wall = withoutPieces(*found);
    wall.title.clear();
    wall.extra.clear();
    return wall;
  }
  WallLine wall;
  wall.footing = {16, 8, 4};
  wall.formTop = 1.5;
  wall.sillInset = 0.5;
  wall.studs = StudLayout{};
  return wall;
}

std::string nextWallMark(const Job& job) {
  return markAfter(lastWallMark(job));
}

Result<AddedWalls> addWalls(const Job& job, std::span<const Point2> corners, bool closed, const WallLine& like) {
  if (auto problem = chainProblem(corners, closed))
    return *problem;
  AddedWalls made{job, {}};
  std::vector<Corner> added;
  for (const Point2 at : turnedOut(corners, closed))
    added.push_back({takeId(made.job), at, {}});
  made.job.corners.edit([&](std::vector<Corner>& list) { list.insert(list.end(), added.begin(), added.end()); });
  std::string mark = lastWallMark(job);
  for (std::size_t i = 0; i + (closed ? 0 : 1) < added.size(); ++i) {
    WallLine wall = withoutPieces(like);
    wall.id = takeId(made.job);
    wall.mark = mark = markAfter(mark);
    wall.startCorner = added[i].id;
    wall.endCorner = added[(i + 1) % added.size()].id;
    // At every corner one runs by and one butts.
    wall.startFraming = EndFraming::RunsBy;
    wall.endFraming = closed || i + 2 < added.size() ? EndFraming::Butts : EndFraming::RunsBy;
    made.walls.push_back(wall.id);
    made.job.walls.add(std::move(wall));
  }
  return made;
}

Result<Job> addOutline(const Job& job, std::span<const Point2> corners, const WallLine& like) {
  auto made = addWalls(job, corners, true, like);
  if (!made)
    return made.problem();
  if (!isSimple(Polygon2(corners.begin(), corners.end())))
    return Problem{"outline", "crosses itself"};
  return std::move(made.value().job);
}

} // namespace sillwright
