#include "tests/support/broken_job.h"

#include <algorithm>

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
    if (sometimes(4))
      bolt.hook = static_cast<HookDirection>(whole(0, 3));
  }
  void operator()(Rod& rod) {
    if (sometimes(3))
      rod.offset += off(1);
  }
  void operator()(Bar& bar) {
    if (sometimes(2)) {
      bar.found = bar.planned;
      const Point3 by{off(3), off(3), off(3)};
      for (Point3* end : {&bar.found->a, &bar.found->b})
        *end = {end->s + by.s, end->d + by.d, end->z + by.z};
    }
  }
  void operator()(GradeShot&) {}

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
    for (WasherType& type : types.washers)
      type.along += sixteenths(0, 32);
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
  worse.walls = WallList(std::move(walls));
  worse.types.edit([&](HardwareTypes& types) { breaker(types); });
  worse.limits.edit([&](JobLimits& limits) {
    limits.storeys = breaker.whole(1, 3);
    if (breaker.whole(0, 1) == 1)
      limits.planBoltSpacing = breaker.whole(16, 60);
  });
  return worse;
}

} // namespace sillwright
