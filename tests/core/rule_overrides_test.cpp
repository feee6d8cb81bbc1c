// A rule counts as far as the job says, never without saying so.
#include "bare_wall.h"
#include "core/rules/wording.h"

namespace sillwright {
namespace {

using namespace testing_support;

// A bolt 1 in from the outside edge of the sill, out of its middle third: FIX by the book.
BareWall boltAtTheEdge(std::optional<RuleCounts> counts = {}) {
  BareWall bare = bareWall();
  addBolt(bare, 48, 1.5);
  if (counts)
    bare.job.limits.edit(
        [&](JobLimits& limits) { limits.rules = {{"bolt.third", *counts, "letter of the engineer", "", "", {}}}; });
  return bare;
}

TEST(RuleOverrides, aRuleCountsAsFarAsTheJobSays) {
  const auto found = [](std::optional<RuleCounts> counts) { return findingsOf(boltAtTheEdge(counts), RuleId::BoltThird); };
  ASSERT_EQ(found({}).size(), 1u);
  EXPECT_EQ(found({})[0].level, Level::Fix);
  ASSERT_EQ(found(RuleCounts::Ask).size(), 1u);
  EXPECT_EQ(found(RuleCounts::Ask)[0].level, Level::Ask);
  ASSERT_EQ(found(RuleCounts::Watch).size(), 1u);
  EXPECT_EQ(found(RuleCounts::Watch)[0].level, Level::Watch);
  EXPECT_TRUE(found(RuleCounts::None).empty());
}

TEST(RuleOverrides, theFindingSaysSoAndStatesTheSameFact) {
  const BareWall byTheBook = boltAtTheEdge(), watched = boltAtTheEdge(RuleCounts::Watch);
  const Finding fix = findingsOf(byTheBook, RuleId::BoltThird).at(0);
  const Finding watch = findingsOf(watched, RuleId::BoltThird).at(0);
  EXPECT_EQ(message(byTheBook.job, fix), message(watched.job, watch));
  EXPECT_EQ(sourceWords(byTheBook.job, fix).find("letter"), std::string::npos);
  EXPECT_NE(sourceWords(watched.job, watch).find("WATCH at most in this job: letter of the engineer"), std::string::npos)
      << sourceWords(watched.job, watch);
}

// A rule that the job raises is not: ASK stays ASK where the job says "ASK at most", and WATCH stays WATCH.
TEST(RuleOverrides, neverRaiseWhatIsFound) {
  BareWall bare = bareWall();
  addBolt(bare, 48, 3.25, 3.75); // 1/16 of thread to spare: WATCH
  bare.job.limits.edit([](JobLimits& limits) { limits.rules = {{"bolt.thread", RuleCounts::Ask, "why", "", "", {}}}; });
  const Findings found = findingsOf(bare, RuleId::BoltThread);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].level, Level::Watch);
}

} // namespace
} // namespace sillwright
