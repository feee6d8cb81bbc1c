#include "core/refit/sequence_anchors.h"

#include <algorithm>
#include <map>
#include <numeric>

namespace sillwright::sequence {
namespace {

struct Candidate {
  Mark station;
  Weight cost;
};
using Candidates = std::vector<Candidate>;

bool blocks(const Blocked& interval, Mark at) {
  return at > interval.from && at < interval.to;
}

bool pays(const Toll& toll, Mark at) {
  return toll.closed ? at >= toll.from && at <= toll.to : at > toll.from && at < toll.to;
}

Effect effectOf(const Toll& toll, bool countWatch) {
  return toll.kind == Kind::Ask ? kAsk : countWatch ? kWatch : 0;
}

bool allows(const Distance& distance, Mark difference) {
  return std::any_of(distance.allowed.begin(), distance.allowed.end(),
                     [&](const Stretch& stretch) { return difference >= stretch.from && difference <= stretch.to; });
}

Weight weightOf(const Distance& distance, Mark difference, bool countWatch) {
  if (!allows(distance, difference))
    return kNever;
  Effect effect = 0;
  for (const Toll& toll : distance.tolls)
    if (pays(toll, difference))
      effect += effectOf(toll, countWatch);
  return sequence::weightOf(effect);
}

Weight movementOf(const Anchored& piece, Mark station) {
  if (!piece.reference)
    return {};
  const Mark moved = std::abs(station - *piece.reference);
  return sequence::weightOf(0, 0, piece.set && moved > 0 ? 1 : 0, 0, moved);
}

Candidates candidatesOf(const Anchored& piece, bool countWatch) {
  Stretch stretch{std::max(piece.own.from, piece.outermost.from), std::min(piece.own.to, piece.outermost.to)};
  if (piece.fixed)
    stretch = {std::max(stretch.from, *piece.reference), std::min(stretch.to, *piece.reference)};
  Candidates candidates;
  for (Mark station = stretch.from; station <= stretch.to; ++station)
    if (const Effect effect = effectOf(piece.ground, station, countWatch); effect != kBlocked)
      candidates.push_back({station, sequence::weightOf(effect) + movementOf(piece, station)});
  return candidates;
}

// Makes distances to pieces with one mark a matter of the other piece alone, until no further piece has come to one
// mark. Returns the distances that are left.
std::vector<const Distance*> settle(const Problem& problem, std::vector<Candidates>& candidates) {
  std::vector<const Distance*> open;
  for (const Distance& distance : problem.distances)
    open.push_back(&distance);
  const auto settles = [&](const Distance* distance) {
    Candidates& left = candidates[distance->left];
    Candidates& right = candidates[distance->right];
    if (left.size() > 1 && right.size() > 1)
      return false;
    const bool leftStays = left.size() <= 1;
    const Candidates& still = leftStays ? left : right;
    Candidates& other = leftStays ? right : left;
    if (still.empty())
      return true;
    for (Candidate& candidate : other) {
      const Mark difference = candidate.station - still[0].station;
      candidate.cost = candidate.cost + weightOf(*distance, leftStays ? difference : -difference, problem.countWatch);
    }
    std::erase_if(other, [](const Candidate& candidate) { return isNever(candidate.cost); });
    return true;
  };
  while (std::erase_if(open, settles) > 0)
    ;
  return open;
}

// Whether the distance says anything, as far as the outermost candidates let the difference go.
bool matters(const Distance& distance, const std::vector<Candidates>& candidates) {
  const Candidates& left = candidates[distance.left];
  const Candidates& right = candidates[distance.right];
  const Mark least = right.front().station - left.back().station;
  const Mark most = right.back().station - left.front().station;
  const bool always = std::any_of(distance.allowed.begin(), distance.allowed.end(),
                                  [&](const Stretch& stretch) { return stretch.from <= least && stretch.to >= most; });
  return !always || std::any_of(distance.tolls.begin(), distance.tolls.end(),
                                [&](const Toll& toll) { return toll.from <= most && toll.to >= least; });
}

class Sorting {
public:
  explicit Sorting(const Problem& givenProblem) : problem(givenProblem) {}

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
    std::vector<Mark> stations(group.pieces.size());
    std::map<std::vector<Effect>, Stance> kinds;
    combine(group, 0, {}, stations, kinds);
    if (kinds.empty()) {
      anchors.possible = false;
      return;
    }
    group.least = kNever;
    for (auto& [effects, stance] : kinds) {
      stance.effects.effects = effects;
      group.least = std::min(group.least, stance.cost);
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

  void combine(const Group& group, std::size_t index, Weight cost, std::vector<Mark>& stations,
               std::map<std::vector<Effect>, Stance>& kinds) const {
    if (index == group.pieces.size()) {
      keep(group, cost, stations, kinds);
      return;
    }
    for (const Candidate& candidate : candidates[group.pieces[index]]) {
      stations[index] = candidate.station;
      const Weight sum = cost + candidate.cost + distancesTo(group, index, stations);
      if (!isNever(sum))
        combine(group, index + 1, sum, stations, kinds);
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
  std::vector<Candidates> candidates;
  std::vector<const Distance*> open;
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

Effect effectOf(const Ground& ground, Mark at, bool countWatch) {
  Effect effect = 0;
  for (const Blocked& interval : ground.blocked)
    if (blocks(interval, at))
      return kBlocked;
  for (const Toll& toll : ground.tolls)
    if (pays(toll, at))
      effect += effectOf(toll, countWatch);
  return effect;
}

Anchors sortAnchors(const Problem& problem) {
  return Sorting(problem).sorted();
}

} // namespace sillwright::sequence
