#include "core/geometry/outline.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>
#include <vector>

#include <gtest/gtest.h>

#include "core/geometry/wall_frame.h"

namespace sillwright {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

// An L: 10 by 10 with the upper right 5 by 5 missing.
const Polygon2 ell = {{0, 0}, {10, 0}, {10, 5}, {5, 5}, {5, 10}, {0, 10}};

std::vector<Polygon2> squareWithHole() {
  return {rectangle(0, 0, 10, 10), rectangle(3, 3, 7, 7)};
}

Polygon2 reversed(Polygon2 ring) {
  std::reverse(ring.begin(), ring.end());
  return ring;
}

Polygon2 shifted(Polygon2 ring, Point2 by) {
  for (Point2& p : ring)
    p = {p.x + by.x, p.y + by.y};
  return ring;
}

class Random {
public:
  explicit Random(unsigned seed) : random_(seed) {}
  double number(double from, double to) { return std::uniform_real_distribution<double>(from, to)(random_); }
  int whole(int from, int to) { return std::uniform_int_distribution<int>(from, to)(random_); }
  // On a coarse grid collinear, repeated and touching corners are common.
  Point2 point(bool grid) {
    return grid ? Point2{whole(0, 6) * 1.0, whole(0, 6) * 1.0} : Point2{number(0, 6), number(0, 6)};
  }
  Polygon2 ring(bool grid, int least = 3, int most = 9) {
    Polygon2 ring;
    for (int n = whole(least, most); n > 0; --n)
      ring.push_back(point(grid));
    return ring;
  }

private:
  std::mt19937 random_;
};

// Even-odd by adding up the angles at which p sees the edges: every ring turns a whole number of times about p.
// Parity of turns is parity of crossings.
bool insideByAngles(Point2 p, const std::vector<Polygon2>& rings) {
  long turns = 0;
  for (const Polygon2& ring : rings) {
    double angle = 0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Point2 a{ring[i].x - p.x, ring[i].y - p.y};
      const Point2 next = ring[(i + 1) % ring.size()];
      const Point2 b{next.x - p.x, next.y - p.y};
      angle += std::atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
    }
    turns += std::lround(angle / (2 * std::acos(-1.0)));
  }
  return turns % 2 != 0;
}

double toOutlines(Point2 p, const std::vector<Polygon2>& rings) {
  double nearest = infinity;
  for (const Polygon2& ring : rings)
    nearest = std::min(nearest, distanceToOutline(p, ring));
  return nearest;
}

double total(const std::vector<Segment2>& parts) {
  double sum = 0;
  for (const Segment2& part : parts)
    sum += distance(part.a, part.b);
  return sum;
}

Point2 between(const Segment2& segment, double t) {
  return {segment.a.x * (1 - t) + segment.b.x * t, segment.a.y * (1 - t) + segment.b.y * t};
}

TEST(Inside, KnownCases) {
  EXPECT_TRUE(inside({2, 8}, ell));
  EXPECT_TRUE(inside({8, 2}, ell));
  EXPECT_FALSE(inside({8, 8}, ell));
  EXPECT_TRUE(inside({2, 5}, ell)); // level with corners
  EXPECT_FALSE(inside({-1, 5}, ell));
  EXPECT_FALSE(inside({-1, 10}, ell));
  EXPECT_FALSE(inside({11, 0}, ell));
  EXPECT_TRUE(inside({1, 1}, squareWithHole()));
  EXPECT_FALSE(inside({5, 5}, squareWithHole()));
  EXPECT_FALSE(inside({0, 0}, Polygon2{}));
  EXPECT_FALSE(inside({0, 0}, std::vector<Polygon2>{}));
  EXPECT_FALSE(inside({1, 1}, Polygon2{{0, 0}, {2, 2}}));
}

TEST(Inside, CountsAPointOnceWhereRingsShareAnEdge) {
  const Polygon2 left = rectangle(0, 0, 3, 9);
  for (const Polygon2& right : {rectangle(3, 0, 8, 9), reversed(rectangle(3, 0, 8, 9))})
    for (double y = 0.5; y < 9; y += 0.5)
      EXPECT_NE(inside({3, y}, left), inside({3, y}, right)) << y;
}

TEST(Inside, AgreesWithTheSumOfAngles) {
  Random random(21);
  for (int i = 0; i < 20000; ++i) {
    std::vector<Polygon2> rings;
    for (int n = random.whole(1, 3); n > 0; --n)
      rings.push_back(random.ring(i % 2 == 0, 1));
    const Point2 p = i % 4 < 2 ? Point2{random.whole(0, 12) * 0.5, random.whole(0, 12) * 0.5} : random.point(false);
    if (toOutlines(p, rings) < 1e-9)
      continue; // on an edge it may be either
    ASSERT_EQ(inside(p, rings), insideByAngles(p, rings)) << i;
    std::reverse(rings[0].begin(), rings[0].end());
    ASSERT_EQ(inside(p, rings), insideByAngles(p, rings)) << i;
  }
}

TEST(Clipped, KnownCases) {
  using Parts = std::vector<Segment2>;
  EXPECT_EQ(clipped({{-5, 2}, {15, 2}}, ell), (Parts{{{0, 2}, {10, 2}}}));
  EXPECT_EQ(clipped({{15, 2}, {-5, 2}}, ell), (Parts{{{10, 2}, {0, 2}}})); // keeps the direction
  EXPECT_EQ(clipped({{-5, 8}, {15, 8}}, ell), (Parts{{{0, 8}, {5, 8}}}));
  EXPECT_EQ(clipped({{1, 1}, {2, 2}}, ell), (Parts{{{1, 1}, {2, 2}}}));
  EXPECT_EQ(clipped({{20, 1}, {30, 1}}, ell), Parts{});
  EXPECT_EQ(clipped({{-5, 5}, {15, 5}}, squareWithHole()), (Parts{{{0, 5}, {3, 5}}, {{7, 5}, {10, 5}}}));
  const auto diagonal = clipped({{0, 0}, {10, 10}}, squareWithHole()); // through the corners of the hole
  ASSERT_EQ(diagonal.size(), 2u);
  EXPECT_EQ(diagonal[0].a, (Point2{0, 0}));
  EXPECT_NEAR(distance(diagonal[0].b, Point2{3, 3}), 0, 1e-12);
  EXPECT_NEAR(distance(diagonal[1].a, Point2{7, 7}), 0, 1e-12);
  EXPECT_EQ(diagonal[1].b, (Point2{10, 10}));
  EXPECT_EQ(clipped({{2, 2}, {2, 2}}, ell), (Parts{{{2, 2}, {2, 2}}}));
  EXPECT_EQ(clipped({{8, 8}, {8, 8}}, ell), Parts{});
  EXPECT_EQ(clipped({{0, 0}, {1, 1}}, Polygon2{}), Parts{});
}

TEST(Clipped, IsOnePieceThroughCornersAndAlongInnerTouches) {
  // Through the reflex corner of the L and on inside; a comb touching the line from below must not cut it.
  EXPECT_EQ(clipped({{0, 0}, {5, 5}}, ell).size(), 1u);
  EXPECT_EQ(clipped({{2, 8}, {8, 2}}, ell).size(), 1u);
  const Polygon2 comb = {{0, 0}, {2, 5}, {4, 0}, {6, 5}, {8, 0}, {8, 10}, {0, 10}};
  const auto parts = clipped({{0, 5}, {8, 5}}, comb);
  ASSERT_EQ(parts.size(), 1u);
  EXPECT_EQ(parts[0], (Segment2{{0, 5}, {8, 5}}));
}

TEST(Clipped, AlongAnEdgeKeepsWhatIsCertain) {
  // Along the inner edge y = 5 of the L: from 0 to 5 it runs inside, from 5 to 10 on the edge, where it may be either.
  const auto parts = clipped({{-2, 5}, {12, 5}}, ell);
  ASSERT_EQ(parts.size(), 1u);
  EXPECT_EQ(parts[0].a, (Point2{0, 5}));
  EXPECT_TRUE(parts[0].b == (Point2{5, 5}) || parts[0].b == (Point2{10, 5}));
}

TEST(Clipped, AgreesWithSamplingOnAnyRings) {
  Random random(22);
  double kept = 0;
  for (int i = 0; i < 6000; ++i) {
    const bool grid = i % 2 == 0;
    std::vector<Polygon2> rings;
    for (int n = random.whole(1, 3); n > 0; --n)
      rings.push_back(random.ring(grid, 1));
    const Segment2 segment{random.point(i % 3 == 0), random.point(i % 3 == 0)};
    const auto parts = clipped(segment, rings);
    const double whole = distance(segment.a, segment.b);
    const auto fraction = [&](Point2 p) { return whole > 0 ? distance(segment.a, p) / whole : 0; };
    double last = 0;
    for (const Segment2& part : parts) { // on the segment, in order, apart
      ASSERT_LT(distance(part.a, segment), 1e-12) << i;
      ASSERT_LT(distance(part.b, segment), 1e-12) << i;
      ASSERT_GE(fraction(part.a), last - 1e-12) << i;
      ASSERT_GE(fraction(part.b), fraction(part.a)) << i;
      last = fraction(part.b);
    }
    for (int n = 0; n <= 200; ++n) {
      const Point2 p = between(segment, n / 200.0);
      if (toOutlines(p, rings) < 1e-7)
        continue;
      const bool held =
          std::any_of(parts.begin(), parts.end(), [&](const Segment2& part) { return distance(p, part) < 1e-9; });
      ASSERT_EQ(held, insideByAngles(p, rings)) << i << " at " << n;
    }
    for (const Segment2& part : parts) // a part ends at the end of the segment or on an outline
      for (const Point2 end : {part.a, part.b})
        ASSERT_TRUE(end == segment.a || end == segment.b || toOutlines(end, rings) < 1e-9) << i;
    ASSERT_LE(total(parts), whole + 1e-9);
    kept += total(parts);
    if (!grid && i % 3 != 0) { // no edge along the segment: nothing may be either
      ASSERT_NEAR(total(clipped({segment.b, segment.a}, rings)), total(parts), 1e-9) << i;
      const Point2 by{1000.5, -2000.25};
      for (Polygon2& ring : rings)
        ring = shifted(ring, by);
      const Polygon2 moved = shifted({segment.a, segment.b}, by);
      ASSERT_NEAR(total(clipped({moved[0], moved[1]}, rings)), total(parts), 1e-9) << i;
    }
  }
  EXPECT_GT(kept, 1000);
}

TEST(DistanceToSegment, AgreesWithSamplingAndKnownCases) {
  EXPECT_EQ(distance(Point2{5, 3}, Segment2{{0, 0}, {10, 0}}), 3);
  EXPECT_EQ(distance(Point2{13, 4}, Segment2{{0, 0}, {10, 0}}), 5);
  EXPECT_EQ(distance(Point2{3, 4}, Segment2{{0, 0}, {0, 0}}), 5);
  EXPECT_EQ(distance(Point2{3, 0}, Segment2{{0, 0}, {10, 0}}), 0);
  Random random(23);
  for (int i = 0; i < 5000; ++i) {
    const Segment2 segment{random.point(i % 2 == 0), random.point(i % 2 == 0)};
    const Point2 p = random.point(i % 3 == 0);
    double sampled = infinity;
    for (int n = 0; n <= 400; ++n)
      sampled = std::min(sampled, distance(p, between(segment, n / 400.0)));
    const double exact = distance(p, segment);
    ASSERT_LE(exact, sampled + 1e-12) << i;
    ASSERT_GE(exact, sampled - distance(segment.a, segment.b) / 800 - 1e-12) << i;
    ASSERT_NEAR(exact, distance(p, Segment2{segment.b, segment.a}), 1e-12) << i;
  }
}

TEST(DistanceToOutline, IsToTheEdgesAlsoFromInside) {
  EXPECT_EQ(distanceToOutline({2, 8}, ell), 2);
  EXPECT_EQ(distanceToOutline({8, 8}, ell), 3);
  EXPECT_EQ(distanceToOutline({8, 9}, rectangle(0, 0, 5, 5)), 5);
  EXPECT_EQ(distanceToOutline({3, 4}, Polygon2{{0, 0}}), 5);
  EXPECT_EQ(distanceToOutline({3, 4}, Polygon2{}), infinity);
  EXPECT_EQ(distanceToOutline({0, 5}, rectangle(0, 0, 10, 10)), 0); // on the closing edge
}

// Each band between neighbouring heights of corners, cut into trapezoids: area without the shoelace sum.
double areaByBands(const Polygon2& ring) {
  std::vector<double> heights;
  for (const Point2 p : ring)
    heights.push_back(p.y);
  std::sort(heights.begin(), heights.end());
  double area = 0;
  for (std::size_t i = 1; i < heights.size(); ++i) {
    const double y = (heights[i - 1] + heights[i]) / 2; // the width is linear across a band without crossings
    area += total(clipped({{-10, y}, {20, y}}, ring)) * (heights[i] - heights[i - 1]);
  }
  return area;
}

TEST(SignedArea, KnownCasesAndDirection) {
  EXPECT_EQ(signedArea(ell), 75);
  EXPECT_EQ(signedArea(reversed(ell)), -75);
  EXPECT_EQ(signedArea(rectangle(1, 2, 4, 6)), 12);
  EXPECT_EQ(signedArea({{0, 0}, {4, 0}}), 0);
  EXPECT_EQ(signedArea({}), 0);
  EXPECT_EQ(signedArea(shifted(ell, {1 << 20, -(1 << 22)})), 75);
}

TEST(SignedArea, AgreesWithBandsOnSimpleRings) {
  Random random(24);
  int simple = 0;
  for (int i = 0; i < 30000; ++i) {
    const Polygon2 ring = random.ring(false, 3, 7);
    if (!isSimple(ring))
      continue;
    ++simple;
    ASSERT_NEAR(std::abs(signedArea(ring)), areaByBands(ring), 1e-9) << i;
    ASSERT_EQ(signedArea(ring) > 0, signedArea(reversed(ring)) < 0) << i;
  }
  EXPECT_GT(simple, 1000);
}

TEST(IsSimple, KnownCases) {
  EXPECT_TRUE(isSimple(ell));
  EXPECT_TRUE(isSimple(reversed(ell)));
  EXPECT_TRUE(isSimple({{0, 0}, {4, 0}, {0, 3}}));
  EXPECT_TRUE(isSimple({{0, 0}, {2, 0}, {4, 0}, {4, 4}, {0, 4}}));          // a corner within a straight side
  EXPECT_FALSE(isSimple({{0, 0}, {4, 4}, {4, 0}, {0, 4}}));                 // bow tie
  EXPECT_FALSE(isSimple({{0, 0}, {4, 0}, {8, 0}}));                         // flat
  EXPECT_FALSE(isSimple({{0, 0}, {8, 0}, {4, 0}, {4, 4}}));                 // folds back
  EXPECT_FALSE(isSimple({{0, 0}, {8, 0}, {8, 4}, {4, 0}, {0, 4}}));         // a corner touches an edge
  EXPECT_FALSE(isSimple({{0, 0}, {4, 4}, {8, 0}, {8, 8}, {4, 4}, {0, 8}})); // two corners meet
  EXPECT_FALSE(isSimple({{0, 0}, {4, 0}, {4, 0}, {4, 4}}));                 // repeated corner
  EXPECT_FALSE(isSimple({{0, 0}, {4, 0}, {4, 4}, {0, 0}}));                 // repeated last point
  EXPECT_FALSE(isSimple({{0, 0}, {4, 0}}));
  EXPECT_FALSE(isSimple({}));
}

// On a grid of whole numbers every test is exact in integers: no two edges that are not neighbours share a point, and
// neighbours share their corner alone.
struct GridPoint {
  long x;
  long y;
};

long turnOf(GridPoint a, GridPoint b, GridPoint c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool onEdge(GridPoint p, GridPoint a, GridPoint b) {
  return turnOf(a, b, p) == 0 && std::min(a.x, b.x) <= p.x && p.x <= std::max(a.x, b.x) && std::min(a.y, b.y) <= p.y &&
         p.y <= std::max(a.y, b.y);
}

bool shareAPoint(GridPoint a, GridPoint b, GridPoint c, GridPoint d) {
  if (onEdge(a, c, d) || onEdge(b, c, d) || onEdge(c, a, b) || onEdge(d, a, b))
    return true;
  const auto parts = [](GridPoint p, GridPoint q, GridPoint u, GridPoint v) {
    return (turnOf(p, q, u) > 0) != (turnOf(p, q, v) > 0);
  };
  return parts(a, b, c, d) && parts(c, d, a, b);
}

bool isSimpleOnGrid(const std::vector<GridPoint>& ring) {
  const std::size_t n = ring.size();
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = i + 1; j < n; ++j) {
      const auto [a, b] = std::pair{ring[i], ring[(i + 1) % n]};
      const auto [c, d] = std::pair{ring[j], ring[(j + 1) % n]};
      const bool bMeetsC = j == i + 1;
      const bool dMeetsA = (j + 1) % n == i;
      if (bMeetsC   ? onEdge(a, c, d) || onEdge(d, a, b)
          : dMeetsA ? onEdge(b, c, d) || onEdge(c, a, b)
                    : shareAPoint(a, b, c, d))
        return false;
    }
  return true;
}

TEST(IsSimple, AgreesWithWholeNumbersOnAGrid) {
  Random random(25);
  int simple = 0;
  for (int i = 0; i < 60000; ++i) {
    const Polygon2 ring = random.ring(true, 3, 7);
    std::vector<GridPoint> grid;
    for (const Point2 p : ring)
      grid.push_back({std::lround(p.x), std::lround(p.y)});
    const bool expected = isSimpleOnGrid(grid);
    simple += expected;
    ASSERT_EQ(isSimple(ring), expected) << i;
    ASSERT_EQ(isSimple(reversed(ring)), expected) << i;
    ASSERT_EQ(isSimple(shifted(ring, {4096.0625, -300.5})), expected) << i;
    Polygon2 turned = ring; // the corner it starts at does not matter
    std::rotate(turned.begin(), turned.begin() + 1, turned.end());
    ASSERT_EQ(isSimple(turned), expected) << i;
  }
  EXPECT_GT(simple, 2000);
}

TEST(BoundsOfPoints, KnownCases) {
  EXPECT_FALSE(bounds(Polygon2{}));
  EXPECT_EQ(bounds(Polygon2{{3, 4}}), std::pair(Point2{3, 4}, Point2{3, 4}));
  EXPECT_EQ(bounds(Polygon2{{3, -4}, {-1, 7}, {2, 2}}), std::pair(Point2{-1, -4}, Point2{3, 7}));
}

TEST(Rectangle, IsCounterclockwiseWhicheverCornersAreGiven) {
  const Polygon2 expected = {{1, 2}, {4, 2}, {4, 6}, {1, 6}};
  EXPECT_EQ(rectangle(1, 2, 4, 6), expected);
  EXPECT_EQ(rectangle(4, 6, 1, 2), expected);
  EXPECT_EQ(rectangle(4, 2, 1, 6), expected);
}

} // namespace
} // namespace sillwright
