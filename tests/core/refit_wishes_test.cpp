// What a refit is asked beside the wall itself: pieces that stay, an approved layout to go by; and what it refuses.
#include <gtest/gtest.h>

#include "core/edit/operations.h"
#include "core/refit/refit.h"
#include "core/rules/rule_book.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

struct Front {
  Job job = support::boatShedFrontSteelMoved();
  ResolvedLimits limits = resolve(*job.limits);
  WallLine wall = job.walls[0];

  WallLayout layout() const { return layOut(job, std::make_shared<const WallLine>(wall)); }
  Result<Refit> refitted(const RefitWishes& wishes = {}) const { return refit(layout(), limits, wishes); }
  Proposal proposal(const RefitWishes& wishes = {}) const { return std::get<Proposal>(*refitted(wishes)); }
  // So near each other that no strap goes between them.
  void fillCornerWithBars() {
    for (double s = 0.5; s < 6; s += 0.75) {
      Bar bar;
      bar.id = Id{job.nextId + 100 + static_cast<std::uint32_t>(s * 16)};
      bar.planned = {{s, 3.25, -28}, {s, 3.25, -2}};
      wall.bars.push_back(bar);
    }
  }
  std::string refused(const RefitWishes& wishes = {}) const {
    const auto answer = refitted(wishes);
    return answer ? "" : answer.problem().text();
  }
  Strap& strap(const std::string& mark) {
    return *std::find_if(wall.straps.begin(), wall.straps.end(),
                         [&](const Strap& strap) { return strap.mark == mark; });
  }
};

const Change* changeOf(const Proposal& proposal, Id piece) {
  for (const Change& change : proposal.changes)
    if (pieceOf(change) == piece)
      return &change;
  return nullptr;
}

TEST(RefitWishes, aPieceThatStaysStaysAndTheRestIsLaidOutAgain) {
  Front front;
  const Proposal free = front.proposal();
  ASSERT_GE(free.changes.size(), 2u);
  const Id first = pieceOf(free.changes[0]);
  RefitWishes wishes;
  wishes.staying = {first};
  const auto answer = front.refitted(wishes);
  ASSERT_TRUE(answer);
  if (const auto* proposal = std::get_if<Proposal>(&*answer)) {
    EXPECT_EQ(changeOf(*proposal, first), nullptr);
    EXPECT_GE(std::tie(proposal->cost.ask, proposal->cost.pieces, proposal->cost.watch, proposal->cost.movement),
              std::tie(free.cost.ask, free.cost.pieces, free.cost.watch, free.cost.movement));
  } else {
    const NoLayout& none = std::get<NoLayout>(*answer);
    EXPECT_TRUE(std::any_of(none.requirements.begin(), none.requirements.end(), [&](const Requirement& requirement) {
      return requirement.kind == Requirement::Kind::Stays && requirement.pieces == std::vector<Id>{first};
    }));
  }
}

TEST(RefitWishes, movesLeastFromTheApprovedLayoutNotFromWhereThingsHappenToBe) {
  Front front;
  const Job approved = support::boatShedFront();
  front.job = approved;
  front.wall = approved.walls[0];
  const auto plan = std::make_shared<const WallLine>(front.wall);
  const double as = front.strap("S1").station;
  front.strap("S1").station = as + 1.0 / 16; // still good there
  EXPECT_TRUE(front.proposal().changes.empty());
  RefitWishes wishes;
  wishes.reference = plan;
  const Proposal back = front.proposal(wishes);
  ASSERT_EQ(back.changes.size(), 1u);
  EXPECT_EQ(std::get<Strap>(*back.changes[0].after).station, as);
  EXPECT_EQ(back.movement, 0);
}

TEST(RefitWishes, whatIsSetMovesOnlyWhereNothingElseCan) {
  Front front;
  const Proposal before = front.proposal();
  ASSERT_FALSE(before.changes.empty());
  for (const Bolt& bolt : front.wall.bolts)
    front.wall.readings.push_back({bolt.id, bolt.station, {}, {}, {}, 24, {}, true, {}, {}, {}});
  const Proposal after = front.proposal();
  for (const Bolt& bolt : front.wall.bolts)
    EXPECT_EQ(changeOf(after, bolt.id), nullptr);
  EXPECT_EQ(after.cost.setMoved, 0);
}

TEST(RefitWishes, withoutTargetsItMovesNoFarther) {
  Front front;
  RefitWishes wishes;
  wishes.targets = false;
  EXPECT_LE(front.proposal(wishes).movement, front.proposal().movement);
}

TEST(RefitLaysOut, anEmptyWallWithStrapsAtTheMarkedPanelEndsAndFewestBolts) {
  Front front;
  front.job = support::boatShedFront();
  front.wall = front.job.walls[0];
  const std::size_t straps = front.wall.straps.size();
  RefitWishes wishes;
  wishes.boltToAdd = front.wall.bolts.front();
  front.wall.straps.clear();
  front.wall.bolts.clear();
  const Proposal proposal = front.proposal(wishes);
  std::size_t newStraps = 0, newBolts = 0;
  for (const Change& change : proposal.changes) {
    EXPECT_FALSE(change.before);
    newStraps += kindOf(change) == PieceKind::Strap;
    newBolts += kindOf(change) == PieceKind::Bolt;
  }
  EXPECT_EQ(newStraps, straps);
  EXPECT_EQ(newBolts, 4u); // two to each of the two pieces of sill: IRC R403.1.6
  EXPECT_EQ(proposal.cost.watch, 0);
  EXPECT_EQ(proposal.cost.pieces, 4);
}

// One pier has no layout; the other has, and what has to move there is said all the same.
TEST(RefitWishes, whereOnePartHasNoLayoutTheOtherIsStillLaidOut) {
  Front front;
  front.job = support::boatShedFrontNoRoom();
  front.wall = front.job.walls[0];
  Strap& right = front.strap("S4");
  right.station += 3; // off its column
  const auto answer = front.refitted();
  ASSERT_TRUE(answer) << answer.problem().text();
  const auto* none = std::get_if<NoLayout>(&*answer);
  ASSERT_NE(none, nullptr);
  ASSERT_EQ(none->elsewhere.size(), 1u);
  EXPECT_EQ(pieceOf(none->elsewhere[0]), right.id);
  const Column& column = *findIn(front.wall.columns, right.column);
  EXPECT_LT(std::abs(standAfter(front.wall, none->elsewhere[0])->station - column.station), 2.75);
  for (const Requirement& requirement : none->requirements)
    EXPECT_EQ(std::find(requirement.pieces.begin(), requirement.pieces.end(), right.id), requirement.pieces.end());
}

// An edge distance gives up to the edge, never past it.
TEST(RefitWishes, aStrapIsNeverSaidToDoPastTheEndOfTheConcrete) {
  Front front;
  front.job = support::boatShedFrontNoRoom();
  front.wall = front.job.walls[0];
  const auto answer = front.refitted();
  const NoLayout& none = std::get<NoLayout>(*answer);
  bool edge = false;
  for (const Requirement& requirement : none.requirements)
    if (requirement.kind == Requirement::Kind::Rule && requirement.rule == RuleId::StrapEdge) {
      edge = true;
      EXPECT_LE(requirement.by.value_or(0), findStrapType(*front.job.types, front.strap("S1").type)->edgeMinimum);
    }
  EXPECT_TRUE(edge);
}

TEST(RefitRefuses, aWallWithoutSill) {
  Front front;
  front.wall.sills.clear();
  EXPECT_EQ(front.refused(), "wall A: there is no sill: nothing says where bolts and columns may stand");
  front.wall.straps.clear();
  front.wall.bolts.clear();
  front.wall.rods.clear();
  front.wall.panels.clear();
  EXPECT_TRUE(front.proposal().changes.empty()); // and nothing to lay out either
}

TEST(RefitRefuses, aMarkedPanelEndWithoutColumn) {
  Front front;
  const Panel panel = front.wall.panels.front();
  std::erase_if(front.wall.columns, [&](const Column& column) { return column.station < panel.from + 12; });
  for (Strap& strap : front.wall.straps)
    if (!findIn(front.wall.columns, strap.column))
      strap.column = front.wall.columns.back().id;
  EXPECT_EQ(front.refused(), "wall A: panel " + panel.mark +
                                 ", left end: there is no column there for the strap that mark " + panel.leftMark +
                                 " calls for");
}

TEST(RefitRefuses, moreStrapsThanColumns) {
  Front front;
  front.wall.panels.clear();
  for (int i = 0; i < 9; ++i) {
    Strap more = front.wall.straps.front();
    more.id = Id{front.job.nextId + static_cast<std::uint32_t>(i)};
    more.mark = "X" + std::to_string(i);
    more.column = {};
    front.wall.straps.push_back(more);
  }
  const std::string why = front.refused();
  EXPECT_NE(why.find("has no column to hang on: there are more straps than columns"), std::string::npos) << why;
}

TEST(RefitRefuses, aLayoutToGoByThatIsOfAnotherWallAndPiecesThatAreNotThere) {
  Front front;
  RefitWishes wishes;
  wishes.reference = front.job.walls.pointer(1);
  EXPECT_EQ(front.refused(wishes), "wall A: the layout to go by is of another wall");
  RefitWishes missing;
  missing.staying = {Id{4000000}};
  EXPECT_EQ(front.refused(missing), "wall A: a piece that is to stay where it is, is not there");
}

TEST(RefitRefuses, aPieceOfSillWithNoTapeMarkOnIt) {
  Front front;
  Sill& sill = front.wall.sills.front();
  sill.splices = {sill.to - 0.04};
  sill.to -= 0.01; // off the marks on both sides
  EXPECT_EQ(front.refused(), "wall A: a piece of sill is so short that no tape mark lies on it");
}

TEST(RefitRefuses, wallsWithNothingOnThemQuietly) {
  Front front;
  WallLine empty = front.wall;
  forEachList(empty, [](auto& list) { list.clear(); });
  front.wall = empty;
  const Proposal proposal = front.proposal();
  EXPECT_TRUE(proposal.changes.empty());
  EXPECT_EQ(proposal.movement, 0);
}

TEST(RefitLaysOut, andSaysOfAStrapThatIsToBeAddedWhatItsColumnCannotTake) {
  Front front;
  const Strap strap = front.strap("S1");
  std::erase_if(front.wall.straps, [&](const Strap& other) { return other.id == strap.id; });
  front.fillCornerWithBars();
  const auto answer = front.refitted();
  ASSERT_TRUE(answer) << answer.problem().text();
  const auto* none = std::get_if<NoLayout>(&*answer);
  ASSERT_NE(none, nullptr);
  for (const Requirement& requirement : none->requirements)
    for (const Id piece : requirement.pieces)
      EXPECT_TRUE(findPiece(front.wall, piece)) << piece.value;
  EXPECT_TRUE(std::any_of(none->requirements.begin(), none->requirements.end(), [&](const Requirement& requirement) {
    return !requirement.pieces.empty() && requirement.pieces[0] == strap.column;
  }));
}

TEST(RefitRefuses, nothingForAColumnWithoutLeewayButSaysThatItHasNone) {
  Front front; // bars on both sides of the strap at the corner, and a column that gives nothing
  Strap& strap = front.strap("S1");
  front.fillCornerWithBars();
  const auto answer = front.refitted();
  ASSERT_TRUE(answer) << answer.problem().text();
  const auto* none = std::get_if<NoLayout>(&*answer);
  ASSERT_NE(none, nullptr);
  EXPECT_FALSE(none->requirements.empty());
  EXPECT_TRUE(std::any_of(none->requirements.begin(), none->requirements.end(), [&](const Requirement& requirement) {
    return std::find(requirement.pieces.begin(), requirement.pieces.end(), strap.id) != requirement.pieces.end();
  }));
}

} // namespace
} // namespace sillwright
