// What the trade holds about hold-down straps and bolts. Common practice: no document says it.
#include "core/standards/lumber.h"
#include "sill_wall.h"

namespace sillwright {
namespace {

using namespace published;
constexpr double sixteenth = 1.0 / 16;

// A wall of 8 ft with a 2 1/2 in strap at each end of its panel, joint lines that high above the pour line.
Job withStraps(double left, double right, double leftJoint = 0, double rightJoint = 0) {
  Job job = jobOf({});
  StrapType type;
  type.id = takeId(job);
  type.plateWidth = 2.5;
  type.plateThickness = 0.1;
  type.profile = {{0.05, 0}, {0.05, -8}};
  type.exposedLength = 20;
  job.types.edit([&](HardwareTypes& types) { types.straps.push_back(type); });
  WallLine wall = job.walls[0];
  for (const auto& [station, joint] : {std::pair(left, leftJoint), std::pair(right, rightJoint)}) {
    Strap strap;
    strap.id = takeId(job);
    strap.type = type.id;
    strap.station = station;
    strap.heightOffset = joint;
    wall.straps.push_back(strap);
  }
  job.walls.replace(wall);
  return job;
}

std::size_t found(const Job& job, RuleId rule, Level level) {
  std::size_t count = 0;
  for (const Finding& finding : findingsOf(job, rule))
    count += finding.level == level;
  return count;
}

// The joint on the pour line within 1/8 in.
TEST(StrapFacts, JointWithinAnEighth) {
  const auto off = [](double joint) { return found(withStraps(5, 91, joint, joint), RuleId::StrapJoint, Level::Fix); };
  for (const double inside : {-0.125, -sixteenth, 0.0, sixteenth, 0.125})
    EXPECT_EQ(off(inside), 0u);
  EXPECT_EQ(off(0.125 + sixteenth), 2u);
  EXPECT_EQ(off(-0.125 - sixteenth), 2u);
}

// 1/2 in from a corner at least: edge of the plate 1/2 in from the end, its centre 1 3/4 in.
TEST(StrapFacts, HalfAnInchFromTheEnd) {
  EXPECT_EQ(found(withStraps(1.75, 94.25), RuleId::StrapEdge, Level::Fix), 0u);
  EXPECT_EQ(found(withStraps(1.75 - sixteenth, 94.25 + sixteenth), RuleId::StrapEdge, Level::Fix), 2u);
}

// About 1 in is aimed for: the centre 2 1/4 in from the end.
TEST(StrapFacts, AnInchFromTheEndIsAimedFor) {
  EXPECT_EQ(found(withStraps(2.25, 93.75), RuleId::StrapEdge, Level::Watch), 0u);
  EXPECT_EQ(found(withStraps(2.25 - sixteenth, 93.75 + sixteenth), RuleId::StrapEdge, Level::Watch), 2u);
  EXPECT_EQ(found(withStraps(2.25 - sixteenth, 93.75 + sixteenth), RuleId::StrapEdge, Level::Fix), 0u);
}

// The straps of a pair at the same height: within 1/8 in of each other.
TEST(StrapFacts, APairAtOneHeight) {
  EXPECT_EQ(found(withStraps(5, 91, 0, 0), RuleId::StrapPair, Level::Fix), 0u);
  EXPECT_EQ(found(withStraps(5, 91, sixteenth, -sixteenth), RuleId::StrapPair, Level::Fix), 0u);
  EXPECT_EQ(found(withStraps(5, 91, 0.125, -sixteenth), RuleId::StrapPair, Level::Fix), 1u);
}

// The hook of the J toward the steel, inward.
TEST(StrapFacts, TheHookTowardTheSteel) {
  const auto findings = [](HookDirection way) {
    Job job = jobOf({.bolts = {48}, .depth = 4});
    job.types.edit([](HardwareTypes& types) {
      types.bolts[0].end = BoltEnd::J;
      types.bolts[0].hookLeg = 2.5; // within the published length
    });
    WallLine wall = job.walls[0];
    wall.bolts[0].hook = way;
    job.walls.replace(wall);
    return found(job, RuleId::BoltHook, Level::Watch);
  };
  EXPECT_EQ(findings(HookDirection::Inward), 0u);
  for (const HookDirection wrong : {HookDirection::Outward, HookDirection::Left, HookDirection::Right})
    EXPECT_EQ(findings(wrong), 1u);
}

// A bolt in the middle of the sill is in its middle third, whatever the sill.
TEST(StrapFacts, ACentredBolt) {
  for (const int width : {4, 6, 8, 10, 12})
    EXPECT_EQ(count({.sill = {2, width}, .bolts = {12}, .depth = dressedWidth({2, width}) / 2}, RuleId::BoltThird), 0u);
}

} // namespace
} // namespace sillwright
