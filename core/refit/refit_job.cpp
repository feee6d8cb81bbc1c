#include "core/refit/refit_job.h"

namespace sillwright {

std::vector<NoLayout> WallRefit::conflicts() const {
  const NoLayout* first = refit && refit->ok() ? std::get_if<NoLayout>(&refit->value()) : nullptr;
  if (!first)
    return {};
  std::vector<NoLayout> all{*first};
  all.insert(all.end(), further.begin(), further.end());
  return all;
}

WallRefit refitWall(const WallLayout& layout, const ResolvedLimits& limits, const RefitWishes& wishes) {
  WallRefit wall{layout.wall->id, refit(layout, limits, wishes), {}};
  if (!wall.conflicts().empty())
    wall.further = furtherConflicts(layout, limits, wishes);
  return wall;
}

bool hasSomethingToSet(const WallLine& wall) {
  return !wall.straps.empty() || !wall.bolts.empty() || !wall.rods.empty() || !wall.panels.empty();
}

std::vector<WallRefit> refitJob(std::span<const WallLayout> walls, const ResolvedLimits& limits,
                                const std::map<Id, RefitWishes>& wishes, const Progress& progress,
                                const std::atomic<bool>& cancelled) {
  std::vector<WallRefit> refits(walls.size());
  for (std::size_t i = 0; i < walls.size(); ++i)
    refits[i].wall = walls[i].wall->id;
  const auto one = [&](std::size_t i) {
    const auto own = wishes.find(refits[i].wall);
    refits[i] = refitWall(walls[i], limits, own == wishes.end() ? RefitWishes{} : own->second);
  };
  onAllCores(walls.size(), one, progress, &cancelled);
  return refits;
}

} // namespace sillwright
