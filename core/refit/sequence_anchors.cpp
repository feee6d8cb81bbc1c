#include "core/refit/sequence_anchors.h"

#include <algorithm>
#include <map>

#include "core/refit/sequence_candidates.h"

namespace sillwright::sequence {
namespace {

class Sorting {
public:
  Sorting(const Problem& givenProblem, const Weight& givenAbove) : problem(givenProblem), above(givenAbove) {}

  Anchors sorted() {
    for (const Anchored& piece : problem.anchored)
      candidates.push_back(candidatesOf(piece, problem.countWatch));
    open = settle(problem, candidates);
    anchors.stations.resize(problem.anchored.size());
    anchors.possible =
        std::none_of(candidates.begin(), candidates.end(), [](const Candidates& c) { return c.empty(); });
    if (!anchors.possible)
      return anchors;
    std::erase_if(open, [&](const Distance* distance) { return !matters(*distance, candidates); });
    for (std::size_t piece = 0; piece < candidates.size(); ++piece)
      if (candidates[piece].size() == 1) {
        anchors.stations[piece] = candidates[piece][0].station;
        anchors.standing = anchors.standing + candidates[piece][0].cost;
      }
    layGrounds();
    formGroups();
    return anchors;
  }

private:
  void layGrounds() {
    for (const SillPiece& sill : problem.sillPieces) {
      Row row(sill.stretch, problem.depthOptions);
      for (int option = 0; option < problem.depthOptions; ++option)
        lay(row, option, sill.options[option], 0, problem.countWatch);
      for (const Beside& beside : problem.besides)
        if (candidates[beside.anchored].size() == 1)
          layBeside(row, beside, candidates[beside.anchored][0].station);
      anchors.grounds.push_back(std::move(row));
    }
  }

  void layBeside(Row& row, const Beside& beside, Mark station) const {
    for (int option = 0; option < problem.depthOptions; ++option)
      lay(row, option, beside.options[option], station, problem.countWatch);
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
    Stretch reach{kFar, -kFar};
    const auto widen = [&](Mark from, Mark to) {
      reach.from = std::min(reach.from, from + candidates[piece].front().station);
      reach.to = std::max(reach.to, to + candidates[piece].back().station);
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
      return {kFar, -kFar};
    reach.from = std::max(reach.from, anchors.grounds.front().stretch.from);
    reach.to = std::min(reach.to, anchors.grounds.back().stretch.to);
    while (reach.from <= reach.to && !boltMayStand(reach.from))
      ++reach.from;
    while (reach.from <= reach.to && !boltMayStand(reach.to))
      --reach.to;
    return reach.from <= reach.to ? reach : Stretch{kFar, -kFar};
  }

  void formGroups() {
    std::vector<Group> groups;
    for (int piece = 0; piece < static_cast<int>(candidates.size()); ++piece)
      if (candidates[piece].size() > 1)
        groups.push_back({.pieces = {piece}, .reach = reachOf(piece)});
    for (const Distance* distance : open)
      joinOn(groups, [&](const Group& group) {
        return std::any_of(group.pieces.begin(), group.pieces.end(),
                           [&](int piece) { return piece == distance->left || piece == distance->right; });
      });
    joinOverlapping(groups);
    for (Group& group : groups)
      finish(group);
  }

  static void join(Group& into, const Group& other) {
    into.pieces.insert(into.pieces.end(), other.pieces.begin(), other.pieces.end());
    std::sort(into.pieces.begin(), into.pieces.end());
    if (other.reach.from > other.reach.to)
      return;
    const bool empty = into.reach.from > into.reach.to;
    into.reach = empty ? other.reach
                       : Stretch{std::min(into.reach.from, other.reach.from), std::max(into.reach.to, other.reach.to)};
  }

  template <typename Belongs> static void joinOn(std::vector<Group>& groups, Belongs belongs) {
    const auto first = std::find_if(groups.begin(), groups.end(), belongs);
    for (auto other = first == groups.end() ? first : first + 1; other != groups.end();) {
      if (belongs(*other)) {
        join(*first, *other);
        other = groups.erase(other);
      } else {
        ++other;
      }
    }
  }

  // Groups whose reaches overlap meet in the same bolts.
  static void joinOverlapping(std::vector<Group>& groups) {
    std::stable_sort(groups.begin(), groups.end(),
                     [](const Group& a, const Group& b) { return a.reach.from < b.reach.from; });
    std::vector<Group> apart;
    for (const Group& group : groups) {
      const bool reaches = group.reach.from <= group.reach.to;
      if (reaches && !apart.empty() && apart.back().reach.from <= apart.back().reach.to &&
          group.reach.from <= apart.back().reach.to)
        join(apart.back(), group);
      else
        apart.push_back(group);
    }
    groups = std::move(apart);
  }

  void finish(Group& group) {
    group.least = kNever;
    forEachCombination(group, kNever, [&](const Weight& cost, const std::vector<Mark>&) {
      group.least = std::min(group.least, cost);
    });
    if (isNever(group.least)) {
      anchors.possible = false;
      return;
    }
    std::map<std::vector<Effect>, Stance> kinds;
    forEachCombination(group, group.least + above, [&](const Weight& cost, const std::vector<Mark>& stations) {
      keep(group, cost, stations, kinds);
    });
    for (auto& [effects, stance] : kinds) {
      stance.effects.effects = effects;
      group.stances.push_back(std::move(stance));
    }
    if (group.reach.from <= group.reach.to) {
      anchors.groups.push_back(std::move(group));
      return;
    }
    anchors.standing = anchors.standing + group.least;
    for (std::size_t index = 0; index < group.pieces.size(); ++index)
      anchors.stations[group.pieces[index]] = group.stances[0].stations[index];
  }

  // Calls visit(cost, stations) for all that the pieces of a group may do together and that costs at most `most`, in
  // ascending order of stations.
  template <typename Visit> void forEachCombination(const Group& group, const Weight& most, Visit visit) const {
    std::vector<Mark> stations(group.pieces.size());
    combine(group, most, 0, {}, stations, visit);
  }

  template <typename Visit>
  void combine(const Group& group, const Weight& most, std::size_t index, const Weight& cost,
               std::vector<Mark>& stations, Visit& visit) const {
    if (index == group.pieces.size()) {
      visit(cost, stations);
      return;
    }
    for (const Candidate& candidate : candidates[group.pieces[index]]) {
      stations[index] = candidate.station;
      const Weight sum = cost + candidate.cost + distancesTo(group, index, stations);
      if (!isNever(sum) && !(most < sum))
        combine(group, most, index + 1, sum, stations, visit);
    }
  }

  // Cost of the distances between the piece at `index` and those before it.
  Weight distancesTo(const Group& group, std::size_t index, const std::vector<Mark>& stations) const {
    const auto placed = [&](int piece) -> std::optional<Mark> {
      for (std::size_t before = 0; before <= index; ++before)
        if (group.pieces[before] == piece)
          return stations[before];
      return std::nullopt;
    };
    const int piece = group.pieces[index];
    Weight cost;
    for (const Distance* distance : open) {
      if (distance->left != piece && distance->right != piece)
        continue;
      const std::optional<Mark> left = placed(distance->left);
      const std::optional<Mark> right = placed(distance->right);
      if (!left || !right)
        continue;
      const Weight here = weightOf(*distance, *right - *left, problem.countWatch);
      if (isNever(here))
        return kNever;
      cost = cost + here;
    }
    return cost;
  }

  void keep(const Group& group, const Weight& cost, const std::vector<Mark>& stations,
            std::map<std::vector<Effect>, Stance>& kinds) const {
    Row row;
    if (group.reach.from <= group.reach.to) {
      row = Row(group.reach, problem.depthOptions);
      for (std::size_t index = 0; index < stations.size(); ++index)
        for (const Beside& beside : problem.besides)
          if (beside.anchored == group.pieces[index])
            layBeside(row, beside, stations[index]);
      forgetWhereNoBolt(row);
    }
    std::vector<Effect> effects = std::move(row.effects);
    row.effects.clear();
    // Combinations come in ascending order of stations, so the first of equal cost is the leftmost.
    const auto [kind, isNew] = kinds.try_emplace(std::move(effects), Stance{cost, stations, row});
    if (!isNew && cost < kind->second.cost)
      kind->second = {cost, stations, row};
  }

  void forgetWhereNoBolt(Row& row) const {
    for (Mark station = row.stretch.from; station <= row.stretch.to; ++station)
      for (int option = 0; option < row.options; ++option)
        if (Effect& effect = row.at(station, option); effect != 0 && !optionMayStand(station, option))
          effect = 0;
  }

  bool optionMayStand(Mark station, int option) const {
    return std::any_of(anchors.grounds.begin(), anchors.grounds.end(), [&](const Row& ground) {
      return ground.holds(station) && ground.at(station, option) != kBlocked;
    });
  }

  const Problem& problem;
  Weight above;
  std::vector<Candidates> candidates;
  std::vector<const Distance*> open;
  Anchors anchors;
};

} // namespace

Anchors sortAnchors(const Problem& problem, const Weight& above) {
  return Sorting(problem, above).sorted();
}

} // namespace sillwright::sequence
