#include "core/refit/sequence_ways.h"

#include <algorithm>

namespace sillwright::sequence {
namespace {

// Options with the same least gap to the same options.
struct Alike {
  Mark gap;
  std::vector<int> from;
  std::vector<int> to;
};

std::vector<Alike> alikeFrom(const Steps& steps, int left) {
  std::vector<Alike> kinds;
  for (int right = 0; right < steps.problem->depthOptions; ++right) {
    const Mark gap = steps.gap(left, right);
    const auto same = std::find_if(kinds.begin(), kinds.end(), [&](const Alike& kind) { return kind.gap == gap; });
    if (same == kinds.end())
      kinds.push_back({gap, {left}, {right}});
    else
      same->to.push_back(right);
  }
  return kinds;
}

std::vector<Alike> alikeOf(const Steps& steps) {
  std::vector<Alike> kinds;
  for (int left = 0; left < steps.problem->depthOptions; ++left)
    for (const Alike& kind : alikeFrom(steps, left)) {
      const auto same = std::find_if(kinds.begin(), kinds.end(),
                                     [&](const Alike& other) { return other.gap == kind.gap && other.to == kind.to; });
      if (same == kinds.end())
        kinds.push_back(kind);
      else
        same->from.push_back(left);
    }
  return kinds;
}

} // namespace

std::vector<Way> waysOf(const Steps& steps, const SillSteps& sill) {
  std::vector<Way> ways;
  for (const Alike& kind : alikeOf(steps))
    for (const GapBand& band : sill.bands)
      if (std::max(band.from, kind.gap) <= band.to)
        ways.push_back({kind.from, kind.to, std::max(band.from, kind.gap), band.to, band.cost});
  return ways;
}

} // namespace sillwright::sequence
