// A bare wall with one kind of strap whose numbers are easy to reckon with, and the whole of a finding compared at
// once.
//
// The wall: 288 long, 8 thick, 24 of stem on a footing 8 deep, one sill 2x6 (1 1/2 thick), a form 1 1/2 above the pour
// line. The strap: a plate 2 wide and 1/4 thick, down 12 along its centre line at depth 1/8 and level inward to
// depth 5. So in the concrete it takes up depths 0 ... 5 and heights -12 1/8 ... 0, and above depths 0 ... 1/4, heights
// 0 ... 22. Its 16 nails of 1/8 stand in two rows, 1/2 left (5, 7 ... 19 up) and right (6, 8 ... 20 up) of the centre
// line.
#pragma once

#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/rules/rule_book.h"

namespace sillwright::testing_support {

inline constexpr Id strapWall{10}, beforeWall{11}, afterWall{12}, strapTypeId{1};

struct StrapWall {
  StrapType type;
  WallLine wall;
  JobLimits limits;
  std::vector<WallEndMark> marks;
  std::optional<Point2> before; // where the walls before and after come from and go to, where there are any
  std::optional<Point2> after;
  std::uint32_t next = 100;

  // A strap on a post 6x6 (5 1/2 along the wall) of its own.
  Id hang(double station, double heightOffset = 0) { return hangOn(station, station, {1, {6, 6}}, heightOffset); }
  Id hangOn(double column, double station, MakeUp makeUp, double heightOffset = 0) {
    Column post;
    post.id = Id{next++};
    post.station = column;
    post.makeUp = makeUp;
    wall.columns.push_back(post);
    Strap strap;
    strap.id = Id{next++};
    strap.type = type.id;
    strap.station = station;
    strap.heightOffset = heightOffset;
    strap.column = post.id;
    wall.straps.push_back(strap);
    return strap.id;
  }
  Id open(OpeningKind kind, double from, double to, double sill = 0, double head = 80) {
    Opening opening;
    opening.id = Id{next++};
    opening.kind = kind;
    opening.from = from;
    opening.to = to;
    opening.sillHeight = sill;
    opening.headHeight = head;
    wall.openings.push_back(opening);
    return opening.id;
  }
  Id step(double from, double to, double height) {
    wall.steps.push_back({Id{next++}, "", from, to, height, ""});
    return wall.steps.back().id;
  }
  Id panel(double from, double to, const std::string& leftMark = "", const std::string& rightMark = "") {
    Panel panel;
    panel.id = Id{next++};
    panel.from = from;
    panel.to = to;
    panel.leftMark = leftMark;
    panel.rightMark = rightMark;
    wall.panels.push_back(panel);
    return panel.id;
  }
  Id bar(BarRun run, Point3 a, Point3 b) { // a No. 4: 1/2 thick
    Bar bar;
    bar.id = Id{next++};
    bar.run = run;
    bar.planned = {a, b};
    wall.bars.push_back(bar);
    return bar.id;
  }
  void limit(const char* key, double value) { limits.overrides.push_back({key, value, "said so", "", "", ""}); }
};

inline StrapWall bareStrapWall() {
  StrapWall bare;
  bare.type.id = strapTypeId;
  bare.type.plateWidth = 2;
  bare.type.plateThickness = 0.25;
  bare.type.profile = {{0.125, 0}, {0.125, -12}, {5, -12}};
  bare.type.exposedLength = 22;
  bare.type.nails = {{-0.5, 0.5}, 5, 1, 16, true, "", 0.125, 3};
  WallLine& wall = bare.wall;
  wall.id = strapWall;
  wall.startCorner = Id{20};
  wall.endCorner = Id{21};
  wall.footing = {16, 8, 4};
  wall.formTop = 1.5;
  wall.sillInset = 0.5;
  wall.sills.push_back({Id{30}, "", 0, 288, {2, 6}, "", {}, ""});
  return bare;
}

inline Job jobOf(const StrapWall& bare) {
  Job job;
  job.types.edit([&](HardwareTypes& types) { types.straps = {bare.type}; });
  job.limits = bare.limits;
  job.marks = bare.marks;
  std::vector<Corner> corners{{bare.wall.startCorner, {0, 0}, ""}, {bare.wall.endCorner, {288, 0}, ""}};
  std::vector<WallLine> walls{bare.wall};
  const auto neighbour = [&](Id id, const std::optional<Point2>& at, Id corner, bool isBefore) {
    if (!at)
      return;
    corners.push_back({corner, *at, ""});
    WallLine other;
    other.id = id;
    other.startCorner = isBefore ? corner : bare.wall.endCorner;
    other.endCorner = isBefore ? bare.wall.startCorner : corner;
    walls.push_back(other);
  };
  neighbour(beforeWall, bare.before, Id{22}, true);
  neighbour(afterWall, bare.after, Id{23}, false);
  job.corners = corners;
  job.walls = WallList(walls);
  return job;
}

inline Findings only(const Findings& all, RuleId rule) {
  Findings of;
  for (const Finding& finding : all)
    if (finding.rule == rule)
      of.push_back(finding);
  return of;
}

inline Findings found(const StrapWall& bare, RuleId rule) {
  const Job job = jobOf(bare);
  return only(checkWall(layOut(job, job.walls.findPointer(strapWall)), resolve(*job.limits)), rule);
}

// As found, with the straps out of plumb by so much in an inch of height, + to the right going up.
inline Findings foundLeaning(const StrapWall& bare, double lean, RuleId rule) {
  const Job job = jobOf(bare);
  WallLayout layout = layOut(job, job.walls.findPointer(strapWall));
  for (StrapBody& strap : layout.straps)
    strap.lean = lean;
  return only(checkWall(layout, resolve(*job.limits)), rule);
}

struct Wants {
  Level level = Level::Fix;
  std::vector<Id> pieces;
  double measured = 0;
  double limit = 0;
  Box3 region;
  std::optional<Correction> correction;
};

inline Correction along(Id piece, double by) {
  return {Correction::Field::Station, piece, by};
}
inline Correction upward(Id piece, double by) {
  return {Correction::Field::Height, piece, by};
}

inline std::string text(Interval i) {
  return std::to_string(i.from) + " ... " + std::to_string(i.to);
}
inline std::string text(const Box3& box) {
  return "s " + text(box.s) + ", d " + text(box.d) + ", z " + text(box.z);
}

inline bool same(double a, double b) {
  return std::abs(a - b) < 1e-7;
}
inline bool same(Interval a, Interval b) {
  return same(a.from, b.from) && same(a.to, b.to);
}
inline bool same(const Box3& a, const Box3& b) {
  return same(a.s, b.s) && same(a.d, b.d) && same(a.z, b.z);
}

inline testing::AssertionResult is(const Finding& finding, const Wants& wants) {
  const auto wrong = [] { return testing::AssertionFailure(); };
  if (finding.level != wants.level)
    return wrong() << "level " << static_cast<int>(finding.level);
  if (finding.pieces != wants.pieces)
    return wrong() << "other pieces, first " << (finding.pieces.empty() ? 0 : finding.pieces.front().value);
  if (!same(finding.measured, wants.measured) || !same(finding.limit, wants.limit))
    return wrong() << "measured " << finding.measured << " against " << finding.limit;
  if (!same(finding.region, wants.region))
    return wrong() << "region " << text(finding.region) << " wants " << text(wants.region);
  if (finding.correction.has_value() != wants.correction.has_value())
    return wrong() << (finding.correction ? "a correction of " + std::to_string(finding.correction->by)
                                          : "no correction");
  const auto& a = finding.correction;
  const auto& b = wants.correction;
  if (a && (a->field != b->field || a->piece != b->piece || !same(a->by, b->by)))
    return wrong() << "corrects piece " << a->piece.value << " by " << a->by;
  return testing::AssertionSuccess();
}

inline testing::AssertionResult isOnly(const Findings& findings, const Wants& wants) {
  if (findings.size() != 1)
    return testing::AssertionFailure() << findings.size() << " findings";
  return is(findings.front(), wants);
}

inline std::size_t countOf(const Findings& findings, Level level) {
  return static_cast<std::size_t>(
      std::count_if(findings.begin(), findings.end(), [&](const Finding& f) { return f.level == level; }));
}

inline constexpr double sixteenth = 1.0 / 16;

} // namespace sillwright::testing_support
