// Incremental checking with everything in the job that a rule can speak of: after any edits it says what a full check
// says, and on the way every rule of the book has spoken.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <random>
#include <set>

#include "core/edit/operations.h"
#include "core/model/lookup.h"
#include "core/rules/checker.h"
#include "core/rules/rule_book.h"
#include "tests/support/broken_job.h"
#include "tests/support/generate_job.h"

namespace sillwright {
namespace {

class Walk {
public:
  explicit Walk(unsigned seed) : random_(seed) {
    job_ = broken(generateJob(seed, 150), random_);
    JobLimits limits = *job_.limits;
    limits.topBar = limits.openingBars = limits.plateWashers = true;
    job_ = setLimits(job_, limits);
    checker_.update(job_);
    expectFull();
  }

  void step() {
    job_ = random_() % 6 == 0 ? before_[static_cast<std::size_t>(number(static_cast<int>(before_.size())))] : edited();
    before_.push_back(job_);
    checker_.update(job_);
    expectFull();
  }

  std::set<RuleId> spoken;

private:
  int number(int n) { return static_cast<int>(random_() % static_cast<unsigned>(n)); }
  double sixteenths(int most) { return (number(2 * most + 1) - most) / 16.0; }

  void expectFull() {
    const auto full = checkAll(job_);
    Counts counts;
    for (std::size_t i = 0; i < full.size(); ++i) {
      const auto kept = checker_.wall(job_.walls[i].id);
      ASSERT_NE(kept, nullptr);
      EXPECT_EQ(kept->findings, full[i]->findings) << job_.walls[i].mark;
      counts += full[i]->counts;
      for (const Finding& finding : full[i]->findings)
        spoken.insert(finding.rule);
    }
    EXPECT_EQ(checker_.counts(), counts);
    if (before_.empty())
      before_.push_back(job_);
  }

  Job edited() {
    WallLine wall = job_.walls[static_cast<std::size_t>(number(static_cast<int>(job_.walls.size())))];
    switch (number(17)) {
    case 0:
      return withCorner();
    case 1:
      return withDiagonal();
    case 2:
      return withLimits();
    case 3:
      return withMarks();
    case 4:
      return withTypes();
    case 5:
      for (Reading& reading : wall.readings)
        reading.plumb = sixteenths(16);
      break;
    case 6:
      if (!wall.bolts.empty())
        wall.bolts[0].washerShift = sixteenths(16);
      break;
    case 7:
      for (GradeShot& shot : wall.shots) {
        shot.reading = sixteenths(10);
        shot.width = 8 + sixteenths(12);
      }
      break;
    case 8:
      for (Panel& panel : wall.panels) {
        panel.designShear = 100 + number(1500);
        panel.deadLoad = number(400);
      }
      break;
    case 9:
      wall.startFraming = number(2) ? EndFraming::Butts : EndFraming::RunsBy;
      break;
    case 10:
      if (!wall.sills.empty())
        wall.sills.front().from += sixteenths(64);
      break;
    case 11:
      wall.formTop = sixteenths(32);
      wall.sillInset = number(9) / 8.0 - 0.5;
      break;
    case 12:
      if (!wall.openings.empty())
        wall.openings[0].from += sixteenths(160);
      break;
    case 13:
      overAHoldDown(wall);
      break;
    case 14:
      return withTwins(wall);
    default:
      return withMove(wall);
    }
    return replaceWall(job_, wall);
  }

  // A door widened over a hold-down on its left.
  void overAHoldDown(WallLine& wall) {
    if (wall.openings.empty())
      return;
    Opening& opening = wall.openings[0];
    for (const Column& column : wall.columns) {
      const bool strap = std::any_of(wall.straps.begin(), wall.straps.end(),
                                     [&](const Strap& each) { return each.column == column.id; });
      const bool rod =
          std::any_of(wall.rods.begin(), wall.rods.end(), [&](const Rod& each) { return each.column == column.id; });
      if (!(strap || rod) || column.station >= opening.from)
        continue;
      opening.from = column.station + sixteenths(32);
      if (rod)
        opening.kind = OpeningKind::Door;
    }
  }

  // A second bolt, and a second bar, close beside one.
  Job withTwins(WallLine wall) {
    Job next = job_;
    if (!wall.bolts.empty()) {
      Bolt twin = wall.bolts[static_cast<std::size_t>(number(static_cast<int>(wall.bolts.size())))];
      twin.station += sixteenths(48);
      next = addPiece(next, wall.id, twin).first;
    }
    if (!wall.bars.empty()) {
      Bar twin = wall.bars[static_cast<std::size_t>(number(static_cast<int>(wall.bars.size())))];
      twin.found.reset();
      (twin.run == BarRun::Upright ? twin.planned.a.s : twin.planned.a.z) += 1;
      (twin.run == BarRun::Upright ? twin.planned.b.s : twin.planned.b.z) += 1;
      next = addPiece(next, wall.id, twin).first;
    }
    return next;
  }

  Job withCorner() {
    const auto& corners = *job_.corners;
    const Corner& corner = corners[static_cast<std::size_t>(number(static_cast<int>(corners.size())))];
    return moveCorner(job_, corner.id, {corner.at.x + sixteenths(64), corner.at.y + sixteenths(64)});
  }

  Job withDiagonal() {
    Job next = job_;
    const auto& corners = *next.corners;
    const std::size_t first = 4 * static_cast<std::size_t>(number(static_cast<int>(corners.size() / 4)));
    const Corner a = corners[first], b = corners[first + 2];
    const Diagonal taped{takeId(next), a.id, b.id, std::hypot(b.at.x - a.at.x, b.at.y - a.at.y) + sixteenths(32), ""};
    next.diagonals.edit([&](std::vector<Diagonal>& list) { list.push_back(taped); });
    return next;
  }

  Job withLimits() {
    JobLimits limits = *job_.limits;
    limits.storeys = 1 + number(3);
    limits.topBar = number(4) != 0;
    limits.openingBars = number(4) != 0;
    limits.sillOverhang = number(3) / 4.0;
    limits.overrides = {{"sill.piece", 96.0 + number(150), "short lumber", "the test", "2031-05-14", {}},
                        {"bolt.match", number(5) / 8.0, "tried out", "the test", "2031-05-14", {}}};
    const RuleRow& row = ruleBook()[static_cast<std::size_t>(number(static_cast<int>(ruleBook().size())))];
    limits.rules.clear();
    if (number(2))
      limits.rules.push_back({std::string(row.name), static_cast<RuleCounts>(number(3)), "tried out", "the test",
                              "2031-05-14", {}});
    return setLimits(job_, limits);
  }

  Job withMarks() {
    Job next = job_;
    next.marks.edit([&](std::vector<WallEndMark>& marks) {
      for (WallEndMark& mark : marks) {
        mark.column = MakeUp{1 + number(3), {2, 6}};
        mark.requiredCapacity = 500 + number(5000);
        mark.boltSpacing = 16 + number(50);
        mark.sill = Nominal{2 + number(2), 6};
        if (!next.types->straps.empty() && number(2))
          mark.strapType = next.types->straps[static_cast<std::size_t>(number(static_cast<int>(next.types->straps.size())))].id;
      }
    });
    return next;
  }

  Job withTypes() {
    HardwareTypes types = *job_.types;
    for (StrapType& type : types.straps) {
      type.jointTolerance = number(3) / 8.0;
      type.statedCapacity = 1000 + number(5000);
    }
    for (WasherType& type : types.washers)
      type.along = type.across = 2.5 + number(12) / 8.0;
    for (RodType& type : types.rods)
      type.embedment = 4 + number(6);
    for (BoltType& type : types.bolts)
      type.hookLeg = 1.5 + number(12) / 4.0;
    return setTypes(job_, types);
  }

  Job withMove(const WallLine& wall) {
    const auto pieces = piecesOf(wall);
    if (pieces.empty())
      return job_;
    const std::array<PieceRef, 1> one{
        PieceRef{wall.id, pieces[static_cast<std::size_t>(number(static_cast<int>(pieces.size())))]}};
    return number(5) == 0 ? removePieces(job_, one) : movePieces(job_, one, sixteenths(64), sixteenths(8));
  }

  std::mt19937 random_;
  Job job_;
  Checker checker_;
  std::vector<Job> before_;
};

TEST(CheckerWalk, saysWhatAFullCheckSaysWithEveryRuleOn) {
  std::set<RuleId> spoken;
  for (unsigned seed = 1; seed <= 10; ++seed) {
    SCOPED_TRACE(seed);
    Walk walk(seed);
    for (int step = 0; step < 20; ++step)
      walk.step();
    spoken.insert(walk.spoken.begin(), walk.spoken.end());
  }
  for (const RuleRow& row : ruleBook())
    EXPECT_EQ(spoken.count(row.id), 1u) << row.name << " never spoke";
}

} // namespace
} // namespace sillwright
