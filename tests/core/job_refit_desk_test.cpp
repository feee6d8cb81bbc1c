// What lies on the desk while a refit of the whole job is looked at. Where the answers are made by hand, how they are
// found is tested elsewhere.
#include "core/gesture/job_refit_desk.h"

#include <gtest/gtest.h>

#include <string>

#include "core/gesture/workbench.h"
#include "edit_jobs.h"
#include "tests/support/disturbed_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

using testing_jobs::pieceOf;
using Now = JobRefitRow::Now;

// Four walls with a bolt each, the first of them the front of the shed.
class JobRefitDeskTest : public ::testing::Test {
protected:
  JobRefitDeskTest() : s(testing_jobs::shed()), bench(withBolts(s)) {
    before = job();
    desk().solveBy([this](const JobRefitQuestion& question) { asked.push_back(question); });
    one().solveBy([this](const RefitQuestion& question) { askedOne.push_back(question); });
    bench.listen([this](const WorkNotice& notice) { told += notice.refit; });
  }
  static Job withBolts(const testing_jobs::Shed& shed) {
    Job job = shed.job;
    for (std::size_t i = 1; i < job.walls.size(); ++i)
      testing_jobs::put(job, job.walls[i].id, testing_jobs::boltAt(job, 30));
    return job;
  }
  JobRefitDesk& desk() { return bench.jobRefitDesk(); }
  RefitDesk& one() { return bench.refitDesk(); }
  const Job& job() const { return bench.session().settled(); }
  Id wall(std::size_t i) const { return before.walls[i].id; }
  const Bolt& bolt(std::size_t i) const { return job().walls[i].bolts.front(); }
  Change moved(std::size_t i, double along) const {
    Bolt after = before.walls[i].bolts.front();
    after.station += along;
    return {before.walls[i].bolts.front(), after};
  }
  Proposal proposal(std::size_t i, std::vector<Change> changes) const {
    Proposal made;
    made.wall = wall(i);
    made.changes = std::move(changes);
    return made;
  }
  NoLayout none(std::size_t i, std::vector<Change> elsewhere = {}) const {
    NoLayout made;
    made.wall = wall(i);
    made.requirements = {{Requirement::Kind::Stays, {}, {before.walls[i].bolts.front().id}}};
    made.elsewhere = std::move(elsewhere);
    return made;
  }
  // The first three walls have something to move, by 1, 2 and 3 inches; the fourth needs nothing.
  std::vector<WallRefit> three() const {
    std::vector<WallRefit> found;
    for (std::size_t i = 0; i < 3; ++i)
      found.push_back({wall(i), Refit{proposal(i, {moved(i, static_cast<double>(i) + 1)})}, {}});
    found.push_back({wall(3), Refit{proposal(3, {})}, {}});
    return found;
  }
  void answerLast(std::vector<WallRefit> found) { desk().answer(asked.back().number, std::move(found)); }
  void openWith(std::vector<WallRefit> found) {
    desk().open();
    answerLast(std::move(found));
  }
  void nudge(std::size_t i) {
    const PieceRef piece[] = {{wall(i), bolt(i).id}};
    bench.session().apply(movePieces(bench.session().base(), piece, 0.5), "Move");
  }
  std::string ticks() {
    std::string all;
    for (const JobRefitRow& row : desk().rows())
      all += !row.mayBeTicked() ? '.' : row.ticked ? 'x' : '-';
    return all;
  }
  std::string moves() const { // how far each wall's bolt is from where it was
    std::string all;
    for (std::size_t i = 0; i < before.walls.size(); ++i)
      all += std::to_string(static_cast<int>(bolt(i).station - before.walls[i].bolts.front().station));
    return all;
  }

  testing_jobs::Shed s;
  Workbench bench;
  Job before;
  std::vector<JobRefitQuestion> asked;
  std::vector<RefitQuestion> askedOne;
  int told = 0;
};

TEST_F(JobRefitDeskTest, AsksForAllWallsAndListsThoseThatNeedSomething) {
  desk().open();
  ASSERT_EQ(asked.size(), 1u);
  ASSERT_EQ(asked[0].walls.size(), 4u);
  for (std::size_t i = 0; i < 4; ++i)
    EXPECT_EQ(asked[0].walls[i], bench.checker().wall(wall(i)));
  EXPECT_TRUE(desk().isBusy());
  EXPECT_FALSE(desk().canAccept());
  desk().progress(asked[0].number, 3);
  EXPECT_EQ(desk().done(), 3u);
  desk().progress(asked[0].number, 2); // told late
  EXPECT_EQ(desk().done(), 3u);
  EXPECT_EQ(desk().asked(), 4u);
  answerLast(three());
  EXPECT_FALSE(desk().isBusy());
  ASSERT_EQ(desk().rows().size(), 3u);
  for (std::size_t i = 0; i < 3; ++i)
    EXPECT_EQ(desk().rows()[i].id(), wall(i)); // in the order of the job
  EXPECT_EQ(desk().needNothing(), 1u);
  EXPECT_EQ(ticks(), "xxx");
  EXPECT_EQ(job(), before);
  EXPECT_EQ(told, 3);
}

TEST_F(JobRefitDeskTest, AWallWithNothingToSetIsNotAskedAbout) {
  const PieceRef gone[] = {{wall(2), bolt(2).id}};
  bench.session().apply(removePieces(bench.session().base(), gone), "Remove");
  desk().open();
  ASSERT_EQ(asked[0].walls.size(), 3u);
  std::vector<WallRefit> found = three();
  found.erase(found.begin() + 2);
  answerLast(found);
  EXPECT_EQ(ticks(), "xx");
  EXPECT_EQ(desk().needNothing(), 2u);
}

TEST_F(JobRefitDeskTest, AllTickedWallsAreAcceptedAsOneStep) {
  openWith(three());
  EXPECT_TRUE(desk().accept());
  EXPECT_EQ(moves(), "1230");
  EXPECT_FALSE(desk().isOpen());
  EXPECT_EQ(desk().closing(), JobRefitDesk::Closing::Accepted);
  EXPECT_EQ(desk().accepted(), 3u);
  EXPECT_EQ(bench.session().history().undoName(), "Refit 3 walls");
  bench.session().undo();
  EXPECT_TRUE(testing_jobs::equalButForCounter(job(), before));
  EXPECT_FALSE(bench.session().history().canUndo());
}

TEST_F(JobRefitDeskTest, AWallWithoutItsTickIsLeftOut) {
  openWith(three());
  desk().tick(1, false);
  EXPECT_EQ(ticks(), "x-x");
  desk().open(); // asked again: it stays left out
  answerLast(three());
  EXPECT_EQ(ticks(), "x-x");
  desk().tick(0, false);
  EXPECT_TRUE(desk().accept());
  EXPECT_EQ(moves(), "0030");
  EXPECT_EQ(bench.session().history().undoName(), "Refit wall " + before.walls[2].mark);
  EXPECT_EQ(desk().leftOut(), 0u);
  openWith(three());
  for (std::size_t i = 0; i < 3; ++i)
    desk().tick(i, false);
  EXPECT_FALSE(desk().canAccept());
  EXPECT_FALSE(desk().accept());
}

TEST_F(JobRefitDeskTest, WallsWithoutALayoutAreListedButNotTicked) {
  std::vector<WallRefit> found = three();
  found[0].refit = Refit{none(0)};
  found[1].refit = Refit{none(1, {moved(1, 2)})};
  found[3].refit = Problem{"wall", "there is no sill to bolt down"};
  openWith(found);
  EXPECT_EQ(ticks(), ".-x."); // of the second something may move elsewhere, once that is wanted
  EXPECT_EQ(desk().rows()[0].found.conflicts().size(), 1u);
  ASSERT_NE(desk().rows()[3].problem(), nullptr);
  EXPECT_EQ(desk().rows()[3].problem()->message, "there is no sill to bolt down");
  EXPECT_EQ(desk().needNothing(), 0u);
  desk().tick(0, true); // nothing to tick
  desk().tick(1, true);
  EXPECT_EQ(ticks(), ".xx.");
  EXPECT_TRUE(desk().accept());
  EXPECT_EQ(moves(), "0230");
}

TEST_F(JobRefitDeskTest, AWallThatChangesIsOutOfDateUntilItIsAsItWas) {
  openWith(three());
  nudge(1);
  EXPECT_TRUE(desk().isOpen());
  EXPECT_EQ(desk().rows()[1].now, Now::Changed);
  EXPECT_EQ(ticks(), "x.x");
  desk().tick(1, false); // no effect: there is nothing to tick
  bench.session().undo();
  EXPECT_EQ(desk().rows()[1].now, Now::AsAsked);
  EXPECT_EQ(ticks(), "xxx");
  bench.session().redo();
  EXPECT_TRUE(desk().accept());
  EXPECT_EQ(desk().accepted(), 2u);
  EXPECT_EQ(desk().leftOut(), 1u);
  EXPECT_EQ(bolt(1).station, before.walls[1].bolts.front().station + 0.5); // as it was set by hand
  EXPECT_EQ(bolt(2).station, before.walls[2].bolts.front().station + 3);
}

TEST_F(JobRefitDeskTest, AWallInTheHandIsOutOfDateUntilItIsPutBack) {
  openWith(three());
  bench.session().beginPreview();
  const PieceRef piece[] = {{wall(0), bolt(0).id}};
  bench.session().preview(movePieces(bench.session().base(), piece, 4));
  EXPECT_EQ(ticks(), ".xx");
  bench.session().dropPreview();
  EXPECT_EQ(ticks(), "xxx");
}

TEST_F(JobRefitDeskTest, HardwareThatChangesPutsAllOutOfDate) {
  openWith(three());
  Job other = bench.session().base();
  other.types.edit([](HardwareTypes& types) { types.bolts.front().diameter += 0.125; });
  bench.session().apply(other, "Thicker bolts");
  EXPECT_EQ(ticks(), "...");
  EXPECT_FALSE(desk().canAccept());
}

TEST_F(JobRefitDeskTest, AWallThatChangesWhileItIsSolvedIsOutOfDateAtOnce) {
  desk().open();
  nudge(2);
  answerLast(three());
  EXPECT_EQ(ticks(), "xx.");
}

TEST_F(JobRefitDeskTest, AWallThatIsGoneIsNeitherShownNorAccepted) {
  openWith(three());
  Job without = bench.session().base();
  without.walls.remove(wall(2));
  bench.session().apply(without, "Remove the wall");
  EXPECT_EQ(ticks(), "x.."); // the wall beside it stands otherwise now
  const Id inView = bench.session().wall();
  bench.lookAtListed(2);
  EXPECT_FALSE(one().isOpen());
  EXPECT_EQ(bench.session().wall(), inView);
  EXPECT_TRUE(desk().accept());
  EXPECT_EQ(desk().accepted(), 1u);
}

TEST_F(JobRefitDeskTest, AnotherJobPutsItAway) {
  openWith(three());
  bench.session().open(testing_jobs::shed().job);
  EXPECT_FALSE(desk().isOpen());
  EXPECT_EQ(desk().closing(), JobRefitDesk::Closing::Overtaken);
}

TEST_F(JobRefitDeskTest, CancelledNothingHasChangedAndALateAnswerIsLeftAside) {
  desk().open();
  EXPECT_FALSE(*asked[0].cancelled);
  desk().close();
  EXPECT_TRUE(*asked[0].cancelled);
  EXPECT_FALSE(desk().isOpen());
  EXPECT_EQ(desk().closing(), JobRefitDesk::Closing::Cancelled);
  desk().progress(asked[0].number, 4);
  desk().answer(asked[0].number, three());
  EXPECT_FALSE(desk().isOpen());
  EXPECT_TRUE(desk().rows().empty());
  EXPECT_EQ(job(), before);
  desk().open(); // asked again while the first is still being ended
  EXPECT_FALSE(*asked[1].cancelled);
  desk().answer(asked[0].number, three());
  EXPECT_TRUE(desk().isBusy());
  answerLast(three());
  EXPECT_EQ(ticks(), "xxx");
  desk().close();
  EXPECT_EQ(desk().closing(), JobRefitDesk::Closing::Put);
}

TEST_F(JobRefitDeskTest, AWallIsLookedAtByItselfAndWhatIsRefusedThereStaysRefused) {
  std::vector<WallRefit> found = three();
  const Change second = {{}, testing_jobs::boltAt(before, 60)};
  found[1].refit = Refit{proposal(1, {moved(1, 2), second})};
  openWith(found);
  bench.lookAtListed(1);
  EXPECT_EQ(bench.session().wall(), wall(1));
  ASSERT_EQ(askedOne.size(), 1u);
  one().answer(askedOne[0].number, {.refit = Refit{proposal(1, {moved(1, 2), second})}});
  EXPECT_NE(one().shown(), nullptr);
  one().tick(0, false);
  one().answer(askedOne[1].number, {.refit = Refit{proposal(1, {second})}});
  one().close();
  EXPECT_TRUE(desk().isOpen());
  EXPECT_EQ(ticks(), "xxx");
  bench.lookAtListed(1); // again: it is still refused
  EXPECT_EQ(askedOne.back().wishes.staying, std::vector<Id>{bolt(1).id});
  one().close();
  EXPECT_TRUE(desk().accept());
  EXPECT_EQ(moves(), "1030");
  EXPECT_EQ(job().walls[1].bolts.size(), 2u);
}

TEST_F(JobRefitDeskTest, AWallAcceptedByItselfIsDoneUntilThatIsUndone) {
  openWith(three());
  bench.lookAtListed(1);
  one().answer(askedOne.back().number, {.refit = Refit{proposal(1, {moved(1, 2)})}});
  EXPECT_TRUE(one().accept());
  EXPECT_EQ(desk().rows()[1].now, Now::Taken);
  EXPECT_EQ(ticks(), "x.x");
  bench.session().undo();
  EXPECT_EQ(desk().rows()[1].now, Now::AsAsked);
  EXPECT_EQ(ticks(), "xxx");
  bench.session().redo();
  EXPECT_EQ(desk().rows()[1].now, Now::Taken);
  EXPECT_TRUE(desk().accept());
  EXPECT_EQ(moves(), "1230");
  EXPECT_EQ(bench.session().history().undoName(), "Refit 2 walls");
}

TEST_F(JobRefitDeskTest, AWallThatHasChangedIsLaidOutAnewWhenItIsLookedAt) {
  openWith(three());
  nudge(1);
  bench.lookAtListed(1);
  ASSERT_EQ(askedOne.size(), 1u);
  EXPECT_EQ(askedOne[0].wall, bench.checker().wall(wall(1)));
  Bolt to = bolt(1);
  to.station += 1;
  one().answer(askedOne[0].number, {.refit = Refit{proposal(1, {{bolt(1), to}})}});
  EXPECT_EQ(ticks(), "xxx"); // it counts again, with what is found now
  one().close();
  EXPECT_TRUE(desk().accept());
  EXPECT_EQ(bolt(1).station, to.station);
}

TEST_F(JobRefitDeskTest, LayingOutAWallOrLookingAtOneThatIsNotListedLeavesTheListAlone) {
  openWith(three());
  bench.session().show(wall(3));
  one().open(RefitDesk::Aim::LeastMoved);
  one().answer(askedOne.back().number, {.refit = Refit{proposal(3, {moved(3, 5)})}});
  EXPECT_EQ(desk().rows().size(), 3u);
  bench.session().show(wall(0));
  one().open(RefitDesk::Aim::LayOut);
  one().answer(askedOne.back().number, {.refit = Refit{proposal(0, {})}});
  EXPECT_EQ(ticks(), "xxx");
}

TEST_F(JobRefitDeskTest, AJobWithoutWallsNeedsNothing) {
  Workbench empty(newJob());
  empty.jobRefitDesk().open();
  EXPECT_TRUE(empty.jobRefitDesk().isOpen());
  EXPECT_FALSE(empty.jobRefitDesk().isBusy());
  EXPECT_TRUE(empty.jobRefitDesk().rows().empty());
  EXPECT_EQ(empty.jobRefitDesk().needNothing(), 0u);
  empty.lookAtListed(0);
  EXPECT_FALSE(empty.refitDesk().isOpen());
}

// The whole house with every wall disturbed, solved on the spot: what is found is what each wall gives by itself, and
// what is accepted leaves no wall with anything to do.
TEST(JobRefitDeskOnSamples, AHouseIsLaidOutInOneStep) {
  std::mt19937 random(5);
  const Job job = disturbed(support::ridgeHouse(), random);
  Workbench bench(job);
  JobRefitDesk& desk = bench.jobRefitDesk();
  desk.open();
  ASSERT_FALSE(desk.isBusy());
  ASSERT_GT(desk.ticked(), 2u);
  EXPECT_EQ(desk.rows().size() + desk.needNothing(), job.walls.size());
  const ResolvedLimits limits = resolve(*job.limits);
  for (const JobRefitRow& row : desk.rows()) {
    const auto alone = refit(bench.checker().wall(row.id())->layout, limits);
    ASSERT_EQ(alone.ok(), row.found.refit->ok());
    if (alone.ok()) {
      EXPECT_TRUE(*alone == **row.found.refit);
    }
  }
  const std::size_t ticked = desk.ticked(), others = desk.rows().size() - ticked;
  EXPECT_TRUE(desk.accept());
  EXPECT_EQ(desk.accepted(), ticked);
  bench.session().undo();
  EXPECT_TRUE(testing_jobs::equalButForCounter(bench.session().settled(), job));
  bench.session().redo();
  desk.open();
  EXPECT_EQ(desk.rows().size(), others);
  EXPECT_EQ(desk.ticked(), 0u);
}

} // namespace
} // namespace sillwright
