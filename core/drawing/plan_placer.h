// Finds places for the texts of a plan one after another; used by the plan's drawings only.
#pragma once

#include <optional>
#include <vector>

#include "core/drawing/free_places.h"
#include "core/drawing/plan_places.h"

namespace sillwright {

// Degrees turned so that a text reads from below or from the right.
double readable(double degrees);

inline constexpr double apart = 1; // pt between texts

struct Spot {
  double station = 0; // wanted
  Interval stations;  // allowed
  double clear = 4;   // between the face of the concrete and the box
  int rows = 1;
  double rowStep = 12;
  double step = 6;    // along the wall
  int steps = 8;      // to either side
};

struct Placer {
  const Job& job;
  const PlanStyle& style;
  FreePlaces room;
  std::vector<Polygon2> chains; // strips of running dimensions
  PlanPlaces places;

  std::optional<Point2> beside(const PlanFrame& frame, double face, bool inside, Bounds box, const Spot& spot,
                               bool overConcrete) const;
  bool placeText(PlanText& text, const PlanFrame& frame, double thickness, const Spot& spot, bool never);
  void takeText(const PlanText& text) { room.take(boxOf(text).grown(apart)); }
};

// The running dimensions of one wall from its left end, outside where there is room for them, else inside.
void placeRunning(Placer& placer, const WallLine& wall, const WallPlace& place, const PlanFrame& frame);

} // namespace sillwright
