// The bare wall with others at its corners, and hardware whose numbers are easy to reckon with.
//
// The wall in question: 96 long, 8 thick, from 0 down to -24 on a footing 16 wide, 8 deep (down to -32) that takes up
// depths -4 to 12. A strap 2 wide and 1/10 thick takes up depths 0 to 5 and heights -10.05 to 0. A bolt 5/8 thick,
// straight, 8 in the concrete. A rod 3/4 thick, straight, 12 in the concrete.
#pragma once

#include <cmath>
#include <numbers>

#include "bare_wall.h"

namespace sillwright::testing_support {

inline constexpr double sixteenth = 1.0 / 16;

inline BareWall cornerWall() {
  BareWall bare = bareWall();
  bare.job.types.edit([](HardwareTypes& types) {
    types.straps[0].plateWidth = 2;
    types.straps[0].plateThickness = 0.1;
    types.straps[0].profile = {{0.05, 0}, {0.05, -10}, {5, -10}};
    types.bolts[0].end = BoltEnd::Headed;
    types.bolts[0].headWidth = types.bolts[0].headThickness = 0;
  });
  return bare;
}

// A wall like this one, 120 long. It turns by so many degrees from this wall: + left, an outside corner; - right, an
// inside corner.
template <class Change> void addAfter(BareWall& bare, double turn, Change&& change) {
  const double angle = turn * std::numbers::pi / 180;
  WallLine next = bare.wall;
  forEachList(next, [](auto& list) { list.clear(); });
  next.id = takeId(bare.job);
  next.startCorner = bare.wall.endCorner;
  next.endCorner = takeId(bare.job);
  bare.job.corners.edit([&](std::vector<Corner>& corners) {
    corners.push_back({next.endCorner, {96 + 120 * std::cos(angle), 120 * std::sin(angle)}, {}});
  });
  change(next);
  bare.job.walls.add(next);
}
inline void addAfter(BareWall& bare, double turn) {
  addAfter(bare, turn, [](WallLine&) {});
}

// The same at this wall's start: it turns by so many degrees from that one.
template <class Change> void addBefore(BareWall& bare, double turn, Change&& change) {
  const double angle = turn * std::numbers::pi / 180;
  WallLine before = bare.wall;
  forEachList(before, [](auto& list) { list.clear(); });
  before.id = takeId(bare.job);
  before.startCorner = takeId(bare.job);
  before.endCorner = bare.wall.startCorner;
  bare.job.corners.edit([&](std::vector<Corner>& corners) {
    corners.push_back({before.startCorner, {-120 * std::cos(angle), 120 * std::sin(angle)}, {}});
  });
  change(before);
  bare.job.walls.add(before);
}
inline void addBefore(BareWall& bare, double turn) {
  addBefore(bare, turn, [](WallLine&) {});
}

inline void addStep(BareWall& bare, double from, double to, double height) {
  bare.wall.steps.push_back({takeId(bare.job), "", from, to, height, {}});
}
inline void stepWhole(WallLine& wall, double height) {
  wall.steps.push_back({Id{9000}, "", 0, 120, height, {}});
}

inline void hangStrap(BareWall& bare, double station) {
  Strap strap;
  strap.id = takeId(bare.job);
  strap.type = bare.strap;
  strap.station = station;
  bare.wall.straps.push_back(strap);
}

// Beside a 4x6 (3 1/2 along the wall) an inch from its face.
inline void addRod(BareWall& bare, double station, double depth) {
  RodType type;
  type.id = takeId(bare.job);
  type.diameter = type.footWidth = 0.75;
  type.footThickness = 0.5;
  type.embedment = 11.5;
  type.threadLength = 6;
  type.threadsPerInch = 10;
  bare.job.types.edit([&](HardwareTypes& types) { types.rods.push_back(type); });
  Rod rod;
  rod.id = takeId(bare.job);
  rod.type = type.id;
  rod.column = addColumn(bare, station - 2.75);
  rod.offset = 1;
  rod.depth = depth;
  rod.projection = 5;
  bare.wall.rods.push_back(rod);
}

inline void addUpright(BareWall& bare, double station, double depth, Interval z) {
  addBar(bare, {station, depth, z.from}, {station, depth, z.to});
}
inline void addAlong(BareWall& bare, Interval s, double depth, double z) {
  const Id id = addBar(bare, {s.from, depth, z}, {s.to, depth, z});
  findIn(bare.wall.bars, id)->run = BarRun::Along;
}

struct Truth {
  Level level = Level::Fix;
  double measured = 0;
  double limit = 0;
  Box3 region{};
};

// The rule finds this and nothing else. Measures to 1e-6, for hypotenuses typed from hand.
inline testing::AssertionResult says(const BareWall& bare, RuleId rule, const Truth& truth) {
  const Findings all = findingsOf(bare, rule);
  const auto close = [](double a, double b) { return std::abs(a - b) < 1e-6; };
  const auto alike = [&](Interval a, Interval b) { return close(a.from, b.from) && close(a.to, b.to); };
  if (all.size() == 1) {
    const Finding& f = all[0];
    if (f.level == truth.level && close(f.measured, truth.measured) && close(f.limit, truth.limit) &&
        alike(f.region.s, truth.region.s) && alike(f.region.d, truth.region.d) && alike(f.region.z, truth.region.z))
      return testing::AssertionSuccess();
  }
  auto failure = testing::AssertionFailure() << sillwright::rule(rule).name << " finds " << all.size();
  for (const Finding& f : all)
    failure << described(f);
  return failure;
}

} // namespace sillwright::testing_support
