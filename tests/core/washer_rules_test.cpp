// Plate washers on their sill, each rule at its limit and a sixteenth to either side.
// Sill 3x6: d 0.5 to 6, z 0 to 2.5. A 3 x 3 washer reaches 1.5 to every side of its bolt, z 2.5 to 2.729.
#include "bare_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;
using R = RuleId;
constexpr double sixteenth = 1.0 / 16;
constexpr Interval middle{1.75, 4.75}; // across, of a washer in the middle of the sill
constexpr Interval thick{2.5, 2.729};

BareWall underPanel(double depth, Sheathing sheathing, double shear = 401) {
  BareWall bare = bareWall();
  addPanel(bare, 0, 48, shear);
  bare.wall.panels[0].sheathing = sheathing;
  addBolt(bare, 24, depth);
  return bare;
}

// SDPWS 2021 4.3.6.4.3: at most 1/2 from washer to the sheathed edge.
TEST(WasherRules, ReachesNearTheSheathedOutsideEdge) {
  // depth - 1.5 - 0.5 <= 0.5: depth 2.5.
  for (const double depth : {2.5 - sixteenth, 2.5})
    EXPECT_TRUE(silent(underPanel(depth, Sheathing::Outside), R::WasherSheathing));
  const BareWall far = underPanel(2.5625, Sheathing::Outside);
  const Id bolt = far.wall.bolts[0].id;
  EXPECT_TRUE(finds(far, R::WasherSheathing, {.pieces = {bolt}, .measured = 0.5625, .limit = 0.5,
                                              .region = {{22.5, 25.5}, {0.5, 1.0625}, thick},
                                              .correction = across(bolt, -sixteenth)}));
  EXPECT_TRUE(silent(underPanel(2.5625, Sheathing::Inside), R::WasherSheathing, Level::Ask));
}

TEST(WasherRules, ReachesNearTheSheathedInsideEdge) {
  // 6 - (depth + 1.5) <= 0.5: depth 4.
  for (const double depth : {4.0, 4 + sixteenth})
    EXPECT_TRUE(silent(underPanel(depth, Sheathing::Inside), R::WasherSheathing));
  const BareWall far = underPanel(3.9375, Sheathing::Inside);
  const Id bolt = far.wall.bolts[0].id;
  EXPECT_TRUE(finds(far, R::WasherSheathing, {.pieces = {bolt}, .measured = 0.5625, .limit = 0.5,
                                              .region = {{22.5, 25.5}, {5.4375, 6}, thick},
                                              .correction = across(bolt, sixteenth), .variant = 1}));
}

TEST(WasherRules, OnlyUnderAStrongPanelAndOnItsFace) {
  EXPECT_TRUE(silent(underPanel(3.25, Sheathing::Outside, 399), R::WasherSheathing));
  EXPECT_TRUE(silent(underPanel(3.25, Sheathing::Outside, 400), R::WasherSheathing));
  EXPECT_EQ(findingsOf(underPanel(3.25, Sheathing::Outside, 400.0625), R::WasherSheathing).size(), 1u);
  EXPECT_EQ(findingsOf(underPanel(3.25, Sheathing::Both), R::WasherSheathing).size(), 2u);
  // A move toward one edge is a move away from the other: none is offered.
  for (const Finding& finding : findingsOf(underPanel(3.25, Sheathing::Both), R::WasherSheathing))
    EXPECT_FALSE(finding.correction);
  BareWall bare = underPanel(2.5625, Sheathing::Outside);
  bare.wall.panels[0].unitShear.reset(); // not said: silent
  EXPECT_TRUE(silent(bare, R::WasherSheathing));
  bare = underPanel(2.5625, Sheathing::Outside);
  bare.wall.bolts[0].station = 48; // at the very end of the panel
  EXPECT_FALSE(silent(bare, R::WasherSheathing));
  bare.wall.bolts[0].station = 48 + sixteenth;
  EXPECT_TRUE(silent(bare, R::WasherSheathing));
}

BareWall washerAt(double station, double depth) {
  BareWall bare = bareWall();
  addBolt(bare, station, depth);
  return bare;
}

TEST(WasherRules, LiesOnTheSillAcross) {
  for (const double depth : {2.0, 2 + sixteenth, 4.5 - sixteenth, 4.5})
    EXPECT_TRUE(silent(washerAt(24, depth), R::WasherSill));
  const BareWall out = washerAt(24, 1.9375); // from d 0.4375
  const Id bolt = out.wall.bolts[0].id;
  EXPECT_TRUE(finds(out, R::WasherSill, {.pieces = {bolt, out.sill}, .measured = sixteenth, .limit = 0,
                                         .region = {{22.5, 25.5}, {0.4375, 0.5}, thick},
                                         .correction = across(bolt, sixteenth)}));
  EXPECT_TRUE(finds(washerAt(24, 4.5625), R::WasherSill, {.pieces = {bolt, out.sill}, .measured = sixteenth, .limit = 0,
                                                          .region = {{22.5, 25.5}, {6, 6.0625}, thick},
                                                          .correction = across(bolt, -sixteenth), .variant = 1}));
}

TEST(WasherRules, LiesOnTheSillAlong) {
  for (const double station : {1.5, 1.5 + sixteenth, 94.5 - sixteenth, 94.5})
    EXPECT_TRUE(silent(washerAt(station, 3.25), R::WasherSill));
  const BareWall left = washerAt(1.4375, 3.25);
  const Id bolt = left.wall.bolts[0].id;
  EXPECT_TRUE(finds(left, R::WasherSill, {.pieces = {bolt, left.sill}, .measured = sixteenth, .limit = 0,
                                          .region = {{-sixteenth, 0}, middle, thick},
                                          .correction = shifted(bolt, sixteenth), .variant = 2}));
  EXPECT_TRUE(finds(washerAt(94.5625, 3.25), R::WasherSill,
                    {.pieces = {bolt, left.sill}, .measured = sixteenth, .limit = 0,
                     .region = {{96, 96.0625}, middle, thick}, .correction = shifted(bolt, -sixteenth), .variant = 3}));
  BareWall spliced = washerAt(48, 3.25); // on two pieces of one sill it is still on the sill: a splice has its own rule
  spliced.wall.sills[0].splices = {48};
  EXPECT_TRUE(silent(spliced, R::WasherSill));
}

BareWall atColumn(double station) {
  BareWall bare = bareWall();
  addColumn(bare, 30); // 28.25 to 31.75
  addBolt(bare, station);
  return bare;
}

TEST(WasherRules, AnEighthFromColumnsIsAimedFor) {
  // 31.75 + 0.125 + 1.5 = 33.375.
  for (const double station : {33.375 + sixteenth, 33.375, 26.625})
    EXPECT_TRUE(silent(atColumn(station), R::WasherColumn));
  const BareWall close = atColumn(33.3125);
  const Id bolt = close.wall.bolts[0].id;
  const Id column = close.wall.columns[0].id;
  EXPECT_TRUE(finds(close, R::WasherColumn, {.level = Level::Watch, .pieces = {bolt, column}, .measured = sixteenth,
                                             .limit = 0.125, .region = {{31.75, 31.8125}, middle, thick},
                                             .correction = shifted(bolt, sixteenth)}));
}

TEST(WasherRules, NoWasherUnderAColumn) {
  // It meets the column at 31.75 + 1.5 = 33.25.
  EXPECT_TRUE(silent(atColumn(33.25 + sixteenth), R::WasherColumn, Level::Fix));
  EXPECT_TRUE(silent(atColumn(33.25), R::WasherColumn, Level::Fix));
  const BareWall under = atColumn(33.1875);
  const Id bolt = under.wall.bolts[0].id;
  const Id column = under.wall.columns[0].id;
  EXPECT_TRUE(finds(under, R::WasherColumn, {.pieces = {bolt, column}, .measured = -sixteenth, .limit = 0,
                                             .region = {{31.6875, 31.75}, middle, thick},
                                             .correction = shifted(bolt, 0.125 + sixteenth)}));
  EXPECT_TRUE(finds(atColumn(26.8125), R::WasherColumn, {.pieces = {bolt, column}, .measured = -sixteenth, .limit = 0,
                                                         .region = {{28.25, 28.3125}, middle, thick},
                                                         .correction = shifted(bolt, -0.125 - sixteenth)}));
}

TEST(WasherRules, AColumnOnTheHighSideOfAStep) {
  BareWall bare = atColumn(33.1875);
  EXPECT_FALSE(silent(bare, R::WasherColumn));
  bare.wall.steps.push_back({takeId(bare.job), "", 31.75, 96, -8, {}}); // from the very side of the column on
  bare.wall.sills[0].splices = {31.75};
  EXPECT_TRUE(silent(bare, R::WasherColumn));
}

// Between columns there may be no room for the target: then the least move that clears.
TEST(WasherRules, ClearsAColumnWithoutTheTargetWhereItMust) {
  BareWall bare = atColumn(33.1875);
  addColumn(bare, 33.1875 + sixteenth + 1.5 + 1.75); // 3 in and nothing more between the two
  addColumn(bare, 26.5);                           // nor any to the left of the first
  const Findings found = findingsOf(bare, R::WasherColumn);
  ASSERT_FALSE(found.empty());
  EXPECT_EQ(found[0].level, Level::Fix);
  EXPECT_TRUE(near(found[0].correction, shifted(bare.wall.bolts[0].id, sixteenth)));
}

// The nut under the column is bolt.stud's. It reaches 15/32 and meets the column at 31.75 + 0.46875 = 32.21875.
TEST(WasherRules, ANutUnderAColumnIsSaidOnce) {
  EXPECT_FALSE(silent(atColumn(32.21875), R::WasherColumn));
  EXPECT_TRUE(silent(atColumn(32.21875), R::BoltStud));
  EXPECT_TRUE(silent(atColumn(32.1875), R::WasherColumn));
  EXPECT_FALSE(silent(atColumn(32.1875), R::BoltStud));
}

BareWall twoBolts(double second) {
  BareWall bare = bareWall();
  addBolts(bare, {50, second});
  return bare;
}

TEST(WasherRules, WashersDoNotOverlap) {
  for (const double second : {53 + sixteenth, 53.0, 47.0})
    EXPECT_TRUE(silent(twoBolts(second), R::WasherWasher));
  const BareWall over = twoBolts(52.9375); // from 51.4375; the first to 51.5
  const Id first = over.wall.bolts[0].id;
  const Id second = over.wall.bolts[1].id;
  EXPECT_TRUE(finds(over, R::WasherWasher, {.pieces = {second, first}, .measured = -sixteenth, .limit = 0,
                                            .region = {{51.4375, 51.5}, middle, thick},
                                            .correction = shifted(second, sixteenth)}));
  // The later bolt is the one to move, also where it stands to the left.
  EXPECT_TRUE(finds(twoBolts(47.0625), R::WasherWasher, {.pieces = {second, first}, .measured = -sixteenth, .limit = 0,
                                                         .region = {{48.5, 48.5625}, middle, thick},
                                                         .correction = shifted(second, -sixteenth)}));
  BareWall stepped = over; // the second 8 lower: nowhere near
  stepped.wall.steps.push_back({takeId(stepped.job), "", 51, 96, -8, {}});
  stepped.wall.sills[0].splices = {51};
  EXPECT_TRUE(silent(stepped, R::WasherWasher));
}

// The sill ends at 60; the bolt at 80 has none on it. In a doorway that is another rule's.
TEST(WasherRules, ABoltBeyondTheSillIsFound) {
  BareWall bare = bareWall();
  bare.wall.sills[0].to = 60;
  const Id bolt = addBolt(bare, 80);
  const Findings found = findingsOf(bare, R::WasherSill);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].pieces, std::vector<Id>{bolt});
  EXPECT_EQ(found[0].measured, 3); // the whole washer
  EXPECT_EQ(found[0].variant, 4);
  EXPECT_EQ(found[0].region.s, (Interval{78.5, 81.5}));
  addOpening(bare, OpeningKind::Door, 70, 90);
  EXPECT_TRUE(silent(bare, R::WasherSill));
  bare.wall.openings.clear();
  bare.wall.sills.clear(); // a wall without any sill yet
  EXPECT_TRUE(silent(bare, R::WasherSill));
}

} // namespace
} // namespace sillwright
