#include "core/edit/copy_places.h"

#include <algorithm>
#include <cmath>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/edit/copy_room.h"

namespace sillwright {

namespace {

Carry carryTo(FramingEnd from, FramingEnd to) {
  return from.side == to.side ? Carry{to.station - from.station, false} : Carry{to.station + from.station, true};
}

Interval bodyOf(const Column& column) {
  return around(column.station, alongWall(column.makeUp));
}

// The face of a column toward the end it stands at; nothing where it stands at none.
std::optional<FramingEnd> outerFace(const WallLine& wall, double length, const Column& column) {
  const Interval body = bodyOf(column);
  const auto end = endNear(wall, length, body, endOfWallReach);
  return end ? std::optional(FramingEnd{end->side == Side::Left ? body.from : body.to, end->side}) : std::nullopt;
}

// The column that copied pieces belong to: one of them, or that of a strap or rod among them; of several the one
// nearest to the end of its wall, trimmers last.
const Column* columnOf(const Copied& copied) {
  const WallLine& wall = *copied.wall;
  const Column* best = nullptr;
  double least = 0;
  const auto offer = [&](Id id) {
    const Column* column = findIn(wall.columns, id);
    const auto face = column ? outerFace(wall, copied.length, *column) : std::nullopt;
    if (!face)
      return;
    const auto end = endNear(wall, copied.length, bodyOf(*column), endOfWallReach);
    const double trimmerLast = column->role == ColumnRole::Trimmer ? endOfWallReach * 2 : 0;
    const double away = std::abs(face->station - end->station) + trimmerLast;
    if (!best || away < least - tolerance::same) {
      best = column;
      least = away;
    }
  };
  for (const Id id : copied.pieces) {
    offer(id);
    if (const Strap* strap = findIn(wall.straps, id))
      offer(strap->column);
    if (const Rod* rod = findIn(wall.rods, id))
      offer(rod->column);
  }
  return best;
}

std::optional<Carry> atColumn(const WallLine& wall, double length, const Copied& copied, Id id) {
  const Column* column = findIn(wall.columns, id);
  const auto to = column ? outerFace(wall, length, *column) : std::nullopt;
  if (!to)
    return std::nullopt;
  if (const Column* own = columnOf(copied))
    return carryTo(*outerFace(*copied.wall, copied.length, *own), *to);
  const auto from = endNear(*copied.wall, copied.length, stretchOf(copied), copied.length);
  const auto end = endNear(wall, length, bodyOf(*column), endOfWallReach);
  return from && end ? std::optional(carryTo(*from, *end)) : std::nullopt;
}

Carry under(double station, double length, Interval stretch) {
  const double by = roundTo(station - stretch.middle(), tolerance::tapeMark);
  return {std::clamp(by, -stretch.from, std::max(-stretch.from, length - stretch.to)), false};
}

bool isCopied(const Copied& copied, Id wall, Id piece) {
  return copied.wall->id == wall && std::find(copied.pieces.begin(), copied.pieces.end(), piece) != copied.pieces.end();
}

// ---- mirror -----------------------------------------------------------------------------------------------------

std::vector<Id> allWithin(const Job& job, const WallLine& wall, Interval pier) {
  const Interval reach = grown(pier, tolerance::same);
  std::vector<Id> found;
  for (const Id id : piecesOf(wall)) {
    const Bar* bar = findIn(wall.bars, id); // copies go by where it is planned
    const auto own = bar ? std::optional(stationsTaken(*bar, *job.types)) : stationsOf(job, wall, id);
    if (own && reach.contains(own->from) && reach.contains(own->to) && !findIn(wall.shots, id))
      found.push_back(id);
  }
  return found;
}

// One alone among openings.
const Opening* onlyOpening(const WallLine& wall, std::span<const Id> selected) {
  const Opening* only = nullptr;
  for (const Id id : selected)
    if (const Opening* opening = findIn(wall.openings, id)) {
      if (only)
        return nullptr;
      only = opening;
    }
  return only;
}

std::vector<Id> pierBeside(const Job& job, const WallLine& wall, const Opening& opening) {
  const double length = wallLength(job, wall);
  const auto pier = [&](double edge) {
    const bool left = edge == opening.from;
    const Interval whole = pierAt(wall, length, edge + (left ? -tolerance::tapeMark : tolerance::tapeMark));
    return allWithin(job, wall, left ? Interval{whole.from, edge} : Interval{edge, whole.to});
  };
  std::vector<Id> left = opening.from > 0 ? pier(opening.from) : std::vector<Id>{};
  std::vector<Id> right = opening.to < length ? pier(opening.to) : std::vector<Id>{};
  return right.size() > left.size() ? right : left;
}

std::vector<Id> piersOf(const Job& job, const WallLine& wall, std::span<const Id> panels) {
  std::vector<Id> all;
  for (const Id id : panels) {
    const Panel& panel = *findIn(wall.panels, id);
    for (const Id piece : allWithin(job, wall, pierAt(wall, wallLength(job, wall), (panel.from + panel.to) / 2)))
      if (std::find(all.begin(), all.end(), piece) == all.end())
        all.push_back(piece);
  }
  return all;
}

Carry aboutMiddle(double from, double to) {
  return {from + to, true};
}

} // namespace

PastePlace pastePlace(const Job& job, Id id, const Copied& copied, std::optional<Id> column, double station) {
  const WallLine* wall = job.walls.find(id);
  if (!wall || copied.empty())
    return {};
  const double length = wallLength(job, *wall);
  const auto endAt = [&](Interval stretch) { return endNear(*wall, length, stretch, endOfWallReach); };
  if (column && !isCopied(copied, id, *column))
    if (const auto carry = atColumn(*wall, length, copied, *column))
      return {*carry, endAt(bodyOf(*findIn(wall->columns, *column)))};
  const Interval stretch = stretchOf(copied);
  const auto from = endNear(*copied.wall, copied.length, stretch, endOfWallReach);
  const auto to = endAt(around(station, 0));
  if (from && to)
    if (const Carry carry = carryTo(*from, *to); id != copied.wall->id || !(carry == Carry{}))
      return {carry, to};
  return {under(station, length, stretch), std::nullopt};
}

std::optional<MirrorPlace> mirrorPlace(const Job& job, Id id, std::span<const Id> selected) {
  const WallLine* wall = job.walls.find(id);
  if (!wall || selected.empty())
    return std::nullopt;
  const Carry wholeWall = aboutMiddle(0, wallLength(job, *wall));
  MirrorPlace place{{selected.begin(), selected.end()}, wholeWall, std::nullopt};
  const Opening* opening = onlyOpening(*wall, selected);
  if (opening) {
    std::erase(place.pieces, opening->id);
    if (place.pieces.empty())
      place.pieces = pierBeside(job, *wall, *opening);
  } else if (std::all_of(selected.begin(), selected.end(), [&](Id one) { return findIn(wall->panels, one); })) {
    place.pieces = piersOf(job, *wall, selected);
    if (wall->openings.size() == 1)
      opening = &wall->openings.front();
  }
  if (opening) {
    place.carry = aboutMiddle(opening->from, opening->to);
    place.about = opening->id;
  }
  return place.pieces.empty() ? std::nullopt : std::optional(std::move(place));
}

} // namespace sillwright
