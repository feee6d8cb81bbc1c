// Where each piece of a wall may stand along it, everything else left where it is. Stations in inches.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/interval_set.h"
#include "core/model/layout.h"
#include "core/model/lookup.h"
#include "core/rules/limits.h"

namespace sillwright {

// A stretch in which a piece may not stand, and why: its ends are free, all between breaks the rule.
struct Blocked {
  Interval stations;
  RuleId rule = RuleId::StrapEdge;
  Id by; // what is in the way; empty where it is no piece
  bool operator==(const Blocked&) const = default;
};

struct Room { // from where a piece is, within its slot
  double left = 0;
  double right = 0;
  bool operator==(const Room&) const = default;
};

// The slots of a piece: closed, from left to right, apart from each other; none where it may stand nowhere. Standing in
// one it breaks no FIX rule of position (see isOfPosition), and no other FIX of such a rule is there that is not there
// now: sill bolts left too far apart when this one goes, a panel end left without its strap.
struct PieceSlots {
  Id piece;
  PieceKind kind = PieceKind::Bolt;
  double at = 0;
  std::vector<Interval> slots;
  std::optional<Room> room; // nothing where it does not stand in a slot
  bool operator==(const PieceSlots&) const = default;
};

// The rules that a move along the wall may break or mend. Heights, types, counts on the plans and numbers read are not
// changed by it, so their FIX neither close a slot nor open one.
bool isOfPosition(RuleId rule);

// Straps, bolts and rods, columns with leeway (their straps and rods go along), and upright bars that nobody has found
// in place.
bool hasSlots(const WallLine& wall, Id piece);

// Every stretch of the wall in which the piece may not stand, unsorted; they may overlap.
std::vector<Blocked> blockedStretches(const WallLayout& layout, const ResolvedLimits& limits, Id piece);

// Nothing for a piece that has no slots, or is not there.
std::optional<PieceSlots> slotsOf(const WallLayout& layout, const ResolvedLimits& limits, Id piece);
// Of every piece that has some, in the order of the wall's lists.
std::vector<PieceSlots> slotsOf(const WallLayout& layout, const ResolvedLimits& limits);

// What a piece meets at an end of a slot.
struct Stop {
  RuleId rule = RuleId::StrapEdge;
  Id by; // empty where it is no piece
  bool operator==(const Stop&) const = default;
};

struct BoundedSlot {
  Interval stations;
  std::optional<Stop> left, right; // nothing where the wall ends
  std::vector<Interval> met;       // where every target is met too, see targets.h
  bool operator==(const BoundedSlot&) const = default;
};

// Slots with what bounds them, for a piece in hand: a strap may also go to another column, on which it then hangs. One
// that is new, and stands where it does only for now, is needed nowhere yet.
std::vector<BoundedSlot> slotsInHand(const WallLayout& layout, const ResolvedLimits& limits, Id piece, bool isNew);

} // namespace sillwright
