// Rules of distances against brute force on thousands of random walls: solids are sampled point by point, rectangles
// are laid over each other on a grid, and lengths are typed anew from the plain numbers of the model. Both ways: what
// brute force says is too near has its finding with that measure, and there is no other.
#include "brute_force.h"

#include <random>

#include "tests/support/broken_job.h"
#include "tests/support/generate_job.h"

namespace sillwright {
namespace {

using namespace brute_force;

double toPlate(const Point3& p, const Ribbon& plate) {
  double least = 1e9;
  for (std::size_t i = 1; i < plate.profile.size(); ++i) {
    const ProfilePoint a = plate.profile[i - 1], b = plate.profile[i];
    const double length = std::hypot(b.d - a.d, b.z - a.z);
    if (length <= 0)
      continue;
    const double d = (b.d - a.d) / length, z = (b.z - a.z) / length;
    const double fromMiddle = (p.d - (a.d + b.d) / 2) * d + (p.z - (a.z + b.z) / 2) * z;
    const double offSheet = (p.z - a.z) * d - (p.d - a.d) * z;
    least = std::min(least, std::sqrt(squared(beyond(p.s - plate.station, plate.width / 2)) +
                                      squared(beyond(fromMiddle, length / 2)) +
                                      squared(beyond(offSheet, plate.thickness / 2))));
  }
  return least;
}

std::vector<Capsule> steelOf(const AnchorBody& anchor) {
  std::vector<Capsule> parts = anchor.foot;
  parts.push_back(anchor.shank);
  return parts;
}

Bracket between(const AnchorBody& anchor, const Capsule& bar) {
  Bracket all;
  for (const Capsule& part : steelOf(anchor))
    all = nearer(all, less(sampled(part.a, part.b, [&](const Point3& p) { return toSegment(p, bar.a, bar.b); }),
                           part.radius + bar.radius));
  return all;
}

Bracket between(const AnchorBody& anchor, const Ribbon& plate) {
  Bracket all;
  for (const Capsule& part : steelOf(anchor))
    all = nearer(all, less(sampled(part.a, part.b, [&](const Point3& p) { return toPlate(p, plate); }), part.radius));
  return all;
}

// Only the part of a long bar that passes the plate is sampled; what lies farther out is out of every limit.
Bracket between(const Capsule& bar, const Ribbon& plate) {
  constexpr double out = 3;
  const auto at = [&](double s) {
    const double t = (s - bar.a.s) / (bar.b.s - bar.a.s);
    return Point3{s, bar.a.d + t * (bar.b.d - bar.a.d), bar.a.z + t * (bar.b.z - bar.a.z)};
  };
  Point3 a = bar.a, b = bar.b;
  if (std::abs(b.s - a.s) > 1) {
    const double from = std::max(std::min(a.s, b.s), plate.station - plate.width / 2 - out);
    const double to = std::min(std::max(a.s, b.s), plate.station + plate.width / 2 + out);
    if (to < from)
      return {};
    a = at(from);
    b = at(to);
  }
  return less(sampled(a, b, [&](const Point3& p) { return toPlate(p, plate); }), bar.radius);
}

Box3 around(const AnchorBody& anchor) {
  Box3 box{{1e9, -1e9}, {1e9, -1e9}, {1e9, -1e9}};
  for (const Capsule& part : steelOf(anchor))
    for (const Point3& p : {part.a, part.b}) {
      box.s = {std::min(box.s.from, p.s - part.radius), std::max(box.s.to, p.s + part.radius)};
      box.d = {std::min(box.d.from, p.d - part.radius), std::max(box.d.to, p.d + part.radius)};
      box.z = {std::min(box.z.from, p.z - part.radius), std::max(box.z.to, p.z + part.radius)};
    }
  return box;
}

constexpr double target = 1; // in, clear of bars and of each other, where the job sets nothing else

void checkStrapSteel(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::StrapSteel, wall, limits);
  for (const StrapBody& strap : wall.straps)
    for (const BarBody& bar : wall.bars)
      found.expectUnder({strap.id, bar.id}, between(bar.body, strap.embedded), target);
  found.expectNoMore();
}

void checkAnchorSteel(const WallLayout& wall, const ResolvedLimits& limits) {
  Found bolts(RuleId::BoltSteel, wall, limits), rods(RuleId::RodSteel, wall, limits);
  for (const AnchorBody& anchor : wall.anchors)
    for (const BarBody& bar : wall.bars) {
      const Capsule& body = bar.body;
      const Box3 box{grown({std::min(body.a.s, body.b.s), std::max(body.a.s, body.b.s)}, body.radius),
                     grown({std::min(body.a.d, body.b.d), std::max(body.a.d, body.b.d)}, body.radius),
                     grown({std::min(body.a.z, body.b.z), std::max(body.a.z, body.b.z)}, body.radius)};
      expectBetween((anchor.isRod ? rods : bolts).expectUnder({anchor.id, bar.id}, between(anchor, body), target),
                    around(anchor), box);
    }
  bolts.expectNoMore();
  rods.expectNoMore();
}

void checkBoltStrap(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::BoltStrap, wall, limits);
  for (const AnchorBody& bolt : wall.anchors) {
    if (bolt.isRod)
      continue;
    for (const StrapBody& strap : wall.straps)
      found.expectUnder({bolt.id, strap.id}, between(bolt, strap.embedded), target);
    for (const AnchorBody& rod : wall.anchors) {
      if (!rod.isRod)
        continue;
      Bracket nearest;
      for (const Capsule& part : steelOf(rod))
        nearest = nearer(nearest, between(bolt, part));
      expectBetween(found.expectUnder({bolt.id, rod.id}, nearest, target), around(bolt), around(rod));
    }
  }
  found.expectNoMore();
}

void checkBoltGap(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::BoltGap, wall, limits);
  for (std::size_t i = 0; i < wall.anchors.size(); ++i)
    for (std::size_t k = i + 1; k < wall.anchors.size(); ++k) {
      const AnchorBody &a = wall.anchors[i], &b = wall.anchors[k];
      if (std::max(a.bottom, b.bottom) > std::min(a.pour, b.pour)) // not in the concrete beside each other
        continue;
      const double apart = std::sqrt(squared(a.station - b.station) + squared(a.depth - b.depth));
      const Finding* finding = found.expectUnder({a.id, b.id}, {apart, apart}, 6 * std::max(a.diameter, b.diameter));
      if (!finding)
        continue;
      EXPECT_EQ(finding->level, apart < 4 * std::max(a.diameter, b.diameter) - tiny ? Level::Fix : Level::Ask);
      expectBetween(finding, around(a), around(b));
    }
  found.expectNoMore();
}

void checkColumnOverlap(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::ColumnOverlap, wall, limits);
  for (std::size_t i = 0; i < wall.columns.size(); ++i)
    for (std::size_t k = i + 1; k < wall.columns.size(); ++k) {
      const ColumnBody &a = wall.columns[i], &b = wall.columns[k];
      expectBetween(found.expectUnder({a.id, b.id}, clearInPlan(inPlan(a.box), inPlan(b.box)), 0), a.box, b.box);
    }
  found.expectNoMore();
}

void checkWasherWasher(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::WasherWasher, wall, limits);
  for (std::size_t i = 0; i < wall.anchors.size(); ++i)
    for (std::size_t k = i + 1; k < wall.anchors.size(); ++k) {
      const AnchorBody &a = wall.anchors[i], &b = wall.anchors[k];
      if (a.isRod || b.isRod || !a.washerBox || !b.washerBox || !meet(a.washerBox->z, b.washerBox->z))
        continue;
      expectBetween(found.expectUnder({a.id, b.id}, clearInPlan(inPlan(*a.washerBox), inPlan(*b.washerBox)), 0),
                    *a.washerBox, *b.washerBox);
    }
  found.expectNoMore();
}

void checkBoltEnds(const WallLayout& wall, const ResolvedLimits& limits) {
  Found near(RuleId::BoltEndNear, wall, limits);
  for (const SillPiece& piece : wall.sills)
    for (const AnchorBody& bolt : wall.anchors) {
      if (bolt.isRod || !bolt.sillPiece || &wall.sills[*bolt.sillPiece] != &piece)
        continue;
      for (const double away : {bolt.bolt->station - piece.box.s.from, piece.box.s.to - bolt.bolt->station})
        if (away < 7 * bolt.boltType->diameter - tiny)
          near.expectUnder({bolt.id, piece.sill}, {away, away}, 7 * bolt.boltType->diameter);
    }
  near.expectNoMore();
}

void checkBoltEmbed(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::BoltEmbed, wall, limits);
  for (const AnchorBody& bolt : wall.anchors)
    if (!bolt.isRod) {
      const double deep = bolt.boltType->length - bolt.bolt->projection;
      found.expectUnder({bolt.id}, {deep, deep}, std::max(7.0, bolt.boltType->minimumEmbedment));
    }
  found.expectNoMore();
}

TEST(BruteForceRules, agreeOnThousandsOfRandomWalls) {
  std::mt19937 random(2024);
  std::size_t walls = 0;
  Found::told.clear();
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    const Job job = broken(generateJob(seed, 240), random);
    const ResolvedLimits limits = resolve(*job.limits);
    for (std::size_t i = 0; i < job.walls.size(); ++i, ++walls) {
      const WallLayout wall = layOut(job, job.walls.pointer(i));
      SCOPED_TRACE("seed " + std::to_string(seed) + ", wall " + wall.wall->mark);
      checkStrapSteel(wall, limits);
      checkAnchorSteel(wall, limits);
      checkBoltStrap(wall, limits);
      checkBoltGap(wall, limits);
      checkColumnOverlap(wall, limits);
      checkWasherWasher(wall, limits);
      checkBoltEnds(wall, limits);
      checkBoltEmbed(wall, limits);
    }
    if (HasFailure() && seed > 3)
      break;
  }
  EXPECT_GT(walls, 2000u);
  for (const RuleId id : {RuleId::StrapSteel, RuleId::BoltSteel, RuleId::RodSteel, RuleId::BoltStrap, RuleId::BoltGap,
                          RuleId::ColumnOverlap, RuleId::WasherWasher, RuleId::BoltEndNear, RuleId::BoltEmbed})
    EXPECT_GT(Found::told[id], 20) << rule(id).name;
}

} // namespace
} // namespace sillwright
