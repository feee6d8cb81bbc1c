// Rules of rods, columns on their sill, sills on their concrete, bars, panels and forms against brute force on random
// walls: stretches are walked along by the 16th, lengths are added up from the plain numbers of the model. Both ways,
// as in brute_force_rules_test.
#include "brute_force.h"

#include <random>

#include "tests/support/broken_job.h"
#include "tests/support/generate_job.h"

namespace sillwright {
namespace {

using namespace brute_force;

constexpr double mark = 1.0 / 16;

void checkRods(const WallLayout& wall, const ResolvedLimits& limits) {
  Found offset(RuleId::RodOffset, wall, limits), embed(RuleId::RodEmbed, wall, limits),
      thread(RuleId::RodThread, wall, limits), plumb(RuleId::RodPlumb, wall, limits);
  for (const Rod& rod : wall.wall->rods) {
    const RodType& type = *findRodType(*wall.types, rod.type);
    const auto body =
        std::find_if(wall.anchors.begin(), wall.anchors.end(), [&](const AnchorBody& a) { return a.id == rod.id; });
    offset.expectOver({rod.id, rod.column}, exactly(std::abs(rod.offset - type.bracketOffset)), 0.125);
    if (const Finding* finding = embed.expectUnder({rod.id}, exactly(type.embedment), 7)) {
      EXPECT_NEAR(finding->region.z.to, body->pour - type.embedment, tiny); // where the foot bears
      EXPECT_NEAR(finding->region.z.from, body->pour - 7, tiny);
    }
    for (const Reading& reading : wall.wall->readings)
      if (reading.piece == rod.id && reading.plumb)
        plumb.expectOver({rod.id}, exactly(std::abs(*reading.plumb) * 24 / reading.gauge), 0.125);
    if (!body->sillPiece)
      continue;
    const double sill = wall.sills[*body->sillPiece].nominal.thickness == 2 ? 1.5 : 2.5;
    const WasherType* washer = findWasherType(*wall.types, type.washer);
    double needed = 0; // sill, washer, nut and two threads, up to a mark of the tape
    while (needed < sill + (washer ? washer->thickness : 0) + 0.559 + 2.0 / 11 - 1e-6)
      needed += mark;
    if (rod.projection < needed - tiny)
      thread.expectUnder({rod.id}, exactly(rod.projection), needed);
    else
      thread.expectUnder({rod.id}, exactly(rod.projection - needed), 0.25);
  }
  offset.expectNoMore();
  embed.expectNoMore();
  thread.expectNoMore();
  plumb.expectNoMore();
}

// The piece that most of the column's strips stand on, and how far the others reach past its ends.
void checkColumns(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::ColumnSill, wall, limits);
  for (const ColumnBody& column : wall.columns) {
    constexpr int strips = 2000;
    const double strip = (column.box.s.to - column.box.s.from) / strips;
    const auto on = [&](const SillPiece& piece) {
      int count = 0;
      for (int i = 0; i < strips; ++i) {
        const double at = column.box.s.from + (i + 0.5) * strip;
        count += at > piece.box.s.from && at < piece.box.s.to;
      }
      return count;
    };
    const SillPiece* carrier = nullptr;
    for (const SillPiece& piece : wall.sills)
      if (on(piece) > 0 && (!carrier || on(piece) > on(*carrier)))
        carrier = &piece;
    if (!carrier) {
      if (!wall.sills.empty())
        found.expectOver({column.id}, exactly(strips * strip), 0);
      continue;
    }
    double left = 0, right = 0;
    for (int i = 0; i < strips; ++i) {
      const double at = column.box.s.from + (i + 0.5) * strip;
      left += at < carrier->box.s.from ? strip : 0;
      right += at > carrier->box.s.to ? strip : 0;
    }
    for (const double off : {left, right}) {
      const Finding* finding =
          found.expectOver({column.id, carrier->sill}, off > 0 ? Bracket{off - strip, off + strip} : exactly(0), 0);
      if (finding) {
        EXPECT_TRUE(within(finding->region.s, column.box.s));
        EXPECT_NEAR(finding->region.s.length(), off, strip);
      }
    }
    const double inner = column.makeUp.nominal.width == 4 ? 3.5 : 5.5;
    const double sill = carrier->nominal.width == 4 ? 3.5 : 5.5;
    found.expectOver({column.id, carrier->sill}, exactly(inner - sill), 0);
  }
  found.expectNoMore();
}

// Past the faces and ends of the concrete, and over or under every stretch of another height.
void checkSills(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::SillConcrete, wall, limits);
  for (const SillPiece& piece : wall.sills) {
    const double width = piece.nominal.width == 4 ? 3.5 : 5.5, inset = wall.wall->sillInset;
    for (const double off :
         {-inset, inset + width - wall.wall->thickness, -piece.box.s.from, piece.box.s.to - wall.length})
      found.expectOver({piece.sill}, exactly(off), 0);
    for (const PourRun& run : wall.pour) {
      int under = 0;
      for (double at = piece.box.s.from + mark / 4; at < piece.box.s.to; at += mark / 2)
        under += at > run.s.from && at < run.s.to;
      if (under > 0)
        found.expectOver({piece.sill}, exactly(std::abs(piece.box.z.from - run.height)), 0);
    }
  }
  found.expectNoMore();
}

void checkTopBars(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::BarTop, wall, limits);
  for (const PourRun& run : wall.pour) {
    double open = 0;
    const auto tell = [&] {
      if (open > 0 && wall.limits->topBar)
        found.expectOver({wall.wall->id}, {open - mark, open + mark}, 0);
      open = 0;
    };
    for (double at = run.s.from + mark / 2; at < run.s.to; at += mark) {
      const bool covered = std::any_of(wall.bars.begin(), wall.bars.end(), [&](const BarBody& bar) {
        const Point3 &a = bar.body.a, &b = bar.body.b;
        return bar.bar->run == BarRun::Along && bar.bar->size >= 4 && std::max(a.z, b.z) <= run.height + tiny &&
               std::min(a.z, b.z) >= run.height - 12 - tiny && at > std::min(a.s, b.s) - 3 &&
               at < std::max(a.s, b.s) + 3;
      });
      if (covered)
        tell();
      else
        open += mark;
    }
    tell();
  }
  found.expectNoMore();
}

void checkOpeningBars(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::BarOpening, wall, limits);
  for (const Opening& opening : wall.wall->openings)
    for (const double sign : {-1.0, 1.0}) {
      const double edge = sign < 0 ? opening.from : opening.to;
      if (!wall.limits->openingBars || opening.kind == OpeningKind::Window || edge <= 0 || edge >= wall.length)
        continue;
      std::set<double> away;
      for (const BarBody& bar : wall.bars)
        if (bar.bar->run == BarRun::Upright && sign * (bar.body.a.s - edge) > -1e-6)
          away.insert(sign * (bar.body.a.s - edge));
      const Finding* finding = away.empty() ? found.expectUnder({opening.id}, exactly(0), 1)
                                            : found.expectOver({opening.id}, exactly(*away.begin()), 12);
      if (finding) {
        EXPECT_NEAR(finding->region.s.length(), 12, tiny);
      }
    }
  found.expectNoMore();
}

void checkForms(const WallLayout& wall, const ResolvedLimits& limits) {
  Found form(RuleId::PourForm, wall, limits), hang(RuleId::StrapHang, wall, limits),
      level(RuleId::PourLevel, wall, limits);
  for (std::size_t run = 0; run < wall.pour.size(); ++run)
    form.expectUnder({wall.wall->id}, exactly(wall.wall->formTop), 0);
  for (const Strap& strap : wall.wall->straps) {
    const Interval reach = findStrapType(*wall.types, strap.type)->hangerReach;
    const double above = wall.wall->formTop - strap.heightOffset; // from the joint line
    if (above < reach.from)
      hang.expectUnder({strap.id}, exactly(above), reach.from);
    else
      hang.expectOver({strap.id}, exactly(above), reach.to);
  }
  const auto& shots = wall.wall->shots;
  double most = 0;
  for (const GradeShot& a : shots)
    for (const GradeShot& b : shots)
      if (std::abs(a.station - b.station) <= 240 + 1e-6)
        most = std::max(most, a.reading - b.reading);
  bool told = false; // of several pairs that differ as much, one
  for (const GradeShot& a : shots)
    for (const GradeShot& b : shots)
      if (most > 0.5 + tiny && !told && std::abs(a.station - b.station) <= 240 + 1e-6 &&
          a.reading - b.reading > most - tiny)
        if (const Finding* finding = level.take({a.id, b.id}, exactly(most))) {
          told = true;
          ++Found::told[RuleId::PourLevel];
          EXPECT_NEAR(finding->measured, most, tiny);
          EXPECT_TRUE(within({a.station, a.station}, finding->region.s) &&
                      within({b.station, b.station}, finding->region.s));
        }
  EXPECT_EQ(told, most > 0.5 + tiny);
  form.expectNoMore();
  hang.expectNoMore();
  level.expectNoMore();
}

void checkPanels(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::PanelSlender, wall, limits);
  for (const Panel& panel : wall.wall->panels) {
    if (panel.to <= panel.from) // one end broken off past the other
      continue;
    const double ratio = panel.height / (panel.to - panel.from);
    if (const Finding* finding = found.expectOver({panel.id}, exactly(ratio), 2)) {
      EXPECT_EQ(finding->level, ratio > 3.5 + tiny ? Level::Ask : Level::Watch);
    }
  }
  found.expectNoMore();
}

// A king or post that has its nearer face, or stands, within a foot of a panel's end; two bolts in every piece of sill
// (the generated walls are longer than those that make do with one).
void checkCounts(const WallLayout& wall, const ResolvedLimits& limits) {
  Found ends(RuleId::PanelEnds, wall, limits), bolts(RuleId::BoltCount, wall, limits);
  for (const Panel& panel : wall.wall->panels)
    for (const double at : {panel.from, panel.to}) {
      const auto columns = std::count_if(wall.columns.begin(), wall.columns.end(), [&](const ColumnBody& column) {
        const double half = (column.box.s.to - column.box.s.from) / 2;
        return column.role != ColumnRole::Trimmer && beyond(at - (column.box.s.from + half), half) < 12;
      });
      if (columns == 0)
        ends.expectUnder({panel.id}, exactly(0), 1);
    }
  for (const SillPiece& piece : wall.sills) {
    int count = 0; // a bolt in the very splice is the left piece's
    for (const Bolt& bolt : wall.wall->bolts) {
      const bool here = bolt.station >= piece.box.s.from - 1e-6 && bolt.station <= piece.box.s.to + 1e-6;
      const bool left = std::any_of(wall.sills.begin(), wall.sills.end(), [&](const SillPiece& other) {
        return other.box.s.from < piece.box.s.from && std::abs(other.box.s.to - bolt.station) < 1e-6;
      });
      count += here && !left;
    }
    if (count < 2) // a finding of a piece that has them is left over at the end
      bolts.expectUnder({piece.sill}, exactly(count), 2);
  }
  ends.expectNoMore();
  bolts.expectNoMore();
}

// Told by the oldest wall at the corner that a diagonal was taped from.
void checkDiagonals(const Job& job, const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::FormSquare, wall, limits);
  for (const Diagonal& diagonal : *job.diagonals) {
    Id oldest;
    for (std::size_t i = 0; i < job.walls.size(); ++i)
      if ((job.walls[i].startCorner == diagonal.from || job.walls[i].endCorner == diagonal.from) &&
          (!oldest || job.walls[i].id < oldest))
        oldest = job.walls[i].id;
    const Point2 a = findCorner(job, diagonal.from)->at, b = findCorner(job, diagonal.to)->at;
    const double planned = std::sqrt(squared(a.x - b.x) + squared(a.y - b.y));
    if (oldest == wall.wall->id)
      found.expectOver({oldest}, exactly(std::abs(diagonal.measured - planned)), planned / 240 / 4);
  }
  found.expectNoMore();
}

const Sill& endSill(const WallLine& wall, bool last) {
  const auto [first, end] = std::minmax_element(wall.sills.begin(), wall.sills.end(),
                                                [](const Sill& a, const Sill& b) { return a.from < b.from; });
  return last ? *end : *first;
}

// A sill seen in plan.
Rectangle inPlan(const Job& job, const WallLine& wall, const Sill& sill) {
  const Point2 a = findCorner(job, wall.startCorner)->at, b = findCorner(job, wall.endCorner)->at;
  const double length = std::hypot(b.x - a.x, b.y - a.y), ux = (b.x - a.x) / length, uy = (b.y - a.y) / length;
  const double out = wall.sillInset, in = out + (sill.nominal.width == 4 ? 3.5 : 5.5);
  Rectangle plan{1e9, -1e9, 1e9, -1e9};
  for (const double s : {sill.from, sill.to})
    for (const double d : {out, in}) {
      const double x = a.x + s * ux - d * uy, y = a.y + s * uy + d * ux;
      plan = {std::min(plan.left, x), std::max(plan.right, x), std::min(plan.outer, y), std::max(plan.inner, y)};
    }
  return plan;
}

// Where a wall ends and the next begins: the two sills apart or over each other, or a corner that neither covers. Told
// by one of the two walls.
void checkCorners(const Job& job, const ResolvedLimits& limits) {
  std::map<Id, Found> found;
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    found.try_emplace(job.walls[i].id, RuleId::SillCorner, layOut(job, job.walls.pointer(i)), limits);
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    for (std::size_t k = 0; k < job.walls.size(); ++k) {
      const WallLine &one = job.walls[i], &next = job.walls[k];
      if (one.endCorner != next.startCorner || one.sills.empty() || next.sills.empty())
        continue;
      const Sill &last = endSill(one, true), &first = endSill(next, false);
      const Rectangle a = inPlan(job, one, last), b = inPlan(job, next, first);
      const double alongX = std::max(a.left, b.left) - std::min(a.right, b.right);
      const double alongY = std::max(a.outer, b.outer) - std::min(a.inner, b.inner);
      const double width = 5.5; // of both
      const double apart = std::max(alongX, alongY), bare = std::min(alongX, alongY) + width;
      double wrong = std::abs(apart);
      if (wrong <= 0.125 + tiny)
        wrong = bare;
      if (wrong <= 0.125 + tiny)
        continue; // a finding all the same is left over at the end
      const Finding* finding = found.at(one.id).takeExactly({last.id}, wrong);
      if (!finding)
        finding = found.at(next.id).takeExactly({first.id}, wrong);
      EXPECT_NE(finding, nullptr) << one.mark << " and " << next.mark << ": " << apart << ", bare " << bare;
      if (finding)
        ++Found::told[RuleId::SillCorner];
    }
  for (const auto& [id, each] : found)
    each.expectNoMore();
}

// Rods of other lengths in the concrete, some columns over a splice, some bars along the wall too thin to count.
Job withRodsInTrouble(Job job, std::mt19937& random) {
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    WallLine wall = job.walls[i];
    if (!wall.sills.empty() && !wall.sills.front().splices.empty() && !wall.columns.empty() && random() % 2)
      wall.columns[random() % wall.columns.size()].station =
          wall.sills.front().splices.front() + 1.0 / 32 + static_cast<double>(random() % 64) / 16 - 2;
    for (Bar& bar : wall.bars)
      if (bar.run == BarRun::Along && random() % 3 == 0)
        bar.size = 3;
    job.walls.replace(std::move(wall));
  }
  job.types.edit([&](HardwareTypes& types) {
    for (RodType& type : types.rods)
      type.embedment = static_cast<double>(5 * 16 + random() % 64) / 16;
  });
  return job;
}

TEST(BruteForceGround, agreesOnThousandsOfRandomWalls) {
  std::mt19937 random(1906);
  std::size_t walls = 0;
  Found::told.clear();
  for (std::uint64_t seed = 1; seed <= 250; ++seed) {
    const Job job = withRodsInTrouble(broken(generateJob(4000 + seed, 240), random), random);
    const ResolvedLimits limits = resolve(*job.limits);
    for (std::size_t i = 0; i < job.walls.size(); ++i, ++walls) {
      const WallLayout wall = layOut(job, job.walls.pointer(i));
      SCOPED_TRACE("seed " + std::to_string(seed) + ", wall " + wall.wall->mark);
      checkRods(wall, limits);
      checkColumns(wall, limits);
      checkSills(wall, limits);
      checkTopBars(wall, limits);
      checkOpeningBars(wall, limits);
      checkForms(wall, limits);
      checkPanels(wall, limits);
      checkCounts(wall, limits);
      checkDiagonals(job, wall, limits);
    }
    SCOPED_TRACE("seed " + std::to_string(seed));
    checkCorners(job, limits);
    if (HasFailure() && seed > 3)
      break;
  }
  EXPECT_GT(walls, 1500u);
  for (const RuleId id : {RuleId::RodOffset, RuleId::RodEmbed, RuleId::RodThread, RuleId::RodPlumb, RuleId::ColumnSill,
                          RuleId::SillConcrete, RuleId::BarTop, RuleId::BarOpening, RuleId::PourForm, RuleId::StrapHang,
                          RuleId::PourLevel, RuleId::PanelSlender, RuleId::FormSquare, RuleId::SillCorner,
                          RuleId::PanelEnds, RuleId::BoltCount})
    EXPECT_GT(Found::told[id], 20) << rule(id).name;
}

} // namespace
} // namespace sillwright
