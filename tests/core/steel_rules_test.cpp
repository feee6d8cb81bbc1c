// Cover of bars at every face of the concrete, at the limit and a sixteenth to either side.
// ACI 318-19 Table 20.5.1.3.1: 3 in against earth; 1 1/2 in to No. 5 and 2 in from No. 6 where formed.
// Stem: s 0 to 96, d 0 to 8, z -24 to 0. Footing, cast against earth: s -4 to 100, d -4 to 12, z -32 to -24.
#include "bare_wall.h"
#include "core/rules/wording.h"

namespace sillwright {
namespace {

using namespace testing_support;
using R = RuleId;
constexpr double sixteenth = 1.0 / 16;
// Faces as a finding numbers them.
enum Face : std::uint8_t { left, right, outside, inside, top, bottom, footingTop };

BareWall withBar(Point3 a, Point3 b, int size = 4) {
  BareWall bare = bareWall();
  addBar(bare, a, b, size);
  return bare;
}

double radiusOf(int size) { return size / 16.0; }

// An upright bar in the middle of the stem; its lower end 3 1/2 over the bottom.
BareWall upright(double station, double depth, double topEnd = -2.5, int size = 4, double lowEnd = -28.5) {
  return withBar({station, depth, lowEnd}, {station, depth, topEnd}, size);
}

BareWall lying(double from, double to, double depth, double z, int size = 4) {
  return withBar({from, depth, z}, {to, depth, z}, size);
}

Expected onBar(const BareWall& bare, double measured, double limit, const Box3& region, Face face,
               Correction::Field field, double by) {
  const Id bar = bare.wall.bars[0].id;
  return {Level::Fix, {bar}, measured, limit, region, Correction{field, bar, by}, face};
}
using F = Correction::Field;

TEST(SteelRules, CoverToTheFacesOfTheStemBySize) {
  for (int size = 3; size <= 8; ++size) {
    const double r = radiusOf(size);
    const double limit = size <= 5 ? 1.5 : 2;
    const Interval station{50 - r, 50 + r};
    for (const double more : {sixteenth, 0.0}) {
      EXPECT_TRUE(silent(upright(50, limit + r + more, -2.5, size), R::BarCover));
      EXPECT_TRUE(silent(upright(50, 8 - limit - r - more, -2.5, size), R::BarCover));
    }
    // In the footing it is far from the side: only the part in the stem, z -24 to -2.5, is short.
    const double less = limit - sixteenth;
    const BareWall out = upright(50, less + r, -2.5, size);
    EXPECT_TRUE(finds(out, R::BarCover, onBar(out, less, limit, {station, {0, less}, {-24, -2.5}}, outside, F::Depth,
                                              sixteenth)));
    const BareWall in = upright(50, 8 - less - r, -2.5, size);
    EXPECT_TRUE(finds(in, R::BarCover, onBar(in, less, limit, {station, {8 - less, 8}, {-24, -2.5}}, inside, F::Depth,
                                             -sixteenth)));
  }
}

TEST(SteelRules, CoverToTheTop) {
  for (const double end : {-1.5 - sixteenth, -1.5})
    EXPECT_TRUE(silent(upright(50, 4, end), R::BarCover));
  const BareWall high = upright(50, 4, -1.4375);
  EXPECT_TRUE(finds(high, R::BarCover, onBar(high, 1.4375, 1.5, {{49.75, 50.25}, {3.75, 4.25}, {-1.4375, 0}}, top,
                                             F::Height, -sixteenth)));
  EXPECT_TRUE(silent(upright(50, 4, -2, 6), R::BarCover));
  const BareWall thick = upright(50, 4, -1.9375, 6);
  EXPECT_TRUE(finds(thick, R::BarCover, onBar(thick, 1.9375, 2, {{49.625, 50.375}, {3.625, 4.375}, {-1.9375, 0}}, top,
                                              F::Height, -sixteenth)));
  // A bar that lies: its side, 0.25 over its axis.
  EXPECT_TRUE(silent(lying(6, 90, 4, -1.75), R::BarCover));
  const BareWall flat = lying(6, 90, 4, -1.6875);
  EXPECT_TRUE(finds(flat, R::BarCover, onBar(flat, 1.4375, 1.5, {{6, 90}, {3.75, 4.25}, {-1.4375, 0}}, top, F::Height,
                                             -sixteenth)));
}

TEST(SteelRules, CoverToTheBottomAgainstEarth) {
  for (const double end : {-29 + sixteenth, -29.0})
    EXPECT_TRUE(silent(upright(50, 4, -2.5, 4, end), R::BarCover));
  const BareWall low = upright(50, 4, -2.5, 4, -29.0625);
  EXPECT_TRUE(finds(low, R::BarCover, onBar(low, 2.9375, 3, {{49.75, 50.25}, {3.75, 4.25}, {-32, -29.0625}}, bottom,
                                            F::Height, sixteenth)));
  const BareWall flat = lying(6, 90, 4, -28.8125); // its underside at -29.0625
  EXPECT_TRUE(finds(flat, R::BarCover, onBar(flat, 2.9375, 3, {{6, 90}, {3.75, 4.25}, {-32, -29.0625}}, bottom,
                                             F::Height, sixteenth)));
  BareWall slab = upright(50, 4, -2.5, 4, -21.0625); // without a footing the stem goes to earth at -24
  slab.wall.footing = {};
  EXPECT_TRUE(finds(slab, R::BarCover, onBar(slab, 2.9375, 3, {{49.75, 50.25}, {3.75, 4.25}, {-24, -21.0625}}, bottom,
                                             F::Height, sixteenth)));
}

TEST(SteelRules, CoverToTheSidesOfTheFootingAgainstEarth) {
  // -4 + 3 + 0.25 = -0.75 and 12 - 3 - 0.25 = 8.75.
  for (const double depth : {-0.75, -0.75 + sixteenth, 8.75 - sixteenth, 8.75})
    EXPECT_TRUE(silent(lying(6, 90, depth, -28), R::BarCover));
  const Interval high{-28.25, -27.75};
  const BareWall out = lying(6, 90, -0.8125, -28);
  EXPECT_TRUE(finds(out, R::BarCover, onBar(out, 2.9375, 3, {{6, 90}, {-4, -1.0625}, high}, outside, F::Depth,
                                            sixteenth)));
  const BareWall in = lying(6, 90, 8.8125, -28);
  EXPECT_TRUE(finds(in, R::BarCover, onBar(in, 2.9375, 3, {{6, 90}, {9.0625, 12}, high}, inside, F::Depth,
                                           -sixteenth)));
}

TEST(SteelRules, CoverToTheEndsOfTheFootingAgainstEarth) {
  for (const double more : {sixteenth, 0.0})
    EXPECT_TRUE(silent(lying(-1 + more, 97 - more, 4, -28), R::BarCover));
  const Interval deep{3.75, 4.25};
  const Interval high{-28.25, -27.75};
  const BareWall start = lying(-1.0625, 90, 4, -28);
  EXPECT_TRUE(finds(start, R::BarCover, onBar(start, 2.9375, 3, {{-4, -1.0625}, deep, high}, left, F::Station,
                                              sixteenth)));
  const BareWall end = lying(6, 97.0625, 4, -28);
  EXPECT_TRUE(finds(end, R::BarCover, onBar(end, 2.9375, 3, {{97.0625, 100}, deep, high}, right, F::Station,
                                            -sixteenth)));
}

// Beyond the stem the footing has a top of its own at -24: formed or in contact with the ground, not cast against it.
TEST(SteelRules, CoverToTheTopOfTheFootingBesideTheStem) {
  for (const double z : {-25.75 - sixteenth, -25.75}) {
    EXPECT_TRUE(silent(lying(6, 90, 8.5, z), R::BarCover));
    EXPECT_TRUE(silent(lying(6, 90, -0.5, z), R::BarCover));
    EXPECT_TRUE(silent(lying(-1, 90, 4, z), R::BarCover));
  }
  EXPECT_TRUE(silent(lying(6, 90, 4, -24.5), R::BarCover)); // under the stem the concrete goes on
  EXPECT_TRUE(silent(lying(6, 90, 7.75, -24.5), R::BarCover)); // also at its very side
  const Interval near24{-25.4375, -24};
  const BareWall in = lying(6, 90, 8.5, -25.6875); // d 8.25 to 8.75, wholly beside the stem
  EXPECT_TRUE(finds(in, R::BarCover, onBar(in, 1.4375, 1.5, {{6, 90}, {8.25, 8.75}, near24}, footingTop, F::Height,
                                           -sixteenth)));
  const BareWall out = lying(6, 90, -0.125, -25.6875); // d -0.375 to 0.125, in part beside it
  EXPECT_TRUE(finds(out, R::BarCover, onBar(out, 1.4375, 1.5, {{6, 90}, {-0.375, 0}, near24}, footingTop, F::Height,
                                            -sixteenth)));
  const BareWall end = lying(-1, 90, 4, -25.6875); // past the end of the stem by 1
  EXPECT_TRUE(finds(end, R::BarCover, onBar(end, 1.4375, 1.5, {{-1, 0}, {3.75, 4.25}, near24}, footingTop, F::Height,
                                            -sixteenth)));
  Job job = in.job;
  job.walls.add(in.wall);
  EXPECT_EQ(message(job, findingsOf(in, R::BarCover).at(0)),
            "A bar is 1 7/16\" from the top of the footing; at least 1 1/2\" is asked for.");
}

TEST(SteelRules, CoverToTheEndsOfTheStem) {
  for (const double more : {sixteenth, 0.0})
    EXPECT_TRUE(silent(lying(1.5 + more, 94.5 - more, 4, -12), R::BarCover));
  const Interval deep{3.75, 4.25};
  const Interval high{-12.25, -11.75};
  const BareWall start = lying(1.4375, 90, 4, -12);
  EXPECT_TRUE(finds(start, R::BarCover, onBar(start, 1.4375, 1.5, {{0, 1.4375}, deep, high}, left, F::Station,
                                              sixteenth)));
  const BareWall end = lying(6, 94.5625, 4, -12);
  EXPECT_TRUE(finds(end, R::BarCover, onBar(end, 1.4375, 1.5, {{94.5625, 96}, deep, high}, right, F::Station,
                                            -sixteenth)));
  const BareWall standing = upright(1.6875, 4); // its side at 1.4375, in the stem only
  EXPECT_TRUE(finds(standing, R::BarCover, onBar(standing, 1.4375, 1.5, {{0, 1.4375}, deep, {-24, -2.5}}, left,
                                                 F::Station, sixteenth)));
}

// From 48 on the pour line is 8 lower: a face at 48 from -8 to 0, with the concrete to its left.
BareWall stepped(BareWall bare) {
  bare.wall.steps.push_back({takeId(bare.job), "", 48, 96, -8, {}});
  return bare;
}

TEST(SteelRules, CoverAtAStep) {
  for (const double station : {46.25 - sixteenth, 46.25}) // 48 - 1.5 - 0.25
    EXPECT_TRUE(silent(stepped(upright(station, 4)), R::BarCover));
  const Interval deep{3.75, 4.25};
  const BareWall beside = stepped(upright(46.3125, 4));
  EXPECT_TRUE(finds(beside, R::BarCover, onBar(beside, 1.4375, 1.5, {{46.5625, 48}, deep, {-8, -2.5}}, right,
                                               F::Station, -sixteenth)));
  // On the low side the face is not its own: it only stands up 5 1/2 out of the lower line, and lowering it by 7 would
  // take it out of the bottom.
  const BareWall low = stepped(upright(60, 4));
  EXPECT_TRUE(finds(low, R::BarCover, {.pieces = {low.wall.bars[0].id}, .measured = -5.5, .limit = 1.5,
                                       .region = {{59.75, 60.25}, deep, {-8, -2.5}}, .variant = top}));
  // A bar that runs through lies 1 1/2 under the lower line: -8 - 1.5 - 0.25 = -9.75.
  EXPECT_TRUE(silent(stepped(lying(6, 90, 4, -9.75)), R::BarCover));
  const BareWall through = stepped(lying(6, 90, 4, -9.6875));
  EXPECT_TRUE(finds(through, R::BarCover, onBar(through, 1.4375, 1.5, {{6, 90}, deep, {-9.4375, -8}}, top, F::Height,
                                                -sixteenth)));
}

TEST(SteelRules, ABarIsWhereItWasFound) {
  BareWall bare = upright(50, 4);
  bare.wall.bars[0].found = BarPlace{{50, 1.6875, -28.5}, {50, 1.6875, -2.5}};
  EXPECT_TRUE(finds(bare, R::BarCover, onBar(bare, 1.4375, 1.5, {{49.75, 50.25}, {0, 1.4375}, {-24, -2.5}}, outside,
                                             F::Depth, sixteenth)));
}

TEST(SteelRules, ABarThatSticksOut) {
  const BareWall out = upright(50, 0); // half of it: -0.25; 1.75 further in it has its cover
  EXPECT_TRUE(finds(out, R::BarCover, onBar(out, -0.25, 1.5, {{49.75, 50.25}, {-0.25, 0}, {-24, -2.5}}, outside,
                                            F::Depth, 1.75)));
}

} // namespace
} // namespace sillwright
