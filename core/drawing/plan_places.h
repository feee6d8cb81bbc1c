// Where the texts and signs of a plan go; used by the plan's drawings only. Page points.
#pragma once

#include <string>
#include <unordered_map>
#include <vector>

#include "core/drawing/free_places.h"
#include "core/drawing/plan.h"
#include "core/drawing/plan_shape.h"

namespace sillwright {

// A line of text about its middle, turned so that it is read from below or from the right.
struct PlanText {
  std::string words;
  Point2 middle;
  double turn = 0; // degrees
  double size = 10;
  Weight weight = Weight::Regular;
};

// The sign of a panel end, or of several where there is no room for each.
struct PlanSign {
  Point2 middle;
  std::vector<double> stations; // of the panel ends it speaks for
};

// A running dimension: its mark on the chain, and its value beside it.
struct PlanMark {
  double station = 0;
  PlanText value;
};

struct WallPlaces {
  std::optional<PlanText> mark;
  std::optional<PlanText> length;
  std::vector<PlanSign> signs;
  double chain = 0; // depth of the running dimension line, in; negative is outside
  std::vector<PlanMark> running;
};

struct PlanDiagonals {
  Point2 corner[4]; // plan, in order
  std::vector<PlanText> texts;
};

struct PlanOverall {
  Point2 a, b; // page, ends of the dimension line
  PlanText text;
};

struct PlanPlaces {
  std::unordered_map<Id, WallPlaces> walls;
  std::vector<PlanDiagonals> diagonals;
  std::vector<PlanOverall> overall;
  Point2 north;
  std::optional<PlanText> hook;
};

inline constexpr double signWidth = 16;
inline constexpr double signHeight = 14;

// A wall in plan with its directions on the page.
struct PlanFrame {
  PlanFrame(const WallPlace& place, const PlanView& view);
  Point2 page(double s, double d) const;
  // Page point beside the wall: `out` points outward from the outside face.
  Point2 outside(double s, double out) const { return page(s, -out / scale); }

  Point2 from;  // plan
  Point2 along; // unit vectors in plan
  Point2 inward;
  double length = 0;
  double scale = 1;
  PlanView view;
  double turn = 0; // of text along the wall: readable
};

Bounds boxOf(const PlanText& text);
Bounds drawPlanText(Drawing& drawing, const PlanText& text, Ink ink, Ink halo = Ink::Paper);

} // namespace sillwright
