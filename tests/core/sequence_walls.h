// Walls of realistic size for the optimiser: piers of 2 to 4 ft with a column and a strap at both ends, bars
// everywhere, sill pieces of 8 to 16 ft, a reference that stands about where it should.
#pragma once

#include <algorithm>
#include <random>

#include "core/refit/sequence.h"

namespace sillwright::sequence {

struct WallSize {
  int feetLeast = 20;
  int feetMost = 40;
  int piersLeast = 1;
  int piersMost = 4;
  int barsLeast = 10;
  int barsMost = 60;
  int options = 2;
  Mark leeway = 0;    // of columns
  int strapFree = 20; // a strap stands within this many marks of its column's middle
  bool tolls = true;
  bool pitched = true; // piers ask for closer bolts
};

class RandomWall {
public:
  explicit RandomWall(unsigned seed) : dice(seed) {}

  int between(int least, int most) { return std::uniform_int_distribution<int>(least, most)(dice); }

  Problem wall(const WallSize& givenSize) {
    size = givenSize;
    problem = {};
    need = 0;
    problem.depthOptions = size.options;
    length = between(size.feetLeast, size.feetMost) * foot;
    cutSills();
    for (int left = 0; left < size.options; ++left)
      for (int right = 0; right < size.options; ++right)
        problem.leastGaps.push_back({left, right, left == right ? 48 : 40, 0});
    buildPiers();
    setBars();
    for (SillPiece& sill : problem.sillPieces)
      placeReference(sill);
    return problem;
  }

private:
  static constexpr Mark foot = 192;

  void cutSills() {
    for (Mark from = 0; from < length;) {
      Mark to = std::min(length, from + between(8, 16) * foot);
      if (length - to < 4 * foot)
        to = length;
      SillPiece sill;
      sill.stretch = {from, to - 1};
      sill.least = 2;
      sill.leastNeed = ++need;
      sill.first = Window{foot, ++need};
      sill.last = Window{foot, ++need};
      sill.most.push_back({from, to, 6 * foot, ++need});
      sill.options.resize(size.options);
      ++need;
      for (Ground& ground : sill.options) {
        ground.blocked.push_back({-kFar, from + 70, need});
        ground.blocked.push_back({to - 70, kFar, need});
      }
      problem.sillPieces.push_back(sill);
      from = to;
    }
  }

  void buildPiers() {
    const int piers = between(size.piersLeast, size.piersMost);
    for (int pier = 0; pier < piers; ++pier) {
      const Mark room = length / piers;
      const Mark width = std::min<Mark>(between(2, 4) * foot, room - foot);
      const Mark from = pier * room + between(24, room - width - 24);
      addColumn(from + 28);
      addColumn(from + width - 28);
      ++need;
      for (SillPiece& sill : problem.sillPieces)
        if (size.pitched && from + width > sill.stretch.from && from < sill.stretch.to)
          sill.most.push_back({from, from + width, between(16, 32) * 16, need});
    }
  }

  void addColumn(Mark middle) {
    const int column = static_cast<int>(problem.anchored.size());
    Anchored post;
    post.reference = middle;
    post.own = {middle - size.leeway, middle + size.leeway};
    post.ownNeed = ++need;
    post.outermost = {post.own.from - 8, post.own.to + 8};
    problem.anchored.push_back(post);
    Anchored strap;
    const Mark reach = size.leeway + size.strapFree;
    strap.reference = middle + between(-size.strapFree, size.strapFree);
    strap.own = strap.outermost = {middle - reach - 8, middle + reach + 8};
    strap.ownNeed = ++need;
    strap.set = between(0, 3) == 0;
    problem.anchored.push_back(strap);
    Distance onColumn;
    onColumn.left = column;
    onColumn.right = column + 1;
    onColumn.allowed = {{-size.strapFree, size.strapFree}};
    onColumn.need = ++need;
    if (size.tolls)
      onColumn.tolls = {{-size.strapFree, -12, Kind::Watch, true, 0}, {12, size.strapFree, Kind::Watch, true, 0}};
    problem.distances.push_back(onColumn);
    keepBoltsOff(column, 52);
    keepBoltsOff(column + 1, 44);
  }

  void keepBoltsOff(int anchored, Mark by) {
    Beside beside;
    beside.anchored = anchored;
    ++need;
    for (int option = 0; option < size.options; ++option) {
      Ground ground;
      ground.blocked.push_back({-by, by, need});
      if (size.tolls)
        ground.tolls.push_back({-by - 8, by + 8, Kind::Watch, false, 0});
      beside.options.push_back(ground);
    }
    problem.besides.push_back(beside);
  }

  void setBars() {
    for (int bars = between(size.barsLeast, size.barsMost); bars > 0; --bars) {
      const Mark at = between(0, length);
      ++need;
      for (SillPiece& sill : problem.sillPieces)
        for (int option = 0; option < size.options; ++option)
          if (option == 0 || between(0, 1) == 0) {
            const Mark half = between(8, 24);
            sill.options[option].blocked.push_back({at - half, at + half, need});
            if (size.tolls && between(0, 3) == 0)
              sill.options[option].tolls.push_back(
                  {at - half - 8, at + half + 8, between(0, 5) == 0 ? Kind::Ask : Kind::Watch, true, 0});
          }
      for (Anchored& piece : problem.anchored)
        if (piece.own.to - piece.own.from > 2 * size.leeway && at > piece.own.from && at < piece.own.to)
          piece.ground.blocked.push_back({at - 6, at + 6, need});
    }
  }

  void placeReference(SillPiece& sill) {
    const Mark pitch = between(20, 60) * 16;
    Mark at = sill.stretch.from + between(75, 180);
    for (; at < sill.stretch.to - 75; at += pitch + between(-20, 20)) {
      ReferenceBolt bolt;
      bolt.station = at;
      for (int option = 0; option < size.options; ++option)
        bolt.shift.push_back(option * 8);
      bolt.set = between(0, 4) == 0;
      sill.reference.push_back(bolt);
    }
  }

  std::mt19937 dice;
  WallSize size;
  Problem problem;
  Need need = 0;
  Mark length = 0;
};

} // namespace sillwright::sequence
