// strap.edge held to its limits: 1/2 least (FIX) and 1 aimed for (WATCH), of the type. The plate is 2 wide, so its edge
// is 1 from the station; in the concrete it takes up depths 0 ... 5, heights -12 ... 0 of its profile.
#include <gtest/gtest.h>

#include "strap_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;

constexpr RuleId edge = RuleId::StrapEdge;
constexpr Interval depths{0, 5};
constexpr Interval heights{-12, 0};

Findings at(double station) {
  StrapWall bare = bareStrapWall();
  bare.hang(station);
  return found(bare, edge);
}
constexpr Id strap{101};

TEST(StrapEdge, fixesBelowTheLeastAtTheLeftEnd) {
  EXPECT_EQ(countOf(at(1.5 + sixteenth), Level::Fix), 0u);
  EXPECT_EQ(countOf(at(1.5), Level::Fix), 0u); // 1 1/2 - 1 = 1/2, as asked for
  // 1 7/16 - 1 = 7/16
  EXPECT_TRUE(isOnly(at(1.5 - sixteenth),
                     {Level::Fix, {strap}, 0.4375, 0.5, {{0, 0.4375}, depths, heights}, along(strap, sixteenth)}));
}

TEST(StrapEdge, watchesBelowTheTargetAtTheLeftEnd) {
  EXPECT_TRUE(at(2 + sixteenth).empty());
  EXPECT_TRUE(at(2).empty()); // 2 - 1 = 1
  // 1 15/16 - 1 = 15/16
  EXPECT_TRUE(isOnly(at(2 - sixteenth),
                     {Level::Watch, {strap}, 0.9375, 1, {{0, 0.9375}, depths, heights}, along(strap, sixteenth)}));
  // The least itself misses the target by 1/2.
  EXPECT_TRUE(isOnly(at(1.5), {Level::Watch, {strap}, 0.5, 1, {{0, 0.5}, depths, heights}, along(strap, 0.5)}));
}

TEST(StrapEdge, holdsTheRightEndLikeTheLeft) {
  EXPECT_TRUE(at(288 - 2).empty());
  EXPECT_EQ(countOf(at(288 - 1.5), Level::Fix), 0u);
  EXPECT_TRUE(
      isOnly(at(288 - 2 + sixteenth),
             {Level::Watch, {strap}, 0.9375, 1, {{288 - 0.9375, 288}, depths, heights}, along(strap, -sixteenth)}));
  EXPECT_TRUE(
      isOnly(at(288 - 1.5 + sixteenth),
             {Level::Fix, {strap}, 0.4375, 0.5, {{288 - 0.4375, 288}, depths, heights}, along(strap, -sixteenth)}));
}

TEST(StrapEdge, countsBelowZeroPastTheEnd) {
  // 3/4 - 1 = -1/4; to 1/2 it is 3/4 to the right
  EXPECT_TRUE(isOnly(at(0.75), {Level::Fix, {strap}, -0.25, 0.5, {{-0.25, 0}, depths, heights}, along(strap, 0.75)}));
}

TEST(StrapEdge, takesTheLeastAndTheTargetOfTheType) {
  StrapWall bare = bareStrapWall();
  bare.type.edgeMinimum = 1.25;
  bare.type.edgeTarget = 3;
  bare.hang(2.25);
  EXPECT_EQ(countOf(found(bare, edge), Level::Fix), 0u); // 2 1/4 - 1 = 1 1/4
  bare.wall.straps[0].station -= sixteenth;
  EXPECT_TRUE(isOnly(found(bare, edge),
                     {Level::Fix, {strap}, 1.1875, 1.25, {{0, 1.1875}, depths, heights}, along(strap, sixteenth)}));
  bare.wall.straps[0].station = 4; // 4 - 1 = 3
  EXPECT_TRUE(found(bare, edge).empty());
  bare.wall.straps[0].station -= sixteenth;
  EXPECT_TRUE(isOnly(found(bare, edge),
                     {Level::Watch, {strap}, 2.9375, 3, {{0, 2.9375}, depths, heights}, along(strap, sixteenth)}));
}

TEST(StrapEdge, takesTheTargetOfTheJobBeforeThatOfTheType) {
  StrapWall bare = bareStrapWall();
  bare.limit("strap.edge target", 2);
  bare.hang(3);
  EXPECT_TRUE(found(bare, edge).empty()); // 3 - 1 = 2
  bare.wall.straps[0].station -= sixteenth;
  EXPECT_TRUE(isOnly(found(bare, edge),
                     {Level::Watch, {strap}, 1.9375, 2, {{0, 1.9375}, depths, heights}, along(strap, sixteenth)}));
}

// A riser from 0 down to -8 at 240: only those 8 in of the plate have an edge of concrete beside them.
TEST(StrapEdge, holdsTheHighSideOfAStep) {
  StrapWall bare = bareStrapWall();
  bare.step(240, 288, -8);
  const Id id = bare.hang(238); // 240 - 238 - 1 = 1
  EXPECT_TRUE(found(bare, edge).empty());
  bare.wall.straps[0].station = 238 + sixteenth;
  EXPECT_TRUE(isOnly(found(bare, edge),
                     {Level::Watch, {id}, 0.9375, 1, {{240 - 0.9375, 240}, depths, {-8, 0}}, along(id, -sixteenth)}));
  bare.wall.straps[0].station = 238.5 + sixteenth;
  EXPECT_TRUE(isOnly(found(bare, edge),
                     {Level::Fix, {id}, 0.4375, 0.5, {{240 - 0.4375, 240}, depths, {-8, 0}}, along(id, -sixteenth)}));
}

TEST(StrapEdge, leavesTheLowSideOfAStepAlone) {
  StrapWall bare = bareStrapWall();
  bare.step(240, 288, -8);
  bare.hang(241.25);
  EXPECT_TRUE(found(bare, edge).empty());
  bare.wall.straps[0].heightOffset = sixteenth; // though a little of the plate is beside the riser
  EXPECT_TRUE(found(bare, edge).empty());
}

// From a stretch 20 down, past a rib 1 wide, there is a riser from 0 to -8: over the strap, not beside it.
TEST(StrapEdge, leavesAStepAboveTheStrapAlone) {
  StrapWall bare = bareStrapWall();
  bare.step(0, 100, -20);
  bare.step(101, 288, -8);
  bare.hang(99.25); // 101 - 99 1/4 - 1 = 3/4
  EXPECT_TRUE(found(bare, edge).empty());
}

// Risers on both sides, 3 apart: the plate, 2 wide, is 1/2 from one and 1/2 from the other. No way leads out.
TEST(StrapEdge, tellsOfBothSides) {
  StrapWall bare = bareStrapWall();
  bare.step(0, 98.5, -8);
  bare.step(101.5, 288, -8);
  const Id id = bare.hang(100);
  const Findings findings = found(bare, edge);
  ASSERT_EQ(findings.size(), 2u);
  EXPECT_TRUE(is(findings[0], {Level::Watch, {id}, 0.5, 1, {{98.5, 99}, depths, {-8, 0}}, {}}));
  EXPECT_TRUE(is(findings[1], {Level::Watch, {id}, 0.5, 1, {{101, 101.5}, depths, {-8, 0}}, {}}));
}

TEST(StrapEdge, countsBelowZeroPastARiser) {
  StrapWall bare = bareStrapWall();
  bare.step(286, 288, -12);
  const Id id = bare.hang(285.4375); // 286 - 285 7/16 - 1 = -7/16; to 1/2 it is 15/16 to the left
  EXPECT_TRUE(isOnly(found(bare, edge),
                     {Level::Fix, {id}, -0.4375, 0.5, {{286, 286.4375}, depths, {-12, 0}}, along(id, -0.9375)}));
}

// At an outside corner the concrete ends with the wall; at an inside corner it goes on by the neighbour's 8.
TEST(StrapEdge, knowsInsideCornersFromOutsideCorners) {
  StrapWall bare = bareStrapWall();
  bare.hang(288 - 2 + sixteenth);
  bare.after = Point2{288, 100};
  EXPECT_TRUE(
      isOnly(found(bare, edge),
             {Level::Watch, {strap}, 0.9375, 1, {{288 - 0.9375, 288}, depths, heights}, along(strap, -sixteenth)}));
  bare.after = Point2{288, -100};
  EXPECT_TRUE(found(bare, edge).empty());
  bare.wall.straps[0].station = 296 - 2 + sixteenth;
  EXPECT_TRUE(
      isOnly(found(bare, edge),
             {Level::Watch, {strap}, 0.9375, 1, {{296 - 0.9375, 296}, depths, heights}, along(strap, -sixteenth)}));
}

TEST(StrapEdge, holdsTheInsideCornerAtTheLeft) {
  StrapWall bare = bareStrapWall();
  bare.hang(-8 + 2 - sixteenth);
  bare.before = Point2{0, -100}; // comes up from below, and this wall turns right
  EXPECT_TRUE(
      isOnly(found(bare, edge),
             {Level::Watch, {strap}, 0.9375, 1, {{-8, -8 + 0.9375}, depths, heights}, along(strap, sixteenth)}));
}

} // namespace
} // namespace sillwright
