// Whatever is copied wherever: the job that comes of it is one that the reader of job files takes.
#include <gtest/gtest.h>

#include <random>

#include "core/edit/copy_places.h"
#include "core/edit/repeat.h"
#include "core/store/job_json.h"
#include "tests/support/broken_job.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

class RandomHand {
public:
  explicit RandomHand(unsigned seed) : random_(seed) {}

  const WallLine& wallOf(const Job& job) { return job.walls[random_() % job.walls.size()]; }
  std::vector<Id> someOf(const WallLine& wall) {
    std::vector<Id> some;
    const auto oneIn = 1 + random_() % 6;
    for (const Id id : piecesOf(wall))
      if (random_() % oneIn == 0)
        some.push_back(id);
    return some;
  }

  // Copies, mirrors or repeats something.
  Copies act(const Job& job) {
    const WallLine& from = wallOf(job);
    const std::vector<Id> some = someOf(from);
    switch (random_() % 3) {
    case 0: {
      const WallLine& to = wallOf(job);
      const Copied copied = copyOf(job, from.id, some);
      const auto column = to.columns.empty() || random_() % 2
                              ? std::nullopt
                              : std::optional(to.columns[random_() % to.columns.size()].id);
      const PastePlace place = pastePlace(job, to.id, copied, column, static_cast<double>(random_() % 6400) / 16 - 20);
      return putCopies(job, to.id, copied, std::span(&place.carry, 1));
    }
    case 1: {
      const auto place = mirrorPlace(job, from.id, some);
      return place ? putCopies(job, from.id, copyOf(job, from.id, place->pieces), std::span(&place->carry, 1))
                   : Copies{job, {}, {}};
    }
    default:
      return repeated(
          job, from.id, some,
          {static_cast<double>(16 + random_() % 1000) / 16, std::nullopt, random_() % 2 ? Side::Left : Side::Right});
    }
  }

private:
  std::mt19937 random_;
};

TEST(CopiedJobs, areReadAgainAsTheyAre) {
  std::size_t made = 0, leftOut = 0;
  for (unsigned seed = 1; seed <= 60; ++seed) {
    SCOPED_TRACE(seed);
    RandomHand hand(seed);
    std::mt19937 random(seed);
    Job job = seed % 3 == 0 ? support::ridgeHouse() : generateJob(seed, 150);
    if (Job other = broken(job, random); seed % 2 && !checkJob(other))
      job = std::move(other);
    for (int i = 0; i < 6; ++i) {
      ASSERT_FALSE(checkJob(job)) << checkJob(job)->text();
      Copies copies = hand.act(job);
      made += copies.made.size();
      leftOut += copies.leftOut.size();
      ASSERT_FALSE(checkJob(copies.job)) << checkJob(copies.job)->text();
      const auto read = readJob(writeJob(copies.job));
      ASSERT_TRUE(read) << read.problem().text();
      EXPECT_TRUE(*read == copies.job);
      for (const PieceRef& ref : copies.made)
        EXPECT_TRUE(findPiece(copies.job, ref)) << markOf(copies.job, ref);
      job = std::move(copies.job);
    }
  }
  EXPECT_GT(made, 500u);
  EXPECT_GT(leftOut, 500u);
}

} // namespace
} // namespace sillwright
