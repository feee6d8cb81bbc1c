#include "core/refit/sequence_stances.h"

#include <algorithm>
#include <array>

namespace sillwright::sequence {
namespace {

// Some pieces of the group placed.
struct Partial {
  Weight cost;
  std::vector<Mark> stations;
  std::vector<Effect> effects; // on bolts, where they may stand, and then on every candidate of the pieces not placed
  std::array<std::uint64_t, 16> sums{}; // of equal shares of the effects, to tell most pairs apart quickly

  void addUp() {
    for (std::size_t share = 0; share < sums.size(); ++share) {
      const std::size_t to = effects.size() * (share + 1) / sums.size();
      sums[share] = 0;
      for (std::size_t index = effects.size() * share / sums.size(); index < to; ++index)
        sums[share] += effects[index];
    }
  }
};

bool noWorse(const Partial& a, const Partial& b) {
  for (std::size_t share = 0; share < a.sums.size(); ++share)
    if (a.sums[share] > b.sums[share])
      return false;
  constexpr std::size_t step = 32;
  for (std::size_t from = 0; from < a.effects.size(); from += step) {
    const std::size_t to = std::min(from + step, a.effects.size());
    unsigned worse = 0;
    for (std::size_t index = from; index < to; ++index)
      worse |= static_cast<unsigned>(a.effects[index] > b.effects[index]);
    if (worse != 0)
      return false;
  }
  return true;
}

// Leaves out every one that another makes needless; of those alike one is kept.
std::vector<Partial> best(std::vector<Partial> all) {
  std::vector<std::pair<std::uint64_t, std::size_t>> order;
  for (std::size_t index = 0; index < all.size(); ++index) {
    all[index].addUp();
    std::uint64_t whole = 0;
    for (const std::uint64_t sum : all[index].sums)
      whole += sum;
    order.emplace_back(whole, index);
  }
  std::sort(order.begin(), order.end(), [&](const auto& a, const auto& b) {
    const Weight& one = all[a.second].cost;
    const Weight& other = all[b.second].cost;
    return one != other ? one < other : a < b;
  });
  std::vector<Partial> kept;
  for (const auto& [whole, index] : order)
    if (std::none_of(kept.begin(), kept.end(), [&](const Partial& other) { return noWorse(other, all[index]); }))
      kept.push_back(std::move(all[index]));
  return kept;
}

class Gathering {
public:
  Gathering(const Problem& givenProblem, const Anchors& givenAnchors, const Group& givenGroup, const Weight& givenMost)
      : problem(givenProblem), anchors(givenAnchors), group(givenGroup), most(givenMost) {
    if (reaches())
      findLive();
    for (const int piece : group.pieces)
      facing += anchors.candidates[piece].size();
  }

  std::vector<Stance> stances() {
    std::vector<Partial> partials(1);
    partials[0].effects.resize(live.size());
    for (std::size_t count = 0; count < group.pieces.size(); ++count)
      partials = best(withNext(partials, count));
    std::vector<Stance> stances;
    for (const Partial& partial : partials)
      stances.push_back({partial.cost, partial.stations, rowOf(partial)});
    return stances;
  }

private:
  bool reaches() const { return group.reach.from <= group.reach.to; }

  void findLive() {
    const Row row(group.reach, problem.depthOptions);
    for (const Row& ground : anchors.grounds)
      for (Mark station = std::max(group.reach.from, ground.stretch.from);
           station <= std::min(group.reach.to, ground.stretch.to); ++station)
        for (int option = 0; option < problem.depthOptions; ++option)
          if (ground.at(station, option) != kBlocked)
            live.push_back(row.index(station, option));
  }

  Row rowOf(const Partial& partial) const {
    if (!reaches())
      return {};
    Row row(group.reach, problem.depthOptions);
    for (std::size_t index = 0; index < live.size(); ++index)
      row.effects[live[index]] = partial.effects[index];
    return row;
  }

  // Effects of one piece at one of its candidates on bolts.
  std::vector<Effect> actingOf(int piece, Mark station) const {
    std::vector<Effect> acting(live.size());
    if (live.empty())
      return acting;
    Row row(group.reach, problem.depthOptions);
    for (const Beside& beside : problem.besides)
      if (beside.anchored == piece)
        for (int option = 0; option < problem.depthOptions; ++option)
          lay(row, option, beside.options[option], station, problem.countWatch);
    for (std::size_t index = 0; index < live.size(); ++index)
      acting[index] = row.effects[live[index]];
    return acting;
  }

  std::optional<Mark> placed(const std::vector<Mark>& stations, int piece) const {
    for (std::size_t index = 0; index < stations.size(); ++index)
      if (group.pieces[index] == piece)
        return stations[index];
    return std::nullopt;
  }

  // Least that the pieces from `count` on can cost by themselves.
  Weight leastFrom(std::size_t count) const {
    Weight least;
    for (; count < group.pieces.size(); ++count)
      least = least + leastOf(anchors.candidates[group.pieces[count]]);
    return least;
  }

  // Every partial with every candidate of the next piece.
  std::vector<Partial> withNext(const std::vector<Partial>& partials, std::size_t count) const {
    const Weight rest = leastFrom(count + 1);
    std::vector<Partial> longer;
    for (const Candidate& candidate : anchors.candidates[group.pieces[count]]) {
      const std::vector<Effect> acting = actingOf(group.pieces[count], candidate.station);
      for (const Partial& partial : partials) {
        const Weight cost = plus(partial.cost + candidate.cost, distancesOf(partial.stations, candidate.station));
        if (!isNever(cost) && !(most < cost + rest))
          longer.push_back(joined(partial, cost, candidate.station, acting));
      }
    }
    return longer;
  }

  Partial joined(const Partial& partial, const Weight& cost, Mark station, const std::vector<Effect>& acting) const {
    Partial next;
    next.cost = cost;
    next.stations.reserve(group.pieces.size());
    next.stations = partial.stations;
    next.stations.push_back(station);
    next.effects.reserve(live.size() + facing);
    next.effects.resize(live.size());
    for (std::size_t index = 0; index < live.size(); ++index)
      next.effects[index] = sum(partial.effects[index], acting[index]);
    faceOthers(next);
    return next;
  }

  // Cost of the distances between the next piece there and those placed.
  Weight distancesOf(const std::vector<Mark>& stations, Mark station) const {
    const int next = group.pieces[stations.size()];
    Weight cost;
    for (const Distance* distance : anchors.open) {
      if (distance->left != next && distance->right != next)
        continue;
      const bool isLeft = distance->left == next;
      if (const std::optional<Mark> other = placed(stations, isLeft ? distance->right : distance->left))
        cost =
            plus(cost, weightOf(effectOf(*distance, isLeft ? *other - station : station - *other, problem.countWatch)));
    }
    return cost;
  }

  // What each candidate of a piece not placed meets in a piece placed.
  void faceOthers(Partial& partial) const {
    for (const Distance* distance : anchors.open) {
      const std::optional<Mark> left = placed(partial.stations, distance->left);
      const std::optional<Mark> right = placed(partial.stations, distance->right);
      if (left.has_value() == right.has_value())
        continue;
      for (const Candidate& other : anchors.candidates[left ? distance->right : distance->left])
        partial.effects.push_back(
            effectOf(*distance, left ? other.station - *left : *right - other.station, problem.countWatch));
    }
  }

  const Problem& problem;
  const Anchors& anchors;
  const Group& group;
  Weight most;
  std::size_t facing = 0;        // most effects on candidates of pieces not placed
  std::vector<std::size_t> live; // places in a row of the reach where a bolt may stand
};

} // namespace

std::vector<Stance> stancesOf(const Problem& problem, const Anchors& anchors, const Group& group, const Weight& most) {
  return Gathering(problem, anchors, group, most).stances();
}

} // namespace sillwright::sequence
