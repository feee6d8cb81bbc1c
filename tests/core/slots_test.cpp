// Slots against the rule checker: in a slot nothing of position to fix, out of it something; on walls of every sort.
#include <gtest/gtest.h>

#include <map>
#include <random>
#include <set>

#include "core/base/tolerance.h"
#include "core/refit/slots.h"
#include "core/rules/checker.h"
#include "core/rules/correction.h"
#include "core/rules/proof.h"
#include "tests/support/broken_job.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

using Matter = std::tuple<RuleId, std::uint8_t, std::vector<Id>>;

std::multimap<Matter, double> fixesOfPosition(const WallLayout& layout, const ResolvedLimits& limits) {
  std::multimap<Matter, double> fixes;
  for (const Draft& draft : draftsOf(layout, limits))
    if (draft.finding.level == Level::Fix && isOfPosition(draft.finding.rule))
      fixes.emplace(Matter{draft.finding.rule, draft.finding.variant, draft.finding.pieces}, draft.finding.measured);
  return fixes;
}

// A wall with one piece that may be stood elsewhere.
class Trial {
public:
  Trial(const WallLayout& layout, const ResolvedLimits& limits, Id piece)
      : layout_(layout), limits_(limits), piece_(piece), at_(*stationOf(*layout.wall, piece)),
        before_(fixesOfPosition(layout, limits)) {}

  // The rules that speak against it there; none where it may stand.
  std::set<RuleId> against(double station) const {
    WallLine moved = corrected(*layout_.wall, {Correction::Field::Station, piece_, station - at_});
    std::set<Id> own{piece_};
    for (Strap& strap : moved.straps) // what hangs on a column goes along
      if (strap.column == piece_) {
        strap.station += station - at_;
        own.insert(strap.id);
      }
    for (const Rod& rod : moved.rods)
      if (rod.column == piece_)
        own.insert(rod.id);
    const auto wall = std::make_shared<const WallLine>(std::move(moved));
    const auto after =
        fixesOfPosition(layOut(wall, layout_.types, layout_.limits, layout_.marks, layout_.place), limits_);
    std::set<RuleId> rules;
    for (const auto& [matter, measured] : after) {
      const auto& [rule, variant, pieces] = matter;
      if (std::any_of(pieces.begin(), pieces.end(), [&](Id piece) { return own.count(piece) > 0; }) ||
          after.count(matter) > before_.count(matter))
        rules.insert(rule);
    }
    return rules;
  }

private:
  const WallLayout& layout_;
  const ResolvedLimits& limits_;
  Id piece_;
  double at_;
  std::multimap<Matter, double> before_;
};

std::string blockedBy(const WallLayout& layout, const ResolvedLimits& limits, Id piece, double at) {
  std::string by;
  for (const Blocked& each : blockedStretches(layout, limits, piece))
    if (at > each.stations.from && at < each.stations.to)
      by += "; blocked by " + std::string(rule(each.rule).name) + " " + std::to_string(each.stations.from) + " to " +
            std::to_string(each.stations.to);
  return by;
}

bool ofColumns(RuleId id) { return rule(id).subject == "column" || id == RuleId::PanelEnds; }

struct Seen {
  int pieces = 0, slots = 0, none = 0, ends = 0;
  std::map<RuleId, int> against;
};

void expectAsChecked(const WallLayout& layout, const ResolvedLimits& limits, const PieceSlots& piece,
                     std::mt19937& random, Seen& seen) {
  constexpr double hair = 1e-4;
  const Trial trial(layout, limits, piece.piece);
  const Column* column = findIn(layout.wall->columns, piece.piece);
  const Interval frame = column ? overlap(around(column->station, 2 * column->leeway), Interval{0, layout.length})
                                : Interval{0, layout.length};
  const auto told = [&](double at, bool free) {
    const auto rules = trial.against(at);
    for (const RuleId each : rules)
      ++seen.against[each];
    EXPECT_EQ(rules.empty(), free) << layout.wall->mark << " " << tradeName(piece.kind) << " #" << piece.piece.value
                                   << " at " << piece.at << " stood at " << at << ": "
                                   << (rules.empty() ? "nothing speaks against it" : rule(*rules.begin()).name)
                                   << blockedBy(layout, limits, piece.piece, at);
  };
  for (const Interval slot : piece.slots) {
    ++seen.slots;
    if (slot.length() > 3 * hair) {
      told(slot.from + hair, true);
      told(slot.to - hair, true);
      told(slot.from + slot.length() * static_cast<double>(random() % 1000) / 1000, true);
    }
    for (const double out : {slot.from - hair, slot.to + hair})
      if (frame.contains(out) && !partAt(piece.slots, out)) {
        told(out, false);
        ++seen.ends;
      }
  }
  for (int i = 0; i < 12; ++i) {
    const double at = i < 4 || column ? piece.at + (static_cast<double>(random() % 1000) / 250 - 2)
                            : layout.length * static_cast<double>(random() % 100000) / 100000;
    const auto part = partAt(piece.slots, at);
    const bool nearAnEnd = std::any_of(piece.slots.begin(), piece.slots.end(), [&](Interval slot) {
      return std::abs(slot.from - at) < hair || std::abs(slot.to - at) < hair;
    });
    if (frame.contains(at) && !nearAnEnd)
      told(at, part.has_value());
  }
  ++seen.pieces;
  seen.none += piece.slots.empty();
}

void expectAsChecked(const Job& job, std::mt19937& random, Seen& seen) {
  const ResolvedLimits limits = resolve(*job.limits);
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const WallLayout layout = layOut(job, job.walls.pointer(i));
    for (const PieceSlots& piece : slotsOf(layout, limits))
      expectAsChecked(layout, limits, piece, random, seen);
  }
}

TEST(Slots, areWhereTheCheckerHasNothingToFixOnSoundWalls) {
  std::mt19937 random(5);
  Seen seen;
  expectAsChecked(support::boatShedFront(), random, seen);
  expectAsChecked(support::boatShedFrontSteelMoved(), random, seen);
  expectAsChecked(support::ridgeHouse(), random, seen);
  expectAsChecked(support::punchListPractice(), random, seen);
  for (std::uint64_t seed = 1; seed <= 6; ++seed)
    expectAsChecked(generateJob(seed, 120), random, seen);
  EXPECT_GT(seen.slots, 500);
  EXPECT_GT(seen.ends, 500);
}

// Columns that framing may shift by up to 2 in, on sound and on broken walls.
TEST(Slots, ofColumnsWithLeewayTakeAlongWhatHangsOnThem) {
  std::mt19937 random(8);
  Seen seen;
  for (std::uint64_t seed = 1; seed <= 24; ++seed) {
    Job job = seed % 3 == 0 ? support::ridgeHouse() : seed % 3 == 1 ? support::boatShedFront() : generateJob(seed, 60);
    if (seed % 2 == 0)
      job = broken(job, random);
    const ResolvedLimits limits = resolve(*job.limits);
    for (std::size_t i = 0; i < job.walls.size(); ++i) {
      WallLine wall = job.walls[i];
      for (Column& column : wall.columns)
        column.leeway = random() % 2 == 0 ? 0 : static_cast<double>(1 + random() % 32) / 16;
      const WallLayout layout = layOut(job, std::make_shared<const WallLine>(wall));
      for (const Column& column : layout.wall->columns)
        if (const auto piece = slotsOf(layout, limits, column.id))
          expectAsChecked(layout, limits, *piece, random, seen);
    }
  }
  EXPECT_GT(seen.pieces, 200);
  EXPECT_GT(seen.ends, 100);
}

TEST(Slots, areWhereTheCheckerHasNothingToFixOnBrokenWalls) {
  std::mt19937 random(6);
  Seen seen;
  for (std::uint64_t seed = 1; seed <= 120; ++seed) {
    const Job sound = seed % 4 == 0   ? support::ridgeHouse()
                      : seed % 4 == 1 ? support::boatShedFront()
                      : seed % 4 == 2 ? support::punchListPractice()
                                      : generateJob(seed, 80);
    expectAsChecked(broken(sound, random), random, seen);
  }
  EXPECT_GT(seen.pieces, 1000);
  EXPECT_GT(seen.slots, 500);
  EXPECT_GT(seen.none, 50);
  for (int id = 0; id < static_cast<int>(RuleId::Count); ++id)
    if (isOfPosition(static_cast<RuleId>(id)) && !ofColumns(static_cast<RuleId>(id))) {
      EXPECT_GT(seen.against[static_cast<RuleId>(id)], 5) << rule(static_cast<RuleId>(id)).name;
    }
}

} // namespace
} // namespace sillwright
