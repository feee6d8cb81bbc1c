// The sample files are what their builders make, and hold what they are there to show.
#include <gtest/gtest.h>

#include <fstream>
#include <set>
#include <sstream>

#include "core/edit/operations.h"
#include "core/model/lookup.h"
#include "core/refit/slots.h"
#include "core/rules/checker.h"
#include "core/rules/rule_book.h"
#include "core/rules/wording.h"
#include "core/store/files.h"
#include "core/store/job_json.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

std::string fileOf(const char* name) {
  std::ifstream in(std::string(SILLWRIGHT_SOURCE_DIR) + "/samples/" + name + ".sillwright", std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

Counts countsIn(const Job& job) {
  Counts counts;
  for (const auto& wall : checkAll(job))
    counts += wall->counts;
  return counts;
}

std::string labels(const Job& job) {
  std::string text;
  for (const auto& wall : checkAll(job))
    for (const Finding& finding : wall->findings)
      text += std::string(word(finding.level)) + " " + markedLabel(job, finding) + "\n";
  return text;
}

TEST(Samples, filesAreWhatTheirBuildersMake) {
  EXPECT_EQ(fileOf("boat-shed-front"), writeJob(support::boatShedFront()));
  EXPECT_EQ(fileOf("boat-shed-front-steel-moved"), writeJob(support::boatShedFrontSteelMoved()));
  EXPECT_EQ(fileOf("boat-shed-front-no-room"), writeJob(support::boatShedFrontNoRoom()));
  EXPECT_EQ(fileOf("ridge-house"), writeJob(support::ridgeHouse()));
  EXPECT_EQ(fileOf("punch-list-practice"), writeJob(support::punchListPractice()));
}

TEST(Samples, theFrontHasNothingToFix) { EXPECT_EQ(countsIn(support::boatShedFront()), Counts{}); }

TEST(Samples, movedSteelHasOneFindingOfEachLevel) {
  EXPECT_EQ(labels(support::boatShedFrontSteelMoved()), "FIX S1 · EDGE 3/8\" < 1/2\"\n"
                                                        "ASK S2 · 8 NAILS ON THE SEAM\n"
                                                        "WATCH S4 · BAR V18 · 5/8\" < 1\"\n");
}

// Each of the two bars touches the strap at all but a few places on its column; together they leave none.
TEST(Samples, theStrapAtTheCornerHasNoRoom) {
  const Job job = support::boatShedFrontNoRoom();
  const WallLayout layout = layOut(job, job.walls.pointer(0));
  const Id strap = layout.wall->straps[0].id;
  const auto slots = slotsOf(layout, resolve(*job.limits), strap);
  ASSERT_TRUE(slots);
  EXPECT_TRUE(slots->slots.empty());
  for (const Bar& bar : layout.wall->bars)
    if (bar.found) {
      const Job one = removePieces(job, std::vector<PieceRef>{{job.walls[0].id, bar.id}});
      EXPECT_FALSE(slotsOf(layOut(one, one.walls.pointer(0)), resolve(*job.limits), strap)->slots.empty()) << bar.mark;
    }
}

TEST(Samples, theHouseIsWholeAndHasNothingToFix) {
  const Job job = support::ridgeHouse();
  EXPECT_EQ(countsIn(job).fix, 0) << labels(job);
  EXPECT_GE(job.walls.size(), 10u);
  std::size_t panels = 0, rods = 0, inside = 0, steps = 0, doors = 0, windows = 0;
  for (const auto& wall : checkAll(job)) {
    const WallLine& line = *wall->layout.wall;
    panels += line.panels.size();
    rods += line.rods.size();
    steps += line.steps.size();
    for (const Opening& opening : line.openings)
      ++(opening.kind == OpeningKind::Window ? windows : doors);
    inside += wall->layout.place.atEnd && wall->layout.place.atEnd->insideCorner ? 1 : 0;
    EXPECT_FALSE(line.bolts.empty()) << line.mark;
  }
  EXPECT_GE(panels, 12u);
  EXPECT_GE(rods, 4u);
  EXPECT_GE(inside, 1u);
  EXPECT_GE(steps, 1u);
  EXPECT_GE(doors, 2u);
  EXPECT_GE(windows, 2u);
}

TEST(Samples, practiceHasSomethingOfEverySubject) {
  const Job job = support::punchListPractice();
  std::set<std::string_view> subjects, found;
  for (const RuleRow& row : ruleBook())
    subjects.insert(row.subject);
  bool trap = false;
  for (const auto& wall : checkAll(job))
    for (const Finding& finding : wall->findings) {
      found.insert(rule(finding.rule).subject);
      trap = trap || (finding.window && finding.otherWays.size() == 2);
    }
  EXPECT_EQ(found, subjects) << labels(job);
  EXPECT_TRUE(trap) << "a bolt in the middle of a 5 1/2 in sill, with three ways out";
}

TEST(GenerateJob, givesValidJobsOfTheSizeAskedForAndTheSameAgain) {
  for (std::uint64_t seed = 1; seed <= 30; ++seed)
    for (const std::size_t pieces : {10u, 57u, 400u}) {
      const Job job = generateJob(seed, pieces);
      const auto problem = checkJob(job);
      ASSERT_FALSE(problem) << seed << " " << pieces << ": " << problem->text();
      std::size_t count = 0;
      for (std::size_t i = 0; i < job.walls.size(); ++i)
        count += pieceCount(job.walls[i]);
      EXPECT_EQ(count, pieces);
      const std::string text = writeJob(job);
      const auto again = readJob(text);
      ASSERT_TRUE(again) << again.problem().text();
      EXPECT_TRUE(*again == job);
      EXPECT_EQ(writeJob(*again), text);
      EXPECT_TRUE(generateJob(seed, pieces) == job);
    }
}

} // namespace
} // namespace sillwright
