// Where a bolt can stand across the sill so that it is in the middle third and its plate washer reaches the sheathed
// edge. Computed from IRC 2024 R403.1.6 with SDPWS 2021 4.3.6.4.3.
#include <optional>

#include "sill_wall.h"

namespace sillwright {
namespace {

using namespace published;

struct Case {
  int sill = 6;                             // nominal width
  double washer = 3;                        // square
  Sheathing sheathing = Sheathing::Outside; // over 400 plf
};

bool clean(const Case& c, double depth) {
  SillWall wall{.sill = {2, c.sill}, .bolts = {12, 84}, .depth = depth, .unitShear = 600, .sheathing = c.sheathing};
  wall.washer.along = wall.washer.across = c.washer;
  return count(wall, RuleId::BoltThird) + count(wall, RuleId::WasherSheathing) + count(wall, RuleId::WasherSill) == 0;
}

// Every 192nd of an inch across the sill: sixteenths and thirds of sixteenths, so that no window slips through.
std::optional<Interval> window(const Case& c) {
  std::optional<Interval> found;
  for (int i = 0; i <= 192 * 12; ++i)
    if (const double depth = i / 192.0; clean(c, depth))
      found = {found ? found->from : depth, depth};
  return found;
}

// 5 1/2 in sill, one face: 1.833 to 2.000.
TEST(WasherWindow, SixInchSillOneFace) {
  const auto found = window({});
  ASSERT_TRUE(found);
  EXPECT_NEAR(found->from, 11.0 / 6, 1e-9);
  EXPECT_NEAR(found->to, 2, 1e-9);
  // From the other face the same: 5.5 - 2 to 5.5 - 11/6.
  const auto inside = window({.sheathing = Sheathing::Inside});
  ASSERT_TRUE(inside);
  EXPECT_NEAR(inside->from, 3.5, 1e-9);
  EXPECT_NEAR(inside->to, 11.0 / 3, 1e-9);
}

// A bolt in the very middle of that sill is 1 1/4 in short of the edge.
TEST(WasherWindow, ACentredBoltIsShort) {
  const SillWall wall{.bolts = {12, 84}, .depth = 2.75, .unitShear = 600};
  const Findings found = findingsOf(jobOf(wall), RuleId::WasherSheathing);
  ASSERT_EQ(found.size(), 2u);
  EXPECT_DOUBLE_EQ(found[0].measured, 1.25);
  EXPECT_DOUBLE_EQ(found[0].limit, 0.5);
}

// The edge of the washer 1/2 in from the sheathed edge at most: the bolt 2 in from it.
TEST(WasherWindow, HalfAnInchFromTheSheathedEdge) {
  const auto found = [](double depth) {
    return count({.bolts = {12, 84}, .depth = depth, .unitShear = 600}, RuleId::WasherSheathing);
  };
  EXPECT_EQ(found(2 - 1.0 / 16), 0u);
  EXPECT_EQ(found(2), 0u);
  EXPECT_EQ(found(2 + 1.0 / 16), 2u);
}

// Up to 400 plf nothing is asked for.
TEST(WasherWindow, OnlyOver400Plf) {
  EXPECT_EQ(count({.bolts = {12, 84}, .depth = 2.75, .unitShear = 400}, RuleId::WasherSheathing), 0u);
  EXPECT_EQ(count({.bolts = {12, 84}, .depth = 2.75, .unitShear = 401}, RuleId::WasherSheathing), 2u);
}

// 5 1/2 in sill, both faces: impossible with 3 in, 4 1/2 in needed.
TEST(WasherWindow, SixInchSillBothFaces) {
  EXPECT_FALSE(window({.sheathing = Sheathing::Both}));
  EXPECT_FALSE(window({.washer = 4.5 - 1.0 / 96, .sheathing = Sheathing::Both}));
  const auto found = window({.washer = 4.5, .sheathing = Sheathing::Both});
  ASSERT_TRUE(found);
  EXPECT_EQ(found->from, 2.75);
  EXPECT_EQ(found->to, 2.75);
}

// 3 1/2 in sill: 1.5, where the washer comes to the edge, to 2.0, where it comes to the other one.
TEST(WasherWindow, FourInchSill) {
  const auto found = window({.sill = 4});
  ASSERT_TRUE(found);
  EXPECT_NEAR(found->from, 1.5, 1e-9);
  EXPECT_NEAR(found->to, 2, 1e-9);
}

// 7 1/4 in sill: impossible with 3 in, 3.83 in needed (2 x (7.25 / 3 - 0.5) = 3 5/6).
TEST(WasherWindow, EightInchSill) {
  EXPECT_FALSE(window({.sill = 8}));
  EXPECT_FALSE(window({.sill = 8, .washer = 23.0 / 6 - 1.0 / 96}));
  const auto found = window({.sill = 8, .washer = 23.0 / 6});
  ASSERT_TRUE(found);
  EXPECT_NEAR(found->from, 29.0 / 12, 1e-9);
  EXPECT_NEAR(found->to, 29.0 / 12, 1e-9);
}

} // namespace
} // namespace sillwright
