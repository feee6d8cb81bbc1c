// Bars on a wall: ACI 318-19 25.2.1 (clear spacing), IRC 2024 R403.1.3.1 (near the top), IRC R404 as a county's
// checklist has it (beside openings).
#include "said.h"

namespace sillwright {
namespace {

using namespace published;
using R = RuleId;

void addBar(Job& job, WallLine& wall, int size, BarRun run, Point3 a, Point3 b) {
  Bar bar;
  bar.id = takeId(job);
  bar.run = run;
  bar.size = size;
  bar.planned = {a, b};
  wall.bars.push_back(bar);
}

// Parallel bars at least 1 in and their own diameter clear: 1 in for No. 3 to 8, which are 3/8 to 1 in thick. Two
// uprights from -20 to -4 in the middle of the wall.
TEST(Bars, AnInchClear) {
  for (int size = 3; size <= 8; ++size) {
    const double thick = size / 8.0, half = thick / 2;
    const auto clear = [&](double by) {
      return with(jobOf({}), [&](Job& job, WallLine& wall) {
        for (const double station : {40.0, 40 + thick + by})
          addBar(job, wall, size, BarRun::Upright, {station, 4, -20}, {station, 4, -4});
      });
    };
    EXPECT_TRUE(silent(clear(1 + sixteenth), R::BarClear)) << size;
    EXPECT_TRUE(silent(clear(1), R::BarClear)) << size;
    EXPECT_TRUE(says(
        clear(1 - sixteenth), R::BarClear,
        {Level::Watch, 0.9375, 1, {{40 + half, 40 + half + 0.9375}, {4 - half, 4 + half}, {-20 - half, -4 + half}}}));
  }
}

// Bars along the wall, one over the other.
TEST(Bars, AnInchClearOneOverTheOther) {
  const auto clear = [](double by) {
    return with(jobOf({}), [&](Job& job, WallLine& wall) {
      for (const double z : {-10.0, -10 - 0.5 - by})
        addBar(job, wall, 4, BarRun::Along, {4, 4, z}, {92, 4, z});
    });
  };
  EXPECT_TRUE(silent(clear(1), R::BarClear));
  EXPECT_TRUE(says(clear(1 - sixteenth), R::BarClear,
                   {Level::Watch, 0.9375, 1, {{3.75, 92.25}, {3.75, 4.25}, {-11.1875, -10.25}}}));
}

Job topped(int size, double z) {
  return with(jobOf({}), [&](Job& job, WallLine& wall) {
    job.limits.edit([](JobLimits& limits) { limits.topBar = true; });
    addBar(job, wall, size, BarRun::Along, {3, 4, z}, {93, 4, z});
  });
}

// One No. 4 within 12 in of the top. Where there is none the whole wall of 96 in is found.
TEST(Bars, ANumberFourWithinTwelveInchesOfTheTop) {
  const Said bare{Level::Fix, 96, 0, {{0, 96}, {0, 8}, {-12, 0}}};
  EXPECT_TRUE(silent(topped(4, -12 + sixteenth), R::BarTop));
  EXPECT_TRUE(silent(topped(4, -12), R::BarTop));
  EXPECT_TRUE(says(topped(4, -12 - sixteenth), R::BarTop, bare));
  EXPECT_TRUE(silent(topped(5, -6), R::BarTop));
  EXPECT_TRUE(says(topped(3, -6), R::BarTop, bare));
}

// An upright bar within 12 in of each side of an opening, where the job's options call for it. No footing: 24 high.
TEST(Bars, AnUprightBarWithinTwelveInchesOfAnOpening) {
  const auto bars = [](double left, double right) {
    return with(jobOf({}), [&](Job& job, WallLine& wall) {
      job.limits.edit([](JobLimits& limits) { limits.openingBars = true; });
      Opening door;
      door.id = takeId(job);
      door.from = 30;
      door.to = 66;
      wall.openings.push_back(door);
      for (const double station : {left, right})
        addBar(job, wall, 4, BarRun::Upright, {station, 4, -20}, {station, 4, -3});
    });
  };
  EXPECT_TRUE(silent(bars(18 + sixteenth, 78 - sixteenth), R::BarOpening));
  EXPECT_TRUE(silent(bars(18, 78), R::BarOpening));
  EXPECT_TRUE(says(bars(18 - sixteenth, 78), R::BarOpening, {Level::Watch, 12.0625, 12, {{18, 30}, {0, 8}, {-24, 0}}}));
  EXPECT_TRUE(says(bars(18, 78 + sixteenth), R::BarOpening, {Level::Watch, 12.0625, 12, {{66, 78}, {0, 8}, {-24, 0}}}));
}

} // namespace
} // namespace sillwright
