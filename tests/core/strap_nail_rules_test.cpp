// Nails on their column: strap.column, strap.nail-edge, strap.seam. The nails are 1/8 thick (1/16 either side), in rows
// 1/2 left (5, 7 ... 19 above the joint) and 1/2 right (6, 8 ... 20) of the centre line, 8 in each.
#include <gtest/gtest.h>

#include "core/rules/wording.h"

#include "strap_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;

constexpr Interval depth{0, 0.25};
constexpr Interval leftRow{5 - sixteenth, 19 + sixteenth};
constexpr Interval rightRow{6 - sixteenth, 20 + sixteenth};
constexpr Id column{100}, strap{101};

// One post 6x6 at 100: from 97 1/4 to 102 3/4.
Findings onPost(double station, RuleId rule) {
  StrapWall bare = bareStrapWall();
  bare.hangOn(100, station, {1, {6, 6}});
  return found(bare, rule);
}

// Two plies of 2x6 at 100: from 98 1/2 to 101 1/2, the seam at 100.
Findings onPlies(double station, RuleId rule) {
  StrapWall bare = bareStrapWall();
  bare.hangOn(100, station, {2, {2, 6}});
  return found(bare, rule);
}

// Right row's nails end 9/16 right of the station: at 102 3/16 on the post's edge.
TEST(StrapColumn, fixesNailsPastTheRightEdge) {
  EXPECT_TRUE(onPost(102.1875 - sixteenth, RuleId::StrapColumn).empty());
  EXPECT_TRUE(onPost(102.1875, RuleId::StrapColumn).empty());
  // 102 1/4 + 1/2 = 102 3/4: the row on the very edge
  EXPECT_TRUE(isOnly(onPost(102.1875 + sixteenth, RuleId::StrapColumn),
                     {Level::Fix,
                      {strap, column},
                      8,
                      0,
                      {{102.75 - sixteenth, 102.75 + sixteenth}, depth, rightRow},
                      along(strap, -sixteenth)}));
}

TEST(StrapColumn, fixesNailsPastTheLeftEdge) {
  EXPECT_TRUE(onPost(97.8125 + sixteenth, RuleId::StrapColumn).empty());
  EXPECT_TRUE(onPost(97.8125, RuleId::StrapColumn).empty()); // 97 13/16 - 9/16 = 97 1/4
  EXPECT_TRUE(isOnly(onPost(97.8125 - sixteenth, RuleId::StrapColumn),
                     {Level::Fix,
                      {strap, column},
                      8,
                      0,
                      {{97.25 - sixteenth, 97.25 + sixteenth}, depth, leftRow},
                      along(strap, sixteenth)}));
}

// 1 1/16 farther all of them are off: 103 1/4 - 1/2 = 102 3/4 is the left row. Back to 102 3/16.
TEST(StrapColumn, countsEveryNailOffTheColumn) {
  EXPECT_TRUE(isOnly(onPost(103.25, RuleId::StrapColumn),
                     {Level::Fix,
                      {strap, column},
                      16,
                      0,
                      {{102.75 - sixteenth, 103.75 + sixteenth}, depth, {5 - sixteenth, 20 + sixteenth}},
                      along(strap, -1.0625)}));
}

// The column ends under two plates, 3 below the top of the wall; the top nail's upper edge is 20 1/16 up.
TEST(StrapColumn, fixesNailsOverTheTop) {
  const auto topAt = [](double top) {
    StrapWall bare = bareStrapWall();
    bare.wall.wallHeight = top + 3;
    bare.hang(100);
    return found(bare, RuleId::StrapColumn);
  };
  EXPECT_TRUE(topAt(20.0625 + sixteenth).empty());
  EXPECT_TRUE(topAt(20.0625).empty());
  EXPECT_TRUE(isOnly(topAt(20.0625 - sixteenth),
                     {Level::Fix,
                      {strap, column},
                      1,
                      0,
                      {{100.5 - sixteenth, 100.5 + sixteenth}, depth, {20 - sixteenth, 20 + sixteenth}},
                      {}}));
}

// The column begins on the sill, 1 1/2 up: what is lower goes into the sill.
TEST(StrapColumn, fixesNailsInTheSill) {
  const auto firstAt = [](double first) {
    StrapWall bare = bareStrapWall();
    bare.type.nails.first = first;
    bare.hang(100);
    return found(bare, RuleId::StrapColumn);
  };
  EXPECT_TRUE(firstAt(1.5625 + sixteenth).empty());
  EXPECT_TRUE(firstAt(1.5625).empty()); // 1 9/16 - 1/16 = 1 1/2
  EXPECT_TRUE(isOnly(firstAt(1.5625 - sixteenth),
                     {Level::Fix,
                      {strap, column},
                      1,
                      0,
                      {{99.5 - sixteenth, 99.5 + sixteenth}, depth, {1.5 - sixteenth, 1.5 + sixteenth}},
                      {}}));
}

// All sixteen nails, rows 1/2 to either side, 5 to 20 up.
TEST(StrapColumn, fixesAStrapThatBelongsToNoColumn) {
  StrapWall bare = bareStrapWall();
  bare.hang(100);
  bare.wall.straps[0].column = {};
  bare.wall.straps[0].station = 140;
  const Findings findings = found(bare, RuleId::StrapColumn);
  ASSERT_EQ(findings.size(), 1u);
  const Finding& finding = findings[0];
  EXPECT_EQ(finding.level, Level::Fix);
  EXPECT_EQ(finding.pieces, std::vector<Id>{bare.wall.straps[0].id});
  EXPECT_EQ(finding.measured, 16);
  EXPECT_EQ(finding.limit, 0);
  EXPECT_EQ(finding.region, (Box3{{139.5 - sixteenth, 140.5 + sixteenth}, depth, {5 - sixteenth, 20 + sixteenth}}));
  EXPECT_FALSE(finding.correction);
  EXPECT_EQ(label(testing_support::jobOf(bare), finding), "NO COLUMN BEHIND IT");
}

// From the outer face of the plate at depth 0; the column's face is at 1/2. 6 d = 3/4, 10 d = 1 1/4 of a 1/8 nail: nails
// of 1 1/4 and 1 3/4.
TEST(StrapNailDepth, sixDiametersAtLeastAndTenForTheirFullValue) {
  const auto nailed = [](double length) {
    StrapWall bare = bareStrapWall();
    bare.type.nails.nailLength = length;
    bare.hang(100);
    return found(bare, RuleId::StrapNailDepth);
  };
  const Interval rows{99.5 - sixteenth, 100.5 + sixteenth}, heights{5 - sixteenth, 20 + sixteenth};
  EXPECT_TRUE(nailed(1.75 + sixteenth).empty());
  EXPECT_TRUE(nailed(1.75).empty());
  EXPECT_TRUE(isOnly(nailed(1.75 - sixteenth),
                     {Level::Watch, {strap, column}, 1.25 - sixteenth, 1.25, {rows, {1.75 - sixteenth, 1.75}, heights}, {}}));
  EXPECT_TRUE(isOnly(nailed(1.25), {Level::Watch, {strap, column}, 0.75, 1.25, {rows, {1.25, 1.75}, heights}, {}}));
  EXPECT_TRUE(isOnly(nailed(1.25 - sixteenth),
                     {Level::Fix, {strap, column}, 0.75 - sixteenth, 0.75, {rows, {1.25 - sixteenth, 1.25}, heights}, {}}));
  EXPECT_TRUE(nailed(0).empty()); // not entered
}

// 2 1/2 diameters are 5/16. Right row at station + 1/2: 101 15/16 puts it 5/16 from 102 3/4.
TEST(StrapNailEdge, watchesNailsNearTheRightEdge) {
  EXPECT_TRUE(onPost(101.9375 - sixteenth, RuleId::StrapNailEdge).empty());
  EXPECT_TRUE(onPost(101.9375, RuleId::StrapNailEdge).empty());
  // 102 3/4 - 102 1/2 = 1/4; the middle of the post is 2 to the left
  EXPECT_TRUE(isOnly(onPost(101.9375 + sixteenth, RuleId::StrapNailEdge),
                     {Level::Watch,
                      {strap, column},
                      0.25,
                      0.3125,
                      {{102.5 - sixteenth, 102.5 + sixteenth}, depth, rightRow},
                      along(strap, -2)}));
}

TEST(StrapNailEdge, watchesNailsNearTheLeftEdge) {
  EXPECT_TRUE(onPost(98.0625, RuleId::StrapNailEdge).empty()); // 98 1/16 - 1/2 - 97 1/4 = 5/16
  EXPECT_TRUE(isOnly(onPost(98.0625 - sixteenth, RuleId::StrapNailEdge),
                     {Level::Watch,
                      {strap, column},
                      0.25,
                      0.3125,
                      {{97.5 - sixteenth, 97.5 + sixteenth}, depth, leftRow},
                      along(strap, 2)}));
}

// Left row at station - 1/2: 100 3/16 puts it 5/16 left of the seam, 99 13/16 the right row 5/16 right of it.
TEST(StrapNailEdge, watchesNailsNearASeam) {
  for (const double station : {99.8125, 99.8125 + sixteenth, 100.0, 100.1875 - sixteenth, 100.1875})
    EXPECT_TRUE(onPlies(station, RuleId::StrapNailEdge).empty()) << station;
  EXPECT_TRUE(isOnly(onPlies(100.1875 + sixteenth, RuleId::StrapNailEdge),
                     {Level::Watch,
                      {strap, column},
                      0.25,
                      0.3125,
                      {{99.75 - sixteenth, 99.75 + sixteenth}, depth, leftRow},
                      along(strap, -0.25)}));
  EXPECT_TRUE(isOnly(onPlies(99.8125 - sixteenth, RuleId::StrapNailEdge),
                     {Level::Watch,
                      {strap, column},
                      0.25,
                      0.3125,
                      {{100.25 - sixteenth, 100.25 + sixteenth}, depth, rightRow},
                      along(strap, 0.25)}));
}

// Nails on the seam, or off the column, are told of by the rules for that.
TEST(StrapNailEdge, leavesNailsOnASeamOrOffTheColumnAlone) {
  EXPECT_TRUE(onPlies(100.5, RuleId::StrapNailEdge).empty());
  EXPECT_TRUE(onPost(102.25, RuleId::StrapNailEdge).empty()); // right row on the edge, left row 1 from it
}

TEST(StrapNailEdge, takesItsDiametersFromTheJob) {
  StrapWall bare = bareStrapWall();
  bare.limit("strap.nail-edge", 4); // 4 x 1/8 = 1/2: just what the seam leaves a strap in the middle
  bare.hangOn(100, 100, {2, {2, 6}});
  EXPECT_TRUE(found(bare, RuleId::StrapNailEdge).empty());
  bare.wall.straps[0].station += sixteenth; // left row 7/16 from the seam
  EXPECT_TRUE(isOnly(found(bare, RuleId::StrapNailEdge), {Level::Watch,
                                                          {strap, column},
                                                          0.4375,
                                                          0.5,
                                                          {{99.5625 - sixteenth, 99.5625 + sixteenth}, depth, leftRow},
                                                          along(strap, -sixteenth)}));
}

// A nail meets the seam when its middle is nearer than 1/16 to it.
TEST(StrapSeam, asksForNailsOnASeam) {
  for (const double station : {100.4375 - sixteenth, 100.4375, 100.5625, 100.5625 + sixteenth})
    EXPECT_TRUE(onPlies(station, RuleId::StrapSeam).empty()) << station;
  // 100 1/2 - 1/2 = 100; a strap that must move goes to the middle
  EXPECT_TRUE(isOnly(
      onPlies(100.4375 + sixteenth, RuleId::StrapSeam),
      {Level::Ask, {strap, column}, 8, 0, {{100 - sixteenth, 100 + sixteenth}, depth, leftRow}, along(strap, -0.5)}));
  EXPECT_TRUE(isOnly(
      onPlies(99.5, RuleId::StrapSeam),
      {Level::Ask, {strap, column}, 8, 0, {{100 - sixteenth, 100 + sixteenth}, depth, rightRow}, along(strap, 0.5)}));
  EXPECT_TRUE(onPost(100.5, RuleId::StrapSeam).empty()); // one solid post
}

} // namespace
} // namespace sillwright
