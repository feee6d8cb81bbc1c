// The drawing beside a question: the place where requirements collide, with their numbers at what they are about.
#pragma once

#include "core/refit/refit.h"
#include "core/rules/checker.h"
#include "ui/sheet/sheet_frame.h"

namespace sillwright::sheet {

// The part of the wall that a question is about, with something on both sides; more than that where there is room for
// so much (in).
Interval placeOf(const WallLayout& layout, const NoLayout& conflict, double room);

// Where the number of a requirement points in elevation, from above or from below; nothing for what runs along the
// wall.
struct Pointed {
  Point2 at; // station and height
  bool above = false;
};
std::optional<Pointed> pointedAt(const WallLayout& layout, const Requirement& requirement);

Scale drawQuestion(Drawing& page, const Job& job, const CheckedWall& wall, const NoLayout& conflict,
                   const Bounds& area);

} // namespace sillwright::sheet
