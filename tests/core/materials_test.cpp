#include "core/drawing/materials.h"

#include <cmath>
#include <set>

#include <gtest/gtest.h>

#include "core/drawing/parallel_lines.h"

namespace sillwright {
namespace {

const Polygon2 lShape{{0, 0}, {120, 0}, {120, 40}, {60, 40}, {60, 90}, {0, 90}};

std::vector<Point2> pointsOf(const Drawing& d, Prim::Kind kind) {
  std::vector<Point2> all;
  for (const Prim& p : d.prims())
    if (p.kind == kind)
      all.insert(all.end(), d.pointsOf(p).begin(), d.pointsOf(p).end());
  return all;
}

bool insideOrOn(Point2 p, const Polygon2& outline) {
  return inside(p, outline) || distanceToOutline(p, outline) < 1e-6;
}

TEST(Concrete, StaysInsideTheOutline) {
  Drawing d;
  drawConcrete(d, lShape, {0, 0});
  const auto dots = pointsOf(d, Prim::Kind::Disc), stones = pointsOf(d, Prim::Kind::Segments);
  EXPECT_GT(dots.size(), 40u);
  EXPECT_GT(stones.size(), 30u);
  for (const Point2 p : dots)
    EXPECT_TRUE(insideOrOn(p, lShape));
  for (const Point2 p : stones)
    EXPECT_TRUE(insideOrOn(p, lShape));
}

TEST(Concrete, HasThirtyFourMarksATile) {
  Drawing d;
  drawConcrete(d, rectangle(0, 0, 540, 540), {0, 0});
  // Every sixth is a stone: 28 dots a tile.
  EXPECT_EQ(pointsOf(d, Prim::Kind::Disc).size(), 100u * 28);
}

TEST(Concrete, DoesNotSwimWhenTheOutlineChanges) {
  Drawing small, large;
  drawConcrete(small, rectangle(10, 10, 100, 60), {3, 5});
  drawConcrete(large, rectangle(0, 0, 140, 90), {3, 5});
  std::set<std::pair<double, double>> all;
  for (const Point2 p : pointsOf(large, Prim::Kind::Disc))
    all.insert({p.x, p.y});
  const auto kept = pointsOf(small, Prim::Kind::Disc);
  ASSERT_GT(kept.size(), 20u);
  for (const Point2 p : kept)
    EXPECT_TRUE(all.contains({p.x, p.y}));
}

TEST(Concrete, ThinsOutOnPaper) {
  Drawing full, thin;
  drawConcrete(full, rectangle(0, 0, 540, 540), {0, 0});
  drawConcrete(thin, rectangle(0, 0, 540, 540), {0, 0}, 26.0 / 34);
  EXPECT_EQ(pointsOf(thin, Prim::Kind::Disc).size(), 100u * 21); // 26 marks, five of them stones
}

TEST(Earth, StrokesLeanBothWaysInside) {
  Drawing d;
  drawEarth(d, lShape, {0, 0});
  const auto ends = pointsOf(d, Prim::Kind::Segments);
  ASSERT_GT(ends.size(), 100u);
  int rising = 0, falling = 0;
  for (std::size_t i = 0; i < ends.size(); i += 2) {
    const double dx = ends[i + 1].x - ends[i].x, dy = ends[i + 1].y - ends[i].y;
    EXPECT_NEAR(std::abs(dx), std::abs(dy), 1e-6);
    EXPECT_LE(std::hypot(dx, dy), 6.6 + 1e-9);
    (dx * dy < 0 ? rising : falling) += 1; // y runs down the page
    EXPECT_TRUE(insideOrOn(ends[i], lShape));
    EXPECT_TRUE(insideOrOn(ends[i + 1], lShape));
  }
  EXPECT_GT(rising, 20);
  EXPECT_GT(falling, 20);
}

TEST(Wood, RingsFillTheBoxAndStayInside) {
  const Bounds box{20, 30, 60, 100};
  Drawing d;
  drawWoodCut(d, box);
  const auto ends = pointsOf(d, Prim::Kind::Segments);
  Bounds covered;
  for (const Point2 p : ends) {
    EXPECT_TRUE(box.grown(1e-6).contains(p));
    covered = hull(covered, Bounds{p.x, p.y, p.x, p.y}.grown(0.01));
  }
  EXPECT_LT(covered.x0, 21);
  EXPECT_GT(covered.x1, 59);
  EXPECT_LT(covered.y0, 34);
  EXPECT_GT(covered.y1, 99);
}

TEST(Steel, IsSolidWhereThin) {
  Drawing thin, thick;
  drawSteelCut(thin, rectangle(0, 0, 40, 2));
  drawSteelCut(thick, rectangle(0, 0, 40, 20));
  ASSERT_EQ(thin.prims().size(), 1u);
  EXPECT_EQ(thin.prims()[0].ink, Ink::Steel);
  EXPECT_EQ(thin.prims()[0].kind, Prim::Kind::Fill);
  EXPECT_GT(pointsOf(thick, Prim::Kind::Segments).size(), 20u);
  EXPECT_EQ(thick.prims()[0].ink, Ink::SteelFace);
}

TEST(Materials, HaveNothingToDrawWithoutAnOutline) {
  Drawing d;
  drawConcrete(d, {}, {0, 0});
  drawEarth(d, {}, {0, 0});
  drawSteelCut(d, {});
  EXPECT_TRUE(d.empty());
}

TEST(ParallelLines, AreTheirSpacingApartAndThroughTheOrigin) {
  const auto lines = parallelLines(rectangle(0, 0, 20, 10), 0, 3, {0, 4});
  ASSERT_EQ(lines.size(), 3u); // at 1, 4 and 7
  for (const Segment2& line : lines) {
    EXPECT_NEAR(std::fmod(line.a.y - 1 + 3, 3), 0, 1e-9);
    EXPECT_NEAR(std::abs(line.b.x - line.a.x), 20, 1e-9);
  }
}

TEST(ParallelLines, BreakAtAConcaveOutline) {
  const Polygon2 fork{{0, 0}, {10, 0}, {10, 20}, {20, 20}, {20, 0}, {30, 0}, {30, 30}, {0, 30}};
  EXPECT_EQ(parallelLines(fork, 0, 100, {0, 10}).size(), 2u);
}

} // namespace
} // namespace sillwright
