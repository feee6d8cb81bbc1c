// Small random problems for the optimiser, made to touch, to be empty and to be just tight.
#pragma once

#include <algorithm>
#include <random>

#include "core/refit/sequence.h"

namespace sillwright::sequence {

class RandomProblem {
public:
  explicit RandomProblem(unsigned seed) : dice(seed) {}

  int between(int least, int most) { return std::uniform_int_distribution<int>(least, most)(dice); }
  bool chance(int percent) { return between(1, 100) <= percent; }

  // Bolts only, in one sill piece or two.
  Problem bolts(int sillPieces) {
    Problem problem;
    nextNeed = 1;
    problem.depthOptions = chance(40) ? 2 : 1;
    problem.countWatch = chance(85);
    otherMakes = chance(25);
    Mark from = between(-3, 3);
    for (int which = 0; which < sillPieces; ++which) {
      const Mark longest = (problem.depthOptions > 1 ? 7 : 10) - (sillPieces > 1 ? 3 : 0);
      const Mark to = from + between(0, longest);
      problem.sillPieces.push_back(sillPiece({from, to}, problem.depthOptions));
      from = to + between(1, 3);
    }
    for (int left = 0; left < problem.depthOptions; ++left)
      for (int right = 0; right < problem.depthOptions; ++right)
        if (chance(90))
          problem.leastGaps.push_back({left, right, between(1, 5), need()});
    return problem;
  }

  // The same on more marks, with bolts farther apart.
  Problem stretched(Problem problem, int times) {
    for (SillPiece& sill : problem.sillPieces) {
      sill.stretch = {sill.stretch.from * times, sill.stretch.to * times};
      for (MostGap& gap : sill.most)
        gap = {gap.from * times, gap.to * times + between(0, 1), gap.most * times, gap.need};
      for (Ground& ground : sill.options)
        for (Blocked& blocked : ground.blocked)
          blocked = {blocked.from * times, blocked.to * times - between(0, 1), blocked.need};
      for (std::optional<Window>* window : {&sill.first, &sill.last})
        if (*window)
          (*window)->farthest *= times;
      for (ReferenceBolt& bolt : sill.reference)
        bolt.station = bolt.station * times + between(-1, 1);
      std::sort(sill.reference.begin(), sill.reference.end(),
                [](const ReferenceBolt& a, const ReferenceBolt& b) { return a.station < b.station; });
    }
    for (LeastGap& gap : problem.leastGaps)
      gap.least = gap.least * times + 4;
    for (int left = 0; left < problem.depthOptions; ++left)
      for (int right = 0; right < problem.depthOptions; ++right)
        problem.leastGaps.push_back({left, right, 5, need()});
    return problem;
  }

  // Bolts, and anchored pieces among them.
  Problem whole(int sillPieces, int anchored) {
    Problem problem = bolts(sillPieces);
    span = {-4, 14};
    if (!problem.sillPieces.empty())
      span = {problem.sillPieces.front().stretch.from - 2, problem.sillPieces.back().stretch.to + 2};
    for (int index = 0; index < anchored; ++index) {
      problem.anchored.push_back(piece());
      if (chance(85))
        problem.besides.push_back(beside(index, problem.depthOptions));
    }
    for (int left = 0; left < anchored; ++left)
      for (int right = left + 1; right < anchored; ++right)
        if (chance(45))
          problem.distances.push_back(distance(left, right));
    return problem;
  }

  // Bolts, and anchored pieces that reach only the bolts near them, each with a say in where the next one stands.
  Problem linked(int sillPieces, int anchored) {
    Problem problem = bolts(sillPieces);
    span = {problem.sillPieces.front().stretch.from, problem.sillPieces.back().stretch.to};
    const Mark room = std::max(3, (span.to - span.from) / anchored);
    for (int index = 0; index < anchored; ++index) {
      const Mark from = span.from + index * room + between(0, 1);
      Anchored piece{.own = {from, from + between(0, 2)}, .ownNeed = need()};
      piece.outermost = {piece.own.from - between(0, 1), piece.own.to + between(0, 1)};
      if (chance(80))
        piece.reference = piece.own.from + between(-1, 2);
      piece.set = piece.reference && chance(40);
      problem.anchored.push_back(piece);
      Beside beside{.anchored = index};
      for (int option = 0; option < problem.depthOptions; ++option) {
        beside.options.emplace_back();
        if (chance(70))
          beside.options.back().blocked.push_back({-1, 1, need()});
        if (chance(50))
          beside.options.back().tolls.push_back({0, between(0, 1), chance(50) ? Kind::Ask : Kind::Watch, true, 0});
      }
      problem.besides.push_back(beside);
      if (index > 0 && chance(90))
        problem.distances.push_back(lever(index - 1 - (chance(8) && index > 1 ? 1 : 0), index, room));
    }
    return problem;
  }

private:
  Distance lever(int left, int right, Mark about) {
    Distance lever{.left = left, .right = right, .allowed = {{-kFar, kFar}}, .need = need()};
    if (chance(30))
      lever.allowed = {{about + between(-2, 0), chance(50) ? kFar : about + between(0, 2)}};
    for (const Kind kind : {Kind::Ask, Kind::Watch})
      if (chance(70))
        lever.tolls.push_back({-kFar, about + between(-2, 2), kind, false, 0});
    if (chance(30))
      std::swap(lever.left, lever.right);
    return lever;
  }

  Need need() { return chance(12) && nextNeed > 1 ? between(1, nextNeed - 1) : nextNeed++; }

  Toll toll(Mark least, Mark most) {
    const Mark from = between(least, most);
    return {from, from + between(0, 4), chance(50) ? Kind::Ask : Kind::Watch, chance(50), 0};
  }

  Ground ground(Mark least, Mark most, int blocked, int tolls) {
    Ground ground;
    Mark from = between(least, most);
    for (int count = between(0, blocked); count > 0; --count) {
      const Mark to = from + between(-1, 5);
      ground.blocked.push_back({from, to, need()});
      from = chance(40) ? to : between(least, most); // often touching
    }
    for (int count = between(0, tolls); count > 0; --count)
      ground.tolls.push_back(toll(least, most));
    return ground;
  }

  SillPiece sillPiece(const Stretch& stretch, int options) {
    SillPiece sill{.stretch = stretch};
    const Mark length = stretch.to - stretch.from;
    sill.least = between(0, 3);
    sill.leastNeed = need();
    if (chance(70))
      sill.first = Window{between(0, 5), need()};
    if (chance(70))
      sill.last = Window{between(0, 5), need()};
    if (chance(80))
      sill.most.push_back({stretch.from, stretch.to + 1, between(3, 8), need()});
    for (int count = between(0, 2); count > 0; --count) {
      const Mark from = between(stretch.from - 2, stretch.to);
      sill.most.push_back({from, from + between(1, 6), between(1, 7), need()});
    }
    for (int count = between(0, 2); count > 0; --count)
      sill.gapTolls.push_back(toll(0, 6));
    for (int option = 0; option < options; ++option)
      sill.options.push_back(ground(stretch.from - 2, stretch.from + length, 3, 2));
    Mark station = stretch.from + between(-2, 2);
    for (int count = between(0, 3); count > 0; --count) {
      ReferenceBolt bolt{.station = station, .set = chance(30)};
      for (int option = 0; option < options; ++option)
        bolt.shift.push_back(otherMakes && chance(40) ? kFar : option == 0 ? 0 : between(0, 3));
      if (chance(12))
        bolt.fixed = need();
      sill.reference.push_back(bolt);
      station += between(0, 5);
    }
    return sill;
  }

  Anchored piece() {
    Anchored piece;
    const Mark from = between(span.from, span.to);
    piece.own = {from, from + (chance(40) ? 0 : between(-1, 4))};
    piece.ownNeed = need();
    piece.outermost = {from - between(0, 2), std::max(from, piece.own.to) + between(0, 2)};
    piece.ground = ground(from - 2, from + 4, 1, 1);
    if (chance(70))
      piece.reference = from + between(-2, 5);
    piece.set = piece.reference && chance(40);
    if (piece.reference && chance(12))
      piece.fixed = need();
    return piece;
  }

  Beside beside(int index, int options) {
    Beside beside{.anchored = index};
    for (int option = 0; option < options; ++option)
      beside.options.push_back(ground(-4, 3, 2, 1));
    return beside;
  }

  Distance distance(int left, int right) {
    Distance distance{.left = left, .right = right, .need = need()};
    if (chance(50)) {
      distance.allowed.push_back({between(-2, 5), kFar});
    } else {
      Mark from = between(-5, 3);
      for (int count = between(1, 3); count > 0; --count) {
        const Mark to = from + between(0, 4);
        distance.allowed.push_back({from, to});
        from = to + between(1, 3);
      }
    }
    if (chance(40))
      distance.tolls.push_back(toll(-4, 4));
    return distance;
  }

  std::mt19937 dice;
  Need nextNeed = 1;
  bool otherMakes = false; // some reference bolts cannot stand in some options
  Stretch span;
};

} // namespace sillwright::sequence
