// The boat shed's front wall: the invented demo wall, built as values.
#pragma once

#include "core/model/job.h"

namespace sillwright::testing_support {

struct RulesWall {
  Job job;
  Id wall, s1, s2, s3, s4;
};

inline RulesWall wallWithStrapsAt(double s1, double s2, double s3, double s4) {
  RulesWall demo;
  Job& job = demo.job;
  StrapType strap;
  strap.id = takeId(job);
  strap.plateWidth = 2.5;
  strap.plateThickness = 0.105;
  strap.profile = {{0.05, 0}, {0.5, -2}, {3.75, -12}, {5.5, -14}, {5.5, -12.5}};
  strap.exposedLength = 22;
  strap.nails.rows = {-0.5, 0.5};
  strap.nails.first = 5;
  strap.nails.spacing = 1;
  strap.nails.count = 16;
  strap.nails.staggered = true;
  strap.nails.nailDiameter = 0.148;
  BoltType bolt;
  bolt.id = takeId(job);
  bolt.diameter = 0.625;
  bolt.length = 12;
  bolt.threadLength = 5;
  bolt.threadsPerInch = 11;
  bolt.end = BoltEnd::J;
  bolt.hookLeg = 2.5;
  WasherType washer;
  washer.id = takeId(job);
  job.types.edit([&](HardwareTypes& types) {
    types.straps.push_back(strap);
    types.bolts.push_back(bolt);
    types.washers.push_back(washer);
  });
  const Id from = takeId(job);
  const Id to = takeId(job);
  job.corners.edit([&](std::vector<Corner>& corners) {
    corners.push_back({from, {0, 0}, {}});
    corners.push_back({to, {288, 0}, {}});
  });
  WallLine wall;
  wall.id = demo.wall = takeId(job);
  wall.mark = "A";
  wall.startCorner = from;
  wall.endCorner = to;
  wall.footing.width = 16;
  wall.footing.depth = 8;
  wall.footing.projection = 4;
  wall.formTop = 1.5;
  wall.sillInset = 0.5;
  wall.studs = StudLayout{};
  wall.steps.push_back({takeId(job), "D1", 48, 240, -8, {}});
  for (const double at : {0.0, 240.0}) {
    Sill sill;
    sill.id = takeId(job);
    sill.from = at;
    sill.to = at + 48;
    sill.nominal = {3, 6};
    wall.sills.push_back(sill);
    Panel panel;
    panel.id = takeId(job);
    panel.from = at;
    panel.to = at + 48;
    panel.unitShear = 600;
    wall.panels.push_back(panel);
  }
  Opening door;
  door.id = takeId(job);
  door.kind = OpeningKind::GarageDoor;
  door.from = 48;
  door.to = 240;
  door.headHeight = 83.75;
  wall.openings.push_back(door);
  const auto column = [&](const char* mark, double station, MakeUp makeUp, ColumnRole role) {
    Column c;
    c.id = takeId(job);
    c.mark = mark;
    c.station = station;
    c.makeUp = makeUp;
    c.role = role;
    wall.columns.push_back(c);
    return c.id;
  };
  const Id c1 = column("C1", 2.75, {1, {6, 6}}, ColumnRole::Post);
  const Id c2 = column("C2", 45, {2, {2, 6}}, ColumnRole::King);
  column("T2", 47.25, {1, {2, 6}}, ColumnRole::Trimmer);
  column("T3", 240.75, {1, {2, 6}}, ColumnRole::Trimmer);
  const Id c3 = column("C3", 243, {2, {2, 6}}, ColumnRole::King);
  const Id c4 = column("C4", 285.25, {1, {6, 6}}, ColumnRole::Post);
  const auto hang = [&](const char* mark, double station, Id on) {
    Strap s;
    s.id = takeId(job);
    s.mark = mark;
    s.type = strap.id;
    s.station = station;
    s.column = on;
    wall.straps.push_back(s);
    return s.id;
  };
  demo.s1 = hang("S1", s1, c1);
  demo.s2 = hang("S2", s2, c2);
  demo.s3 = hang("S3", s3, c3);
  demo.s4 = hang("S4", s4, c4);
  int number = 1;
  for (const double at : {7.75, 20.0, 38.0, 250.0, 268.0, 280.25}) {
    Bolt b;
    b.id = takeId(job);
    b.mark = "B" + std::to_string(number++);
    b.type = bolt.id;
    b.washer = washer.id;
    b.station = at;
    b.depth = 2.4375;
    b.projection = 4;
    wall.bolts.push_back(b);
  }
  for (int k = 0; k < 18; ++k) {
    Bar bar;
    bar.id = takeId(job);
    bar.mark = "V" + std::to_string(k + 1);
    const double planned = 8 + 16.0 * k;
    const double top = planned > 48 && planned < 240 ? -10 : -2;
    bar.planned = {{planned, 4, -28.5}, {planned, 4, top}};
    const double found[] = {4.25, 24.125, 40.25, 245.375, 264.25, 283.125};
    if (k < 3 || k >= 15) {
      const double at = found[k < 3 ? k : k - 12];
      bar.found = BarPlace{{at, 4, -28.5}, {at, 4, -2}};
    }
    wall.bars.push_back(bar);
  }
  job.walls.add(wall);
  return demo;
}

} // namespace sillwright::testing_support
