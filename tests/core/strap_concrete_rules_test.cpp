// The embedded part against bars and the faces of the concrete: strap.steel, strap.depth, strap.back. The plate of a
// strap at 100 takes up 99 ... 101, depths 0 ... 1/4 down to -12, then level to depth 5 between -12 1/8 and -11 7/8.
#include <gtest/gtest.h>

#include "strap_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;

constexpr Interval plate{99, 101};
constexpr Interval depth{0, 0.25};
constexpr Id strap{101}, bar{102};

// How far up and down from its height a bar 1/2 thick is nearer than `within` to a plate `away` from its axis.
double reach(double within, double away) {
  return std::sqrt((within + 0.25) * (within + 0.25) - away * away);
}
constexpr double contact = 1.0 / 64; // steel that near is as good as touching: what a contact shows

// A bar along the wall at a depth, 6 down: in front of the plate. No way along the wall leads away from it.
Findings behind(double barDepth) {
  StrapWall bare = bareStrapWall();
  bare.hang(100);
  bare.bar(BarRun::Along, {2, barDepth, -6}, {286, barDepth, -6});
  return found(bare, RuleId::StrapSteel);
}

TEST(StrapSteel, watchesABarNearerThanTheTarget) {
  EXPECT_TRUE(behind(1.5 + sixteenth).empty());
  EXPECT_TRUE(behind(1.5).empty());   // 1 1/2 - 1/4 of the plate - 1/4 of the bar = 1
  const double up = reach(1, 1.1875); // the axis is 1 7/16 - 1/4 from the plate
  EXPECT_TRUE(isOnly(behind(1.5 - sixteenth),
                     {Level::Watch, {strap, bar}, 0.9375, 1, {plate, {0.25, 1.1875}, {-6 - up, -6 + up}}, {}}));
}

TEST(StrapSteel, fixesContact) {
  const double near = reach(1, 0.3125);
  EXPECT_TRUE(isOnly(behind(0.5 + sixteenth),
                     {Level::Watch, {strap, bar}, sixteenth, 1, {plate, {0.25, 0.3125}, {-6 - near, -6 + near}}, {}}));
  const double touch = reach(contact, 0.25); // 1/2 - 1/4 - 1/4 = 0: touching is contact
  EXPECT_TRUE(
      isOnly(behind(0.5), {Level::Fix, {strap, bar}, 0, 0, {plate, {0.25, 0.25}, {-6 - touch, -6 + touch}}, {}}));
  const double in = reach(contact, 0.1875);
  EXPECT_TRUE(isOnly(behind(0.5 - sixteenth),
                     {Level::Fix, {strap, bar}, -sixteenth, 0, {plate, {0.1875, 0.25}, {-6 - in, -6 + in}}, {}}));
}

// An upright bar beside the plate, from 6 down to 5 over the joint: its lower end is round.
Findings beside(double station) {
  StrapWall bare = bareStrapWall();
  bare.hang(100);
  bare.bar(BarRun::Upright, {station, 0.125, -6}, {station, 0.125, 5});
  return found(bare, RuleId::StrapSteel);
}

TEST(StrapSteel, movesOffABarOnTheRight) {
  EXPECT_TRUE(beside(102.25).empty()); // 102 1/4 - 101 - 1/4 = 1
  EXPECT_TRUE(isOnly(beside(102.25 - sixteenth), {Level::Watch,
                                                  {strap, bar},
                                                  0.9375,
                                                  1,
                                                  {{101, 101.9375}, depth, {-6 - reach(1, 1.1875), 0}},
                                                  along(strap, -sixteenth)}));
  EXPECT_TRUE(
      isOnly(beside(101.25),
             {Level::Fix, {strap, bar}, 0, 0, {{101, 101}, depth, {-6 - reach(contact, 0.25), 0}}, along(strap, -1)}));
}

TEST(StrapSteel, movesOffABarOnTheLeft) {
  EXPECT_TRUE(beside(97.75).empty());
  EXPECT_TRUE(isOnly(beside(97.75 + sixteenth), {Level::Watch,
                                                 {strap, bar},
                                                 0.9375,
                                                 1,
                                                 {{98.0625, 99}, depth, {-6 - reach(1, 1.1875), 0}},
                                                 along(strap, sixteenth)}));
}

// Half an inch clear of a bar on the left there is no room for the whole inch: it goes just off the bar on the right.
TEST(StrapSteel, leavesContactByTheLeastWhereTheTargetHasNoRoom) {
  StrapWall bare = bareStrapWall();
  bare.hang(100);
  const Id right = bare.bar(BarRun::Upright, {101.25, 0.125, -6}, {101.25, 0.125, 5});
  bare.bar(BarRun::Upright, {98.25, 0.125, -6}, {98.25, 0.125, 5});
  const Findings findings = found(bare, RuleId::StrapSteel);
  ASSERT_EQ(findings.size(), 2u);
  EXPECT_TRUE(is(findings[0], {Level::Fix,
                               {strap, right},
                               0,
                               0,
                               {{101, 101}, depth, {-6 - reach(contact, 0.25), 0}},
                               along(strap, -sixteenth)}));
  EXPECT_EQ(findings[1].level, Level::Watch);
}

TEST(StrapSteel, takesTheTargetOfTheJobAndThePlaceABarWasFoundAt) {
  StrapWall bare = bareStrapWall();
  bare.limit("strap.steel target", 2);
  bare.hang(100);
  bare.bar(BarRun::Along, {2, 1, -6}, {286, 1, -6});
  bare.wall.bars[0].found = BarPlace{{2, 2.5, -6}, {286, 2.5, -6}}; // 2 1/2 - 1/4 - 1/4 = 2
  EXPECT_TRUE(found(bare, RuleId::StrapSteel).empty());
  bare.wall.bars[0].found->a.d = bare.wall.bars[0].found->b.d = 2.4375;
  const double up = reach(2, 2.1875);
  EXPECT_TRUE(isOnly(found(bare, RuleId::StrapSteel),
                     {Level::Watch, {strap, bar}, 1.9375, 2, {plate, {0.25, 2.1875}, {-6 - up, -6 + up}}, {}}));
}

// Without a footing the concrete ends at the stem's foot. Nearest to it is the level part of the hook, from depth 1/8.
Findings overBottom(double stemHeight) {
  StrapWall bare = bareStrapWall();
  bare.wall.footing = {};
  bare.wall.stemHeight = stemHeight;
  bare.hang(100);
  return found(bare, RuleId::StrapDepth);
}
constexpr Interval hook{0.125, 5};

TEST(StrapDepth, watchesAHookNearTheBottom) {
  EXPECT_TRUE(overBottom(15.125 + sixteenth).empty());
  EXPECT_TRUE(overBottom(15.125).empty()); // 15 1/8 - 12 1/8 = 3
  EXPECT_TRUE(isOnly(overBottom(15.125 - sixteenth),
                     {Level::Watch, {strap}, 2.9375, 3, {plate, hook, {-15.0625, -12.125}}, {}}));
}

TEST(StrapDepth, fixesAHookThroughTheBottom) {
  // 1/16 clear: also the foot of the upright part, from depth 0, is nearer than 3
  EXPECT_TRUE(isOnly(overBottom(12.125 + sixteenth),
                     {Level::Watch, {strap}, sixteenth, 3, {plate, {0, 5}, {-12.1875, -12.125}}, {}}));
  EXPECT_TRUE(isOnly(overBottom(12.125), {Level::Fix, {strap}, 0, 0, {plate, hook, {-12.125, -12.125}}, {}}));
  EXPECT_TRUE(isOnly(overBottom(12.125 - sixteenth),
                     {Level::Fix, {strap}, -sixteenth, 0, {plate, hook, {-12.125, -12.0625}}, {}}));
}

TEST(StrapDepth, measuresToTheBottomOfTheFooting) {
  StrapWall bare = bareStrapWall();
  bare.wall.stemHeight = 7.125; // and 8 of footing
  bare.hang(100);
  EXPECT_TRUE(found(bare, RuleId::StrapDepth).empty());
  bare.step(90, 110, -sixteenth); // all of it 1/16 deeper
  EXPECT_TRUE(isOnly(found(bare, RuleId::StrapDepth),
                     {Level::Watch, {strap}, 2.9375, 3, {plate, hook, {-15.125, -12.1875}}, {}}));
}

TEST(StrapDepth, takesTheTargetOfTheJob) {
  StrapWall bare = bareStrapWall();
  bare.wall.footing = {};
  bare.wall.stemHeight = 14.125;
  bare.limit("strap.depth target", 2);
  bare.hang(100);
  EXPECT_TRUE(found(bare, RuleId::StrapDepth).empty()); // 14 1/8 - 12 1/8 = 2
  bare.wall.stemHeight -= sixteenth;
  EXPECT_TRUE(isOnly(found(bare, RuleId::StrapDepth),
                     {Level::Watch, {strap}, 1.9375, 2, {plate, hook, {-14.0625, -12.125}}, {}}));
}

// The hook ends square at depth 5, between -12 1/8 and -11 7/8.
Findings inStem(double thickness, double stemHeight = 24) {
  StrapWall bare = bareStrapWall();
  bare.wall.thickness = thickness;
  bare.wall.stemHeight = stemHeight;
  bare.hang(100);
  return found(bare, RuleId::StrapBack);
}
constexpr Interval tip{-12.125, -11.875};

TEST(StrapBack, watchesAHookNearTheInsideFace) {
  EXPECT_TRUE(inStem(6.5 + sixteenth).empty());
  EXPECT_TRUE(inStem(6.5).empty()); // 6 1/2 - 5 = 1 1/2
  EXPECT_TRUE(isOnly(inStem(6.5 - sixteenth), {Level::Watch, {strap}, 1.4375, 1.5, {plate, {5, 6.4375}, tip}, {}}));
}

TEST(StrapBack, fixesAHookThroughTheInsideFace) {
  EXPECT_TRUE(isOnly(inStem(5 + sixteenth), {Level::Watch, {strap}, sixteenth, 1.5, {plate, {5, 5.0625}, tip}, {}}));
  EXPECT_TRUE(isOnly(inStem(5), {Level::Fix, {strap}, 0, 0, {plate, {5, 5}, tip}, {}}));
  EXPECT_TRUE(isOnly(inStem(5 - sixteenth), {Level::Fix, {strap}, -sixteenth, 0, {plate, {4.9375, 5}, tip}, {}}));
}

TEST(StrapBack, takesTheTargetOfTheJob) {
  StrapWall bare = bareStrapWall();
  bare.wall.thickness = 8;
  bare.limit("strap.back target", 3);
  bare.hang(100);
  EXPECT_TRUE(found(bare, RuleId::StrapBack).empty()); // 8 - 5 = 3
  bare.wall.thickness -= sixteenth;
  EXPECT_TRUE(
      isOnly(found(bare, RuleId::StrapBack), {Level::Watch, {strap}, 2.9375, 3, {plate, {5, 7.9375}, tip}, {}}));
}

// Below the top of the footing there is concrete behind the stem.
TEST(StrapBack, looksOnlyAtWhatIsInTheStem) {
  EXPECT_TRUE(inStem(5, 11.875).empty());
  EXPECT_TRUE(
      isOnly(inStem(5, 11.875 + sixteenth), {Level::Fix, {strap}, 0, 0, {plate, {5, 5}, {-11.9375, -11.875}}, {}}));
}

// A plate 1/2 thick that slopes 3 in for 4 down, from depth 1 to 4: square to it half the thickness is 1/5 in and 3/20
// up. Its corners, as (depth, height): (1.2, 0.15), (0.8, -0.15), (3.8, -4.15), (4.2, -3.85).
TEST(StrapBack, measuresASlopingPlateByItsCorner) {
  StrapWall bare = bareStrapWall();
  bare.type.plateThickness = 0.5;
  bare.type.profile = {{1, 0}, {4, -4}};
  bare.wall.thickness = 5.7;
  bare.hang(100);
  EXPECT_TRUE(found(bare, RuleId::StrapBack).empty()); // 5.7 - 4.2 = 1 1/2
  bare.wall.thickness = 5.2;
  // nearer than 1 1/2 is what lies past 3.7: from (3.7, 0.15 - 4/3 x 2.5) down to the lower corner
  EXPECT_TRUE(isOnly(found(bare, RuleId::StrapBack),
                     {Level::Watch, {strap}, 1, 1.5, {plate, {4.2, 5.2}, {-4.15, 0.15 - 10.0 / 3}}, {}}));
}

} // namespace
} // namespace sillwright
