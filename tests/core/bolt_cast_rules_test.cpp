// Bolts in their concrete, each rule at its limit and a sixteenth to either side. The 5/8 J bolt of the bare wall: 8 in
// deep at a projection of 4, its hook 2 1/2 from the axis to the tip, in the lowest 5/8: z -8 to -7.375.
#include "bare_wall.h"

#include "core/rules/wording.h"

namespace sillwright {
namespace {

using namespace testing_support;
using R = RuleId;
constexpr double sixteenth = 1.0 / 16;
constexpr double radius = 0.3125;

BareWall pairOf(double first, double second) {
  BareWall bare = bareWall();
  addBolts(bare, {first, second});
  return bare;
}

// 4 d = 2.5 in, 6 d = 3.75 in between the axes. The younger bolt moves; whatever is nearer than 4 d is sent to 6 d.
TEST(BoltCastRules, AnchorsStandFourDiametersApartAndSixWhereTorqued) {
  for (const double apart : {3.75, 3.75 + sixteenth})
    EXPECT_TRUE(silent(pairOf(40, 40 + apart), R::BoltGap));
  const BareWall torqued = pairOf(40, 43.6875);
  const std::vector<Id> both{torqued.wall.bolts[1].id, torqued.wall.bolts[0].id};
  EXPECT_TRUE(finds(torqued, R::BoltGap, {.level = Level::Ask, .pieces = both, .measured = 3.6875, .limit = 3.75,
                                          .region = {{40, 43.6875}, {3.25, 3.25}, {-8, 0}},
                                          .correction = shifted(both[0], sixteenth)}));
  EXPECT_TRUE(silent(pairOf(40, 42.5), R::BoltGap, Level::Fix));
  EXPECT_TRUE(finds(pairOf(40, 42.4375), R::BoltGap,
                    {.pieces = both, .measured = 2.4375, .limit = 2.5, .region = {{40, 42.4375}, {3.25, 3.25}, {-8, 0}},
                     .correction = shifted(both[0], 1.3125)}));
}

// 1.5 apart across the wall, 2 along: 2.5 between the axes. For 3.75 it is sqrt(3.75² - 1.5²) = 3.437 along: 3 7/16.
TEST(BoltCastRules, TheGapIsMeasuredStraightFromAxisToAxis) {
  BareWall bare = bareWall();
  const Id first = addBolt(bare, 40, 2.5), second = addBolt(bare, 42, 4);
  EXPECT_TRUE(silent(bare, R::BoltGap, Level::Fix));
  EXPECT_TRUE(finds(bare, R::BoltGap, {.level = Level::Ask, .pieces = {second, first}, .measured = 2.5, .limit = 3.75,
                                       .region = {{40, 42}, {2.5, 4}, {-8, 0}},
                                       .correction = shifted(second, 1.4375)}));
}

// As over a No. 5 bar: 1 1/2 to a formed face. The shank's face is at depth - 5/16.
TEST(BoltCastRules, AnInchAndAHalfOfConcreteOutside) {
  const auto at = [](double depth) {
    BareWall bare = bareWall();
    addBolt(bare, 48, depth);
    return bare;
  };
  EXPECT_TRUE(silent(at(1.8125), R::BoltCover));
  EXPECT_TRUE(silent(at(1.8125 + sixteenth), R::BoltCover));
  const BareWall close = at(1.75);
  const Id bolt = close.wall.bolts[0].id;
  // Shank and hook in one box: s 48 - 5/16 to 48 + 5/16, z -8 to 0.
  EXPECT_TRUE(finds(close, R::BoltCover, {.level = Level::Ask, .pieces = {bolt}, .measured = 1.4375, .limit = 1.5,
                                          .region = {{48 - radius, 48 + radius}, {0, 1.4375}, {-8, 0}},
                                          .correction = across(bolt, sixteenth), .variant = 2}));
}

// The tip of the hook at depth + 2 1/2; the inside face at 8.
TEST(BoltCastRules, AnInchAndAHalfBehindTheHook) {
  BareWall bare = bareWall();
  const Id bolt = addBolt(bare, 48, 4);
  EXPECT_TRUE(silent(bare, R::BoltCover));
  bare.wall.bolts[0].depth = 4.0625;
  EXPECT_TRUE(finds(bare, R::BoltCover, {.level = Level::Ask, .pieces = {bolt}, .measured = 1.4375, .limit = 1.5,
                                         .region = {{48 - radius, 48 + radius}, {6.5625, 8}, {-8, 0}},
                                         .correction = across(bolt, -sixteenth), .variant = 3}));
}

// A 3/4 bolt is as thick as a No. 6 bar: 2 in.
TEST(BoltCastRules, AThickBoltHasTheCoverOfAThickBar) {
  BareWall bare = bareWall();
  editBoltType(bare, [](BoltType& type) { type.diameter = 0.75; });
  addBolt(bare, 48, 2.375);
  EXPECT_TRUE(silent(bare, R::BoltCover));
  bare.wall.bolts[0].depth = 2.3125;
  const Findings found = findingsOf(bare, R::BoltCover);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].limit, 2);
  EXPECT_NEAR(found[0].measured, 1.9375, 1e-12);
}

// 3 d = 1.875 and 4 1/2 d = 2.8125 from the face of the shank to the tip: 2.1875 and 3.125 from its axis.
TEST(BoltCastRules, TheHookIsThreeToFourAndAHalfDiametersLong) {
  const auto leg = [](double fromAxis) {
    BareWall bare = bareWall();
    editBoltType(bare, [&](BoltType& type) { type.hookLeg = fromAxis; });
    addBolt(bare, 48);
    return bare;
  };
  for (const double good : {2.1875, 2.1875 + sixteenth, 3.125 - sixteenth, 3.125})
    EXPECT_TRUE(silent(leg(good), R::BoltHook)) << good;
  const Box3 shortHook{{48 - radius, 48 + radius}, {3.25 - radius, 3.25 + 2.125}, {-8, -7.375}};
  const Box3 longHook{{48 - radius, 48 + radius}, {3.25 - radius, 3.25 + 3.1875}, {-8, -7.375}};
  const BareWall little = leg(2.125), much = leg(3.1875);
  EXPECT_TRUE(finds(little, R::BoltHook, {.level = Level::Watch, .pieces = {little.wall.bolts[0].id}, .measured = 1.8125,
                                          .limit = 1.875, .region = shortHook, .variant = 1}));
  EXPECT_TRUE(finds(much, R::BoltHook, {.level = Level::Watch, .pieces = {much.wall.bolts[0].id}, .measured = 2.875,
                                        .limit = 2.8125, .region = longHook, .variant = 2}));
}

TEST(BoltCastRules, TheHookPointsInward) {
  BareWall bare = bareWall();
  const Id bolt = addBolt(bare, 48);
  for (const HookDirection way : {HookDirection::Left, HookDirection::Right}) {
    bare.wall.bolts[0].hook = way;
    const double left = way == HookDirection::Left ? 2.5 : radius, right = way == HookDirection::Left ? radius : 2.5;
    EXPECT_TRUE(finds(bare, R::BoltHook,
                      {.level = Level::Watch, .pieces = {bolt}, .measured = 1, .limit = 0,
                       .region = {{48 - left, 48 + right}, {3.25 - radius, 3.25 + radius}, {-8, -7.375}},
                       .correction = Correction{Correction::Field::Hook, bolt, 0}}));
  }
}

// Outward the tip is at 3 1/4 - 2 1/2 = 3/4; at a depth of 2 7/16 it is 1/16 out of the concrete.
TEST(BoltCastRules, AHookOutOfTheConcreteIsPutRight) {
  BareWall bare = bareWall();
  const Id bolt = addBolt(bare, 48, 2.5);
  bare.wall.bolts[0].hook = HookDirection::Outward;
  EXPECT_TRUE(silent(bare, R::BoltHook, Level::Fix)); // the tip is at the very face
  bare.wall.bolts[0].depth = 2.4375;
  EXPECT_TRUE(finds(bare, R::BoltHook,
                    {.pieces = {bolt}, .measured = sixteenth, .limit = 0,
                     .region = {{48 - radius, 48 + radius}, {-sixteenth, 2.4375 + radius}, {-8, -7.375}},
                     .correction = Correction{Correction::Field::Hook, bolt, 0}, .variant = 3}));
}

} // namespace
} // namespace sillwright
