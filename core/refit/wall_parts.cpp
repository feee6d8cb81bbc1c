#include "core/refit/wall_parts.h"

#include <algorithm>
#include <numeric>

namespace sillwright {

namespace {

using sequence::Mark;
using sequence::Stretch;

// Things that belong together: sill pieces first, then anchored pieces.
class Together {
public:
  explicit Together(std::size_t things) : of_(things) { std::iota(of_.begin(), of_.end(), std::size_t{0}); }
  std::size_t group(std::size_t thing) {
    while (of_[thing] != thing)
      thing = of_[thing] = of_[of_[thing]];
    return thing;
  }
  void join(std::size_t a, std::size_t b) { of_[group(b)] = group(a); }

private:
  std::vector<std::size_t> of_;
};

bool mayHave(const sequence::SillPiece& sill, std::size_t option) {
  const auto& blocked = sill.options[option].blocked;
  return std::none_of(blocked.begin(), blocked.end(), [](const sequence::Blocked& each) {
    return each.need < 0 && each.from == -sequence::kFar && each.to == sequence::kFar;
  });
}

// All differences that a bolt beside the piece has anything to do with; from > to: none.
Stretch reachOf(const sequence::Ground& ground) {
  Stretch reach{sequence::kFar, -sequence::kFar};
  const auto take = [&](const auto& each) { reach = {std::min(reach.from, each.from), std::max(reach.to, each.to)}; };
  std::for_each(ground.blocked.begin(), ground.blocked.end(), take);
  std::for_each(ground.tolls.begin(), ground.tolls.end(), take);
  return reach;
}

bool meet(const sequence::SillPiece& sill, const sequence::Anchored& piece, const sequence::Beside& beside) {
  for (std::size_t option = 0; option < beside.options.size(); ++option) {
    const Stretch reach = reachOf(beside.options[option]);
    if (reach.from > reach.to || !mayHave(sill, option))
      continue;
    if (piece.outermost.from + reach.from <= sill.stretch.to && piece.outermost.to + reach.to >= sill.stretch.from)
      return true;
  }
  return false;
}

Together togetherIn(const sequence::Problem& problem) {
  const std::size_t sills = problem.sillPieces.size();
  Together together(sills + problem.anchored.size());
  Mark least = 1;
  for (const sequence::LeastGap& gap : problem.leastGaps)
    least = std::max(least, gap.least);
  for (std::size_t i = 0; i + 1 < sills; ++i)
    if (problem.sillPieces[i + 1].stretch.from - problem.sillPieces[i].stretch.to < 2 * least)
      together.join(i, i + 1);
  for (const sequence::Distance& distance : problem.distances)
    together.join(sills + distance.left, sills + distance.right);
  for (const sequence::Beside& beside : problem.besides)
    for (std::size_t i = 0; i < sills; ++i)
      if (meet(problem.sillPieces[i], problem.anchored[beside.anchored], beside))
        together.join(i, sills + beside.anchored);
  return together;
}

// What is picked of the whole, under new numbers; -1 for what is not.
struct Numbers {
  std::vector<int> anchored;
  std::vector<int> options;
};

using Picked = std::vector<bool>; // sill pieces, then anchored pieces

class Part {
public:
  Part(const WallProblem& whole, const Picked& picked) : whole_(whole), problem_(whole.problem), picked_(picked) {}

  WallProblem take() {
    part_.wall = whole_.wall;
    part_.added = whole_.added;
    part_.needs = whole_.needs;
    part_.makes = whole_.makes;
    part_.problem.countWatch = problem_.countWatch;
    takeOptions();
    takeAnchored();
    takeSills();
    takePairs();
    return std::move(part_);
  }

private:
  bool isIn(std::size_t thing) const { return picked_[thing]; }
  std::size_t sills() const { return problem_.sillPieces.size(); }

  void takeOptions() {
    numbers_.options.assign(problem_.depthOptions, -1);
    for (int option = 0; option < problem_.depthOptions; ++option)
      for (std::size_t i = 0; i < sills(); ++i)
        if (numbers_.options[option] < 0 && isIn(i) && mayHave(problem_.sillPieces[i], option)) {
          numbers_.options[option] = static_cast<int>(part_.stands.size());
          if (static_cast<std::size_t>(option) < whole_.stands.size())
            part_.stands.push_back(whole_.stands[option]);
        }
    part_.problem.depthOptions = std::max(1, static_cast<int>(part_.stands.size()));
  }

  template <class Item> std::vector<Item> ofOptions(const std::vector<Item>& all) const {
    std::vector<Item> some(part_.problem.depthOptions);
    for (std::size_t option = 0; option < all.size(); ++option)
      if (numbers_.options[option] >= 0)
        some[numbers_.options[option]] = all[option];
    return some;
  }

  void takeAnchored() {
    numbers_.anchored.assign(problem_.anchored.size(), -1);
    for (std::size_t i = 0; i < problem_.anchored.size(); ++i) {
      if (!isIn(sills() + i))
        continue;
      numbers_.anchored[i] = static_cast<int>(part_.anchored.size());
      part_.anchored.push_back(whole_.anchored[i]);
      part_.problem.anchored.push_back(problem_.anchored[i]);
    }
  }

  void takeSills() {
    for (std::size_t i = 0; i < sills(); ++i) {
      if (!isIn(i))
        continue;
      sequence::SillPiece sill = problem_.sillPieces[i];
      sill.options = ofOptions(sill.options);
      for (sequence::ReferenceBolt& bolt : sill.reference)
        bolt.shift = ofOptions(bolt.shift);
      part_.problem.sillPieces.push_back(std::move(sill));
      part_.references.push_back(whole_.references[i]);
    }
  }

  void takePairs() {
    for (sequence::Distance distance : problem_.distances) {
      distance.left = numbers_.anchored[distance.left];
      distance.right = numbers_.anchored[distance.right];
      if (distance.left >= 0 && distance.right >= 0)
        part_.problem.distances.push_back(std::move(distance));
    }
    for (sequence::LeastGap gap : problem_.leastGaps) {
      gap.left = numbers_.options[gap.left];
      gap.right = numbers_.options[gap.right];
      if (gap.left >= 0 && gap.right >= 0)
        part_.problem.leastGaps.push_back(gap);
    }
    for (const sequence::Beside& beside : problem_.besides)
      if (const int index = numbers_.anchored[beside.anchored]; index >= 0)
        part_.problem.besides.push_back({index, ofOptions(beside.options)});
  }

  const WallProblem& whole_;
  const sequence::Problem& problem_;
  const Picked& picked_;
  Numbers numbers_;
  WallProblem part_;
};

Mark leftOf(const WallProblem& part) {
  Mark left = sequence::kFar;
  for (const sequence::SillPiece& sill : part.problem.sillPieces)
    left = std::min(left, sill.stretch.from);
  for (const sequence::Anchored& piece : part.problem.anchored)
    left = std::min(left, piece.outermost.from);
  return left;
}

} // namespace

std::vector<WallProblem> partsOf(const WallProblem& whole) {
  Together together = togetherIn(whole.problem);
  std::vector<WallProblem> parts;
  const std::size_t things = whole.problem.sillPieces.size() + whole.problem.anchored.size();
  for (std::size_t thing = 0; thing < things; ++thing) {
    if (together.group(thing) != thing)
      continue;
    Picked picked(things);
    for (std::size_t other = 0; other < things; ++other)
      picked[other] = together.group(other) == thing;
    parts.push_back(Part(whole, picked).take());
  }
  std::stable_sort(parts.begin(), parts.end(),
                   [](const WallProblem& a, const WallProblem& b) { return leftOf(a) < leftOf(b); });
  return parts;
}

std::vector<WallProblem> smallerPartsOf(const WallProblem& part) {
  const sequence::Problem& problem = part.problem;
  const std::size_t sills = problem.sillPieces.size(), things = sills + problem.anchored.size();
  std::vector<WallProblem> smaller;
  for (std::size_t i = 0; i < problem.anchored.size(); ++i) { // a piece and its column
    Picked picked(things);
    picked[sills + i] = true;
    for (const sequence::Distance& distance : problem.distances)
      if (static_cast<std::size_t>(distance.right) == i && distance.need >= 0)
        picked[sills + distance.left] = true;
    smaller.push_back(Part(part, picked).take());
  }
  for (std::size_t i = 0; i < sills; ++i) { // a piece of sill with its bolts
    Picked picked(things);
    picked[i] = true;
    smaller.push_back(Part(part, picked).take());
  }
  for (std::size_t i = 0; i < sills; ++i) { // and with what stands beside them
    Picked picked(things);
    picked[i] = true;
    for (const sequence::Beside& beside : problem.besides)
      if (meet(problem.sillPieces[i], problem.anchored[beside.anchored], beside))
        picked[sills + beside.anchored] = true;
    smaller.push_back(Part(part, picked).take());
  }
  return smaller;
}

} // namespace sillwright
