// Columns on their sill, out of openings and out of each other.
#include <algorithm>
#include <cmath>

#include "core/rules/measure.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

// The sill piece that carries most of a column.
const SillPiece* sillUnder(const WallLayout& layout, const ColumnBody& column) {
  const SillPiece* best = nullptr;
  for (const SillPiece& piece : layout.sills)
    if (gap(piece.box.s, column.box.s) < -tolerance::same &&
        (!best || gap(piece.box.s, column.box.s) < gap(best->box.s, column.box.s)))
      best = &piece;
  return best;
}

bool overSplice(const WallLayout& layout, const ColumnBody& column, const SillPiece& carrier, double end) {
  return std::any_of(layout.sills.begin(), layout.sills.end(), [&](const SillPiece& other) {
    return other.sill == carrier.sill && other.index != carrier.index &&
           grown(other.box.s, tolerance::same).contains(end) && gap(other.box.s, column.box.s) < -tolerance::same;
  });
}

void checkEnd(const WallLayout& layout, double allowed, const ColumnBody& column, const SillPiece& piece, bool left,
              Drafts& drafts) {
  const double end = left ? piece.box.s.from : piece.box.s.to;
  const double off = left ? end - column.box.s.from : column.box.s.to - end;
  const bool splice = overSplice(layout, column, piece, end);
  if (!over(off, splice ? 0 : allowed))
    return;
  const Box3 region{left ? Interval{column.box.s.from, end} : Interval{end, column.box.s.to}, column.box.d,
                    piece.box.z};
  Draft& draft =
      report(drafts, layout, RuleId::ColumnSill, Level::Fix, {column.id, piece.sill},
             {off, splice ? 0 : allowed, region, Wanted::AtMost, Unit::Inch, static_cast<std::uint8_t>(splice)});
  draft.corrections.push_back(move(column.id, Field::Station, column.box.s.middle(), left ? off : -off));
  if (!splice) // the sill goes on under it
    draft.corrections.push_back(move(piece.sill, left ? Field::LeftEnd : Field::RightEnd, end, left ? -off : off));
}

// Both start at the outside edge of the sill, so a column deeper than its sill stands over on the inside.
void checkInside(const WallLayout& layout, double allowed, const ColumnBody& column, const SillPiece& piece,
                 Drafts& drafts) {
  const Interval off{piece.box.d.to, column.box.d.to};
  if (over(off.length(), allowed))
    report(drafts, layout, RuleId::ColumnSill, Level::Fix, {column.id, piece.sill},
           {off.length(),
            allowed,
            {overlap(column.box.s, piece.box.s), off, piece.box.z},
            Wanted::AtMost,
            Unit::Inch,
            2});
}

// Onto the sills on either side, the nearest first.
std::vector<Correction> ontoSills(const WallLayout& layout, const ColumnBody& column) {
  std::vector<Correction> ways;
  for (const SillPiece& piece : layout.sills) {
    const bool right = piece.box.s.from > column.box.s.middle();
    const double on = right ? piece.box.s.from - column.box.s.from : piece.box.s.to - column.box.s.to;
    ways.push_back(move(column.id, Field::Station, column.box.s.middle(), on));
  }
  std::stable_sort(ways.begin(), ways.end(),
                   [](const Correction& a, const Correction& b) { return std::abs(a.by) < std::abs(b.by); });
  return ways;
}

} // namespace

void checkColumnSill(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  if (layout.sills.empty())
    return;
  const double allowed = limits[LimitKey::ColumnOnSill];
  for (const ColumnBody& column : layout.columns) {
    const SillPiece* piece = sillUnder(layout, column);
    if (!piece) {
      const double pour = pourAt(layout, column.box.s.middle());
      Draft& draft = report(
          drafts, layout, RuleId::ColumnSill, Level::Fix, {column.id},
          {column.box.s.length(), allowed, {column.box.s, column.box.d, {pour, pour + dressedTwo}}, Wanted::AtMost});
      draft.corrections = ontoSills(layout, column);
      continue;
    }
    checkEnd(layout, allowed, column, *piece, true, drafts);
    checkEnd(layout, allowed, column, *piece, false, drafts);
    checkInside(layout, allowed, column, *piece, drafts);
  }
}

void checkColumnOpening(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const ColumnBody& column : layout.columns)
    for (const Opening& opening : layout.wall->openings) {
      const Interval rough{opening.from, opening.to};
      const double inside = -gap(column.box.s, rough);
      if (!over(inside, 0))
        continue;
      Box3 region = column.box;
      region.s = overlap(column.box.s, rough);
      if (opening.kind == OpeningKind::Window)
        region.z.from = std::max(region.z.from, opening.sillHeight);
      region.z.to = std::max(region.z.from, std::min(region.z.to, opening.headHeight));
      Draft& draft = report(drafts, layout, RuleId::ColumnOpening, Level::Fix, {column.id, opening.id},
                            {inside, 0, region, Wanted::AtMost});
      draft.corrections = movesApart(column.id, column.box.s.middle(), column.box.s, rough);
    }
}

void checkColumnOverlap(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const ColumnBody& mover : layout.columns)
    for (const ColumnBody& other : layout.columns) {
      const double clear = planGap(mover.box, other.box);
      if (!(other.id < mover.id) || !under(clear, 0))
        continue;
      Draft& draft = report(drafts, layout, RuleId::ColumnOverlap, Level::Fix, {mover.id, other.id},
                            {clear, 0, overlapOf(mover.box, other.box)});
      draft.corrections = movesApart(mover.id, mover.box.s.middle(), mover.box.s, other.box.s);
    }
}

} // namespace sillwright
