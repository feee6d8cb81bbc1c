// A refit of small piers against trying every layout with the rule checker: the same counts and the same movement.
#include <gtest/gtest.h>

#include <map>
#include <random>
#include <tuple>

#include "core/refit/marks.h"
#include "core/refit/refit.h"
#include "core/refit/slots.h"
#include "core/rules/proof.h"
#include "core/rules/rule_book.h"
#include "tests/support/fill_wall.h"

namespace sillwright {
namespace {

using sequence::Mark;

// A pier of 20 to 26 in with a column and a strap at its left end and two bolts, between bars.
struct Pier {
  Job job;
  WallLine wall;
};

Pier pier(std::mt19937& random) {
  const auto upTo = [&](int n) { return static_cast<double>(random() % static_cast<unsigned>(n)); };
  Pier pier;
  Job& job = pier.job;
  const double length = 20 + upTo(7);
  const Corner start{takeId(job), {0, 0}, {}}, end{takeId(job), {length, 0}, {}};
  job.corners.edit([&](std::vector<Corner>& corners) { corners = {start, end}; });
  const support::Hardware hardware = support::addHardware(job);
  WallLine& wall = pier.wall;
  wall.id = takeId(job);
  wall.mark = "A";
  wall.startCorner = start.id;
  wall.endCorner = end.id;
  wall.footing = {16, 8, 4};
  wall.formTop = 1.5;
  wall.sillInset = 0.5;
  Sill sill;
  sill.id = takeId(job);
  sill.to = length;
  wall.sills = {sill};
  Column column;
  column.id = takeId(job);
  column.station = 2.75 + upTo(12) / 16;
  column.makeUp = {1, {random() % 2 == 0 ? 4 : 6, 6}};
  wall.columns = {column};
  Strap strap;
  strap.id = takeId(job);
  strap.type = hardware.strap;
  strap.column = column.id;
  strap.station = column.station + (upTo(33) - 16) / 16;
  wall.straps = {strap};
  for (const double at : {8.0, 15.0}) {
    Bolt bolt;
    bolt.id = takeId(job);
    bolt.type = hardware.bolt;
    bolt.washer = hardware.washer;
    bolt.station = at + (upTo(65) - 32) / 16;
    bolt.depth = 3.25;
    bolt.projection = 4;
    wall.bolts.push_back(bolt);
    if (random() % 6 == 0)
      wall.readings.push_back({bolt.id, bolt.station, {}, {}, {}, 24, {}, true, {}, {}, {}});
  }
  for (unsigned i = 0; i < 1 + random() % 5; ++i) {
    Bar bar;
    bar.id = takeId(job);
    const double s = 1.5 + upTo(static_cast<int>((length - 3) * 16)) / 16, d = 2 + upTo(60) / 16;
    bar.planned = {{s, d, -28}, {s, d, -2}};
    wall.bars.push_back(bar);
  }
  return pier;
}

struct Counts {
  int fix = 0, ask = 0, watch = 0;
  Counts operator+(const Counts& o) const { return {fix + o.fix, ask + o.ask, watch + o.watch}; }
};

bool isCounted(RuleId rule) {
  return rule == RuleId::StrapEdge || rule == RuleId::StrapSteel || rule == RuleId::StrapSeam ||
         rule == RuleId::StrapNailEdge || rule == RuleId::BoltSteel || rule == RuleId::BoltStrap ||
         rule == RuleId::BoltGap || rule == RuleId::WasherColumn;
}

// Everything said about these pieces together (of each of them at least), on a wall with only them.
class Tried {
public:
  explicit Tried(const Pier& pier) : pier_(pier), limits_(resolve(*pier.job.limits)) {}

  template <class Filter> Counts count(const WallLine& wall, const Filter& filter) const {
    const WallLayout layout = layOut(pier_.job, std::make_shared<const WallLine>(wall));
    Counts counts;
    for (const Draft& draft : draftsOf(layout, limits_)) {
      const Finding& f = draft.finding;
      if (!filter(f))
        continue;
      counts.fix += f.level == Level::Fix && isOfPosition(f.rule);
      counts.ask += f.level == Level::Ask && isCounted(f.rule);
      counts.watch += f.level == Level::Watch && isCounted(f.rule);
    }
    return counts;
  }

  WallLine bare() const {
    WallLine wall = pier_.wall;
    wall.straps.clear();
    wall.bolts.clear();
    wall.readings.clear();
    return wall;
  }

  Counts strap(Mark at) const {
    WallLine wall = bare();
    Strap strap = pier_.wall.straps[0];
    strap.station = inchesOf(at);
    wall.straps = {strap};
    return count(wall, [&](const Finding& f) { return says(f, strap.id); });
  }
  Counts bolts(Mark left, Mark right) const {
    WallLine wall = bare();
    wall.bolts = pier_.wall.bolts;
    wall.bolts[0].station = inchesOf(left);
    wall.bolts[1].station = inchesOf(right);
    return count(wall, [&](const Finding& f) {
      return says(f, wall.bolts[0].id) || says(f, wall.bolts[1].id) || f.rule == RuleId::BoltCount;
    });
  }
  Counts both(Mark strapAt, Mark boltAt) const {
    WallLine wall = bare();
    Strap strap = pier_.wall.straps[0];
    strap.station = inchesOf(strapAt);
    wall.straps = {strap};
    wall.bolts = {pier_.wall.bolts[0]};
    wall.bolts[0].station = inchesOf(boltAt);
    return count(wall, [&](const Finding& f) { return says(f, strap.id) && says(f, wall.bolts[0].id); });
  }

private:
  static bool says(const Finding& finding, Id piece) {
    return std::find(finding.pieces.begin(), finding.pieces.end(), piece) != finding.pieces.end();
  }
  const Pier& pier_;
  ResolvedLimits limits_;
};

using Cost = std::tuple<int, int, int, int>; // ask, set moved, watch, movement

struct Best {
  bool any = false;
  Cost cost{};
};

Best tryEverything(const Pier& pier) {
  const Tried tried(pier);
  const WallLine& wall = pier.wall;
  const Column& column = wall.columns[0];
  const double half = alongWall(column.makeUp) / 2;
  std::map<Mark, Counts> straps;
  for (Mark at = markFrom(column.station - half); at <= markUpTo(column.station + half); ++at)
    if (const Counts counts = tried.strap(at); counts.fix == 0)
      straps[at] = counts;
  const Mark end = markUpTo(wall.sills[0].to);
  std::map<std::pair<Mark, Mark>, Counts> cross; // strap, bolt: only what is asked for
  const auto crossing = [&](Mark strap, Mark bolt) {
    const auto [found, isNew] = cross.try_emplace({strap, bolt});
    if (isNew)
      found->second = tried.both(strap, bolt);
    return found->second;
  };
  const auto isSet = [&](Id piece) {
    return std::any_of(wall.readings.begin(), wall.readings.end(), [&](const Reading& r) { return r.piece == piece; });
  };
  std::vector<Bolt> reference = wall.bolts;
  std::sort(reference.begin(), reference.end(), [](const Bolt& a, const Bolt& b) { return a.station < b.station; });
  const Mark r0 = nearestMark(reference[0].station), r1 = nearestMark(reference[1].station),
             rs = nearestMark(wall.straps[0].station);
  Best best;
  for (Mark left = 0; left < end; ++left)
    for (Mark right = left + 1; right <= end; ++right) {
      if (right - left < 32) // nearer than four diameters of the bolts
        continue;
      const Counts bolts = tried.bolts(left, right);
      if (bolts.fix > 0)
        continue;
      for (const auto& [strap, alone] : straps) {
        const Counts all = bolts + alone + crossing(strap, left) + crossing(strap, right);
        if (all.fix > 0)
          continue;
        const int setMoved = (isSet(reference[0].id) && left != r0) + (isSet(reference[1].id) && right != r1);
        const Cost cost{all.ask, setMoved, all.watch,
                        std::abs(left - r0) + std::abs(right - r1) + std::abs(strap - rs)};
        if (!best.any || cost < best.cost)
          best = {true, cost};
      }
    }
  return best;
}

TEST(RefitOfSmallPiers, costsWhatTryingEveryLayoutCosts) {
  std::mt19937 random(3);
  int laidOut = 0, none = 0, more = 0;
  for (int i = 0; i < 24; ++i) {
    const Pier p = pier(random);
    const WallLayout layout = layOut(p.job, std::make_shared<const WallLine>(p.wall));
    const auto answer = refit(layout, resolve(*p.job.limits));
    ASSERT_TRUE(answer) << answer.problem().text();
    const Best best = tryEverything(p);
    const auto* proposal = std::get_if<Proposal>(&*answer);
    if (proposal && proposal->cost.pieces > 0) { // with other bolts: no layout of these two is better
      ++more;
      EXPECT_TRUE(!best.any || std::get<0>(best.cost) > proposal->cost.ask) << "pier " << i;
      continue;
    }
    ASSERT_EQ(proposal != nullptr, best.any) << "pier " << i;
    if (!proposal) {
      ++none;
      continue;
    }
    ++laidOut;
    const sequence::Cost& cost = proposal->cost;
    EXPECT_EQ(Cost(cost.ask, cost.setMoved, cost.watch, static_cast<int>(cost.movement)), best.cost) << "pier " << i;
  }
  EXPECT_GT(laidOut, 8);
  EXPECT_GT(none, 2);
}

} // namespace
} // namespace sillwright
