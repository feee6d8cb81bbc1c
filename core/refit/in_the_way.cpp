#include "core/refit/in_the_way.h"

#include <algorithm>

#include "core/model/lookup.h"
#include "core/refit/slot_words.h"

namespace sillwright {

std::string inTheWay(const WallLayout& layout, const ResolvedLimits& limits, Id piece) {
  const auto at = stationOf(*layout.wall, piece);
  std::vector<std::string> reasons;
  for (const Blocked& each : at ? blockedStretches(layout, limits, piece) : std::vector<Blocked>{}) {
    if (*at <= each.stations.from || *at >= each.stations.to)
      continue;
    std::string words = stopWords(*layout.wall, {each.rule, each.by});
    if (std::find(reasons.begin(), reasons.end(), words) == reasons.end())
      reasons.push_back(std::move(words));
  }
  std::string all;
  for (const std::string& reason : reasons)
    all += (all.empty() ? "" : ", ") + reason;
  return all;
}

} // namespace sillwright
