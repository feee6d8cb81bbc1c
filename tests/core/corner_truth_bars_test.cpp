// Cover of bars at corners, at steps of pour line and footing, at block-outs and doors; corners that are not square.
// Distances worked by hand. A No. 4 is 1/2 thick; 1 1/2 in to forms, 3 in against earth.
#include "corner_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;
using R = RuleId;

// A bar along the wall 7 deep is 3/4 from the inside face, from the wall's left end to where the neighbour's concrete
// goes on (88); at both ends of the wall where both have neighbours.
TEST(CornerTruthBars, AlongTheInsideFace) {
  BareWall bare = cornerWall();
  addAlong(bare, {4, 92}, 7, -10);
  const auto found = [](Interval s) { return Truth{Level::Fix, 0.75, 1.5, {s, {7.25, 8}, {-10.25, -9.75}}}; };
  EXPECT_TRUE(says(bare, R::BarCover, found({4, 92})));
  addAfter(bare, 90);
  EXPECT_TRUE(says(bare, R::BarCover, found({4, 88})));
  addBefore(bare, 90);
  EXPECT_TRUE(says(bare, R::BarCover, found({8, 88})));
}

// Along the outside face, 3/4 before it, into an inside corner: free up to 96.
TEST(CornerTruthBars, AlongTheOutsideFaceIntoAnInsideCorner) {
  BareWall bare = cornerWall();
  addAfter(bare, -90);
  addAlong(bare, {4, 102}, 1, -10);
  EXPECT_TRUE(says(bare, R::BarCover, {Level::Fix, 0.75, 1.5, {{4, 96}, {0, 0.75}, {-10.25, -9.75}}}));
}

// A bar's end: 1 1/2 in short of 96 at a free end and an outside corner, of 104 at an inside corner.
TEST(CornerTruthBars, TheEndOfABarAlong) {
  const auto to = [](double end, std::optional<double> turn) {
    BareWall bare = cornerWall();
    if (turn)
      addAfter(bare, *turn);
    addAlong(bare, {4, end}, 4, -10);
    return bare;
  };
  const auto found = [](double end, double face) {
    return Truth{Level::Fix, face - end, 1.5, {{end, face}, {3.75, 4.25}, {-10.25, -9.75}}};
  };
  for (const auto& turn : {std::optional<double>{}, std::optional(90.0)}) {
    EXPECT_TRUE(silent(to(94.5, turn), R::BarCover));
    EXPECT_TRUE(says(to(94.5625, turn), R::BarCover, found(94.5625, 96)));
  }
  EXPECT_TRUE(silent(to(102.5, -90), R::BarCover));
  EXPECT_TRUE(says(to(102.5625, -90), R::BarCover, found(102.5625, 104)));
}

// An upright bar near the edge (88, 8): its axis 1.35 and 1.0125 from it is 1.6875 away, less 1/4; 1.4 and 1.05
// are 1.75.
TEST(CornerTruthBars, UprightNearTheEdgeWhereTheInsideFacesMeet) {
  BareWall bare = cornerWall();
  addAfter(bare, 90);
  BareWall right = bare;
  addUpright(right, 89.4, 6.95, {-20, -4});
  EXPECT_TRUE(silent(right, R::BarCover));
  addUpright(bare, 89.35, 6.9875, {-20, -4});
  EXPECT_TRUE(says(bare, R::BarCover, {Level::Fix, 1.4375, 1.5, {{88, 89.1}, {7.2375, 8}, {-20, -4}}}));
}

// In the footing (-32 to -24, depths -4 to 12): an upright 11 deep is 3/4 from its inner side; in front of the
// neighbour's footing (stations 84 to 100) the concrete goes on. 2.4 and 1 from the edge (84, 12) make 2.6 (5-12-13),
// less 1/4.
TEST(CornerTruthBars, TheSideOfTheFooting) {
  BareWall bare = cornerWall();
  addAfter(bare, 90);
  BareWall middle = bare, corner = bare, edge = bare;
  addUpright(middle, 48, 11, {-29, -26});
  EXPECT_TRUE(says(middle, R::BarCover, {Level::Fix, 0.75, 3, {{47.75, 48.25}, {11.25, 12}, {-29, -26}}}));
  addUpright(corner, 92, 11, {-29, -26});
  EXPECT_TRUE(silent(corner, R::BarCover));
  addUpright(edge, 86.4, 11, {-29, -26});
  EXPECT_TRUE(says(edge, R::BarCover, {Level::Fix, 2.35, 3, {{84, 86.15}, {11.25, 12}, {-29, -26}}}));
}

// The end of the footing: 4 past the corner, as far as the neighbour's stands out; 6 where that does. At an inside
// corner it goes on to the neighbour's inner side: 12, or 14 for a footing of 20 that stands out 6.
TEST(CornerTruthBars, TheEndOfTheFooting) {
  const auto to = [](double end, std::optional<double> turn, Footing footing = {16, 8, 4}) {
    BareWall bare = cornerWall();
    if (turn)
      addAfter(bare, *turn, [&](WallLine& next) { next.footing = footing; });
    addAlong(bare, {4, end}, 4, -28);
    return bare;
  };
  const auto found = [](double end, double face) {
    return Truth{Level::Fix, face - end, 3, {{end, face}, {3.75, 4.25}, {-28.25, -27.75}}};
  };
  EXPECT_TRUE(silent(to(97, {}), R::BarCover));
  EXPECT_TRUE(says(to(97.0625, {}), R::BarCover, found(97.0625, 100)));
  EXPECT_TRUE(says(to(97.0625, 90), R::BarCover, found(97.0625, 100)));
  EXPECT_TRUE(silent(to(99, 90, {20, 8, 6}), R::BarCover));
  EXPECT_TRUE(says(to(99.0625, 90, {20, 8, 6}), R::BarCover, found(99.0625, 102)));
  EXPECT_TRUE(says(to(105.0625, -90), R::BarCover, found(105.0625, 108)));
  EXPECT_TRUE(silent(to(107, -90, {20, 8, 6}), R::BarCover));
  EXPECT_TRUE(says(to(107.0625, -90, {20, 8, 6}), R::BarCover, found(107.0625, 110)));
}

// 10 deep beside the stem, up to 1/2 under the top of the footing. Under the neighbour's stem (88 to 96) there is no
// top.
TEST(CornerTruthBars, TheTopOfTheFooting) {
  BareWall bare = cornerWall();
  addAfter(bare, 90);
  BareWall middle = bare;
  addUpright(middle, 48, 8.5, {-28.5, -24.5});
  EXPECT_TRUE(says(middle, R::BarCover, {Level::Fix, 0.5, 1.5, {{47.75, 48.25}, {8.25, 8.75}, {-24.5, -24}}}));
  addUpright(bare, 92, 8.5, {-28.5, -24.5});
  EXPECT_TRUE(silent(bare, R::BarCover));
}

// The footing of the neighbour steps up to -24 ... -16: at an inside corner its 8 of stem end at 104, its footing at
// 108.
TEST(CornerTruthBars, AFootingThatStepsUpAtTheCorner) {
  BareWall bare = cornerWall();
  addAfter(bare, -90, [](WallLine& next) { next.stemHeight = 16; });
  BareWall above = bare, below = bare, under = bare;
  addUpright(above, 102.5, 4, {-14, -4}); // 104 - 102.75
  EXPECT_TRUE(says(above, R::BarCover, {Level::Fix, 1.25, 1.5, {{102.75, 104}, {3.75, 4.25}, {-14, -4}}}));
  addUpright(below, 102.5, 4, {-22, -18});
  EXPECT_TRUE(silent(below, R::BarCover));
  addUpright(under, 96.5, 4, {-29, -26}); // this wall's own footing ends at 104 + 4 all the same
  EXPECT_TRUE(silent(under, R::BarCover));
}

// The neighbour is not as deep: below its concrete (-16) this wall ends at the corner.
TEST(CornerTruthBars, ANeighbourThatIsNotAsDeep) {
  BareWall bare = cornerWall();
  addAfter(bare, -90, [](WallLine& next) {
    next.stemHeight = 8;
    next.footing = {16, 8, 4};
  });
  BareWall deep = bare;
  addUpright(bare, 95, 4, {-14, -4});
  EXPECT_TRUE(silent(bare, R::BarCover));
  addUpright(deep, 95, 4, {-22, -18});
  EXPECT_TRUE(says(deep, R::BarCover, {Level::Fix, 0.75, 1.5, {{95.25, 96}, {3.75, 4.25}, {-22, -18}}}));
}

// A neighbour 8 higher goes on over a bar that stands in it; beside it the bar is 3/4 under this wall's top.
TEST(CornerTruthBars, UnderAHigherNeighbour) {
  BareWall bare = cornerWall();
  addAfter(bare, 90, [](WallLine& next) { stepWhole(next, 8); });
  BareWall beside = bare;
  addUpright(bare, 92, 4, {-20, -0.75});
  EXPECT_TRUE(silent(bare, R::BarCover));
  addUpright(beside, 48, 4, {-20, -0.75});
  EXPECT_TRUE(says(beside, R::BarCover, {Level::Fix, 0.75, 1.5, {{47.75, 48.25}, {3.75, 4.25}, {-0.75, 0}}}));
}

// A block-out from 60 to 66, 6 deep: its risers are edges for what stands beside them (60 - 58.75 = 1 1/4), its bottom
// is the top of the concrete for what stands under it.
TEST(CornerTruthBars, ABlockOut) {
  BareWall bare = cornerWall();
  addStep(bare, 60, 66, -6);
  BareWall below = bare, under = bare, otherSide = bare;
  addUpright(bare, 58.5, 4, {-20, -2});
  EXPECT_TRUE(says(bare, R::BarCover, {Level::Fix, 1.25, 1.5, {{58.75, 60}, {3.75, 4.25}, {-6, -2}}}));
  addUpright(below, 58.5, 4, {-20, -7.5});
  EXPECT_TRUE(silent(below, R::BarCover));
  addUpright(otherSide, 67.5, 4, {-20, -2});
  EXPECT_TRUE(says(otherSide, R::BarCover, {Level::Fix, 1.25, 1.5, {{66, 67.25}, {3.75, 4.25}, {-6, -2}}}));
  addUpright(under, 63, 4, {-20, -7});
  EXPECT_TRUE(says(under, R::BarCover, {Level::Fix, 1, 1.5, {{62.75, 63.25}, {3.75, 4.25}, {-7, -6}}}));
}

// Straps and hooks beside the same block-out, 9 deep: the plate's edge 15/16 from 60; a hook that points right from 58
// comes 1/2 out of the riser.
TEST(CornerTruthBars, AStrapAndAHookBesideABlockOut) {
  BareWall bare = cornerWall();
  addStep(bare, 60, 66, -9);
  hangStrap(bare, 58.0625);
  EXPECT_TRUE(says(bare, R::StrapEdge, {Level::Watch, 0.9375, 1, {{59.0625, 60}, {0, 5}, {-9, 0}}}));
  editBoltType(bare, [](BoltType& type) {
    type.end = BoltEnd::J;
    type.hookLeg = 2.5;
  });
  addBolt(bare, 58, 4);
  bare.wall.bolts[0].hook = HookDirection::Right;
  EXPECT_TRUE(says(bare, R::BoltHook, {Level::Fix, 0.5, 0, {{57.6875, 60.5}, {3.6875, 4.3125}, {-8, -7.375}}}));
  bare.wall.steps[0].height = -7; // the hook goes on under it
  const Findings found = findingsOf(bare, R::BoltHook);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].level, Level::Watch); // only that it does not point inward
}

// A door that drops the pour line by 8 from 40 to 76: the steel of a bolt beside it is
// 40 - 38.5625 = 1 7/16 from the riser.
TEST(CornerTruthBars, BesideADoor) {
  BareWall bare = cornerWall();
  addOpening(bare, OpeningKind::Door, 40, 76);
  addStep(bare, 40, 76, -8);
  addBolt(bare, 38.25, 4);
  EXPECT_TRUE(says(bare, R::BoltCover, {Level::Ask, 1.4375, 1.5, {{38.5625, 40}, {3.6875, 4.3125}, {-8, 0}}}));
  bare.wall.bolts[0].station = 38.1875;
  EXPECT_TRUE(silent(bare, R::BoltCover));
  bare.wall.bolts[0].station = 77.75;
  EXPECT_TRUE(says(bare, R::BoltCover, {Level::Ask, 1.4375, 1.5, {{76, 77.4375}, {3.6875, 4.3125}, {-8, 0}}}));
  bare.wall.steps.clear(); // a door over concrete that goes on
  EXPECT_TRUE(silent(bare, R::BoltCover));
}

// A blunt corner, 45 degrees to the left: the end of the concrete runs off at (96 + d, d). The strap's edge is nearest
// at depth 0: 1 1/4 along the wall are 1.25 / sqrt 2 square to the face.
TEST(CornerTruthBars, ABluntOutsideCorner) {
  BareWall bare = cornerWall();
  addAfter(bare, 45);
  hangStrap(bare, 93.75);
  EXPECT_TRUE(says(bare, R::StrapEdge, {Level::Watch, 1.25 / std::sqrt(2.0), 1, {{94.75, 96}, {0, 5}, {-10, 0}}}));
  bare.wall.straps[0].station = 93.5; // 1.5 / sqrt 2 is more than 1
  EXPECT_TRUE(silent(bare, R::StrapEdge));
}

// A sharp corner, 135 degrees: the end of the concrete runs in at (96 - d, d), and is 91 at the tip of the hook, 5
// deep.
TEST(CornerTruthBars, ASharpOutsideCorner) {
  BareWall bare = cornerWall();
  addAfter(bare, 135);
  hangStrap(bare, 89);
  EXPECT_TRUE(says(bare, R::StrapEdge, {Level::Watch, 1 / std::sqrt(2.0), 1, {{90, 91}, {0, 5}, {-10, 0}}}));
  // An upright bar 4 deep: its axis is 92 - 90 along the wall from the face, 2 / sqrt 2 square to it, less 1/4.
  addUpright(bare, 90, 4, {-20, -4});
  EXPECT_TRUE(
      says(bare, R::BarCover, {Level::Fix, std::sqrt(2.0) - 0.25, 1.5, {{90.25, 91.75}, {3.75, 4.25}, {-20, -4}}}));
  bare.wall.bars[0].planned.a.s = bare.wall.bars[0].planned.b.s = 89.5; // 2.5 / sqrt 2 = 1.768
  EXPECT_TRUE(silent(bare, R::BarCover));
}

// The same at the left end, in a mirror.
TEST(CornerTruthBars, ASharpOutsideCornerAtTheLeft) {
  BareWall bare = cornerWall();
  addBefore(bare, 135);
  hangStrap(bare, 7);
  EXPECT_TRUE(says(bare, R::StrapEdge, {Level::Watch, 1 / std::sqrt(2.0), 1, {{5, 6}, {0, 5}, {-10, 0}}}));
}

// An inside corner of 45 degrees: the neighbour's inner face is 8 sqrt 2 past the corner at depth 0 and comes back an
// inch an inch of depth: 107.3137 - d. The strap, 5 deep, ends there at 102.3137.
TEST(CornerTruthBars, ABluntInsideCorner) {
  BareWall bare = cornerWall();
  addAfter(bare, -45);
  const double face = 96 + 8 * std::sqrt(2.0) - 5;
  hangStrap(bare, face - 2);
  EXPECT_TRUE(says(bare, R::StrapEdge, {Level::Watch, 1 / std::sqrt(2.0), 1, {{face - 1, face}, {0, 5}, {-10, 0}}}));
}

// Two walls in one line: no end between them.
TEST(CornerTruthBars, StraightOn) {
  BareWall bare = cornerWall();
  addAfter(bare, 0);
  hangStrap(bare, 94.5);
  addUpright(bare, 95.5, 4, {-28, -4});
  addBolt(bare, 95, 3.25);
  for (const R rule : {R::StrapEdge, R::BarCover, R::BoltCover})
    EXPECT_TRUE(silent(bare, rule));
}

// What elevations draw is what the rules measure to: over a lower neighbour (-4) the wall ends at the inside corner,
// beside it 8 farther, its footing 12 farther.
TEST(CornerTruthBars, TheOutlineEndsWithTheFaces) {
  BareWall bare = cornerWall();
  addAfter(bare, -90, [](WallLine& next) { stepWhole(next, -4); });
  bare.job.walls.add(bare.wall);
  const Polygon2 outline = concreteOutline(layOut(bare.job, bare.job.walls.findPointer(bare.wall.id)));
  const Polygon2 expected{{0, 0},     {96, 0},    {96, -4},  {104, -4}, {104, -24},
                          {108, -24}, {108, -32}, {-4, -32}, {-4, -24}, {0, -24}};
  ASSERT_EQ(outline.size(), expected.size());
  for (std::size_t i = 0; i < outline.size(); ++i) {
    EXPECT_NEAR(outline[i].x, expected[i].x, 1e-9) << i;
    EXPECT_NEAR(outline[i].y, expected[i].y, 1e-9) << i;
  }
}

} // namespace
} // namespace sillwright
