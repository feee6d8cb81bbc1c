// A general mixed-integer solver (GLPK), where it is installed, on a written programme.
#pragma once

#ifdef SILLWRIGHT_GLPK
#include <glpk.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include <cmath>
#include <cstdio>
#include <fstream>
#include <optional>
#include <string>

#include "core/refit/lp_model.h"

namespace sillwright::sequence {

// The solver gave up by its own account, or had looked at as many nodes as one programme is given here. Nodes, not
// seconds, so that the same walls are checked on every machine.
struct GaveUp {};

inline void stopAfter(glp_tree* tree, void* most) {
  int nodes = 0;
  glp_ios_tree_size(tree, nullptr, nullptr, &nodes);
  if (nodes > *static_cast<int*>(most))
    glp_ios_terminate(tree);
}

// Least value of one level, or none where the programme has no solution.
inline std::optional<int> solved(const std::string& programme) {
  const std::string path = testing::TempDir() + "sillwright_" + std::to_string(getpid()) + ".lp";
  std::ofstream(path) << programme;
  glp_term_out(GLP_OFF);
  glp_prob* lp = glp_create_prob();
  const int unread = glp_read_lp(lp, nullptr, path.c_str());
  std::remove(path.c_str());
  EXPECT_EQ(unread, 0);
  glp_iocp settings;
  glp_init_iocp(&settings);
  settings.presolve = GLP_ON;
  settings.mir_cuts = GLP_ON;
  int most = 400;
  settings.cb_func = stopAfter;
  settings.cb_info = &most;
  const int failed = glp_intopt(lp, &settings);
  const int status = glp_mip_status(lp);
  std::optional<int> value;
  if (failed == GLP_ESTOP || failed == GLP_EFAIL) {
    glp_delete_prob(lp);
    throw GaveUp{};
  }
  if (failed == 0 && status == GLP_OPT) {
    value = static_cast<int>(std::lround(glp_mip_obj_val(lp)));
    EXPECT_NEAR(glp_mip_obj_val(lp), *value, 1e-4);
  } else {
    EXPECT_TRUE(failed == GLP_ENOPFS || failed == GLP_ENODFS || status == GLP_NOFEAS) << failed << " " << status;
  }
  glp_delete_prob(lp);
  return value;
}

// The levels one after another, each with those before held at what the solver found: exact, without weights.
inline std::optional<Cost> solvedInOrder(const Problem& problem, const std::vector<int>& slots) {
  Cost cost;
  const auto level = [&](CostLevel which) { return solved(lpModel(problem, {which, cost, slots})); };
  const std::optional<int> asks = level(CostLevel::Ask);
  if (!asks)
    return std::nullopt;
  cost.ask = *asks;
  cost.pieces = level(CostLevel::Pieces).value();
  cost.setMoved = level(CostLevel::SetMoved).value();
  cost.watch = level(CostLevel::Watch).value();
  cost.movement = level(CostLevel::Movement).value();
  return cost;
}

} // namespace sillwright::sequence
#endif
