// What holds for every finding, whatever the rule: tried on the samples and on jobs in which nothing is right.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <random>

#include "core/base/tolerance.h"
#include "core/model/lookup.h"
#include "core/rules/checker.h"
#include "core/rules/correction.h"
#include "core/rules/rule_book.h"
#include "tests/support/broken_job.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

struct CheckedJob {
  Job job;
  std::vector<std::shared_ptr<const CheckedWall>> walls;
};

std::vector<CheckedJob> checkedJobs() {
  std::mt19937 random(21);
  std::vector<Job> jobs{support::boatShedFrontSteelMoved(), support::ridgeHouse()};
  jobs.push_back(broken(jobs[0], random));
  jobs.push_back(broken(jobs[1], random));
  for (std::uint64_t seed = 1; seed <= 8; ++seed)
    jobs.push_back(broken(generateJob(seed, 150), random));
  std::vector<CheckedJob> checked;
  for (const Job& job : jobs)
    checked.push_back({job, checkAll(job)});
  return checked;
}

// Calls visit(job, wall, finding) for a great many findings.
void forManyFindings(const std::function<void(const Job&, const CheckedWall&, const Finding&)>& visit) {
  static const std::vector<CheckedJob> jobs = checkedJobs(); // checking takes far longer than looking
  std::size_t count = 0;
  for (const CheckedJob& checked : jobs)
    for (const auto& wall : checked.walls)
      for (const Finding& finding : wall->findings) {
        SCOPED_TRACE(wall->layout.wall->mark + ": " + std::string(rule(finding.rule).name) + ", variant " +
                     std::to_string(finding.variant) + ", measured " + std::to_string(finding.measured));
        visit(checked.job, *wall, finding);
        ++count;
      }
  EXPECT_GT(count, 1000u);
}

bool isWhole(Interval i) {
  return std::isfinite(i.from) && std::isfinite(i.to) && i.to >= i.from - tolerance::same;
}

TEST(Findings, haveARegionInPlainNumbers) {
  forManyFindings([](const Job&, const CheckedWall& wall, const Finding& f) {
    EXPECT_TRUE(isWhole(f.region.s)) << f.region.s.from << " ... " << f.region.s.to;
    EXPECT_TRUE(isWhole(f.region.d)) << f.region.d.from << " ... " << f.region.d.to;
    EXPECT_TRUE(isWhole(f.region.z)) << f.region.z.from << " ... " << f.region.z.to;
    // And at this wall, not somewhere else in the world.
    EXPECT_GT(f.region.s.from, -48);
    EXPECT_LT(f.region.s.to, wall.layout.length + 48);
    EXPECT_GT(f.region.z.from, wall.layout.bottom - 48);
    EXPECT_LT(f.region.z.to, wall.layout.wall->wallHeight + 48);
  });
}

TEST(Findings, measureOnTheWrongSideOfTheirLimit) {
  forManyFindings([](const Job&, const CheckedWall&, const Finding& f) {
    ASSERT_TRUE(std::isfinite(f.measured) && std::isfinite(f.limit));
    ASSERT_NE(f.wanted, Wanted::None);
    // Contact is no clear distance at all: there the limit itself is too little.
    const bool contact = f.limit == 0 && std::abs(f.measured) < tolerance::same;
    const double past = f.wanted == Wanted::AtLeast ? f.limit - f.measured : f.measured - f.limit;
    EXPECT_TRUE(past > tolerance::same || contact) << f.limit;
    EXPECT_TRUE(f.unit != Unit::Count || f.measured == std::round(f.measured));
  });
}

TEST(Findings, nameThePiecesTheyAreAbout) {
  forManyFindings([](const Job&, const CheckedWall& wall, const Finding& f) {
    const WallLine& line = *wall.layout.wall;
    EXPECT_EQ(f.wall, line.id);
    ASSERT_FALSE(f.pieces.empty());
    for (const Id id : f.pieces)
      EXPECT_TRUE(id == line.id || findPiece(line, id)) << id.value;
    EXPECT_EQ(std::count(f.pieces.begin(), f.pieces.end(), f.pieces.front()), 1);
    EXPECT_TRUE(!f.correction || std::count(f.pieces.begin(), f.pieces.end(), f.correction->piece) == 1);
  });
}

bool sameMatter(const Finding& a, const Finding& b) {
  return a.rule == b.rule && a.variant == b.variant && a.pieces == b.pieces;
}

std::size_t fixesOf(const Findings& findings) {
  return static_cast<std::size_t>(
      std::count_if(findings.begin(), findings.end(), [](const Finding& f) { return f.level == Level::Fix; }));
}

// Done as it says, the finding is gone or milder, and there is no more to fix than before.
TEST(Findings, areCuredByTheirCorrections) {
  std::size_t corrections = 0;
  forManyFindings([&](const Job& job, const CheckedWall& wall, const Finding& f) {
    std::vector<Correction> ways = f.otherWays;
    if (f.correction)
      ways.push_back(*f.correction);
    for (const Correction& way : ways) {
      if (++corrections % 4 != 0) // each costs a full check: every fourth will do
        continue;
      Job done = job;
      done.walls.replace(corrected(*wall.layout.wall, way));
      const Findings after = checkWall(layOut(done, done.walls.findPointer(f.wall)), resolve(*done.limits));
      for (const Finding& now : after)
        EXPECT_FALSE(sameMatter(now, f) && now.level <= f.level) << "still measures " << now.measured;
      EXPECT_LE(fixesOf(after), fixesOf(wall.findings));
    }
  });
  EXPECT_GT(corrections, 400u);
}

// A station, depth or projection ends on a mark of the tape; joints go straight to the pour line or to each other.
TEST(Findings, correctToMarksOfTheTape) {
  forManyFindings([](const Job&, const CheckedWall& wall, const Finding& f) {
    if (!f.correction || f.correction->field == Correction::Field::Hook ||
        f.correction->field == Correction::Field::Height || f.correction->field == Correction::Field::Washer)
      return;
    EXPECT_NE(f.correction->by, 0);
    const WallLine done = corrected(*wall.layout.wall, *f.correction);
    std::optional<double> value = stationOf(done, f.correction->piece);
    const Bolt* bolt = findIn(done.bolts, f.correction->piece);
    if (bolt && f.correction->field != Correction::Field::Station)
      value = f.correction->field == Correction::Field::Depth ? bolt->depth : bolt->projection;
    if (const Sill* sill = findIn(done.sills, f.correction->piece); sill && f.correction->field == Correction::Field::LeftEnd)
      value = sill->from;
    else if (sill && f.correction->field == Correction::Field::RightEnd)
      value = sill->to;
    ASSERT_TRUE(value);
    EXPECT_NEAR(*value * 16, std::round(*value * 16), 1e-6);
  });
}

} // namespace
} // namespace sillwright
