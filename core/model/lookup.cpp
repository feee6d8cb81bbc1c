#include "core/model/lookup.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace sillwright {

namespace {

struct KindWords {
  std::string_view name;
  std::string_view prefix;
};

const KindWords& wordsOf(PieceKind kind) {
  static constexpr std::array<KindWords, 10> table{{{"pour-line step", "D"},
                                                    {"sill", "L"},
                                                    {"opening", "O"},
                                                    {"column", "C"},
                                                    {"panel", "P"},
                                                    {"strap", "S"},
                                                    {"anchor bolt", "B"},
                                                    {"rod", "R"},
                                                    {"bar", "V"},
                                                    {"grade shot", "G"}}};
  return table[static_cast<std::size_t>(kind)];
}

Interval stretch(double a, double b) { return {std::min(a, b), std::max(a, b)}; }

Interval stationsIn(const Job&, const PourStep& step) { return {step.from, step.to}; }
Interval stationsIn(const Job&, const Sill& sill) { return {sill.from, sill.to}; }
Interval stationsIn(const Job&, const Opening& opening) { return {opening.from, opening.to}; }
Interval stationsIn(const Job&, const Column& column) { return around(column.station, alongWall(column.makeUp)); }
Interval stationsIn(const Job&, const Panel& panel) { return {panel.from, panel.to}; }
Interval stationsIn(const Job& job, const Strap& strap) {
  const StrapType* type = findStrapType(*job.types, strap.type);
  return around(strap.station, type ? type->plateWidth : 0);
}
Interval stationsIn(const Job& job, const Bolt& bolt) {
  const BoltType* type = findBoltType(*job.types, bolt.type);
  return around(bolt.station, type ? type->diameter : 0);
}
Interval stationsIn(const Job&, const Rod& rod) { return {rod.offset, rod.offset}; }
Interval stationsIn(const Job&, const Bar& bar) {
  const BarPlace& place = placeOf(bar);
  return stretch(place.a.s, place.b.s);
}
Interval stationsIn(const Job&, const GradeShot& shot) { return {shot.station, shot.station}; }

} // namespace

std::string_view tradeName(PieceKind kind) { return wordsOf(kind).name; }
std::string_view markPrefix(PieceKind kind) { return wordsOf(kind).prefix; }

std::optional<Piece> findPiece(const WallLine& wall, Id piece) {
  std::optional<Piece> found;
  forEachList(wall, [&](const auto& list) {
    if (const auto* item = findIn(list, piece))
      found = *item;
  });
  return found;
}

std::optional<Piece> findPiece(const Job& job, PieceRef ref) {
  const WallLine* wall = job.walls.find(ref.wall);
  return wall ? findPiece(*wall, ref.piece) : std::nullopt;
}

Id idOf(const Piece& piece) {
  return std::visit([](const auto& item) { return item.id; }, piece);
}

const std::string& markOf(const Piece& piece) {
  return std::visit([](const auto& item) -> const std::string& { return item.mark; }, piece);
}

std::string markOf(const Job& job, PieceRef ref) {
  const WallLine* wall = job.walls.find(ref.wall);
  if (!wall)
    return {};
  if (!ref.piece || ref.piece == ref.wall)
    return wall->mark;
  std::string mark;
  forEachList(*wall, [&](const auto& list) {
    if (const auto* item = findIn(list, ref.piece))
      mark = item->mark;
  });
  return mark;
}

std::optional<Interval> stationsOf(const Job& job, const WallLine& wall, Id piece) {
  const auto found = findPiece(wall, piece);
  if (!found)
    return std::nullopt;
  if (const Rod* rod = std::get_if<Rod>(&*found)) {
    const auto station = stationOf(wall, rod->id);
    return station ? std::optional(around(*station, 0)) : std::nullopt;
  }
  return std::visit([&](const auto& item) { return stationsIn(job, item); }, *found);
}

std::optional<double> stationOf(const WallLine& wall, Id piece) {
  const auto found = findPiece(wall, piece);
  if (!found)
    return std::nullopt;
  struct Visitor {
    const WallLine& wall;
    std::optional<double> operator()(const PourStep& p) const { return (p.from + p.to) / 2; }
    std::optional<double> operator()(const Sill& p) const { return (p.from + p.to) / 2; }
    std::optional<double> operator()(const Opening& p) const { return (p.from + p.to) / 2; }
    std::optional<double> operator()(const Panel& p) const { return (p.from + p.to) / 2; }
    std::optional<double> operator()(const Column& p) const { return p.station; }
    std::optional<double> operator()(const Strap& p) const { return p.station; }
    std::optional<double> operator()(const Bolt& p) const { return p.station; }
    std::optional<double> operator()(const Rod& p) const {
      const Column* column = findIn(wall.columns, p.column);
      if (!column)
        return std::nullopt;
      const double half = alongWall(column->makeUp) / 2 + p.offset;
      return column->station + (p.side == Side::Right ? half : -half);
    }
    std::optional<double> operator()(const Bar& p) const { return (placeOf(p).a.s + placeOf(p).b.s) / 2; }
    std::optional<double> operator()(const GradeShot& p) const { return p.station; }
  };
  return std::visit(Visitor{wall}, *found);
}

std::vector<Id> piecesOf(const WallLine& wall) {
  std::vector<Id> ids;
  forEachList(wall, [&](const auto& list) {
    for (const auto& item : list)
      ids.push_back(item.id);
  });
  return ids;
}

std::size_t pieceCount(const WallLine& wall) {
  std::size_t count = 0;
  forEachList(wall, [&](const auto& list) { count += list.size(); });
  return count;
}

const Corner* findCorner(const Job& job, Id corner) {
  const auto& list = *job.corners;
  const auto found = std::lower_bound(list.begin(), list.end(), corner,
                                      [](const Corner& item, Id id) { return item.id < id; });
  return found != list.end() && found->id == corner ? &*found : nullptr;
}

const WallEndMark* findMark(const Job& job, std::string_view mark) {
  for (const WallEndMark& row : *job.marks)
    if (row.mark == mark)
      return &row;
  return nullptr;
}

double wallLength(const Job& job, const WallLine& wall) {
  const Corner* from = findCorner(job, wall.startCorner);
  const Corner* to = findCorner(job, wall.endCorner);
  return from && to ? std::hypot(to->at.x - from->at.x, to->at.y - from->at.y) : 0.0;
}

} // namespace sillwright
