// Between inches and tape marks (1/16 in).
#pragma once

#include <cmath>

#include "core/base/tolerance.h"
#include "core/geometry/shapes.h"
#include "core/refit/sequence.h"

namespace sillwright {

// Below what sums of inches are off by: at an exact end a mark belongs to it.
inline constexpr double markHair = tolerance::rounding / tolerance::tapeMark / 2;

inline double inchesOf(sequence::Mark mark) {
  return mark * tolerance::tapeMark;
}
inline sequence::Mark nearestMark(double inches) {
  return static_cast<sequence::Mark>(std::lround(inches / tolerance::tapeMark));
}
// The first mark at or right of a station, the last at or left of it.
inline sequence::Mark markFrom(double inches) {
  return static_cast<sequence::Mark>(std::ceil(inches / tolerance::tapeMark - markHair));
}
inline sequence::Mark markUpTo(double inches) {
  return static_cast<sequence::Mark>(std::floor(inches / tolerance::tapeMark + markHair));
}

// The marks of a closed stretch; from > to where it holds none.
inline sequence::Stretch marksIn(Interval closed) {
  return {markFrom(closed.from), markUpTo(closed.to)};
}
// An open stretch as an open one of marks: the same marks lie in it.
inline sequence::Stretch marksAround(Interval open) {
  return {markUpTo(open.from), markFrom(open.to)};
}

} // namespace sillwright
