#include <gtest/gtest.h>

#include "core/rules/checker.h"
#include "core/rules/correction.h"
#include "core/rules/wording.h"
#include "rules_wall.h"

namespace sillwright {
namespace {

using testing_support::wallWithStrapsAt;

std::vector<std::string> labels(const Job& job, Level atLeast = Level::Watch) {
  std::vector<std::string> all;
  for (const auto& wall : checkAll(job))
    for (const Finding& finding : wall->findings)
      if (finding.level <= atLeast && finding.rule != RuleId::StrapNailEdge)
        all.push_back(std::string(word(finding.level)) + " " + markedLabel(job, finding) + " | " +
                      correctionShort(job, finding));
  return all;
}

TEST(Rules, TableIsInOrder) {
  ASSERT_EQ(ruleBook().size(), static_cast<std::size_t>(RuleId::Count));
  for (std::size_t i = 0; i < ruleBook().size(); ++i)
    EXPECT_EQ(static_cast<std::size_t>(ruleBook()[i].id), i);
}

TEST(Rules, DemoWallAtWork) {
  const auto demo = wallWithStrapsAt(1.625, 44.5, 242.875, 285.25);
  const std::vector<std::string> expected{"FIX S1 · EDGE 3/8\" < 1/2\" | right 1/8\"",
                                          "ASK S2 · 8 NAILS ON THE SEAM | right 1/2\"",
                                          "WATCH S4 · BAR V18 · 5/8\" < 1\" | right 3/8\""};
  EXPECT_EQ(labels(demo.job), expected);
}

TEST(Rules, DemoWallAsPlannedTouchesABar) {
  const auto demo = wallWithStrapsAt(2.75, 45, 243, 285.25);
  const auto fixes = labels(demo.job, Level::Fix);
  ASSERT_EQ(fixes.size(), 1u);
  EXPECT_TRUE(fixes[0].starts_with("FIX S1 · TOUCHES BAR V1 |")) << fixes[0];
}

// S1 on bar V1 and half off its post: clear of the bar to the right, all of its nails would be off. That is no cure.
TEST(Rules, NoCureTakesMoreNailsOffTheColumn) {
  const auto demo = wallWithStrapsAt(5.6875, 45, 242.875, 285.25);
  const auto nailsOff = [&](const WallLine& wall) {
    Job job = demo.job;
    job.walls.replace(wall);
    const auto checked = checkAll(job).front();
    for (const Finding& finding : checked->findings)
      if (finding.rule == RuleId::StrapColumn && finding.pieces[0] == demo.s1)
        return finding.measured;
    return 0.0;
  };
  const WallLine& wall = demo.job.walls[0];
  ASSERT_EQ(nailsOff(wall), 8);
  bool touches = false;
  const auto found = checkAll(demo.job).front();
  for (const Finding& finding : found->findings)
    if (finding.rule == RuleId::StrapSteel && finding.pieces[0] == demo.s1) {
      touches = touches || finding.level == Level::Fix;
      if (finding.correction) {
        EXPECT_LE(nailsOff(corrected(wall, *finding.correction)), 8);
      }
    }
  EXPECT_TRUE(touches);
}

TEST(Rules, UpdatesOnlyWhatChanged) {
  auto demo = wallWithStrapsAt(1.625, 44.5, 242.875, 285.25);
  Checker checker;
  checker.update(demo.job);
  EXPECT_EQ(checker.lastChecked(), 1u);
  checker.update(demo.job);
  EXPECT_EQ(checker.lastChecked(), 0u);
  WallLine wall = *demo.job.walls.find(demo.wall);
  wall.straps[0].station = 1.75;
  demo.job.walls.replace(wall);
  checker.update(demo.job);
  EXPECT_EQ(checker.counts().fix, 0);
  EXPECT_EQ(checker.wall(demo.wall)->findings, checkAll(demo.job)[0]->findings);
}

} // namespace
} // namespace sillwright
