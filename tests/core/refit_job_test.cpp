// A whole job laid out again: what each wall gives by itself, in the order of the walls.
#include "core/refit/refit_job.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/rules/rule_book.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

struct Walls {
  Job job;
  std::vector<WallLayout> layouts;
  ResolvedLimits limits;

  explicit Walls(Job of) : job(std::move(of)), limits(resolve(*job.limits)) {
    for (std::size_t i = 0; i < job.walls.size(); ++i)
      layouts.push_back(layOut(job, job.walls.pointer(i)));
  }
};

const std::atomic<bool> goOn = false;

void expectSame(const Result<Refit>& a, const Result<Refit>& b) {
  ASSERT_EQ(a.ok(), b.ok());
  if (a.ok())
    EXPECT_TRUE(*a == *b);
  else
    EXPECT_EQ(a.problem(), b.problem());
}

TEST(RefitJob, everyWallGivesWhatItGivesByItself) {
  for (const Job& job : {support::ridgeHouse(), support::boatShedFrontSteelMoved(), support::boatShedFrontNoRoom(),
                         support::punchListPractice()}) {
    const Walls walls(job);
    for (int round = 0; round < 3; ++round) { // whatever the threads do
      const std::vector<WallRefit> refits = refitJob(walls.layouts, walls.limits, {}, {}, goOn);
      ASSERT_EQ(refits.size(), walls.layouts.size());
      for (std::size_t i = 0; i < refits.size(); ++i) {
        EXPECT_EQ(refits[i].wall, job.walls[i].id);
        ASSERT_TRUE(refits[i].refit);
        expectSame(*refits[i].refit, refit(walls.layouts[i], walls.limits));
      }
    }
  }
}

TEST(RefitJob, wishesAreThoseOfTheirWall) {
  const Walls walls(support::boatShedFrontSteelMoved());
  const WallLine& front = walls.job.walls[0];
  RefitWishes keep;
  keep.staying = {front.straps[0].id}; // it is too near the corner where it is
  const auto refits = refitJob(walls.layouts, walls.limits, {{front.id, keep}}, {}, goOn);
  EXPECT_TRUE(std::holds_alternative<NoLayout>(**refits[0].refit));
  for (std::size_t i = 1; i < refits.size(); ++i)
    EXPECT_TRUE(std::holds_alternative<Proposal>(**refits[i].refit));
}

// What collides at one end of a wall does not hide what collides at the other.
TEST(RefitJob, allThatCollidesOnAWallIsTold) {
  Job job = support::boatShedFrontNoRoom();
  WallLine front = job.walls[0];
  const double length = 288;
  for (const double at : {2.25, 4.75}) { // the same at the right end
    Bar bar = *std::find_if(front.bars.begin(), front.bars.end(), [](const Bar& each) { return each.mark == "V1"; });
    bar.id = takeId(job);
    bar.mark = at < 3 ? "V20" : "V21";
    bar.found = bar.planned;
    bar.found->a.s = bar.found->b.s = length - at;
    front.bars.push_back(bar);
  }
  job.walls.replace(front);
  const Walls walls(job);
  const auto refits = refitJob(walls.layouts, walls.limits, {}, {}, goOn);
  const std::vector<NoLayout> conflicts = refits[0].conflicts();
  ASSERT_EQ(conflicts.size(), 2u);
  EXPECT_TRUE(std::get<NoLayout>(**refits[0].refit) == conflicts[0]);
  const auto isAbout = [&](const NoLayout& conflict, const Strap& strap) {
    return std::any_of(conflict.requirements.begin(), conflict.requirements.end(), [&](const Requirement& each) {
      return std::find(each.pieces.begin(), each.pieces.end(), strap.id) != each.pieces.end();
    });
  };
  EXPECT_TRUE(isAbout(conflicts[0], front.straps.front()));
  EXPECT_FALSE(isAbout(conflicts[0], front.straps.back()));
  EXPECT_TRUE(isAbout(conflicts[1], front.straps.back()));
  for (std::size_t i = 1; i < refits.size(); ++i)
    EXPECT_TRUE(refits[i].conflicts().empty());
}

// The column is as much in the way as the bars: what it would have to give is told, and the nails that keep the strap
// on it.
TEST(RefitJob, whatFramingWouldHaveToGiveIsToldWithTheRest) {
  const Walls walls(support::boatShedFrontNoRoom());
  const auto conflicts = refitJob(walls.layouts, walls.limits, {}, {}, goOn)[0].conflicts();
  ASSERT_EQ(conflicts.size(), 1u);
  const auto find = [&](Requirement::Kind kind, RuleId rule) {
    return std::find_if(conflicts[0].requirements.begin(), conflicts[0].requirements.end(),
                        [&](const Requirement& each) { return each.kind == kind && each.rule == rule; });
  };
  const auto none = conflicts[0].requirements.end();
  const auto leeway = find(Requirement::Kind::Leeway, RuleId::ColumnSill);
  const auto nails = find(Requirement::Kind::Rule, RuleId::StrapColumn);
  ASSERT_NE(leeway, none);
  ASSERT_NE(nails, none);
  // Clear of V19 at 4 3/4 on its right the strap stands at 6 5/16: half of the plate is 1 1/4, of the bar 1/4, and a
  // touch is no clearance. Its nails, 1/2 off its middle and 0.074 thick, leave the column at 4.926; it goes there on
  // marks only from 4 7/8.
  EXPECT_EQ(leeway->by, 1.4375);
  EXPECT_EQ(nails->by, 1.4375);
  EXPECT_EQ(conflicts[0].requirements.size(), 5u); // both bars and the corner
}

TEST(RefitJob, tellsHowFarItIs) {
  const Walls walls(support::ridgeHouse());
  std::vector<std::size_t> told;
  refitJob(
      walls.layouts, walls.limits, {},
      [&](std::size_t done, std::size_t of) {
        EXPECT_EQ(of, walls.layouts.size());
        told.push_back(done);
      },
      goOn);
  ASSERT_EQ(told.size(), walls.layouts.size());
  EXPECT_TRUE(std::is_sorted(told.begin(), told.end()));
}

TEST(RefitJob, wallsNotBegunWhenCancelledHaveNothing) {
  const Walls walls(support::ridgeHouse());
  std::atomic<bool> cancelled = true;
  for (const WallRefit& wall : refitJob(walls.layouts, walls.limits, {}, {}, cancelled)) {
    EXPECT_TRUE(wall.wall);
    EXPECT_FALSE(wall.refit);
  }
  cancelled = false;
  std::size_t done = 0;
  const auto refits = refitJob(
      walls.layouts, walls.limits, {},
      [&](std::size_t count, std::size_t) {
        done = count;
        cancelled = true;
      },
      cancelled);
  EXPECT_LT(done, walls.layouts.size());
  EXPECT_EQ(static_cast<std::size_t>(std::count_if(refits.begin(), refits.end(),
                                                   [](const WallRefit& wall) { return wall.refit.has_value(); })),
            done);
}

// Whatever keeps one wall from being laid out is said of that wall, and the others are done.
TEST(RefitJob, aProblemIsOfItsOwnWall) {
  Job job = support::boatShedFront();
  WallLine front = job.walls[0];
  front.sills.clear();
  job.walls.replace(front);
  const Walls walls(job);
  const auto refits = refitJob(walls.layouts, walls.limits, {}, {}, goOn);
  EXPECT_FALSE(refits[0].refit->ok());
  for (std::size_t i = 1; i < refits.size(); ++i)
    EXPECT_TRUE(refits[i].refit->ok());
}

} // namespace
} // namespace sillwright
