#include "tests/bench/refit_measures.h"

#ifdef SILLWRIGHT_GLPK
#include <glpk.h>
#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>

#include "core/refit/lp_model.h"
#include "tests/core/sequence_walls.h"
#endif

namespace sillwright::bench {

#ifdef SILLWRIGHT_GLPK
namespace {

using sequence::Cost;
using sequence::CostLevel;
using sequence::Layout;
using sequence::Problem;

constexpr unsigned kWalls = 25;
constexpr double kMostSeconds = 10; // of the solver, for all levels of one wall

// Of real sizes: 20 to 40 ft, piers of 2 to 4 ft, 3 to 20 pieces, 10 to 60 bars.
sequence::WallSize sizeOf(unsigned seed) {
  sequence::WallSize size;
  size.piersMost = 3;
  size.options = 1 + static_cast<int>(seed % 2);
  return size;
}

// Only the solving is timed, not writing and reading the programme.
struct Solved {
  double seconds = 0;
  int value = 0;
  bool found = false;
};

Solved solve(const std::string& programme, double mostSeconds) {
  const std::filesystem::path path =
      std::filesystem::temp_directory_path() / ("sillwright_bench_" + std::to_string(getpid()) + ".lp");
  std::ofstream(path) << programme;
  glp_term_out(GLP_OFF);
  glp_prob* lp = glp_create_prob();
  Solved solved;
  if (glp_read_lp(lp, nullptr, path.c_str()) == 0) {
    glp_iocp settings;
    glp_init_iocp(&settings);
    settings.presolve = GLP_ON;
    settings.mir_cuts = GLP_ON;
    settings.tm_lim = std::max(1, static_cast<int>(mostSeconds * 1e3));
    int failed = 0;
    solved.seconds = processorSecondsOf([&] { failed = glp_intopt(lp, &settings); });
    solved.found = failed == 0 && glp_mip_status(lp) == GLP_OPT;
    solved.value = static_cast<int>(std::lround(glp_mip_obj_val(lp)));
  }
  std::filesystem::remove(path);
  glp_delete_prob(lp);
  return solved;
}

struct Race {
  double ours = 0;
  double solver = 0; // as far as it came
  bool finished = false;
  bool same = false;
};

// The levels one after another, each with those before held, as exact as ours.
Race race(const Problem& problem, const Layout& layout) {
  Race race;
  race.ours = leastProcessorSeconds([&] { sequence::layInOrder(problem); });
  Cost cost;
  for (const CostLevel level :
       {CostLevel::Ask, CostLevel::Pieces, CostLevel::SetMoved, CostLevel::Watch, CostLevel::Movement}) {
    const Solved solved =
        solve(sequence::lpModel(problem, {level, cost, boltSlots(problem, layout.cost)}), kMostSeconds - race.solver);
    race.solver += solved.seconds;
    if (!solved.found)
      return race;
    int* const levels[] = {&cost.ask, &cost.pieces, &cost.setMoved, &cost.watch};
    if (level == CostLevel::Movement)
      cost.movement = solved.value;
    else
      *levels[static_cast<std::size_t>(level)] = solved.value;
  }
  race.finished = true;
  race.same = cost == layout.cost;
  return race;
}

} // namespace

std::vector<Measure> refitAgainstSolver() {
  std::vector<double> ratios, pieces;
  int finished = 0, same = 0;
  for (unsigned seed = 0; seed < kWalls; ++seed) {
    const Problem problem = sequence::RandomWall(seed).wall(sizeOf(seed));
    const auto answer = sequence::layInOrder(problem);
    const Layout* layout = std::get_if<Layout>(&answer);
    if (!layout)
      continue;
    const Race result = race(problem, *layout);
    ratios.push_back(result.solver / result.ours);
    pieces.push_back(static_cast<double>(layout->anchored.size() + layout->bolts.size()));
    finished += result.finished ? 1 : 0;
    same += result.same ? 1 : 0;
  }
  std::sort(ratios.begin(), ratios.end());
  std::sort(pieces.begin(), pieces.end());
  return {{"refit-walls", static_cast<double>(ratios.size()), "walls of 20 to 40 ft with 10 to 60 bars"},
          {"refit-pieces", pieces[pieces.size() / 2], "columns, straps and bolts (median)"},
          {"refit-solver-finished", static_cast<double>(finished), "of them solved by the general solver within 10 s"},
          {"refit-solver-same", static_cast<double>(same), "of these with the same optimum"},
          {"refit-against-solver", ratios[ratios.size() / 2],
           "times as fast as the general solver (median; at least, where it did not finish)"},
          {"refit-against-solver-least", ratios.front(), "times as fast (least)"}};
}
#else
std::vector<Measure> refitAgainstSolver() {
  return {};
}
#endif

} // namespace sillwright::bench
