// Small problems worked by hand, and what dropping, relaxing and tightening do to each kind of need.
#include <gtest/gtest.h>

#include "core/refit/sequence.h"

namespace sillwright::sequence {
namespace {

constexpr Need kBar = 1, kLeast = 2, kFirst = 3, kLast = 4, kMost = 5, kGap = 6, kLeeway = 7, kOnColumn = 8, kFixed = 9;

ReferenceBolt boltAt(Mark station) {
  ReferenceBolt bolt;
  bolt.station = station;
  bolt.shift = {0};
  return bolt;
}

// Marks 0 to 100, bolts at most 12 from the ends, 10 to 40 apart; as planned at 10, 45 and 90.
Problem sill() {
  SillPiece piece;
  piece.stretch = {0, 100};
  piece.least = 2;
  piece.leastNeed = kLeast;
  piece.first = Window{12, kFirst};
  piece.last = Window{12, kLast};
  piece.most = {{0, 100, 40, kMost}};
  piece.options = {Ground{}};
  piece.reference = {boltAt(10), boltAt(45), boltAt(90)};
  Problem problem;
  problem.sillPieces = {piece};
  problem.leastGaps = {{0, 0, 10, kGap}};
  return problem;
}

void block(Problem& problem, Mark from, Mark to, Need need = kBar) {
  problem.sillPieces[0].options[0].blocked.push_back({from, to, need});
}

Layout laid(const Problem& problem) {
  const auto answer = layInOrder(problem);
  EXPECT_TRUE(std::holds_alternative<Layout>(answer));
  return std::holds_alternative<Layout>(answer) ? std::get<Layout>(answer) : Layout{};
}

Conflict conflictIn(const Problem& problem) {
  const auto answer = layInOrder(problem);
  EXPECT_TRUE(std::holds_alternative<Conflict>(answer));
  return std::holds_alternative<Conflict>(answer) ? std::get<Conflict>(answer) : Conflict{};
}

std::vector<Mark> stationsOf(const Layout& layout) {
  std::vector<Mark> stations;
  for (const PlacedBolt& bolt : layout.bolts)
    stations.push_back(bolt.station);
  return stations;
}

std::optional<Mark> reliefOf(const Conflict& conflict, Need need) {
  for (const Relaxation& relaxation : conflict.needs)
    if (relaxation.need == need)
      return relaxation.by;
  ADD_FAILURE() << "need " << need << " is not in the conflict";
  return std::nullopt;
}

} // namespace

TEST(SequenceWorked, WhatHoldsAlreadyStaysWithTheRoomItHas) {
  Problem problem = sill();
  problem.sillPieces[0].reference = {boltAt(10), boltAt(48), boltAt(90)};
  problem.sillPieces[0].most[0].most = 45;
  const Layout layout = laid(problem);
  EXPECT_EQ(stationsOf(layout), (std::vector<Mark>{10, 48, 90}));
  EXPECT_EQ(layout.cost, Cost{});
  EXPECT_EQ(layout.room, 2); // 10 and 90 are 2 within their windows; 42 is 3 within the most gap
}

TEST(SequenceWorked, AMostGapDrawsTheBoltNearer) {
  const Layout layout = laid(sill()); // 45 to 90 is 45, more than 40: 5 to share; 88 is the end of the last window
  EXPECT_EQ(stationsOf(layout), (std::vector<Mark>{10, 48, 88}));
  EXPECT_EQ(layout.cost.movement, 5);
}

TEST(SequenceWorked, ABarMovesTheBoltToItsNearerSide) {
  Problem problem = sill();
  block(problem, 30, 50);
  const Layout layout = laid(problem);
  EXPECT_EQ(stationsOf(layout), (std::vector<Mark>{10, 50, 90}));
  EXPECT_EQ(layout.cost.movement, 5);
  EXPECT_EQ(layout.room, 0);
}

TEST(SequenceWorked, ABoltIsAddedOnlyWhereMovingCannotDo) {
  Problem problem = sill();
  block(problem, 30, 70);
  const Layout layout = laid(problem);
  EXPECT_EQ(layout.cost.pieces, 1);
  // 10 and 90 stay; of 45 and a new one, 45 goes back to 30 and the new one stands at 70.
  EXPECT_EQ(stationsOf(layout), (std::vector<Mark>{10, 30, 70, 90}));
  EXPECT_EQ(layout.cost.movement, 15);
  EXPECT_EQ(layout.bolts[1].reference, 1);
  EXPECT_FALSE(layout.bolts[2].reference.has_value());
}

TEST(SequenceWorked, ABoltOfAnotherMakeIsAnotherBolt) {
  Problem problem = sill();
  problem.sillPieces[0].most[0].most = 45;
  problem.sillPieces[0].reference[1].shift = {kFar};
  const Layout layout = laid(problem);
  // Whatever stands between 10 and 90 is not the old one: 10 goes to 12 at most and 88 … 100 is the last window, so one
  // is needed there.
  ASSERT_EQ(layout.bolts.size(), 3u);
  EXPECT_EQ(layout.cost, (Cost{.pieces = 2}));
  EXPECT_FALSE(layout.bolts[1].reference.has_value());
  ASSERT_EQ(layout.removed.size(), 1u);
  EXPECT_EQ(layout.removed[0], (RemovedBolt{0, 1}));
}

TEST(SequenceWorked, ABoltStaysInTheOptionOfItsOwnMake) {
  Problem problem = sill();
  problem.depthOptions = 2;
  problem.sillPieces[0].most[0].most = 45;
  problem.sillPieces[0].options = {Ground{}, Ground{}};
  for (ReferenceBolt& bolt : problem.sillPieces[0].reference)
    bolt.shift = {kFar, 3};
  problem.leastGaps = {{0, 0, 10, kGap}, {0, 1, 10, kGap}, {1, 0, 10, kGap}, {1, 1, 10, kGap}};
  const Layout layout = laid(problem);
  EXPECT_EQ(stationsOf(layout), (std::vector<Mark>{10, 45, 90}));
  for (const PlacedBolt& bolt : layout.bolts)
    EXPECT_EQ(bolt.option, 1);
  EXPECT_EQ(layout.cost, (Cost{.movement = 9}));
}

TEST(SequenceWorked, ABarOverTheWholeFirstWindowIsAConflictOfThree) {
  Problem problem = sill();
  block(problem, -kFar, 20);
  const Conflict conflict = conflictIn(problem);
  EXPECT_EQ(conflict.needs.size(), 3u);
  EXPECT_EQ(reliefOf(conflict, kBar), 8);
  EXPECT_EQ(reliefOf(conflict, kFirst), 8);
  EXPECT_EQ(reliefOf(conflict, kLeast), std::nullopt);
}

TEST(SequenceWorked, TwoConflictsAtOnceCannotBeRelievedByOneNeed) {
  Problem problem = sill();
  block(problem, -kFar, 20);
  block(problem, 80, kFar, 10);
  for (const Relaxation& relaxation : conflictIn(problem).needs)
    EXPECT_EQ(relaxation.by, std::nullopt);
}

TEST(SequenceWorked, AFixedBoltBehindABarIsNamed) {
  Problem problem = sill();
  problem.sillPieces[0].reference[1].fixed = kFixed;
  problem.sillPieces[0].most[0].most = 50;
  block(problem, 40, 52);
  const Conflict conflict = conflictIn(problem);
  EXPECT_EQ(conflict.needs.size(), 2u);
  EXPECT_EQ(reliefOf(conflict, kFixed), std::nullopt);
  EXPECT_EQ(reliefOf(conflict, kBar), 5); // 45 … 47
}

TEST(SequenceWorked, AColumnTakesItsStrapAlong) {
  Problem problem;
  Anchored column;
  column.own = {98, 102};
  column.ownNeed = kLeeway;
  column.outermost = {90, 110};
  column.reference = 100;
  Anchored strap;
  strap.own = strap.outermost = {80, 120};
  strap.reference = 104;
  strap.ground.blocked = {{97, 107, kBar}};
  problem.anchored = {column, strap};
  Distance onColumn;
  onColumn.left = 0;
  onColumn.right = 1;
  onColumn.allowed = {{-5, 5}};
  onColumn.need = kOnColumn;
  problem.distances = {onColumn};
  const Layout layout = laid(problem);
  EXPECT_EQ(layout.anchored, (std::vector<Mark>{102, 107})); // 2 + 3; the other way 0 + 7
  EXPECT_EQ(layout.cost.movement, 5);
}

TEST(SequenceWorked, AnEmptyFrameIsAConflictWithoutNeeds) {
  Problem problem;
  Anchored piece;
  piece.own = piece.outermost = {5, 4};
  problem.anchored = {piece};
  EXPECT_TRUE(conflictIn(problem).needs.empty());
}

TEST(SequenceWorked, AnEmptyProblemIsLaid) {
  const Layout layout = laid(Problem{});
  EXPECT_TRUE(layout.bolts.empty());
  EXPECT_EQ(layout.room, kMostRoom);
}

TEST(SequenceWorked, RelaxingGivesAtBothEnds) {
  Problem problem = sill();
  block(problem, 30, 50);
  EXPECT_EQ(relaxed(problem, kBar, 3).sillPieces[0].options[0].blocked[0].from, 33);
  EXPECT_EQ(relaxed(problem, kBar, 3).sillPieces[0].options[0].blocked[0].to, 47);
  EXPECT_EQ(relaxed(problem, kFirst, 3).sillPieces[0].first->farthest, 15);
  EXPECT_EQ(relaxed(problem, kFirst, 3).sillPieces[0].last->farthest, 12);
  EXPECT_EQ(relaxed(problem, kMost, 3).sillPieces[0].most[0].most, 43);
  EXPECT_EQ(relaxed(problem, kGap, 3).leastGaps[0].least, 7);
  EXPECT_EQ(relaxed(problem, kLeast, 3).sillPieces[0].least, 2);
}

TEST(SequenceWorked, TighteningLeavesWhatCannotSlide) {
  Problem problem = sill();
  block(problem, 30, 50);
  Anchored single;
  single.own = single.outermost = {40, 40};
  single.ground.blocked = {{41, 45, kBar}};
  Anchored sliding = single;
  sliding.own = sliding.outermost = {30, 40};
  problem.anchored = {single, sliding};
  const Problem tight = tightened(problem, 2);
  EXPECT_EQ(tight.anchored[0].own, (Stretch{40, 40}));
  EXPECT_EQ(tight.anchored[0].ground.blocked[0].from, 41);
  EXPECT_EQ(tight.anchored[1].own, (Stretch{32, 38}));
  EXPECT_EQ(tight.anchored[1].ground.blocked[0].from, 39);
  EXPECT_EQ(tight.sillPieces[0].options[0].blocked[0].from, 28);
  EXPECT_EQ(tight.sillPieces[0].options[0].blocked[0].to, 52);
  EXPECT_EQ(tight.sillPieces[0].first->farthest, 10);
  EXPECT_EQ(tight.sillPieces[0].most[0].most, 38);
  EXPECT_EQ(tight.leastGaps[0].least, 12);
  EXPECT_EQ(tight.sillPieces[0].least, 2);
}

TEST(SequenceWorked, EveryNeedIsListedOnce) {
  Problem problem = sill();
  block(problem, 30, 50);
  block(problem, 60, 61);
  problem.sillPieces[0].reference[0].fixed = kFixed;
  EXPECT_EQ(needsOf(problem), (std::vector<Need>{kBar, kLeast, kFirst, kLast, kMost, kGap, kFixed}));
}

} // namespace sillwright::sequence
