// The optimiser against a general mixed-integer solver that reads the written programme.
#include "core/refit/lp_model.h"

#include <gtest/gtest.h>

#include "lp_solver.h"
#include "sequence_by_trying.h"
#include "sequence_random.h"
#include "sequence_walls.h"

namespace sillwright::sequence {

TEST(LpModel, IsPlainTextWithEveryLevelNamed) {
  RandomProblem random(7);
  const Problem problem = random.whole(1, 2);
  const std::string text = lpModel(problem, {CostLevel::Watch, {.ask = 3}, boltSlots(problem, std::nullopt)});
  for (const char* part : {"Minimize\n cost: + 1 watch\n", "Subject To\n", "Bounds\n", "Binary\n", "End\n"})
    EXPECT_NE(text.find(part), std::string::npos) << part;
  EXPECT_NE(text.find(" + 1 ask <= 3\n"), std::string::npos);
  EXPECT_EQ(text.find(" + 1 watch <="), std::string::npos);
}

#ifdef SILLWRIGHT_GLPK
namespace {

void expectSameCost(const Cost& cost, const Cost& other) {
  EXPECT_EQ(cost.ask, other.ask);
  EXPECT_EQ(cost.pieces, other.pieces);
  EXPECT_EQ(cost.setMoved, other.setMoved);
  EXPECT_EQ(cost.watch, other.watch);
  EXPECT_EQ(cost.movement, other.movement);
}

// 20 to 40 ft; the larger they are, the fewer pieces, so that the solver comes to an end.
WallSize sizeOf(unsigned seed) {
  WallSize size;
  size.feetLeast = 20;
  size.feetMost = seed % 4 == 0 ? 40 : 20;
  size.piersLeast = 1;
  size.piersMost = seed % 4 == 1 ? 2 : 1;
  size.barsLeast = 10;
  size.barsMost = seed % 4 == 2 ? 60 : 25;
  size.options = 1 + seed % 2;
  size.leeway = seed % 4 == 3 ? 2 : 0;
  return size;
}

// Little room for bolts: mostly no layout.
WallSize crowded(unsigned seed) {
  WallSize size;
  size.feetLeast = 8;
  size.feetMost = 14;
  size.piersLeast = 1;
  size.piersMost = 1;
  size.barsLeast = 60;
  size.barsMost = 110;
  size.options = 1 + seed % 2;
  size.leeway = seed % 3;
  size.strapFree = 8;
  size.pitched = false;
  return size;
}

// What can be laid does not depend on these, and the programme is smaller.
Problem withoutCosts(Problem problem) {
  for (Anchored& piece : problem.anchored) {
    piece.reference.reset();
    piece.set = false;
    piece.ground.tolls.clear();
  }
  for (Distance& distance : problem.distances)
    distance.tolls.clear();
  for (Beside& beside : problem.besides)
    for (Ground& ground : beside.options)
      ground.tolls.clear();
  for (SillPiece& sill : problem.sillPieces) {
    sill.reference.clear();
    for (Ground& ground : sill.options)
      ground.tolls.clear();
  }
  return problem;
}

bool canBeSolved(const Problem& problem) {
  return solved(lpModel(problem, {CostLevel::Ask, {}, boltSlotsToLayAtAll(problem)})).has_value();
}

// The needs of the conflict alone have no solution; without any one of them they have.
void expectConflict(const Problem& problem, const Conflict& conflict) {
  Problem rest = problem;
  for (const Need need : needsOf(problem))
    if (std::none_of(conflict.needs.begin(), conflict.needs.end(), [&](const Relaxation& r) { return r.need == need; }))
      rest = without(rest, need);
  EXPECT_FALSE(canBeSolved(rest));
  for (const Relaxation& relaxation : conflict.needs) {
    EXPECT_TRUE(canBeSolved(without(rest, relaxation.need))) << relaxation.need;
    if (!relaxation.by)
      continue;
    EXPECT_TRUE(canBeSolved(relaxed(problem, relaxation.need, *relaxation.by))) << relaxation.need;
    EXPECT_FALSE(canBeSolved(relaxed(problem, relaxation.need, *relaxation.by - 1))) << relaxation.need;
  }
}

} // namespace

TEST(LpModel, SolverFindsWhatTryingFinds) {
  int laid = 0;
  for (unsigned seed = 500; seed < 620 && !testing::Test::HasFailure(); ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    RandomProblem random(seed);
    const Problem problem = random.whole(1 + seed % 2, seed % 3);
    const std::optional<Layout> tried = trying::bestByTrying(problem);
    const std::optional<Cost> cost = solvedInOrder(problem, boltSlots(problem, std::nullopt));
    ASSERT_EQ(cost.has_value(), tried.has_value());
    laid += cost ? 1 : 0;
    if (cost)
      expectSameCost(*cost, tried->cost);
  }
  EXPECT_GT(laid, 15);
}

TEST(LpModel, SolverFindsTheSameOptimumOnRealWalls) {
  int checked = 0;
  int gaveUp = 0;
  for (unsigned seed = 0; seed < 18 && !testing::Test::HasFailure(); ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    RandomWall random(seed);
    const Problem problem = random.wall(sizeOf(seed));
    const auto answer = layInOrder(problem);
    const Layout* layout = std::get_if<Layout>(&answer);
    if (!layout)
      continue;
    try {
      const std::optional<Cost> cost = solvedInOrder(problem, boltSlots(problem, layout->cost));
      ASSERT_TRUE(cost.has_value());
      expectSameCost(*cost, layout->cost);
      ++checked;
    } catch (const GaveUp&) {
      ++gaveUp;
    }
  }
  EXPECT_GT(checked, 9);
  RecordProperty("gave_up", gaveUp);
}

TEST(LpModel, SolverFindsNoLayoutWhereThereIsAConflict) {
  int checked = 0;
  int gaveUp = 0;
  for (unsigned seed = 0; seed < 120 && !testing::Test::HasFailure(); ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    RandomWall random(seed);
    const Problem problem = withoutCosts(random.wall(crowded(seed)));
    const auto answer = layInOrder(problem);
    const Conflict* conflict = std::get_if<Conflict>(&answer);
    try {
      const bool lays = canBeSolved(problem);
      EXPECT_EQ(lays, conflict == nullptr);
      if (conflict)
        expectConflict(problem, *conflict);
      checked += conflict ? 1 : 0;
    } catch (const GaveUp&) {
      ++gaveUp;
    }
  }
  EXPECT_GT(checked, 10);
  RecordProperty("gave_up", gaveUp);
}
#endif

} // namespace sillwright::sequence
