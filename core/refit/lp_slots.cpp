#include "core/refit/lp_slots.h"

#include <algorithm>

#include "core/refit/lp_model.h"
#include "core/refit/sequence_steps.h"

namespace sillwright::sequence {
namespace {

std::vector<int> slotsThatFit(const Problem& problem) {
  Mark least = kFar;
  for (int left = 0; left < problem.depthOptions; ++left)
    for (int right = 0; right < problem.depthOptions; ++right) {
      Mark here = 1;
      for (const LeastGap& gap : problem.leastGaps)
        if (gap.left == left && gap.right == right)
          here = std::max(here, gap.least);
      least = std::min(least, here);
    }
  std::vector<int> slots;
  for (const SillPiece& sill : problem.sillPieces)
    slots.push_back((sill.stretch.to - sill.stretch.from) / least + 1);
  return slots;
}

bool outerGapNeverLarger(const Problem& problem) {
  const int options = problem.depthOptions;
  std::vector<Mark> gaps(options * options, 1);
  for (const LeastGap& gap : problem.leastGaps)
    gaps[gap.left * options + gap.right] = std::max(gaps[gap.left * options + gap.right], gap.least);
  for (int left = 0; left < options; ++left)
    for (int middle = 0; middle < options; ++middle)
      for (int right = 0; right < options; ++right)
        if (gaps[left * options + right] > gaps[left * options + middle] + gaps[middle * options + right])
          return false;
  return true;
}

} // namespace

std::vector<Stretch> rangesOf(const SillPiece& sill, int slots) {
  const std::vector<Mark> next = farthestNextOf(sill);
  std::vector<Stretch> ranges(slots, sill.stretch);
  Mark farthest = sill.first ? std::min(sill.stretch.to, sill.stretch.from + sill.first->farthest) : sill.stretch.to;
  for (Stretch& range : ranges) {
    range.to = farthest;
    farthest = farthest < sill.stretch.from ? farthest : next[farthest - sill.stretch.from];
  }
  Mark nearest = sill.last ? std::max(sill.stretch.from, sill.stretch.to - sill.last->farthest) : sill.stretch.from;
  for (int bolt = slots - 1; bolt >= 0 && nearest <= sill.stretch.to; --bolt) {
    ranges[bolt].from = nearest;
    while (nearest > sill.stretch.from && next[nearest - 1 - sill.stretch.from] >= ranges[bolt].from)
      --nearest;
  }
  return ranges;
}

std::vector<int> boltSlots(const Problem& problem, const std::optional<Cost>& known) {
  std::vector<int> slots = slotsThatFit(problem);
  if (!known || known->ask > 0)
    return slots;
  for (std::size_t which = 0; which < slots.size(); ++which)
    slots[which] = std::min(slots[which], static_cast<int>(problem.sillPieces[which].reference.size()) + known->pieces);
  return slots;
}

std::vector<int> boltSlotsToLayAtAll(const Problem& problem) {
  std::vector<int> slots = slotsThatFit(problem);
  if (!outerGapNeverLarger(problem))
    return slots;
  for (std::size_t which = 0; which < slots.size(); ++which) {
    const SillPiece& sill = problem.sillPieces[which];
    Mark smallest = sill.stretch.to - sill.stretch.from + 1;
    for (const MostGap& gap : sill.most)
      smallest = std::max(1, std::min(smallest, gap.most));
    const auto fixed = std::count_if(sill.reference.begin(), sill.reference.end(),
                                     [](const ReferenceBolt& bolt) { return bolt.fixed.has_value(); });
    const int thinned = 2 * ((sill.stretch.to - sill.stretch.from) / smallest) + 2 + 2 * static_cast<int>(fixed);
    slots[which] = std::min(slots[which], std::max(thinned, sill.least + static_cast<int>(fixed)));
  }
  return slots;
}

} // namespace sillwright::sequence
