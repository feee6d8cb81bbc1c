// Columns that framing may shift, within their leeway.
#include <algorithm>
#include <cmath>

#include "core/refit/marks.h"
#include "core/refit/site.h"
#include "core/refit/wall_problem.h"

namespace sillwright {

namespace {

using sequence::Mark;

// Straps, rods and bolts are other pieces of the problem, so are the other columns that may shift.
WallLayout withNothingThatMoves(const Translation& t, Id but) {
  WallLine wall = *t.layout.wall;
  wall.straps.clear();
  wall.bolts.clear();
  wall.rods.clear();
  std::erase_if(wall.columns,
                [&](const Column& column) { return column.id != but && anchoredIndex(t.out, column.id); });
  return layOut(std::make_shared<const WallLine>(wall), t.layout.types, t.layout.limits, t.layout.marks,
                t.layout.place);
}

bool gives(const Translation& t, const Column& column) {
  return std::find(t.givers.begin(), t.givers.end(), column.id) != t.givers.end();
}

void addGround(Translation& t, const Column& column, double mayGive, sequence::Anchored& piece) {
  const WallLayout bare = withNothingThatMoves(t, column.id);
  const Site site = siteOf(bare, t.all);
  Column freed = column;
  freed.leeway = mayGive;
  Blocks blocks(site);
  blockColumn(site, freed, blocks);
  for (const Blocked& each : blocks.take())
    t.needs.block(piece.ground, {Requirement::Kind::Rule, each.rule, {column.id}}, each.stations, piece.outermost);
}

void addColumn(Translation& t, const Column& column) {
  const double mayGive = gives(t, column) ? std::max(column.leeway, framingGives) : column.leeway;
  const bool isFixed = stays(t.wishes, column.id);
  const Column* before = findIn(t.reference.columns, column.id);
  sequence::Anchored piece;
  piece.own = marksIn(grown(around(column.station, 0), column.leeway));
  piece.outermost = marksIn(grown(around(column.station, 0), mayGive));
  const Mark now = nearestMark(column.station);
  for (sequence::Stretch* stretch : {&piece.own, &piece.outermost}) // off the tape's marks it counts as at the nearest
    *stretch = {std::min(stretch->from, now), std::max(stretch->to, now)};
  piece.ownNeed = t.needs.of({Requirement::Kind::Leeway, RuleId::ColumnSill, {column.id}});
  piece.reference = before && !isFixed ? nearestMark(before->station) : now;
  piece.set = isSet(*t.layout.wall, column.id);
  if (isFixed)
    piece.fixed = t.needs.of({Requirement::Kind::Stays, RuleId::ColumnSill, {column.id}});
  addGround(t, column, mayGive, piece);
  t.out.problem.anchored.push_back(std::move(piece));
}

// In the order they stand in, none over another.
void keepApart(Translation& t, const Column& left, const Column& right) {
  const double half = (alongWall(left.makeUp) + alongWall(right.makeUp)) / 2;
  sequence::Distance distance;
  distance.left = static_cast<int>(*anchoredIndex(t.out, left.id));
  distance.right = static_cast<int>(*anchoredIndex(t.out, right.id));
  distance.allowed = {{markFrom(half), sequence::kFar}};
  distance.need = t.needs.of({Requirement::Kind::Rule, RuleId::ColumnOverlap, {left.id, right.id}});
  const auto& pieces = t.out.problem.anchored;
  const Mark nearest = pieces[distance.right].outermost.from - pieces[distance.left].outermost.to;
  if (nearest < distance.allowed.front().from)
    t.out.problem.distances.push_back(distance);
}

} // namespace

std::optional<Problem> addColumns(Translation& t) {
  std::vector<const Column*> columns;
  for (const Column& column : t.layout.wall->columns)
    if (column.leeway >= tolerance::tapeMark || gives(t, column))
      columns.push_back(&column);
  std::stable_sort(columns.begin(), columns.end(),
                   [](const Column* a, const Column* b) { return a->station < b->station; });
  for (const Column* column : columns)
    t.out.anchored.push_back(column->id);
  for (const Column* column : columns)
    addColumn(t, *column);
  for (std::size_t i = 0; i + 1 < columns.size(); ++i)
    keepApart(t, *columns[i], *columns[i + 1]);
  return std::nullopt;
}

} // namespace sillwright
