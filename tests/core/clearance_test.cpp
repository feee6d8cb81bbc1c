#include "core/geometry/clearance.h"

#include <array>
#include <cmath>
#include <limits>
#include <vector>

#include <gtest/gtest.h>

#include "tests/core/clearance_oracle.h"

namespace sillwright {
namespace {

constexpr double rounding = 1e-9;

// A strap of 2 1/2 in beside a vertical bar.
const Ribbon strap{285.25, 2.5, 0.105, {{0.05, 0}, {0.5, -2}, {3.75, -12}, {5.5, -14}, {5.5, -12.5}}};
const Capsule verticalBar{{283.125, 4, -28.5}, {283.125, 4, -2}, 0.25};

// Both nearest points belong to their shapes and are as far apart as was said.
void expectBelongs(const Clearance& clear, const Capsule& first, const Capsule& second) {
  EXPECT_NEAR(oracle::pointToSegment(clear.onFirst, first.a, first.b), 0, rounding);
  EXPECT_NEAR(oracle::pointToSegment(clear.onSecond, second.a, second.b), 0, rounding);
  EXPECT_NEAR(distance(clear.onFirst, clear.onSecond) - first.radius - second.radius, clear.distance, rounding);
}

void expectBelongs(const Clearance& clear, const Capsule& bar, const Ribbon& plate) {
  EXPECT_NEAR(oracle::pointToSegment(clear.onFirst, bar.a, bar.b), 0, rounding);
  EXPECT_NEAR(oracle::distanceToPlate(clear.onSecond, plate), 0, rounding);
  EXPECT_NEAR(distance(clear.onFirst, clear.onSecond) - bar.radius, clear.distance, rounding);
}

// Proof that no two points of two convex shapes are nearer: a slab square to the line between the nearest points, as
// thick as their distance, has all corners of one shape on one side and all of the other on the other.
template <class Corners, class OtherCorners>
void expectSlab(const Clearance& clear, const Corners& first, const OtherCorners& second) {
  const Point3 across = oracle::minus(clear.onSecond, clear.onFirst);
  const double apart = oracle::length(across);
  if (apart < 1e-6)
    return; // too thin to have a direction; the other checks hold for it
  const Point3 unit = oracle::times(across, 1 / apart);
  for (const Point3& corner : first)
    EXPECT_LE(oracle::dot(unit, oracle::minus(corner, clear.onFirst)), rounding);
  for (const Point3& corner : second)
    EXPECT_GE(oracle::dot(unit, oracle::minus(corner, clear.onSecond)), -rounding);
}

Point3 shifted(Point3 p, Point3 by) {
  return oracle::plus(p, by);
}
Capsule shifted(const Capsule& bar, Point3 by) {
  return {shifted(bar.a, by), shifted(bar.b, by), bar.radius};
}
Ribbon shifted(Ribbon plate, Point3 by) {
  plate.station += by.s;
  for (ProfilePoint& p : plate.profile)
    p = {p.d + by.d, p.z + by.z};
  return plate;
}

const Point3 far{1234.0625, -77.5, 310.25};

TEST(ClearanceOfBars, KnownCases) {
  const Capsule along{{0, 0, 0}, {10, 0, 0}, 0.25};
  EXPECT_DOUBLE_EQ(clearance(along, Capsule{{5, -3, 2}, {5, 3, 2}, 0.5}).distance, 1.25);   // crossing above
  EXPECT_DOUBLE_EQ(clearance(along, Capsule{{2, 0, 3}, {20, 0, 3}, 0.25}).distance, 2.5);   // parallel beside
  EXPECT_DOUBLE_EQ(clearance(along, Capsule{{13, 4, 0}, {23, 4, 0}, 0}).distance, 4.75);    // parallel past the end
  EXPECT_DOUBLE_EQ(clearance(along, Capsule{{12, 0, 0}, {20, 0, 0}, 0.25}).distance, 1.5);  // in line, apart
  EXPECT_DOUBLE_EQ(clearance(along, Capsule{{10, 0, 0}, {20, 0, 0}, 0.25}).distance, -0.5); // in line, end to end
  EXPECT_DOUBLE_EQ(clearance(along, Capsule{{3, 0, 0}, {7, 0, 0}, 0.25}).distance, -0.5);   // in line, one within
  EXPECT_DOUBLE_EQ(clearance(along, Capsule{{3, 4, 0}, {3, 4, 0}, 1}).distance, 2.75);      // ball beside
  EXPECT_DOUBLE_EQ(clearance(along, Capsule{{-3, 4, 0}, {-3, 4, 0}, 0}).distance, 4.75);    // ball past the end
  EXPECT_DOUBLE_EQ(clearance(along, Capsule{{4, 0.5, -9}, {4, 0.5, 9}, 0.25}).distance, 0); // touching
  EXPECT_DOUBLE_EQ(clearance(Capsule{{1, 1, 1}, {1, 1, 1}, 0}, Capsule{{1, 1, 1}, {1, 1, 1}, 0}).distance, 0);
}

TEST(ClearanceOfBars, GivesTheNearestPoints) {
  const Clearance clear = clearance(Capsule{{0, 0, 0}, {10, 0, 0}, 0.25}, Capsule{{4, -3, 2}, {4, 3, 2}, 0.5});
  EXPECT_EQ(clear.onFirst, (Point3{4, 0, 0}));
  EXPECT_EQ(clear.onSecond, (Point3{4, 0, 2}));
}

TEST(ClearanceOfBars, AgreesWithSearchAndProofOnAnyPair) {
  oracle::Shapes shapes(11);
  for (int i = 0; i < 20000; ++i) {
    const Capsule first = shapes.bar(i % 2 == 0);
    const Capsule second = shapes.bar(i % 3 == 0);
    const Clearance clear = clearance(first, second);
    ASSERT_NEAR(clear.distance, oracle::barToBar(first, second), rounding) << i;
    expectBelongs(clear, first, second);
    expectSlab(clear, std::array{first.a, first.b}, std::array{second.a, second.b});
    ASSERT_NEAR(clearance(second, first).distance, clear.distance, 1e-12) << i;
    ASSERT_NEAR(clearance(shifted(first, far), shifted(second, far)).distance, clear.distance, rounding) << i;
    if (HasFailure())
      FAIL() << "case " << i;
  }
}

TEST(ClearanceOfBars, StaysExactForNearlyParallelBars) {
  oracle::Shapes shapes(12);
  for (int i = 0; i < 5000; ++i) {
    // Two long axes that cross at a tiny angle: they touch, whatever the angle.
    const double angle = std::pow(10, -shapes.number(1, 15));
    const double at = shapes.number(10, 90);
    const Capsule first{{0, 0, 0}, {100, 0, 0}, 0};
    const Capsule second{{0, -at * angle, 0}, {100, (100 - at) * angle, 0}, 0};
    ASSERT_NEAR(clearance(first, second).distance, 0, 1e-12) << angle;
    const Capsule lifted{{0, -at * angle, 1}, {100, (100 - at) * angle, 1}, 0};
    ASSERT_NEAR(clearance(first, lifted).distance, 1, 1e-12) << angle;
  }
}

TEST(ClearanceOfBarAndPlate, StrapBesideAVerticalBar) {
  const Clearance clear = clearance(verticalBar, strap);
  EXPECT_DOUBLE_EQ(clear.distance, 0.625);
  EXPECT_DOUBLE_EQ(clear.onSecond.s, 284);
  EXPECT_DOUBLE_EQ(clear.onFirst.s, 283.125);
  EXPECT_DOUBLE_EQ(clear.onFirst.d, 4);
}

TEST(ClearanceOfBarAndPlate, KnownCases) {
  const Ribbon upright{10, 2, 0.5, {{4, 0}, {4, -10}}}; // s 9 … 11, d 3.75 … 4.25
  EXPECT_DOUBLE_EQ(clearance(Capsule{{14, 4, -20}, {14, 4, 20}, 0.25}, upright).distance, 2.75);   // beside
  EXPECT_DOUBLE_EQ(clearance(Capsule{{10, 6, -20}, {10, 6, 20}, 0.25}, upright).distance, 1.5);    // behind
  EXPECT_DOUBLE_EQ(clearance(Capsule{{0, 4, -13}, {20, 4, -13}, 0.5}, upright).distance, 2.5);     // under
  EXPECT_DOUBLE_EQ(clearance(Capsule{{14, 8.25, -20}, {14, 8.25, 20}, 0}, upright).distance, 5);   // over a corner
  EXPECT_DOUBLE_EQ(clearance(Capsule{{10, 4, -20}, {10, 4, 20}, 0.25}, upright).distance, -0.25);  // right through
  EXPECT_DOUBLE_EQ(clearance(Capsule{{10, 4, -5}, {10, 4, -5}, 0.25}, upright).distance, -0.25);   // ball inside
  EXPECT_DOUBLE_EQ(clearance(Capsule{{11.25, 4, -20}, {11.25, 4, 0}, 0.25}, upright).distance, 0); // touching
  EXPECT_DOUBLE_EQ(clearance(Capsule{{0, 0, 0}, {20, 8, 0}, 0}, upright).distance, 0);             // through the end
}

TEST(ClearanceOfBarAndPlate, DoesNotLengthenThePlateAtBends) {
  // Two pieces square to each other: the outer corner of the bend is open, half a thickness each way.
  const Ribbon bent{0, 2, 1, {{0, 0}, {0, -10}, {10, -10}}};
  EXPECT_NEAR(clearance(Capsule{{0, -0.5, -10.5}, {0, -0.5, -10.5}, 0}, bent).distance, 0.5, 1e-12);
}

TEST(ClearanceOfBarAndPlate, DegeneratePlates) {
  const Capsule bar{{0, 0, -5}, {0, 0, 5}, 0.5};
  EXPECT_EQ(clearance(bar, Ribbon{3, 1, 0.1, {}}).distance, std::numeric_limits<double>::infinity());
  EXPECT_DOUBLE_EQ(clearance(bar, Ribbon{3, 1, 0.1, {{0, 0}}}).distance, 2);
  EXPECT_DOUBLE_EQ(clearance(bar, Ribbon{3, 1, 0.1, {{0, 0}, {0, 0}}}).distance, 2);
  EXPECT_DOUBLE_EQ(clearance(bar, Ribbon{3, 0, 0, {{0, 0}, {0, 1}}}).distance, 2.5);
  EXPECT_DOUBLE_EQ(clearance(bar, Ribbon{3, 1, 0.1, {{9, 9}, {9, 9}, {0, 9}, {0, 9}, {0, 0}}}).distance, 2);
}

TEST(ClearanceOfBarAndPlate, AgreesWithSearchOnAnyPair) {
  oracle::Shapes shapes(13);
  for (int i = 0; i < 12000; ++i) {
    const Capsule bar = shapes.bar(i % 2 == 0);
    const Ribbon plate = shapes.plate(i % 3 == 0);
    const Clearance clear = clearance(bar, plate);
    ASSERT_NEAR(clear.distance, oracle::barToPlate(bar, plate), rounding) << i;
    expectBelongs(clear, bar, plate);
    for (int n = 0; n <= 40; ++n) // plain sampling: no point of the axis is nearer than was said
      ASSERT_GE(oracle::distanceToPlate(oracle::lerp(bar.a, bar.b, n / 40.0), plate) - bar.radius,
                clear.distance - rounding);
    if (plate.profile.size() == 2)
      expectSlab(clear, std::array{bar.a, bar.b}, oracle::piecesOf(plate)[0].corners());
    ASSERT_NEAR(clearance(shifted(bar, far), shifted(plate, far)).distance, clear.distance, rounding) << i;
    ASSERT_NEAR(clearance(Capsule{bar.b, bar.a, bar.radius}, plate).distance, clear.distance, 1e-12) << i;
    if (HasFailure())
      FAIL() << "case " << i;
  }
}

TEST(ClearanceOfBarAndBox, KnownCasesAndAgreesWithAPlateOfTheSameSolid) {
  const Box3 box{{0, 4}, {0, 8}, {-10, 0}};
  EXPECT_DOUBLE_EQ(clearance(Capsule{{7, -20, -5}, {7, 20, -5}, 0.5}, box).distance, 2.5);
  EXPECT_DOUBLE_EQ(clearance(Capsule{{7, 12, -20}, {7, 12, 20}, 0}, box).distance, 5);
  EXPECT_DOUBLE_EQ(clearance(Capsule{{2, 4, -20}, {2, 4, 20}, 0.5}, box).distance, -0.5);
  EXPECT_DOUBLE_EQ(clearance(Capsule{{4, 4, 2}, {4, 4, 1}, 0}, box).distance, 1);

  oracle::Shapes shapes(14);
  for (int i = 0; i < 5000; ++i) {
    const bool grid = i % 2 == 0;
    const Capsule bar = shapes.bar(grid);
    const Ribbon upright{shapes.coordinate(grid), 1, 0.5, {{shapes.coordinate(grid), -2}, {0, 2}}};
    Ribbon plate = upright;
    plate.profile[1].d = plate.profile[0].d;
    const Box3 same{around(plate.station, plate.width), around(plate.profile[0].d, plate.thickness), {-2, 2}};
    ASSERT_NEAR(clearance(bar, same).distance, clearance(bar, plate).distance, 1e-12) << i;
  }
}

TEST(ClearanceOfPlates, KnownCases) {
  const Ribbon first{0, 2, 0.5, {{4, 0}, {4, -10}}};
  EXPECT_DOUBLE_EQ(clearance(first, Ribbon{5, 2, 0.5, {{4, 0}, {4, -10}}}).distance, 3);   // side by side
  EXPECT_DOUBLE_EQ(clearance(first, Ribbon{0, 2, 0.5, {{6, 0}, {6, -10}}}).distance, 1.5); // face to face
  EXPECT_DOUBLE_EQ(clearance(first, Ribbon{6, 2, 0.5, {{7.5, 3}, {7.5, 9}}}).distance, std::sqrt(16 + 9 + 9));
  EXPECT_DOUBLE_EQ(clearance(first, Ribbon{2, 2, 0.5, {{4, 0}, {4, -10}}}).distance, 0);      // touching sides
  EXPECT_DOUBLE_EQ(clearance(first, Ribbon{1.5, 2, 0.5, {{4, 0}, {4, -10}}}).distance, -0.5); // half an inch in
  EXPECT_DOUBLE_EQ(clearance(first, Ribbon{0, 1, 0.25, {{4, -2}, {4, -8}}}).distance, -0.5 + 0.125);
  EXPECT_EQ(clearance(first, Ribbon{}).distance, std::numeric_limits<double>::infinity());
}

TEST(ClearanceOfPlates, CrossingAwayFromAllEdgesIsSeen) {
  // A thin plate through the middle of a thick one: no edge of the thick one is near.
  const Ribbon thick{0, 10, 4, {{0, -5}, {0, 5}}};
  const Ribbon needle{0, 0.1, 0.1, {{-20, 0}, {20, 0}}};
  EXPECT_LT(clearance(thick, needle).distance, 0);
  EXPECT_LT(clearance(needle, thick).distance, 0);
}

TEST(ClearanceOfPlates, AgreesWithProofAndSamplingOnAnyPair) {
  oracle::Shapes shapes(15);
  int apart = 0;
  int overlapping = 0;
  for (int i = 0; i < 4000; ++i) {
    const Ribbon first = shapes.plate(i % 2 == 0);
    const Ribbon second = shapes.plate(i % 3 == 0);
    const Clearance clear = clearance(first, second);
    EXPECT_NEAR(oracle::distanceToPlate(clear.onFirst, first), 0, rounding);
    EXPECT_NEAR(oracle::distanceToPlate(clear.onSecond, second), 0, rounding);
    EXPECT_NEAR(distance(clear.onFirst, clear.onSecond), std::max(0.0, clear.distance), rounding);
    for (const oracle::Piece& piece : oracle::piecesOf(first))
      for (int n = 0; n < 60; ++n) {
        const Point3 p = piece.at(shapes.number(0, piece.extent()), shapes.number(-1, 1), shapes.number(-1, 1));
        EXPECT_GE(oracle::distanceToPlate(p, second), clear.distance - rounding);
      }
    if (oracle::piecesOf(first).size() == 1 && oracle::piecesOf(second).size() == 1)
      expectSlab(clear, oracle::piecesOf(first)[0].corners(), oracle::piecesOf(second)[0].corners());
    EXPECT_NEAR(clearance(second, first).distance, clear.distance, rounding);
    EXPECT_NEAR(clearance(shifted(first, far), shifted(second, far)).distance, clear.distance, rounding);
    clear.distance > 0 ? ++apart : ++overlapping;
    if (HasFailure())
      FAIL() << "case " << i;
  }
  EXPECT_GT(apart, 500);
  EXPECT_GT(overlapping, 500);
}

// The directions in which two boxes can be parted soonest: square to a face of one, or to an edge of each.
std::vector<Point3> waysApart(const Ribbon& first, const Ribbon& second) {
  std::vector<Point3> edges;
  for (const Ribbon& plate : {first, second}) {
    const ProfilePoint u = oracle::piecesOf(plate)[0].along();
    edges.insert(edges.end(), {{1, 0, 0}, {0, u.d, u.z}, {0, -u.z, u.d}});
  }
  std::vector<Point3> ways = edges;
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 3; j < 6; ++j) {
      const Point3 a = edges[i];
      const Point3 b = edges[j];
      const Point3 square{a.d * b.z - a.z * b.d, a.z * b.s - a.s * b.z, a.s * b.d - a.d * b.s};
      if (oracle::length(square) > 1e-6)
        ways.push_back(oracle::times(square, 1 / oracle::length(square)));
    }
  return ways;
}

TEST(ClearanceOfPlates, TheDepthIsTheLeastShiftThatPartsThem) {
  oracle::Shapes shapes(16);
  int overlapping = 0;
  for (int i = 0; i < 8000; ++i) {
    Ribbon first = shapes.plate(false);
    Ribbon second = shapes.plate(false);
    first.profile.resize(2);
    second.profile.resize(2);
    const double depth = -clearance(first, second).distance;
    if (depth <= 0)
      continue;
    ++overlapping;
    for (int n = 0; n < 20; ++n) { // nothing shorter parts them, whichever way
      Point3 way{shapes.number(-1, 1), shapes.number(-1, 1), shapes.number(-1, 1)};
      way = oracle::times(way, 0.99 * depth / oracle::length(way));
      ASSERT_LE(clearance(first, shifted(second, way)).distance, rounding) << i;
    }
    bool parted = false;
    for (const Point3& way : waysApart(first, second))
      for (const double shift : {-depth - 1e-6, depth + 1e-6})
        parted = parted || clearance(first, shifted(second, oracle::times(way, shift))).distance > 0;
    ASSERT_TRUE(parted) << i;
  }
  EXPECT_GT(overlapping, 300);
}

TEST(HeightsNearer, StrapBesideAVerticalBar) {
  const auto heights = heightsNearer(verticalBar, strap, 1);
  ASSERT_TRUE(heights);
  // Beside the bar 7/8 in from axis to edge of plate; 1 1/4 in reach leaves sqrt(1.25² - 0.875²) in depth, with half
  // the thickness square to the slope on top. The straight piece from (3.75, -12) to (5.5, -14) holds the lower end.
  const double reach = std::sqrt(1.25 * 1.25 - 0.875 * 0.875);
  const double slope = std::hypot(1.75, 2.0);
  const double low = -12 - ((4 - 3.75) + reach + 0.0525 * 2.0 / slope) * (2.0 / 1.75);
  const double upSlope = std::hypot(3.25, 10.0);
  const double high = -2 - ((4 - 0.5) - reach - 0.0525 * 10.0 / upSlope) * (10 / 3.25);
  EXPECT_NEAR(heights->from, low, 1e-8);
  EXPECT_NEAR(heights->to, high, 1e-8);
}

TEST(HeightsNearer, IsNothingAtOrBeyondTheClearance) {
  EXPECT_FALSE(heightsNearer(verticalBar, strap, 0.625));
  EXPECT_FALSE(heightsNearer(verticalBar, strap, 0.5));
  EXPECT_TRUE(heightsNearer(verticalBar, strap, 0.626));
  EXPECT_FALSE(heightsNearer(verticalBar, Ribbon{}, 100));
}

TEST(HeightsNearer, KnownCases) {
  const Ribbon upright{10, 2, 0.5, {{4, 0}, {4, -10}}};
  const Capsule across{{0, 5.25, -6}, {20, 5.25, -6}, 0.25}; // 3/4 in behind the plate
  const auto heights = heightsNearer(across, upright, 1);
  ASSERT_TRUE(heights);
  EXPECT_NEAR(heights->from, -6.75, 1e-8); // 3-4-5: 1 in off, 1 1/4 in reach
  EXPECT_NEAR(heights->to, -5.25, 1e-8);
  EXPECT_EQ(heightsNearer(Capsule{{10, 5, 20}, {10, 5, -20}, 0.25}, upright, 1), (Interval{-10, 0})); // whole plate
  const Ribbon level{10, 2, 0.5, {{0, -3}, {8, -3}}};
  EXPECT_EQ(heightsNearer(Capsule{{10, 4, 0}, {10, 4, -2}, 0}, level, 1), (Interval{-3, -3}));
}

TEST(HeightsNearer, HoldsEverySampleThatIsNearerAndEndsWhereTheyEnd) {
  oracle::Shapes shapes(17);
  constexpr int samples = 48;
  int found = 0;
  for (int i = 0; i < 1500; ++i) {
    const Capsule bar = shapes.bar(i % 2 == 0);
    const Ribbon plate = shapes.plate(i % 3 == 0);
    const double within = shapes.number(0.01, 1.5);
    const auto heights = heightsNearer(bar, plate, within);
    ASSERT_EQ(heights.has_value(), clearance(bar, plate).distance < within) << i;
    const auto sectionIsNear = [&](const oracle::Piece& piece, double place, double margin) {
      return oracle::leastOver(
                 0, 1, [&](double t) { return piece.distanceTo(oracle::lerp(bar.a, bar.b, t), place, place); }, 60) -
                 bar.radius <
             within + margin;
    };
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    bool endsFound[2] = {false, false};
    for (const oracle::Piece& piece : oracle::piecesOf(plate)) {
      const ProfilePoint u = piece.along();
      for (int n = 0; n <= samples; ++n) {
        const double place = piece.extent() * n / samples;
        if (sectionIsNear(piece, place, -1e-8)) {
          low = std::min(low, piece.from.z + u.z * place);
          high = std::max(high, piece.from.z + u.z * place);
        }
      }
      // Each end of the answer is a place of some piece that is near.
      for (int end = 0; heights && end < 2; ++end) {
        const double z = end == 0 ? heights->from : heights->to;
        const double place = u.z == 0 ? 0 : std::clamp((z - piece.from.z) / u.z, 0.0, piece.extent());
        if (std::abs(piece.from.z + u.z * place - z) < 1e-7)
          endsFound[end] = endsFound[end] || u.z == 0 || sectionIsNear(piece, place, 1e-6);
      }
    }
    if (low <= high) {
      ++found;
      ASSERT_TRUE(heights) << i;
      ASSERT_LE(heights->from, low + 1e-7) << i;
      ASSERT_GE(heights->to, high - 1e-7) << i;
    }
    if (heights) {
      ASSERT_LE(heights->from, heights->to) << i;
      ASSERT_TRUE(endsFound[0] && endsFound[1]) << i;
    }
  }
  EXPECT_GT(found, 300);
}

TEST(Bounds, HoldTheShapeAndTouchIt) {
  EXPECT_EQ(bounds(Capsule{{3, 2, 1}, {0, 5, -4}, 0.5}), (Box3{{-0.5, 3.5}, {1.5, 5.5}, {-4.5, 1.5}}));
  EXPECT_EQ(bounds(Ribbon{10, 2, 0.5, {{4, 0}, {4, -10}}}), (Box3{{9, 11}, {3.75, 4.25}, {-10, 0}}));
  EXPECT_TRUE(bounds(Ribbon{}).s.empty());
  oracle::Shapes shapes(18);
  for (int i = 0; i < 3000; ++i) {
    const Ribbon plate = shapes.plate(i % 2 == 0);
    Box3 held{{1e9, -1e9}, {1e9, -1e9}, {1e9, -1e9}};
    for (const oracle::Piece& piece : oracle::piecesOf(plate))
      for (const Point3& p : piece.corners())
        held = {hull(held.s, {p.s, p.s}), hull(held.d, {p.d, p.d}), hull(held.z, {p.z, p.z})};
    const Box3 box = bounds(plate);
    for (const auto& [side, expected] :
         {std::pair{box.s, held.s}, std::pair{box.d, held.d}, std::pair{box.z, held.z}}) {
      ASSERT_NEAR(side.from, expected.from, 1e-12) << i;
      ASSERT_NEAR(side.to, expected.to, 1e-12) << i;
    }
  }
}

TEST(Distance, OfPoints) {
  EXPECT_EQ(distance(Point3{1, 2, 3}, Point3{3, 5, 9}), 7);
  EXPECT_EQ(distance(Point3{1, 2, 3}, Point3{1, 2, 3}), 0);
}

} // namespace
} // namespace sillwright
