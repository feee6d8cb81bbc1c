// The heights straps hang at: strap.joint and strap.pair at 1/8, strap.hang within the reach of the hanger; and
// strap.missing, where none hangs.
#include <gtest/gtest.h>

#include "core/rules/panel_ends.h"
#include "strap_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;

constexpr Interval plate{99, 101}; // of a strap at 100
constexpr Interval depth{0, 0.25};

Findings jointAt(double offset) {
  StrapWall bare = bareStrapWall();
  bare.hang(100, offset);
  return found(bare, RuleId::StrapJoint);
}
constexpr Id strap{101};

TEST(StrapJoint, fixesMoreThanAnEighthAboveThePourLine) {
  EXPECT_TRUE(jointAt(0.125 - sixteenth).empty());
  EXPECT_TRUE(jointAt(0.125).empty());
  EXPECT_TRUE(isOnly(jointAt(0.125 + sixteenth),
                     {Level::Fix, {strap}, 0.1875, 0.125, {plate, depth, {0, 0.1875}}, upward(strap, -0.1875)}));
}

TEST(StrapJoint, fixesMoreThanAnEighthBelowThePourLine) {
  EXPECT_TRUE(jointAt(-0.125 + sixteenth).empty());
  EXPECT_TRUE(jointAt(-0.125).empty());
  EXPECT_TRUE(isOnly(jointAt(-0.125 - sixteenth),
                     {Level::Fix, {strap}, 0.1875, 0.125, {plate, depth, {-0.1875, 0}}, upward(strap, 0.1875)}));
}

TEST(StrapJoint, measuresFromThePourLineAtItsOwnStation) {
  StrapWall bare = bareStrapWall();
  bare.step(90, 110, -8);
  const Id id = bare.hang(100, 0.1875);
  EXPECT_TRUE(isOnly(found(bare, RuleId::StrapJoint),
                     {Level::Fix, {id}, 0.1875, 0.125, {plate, depth, {-8, -7.8125}}, upward(id, -0.1875)}));
}

TEST(StrapJoint, takesTheToleranceOfTheTypeUnlessTheJobSetsOne) {
  StrapWall bare = bareStrapWall();
  bare.type.jointTolerance = 0.25;
  bare.hang(100, 0.25);
  EXPECT_TRUE(found(bare, RuleId::StrapJoint).empty());
  bare.limit("strap.joint", 0.1875); // 1/4 > 3/16
  EXPECT_TRUE(isOnly(found(bare, RuleId::StrapJoint),
                     {Level::Fix, {strap}, 0.25, 0.1875, {plate, depth, {0, 0.25}}, upward(strap, -0.25)}));
}

// Straps at 100 and 150 (posts 100, 102 and straps 101, 103), as ends of one panel or beside one opening.
StrapWall twoStraps(double left, double right) {
  StrapWall bare = bareStrapWall();
  bare.hang(100, left);
  bare.hang(150, right);
  return bare;
}
constexpr Id other{103};

Findings pairOfPanel(double left, double right) {
  StrapWall bare = twoStraps(left, right);
  bare.panel(97, 153);
  return found(bare, RuleId::StrapPair);
}

TEST(StrapPair, fixesMoreThanAnEighthApart) {
  EXPECT_TRUE(pairOfPanel(sixteenth, 0).empty());
  EXPECT_TRUE(pairOfPanel(sixteenth, -sixteenth).empty()); // 1/8
  // 1/8 + 1/16 = 3/16; the one farther from the pour line goes to the other
  EXPECT_TRUE(
      isOnly(pairOfPanel(0.125, -sixteenth),
             {Level::Fix, {strap, other}, 0.1875, 0.125, {plate, depth, {-sixteenth, 0.125}}, upward(strap, -0.1875)}));
  EXPECT_TRUE(isOnly(
      pairOfPanel(sixteenth, -0.125),
      {Level::Fix, {other, strap}, 0.1875, 0.125, {{149, 151}, depth, {-0.125, sixteenth}}, upward(other, 0.1875)}));
}

TEST(StrapPair, takesTheLimitOfTheJob) {
  StrapWall bare = twoStraps(0.5, 0);
  bare.panel(97, 153);
  bare.limit("strap.pair", 0.5);
  EXPECT_TRUE(found(bare, RuleId::StrapPair).empty());
  bare.wall.straps[0].heightOffset += sixteenth;
  EXPECT_TRUE(isOnly(found(bare, RuleId::StrapPair),
                     {Level::Fix, {strap, other}, 0.5625, 0.5, {plate, depth, {0, 0.5625}}, upward(strap, -0.5625)}));
}

// As far off one way as the other: the older of the two moves.
TEST(StrapPair, movesTheOlderOfTwoThatAreEquallyOff) {
  const Findings findings = pairOfPanel(-0.125, 0.125);
  EXPECT_TRUE(isOnly(findings,
                     {Level::Fix, {strap, other}, 0.25, 0.125, {plate, depth, {-0.125, 0.125}}, upward(strap, 0.25)}));
}

TEST(StrapPair, holdsTheTwoBesideAnOpening) {
  StrapWall bare = twoStraps(0.1875, 0);
  bare.open(OpeningKind::Door, 105, 145);
  EXPECT_TRUE(isOnly(found(bare, RuleId::StrapPair),
                     {Level::Fix, {strap, other}, 0.1875, 0.125, {plate, depth, {0, 0.1875}}, upward(strap, -0.1875)}));
  bare.panel(97, 153); // the same two once more: said once
  EXPECT_EQ(found(bare, RuleId::StrapPair).size(), 1u);
}

TEST(StrapPair, holdsOnlyStrapsWithinReach) {
  StrapWall bare = twoStraps(0.1875, 0);
  bare.open(OpeningKind::Door, 100 + endReach, 150 - endReach);
  EXPECT_EQ(found(bare, RuleId::StrapPair).size(), 1u);
  bare.wall.openings[0].from += sixteenth;
  EXPECT_TRUE(found(bare, RuleId::StrapPair).empty());
}

// The right strap hangs in a stretch 8 lower: each is measured from its own pour line.
TEST(StrapPair, leavesAStepBetweenThemOut) {
  StrapWall bare = twoStraps(sixteenth, sixteenth);
  bare.panel(97, 153);
  bare.step(130, 200, -8);
  EXPECT_TRUE(found(bare, RuleId::StrapPair).empty());
  bare.wall.straps[1].heightOffset = 0.25; // 1/4 - 1/16 = 3/16
  EXPECT_TRUE(isOnly(found(bare, RuleId::StrapPair), {Level::Fix,
                                                      {other, strap},
                                                      0.1875,
                                                      0.125,
                                                      {{149, 151}, depth, {-8 + sixteenth, -7.75}},
                                                      upward(other, -0.1875)}));
}

// A hanger that reaches from 1/2 to 3 above the joint line; the outside form board is 1 1/2 thick.
Findings hungFrom(double formTop, double heightOffset = 0) {
  StrapWall bare = bareStrapWall();
  bare.type.hangerReach = {0.5, 3};
  bare.wall.formTop = formTop;
  bare.hang(100, heightOffset);
  return found(bare, RuleId::StrapHang);
}
constexpr Interval board{-1.5, 0};

TEST(StrapHang, fixesAFormTooLowForTheHanger) {
  EXPECT_TRUE(hungFrom(0.5 + sixteenth).empty());
  EXPECT_TRUE(hungFrom(0.5).empty());
  const Findings low = hungFrom(0.5 - sixteenth);
  EXPECT_TRUE(isOnly(low, {Level::Fix, {strap}, 0.4375, 0.5, {plate, board, {0.4375, 0.5}}, {}}));
  EXPECT_EQ(low[0].wanted, Wanted::AtLeast);
}

TEST(StrapHang, fixesAFormTooHighForTheHanger) {
  EXPECT_TRUE(hungFrom(3 - sixteenth).empty());
  EXPECT_TRUE(hungFrom(3).empty());
  const Findings high = hungFrom(3 + sixteenth);
  EXPECT_TRUE(isOnly(high, {Level::Fix, {strap}, 3.0625, 3, {plate, board, {3, 3.0625}}, {}}));
  EXPECT_EQ(high[0].wanted, Wanted::AtMost);
}

// The joint 1/16 up takes the hanger with it: 1/2 - 1/16 = 7/16; it asks for a top 1/2 above the joint, at 9/16.
TEST(StrapHang, measuresFromTheJoint) {
  EXPECT_TRUE(isOnly(hungFrom(0.5, sixteenth), {Level::Fix, {strap}, 0.4375, 0.5, {plate, board, {0.5, 0.5625}}, {}}));
}

TEST(StrapHang, saysNothingWhereTheReachIsNotEntered) {
  StrapWall bare = bareStrapWall();
  bare.wall.formTop = 40;
  bare.hang(100);
  EXPECT_TRUE(found(bare, RuleId::StrapHang).empty());
}

// A panel from 48 to 144 whose ends are called HD; there is one strap, at a station.
StrapWall calledFor(std::optional<double> station) {
  StrapWall bare = bareStrapWall();
  bare.marks = {{Id{40}, "HD", strapTypeId, {}, {}, {}, {}, {}, ""}, {Id{41}, "ROD", {}, Id{2}, {}, {}, {}, {}, ""}};
  bare.panel(48, 144, "HD", "");
  if (station)
    bare.hang(*station);
  return bare;
}
Findings missing(const StrapWall& bare) {
  return found(bare, RuleId::StrapMissing);
}
constexpr Id panel{100};

// What is missing: a plate with its edge at the end of the panel, from the hook at -12 1/8 to the top at 22.
TEST(StrapMissing, wantsAStrapWithinReachOfTheLeftEnd) {
  EXPECT_TRUE(missing(calledFor(48)).empty());
  EXPECT_TRUE(missing(calledFor(48 + endReach)).empty());
  const Wants none{Level::Fix, {panel}, 0, 1, {{48, 50}, {0, 5}, {-12.125, 22}}, {}};
  EXPECT_TRUE(isOnly(missing(calledFor({})), none));
  EXPECT_TRUE(isOnly(missing(calledFor(48 + endReach + sixteenth)), none));
  EXPECT_TRUE(isOnly(missing(calledFor(48 - sixteenth)), none));
}

TEST(StrapMissing, wantsAStrapWithinReachOfTheRightEnd) {
  const auto atRight = [](double station) {
    StrapWall bare = calledFor(station);
    std::swap(bare.wall.panels[0].leftMark, bare.wall.panels[0].rightMark);
    return missing(bare);
  };
  EXPECT_TRUE(atRight(144).empty());
  EXPECT_TRUE(atRight(144 - endReach).empty());
  const Wants none{Level::Fix, {panel}, 0, 1, {{142, 144}, {0, 5}, {-12.125, 22}}, {}};
  EXPECT_TRUE(isOnly(atRight(144 - endReach - sixteenth), none));
  EXPECT_TRUE(isOnly(atRight(144 + sixteenth), none));
}

TEST(StrapMissing, showsItWhereThePourLineIs) {
  StrapWall bare = calledFor({});
  bare.step(40, 60, -8);
  EXPECT_TRUE(isOnly(missing(bare), {Level::Fix, {panel}, 0, 1, {{48, 50}, {0, 5}, {-20.125, 14}}, {}}));
}

// A type whose shape has not been entered yet: only its plate is known, on the outside face.
TEST(StrapMissing, showsThePlateAloneWithoutAProfile) {
  StrapWall bare = calledFor({});
  bare.type.profile.clear();
  EXPECT_TRUE(isOnly(missing(bare), {Level::Fix, {panel}, 0, 1, {{48, 50}, {0, 0.25}, {0, 22}}, {}}));
}

TEST(StrapMissing, saysNothingWhereThePlansCallForNoStrap) {
  for (const char* mark : {"", "ROD", "unknown"}) {
    StrapWall bare = calledFor({});
    bare.wall.panels[0].leftMark = mark;
    EXPECT_TRUE(missing(bare).empty()) << mark;
  }
}

} // namespace
} // namespace sillwright
