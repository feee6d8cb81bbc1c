// What the plan's wall-end schedule says, and what follows from its numbers: the tie force of a published example,
// cells of NDS 2018 Table 12E and the statics of a lever, all of them through the checker on a wall that is built.
#include "said.h"

namespace sillwright {
namespace {

using namespace published;
using R = RuleId;

// Straps on 4x6 posts at two stations of a wall; the plan's mark HD stands at the left end of its panel. The strap: 2
// 1/2 wide and 1/10 thick at the outside face, 10 into the concrete and 20 up. A post is 3 1/2 along the wall, and on a
// 2x6 sill from 1 1/2 to 96 - 3 = 93 high.
struct HeldPanel {
  double length = 96;
  double left = 4;
  double right = 92;
};

Job held(const HeldPanel& plain, const WallEndMark& called) {
  return with(jobOf({.length = plain.length}), [&](Job& job, WallLine& wall) {
    StrapType type;
    type.id = takeId(job);
    type.plateWidth = 2.5;
    type.plateThickness = 0.1;
    type.profile = {{-0.05, 0}, {-0.05, -10}, {5, -10}};
    type.exposedLength = 20;
    job.types.edit([&](HardwareTypes& types) { types.straps.push_back(type); });
    for (const double station : {plain.left, plain.right}) {
      Column post;
      post.id = takeId(job);
      post.station = station;
      post.makeUp = {1, {4, 6}};
      wall.columns.push_back(post);
      Strap strap;
      strap.id = takeId(job);
      strap.type = type.id;
      strap.station = station;
      strap.column = post.id;
      wall.straps.push_back(strap);
    }
    WallEndMark mark = called;
    mark.id = takeId(job);
    mark.mark = "HD";
    job.marks = Shared<std::vector<WallEndMark>>({mark});
    wall.panels[0].leftMark = "HD";
  });
}

constexpr Box3 leftStrap{{2.75, 5.25}, {-0.1, 0}, {-10, 20}};

// Plans: the strap type that the mark names, and no other.
TEST(Plans, TheStrapOfTheMark) {
  Job job = held({}, {});
  StrapType other = job.types->straps[0];
  other.id = takeId(job);
  job.types.edit([&](HardwareTypes& types) { types.straps.push_back(other); });
  const auto calledFor = [&](Id type) {
    job.marks.edit([&](auto& marks) { marks[0].strapType = type; });
    return job;
  };
  EXPECT_TRUE(silent(calledFor({}), R::StrapType));
  EXPECT_TRUE(silent(calledFor(job.types->straps[0].id), R::StrapType));
  EXPECT_TRUE(says(calledFor(other.id), R::StrapType, {Level::Fix, 1, 0, leftStrap}));
}

// Type: the columns it may be nailed to; both straps are on a 4x6. Their plates stand 20 up from the pour line.
TEST(Plans, TheColumnsOfTheStrapsType) {
  const auto mayBeOn = [](std::vector<MakeUp> columns) {
    Job job = held({}, {});
    job.types.edit([&](HardwareTypes& types) { types.straps[0].columns = std::move(columns); });
    return findingsOf(job, R::StrapType);
  };
  EXPECT_TRUE(mayBeOn({}).empty());
  EXPECT_TRUE(mayBeOn({{2, {2, 6}}, {1, {4, 6}}}).empty());
  for (const MakeUp other : {MakeUp{2, {2, 6}}, MakeUp{1, {6, 6}}, MakeUp{1, {4, 4}}}) {
    const Findings found = mayBeOn({other});
    ASSERT_EQ(found.size(), 2u);
    EXPECT_EQ(found[0].level, Level::Fix);
    EXPECT_TRUE(alike(saidOf(found[0]), {Level::Fix, 1, 0, {{2.75, 5.25}, {-0.1, 0}, {0, 20}}}, 0));
    EXPECT_TRUE(alike(saidOf(found[1]), {Level::Fix, 1, 0, {{90.75, 93.25}, {-0.1, 0}, {0, 20}}}, 0));
  }
}

// Plans: 4,500 lb at the mark. A strap is stated to hold a pound more, as much, a pound less.
TEST(Plans, TheCapacityOfTheMark) {
  const auto stated = [](double pounds) {
    WallEndMark mark;
    mark.requiredCapacity = 4500;
    Job job = held({}, mark);
    job.types.edit([&](HardwareTypes& types) { types.straps[0].statedCapacity = pounds; });
    return job;
  };
  EXPECT_TRUE(silent(stated(4501), R::StrapCapacity));
  EXPECT_TRUE(silent(stated(4500), R::StrapCapacity));
  EXPECT_TRUE(says(stated(4499), R::StrapCapacity, {Level::Ask, 4499, 4500, leftStrap}));
}

// Plans: the make-up of the column.
TEST(Plans, TheColumnOfTheMark) {
  const auto calledFor = [](MakeUp makeUp) {
    WallEndMark mark;
    mark.column = makeUp;
    return held({}, mark);
  };
  EXPECT_TRUE(silent(calledFor({1, {4, 6}}), R::ColumnPlan));
  for (const MakeUp other : {MakeUp{1, {6, 6}}, MakeUp{1, {4, 4}}, MakeUp{2, {2, 6}}, MakeUp{2, {4, 6}}})
    EXPECT_TRUE(says(calledFor(other), R::ColumnPlan, {Level::Fix, 1, 0, {{2.25, 5.75}, {0, 5.5}, {1.5, 93}}}));
}

// Plans: the nominal size of the sill, both numbers of it.
TEST(Plans, TheSillOfTheMark) {
  const auto calledFor = [](Nominal size) {
    WallEndMark mark;
    mark.sill = size;
    return held({}, mark);
  };
  EXPECT_TRUE(silent(calledFor({2, 6}), R::SillMark));
  for (const Nominal other : {Nominal{3, 6}, Nominal{2, 4}, Nominal{2, 8}})
    EXPECT_TRUE(says(calledFor(other), R::SillMark, {Level::Fix, 1, 0, {{0, 96}, {0, 5.5}, {0, 1.5}}}));
}

// Statics: for one overturning moment the tie force goes as 1 / lever. 96 in on the plans: 2 % more at 94.118, 5 % more
// at 91.429. On the tape 94 1/8 is still right (1.992 %), 94 1/16 is not (2.060 %); 91 7/16 is watched (4.990 %), 91
// 3/8 is asked (5.062 %).
TEST(Plans, TwoAndFivePercentOfTheLever) {
  const auto apart = [](double lever) {
    return with(held({100, 2, 2 + lever}, {}), [](Job&, WallLine& wall) { wall.panels[0].lever = 96; });
  };
  const auto missing = [](double lever) { return Box3{{2 + lever, 98}, {0, 8}, {-6, 12}}; };
  EXPECT_TRUE(silent(apart(96), R::PanelLever));
  EXPECT_TRUE(silent(apart(94.125), R::PanelLever));
  EXPECT_TRUE(says(apart(94.0625), R::PanelLever, {Level::Watch, 2.060, 2, missing(94.0625)}, 0.0005));
  EXPECT_TRUE(says(apart(91.4375), R::PanelLever, {Level::Watch, 4.990, 2, missing(91.4375)}, 0.0005));
  EXPECT_TRUE(says(apart(91.375), R::PanelLever, {Level::Ask, 5.062, 5, missing(91.375)}, 0.0005));
}

// Wood Products Council, five-storey wood-frame design example, December 2017, the top storey: a wall 29 ft long and 10
// ft high, 12,989 lb at its top, 156 plf of dead load, d = 27.04 ft; 0.7 of the force and 0.43 of the resisting moment
// make T = 2,319 lb. Here a panel of 348 by 120 with straps 324.48 apart, 11.76 in from its ends.
TEST(Plans, TheTieForceOfAPublishedWall) {
  const auto required = [](double pounds) {
    WallEndMark mark;
    mark.requiredCapacity = pounds;
    return with(held({348, 11.76, 336.24}, mark), [](Job&, WallLine& wall) {
      wall.panels[0].height = 120;
      wall.panels[0].designShear = 0.7 * 12989 / 29;
      wall.panels[0].deadLoad = 0.43 * 156;
    });
  };
  const Box3 foot{{10.26, 13.26}, {0, 8}, {-6, 12}};
  EXPECT_TRUE(silent(required(2320), R::PanelTie));
  EXPECT_TRUE(says(required(2318), R::PanelTie, {Level::Ask, 2319, 2318, foot}, 1));
}

// SDPWS 2021 4.3.6.1: T = v h where the lever is the whole length: 400 plf, 8 ft high, 3,200 lb. With 100 plf of dead
// load on 8 ft less 100 x 8 / 2 = 400 lb (wood design manual M14.3).
TEST(Plans, TheTieForceIsShearTimesHeight) {
  const auto required = [](double pounds, std::optional<double> dead = {}) {
    WallEndMark mark;
    mark.requiredCapacity = pounds;
    return with(held({96, 0, 96}, mark), [&](Job&, WallLine& wall) {
      wall.panels[0].designShear = 400;
      wall.panels[0].deadLoad = dead;
    });
  };
  const Box3 foot{{-1.5, 1.5}, {0, 8}, {-6, 12}};
  EXPECT_TRUE(silent(required(3201), R::PanelTie));
  EXPECT_TRUE(silent(required(3200), R::PanelTie));
  EXPECT_TRUE(says(required(3199), R::PanelTie, {Level::Ask, 3200, 3199, foot}, 1e-6));
  EXPECT_TRUE(silent(required(2800, 100), R::PanelTie));
  EXPECT_TRUE(says(required(2799, 100), R::PanelTie, {Level::Ask, 2800, 2799, foot}, 1e-6));
}

// "Overturning Forces", an openly readable article on seismic retrofit: 3,600 lb on a wall 12 ft long and 8 ft high are
// 300 plf along every edge and 2,400 lb at its ends.
TEST(Plans, TheTieForceOfARetrofitWall) {
  const auto required = [](double pounds) {
    WallEndMark mark;
    mark.requiredCapacity = pounds;
    return with(held({144, 0, 144}, mark), [](Job&, WallLine& wall) { wall.panels[0].designShear = 3600.0 / 12; });
  };
  EXPECT_TRUE(silent(required(2400), R::PanelTie));
  EXPECT_TRUE(says(required(2399), R::PanelTie, {Level::Ask, 2400, 2399, {{-1.5, 1.5}, {0, 8}, {-6, 12}}}, 1e-6));
}

Job bolted(std::string_view species, double diameter, const std::vector<double>& bolts, double length, double plf) {
  return with(jobOf({.length = length, .boltDiameter = diameter, .bolts = bolts}), [&](Job&, WallLine& wall) {
    wall.sills[0].species = species;
    wall.panels[0].designShear = plf;
  });
}

// A cell of the table, to 10 lb, times 1.6 (NDS 2018 Table 2.3.2) times the bolts under a panel of 8 ft. The program
// works to the pound: 5 x 1.6 = 8 lb a bolt to either side. A pound more than that must be asked, a pound less not.
void expectCell(std::string_view species, double diameter, double cell) {
  const std::vector<double> rows[]{{12, 84}, {12, 48, 84}, {12, 36, 60, 84}};
  for (const std::vector<double>& bolts : rows) {
    const double number = static_cast<double>(bolts.size());
    const double held = number * 1.6 * cell, rounding = number * 8;
    EXPECT_TRUE(silent(bolted(species, diameter, bolts, 96, (held - rounding - 1) / 8), R::BoltShear));
    const double shear = held + rounding + 1;
    EXPECT_TRUE(says(bolted(species, diameter, bolts, 96, shear / 8), R::BoltShear,
                     {Level::Ask, held, shear, {{0, 96}, {0, 5.5}, {0, 1.5}}}, rounding));
  }
}

// NDS 2018 Table 12E, 1 1/2 in sill, along the grain. Douglas Fir-Larch 650 and 930 lb (published); Spruce-Pine-Fir 590
// and 850 (read in a review of the table, as 944 and 1,360 lb times 1.6).
TEST(Plans, BoltsCarryWhatTable12EHas) {
  expectCell("Douglas Fir-Larch", 0.5, 650);
  expectCell("Douglas Fir-Larch", 0.625, 930);
  expectCell("Spruce-Pine-Fir", 0.5, 590);
  expectCell("Spruce-Pine-Fir", 0.625, 850);
}

// From memory: Southern Pine 680 and 970, Hem-Fir 590 and 860 lb.
TEST(Plans, BoltsCarryWhatTable12EHasFromMemory) {
  expectCell("Southern Pine", 0.5, 680);
  expectCell("Southern Pine", 0.625, 970);
  expectCell("Hem-Fir", 0.5, 590);
  expectCell("Hem-Fir", 0.625, 860);
}

// The published review of that table: 5/8 bolts at 20 in on centre, 1,488 lb each, 893 plf. Five of them under 100 in;
// 8 lb of rounding a bolt are 4.8 plf.
TEST(Plans, FiveEighthsBoltsAtTwentyInches) {
  const auto shear = [](double plf) {
    return findingsOf(bolted("Douglas Fir-Larch", 0.625, {10, 30, 50, 70, 90}, 100, plf), R::BoltShear).size();
  };
  EXPECT_EQ(shear(893 - 5), 0u);
  EXPECT_EQ(shear(893 + 5), 1u);
}

} // namespace
} // namespace sillwright
