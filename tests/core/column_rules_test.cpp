// Columns on their sill, out of openings and out of each other, each rule at its limit and a sixteenth to either side.
// A 4x6 is 3.5 along the wall: 1.75 to either side of its middle; d 0.5 to 6; on the 3x6 sill z 2.5 to 93, under two
// plates of a wall of 96.
#include "bare_wall.h"
#include "core/rules/wording.h"

namespace sillwright {
namespace {

using namespace testing_support;
using R = RuleId;
constexpr double sixteenth = 1.0 / 16;
constexpr Interval deep{0.5, 6};
constexpr Interval thick{0, 2.5};

// The sill only from 10 to 48.
BareWall onSill(double station) {
  BareWall bare = bareWall();
  bare.wall.sills[0].from = 10;
  bare.wall.sills[0].to = 48;
  addColumn(bare, station);
  return bare;
}

TEST(ColumnRules, StandsWhollyOnASill) {
  for (const double station : {11.75, 11.75 + sixteenth, 46.25 - sixteenth, 46.25})
    EXPECT_TRUE(silent(onSill(station), R::ColumnSill));
  const BareWall right = onSill(46.3125); // to 48.0625
  const Id column = right.wall.columns[0].id;
  EXPECT_TRUE(finds(right, R::ColumnSill, {.pieces = {column, right.sill}, .measured = sixteenth, .limit = 0,
                                           .region = {{48, 48.0625}, deep, thick},
                                           .correction = shifted(column, -sixteenth)}));
  EXPECT_TRUE(finds(onSill(11.6875), R::ColumnSill, {.pieces = {column, right.sill}, .measured = sixteenth, .limit = 0,
                                                     .region = {{9.9375, 10}, deep, thick},
                                                     .correction = shifted(column, sixteenth)}));
}

TEST(ColumnRules, TheJobMayAllowAnOverhang) {
  const auto wall = [](double station) {
    BareWall bare = onSill(station);
    overrideLimit(bare, "column.sill", 0.5);
    return bare;
  };
  EXPECT_TRUE(silent(wall(46.75 - sixteenth), R::ColumnSill));
  EXPECT_TRUE(silent(wall(46.75), R::ColumnSill)); // to 48.5
  const BareWall over = wall(46.8125);
  const Id column = over.wall.columns[0].id;
  EXPECT_TRUE(finds(over, R::ColumnSill, {.pieces = {column, over.sill}, .measured = 0.5625, .limit = 0.5,
                                          .region = {{48, 48.5625}, deep, thick},
                                          .correction = shifted(column, -0.5625)}));
}

TEST(ColumnRules, NotOverASpliceWhateverIsAllowed) {
  const auto wall = [](double station) {
    BareWall bare = bareWall();
    bare.wall.sills[0].splices = {48};
    overrideLimit(bare, "column.sill", 0.5);
    addColumn(bare, station);
    return bare;
  };
  for (const double station : {46.25 - sixteenth, 46.25, 49.75, 49.75 + sixteenth})
    EXPECT_TRUE(silent(wall(station), R::ColumnSill));
  const BareWall over = wall(46.3125);
  const Id column = over.wall.columns[0].id;
  EXPECT_TRUE(finds(over, R::ColumnSill, {.pieces = {column, over.sill}, .measured = sixteenth, .limit = 0,
                                          .region = {{48, 48.0625}, deep, thick},
                                          .correction = shifted(column, -sixteenth), .variant = 1}));
  EXPECT_TRUE(finds(wall(49.6875), R::ColumnSill, {.pieces = {column, over.sill}, .measured = sixteenth, .limit = 0,
                                                   .region = {{47.9375, 48}, deep, thick},
                                                   .correction = shifted(column, sixteenth), .variant = 1}));
}

TEST(ColumnRules, AColumnBesideEverySill) {
  const BareWall beside = onSill(49.75); // from 48, where the sill ends
  EXPECT_TRUE(finds(beside, R::ColumnSill,
                    {.pieces = {beside.wall.columns[0].id},
                     .measured = 3.5,
                     .limit = 0,
                     .region = {{48, 51.5}, deep, {0, 1.5}},
                     .correction = shifted(beside.wall.columns[0].id, -3.5)}));
  BareWall none = beside; // a wall without sills yet says nothing
  none.wall.sills.clear();
  EXPECT_TRUE(silent(none, R::ColumnSill));
}

TEST(ColumnRules, AColumnDeeperThanItsSill) {
  const auto wall = [](Nominal sill, double allowed) {
    BareWall bare = onSill(30);
    bare.wall.sills[0].nominal = sill;
    overrideLimit(bare, "column.sill", allowed);
    return bare;
  };
  EXPECT_TRUE(silent(wall({3, 6}, 0), R::ColumnSill));
  EXPECT_TRUE(silent(wall({3, 8}, 0), R::ColumnSill));
  EXPECT_TRUE(silent(wall({3, 4}, 2), R::ColumnSill));
  const BareWall narrow = wall({3, 4}, 0); // the sill to 0.5 + 3.5 = 4, the column to 6; no move along the wall helps
  EXPECT_TRUE(finds(narrow, R::ColumnSill, {.pieces = {narrow.wall.columns[0].id, narrow.sill}, .measured = 2,
                                            .limit = 0, .region = {{28.25, 31.75}, {4, 6}, thick}, .variant = 2}));
  EXPECT_TRUE(finds(wall({3, 4}, 2 - sixteenth), R::ColumnSill,
                    {.pieces = {narrow.wall.columns[0].id, narrow.sill}, .measured = 2, .limit = 2 - sixteenth,
                     .region = {{28.25, 31.75}, {4, 6}, thick}, .variant = 2}));
  Job job = narrow.job;
  WallLine marked = narrow.wall;
  marked.columns[0].mark = "C1";
  job.walls.add(marked);
  EXPECT_EQ(message(job, findingsOf(narrow, R::ColumnSill).at(0)), "C1 stands 2\" past the inside edge of the sill.");
}

// The opening from 40 to 76, its head at 80.
BareWall atOpening(OpeningKind kind, double station) {
  BareWall bare = bareWall();
  addOpening(bare, kind, 40, 76);
  addColumn(bare, station);
  return bare;
}

TEST(ColumnRules, NoColumnInADoor) {
  for (const double station : {38.25 - sixteenth, 38.25, 77.75, 77.75 + sixteenth})
    EXPECT_TRUE(silent(atOpening(OpeningKind::Door, station), R::ColumnOpening));
  const BareWall left = atOpening(OpeningKind::Door, 38.3125); // to 40.0625
  const Id column = left.wall.columns[0].id;
  const Id door = left.wall.openings[0].id;
  EXPECT_TRUE(finds(left, R::ColumnOpening, {.pieces = {column, door}, .measured = sixteenth, .limit = 0,
                                             .region = {{40, 40.0625}, deep, {2.5, 80}},
                                             .correction = shifted(column, -sixteenth)}));
  EXPECT_TRUE(finds(atOpening(OpeningKind::GarageDoor, 77.6875), R::ColumnOpening,
                    {.pieces = {column, door}, .measured = sixteenth, .limit = 0,
                     .region = {{75.9375, 76}, deep, {2.5, 80}}, .correction = shifted(column, sixteenth)}));
}

// Under a window the wall goes on to its sill at 36.
TEST(ColumnRules, NoColumnInAWindow) {
  EXPECT_TRUE(silent(atOpening(OpeningKind::Window, 38.25), R::ColumnOpening));
  const BareWall left = atOpening(OpeningKind::Window, 38.3125);
  const Id column = left.wall.columns[0].id;
  EXPECT_TRUE(finds(left, R::ColumnOpening, {.pieces = {column, left.wall.openings[0].id}, .measured = sixteenth,
                                             .limit = 0, .region = {{40, 40.0625}, deep, {36, 80}},
                                             .correction = shifted(column, -sixteenth)}));
}

BareWall twoColumns(double second) {
  BareWall bare = bareWall();
  addColumn(bare, 30); // 28.25 to 31.75
  addColumn(bare, second);
  return bare;
}

TEST(ColumnRules, ColumnsDoNotOverlap) {
  for (const double second : {33.5 + sixteenth, 33.5, 26.5})
    EXPECT_TRUE(silent(twoColumns(second), R::ColumnOverlap));
  const BareWall right = twoColumns(33.4375); // from 31.6875
  const Id first = right.wall.columns[0].id;
  const Id second = right.wall.columns[1].id;
  EXPECT_TRUE(finds(right, R::ColumnOverlap, {.pieces = {second, first}, .measured = -sixteenth, .limit = 0,
                                              .region = {{31.6875, 31.75}, deep, {2.5, 93}},
                                              .correction = shifted(second, sixteenth)}));
  EXPECT_TRUE(finds(twoColumns(26.5625), R::ColumnOverlap, {.pieces = {second, first}, .measured = -sixteenth,
                                                            .limit = 0, .region = {{28.25, 28.3125}, deep, {2.5, 93}},
                                                            .correction = shifted(second, -sixteenth)}));
  // Nearly in one place: 31.75 - 28.5 = 3.25 to the right and it is out, 3.75 to the left.
  EXPECT_TRUE(finds(twoColumns(30.25), R::ColumnOverlap, {.pieces = {second, first}, .measured = -3.25, .limit = 0,
                                                          .region = {{28.5, 31.75}, deep, {2.5, 93}},
                                                          .correction = shifted(second, 3.25)}));
}

} // namespace
} // namespace sillwright
