// What lies on the desk while a refit is looked at. The answers are made by hand here: how they are found is tested
// elsewhere.
#include "core/gesture/refit_desk.h"

#include <gtest/gtest.h>

#include <string>

#include "core/gesture/workbench.h"
#include "edit_jobs.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

using testing_jobs::pieceOf;

template <class PieceOf> Change moved(const PieceOf& piece, double along) {
  PieceOf after = piece;
  after.station += along;
  return {piece, after};
}

class RefitDeskTest : public ::testing::Test {
protected:
  RefitDeskTest() : s(testing_jobs::shed()), bench(s.job) {
    desk().solveBy([this](const RefitQuestion& question) { asked.push_back(question); });
    bench.listen([this](const WorkNotice& notice) { told += notice.refit; });
  }
  RefitDesk& desk() { return bench.refitDesk(); }
  const Job& job() const { return bench.session().settled(); }
  Strap strap(Id id) const { return pieceOf<Strap>(job(), s.wall, id); }
  Bolt bolt() const { return pieceOf<Bolt>(job(), s.wall, s.bolt); }
  Proposal proposal(std::vector<Change> changes) const {
    Proposal made;
    made.wall = s.wall;
    made.changes = std::move(changes);
    return made;
  }
  // The left strap 3/4 right, a bolt added at 12, the bolt at 20 out, the right strap 1/2 left.
  Proposal four() const {
    return proposal({moved(strap(s.strapLeft), 0.75),
                     {{}, testing_jobs::boltAt(job(), 12)},
                     {bolt(), {}},
                     moved(strap(s.strapRight), -0.5)});
  }
  void answerLast(Refit answer) { desk().answer(asked.back().number, {.refit = std::move(answer)}); }
  void openWith(Refit answer, RefitDesk::Aim aim = RefitDesk::Aim::LeastMoved) {
    desk().open(aim);
    answerLast(std::move(answer));
  }
  std::string ticks() {
    std::string all;
    for (const RefitRow& row : desk().rows())
      all += row.ticked ? 'x' : '-';
    return all;
  }

  testing_jobs::Shed s;
  Workbench bench;
  std::vector<RefitQuestion> asked;
  int told = 0;
};

TEST_F(RefitDeskTest, AsksForTheWallInViewAndShowsWhatIsAnswered) {
  EXPECT_FALSE(desk().isOpen());
  desk().open(RefitDesk::Aim::LeastMoved);
  ASSERT_EQ(asked.size(), 1u);
  EXPECT_TRUE(desk().isOpen());
  EXPECT_TRUE(desk().isBusy());
  EXPECT_EQ(asked[0].wall, bench.wall());
  EXPECT_TRUE(asked[0].wishes.staying.empty());
  EXPECT_FALSE(desk().canAccept());
  EXPECT_EQ(desk().shown(), nullptr);
  answerLast(four());
  EXPECT_FALSE(desk().isBusy());
  EXPECT_EQ(desk().state(), RefitDesk::State::Proposed);
  EXPECT_EQ(ticks(), "xxxx");
  ASSERT_NE(desk().shown(), nullptr);
  EXPECT_EQ(desk().shown()->changes, four().changes);
  EXPECT_EQ(desk().shown()->after->straps[0].strap->station, 3.5);
  EXPECT_EQ(desk().shown()->after->anchors[0].station, 12);
  EXPECT_EQ(job(), s.job); // nothing has changed yet
  EXPECT_EQ(told, 2);
}

TEST_F(RefitDeskTest, WithoutASolverItIsSolvedOnTheSpot) {
  desk().solveBy({});
  desk().open(RefitDesk::Aim::LeastMoved);
  EXPECT_FALSE(desk().isBusy());
  EXPECT_NE(desk().state(), RefitDesk::State::Closed);
}

TEST_F(RefitDeskTest, AllIsAcceptedAsOneStep) {
  openWith(four());
  ASSERT_TRUE(desk().canAccept());
  EXPECT_TRUE(desk().accept());
  EXPECT_FALSE(desk().isOpen());
  EXPECT_EQ(desk().closing(), RefitDesk::Closing::Accepted);
  EXPECT_EQ(strap(s.strapLeft).station, 3.5);
  EXPECT_EQ(strap(s.strapRight).station, 44.5);
  const WallLine& wall = *job().walls.find(s.wall);
  ASSERT_EQ(wall.bolts.size(), 1u);
  EXPECT_EQ(wall.bolts[0].station, 12);
  EXPECT_EQ(bench.session().history().undoName(), "Refit wall A");
  bench.session().undo();
  EXPECT_TRUE(testing_jobs::equalButForCounter(job(), s.job));
  EXPECT_FALSE(bench.session().history().canUndo());
}

TEST_F(RefitDeskTest, WhatIsRefusedStaysAndTheRestIsAskedForAgain) {
  openWith(four());
  desk().tick(3, false);
  ASSERT_EQ(asked.size(), 2u);
  EXPECT_EQ(asked[1].wishes.staying, std::vector<Id>{s.strapRight});
  EXPECT_TRUE(desk().isBusy());
  EXPECT_FALSE(desk().canAccept()); // what is shown is of the question before
  EXPECT_EQ(ticks(), "xxx-");
  answerLast(proposal({moved(strap(s.strapLeft), 1)}));
  EXPECT_EQ(ticks(), "x-"); // left to right, the refused one among them
  EXPECT_EQ(desk().rows()[1].change, moved(strap(s.strapRight), -0.5));
  EXPECT_EQ(desk().shown()->changes.size(), 1u);
  desk().tick(1, true); // taken back
  ASSERT_EQ(asked.size(), 3u);
  EXPECT_TRUE(asked[2].wishes.staying.empty());
  answerLast(four());
  EXPECT_EQ(ticks(), "xxxx");
}

TEST_F(RefitDeskTest, WhatIsRefusedIsNotAccepted) {
  openWith(four());
  desk().tick(3, false);
  answerLast(proposal({moved(strap(s.strapLeft), 1)}));
  EXPECT_TRUE(desk().accept());
  EXPECT_EQ(strap(s.strapLeft).station, 3.75);
  EXPECT_EQ(strap(s.strapRight).station, 45);
}

TEST_F(RefitDeskTest, AnAddedPieceIsOnlyLeftOut) {
  openWith(four());
  desk().tick(1, false);
  EXPECT_EQ(asked.size(), 1u); // nothing to ask: no piece that could stay
  EXPECT_EQ(ticks(), "x-xx");
  EXPECT_EQ(desk().shown()->changes.size(), 3u);
  desk().tick(0, false); // asked again: it is still left out where the same one is proposed
  EXPECT_EQ(asked[1].wishes.staying, std::vector<Id>{s.strapLeft});
  Proposal again = four();
  again.changes.erase(again.changes.begin());
  answerLast(again);
  EXPECT_EQ(ticks(), "--xx");
  EXPECT_TRUE(desk().accept());
  EXPECT_TRUE(job().walls.find(s.wall)->bolts.empty());
}

TEST_F(RefitDeskTest, OneAloneIsAcceptedAndTheRestAskedForAgain) {
  openWith(four());
  desk().tick(3, false);
  answerLast(proposal({moved(strap(s.strapLeft), 0.75), {bolt(), {}}}));
  EXPECT_TRUE(desk().acceptOnly(0));
  EXPECT_EQ(strap(s.strapLeft).station, 3.5);
  EXPECT_EQ(job().walls.find(s.wall)->bolts.size(), 1u);
  EXPECT_TRUE(desk().isOpen());
  ASSERT_EQ(asked.size(), 3u);
  EXPECT_EQ(asked[2].wall, bench.wall()); // as it now is
  EXPECT_EQ(asked[2].wishes.staying, std::vector<Id>{s.strapRight});
  answerLast(proposal({{bolt(), {}}}));
  EXPECT_EQ(ticks(), "x-");
  EXPECT_EQ(bench.session().history().undoName().substr(0, 15), "Refit strap S1:");
  EXPECT_FALSE(desk().acceptOnly(1)); // a refused one
  bench.session().undo();
  EXPECT_TRUE(testing_jobs::equalButForCounter(job(), s.job));
}

TEST_F(RefitDeskTest, AnswersThatAreOutOfDateAreLeftAside) {
  openWith(four());
  desk().tick(0, false);
  desk().tick(3, false);
  ASSERT_EQ(asked.size(), 3u);
  desk().answer(asked[1].number, {.refit = Refit{proposal({})}});
  EXPECT_TRUE(desk().isBusy());
  EXPECT_EQ(asked[2].wishes.staying, (std::vector<Id>{s.strapLeft, s.strapRight}));
  answerLast(proposal({{bolt(), {}}}));
  desk().answer(asked[2].number, {.refit = Refit{proposal({})}}); // a second time
  EXPECT_EQ(ticks(), "-x-");
  desk().close();
  desk().answer(asked[2].number, {.refit = Refit{proposal({})}});
  EXPECT_FALSE(desk().isOpen());
}

TEST_F(RefitDeskTest, AnyOtherEditOfTheWallPutsItAway) {
  const PieceRef piece[] = {{s.wall, s.strapLeft}};
  const auto overtaken = [&] {
    return !desk().isOpen() && desk().closing() == RefitDesk::Closing::Overtaken && desk().shown() == nullptr;
  };
  openWith(four());
  bench.session().apply(movePieces(bench.session().base(), piece, 0.5), "Move");
  EXPECT_TRUE(overtaken());
  openWith(proposal({}));
  bench.session().undo();
  EXPECT_TRUE(overtaken());
  openWith(proposal({}));
  bench.session().show(job().walls[2].id);
  EXPECT_TRUE(overtaken());
  bench.session().show(s.wall);
  desk().open(RefitDesk::Aim::LeastMoved); // not even answered yet
  bench.session().open(testing_jobs::shed().job);
  EXPECT_TRUE(overtaken());
}

TEST_F(RefitDeskTest, AnEditFarOffLeavesItWhereItIs) {
  const Id far = job().walls[2].id;
  bench.session().show(far);
  bench.session().show(s.wall);
  openWith(four());
  bench.session().apply(addPiece(bench.session().base(), far, testing_jobs::uprightAt(40)).first, "Add");
  EXPECT_TRUE(desk().isOpen());
  bench.session().select({{s.wall, s.strapLeft}});
  EXPECT_TRUE(desk().isOpen());
  EXPECT_EQ(ticks(), "xxxx");
}

TEST_F(RefitDeskTest, ClosingPutsItAway) {
  openWith(four());
  desk().close();
  EXPECT_FALSE(desk().isOpen());
  EXPECT_EQ(desk().closing(), RefitDesk::Closing::Put);
  EXPECT_EQ(desk().shown(), nullptr);
  EXPECT_FALSE(desk().accept());
  EXPECT_EQ(job(), s.job);
}

TEST_F(RefitDeskTest, ARefusalThatLeavesNoLayoutCanBeTakenBack) {
  openWith(four());
  desk().tick(0, false);
  NoLayout none;
  none.wall = s.wall;
  none.requirements = {{Requirement::Kind::Stays, {}, {s.strapLeft}}};
  answerLast(none);
  EXPECT_EQ(desk().state(), RefitDesk::State::Conflict);
  ASSERT_EQ(desk().conflicts().size(), 1u);
  EXPECT_EQ(desk().conflicts().front().requirements.size(), 1u);
  EXPECT_EQ(ticks(), "-");
  EXPECT_EQ(desk().shown(), nullptr);
  EXPECT_FALSE(desk().canAccept());
  desk().tick(0, true);
  EXPECT_TRUE(asked.back().wishes.staying.empty());
  answerLast(four());
  EXPECT_EQ(ticks(), "xxxx");
}

TEST_F(RefitDeskTest, AllThatCollidesIsThere) {
  NoLayout first, second;
  first.wall = second.wall = s.wall;
  first.requirements = {{Requirement::Kind::Stays, {}, {s.strapLeft}}};
  second.requirements = {{Requirement::Kind::Stays, {}, {s.strapRight}}};
  openWith(four());
  desk().tick(0, false);
  desk().answer(asked.back().number, {.refit = Refit{first}, .further = {second}});
  EXPECT_EQ(desk().conflicts(), (std::vector<NoLayout>{first, second}));
  desk().tick(0, true);
  answerLast(four());
  EXPECT_TRUE(desk().conflicts().empty());
}

TEST_F(RefitDeskTest, WhatMovesElsewhereCanBeAcceptedThoughOnePlaceHasNoLayout) {
  openWith(four());
  desk().tick(0, false);
  NoLayout none;
  none.wall = s.wall;
  none.requirements = {{Requirement::Kind::Stays, {}, {s.strapLeft}}};
  none.elsewhere = {moved(strap(s.strapRight), -0.5)};
  answerLast(none);
  EXPECT_EQ(desk().state(), RefitDesk::State::Conflict);
  EXPECT_EQ(ticks(), "-x");
  EXPECT_NE(desk().shown(), nullptr);
  const double left = strap(s.strapLeft).station, right = strap(s.strapRight).station;
  ASSERT_TRUE(desk().canAccept());
  EXPECT_TRUE(desk().accept());
  EXPECT_EQ(strap(s.strapLeft).station, left);
  EXPECT_EQ(strap(s.strapRight).station, right - 0.5);
  EXPECT_TRUE(bench.session().undo());
  EXPECT_EQ(strap(s.strapRight).station, right);
}

TEST_F(RefitDeskTest, WhatKeepsItFromBeingLaidOutIsSaid) {
  desk().open(RefitDesk::Aim::LeastMoved);
  desk().answer(asked.back().number, {.refit = Problem{"wall A", "there is no sill to bolt down"}});
  EXPECT_EQ(desk().state(), RefitDesk::State::Impossible);
  ASSERT_NE(desk().problem(), nullptr);
  EXPECT_EQ(desk().problem()->message, "there is no sill to bolt down");
  EXPECT_TRUE(desk().rows().empty());
}

TEST_F(RefitDeskTest, LayingOutBringsABoltToAdd) {
  desk().open(RefitDesk::Aim::LeastMoved);
  EXPECT_FALSE(asked[0].wishes.boltToAdd);
  desk().open(RefitDesk::Aim::LayOut);
  ASSERT_TRUE(asked[1].wishes.boltToAdd);
  const Bolt& bolt = *asked[1].wishes.boltToAdd;
  EXPECT_EQ(bolt.type, job().types->bolts.front().id);
  EXPECT_GT(bolt.projection, 2.5); // past the 3x sill
  answerLast(four());
  desk().accept();
  EXPECT_EQ(bench.session().history().undoName(), "Lay out wall A");
}

TEST_F(RefitDeskTest, TheRowLookedAtIsMarkedAndFoundAgain) {
  openWith(four());
  desk().look(3);
  EXPECT_EQ(desk().shown()->current, 3u);
  desk().tick(0, false);
  answerLast(proposal({moved(strap(s.strapRight), -0.25)}));
  EXPECT_EQ(desk().current(), 1u); // row 0 is the refused one
  EXPECT_EQ(desk().shown()->current, 0u);
  desk().look(0);
  EXPECT_FALSE(desk().shown()->current); // a refused one has no ghost
}

TEST_F(RefitDeskTest, AJobWithoutWallsOpensNothing) {
  Workbench empty(newJob());
  empty.refitDesk().open(RefitDesk::Aim::LeastMoved);
  EXPECT_FALSE(empty.refitDesk().isOpen());
}

// The front of the boat shed with every strap and bolt taken away, laid out on the spot.
TEST(RefitDeskOnSamples, AnEmptyWallIsLaidOut) {
  Job job = support::boatShedFront();
  WallLine front = job.walls[0];
  front.straps.clear();
  front.bolts.clear();
  job.walls.replace(front);
  Workbench bench(job);
  bench.refitDesk().open(RefitDesk::Aim::LayOut);
  ASSERT_EQ(bench.refitDesk().state(), RefitDesk::State::Proposed);
  EXPECT_EQ(bench.session().settled(), job);
  ASSERT_TRUE(bench.refitDesk().accept());
  const WallLine& laidOut = bench.session().settled().walls[0];
  EXPECT_EQ(laidOut.straps.size(), 4u);
  EXPECT_GE(laidOut.bolts.size(), 4u); // two a piece of sill at least
  EXPECT_EQ(bench.checker().counts().fix, 0);
  bench.refitDesk().open(RefitDesk::Aim::LayOut);
  ASSERT_EQ(bench.refitDesk().state(), RefitDesk::State::Proposed);
  EXPECT_TRUE(bench.refitDesk().rows().empty());
}

TEST(RefitDeskOnSamples, WhatIsRefusedOfTheSampleStaysWhereItIs) {
  Workbench bench(support::boatShedFrontSteelMoved());
  RefitDesk& desk = bench.refitDesk();
  desk.open(RefitDesk::Aim::LeastMoved);
  ASSERT_EQ(desk.state(), RefitDesk::State::Proposed);
  ASSERT_GT(desk.rows().size(), 1u);
  const Change last = desk.rows().back().change;
  desk.tick(desk.rows().size() - 1, false);
  ASSERT_EQ(desk.state(), RefitDesk::State::Proposed);
  EXPECT_EQ(desk.rows().back(), (RefitRow{last, false}));
  ASSERT_TRUE(desk.accept());
  EXPECT_EQ(*findPiece(bench.session().settled().walls[0], pieceOf(last)), *last.before);
  EXPECT_EQ(bench.checker().counts().fix, 0);
}

} // namespace
} // namespace sillwright
