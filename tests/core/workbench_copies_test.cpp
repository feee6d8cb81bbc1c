// Copies and pairs on the workbench: each one undo step with a name, and what is said of it.
#include <gtest/gtest.h>

#include <algorithm>
#include <memory>
#include <random>
#include <set>

#include "core/edit/operations.h"
#include "core/gesture/pair_match.h"
#include "core/gesture/repeat_offer.h"
#include "core/gesture/snap.h"
#include "core/gesture/workbench.h"
#include "core/rules/panel_ends.h"
#include "core/rules/rule_book.h"
#include "tests/support/broken_job.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

PieceRef named(const Workbench& bench, const std::string& mark) {
  const WallLine& wall = *bench.job().walls.find(bench.session().wall());
  for (const Id id : piecesOf(wall))
    if (markOf(*findPiece(wall, id)) == mark)
      return {wall.id, id};
  ADD_FAILURE() << "there is no " << mark;
  return {};
}

Selection allNamed(const Workbench& bench, const std::vector<std::string>& marks) {
  Selection selection;
  for (const std::string& mark : marks)
    selection.push_back(named(bench, mark));
  return selection;
}

std::unique_ptr<Workbench> shed() {
  return std::make_unique<Workbench>(support::boatShedFront());
}

double stationOf(const Workbench& bench, const std::string& mark) {
  const PieceRef ref = named(bench, mark);
  return *stationOf(*bench.job().walls.find(ref.wall), ref.piece);
}

Strap strapNamed(const Workbench& bench, const std::string& mark) {
  return std::get<Strap>(*findPiece(bench.job(), named(bench, mark)));
}

void set(Workbench& bench, Strap strap, double station, double height) {
  const Id wall = bench.session().wall();
  strap.station = station;
  strap.heightOffset = height;
  bench.session().apply(replacePiece(bench.session().base(), wall, Piece{strap}), "Set strap");
}

TEST(WorkbenchCopies, aPasteIsOneNamedStepAndUndoPutsBackExactly) {
  const auto bench = shed();
  bench->session().select(allNamed(*bench, {"S1", "B1"}));
  ASSERT_TRUE(bench->copySelected());
  bench->session().apply(removePieces(bench->session().base(), allNamed(*bench, {"S4", "B6"})), "Remove 2 pieces", {});
  const Job before = bench->job();
  bench->session().select({named(*bench, "C4")});
  const std::string said = bench->pasteAt(100);
  const Selection made = bench->session().selection();
  ASSERT_EQ(made.size(), 2u);
  const std::string bolt = markOf(bench->job(), made[1]); // other walls have bolts as well
  EXPECT_EQ(said, "pasted: S4 and " + bolt + " at the end 24'-0\" along wall A, turned round");
  EXPECT_EQ(bench->session().history().undoName(), "Paste 2 pieces");
  EXPECT_EQ(stationOf(*bench, "S4"), 285.25);
  EXPECT_EQ(stationOf(*bench, bolt), 277.5);
  bench->session().undo();
  EXPECT_TRUE(bench->job() == before);
}

TEST(WorkbenchCopies, withoutACopyThereIsNothingToPaste) {
  const auto bench = shed();
  bench->session().select({});
  EXPECT_FALSE(bench->copySelected());
  EXPECT_EQ(bench->pasteAt(60), "nothing to paste: copy pieces of a wall first");
  EXPECT_FALSE(bench->session().history().canUndo());
}

TEST(WorkbenchCopies, aCopyIsAsThePieceWasWhenItWasTaken) {
  const auto bench = shed();
  bench->session().select({named(*bench, "B2")});
  ASSERT_TRUE(bench->copySelected());
  bench->removeSelected();
  bench->session().show(bench->job().walls[2].id);
  bench->session().select({});
  const std::string said = bench->pasteAt(66);
  EXPECT_NE(said.find("at 5'-6\""), std::string::npos) << said;
  ASSERT_EQ(bench->session().selection().size(), 1u);
  EXPECT_EQ(bench->session().selection()[0].wall, bench->job().walls[2].id);
}

// What was just pasted is selected: a column among it is not taken for the place of the next one.
TEST(WorkbenchCopies, pastedAgainItGoesWhereThePointerIsNow) {
  const auto bench = shed();
  bench->session().show(bench->job().walls[2].id);
  bench->session().select({});
  const WallLine& back = *bench->job().walls.find(bench->session().wall());
  bench->session().select({{back.id, back.columns.front().id}});
  ASSERT_TRUE(bench->copySelected());
  const std::size_t before = back.columns.size();
  bench->session().select({});
  bench->pasteAt(66);
  bench->pasteAt(78);
  const WallLine& now = *bench->job().walls.find(bench->session().wall());
  ASSERT_EQ(now.columns.size(), before + 2);
  EXPECT_EQ(now.columns[before].station, 66);
  EXPECT_EQ(now.columns[before + 1].station, 78);
}

TEST(WorkbenchCopies, aMirrorInMidDragLetsGoFirst) {
  const auto bench = shed();
  PointerAt pointer;
  pointer.at = {20, 0, 6};
  HitArea hit;
  hit.piece = named(*bench, "B2");
  pointer.hit = hit;
  bench->press(pointer);
  pointer.at.s = 25;
  bench->drag(pointer);
  bench->mirrorSelected();
  EXPECT_FALSE(bench->inHand());
  EXPECT_EQ(stationOf(*bench, "B2"), 20);
  EXPECT_FALSE(bench->session().history().canUndo()) << "B5 stands there already";
}

TEST(WorkbenchCopies, theNameOfAMirrorSaysWhat) {
  const auto bench = shed();
  bench->session().apply(setStation(bench->session().base(), named(*bench, "B2"), 22), "Move bolt");
  bench->session().select({named(*bench, "B2")});
  const std::string said = bench->mirrorSelected();
  const std::string mark = markOf(bench->job(), bench->session().selection().front());
  EXPECT_EQ(said, "mirrored: " + mark + " about the middle of wall A");
  EXPECT_EQ(stationOf(*bench, mark), 266);
  EXPECT_EQ(bench->session().history().undoName(), "Mirror anchor bolt " + mark);
  bench->session().select({named(*bench, "B1")});
  EXPECT_EQ(bench->mirrorSelected(), "nothing to mirror: B6 stands there already");
}

TEST(WorkbenchCopies, aRepeatIsOneStep) {
  const auto bench = shed();
  bench->session().select({named(*bench, "B1")});
  const std::string said = bench->repeatSelected({4.75, 2, Side::Right});
  const std::string mark = markOf(bench->job(), bench->session().selection().front());
  EXPECT_EQ(said, "repeated: " + mark + " every 0'-4 3/4\" · B2 stands there already");
  EXPECT_EQ(stationOf(*bench, mark), 15.25);
  bench->session().undo();
  EXPECT_FALSE(bench->session().history().canUndo());
}

// ---- what the form begins with ----------------------------------------------------------------------------------

TEST(RepeatOffer, boltsAsThePlansAllowTowardMoreRoom) {
  const auto bench = shed();
  const auto offer = [&](const std::vector<std::string>& marks) {
    bench->session().select(allNamed(*bench, marks));
    return repeatOffer(bench->job(), bench->wall()->layout, bench->selectedHere());
  };
  ASSERT_TRUE(offer({"B1"}));
  EXPECT_EQ(offer({"B1"})->repeat.toward, Side::Right);
  EXPECT_EQ(offer({"B3"})->repeat.toward, Side::Left);
  EXPECT_FALSE(offer({"B3"})->repeat.count);
  EXPECT_EQ(offer({"V1"})->repeat.spacing, 16);
  EXPECT_EQ(offer({"S1"})->repeat.spacing, 48);
  EXPECT_EQ(offer({"B1", "B2"})->repeat.spacing, 9.5);
  EXPECT_EQ(offer({"P1", "B2"})->piece, named(*bench, "B2").piece);
  EXPECT_FALSE(offer({"P1", "C1"}));
  bench->session().apply(setLimits(bench->session().base(),
                                   [&] {
                                     JobLimits limits = *bench->job().limits;
                                     limits.planBoltSpacing = 30;
                                     return limits;
                                   }()),
                         "Set options");
  EXPECT_EQ(offer({"B1"})->repeat.spacing, 30);
}

// ---- pairs ------------------------------------------------------------------------------------------------------

TEST(StrapPairs, areThoseThatTheRuleCompares) {
  std::mt19937 random(11);
  std::size_t found = 0;
  for (std::uint64_t seed = 1; seed <= 30; ++seed) {
    const Job job = broken(generateJob(seed, 150), random);
    const ResolvedLimits limits = resolve(*job.limits);
    for (std::size_t i = 0; i < job.walls.size(); ++i) {
      const WallLayout layout = layOut(job, job.walls.pointer(i));
      std::set<std::set<Id>> apart, said;
      for (const StrapPair& pair : strapPairs(layout))
        if (std::abs(pair.left->strap->heightOffset - pair.right->strap->heightOffset) >
            limits[LimitKey::StrapPair] + 1e-6)
          apart.insert({pair.left->id, pair.right->id});
      const Findings findings = checkWall(layout, limits);
      for (const Finding& finding : findings)
        if (finding.rule == RuleId::StrapPair)
          said.insert({finding.pieces[0], finding.pieces[1]});
      EXPECT_EQ(apart, said);
      found += said.size();
    }
  }
  EXPECT_GT(found, 20u);
}

class MatchPair : public ::testing::Test {
protected:
  MatchPair() : bench(shed()), second(strapNamed(*bench, "S2")), third(strapNamed(*bench, "S3")) {
    set(*bench, third, third.station + 0.4375, 0.25);
  }
  bool hasPairFinding() const {
    const auto checked = bench->wall();
    return std::any_of(checked->findings.begin(), checked->findings.end(),
                       [](const Finding& finding) { return finding.rule == RuleId::StrapPair; });
  }
  std::unique_ptr<Workbench> bench;
  Strap second, third;
};

TEST_F(MatchPair, theSecondIsAsHighAndAsFarFromTheOpeningAsTheFirst) {
  EXPECT_TRUE(hasPairFinding());
  bench->session().select(allNamed(*bench, {"S2", "S3"}));
  EXPECT_EQ(bench->matchPair(), "S3 matches S2: 7/16\" left, 1/4\" down");
  EXPECT_EQ(strapNamed(*bench, "S3").station, 288 - second.station);
  EXPECT_EQ(strapNamed(*bench, "S3").heightOffset, 0);
  EXPECT_EQ(strapNamed(*bench, "S2"), second);
  EXPECT_FALSE(hasPairFinding());
  EXPECT_EQ(bench->session().history().undoName(), "Match strap S3 with S2: 7/16\" left, 1/4\" down");
  EXPECT_EQ(bench->matchPair(), "S3 matches S2 already");
  bench->session().undo();
  EXPECT_EQ(strapNamed(*bench, "S3").heightOffset, 0.25);
}

TEST_F(MatchPair, theOneSelectedFirstIsTheMeasure) {
  bench->session().select(allNamed(*bench, {"S3", "S2"}));
  EXPECT_EQ(bench->matchPair(), "S2 matches S3: 7/16\" left, 1/4\" up");
  EXPECT_EQ(strapNamed(*bench, "S2").station, second.station - 0.4375);
}

TEST_F(MatchPair, oneAloneIsTheMeasureForTheOneAcrossTheOpening) {
  bench->session().select({named(*bench, "S2")});
  bench->matchPair();
  EXPECT_EQ(strapNamed(*bench, "S3").station, 288 - second.station);
  EXPECT_EQ(bench->session().selection(), allNamed(*bench, {"S2", "S3"}));
}

TEST_F(MatchPair, anOpeningMatchesTheRightOneWithTheLeft) {
  bench->session().select({named(*bench, "O1")});
  bench->matchPair();
  EXPECT_EQ(strapNamed(*bench, "S3").station, 288 - second.station);
  EXPECT_EQ(strapNamed(*bench, "S3").heightOffset, 0);
}

// The panel goes from 0 to 48: S1 at 3 from its left end puts S2 at 45.
TEST_F(MatchPair, aPanelMatchesItsTwoEnds) {
  set(*bench, strapNamed(*bench, "S1"), 3, 0.0625);
  bench->session().select({named(*bench, "P1")});
  bench->matchPair();
  EXPECT_EQ(strapNamed(*bench, "S2").station, 45);
  EXPECT_EQ(strapNamed(*bench, "S2").heightOffset, 0.0625);
  bench->session().select(allNamed(*bench, {"S2", "S1"}));
  set(*bench, strapNamed(*bench, "S2"), 44, 0);
  bench->matchPair();
  EXPECT_EQ(strapNamed(*bench, "S1").station, 4);
}

TEST_F(MatchPair, whatIsNoPairIsSaid) {
  const auto said = [&](const std::vector<std::string>& marks) {
    bench->session().select(allNamed(*bench, marks));
    return bench->matchPair();
  };
  const Job before = bench->job();
  EXPECT_EQ(said({"S1", "S4"}),
            "S1 and S4 are no pair: they are not at both sides of an opening or both ends of a panel");
  EXPECT_EQ(said({"B1"}), "select one strap or two, or the opening or panel between them");
  EXPECT_EQ(said({"S1", "S2", "S3"}), "select one strap or two, or the opening or panel between them");
  EXPECT_EQ(said({}), "select one strap or two, or the opening or panel between them");
  EXPECT_TRUE(bench->job() == before);
}

// Matching either way leaves the rule silent about that pair, on any wall.
TEST(MatchPairs, theRuleHasNothingLeftToSayOfThem) {
  std::mt19937 random(4);
  std::size_t matched = 0;
  for (std::uint64_t seed = 1; seed <= 12; ++seed) {
    const Job job = broken(generateJob(seed, 150), random);
    for (std::size_t i = 0; i < job.walls.size(); ++i) {
      const WallLayout layout = layOut(job, job.walls.pointer(i));
      for (const StrapPair& pair : strapPairs(layout)) {
        const Id wall = layout.wall->id;
        const auto match = matchPair(layout, {{wall, pair.right->id}, {wall, pair.left->id}});
        if (!match)
          continue;
        EXPECT_EQ(match->second.piece, pair.left->id);
        const Job after = replacePiece(job, wall, Piece{match->matched});
        const Findings findings = checkWall(layOut(after, after.walls.findPointer(wall)), resolve(*after.limits));
        for (const Finding& finding : findings)
          EXPECT_FALSE(finding.rule == RuleId::StrapPair && finding.pieces.size() == 2 &&
                       std::set<Id>(finding.pieces.begin(), finding.pieces.end()) ==
                           std::set<Id>({pair.left->id, pair.right->id}));
        ++matched;
      }
    }
  }
  EXPECT_GT(matched, 20u);
}

// Lifted with the hand, a strap takes the height of its pair, not of the nearest strap.
TEST_F(MatchPair, aStrapLiftedByHandSnapsToItsPair) {
  const Snapped snapped = snapHeight(bench->wall()->layout, second, 0.24, 0.1);
  EXPECT_EQ(snapped.value, 0.25);
  EXPECT_EQ(snapped.reason, SnapReason::PairHeight);
  EXPECT_EQ(snapped.to, third.id);
}

} // namespace
} // namespace sillwright
