// Walls of jobs as they are put for the optimiser, against a general mixed-integer solver that reads the written
// programme: the same counts and the same movement.
#include <gtest/gtest.h>

#include <random>

#include "core/refit/refit.h"
#include "core/refit/wall_parts.h"
#include "core/rules/rule_book.h"
#include "lp_solver.h"
#include "tests/support/disturbed_job.h"

namespace sillwright {
namespace {

using sequence::Cost;

// A wall in parts costs what the whole of it costs, or neither has a layout.
TEST(RefitProblem, ofAWallInPartsHasTheSameLayoutsAsTheWhole) {
  std::mt19937 random(21);
  int laidOut = 0, none = 0, inParts = 0;
  for (std::uint64_t seed = 1; seed <= 16; ++seed) {
    const Job job = disturbed(soundJob(seed), random);
    const ResolvedLimits limits = resolve(*job.limits);
    for (std::size_t i = 0; i < job.walls.size(); ++i) {
      const auto whole = wallProblem(layOut(job, job.walls.pointer(i)), limits, {});
      if (!whole)
        continue;
      std::optional<Cost> sum = Cost{};
      const std::vector<WallProblem> parts = partsOf(*whole);
      inParts += parts.size() > 1;
      for (const WallProblem& part : parts) {
        if (!sequence::canBeLaid(part.problem)) {
          sum.reset();
          break;
        }
        const Cost cost = std::get<sequence::Layout>(sequence::layInOrder(part.problem)).cost;
        sum->ask += cost.ask;
        sum->pieces += cost.pieces;
        sum->setMoved += cost.setMoved;
        sum->watch += cost.watch;
        sum->movement += cost.movement;
      }
      ASSERT_EQ(sequence::canBeLaid(whole->problem), sum.has_value()) << "seed " << seed << " wall " << i;
      none += !sum;
      if (!sum)
        continue;
      const Cost cost = std::get<sequence::Layout>(sequence::layInOrder(whole->problem)).cost;
      EXPECT_EQ(cost, *sum) << "seed " << seed << " wall " << i;
      ++laidOut;
    }
  }
  EXPECT_GT(laidOut, 60);
  EXPECT_GT(none, 1);
  EXPECT_GT(inParts, 10);
}

#ifdef SILLWRIGHT_GLPK
// Where the solver gives up nothing is compared; how often it may is bounded.
TEST(RefitProblem, hasTheOptimumThatAGeneralSolverFinds) {
  std::mt19937 random(22);
  int checked = 0, none = 0, gaveUp = 0;
  for (std::uint64_t seed = 1; seed <= 10; ++seed) {
    const Job job = disturbed(soundJob(seed), random);
    const ResolvedLimits limits = resolve(*job.limits);
    for (std::size_t i = 0; i < std::min<std::size_t>(job.walls.size(), 4); ++i) {
      const auto whole = wallProblem(layOut(job, job.walls.pointer(i)), limits, {});
      if (!whole)
        continue;
      for (const WallProblem& part : partsOf(*whole)) {
        SCOPED_TRACE("seed " + std::to_string(seed) + " wall " + std::to_string(i));
        try {
          if (!sequence::canBeLaid(part.problem)) {
            const std::vector<int> slots = sequence::boltSlotsToLayAtAll(part.problem);
            EXPECT_FALSE(
                sequence::solved(sequence::lpModel(part.problem, {sequence::CostLevel::Ask, {}, slots})).has_value());
            ++none;
            continue;
          }
          const Cost cost = std::get<sequence::Layout>(sequence::layInOrder(part.problem)).cost;
          const auto found = sequence::solvedInOrder(part.problem, sequence::boltSlots(part.problem, cost));
          ASSERT_TRUE(found);
          EXPECT_EQ(*found, cost);
          ++checked;
        } catch (const sequence::GaveUp&) {
          ++gaveUp;
        }
      }
    }
  }
  EXPECT_GT(checked, 40);
  EXPECT_LT(gaveUp, 5);
}
#endif

} // namespace
} // namespace sillwright
