// The walls of a whole job laid out again, each by itself, on all cores.
#pragma once

#include <atomic>
#include <map>
#include <optional>
#include <span>
#include <vector>

#include "core/base/on_all_cores.h"
#include "core/refit/refit.h"

namespace sillwright {

struct WallRefit {
  Id wall = {};
  std::optional<Result<Refit>> refit = {}; // nothing: cancelled before its turn
  std::vector<NoLayout> further = {};      // what else collides where there is no layout

  // All that collides; empty where there is a layout, or none was looked for.
  std::vector<NoLayout> conflicts() const;
};

// One wall, with all that collides on it where it has no layout.
WallRefit refitWall(const WallLayout& layout, const ResolvedLimits& limits, const RefitWishes& wishes = {});

// Straps, bolts, rods, or panels that call for some: a wall without any needs no layout.
bool hasSomethingToSet(const WallLine& wall);

// In the order of the walls. Wishes by wall; a wall without any has none. Once `cancelled` is true no further wall is
// begun; those begun are done.
std::vector<WallRefit> refitJob(std::span<const WallLayout> walls, const ResolvedLimits& limits,
                                const std::map<Id, RefitWishes>& wishes, const Progress& progress,
                                const std::atomic<bool>& cancelled);

} // namespace sillwright
