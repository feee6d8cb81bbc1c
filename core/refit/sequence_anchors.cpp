#include "core/refit/sequence_anchors.h"

#include <algorithm>

#include "core/refit/sequence_chains.h"
#include "core/refit/sequence_stances.h"

namespace sillwright::sequence {
namespace {

constexpr Stretch kNowhere{kFar, -kFar};

bool isEmpty(const Stretch& stretch) {
  return stretch.from > stretch.to;
}

bool overlap(const Stretch& a, const Stretch& b) {
  return !isEmpty(a) && !isEmpty(b) && a.from <= b.to && b.from <= a.to;
}

class Sorting {
public:
  Sorting(const Problem& givenProblem, const Weight& givenMost) : problem(givenProblem), most(givenMost) {}

  Anchors sorted() {
    for (const Anchored& piece : problem.anchored)
      anchors.candidates.push_back(candidatesOf(piece, problem.countWatch));
    for (const Distance& distance : problem.distances)
      anchors.open.push_back(&distance);
    settle(problem, anchors.candidates, anchors.open);
    leaveOutDear();
    settle(problem, anchors.candidates, anchors.open);
    anchors.possible = std::none_of(anchors.candidates.begin(), anchors.candidates.end(),
                                    [](const Candidates& candidates) { return candidates.empty(); });
    if (!anchors.possible)
      return anchors;
    for (const Candidates& candidates : anchors.candidates)
      if (candidates.size() == 1)
        anchors.standing = anchors.standing + candidates[0].cost;
    payConstantDistances();
    layGrounds();
    for (Group& group : formedGroups())
      finish(group);
    if (isNever(anchors.standing))
      anchors.possible = false;
    if (anchors.possible)
      linkGroups(problem, anchors, most);
    return anchors;
  }

private:
  // What of `most` is left above the least that each piece costs by itself.
  Weight spare() const {
    Weight least;
    for (const Candidates& candidates : anchors.candidates)
      least = least + leastOf(candidates);
    return isNever(least) ? Weight{} : most - least;
  }

  void leaveOutDear() {
    const Weight above = spare();
    for (Candidates& candidates : anchors.candidates) {
      const Weight dearest = leastOf(candidates) + above;
      std::erase_if(candidates, [&](const Candidate& candidate) { return dearest < candidate.cost; });
    }
  }

  void payConstantDistances() {
    std::erase_if(anchors.open, [&](const Distance* distance) {
      const std::optional<Effect> effect = constantEffect(*distance, anchors.candidates, problem.countWatch);
      if (effect)
        anchors.standing = anchors.standing + weightOf(*effect);
      return effect.has_value();
    });
  }

  void layGrounds() {
    for (const SillPiece& sill : problem.sillPieces) {
      Row row(sill.stretch, problem.depthOptions);
      for (int option = 0; option < problem.depthOptions; ++option)
        lay(row, option, sill.options[option], 0, problem.countWatch);
      for (const Beside& beside : problem.besides)
        if (const Candidates& candidates = anchors.candidates[beside.anchored]; candidates.size() == 1)
          for (int option = 0; option < problem.depthOptions; ++option)
            lay(row, option, beside.options[option], candidates[0].station, problem.countWatch);
      anchors.grounds.push_back(std::move(row));
    }
  }

  // Marks where a bolt could stand at all, in any option; the reach of a piece is cut down to these.
  bool boltMayStand(Mark station) const {
    for (const Row& row : anchors.grounds)
      if (row.holds(station))
        for (int option = 0; option < row.options; ++option)
          if (row.at(station, option) != kBlocked)
            return true;
    return false;
  }

  Stretch reachOf(int piece) const {
    Stretch reach = kNowhere;
    const Candidates& candidates = anchors.candidates[piece];
    const auto widen = [&](Mark from, Mark to) {
      reach.from = std::min(reach.from, from + candidates.front().station);
      reach.to = std::max(reach.to, to + candidates.back().station);
    };
    for (const Beside& beside : problem.besides)
      if (beside.anchored == piece)
        for (const Ground& ground : beside.options) {
          for (const Blocked& interval : ground.blocked)
            if (interval.from < interval.to)
              widen(interval.from, interval.to);
          for (const Toll& toll : ground.tolls)
            widen(toll.from, toll.to);
        }
    if (anchors.grounds.empty())
      return kNowhere;
    reach.from = std::max(reach.from, anchors.grounds.front().stretch.from);
    reach.to = std::min(reach.to, anchors.grounds.back().stretch.to);
    while (!isEmpty(reach) && !boltMayStand(reach.from))
      ++reach.from;
    while (!isEmpty(reach) && !boltMayStand(reach.to))
      --reach.to;
    return isEmpty(reach) ? kNowhere : reach;
  }

  std::vector<Group> formedGroups() {
    std::vector<Group> groups;
    for (int piece = 0; piece < static_cast<int>(anchors.candidates.size()); ++piece)
      if (anchors.candidates[piece].size() > 1)
        groups.push_back({.pieces = {piece}, .reach = reachOf(piece)});
    while (joinOverlapping(groups) || joinDistances(groups))
      ;
    return groups;
  }

  static void join(Group& into, const Group& other) {
    into.pieces.insert(into.pieces.end(), other.pieces.begin(), other.pieces.end());
    std::sort(into.pieces.begin(), into.pieces.end());
    if (isEmpty(other.reach))
      return;
    into.reach = isEmpty(into.reach)
                     ? other.reach
                     : Stretch{std::min(into.reach.from, other.reach.from), std::max(into.reach.to, other.reach.to)};
  }

  static void join(std::vector<Group>& groups, std::size_t first, std::size_t last) {
    for (std::size_t index = first + 1; index <= last; ++index)
      join(groups[first], groups[index]);
    groups.erase(groups.begin() + static_cast<std::ptrdiff_t>(first) + 1,
                 groups.begin() + static_cast<std::ptrdiff_t>(last) + 1);
  }

  // Left to right, those without reach first. Groups whose reaches overlap meet in the same bolts. Whether any did.
  static bool joinOverlapping(std::vector<Group>& groups) {
    std::stable_sort(groups.begin(), groups.end(), [](const Group& a, const Group& b) {
      return isEmpty(a.reach) != isEmpty(b.reach) ? isEmpty(a.reach) : a.reach.from < b.reach.from;
    });
    for (std::size_t index = 1; index < groups.size(); ++index)
      if (overlap(groups[index - 1].reach, groups[index].reach)) {
        join(groups, index - 1, index);
        return true;
      }
    return false;
  }

  // Distances between groups next to each other can be left between them; others make one group of all from the one to
  // the other. Whether any did.
  bool joinDistances(std::vector<Group>& groups) const {
    const auto groupOf = [&](int piece) {
      std::size_t index = 0;
      while (std::find(groups[index].pieces.begin(), groups[index].pieces.end(), piece) == groups[index].pieces.end())
        ++index;
      return index;
    };
    for (const Distance* distance : anchors.open) {
      const auto [left, right] = std::minmax({groupOf(distance->left), groupOf(distance->right)});
      if (left == right || (left + 1 == right && !isEmpty(groups[left].reach)))
        continue;
      if (isEmpty(groups[left].reach)) {
        join(groups[right], groups[left]);
        groups.erase(groups.begin() + static_cast<std::ptrdiff_t>(left));
      } else {
        join(groups, left, right);
      }
      return true;
    }
    return false;
  }

  void finish(Group& group) {
    Weight least;
    for (const int piece : group.pieces)
      least = least + leastOf(anchors.candidates[piece]);
    group.stances = stancesOf(problem, anchors, group, least + spare());
    if (group.stances.empty())
      anchors.possible = false;
    else if (isEmpty(group.reach))
      anchors.standing = anchors.standing + group.stances[0].cost;
    else
      anchors.groups.push_back(std::move(group));
  }

  const Problem& problem;
  Weight most;
  Anchors anchors;
};

} // namespace

void lay(Row& row, int option, const Ground& ground, Mark shift, bool countWatch) {
  const auto over = [&](Mark from, Mark to, Effect effect) {
    const Mark last = std::min(to + shift, row.stretch.to);
    for (Mark station = std::max(from + shift, row.stretch.from); station <= last; ++station)
      row.at(station, option) = sum(row.at(station, option), effect);
  };
  for (const Blocked& interval : ground.blocked)
    over(interval.from + 1, interval.to - 1, kBlocked);
  for (const Toll& toll : ground.tolls)
    over(toll.from + (toll.closed ? 0 : 1), toll.to - (toll.closed ? 0 : 1), effectOf(toll, countWatch));
}

Anchors sortAnchors(const Problem& problem, const Weight& most) {
  return Sorting(problem, most).sorted();
}

} // namespace sillwright::sequence
