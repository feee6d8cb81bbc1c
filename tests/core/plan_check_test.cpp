// Walls against one another in plan: by hand, and on random outlines against the area that two of them share.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/edit/operations.h"
#include "core/edit/plan_check.h"
#include "core/edit/plan_edits.h"
#include "core/model/lookup.h"
#include "core/model/plan_concrete.h"

namespace sillwright {
namespace {

using Points = std::vector<Point2>;

AddedWalls drawn(const Points& corners, bool closed = true, const Job& job = newJob()) {
  return addWalls(job, corners, closed, wallToDraw(job)).value();
}

std::string said(const AddedWalls& made) {
  const auto clash = clashIn(made.job, made.walls);
  return clash ? words(made.job, *clash) : "";
}

TEST(PlanCheck, aRectangleStandsClear) {
  EXPECT_EQ(said(drawn({{0, 0}, {288, 0}, {288, 240}, {0, 240}})), "");
}

TEST(PlanCheck, anOutlineThatCrossesItselfSaysWhichWalls) {
  EXPECT_EQ(said(drawn({{0, 0}, {200, 0}, {200, 200}, {100, -100}, {0, 200}})), "wall A would cross wall C");
}

TEST(PlanCheck, wallsNearerThanTheyAreThickLieOverEachOther) {
  EXPECT_EQ(said(drawn({{0, 0}, {200, 0}, {200, 16}, {0, 16}})), "") << "back to back they only touch";
  EXPECT_EQ(said(drawn({{0, 0}, {200, 0}, {200, 15.75}, {0, 15.75}})), "wall A would lie over wall C");
}

TEST(PlanCheck, anInsideWallMayTouchWithItsEndsButNotReachIn) {
  const Job house = drawn({{0, 0}, {288, 0}, {288, 240}, {0, 240}}).job;
  EXPECT_EQ(said(drawn({{120, 8}, {120, 232}}, false, house)), "");
  EXPECT_EQ(said(drawn({{120, 8}, {120, 233}}, false, house)), "wall E would lie over wall C");
  EXPECT_EQ(said(drawn({{120, 8}, {120, 300}}, false, house)), "wall E would cross wall C");
  EXPECT_EQ(said(drawn({{288, 40}, {288, 60}}, false, house)), "wall E would lie over wall B");
  EXPECT_EQ(said(drawn({{288, 60}, {288, 40}}, false, house)), "") << "its concrete is on the left of the way it runs";
}

TEST(PlanCheck, aWallThatFoldsBackAndAnOutlineTurnedInsideOutAreNamed) {
  EXPECT_EQ(said(drawn({{0, 0}, {100, 0}, {40, 0}}, false)), "wall A would fold back onto wall B");
  const AddedWalls made = drawn({{0, 0}, {200, 0}, {100, 150}});
  const Id tip = made.job.corners->back().id;
  const Job turned = moveCorner(made.job, tip, {100, -150});
  const auto clash = clashIn(turned, made.walls);
  ASSERT_TRUE(clash);
  EXPECT_EQ(words(turned, *clash), "the outline of wall A would be turned inside out");
}

TEST(PlanCheck, movingACornerChangesItsWallsAndTheirNeighbours) {
  const AddedWalls made = drawn({{0, 0}, {288, 0}, {288, 240}, {200, 300}, {100, 300}, {0, 240}});
  const Id corner = made.job.corners->front().id;
  EXPECT_EQ(wallsAround(made.job, std::vector<Id>{corner}).size(), 4u); // of six
}

// ---- against the area that two walls share
// ------------------------------------------------------------------------------
double side(Point2 a, Point2 b, Point2 p) {
  return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
}

// What is left of a polygon to the left of a line.
Polygon2 cut(const Polygon2& polygon, Point2 a, Point2 b) {
  Polygon2 kept;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Point2 p = polygon[i], q = polygon[(i + 1) % polygon.size()];
    const double sp = side(a, b, p), sq = side(a, b, q);
    if (sp >= 0)
      kept.push_back(p);
    if ((sp > 0 && sq < 0) || (sp < 0 && sq > 0))
      kept.push_back({p.x + (q.x - p.x) * sp / (sp - sq), p.y + (q.y - p.y) * sp / (sp - sq)});
  }
  return kept;
}

Polygon2 shared(Polygon2 a, const Polygon2& b) {
  for (std::size_t i = 0; i < b.size() && !a.empty(); ++i)
    a = cut(a, b[i], b[(i + 1) % b.size()]);
  return a;
}

double diameter(const Polygon2& polygon) {
  double most = 0;
  for (const Point2 p : polygon)
    for (const Point2 q : polygon)
      most = std::max(most, std::hypot(p.x - q.x, p.y - q.y));
  return most;
}

TEST(PlanCheck, agreesWithTheSharedAreaOnRandomOutlines) {
  std::mt19937 random(5);
  std::uniform_int_distribution<int> place(0, 60), count(3, 7);
  int clear = 0, clashes = 0;
  for (int round = 0; round < 3000; ++round) {
    Points corners;
    for (int i = count(random); i > 0; --i)
      corners.push_back({8.0 * place(random), 8.0 * place(random)});
    const auto made = addWalls(newJob(), corners, true, wallToDraw(newJob()));
    if (!made)
      continue; // two corners at one place
    std::vector<StandingWall> walls;
    for (const Id id : made->walls)
      walls.push_back(standing(made->job, *made->job.walls.find(id)));
    bool must = false, may = false;
    for (std::size_t i = 0; i < walls.size(); ++i)
      for (std::size_t k = i + 2; k < walls.size(); ++k) {
        if ((k + 1) % walls.size() == i)
          continue; // neighbours
        const Polygon2 both = shared(walls[i].concrete, walls[k].concrete);
        const double area = both.size() < 3 ? 0 : signedArea(both);
        // What they share lies in a strip as wide as the overlap.
        must = must || area > diameter(both) / 32 + 1e-6;
        may = may || area > 1e-9;
      }
    const auto clash = clashIn(made->job, made->walls);
    const bool says = clash && (clash->kind == PlanClash::Kind::Crosses || clash->kind == PlanClash::Kind::LiesOver);
    const bool folds = clash && !says;
    if (!folds) {
      EXPECT_TRUE(says || !must) << round;
      EXPECT_TRUE(!says || may) << round;
    }
    clear += !clash;
    clashes += says;
  }
  EXPECT_GT(clear, 300);
  EXPECT_GT(clashes, 300);
}

} // namespace
} // namespace sillwright
