// Bolts in their sill pieces, each rule at its limit and a sixteenth to either side. IRC 2024 R403.1.6.
// Sill 3x6 on the pour line: d 0.5 to 6, z 0 to 2.5.
#include "bare_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;
using R = RuleId;
constexpr Interval across36{0.5, 6};
constexpr Interval thick3{0, 2.5};
constexpr double sixteenth = 1.0 / 16;

BareWall withBolts(std::initializer_list<double> stations, double length = 96) {
  BareWall bare = bareWall(length);
  addBolts(bare, stations);
  return bare;
}

// Walls to the left and right that turn away from it: it joins two others.
void joinBothEnds(BareWall& bare, double length) {
  const Corner far[]{{takeId(bare.job), {length, 100}, {}}, {takeId(bare.job), {0, 100}, {}}};
  bare.job.corners.edit([&](std::vector<Corner>& corners) { corners.insert(corners.end(), far, far + 2); });
  WallLine next;
  next.id = takeId(bare.job);
  next.startCorner = bare.wall.endCorner;
  next.endCorner = far[0].id;
  bare.job.walls.add(next);
  WallLine before;
  before.id = takeId(bare.job);
  before.startCorner = far[1].id;
  before.endCorner = bare.wall.startCorner;
  bare.job.walls.add(before);
}

BareWall shortWall(double length, std::initializer_list<double> stations) {
  BareWall bare = withBolts(stations, length);
  joinBothEnds(bare, length);
  return bare;
}

TEST(BoltSillRules, AWallAtEveryLimitIsClean) {
  for (const R rule : {R::BoltCount, R::BoltEndFar, R::BoltEndNear, R::BoltSpacing, R::BoltThird})
    EXPECT_TRUE(silent(withBolts({12, 84}), rule));
}

TEST(BoltSillRules, CountsTwoBoltsInEachPiece) {
  const BareWall one = withBolts({12});
  EXPECT_TRUE(silent(withBolts({12, 84}), R::BoltCount));
  EXPECT_TRUE(silent(withBolts({12, 48, 84}), R::BoltCount));
  EXPECT_TRUE(finds(one, R::BoltCount, {.pieces = {one.sill}, .measured = 1, .limit = 2,
                                        .region = {{0, 96}, across36, thick3}}));
  EXPECT_EQ(findingsOf(one, R::BoltCount)[0].unit, Unit::Count);
  // Spliced at 50: the piece from 50 to 96 has only the bolt at 84.
  BareWall spliced = withBolts({12, 40, 84});
  spliced.wall.sills[0].splices = {50};
  EXPECT_TRUE(finds(spliced, R::BoltCount, {.pieces = {spliced.sill}, .measured = 1, .limit = 2,
                                            .region = {{50, 96}, across36, thick3}}));
}

TEST(BoltSillRules, OneBoltWillDoInAWallUpTo24ThatJoinsTwoOthers) {
  for (const double length : {24 - sixteenth, 24.0})
    EXPECT_TRUE(silent(shortWall(length, {12}), R::BoltCount));
  const BareWall longer = shortWall(24 + sixteenth, {12});
  EXPECT_TRUE(finds(longer, R::BoltCount, {.pieces = {longer.sill}, .measured = 1, .limit = 2,
                                           .region = {{0, 24.0625}, across36, thick3}}));
  const BareWall none = shortWall(24, {});
  EXPECT_TRUE(finds(none, R::BoltCount, {.pieces = {none.sill}, .measured = 0, .limit = 1,
                                         .region = {{0, 24}, across36, thick3}}));
  EXPECT_FALSE(silent(withBolts({12}, 24), R::BoltCount)); // joins none
}

TEST(BoltSillRules, TheOneBoltStandsInTheMiddleThird) {
  // 24 in: the middle is 12, a third is 8, so from 8 to 16: at most 4 off the middle.
  for (const double at : {8.0, 8 + sixteenth, 16 - sixteenth, 16.0})
    EXPECT_TRUE(silent(shortWall(24, {at}), R::BoltCount));
  const BareWall right = shortWall(24, {16.0625});
  const Id bolt = right.wall.bolts[0].id;
  EXPECT_TRUE(finds(right, R::BoltCount, {.pieces = {bolt, right.sill}, .measured = 4.0625, .limit = 4,
                                          .region = {{16, 16.0625}, across36, thick3},
                                          .correction = shifted(bolt, -sixteenth), .variant = 1}));
  const BareWall left = shortWall(24, {7.9375});
  EXPECT_TRUE(finds(left, R::BoltCount, {.pieces = {left.wall.bolts[0].id, left.sill}, .measured = 4.0625, .limit = 4,
                                         .region = {{7.9375, 8}, across36, thick3},
                                         .correction = shifted(left.wall.bolts[0].id, sixteenth), .variant = 1}));
}

TEST(BoltSillRules, NoBoltIsNeededInAWallUpTo12ThatJoinsTwoOthers) {
  for (const double length : {12 - sixteenth, 12.0})
    EXPECT_TRUE(silent(shortWall(length, {}), R::BoltCount));
  const BareWall longer = shortWall(12 + sixteenth, {});
  EXPECT_TRUE(finds(longer, R::BoltCount, {.pieces = {longer.sill}, .measured = 0, .limit = 1,
                                           .region = {{0, 12.0625}, across36, thick3}}));
}

TEST(BoltSillRules, EndBoltsAreAtMost12FromTheEnds) {
  for (const double away : {12 - sixteenth, 12.0})
    EXPECT_TRUE(silent(withBolts({away, 48, 96 - away}), R::BoltEndFar));
  const BareWall left = withBolts({12.0625, 48, 84});
  const Id first = left.wall.bolts[0].id;
  EXPECT_TRUE(finds(left, R::BoltEndFar, {.pieces = {first, left.sill}, .measured = 12.0625, .limit = 12,
                                          .region = {{0, 12.0625}, across36, thick3},
                                          .correction = shifted(first, -sixteenth)}));
  const BareWall right = withBolts({12, 48, 83.9375}); // 96 - 83.9375 = 12.0625
  const Id last = right.wall.bolts[2].id;
  EXPECT_TRUE(finds(right, R::BoltEndFar, {.pieces = {last, right.sill}, .measured = 12.0625, .limit = 12,
                                           .region = {{83.9375, 96}, across36, thick3},
                                           .correction = shifted(last, sixteenth), .variant = 1}));
}

TEST(BoltSillRules, BoltsAreAtLeastSevenDiametersFromTheEnds) {
  // 7 x 1/2 = 3 1/2, 7 x 5/8 = 4 3/8, 7 x 3/4 = 5 1/4.
  const double table[][2]{{0.5, 3.5}, {0.625, 4.375}, {0.75, 5.25}};
  for (const auto& row : table) {
    const double limit = row[1];
    const auto wall = [&](double left, double right) {
      BareWall bare = withBolts({left, 48, 96 - right});
      editBoltType(bare, [&](BoltType& type) { type.diameter = row[0]; });
      return bare;
    };
    EXPECT_TRUE(silent(wall(limit + sixteenth, limit + sixteenth), R::BoltEndNear));
    EXPECT_TRUE(silent(wall(limit, limit), R::BoltEndNear));
    const double away = limit - sixteenth;
    const BareWall left = wall(away, 12);
    const Id first = left.wall.bolts[0].id;
    EXPECT_TRUE(finds(left, R::BoltEndNear, {.pieces = {first, left.sill}, .measured = away, .limit = limit,
                                             .region = {{0, away}, across36, thick3},
                                             .correction = shifted(first, sixteenth)}));
    const BareWall right = wall(12, away);
    const Id last = right.wall.bolts[2].id;
    EXPECT_TRUE(finds(right, R::BoltEndNear, {.pieces = {last, right.sill}, .measured = away, .limit = limit,
                                              .region = {{96 - away, 96}, across36, thick3},
                                              .correction = shifted(last, -sixteenth), .variant = 1}));
  }
}

TEST(BoltSillRules, NeighboursAreAtMost72Apart) {
  for (const double second : {78 - sixteenth, 78.0})
    EXPECT_TRUE(silent(withBolts({6, second, 100}, 108), R::BoltSpacing));
  const BareWall wide = withBolts({6, 78.0625, 100}, 108); // 78.0625 - 6 = 72.0625
  const Id left = wide.wall.bolts[0].id;
  const Id right = wide.wall.bolts[1].id;
  EXPECT_TRUE(finds(wide, R::BoltSpacing, {.pieces = {left, right}, .measured = 72.0625, .limit = 72,
                                           .region = {{6, 78.0625}, across36, thick3},
                                           .correction = shifted(left, sixteenth)}));
  // The left bolt cannot come nearer, it is 12 from its end already: the right one does.
  const BareWall held = withBolts({12, 84.0625});
  const Id last = held.wall.bolts[1].id;
  EXPECT_TRUE(finds(held, R::BoltSpacing, {.pieces = {held.wall.bolts[0].id, last}, .measured = 72.0625, .limit = 72,
                                           .region = {{12, 84.0625}, across36, thick3},
                                           .correction = shifted(last, -sixteenth)}));
  // 6 in from both ends, 84 apart: one bolt more is needed, no move of one alone will do.
  const BareWall apart = withBolts({6, 90});
  EXPECT_TRUE(finds(apart, R::BoltSpacing, {.pieces = {apart.wall.bolts[0].id, apart.wall.bolts[1].id}, .measured = 84,
                                            .limit = 72, .region = {{6, 90}, across36, thick3}}));
}

TEST(BoltSillRules, BoltsOfTwoPiecesAreNoNeighbours) {
  BareWall bare = withBolts({6, 12, 100, 110}, 120); // 88 between 12 and 100, with the splice in it
  bare.wall.sills[0].splices = {60};
  EXPECT_TRUE(silent(bare, R::BoltSpacing));
}

TEST(BoltSillRules, NeighboursAreAtMost48ApartOverTwoStoreys) {
  const auto wall = [](int storeys, double second) {
    BareWall bare = withBolts({6, second, 90});
    bare.job.limits.edit([&](JobLimits& limits) { limits.storeys = storeys; });
    return bare;
  };
  EXPECT_TRUE(silent(wall(2, 54.0625), R::BoltSpacing));
  EXPECT_TRUE(silent(wall(3, 54 - sixteenth), R::BoltSpacing));
  EXPECT_TRUE(silent(wall(3, 54), R::BoltSpacing));
  const BareWall tall = wall(3, 54.0625); // 54.0625 - 6 = 48.0625
  const Id left = tall.wall.bolts[0].id;
  EXPECT_TRUE(finds(tall, R::BoltSpacing, {.pieces = {left, tall.wall.bolts[1].id}, .measured = 48.0625, .limit = 48,
                                           .region = {{6, 54.0625}, across36, thick3},
                                           .correction = shifted(left, sixteenth)}));
}

TEST(BoltSillRules, ThePlansMayAskForLess) {
  const auto wall = [](double plans, double second) {
    BareWall bare = withBolts({6, second, second + 30}, 108);
    bare.job.limits.edit([&](JobLimits& limits) { limits.planBoltSpacing = plans; });
    return bare;
  };
  EXPECT_TRUE(silent(wall(36, 42), R::BoltSpacing));
  EXPECT_FALSE(silent(wall(96, 78.0625), R::BoltSpacing)); // never more than the 72 of the code
  const BareWall wide = wall(36, 42.0625);
  const Id left = wide.wall.bolts[0].id;
  EXPECT_TRUE(finds(wide, R::BoltSpacing, {.pieces = {left, wide.wall.bolts[1].id}, .measured = 36.0625, .limit = 36,
                                           .region = {{6, 42.0625}, across36, thick3},
                                           .correction = shifted(left, sixteenth), .variant = 1}));
}

TEST(BoltSillRules, TheMarkOfAPanelMayAskForLessUnderIt) {
  const auto wall = [](double from, double to) {
    BareWall bare = withBolts({6, 42.0625, 90}); // 36.0625 and 47.9375 apart
    addPanel(bare, from, to);
    bare.wall.panels[0].rightMark = "P";
    WallEndMark mark;
    mark.id = takeId(bare.job);
    mark.mark = "P";
    mark.boltSpacing = 36;
    bare.job.marks.edit([&](std::vector<WallEndMark>& marks) { marks.push_back(mark); });
    return bare;
  };
  EXPECT_TRUE(silent(wall(90, 96), R::BoltSpacing)); // both stretches end where the panel begins
  const BareWall under = wall(0, 42.0625);           // the second stretch begins where the panel ends
  const Id left = under.wall.bolts[0].id;
  EXPECT_TRUE(finds(under, R::BoltSpacing, {.pieces = {left, under.wall.bolts[1].id}, .measured = 36.0625, .limit = 36,
                                            .region = {{6, 42.0625}, across36, thick3},
                                            .correction = shifted(left, sixteenth), .variant = 1}));
}

TEST(BoltSillRules, TheJobsOwnLimits) {
  const auto silentWith = [](const char* limit, double value, R rule) {
    BareWall bare = withBolts({12, 84}); // 72 apart, 19.2 d from the ends
    overrideLimit(bare, limit, value);
    return silent(bare, rule);
  };
  EXPECT_FALSE(silentWith("bolt.count", 3, R::BoltCount));
  EXPECT_TRUE(silentWith("bolt.end-far", 12, R::BoltEndFar));
  EXPECT_FALSE(silentWith("bolt.end-far", 12 - sixteenth, R::BoltEndFar));
  EXPECT_TRUE(silentWith("bolt.end-near", 19.2, R::BoltEndNear));
  EXPECT_FALSE(silentWith("bolt.end-near", 19.3, R::BoltEndNear));
  EXPECT_TRUE(silentWith("bolt.spacing", 72, R::BoltSpacing));
  EXPECT_FALSE(silentWith("bolt.spacing", 72 - sixteenth, R::BoltSpacing));
}

TEST(BoltSillRules, BoltsStandInTheMiddleThird) {
  // 5 1/2 / 3 = 11/6: from 0.5 + 11/6 = 2.3333 to 6 - 11/6 = 4.1667.
  const double third = 5.5 / 3;
  for (const double depth : {0.5 + third, 0.5 + third + sixteenth, 6 - third - sixteenth, 6 - third}) {
    BareWall bare = bareWall();
    addBolt(bare, 12, depth);
    EXPECT_TRUE(silent(bare, R::BoltThird));
  }
  const auto outside = [&](double depth, double edge, Interval missing, double by) {
    BareWall bare = bareWall();
    const Id bolt = addBolt(bare, 12, depth);
    return finds(bare, R::BoltThird, {.pieces = {bolt}, .measured = edge, .limit = third,
                                      .region = {{11.6875, 12.3125}, missing, thick3}, .correction = across(bolt, by)});
  };
  // To the next sixteenth inside: 2.375 and 4.125.
  EXPECT_TRUE(outside(2.3125, 1.8125, {2.3125, 0.5 + third}, sixteenth));
  EXPECT_TRUE(outside(4.1875, 1.8125, {6 - third, 4.1875}, -sixteenth));
  EXPECT_TRUE(outside(0.5 + third - sixteenth, third - sixteenth, {0.5 + third - sixteenth, 0.5 + third},
                      2.375 - (0.5 + third - sixteenth)));
}

} // namespace
} // namespace sillwright
