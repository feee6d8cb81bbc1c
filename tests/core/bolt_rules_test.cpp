// Bolts in height and against what stands or lies in their way, each rule at its limit and a sixteenth to either side.
// A bolt of 5/8 x 12 at depth 3.25: d 2.9375 to 3.5625. Its washer: d 1.75 to 4.75, z 2.5 to 2.729 on the 3x6 sill.
#include "bare_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;
using R = RuleId;
constexpr double sixteenth = 1.0 / 16;
constexpr Interval shank{2.9375, 3.5625};
constexpr Interval washerAcross{1.75, 4.75};
constexpr Interval onSill{2.5, 2.729};

BareWall oneBolt(double projection) {
  BareWall bare = bareWall();
  addBolt(bare, 48, 3.25, projection);
  return bare;
}

// Embedment is 12 less the projection.
TEST(BoltRules, BoltsAreAtLeast7Deep) {
  EXPECT_TRUE(silent(oneBolt(5 - sixteenth), R::BoltEmbed));
  EXPECT_TRUE(silent(oneBolt(5), R::BoltEmbed));
  const BareWall high = oneBolt(5 + sixteenth); // 12 - 5.0625 = 6.9375
  const Id bolt = high.wall.bolts[0].id;
  EXPECT_TRUE(finds(high, R::BoltEmbed, {.pieces = {bolt}, .measured = 6.9375, .limit = 7,
                                         .region = {{47.6875, 48.3125}, shank, {-7, -6.9375}},
                                         .correction = outOfConcrete(bolt, -sixteenth)}));
  BareWall stepped = high; // the same 8 lower
  stepped.wall.steps.push_back({takeId(stepped.job), "", 24, 96, -8, {}});
  EXPECT_TRUE(finds(stepped, R::BoltEmbed, {.pieces = {bolt}, .measured = 6.9375, .limit = 7,
                                            .region = {{47.6875, 48.3125}, shank, {-15, -14.9375}},
                                            .correction = outOfConcrete(bolt, -sixteenth)}));
}

TEST(BoltRules, EmbedmentOfTheTypeAndOfTheJob) {
  const auto wall = [](double projection, double ofType) {
    BareWall bare = oneBolt(projection);
    editBoltType(bare, [&](BoltType& type) { type.minimumEmbedment = ofType; });
    return bare;
  };
  EXPECT_TRUE(silent(wall(4, 8), R::BoltEmbed));
  EXPECT_FALSE(silent(wall(4.0625, 8), R::BoltEmbed)); // 7.9375 < 8 of the type
  EXPECT_FALSE(silent(wall(5.0625, 6), R::BoltEmbed)); // a type that asks for less does not lower the 7
  BareWall own = wall(6, 7);
  overrideLimit(own, "bolt.embed", 6);
  EXPECT_TRUE(silent(own, R::BoltEmbed));
  own.wall.bolts[0].projection = 6.0625;
  const Id bolt = own.wall.bolts[0].id;
  EXPECT_TRUE(finds(own, R::BoltEmbed, {.pieces = {bolt}, .measured = 5.9375, .limit = 6,
                                        .region = {{47.6875, 48.3125}, shank, {-6, -5.9375}},
                                        .correction = outOfConcrete(bolt, -sixteenth)}));
}

// Sill 2.5 + plate 0.229 + cut washer 0.160 + nut 0.559 + two threads 2/11 = 3.6298, to the next sixteenth 3 11/16;
// with 1/4 to spare 3 15/16.
TEST(BoltRules, ThreadForTheStackAndAQuarterToSpare) {
  EXPECT_TRUE(silent(oneBolt(4), R::BoltThread));
  EXPECT_TRUE(silent(oneBolt(3.9375), R::BoltThread));
  const BareWall tight = oneBolt(3.875); // 3.875 - 3.6875 = 0.1875
  const Id bolt = tight.wall.bolts[0].id;
  const Interval station{47.6875, 48.3125};
  EXPECT_TRUE(finds(tight, R::BoltThread, {.level = Level::Watch, .pieces = {bolt}, .measured = 0.1875, .limit = 0.25,
                                           .region = {station, shank, {3.875, 3.9375}},
                                           .correction = outOfConcrete(bolt, sixteenth), .variant = 1}));
  EXPECT_TRUE(silent(oneBolt(3.75), R::BoltThread, Level::Fix));
  const BareWall atLimit = oneBolt(3.6875);
  EXPECT_TRUE(finds(atLimit, R::BoltThread, {.level = Level::Watch, .pieces = {bolt}, .measured = 0, .limit = 0.25,
                                             .region = {station, shank, {3.6875, 3.9375}},
                                             .correction = outOfConcrete(bolt, 0.25), .variant = 1}));
  const BareWall low = oneBolt(3.625);
  EXPECT_TRUE(finds(low, R::BoltThread, {.pieces = {bolt}, .measured = 3.625, .limit = 3.6875,
                                         .region = {station, shank, {3.625, 3.6875}},
                                         .correction = outOfConcrete(bolt, 0.3125)}));
}

TEST(BoltRules, ThreadIsNotBoughtWithEmbedment) {
  // 3 5/8 up. 10 3/4 long: 7 1/8 deep, so up 1/16 but not 5/16. 10 5/8 long: 7 deep, so not at all.
  const auto correction = [](double length) {
    BareWall bare = oneBolt(3.625);
    editBoltType(bare, [&](BoltType& type) { type.length = length; });
    const Findings found = findingsOf(bare, R::BoltThread);
    return found.size() == 1 && found[0].correction ? found[0].correction->by : 0;
  };
  EXPECT_DOUBLE_EQ(correction(11), 0.3125); // 11 - 3.9375 = 7.0625
  EXPECT_DOUBLE_EQ(correction(10.75), sixteenth);
  EXPECT_DOUBLE_EQ(correction(10.625), 0);
}

TEST(BoltRules, ThreadForWhatIsOnTheBolt) {
  const auto needs = [](const BareWall& bare, double projection) {
    BareWall at = bare;
    at.wall.bolts[0].projection = projection;
    BareWall under = bare;
    under.wall.bolts[0].projection = projection - sixteenth;
    return silent(at, R::BoltThread, Level::Fix) && !silent(under, R::BoltThread, Level::Fix);
  };
  BareWall bare = oneBolt(4);
  bare.wall.bolts[0].cutWasher = false; // 2.5 + 0.229 + 0.559 + 0.1818 = 3.4698
  EXPECT_TRUE(needs(bare, 3.5));
  bare.wall.bolts[0].washer = {}; // 2.5 + 0.559 + 0.1818 = 3.2408
  EXPECT_TRUE(needs(bare, 3.25));
  bare.wall.bolts[0].cutWasher = true; // 3.2408 + 0.160 = 3.4008
  EXPECT_TRUE(needs(bare, 3.4375));
  bare.wall.sills[0].nominal = {2, 6}; // 3.4008 - 1 = 2.4008
  EXPECT_TRUE(needs(bare, 2.4375));
  overrideLimit(bare, "bolt.thread standout", 3); // 2.4008 + 1/11 = 2.4917
  EXPECT_TRUE(needs(bare, 2.5));
  bare.wall.sills.clear(); // nothing to hold down
  bare.wall.bolts[0].projection = 1;
  EXPECT_TRUE(silent(bare, R::BoltThread));
}

BareWall atDoor(double station, OpeningKind kind = OpeningKind::Door) {
  BareWall bare = bareWall();
  addOpening(bare, kind, 40, 76);
  addBolt(bare, station);
  return bare;
}

// The shank is 5/16 to either side of its axis.
TEST(BoltRules, NoBoltInADoor) {
  for (const double clear : {40 - 0.3125 - sixteenth, 40 - 0.3125, 76 + 0.3125, 76 + 0.3125 + sixteenth})
    EXPECT_TRUE(silent(atDoor(clear), R::BoltOpening));
  const BareWall left = atDoor(39.75); // to 40.0625
  const Id door = left.wall.openings[0].id;
  const Id bolt = left.wall.bolts[0].id;
  EXPECT_TRUE(finds(left, R::BoltOpening, {.pieces = {bolt, door}, .measured = sixteenth, .limit = 0,
                                           .region = {{40, 40.0625}, shank, {0, 4}},
                                           .correction = shifted(bolt, -sixteenth)}));
  EXPECT_TRUE(finds(atDoor(76.25, OpeningKind::GarageDoor), R::BoltOpening,
                    {.pieces = {bolt, door}, .measured = sixteenth, .limit = 0,
                     .region = {{75.9375, 76}, shank, {0, 4}}, .correction = shifted(bolt, sixteenth)}));
  // In the middle of the door the whole shank is inside. Just out of the door it would stand 5/16 from the end of its
  // piece of sill, which is no cure; it goes on to 84.
  EXPECT_TRUE(finds(atDoor(58), R::BoltOpening,
                    {.pieces = {bolt, door},
                     .measured = 0.625,
                     .limit = 0,
                     .region = {{57.6875, 58.3125}, shank, {0, 4}},
                     .correction = shifted(bolt, 26)}));
  EXPECT_TRUE(silent(atDoor(58, OpeningKind::Window), R::BoltOpening));
}

BareWall atStud(double station) {
  BareWall bare = bareWall();
  bare.wall.studs = StudLayout{}; // 16 o.c.: the first from 15.25 to 16.75
  addBolt(bare, station);
  return bare;
}

TEST(BoltRules, NoWasherUnderAStud) {
  for (const double clear : {18.25 + sixteenth, 18.25, 30.5 - 0.75}) // next stud from 31.25
    EXPECT_TRUE(silent(atStud(clear), R::BoltStud));
  const BareWall right = atStud(18.1875); // washer from 16.6875
  const Id bolt = right.wall.bolts[0].id;
  EXPECT_TRUE(finds(right, R::BoltStud, {.pieces = {bolt}, .measured = -sixteenth, .limit = 0,
                                         .region = {{16.6875, 16.75}, washerAcross, onSill},
                                         .correction = shifted(bolt, sixteenth)}));
  EXPECT_TRUE(finds(atStud(29.8125), R::BoltStud, {.pieces = {bolt}, .measured = -sixteenth, .limit = 0,
                                                   .region = {{31.25, 31.3125}, washerAcross, onSill},
                                                   .correction = shifted(bolt, -sixteenth)}));
}

// The nut of a 5/8 bolt is 15/16 across: 15/32 to either side of the axis.
TEST(BoltRules, NoNutUnderAStudWithoutAWasher) {
  const auto wall = [](double station) {
    BareWall bare = atStud(station);
    bare.wall.bolts[0].washer = {};
    return bare;
  };
  const double touch = 16.75 + 15.0 / 32; // 17.21875
  EXPECT_TRUE(silent(wall(touch + sixteenth), R::BoltStud));
  EXPECT_TRUE(silent(wall(touch), R::BoltStud));
  const BareWall under = wall(touch - sixteenth); // to the next mark from 17.21875: 17.25
  const Id bolt = under.wall.bolts[0].id;
  EXPECT_TRUE(finds(under, R::BoltStud, {.pieces = {bolt}, .measured = -sixteenth, .limit = 0,
                                         .region = {{16.6875, 16.75}, {3.25 - 15.0 / 32, 3.25 + 15.0 / 32}, {0, 4}},
                                         .correction = shifted(bolt, sixteenth + 1.0 / 32)}));
}

BareWall atColumn(double station) {
  BareWall bare = bareWall();
  addColumn(bare, 30); // 28.25 to 31.75
  addBolt(bare, station);
  return bare;
}

TEST(BoltRules, NoNutUnderAColumn) {
  const double touch = 31.75 + 15.0 / 32; // 32.21875
  EXPECT_TRUE(silent(atColumn(touch + sixteenth), R::BoltStud));
  EXPECT_TRUE(silent(atColumn(touch), R::BoltStud));
  BareWall under = atColumn(touch - sixteenth);
  const Id bolt = under.wall.bolts[0].id;
  Expected expected{.pieces = {bolt, under.wall.columns[0].id}, .measured = -sixteenth, .limit = 0,
                    .region = {{31.6875, 31.75}, {3.25 - 15.0 / 32, 3.25 + 15.0 / 32}, {0, 4}}, .variant = 1};
  // The washer 1/8 clear as well: to 33.375.
  expected.correction = shifted(bolt, 31.75 + 0.125 + 1.5 - (touch - sixteenth));
  EXPECT_TRUE(finds(under, R::BoltStud, expected));
  under.wall.bolts[0].washer = {};
  expected.correction = shifted(bolt, sixteenth + 1.0 / 32); // to 32.25
  EXPECT_TRUE(finds(under, R::BoltStud, expected));
}

// Pour line and sill 8 lower from 48 on: what stands 1/16 over the edge of the step is 6 1/2 over the bolt.
TEST(BoltRules, AStudOnTheHighSideOfAStep) {
  BareWall bare = bareWall();
  bare.wall.studs = StudLayout{};
  bare.wall.studs->first = 47.3125; // 46.5625 to 48.0625
  addBolt(bare, 49.5);              // washer from 48
  EXPECT_FALSE(silent(bare, R::BoltStud));
  bare.wall.steps.push_back({takeId(bare.job), "", 48, 96, -8, {}});
  bare.wall.sills[0].splices = {48};
  EXPECT_TRUE(silent(bare, R::BoltStud));
}

} // namespace
} // namespace sillwright
