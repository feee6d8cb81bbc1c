// Whatever is found, there are words for it: a label, a sentence and a place, for every rule of the book at every
// level.
#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>

#include "core/model/lookup.h"
#include "core/rules/checker.h"
#include "core/rules/correction.h"
#include "core/rules/rule_book.h"
#include "core/rules/wording.h"
#include "strap_wall.h"
#include "tests/support/broken_job.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

using Seen = std::set<std::pair<RuleId, Level>>;

// No words are missing: nothing is empty or ends in a blank, and no part left a gap.
testing::AssertionResult saysSomething(const std::string& text) {
  const bool gap = text.find("  ") != std::string::npos || text.find(" ,") != std::string::npos ||
                   text.find(" ;") != std::string::npos || text.find(" .") != std::string::npos;
  if (text.empty() || text.front() == ' ' || text.back() == ' ' || gap)
    return testing::AssertionFailure() << '"' << text << '"';
  return testing::AssertionSuccess();
}

void expectWords(const Job& job, const Finding& f) {
  SCOPED_TRACE(std::string(rule(f.rule).name) + ", variant " + std::to_string(f.variant) + ", " +
               std::string(word(f.level)));
  EXPECT_TRUE(saysSomething(label(job, f)));
  EXPECT_TRUE(saysSomething(markedLabel(job, f)));
  EXPECT_TRUE(saysSomething(whereabouts(job, f)));
  EXPECT_TRUE(saysSomething(sourceWords(job, f)));
  const std::string sentence = message(job, f);
  EXPECT_TRUE(saysSomething(sentence));
  EXPECT_TRUE(sentence.ends_with('.') && !sentence.ends_with("..")) << sentence;
  EXPECT_EQ(correctionWords(job, f).empty(), !firstWay(f).has_value());
  EXPECT_EQ(correctionShort(job, f).empty(), !firstWay(f).has_value());
  for (const std::string& text : {label(job, f), whereabouts(job, f), sentence})
    EXPECT_EQ(text.find("nan"), std::string::npos) << text;
}

void expectWords(const Job& job, Seen& seen, double lean = 0) {
  const ResolvedLimits limits = resolve(*job.limits);
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    WallLayout layout = layOut(job, job.walls.pointer(i));
    for (StrapBody& strap : layout.straps)
      strap.lean = lean;
    for (const Finding& finding : checkWall(layout, limits)) {
      expectWords(job, finding);
      seen.insert({finding.rule, finding.level});
    }
  }
}

// The same job with no mark on anything, and in millimetres.
Job unmarked(Job job) {
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    WallLine wall = job.walls[i];
    wall.mark.clear();
    forEachList(wall, [](auto& list) {
      for (auto& piece : list)
        piece.mark.clear();
    });
    job.walls.replace(wall);
  }
  job.units = LengthStyle::Millimetres;
  return job;
}

TEST(RuleWords, areThereForEveryRuleAtEveryLevel) {
  std::mt19937 random(11);
  Seen seen;
  const std::vector<Job> samples{support::boatShedFront(), support::boatShedFrontSteelMoved(), support::ridgeHouse()};
  for (const Job& job : samples)
    expectWords(job, seen);
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    expectWords(generateJob(seed, 150), seen);
    const Job worse = broken(generateJob(seed, 150), random);
    expectWords(worse, seen);
    expectWords(unmarked(worse), seen);
    for (const Job& job : samples)
      expectWords(broken(job, random), seen);
  }
  // Straps come out of plumb only when they are set.
  for (const Job& job : samples)
    expectWords(job, seen, 1.0 / 8);
  // A door where rods stand.
  Job door = support::ridgeHouse();
  for (std::size_t i = 0; i < door.walls.size(); ++i)
    if (WallLine wall = door.walls[i]; !wall.rods.empty()) {
      wall.openings.front().kind = OpeningKind::Door;
      wall.openings.front().from = 1;
      wall.openings.front().to = 30;
      door.walls.replace(wall);
    }
  expectWords(door, seen);
  for (const RuleRow& row : ruleBook())
    for (const Level level : row.levels)
      EXPECT_TRUE(seen.contains({row.id, level}))
          << row.name << ' ' << word(level) << " was never found: no words tried";
}

// The panel runs from 48 to 144; its ends are 8 ft apart, and neither is in its middle.
TEST(RuleWords, sayWhereOnWhatRunsAlongTheWall) {
  testing_support::StrapWall bare = testing_support::bareStrapWall();
  bare.marks = {{Id{40}, "HD", testing_support::strapTypeId, {}, {}, {}, {}, {}, ""}};
  bare.panel(48, 144, "HD", "HD");
  const Job job = testing_support::jobOf(bare);
  const Findings missing = testing_support::found(bare, RuleId::StrapMissing);
  ASSERT_EQ(missing.size(), 2u);
  EXPECT_EQ(whereabouts(job, missing[0]), "left end of the panel, at 4'-0\"");
  EXPECT_EQ(whereabouts(job, missing[1]), "right end of the panel, at 12'-0\"");
}

// Station 100 is 8'-4", 1 7/16 from the ends are 0'-1 7/16" and 23'-10 9/16".
TEST(RuleWords, tellLeftFromRightAndAboveFromBelow) {
  const auto where = [](double station, double offset, RuleId rule) {
    testing_support::StrapWall bare = testing_support::bareStrapWall();
    bare.step(200, 210, -8);
    bare.hang(station, offset);
    const Findings findings = testing_support::found(bare, rule);
    return findings.size() == 1 ? whereabouts(testing_support::jobOf(bare), findings[0]) : "not found once";
  };
  EXPECT_EQ(where(100, 0.25, RuleId::StrapJoint), "joint line above the pour line, at 8'-4\"");
  EXPECT_EQ(where(100, -0.25, RuleId::StrapJoint), "joint line below the pour line, at 8'-4\"");
  EXPECT_EQ(where(1.4375, 0, RuleId::StrapEdge), "plate to the left end of the concrete, at 0'-1 7/16\"");
  EXPECT_EQ(where(286.5625, 0, RuleId::StrapEdge), "plate to the right end of the concrete, at 23'-10 9/16\"");
  EXPECT_EQ(where(198.5, 0, RuleId::StrapEdge), "plate to the step on its right, at 16'-6 1/2\"");
  EXPECT_EQ(where(211.5, 0, RuleId::StrapEdge), "plate to the step on its left, at 17'-7 1/2\"");
}

// A bar 1/2 thick behind a plate 1/4 thick: their surfaces are 0.503 - 1/4 - 1/4 = 0.003 apart, and do not touch.
TEST(RuleWords, neverCallALittleNothing) {
  testing_support::StrapWall bare = testing_support::bareStrapWall();
  bare.hang(100);
  bare.bar(BarRun::Along, {2, 0.503, -6}, {286, 0.503, -6});
  Job job = testing_support::jobOf(bare);
  const Findings found = testing_support::found(bare, RuleId::StrapSteel);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(label(job, found[0]), "BAR #102 · 0.003\" < 1\"");
  job.units = LengthStyle::Millimetres;
  EXPECT_EQ(label(job, found[0]), "BAR #102 · 0.1 mm < 25.4 mm"); // 0.0762 mm
}

// And nothing is found at a level that its row in the book does not name.
TEST(RuleWords, areOfLevelsThatTheBookNames) {
  std::mt19937 random(12);
  Seen seen;
  for (std::uint64_t seed = 1; seed <= 20; ++seed)
    for (const auto& wall : checkAll(broken(generateJob(seed, 150), random)))
      for (const Finding& f : wall->findings)
        seen.insert({f.rule, f.level});
  EXPECT_GT(seen.size(), 20u);
  for (const auto& [id, level] : seen) {
    const auto& levels = rule(id).levels;
    EXPECT_NE(std::find(levels.begin(), levels.end(), level), levels.end()) << rule(id).name << ' ' << word(level);
  }
}

} // namespace
} // namespace sillwright
