#include "tests/support/broken_job.h"

#include <algorithm>
#include <cmath>

#include "core/model/lookup.h"

namespace sillwright {

namespace {

class Breaker {
public:
  explicit Breaker(std::mt19937& random) : random_(random) {}

  void operator()(PourStep& step) {
    if (sometimes(2))
      step.height += off(2);
  }
  void operator()(Sill& sill) {
    if (sometimes(3))
      sill.from += sixteenths(0, 48);
    if (sometimes(3))
      sill.to -= sixteenths(0, 48);
    // Between two marks of the tape: a bolt in the very splice belongs to the piece on the left, also in a mirror.
    if (sometimes(3))
      sill.splices = {sill.from + sixteenths(16, static_cast<int>(16 * (sill.to - sill.from)) - 16) + 1.0 / 32};
  }
  void operator()(Opening& opening) {
    if (sometimes(2))
      opening.from += off(24);
    if (sometimes(3))
      opening.headHeight -= whole(0, 60);
  }
  void operator()(Column& column) {
    if (sometimes(3))
      column.station += off(4);
    if (sometimes(3))
      column.makeUp = {whole(1, 3), {2, 6}};
  }
  void operator()(Panel& panel) {
    if (sometimes(4))
      panel.to = panel.from + whole(18, 44);
    panel.sheathing = static_cast<Sheathing>(whole(0, 2));
    if (sometimes(4))
      panel.from += off(24);
    if (sometimes(2))
      panel.designShear = whole(100, 1500);
    if (sometimes(3))
      panel.deadLoad = whole(50, 400);
    if (sometimes(3))
      panel.lever = panel.to - panel.from;
  }
  void operator()(Strap& strap) {
    if (sometimes(2))
      strap.station += off(2);
    if (sometimes(2))
      strap.heightOffset = sixteenths(-4, 4);
  }
  void operator()(Bolt& bolt) {
    if (sometimes(2))
      bolt.station += off(8);
    if (sometimes(2))
      bolt.depth += off(1);
    if (sometimes(2))
      bolt.projection += off(2);
    if (sometimes(8))
      bolt.washer = {};
    if (sometimes(6))
      bolt.cutWasher = false;
    if (sometimes(6))
      bolt.washerShift = sixteenths(-12, 12);
    if (sometimes(4))
      bolt.hook = static_cast<HookDirection>(whole(0, 3));
  }
  void operator()(Rod& rod) {
    if (sometimes(3))
      rod.offset += sometimes(2) ? off(1) : whole(10, 60);
    if (sometimes(2))
      rod.projection = sixteenths(32, 64);
  }
  void operator()(Bar& bar) {
    if (sometimes(2)) {
      bar.found = bar.planned;
      const Point3 by{off(3), off(3), off(3)};
      for (Point3* end : {&bar.found->a, &bar.found->b})
        *end = {end->s + by.s, end->d + by.d, end->z + by.z};
    }
  }
  void operator()(GradeShot& shot) {
    shot.reading += sixteenths(-6, 6);
    if (sometimes(2))
      shot.width = 8 + sixteenths(-10, 10);
  }

  void operator()(WallLine& wall) {
    if (sometimes(2))
      wall.thickness -= sixteenths(0, 48);
    if (sometimes(2))
      wall.stemHeight -= sixteenths(0, 240);
    if (sometimes(3))
      wall.footing = {};
    if (sometimes(3))
      wall.formTop = sixteenths(-16, 48);
    if (sometimes(6))
      wall.wallHeight = whole(12, 40);
    if (sometimes(3) && !wall.straps.empty())
      wall.straps.erase(wall.straps.begin() + whole(0, static_cast<int>(wall.straps.size()) - 1));
    forEachList(wall, [&](auto& list) {
      for (auto& piece : list)
        (*this)(piece);
    });
    const auto read = [&](Id piece) {
      Reading reading;
      reading.piece = piece;
      reading.plumb = sixteenths(-16, 16);
      if (sometimes(3))
        wall.readings.push_back(reading);
    };
    for (const Strap& strap : wall.straps)
      read(strap.id);
    for (const Rod& rod : wall.rods)
      read(rod.id);
  }

  void operator()(HardwareTypes& types) {
    for (StrapType& type : types.straps) {
      type.plateWidth += sixteenths(0, 8);
      type.nails.first -= sometimes(2) ? whole(0, 4) : 0;
      type.nails.nailLength -= sometimes(2) ? sixteenths(16, 40) : 0;
      type.hangerReach = {sixteenths(1, 16), sixteenths(16, 32)};
    }
    for (BoltType& type : types.bolts) {
      type.length += off(4);
      type.threadLength -= sometimes(2) ? whole(0, 3) : 0;
      type.hookLeg += sometimes(2) ? off(1) : 0;
    }
    for (WasherType& type : types.washers) {
      type.along += sixteenths(-4, 32);
      if (sometimes(3))
        type.thickness = 0.1875;
      if (sometimes(3))
        type.slot = WasherSlot{0.5 + sixteenths(0, 8), 1 + sixteenths(0, 14), SlotDirection::Across, {}};
    }
    for (RodType& type : types.rods)
      if (sometimes(2))
        type.embedment = whole(5, 20);
    for (StrapType& type : types.straps) {
      if (sometimes(3))
        type.columns = {{2, {2, 6}}};
      if (sometimes(2))
        type.statedCapacity = whole(1000, 6000);
    }
  }

  int whole(int from, int to) { return from + static_cast<int>(random_() % static_cast<unsigned>(to - from + 1)); }
  double sixteenths(int from, int to) { return whole(from, to) / 16.0; }

private:
  bool sometimes(int in) { return whole(1, in) == 1; }
  double off(int most) { return sixteenths(-16 * most, 16 * most); }

  std::mt19937& random_;
};

} // namespace

Job broken(const Job& job, std::mt19937& random) {
  Breaker breaker(random);
  Job worse = job;
  std::vector<WallLine> walls;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    walls.push_back(job.walls[i]);
    breaker(walls.back());
    if (breaker.whole(1, 3) == 1)
      walls.back().steps.push_back({takeId(worse), "", breaker.sixteenths(160, 480), breaker.sixteenths(640, 1280),
                                    breaker.sixteenths(-160, 32), ""});
  }
  for (WallLine& wall : walls)
    for (const double share : {0.25, 0.6})
      if (breaker.whole(0, 1) == 1)
        wall.shots.push_back({takeId(worse), "", std::round(16 * share * wallLength(worse, wall)) / 16,
                              breaker.sixteenths(-8, 8), 8 + breaker.sixteenths(-8, 8), ""});
  worse.walls = WallList(std::move(walls));
  const auto& corners = *worse.corners;
  for (std::size_t i = 0; i + 2 < corners.size() && breaker.whole(0, 1) == 1; i += 2) {
    const Point2 a = corners[i].at, b = corners[i + 2].at;
    worse.diagonals.edit([&](std::vector<Diagonal>& list) {
      list.push_back({takeId(worse), corners[i].id, corners[i + 2].id,
                      std::hypot(b.x - a.x, b.y - a.y) + breaker.sixteenths(-24, 24), ""});
    });
  }
  worse.types.edit([&](HardwareTypes& types) { breaker(types); });
  worse.marks.edit([&](std::vector<WallEndMark>& marks) {
    for (WallEndMark& mark : marks) {
      mark.column = MakeUp{breaker.whole(1, 3), {2, 6}};
      mark.sill = Nominal{breaker.whole(2, 3), 6};
      mark.requiredCapacity = breaker.whole(500, 6000);
    }
  });
  worse.limits.edit([&](JobLimits& limits) {
    if (breaker.whole(0, 1) == 1) {
      LimitOverride shorter;
      shorter.key = "sill.piece";
      shorter.value = 120;
      shorter.reason = "ten foot lumber";
      limits.overrides.push_back(shorter);
    }
    limits.topBar = breaker.whole(0, 1) == 1;
    limits.openingBars = breaker.whole(0, 1) == 1;
    limits.storeys = breaker.whole(1, 3);
    if (breaker.whole(0, 1) == 1)
      limits.planBoltSpacing = breaker.whole(16, 60);
  });
  return worse;
}

} // namespace sillwright
