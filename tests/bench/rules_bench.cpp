// What checking costs, against computing the distances that it must look at and nothing else.
#include <algorithm>
#include <array>

#include "core/edit/operations.h"
#include "core/geometry/clearance.h"
#include "core/rules/checker.h"
#include "tests/bench/bench.h"
#include "tests/support/generate_job.h"

namespace sillwright::bench {

namespace {

// One shape of one piece, with the box around it.
template <class Shape> struct Part {
  std::size_t piece = 0;
  Shape shape;
  Box3 box;
};

template <class Shape> Part<Shape> partOf(std::size_t piece, const Shape& shape) {
  return {piece, shape, bounds(shape)};
}
Part<Box3> partOf(std::size_t piece, const Box3& box) {
  return {piece, box, box};
}

// What lies in one wall: round steel (bars, shanks, hooks, feet), bent plates, and wood and washers as boxes.
struct Parts {
  std::vector<Part<Capsule>> round;
  std::vector<Part<Ribbon>> plates;
  std::vector<Part<Box3>> boxes;
  std::vector<Part<Box3>> washers;
};

Parts partsOf(const WallLayout& wall) {
  Parts parts;
  std::size_t piece = 0;
  for (const BarBody& bar : wall.bars)
    parts.round.push_back(partOf(piece++, bar.body));
  for (const AnchorBody& anchor : wall.anchors) {
    parts.round.push_back(partOf(piece, anchor.shank));
    for (const Capsule& foot : anchor.foot)
      parts.round.push_back(partOf(piece, foot));
    if (anchor.washerBox)
      parts.washers.push_back(partOf(piece, *anchor.washerBox));
    ++piece;
  }
  for (const StrapBody& strap : wall.straps)
    parts.plates.push_back(partOf(piece++, strap.embedded));
  for (const ColumnBody& column : wall.columns)
    parts.boxes.push_back(partOf(piece++, column.box));
  for (const StudBody& stud : wall.studs)
    parts.boxes.push_back(partOf(piece++, stud.box));
  for (const SillPiece& sill : wall.sills)
    parts.boxes.push_back(partOf(piece++, sill.box));
  return parts;
}

// Neighbours are pieces of one wall no more than a foot apart along it: within that lies what the clearance rules look
// at. Steel among itself (bars, shanks, hooks, feet, straps) by the exact clearances in space, washers against each
// other and against sill, columns and studs box by box, and everything cast in against the faces of its concrete. The
// shapes and the boxes around them are made beforehand; nothing is compared with a limit.
constexpr double neighbourhood = 12;

template <class A, class B> bool neighbours(const Part<A>& a, const Part<B>& b) {
  return a.piece != b.piece && gap(a.box.s, b.box.s) <= neighbourhood;
}

double boxGap(const Box3& a, const Box3& b) {
  return std::max({gap(a.s, b.s), gap(a.d, b.d), gap(a.z, b.z)});
}

// To the six sides of the concrete; at inside corners it ends where the neighbour's does.
double inConcrete(const WallLayout& wall, const Box3& box) {
  return std::min({box.s.from - wall.concrete.from, wall.concrete.to - box.s.to, box.d.from - wall.across.from,
                   wall.across.to - box.d.to, box.z.from - wall.bottom, pourAt(wall, box.s.middle()) - box.z.to});
}

double distancesIn(const WallLayout& wall, const Parts& parts) {
  double sum = 0;
  for (std::size_t i = 0; i < parts.round.size(); ++i) {
    const Part<Capsule>& own = parts.round[i];
    for (std::size_t k = i + 1; k < parts.round.size(); ++k)
      if (neighbours(own, parts.round[k]))
        sum += clearance(own.shape, parts.round[k].shape).distance;
    for (const Part<Ribbon>& plate : parts.plates)
      if (neighbours(own, plate))
        sum += clearance(own.shape, plate.shape).distance;
    sum += inConcrete(wall, own.box);
  }
  for (std::size_t i = 0; i < parts.plates.size(); ++i) {
    for (std::size_t k = i + 1; k < parts.plates.size(); ++k)
      if (neighbours(parts.plates[i], parts.plates[k]))
        sum += clearance(parts.plates[i].shape, parts.plates[k].shape).distance;
    sum += inConcrete(wall, parts.plates[i].box);
  }
  for (std::size_t i = 0; i < parts.washers.size(); ++i) {
    for (std::size_t k = i + 1; k < parts.washers.size(); ++k)
      if (neighbours(parts.washers[i], parts.washers[k]))
        sum += boxGap(parts.washers[i].shape, parts.washers[k].shape);
    for (const Part<Box3>& box : parts.boxes)
      if (neighbours(parts.washers[i], box))
        sum += boxGap(parts.washers[i].shape, box.shape);
  }
  return sum;
}

// Moves one bolt to and fro by a mark of the tape and checks again.
class Recheck {
public:
  explicit Recheck(std::size_t pieces) : job_(generateJob(1, pieces)) {
    checker_.update(job_);
    const WallLine& wall = job_.walls[0]; // the same in jobs of any size
    moved_[0] = {wall.id, wall.bolts.front().id};
  }
  void operator()() {
    job_ = movePieces(job_, moved_, step_);
    step_ = -step_;
    checker_.update(job_);
  }

private:
  Job job_;
  Checker checker_;
  std::array<PieceRef, 1> moved_;
  double step_ = 1.0 / 16;
};

} // namespace

std::vector<Measure> rules(int&, char**) {
  const Job job = generateJob(1, 10'000);
  std::vector<WallLayout> walls;
  std::vector<Parts> parts;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    walls.push_back(layOut(job, job.walls.pointer(i)));
    parts.push_back(partsOf(walls.back()));
  }
  double sum = 0; // printed, so that no distance is left out
  const auto distances = [&] {
    sum = 0;
    for (std::size_t i = 0; i < walls.size(); ++i)
      sum += distancesIn(walls[i], parts[i]);
  };
  const Ratio full = secondsAgainst([&] { (void)checkAll(job); }, distances);
  Recheck small(100), large(100'000);
  const Ratio again = secondsAgainst([&] { large(); }, [&] { small(); });
  return {{"rules-full-check-10000", full.ofLeast, "times-the-distances-alone (least of 15 rounds)"},
          {"rules-full-check-10000-median", full.median, "times-the-distances-alone (median of 15 rounds)"},
          {"rules-recheck-100000", again.ofLeast, "times-the-100-piece-job (least of 15 rounds)"},
          {"rules-recheck-100000-median", again.median, "times-the-100-piece-job (median of 15 rounds)"},
          {"rules-distances-sum", sum, "in, of all distances together"}};
}

} // namespace sillwright::bench
