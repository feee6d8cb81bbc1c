// Corrections against brute force: where some move of one piece would put a FIX right, one is offered.
#include <random>

#include <gtest/gtest.h>

#include "core/rules/checker.h"
#include "core/rules/correction.h"
#include "core/rules/rule_book.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

bool sameMatter(const Finding& a, const Finding& b) {
  return a.rule == b.rule && a.variant == b.variant && a.pieces == b.pieces;
}

// A sound job in which some pieces were moved a little, in sixteenths.
Job disturbed(Job job, std::mt19937& random) {
  const auto off = [&](int sixteenths) { return (static_cast<int>(random() % (2 * sixteenths + 1)) - sixteenths) / 16.0; };
  const auto sometimes = [&](unsigned oneIn) { return random() % oneIn == 0; };
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    WallLine wall = job.walls[i];
    for (Bolt& bolt : wall.bolts)
      if (sometimes(3)) {
        bolt.station += off(64);
        bolt.depth += sometimes(2) ? off(12) : 0;
        bolt.projection += sometimes(3) ? off(16) : 0;
      }
    for (Strap& strap : wall.straps)
      strap.station += sometimes(3) ? off(24) : 0;
    for (Rod& rod : wall.rods)
      rod.offset += sometimes(3) ? off(16) : 0;
    for (Column& column : wall.columns)
      column.station += sometimes(8) ? off(32) : 0;
    for (Bar& bar : wall.bars)
      if (sometimes(4)) {
        const double along = off(32), in = off(32);
        for (Point3* end : {&bar.planned.a, &bar.planned.b})
          *end = {end->s + along, end->d + in, end->z};
      }
    job.walls.replace(std::move(wall));
  }
  return job;
}

// Gone, and nothing else to fix that was not there before.
bool cures(const CheckedWall& wall, const ResolvedLimits& limits, const Finding& finding, const Correction& move) {
  const auto moved = std::make_shared<const WallLine>(corrected(*wall.layout.wall, move));
  const WallLayout& old = wall.layout;
  const Findings after = checkWall(layOut(moved, old.types, old.limits, old.marks, old.place), limits);
  return std::none_of(after.begin(), after.end(), [&](const Finding& now) {
    return now.level == Level::Fix &&
           (sameMatter(now, finding) || std::none_of(wall.findings.begin(), wall.findings.end(), [&](const Finding& was) {
              return was.level == Level::Fix && sameMatter(was, now);
            }));
  });
}

// Every move of a piece of the finding by up to 6 in, on tape marks: along the wall, across it and up, or of one end.
bool someMoveCures(const CheckedWall& wall, const ResolvedLimits& limits, const Finding& finding) {
  using Field = Correction::Field;
  constexpr int farthest = 96; // sixteenths
  for (const Id piece : finding.pieces)
    for (const Field field : {Field::Station, Field::Depth, Field::Projection, Field::LeftEnd, Field::RightEnd})
      for (int sixteenths = 1; sixteenths <= farthest; ++sixteenths)
        for (const int way : {1, -1}) {
          const Correction move{field, piece, way * sixteenths / 16.0};
          if (corrected(*wall.layout.wall, move) == *wall.layout.wall)
            sixteenths = farthest; // it has no such field
          else if (cures(wall, limits, finding, move))
            return true;
        }
  return false;
}

TEST(Corrections, areOfferedWhereOnePieceCanCure) {
  std::mt19937 random(20310514);
  const Job sound[] = {support::boatShedFront(), support::ridgeHouse(), support::punchListPractice()};
  int fixes = 0, missed = 0;
  std::string which;
  for (int round = 0; round < 60; ++round) {
    const Job job = disturbed(sound[round % 3], random);
    const ResolvedLimits limits = resolve(*job.limits);
    const auto walls = checkAll(job);
    for (const auto& wall : walls)
      for (const Finding& finding : wall->findings) {
        if (finding.level != Level::Fix)
          continue;
        ++fixes;
        if (firstWay(finding) || !someMoveCures(*wall, limits, finding))
          continue;
        ++missed;
        which += std::string(rule(finding.rule).name) + " ";
      }
  }
  EXPECT_GT(fixes, 1000);
  EXPECT_EQ(missed, 0) << which;
}

} // namespace
} // namespace sillwright
