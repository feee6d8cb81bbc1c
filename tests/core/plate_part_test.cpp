#include "core/geometry/plate_part.h"

#include <limits>
#include <random>

#include <gtest/gtest.h>

#include "core/geometry/clearance.h"

namespace sillwright {
namespace {

constexpr double farthest = std::numeric_limits<double>::infinity();
constexpr Interval everywhere{-farthest, farthest};

// Upright at depth 1, then level inward to depth 5; 1/2 thick, 2 wide.
const Ribbon bent{100, 2, 0.5, {{1, 0}, {1, -12}, {5, -12}}};

TEST(PlatePart, isTheWholePlateEverywhere) {
  const auto part = partWithin(bent, everywhere, everywhere);
  ASSERT_TRUE(part);
  EXPECT_EQ(*part, bounds(bent));
  EXPECT_EQ(*part, (Box3{{99, 101}, {0.75, 5}, {-12.25, 0}}));
}

TEST(PlatePart, isCutAtDepthsAndHeights) {
  EXPECT_EQ(partWithin(bent, everywhere, {-4, -2}), (Box3{{99, 101}, {0.75, 1.25}, {-4, -2}}));
  EXPECT_EQ(partWithin(bent, {3, 4}, everywhere), (Box3{{99, 101}, {3, 4}, {-12.25, -11.75}}));
  EXPECT_EQ(partWithin(bent, everywhere, {-farthest, -12.125}), (Box3{{99, 101}, {1, 5}, {-12.25, -12.125}}));
}

TEST(PlatePart, isNothingWhereThePlateOnlyTouches) {
  EXPECT_FALSE(partWithin(bent, {5, 8}, everywhere));
  EXPECT_FALSE(partWithin(bent, everywhere, {0, 3}));
  EXPECT_FALSE(partWithin(bent, {2, 4}, {-11.75, 0})); // just over the level part
  EXPECT_FALSE(partWithin({100, 2, 0.5, {}}, everywhere, everywhere));
}

// A sheet without thickness is there as long as it does not lie in the end itself.
TEST(PlatePart, knowsSheetsWithoutThickness) {
  const Ribbon sheet{100, 2, 0, {{1, 0}, {1, -12}, {5, -12}}};
  EXPECT_EQ(partWithin(sheet, {2, 4}, {-13, -11}), (Box3{{99, 101}, {2, 4}, {-12, -12}}));
}

// Points strewn over sloping plates: all that are in the plate and in the band are in the part, and they fill it.
TEST(PlatePart, holdsWhatPointsInThePlateSay) {
  std::mt19937 random(7);
  const auto number = [&](int from, int to) {
    return from + static_cast<double>(random() % 1000) / 1000 * (to - from);
  };
  for (int round = 0; round < 40; ++round) {
    const Ribbon plate{0, 2, number(1, 3), {{number(0, 6), 0}, {number(0, 6), -5}, {number(0, 9), number(-12, -6)}}};
    const double deepest = number(-10, -5), innermost = number(0, 3);
    const Interval depths{innermost, innermost + 4}, heights{deepest, deepest + 4};
    const auto part = partWithin(plate, depths, heights);
    Box3 seen{{}, {farthest, -farthest}, {farthest, -farthest}};
    constexpr double step = 0.05;
    for (double d = depths.from; d <= depths.to; d += step)
      for (double z = heights.from; z <= heights.to; z += step)
        if (clearance(Capsule{{0, d, z}, {0, d, z}, 0}, plate).distance <= 0) {
          seen.d = hull(seen.d, {d, d});
          seen.z = hull(seen.z, {z, z});
        }
    if (seen.d.empty())
      continue;
    ASSERT_TRUE(part);
    EXPECT_TRUE(part->d.from <= seen.d.from + 1e-9 && part->d.to >= seen.d.to - 1e-9);
    EXPECT_TRUE(part->z.from <= seen.z.from + 1e-9 && part->z.to >= seen.z.to - 1e-9);
    // Corners are sharp: between the grid's lines a tip may stand out a little.
    EXPECT_LT(seen.d.from - part->d.from + part->d.to - seen.d.to, 0.4);
    EXPECT_LT(seen.z.from - part->z.from + part->z.to - seen.z.to, 0.4);
  }
}

} // namespace
} // namespace sillwright
