// Left and right are alike to every rule: a wall in a mirror has the same findings in a mirror.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <random>

#include "core/rules/checker.h"
#include "core/rules/rule_book.h"
#include "tests/support/broken_job.h"
#include "tests/support/generate_job.h"
#include "tests/support/mirror_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

bool near(double a, double b) {
  return std::abs(a - b) < 1e-7;
}
bool near(Interval a, Interval b) {
  return near(a.from, b.from) && near(a.to, b.to);
}

std::vector<Id> sorted(std::vector<Id> ids) {
  std::sort(ids.begin(), ids.end());
  return ids;
}

// Rules that look for a way out on both sides: of two equal ways either may be offered.
bool hasTwoWays(RuleId id) {
  constexpr std::array rules{RuleId::StrapSteel,   RuleId::StrapSeam,     RuleId::BoltSteel,     RuleId::BoltStrap,
                             RuleId::BoltStud,     RuleId::BoltSplice,    RuleId::BoltGap,       RuleId::BoltSpacing,
                             RuleId::WasherColumn, RuleId::WasherWasher,  RuleId::ColumnOverlap};
  return std::find(rules.begin(), rules.end(), id) != rules.end();
}

bool isMirrorOf(const std::optional<Correction>& a, const std::optional<Correction>& b, RuleId id) {
  if (!a || !b)
    return a.has_value() == b.has_value();
  using Field = Correction::Field;
  if (a->field == Field::LeftEnd || a->field == Field::RightEnd) {
    const Field other = a->field == Field::LeftEnd ? Field::RightEnd : Field::LeftEnd;
    return b->field == other && near(a->by, -b->by) && a->piece == b->piece;
  }
  const bool sameWay = near(a->by, b->by) && (a->field != Correction::Field::Station || hasTwoWays(id));
  const bool otherWay = near(a->by, -b->by) && a->field == Correction::Field::Station;
  return a->field == b->field && (sameWay || otherWay) && (a->piece == b->piece || hasTwoWays(id));
}

bool isMirrorOf(const Finding& a, const Finding& b, double length) {
  const Interval s{length - b.region.s.to, length - b.region.s.from};
  return a.rule == b.rule && a.level == b.level && a.unit == b.unit && a.wanted == b.wanted &&
         near(a.measured, b.measured) && near(a.limit, b.limit) && sorted(a.pieces) == sorted(b.pieces) &&
         isMirrorOf(a.correction, b.correction, a.rule) && near(a.region.s, s) && near(a.region.d, b.region.d) &&
         near(a.region.z, b.region.z);
}

std::string about(const Finding& f) {
  std::string text = std::string(rule(f.rule).name) + " level " + std::to_string(static_cast<int>(f.level)) +
                     " measured " + std::to_string(f.measured) + " limit " + std::to_string(f.limit) + " s " +
                     std::to_string(f.region.s.from) + " ... " + std::to_string(f.region.s.to) + " pieces";
  for (const Id id : f.pieces)
    text += " " + std::to_string(id.value);
  if (f.correction)
    text += " field " + std::to_string(static_cast<int>(f.correction->field)) + " by " + std::to_string(f.correction->by);
  return text;
}

// Takes each finding's mirror image out of the others; what is left on either side has none.
void expectMirrored(const WallLayout& layout, const Findings& findings, Findings others) {
  for (const Finding& finding : findings) {
    const auto image = std::find_if(others.begin(), others.end(),
                                    [&](const Finding& f) { return isMirrorOf(finding, f, layout.length); });
    EXPECT_NE(image, others.end()) << layout.wall->mark << ": only here: " << about(finding);
    if (image != others.end())
      others.erase(image);
  }
  for (const Finding& finding : others)
    ADD_FAILURE() << layout.wall->mark << ": only in the mirror: " << about(finding);
}

// The findings of a wall whose straps are all out of plumb by so much.
Findings leaning(const Job& job, std::size_t wall, double lean) {
  WallLayout layout = layOut(job, job.walls.pointer(wall));
  for (StrapBody& strap : layout.straps)
    strap.lean = lean;
  return checkWall(layout, resolve(*job.limits));
}

std::size_t expectMirrored(const Job& job, double lean = 0) {
  const Job other = mirrored(job);
  std::size_t count = 0;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const Findings findings = leaning(job, i, lean);
    expectMirrored(layOut(job, job.walls.pointer(i)), findings, leaning(other, i, -lean));
    count += findings.size();
  }
  return count;
}

TEST(MirroredJob, isTheJobAgainMirroredTwice) {
  for (const Job& job : {support::boatShedFrontSteelMoved(), support::ridgeHouse(), generateJob(1, 150)}) {
    EXPECT_FALSE(mirrored(job) == job);
    EXPECT_TRUE(mirrored(mirrored(job)) == job);
  }
}

TEST(MirroredRules, findTheSameInTheSamples) {
  for (const Job& job : {support::boatShedFront(), support::boatShedFrontSteelMoved(), support::ridgeHouse()})
    expectMirrored(job);
}

TEST(MirroredRules, findTheSameInGeneratedJobs) {
  std::size_t findings = 0;
  for (std::uint64_t seed = 1; seed <= 40; ++seed)
    findings += expectMirrored(generateJob(seed, 150));
  EXPECT_GT(findings, 40u);
}

TEST(MirroredRules, findTheSameInBrokenJobs) {
  std::mt19937 random(3);
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    SCOPED_TRACE(seed);
    EXPECT_GT(expectMirrored(broken(generateJob(seed, 150), random)), 100u);
    expectMirrored(broken(support::ridgeHouse(), random));
    expectMirrored(broken(support::boatShedFrontSteelMoved(), random));
  }
}

TEST(MirroredRules, findTheSameWithStrapsOutOfPlumb) {
  std::mt19937 random(5);
  std::size_t findings = 0;
  for (const double lean : {1.0 / 64, -1.0 / 16, 1.0 / 8}) {
    findings += expectMirrored(support::ridgeHouse(), lean);
    expectMirrored(broken(support::ridgeHouse(), random), lean);
  }
  EXPECT_GT(findings, 20u);
}

// As broken, with what that leaves out: washers slotted along the wall and slid, options on, doors over hold-downs, and
// a second bolt and bar close beside each.
Job withEverything(Job job, std::mt19937& random) {
  job = broken(job, random);
  job.limits.edit([](JobLimits& limits) { limits.topBar = limits.openingBars = true; });
  job.types.edit([&](HardwareTypes& types) {
    for (WasherType& type : types.washers)
      type.slot = WasherSlot{0.75, 1.5, random() % 2 ? SlotDirection::Along : SlotDirection::Across, {}};
    for (RodType& type : types.rods)
      type.embedment = 5 + static_cast<double>(random() % 4);
  });
  std::vector<WallLine> walls;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    WallLine wall = job.walls[i];
    for (std::size_t k = 0; k < wall.bolts.size() && k < 2; ++k) {
      wall.bolts.push_back(wall.bolts[k]);
      wall.bolts.back().id = takeId(job);
      wall.bolts.back().station += (random() % 2 ? 1 : -1) * static_cast<double>(1 + random() % 31) / 16.0;
      wall.bolts[k].washerShift = static_cast<double>(random() % 16) / 16.0 - 0.5;
    }
    if (!wall.bars.empty()) {
      wall.bars.push_back(wall.bars.front());
      wall.bars.back().id = takeId(job);
      for (Point3* end : {&wall.bars.back().planned.a, &wall.bars.back().planned.b})
        (wall.bars.back().run == BarRun::Upright ? end->s : end->z) += 1.0625;
    }
    if (!wall.openings.empty() && !wall.columns.empty())
      wall.openings[0].from = std::min(wall.openings[0].from, wall.columns.front().station + 3.03125);
    walls.push_back(std::move(wall));
  }
  job.walls = WallList(std::move(walls));
  return job;
}

// Among so much that is amiss, which of several ways out is offered may differ; what is found may not.
Findings withoutWays(Findings findings) {
  for (Finding& finding : findings)
    finding.correction.reset();
  return findings;
}

TEST(MirroredRules, findTheSameWhateverTheRule) {
  std::mt19937 random(8);
  std::array<int, static_cast<std::size_t>(RuleId::Count)> spoken{};
  for (std::uint64_t seed = 1; seed <= 40; ++seed) {
    SCOPED_TRACE(seed);
    const Job job = seed % 4 ? withEverything(generateJob(seed, 150), random) : broken(support::ridgeHouse(), random);
    const Job other = mirrored(job);
    for (std::size_t i = 0; i < job.walls.size(); ++i) {
      const WallLayout layout = layOut(job, job.walls.pointer(i));
      const Findings findings = withoutWays(checkWall(layout, resolve(*job.limits)));
      expectMirrored(layout, findings,
                     withoutWays(checkWall(layOut(other, other.walls.pointer(i)), resolve(*other.limits))));
      for (const Finding& finding : findings)
        ++spoken[static_cast<std::size_t>(finding.rule)];
    }
  }
  for (const RuleRow& row : ruleBook())
    EXPECT_GT(spoken[static_cast<std::size_t>(row.id)], 0) << row.name << " never spoke";
}

} // namespace
} // namespace sillwright
