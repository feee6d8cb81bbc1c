// How a wall is looked at: scale, side, what stretch.
#pragma once

#include <optional>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/model/lookup.h"

namespace sillwright {

// Elevation frame to page. The page point of (station s, height z) is (x(s), y(z)); origin is station 0 on the pour
// line. Seen from inside, stations run to the left.
struct ElevationView {
  double scale = 4.75;    // pt per inch
  Point2 origin;          // page point of station 0 (from inside too), pour line
  bool fromInside = false;

  double x(double s) const { return origin.x + (fromInside ? -s : s) * scale; }
  double y(double z) const { return origin.y - z * scale; }
  double s(double px) const { return (fromInside ? origin.x - px : px - origin.x) / scale; }
  double z(double py) const { return (origin.y - py) / scale; }
};

struct SectionView {
  double scale = 6; // pt per inch
  Point2 origin;    // page point of depth 0 on the pour line; depth runs to the right (outside on the left)
  double x(double d) const { return origin.x + d * scale; }
  double y(double z) const { return origin.y - z * scale; }
  double d(double px) const { return (px - origin.x) / scale; }
  double z(double py) const { return (origin.y - py) / scale; }
};

struct PlanView {
  double scale = 0.6; // pt per inch
  Point2 origin;      // page point of plan (0, 0); plan y runs up the page
  Point2 page(Point2 plan) const { return {origin.x + plan.x * scale, origin.y - plan.y * scale}; }
  Point2 plan(Point2 page) const { return {(page.x - origin.x) / scale, (origin.y - page.y) / scale}; }
};

enum class Medium { Screen, Paper };

} // namespace sillwright
