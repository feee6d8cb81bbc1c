// One wall made two.
#include <algorithm>
#include <cmath>
#include <set>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/edit/operations.h"
#include "core/edit/plan_edits.h"
#include "core/edit/wall_edits.h"
#include "core/edit/wall_shift.h"

namespace sillwright {

namespace {

std::string called(const WallLine& wall, Id piece) {
  const auto found = findPiece(wall, piece);
  return std::string(tradeName(kindOf(*found))) + " " + markOf(*found);
}

// What may not be cut and stands across a station; empty for none.
std::string across(const Job& job, const WallLine& wall, double at) {
  for (const Id id : piecesOf(wall)) {
    const Piece piece = *findPiece(wall, id);
    const bool whole = std::holds_alternative<Opening>(piece) || std::holds_alternative<Panel>(piece) ||
                       std::holds_alternative<Column>(piece);
    const auto s = whole ? stationsOf(job, wall, id) : std::nullopt;
    if (s && s->from < at - tolerance::same && s->to > at + tolerance::same)
      return called(wall, id) + " stands across " + printLength(at, job.units);
  }
  return {};
}

// ---- stretches: what is left of the cut stays in the piece, what is right of it becomes another one --------------
Interval stretchOf(const PourStep& piece) {
  return {piece.from, piece.to};
}
Interval stretchOf(const Sill& piece) {
  return {piece.from, piece.to};
}
Interval stretchOf(const Bar& piece) {
  return piece.run == BarRun::Along ? Interval{placeOf(piece).a.s, placeOf(piece).b.s} : Interval{0, -1};
}

void keepLeft(PourStep& piece, double at) {
  piece.to = at;
}
void keepRight(PourStep& piece, double at) {
  piece.from = at;
}
void keepLeft(Sill& piece, double at) {
  piece.to = at;
  std::erase_if(piece.splices, [&](double splice) { return splice > at - tolerance::same; });
}
void keepRight(Sill& piece, double at) {
  piece.from = at;
  std::erase_if(piece.splices, [&](double splice) { return splice < at + tolerance::same; });
}

// The point of a bar at a station.
Point3 pointAt(const BarPlace& place, double at) {
  const double part = (at - place.a.s) / (place.b.s - place.a.s);
  return {at, place.a.d + (place.b.d - place.a.d) * part, place.a.z + (place.b.z - place.a.z) * part};
}
void cutBar(Bar& bar, double at, bool left) {
  for (BarPlace* place : {&bar.planned, bar.found ? &*bar.found : nullptr})
    if (place && place->a.s < at && place->b.s > at)
      (left ? place->b : place->a) = pointAt(*place, at);
}
void keepLeft(Bar& piece, double at) {
  cutBar(piece, at, true);
}
void keepRight(Bar& piece, double at) {
  cutBar(piece, at, false);
}

// The pieces that are new have no mark yet; their ids go to `added`.
template <class List> void cut(Job& job, List& list, double at, std::vector<Id>& added) {
  List right;
  for (auto& piece : list) {
    const Interval s = stretchOf(piece);
    if (!(s.from < at - tolerance::same && s.to > at + tolerance::same))
      continue;
    auto other = piece;
    other.id = takeId(job);
    added.push_back(other.id);
    other.mark.clear();
    other.extra.clear();
    keepLeft(piece, at);
    keepRight(other, at);
    right.push_back(std::move(other));
  }
  list.insert(list.end(), right.begin(), right.end());
}

void giveMark(Job& job, PieceRef ref) {
  Piece piece = *findPiece(job, ref);
  const std::string mark = freshMark(job, kindOf(piece));
  std::visit([&](auto& item) { item.mark = mark; }, piece);
  job = replacePiece(job, ref.wall, piece);
}

// ---- studs keep their places ------------------------------------------------------------------------------------
double firstAfter(double first, double spacing, double gone) {
  double left = std::fmod(first - gone, spacing);
  if (left < tolerance::same)
    left += spacing;
  return left < tolerance::same ? spacing : left;
}

void splitStuds(WallLine& left, WallLine& right, double at, double length) {
  if (!left.studs || left.studs->spacing <= 0)
    return;
  const StudLayout whole = *left.studs;
  if (whole.from == Side::Left)
    right.studs->first = whole.first > at ? whole.first - at : firstAfter(whole.first, whole.spacing, at);
  else
    left.studs->first =
        whole.first > length - at ? whole.first - (length - at) : firstAfter(whole.first, whole.spacing, length - at);
}

} // namespace

Result<SplitWall> splitWall(const Job& job, Id id, double at) {
  const WallLine* found = job.walls.find(id);
  const Corner* from = found ? findCorner(job, found->startCorner) : nullptr;
  const Corner* to = found ? findCorner(job, found->endCorner) : nullptr;
  const double length = found ? wallLength(job, *found) : 0;
  if (!from || !to || !(at > tolerance::tapeMark && at < length - tolerance::tapeMark))
    return Problem{"station", "lies not within the wall (0 … " + printLength(length, job.units) + ")"};
  if (const std::string piece = across(job, *found, at); !piece.empty())
    return Problem{"station", piece};

  SplitWall made{job, {}, {}};
  WallLine left = *found;
  std::vector<Id> added;
  cut(made.job, left.steps, at, added);
  cut(made.job, left.sills, at, added);
  cut(made.job, left.bars, at, added);
  made.corner = takeId(made.job);
  const double part = at / length;
  const Corner corner{
      made.corner, {from->at.x + (to->at.x - from->at.x) * part, from->at.y + (to->at.y - from->at.y) * part}, {}};
  made.job.corners.edit([&](std::vector<Corner>& list) { list.push_back(corner); });

  WallLine right = left;
  right.id = made.second = takeId(made.job);
  right.mark = nextWallMark(job);
  right.extra.clear();
  right.startCorner = left.endCorner = made.corner;
  left.endFraming = EndFraming::Butts;
  right.startFraming = EndFraming::RunsBy;
  splitStuds(left, right, at, length);
  std::set<Id> ofRight;
  for (const Id piece : piecesOf(left)) {
    const Piece each = *findPiece(left, piece);
    const Rod* rod = std::get_if<Rod>(&each); // stands where its column does
    if (stationOf(left, rod ? rod->column : piece).value_or(0) > at)
      ofRight.insert(piece);
  }
  for (WallLine* half : {&left, &right}) {
    const auto elsewhere = [&, other = half == &left](Id piece) { return ofRight.contains(piece) == other; };
    forEachList(*half, [&](auto& list) { std::erase_if(list, [&](const auto& item) { return elsewhere(item.id); }); });
    std::erase_if(half->readings, [&](const Reading& reading) { return elsewhere(reading.piece); });
    for (Strap& strap : half->straps)
      if (strap.column && !findIn(half->columns, strap.column))
        strap.column = {};
  }
  shiftWall(right, -at);
  made.job.walls.replace(std::move(left));
  made.job.walls.add(std::move(right));
  for (const Id piece : added)
    giveMark(made.job, {made.second, piece});
  return made;
}

} // namespace sillwright
