// Bars beside bars and openings, grade shots and taped forms, each rule at its limit and to either side of it. Worked by
// hand.
#include "bare_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;
using R = RuleId;
constexpr double sixteenth = 1.0 / 16;

Id addShot(BareWall& bare, double station, double reading, std::optional<double> width = {}) {
  GradeShot shot;
  shot.id = takeId(bare.job);
  shot.station = station;
  shot.reading = reading;
  shot.width = width;
  bare.wall.shots.push_back(shot);
  return shot.id;
}

void setBarRun(BareWall& bare, Id id, BarRun run) { findIn(bare.wall.bars, id)->run = run; }

// Two uprights, No. 4: 1/2 thick, so axes 1 1/2 apart leave 1 in.
TEST(BarRules, OneInchBetweenBarsSideBySide) {
  const auto pair = [](double second, double from = -30) {
    BareWall bare = bareWall();
    addBar(bare, {40, 4, -30}, {40, 4, -3});
    addBar(bare, {second, 4, from}, {second, 4, from + 27});
    return bare;
  };
  EXPECT_TRUE(silent(pair(41.5), R::BarClear));
  EXPECT_TRUE(silent(pair(41.5 + sixteenth), R::BarClear));
  const BareWall close = pair(41.5 - sixteenth);
  const Id first = close.wall.bars[0].id, second = close.wall.bars[1].id;
  EXPECT_TRUE(finds(close, R::BarClear,
                    {.level = Level::Watch, .pieces = {second, first}, .measured = 0.9375, .limit = 1,
                     .region = {{40.25, 41.1875}, {3.75, 4.25}, {-30.25, -2.75}}, .correction = shifted(second, sixteenth)}));
  EXPECT_TRUE(silent(pair(40.75, -10), R::BarClear)); // a lap: one goes on where the other ends
}

// No. 8 is 1 in thick and No. 8 beside it: the bar's own diameter is 1 in; a No. 4 beside one leaves 1 in as well.
TEST(BarRules, AThickBarNeedsItsOwnThickness) {
  BareWall bare = bareWall();
  addBar(bare, {40, 4, -30}, {40, 4, -3}, 8);
  addBar(bare, {42, 4, -30}, {42, 4, -3}, 8);
  EXPECT_TRUE(silent(bare, R::BarClear));
  overrideLimit(bare, "bar.clear", 0.5); // the diameter is still asked for
  bare.wall.bars[1].planned.a.s = bare.wall.bars[1].planned.b.s = 42 - sixteenth;
  EXPECT_EQ(findingsOf(bare, R::BarClear).size(), 1u);
}

// A wall 96 long; a bar may stop 3 in, its cover, short of the end of the concrete.
TEST(BarRules, ATopBarWithinTwelveInches) {
  const auto topped = [](double z, double from, double to, int size = 4) {
    BareWall bare = bareWall();
    bare.job.limits.edit([](JobLimits& limits) { limits.topBar = true; });
    setBarRun(bare, addBar(bare, {from, 4, z}, {to, 4, z}, size), BarRun::Along);
    return bare;
  };
  EXPECT_TRUE(silent(topped(-12, 3, 93), R::BarTop));
  EXPECT_TRUE(silent(topped(-3, 3, 93), R::BarTop));
  const BareWall deep = topped(-12 - sixteenth, 3, 93);
  const std::vector<Id> wall{deep.wall.id};
  EXPECT_TRUE(finds(deep, R::BarTop, {.pieces = wall, .measured = 96, .limit = 0, .region = {{0, 96}, {0, 8}, {-12, 0}}}));
  EXPECT_TRUE(finds(topped(-6, 3 + sixteenth, 93), R::BarTop,
                    {.pieces = wall, .measured = sixteenth, .limit = 0, .region = {{0, sixteenth}, {0, 8}, {-12, 0}}}));
  EXPECT_EQ(findingsOf(topped(-6, 3, 93, 3), R::BarTop).size(), 1u); // No. 3 is too thin
  BareWall notAsked = deep;
  notAsked.job.limits.edit([](JobLimits& limits) { limits.topBar = false; });
  EXPECT_TRUE(silent(notAsked, R::BarTop));
}

TEST(BarRules, AnUprightBarWithinTwelveInchesOfAnOpening) {
  const auto door = [](double left, double right, OpeningKind kind = OpeningKind::Door) {
    BareWall bare = bareWall();
    bare.job.limits.edit([](JobLimits& limits) { limits.openingBars = true; });
    addOpening(bare, kind, 30, 66);
    addBar(bare, {left, 4, -30}, {left, 4, -3});
    addBar(bare, {right, 4, -30}, {right, 4, -3});
    return bare;
  };
  EXPECT_TRUE(silent(door(18, 78), R::BarOpening));
  const BareWall far = door(18 - sixteenth, 78);
  const std::vector<Id> opening{far.wall.openings[0].id};
  EXPECT_TRUE(finds(far, R::BarOpening, {.level = Level::Watch, .pieces = opening, .measured = 12 + sixteenth, .limit = 12,
                                         .region = {{18, 30}, {0, 8}, {-32, 0}}}));
  EXPECT_TRUE(silent(door(10, 90, OpeningKind::Window), R::BarOpening));
}

TEST(FormRules, GradeShotsAreOnThePourLine) {
  const auto shotAt = [](double reading) {
    BareWall bare = bareWall();
    addShot(bare, 50, reading);
    return bare;
  };
  EXPECT_TRUE(silent(shotAt(0.125), R::PourShot));
  EXPECT_TRUE(silent(shotAt(-0.125), R::PourShot));
  const BareWall high = shotAt(0.125 + sixteenth);
  const std::vector<Id> shot{high.wall.shots[0].id};
  EXPECT_TRUE(finds(high, R::PourShot, {.pieces = shot, .measured = 0.1875, .limit = 0.125,
                                        .region = {{49.5, 50.5}, {0, 8}, {0, 0.1875}}}));
  EXPECT_TRUE(finds(shotAt(-0.1875), R::PourShot, {.pieces = shot, .measured = 0.1875, .limit = 0.125,
                                                   .region = {{49.5, 50.5}, {0, 8}, {-0.1875, 0}}, .variant = 1}));
}

// 1/2 in within 20 ft, which is 240 in.
TEST(FormRules, LevelWithinTwentyFeet) {
  const auto shots = [](double second, double at) {
    BareWall bare = bareWall(288);
    addShot(bare, 10, 0.25);
    addShot(bare, at, second);
    return bare;
  };
  EXPECT_TRUE(silent(shots(-0.25, 200), R::PourLevel));
  const BareWall off = shots(-0.25 - sixteenth, 250);
  EXPECT_TRUE(finds(off, R::PourLevel,
                    {.level = Level::Watch, .pieces = {off.wall.shots[0].id, off.wall.shots[1].id}, .measured = 0.5625,
                     .limit = 0.5, .region = {{10, 250}, {0, 8}, {-0.3125, 0.25}}}));
  EXPECT_TRUE(silent(shots(-0.3125, 250 + sixteenth), R::PourLevel));
}

// Concrete 8 in thick: 8 3/8 and 7 3/4 are still right.
TEST(FormRules, FormsStandAsFarApartAsTheConcreteIsThick) {
  const auto taped = [](double width) {
    BareWall bare = bareWall();
    addShot(bare, 50, 0, width);
    return bare;
  };
  for (const double right : {8.0, 8.375, 7.75})
    EXPECT_TRUE(silent(taped(right), R::FormThickness)) << right;
  const BareWall wide = taped(8.375 + sixteenth);
  const std::vector<Id> shot{wide.wall.shots[0].id};
  EXPECT_TRUE(finds(wide, R::FormThickness, {.level = Level::Watch, .pieces = shot, .measured = 0.4375, .limit = 0.375,
                                             .region = {{49.5, 50.5}, {8, 8.4375}, {-24, 0}}}));
  EXPECT_TRUE(finds(taped(7.75 - sixteenth), R::FormThickness,
                    {.level = Level::Watch, .pieces = shot, .measured = 0.3125, .limit = 0.25,
                     .region = {{49.5, 50.5}, {7.6875, 8}, {-24, 0}}, .variant = 1}));
}

// From (0, 0) to (192, 144): 12, 16 and 20 ft. Half an inch is the limit there, a quarter the aim.
TEST(FormRules, DiagonalsOfATwelveSixteenTwentyTriangle) {
  const auto taped = [](double measured) {
    BareWall bare = bareWall(192);
    Corner far;
    far.id = takeId(bare.job);
    far.at = {192, 144};
    bare.job.corners.edit([&](std::vector<Corner>& corners) { corners.push_back(far); });
    const Id diagonal = takeId(bare.job);
    bare.job.diagonals = Shared<std::vector<Diagonal>>({Diagonal{diagonal, bare.wall.startCorner, far.id, measured, {}}});
    return bare;
  };
  EXPECT_TRUE(silent(taped(240.25), R::FormSquare));
  const BareWall watched = taped(240.25 + sixteenth);
  const std::vector<Id> pieces{watched.wall.id};
  EXPECT_TRUE(finds(watched, R::FormSquare, {.level = Level::Watch, .pieces = pieces, .measured = 0.3125, .limit = 0.25,
                                             .region = {{0, 12}, {0, 8}, {-1, 0}}, .variant = 2}));
  EXPECT_TRUE(finds(taped(239.5 - sixteenth), R::FormSquare,
                    {.level = Level::Watch, .pieces = pieces, .measured = 0.5625, .limit = 0.5,
                     .region = {{0, 12}, {0, 8}, {-1, 0}}, .variant = 1}));
  EXPECT_EQ(findingsOf(taped(239.5), R::FormSquare)[0].limit, 0.25);
}

} // namespace
} // namespace sillwright
