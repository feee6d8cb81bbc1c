// Sill bolts and plate washers against the published text. Document and clause beside each case.
#include <gtest/gtest.h>

#include "core/rules/rule_book.h"
#include "core/rules/thread_stack.h"

namespace sillwright {
namespace {

Job sillOf(double length, Nominal nominal, std::vector<double> stations, double depth,
           std::optional<double> shear = {}) {
  Job job;
  BoltType type;
  type.id = takeId(job);
  type.diameter = 0.625;
  type.length = 12;
  WasherType washer;
  washer.id = takeId(job);
  job.types.edit([&](HardwareTypes& types) {
    types.bolts.push_back(type);
    types.washers.push_back(washer);
  });
  const Id from = takeId(job);
  const Id to = takeId(job);
  job.corners.edit([&](std::vector<Corner>& corners) { corners = {{from, {0, 0}, {}}, {to, {length, 0}, {}}}; });
  WallLine wall;
  wall.id = takeId(job);
  wall.startCorner = from;
  wall.endCorner = to;
  Sill sill;
  sill.id = takeId(job);
  sill.to = length;
  sill.nominal = nominal;
  wall.sills.push_back(sill);
  Panel panel;
  panel.id = takeId(job);
  panel.to = length;
  panel.unitShear = shear;
  wall.panels.push_back(panel);
  for (const double station : stations) {
    Bolt bolt;
    bolt.id = takeId(job);
    bolt.type = type.id;
    bolt.washer = washer.id;
    bolt.station = station;
    bolt.depth = depth;
    bolt.projection = 4;
    wall.bolts.push_back(bolt);
  }
  job.walls.add(wall);
  return job;
}

int count(const Job& job, RuleId rule) {
  int found = 0;
  for (const Finding& finding : checkWall(layOut(job, job.walls.pointer(0)), resolve(*job.limits)))
    found += finding.rule == rule;
  return found;
}

// Computed from ASME B18.2.2, B18.21.1, B1.1: 2x sill, 0.229 in plate, cut washer, nut, two threads.
TEST(SillBolts, ThreadStack) {
  const WasherType plate;
  const double expected[][3] = {{0.5, 2.46, 3.46}, {0.625, 2.63, 3.63}, {0.75, 2.77, 3.77}};
  for (const auto& row : expected) {
    BoltType type;
    type.diameter = row[0];
    EXPECT_NEAR(total(*threadStack(type, 1.5, &plate, true, 2)), row[1], 0.005);
    EXPECT_NEAR(total(*threadStack(type, 2.5, &plate, true, 2)), row[2], 0.005);
  }
}

// IRC 2024 R403.1.6: end bolts at most 12 in and at least 7 d from the ends, at most 72 in apart, two a piece.
TEST(SillBolts, EndsAndSpacing) {
  for (const RuleId rule : {RuleId::BoltCount, RuleId::BoltEndFar, RuleId::BoltEndNear, RuleId::BoltSpacing})
    EXPECT_EQ(count(sillOf(96, {2, 6}, {12, 84}, 2.75), rule), 0);
  EXPECT_EQ(count(sillOf(96, {2, 6}, {6, 90}, 2.75), RuleId::BoltSpacing), 1);
  EXPECT_EQ(count(sillOf(96, {2, 6}, {6, 48, 90}, 2.75), RuleId::BoltSpacing), 0);
  EXPECT_EQ(count(sillOf(96, {2, 6}, {12.0625, 84}, 2.75), RuleId::BoltEndFar), 1);
  EXPECT_EQ(count(sillOf(96, {2, 6}, {4.375, 76}, 2.75), RuleId::BoltEndNear), 0);
  EXPECT_EQ(count(sillOf(96, {2, 6}, {4.3125, 76}, 2.75), RuleId::BoltEndNear), 1);
  EXPECT_EQ(count(sillOf(96, {2, 6}, {12}, 2.75), RuleId::BoltCount), 1);
}

// IRC 2024 R403.1.6 with SDPWS 2021 4.3.6.4.3: axis 1.833 to 2.000 in from the sheathed edge of a 5 1/2 in sill.
TEST(SillBolts, WasherWindow) {
  const auto clean = [](double depth) {
    const Job job = sillOf(96, {2, 6}, {12, 84}, depth, 600);
    return count(job, RuleId::BoltThird) + count(job, RuleId::WasherSheathing) == 0;
  };
  EXPECT_FALSE(clean(1.8125));
  EXPECT_TRUE(clean(1.875));
  EXPECT_TRUE(clean(2.0));
  EXPECT_FALSE(clean(2.0625));
  EXPECT_EQ(count(sillOf(96, {2, 6}, {12, 84}, 2.75, 400), RuleId::WasherSheathing), 0);
  EXPECT_EQ(count(sillOf(96, {2, 6}, {12, 84}, 2.75, 401), RuleId::WasherSheathing), 2);
}

} // namespace
} // namespace sillwright
