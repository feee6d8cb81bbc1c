// What rules wait for: named while it is missing, gone once it is entered, and silent about whatever nobody needs.
#include "core/rules/waiting.h"

#include "bare_wall.h"
#include "core/rules/rule_book.h"

namespace sillwright {
namespace {

using namespace testing_support;
using R = RuleId;

Job jobOf(const BareWall& bare) {
  Job job = bare.job;
  job.walls.add(bare.wall);
  return job;
}

std::string words(const Job& job, RuleId id) {
  std::string all;
  for (const Waiting& waiting : waitsFor(job, id))
    all += waitingWords(waiting) + "\n";
  return all;
}
std::string words(const BareWall& bare, RuleId id) { return words(jobOf(bare), id); }

Id addStrap(BareWall& bare, double station, const char* mark) {
  Strap strap;
  strap.id = takeId(bare.job);
  strap.mark = mark;
  strap.type = bare.strap;
  strap.station = station;
  bare.wall.straps.push_back(strap);
  return strap.id;
}

void read(BareWall& bare, Id piece, std::optional<double> plumb) {
  Reading reading;
  reading.piece = piece;
  reading.plumb = plumb;
  bare.wall.readings.push_back(reading);
}

void setMark(BareWall& bare, const std::function<void(WallEndMark&)>& change) {
  bare.job.marks.edit([&](std::vector<WallEndMark>& marks) {
    marks.clear();
    WallEndMark mark;
    mark.id = Id{9000};
    mark.mark = "HD9";
    change(mark);
    marks.push_back(mark);
  });
}

TEST(Waiting, PlumbIsWaitedForUntilItIsRead) {
  BareWall bare = bareWall();
  bare.wall.mark = "A";
  EXPECT_EQ(words(bare, R::StrapPlumb), "");
  const Id s1 = addStrap(bare, 20, "S1"), s2 = addStrap(bare, 60, "S2");
  EXPECT_EQ(words(bare, R::StrapPlumb), "Waits for a plumb reading of 2 straps: S1, wall A; S2, wall A.\n");
  read(bare, s1, 0.0); // read, and plumb
  read(bare, s2, std::nullopt);
  EXPECT_EQ(words(bare, R::StrapPlumb), "Waits for a plumb reading of strap S2, wall A.\n");
  const std::vector<Waiting> waits = waitsFor(jobOf(bare), R::StrapPlumb);
  ASSERT_EQ(waits.size(), 1u);
  EXPECT_EQ(waits[0].first[0].at, (PieceRef{bare.wall.id, s2}));
  bare.wall.readings[1].plumb = 0.25;
  EXPECT_EQ(words(bare, R::StrapPlumb), "");
}

TEST(Waiting, NamesAFewAndCountsTheRest) {
  BareWall bare = bareWall();
  bare.wall.mark = "A";
  for (int i = 0; i < 7; ++i)
    addStrap(bare, 10 + 10 * i, "");
  EXPECT_EQ(words(bare, R::StrapPlumb),
            "Waits for a plumb reading of 7 straps: one without a mark, wall A; one without a mark, wall A; one without a "
            "mark, wall A; one without a mark, wall A; and 3 more.\n");
}

TEST(Waiting, TheSchedulesLinesOneByOne) {
  BareWall bare = bareWall();
  setMark(bare, [](WallEndMark&) {});
  EXPECT_EQ(words(bare, R::StrapMissing), "") << "no panel, nothing to hold down";
  addPanel(bare, 0, 48);
  const std::string none = "No end of a panel has a mark of the plan's wall-end schedule.\n";
  for (const RuleId id : {R::StrapMissing, R::StrapType, R::ColumnPlan, R::SillMark})
    EXPECT_EQ(words(bare, id), none);
  bare.wall.panels[0].leftMark = "HD9";
  EXPECT_EQ(words(bare, R::StrapMissing), "Waits for the strap or rod type of mark HD9.\n");
  EXPECT_EQ(words(bare, R::ColumnPlan), "Waits for the make-up of the column of mark HD9.\n");
  EXPECT_EQ(words(bare, R::SillMark), "Waits for the size of the sill of mark HD9.\n");
  EXPECT_EQ(words(bare, R::StrapCapacity), "Waits for the required capacity of mark HD9.\n");
  setMark(bare, [&](WallEndMark& mark) {
    mark.strapType = bare.strap;
    mark.column = MakeUp{2, {2, 6}};
    mark.sill = Nominal{2, 6};
    mark.requiredCapacity = 1000;
  });
  for (const RuleId id : {R::StrapMissing, R::StrapType, R::ColumnPlan, R::SillMark, R::StrapCapacity})
    EXPECT_EQ(words(bare, id), "") << rule(id).name;
}

TEST(Waiting, OnlyTypesThatHangSomewhere) {
  BareWall bare = bareWall();
  addPanel(bare, 0, 48);
  bare.wall.panels[0].leftMark = "HD9";
  setMark(bare, [](WallEndMark& mark) { mark.requiredCapacity = 1000; });
  bare.job.types.edit([](HardwareTypes& types) {
    types.straps[0].name = "Strap X";
    types.straps[0].statedCapacity.reset();
    types.straps[0].nails.nailLength = 0;
    types.bolts[0].name = "Bolt X";
    types.bolts[0].threadLength = 0;
  });
  EXPECT_EQ(words(bare, R::StrapCapacity), "");
  EXPECT_EQ(words(bare, R::StrapNailDepth), "");
  EXPECT_EQ(words(bare, R::BoltRunOut), "");
  addStrap(bare, 10, "S1");
  addBolt(bare, 30);
  EXPECT_EQ(words(bare, R::StrapCapacity), "Waits for the stated capacity of strap type Strap X.\n");
  EXPECT_EQ(words(bare, R::StrapNailDepth), "Waits for the length and diameter of the nail of strap type Strap X.\n");
  EXPECT_EQ(words(bare, R::BoltRunOut), "Waits for the thread length of bolt type Bolt X.\n");
  bare.job.types.edit([](HardwareTypes& types) { types.straps[0].nails.count = 0; });
  EXPECT_EQ(words(bare, R::StrapColumn), "Waits for the nail pattern of strap type Strap X.\n");
}

TEST(Waiting, LoadsOfThePanel) {
  BareWall bare = bareWall();
  bare.wall.mark = "A";
  bare.wall.sills[0].mark = "L1";
  addPanel(bare, 0, 48);
  bare.wall.panels[0].mark = "P1";
  EXPECT_EQ(words(bare, R::BoltShear), "Waits for the shear to carry of panel P1, wall A.\n");
  EXPECT_EQ(words(bare, R::WasherSheathing), "Waits for the nominal unit shear capacity of panel P1, wall A.\n");
  EXPECT_EQ(words(bare, R::PanelLever), "Waits for the lever on the plans of panel P1, wall A.\n");
  bare.wall.panels[0].designShear = 300;
  bare.wall.panels[0].unitShear = 600;
  bare.wall.panels[0].lever = 40;
  bare.wall.sills[0].species = "";
  EXPECT_EQ(words(bare, R::BoltShear), "Waits for the species of sill L1, wall A.\n");
  bare.wall.sills[0].species = "Douglas Fir-Larch";
  for (const RuleId id : {R::BoltShear, R::WasherSheathing, R::PanelLever})
    EXPECT_EQ(words(bare, id), "") << rule(id).name;
}

TEST(Waiting, OptionsAndReadingsOfTheForms) {
  BareWall bare = bareWall();
  bare.wall.mark = "A";
  EXPECT_EQ(words(bare, R::BarTop), "The job's options do not call for a bar near the top.\n");
  EXPECT_EQ(words(bare, R::BarOpening), "The job's options do not call for bars beside openings.\n");
  EXPECT_EQ(words(bare, R::WasherSize), "");
  EXPECT_EQ(words(bare, R::PourShot), "Waits for grade shots of wall A.\n");
  EXPECT_EQ(words(bare, R::FormThickness), "Waits for a form width of wall A.\n");
  EXPECT_EQ(words(bare, R::FormSquare), "No diagonal has been taped yet.\n");
  bare.job.limits.edit([](JobLimits& limits) {
    limits.topBar = limits.openingBars = true;
    limits.plateWashers = false;
  });
  GradeShot shot;
  shot.id = takeId(bare.job);
  bare.wall.shots.push_back(shot);
  EXPECT_EQ(words(bare, R::PourShot), "");
  EXPECT_EQ(words(bare, R::FormThickness), "Waits for a form width of wall A.\n");
  bare.wall.shots[0].width = 8.0;
  bare.job.diagonals.edit([](std::vector<Diagonal>& all) { all.push_back({}); });
  for (const RuleId id : {R::BarTop, R::BarOpening, R::FormThickness, R::FormSquare})
    EXPECT_EQ(words(bare, id), "") << rule(id).name;
  EXPECT_EQ(words(bare, R::WasherSize), "The job's options do not call for plate washers.\n");
}

} // namespace
} // namespace sillwright
