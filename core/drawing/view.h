// How a wall is looked at: scale, side, what stretch.
#pragma once

#include <optional>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/model/lookup.h"

namespace sillwright {

inline constexpr double foldGap = 40; // what a folded stretch is wide on the page, pt

// Elevation frame to page. The page point of (station s, height z) is (x(s), y(z)); origin is station 0 on the pour
// line. Seen from inside, stations run to the left. x and s are the inverse of each other, also within a fold.
struct ElevationView {
  double scale = 4.75;    // pt per inch
  Point2 origin;          // page point of station 0 (from inside too), pour line
  bool fromInside = false;
  std::vector<Interval> folds; // in, from 0 on: stretches folded away, in order, apart from each other, none empty

  double x(double s) const { return origin.x + (fromInside ? -along(s) : along(s)); }
  double y(double z) const { return origin.y - z * scale; }
  double s(double px) const { return stationAlong(fromInside ? origin.x - px : px - origin.x); }
  double z(double py) const { return (origin.y - py) / scale; }

  double along(double s) const;         // pt on the page from station 0 to s
  double stationAlong(double pt) const; // the station so far from station 0 on the page
  // Wholly folded away.
  bool hides(Interval stretch) const;
  // The station itself, or the end of its fold that is nearer on the page.
  double shown(double s) const;
  // The parts of a stretch that are not folded away, in order.
  std::vector<Interval> shownParts(Interval stretch) const;
  bool operator==(const ElevationView&) const = default;
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
