// A straight wall with a sill on it and nothing else but what a test sets there, and what a test expects of one rule.
// The hardware types are those of the demo wall: a 5/8 x 12 J bolt with a 2 1/2 leg, a 3 x 3 x 0.229 washer.
#pragma once

#include <gtest/gtest.h>

#include <cmath>
#include <sstream>

#include "core/model/lookup.h"
#include "core/rules/rule_book.h"
#include "rules_wall.h"

namespace sillwright::testing_support {

// 8 in thick, 24 in high, footing 16 x 8 from d -4 to 12. Sill 3x6: d 0.5 to 6, z 0 to 2.5.
struct BareWall {
  Job job;
  WallLine wall;
  Id bolt, washer, strap; // types
  Id sill;
};

inline BareWall bareWall(double length = 96) {
  RulesWall demo = wallWithStrapsAt(1.625, 44.5, 242.875, 285.25);
  BareWall bare;
  bare.wall = demo.job.walls[0];
  bare.job = demo.job;
  bare.job.walls.remove(bare.wall.id);
  bare.job.corners.edit([&](std::vector<Corner>& corners) { corners[1].at.x = length; });
  bare.bolt = bare.job.types->bolts[0].id;
  bare.washer = bare.job.types->washers[0].id;
  bare.strap = bare.job.types->straps[0].id;
  forEachList(bare.wall, [](auto& list) { list.clear(); });
  bare.wall.studs.reset();
  Sill sill;
  sill.id = bare.sill = takeId(bare.job);
  sill.to = length;
  sill.nominal = {3, 6};
  bare.wall.sills.push_back(sill);
  return bare;
}

// Projection 4: 8 in deep, with 5/16 of thread to spare. Depth 3.25: the middle of the sill.
inline Id addBolt(BareWall& bare, double station, double depth = 3.25, double projection = 4) {
  Bolt bolt;
  bolt.id = takeId(bare.job);
  bolt.type = bare.bolt;
  bolt.washer = bare.washer;
  bolt.station = station;
  bolt.depth = depth;
  bolt.projection = projection;
  bare.wall.bolts.push_back(bolt);
  return bolt.id;
}

inline std::vector<Id> addBolts(BareWall& bare, std::initializer_list<double> stations) {
  std::vector<Id> bolts;
  for (const double station : stations)
    bolts.push_back(addBolt(bare, station));
  return bolts;
}

// A 4x6 is 3 1/2 along the wall, from d 0.5 to 6.
inline Id addColumn(BareWall& bare, double station, MakeUp makeUp = {1, {4, 6}}) {
  Column column;
  column.id = takeId(bare.job);
  column.station = station;
  column.makeUp = makeUp;
  bare.wall.columns.push_back(column);
  return column.id;
}

inline Id addOpening(BareWall& bare, OpeningKind kind, double from, double to) {
  Opening opening;
  opening.id = takeId(bare.job);
  opening.kind = kind;
  opening.from = from;
  opening.to = to;
  opening.headHeight = 80;
  opening.sillHeight = kind == OpeningKind::Window ? 36 : 0;
  bare.wall.openings.push_back(opening);
  return opening.id;
}

inline Id addBar(BareWall& bare, Point3 a, Point3 b, int size = 4) {
  Bar bar;
  bar.id = takeId(bare.job);
  bar.size = size;
  bar.planned = {a, b};
  bare.wall.bars.push_back(bar);
  return bar.id;
}

inline Id addPanel(BareWall& bare, double from, double to, std::optional<double> unitShear = {}) {
  Panel panel;
  panel.id = takeId(bare.job);
  panel.from = from;
  panel.to = to;
  panel.unitShear = unitShear;
  bare.wall.panels.push_back(panel);
  return panel.id;
}

template <class Change> void editBoltType(BareWall& bare, Change&& change) {
  bare.job.types.edit([&](HardwareTypes& types) { change(types.bolts[0]); });
}

inline void overrideLimit(BareWall& bare, std::string key, double value) {
  LimitOverride change;
  change.key = std::move(key);
  change.value = value;
  change.reason = "test";
  bare.job.limits.edit([&](JobLimits& limits) { limits.overrides.push_back(change); });
}

inline Findings findingsOf(const BareWall& bare, RuleId rule) {
  Job job = bare.job;
  job.walls.add(bare.wall);
  Findings all = checkWall(layOut(job, job.walls.findPointer(bare.wall.id)), resolve(*job.limits));
  std::erase_if(all, [&](const Finding& finding) { return finding.rule != rule; });
  return all;
}

struct Expected {
  Level level = Level::Fix;
  std::vector<Id> pieces{};
  double measured = 0;
  double limit = 0;
  Box3 region{};
  std::optional<Correction> correction{};
  std::uint8_t variant = 0;
};

inline Correction shifted(Id piece, double by) { return {Correction::Field::Station, piece, by}; }
inline Correction across(Id piece, double by) { return {Correction::Field::Depth, piece, by}; }
inline Correction outOfConcrete(Id piece, double by) { return {Correction::Field::Projection, piece, by}; }

inline bool near(double a, double b) { return std::abs(a - b) < 1e-9; }
inline bool near(Interval a, Interval b) { return near(a.from, b.from) && near(a.to, b.to); }
inline bool near(const Box3& a, const Box3& b) { return near(a.s, b.s) && near(a.d, b.d) && near(a.z, b.z); }
inline bool near(const std::optional<Correction>& a, const std::optional<Correction>& b) {
  return a.has_value() == b.has_value() && (!a || (a->field == b->field && a->piece == b->piece && near(a->by, b->by)));
}

template <class Result> std::string described(const Result& f) {
  std::ostringstream text;
  text.precision(10);
  text << "\n  level " << static_cast<int>(f.level) << ", variant " << static_cast<int>(f.variant) << ", measured "
       << f.measured << ", limit " << f.limit << ", pieces";
  for (const Id piece : f.pieces)
    text << " #" << piece.value;
  for (const Interval side : {f.region.s, f.region.d, f.region.z})
    text << " [" << side.from << ", " << side.to << "]";
  if (f.correction)
    text << ", field " << static_cast<int>(f.correction->field) << " of #" << f.correction->piece.value << " by "
         << f.correction->by;
  return text.str();
}

// The rule says nothing; with a level, nothing of that level.
inline testing::AssertionResult silent(const BareWall& bare, RuleId rule, std::optional<Level> level = {}) {
  for (const Finding& f : findingsOf(bare, rule))
    if (!level || f.level == *level)
      return testing::AssertionFailure() << sillwright::rule(rule).name << " finds" << described(f);
  return testing::AssertionSuccess();
}

// The rule finds this and nothing else, in every field.
inline testing::AssertionResult finds(const BareWall& bare, RuleId rule, const Expected& expected) {
  const Findings all = findingsOf(bare, rule);
  auto failure = testing::AssertionFailure() << sillwright::rule(rule).name << " finds " << all.size();
  for (const Finding& f : all)
    failure << described(f);
  failure << "\nexpected one" << described(expected);
  if (all.size() != 1)
    return failure;
  const Finding& f = all[0];
  const bool falls = f.wanted == Wanted::AtLeast ? f.measured < f.limit || f.limit == 0 : f.measured > f.limit;
  const bool same = f.level == expected.level && f.wall == bare.wall.id && f.pieces == expected.pieces &&
                    near(f.measured, expected.measured) && near(f.limit, expected.limit) &&
                    near(f.region, expected.region) && f.variant == expected.variant &&
                    near(f.correction, expected.correction) && falls;
  return same ? testing::AssertionSuccess() : failure;
}

} // namespace sillwright::testing_support
