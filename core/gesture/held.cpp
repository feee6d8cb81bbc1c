#include "core/gesture/held.h"

#include <algorithm>
#include <cmath>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/edit/operations.h"
#include "core/gesture/placing.h"
#include "core/gesture/snap.h"
#include "core/refit/slot_words.h"
#include "core/rules/rule_book.h"

namespace sillwright {

namespace {

constexpr double landingReach = 6;    // in
constexpr double freeStep = 1.0 / 64; // what a move without snapping is rounded to

std::string amountWords(const Job& job, double by, const char* positive, const char* negative) {
  return printMeasure(std::abs(by), job.units) + " " + (by > 0 ? positive : negative);
}

// Straps let go of a column they no longer stand on and take the one they now stand on.
Job withColumns(Job job, const WallLayout& layout, const Selection& pieces) {
  for (const PieceRef& ref : pieces) {
    const auto piece = findPiece(job, ref);
    const Strap* strap = piece ? std::get_if<Strap>(&*piece) : nullptr;
    if (!strap)
      continue;
    const Id under = columnUnder(layout, strap->station, 0);
    if (!under || under == strap->column)
      continue;
    Strap moved = *strap;
    moved.column = under;
    job = replacePiece(job, ref.wall, Piece{moved});
  }
  return job;
}

bool movesAlone(const Selection& pieces) {
  return std::none_of(pieces.begin(), pieces.end(), [](const PieceRef& ref) { return !ref.piece; });
}

// The tape mark within a slot that is nearest to a station which is in none; in a slot too narrow for a mark its
// middle. What is let go of far from every slot stays there, with its flags: nobody means a place half a wall away.
std::optional<double> landingOf(const Grip& grip, double station) {
  std::vector<Interval> places;
  for (const BoundedSlot& slot : grip.offered) {
    const Interval marks = toMarks(slot.stations);
    places.push_back(marks.empty() ? around(slot.stations.middle(), 0) : marks);
  }
  std::vector<Interval> slots;
  for (const BoundedSlot& slot : grip.offered)
    slots.push_back(slot.stations);
  const auto nearest = nearestIn(places, station);
  const bool lands = nearest && !partAt(slots, station) && std::abs(*nearest - station) <= landingReach;
  return lands ? nearest : std::nullopt;
}

InHand handOf(const Grip& grip, double station) {
  InHand hand;
  hand.kind = grip.newPiece ? InHand::Kind::Place : grip.kind;
  hand.piece = grip.grabbed;
  if (!grip.newPiece)
    hand.before = findPiece(grip.base, grip.grabbed);
  hand.station = station;
  hand.moved = station - grip.before;
  hand.offered = grip.offered;
  return hand;
}

std::string placeName(const Grip& grip) { return "Place " + calledIn(grip.base, grip.grabbed); }

Shown movedAlong(const Grip& grip, double along, SnapReason reason, Id to) {
  const Interval room = roomAlong(grip.base, grip.pieces);
  const double by = std::clamp(along, std::min(room.from, 0.0), std::max(room.to, 0.0));
  Job job = movePieces(grip.base, grip.pieces, by);
  job = withColumns(std::move(job), grip.layout, grip.pieces);
  Shown shown{std::move(job), handOf(grip, grip.before + by), ""};
  shown.hand.snap = by == along ? reason : SnapReason::WallEnd;
  shown.hand.snappedTo = by == along ? to : Id{};
  shown.name = grip.newPiece ? placeName(grip) : moveName(grip.base, grip.pieces, "Move", by, 0, 0);
  return shown;
}

double steppedUp(const Grip& grip, double raised, const PointerAt& pointer) {
  const auto piece = findPiece(grip.base, grip.grabbed);
  const Strap* strap = piece ? std::get_if<Strap>(&*piece) : nullptr;
  if (pointer.keys.alt)
    return roundTo(raised, freeStep);
  if (strap)
    return snapHeight(grip.layout, *strap, strap->heightOffset + raised, pointer.reach).value - strap->heightOffset;
  return roundTo(raised, tolerance::tapeMark);
}

Shown movedUp(const Grip& grip, const PointerAt& pointer) {
  const double by = steppedUp(grip, pointer.at.z - grip.start.at.z, pointer);
  Shown shown{movePieces(grip.base, grip.pieces, 0, 0, by), handOf(grip, grip.before), ""};
  shown.name = moveName(grip.base, grip.pieces, "Move", 0, 0, by);
  return shown;
}

// How far pieces may move across so that bolts and rods stay within the wall.
Interval roomAcross(const Job& job, const Selection& pieces) {
  Interval room{-1e9, 1e9};
  for (const PieceRef& ref : pieces) {
    const WallLine* wall = job.walls.find(ref.wall);
    const auto piece = wall ? findPiece(*wall, ref.piece) : std::nullopt;
    if (!piece)
      continue;
    std::optional<double> depth;
    if (const Bolt* bolt = std::get_if<Bolt>(&*piece))
      depth = bolt->depth;
    if (const Rod* rod = std::get_if<Rod>(&*piece))
      depth = rod->depth;
    if (depth)
      room = overlap(room, {-*depth, wall->thickness - *depth});
  }
  return room;
}

// In the section: across or up, whichever the hand does more.
Shown movedInSection(const Grip& grip, const PointerAt& pointer) {
  const double across = pointer.at.d - grip.start.at.d, up = pointer.at.z - grip.start.at.z;
  if (std::abs(up) > std::abs(across))
    return movedUp(grip, pointer);
  const Interval room = roomAcross(grip.base, grip.pieces);
  const double step = pointer.keys.alt ? freeStep : tolerance::tapeMark;
  const double by = std::clamp(roundTo(across, step), room.from, room.to);
  Shown shown{movePieces(grip.base, grip.pieces, 0, by), handOf(grip, grip.before), ""};
  shown.name = moveName(grip.base, grip.pieces, "Move", 0, by, 0);
  return shown;
}

Shown resized(const Grip& grip, double station, SnapReason reason, Id to) {
  const double at = std::clamp(station, 0.0, grip.layout.length);
  Shown shown{moveEnd(grip.base, grip.grabbed, grip.end, at), handOf(grip, at), ""};
  shown.hand.snap = reason;
  shown.hand.snappedTo = to;
  shown.name = "Move the " + std::string(grip.end == Side::Left ? "left" : "right") + " end of " +
               calledIn(grip.base, grip.grabbed);
  return shown;
}

} // namespace

std::vector<BoundedSlot> slotsFor(const Grip& grip) {
  if (grip.kind == InHand::Kind::Resize || grip.pieces.size() != 1)
    return {};
  if (findPiece(grip.base, grip.grabbed) && std::holds_alternative<Column>(*findPiece(grip.base, grip.grabbed)))
    return {}; // the hand moves it anywhere; its leeway is what framing may shift it
  const Job& job = grip.base;
  const ResolvedLimits limits = resolve(*job.limits);
  const WallLine* wall = job.walls.find(grip.grabbed.wall);
  if (grip.newPiece && wall)
    return slotsInHand(layOut(job, std::make_shared<const WallLine>(*wall)), limits, grip.grabbed.piece, true);
  return slotsInHand(grip.layout, limits, grip.grabbed.piece, false);
}

Shown moveTo(const Grip& grip, const PointerAt& pointer) {
  if (pointer.canvas == CanvasKind::Section)
    return movedInSection(grip, pointer);
  if (pointer.keys.shift && !grip.newPiece)
    return movedUp(grip, pointer);
  const double wanted = grip.before + pointer.at.s - grip.start.at.s;
  const auto piece = findPiece(grip.base, grip.grabbed);
  if (pointer.keys.alt || !piece)
    return movedAlong(grip, roundTo(wanted, freeStep) - grip.before, SnapReason::None, {});
  const Snapped snapped = snapStation(grip.layout, *piece, wanted, pointer.reach);
  Shown shown = movedAlong(grip, snapped.value - grip.before, snapped.reason, snapped.to);
  shown.hand.landing = landingOf(grip, shown.hand.station);
  return shown;
}

Shown moveToStation(const Grip& grip, double station) {
  return movedAlong(grip, station - grip.before, SnapReason::None, {});
}

Shown resizeTo(const Grip& grip, const PointerAt& pointer) {
  const double wanted = grip.before + pointer.at.s - grip.start.at.s;
  const auto piece = findPiece(grip.base, grip.grabbed);
  if (pointer.keys.alt || !piece)
    return resized(grip, roundTo(wanted, freeStep), SnapReason::None, {});
  const Snapped snapped = snapEnd(grip.layout, *piece, wanted, pointer.reach);
  return resized(grip, snapped.value, snapped.reason, snapped.to);
}

Shown resizeToStation(const Grip& grip, double station) { return resized(grip, station, SnapReason::None, {}); }

Interval roomAlong(const Job& job, const Selection& pieces) {
  Interval room{-1e9, 1e9};
  for (const PieceRef& ref : pieces) {
    const WallLine* wall = job.walls.find(ref.wall);
    const auto piece = wall ? findPiece(*wall, ref.piece) : std::nullopt;
    const auto centre = wall ? stationOf(*wall, ref.piece) : std::nullopt;
    if (!piece || !centre)
      continue;
    const double length = wallLength(job, *wall);
    Interval own = around(*centre, 0);
    if (std::holds_alternative<Sill>(*piece) || std::holds_alternative<Opening>(*piece) ||
        std::holds_alternative<Panel>(*piece) || std::holds_alternative<PourStep>(*piece))
      own = stationsOf(job, *wall, ref.piece).value_or(own);
    room = overlap(room, {-own.from, length - own.to});
    if (const Rod* rod = std::get_if<Rod>(&*piece))
      room = overlap(room, rod->side == Side::Right ? Interval{-rod->offset, 1e9} : Interval{-1e9, rod->offset});
  }
  return room.empty() ? Interval{0, 0} : room;
}

std::string calledIn(const Job& job, PieceRef ref) {
  const auto piece = findPiece(job, ref);
  return piece ? std::string(tradeName(kindOf(*piece))) + " " + markOf(*piece) : "wall " + markOf(job, ref);
}

std::string moveName(const Job& job, const Selection& pieces, const std::string& verb, double along, double across,
                     double up) {
  const std::string what = pieces.size() == 1 && movesAlone(pieces) ? calledIn(job, pieces.front())
                                                                     : std::to_string(pieces.size()) + " pieces";
  std::string how;
  if (along != 0)
    how += " " + amountWords(job, along, "right", "left");
  if (across != 0)
    how += " " + amountWords(job, across, "in", "out");
  if (up != 0)
    how += " " + amountWords(job, up, "up", "down");
  return verb + " " + what + how;
}

Selection piecesIn(const WallLayout& layout, Interval s, Interval z) {
  Selection found;
  const Id wall = layout.wall->id;
  const auto touch = [&](Id piece, Interval own, Interval tall) {
    if (!overlap(own, s).empty() && !overlap(tall, z).empty())
      found.push_back({wall, piece});
  };
  for (const ColumnBody& column : layout.columns)
    touch(column.id, column.box.s, column.box.z);
  for (const BarBody& bar : layout.bars) {
    const Interval own{std::min(bar.body.a.s, bar.body.b.s), std::max(bar.body.a.s, bar.body.b.s)};
    const bool whole = s.contains(own.from) && s.contains(own.to); // one that runs along the wall crosses every band
    if (bar.bar->run == BarRun::Upright || whole)
      touch(bar.id, own, {std::min(bar.body.a.z, bar.body.b.z), std::max(bar.body.a.z, bar.body.b.z)});
  }
  for (const AnchorBody& anchor : layout.anchors)
    touch(anchor.id, around(anchor.station, anchor.diameter), {anchor.bottom, anchor.top});
  for (const StrapBody& strap : layout.straps)
    touch(strap.id, strap.plate.s, {strap.depthOfHook.from, strap.plate.z.to});
  return found;
}

} // namespace sillwright
