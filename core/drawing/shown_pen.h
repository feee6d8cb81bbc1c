// The pen that draws walls on the plan, as it is shown: a plain value. Plan, inches.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/base/length.h"
#include "core/drawing/view.h"
#include "core/geometry/outline.h"

namespace sillwright {

struct ShownPen {
  LengthStyle units = LengthStyle::FeetInches;
  std::vector<Point2> corners;      // set so far, in order
  std::optional<Point2> at;         // where the next one would stand
  std::vector<Polygon2> concrete;   // of the walls so far and the one in hand
  std::vector<Segment2> inLineWith; // from a corner to what is in line with it
  bool lengthOpen = false;          // only the direction is chosen: the length is still to be typed
  bool squareBefore = false;        // the wall in hand is square to the one before
  bool closes = false;              // at is the first corner
  bool ends = false;                // at is the last corner: the walls stay open there
  std::string words;                // why it is at just that place, or what setting a corner there does; empty: freely
  std::string typed;                // a length being typed
  std::string problem;              // why no corner can be set there; empty where one can
};

// Walls in the colour of the hand with their lengths, the one in hand last; corners; what it is in line with; words.
Drawing drawPen(const ShownPen& pen, const PlanView& view);

} // namespace sillwright
