// Rods beside their columns, each rule at its limit and to either side of it. Worked by hand.
#include "bare_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;
using R = RuleId;
constexpr double sixteenth = 1.0 / 16;

struct RodWall : BareWall {
  Id rod, column;
};

// A 7/8 rod 14 in deep on a 4x6 at 48 (46 1/4 to 49 3/4); its bracket stands 1 1/2 off, so the rod is at 51 1/4. In the
// middle of 8 in of concrete.
RodWall rodWall(double offset = 1.5, double depth = 4, double projection = 5) {
  RodWall bare{bareWall(), {}, {}};
  RodType type;
  type.id = takeId(bare.job);
  type.name = "rod";
  type.diameter = 0.875;
  type.embedment = 14;
  type.threadLength = 6;
  type.threadsPerInch = 9;
  type.footWidth = 2;
  type.footThickness = 0.5;
  type.bracketOffset = 1.5;
  bare.job.types.edit([&](HardwareTypes& types) { types.rods.push_back(type); });
  bare.column = addColumn(bare, 48);
  Rod rod;
  rod.id = bare.rod = takeId(bare.job);
  rod.type = type.id;
  rod.column = bare.column;
  rod.offset = offset;
  rod.depth = depth;
  rod.projection = projection;
  bare.wall.rods.push_back(rod);
  return bare;
}

TEST(RodRules, TheLineOfTheBracketWithinAnEighth) {
  EXPECT_TRUE(silent(rodWall(1.625), R::RodOffset));
  EXPECT_TRUE(silent(rodWall(1.375), R::RodOffset));
  const RodWall far = rodWall(1.6875);
  EXPECT_TRUE(finds(far, R::RodOffset,
                    {.pieces = {far.rod, far.column}, .measured = 0.1875, .limit = 0.125,
                     .region = {{51.25, 51.4375}, {3.5625, 4.4375}, {0, 5}}, .correction = shifted(far.rod, -0.1875)}));
  const RodWall near = rodWall(1.3125);
  EXPECT_TRUE(finds(near, R::RodOffset,
                    {.pieces = {near.rod, near.column}, .measured = 0.1875, .limit = 0.125,
                     .region = {{51.0625, 51.25}, {3.5625, 4.4375}, {0, 5}}, .correction = shifted(near.rod, 0.1875),
                     .variant = 1}));
}

// 6 x 7/8 = 5 1/4 from the axis to the edge of the concrete: no 8 in stem has it on both sides, 10 1/2 in has.
TEST(RodRules, SixDiametersToTheEdges) {
  const auto in = [](double thickness, double depth) {
    RodWall bare = rodWall(1.5, depth);
    bare.wall.thickness = thickness;
    bare.wall.footing = {};
    return bare;
  };
  EXPECT_TRUE(silent(in(10.5, 5.25), R::RodEdge));
  const RodWall out = in(10.5, 5.25 - sixteenth);
  EXPECT_TRUE(finds(out, R::RodEdge,
                    {.level = Level::Ask, .pieces = {out.rod}, .measured = 5.1875, .limit = 5.25,
                     .region = {{51.25 - 0.4375, 51.25 + 0.4375}, {0, 5.1875}, {-14.5, 0}},
                     .correction = across(out.rod, sixteenth), .variant = 2}));
}

TEST(RodRules, SevenInchesOfEmbedment) {
  const auto deep = [](double embedment) {
    RodWall bare = rodWall();
    bare.job.types.edit([&](HardwareTypes& types) { types.rods[0].embedment = embedment; });
    return bare;
  };
  EXPECT_TRUE(silent(deep(7), R::RodEmbed));
  const RodWall shallow = deep(7 - sixteenth);
  const Findings found = findingsOf(shallow, R::RodEmbed);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].level, Level::Fix);
  EXPECT_DOUBLE_EQ(found[0].measured, 6.9375);
  EXPECT_DOUBLE_EQ(found[0].limit, 7);
}

// On a 3x6 sill: 2 1/2 + nut 0.776 (ASME B18.2.2) + two threads of 1/9 = 3.498, on the tape 3 1/2; a quarter to spare.
TEST(RodRules, ThreadForSillNutAndTwoThreads) {
  EXPECT_TRUE(silent(rodWall(1.5, 4, 3.75), R::RodThread));
  const RodWall tight = rodWall(1.5, 4, 3.75 - sixteenth);
  Findings found = findingsOf(tight, R::RodThread);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].level, Level::Watch);
  EXPECT_NEAR(found[0].measured, 0.1875, 1e-9);
  EXPECT_TRUE(silent(rodWall(1.5, 4, 3.5), R::RodThread, Level::Fix));
  const RodWall low = rodWall(1.5, 4, 3.5 - sixteenth);
  found = findingsOf(low, R::RodThread);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].level, Level::Fix);
  EXPECT_DOUBLE_EQ(found[0].limit, 3.5);
  EXPECT_TRUE(near(found[0].correction, Correction{Correction::Field::Projection, low.rod, 0.3125}));
}

// Rod 7/8 and bar 1/2 thick: axes 1 11/16 apart leave 1 in; 11/16 apart they touch. The foot is 2 in wide: its bars are
// kept above it.
TEST(RodRules, AnInchToBars) {
  const auto barAt = [](double station) {
    RodWall bare = rodWall();
    addBar(bare, {station, 4, -10}, {station, 4, -3});
    return bare;
  };
  EXPECT_TRUE(silent(barAt(51.25 + 1.6875), R::RodSteel));
  const RodWall close = barAt(51.25 + 1.625);
  Findings found = findingsOf(close, R::RodSteel);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].level, Level::Watch);
  EXPECT_NEAR(found[0].measured, 0.9375, 1e-9);
  found = findingsOf(barAt(51.25 + 0.6875), R::RodSteel);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].level, Level::Fix);
}

// A rod 7/8 thick is covered like a No. 7: 2 in to a form. Its foot, 2 in wide at 4 in, leaves 3 in.
TEST(RodRules, CoverOfABarAsThick) {
  EXPECT_TRUE(silent(rodWall(1.5, 3), R::RodCover));
  const RodWall out = rodWall(1.5, 3 - sixteenth);
  const Findings found = findingsOf(out, R::RodCover);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].level, Level::Ask);
  EXPECT_NEAR(found[0].measured, 1.9375, 1e-9);
  EXPECT_DOUBLE_EQ(found[0].limit, 2);
}

TEST(RodRules, NoneInADoor) {
  RodWall bare = rodWall();
  const Id door = addOpening(bare, OpeningKind::Door, 51.6875, 90); // from the edge of the rod
  EXPECT_TRUE(silent(bare, R::RodOpening));
  findIn(bare.wall.openings, door)->from -= sixteenth;
  const Findings found = findingsOf(bare, R::RodOpening);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_NEAR(found[0].measured, sixteenth, 1e-9);
}

// An eighth in 24 in, whatever the gauge; 1/16 in 12 in is the same.
TEST(RodRules, PlumbAsRead) {
  const auto read = [](double plumb, double gauge) {
    RodWall bare = rodWall();
    Reading reading;
    reading.piece = bare.rod;
    reading.plumb = plumb;
    reading.gauge = gauge;
    bare.wall.readings.push_back(reading);
    return bare;
  };
  EXPECT_TRUE(silent(rodWall(), R::RodPlumb)); // not read
  EXPECT_TRUE(silent(read(0.125, 24), R::RodPlumb));
  EXPECT_TRUE(silent(read(-0.0625, 12), R::RodPlumb));
  const Findings found = findingsOf(read(-0.125, 12), R::RodPlumb);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].level, Level::Watch);
  EXPECT_NEAR(found[0].measured, 0.25, 1e-9);
  EXPECT_EQ(found[0].variant, 1);
}

} // namespace
} // namespace sillwright
