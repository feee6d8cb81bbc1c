// Whatever is edited, in whatever order: the checker that follows says what a full check says.
#include <gtest/gtest.h>

#include <array>
#include <random>

#include "core/edit/operations.h"
#include "core/model/lookup.h"
#include "core/rules/checker.h"
#include "tests/support/generate_job.h"

namespace sillwright {
namespace {

void expectFull(const Checker& checker, const Job& job) {
  const auto full = checkAll(job);
  ASSERT_EQ(full.size(), job.walls.size());
  Counts counts;
  for (std::size_t i = 0; i < full.size(); ++i) {
    const auto kept = checker.wall(job.walls[i].id);
    ASSERT_NE(kept, nullptr);
    EXPECT_EQ(kept->findings, full[i]->findings) << job.walls[i].mark;
    counts += full[i]->counts;
  }
  EXPECT_EQ(checker.counts(), counts);
}

Job edited(const Job& job, std::mt19937& random) {
  const auto number = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
  const WallLine& wall = job.walls[static_cast<std::size_t>(number(static_cast<int>(job.walls.size())))];
  const auto pieces = piecesOf(wall);
  const std::array<PieceRef, 1> one{
      PieceRef{wall.id, pieces.empty() ? Id{} : pieces[static_cast<std::size_t>(number(static_cast<int>(pieces.size())))]}};
  switch (number(13)) {
  case 0: {
    const auto& corners = *job.corners;
    const Corner& corner = corners[static_cast<std::size_t>(number(static_cast<int>(corners.size())))];
    return moveCorner(job, corner.id, {corner.at.x + number(25) - 12, corner.at.y + number(25) - 12});
  }
  case 1: {
    WallLine changed = wall;
    changed.thickness = 6 + number(5);
    return replaceWall(job, changed);
  }
  case 2: {
    JobLimits limits = *job.limits;
    limits.storeys = 1 + number(3);
    return setLimits(job, limits);
  }
  case 3: {
    HardwareTypes types = *job.types;
    types.straps[0].edgeMinimum = number(8) / 4.0;
    return setTypes(job, types);
  }
  case 4:
    return one[0].piece ? removePieces(job, one) : job;
  case 5:
    return number(4) == 0 && job.walls.size() > 3 ? removePieces(job, std::array<PieceRef, 1>{PieceRef{wall.id, {}}}) : job;
  case 6: { // a copy of some piece, somewhere else
    if (!one[0].piece)
      return job;
    const auto [added, id] = addPiece(job, wall.id, *findPiece(wall, one[0].piece));
    return movePieces(added, std::array<PieceRef, 1>{PieceRef{wall.id, id}}, number(97) - 48);
  }
  case 7: { // a corner of walls that touch nothing
    const double x = 4000 + number(100) * 500.0;
    const auto added = addOutline(job, std::vector<Point2>{{x, 0}, {x + 200, 0}, {x + 200, 150}, {x, 150}}, WallLine{});
    return added ? *added : job;
  }
  case 8: {
    const auto s = one[0].piece ? stationsOf(job, wall, one[0].piece) : std::nullopt;
    if (!s || s->length() < 12)
      return job;
    const bool left = number(2) == 0;
    return moveEnd(job, one[0], left ? Side::Left : Side::Right, (left ? s->from : s->to) + (number(33) - 16) / 4.0);
  }
  case 9: {
    JobLimits limits = *job.limits;
    limits.overrides = {{"strap.edge target", number(9) / 4.0, "tried out", "the test", "2031-05-14", {}},
                        {"bolt.end-far", 8.0 + number(8), "tried out", "the test", "2031-05-14", {}}};
    return setLimits(job, limits);
  }
  case 10: {
    HardwareTypes types = *job.types;
    types.washers[0].along = 2.5 + number(5) / 2.0;
    types.bolts[0].diameter = number(2) ? 0.625 : 0.5;
    return setTypes(job, types);
  }
  default:
    return one[0].piece ? movePieces(job, one, (number(65) - 32) / 16.0, (number(9) - 4) / 16.0) : job;
  }
}

TEST(Checker, saysWhatAFullCheckSaysAfterAnyEdits) {
  for (std::uint64_t seed = 1; seed <= 10; ++seed) {
    std::mt19937 random(static_cast<unsigned>(seed));
    Job job = generateJob(seed, 150);
    Checker checker;
    checker.update(job);
    expectFull(checker, job);
    std::vector<Job> before{job};
    for (int step = 0; step < 90; ++step) {
      if (random() % 5 == 0)
        job = before[random() % before.size()]; // back to any earlier value, as undo does
      else
        job = edited(job, random);
      before.push_back(job);
      checker.update(job);
      expectFull(checker, job);
    }
  }
}

TEST(Checker, leavesEverythingElseAloneHoweverMuchThereIs) {
  for (const std::size_t pieces : {150u, 6000u}) {
    Job job = generateJob(2, pieces);
    Checker checker;
    checker.update(job);
    EXPECT_EQ(checker.lastChecked(), job.walls.size());
    const std::array<PieceRef, 1> one{PieceRef{job.walls[1].id, job.walls[1].bolts[0].id}};
    job = movePieces(job, one, 1);
    const auto changed = checker.update(job);
    EXPECT_EQ(checker.lastChecked(), 1u);
    EXPECT_EQ(changed, std::vector<Id>{job.walls[1].id});
    EXPECT_TRUE(checker.update(job).empty());
  }
}

} // namespace
} // namespace sillwright
