// What refit writes beside the job: the question to the engineer and the problem for other solvers.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/refit/refit.h"

namespace sillwright {

struct RefitOfWall {
  WallLayout layout; // before
  RefitWishes wishes;
  std::optional<Proposal> proposal;
  std::vector<NoLayout> conflicts; // all that collides where there is none
};

// The questions of all walls that have no layout, one after another, as text.
std::optional<Problem> writeQuestion(const Job& job, const std::vector<RefitOfWall>& walls, const std::string& path);

// A mixed-integer programme a wall: of one wall in `path`, of several each beside it with the mark of the wall. With a
// layout it asks for the least movement, all levels before held at what they cost there; without one for any at all.
std::optional<Problem> writeModels(const std::vector<RefitOfWall>& walls, const ResolvedLimits& limits,
                                   const std::string& path);

// FILE-A.lp; what cannot stand in a file's name becomes _.
std::string besidePath(const std::string& path, const std::string& mark);

// Those that give by an amount, the smallest first.
std::vector<Requirement> smallestFirst(const std::vector<Requirement>& requirements);

} // namespace sillwright
