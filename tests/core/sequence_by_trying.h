// The optimiser's oracle: tries every layout of a small problem. Written from the words of sequence.h, with nothing of
// the optimiser but its value types.
#pragma once

#include <algorithm>
#include <cstdlib>
#include <optional>
#include <tuple>

#include "core/refit/sequence.h"

namespace sillwright::sequence::trying {

struct Worth {
  Cost cost;
  Mark room = kMostRoom;
};

inline Cost operator+(const Cost& a, const Cost& b) {
  return {a.ask + b.ask, a.pieces + b.pieces, a.setMoved + b.setMoved, a.watch + b.watch, a.movement + b.movement};
}

inline std::optional<Worth> both(const std::optional<Worth>& a, const std::optional<Worth>& b) {
  if (!a || !b)
    return std::nullopt;
  return Worth{a->cost + b->cost, std::min(a->room, b->room)};
}

// How far a station or difference is from being blocked; negative inside.
inline Mark slackOf(const Blocked& blocked, Mark at) {
  if (blocked.from >= blocked.to)
    return kMostRoom;
  return std::max(blocked.from - at, at - blocked.to);
}

inline Cost tollsAt(const std::vector<Toll>& tolls, Mark at, bool countWatch) {
  Cost cost;
  for (const Toll& toll : tolls) {
    const Mark inset = toll.closed ? 0 : 1;
    if (at < toll.from + inset || at > toll.to - inset)
      continue;
    if (toll.kind == Kind::Ask)
      ++cost.ask;
    else if (countWatch)
      ++cost.watch;
  }
  return cost;
}

inline std::optional<Worth> onGround(const Ground& ground, Mark at, bool slides, bool countWatch) {
  Worth worth{tollsAt(ground.tolls, at, countWatch)};
  for (const Blocked& blocked : ground.blocked) {
    const Mark slack = slackOf(blocked, at);
    if (slack < 0)
      return std::nullopt;
    if (slides)
      worth.room = std::min(worth.room, slack);
  }
  return worth;
}

inline bool slides(const Anchored& piece) {
  return !piece.fixed && piece.own.from != piece.own.to;
}

inline std::optional<Worth> alone(const Anchored& piece, Mark at, bool countWatch) {
  if (at < piece.own.from || at > piece.own.to || at < piece.outermost.from || at > piece.outermost.to)
    return std::nullopt;
  if (piece.fixed && at != *piece.reference)
    return std::nullopt;
  std::optional<Worth> worth = onGround(piece.ground, at, slides(piece), countWatch);
  if (!worth)
    return worth;
  if (slides(piece))
    worth->room = std::min({worth->room, at - piece.own.from, piece.own.to - at});
  if (piece.reference && at != *piece.reference) {
    worth->cost.movement += std::abs(at - *piece.reference);
    worth->cost.setMoved += piece.set ? 1 : 0;
  }
  return worth;
}

inline std::optional<Worth> apart(const Problem& problem, const Distance& distance, const std::vector<Mark>& stations) {
  const Mark difference = stations[distance.right] - stations[distance.left];
  Mark slack = -1;
  for (const Stretch& stretch : distance.allowed)
    slack = std::max(slack, std::min(difference - stretch.from, stretch.to - difference));
  if (slack < 0)
    return std::nullopt;
  Worth worth{tollsAt(distance.tolls, difference, problem.countWatch)};
  if (slides(problem.anchored[distance.left]) || slides(problem.anchored[distance.right]))
    worth.room = std::min(worth.room, slack);
  return worth;
}

struct AnchoredTry {
  std::vector<Mark> stations;
  Worth worth;
};

inline void tryAnchored(const Problem& problem, std::vector<Mark>& stations, const Worth& soFar,
                        std::vector<AnchoredTry>& tries) {
  const std::size_t index = stations.size();
  if (index == problem.anchored.size()) {
    std::optional<Worth> worth = soFar;
    for (const Distance& distance : problem.distances)
      worth = worth ? both(worth, apart(problem, distance, stations)) : worth;
    if (worth)
      tries.push_back({stations, *worth});
    return;
  }
  for (Mark at = problem.anchored[index].outermost.from; at <= problem.anchored[index].outermost.to; ++at)
    if (const auto worth = both(soFar, alone(problem.anchored[index], at, problem.countWatch))) {
      stations.push_back(at);
      tryAnchored(problem, stations, *worth, tries);
      stations.pop_back();
    }
}

using Bolts = std::vector<PlacedBolt>;

// Every way to match bolts `bolt`… with references `used`…; keeps the cheapest, then the lowest references.
inline void tryMatching(const SillPiece& sill, Bolts& bolts, std::size_t bolt, int used, const Cost& soFar,
                        std::optional<std::pair<Cost, Bolts>>& best) {
  const int references = static_cast<int>(sill.reference.size());
  const auto removing = [&](int from, int to) -> std::optional<Cost> {
    Cost cost = soFar;
    for (int reference = from; reference < to; ++reference) {
      if (sill.reference[reference].fixed)
        return std::nullopt;
      ++cost.pieces;
      cost.setMoved += sill.reference[reference].set ? 1 : 0;
    }
    return cost;
  };
  if (bolt == bolts.size()) {
    const std::optional<Cost> cost = removing(used, references);
    const auto lowest = [](const Bolts& list) {
      std::vector<int> order;
      for (const PlacedBolt& placed : list)
        order.push_back(placed.reference.value_or(1000));
      return order;
    };
    if (cost && (!best || *cost < best->first || (*cost == best->first && lowest(bolts) < lowest(best->second))))
      best = {*cost, bolts};
    return;
  }
  bolts[bolt].reference.reset();
  tryMatching(sill, bolts, bolt + 1, used, soFar + Cost{.pieces = 1}, best);
  for (int reference = used; reference < references; ++reference) {
    const ReferenceBolt& old = sill.reference[reference];
    if (old.shift[bolts[bolt].option] == kFar)
      continue;
    const Mark moved = std::abs(bolts[bolt].station - old.station) + old.shift[bolts[bolt].option];
    std::optional<Cost> cost = removing(used, reference);
    if (!cost || (old.fixed && moved != 0))
      continue;
    bolts[bolt].reference = reference;
    const Cost move{.setMoved = moved != 0 && old.set ? 1 : 0, .movement = moved};
    tryMatching(sill, bolts, bolt + 1, reference + 1, *cost + move, best);
  }
  bolts[bolt].reference.reset();
}

inline std::optional<Worth> consecutive(const Problem& problem, const PlacedBolt& left, const PlacedBolt& right) {
  const Mark difference = right.station - left.station;
  Worth worth;
  for (const LeastGap& gap : problem.leastGaps)
    if (gap.left == left.option && gap.right == right.option) {
      if (difference < gap.least)
        return std::nullopt;
      worth.room = std::min(worth.room, difference - gap.least);
    }
  return difference < 1 ? std::nullopt : std::optional(worth);
}

inline std::optional<Worth> neighbours(const SillPiece& sill, Mark left, Mark right, bool countWatch) {
  Worth worth{tollsAt(sill.gapTolls, right - left, countWatch)};
  for (const MostGap& gap : sill.most)
    if (left < gap.to && right > gap.from) {
      if (right - left > gap.most)
        return std::nullopt;
      worth.room = std::min(worth.room, gap.most - (right - left));
    }
  return worth;
}

struct BoltTry {
  Bolts bolts;
  Worth worth;
};

inline std::optional<Worth> sillOf(const SillPiece& sill, const Bolts& bolts) {
  if (static_cast<int>(bolts.size()) < sill.least)
    return std::nullopt;
  Worth worth;
  if (bolts.empty())
    return worth;
  if (sill.first)
    worth.room = std::min(worth.room, sill.first->farthest - (bolts.front().station - sill.stretch.from));
  if (sill.last)
    worth.room = std::min(worth.room, sill.last->farthest - (sill.stretch.to - bolts.back().station));
  return worth.room < 0 ? std::nullopt : std::optional(worth);
}

// All ways to fill one sill piece, from the bolts so far on.
inline void fillSill(const Problem& problem, int which, Bolts& bolts, const Worth& soFar, std::vector<BoltTry>& tries) {
  const SillPiece& sill = problem.sillPieces[which];
  if (const auto worth = both(soFar, sillOf(sill, bolts))) {
    std::optional<std::pair<Cost, Bolts>> best;
    Bolts copy = bolts;
    tryMatching(sill, copy, 0, 0, {}, best);
    if (best)
      tries.push_back({best->second, {worth->cost + best->first, worth->room}});
  }
  for (Mark at = bolts.empty() ? sill.stretch.from : bolts.back().station + 1; at <= sill.stretch.to; ++at)
    for (int option = 0; option < problem.depthOptions; ++option) {
      const PlacedBolt bolt{which, at, option, std::nullopt};
      std::optional<Worth> worth = both(soFar, onGround(sill.options[option], at, true, problem.countWatch));
      if (worth)
        worth->room = std::min({worth->room, at - sill.stretch.from, sill.stretch.to - at});
      if (!bolts.empty()) {
        worth = both(worth, consecutive(problem, bolts.back(), bolt));
        worth = both(worth, neighbours(sill, bolts.back().station, at, problem.countWatch));
      }
      if (!worth)
        continue;
      bolts.push_back(bolt);
      fillSill(problem, which, bolts, *worth, tries);
      bolts.pop_back();
    }
}

inline std::vector<BoltTry> tryBolts(const Problem& problem) {
  std::vector<BoltTry> all{{}};
  for (int which = 0; which < static_cast<int>(problem.sillPieces.size()); ++which) {
    std::vector<BoltTry> here;
    Bolts bolts;
    fillSill(problem, which, bolts, {}, here);
    std::vector<BoltTry> longer;
    for (const BoltTry& before : all)
      for (const BoltTry& after : here) {
        std::optional<Worth> worth = both(before.worth, after.worth);
        if (!before.bolts.empty() && !after.bolts.empty())
          worth = both(worth, consecutive(problem, before.bolts.back(), after.bolts.front()));
        if (!worth)
          continue;
        Bolts joined = before.bolts;
        joined.insert(joined.end(), after.bolts.begin(), after.bolts.end());
        longer.push_back({joined, *worth});
      }
    all = std::move(longer);
  }
  return all;
}

inline std::optional<Worth> besides(const Problem& problem, const Bolts& bolts, const std::vector<Mark>& stations) {
  std::optional<Worth> worth = Worth{};
  for (const Beside& beside : problem.besides)
    for (const PlacedBolt& bolt : bolts)
      if (worth)
        worth = both(worth, onGround(beside.options[bolt.option], bolt.station - stations[beside.anchored], true,
                                     problem.countWatch));
  return worth;
}

// In order of preference; negative room first of all makes more room better.
inline auto rank(const Layout& layout) {
  std::vector<std::tuple<Mark, int>> bolts;
  for (const PlacedBolt& bolt : layout.bolts)
    bolts.emplace_back(bolt.station, bolt.option);
  return std::make_tuple(layout.cost, -layout.room, bolts, layout.anchored);
}

// The best layout of all, without its list of removed bolts.
inline std::optional<Layout> bestByTrying(const Problem& problem) {
  std::vector<AnchoredTry> anchored;
  std::vector<Mark> stations;
  tryAnchored(problem, stations, {}, anchored);
  if (anchored.empty())
    return std::nullopt;
  std::optional<Layout> best;
  for (const BoltTry& bolts : tryBolts(problem))
    for (const AnchoredTry& pieces : anchored) {
      const Cost atLeast = bolts.worth.cost + pieces.worth.cost;
      if (best && atLeast > best->cost)
        continue;
      const auto worth = both(both(bolts.worth, pieces.worth), besides(problem, bolts.bolts, pieces.stations));
      if (!worth)
        continue;
      Layout layout{pieces.stations, bolts.bolts, {}, worth->cost, worth->room};
      if (!best || rank(layout) < rank(*best))
        best = std::move(layout);
    }
  return best;
}

// Whether there is any layout, by trying them all.
inline bool anyByTrying(const Problem& problem) {
  return bestByTrying(problem).has_value();
}

} // namespace sillwright::sequence::trying
