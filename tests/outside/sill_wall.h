// A straight wall with a sill and bolts, for holding the rules against published text: what a test does not set is as
// plain as can be. Stations and depths in inches; the sill starts at the outside face.
#pragma once

#include <gtest/gtest.h>

#include "core/rules/rule_book.h"

namespace sillwright::published {

struct SillWall {
  double length = 96;
  Nominal sill{2, 6};
  double boltDiameter = 0.625;
  double boltLength = 12;
  std::vector<double> bolts{};
  double depth = 2.75; // of every bolt
  double projection = 4;
  WasherType washer{};
  std::optional<double> unitShear{}; // of a panel over the whole wall
  Sheathing sheathing = Sheathing::Outside;
  int storeys = 1;
  std::vector<double> splices{};
  bool joinsTwoWalls = false;
};

inline Corner corner(Job& job, Point2 at) { return {takeId(job), at, {}}; }

inline void addNeighbours(Job& job, const WallLine& wall, const std::vector<Corner>& corners) {
  const Id ends[][2]{{corners[1].id, corners[2].id}, {corners[3].id, wall.startCorner}};
  for (const auto& [from, to] : ends) {
    WallLine neighbour;
    neighbour.id = takeId(job);
    neighbour.startCorner = from;
    neighbour.endCorner = to;
    job.walls.add(neighbour);
  }
}

// The wall in question is the first of the job.
inline Job jobOf(const SillWall& plain) {
  Job job;
  BoltType type;
  type.id = takeId(job);
  type.diameter = plain.boltDiameter;
  type.length = plain.boltLength;
  WasherType washer = plain.washer;
  washer.id = takeId(job);
  job.types.edit([&](HardwareTypes& types) {
    types.bolts.push_back(type);
    types.washers.push_back(washer);
  });
  job.limits.edit([&](JobLimits& limits) { limits.storeys = plain.storeys; });
  const std::vector<Corner> corners{corner(job, {0, 0}), corner(job, {plain.length, 0}),
                                    corner(job, {plain.length, 120}), corner(job, {0, 120})};
  job.corners = corners;
  WallLine wall;
  wall.id = takeId(job);
  wall.startCorner = corners[0].id;
  wall.endCorner = corners[1].id;
  Sill sill;
  sill.id = takeId(job);
  sill.to = plain.length;
  sill.nominal = plain.sill;
  sill.splices = plain.splices;
  wall.sills.push_back(sill);
  Panel panel;
  panel.id = takeId(job);
  panel.to = plain.length;
  panel.unitShear = plain.unitShear;
  panel.sheathing = plain.sheathing;
  wall.panels.push_back(panel);
  for (const double station : plain.bolts) {
    Bolt bolt;
    bolt.id = takeId(job);
    bolt.type = type.id;
    bolt.washer = washer.id;
    bolt.station = station;
    bolt.depth = plain.depth;
    bolt.projection = plain.projection;
    wall.bolts.push_back(bolt);
  }
  job.walls.add(wall);
  if (plain.joinsTwoWalls)
    addNeighbours(job, wall, corners);
  return job;
}

inline Findings findingsOf(const Job& job, RuleId rule, std::size_t wall = 0) {
  Findings all = checkWall(layOut(job, job.walls.pointer(wall)), resolve(*job.limits));
  std::erase_if(all, [&](const Finding& finding) { return finding.rule != rule; });
  return all;
}

inline std::size_t count(const SillWall& wall, RuleId rule) { return findingsOf(jobOf(wall), rule).size(); }

} // namespace sillwright::published
