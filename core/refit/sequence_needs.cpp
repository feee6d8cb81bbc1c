// The same problem with needs dropped, relaxed or tightened.
#include <algorithm>

#include "core/refit/sequence.h"

namespace sillwright::sequence {
namespace {

bool slides(const Anchored& piece) {
  return !piece.fixed && piece.own.from != piece.own.to;
}

void grow(std::vector<Blocked>& blocked, Mark by) {
  std::erase_if(blocked, [](const Blocked& interval) { return interval.from >= interval.to; });
  for (Blocked& interval : blocked)
    interval = {interval.from - by, interval.to + by, interval.need};
}

void shrink(std::vector<Stretch>& stretches, Mark by) {
  for (Stretch& stretch : stretches)
    stretch = {stretch.from + by, stretch.to - by};
  std::erase_if(stretches, [](const Stretch& stretch) { return stretch.from > stretch.to; });
}

void tighten(Anchored& piece, Mark by) {
  if (!slides(piece))
    return;
  piece.own = {piece.own.from + by, piece.own.to - by};
  grow(piece.ground.blocked, by);
}

void keepFromEnds(Ground& ground, const Stretch& stretch, Mark by) {
  if (by == 0)
    return;
  ground.blocked.push_back({stretch.from - 1, stretch.from + by, 0});
  ground.blocked.push_back({stretch.to - by, stretch.to + 1, 0});
}

void tighten(SillPiece& sill, Mark by) {
  for (Ground& ground : sill.options) {
    grow(ground.blocked, by);
    keepFromEnds(ground, sill.stretch, by);
  }
  for (MostGap& gap : sill.most)
    gap.most -= by;
  if (sill.first)
    sill.first->farthest -= by;
  if (sill.last)
    sill.last->farthest -= by;
}

// Calls one function for every hard requirement of the problem, whatever its type; each has an overload of `visitor`.
template <typename Visitor> void visitNeeds(Problem& problem, Visitor visitor) {
  for (Anchored& piece : problem.anchored) {
    visitor(piece);
    visitor(piece.ground);
  }
  for (Distance& distance : problem.distances)
    visitor(distance);
  for (Beside& beside : problem.besides)
    for (Ground& ground : beside.options)
      visitor(ground);
  for (LeastGap& gap : problem.leastGaps)
    visitor(gap);
  for (SillPiece& sill : problem.sillPieces) {
    visitor(sill);
    for (Ground& ground : sill.options)
      visitor(ground);
    for (MostGap& gap : sill.most)
      visitor(gap);
    for (ReferenceBolt& bolt : sill.reference)
      visitor(bolt);
  }
}

struct Relax {
  Need need;
  Mark by;

  void operator()(Anchored& piece) const {
    if (piece.ownNeed == need)
      piece.own = {std::max(piece.own.from - by, piece.outermost.from),
                   std::min(piece.own.to + by, piece.outermost.to)};
  }
  void operator()(Ground& ground) const {
    for (Blocked& interval : ground.blocked)
      if (interval.need == need)
        interval = {interval.from + by, interval.to - by, need};
  }
  void operator()(Distance& distance) const {
    if (distance.need == need)
      for (Stretch& stretch : distance.allowed)
        stretch = {stretch.from - by, stretch.to + by};
  }
  void operator()(LeastGap& gap) const {
    if (gap.need == need)
      gap.least -= by;
  }
  void operator()(MostGap& gap) const {
    if (gap.need == need)
      gap.most += by;
  }
  void operator()(SillPiece& sill) const {
    for (std::optional<Window>* window : {&sill.first, &sill.last})
      if (*window && (*window)->need == need)
        (*window)->farthest += by;
  }
  void operator()(ReferenceBolt&) const {}
};

struct Drop {
  Need need;

  void operator()(Anchored& piece) const {
    if (piece.ownNeed == need)
      piece.own = piece.outermost;
    if (piece.fixed == need)
      piece.fixed.reset();
  }
  void operator()(Ground& ground) const {
    std::erase_if(ground.blocked, [&](const Blocked& interval) { return interval.need == need; });
  }
  void operator()(Distance& distance) const {
    if (distance.need == need)
      distance.allowed = {{-kFar, kFar}};
  }
  void operator()(LeastGap& gap) const {
    if (gap.need == need)
      gap.least = 0;
  }
  void operator()(MostGap& gap) const {
    if (gap.need == need)
      gap.most = kFar;
  }
  void operator()(SillPiece& sill) const {
    for (std::optional<Window>* window : {&sill.first, &sill.last})
      if (*window && (*window)->need == need)
        window->reset();
    if (sill.leastNeed == need)
      sill.least = 0;
  }
  void operator()(ReferenceBolt& bolt) const {
    if (bolt.fixed == need)
      bolt.fixed.reset();
  }
};

struct Collect {
  std::vector<Need>* needs;

  void add(Need need) const { needs->push_back(need); }
  void operator()(const Anchored& piece) const {
    add(piece.ownNeed);
    if (piece.fixed)
      add(*piece.fixed);
  }
  void operator()(const Ground& ground) const {
    for (const Blocked& interval : ground.blocked)
      add(interval.need);
  }
  void operator()(const Distance& distance) const { add(distance.need); }
  void operator()(const LeastGap& gap) const { add(gap.need); }
  void operator()(const MostGap& gap) const { add(gap.need); }
  void operator()(const SillPiece& sill) const {
    add(sill.leastNeed);
    for (const std::optional<Window>* window : {&sill.first, &sill.last})
      if (*window)
        add((*window)->need);
  }
  void operator()(const ReferenceBolt& bolt) const {
    if (bolt.fixed)
      add(*bolt.fixed);
  }
};

} // namespace

Problem tightened(const Problem& problem, Mark by) {
  Problem tighter = problem;
  for (Distance& distance : tighter.distances)
    if (slides(problem.anchored[distance.left]) || slides(problem.anchored[distance.right]))
      shrink(distance.allowed, by);
  for (Anchored& piece : tighter.anchored)
    tighten(piece, by);
  for (Beside& beside : tighter.besides)
    for (Ground& ground : beside.options)
      grow(ground.blocked, by);
  for (LeastGap& gap : tighter.leastGaps)
    gap.least += by;
  for (SillPiece& sill : tighter.sillPieces)
    tighten(sill, by);
  return tighter;
}

Problem relaxed(const Problem& problem, Need need, Mark by) {
  Problem looser = problem;
  visitNeeds(looser, Relax{need, by});
  return looser;
}

Problem without(const Problem& problem, Need need) {
  Problem looser = problem;
  visitNeeds(looser, Drop{need});
  return looser;
}

std::vector<Need> needsOf(const Problem& problem) {
  std::vector<Need> needs;
  Problem copy = problem;
  visitNeeds(copy, Collect{&needs});
  std::sort(needs.begin(), needs.end());
  needs.erase(std::unique(needs.begin(), needs.end()), needs.end());
  std::erase_if(needs, [](Need need) { return need < 0; });
  return needs;
}

} // namespace sillwright::sequence
