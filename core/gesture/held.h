// The gestures: what is held, and the job each place of the pointer makes of it. Pure functions of values; the
// workbench runs them.
#pragma once

#include <optional>
#include <string>

#include "core/drawing/in_hand.h"
#include "core/edit/plan_check.h"
#include "core/gesture/input.h"
#include "core/model/layout.h"

namespace sillwright {

struct Grip {
  InHand::Kind kind = InHand::Kind::Move;
  PointerAt start;
  Job base;              // the job the gesture starts from
  WallLayout layout;     // of the wall in view, as it was
  Selection pieces;      // all that move
  PieceRef grabbed;      // the one under the pointer; for a corner: {wall, corner}
  double before = 0;     // its station, or that of the end in hand
  Side end = Side::Left; // for Resize
  bool newPiece = false; // it came from the shelf
  std::vector<BoundedSlot> offered{}; // of the piece, where one alone moves along its wall
  // On the plan: the walls that change, those that stand still, and whether they clashed before: then it is no reason
  // to refuse.
  std::vector<Id> changing{};
  std::vector<StandingWall> standing{};
  bool clashed = false;
};

// What a place of the pointer makes: the job to show, and what is in hand there.
struct Shown {
  Job job;
  InHand hand;
  std::string name; // of the edit, were it committed here
};

Shown moveTo(const Grip& grip, const PointerAt& pointer);
Shown resizeTo(const Grip& grip, const PointerAt& pointer);
// On the plan. hand.problem says why it cannot stay there.
Shown cornerTo(const Grip& grip, const PointerAt& pointer);
Shown wallTo(const Grip& grip, const PointerAt& pointer); // parallel to itself
// The same with a length said outright (typed): of the wall a corner is drawn along, or how far the wall is moved, the
// way the hand moves it. now: what is in hand.
Shown planToLength(const Grip& grip, const InHand& now, double length);
// What the plan gestures of a grip have to know of the job; once, as they begin.
void lookRound(Grip& grip);
// Where one piece alone may stand along its wall, for the grip; nothing for what has no slots.
std::vector<BoundedSlot> slotsFor(const Grip& grip);
// The same with the station said outright (typed).
Shown moveToStation(const Grip& grip, double station);
Shown resizeToStation(const Grip& grip, double station);

// How far pieces may move along their wall, both ways, so that none leaves it and no rod enters its column.
Interval roomAlong(const Job& job, const Selection& pieces);

// "Move strap S2 3/8" left", "Move 3 pieces 3/8" right"; verb "Move", "Nudge".
std::string moveName(const Job& job, const Selection& pieces, const std::string& verb, double along, double across,
                     double up);
// Trade name and mark: "strap S2".
std::string calledIn(const Job& job, PieceRef piece);

// Pieces of a wall that a band touches, embedded part and exposed part alike; bars along the wall when wholly inside.
Selection piecesIn(const WallLayout& layout, Interval s, Interval z);

} // namespace sillwright
