#include "core/gesture/repeat_offer.h"

#include <cmath>

#include "core/base/tolerance.h"
#include "core/rules/bolts_in_sill.h"
#include "core/rules/rule_book.h"

namespace sillwright {

namespace {

constexpr double barSpacing = 16, strapSpacing = 48;

double usualSpacing(const WallLayout& layout, PieceKind kind, Interval room) {
  if (kind == PieceKind::Bolt)
    return spacingLimit(layout, resolve(*layout.limits), room).inches;
  return kind == PieceKind::Bar ? barSpacing : strapSpacing;
}

} // namespace

std::optional<RepeatOffer> repeatOffer(const Job& job, const WallLayout& layout, std::span<const Id> selected) {
  const WallLine& wall = *layout.wall;
  std::vector<Id> able;
  for (const Id id : selected)
    if (able.size() < 3 && repeatRoom(job, {wall.id, id}))
      able.push_back(id);
  if (able.empty())
    return std::nullopt;
  const Id first = able.front();
  const PieceKind kind = kindOf(*findPiece(wall, first));
  const double from = repeatedFrom(wall, first);
  const Interval room = repeatRoom(job, {wall.id, first})->stations;
  RepeatOffer offer{first, {}};
  offer.repeat.toward = room.to - from >= from - room.from ? Side::Right : Side::Left;
  const bool right = offer.repeat.toward == Side::Right;
  offer.repeat.spacing = usualSpacing(layout, kind, right ? Interval{from, room.to} : Interval{room.from, from});
  if (able.size() == 2 && kindOf(*findPiece(wall, able[1])) == kind)
    if (const double apart = std::abs(repeatedFrom(wall, able[1]) - from); apart >= tolerance::tapeMark)
      offer.repeat.spacing = apart;
  return offer;
}

} // namespace sillwright
