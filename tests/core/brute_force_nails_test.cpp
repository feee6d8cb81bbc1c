// Rules of the nails and the exposed plate of straps against brute force on random walls: every nail is a ring of
// points set out from the numbers of its type, the ring is looked at on the plies of the column one by one, and a
// leaning plate is cut at many heights. Both ways, as in brute_force_rules_test.
#include "brute_force.h"

#include <numbers>
#include <random>

#include "tests/support/broken_job.h"
#include "tests/support/generate_job.h"

namespace sillwright {
namespace {

using namespace brute_force;

bool same(Interval a, Interval b) {
  return std::abs(a.from - b.from) < tiny && std::abs(a.to - b.to) < tiny;
}

struct Nail {
  double s, z, radius;
  std::vector<Point3> ring; // in elevation: d is left out
};

std::vector<Nail> nailsIn(const WallLayout& wall, const StrapBody& strap) {
  const NailPattern& pattern = strap.type->nails;
  double pour = 0; // the high side of a riser
  for (const PourRun& run : wall.pour)
    if (strap.strap->station >= run.s.from - 1e-6 && strap.strap->station <= run.s.to + 1e-6)
      pour = &run == &wall.pour.front() || strap.strap->station > run.s.from + 1e-6 ? run.height
                                                                                    : std::max(pour, run.height);
  std::vector<Nail> nails;
  const auto add = [&](double offset, int up) {
    Nail nail{strap.strap->station + offset,
              pour + strap.strap->heightOffset + pattern.first + up * pattern.spacing,
              pattern.nailDiameter / 2,
              {}};
    for (int i = 0; i < 32; ++i)
      nail.ring.push_back({nail.s + nail.radius * std::cos(i * std::numbers::pi / 16), 0,
                           nail.z + nail.radius * std::sin(i * std::numbers::pi / 16)});
    nails.push_back(nail);
  };
  const int rows = static_cast<int>(pattern.rows.size());
  for (int i = 0; i < pattern.count; ++i)
    if (pattern.staggered)
      add(pattern.rows[static_cast<std::size_t>(i % rows)], i);
    else
      for (const double offset : pattern.rows)
        add(offset, i);
  return nails;
}

// The plies of a column from left to right, from its own numbers.
std::vector<Interval> pliesOf(const WallLayout& wall, const ColumnBody& body) {
  const Column& column = *findIn(wall.wall->columns, body.id);
  const std::map<int, double> dressed{{2, 1.5}, {3, 2.5}, {4, 3.5}, {6, 5.5}};
  const double ply = dressed.at(column.makeUp.nominal.thickness);
  std::vector<Interval> plies;
  for (int i = 0; i < column.makeUp.plies; ++i) {
    const double from = column.station - column.makeUp.plies * ply / 2 + i * ply;
    plies.push_back({from, from + ply});
  }
  return plies;
}

// Every point of the ring on the column.
bool lands(const Nail& nail, const std::vector<Interval>& plies, Interval height) {
  return std::all_of(nail.ring.begin(), nail.ring.end(), [&](const Point3& p) {
    return p.s >= plies.front().from - tiny && p.s <= plies.back().to + tiny && p.z >= height.from - tiny &&
           p.z <= height.to + tiny;
  });
}

// Points of the ring on either side of a seam.
bool onSeam(const Nail& nail, const std::vector<Interval>& plies) {
  for (std::size_t i = 1; i < plies.size(); ++i) {
    const double seam = plies[i].from;
    const auto side = [&](double sign) {
      return std::any_of(nail.ring.begin(), nail.ring.end(),
                         [&](const Point3& p) { return sign * (p.s - seam) > tiny; });
    };
    if (side(-1) && side(1))
      return true;
  }
  return false;
}

void expectAround(const Finding* finding, const std::vector<Nail>& nails) {
  if (!finding || nails.empty())
    return;
  Interval s{1e9, -1e9}, z{1e9, -1e9};
  for (const Nail& nail : nails)
    for (const Point3& p : nail.ring) {
      s = {std::min(s.from, p.s), std::max(s.to, p.s)};
      z = {std::min(z.from, p.z), std::max(z.to, p.z)};
    }
  EXPECT_TRUE(same(finding->region.s, s) && same(finding->region.z, z)) << rule(finding->rule).name;
}

void checkNails(const WallLayout& wall, const ResolvedLimits& limits) {
  Found column(RuleId::StrapColumn, wall, limits), seam(RuleId::StrapSeam, wall, limits),
      edge(RuleId::StrapNailEdge, wall, limits);
  for (const StrapBody& strap : wall.straps) {
    const std::vector<Nail> nails = nailsIn(wall, strap);
    if (!strap.column) {
      expectAround(column.expectOver({strap.id}, exactly(static_cast<double>(nails.size())), 0), nails);
      continue;
    }
    const ColumnBody& body = wall.columns[*strap.column];
    const std::vector<Interval> plies = pliesOf(wall, body);
    std::vector<Nail> off, on, near;
    const double limit = 2.5 * strap.type->nails.nailDiameter;
    double least = 1e9;
    for (const Nail& nail : nails) {
      if (!lands(nail, plies, body.box.z))
        off.push_back(nail);
      if (onSeam(nail, plies))
        on.push_back(nail);
      if (!lands(nail, plies, body.box.z) || onSeam(nail, plies))
        continue;
      for (const Interval ply : plies)
        if (nail.s > ply.from && nail.s < ply.to && std::min(nail.s - ply.from, ply.to - nail.s) < limit - tiny) {
          near.push_back(nail);
          least = std::min({least, nail.s - ply.from, ply.to - nail.s});
        }
    }
    expectAround(column.expectOver({strap.id, body.id}, exactly(static_cast<double>(off.size())), 0), off);
    expectAround(seam.expectOver({strap.id, body.id}, exactly(static_cast<double>(on.size())), 0), on);
    expectAround(edge.expectUnder({strap.id, body.id}, exactly(least), limit), near);
  }
  column.expectNoMore();
  seam.expectNoMore();
  edge.expectNoMore();
}

// How much of a nail from the outer face of its plate is behind the outer face of the column.
void checkNailDepth(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::StrapNailDepth, wall, limits);
  for (const StrapBody& strap : wall.straps) {
    if (!strap.column)
      continue;
    const NailPattern& nails = strap.type->nails;
    const double head = strap.type->profile.front().d - strap.type->plateThickness / 2;
    const double depth = head + nails.nailLength - wall.wall->sillInset;
    const Finding* finding =
        found.expectUnder({strap.id, wall.columns[*strap.column].id}, exactly(depth), 10 * nails.nailDiameter);
    if (finding) {
      EXPECT_EQ(finding->level, depth < 6 * nails.nailDiameter - tiny ? Level::Fix : Level::Watch);
      EXPECT_NEAR(finding->region.d.from, head + nails.nailLength, tiny);
    }
  }
  found.expectNoMore();
}

double leanOf(const WallLayout& wall, Id piece) {
  for (const Reading& reading : wall.wall->readings)
    if (reading.piece == piece && reading.plumb)
      return *reading.plumb / reading.gauge;
  return 0;
}

// Nails that land while the strap is plumb, each carried aside by the lean at its height: the one that sticks out of
// the column farthest, and how far it was carried.
void checkLean(const WallLayout& wall, const ResolvedLimits& limits) {
  Found lean(RuleId::StrapLean, wall, limits), plumb(RuleId::StrapPlumb, wall, limits);
  for (const StrapBody& strap : wall.straps) {
    const double by = leanOf(wall, strap.id);
    plumb.expectOver({strap.id}, exactly(std::abs(24 * by)), 0.125);
    if (!strap.column)
      continue;
    const ColumnBody& body = wall.columns[*strap.column];
    const std::vector<Interval> plies = pliesOf(wall, body);
    double farthest = tiny, carried = 0;
    Interval out;
    for (const Nail& nail : nailsIn(wall, strap)) {
      if (!lands(nail, plies, body.box.z))
        continue;
      for (const Point3& p : nail.ring) {
        const double aside = by * (nail.z - strap.joint);
        const double past = std::max(p.s + aside - plies.back().to, plies.front().from - p.s - aside);
        if (past > farthest) {
          farthest = past;
          carried = std::abs(aside);
          out = by > 0 ? Interval{plies.back().to, p.s + aside} : Interval{p.s + aside, plies.front().from};
        }
      }
    }
    const Finding* finding = lean.expectOver({strap.id, body.id}, exactly(carried), 0);
    if (finding) {
      EXPECT_TRUE(same(finding->region.s, out));
      EXPECT_NEAR(finding->measured - finding->limit, farthest, tiny);
    }
  }
  lean.expectNoMore();
  plumb.expectNoMore();
}

// The leaning plate cut at many heights: how wide a part of each cut is in the opening, and from which height to which.
void checkOpenings(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::StrapLeanOpening, wall, limits);
  for (const StrapBody& strap : wall.straps)
    for (const Opening& opening : wall.wall->openings) {
      constexpr int cuts = 400;
      const double by = leanOf(wall, strap.id), height = strap.type->exposedLength / cuts;
      double widest = 0;
      Interval s{1e9, -1e9}, z{1e9, -1e9};
      for (int i = 0; i <= cuts; ++i) {
        const double up = i * height, middle = strap.strap->station + by * up;
        const double left = std::max(middle - strap.type->plateWidth / 2, opening.from);
        const double right = std::min(middle + strap.type->plateWidth / 2, opening.to);
        const bool under = opening.kind == OpeningKind::Window && strap.joint + up < opening.sillHeight;
        if (under || strap.joint + up > opening.headHeight || right <= left)
          continue;
        widest = std::max(widest, right - left);
        s = {std::min(s.from, left), std::max(s.to, right)};
        z = {std::min(z.from, strap.joint + up), std::max(z.to, strap.joint + up)};
      }
      if (z.length() < tiny) // at most the end of the plate is level with the sill or head
        widest = 0;
      const double slack = std::abs(by) * height;
      const Finding* finding =
          found.expectOver({strap.id, opening.id}, {std::max(0.0, widest - tiny), widest > 0 ? widest + slack : 0}, 0);
      if (!finding)
        continue;
      EXPECT_TRUE(within(s, finding->region.s) && within(finding->region.s, grown(s, slack + tiny)));
      EXPECT_TRUE(within(z, finding->region.z) && within(finding->region.z, grown(z, height + tiny)));
    }
  found.expectNoMore();
}

// Some openings beside a strap, some straps without a column.
Job withStrapsInTrouble(Job job, std::mt19937& random) {
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    WallLine wall = job.walls[i];
    for (Strap& strap : wall.straps)
      if (random() % 12 == 0)
        strap.column = {};
    if (!wall.straps.empty() && random() % 3 == 0)
      for (Opening& opening : wall.openings) {
        const double width = opening.to - opening.from;
        const double aside = 1 + static_cast<double>(random() % 32) / 16;
        const double at = wall.straps[random() % wall.straps.size()].station;
        opening.from = random() % 2 ? at + aside : at - aside - width;
        opening.to = opening.from + width;
        opening.sillHeight = opening.kind == OpeningKind::Window ? static_cast<double>(4 + random() % 24) : 0;
      }
    job.walls.replace(std::move(wall));
  }
  return job;
}

TEST(BruteForceNails, agreesOnThousandsOfRandomWalls) {
  std::mt19937 random(1776);
  std::size_t walls = 0;
  Found::told.clear();
  for (std::uint64_t seed = 1; seed <= 250; ++seed) {
    const Job job = withStrapsInTrouble(broken(generateJob(2000 + seed, 240), random), random);
    const ResolvedLimits limits = resolve(*job.limits);
    for (std::size_t i = 0; i < job.walls.size(); ++i, ++walls) {
      const WallLayout wall = layOut(job, job.walls.pointer(i));
      SCOPED_TRACE("seed " + std::to_string(seed) + ", wall " + wall.wall->mark);
      checkNails(wall, limits);
      checkNailDepth(wall, limits);
      checkLean(wall, limits);
      checkOpenings(wall, limits);
    }
    if (HasFailure() && seed > 3)
      break;
  }
  EXPECT_GT(walls, 1500u);
  for (const RuleId id : {RuleId::StrapColumn, RuleId::StrapSeam, RuleId::StrapNailEdge, RuleId::StrapNailDepth,
                          RuleId::StrapLean, RuleId::StrapPlumb, RuleId::StrapLeanOpening})
    EXPECT_GT(Found::told[id], 20) << rule(id).name;
}

} // namespace
} // namespace sillwright
