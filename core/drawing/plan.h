// The foundation from above.
#pragma once

#include <memory>
#include <optional>
#include <utility>

#include "core/drawing/view.h"
#include "core/model/plan_concrete.h"
#include "core/rules/checker.h"

namespace sillwright {

// Where the texts and signs of a whole plan go, so that none lies over another: see planPlaces.
struct PlanPlaces;

struct PlanStyle {
  PlanView view;
  Medium medium = Medium::Screen;
  Id shown;          // wall in view: in the colour of the hand, with handles; its left end carries the hook
  Selection selection;
  // For this very view, medium and shown wall. Null: worked out in each call, which reads the whole job.
  std::shared_ptr<const PlanPlaces> places;
};

// Depends on corners, walls' marks, panels and openings, not on hardware or findings: good until one of those changes.
std::shared_ptr<const PlanPlaces> planPlaces(const Job& job, const PlanStyle& style);

// One wall: its concrete mitred to its neighbours, openings, mark, length, wall-end signs of its findings, handles; on
// paper also its hardware and the running dimensions from its left end. Hit areas: the wall {wall, 0} as Body, its ends
// {wall, corner} as Corner, the handle in the middle of the shown wall {wall, 0} as Corner. Drawn wall by wall, so that
// a change of one wall redraws one wall.
Drawing drawPlanWall(const Job& job, const CheckedWall& wall, const PlanStyle& style);
// What belongs to the whole: diagonals of four-cornered outlines, hook point, north, overall dimensions (paper).
Drawing drawPlanFrame(const Job& job, const PlanStyle& style);

// Lower left and upper right of all concrete and footings; nothing for a job without walls.
std::optional<std::pair<Point2, Point2>> planBounds(const Job& job);
PlanView fitPlan(const Job& job, const Bounds& window);

} // namespace sillwright
