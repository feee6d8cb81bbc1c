// Bolts against bars, straps and rods, and their washers over splices, each rule at its limit and a sixteenth to
// either side. A 5/8 bolt has a radius of 0.3125, a No. 4 bar of 0.25.
#include "bare_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;
using R = RuleId;
constexpr double sixteenth = 1.0 / 16;

// An upright bar at station 50 in the line of the bolts, that ends above the hook of the bolt (z -8 to -7.375). The
// ends of a bar are taken as round: from -6 to -2 it reaches from -6.25 to -1.75.
BareWall atBar(double station) {
  BareWall bare = bareWall();
  addBar(bare, {50, 3.25, -6}, {50, 3.25, -2});
  addBolt(bare, station);
  return bare;
}

TEST(BoltClearRules, OneInchToBarsIsAimedFor) {
  // The axes 1 + 0.3125 + 0.25 = 1.5625 apart.
  for (const double clear : {51.5625 + sixteenth, 51.5625, 48.4375})
    EXPECT_TRUE(silent(atBar(clear), R::BoltSteel));
  const BareWall close = atBar(51.5);
  const Id bolt = close.wall.bolts[0].id;
  EXPECT_TRUE(finds(close, R::BoltSteel, {.level = Level::Watch, .pieces = {bolt, close.wall.bars[0].id},
                                          .measured = 0.9375, .limit = 1,
                                          .region = {{50.25, 51.1875}, {3, 3.5}, {-6.25, -1.75}},
                                          .correction = shifted(bolt, sixteenth)}));
}

TEST(BoltClearRules, ABoltThatTouchesABar) {
  // The axes 0.3125 + 0.25 = 0.5625 apart: the steel meets. More than nothing must be left.
  EXPECT_TRUE(silent(atBar(50.5625 + sixteenth), R::BoltSteel, Level::Fix));
  const BareWall touching = atBar(50.5625);
  const Id bolt = touching.wall.bolts[0].id;
  const std::vector<Id> pieces{bolt, touching.wall.bars[0].id};
  EXPECT_TRUE(finds(touching, R::BoltSteel, {.pieces = pieces, .measured = 0, .limit = 0,
                                             .region = {{50.25, 50.25}, {3, 3.5}, {-6.25, -1.75}},
                                             .correction = shifted(bolt, 1)}));
  EXPECT_TRUE(finds(atBar(50.5), R::BoltSteel, {.pieces = pieces, .measured = -sixteenth, .limit = 0,
                                                .region = {{50.1875, 50.25}, {3, 3.5}, {-6.25, -1.75}},
                                                .correction = shifted(bolt, 1 + sixteenth)}));
}

// The hook of the J reaches to 3.25 + 2.5 = 5.75 inward, in the lowest 5/8 of the bolt: z -8 to -7.375.
TEST(BoltClearRules, TheHookAgainstABarBehindIt) {
  const auto wall = [](double depth) {
    BareWall bare = bareWall();
    addBar(bare, {50, depth, -28}, {50, depth, -2});
    addBolt(bare, 50);
    return bare;
  };
  // 5.75 + 1 + 0.25 = 7.
  EXPECT_TRUE(silent(wall(7), R::BoltSteel));
  EXPECT_TRUE(silent(wall(7 + sixteenth), R::BoltSteel));
  const BareWall close = wall(6.9375);
  const Id bolt = close.wall.bolts[0].id;
  // Axis of the bar to the middle of the hook's round tip at d 5.4375: 1.5 across, 1.5625 needed, so 0.4375 along
  // (7, 24, 25): to the left as well as to the right.
  EXPECT_TRUE(finds(close, R::BoltSteel, {.level = Level::Watch, .pieces = {bolt, close.wall.bars[0].id},
                                          .measured = 0.9375, .limit = 1,
                                          .region = {{49.75, 50.25}, {5.75, 6.6875}, {-8, -7.375}},
                                          .correction = shifted(bolt, -0.4375)}));
  BareWall turned = close; // the hook to the left: 3.6875 - 0.5625 from the shank
  turned.wall.bolts[0].hook = HookDirection::Left;
  EXPECT_TRUE(silent(turned, R::BoltSteel));
}

// A plain plate 2 1/2 wide and 0.1 thick that hangs 6 into the concrete in the line of the bolt.
BareWall atStrap(double station) {
  BareWall bare = bareWall();
  bare.job.types.edit([&](HardwareTypes& types) {
    types.straps[0].plateWidth = 2.5;
    types.straps[0].plateThickness = 0.1;
    types.straps[0].profile = {{2, 0}, {2, -6}};
  });
  Strap strap;
  strap.id = takeId(bare.job);
  strap.type = bare.strap;
  strap.station = 50; // 48.75 to 51.25
  bare.wall.straps.push_back(strap);
  addBolt(bare, station, 2);
  return bare;
}

TEST(BoltClearRules, OneInchToStrapsIsAimedFor) {
  // 1.25 + 1 + 0.3125 = 2.5625 from the centre line.
  for (const double clear : {52.5625 + sixteenth, 52.5625, 47.4375})
    EXPECT_TRUE(silent(atStrap(clear), R::BoltStrap));
  const BareWall close = atStrap(52.5);
  const Id bolt = close.wall.bolts[0].id;
  EXPECT_TRUE(finds(close, R::BoltStrap, {.level = Level::Watch, .pieces = {bolt, close.wall.straps[0].id},
                                          .measured = 0.9375, .limit = 1,
                                          .region = {{51.25, 52.1875}, {1.95, 2.05}, {-6, 0}},
                                          .correction = shifted(bolt, sixteenth)}));
}

TEST(BoltClearRules, ABoltThatTouchesAStrap) {
  // 1.25 + 0.3125 = 1.5625 from the centre line it meets the edge of the plate.
  EXPECT_TRUE(silent(atStrap(51.5625 + sixteenth), R::BoltStrap, Level::Fix));
  const BareWall touching = atStrap(51.5625);
  const Id bolt = touching.wall.bolts[0].id;
  const std::vector<Id> pieces{bolt, touching.wall.straps[0].id};
  EXPECT_TRUE(finds(touching, R::BoltStrap, {.pieces = pieces, .measured = 0, .limit = 0,
                                             .region = {{51.25, 51.25}, {1.95, 2.05}, {-6, 0}},
                                             .correction = shifted(bolt, 1)}));
  EXPECT_TRUE(finds(atStrap(51.5), R::BoltStrap, {.pieces = pieces, .measured = -sixteenth, .limit = 0,
                                                  .region = {{51.1875, 51.25}, {1.95, 2.05}, {-6, 0}},
                                                  .correction = shifted(bolt, 1 + sixteenth)}));
}

// A 7/8 rod 2 1/4 right of a 4x6 at 46 (44.25 to 47.75): its axis at 50, from z -4.5 to 6. Its foot is a square plate
// 1/2 thick.
BareWall atRod(double station, double footWidth) {
  BareWall bare = bareWall();
  RodType type;
  type.id = takeId(bare.job);
  type.diameter = 0.875;
  type.embedment = 4;
  type.footThickness = 0.5;
  type.footWidth = footWidth;
  bare.job.types.edit([&](HardwareTypes& types) { types.rods.push_back(type); });
  Rod rod;
  rod.id = takeId(bare.job);
  rod.type = type.id;
  rod.column = addColumn(bare, 46);
  rod.offset = 2.25;
  rod.depth = 3.25;
  rod.projection = 6;
  bare.wall.rods.push_back(rod);
  addBolt(bare, station);
  return bare;
}

TEST(BoltClearRules, OneInchToRodsIsAimedFor) {
  // 0.4375 + 1 + 0.3125 = 1.75 from axis to axis.
  for (const double clear : {51.75 + sixteenth, 51.75})
    EXPECT_TRUE(silent(atRod(clear, 0), R::BoltStrap));
  const BareWall close = atRod(51.6875, 0);
  const Id bolt = close.wall.bolts[0].id;
  const std::vector<Id> pieces{bolt, close.wall.rods[0].id};
  EXPECT_TRUE(finds(close, R::BoltStrap, {.level = Level::Watch, .pieces = pieces, .measured = 0.9375, .limit = 1,
                                          .region = {{50.4375, 51.375}, {2.9375, 3.5625}, {-4.5, 4}},
                                          .correction = shifted(bolt, sixteenth)}));
  EXPECT_TRUE(silent(atRod(50.75 + sixteenth, 0), R::BoltStrap, Level::Fix));
  EXPECT_TRUE(finds(atRod(50.75, 0), R::BoltStrap, {.pieces = pieces, .measured = 0, .limit = 0,
                                                    .region = {{50.4375, 50.4375}, {2.9375, 3.5625}, {-4.5, 4}},
                                                    .correction = shifted(bolt, 1)}));
}

// A foot plate 3 wide reaches 1 1/2 to either side, z -4.5 to -4.
TEST(BoltClearRules, TheFootPlateOfARod) {
  // 1.5 + 1 + 0.3125 = 2.8125 from axis to axis.
  for (const double clear : {52.8125 + sixteenth, 52.8125})
    EXPECT_TRUE(silent(atRod(clear, 3), R::BoltStrap));
  const BareWall close = atRod(52.75, 3);
  const Id bolt = close.wall.bolts[0].id;
  EXPECT_TRUE(finds(close, R::BoltStrap, {.level = Level::Watch, .pieces = {bolt, close.wall.rods[0].id},
                                          .measured = 0.9375, .limit = 1,
                                          .region = {{51.5, 52.4375}, {3, 3.5}, {-4.5, -4}},
                                          .correction = shifted(bolt, sixteenth)}));
}

BareWall atSplice(double station) {
  BareWall bare = bareWall();
  bare.wall.sills[0].splices = {48};
  addBolt(bare, station);
  return bare;
}

TEST(BoltClearRules, NoWasherOverASplice) {
  // The washer reaches 1.5 to either side; past the splice its narrow part lies on the other piece.
  for (const double clear : {46.5 - sixteenth, 46.5, 49.5, 49.5 + sixteenth})
    EXPECT_TRUE(silent(atSplice(clear), R::BoltSplice));
  const BareWall left = atSplice(46.5625);
  const Id bolt = left.wall.bolts[0].id;
  const Interval washer{1.75, 4.75};
  EXPECT_TRUE(finds(left, R::BoltSplice, {.pieces = {bolt, left.sill}, .measured = -sixteenth, .limit = 0,
                                          .region = {{48, 48.0625}, washer, {2.5, 2.729}},
                                          .correction = shifted(bolt, -sixteenth)}));
  EXPECT_TRUE(finds(atSplice(49.4375), R::BoltSplice, {.pieces = {bolt, left.sill}, .measured = -sixteenth, .limit = 0,
                                                       .region = {{47.9375, 48}, washer, {2.5, 2.729}},
                                                       .correction = shifted(bolt, sixteenth)}));
  BareWall bareNut = left; // the nut, 15/32 to either side of 46.5625, is clear
  bareNut.wall.bolts[0].washer = {};
  EXPECT_TRUE(silent(bareNut, R::BoltSplice));
}

} // namespace
} // namespace sillwright
