#include "core/refit/sequence_settle.h"

#include <algorithm>

namespace sillwright::sequence {
namespace {

// Matches the bolts of one sill piece with its reference: cheapest, then each bolt in order the lowest it can.
class Matching {
public:
  Matching(const Steps& givenSteps, int givenSill, std::vector<PlacedBolt*> givenBolts)
      : steps(givenSteps), which(givenSill), bolts(std::move(givenBolts)), sill(steps.sills[which]),
        least((bolts.size() + 1) * (sill.references + 1), kNever) {
    for (std::size_t bolt = bolts.size() + 1; bolt-- > 0;)
      for (int used = sill.references; used >= 0; --used)
        at(bolt, used) = leastFrom(bolt, used);
  }

  void settle() {
    int used = 0;
    for (std::size_t bolt = 0; bolt < bolts.size(); ++bolt)
      used = settleOne(bolt, used);
  }

private:
  Weight& at(std::size_t bolt, int used) { return least[bolt * (sill.references + 1) + used]; }

  Weight leastFrom(std::size_t bolt, int used) {
    if (bolt == bolts.size())
      return sill.removalsFrom[used];
    Weight best = plus(weightOf(0, 1, 0, 0, 0), at(bolt + 1, used));
    if (used < sill.references) {
      best = std::min(best, plus(matching(bolt, used), at(bolt + 1, used + 1)));
      best = std::min(best, plus(sill.removal[used], at(bolt, used + 1)));
    }
    return best;
  }

  Weight matching(std::size_t bolt, int reference) const {
    return steps.matching(which, reference, bolts[bolt]->station, bolts[bolt]->option);
  }

  int settleOne(std::size_t bolt, int used) {
    const Weight whole = at(bolt, used);
    Weight removals;
    for (int reference = used; reference < sill.references && !isNever(removals); ++reference) {
      if (plus(plus(removals, matching(bolt, reference)), at(bolt + 1, reference + 1)) == whole) {
        bolts[bolt]->reference = reference;
        return reference + 1;
      }
      removals = plus(removals, sill.removal[reference]);
    }
    return used;
  }

  const Steps& steps;
  int which;
  std::vector<PlacedBolt*> bolts;
  const SillSteps& sill;
  std::vector<Weight> least; // by bolt, references used
};

// Pieces that distances connect, with the bolts known: what each candidate costs is known, and only pairs are left.
class Standing {
public:
  Standing(const Steps& givenSteps, const std::vector<PlacedBolt>& givenBolts, std::vector<int> givenPieces)
      : steps(givenSteps), bolts(givenBolts), pieces(std::move(givenPieces)) {
    for (const int piece : pieces)
      candidates.push_back(costsOf(piece));
    leastFrom.resize(pieces.size() + 1);
    for (std::size_t index = pieces.size(); index-- > 0;)
      leastFrom[index] = plus(leastFrom[index + 1], leastOf(candidates[index]));
  }

  void settle(std::vector<Mark>& stations) {
    findLeast(0, {}, stations);
    findLeftmost(0, {}, stations);
  }

private:
  Candidates costsOf(int piece) const {
    Candidates costs;
    for (const Candidate& candidate : steps.anchors.candidates[piece]) {
      Weight cost = candidate.cost;
      for (const Beside& beside : steps.problem->besides)
        if (beside.anchored == piece)
          for (const PlacedBolt& bolt : bolts)
            cost = plus(cost, weightOf(effectOf(beside.options[bolt.option], bolt.station - candidate.station,
                                                steps.problem->countWatch)));
      if (!isNever(cost))
        costs.push_back({candidate.station, cost});
    }
    return costs;
  }

  // Of the distances between a piece and those before it.
  Weight distancesTo(std::size_t index, const std::vector<Mark>& stations) const {
    const auto isBefore = [&](int piece) {
      return std::find(pieces.begin(), pieces.begin() + static_cast<std::ptrdiff_t>(index), piece) !=
             pieces.begin() + static_cast<std::ptrdiff_t>(index);
    };
    Weight cost;
    for (const Distance* distance : steps.anchors.open)
      if ((distance->left == pieces[index] && isBefore(distance->right)) ||
          (distance->right == pieces[index] && isBefore(distance->left)))
        cost = plus(cost, weightOf(effectOf(*distance, stations[distance->right] - stations[distance->left],
                                            steps.problem->countWatch)));
    return cost;
  }

  void findLeast(std::size_t index, const Weight& cost, std::vector<Mark>& stations) {
    if (index == pieces.size()) {
      least = std::min(least, cost);
      return;
    }
    for (const Candidate& candidate : candidates[index]) {
      const Weight alone = plus(cost, candidate.cost);
      if (!(plus(alone, leastFrom[index + 1]) < least))
        continue;
      stations[pieces[index]] = candidate.station;
      const Weight here = plus(alone, distancesTo(index, stations));
      if (plus(here, leastFrom[index + 1]) < least)
        findLeast(index + 1, here, stations);
    }
  }

  // Candidates go from left to right, so the first that costs the least is it.
  bool findLeftmost(std::size_t index, const Weight& cost, std::vector<Mark>& stations) const {
    if (index == pieces.size())
      return true;
    for (const Candidate& candidate : candidates[index]) {
      const Weight alone = plus(cost, candidate.cost);
      if (least < plus(alone, leastFrom[index + 1]))
        continue;
      stations[pieces[index]] = candidate.station;
      const Weight here = plus(alone, distancesTo(index, stations));
      if (!(least < plus(here, leastFrom[index + 1])) && findLeftmost(index + 1, here, stations))
        return true;
    }
    return false;
  }

  const Steps& steps;
  const std::vector<PlacedBolt>& bolts;
  std::vector<int> pieces; // ascending
  std::vector<Candidates> candidates;
  std::vector<Weight> leastFrom; // by index: least of it and all after it, by themselves
  Weight least = kNever;
};

// Pieces with a choice, those together that distances connect; ascending.
std::vector<std::vector<int>> connected(const Anchors& anchors) {
  std::vector<int> of(anchors.candidates.size());
  for (std::size_t piece = 0; piece < of.size(); ++piece)
    of[piece] = static_cast<int>(piece);
  for (const Distance* distance : anchors.open) {
    const int from = of[distance->left];
    const int to = of[distance->right];
    std::replace(of.begin(), of.end(), std::max(from, to), std::min(from, to));
  }
  std::vector<std::vector<int>> sets(of.size());
  for (std::size_t piece = 0; piece < of.size(); ++piece)
    if (anchors.candidates[piece].size() > 1)
      sets[of[piece]].push_back(static_cast<int>(piece));
  std::erase_if(sets, [](const std::vector<int>& set) { return set.empty(); });
  return sets;
}

} // namespace

void matchReferences(const Steps& steps, Layout& layout) {
  for (int which = 0; which < static_cast<int>(steps.sills.size()); ++which) {
    std::vector<PlacedBolt*> bolts;
    for (PlacedBolt& bolt : layout.bolts)
      if (bolt.sillPiece == which)
        bolts.push_back(&bolt);
    Matching(steps, which, bolts).settle();
    for (int reference = 0; reference < steps.sills[which].references; ++reference)
      if (std::none_of(bolts.begin(), bolts.end(),
                       [&](const PlacedBolt* bolt) { return bolt->reference == reference; }))
        layout.removed.push_back({which, reference});
  }
}

void settleAnchors(const Steps& steps, Layout& layout) {
  layout.anchored.clear();
  for (const Candidates& candidates : steps.anchors.candidates)
    layout.anchored.push_back(candidates[0].station);
  for (std::vector<int>& pieces : connected(steps.anchors))
    Standing(steps, layout.bolts, std::move(pieces)).settle(layout.anchored);
}

} // namespace sillwright::sequence
