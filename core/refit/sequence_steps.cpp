#include "core/refit/sequence_steps.h"

#include <algorithm>
#include <cstdlib>

namespace sillwright::sequence {
namespace {

std::vector<GapBand> bandsOf(const SillPiece& sill, bool countWatch) {
  std::vector<Mark> starts{1};
  for (const Toll& toll : sill.gapTolls) {
    starts.push_back(toll.closed ? toll.from : toll.from + 1);
    starts.push_back(toll.closed ? toll.to + 1 : toll.to);
  }
  std::erase_if(starts, [](Mark start) { return start < 1 || start > kFar; });
  std::sort(starts.begin(), starts.end());
  starts.erase(std::unique(starts.begin(), starts.end()), starts.end());
  std::vector<GapBand> bands;
  const Ground tolls{{}, sill.gapTolls};
  for (std::size_t index = 0; index < starts.size(); ++index) {
    const Mark end = index + 1 < starts.size() ? starts[index + 1] - 1 : kFar;
    bands.push_back({starts[index], end, weightOf(effectOf(tolls, starts[index], countWatch))});
  }
  return bands;
}

std::vector<Mark> farthestAfterOf(const SillSteps& sill) {
  std::vector<Mark> farthest{sill.least == 0 ? sill.stretch.to : sill.first.to};
  while (static_cast<int>(farthest.size()) < sill.least)
    farthest.push_back(farthest.back() < sill.stretch.from ? farthest.back()
                                                           : sill.farthestNext[farthest.back() - sill.stretch.from]);
  farthest.push_back(sill.stretch.to);
  return farthest;
}

SillSteps sillStepsOf(const SillPiece& sill, bool countWatch) {
  SillSteps steps;
  steps.stretch = steps.first = steps.last = sill.stretch;
  steps.least = sill.least;
  steps.references = static_cast<int>(sill.reference.size());
  if (sill.first)
    steps.first.to = std::min(steps.first.to, sill.stretch.from + sill.first->farthest);
  if (sill.last)
    steps.last.from = std::max(steps.last.from, sill.stretch.to - sill.last->farthest);
  steps.bands = bandsOf(sill, countWatch);
  steps.farthestNext = farthestNextOf(sill);
  steps.farthestAfter = farthestAfterOf(steps);
  for (const ReferenceBolt& bolt : sill.reference)
    steps.removal.push_back(bolt.fixed ? kNever : weightOf(0, 1, bolt.set ? 1 : 0, 0, 0));
  steps.removalsFrom.resize(sill.reference.size() + 1);
  for (int index = steps.references - 1; index >= 0; --index) {
    const Weight rest = steps.removalsFrom[index + 1];
    steps.removalsFrom[index] = isNever(rest) ? kNever : steps.removal[index] + rest;
  }
  return steps;
}

std::vector<Mark> leastGapsOf(const Problem& problem) {
  std::vector<Mark> gaps(problem.depthOptions * problem.depthOptions, 1);
  for (const LeastGap& gap : problem.leastGaps) {
    Mark& least = gaps[gap.left * problem.depthOptions + gap.right];
    least = std::max(least, gap.least);
  }
  return gaps;
}

void chartGroups(Steps& steps) {
  const std::size_t marks = steps.axis.to - steps.axis.from + 1;
  steps.groupOf.assign(marks, -1);
  steps.begunBy.resize(marks);
  steps.endedBefore.resize(marks);
  Weight begun;
  Weight ended;
  std::size_t next = 0;
  for (Mark mark = steps.axis.from; mark <= steps.axis.to; ++mark) {
    const std::size_t at = mark - steps.axis.from;
    const std::vector<Group>& groups = steps.anchors.groups;
    if (next < groups.size() && mark > groups[next].reach.to)
      ended = ended + groups[next++].least;
    if (next < groups.size() && mark == groups[next].reach.from)
      begun = begun + groups[next].least;
    if (next < groups.size() && mark >= groups[next].reach.from)
      steps.groupOf[at] = static_cast<int>(next);
    steps.begunBy[at] = begun;
    steps.endedBefore[at] = ended;
  }
  for (const Group& group : steps.anchors.groups)
    steps.allGroups = steps.allGroups + group.least;
}

} // namespace

// A limit holds for the pair (left, right) where left < to and right > from; so it keeps right at or below the larger
// of `from` and left + most. Each of these never decreases with left, and fewer apply the farther left stands.
std::vector<Mark> farthestNextOf(const SillPiece& sill) {
  std::vector<Mark> farthest;
  for (Mark left = sill.stretch.from; left <= sill.stretch.to; ++left) {
    Mark right = sill.stretch.to;
    for (const MostGap& gap : sill.most)
      if (left < gap.to)
        right = std::min(right, std::max(gap.from, left + gap.most));
    farthest.push_back(right);
  }
  return farthest;
}

int Steps::stancesAt(Mark station) const {
  const int group = groupAt(station);
  return group < 0 ? 1 : static_cast<int>(anchors.groups[group].stances.size());
}

Effect Steps::effectAt(int sill, Mark station, int option, int stance) const {
  const Effect ground = anchors.grounds[sill].at(station, option);
  const int group = groupAt(station);
  return group < 0 ? ground : sum(ground, anchors.groups[group].stances[stance].effects.at(station, option));
}

Weight Steps::matching(int sill, int reference, Mark station, int option) const {
  const ReferenceBolt& bolt = problem->sillPieces[sill].reference[reference];
  if (bolt.shift[option] >= kFar)
    return kNever;
  const Mark moved = std::abs(station - bolt.station) + bolt.shift[option];
  if (moved == 0)
    return {};
  return bolt.fixed ? kNever : weightOf(0, 0, bolt.set ? 1 : 0, 0, moved);
}

Weight leaving(const Steps& steps, const Spot& left) {
  if (left.station < steps.axis.from)
    return {};
  const int group = steps.groupAt(left.station);
  const Weight begun = steps.begunBy[left.station - steps.axis.from];
  return group < 0 ? Weight{} - begun : steps.anchors.groups[group].stances[left.stance].cost - begun;
}

Steps stepsOf(const Problem& problem, const Weight& above) {
  Steps steps;
  steps.problem = &problem;
  steps.anchors = sortAnchors(problem, above);
  if (!steps.anchors.possible || problem.sillPieces.empty())
    return steps;
  for (const SillPiece& sill : problem.sillPieces)
    steps.sills.push_back(sillStepsOf(sill, problem.countWatch));
  steps.leastGap = leastGapsOf(problem);
  steps.axis = {problem.sillPieces.front().stretch.from, problem.sillPieces.back().stretch.to};
  chartGroups(steps);
  return steps;
}

} // namespace sillwright::sequence
