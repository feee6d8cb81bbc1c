// Ends that hardware keeps its distance from, and stretches between openings. Stations in the wall frame, in.
#pragma once

#include <optional>
#include <vector>

#include "core/model/lookup.h"

namespace sillwright {

// Side::Left: the framing goes on to its right.
struct FramingEnd {
  double station = 0;
  Side side = Side::Left;
  bool operator==(const FramingEnd&) const = default;
};

// Of the wall itself, of what stands beside its openings, and of its panels.
std::vector<FramingEnd> framingEndsOf(const WallLine& wall, double length);

// The end that a stretch keeps the least distance from: none of it lies past that end. Of equally near ones the left.
// Nothing where none is within reach.
std::optional<FramingEnd> endNear(const WallLine& wall, double length, Interval stretch, double reach);

// A pier: the stretch round a station without an opening; for a station in an opening, the opening.
Interval pierAt(const WallLine& wall, double length, double station);

} // namespace sillwright
