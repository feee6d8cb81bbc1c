#include "core/geometry/wall_frame.h"

#include <cmath>
#include <random>

#include <gtest/gtest.h>

namespace sillwright {
namespace {

void expectNear(Point2 a, Point2 b, double within = 1e-9) {
  EXPECT_NEAR(a.x, b.x, within);
  EXPECT_NEAR(a.y, b.y, within);
}

TEST(WallFrame, GoesAlongTheWallAndInwardToTheLeft) {
  // The bottom wall of a house drawn counterclockwise: outside is below, to the right of travel.
  const auto bottom = wallFrame({10, 20}, {298, 20});
  expectNear(toPlan(bottom, 0, 0), {10, 20}, 0);
  expectNear(toPlan(bottom, 288, 0), {298, 20}, 0);
  expectNear(toPlan(bottom, 100, 8), {110, 28}, 0);

  const auto right = wallFrame({298, 20}, {298, 200});
  expectNear(toPlan(right, 12, 8), {290, 32}, 0);
  const auto left = wallFrame({10, 200}, {10, 20});
  expectNear(toPlan(left, 12, 8), {18, 188}, 0);
}

TEST(WallFrame, KeepsAxisParallelWallsExact) {
  const auto top = wallFrame({298.0625, 200}, {10.0625, 200});
  EXPECT_EQ(toPlan(top, 3.0625, 5.5).x, 295);
  EXPECT_EQ(toPlan(top, 3.0625, 5.5).y, 194.5);
}

TEST(WallFrame, ReturnsToTheWallAndKeepsDistances) {
  std::mt19937 random(3);
  std::uniform_real_distribution<double> coordinate(-2000, 2000);
  for (int i = 0; i < 5000; ++i) {
    const Point2 from{coordinate(random), coordinate(random)};
    const Point2 to{coordinate(random), coordinate(random)};
    const auto frame = wallFrame(from, to);
    expectNear(toWall(frame, from), {0, 0});
    expectNear(toWall(frame, to), {distance(from, to), 0});
    const Point2 a{coordinate(random), coordinate(random)};
    const Point2 b{coordinate(random), coordinate(random)};
    expectNear(toWall(frame, toPlan(frame, a.x, a.y)), a);
    EXPECT_NEAR(distance(toPlan(frame, a.x, a.y), toPlan(frame, b.x, b.y)), distance(a, b), 1e-9);
    EXPECT_NEAR(frame.linear().determinant(), 1, 1e-12); // turned, never mirrored
  }
}

TEST(WallFrame, WorksForShortWalls) {
  const auto frame = wallFrame({1000, 1000}, {1000.0625, 1000});
  expectNear(toPlan(frame, 1, 2), {1001, 1002}, 0);
}

TEST(WallFrame, MeasuresPlanDistance) {
  EXPECT_EQ(distance(Point2{0, 0}, Point2{3, 4}), 5);
  EXPECT_EQ(distance(Point2{7, 7}, Point2{7, 7}), 0);
}

} // namespace
} // namespace sillwright
