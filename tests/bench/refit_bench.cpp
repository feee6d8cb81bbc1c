// What slots cost, against checking the same wall; and the layout in order.
#include <algorithm>

#include "core/model/lookup.h"
#include "core/refit/slots.h"
#include "core/rules/proof.h"
#include "core/rules/rule_book.h"
#include "tests/bench/refit_measures.h"
#include "tests/support/fill_wall.h"

namespace sillwright::bench {

namespace {

constexpr double length = 480;
constexpr std::size_t anchors = 20, bars = 60;

std::size_t anchorsOf(const WallLine& wall) {
  return wall.straps.size() + wall.bolts.size() + wall.rods.size();
}

std::size_t fixes(const Job& job, const WallLine& wall) {
  const Findings found = checkWall(layOut(job, std::make_shared<const WallLine>(wall)), resolve(*job.limits));
  return static_cast<std::size_t>(
      std::count_if(found.begin(), found.end(), [](const Finding& f) { return f.level == Level::Fix; }));
}

// A front of 40 ft with a door and three panels, filled up to 20 straps and bolts and 60 bars, none of which adds a
// FIX.
struct Front {
  Job job;
  WallLine wall;
};

Front longFront() {
  Front front;
  Job& job = front.job;
  const Corner start{takeId(job), {0, 0}, {}}, end{takeId(job), {length, 0}, {}};
  job.corners.edit([&](std::vector<Corner>& corners) { corners = {start, end}; });
  WallLine& wall = front.wall;
  wall.id = takeId(job);
  wall.mark = "A";
  wall.startCorner = start.id;
  wall.endCorner = end.id;
  wall.footing = {16, 8, 4};
  wall.studs = StudLayout{};
  const support::Hardware hardware = support::addHardware(job);
  Opening door;
  door.kind = OpeningKind::Door;
  door.from = 200;
  door.to = 240;
  door.headHeight = 82;
  support::WallPlan plan;
  plan.openings = {door};
  plan.panels = {{0, 60}, {120, 180}, {420, 480}};
  support::Marks marks;
  support::fillWall(job, wall, length, plan, hardware, marks);
  for (double s = 30; anchorsOf(wall) < anchors && s < length; s += 1) {
    WallLine more = wall;
    Bolt bolt = wall.bolts.front();
    bolt.id = takeId(job);
    bolt.station = s;
    more.bolts.push_back(bolt);
    if (fixes(job, more) <= fixes(job, wall))
      wall = more;
  }
  for (double s = 5; wall.bars.size() < bars && s < length; s += 1) {
    WallLine more = wall;
    Bar bar;
    bar.id = takeId(job);
    bar.planned = {{s, 4, -20}, {s, 4, -6}};
    more.bars.push_back(bar);
    if (fixes(job, more) <= fixes(job, wall))
      wall = more;
  }
  return front;
}

} // namespace

std::vector<Measure> refit(int& argc, char** argv) {
  const Front front = longFront();
  const auto wall = std::make_shared<const WallLine>(front.wall);
  const WallLayout layout = layOut(front.job, wall);
  const ResolvedLimits limits = resolve(*front.job.limits);
  std::size_t found = 0, stretches = 0;
  const auto slots = [&] {
    stretches = 0;
    for (const PieceSlots& piece : slotsOf(layout, limits))
      stretches += piece.slots.size();
  };
  const Ratio ratio = secondsAgainst(slots, [&] { found = checkWall(layOut(front.job, wall), limits).size(); });
  const Ratio bare = secondsAgainst(slots, [&] { found = draftsOf(layOut(front.job, wall), limits).size(); });
  std::vector<Measure> measures{{"slots-pieces", static_cast<double>(anchorsOf(front.wall)), "straps, bolts and rods"},
                                {"slots-bars", static_cast<double>(front.wall.bars.size()), "bars"},
                                {"slots-found", static_cast<double>(stretches), "slots"},
                                {"slots-findings", static_cast<double>(found), "findings of the wall"},
                                {"slots", ratio.ofLeast, "full checks of the wall (least of 15 rounds)"},
                                {"slots-bare", bare.ofLeast, "full checks without corrections (least of 15 rounds)"},
                                {"slots-median", ratio.median, "full checks of the wall (median of 15 rounds)"}};
  for (const auto& more : {refitGrowth(), refitAgainstSolver(), refitOfAHouse(argc, argv)})
    measures.insert(measures.end(), more.begin(), more.end());
  return measures;
}

} // namespace sillwright::bench
