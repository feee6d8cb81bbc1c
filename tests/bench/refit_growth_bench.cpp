#include <cmath>

#include "tests/bench/refit_measures.h"
#include "tests/core/sequence_walls.h"

namespace sillwright::bench {

namespace {

using sequence::kFar;
using sequence::Mark;
using sequence::Problem;

constexpr unsigned kWalls = 8;

struct Sized {
  double size = 0;
  double seconds = 0;
};

// Time as a power of the size: the slope of the straight line of least squares through the logarithms.
double exponentOf(const std::vector<Sized>& measured) {
  double x = 0, y = 0, xx = 0, xy = 0;
  for (const Sized& one : measured) {
    const double u = std::log(one.size), v = std::log(one.seconds);
    x += u, y += v, xx += u * u, xy += u * v;
  }
  const double n = static_cast<double>(measured.size());
  return (n * xy - x * y) / (n * xx - x * x);
}

// Mean over some walls that can be laid of the least seconds of a few calls.
template <typename Wall> double secondsOn(Wall wall) {
  double sum = 0;
  unsigned walls = 0;
  for (unsigned seed = 0; walls < kWalls; ++seed) {
    const Problem problem = wall(seed);
    if (!sequence::canBeLaid(problem))
      continue;
    sum += leastProcessorSeconds([&] { sequence::layInOrder(problem); });
    ++walls;
  }
  return sum / kWalls;
}

sequence::WallSize sizeOf(int feet, int piers, int bars) {
  sequence::WallSize size;
  size.feetLeast = size.feetMost = feet;
  size.piersLeast = size.piersMost = piers;
  size.barsLeast = size.barsMost = bars;
  return size;
}

Mark times(Mark mark, int by) {
  return std::abs(mark) >= kFar / 2 ? mark : mark * by;
}

// The same bolts, bars and sill pieces on so many times as many marks.
Problem stretched(Problem problem, int by) {
  for (sequence::SillPiece& sill : problem.sillPieces) {
    sill.stretch = {sill.stretch.from * by, (sill.stretch.to + 1) * by - 1};
    sill.first->farthest *= by;
    sill.last->farthest *= by;
    for (sequence::MostGap& gap : sill.most)
      gap = {gap.from * by, gap.to * by, gap.most * by, gap.need};
    for (sequence::Ground& ground : sill.options) {
      for (sequence::Blocked& blocked : ground.blocked)
        blocked = {times(blocked.from, by), times(blocked.to, by), blocked.need};
      for (sequence::Toll& toll : ground.tolls)
        toll.from *= by, toll.to *= by;
    }
    for (sequence::ReferenceBolt& bolt : sill.reference)
      bolt.station *= by;
  }
  for (sequence::LeastGap& gap : problem.leastGaps)
    gap.least *= by;
  return problem;
}

} // namespace

std::vector<Measure> refitGrowth() {
  std::vector<Sized> byLength, byStations, byPiers;
  for (const int feet : {20, 40, 80, 160})
    byLength.push_back({feet / 20.0, secondsOn([&](unsigned seed) {
                          return sequence::RandomWall(seed).wall(sizeOf(feet, feet / 10, feet));
                        })});
  for (const int by : {1, 2, 4, 8})
    byStations.push_back({static_cast<double>(by), secondsOn([&](unsigned seed) {
                            return stretched(sequence::RandomWall(seed).wall(sizeOf(20, 0, 20)), by);
                          })});
  for (const int piers : {1, 2, 4, 8})
    byPiers.push_back({static_cast<double>(piers), secondsOn([&](unsigned seed) {
                         return sequence::RandomWall(seed).wall(sizeOf(40, piers, 30));
                       })});
  return {{"refit-wall-ms", byLength[1].seconds * 1e3, "ms for a wall of 40 ft with 4 piers and 40 bars (mean of 8)"},
          {"refit-by-length", exponentOf(byLength),
           "exponent of the time, walls of 20 to 160 ft with piers, bars, sills and bolts in proportion"},
          {"refit-by-length-last", byLength.back().seconds / byLength[byLength.size() - 2].seconds,
           "times as long for 160 ft as for 80 ft"},
          {"refit-by-stations", exponentOf(byStations),
           "exponent of the time, the same bolts on 1 to 8 times the stations"},
          {"refit-by-stations-last", byStations.back().seconds / byStations[byStations.size() - 2].seconds,
           "times as long for 8 times the stations as for 4 times"},
          {"refit-by-pieces", exponentOf(byPiers), "exponent of the time, 1 to 8 piers in 40 ft"}};
}

} // namespace sillwright::bench
