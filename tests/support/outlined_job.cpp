#include "tests/support/outlined_job.h"

#include <cmath>

namespace sillwright::support {

Opening door(OpeningKind kind, double from, double to, double sill, double head) {
  Opening opening;
  opening.kind = kind;
  opening.from = from;
  opening.to = to;
  opening.sillHeight = sill;
  opening.headHeight = head;
  return opening;
}

PourStep step(double from, double to, double height) {
  PourStep pour;
  pour.from = from;
  pour.to = to;
  pour.height = height;
  return pour;
}

std::vector<WallLine> outline(Job& job, const std::vector<Point2>& points, const WallLine& like) {
  std::vector<Corner> corners;
  for (const Point2& at : points)
    corners.push_back({takeId(job), at, ""});
  job.corners.edit([&](std::vector<Corner>& list) { list.insert(list.end(), corners.begin(), corners.end()); });
  std::vector<WallLine> walls;
  for (std::size_t i = 0; i < points.size(); ++i) {
    WallLine wall = like;
    wall.id = takeId(job);
    wall.mark = std::string(1, static_cast<char>('A' + i));
    wall.startCorner = corners[i].id;
    wall.endCorner = corners[(i + 1) % points.size()].id;
    wall.startFraming = wall.endFraming = i % 2 == 0 ? EndFraming::RunsBy : EndFraming::Butts;
    walls.push_back(wall);
  }
  return walls;
}

WallLine plainWall() {
  WallLine wall;
  wall.thickness = 8;
  wall.stemHeight = 24;
  wall.footing = {16, 8, 4};
  wall.formTop = 1.5;
  wall.sillInset = 0.5;
  return wall;
}

void build(Job& job, const std::vector<Point2>& points, std::vector<WallLine> walls, const std::vector<WallPlan>& plans,
           const std::vector<const char*>& titles, const Hardware& hardware) {
  Marks marks;
  for (std::size_t i = 0; i < walls.size(); ++i) {
    const Point2 a = points[i], b = points[(i + 1) % points.size()];
    walls[i].title = titles[i];
    fillWall(job, walls[i], std::hypot(b.x - a.x, b.y - a.y), plans[i], hardware, marks);
  }
  job.walls = WallList(std::move(walls));
}

} // namespace sillwright::support
