// Cover and edges at the corners of a foundation, where the concrete of the neighbour goes on. Distances worked by
// hand. Whether a sill runs by or butts there changes no concrete: both are tried where it could matter.
#include "core/rules/wording.h"
#include "corner_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;
using R = RuleId;

// Wall and neighbour 8 thick. Free end: the plate's edge at 95 1/16 is 15/16 from 96.
TEST(CornerTruth, AStrapAtAnEndAndAtAnOutsideCorner) {
  const Truth found{Level::Watch, 0.9375, 1, {{95.0625, 96}, {0, 5}, {-10, 0}}};
  BareWall bare = cornerWall();
  hangStrap(bare, 94.0625);
  EXPECT_TRUE(says(bare, R::StrapEdge, found));
  for (const EndFraming framing : {EndFraming::RunsBy, EndFraming::Butts}) {
    BareWall outside = bare;
    outside.wall.endFraming = framing;
    addAfter(outside, 90, [&](WallLine& next) {
      next.startFraming = framing == EndFraming::RunsBy ? EndFraming::Butts : EndFraming::RunsBy;
    });
    EXPECT_TRUE(says(outside, R::StrapEdge, found));
  }
}

// Inside corner: the concrete goes on by the neighbour's thickness, whichever sill butts.
TEST(CornerTruth, AStrapAtAnInsideCorner) {
  for (const double thickness : {6.0, 8.0})
    for (const EndFraming framing : {EndFraming::RunsBy, EndFraming::Butts}) {
      BareWall bare = cornerWall();
      bare.wall.endFraming = framing;
      addAfter(bare, -90, [&](WallLine& next) { next.thickness = thickness; });
      hangStrap(bare, 94.0625);
      EXPECT_TRUE(silent(bare, R::StrapEdge));
      const double end = 96 + thickness;
      bare.wall.straps[0].station = end - 1.9375;
      EXPECT_TRUE(says(bare, R::StrapEdge, {Level::Watch, 0.9375, 1, {{end - 0.9375, end}, {0, 5}, {-10, 0}}}));
    }
}

// The neighbour's pour line is 4 lower there: over the upper 4 in the concrete ends at the corner.
TEST(CornerTruth, AStrapAtAnInsideCornerBesideALowerPour) {
  BareWall bare = cornerWall();
  addAfter(bare, -90, [](WallLine& next) { stepWhole(next, -4); });
  hangStrap(bare, 94.0625);
  EXPECT_TRUE(says(bare, R::StrapEdge, {Level::Watch, 0.9375, 1, {{95.0625, 96}, {0, 5}, {-4, 0}}}));
  bare.wall.straps[0].station = 94;
  EXPECT_TRUE(silent(bare, R::StrapEdge));
}

// The same at the left end.
TEST(CornerTruth, AStrapAtTheLeftEnd) {
  BareWall outside = cornerWall();
  hangStrap(outside, 1.9375);
  addBefore(outside, 90);
  EXPECT_TRUE(says(outside, R::StrapEdge, {Level::Watch, 0.9375, 1, {{0, 0.9375}, {0, 5}, {-10, 0}}}));
  BareWall inside = cornerWall();
  hangStrap(inside, 1.9375);
  addBefore(inside, -90, [](WallLine& before) { stepWhole(before, -4); });
  EXPECT_TRUE(says(inside, R::StrapEdge, {Level::Watch, 0.9375, 1, {{0, 0.9375}, {0, 5}, {-4, 0}}}));
  inside.wall.straps[0].station = 2;
  EXPECT_TRUE(silent(inside, R::StrapEdge));
}

// A bolt 7 deep has 8 - 7 5/16 = 11/16 behind it, but within the 8 in of a wall that goes off inward at an outside
// corner (stations 88 to 96) the concrete goes on.
TEST(CornerTruth, ABoltInFrontOfTheNeighbour) {
  BareWall bare = cornerWall();
  addAfter(bare, 90);
  addBolt(bare, 48, 7);
  EXPECT_TRUE(says(bare, R::BoltCover, {Level::Ask, 0.6875, 1.5, {{47.6875, 48.3125}, {7.3125, 8}, {-8, 0}}}));
  bare.wall.bolts[0].station = 92;
  EXPECT_TRUE(silent(bare, R::BoltCover));
  BareWall free = cornerWall(); // without the neighbour
  addBolt(free, 92, 7);
  EXPECT_TRUE(says(free, R::BoltCover, {Level::Ask, 0.6875, 1.5, {{91.6875, 92.3125}, {7.3125, 8}, {-8, 0}}}));
}

// Near the edge at (88, 8) where the inside faces meet, the cover is measured to that edge: the axis 1.4 and 1.05 from
// it is 1.75 away (3-4-5), less 5/16. With 1.45 and 1.0875 it is 1 1/2.
TEST(CornerTruth, ABoltNearTheEdgeWhereTheInsideFacesMeet) {
  BareWall bare = cornerWall();
  addAfter(bare, 90);
  addBolt(bare, 89.4, 6.95);
  EXPECT_TRUE(says(bare, R::BoltCover, {Level::Ask, 1.4375, 1.5, {{88, 89.0875}, {7.2625, 8}, {-8, 0}}}));
  bare.wall.bolts[0].station = 89.45;
  bare.wall.bolts[0].depth = 6.9125;
  EXPECT_TRUE(silent(bare, R::BoltCover));
  // Half before that edge: straight behind it 8 - 7.2625.
  bare.wall.bolts[0].station = 88;
  bare.wall.bolts[0].depth = 6.95;
  EXPECT_TRUE(says(bare, R::BoltCover, {Level::Ask, 0.7375, 1.5, {{87.6875, 88}, {7.2625, 8}, {-8, 0}}}));
}

// The neighbour's pour line is 4 lower: the upper 4 in of the bolt stand free of it.
TEST(CornerTruth, ABoltInFrontOfALowerNeighbour) {
  BareWall bare = cornerWall();
  addAfter(bare, 90, [](WallLine& next) { stepWhole(next, -4); });
  addBolt(bare, 92, 7);
  EXPECT_TRUE(says(bare, R::BoltCover, {Level::Ask, 0.6875, 1.5, {{91.6875, 92.3125}, {7.3125, 8}, {-4, 0}}}));
}

// Inside corner: the neighbour (stations 96 to 104) lies before the outside face. A bolt half an inch deep
// has 3/16 before it, behind the neighbour all it needs; between the two the edge at (96, 0) is nearest.
TEST(CornerTruth, ABoltBehindTheNeighbourAtAnInsideCorner) {
  BareWall bare = cornerWall();
  addAfter(bare, -90);
  addBolt(bare, 48, 0.5);
  EXPECT_TRUE(says(bare, R::BoltCover, {Level::Ask, 0.1875, 1.5, {{47.6875, 48.3125}, {0, 0.1875}, {-8, 0}}}));
  bare.wall.bolts[0].station = 100;
  EXPECT_TRUE(silent(bare, R::BoltCover));
  bare.wall.bolts[0].station = 97.2; // 1.2 and 0.5: 1.3 from the edge (5-12-13), less 5/16
  EXPECT_TRUE(says(bare, R::BoltCover, {Level::Ask, 0.9875, 1.5, {{96, 96.8875}, {0, 0.1875}, {-8, 0}}}));
}

// The end of the wall: 96 - 94.5625 = 1 7/16 at a free end and at an outside corner, nothing at an inside corner.
TEST(CornerTruth, ABoltNearTheEnd) {
  const Truth found{Level::Ask, 1.4375, 1.5, {{94.5625, 96}, {2.9375, 3.5625}, {-8, 0}}};
  BareWall free = cornerWall();
  addBolt(free, 94.25);
  EXPECT_TRUE(says(free, R::BoltCover, found));
  BareWall outside = free, inside = free;
  addAfter(outside, 90);
  EXPECT_TRUE(says(outside, R::BoltCover, found));
  addAfter(inside, -90);
  EXPECT_TRUE(silent(inside, R::BoltCover));
}

// A hook of 2 1/2 from an axis 6 deep ends at 8 1/2. In the middle of the wall that is 1/2 out; at 92 it lies in the
// neighbour; with its side at 87 15/16 it comes 1/16 out of the neighbour's inside face (88).
TEST(CornerTruth, AHookInTheNeighbour) {
  BareWall bare = cornerWall();
  editBoltType(bare, [](BoltType& type) {
    type.end = BoltEnd::J;
    type.hookLeg = 2.5;
  });
  addAfter(bare, 90);
  addBolt(bare, 48, 6);
  const auto hook = [](double station) {
    return Box3{{station - 0.3125, station + 0.3125}, {5.6875, 8.5}, {-8, -7.375}};
  };
  EXPECT_TRUE(says(bare, R::BoltHook, {Level::Fix, 0.5, 0, hook(48)}));
  bare.wall.bolts[0].station = 92;
  EXPECT_TRUE(silent(bare, R::BoltHook));
  bare.wall.bolts[0].station = 88.3125;
  EXPECT_TRUE(silent(bare, R::BoltHook));
  bare.wall.bolts[0].station = 88.25;
  EXPECT_TRUE(says(bare, R::BoltHook, {Level::Fix, 0.0625, 0, hook(88.25)}));
  // Its cover there: 1 from the neighbour's face, where the hook is behind the wall's own.
  bare.wall.bolts[0].station = 89.3125;
  EXPECT_TRUE(says(bare, R::BoltCover, {Level::Ask, 1, 1.5, {{88, 89}, {8, 8.5}, {-8, 0}}}));
  const Findings found = findingsOf(bare, R::BoltCover);
  EXPECT_EQ(whatFallsShort(bare.job, found.at(0)), "bolt to the face of the wall at the corner");
  EXPECT_TRUE(near(found.at(0).correction, shifted(bare.wall.bolts[0].id, 0.5)));
}

// Walls 12 thick; 6 d of a 3/4 rod are 4 1/2. The axis 9 deep has 3 behind it. In front of the neighbour (84 to 96) it
// is 4 and 3 from the edge (84, 12), 5 in all; 2.4 and 3.2 make 4.
TEST(CornerTruth, ARodInFrontOfTheNeighbour) {
  BareWall bare = cornerWall();
  bare.wall.thickness = 12;
  addAfter(bare, 90);
  BareWall middle = bare, corner = bare, edge = bare;
  addRod(middle, 48, 9);
  EXPECT_TRUE(says(middle, R::RodEdge, {Level::Ask, 3, 4.5, {{47.625, 48.375}, {9, 12}, {-12, 0}}}));
  addRod(corner, 88, 9);
  EXPECT_TRUE(silent(corner, R::RodEdge));
  addRod(edge, 86.4, 8.8);
  EXPECT_TRUE(says(edge, R::RodEdge, {Level::Ask, 4, 4.5, {{84, 86.4}, {8.8, 12}, {-12, 0}}}));
}

// Cover of the same rod, 2 in: the axis 10 deep, 2 - 3/8 from the inside face.
TEST(CornerTruth, TheCoverOfARodInFrontOfTheNeighbour) {
  BareWall bare = cornerWall();
  bare.wall.thickness = 12;
  addAfter(bare, 90);
  BareWall middle = bare;
  addRod(middle, 48, 10);
  EXPECT_TRUE(says(middle, R::RodCover, {Level::Ask, 1.625, 2, {{47.625, 48.375}, {10.375, 12}, {-12, 0}}}));
  addRod(bare, 90, 10);
  EXPECT_TRUE(silent(bare, R::RodCover));
}

// Thickness 6: 1 in behind the tip of the hook at 5. In front of the neighbour (90 to 96) the edge (90, 6) is 1 and 1
// from the strap's side at 91, and the region is between them.
TEST(CornerTruth, BehindAStrap) {
  BareWall bare = cornerWall();
  bare.wall.thickness = 6;
  addAfter(bare, 90);
  hangStrap(bare, 48);
  EXPECT_TRUE(says(bare, R::StrapBack, {Level::Watch, 1, 1.5, {{47, 49}, {5, 6}, {-10.05, -9.95}}}));
  bare.wall.straps[0].station = 94;
  EXPECT_TRUE(silent(bare, R::StrapBack));
  bare.wall.straps[0].station = 92;
  EXPECT_TRUE(says(bare, R::StrapBack, {Level::Watch, std::sqrt(2.0), 1.5, {{90, 91}, {5, 6}, {-10.05, -9.95}}}));
}

// 12 in of concrete without a footing: 1.95 under the hook. The neighbour, 24 deep, goes on under all of it at 93 to
// 95, not under a strap that is half before it.
TEST(CornerTruth, UnderAStrap) {
  BareWall bare = cornerWall();
  bare.wall.stemHeight = 12;
  bare.wall.footing = {};
  addAfter(bare, 90, [](WallLine& next) { next.stemHeight = 24; });
  hangStrap(bare, 94);
  EXPECT_TRUE(silent(bare, R::StrapDepth));
  bare.wall.straps[0].station = 88;
  const Findings found = findingsOf(bare, R::StrapDepth);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].level, Level::Watch);
  EXPECT_NEAR(found[0].measured, 1.95, 1e-9);
}

} // namespace
} // namespace sillwright
