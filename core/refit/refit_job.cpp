#include "core/refit/refit_job.h"

namespace sillwright {

std::vector<WallRefit> refitJob(std::span<const WallLayout> walls, const ResolvedLimits& limits,
                                const std::map<Id, RefitWishes>& wishes, const Progress& progress,
                                const std::atomic<bool>& cancelled) {
  std::vector<WallRefit> refits(walls.size());
  for (std::size_t i = 0; i < walls.size(); ++i)
    refits[i].wall = walls[i].wall->id;
  const auto one = [&](std::size_t i) {
    const auto own = wishes.find(refits[i].wall);
    refits[i].refit = refit(walls[i], limits, own == wishes.end() ? RefitWishes{} : own->second);
  };
  onAllCores(walls.size(), one, progress, &cancelled);
  return refits;
}

} // namespace sillwright
