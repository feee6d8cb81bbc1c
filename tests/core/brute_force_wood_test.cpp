// Rules of sills, columns, openings, washers, bars and forms against brute force on random walls: lengths from the
// plain numbers of the model, overlaps counted 64th by 64th, bars sampled along their axes. Both ways, as in
// brute_force_rules_test.
#include "brute_force.h"

#include <random>

#include "tests/support/broken_job.h"
#include "tests/support/generate_job.h"

namespace sillwright {
namespace {

using namespace brute_force;

std::vector<const AnchorBody*> boltsOf(const WallLayout& wall, const SillPiece& piece) {
  std::vector<const AnchorBody*> bolts;
  for (const AnchorBody& anchor : wall.anchors)
    if (!anchor.isRod && anchor.sillPiece && &wall.sills[*anchor.sillPiece] == &piece)
      bolts.push_back(&anchor);
  return bolts;
}

void checkThird(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::BoltThird, wall, limits);
  for (const SillPiece& piece : wall.sills)
    for (const AnchorBody* bolt : boltsOf(wall, piece)) {
      const double edge = std::min(bolt->bolt->depth - piece.box.d.from, piece.box.d.to - bolt->bolt->depth);
      const Finding* finding = found.expectUnder({bolt->id}, exactly(edge), (piece.box.d.to - piece.box.d.from) / 3);
      if (finding) {
        EXPECT_TRUE(within(finding->region.d, hull(piece.box.d, {bolt->bolt->depth, bolt->bolt->depth})));
      }
    }
  found.expectNoMore();
}

// The farthest that the tape runs from an end of the piece before it meets a bolt.
void checkFarEnds(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::BoltEndFar, wall, limits);
  for (const SillPiece& piece : wall.sills)
    for (const bool left : {true, false}) {
      const AnchorBody* nearest = nullptr;
      double away = 1e9;
      for (const AnchorBody* bolt : boltsOf(wall, piece)) {
        const double off =
            std::abs(left ? bolt->bolt->station - piece.box.s.from : piece.box.s.to - bolt->bolt->station);
        if (off < away - 1e-9 || (std::abs(off - away) < 1e-9 && !left)) {
          nearest = bolt;
          away = off;
        }
      }
      if (nearest)
        found.expectOver({nearest->id, piece.sill}, exactly(away), 12);
    }
  found.expectNoMore();
}

double spacingOf(const WallLayout& wall, double from, double to) {
  double limit = wall.limits->storeys > 2 ? 48 : 72;
  limit = std::min(limit, wall.limits->planBoltSpacing.value_or(limit));
  for (const Panel& panel : wall.wall->panels)
    for (const WallEndMark& mark : *wall.marks)
      if ((mark.mark == panel.leftMark || mark.mark == panel.rightMark) && mark.boltSpacing &&
          std::min(to, panel.to) - std::max(from, panel.from) > tiny)
        limit = std::min(limit, *mark.boltSpacing);
  return limit;
}

void checkSpacing(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::BoltSpacing, wall, limits);
  for (const SillPiece& piece : wall.sills) {
    const auto bolts = boltsOf(wall, piece);
    for (const AnchorBody* a : bolts)
      for (const AnchorBody* b : bolts) {
        const double from = a->bolt->station, to = b->bolt->station;
        const bool between = std::any_of(bolts.begin(), bolts.end(), [&](const AnchorBody* c) {
          const double at = c->bolt->station; // of two in one place the younger counts as on the right
          return (at > from || (at == from && a->id < c->id)) && (at < to || (at == to && c->id < b->id));
        });
        if (to <= from || between)
          continue;
        const Finding* finding = found.expectOver({a->id, b->id}, exactly(to - from), spacingOf(wall, from, to));
        if (finding) {
          EXPECT_TRUE(within(finding->region.s, {from, to}) && within({from, to}, finding->region.s));
        }
      }
  }
  found.expectNoMore();
}

// How much of a piece is inside, counted 64th by 64th.
Bracket inside(Interval piece, double from, double to) {
  constexpr double step = 1.0 / 64;
  double length = 0;
  for (double at = piece.from + step / 2; at < piece.to; at += step)
    length += at > from && at < to ? step : 0;
  return length > 0 ? Bracket{length - 2 * step, length + 2 * step} : Bracket{0, 0};
}

void checkOpenings(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::ColumnOpening, wall, limits);
  for (const ColumnBody& column : wall.columns)
    for (const Opening& opening : wall.wall->openings) {
      const Finding* finding =
          found.expectOver({column.id, opening.id}, inside(column.box.s, opening.from, opening.to), 0);
      if (finding) {
        EXPECT_TRUE(within(finding->region.s, column.box.s) && within(finding->region.s, {opening.from, opening.to}));
        EXPECT_TRUE(within(finding->region.d, column.box.d));
        // A wall may have been made lower than the sill of its window.
        EXPECT_TRUE(opening.sillHeight > column.box.z.to || within(finding->region.z, column.box.z));
      }
    }
  found.expectNoMore();
}

// Every side by which a washer stands over its sill, spliced or not; and bolts that no sill lies on.
void checkWashersOnSills(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::WasherSill, wall, limits);
  for (const AnchorBody& bolt : wall.anchors) {
    if (bolt.isRod || !bolt.washer || !bolt.washerBox)
      continue;
    const Box3& washer = *bolt.washerBox;
    if (!bolt.sillPiece) {
      const bool inDoor = std::any_of(wall.wall->openings.begin(), wall.wall->openings.end(), [&](const Opening& o) {
        return o.kind != OpeningKind::Window && bolt.bolt->station >= o.from && bolt.bolt->station <= o.to;
      });
      if (!wall.sills.empty() && !inDoor)
        found.expectOver({bolt.id}, exactly(bolt.washer->along), 0);
      continue;
    }
    const SillPiece& piece = wall.sills[*bolt.sillPiece];
    double from = piece.box.s.from, to = piece.box.s.to; // and on, where other pieces of it lie end to end
    for (std::size_t round = 0; round < wall.sills.size(); ++round)
      for (const SillPiece& other : wall.sills)
        if (other.sill == piece.sill && other.box.s.from <= to + 1e-9 && other.box.s.to >= from - 1e-9) {
          from = std::min(from, other.box.s.from);
          to = std::max(to, other.box.s.to);
        }
    for (const double over :
         {piece.box.d.from - washer.d.from, washer.d.to - piece.box.d.to, from - washer.s.from, washer.s.to - to})
      if (const Finding* finding = found.expectOver({bolt.id, piece.sill}, exactly(over), 0)) {
        EXPECT_TRUE(within(finding->region.s, washer.s) && within(finding->region.d, washer.d));
      }
  }
  found.expectNoMore();
}

// Lengthwise both begin, or both end, before the other: one goes on where the other ends.
bool goesOn(const BarBody& a, const BarBody& b) {
  const bool upright = a.bar->run == BarRun::Upright;
  const auto ends = [&](const BarBody& bar) {
    const double p = upright ? bar.body.a.z : bar.body.a.s, q = upright ? bar.body.b.z : bar.body.b.s;
    return Interval{std::min(p, q), std::max(p, q)};
  };
  const Interval own = ends(a), other = ends(b);
  return (own.from < other.from - 1e-6 && own.to < other.to - 1e-6) ||
         (own.from > other.from + 1e-6 && own.to > other.to + 1e-6);
}

void checkBars(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::BarClear, wall, limits);
  for (std::size_t i = 0; i < wall.bars.size(); ++i)
    for (std::size_t k = i + 1; k < wall.bars.size(); ++k) {
      const BarBody &a = wall.bars[i], &b = wall.bars[k];
      const double reach = 1 + a.body.radius + b.body.radius + every;
      if (a.bar->run != b.bar->run || goesOn(a, b) ||
          (a.bar->run == BarRun::Upright && std::abs(a.body.a.s - b.body.a.s) > reach))
        continue;
      const Bracket clear =
          less(sampled(a.body.a, a.body.b, [&](const Point3& p) { return toSegment(p, b.body.a, b.body.b); }),
               a.body.radius + b.body.radius);
      found.expectUnder({a.id, b.id}, clear, std::max({1.0, 2 * a.body.radius, 2 * b.body.radius}));
    }
  found.expectNoMore();
}

void checkForms(const WallLayout& wall, const ResolvedLimits& limits) {
  Found shots(RuleId::PourShot, wall, limits), widths(RuleId::FormThickness, wall, limits),
      pieces(RuleId::SillPiece, wall, limits);
  for (const GradeShot& shot : wall.wall->shots) {
    shots.expectOver({shot.id}, exactly(std::abs(shot.reading)), 0.125);
    if (const double wide = shot.width.value_or(wall.wall->thickness); wide > wall.wall->thickness)
      widths.expectOver({shot.id}, exactly(wide - wall.wall->thickness), 0.375);
    else
      widths.expectOver({shot.id}, exactly(wall.wall->thickness - wide), 0.25);
  }
  for (const SillPiece& piece : wall.sills)
    pieces.expectOver({piece.sill}, exactly(piece.box.s.to - piece.box.s.from),
                      limits[LimitKey::SillPiece]); // broken jobs set it
  shots.expectNoMore();
  widths.expectNoMore();
  pieces.expectNoMore();
}

// Some bars beside the one before, an inch or two off.
Job withBarsTogether(Job job, std::mt19937& random) {
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    WallLine wall = job.walls[i];
    for (std::size_t k = 1; k < wall.bars.size(); ++k) {
      Bar& bar = wall.bars[k];
      const Bar& before = wall.bars[k - 1];
      if (random() % 4 != 0 || bar.run != before.run)
        continue;
      const double aside = static_cast<double>(random() % 32) / 16, in = static_cast<double>(random() % 16) / 16;
      bar.found.reset();
      bar.planned = before.planned;
      for (Point3* end : {&bar.planned.a, &bar.planned.b})
        *end = {end->s + (bar.run == BarRun::Upright ? aside : 0), end->d + in,
                end->z + (bar.run == BarRun::Upright ? 0 : aside)};
    }
    job.walls.replace(std::move(wall));
  }
  return job;
}

TEST(BruteForceWood, agreesOnThousandsOfRandomWalls) {
  std::mt19937 random(1931);
  std::size_t walls = 0;
  Found::told.clear();
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    const Job job = withBarsTogether(broken(generateJob(1000 + seed, 240), random), random);
    const ResolvedLimits limits = resolve(*job.limits);
    for (std::size_t i = 0; i < job.walls.size(); ++i, ++walls) {
      const WallLayout wall = layOut(job, job.walls.pointer(i));
      SCOPED_TRACE("seed " + std::to_string(seed) + ", wall " + wall.wall->mark);
      checkThird(wall, limits);
      checkFarEnds(wall, limits);
      checkSpacing(wall, limits);
      checkOpenings(wall, limits);
      checkWashersOnSills(wall, limits);
      checkBars(wall, limits);
      checkForms(wall, limits);
    }
    if (HasFailure() && seed > 3)
      break;
  }
  EXPECT_GT(walls, 2000u);
  for (const RuleId id :
       {RuleId::BoltThird, RuleId::BoltEndFar, RuleId::BoltSpacing, RuleId::ColumnOpening, RuleId::WasherSill,
        RuleId::BarClear, RuleId::PourShot, RuleId::FormThickness, RuleId::SillPiece})
    EXPECT_GT(Found::told[id], 20) << rule(id).name;
}

} // namespace
} // namespace sillwright
