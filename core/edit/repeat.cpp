#include "core/edit/repeat.h"

#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"
#include "core/rules/limits.h"
#include "core/standards/bars.h"
#include "core/standards/cover.h"

namespace sillwright {

namespace {

constexpr int most = 1000; // copies of one piece

// The piece of sill over a station; the whole wall where there is none.
Interval sillPieceAt(const WallLine& wall, double length, double station) {
  for (const Sill& sill : wall.sills) {
    if (station < sill.from || station > sill.to)
      continue;
    Interval piece{sill.from, sill.to};
    for (const double splice : sill.splices) {
      if (splice <= station)
        piece.from = std::max(piece.from, splice);
      else
        piece.to = std::min(piece.to, splice);
    }
    return overlap(piece, {0, length});
  }
  return {0, length};
}

RepeatRoom keptOff(Interval whole, double off) {
  return {whole, grown(whole, -off)};
}

std::optional<RepeatRoom> roomFor(const Job& job, const WallLine& wall, const Bolt& bolt) {
  const BoltType* type = findBoltType(*job.types, bolt.type);
  const double off = type ? resolvedValues(*job.limits)[LimitKey::BoltEndNearDiameters] * type->diameter : 0;
  return keptOff(sillPieceAt(wall, wallLength(job, wall), bolt.station), off);
}

std::optional<RepeatRoom> roomFor(const Job& job, const WallLine& wall, const Strap& strap) {
  const StrapType* type = findStrapType(*job.types, strap.type);
  return keptOff(sillPieceAt(wall, wallLength(job, wall), strap.station), type ? type->plateWidth / 2 : 0);
}

std::optional<RepeatRoom> roomFor(const Job& job, const WallLine& wall, const Bar& bar) {
  if (bar.run != BarRun::Upright)
    return std::nullopt;
  const auto size = barSize(bar.size);
  const double off = requiredCover(Exposure::ExposedOrGround, bar.size) + (size ? size->diameter / 2 : 0);
  return keptOff({0, wallLength(job, wall)}, off);
}

template <class Other> std::optional<RepeatRoom> roomFor(const Job&, const WallLine&, const Other&) {
  return std::nullopt;
}

} // namespace

std::optional<RepeatRoom> repeatRoom(const Job& job, PieceRef ref) {
  const WallLine* wall = job.walls.find(ref.wall);
  const auto piece = wall ? findPiece(*wall, ref.piece) : std::nullopt;
  if (!piece)
    return std::nullopt;
  return std::visit([&](const auto& item) { return roomFor(job, *wall, item); }, *piece);
}

double repeatedFrom(const WallLine& wall, Id piece) {
  const Bar* bar = findIn(wall.bars, piece);
  return bar ? bar->planned.a.s : stationOf(wall, piece).value_or(0);
}

std::vector<double> repeatStations(const Job& job, PieceRef piece, const Repeat& repeat) {
  std::vector<double> stations;
  const auto room = repeatRoom(job, piece);
  if (!room || !(repeat.spacing >= tolerance::tapeMark))
    return stations;
  const double first = repeatedFrom(*job.walls.find(piece.wall), piece.piece);
  const double step = repeat.toward == Side::Right ? repeat.spacing : -repeat.spacing;
  for (int i = 1; i <= std::min(repeat.count.value_or(most), most); ++i) {
    const double at = first + step * i;
    if (!grown(room->stations, tolerance::same).contains(at))
      break;
    stations.push_back(at);
  }
  return stations;
}

Copies repeated(const Job& job, Id wall, std::span<const Id> pieces, const Repeat& repeat) {
  Copies all{job, {}, {}};
  for (const Id id : pieces) {
    const std::vector<double> stations = repeatStations(job, {wall, id}, repeat);
    if (stations.empty())
      continue;
    const double first = repeatedFrom(*job.walls.find(wall), id);
    std::vector<Carry> carries;
    for (const double at : stations)
      carries.push_back({at - first, false});
    Copies made = putCopies(all.job, wall, copyOf(job, wall, std::span(&id, 1)), carries);
    all.job = std::move(made.job);
    all.made.insert(all.made.end(), made.made.begin(), made.made.end());
    all.leftOut.insert(all.leftOut.end(), made.leftOut.begin(), made.leftOut.end());
  }
  return all;
}

} // namespace sillwright
