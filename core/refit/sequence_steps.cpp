#include "core/refit/sequence_steps.h"

#include <algorithm>

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

std::vector<Mark> farthestWithOf(const SillSteps& sill) {
  std::vector<Mark> farthest{sill.first.to};
  while (farthest.back() >= sill.stretch.from && farthest.back() < sill.stretch.to) {
    const Mark next = sill.farthestNext[farthest.back() - sill.stretch.from];
    if (next <= farthest.back())
      break;
    farthest.push_back(next);
  }
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
  steps.farthestWith = farthestWithOf(steps);
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

void chartChains(Steps& steps) {
  const std::size_t marks = steps.axis.to - steps.axis.from + 1;
  steps.partOf.assign(marks, -1);
  steps.chainsEnded.resize(marks);
  steps.chains = chainsOf(steps.anchors);
  const std::vector<Chain>& chains = steps.chains.chains;
  std::size_t ended = 0;
  for (Mark mark = steps.axis.from; mark <= steps.axis.to; ++mark) {
    if (ended < chains.size() && mark > chains[ended].reach.to)
      ++ended;
    steps.chainsEnded[mark - steps.axis.from] = static_cast<int>(ended);
  }
  for (std::size_t index = 0; index < steps.chains.parts.size(); ++index) {
    const Stretch& marksOfIt = steps.chains.parts[index].marks;
    for (Mark mark = marksOfIt.from; mark <= marksOfIt.to; ++mark)
      steps.partOf[mark - steps.axis.from] = static_cast<int>(index);
  }
  steps.leastOf = {{}};
  for (const Chain& chain : chains)
    steps.leastOf.push_back(steps.leastOf.back() + chain.least);
  steps.allChains = steps.leastOf.back();
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

Effect Steps::effectAt(int sill, Mark station, int option, int state) const {
  const Effect ground = anchors.grounds[sill].at(station, option);
  const int part = partAt(station);
  if (part < 0 || chains.parts[part].group < 0)
    return ground;
  const Group& group = anchors.groups[chains.parts[part].group];
  return sum(ground, (state == 0 ? group.easiest : group.stances[state - 1].effects).at(station, option));
}

Weight leaving(const Steps& steps, const Spot& left) {
  if (left.station < steps.axis.from)
    return {};
  const int part = steps.partAt(left.station);
  const Weight& ended = steps.endedBefore(left.station);
  if (part < 0)
    return Weight{} - ended;
  return steps.part(part).after[left.state] - ended - steps.chains.chains[steps.part(part).chain].least;
}

std::vector<Weight> along(const Steps& steps, int part, int state, int toPart) {
  std::vector<Weight> cost(steps.statesIn(part) - 1, kNever);
  cost[state - 1] = {};
  for (; part != toPart; ++part) {
    const Part& here = steps.part(part);
    const int statesThere = steps.statesIn(part + 1);
    std::vector<Weight> next(statesThere - 1, kNever);
    for (int from = 1; from < here.states(); ++from)
      for (int to = 1; to < statesThere && !isNever(cost[from - 1]); ++to)
        next[to - 1] = std::min(next[to - 1], plus(cost[from - 1], here.to(from, to, statesThere)));
    cost = std::move(next);
  }
  return cost;
}

Steps stepsOf(const Problem& problem, Anchors anchors, bool anyOption) {
  Steps steps;
  steps.problem = &problem;
  steps.anchors = std::move(anchors);
  if (!steps.anchors.possible || problem.sillPieces.empty())
    return steps;
  for (const SillPiece& sill : problem.sillPieces)
    steps.sills.push_back(sillStepsOf(sill, problem.countWatch));
  steps.columns = problem.depthOptions;
  steps.leastGap = leastGapsOf(problem);
  if (anyOption) {
    steps.columns = 1;
    steps.leastGap = {*std::min_element(steps.leastGap.begin(), steps.leastGap.end())};
  }
  steps.axis = {problem.sillPieces.front().stretch.from, problem.sillPieces.back().stretch.to};
  chartChains(steps);
  return steps;
}

} // namespace sillwright::sequence
