// What the plan's wall-end schedule calls for, and what follows from its numbers; sills; plate washers as such. Each rule
// at its limit and to either side of it, worked by hand.
#include "bare_wall.h"
#include "core/rules/wording.h"

namespace sillwright {
namespace {

using namespace testing_support;
using R = RuleId;
constexpr double sixteenth = 1.0 / 16;

// A panel from 20 to 76, a 4x6 and a strap at each end on the column's centre line.
struct PanelWall : BareWall {
  Id panel, left, right, leftStrap, rightStrap;
};

Id addStrap(BareWall& bare, double station, Id column) {
  Strap strap;
  strap.id = takeId(bare.job);
  strap.type = bare.strap;
  strap.station = station;
  strap.column = column;
  bare.wall.straps.push_back(strap);
  return strap.id;
}

PanelWall panelWall(WallEndMark mark = {}, double leftStrap = 21.75, double rightStrap = 74.25) {
  PanelWall bare{bareWall(), {}, {}, {}, {}, {}};
  bare.left = addColumn(bare, 21.75);
  bare.right = addColumn(bare, 74.25);
  bare.panel = addPanel(bare, 20, 76);
  bare.leftStrap = addStrap(bare, leftStrap, bare.left);
  bare.rightStrap = addStrap(bare, rightStrap, bare.right);
  mark.id = takeId(bare.job);
  mark.mark = "HD";
  bare.job.marks = Shared<std::vector<WallEndMark>>({mark});
  bare.wall.panels[0].leftMark = bare.wall.panels[0].rightMark = "HD";
  return bare;
}

TEST(PlanRules, TheStrapThatTheMarkCallsFor) {
  PanelWall bare = panelWall();
  StrapType other = bare.job.types->straps[0];
  other.id = takeId(bare.job);
  bare.job.types.edit([&](HardwareTypes& types) { types.straps.push_back(other); });
  EXPECT_TRUE(silent(bare, R::StrapType)); // the mark names none
  bare.job.marks.edit([&](auto& marks) { marks[0].strapType = bare.strap; });
  EXPECT_TRUE(silent(bare, R::StrapType));
  findIn(bare.wall.straps, bare.rightStrap)->type = other.id;
  const Findings found = findingsOf(bare, R::StrapType);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].level, Level::Fix);
  EXPECT_EQ(found[0].pieces, (std::vector<Id>{bare.rightStrap, bare.panel}));
}

TEST(PlanRules, TheColumnsAStrapMayBeNailedTo) {
  PanelWall bare = panelWall();
  const auto may = [&](std::vector<MakeUp> columns) {
    bare.job.types.edit([&](HardwareTypes& types) { types.straps[0].columns = columns; });
  };
  may({{2, {2, 6}}, {1, {4, 6}}});
  EXPECT_TRUE(silent(bare, R::StrapType));
  may({{2, {2, 6}}});
  const Findings found = findingsOf(bare, R::StrapType);
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].variant, 1);
}

TEST(PlanRules, WhatAStrapIsStatedToHold) {
  const auto stated = [](double pounds) {
    WallEndMark mark;
    mark.requiredCapacity = 3000;
    PanelWall bare = panelWall(mark);
    bare.job.types.edit([&](HardwareTypes& types) { types.straps[0].statedCapacity = pounds; });
    return bare;
  };
  EXPECT_TRUE(silent(stated(3000), R::StrapCapacity));
  const Findings found = findingsOf(stated(2999), R::StrapCapacity);
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].level, Level::Ask);
  EXPECT_EQ(found[0].measured, 2999);
  EXPECT_EQ(found[0].limit, 3000);
  EXPECT_TRUE(silent(panelWall(), R::StrapCapacity)); // nothing stated
}

TEST(PlanRules, AnEighthInTwentyFourOutOfPlumb) {
  const auto read = [](double plumb) {
    PanelWall bare = panelWall();
    Reading reading;
    reading.piece = bare.leftStrap;
    reading.plumb = plumb;
    bare.wall.readings.push_back(reading);
    return bare;
  };
  EXPECT_TRUE(silent(panelWall(), R::StrapPlumb));
  EXPECT_TRUE(silent(read(0.125), R::StrapPlumb));
  const PanelWall out = read(0.1875);
  // 22 in of strap: 22 x 3/16 / 24 = 0.171875 off at the top. The plate is 2 1/2 wide and stands from 20 1/2 to 23.
  EXPECT_TRUE(finds(out, R::StrapPlumb,
                    {.level = Level::Watch, .pieces = {out.leftStrap}, .measured = 0.1875, .limit = 0.125,
                     .region = {{20.5, 23.171875}, {-0.0025, 0.1025}, {0, 22}}}));
}

TEST(PlanRules, TheColumnThatTheMarkCallsFor) {
  WallEndMark mark;
  mark.column = MakeUp{1, {4, 6}};
  EXPECT_TRUE(silent(panelWall(mark), R::ColumnPlan));
  mark.column = MakeUp{2, {2, 6}};
  const PanelWall bare = panelWall(mark);
  const Findings found = findingsOf(bare, R::ColumnPlan);
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].pieces, (std::vector<Id>{bare.left, bare.panel}));
  EXPECT_EQ(found[1].pieces, (std::vector<Id>{bare.right, bare.panel}));
}

// On the plans 51 in apart. The tie force goes as 1 / lever: 50 in is 2 % more, 48 4/7 in 5 %.
TEST(PlanRules, TheLeverOfThePlans) {
  const auto apart = [](double lever) {
    PanelWall bare = panelWall({}, 21.75, 21.75 + lever);
    bare.wall.panels[0].lever = 51;
    return bare;
  };
  EXPECT_TRUE(silent(apart(50), R::PanelLever));
  const Findings watched = findingsOf(apart(50 - sixteenth), R::PanelLever);
  ASSERT_EQ(watched.size(), 1u);
  EXPECT_EQ(watched[0].level, Level::Watch);
  EXPECT_NEAR(watched[0].measured, (51 / 49.9375 - 1) * 100, 1e-9);
  EXPECT_TRUE(silent(apart(48.625), R::PanelLever, Level::Ask));
  EXPECT_EQ(findingsOf(apart(48.5), R::PanelLever)[0].level, Level::Ask);
}

// Where the plans give no lever, the middles of the marks' columns do: 56 - 3 1/2 = 52 1/2 for 4x6 at both ends.
TEST(PlanRules, TheLeverOfTheMarks) {
  WallEndMark mark;
  mark.column = MakeUp{1, {4, 6}};
  EXPECT_TRUE(silent(panelWall(mark), R::PanelLever));
  const Findings found = findingsOf(panelWall(mark, 21.75, 74.25 - 1.5), R::PanelLever); // 52.5 / 51 = 2.94 % more
  ASSERT_EQ(found.size(), 1u);
  EXPECT_NEAR(found[0].measured, (52.5 / 51 - 1) * 100, 1e-9);
  EXPECT_TRUE(silent(panelWall({}, 21.75, 60), R::PanelLever)); // neither: silent
}

// v 300 plf, 56 in long, 96 in high, hold-downs 52 1/2 apart: 300 x 56/12 x 96 / 52.5 = 2560 lb. With 100 plf of dead load
// less 100 x (56/12)^2 / 2 / (52.5/12) = 248.9 lb.
TEST(PlanRules, TheTieForceAgainstTheMark) {
  const auto panel = [](double required, std::optional<double> dead = {}) {
    WallEndMark mark;
    mark.requiredCapacity = required;
    PanelWall bare = panelWall(mark);
    bare.wall.panels[0].designShear = 300;
    bare.wall.panels[0].deadLoad = dead;
    return bare;
  };
  EXPECT_TRUE(silent(panel(2560), R::PanelTie));
  const Findings found = findingsOf(panel(2559), R::PanelTie);
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].level, Level::Ask);
  EXPECT_NEAR(found[0].measured, 2560, 1e-6);
  EXPECT_TRUE(silent(panel(2312, 100), R::PanelTie));
  EXPECT_NEAR(findingsOf(panel(2311, 100), R::PanelTie).at(0).measured, 2311.111, 0.01);
  PanelWall silentOne = panel(100);
  silentOne.wall.panels[0].designShear.reset();
  EXPECT_TRUE(silent(silentOne, R::PanelTie));
}

// NDS 2018 Table 12E: a 5/8 bolt in a 1 1/2 in Douglas Fir-Larch sill carries 930 lb (928 by the equations), x 1.6 for
// wind or seismic. Two under a panel 56 in long: 2970 lb, 636 plf.
TEST(PlanRules, TheBoltsCarryTheShear) {
  const auto panel = [](double plf, const char* species = "Douglas Fir-Larch") {
    PanelWall bare = panelWall();
    bare.wall.sills[0].nominal = {2, 6};
    bare.wall.sills[0].species = species;
    bare.wall.panels[0].designShear = plf;
    addBolts(bare, {10, 30, 66, 90}); // two of them under the panel
    return bare;
  };
  EXPECT_TRUE(silent(panel(635), R::BoltShear));
  const Findings found = findingsOf(panel(640), R::BoltShear);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].level, Level::Ask);
  EXPECT_NEAR(found[0].measured, 2 * 928 * 1.6, 5);
  EXPECT_NEAR(found[0].limit, 640 * 56 / 12.0, 1e-9);
  EXPECT_TRUE(silent(panel(2000, ""), R::BoltShear)); // no species said
}

TEST(PlanRules, TheSillThatTheMarkCallsFor) {
  WallEndMark mark;
  mark.sill = Nominal{3, 6};
  EXPECT_TRUE(silent(panelWall(mark), R::SillMark));
  mark.sill = Nominal{2, 6};
  const PanelWall bare = panelWall(mark);
  EXPECT_TRUE(finds(bare, R::SillMark, {.pieces = {bare.sill}, .measured = 1, .region = {{0, 96}, {0.5, 6}, {0, 2.5}}}));
}

TEST(SillRules, NoLongerThanTheLumber) {
  EXPECT_TRUE(silent(bareWall(240), R::SillPiece));
  const BareWall bare = bareWall(240 + sixteenth);
  EXPECT_TRUE(finds(bare, R::SillPiece, {.level = Level::Watch, .pieces = {bare.sill}, .measured = 240 + sixteenth,
                                         .limit = 240, .region = {{0, 240 + sixteenth}, {0.5, 6}, {0, 2.5}}}));
}

// 5 1/2 of sill from 1/2 in lie on 8 in of concrete; on 6 in still, on 5 15/16 a sixteenth hangs over.
TEST(SillRules, WhollyOnConcrete) {
  const auto on = [](double thickness) {
    BareWall bare = bareWall();
    bare.wall.thickness = thickness;
    return bare;
  };
  EXPECT_TRUE(silent(on(6), R::SillConcrete));
  BareWall over = on(6 - sixteenth);
  EXPECT_TRUE(finds(over, R::SillConcrete, {.pieces = {over.sill}, .measured = sixteenth, .limit = 0,
                                            .region = {{0, 96}, {5.9375, 6}, {0, 2.5}}, .variant = 1}));
  over.job.limits.edit([](JobLimits& limits) { limits.sillOverhang = sixteenth; });
  EXPECT_TRUE(silent(over, R::SillConcrete));
}

TEST(SillRules, NotOverAStep) {
  BareWall bare = bareWall();
  PourStep step;
  step.id = takeId(bare.job);
  step.from = 60;
  step.to = 96;
  step.height = -8;
  bare.wall.steps.push_back(step);
  // The piece lies at the height of its middle, 48: from 60 on the concrete is 8 in lower.
  EXPECT_TRUE(finds(bare, R::SillConcrete, {.pieces = {bare.sill}, .measured = 8, .limit = 0,
                                            .region = {{60, 96}, {0.5, 6}, {-8, 0}}, .variant = 4}));
}

// Two walls at an outside corner, both with a 5 1/2 in sill 1/2 in in. The butting one starts at 1/2 + 5 1/2 = 6.
struct CornerWalls {
  Job job;
  Id first, second;
};
CornerWalls cornerWalls(double runsTo, double buttsFrom) {
  BareWall bare = bareWall();
  CornerWalls walls{bare.job, bare.wall.id, {}};
  Corner far;
  far.id = takeId(walls.job);
  far.at = {96, 120};
  walls.job.corners.edit([&](std::vector<Corner>& corners) { corners.push_back(far); });
  bare.wall.sills[0].to = 96 - runsTo;
  WallLine next = bare.wall;
  next.id = walls.second = takeId(walls.job);
  next.startCorner = bare.wall.endCorner;
  next.endCorner = far.id;
  next.startFraming = EndFraming::Butts;
  next.sills[0].id = takeId(walls.job);
  next.sills[0].from = buttsFrom;
  next.sills[0].to = 120;
  walls.job.walls.add(bare.wall);
  walls.job.walls.add(next);
  return walls;
}
Findings cornersOf(const CornerWalls& walls) {
  Findings all;
  for (const Id id : {walls.first, walls.second})
    for (const Finding& f : checkWall(layOut(walls.job, walls.job.walls.findPointer(id)), resolve(*walls.job.limits)))
      if (f.rule == R::SillCorner)
        all.push_back(f);
  return all;
}

TEST(SillRules, MeetAtACorner) {
  EXPECT_TRUE(cornersOf(cornerWalls(0.5, 6)).empty());
  EXPECT_TRUE(cornersOf(cornerWalls(0.5, 6.125)).empty());
  EXPECT_TRUE(cornersOf(cornerWalls(0.5, 5.875)).empty());
  const CornerWalls open = cornerWalls(0.5, 6.1875);
  const Findings gaps = cornersOf(open);
  ASSERT_EQ(gaps.size(), 1u); // told once, by the wall that butts
  EXPECT_EQ(gaps[0].wall, open.second);
  EXPECT_NEAR(gaps[0].measured, 0.1875, 1e-9);
  EXPECT_EQ(gaps[0].variant, 2);
  ASSERT_TRUE(gaps[0].correction);
  EXPECT_EQ(gaps[0].correction->field, Correction::Field::LeftEnd);
  EXPECT_NEAR(gaps[0].correction->by, -0.1875, 1e-9);
  const Findings overlaps = cornersOf(cornerWalls(0.5, 5.75));
  ASSERT_EQ(overlaps.size(), 1u);
  EXPECT_NEAR(overlaps[0].measured, 0.25, 1e-9);
  EXPECT_EQ(overlaps[0].variant, 0);
  // Both stop short: the corner itself, 5 1/2 by 5 1/2, is bare.
  const Findings bare = cornersOf(cornerWalls(6, 6));
  ASSERT_EQ(bare.size(), 1u);
  EXPECT_NEAR(bare[0].measured, 5.5, 1e-9);
}

TEST(WasherRules, LargeAndThickEnough) {
  const auto washer = [](double side, double thickness) {
    BareWall bare = bareWall();
    addBolt(bare, 48);
    bare.job.types.edit([&](HardwareTypes& types) {
      types.washers[0].along = side;
      types.washers[0].thickness = thickness;
    });
    return bare;
  };
  EXPECT_TRUE(silent(washer(3, 0.229), R::WasherSize));
  const Findings small = findingsOf(washer(3 - sixteenth, 0.229), R::WasherSize);
  ASSERT_EQ(small.size(), 1u);
  EXPECT_EQ(small[0].variant, 1);
  EXPECT_DOUBLE_EQ(small[0].measured, 2.9375);
  const Findings thin = findingsOf(washer(3, 0.1875), R::WasherSize);
  ASSERT_EQ(thin.size(), 1u);
  EXPECT_EQ(thin[0].variant, 2);
  EXPECT_DOUBLE_EQ(thin[0].limit, 0.229);
  // No tape shows 0.229: a sixteenth of it would ask for 1/4 in.
  EXPECT_EQ(label(bareWall().job, thin[0]), "WASHER 3/16\" < 0.229\"");
  EXPECT_TRUE(message(bareWall().job, thin[0]).ends_with("is 3/16\" thick; at least 0.229\" is asked for."))
      << message(bareWall().job, thin[0]);
  BareWall none = washer(3, 0.229);
  none.wall.bolts[0].washer = {};
  ASSERT_EQ(findingsOf(none, R::WasherSize).size(), 1u);
  EXPECT_EQ(findingsOf(none, R::WasherSize)[0].correction->field, Correction::Field::Washer);
  none.job.limits.edit([](JobLimits& limits) { limits.plateWashers = false; });
  EXPECT_TRUE(silent(none, R::WasherSize)); // the job does not call for them
}

// A 5/8 bolt: slot up to 13/16 wide and 1 3/4 long, a cut washer over it; slid up to (1 3/4 - 5/8) / 2 = 9/16.
TEST(WasherRules, SlotsThatACutWasherCovers) {
  const auto slotted = [](double width, double length, double shift = 0) {
    BareWall bare = bareWall();
    addBolt(bare, 48);
    bare.wall.bolts[0].washerShift = shift;
    bare.wall.bolts[0].cutWasher = true;
    bare.job.types.edit([&](HardwareTypes& types) {
      types.washers[0].slot = WasherSlot{width, length, SlotDirection::Across, {}};
    });
    return bare;
  };
  EXPECT_TRUE(silent(slotted(0.8125, 1.75, 0.5625), R::WasherSlot));
  const auto variant = [](const BareWall& bare) {
    const Findings found = findingsOf(bare, R::WasherSlot);
    return found.size() == 1 ? static_cast<int>(found[0].variant) : -1;
  };
  EXPECT_EQ(variant(slotted(0.875, 1.75)), 0);
  EXPECT_EQ(variant(slotted(0.8125, 1.8125)), 1);
  EXPECT_EQ(variant(slotted(0.8125, 1.75, -0.625)), 3);
  BareWall bare = slotted(0.8125, 1.75);
  bare.wall.bolts[0].cutWasher = false;
  EXPECT_EQ(variant(bare), 2);
  EXPECT_EQ(findingsOf(bare, R::WasherSlot)[0].correction->field, Correction::Field::CutWasher);
}

// The trap: a bolt in the middle of a 5 1/2 in sill leaves a 3 in washer 1 1/4 from the sheathed edge. Where the bolt
// may stand: 5.5 / 3 = 1.833 to 1.5 + 0.5 = 2 in from that edge (SDPWS 2021 4.3.6.4.3 and IRC 2024 R403.1.6).
TEST(WasherRules, TheTrapAndItsThreeWaysOut) {
  BareWall bare = bareWall();
  const Id bolt = addBolt(bare, 48);
  addPanel(bare, 20, 76, 500);
  WasherType larger = bare.job.types->washers[0], slotted = larger;
  larger.id = takeId(bare.job);
  larger.across = 4.5;
  slotted.id = takeId(bare.job);
  slotted.across = 3.5;
  slotted.slot = WasherSlot{0.8125, 1.75, SlotDirection::Across, {}};
  bare.job.types.edit([&](HardwareTypes& types) {
    types.washers.push_back(larger);
    types.washers.push_back(slotted);
  });
  const Findings found = findingsOf(bare, R::WasherSheathing);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_DOUBLE_EQ(found[0].measured, 1.25);
  ASSERT_TRUE(found[0].window);
  EXPECT_NEAR(found[0].window->from, 5.5 / 3, 1e-9);
  EXPECT_NEAR(found[0].window->to, 2, 1e-9);
  EXPECT_TRUE(near(found[0].correction, across(bolt, -0.75)));
  ASSERT_EQ(found[0].otherWays.size(), 2u);
  // 2.75 - 1.75 - 0.5 = 1/2 to slide; with the larger one 2.75 - 2.25 = 1/2 is left.
  EXPECT_EQ(found[0].otherWays[0], (Correction{Correction::Field::Washer, bolt, -0.5, slotted.id}));
  EXPECT_EQ(found[0].otherWays[1], (Correction{Correction::Field::Washer, bolt, 0, larger.id}));
}

TEST(RuleOverrides, ARuleCountsAsFarAsTheJobSays) {
  BareWall bare = bareWall();
  addBolt(bare, 48, 1.5); // out of the middle third: FIX
  const auto countsAs = [&](RuleCounts counts) {
    bare.job.limits.edit([&](JobLimits& limits) { limits.rules = {{"bolt.third", counts, "letter of the EOR", "", "", {}}}; });
    return findingsOf(bare, R::BoltThird);
  };
  ASSERT_EQ(findingsOf(bare, R::BoltThird).size(), 1u);
  EXPECT_EQ(countsAs(RuleCounts::Ask).at(0).level, Level::Ask);
  EXPECT_EQ(countsAs(RuleCounts::Watch).at(0).level, Level::Watch);
  EXPECT_EQ(countsAs(RuleCounts::Watch).at(0).ruleLevel, Level::Fix);
  EXPECT_TRUE(countsAs(RuleCounts::None).empty());
}

} // namespace
} // namespace sillwright
