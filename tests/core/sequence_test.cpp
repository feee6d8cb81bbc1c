// The optimiser against trying every layout.
#include "core/refit/sequence.h"

#include <gtest/gtest.h>

#include "core/refit/sequence_mirror.h"
#include "sequence_by_trying.h"
#include "sequence_random.h"
#include "sequence_walls.h"

namespace sillwright::sequence {
namespace {

void expectSame(const Layout& layout, const Layout& tried) {
  EXPECT_EQ(layout.cost.ask, tried.cost.ask);
  EXPECT_EQ(layout.cost.pieces, tried.cost.pieces);
  EXPECT_EQ(layout.cost.setMoved, tried.cost.setMoved);
  EXPECT_EQ(layout.cost.watch, tried.cost.watch);
  EXPECT_EQ(layout.cost.movement, tried.cost.movement);
  EXPECT_EQ(layout.room, tried.room);
  EXPECT_EQ(layout.anchored, tried.anchored);
  EXPECT_TRUE(layout.bolts == tried.bolts);
}

void expectRemovedRest(const Problem& problem, const Layout& layout) {
  std::size_t references = 0;
  for (const SillPiece& sill : problem.sillPieces)
    references += sill.reference.size();
  const auto matched = std::count_if(layout.bolts.begin(), layout.bolts.end(),
                                     [](const PlacedBolt& bolt) { return bolt.reference.has_value(); });
  EXPECT_EQ(matched + layout.removed.size(), references);
  EXPECT_EQ(layout.cost.pieces, static_cast<int>(layout.removed.size() + layout.bolts.size() - matched));
}

// The same problem with the answer as its reference; what was set or fixed still is.
Problem againFrom(const Problem& problem, const Layout& layout) {
  Problem again = problem;
  for (std::size_t index = 0; index < again.anchored.size(); ++index)
    again.anchored[index].reference = layout.anchored[index];
  for (SillPiece& sill : again.sillPieces)
    sill.reference.clear();
  for (const PlacedBolt& bolt : layout.bolts) {
    ReferenceBolt reference;
    if (bolt.reference)
      reference = problem.sillPieces[bolt.sillPiece].reference[*bolt.reference];
    reference.station = bolt.station;
    reference.shift.resize(problem.depthOptions, 0);
    for (int option = 0; option < problem.depthOptions; ++option)
      if (reference.shift[option] != kFar) // what is of another make still is
        reference.shift[option] = option == bolt.option ? 0 : 1;
    again.sillPieces[bolt.sillPiece].reference.push_back(reference);
  }
  return again;
}

void expectMinimal(const Problem& problem, const Conflict& conflict) {
  Problem rest = problem;
  for (const Need need : needsOf(problem))
    if (std::none_of(conflict.needs.begin(), conflict.needs.end(), [&](const Relaxation& r) { return r.need == need; }))
      rest = without(rest, need);
  EXPECT_FALSE(trying::anyByTrying(rest));
  for (const Relaxation& relaxation : conflict.needs)
    EXPECT_TRUE(trying::anyByTrying(without(rest, relaxation.need))) << relaxation.need;
}

void expectLeastRelaxations(const Problem& problem, const Conflict& conflict) {
  for (const Relaxation& relaxation : conflict.needs) {
    SCOPED_TRACE("need " + std::to_string(relaxation.need));
    if (!relaxation.by) {
      EXPECT_FALSE(trying::anyByTrying(relaxed(problem, relaxation.need, 60)));
      continue;
    }
    EXPECT_TRUE(trying::anyByTrying(relaxed(problem, relaxation.need, *relaxation.by)));
    EXPECT_FALSE(trying::anyByTrying(relaxed(problem, relaxation.need, *relaxation.by - 1)));
  }
}

struct Counts {
  int laid = 0;
  int conflicts = 0;
  int roomy = 0;
};

void expectLaidAsTried(const Problem& problem, const std::variant<Layout, Conflict>& answer, Counts& counts) {
  const std::optional<Layout> tried = trying::bestByTrying(problem);
  EXPECT_EQ(canBeLaid(problem), tried.has_value());
  if (const Layout* layout = std::get_if<Layout>(&answer)) {
    ++counts.laid;
    counts.roomy += layout->room > 0 ? 1 : 0;
    ASSERT_TRUE(tried.has_value());
    expectSame(*layout, *tried);
    expectRemovedRest(problem, *layout);
    return;
  }
  ++counts.conflicts;
  EXPECT_FALSE(tried.has_value());
}

void expectAsTried(const Problem& problem, Counts& counts) {
  const std::variant<Layout, Conflict> answer = layInOrder(problem);
  expectLaidAsTried(problem, answer, counts);
  if (const Conflict* conflict = std::get_if<Conflict>(&answer)) {
    expectMinimal(problem, *conflict);
    expectLeastRelaxations(problem, *conflict);
  }
}

void expectAll(int cases, unsigned firstSeed, int sillPieces, int anchored) {
  Counts counts;
  for (int index = 0; index < cases && !testing::Test::HasFailure(); ++index) {
    SCOPED_TRACE("seed " + std::to_string(firstSeed + index));
    RandomProblem random(firstSeed + index);
    expectAsTried(random.whole(sillPieces, anchored), counts);
  }
  EXPECT_GT(counts.laid, cases / 8);
  EXPECT_GT(counts.conflicts, cases / 20);
  EXPECT_GT(counts.roomy, 0);
}

} // namespace

TEST(Sequence, BoltsOfOneSillPieceAsTried) {
  expectAll(1500, 1000, 1, 0);
}
TEST(Sequence, BoltsOfTwoSillPiecesAsTried) {
  expectAll(600, 20000, 2, 0);
}
TEST(Sequence, AnchoredPiecesAloneAsTried) {
  expectAll(1500, 40000, 0, 3);
}
TEST(Sequence, BoltsAndOnePieceAsTried) {
  expectAll(1000, 60000, 1, 1);
}
TEST(Sequence, BoltsAndThreePiecesAsTried) {
  expectAll(800, 80000, 1, 3);
}
TEST(Sequence, TwoSillPiecesAndTwoPiecesAsTried) {
  expectAll(1000, 100000, 2, 2);
}

TEST(Sequence, PiecesThatSeeEachOtherPastBoltsAsTried) {
  Counts counts;
  for (unsigned seed = 600000; seed < 602500 && !testing::Test::HasFailure(); ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    RandomProblem random(seed);
    expectAsTried(random.linked(1 + seed % 2, 2 + seed % 3), counts);
  }
  EXPECT_GT(counts.laid, 500);
  EXPECT_GT(counts.conflicts, 100);
}

TEST(Sequence, BoltsOnManyMarksAsTried) {
  Counts counts;
  for (unsigned seed = 300000; seed < 300400 && !testing::Test::HasFailure(); ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    RandomProblem random(seed);
    const Problem small = random.bolts(1);
    const Problem problem = random.stretched(small, random.between(2, 4));
    expectLaidAsTried(problem, layInOrder(problem), counts);
  }
  EXPECT_GT(counts.laid, 100);
  EXPECT_GT(counts.roomy, 20);
}

TEST(Sequence, SeenFromTheOtherSideCostAndRoomAreTheSame) {
  int laid = 0;
  for (unsigned seed = 400000; seed < 401500 && !testing::Test::HasFailure(); ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    RandomProblem random(seed);
    const Problem problem = random.whole(1 + seed % 2, seed % 4);
    const auto answer = layInOrder(problem);
    const auto turned = layInOrder(mirrored(problem));
    ASSERT_EQ(answer.index(), turned.index());
    const Layout* layout = std::get_if<Layout>(&answer);
    if (!layout)
      continue;
    ++laid;
    EXPECT_TRUE(layout->cost == std::get<Layout>(turned).cost);
    EXPECT_EQ(layout->room, std::get<Layout>(turned).room);
  }
  EXPECT_GT(laid, 200);
}

// Columns with leeway have more stances than are looked at first.
TEST(Sequence, RealWallsWithLeewayCostTheSameFromTheOtherSideAndLaidAgainStay) {
  int laid = 0;
  for (unsigned seed = 0; seed < 10 && !testing::Test::HasFailure(); ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    WallSize size;
    size.feetMost = 24;
    size.piersLeast = size.piersMost = 2;
    size.leeway = 4 + 4 * static_cast<Mark>(seed % 2);
    size.options = 1 + static_cast<int>(seed % 2);
    const Problem problem = RandomWall(seed).wall(size);
    const auto answer = layInOrder(problem);
    const auto turned = layInOrder(mirrored(problem));
    ASSERT_EQ(answer.index(), turned.index());
    const Layout* layout = std::get_if<Layout>(&answer);
    if (!layout)
      continue;
    ++laid;
    EXPECT_TRUE(layout->cost == std::get<Layout>(turned).cost);
    EXPECT_EQ(layout->room, std::get<Layout>(turned).room);
    const auto again = layInOrder(againFrom(problem, *layout));
    ASSERT_TRUE(std::holds_alternative<Layout>(again));
    EXPECT_TRUE(std::get<Layout>(again).cost == (Cost{.ask = layout->cost.ask, .watch = layout->cost.watch}));
    EXPECT_EQ(std::get<Layout>(again).anchored, layout->anchored);
  }
  EXPECT_GT(laid, 5);
}

TEST(Sequence, TightenedByItsRoomTheCostIsTheSameAndByMoreItIsNot) {
  int laid = 0;
  for (unsigned seed = 500000; seed < 501500 && !testing::Test::HasFailure(); ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    RandomProblem random(seed);
    const Problem problem = random.whole(1 + seed % 2, seed % 4);
    const auto answer = layInOrder(problem);
    const Layout* layout = std::get_if<Layout>(&answer);
    if (!layout)
      continue;
    ++laid;
    const auto tight = layInOrder(tightened(problem, layout->room));
    ASSERT_TRUE(std::holds_alternative<Layout>(tight));
    EXPECT_TRUE(std::get<Layout>(tight).cost == layout->cost);
    if (layout->room == kMostRoom)
      continue;
    const auto tighter = layInOrder(tightened(problem, layout->room + 1));
    const Layout* dearer = std::get_if<Layout>(&tighter);
    EXPECT_TRUE(!dearer || layout->cost < dearer->cost);
  }
  EXPECT_GT(laid, 200);
}

TEST(Sequence, LaidAgainFromItsOwnAnswerNothingMoves) {
  int laid = 0;
  for (unsigned seed = 200000; seed < 201500; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    RandomProblem random(seed);
    const Problem problem = random.whole(1 + seed % 2, seed % 4);
    const auto answer = layInOrder(problem);
    const Layout* layout = std::get_if<Layout>(&answer);
    if (!layout)
      continue;
    ++laid;
    const auto again = layInOrder(againFrom(problem, *layout));
    ASSERT_TRUE(std::holds_alternative<Layout>(again));
    const Layout& same = std::get<Layout>(again);
    EXPECT_EQ(same.cost.movement, 0);
    EXPECT_EQ(same.cost.pieces, 0);
    EXPECT_EQ(same.anchored, layout->anchored);
    EXPECT_EQ(same.bolts.size(), layout->bolts.size());
  }
  EXPECT_GT(laid, 200);
}

} // namespace sillwright::sequence
