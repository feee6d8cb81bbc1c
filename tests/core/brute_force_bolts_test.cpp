// Rules of bolts, nuts and washers against brute force on random walls: nuts and washers are laid over studs, columns,
// splices and the edges of their sill, and stacks are added up from the plain numbers of the model. Both ways, as in
// brute_force_rules_test.
#include "brute_force.h"

#include <random>

#include "tests/support/broken_job.h"
#include "tests/support/generate_job.h"

namespace sillwright {
namespace {

using namespace brute_force;

// Of the one diameter that the generated jobs have, 5/8 in: ASME B18.2.2 and B18.21.1.
constexpr double nutAcross = 0.9375, nutThick = 0.559, cutWasherThick = 0.160, pitch = 1.0 / 11;

const SillPiece* sillOf(const WallLayout& wall, const AnchorBody& bolt) {
  const SillPiece* under = nullptr;
  for (auto piece = wall.sills.rbegin(); piece != wall.sills.rend(); ++piece)
    if (bolt.station >= piece->box.s.from - 1e-6 && bolt.station <= piece->box.s.to + 1e-6)
      under = &*piece;
  return under;
}

Rectangle square(const AnchorBody& bolt, double side) {
  return {bolt.bolt->station - side / 2, bolt.bolt->station + side / 2, bolt.bolt->depth - side / 2,
          bolt.bolt->depth + side / 2};
}

// Of a plate washer slotted across, slid inward or outward.
std::optional<Rectangle> washerOf(const AnchorBody& bolt) {
  if (!bolt.washer)
    return std::nullopt;
  const double s = bolt.bolt->station, d = bolt.bolt->depth + bolt.bolt->washerShift;
  return Rectangle{s - bolt.washer->along / 2, s + bolt.washer->along / 2, d - bolt.washer->across / 2,
                   d + bolt.washer->across / 2};
}

// Bolt and washer wholly lower than the wood, down a step.
bool lower(const WallLayout& wall, const AnchorBody& bolt, const Box3& wood) {
  const SillPiece* sill = sillOf(wall, bolt);
  const double on = sill ? sill->box.z.to : bolt.pour;
  return std::max(bolt.pour + bolt.bolt->projection, on + (bolt.washer ? bolt.washer->thickness : 0)) <
         wood.z.from - tiny;
}

bool nearEnough(const AnchorBody& bolt, const Box3& wood) {
  return bolt.station > wood.s.from - 12 && bolt.station < wood.s.to + 12;
}

void expectIn(const Finding* finding, const Rectangle& a, const Rectangle& b) {
  if (!finding)
    return;
  const Interval s{std::min(a.left, b.left), std::max(a.right, b.right)};
  const Interval d{std::min(a.outer, b.outer), std::max(a.inner, b.inner)};
  EXPECT_TRUE(within(finding->region.s, s) && within(finding->region.d, d)) << rule(finding->rule).name;
  EXPECT_TRUE(meet(finding->region.s, {a.left, a.right}) && meet(finding->region.d, {a.outer, a.inner}));
  EXPECT_TRUE(meet(finding->region.s, {b.left, b.right}) && meet(finding->region.d, {b.outer, b.inner}));
}

void checkWood(const WallLayout& wall, const ResolvedLimits& limits) {
  Found under(RuleId::BoltStud, wall, limits), beside(RuleId::WasherColumn, wall, limits);
  for (const AnchorBody& bolt : wall.anchors) {
    if (bolt.isRod)
      continue;
    const Rectangle nut = square(bolt, nutAcross);
    const std::optional<Rectangle> washer = washerOf(bolt);
    for (const StudBody& stud : wall.studs)
      if (nearEnough(bolt, stud.box) && !lower(wall, bolt, stud.box)) {
        const Rectangle own = washer.value_or(nut), wood = inPlan(stud.box);
        if (overlaps(own, wood))
          expectIn(under.expectUnder({bolt.id}, clearInPlan(own, wood), 0), own, wood);
      }
    for (const ColumnBody& column : wall.columns) {
      if (!nearEnough(bolt, column.box) || lower(wall, bolt, column.box))
        continue;
      const Rectangle wood = inPlan(column.box);
      if (overlaps(nut, wood)) {
        expectIn(under.expectUnder({bolt.id, column.id}, clearInPlan(nut, wood), 0), nut, wood);
      } else if (washer) {
        const Finding* finding = beside.expectUnder({bolt.id, column.id}, clearInPlan(*washer, wood), 0.125);
        expectIn(finding, *washer, wood);
        if (finding) {
          EXPECT_EQ(finding->level, overlaps(*washer, wood) ? Level::Fix : Level::Watch);
        }
      }
    }
  }
  under.expectNoMore();
  beside.expectNoMore();
}

// Where a sill is cut and goes on: its splices that are not in a doorway.
void checkSplices(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::BoltSplice, wall, limits);
  for (const AnchorBody& bolt : wall.anchors) {
    if (bolt.isRod)
      continue;
    const Rectangle own = washerOf(bolt).value_or(square(bolt, nutAcross));
    for (const Sill& sill : wall.wall->sills)
      for (const double splice : sill.splices) {
        const bool inDoor = std::any_of(wall.wall->openings.begin(), wall.wall->openings.end(), [&](const Opening& o) {
          return o.kind != OpeningKind::Window && splice >= o.from - tiny && splice <= o.to + tiny;
        });
        if (splice <= sill.from || splice >= sill.to || inDoor)
          continue;
        int left = 0, right = 0; // of 1,000 strips of the washer
        for (int i = 0; i < 1000; ++i)
          ++(own.left + (i + 0.5) / 1000 * (own.right - own.left) < splice ? left : right);
        const double strip = (own.right - own.left) / 1000, over = std::min(left, right) * strip;
        const Bracket clear = over > 0 ? Bracket{-over - strip, -over + strip} : Bracket{0, 1e9};
        const Finding* finding = found.expectUnder({bolt.id, sill.id}, clear, 0);
        if (finding) {
          EXPECT_TRUE(within({splice, splice}, finding->region.s) && within(finding->region.s, {own.left, own.right}));
          EXPECT_NEAR(finding->region.s.length(), -finding->measured, tiny);
        }
      }
  }
  found.expectNoMore();
}

void checkSheathing(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::WasherSheathing, wall, limits);
  for (const AnchorBody& bolt : wall.anchors) {
    const SillPiece* sill = sillOf(wall, bolt);
    if (bolt.isRod || !bolt.washer || !sill)
      continue;
    const Rectangle washer = *washerOf(bolt);
    for (const Sheathing side : {Sheathing::Outside, Sheathing::Inside}) {
      const bool strong = std::any_of(wall.wall->panels.begin(), wall.wall->panels.end(), [&](const Panel& panel) {
        return panel.unitShear && *panel.unitShear > 400 && bolt.bolt->station >= panel.from &&
               bolt.bolt->station <= panel.to && (panel.sheathing == side || panel.sheathing == Sheathing::Both);
      });
      const double width = sill->nominal.width == 4 ? 3.5 : 5.5, outside = wall.wall->sillInset;
      const double bare = side == Sheathing::Outside ? washer.outer - outside : outside + width - washer.inner;
      const Finding* finding = strong ? found.expectOver({bolt.id}, exactly(bare), 0.5) : nullptr;
      if (finding) {
        EXPECT_NEAR(finding->region.d.from, side == Sheathing::Outside ? outside : washer.inner, tiny);
        EXPECT_NEAR(finding->region.d.length(), bare, tiny);
      }
    }
  }
  found.expectNoMore();
}

void checkWasherTypes(const WallLayout& wall, const ResolvedLimits& limits) {
  Found size(RuleId::WasherSize, wall, limits), slot(RuleId::WasherSlot, wall, limits);
  for (const AnchorBody& bolt : wall.anchors) {
    if (bolt.isRod)
      continue;
    const double side = bolt.washer ? std::min(bolt.washer->along, bolt.washer->across) : 0;
    if (sillOf(wall, bolt) && side < 3 - tiny)
      size.expectUnder({bolt.id}, exactly(side), 3);
    else if (sillOf(wall, bolt))
      size.expectUnder({bolt.id}, exactly(bolt.washer->thickness), 0.229);
    if (!bolt.washer)
      continue;
    double room = (bolt.washer->hole - 0.625) / 2;
    if (bolt.washer->slot) {
      slot.expectOver({bolt.id}, exactly(bolt.washer->slot->width), 0.625 + 0.1875);
      slot.expectOver({bolt.id}, exactly(bolt.washer->slot->length), 1.75);
      if (!bolt.bolt->cutWasher)
        slot.expectOver({bolt.id}, exactly(1), 0);
      room = std::max(0.0, (bolt.washer->slot->length - 0.625) / 2);
    }
    slot.expectOver({bolt.id}, exactly(std::abs(bolt.bolt->washerShift)), room);
  }
  size.expectNoMore();
  slot.expectNoMore();
}

// From the concrete up: sill, washers, nut, two threads; and down again from the top of the bolt: its thread.
void checkStacks(const WallLayout& wall, const ResolvedLimits& limits) {
  Found thread(RuleId::BoltThread, wall, limits), runOut(RuleId::BoltRunOut, wall, limits);
  for (const AnchorBody& bolt : wall.anchors) {
    const SillPiece* sill = bolt.isRod ? nullptr : sillOf(wall, bolt);
    if (!sill)
      continue;
    const double thick = sill->nominal.thickness == 2 ? 1.5 : 2.5;
    const double nut = thick + (bolt.washer ? bolt.washer->thickness : 0) + (bolt.bolt->cutWasher ? cutWasherThick : 0);
    double needed = 0; // the first mark of the tape that is no lower than the second thread over the nut
    while (needed < nut + nutThick + 2 * pitch - 1e-6)
      needed += 1.0 / 16;
    const double up = bolt.bolt->projection;
    if (up < needed - tiny)
      thread.expectUnder({bolt.id}, exactly(up), needed);
    else
      thread.expectUnder({bolt.id}, exactly(up - needed), 0.25);
    const double plain = up - bolt.boltType->threadLength; // up to there it has no thread
    const Finding* finding = runOut.expectUnder({bolt.id}, exactly(nut - plain), 0);
    if (finding) {
      EXPECT_NEAR(finding->region.z.from, bolt.pour + nut, tiny);
      EXPECT_NEAR(finding->region.z.to, bolt.pour + plain, tiny);
    }
  }
  thread.expectNoMore();
  runOut.expectNoMore();
}

// Tallies of how many sixteenths the bolts of each thickness of sill stand up.
void checkMatch(const WallLayout& wall, const ResolvedLimits& limits) {
  Found found(RuleId::BoltMatch, wall, limits);
  std::map<int, std::map<long, int>> tallies;
  const auto sixteenths = [](const AnchorBody& bolt) { return std::lround(16 * bolt.bolt->projection); };
  for (const AnchorBody& bolt : wall.anchors)
    if (!bolt.isRod && sillOf(wall, bolt))
      ++tallies[sillOf(wall, bolt)->nominal.thickness][sixteenths(bolt)];
  for (const AnchorBody& bolt : wall.anchors) {
    if (bolt.isRod || !sillOf(wall, bolt))
      continue;
    const auto& tally = tallies[sillOf(wall, bolt)->nominal.thickness];
    const auto most =
        std::max_element(tally.begin(), tally.end(), [](const auto& a, const auto& b) { return a.second < b.second; });
    found.expectOver({bolt.id}, exactly(std::abs(static_cast<double>(sixteenths(bolt) - most->first)) / 16), 0.25);
  }
  found.expectNoMore();
}

// How much of the thickness of a bolt or rod is in a doorway, counted in thousandths.
void checkDoors(const WallLayout& wall, const ResolvedLimits& limits) {
  Found bolts(RuleId::BoltOpening, wall, limits), rods(RuleId::RodOpening, wall, limits);
  for (const AnchorBody& anchor : wall.anchors)
    for (const Opening& opening : wall.wall->openings) {
      if (opening.kind == OpeningKind::Window)
        continue;
      const double thick = anchor.isRod ? anchor.rodType->diameter : anchor.boltType->diameter;
      double inside = 0;
      for (int i = 0; i < 1000; ++i)
        if (const double at = anchor.station + ((i + 0.5) / 1000 - 0.5) * thick; at > opening.from && at < opening.to)
          inside += thick / 1000;
      const Finding* finding = (anchor.isRod ? rods : bolts)
                                   .expectOver({anchor.id, opening.id},
                                               inside > 0 ? Bracket{inside - 0.002, inside + 0.002} : exactly(0), 0);
      if (finding) {
        EXPECT_NEAR(finding->region.s.length(), inside, 0.002);
        EXPECT_TRUE(within(finding->region.s, {opening.from, opening.to}));
      }
    }
  bolts.expectNoMore();
  rods.expectNoMore();
}

// Some bolts beside a splice or a column or in a door, and some panels so strong that washers must reach their edge.
Job withBoltsInTrouble(Job job, std::mt19937& random) {
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    WallLine wall = job.walls[i];
    for (Bolt& bolt : wall.bolts) {
      const double aside = static_cast<double>(random() % 64) / 16 - 2;
      if (random() % 8 == 0 && !wall.sills.front().splices.empty())
        bolt.station = wall.sills.front().splices.front() + aside + 1.0 / 32;
      else if (random() % 8 == 0 && !wall.columns.empty())
        bolt.station = wall.columns[random() % wall.columns.size()].station + 2 * aside;
      else if (random() % 12 == 0 && !wall.openings.empty())
        bolt.station = wall.openings.front().from + aside / 4;
    }
    for (Panel& panel : wall.panels)
      if (random() % 2)
        panel.unitShear = static_cast<double>(200 + 50 * (random() % 10));
    job.walls.replace(std::move(wall));
  }
  return job;
}

TEST(BruteForceBolts, agreesOnThousandsOfRandomWalls) {
  std::mt19937 random(1849);
  std::size_t walls = 0;
  Found::told.clear();
  for (std::uint64_t seed = 1; seed <= 250; ++seed) {
    const Job job = withBoltsInTrouble(broken(generateJob(3000 + seed, 240), random), random);
    const ResolvedLimits limits = resolve(*job.limits);
    for (std::size_t i = 0; i < job.walls.size(); ++i, ++walls) {
      const WallLayout wall = layOut(job, job.walls.pointer(i));
      SCOPED_TRACE("seed " + std::to_string(seed) + ", wall " + wall.wall->mark);
      checkWood(wall, limits);
      checkSplices(wall, limits);
      checkSheathing(wall, limits);
      checkWasherTypes(wall, limits);
      checkStacks(wall, limits);
      checkMatch(wall, limits);
      checkDoors(wall, limits);
    }
    if (HasFailure() && seed > 3)
      break;
  }
  EXPECT_GT(walls, 1500u);
  for (const RuleId id :
       {RuleId::BoltStud, RuleId::WasherColumn, RuleId::BoltSplice, RuleId::WasherSheathing, RuleId::WasherSize,
        RuleId::WasherSlot, RuleId::BoltThread, RuleId::BoltRunOut, RuleId::BoltMatch, RuleId::BoltOpening})
    EXPECT_GT(Found::told[id], 20) << rule(id).name;
}

} // namespace
} // namespace sillwright
