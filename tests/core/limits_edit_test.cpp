// What a job may say otherwise than the rule book, and what is refused.
#include <gtest/gtest.h>

#include "core/edit/limits.h"
#include "core/edit/operations.h"
#include "core/rules/limit_words.h"
#include "core/rules/rule_book.h"

namespace sillwright {
namespace {

const Grounds engineer{"letter of the engineer", "R. Alder", "2031-05-14"};

const LimitRow& rowOf(const char* name) { return limitTable()[static_cast<std::size_t>(*limitKey(name))]; }

TEST(LimitsEdit, aLimitIsChangedWithItsReason) {
  const Result<Job> changed = changeLimit(newJob(), "strap.edge target", "1 1/2", engineer);
  ASSERT_TRUE(changed) << changed.problem().text();
  ASSERT_EQ(changed->limits->overrides.size(), 1u);
  EXPECT_EQ(changed->limits->overrides[0],
            (LimitOverride{"strap.edge target", 1.5, "letter of the engineer", "R. Alder", "2031-05-14", ""}));
  EXPECT_EQ(resolve(*changed->limits)[LimitKey::StrapEdgeTarget], 1.5);
}

TEST(LimitsEdit, aSecondChangeReplacesTheFirst) {
  Job job = *changeLimit(newJob(), "strap.edge target", "2\"", engineer);
  job = *changeLimit(job, "bolt.embed", "8", engineer);
  job = *changeLimit(job, "strap.edge target", "3/4", {"second letter", "", ""});
  ASSERT_EQ(job.limits->overrides.size(), 2u);
  EXPECT_EQ(job.limits->overrides[0].value, 0.75);
  EXPECT_EQ(job.limits->overrides[0].reason, "second letter");
  EXPECT_EQ(job.limits->overrides[1].key, "bolt.embed");
}

TEST(LimitsEdit, theBooksOwnValueTakesTheChangeBack) {
  const Job changed = *changeLimit(newJob(), "strap.edge target", "2", engineer);
  const Result<Job> back = changeLimit(changed, "strap.edge target", "1\"", {});
  ASSERT_TRUE(back);
  EXPECT_TRUE(back->limits->overrides.empty());
  EXPECT_TRUE(restoreLimit(changed, "strap.edge target").limits->overrides.empty());
  EXPECT_EQ(restoreLimit(changed, "bolt.embed"), changed);
}

TEST(LimitsEdit, refusedWithASentence) {
  struct Case {
    const char* name;
    const char* typed;
    Grounds grounds;
    const char* place;
  };
  const Case cases[] = {{"strap.edge target", "2", {"", "R. Alder", ""}, "reason"},
                        {"strap.edge target", "2", {" \t ", "R. Alder", ""}, "reason"},
                        {"strap.edge target", "-1/2", engineer, "value"},
                        {"strap.edge target", "200'", engineer, "value"},
                        {"strap.edge target", "a bit", engineer, "value"},
                        {"strap.edge target", "", engineer, "value"},
                        {"bolt.count", "1.5", engineer, "value"},
                        {"bolt.count", "2 bolts", engineer, "value"},
                        {"bolt.gap", "nan", engineer, "value"},
                        {"bolt.gap", "101", engineer, "value"},
                        {"strap.colour", "2", engineer, "strap.colour"},
                        {"strap.edge target", "2", {"letter", "", "2031-02-30"}, "date"},
                        {"strap.edge target", "2", {"letter", "", "14 May"}, "date"}};
  const Job job = newJob();
  for (const Case& each : cases) {
    const Result<Job> refused = changeLimit(job, each.name, each.typed, each.grounds);
    ASSERT_FALSE(refused) << each.name << " " << each.typed;
    EXPECT_EQ(refused.problem().place, each.place);
    EXPECT_GT(refused.problem().message.size(), 10u);
  }
}

TEST(LimitsEdit, unitsOfTheirOwnArePlainNumbers) {
  const Job job = newJob();
  EXPECT_EQ(*readLimit(job, rowOf("bolt.gap"), " 4.5 "), 4.5);
  EXPECT_EQ(*readLimit(job, rowOf("washer.sheathing over"), "350"), 350);
  EXPECT_EQ(*readLimit(job, rowOf("bolt.spacing"), "5'-6 1/2\""), 66.5);
  EXPECT_EQ(limitWords(job, rowOf("bolt.gap"), 4.5), "4.5 diameters");
  EXPECT_EQ(limitWords(job, rowOf("bolt.spacing"), 66.5), "66 1/2\"");
  EXPECT_EQ(limitWords(job, rowOf("washer.size thickness"), 0.229), "0.229\"");
  EXPECT_EQ(limitWords(job, rowOf("washer.size thickness"), 0.25), "1/4\"");
  EXPECT_EQ(limitWords(job, rowOf("panel.slender"), 3.5), "3.5");
}

TEST(LimitsEdit, aRuleCountsLessWithAReason) {
  const Job job = newJob();
  EXPECT_FALSE(setRuleCounts(job, "strap.seam", RuleCounts::Watch, {}));
  EXPECT_FALSE(setRuleCounts(job, "strap.colour", RuleCounts::Watch, engineer));
  EXPECT_FALSE(setRuleCounts(job, "strap.seam", RuleCounts::Watch, {"letter", "", "2031-13-01"}));
  const Result<Job> changed = setRuleCounts(job, "strap.seam", RuleCounts::None, engineer);
  ASSERT_TRUE(changed);
  ASSERT_EQ(changed->limits->rules.size(), 1u);
  EXPECT_EQ(changed->limits->rules[0],
            (RuleOverride{"strap.seam", RuleCounts::None, "letter of the engineer", "R. Alder", "2031-05-14", ""}));
  EXPECT_EQ(*setRuleCounts(*changed, "strap.seam", std::nullopt, {}), job);
}

TEST(LimitsEdit, optionsOfTheJobReadBackAsTheyWereTyped) {
  struct Case {
    const char* key;
    const char* typed;
    const char* shown;
  };
  const Case cases[] = {{"storeys", "3", "3"},          {"seismicCategory", "D1", "D1"}, {"plateWashers", "no", "no"},
                        {"topBar", "yes", "yes"},       {"openingBars", "yes", "yes"},   {"planBoltSpacing", "4'", "48\""},
                        {"planBoltSpacing", "", ""},    {"sillOverhang", "3/8", "3/8\""},
                        {"sheathingThickness", "0", "0\""}, {"concreteStrength", "3000", "3000"}};
  Job job = newJob();
  for (const Case& each : cases) {
    const Result<Job> changed = setJobOption(job, each.key, each.typed);
    ASSERT_TRUE(changed) << each.key << " " << changed.problem().text();
    job = *changed;
    bool seen = false;
    for (const Field& field : jobOptions(job))
      if (field.key == each.key) {
        seen = true;
        EXPECT_EQ(field.text, each.shown) << each.key;
      }
    EXPECT_TRUE(seen);
  }
  EXPECT_EQ(job.limits->seismicCategory, "D1");
  EXPECT_EQ(job.limits->concreteStrength, 3000);
}

TEST(LimitsEdit, impossibleOptionsAreRefused) {
  const std::pair<const char*, const char*> cases[] = {
      {"storeys", "0"},           {"storeys", "2.5"},       {"seismicCategory", "Z"},    {"plateWashers", "perhaps"},
      {"planBoltSpacing", "-4"},  {"planBoltSpacing", "0"}, {"sheathingThickness", "-1/2"},
      {"concreteStrength", "50"}, {"concreteStrength", "strong"}, {"concreteStrength", "nan"}, {"paint", "red"}};
  for (const auto& [key, typed] : cases)
    EXPECT_FALSE(setJobOption(newJob(), key, typed)) << key << " " << typed;
}

} // namespace
} // namespace sillwright
