// Straps out of plumb: strap.lean keeps the nails on the column, strap.lean-opening the plate out of the rough opening.
// The lean is right (+) or left (-) going up, in an inch of height above the joint; nails as in strap_nail_rules_test.
#include <gtest/gtest.h>

#include "strap_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;

constexpr Interval depth{0, 0.25};
constexpr Id column{100}, strap{101};

// One post 6x6 and a strap in its middle at 100: from 97 1/4 to 102 3/4. A row has room for 2 3/4 - 1/2 - 1/16 = 2
// 3/16.
Findings lean(double by) {
  StrapWall bare = bareStrapWall();
  bare.hang(100);
  return foundLeaning(bare, by, RuleId::StrapLean);
}

// The highest nail of the right row is 20 up.
TEST(StrapLean, fixesTheTopNailPastTheRightEdge) {
  EXPECT_TRUE(lean((2.1875 - sixteenth) / 20).empty());
  EXPECT_TRUE(lean(2.1875 / 20).empty());
  // stands off 2 1/4: from 102 3/4 - 1/16 to 102 3/4 + 1/16
  EXPECT_TRUE(isOnly(lean(2.25 / 20), {Level::Fix,
                                       {strap, column},
                                       2.25,
                                       2.1875,
                                       {{102.75, 102.8125}, depth, {20 - sixteenth, 20 + sixteenth}},
                                       along(strap, -sixteenth)}));
}

// The highest nail of the left row is 19 up.
TEST(StrapLean, fixesTheTopNailPastTheLeftEdge) {
  EXPECT_TRUE(lean(-(2.1875 - sixteenth) / 19).empty());
  EXPECT_TRUE(lean(-2.1875 / 19).empty());
  EXPECT_TRUE(isOnly(lean(-2.25 / 19), {Level::Fix,
                                        {strap, column},
                                        2.25,
                                        2.1875,
                                        {{97.1875, 97.25}, depth, {19 - sixteenth, 19 + sixteenth}},
                                        along(strap, sixteenth)}));
}

// Leaning 3 1/4 at 20 up the right row's top nail is 1/16 past the left edge (it has room for 3 3/16), but the left
// row's, 19 up, is 3.0875 - 2.1875 = 0.9 past it; 15/16 is the next mark that brings it back.
TEST(StrapLean, tellsOfTheNailThatIsFarthestOff) {
  EXPECT_TRUE(isOnly(lean(-3.25 / 20), {Level::Fix,
                                        {strap, column},
                                        3.0875,
                                        2.1875,
                                        {{97.25 - 0.9, 97.25}, depth, {19 - sixteenth, 19 + sixteenth}},
                                        along(strap, 0.9375)}));
}

TEST(StrapLean, saysNothingOfAStrapWithoutColumn) {
  StrapWall bare = bareStrapWall();
  bare.hang(100);
  bare.wall.straps[0].column = {};
  EXPECT_TRUE(foundLeaning(bare, 1, RuleId::StrapLean).empty());
}

// Half an inch off the middle there is half an inch less room on that side: 1 11/16.
TEST(StrapLean, hasLessRoomOffTheMiddle) {
  StrapWall bare = bareStrapWall();
  bare.hangOn(100, 100.5, {1, {6, 6}});
  EXPECT_TRUE(foundLeaning(bare, 1.6875 / 20, RuleId::StrapLean).empty());
  EXPECT_TRUE(isOnly(foundLeaning(bare, 1.75 / 20, RuleId::StrapLean),
                     {Level::Fix,
                      {strap, column},
                      1.75,
                      1.6875,
                      {{102.75, 102.8125}, depth, {20 - sixteenth, 20 + sixteenth}},
                      along(strap, -sixteenth)}));
}

// A door from 110 to 150; the plate reaches 1 right and left of the station, and from the joint 22 up.
struct AtDoor {
  StrapWall bare = bareStrapWall();
  Id strap;
  Id door;
};
AtDoor atDoor(double station, OpeningKind kind = OpeningKind::Door, double sill = 0, double head = 80) {
  AtDoor at;
  at.strap = at.bare.hang(station);
  at.door = at.bare.open(kind, 110, 150, sill, head);
  return at;
}
Findings inOpening(const AtDoor& at, double by = 0) {
  return foundLeaning(at.bare, by, RuleId::StrapLeanOpening);
}

TEST(StrapLeanOpening, fixesAPlateInsideTheLeftOfIt) {
  EXPECT_TRUE(inOpening(atDoor(109 - sixteenth)).empty());
  EXPECT_TRUE(inOpening(atDoor(109)).empty());
  const AtDoor at = atDoor(109 + sixteenth);
  EXPECT_TRUE(isOnly(inOpening(at), {Level::Fix,
                                     {at.strap, at.door},
                                     sixteenth,
                                     0,
                                     {{110, 110 + sixteenth}, depth, {0, 22}},
                                     along(at.strap, -sixteenth)}));
}

TEST(StrapLeanOpening, fixesAPlateInsideTheRightOfIt) {
  EXPECT_TRUE(inOpening(atDoor(151)).empty());
  const AtDoor at = atDoor(151 - sixteenth);
  EXPECT_TRUE(isOnly(inOpening(at), {Level::Fix,
                                     {at.strap, at.door},
                                     sixteenth,
                                     0,
                                     {{150 - sixteenth, 150}, depth, {0, 22}},
                                     along(at.strap, sixteenth)}));
}

// Wholly inside it is as deep as it is wide; 11 to the left it would hang beside its column, which is no better.
TEST(StrapLeanOpening, fixesAPlateWhollyInside) {
  const AtDoor at = atDoor(120);
  EXPECT_TRUE(isOnly(inOpening(at), {Level::Fix, {at.strap, at.door}, 2, 0, {{119, 121}, depth, {0, 22}}, {}}));
}

TEST(StrapLeanOpening, endsAtTheHeader) {
  const AtDoor at = atDoor(109.5, OpeningKind::Door, 0, 10);
  EXPECT_TRUE(isOnly(inOpening(at),
                     {Level::Fix, {at.strap, at.door}, 0.5, 0, {{110, 110.5}, depth, {0, 10}}, along(at.strap, -0.5)}));
}

TEST(StrapLeanOpening, beginsAtTheSillOfAWindow) {
  EXPECT_TRUE(inOpening(atDoor(109.5, OpeningKind::Window, 22 + sixteenth)).empty());
  EXPECT_TRUE(inOpening(atDoor(109.5, OpeningKind::Window, 22)).empty());
  const AtDoor at = atDoor(109.5, OpeningKind::Window, 22 - sixteenth);
  EXPECT_TRUE(isOnly(
      inOpening(at),
      {Level::Fix, {at.strap, at.door}, 0.5, 0, {{110, 110.5}, depth, {22 - sixteenth, 22}}, along(at.strap, -0.5)}));
}

// Upright the plate ends at 109; leaning 1 at its top, 22 up, it comes to 110. Leaning 1 1/16 it crosses the side of
// the opening where 17/16 z / 22 = 1, 352/17 up.
TEST(StrapLeanOpening, fixesAPlateThatLeansInAtTheTop) {
  const AtDoor at = atDoor(108);
  EXPECT_TRUE(inOpening(at, (1 - sixteenth) / 22).empty());
  EXPECT_TRUE(inOpening(at, 1.0 / 22).empty());
  const Box3 corner{{110, 110 + sixteenth}, depth, {352.0 / 17, 22}};
  EXPECT_TRUE(isOnly(inOpening(at, 1.0625 / 22),
                     {Level::Fix, {at.strap, at.door}, sixteenth, 0, corner, along(at.strap, -sixteenth)}));
}

TEST(StrapLeanOpening, fixesAPlateThatLeansInFromTheRight) {
  const AtDoor at = atDoor(152);
  EXPECT_TRUE(inOpening(at, -1.0 / 22).empty());
  const Box3 corner{{150 - sixteenth, 150}, depth, {352.0 / 17, 22}};
  EXPECT_TRUE(isOnly(inOpening(at, -1.0625 / 22),
                     {Level::Fix, {at.strap, at.door}, sixteenth, 0, corner, along(at.strap, sixteenth)}));
}

} // namespace
} // namespace sillwright
