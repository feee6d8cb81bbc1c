// Cover at corners of any angle against the outline of both walls in plan: the least cover of an upright bar is the
// distance from its axis to the outline, less half its thickness.
#include <random>

#include "core/geometry/outline.h"
#include "core/rules/concrete_cover.h"
#include "corner_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;

constexpr double far = 400;
constexpr double thickness = 8;

// Of this wall up to the corner at (96, 0) and its neighbour beyond, in s and d; the walls turn by so much there.
Polygon2 outlineOf(double turn, double neighbourThickness) {
  const double angle = turn * std::numbers::pi / 180, c = std::cos(angle), s = std::sin(angle);
  const double n = neighbourThickness;
  // Where the inside faces meet: depth 8 here and depth n there.
  const Point2 inner{96 + (c * thickness - n) / s, thickness};
  return {{96 - far, 0},        {96, 0}, {96 + far * c, far * s}, {96 + far * c - n * s, far * s + n * c}, inner,
          {96 - far, thickness}};
}

WallLayout laidOut(BareWall bare) {
  bare.job.walls.add(bare.wall);
  return layOut(bare.job, bare.job.walls.findPointer(bare.wall.id));
}

double leastCover(const WallLayout& layout, double s, double d, double radius) {
  const Box3 steel{{s - radius, s + radius}, {d - radius, d + radius}, {-20, -10}};
  double least = 1e9;
  for (const Cover& cover : coversOf(layout, steel, radius))
    if (cover.face != CoverFace::Top && cover.face != CoverFace::Bottom && cover.face != CoverFace::FootingTop)
      least = std::min(least, cover.measured);
  return least;
}

TEST(CornerOracle, LeastCoverIsTheDistanceToTheOutline) {
  std::mt19937 random(20);
  const auto between = [&](double a, double b) { return std::uniform_real_distribution(a, b)(random); };
  int compared = 0;
  for (int corner = 0; corner < 200; ++corner) {
    const double turn = corner == 0 ? 90 : corner == 1 ? -90 : between(15, 165) * (corner % 2 == 0 ? 1 : -1);
    const double neighbourThickness = between(6, 12);
    BareWall atEnd = cornerWall(), atStart = cornerWall();
    addAfter(atEnd, turn, [&](WallLine& next) { next.thickness = neighbourThickness; });
    addBefore(atStart, turn, [&](WallLine& before) { before.thickness = neighbourThickness; });
    const WallLayout right = laidOut(atEnd), left = laidOut(atStart); // the second is the first in a mirror
    const Polygon2 outline = outlineOf(turn, neighbourThickness);
    for (int bar = 0; bar < 50; ++bar) {
      const double s = between(60, 125), d = between(0.1, thickness - 0.1), radius = between(0.1, 0.5);
      if (!inside({s, d}, outline))
        continue;
      ++compared;
      const double truth = distanceToOutline({s, d}, outline) - radius;
      ASSERT_NEAR(leastCover(right, s, d, radius), truth, 1e-9) << "turn " << turn << ", bar at " << s << ", " << d;
      ASSERT_NEAR(leastCover(left, 96 - s, d, radius), truth, 1e-9) << "turn " << turn << ", bar at " << s << ", " << d;
    }
  }
  EXPECT_GT(compared, 3000);
}

} // namespace
} // namespace sillwright
