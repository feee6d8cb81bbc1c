// Rules of where straps hang against brute force on random walls: the concrete is walked along from each strap until it
// ends, the cast part is followed point by point, and heights are taken from the plain numbers of the model. Both ways,
// as in brute_force_rules_test.
#include "brute_force.h"

#include <random>

#include "tests/support/broken_job.h"
#include "tests/support/generate_job.h"

namespace sillwright {
namespace {

using namespace brute_force;

void checkJoints(const WallLayout& wall, const ResolvedLimits& limits) {
  Found joint(RuleId::StrapJoint, wall, limits);
  for (const StrapBody& strap : wall.straps) {
    const double off = std::abs(strap.strap->heightOffset);
    const Finding* finding = joint.expectOver({strap.id}, exactly(off), 0.125);
    if (finding) {
      EXPECT_NEAR(finding->region.z.length(), off, tiny);
    }
  }
  joint.expectNoMore();
}

// Points all over both faces of the cast plate, seen from the side.
std::vector<ProfilePoint> sideOf(const StrapBody& strap) {
  std::vector<ProfilePoint> points;
  const std::vector<ProfilePoint>& profile = strap.type->profile;
  for (std::size_t i = 1; i < profile.size(); ++i) {
    const ProfilePoint a = profile[i - 1], b = profile[i];
    const double length = std::hypot(b.d - a.d, b.z - a.z);
    const double half = strap.type->plateThickness / 2 / length;
    for (int k = 0; k <= 200; ++k)
      for (const double face : {-half, half})
        points.push_back({a.d + k / 200.0 * (b.d - a.d) + face * (b.z - a.z),
                          strap.joint + a.z + k / 200.0 * (b.z - a.z) - face * (b.d - a.d)});
  }
  return points;
}

// Far enough from both ends that no neighbour's concrete counts; corners have their own oracle.
bool awayFromCorners(const WallLayout& wall, const StrapBody& strap) {
  return strap.strap->station > 30 && strap.strap->station < wall.length - 30;
}

void checkHooks(const WallLayout& wall, const ResolvedLimits& limits) {
  Found depth(RuleId::StrapDepth, wall, limits), back(RuleId::StrapBack, wall, limits);
  for (const StrapBody& strap : wall.straps) {
    double lowest = 1e9, innermost = -1e9;
    for (const ProfilePoint p : sideOf(strap)) {
      lowest = std::min(lowest, p.z);
      if (p.z > -wall.wall->stemHeight && p.z < strap.joint) // lower the footing goes on behind
        innermost = std::max(innermost, p.d);
    }
    const double cover = lowest + wall.wall->stemHeight + wall.wall->footing.depth;
    const double behind = wall.wall->thickness - innermost;
    constexpr double step = 0.12;        // from one point of a face to the next, and so at the top of the footing
    if (!awayFromCorners(wall, strap)) { // a neighbour's concrete only adds
      for (const auto& [found, least] : {std::pair(&depth, cover), std::pair(&back, behind - step)})
        if (const Finding* finding = found->take({strap.id}, {least, 1e9})) {
          EXPECT_GE(finding->measured, least - tiny);
        }
      continue;
    }
    const Finding* under = depth.expectUnder({strap.id}, exactly(cover), 3);
    if (under) {
      EXPECT_EQ(under->level, cover < tiny ? Level::Fix : Level::Watch);
      EXPECT_NEAR(under->region.z.length(), std::abs(cover), tiny);
    }
    const Finding* inside = innermost < 0 ? nullptr : back.expectUnder({strap.id}, {behind - step, behind}, 1.5);
    if (inside && std::abs(behind) > step) {
      EXPECT_EQ(inside->level, behind < 0 ? Level::Fix : Level::Watch);
      EXPECT_NEAR(inside->region.d.length(), std::abs(inside->measured), tiny);
    }
  }
  depth.expectNoMore();
  back.expectNoMore();
}

double pourOver(const WallLayout& wall, double station) {
  for (const PourRun& run : wall.pour)
    if (station > run.s.from && station < run.s.to)
      return run.height;
  return -1e9; // no concrete
}

// From the middle of a strap by the 32nd, to the first place where there is no concrete at the height of the plate.
void checkEdges(const WallLayout& wall, const ResolvedLimits& limits) {
  constexpr double step = 1.0 / 32;
  Found found(RuleId::StrapEdge, wall, limits);
  for (const StrapBody& strap : wall.straps) {
    const double station = strap.strap->station;
    const double height = std::min(strap.joint, strap.joint - strap.strap->heightOffset) - 1e-6;
    std::map<double, double> sides; // from the plate to the end of the concrete, the nearer side first
    for (const double sign : {-1.0, 1.0}) {
      double away = step / 2;
      while (pourOver(wall, station + sign * away) >= height)
        away += step;
      sides[away - strap.type->plateWidth / 2 + (sign > 0 ? 1e-9 : 0)] = sign;
    }
    for (const auto& [edge, sign] : sides) { // half a step to either side
      const Finding* finding = found.expectUnder({strap.id}, {edge - step / 2, edge + step / 2}, 1);
      if (!finding)
        continue;
      EXPECT_EQ(finding->level, finding->measured < 0.5 - tiny ? Level::Fix : Level::Watch);
      EXPECT_NEAR(finding->region.s.length(), std::abs(finding->measured), tiny);
      const double plate = station + sign * strap.type->plateWidth / 2;
      EXPECT_TRUE(within({plate, plate}, finding->region.s));
    }
  }
  found.expectNoMore();
}

// The strap nearest to a station among those from there to another.
const Strap* nearestTo(const WallLayout& wall, double at, double to) {
  const Strap* nearest = nullptr;
  for (const Strap& strap : wall.wall->straps)
    if ((strap.station - at) * (to - at) >= 0 && std::abs(strap.station - at) <= std::abs(to - at) &&
        (!nearest || std::abs(strap.station - at) < std::abs(nearest->station - at)))
      nearest = &strap;
  return nearest;
}

void checkPairs(const WallLayout& wall, const ResolvedLimits& limits) {
  constexpr double reach = 12; // in from the end of a panel or the side of an opening
  Found found(RuleId::StrapPair, wall, limits);
  std::set<std::pair<Id, Id>> pairs;
  const auto check = [&](const Strap* a, const Strap* b) {
    if (!a || !b || a == b || !pairs.insert({std::min(a->id, b->id), std::max(a->id, b->id)}).second)
      return;
    const double apart = std::abs(a->heightOffset - b->heightOffset);
    if (const Finding* finding = found.expectOver({a->id, b->id}, exactly(apart), 0.125)) {
      EXPECT_NEAR(finding->region.z.length(), apart, tiny);
    }
  };
  for (const Panel& panel : wall.wall->panels) {
    const double half = std::min(reach, (panel.to - panel.from) / 2);
    if (half >= 0)
      check(nearestTo(wall, panel.from, panel.from + half), nearestTo(wall, panel.to, panel.to - half));
  }
  for (const Opening& opening : wall.wall->openings)
    check(nearestTo(wall, opening.from, opening.from - reach), nearestTo(wall, opening.to, opening.to + reach));
  found.expectNoMore();
}

// Some straps beside a step or an end, some walls so thin that hooks come out of them.
Job withStrapsAtEdges(Job job, std::mt19937& random) {
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    WallLine wall = job.walls[i];
    const double length = wallLength(job, wall);
    for (Strap& strap : wall.straps) {
      const double aside = 1 + static_cast<double>(random() % 32) / 16;
      if (random() % 4 == 0 && !wall.steps.empty())
        strap.station = wall.steps.front().from + (random() % 2 ? aside : -aside);
      else if (random() % 4 == 0)
        strap.station = random() % 2 ? aside : length - aside;
      strap.station = std::clamp(strap.station, 0.5, length - 0.5);
    }
    if (random() % 3 == 0)
      wall.thickness = 5 + static_cast<double>(random() % 48) / 16;
    job.walls.replace(std::move(wall));
  }
  return job;
}

TEST(BruteForceStraps, agreesOnThousandsOfRandomWalls) {
  std::mt19937 random(1812);
  std::size_t walls = 0;
  Found::told.clear();
  for (std::uint64_t seed = 1; seed <= 250; ++seed) {
    const Job job = withStrapsAtEdges(broken(generateJob(5000 + seed, 240), random), random);
    const ResolvedLimits limits = resolve(*job.limits);
    for (std::size_t i = 0; i < job.walls.size(); ++i, ++walls) {
      const WallLayout wall = layOut(job, job.walls.pointer(i));
      SCOPED_TRACE("seed " + std::to_string(seed) + ", wall " + wall.wall->mark);
      checkJoints(wall, limits);
      checkHooks(wall, limits);
      checkEdges(wall, limits);
      checkPairs(wall, limits);
    }
    if (HasFailure() && seed > 3)
      break;
  }
  EXPECT_GT(walls, 1500u);
  for (const RuleId id :
       {RuleId::StrapEdge, RuleId::StrapJoint, RuleId::StrapPair, RuleId::StrapDepth, RuleId::StrapBack})
    EXPECT_GT(Found::told[id], 20) << rule(id).name;
}

} // namespace
} // namespace sillwright
