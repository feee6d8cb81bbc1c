#include "core/edit/operations.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <set>

#include "core/base/tolerance.h"

namespace sillwright {

namespace {

// A copy of the job with one wall changed; the job itself where there is no such wall.
template <class Change> Job withWall(const Job& job, Id wall, Change&& change) {
  const WallLine* old = job.walls.find(wall);
  if (!old)
    return job;
  WallLine line = *old;
  change(line);
  Job next = job;
  next.walls.replace(std::move(line));
  return next;
}

// The number of a mark "S12" with prefix "S"; 0 where it has none.
std::uint32_t numberOf(std::string_view mark, std::string_view prefix) {
  if (mark.substr(0, prefix.size()) != prefix)
    return 0;
  mark.remove_prefix(prefix.size());
  std::uint32_t number = 0;
  const auto read = std::from_chars(mark.data(), mark.data() + mark.size(), number);
  return read.ec == std::errc{} && read.ptr == mark.data() + mark.size() ? number : 0;
}

bool markUsed(const Job& job, const Piece& piece) {
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    bool used = false;
    forEachList(job.walls[i], [&](const auto& list) {
      for (const auto& item : list)
        used = used || (item.mark == markOf(piece) && Piece(item).index() == piece.index());
    });
    if (used)
      return true;
  }
  return false;
}

bool same(double a, double b) { return std::abs(a - b) < tolerance::same; }

// ---- moving one piece of each kind ------------------------------------------------------------------------------
struct Step3 {
  double along = 0;
  double across = 0;
  double up = 0;
};

template <class Stretch> void moveStretch(Stretch& piece, double along) {
  piece.from += along;
  piece.to += along;
}

void moveBy(PourStep& piece, const Step3& by) { moveStretch(piece, by.along); }
void moveBy(Panel& piece, const Step3& by) { moveStretch(piece, by.along); }
void moveBy(Column& piece, const Step3& by) { piece.station += by.along; }
void moveBy(GradeShot& piece, const Step3& by) { piece.station += by.along; }

void moveBy(Sill& piece, const Step3& by) {
  moveStretch(piece, by.along);
  for (double& splice : piece.splices)
    splice += by.along;
}

void moveBy(Opening& piece, const Step3& by) {
  moveStretch(piece, by.along);
  if (piece.kind == OpeningKind::Window) {
    piece.sillHeight += by.up;
    piece.headHeight += by.up;
  }
}

void moveBy(Strap& piece, const Step3& by) {
  piece.station += by.along;
  piece.heightOffset += by.up;
}

void moveBy(Bolt& piece, const Step3& by) {
  piece.station += by.along;
  piece.depth += by.across;
  piece.projection += by.up;
}

void moveBy(Rod& piece, const Step3& by) {
  piece.offset += piece.side == Side::Right ? by.along : -by.along;
  piece.depth += by.across;
  piece.projection += by.up;
}

void moveBy(Bar& piece, const Step3& by) {
  BarPlace& place = piece.found ? *piece.found : piece.planned;
  for (Point3* end : {&place.a, &place.b}) {
    end->s += by.along;
    end->d += by.across;
    end->z += by.up;
  }
}

// ---- ends of stretches ------------------------------------------------------------------------------------------
template <class Stretch> void setEnd(Stretch& piece, Side end, double station) {
  if (end == Side::Left)
    piece.from = std::min(station, piece.to - tolerance::tapeMark);
  else
    piece.to = std::max(station, piece.from + tolerance::tapeMark);
}

void setEndOf(WallLine&, PourStep& piece, Side end, double station) { setEnd(piece, end, station); }
void setEndOf(WallLine&, Panel& piece, Side end, double station) { setEnd(piece, end, station); }

void setEndOf(WallLine&, Sill& piece, Side end, double station) {
  setEnd(piece, end, station);
  std::erase_if(piece.splices, [&](double splice) { return splice <= piece.from || splice >= piece.to; });
}

void setEndOf(WallLine& wall, Opening& piece, Side end, double station) {
  const Opening before = piece;
  setEnd(piece, end, station);
  for (PourStep& step : wall.steps) {
    if (end == Side::Left && same(step.from, before.from))
      setEnd(step, end, piece.from);
    if (end == Side::Right && same(step.to, before.to))
      setEnd(step, end, piece.to);
  }
}

void setEndOf(WallLine&, Bar& piece, Side end, double station) {
  if (piece.run != BarRun::Along)
    return;
  BarPlace& place = piece.found ? *piece.found : piece.planned;
  if (end == Side::Left)
    place.a.s = std::min(station, place.b.s - tolerance::tapeMark);
  else
    place.b.s = std::max(station, place.a.s + tolerance::tapeMark);
}

template <class Other> void setEndOf(WallLine&, Other&, Side, double) {}

// ---- removing ---------------------------------------------------------------------------------------------------
void removeFrom(WallLine& wall, std::set<Id>& gone) {
  for (const Rod& rod : wall.rods)
    if (gone.contains(rod.column))
      gone.insert(rod.id);
  forEachList(wall, [&](auto& list) { std::erase_if(list, [&](const auto& item) { return gone.contains(item.id); }); });
  std::erase_if(wall.readings, [&](const Reading& reading) { return gone.contains(reading.piece); });
  for (Strap& strap : wall.straps)
    if (gone.contains(strap.column))
      strap.column = {};
}

void removeWall(Job& job, Id id, std::set<Id>& gone) {
  const WallLine* wall = job.walls.find(id);
  if (!wall)
    return;
  for (const Id piece : piecesOf(*wall))
    gone.insert(piece);
  const Id ends[] = {wall->startCorner, wall->endCorner};
  job.walls.remove(id);
  for (const Id corner : ends)
    if (job.walls.atCorner(corner).empty() && findCorner(job, corner)) {
      job.corners.edit([&](auto& list) { std::erase_if(list, [&](const Corner& c) { return c.id == corner; }); });
      const auto ofIt = [&](const Diagonal& d) { return d.from == corner || d.to == corner; };
      if (std::any_of(job.diagonals->begin(), job.diagonals->end(), ofIt))
        job.diagonals.edit([&](auto& list) { std::erase_if(list, ofIt); });
    }
}

} // namespace

std::string freshMark(const Job& job, PieceKind kind) {
  const std::string prefix(markPrefix(kind));
  std::set<std::uint32_t> used;
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    forEachList(job.walls[i], [&](const auto& list) {
      for (const auto& item : list)
        if (const std::uint32_t number = numberOf(item.mark, prefix))
          used.insert(number);
    });
  std::uint32_t number = 1;
  for (const std::uint32_t taken : used)
    if (taken == number)
      ++number;
  return prefix + std::to_string(number);
}

std::pair<Job, Id> addPiece(const Job& job, Id wall, Piece piece) {
  if (!job.walls.find(wall))
    return {job, Id{}};
  Job next = job;
  const Id id = takeId(next);
  const bool needsMark = markOf(piece).empty() || markUsed(job, piece);
  const std::string mark = needsMark ? freshMark(job, kindOf(piece)) : markOf(piece);
  std::visit(
      [&](auto& item) {
        item.id = id;
        item.mark = mark;
      },
      piece);
  next = withWall(next, wall, [&](WallLine& line) {
    forEachList(line, [&](auto& list) {
      using Item = typename std::decay_t<decltype(list)>::value_type;
      if (Item* item = std::get_if<Item>(&piece))
        list.push_back(std::move(*item));
    });
  });
  return {std::move(next), id};
}

Job replacePiece(const Job& job, Id wall, const Piece& piece) {
  return withWall(job, wall, [&](WallLine& line) {
    forEachList(line, [&](auto& list) {
      using Item = typename std::decay_t<decltype(list)>::value_type;
      if (const Item* item = std::get_if<Item>(&piece))
        if (Item* old = findIn(list, item->id))
          *old = *item;
    });
  });
}

Job removePieces(const Job& job, std::span<const PieceRef> pieces) {
  Job next = job;
  std::set<Id> gone;
  std::set<Id> walls;
  for (const PieceRef& ref : pieces) {
    if (ref.piece && ref.piece != ref.wall) {
      gone.insert(ref.piece);
      walls.insert(ref.wall);
    } else {
      removeWall(next, ref.wall, gone);
    }
  }
  for (const Id wall : walls)
    next = withWall(next, wall, [&](WallLine& line) { removeFrom(line, gone); });
  return next;
}

// Added before others are taken out: a mark that is read on the forms never goes over to another piece.
Job changePieces(const Job& job, Id wall, std::span<const PieceChange> changes) {
  Job next = job;
  std::vector<PieceRef> gone;
  for (const auto& [before, after] : changes) {
    if (before && after && idOf(*before) == idOf(*after))
      next = replacePiece(next, wall, *after);
    else if (after && !before)
      next = addPiece(next, wall, *after).first;
    else if (before && !after && idOf(*before))
      gone.push_back({wall, idOf(*before)});
  }
  return removePieces(next, gone);
}

Job movePieces(const Job& job, std::span<const PieceRef> pieces, double along, double across, double up) {
  std::set<Id> walls;
  std::set<Id> moved;
  for (const PieceRef& ref : pieces) {
    walls.insert(ref.wall);
    moved.insert(ref.piece);
  }
  Job next = job;
  for (const Id id : walls)
    next = withWall(next, id, [&](WallLine& line) {
      std::set<Id> here = moved;
      for (const Opening& opening : line.openings)
        for (const PourStep& step : line.steps)
          if (moved.contains(opening.id) && same(step.from, opening.from) && same(step.to, opening.to))
            here.insert(step.id);
      for (Rod& rod : line.rods) // its column carries it along the wall
        if (here.contains(rod.id) && here.contains(rod.column)) {
          moveBy(rod, {0, across, up});
          here.erase(rod.id);
        }
      forEachList(line, [&](auto& list) {
        for (auto& item : list)
          if (here.contains(item.id))
            moveBy(item, {along, across, up});
      });
    });
  return next;
}

Job moveEnd(const Job& job, PieceRef piece, Side end, double station) {
  return withWall(job, piece.wall, [&](WallLine& line) {
    forEachList(line, [&](auto& list) {
      if (auto* item = findIn(list, piece.piece))
        setEndOf(line, *item, end, station);
    });
  });
}

Job setStation(const Job& job, PieceRef piece, double station) {
  const WallLine* wall = job.walls.find(piece.wall);
  const auto now = wall ? stationOf(*wall, piece.piece) : std::nullopt;
  return now ? movePieces(job, std::span(&piece, 1), station - *now) : job;
}

Job tapeDiagonal(const Job& job, Id from, Id to, std::optional<double> measured) {
  if (from == to || !findCorner(job, from) || !findCorner(job, to))
    return job;
  Job changed = job;
  const auto between = [&](const Diagonal& d) { return (d.from == from && d.to == to) || (d.from == to && d.to == from); };
  const auto old = std::find_if(job.diagonals->begin(), job.diagonals->end(), between);
  if (!measured && old == job.diagonals->end())
    return job;
  Diagonal taped = old != job.diagonals->end() ? *old : Diagonal{};
  if (!taped.id)
    taped = {takeId(changed), from, to, 0, {}};
  changed.diagonals.edit([&](std::vector<Diagonal>& all) {
    if (!measured)
      return void(std::erase_if(all, between));
    taped.measured = *measured;
    const auto place = std::find_if(all.begin(), all.end(), between);
    if (place == all.end())
      all.push_back(taped);
    else
      *place = taped;
  });
  return changed;
}

} // namespace sillwright
