// The pencil of type_picture: a piece at its own scale, with dimensions in letters of one size. x to the right and z up
// in inches from the piece's origin; everything else in points.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/length.h"
#include "core/drawing/drawing.h"

namespace sillwright::type_picture {

inline constexpr double wordSize = 11, lineHeight = 15, wordGap = 4;
inline constexpr double sideRoom = 84, topRoom = 30, footRoom = 34; // for the dimensions round a piece

struct Pen {
  Drawing& drawing;
  Bounds box;
  LengthStyle units = LengthStyle::FeetInches;
  double scale = 1;
  Point2 origin{};

  double x(double inches) const { return origin.x + inches * scale; }
  double y(double inches) const { return origin.y - inches * scale; }
  Point2 at(double along, double up) const { return {x(along), y(up)}; }
  std::string measure(double inches) const;

  // Concrete with its top at y = top, across the box.
  void concrete(double top, double x0, double x1, double bottom);
  // A shank with its axis at x = 0 and its thread.
  void shank(double radius, double from, double to, double threadFrom, double threadsPerInch);
  // Dimension lines with crow's feet between two places in points. The words of one across stand over it, of an upright
  // one to its left or right; short ones are reached from outside.
  void across(double py, double x0, double x1, std::string_view words);
  void upright(double px, double y0, double y1, std::string_view words, bool left);
  void witness(Point2 a, Point2 b);
  void say(Point2 baseline, std::string_view words, Anchor anchor = Anchor::Start, Ink ink = Ink::Text2,
           Ink ground = Ink::Panel);
};

} // namespace sillwright::type_picture
