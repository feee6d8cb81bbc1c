#include "core/drawing/plan.h"
#include "core/model/lookup.h"

#include <cmath>
#include <map>

#include <gtest/gtest.h>

namespace sillwright {
namespace {

// A closed ring of walls, counterclockwise, with one panel in each.
Job ring(const std::vector<Point2>& corners, double thickness = 8) {
  Job job;
  std::vector<Corner> list;
  for (const Point2 at : corners) {
    Corner corner;
    corner.id = takeId(job);
    corner.at = at;
    list.push_back(corner);
  }
  job.corners = list;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    WallLine wall;
    wall.id = takeId(job);
    wall.mark = std::string(1, char('A' + i));
    wall.startCorner = list[i].id;
    wall.endCorner = list[(i + 1) % corners.size()].id;
    wall.thickness = thickness;
    wall.footing = {16, 8, 4};
    Panel panel;
    panel.id = takeId(job);
    const double length = wallLength(job, wall);
    panel.to = std::min(48.0, length);
    wall.panels.push_back(panel);
    job.walls.add(wall);
  }
  return job;
}

const std::vector<Point2> rectangleRing{{0, 0}, {288, 0}, {288, 336}, {0, 336}};
const std::vector<Point2> lRing{{0, 0}, {360, 0}, {360, 180}, {180, 180}, {180, 360}, {0, 360}};
const std::vector<Point2> twelveRing{{0, 0},     {120, 0},   {120, 24},  {240, 24},  {240, 0},   {480, 0},
                                     {480, 240}, {360, 240}, {360, 300}, {200, 300}, {200, 240}, {0, 240}};

CheckedWall unchecked(const Job& job, std::size_t i) {
  CheckedWall wall;
  wall.layout = layOut(job, job.walls.pointer(i));
  return wall;
}

void expectOutline(const Polygon2& got, const Polygon2& wanted) {
  ASSERT_EQ(got.size(), wanted.size());
  for (std::size_t i = 0; i < got.size(); ++i) {
    EXPECT_NEAR(got[i].x, wanted[i].x, 1e-9) << i;
    EXPECT_NEAR(got[i].y, wanted[i].y, 1e-9) << i;
  }
}

Polygon2 concreteOf(const Job& job, std::size_t i) { return planConcrete(job.walls[i], placeOf(job, job.walls[i])); }

TEST(Plan, MitresOutsideCorners) {
  const Job job = ring(rectangleRing);
  expectOutline(concreteOf(job, 0), {{0, 0}, {288, 0}, {280, 8}, {8, 8}});
  expectOutline(concreteOf(job, 1), {{288, 0}, {288, 336}, {280, 328}, {280, 8}});
}

TEST(Plan, MitresInsideCorners) {
  const Job job = ring(lRing);
  // From (360, 180) to the inside corner (180, 180): the inside faces meet past the corner.
  expectOutline(concreteOf(job, 2), {{360, 180}, {180, 180}, {172, 172}, {352, 172}});
}

TEST(Plan, MitresAt45Degrees) {
  const Job job = ring({{0, 0}, {100, 0}, {200, 100}, {200, 300}, {0, 300}});
  const double in = 8 * std::tan(std::acos(-1.0) / 8); // half the turn
  expectOutline(concreteOf(job, 0), {{0, 0}, {100, 0}, {100 - in, 8}, {8, 8}});
}

TEST(Plan, MitresWallsOfTwoThicknesses) {
  Job job = ring(rectangleRing);
  WallLine wall = job.walls[1];
  wall.thickness = 6;
  job.walls.replace(wall);
  expectOutline(concreteOf(job, 0), {{0, 0}, {288, 0}, {282, 8}, {8, 8}});
}

TEST(Plan, CutsAFreeEndSquareAndGivesNothingForNoLength) {
  Job job = ring({{0, 0}, {100, 0}, {100, 100}});
  const WallPlace free{{0, 0}, {100, 0}, 100, {}, {}};
  expectOutline(planConcrete(job.walls[0], free), {{0, 0}, {100, 0}, {100, 8}, {0, 8}});
  EXPECT_TRUE(planConcrete(job.walls[0], WallPlace{}).empty());
}

TEST(Plan, EndsAWallShorterThanItsMitresInAPoint) {
  const WallPlace place{{0, 0}, {8, 0}, 8, Neighbour{{}, false, 90, 8, 0, 0}, Neighbour{{}, false, 90, 8, 0, 0}};
  WallLine wall;
  expectOutline(planConcrete(wall, place), {{0, 0}, {8, 0}, {4, 4}});
}

TEST(Plan, NoTextOrSignLiesOnAnother) {
  for (const auto& corners : {rectangleRing, lRing, twelveRing})
    for (const Medium medium : {Medium::Screen, Medium::Paper})
      for (const double scale : {0.3, 0.6, 1.5, 4.0}) {
        const Job job = ring(corners);
        PlanStyle style;
        style.view = {scale, {400, 900}};
        style.medium = medium;
        style.places = planPlaces(job, style);
        Drawing all = drawPlanFrame(job, style);
        for (std::size_t i = 0; i < job.walls.size(); ++i) {
          const Drawing one = drawPlanWall(job, unchecked(job, i), style);
          for (const TakenBox& t : one.taken())
            all.take(t.name, t.box);
        }
        const auto taken = all.taken();
        ASSERT_GT(taken.size(), job.walls.size());
        for (std::size_t a = 0; a < taken.size(); ++a)
          for (std::size_t b = 0; b < a; ++b)
            EXPECT_FALSE(taken[a].box.overlaps(taken[b].box, 0.01))
                << taken[a].name << " on " << taken[b].name << ", " << corners.size() << " walls, scale " << scale
                << (medium == Medium::Paper ? ", paper" : ", screen");
      }
}

TEST(Plan, AnswersThePointerOnWallsAndCorners) {
  const Job job = ring(rectangleRing);
  PlanStyle style;
  style.view = {1, {0, 400}};
  const WallLine& wall = job.walls[0];
  const Drawing drawing = drawPlanWall(job, unchecked(job, 0), style);
  ASSERT_EQ(drawing.hits().size(), 4u);
  EXPECT_EQ(drawing.hits()[3].part, HitArea::Part::Name); // its letter
  EXPECT_EQ(drawing.hits()[3].piece, (PieceRef{wall.id, {}}));
  EXPECT_EQ(drawing.hits()[0].piece, (PieceRef{wall.id, {}}));
  EXPECT_TRUE(drawing.hits()[0].box.contains(style.view.page({144, 4})));
  EXPECT_FALSE(drawing.hits()[0].box.contains(style.view.page({144, 12})));
  EXPECT_EQ(drawing.hits()[2].part, HitArea::Part::Corner);
  EXPECT_EQ(drawing.hits()[2].piece, (PieceRef{wall.id, wall.endCorner}));
  EXPECT_TRUE(drawing.hits()[2].box.contains(style.view.page({288, 0})));
}

TEST(Plan, FitsTheWindow) {
  const Job job = ring(rectangleRing);
  const Bounds window{0, 0, 300, 260};
  const PlanView view = fitPlan(job, window);
  const Point2 low = view.page({-4, -4});
  const Point2 high = view.page({292, 340});
  EXPECT_TRUE((window.contains(low) && window.contains(high)));
  EXPECT_NEAR(low.y - high.y, 260 - 2 * 0.16 * 260, 1e-9);
}

TEST(Plan, SaysBothDiagonalsWhenTheyAgree) {
  const Job job = ring(rectangleRing);
  PlanStyle style;
  style.view = {1, {0, 400}};
  std::map<std::string, int> said;
  const Drawing drawing = drawPlanFrame(job, style);
  for (const TakenBox& t : drawing.taken())
    ++said[t.name];
  EXPECT_EQ(said["both diagonals"], 1);
  EXPECT_EQ(said["36'-10 9/16\""], 1); // sqrt(288² + 336²) = 442.538 in
}

TEST(Plan, OverallDimensionsAreOfTheConcreteNotTheFooting) {
  const Job job = ring(rectangleRing);
  PlanStyle style;
  style.view = {1, {0, 400}};
  style.medium = Medium::Paper;
  std::map<std::string, int> said;
  const Drawing drawing = drawPlanFrame(job, style);
  for (const TakenBox& t : drawing.taken())
    ++said[t.name];
  EXPECT_EQ(said["24'-0\""], 1);
  EXPECT_EQ(said["28'-0\""], 1);
}

} // namespace
} // namespace sillwright
