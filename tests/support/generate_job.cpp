#include "tests/support/generate_job.h"

#include <algorithm>
#include <random>

#include "core/model/lookup.h"
#include "tests/support/fill_wall.h"

namespace sillwright {

namespace {

using support::Hardware;
using support::Marks;
using support::WallPlan;

class Generator {
public:
  Generator(std::uint64_t seed, std::size_t pieces) : random_(seed), wanted_(pieces) {}

  Job make() {
    job_.title.job = "Generated job";
    job_.title.note = "generated, invented";
    const Hardware hardware = support::addHardware(job_);
    double x = 0;
    while (count_ < wanted_)
      x += rectangle(x, hardware) + 240;
    job_.corners.edit([&](std::vector<Corner>& list) { list = std::move(corners_); });
    job_.walls = WallList(std::move(walls_));
    return std::move(job_);
  }

private:
  int whole(int from, int to) { return from + static_cast<int>(random_() % static_cast<std::uint64_t>(to - from + 1)); }
  double feet(int from, int to) { return 12.0 * whole(from, to); }

  WallPlan planFor(double length, bool butts) {
    WallPlan plan;
    plan.inAtStart = plan.inAtEnd = butts ? 6 : 0;
    plan.sill = whole(0, 1) ? Nominal{3, 6} : Nominal{2, 6};
    plan.rods = !butts && whole(0, 5) == 0;
    Opening opening;
    opening.kind = whole(0, 1) ? OpeningKind::Window : OpeningKind::Door;
    opening.from = length / 2 - 18;
    opening.to = length / 2 + 18;
    opening.sillHeight = opening.kind == OpeningKind::Window ? 36 : 0;
    opening.headHeight = 80;
    plan.openings = {opening};
    plan.panels = {{plan.inAtStart, plan.inAtStart + 54}, {length - plan.inAtEnd - 54, length - plan.inAtEnd}};
    return plan;
  }

  // Every tenth strap or bolt stands up to an inch off.
  void disturb(WallLine& wall, double length) {
    const auto move = [&](double& station) {
      if (whole(0, 9) == 0)
        station = std::clamp(station + whole(-16, 16) / 16.0, 1.0, length - 1);
    };
    for (Strap& strap : wall.straps)
      move(strap.station);
    for (Bolt& bolt : wall.bolts)
      move(bolt.station);
  }

  // Takes pieces off again that nothing else needs, until the count is right.
  void trim(WallLine& wall) {
    const auto drop = [&](auto& list) {
      while (!list.empty() && count_ + pieceCount(wall) > wanted_)
        list.pop_back();
    };
    drop(wall.bars);
    drop(wall.bolts);
    drop(wall.straps);
    drop(wall.rods);
    drop(wall.panels);
    drop(wall.columns);
    drop(wall.openings);
    drop(wall.sills);
  }

  double rectangle(double x, const Hardware& hardware) {
    const double wide = feet(14, 36), deep = feet(14, 30);
    const Point2 points[] = {{x, 0}, {x + wide, 0}, {x + wide, deep}, {x, deep}};
    Id ids[4];
    for (int i = 0; i < 4; ++i) {
      ids[i] = takeId(job_);
      corners_.push_back({ids[i], points[i], ""});
    }
    for (int i = 0; i < 4; ++i) {
      WallLine wall;
      wall.id = takeId(job_);
      wall.mark = "W" + std::to_string(++wallNumber_);
      wall.startCorner = ids[i];
      wall.endCorner = ids[(i + 1) % 4];
      wall.footing = {16, 8, 4};
      wall.formTop = 1.5;
      wall.sillInset = 0.5;
      wall.startFraming = wall.endFraming = i % 2 ? EndFraming::Butts : EndFraming::RunsBy;
      const double length = i % 2 ? deep : wide;
      if (count_ < wanted_) {
        support::fillWall(job_, wall, length, planFor(length, i % 2 == 1), hardware, marks_);
        disturb(wall, length);
        trim(wall);
        count_ += pieceCount(wall);
      }
      walls_.push_back(std::move(wall));
    }
    return wide;
  }

  std::mt19937_64 random_;
  std::size_t wanted_;
  std::size_t count_ = 0;
  int wallNumber_ = 0;
  Job job_;
  Marks marks_;
  std::vector<Corner> corners_;
  std::vector<WallLine> walls_;
};

} // namespace

Job generateJob(std::uint64_t seed, std::size_t pieces) { return Generator(seed, std::max<std::size_t>(pieces, 10)).make(); }

} // namespace sillwright
