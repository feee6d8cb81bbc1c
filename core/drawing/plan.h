// The foundation from above.
#pragma once

#include <vector>

#include "core/drawing/view.h"
#include "core/rules/checker.h"

namespace sillwright {

struct PlanStyle {
  PlanView view;
  Medium medium = Medium::Screen;
  Id shown;          // wall in view: in the colour of the hand
  Selection selection;
};

// One wall: its concrete mitred to its neighbours, openings, mark, wall-end signs of its findings, corner handles.
// Drawn wall by wall, so that a change of one wall redraws one wall.
Drawing drawPlanWall(const Job& job, const CheckedWall& wall, const PlanStyle& style);
// What belongs to the whole: diagonals of a four-cornered outline, hook point, north, overall dimensions (paper).
Drawing drawPlanFrame(const Job& job, const PlanStyle& style);

std::optional<std::pair<Point2, Point2>> planBounds(const Job& job);
PlanView fitPlan(const Job& job, const Bounds& window);

} // namespace sillwright
