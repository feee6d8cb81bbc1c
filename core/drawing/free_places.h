// Boxes and outlines already drawn on, to find room for the next text. Points.
#pragma once

#include <cstdint>
#include <unordered_map>
#include <vector>

#include "core/drawing/drawing.h"

namespace sillwright {

class FreePlaces {
public:
  void take(const Bounds& box);
  // A convex outline that texts keep off where they can.
  void avoid(const Polygon2& outline);

  bool taken(const Bounds& box) const;   // a box was taken there
  bool avoided(const Bounds& box) const; // an outline is there
  bool free(const Bounds& box) const { return !taken(box) && !avoided(box); }

private:
  using Cells = std::unordered_map<std::uint64_t, std::vector<std::uint32_t>>;
  static void enter(Cells& cells, const Bounds& box, std::uint32_t index);
  template <class Test> static bool any(const Cells& cells, const Bounds& box, Test&& test);

  std::vector<Bounds> boxes_;
  std::vector<Polygon2> outlines_;
  Cells boxCells_;
  Cells outlineCells_;
};

// Precondition: the outlines are convex. Touching is not overlapping.
bool overlaps(const Polygon2& first, const Polygon2& second);
bool overlaps(const Polygon2& outline, const Bounds& box);
Bounds boundsOf(const Polygon2& outline);

} // namespace sillwright
