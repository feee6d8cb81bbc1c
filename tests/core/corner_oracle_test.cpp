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

double leastCover(const WallLayout& layout, Point2 at, double radius, Interval z) {
  const Box3 steel{{at.x - radius, at.x + radius}, {at.y - radius, at.y + radius}, z};
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
      ASSERT_NEAR(leastCover(right, {s, d}, radius, {-20, -10}), truth, 1e-9)
          << "turn " << turn << ", bar at " << s << ", " << d;
      ASSERT_NEAR(leastCover(left, {96 - s, d}, radius, {-20, -10}), truth, 1e-9)
          << "turn " << turn << ", bar at " << s << ", " << d;
    }
  }
  EXPECT_GT(compared, 3000);
}

// A rectangle in plan.
struct Plan {
  Interval s, d;
};

// Parts of an edge of one rectangle that the other does not cover, all of it or the two ends.
void addEdge(Interval edge, double at, Interval coveredEdge, Interval coveredAt, bool along,
             std::vector<Segment2>& left) {
  const auto add = [&](Interval part) {
    if (!part.empty())
      left.push_back(along ? Segment2{{part.from, at}, {part.to, at}} : Segment2{{at, part.from}, {at, part.to}});
  };
  if (at <= coveredAt.from || at >= coveredAt.to)
    return add(edge);
  add({edge.from, std::min(edge.to, coveredEdge.from)});
  add({std::max(edge.from, coveredEdge.to), edge.to});
}

// The outline of two rectangles together.
std::vector<Segment2> outlineOf(const Plan& a, const Plan& b) {
  std::vector<Segment2> left;
  for (const auto& [own, other] : {std::pair(a, b), std::pair(b, a)}) {
    for (const double d : {own.d.from, own.d.to})
      addEdge(own.s, d, other.s, other.d, true, left);
    for (const double s : {own.s.from, own.s.to})
      addEdge(own.d, s, other.d, other.s, false, left);
  }
  return left;
}

bool within(const Plan& plan, Point2 p) {
  return plan.s.contains(p.x) && plan.d.contains(p.y);
}

// The neighbour at a height, from its first to its last depth; nothing above and below it.
Plan neighbourAt(const WallLine& next, bool insideCorner, double pour, double z) {
  const double foot = -next.stemHeight;
  Interval depths{0, -1};
  if (z < pour && z > foot)
    depths = {0, next.thickness};
  else if (z < foot && z > foot - next.footing.depth)
    depths = {-next.footing.projection, next.footing.width - next.footing.projection};
  if (insideCorner)
    return {{96 + depths.from, 96 + depths.to}, {-far, thickness}};
  return {{96 - depths.to, 96 - depths.from}, {0, far}};
}

// From a point to the outline, the nearest over some heights; nothing where it is out of the concrete at one of them.
std::optional<double> truthAt(Point2 at, Interval heights, const WallLine& next, bool insideCorner, double pour) {
  const Plan own{{96 - far, 96 + 1e-11}, {0, thickness}}; // a hair into the neighbour where that begins at 96
  std::vector<double> cuts{heights.from, heights.to};
  for (const double z : {pour, -next.stemHeight, -next.stemHeight - next.footing.depth})
    if (z > heights.from && z < heights.to)
      cuts.push_back(z);
  std::sort(cuts.begin(), cuts.end());
  double nearest = 1e9;
  for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
    const Plan other = neighbourAt(next, insideCorner, pour, (cuts[i] + cuts[i + 1]) / 2);
    const bool there = !other.s.empty();
    if (!within(own, at) && !(there && within(other, at)))
      return std::nullopt;
    for (const Segment2& edge : outlineOf(own, there ? other : Plan{{500, 501}, {500, 501}}))
      nearest = std::min(nearest, distance(at, edge));
  }
  return nearest;
}

// Square corners with a neighbour of other heights: at every height the two rectangles of that height.
TEST(CornerOracle, NeighboursOfOtherHeights) {
  std::mt19937 random(21);
  const auto between = [&](double a, double b) { return std::uniform_real_distribution(a, b)(random); };
  constexpr double radius = 0.5;
  int compared = 0;
  for (int corner = 0; corner < 200; ++corner) {
    const bool insideCorner = corner % 2 == 0;
    const double pour = between(-12, 6);
    BareWall bare = cornerWall();
    WallLine neighbour;
    addAfter(bare, insideCorner ? -90 : 90, [&](WallLine& next) {
      next.thickness = between(6, 12);
      next.stemHeight = between(14, 30);
      next.footing = {between(14, 24), between(6, 10), between(1, 6)};
      stepWhole(next, pour);
      neighbour = next;
    });
    const WallLayout layout = laidOut(bare);
    for (int bar = 0; bar < 50; ++bar) {
      const Point2 at{between(70, 120), between(0.6, thickness - 0.6)};
      const double low = between(-24, -1), high = between(low, 0);
      const auto truth = truthAt(at, {low, high}, neighbour, insideCorner, pour);
      if (!truth)
        continue;
      ++compared;
      ASSERT_NEAR(leastCover(layout, at, radius, {low, high}), *truth - radius, 1e-9)
          << (insideCorner ? "inside" : "outside") << " corner, bar at " << at.x << ", " << at.y << " from " << low
          << " to " << high << ", neighbour from " << -neighbour.stemHeight << " to " << pour;
    }
  }
  EXPECT_GT(compared, 3000);
}

} // namespace
} // namespace sillwright
