// What a correction promises, held against the whole job checked anew, on jobs in which nothing is right.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <functional>
#include <random>

#include "core/base/tolerance.h"
#include "core/rules/checker.h"
#include "core/rules/correction.h"
#include "core/rules/rule_book.h"
#include "tests/support/broken_job.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

bool sameMatter(const Finding& a, const Finding& b) {
  return a.rule == b.rule && a.variant == b.variant && a.pieces == b.pieces;
}

// The wall's findings once the way is gone so far.
Findings after(const Job& job, const CheckedWall& wall, const Correction& way) {
  const auto done = std::make_shared<const WallLine>(corrected(*wall.layout.wall, way));
  return checkWall(layOut(done, job.types.pointer(), job.limits.pointer(), job.marks.pointer(), wall.layout.place),
                   resolve(*job.limits));
}

struct Visit {
  const Job& job;
  const std::vector<std::shared_ptr<const CheckedWall>>& walls;
  const CheckedWall& wall;
  const Finding& finding;
  const Correction& way;
};

void forManyWays(const std::function<void(const Visit&)>& visit) {
  std::mt19937 random(77);
  for (std::uint64_t seed = 1; seed <= 6; ++seed) {
    const Job job = broken(seed == 1   ? support::boatShedFrontSteelMoved()
                           : seed == 2 ? support::ridgeHouse()
                                       : generateJob(seed, 120),
                           random);
    const auto walls = checkAll(job);
    for (const auto& wall : walls)
      for (const Finding& finding : wall->findings)
        for (const Correction& way : allWays(finding)) {
          SCOPED_TRACE(wall->layout.wall->mark + ": " + std::string(rule(finding.rule).name) + ", measured " +
                       std::to_string(finding.measured) + ", field " + std::to_string(static_cast<int>(way.field)) +
                       " by " + std::to_string(way.by));
          visit({job, walls, *wall, finding, way});
        }
  }
}

bool isNewFix(const Finding& now, const Findings& before) {
  return now.level == Level::Fix && std::none_of(before.begin(), before.end(), [&](const Finding& old) {
           return old.level == Level::Fix && sameMatter(old, now);
         });
}

TEST(Corrections, cureTheirFindingAndBringNoOtherFixAnywhereInTheJob) {
  std::size_t ways = 0;
  forManyWays([&](const Visit& v) {
    ++ways;
    Job done = v.job;
    done.walls.replace(corrected(*v.wall.layout.wall, v.way));
    for (std::size_t i = 0; i < v.walls.size(); ++i) {
      const WallPlace place = placeOf(done, done.walls[i]);
      const bool own = done.walls[i].id == v.finding.wall;
      if (!own && place == v.walls[i]->layout.place)
        continue; // nothing that it sees is different
      const Findings now = checkWall(layOut(done, done.walls.pointer(i)), resolve(*done.limits));
      for (const Finding& each : now) {
        EXPECT_FALSE(own && sameMatter(each, v.finding) && each.level <= v.finding.level) << each.measured;
        EXPECT_FALSE(isNewFix(each, v.walls[i]->findings))
            << done.walls[i].mark << ": " << rule(each.rule).name << " " << each.measured << " of " << each.limit;
      }
    }
  });
  EXPECT_GT(ways, 700u);
}

bool goesByAmount(const Correction& way) {
  using Field = Correction::Field;
  return way.field != Field::Hook && way.field != Field::Washer && way.field != Field::CutWasher;
}

// How far past its limit the worst of that matter still is; nothing where it is gone.
double worstPast(const Findings& findings, const Finding& matter) {
  double worst = 0;
  for (const Finding& now : findings)
    if (sameMatter(now, matter) && now.ruleLevel <= matter.ruleLevel)
      worst = std::max(worst, now.wanted == Wanted::AtLeast ? now.limit - now.measured : now.measured - now.limit);
  return worst;
}

TEST(Corrections, neverMakeTheMeasureWorseOnTheWay) {
  std::size_t ways = 0, direct = 0, past = 0;
  forManyWays([&](const Visit& v) {
    if (!goesByAmount(v.way) || v.finding.unit == Unit::Count || ++ways % 2 == 0) // every other will do
      return;
    const double start = worstPast(v.wall.findings, v.finding);
    std::vector<double> on;
    for (const double share : {0.0625, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1.0}) {
      Correction part = v.way;
      part.by *= share;
      on.push_back(worstPast(after(v.job, v.wall, part), v.finding));
    }
    EXPECT_LE(on.back(), start + tolerance::same);
    const bool worse = *std::max_element(on.begin(), on.end()) > start + tolerance::same;
    EXPECT_EQ(worse, v.way.past);
    EXPECT_FALSE(v.way.past && v.finding.correction == v.way) << "only another way may go past";
    ++(worse ? past : direct);
  });
  EXPECT_GT(direct, 150u);
  EXPECT_GT(past, 0u);
}

} // namespace
} // namespace sillwright
