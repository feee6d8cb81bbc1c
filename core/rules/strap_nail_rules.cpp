// The nails and the exposed plate of straps: on the column, off its seams and edges, out of the opening.
#include <algorithm>
#include <cmath>
#include <limits>

#include "core/rules/measure.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

const ColumnBody* columnOf(const WallLayout& layout, const StrapBody& strap) {
  return strap.column ? &layout.columns[*strap.column] : nullptr;
}

double nailRadius(const StrapBody& strap) {
  return strap.type->nails.nailDiameter / 2;
}

// The whole nail in the column: not past its sides, in the sill under it or over its top.
bool lands(const NailBody& nail, double radius, const ColumnBody& column) {
  const auto within = [&](double at, Interval wood) {
    return !under(at - radius, wood.from) && !over(at + radius, wood.to);
  };
  return within(nail.s, column.box.s) && within(nail.z, column.box.z);
}

bool onSeam(const NailBody& nail, double radius, const ColumnBody& column) {
  return std::any_of(column.seams.begin(), column.seams.end(),
                     [&](double seam) { return under(std::abs(nail.s - seam), radius); });
}

// Nails that meet a condition: how many, and the box around them.
struct NailGroup {
  int count = 0;
  Box3 box;

  void add(const NailBody& nail, double radius, Interval depth) {
    const Box3 one{around(nail.s, 2 * radius), depth, around(nail.z, 2 * radius)};
    box = count == 0 ? one : Box3{hull(box.s, one.s), depth, hull(box.z, one.z)};
    ++count;
  }
};

NailBody shifted(const NailBody& nail, double by) {
  return {nail.s + by, nail.z};
}

// How far the rows must go to clear the edges and seams of the column, tried from the centre of the column outward.
std::vector<Correction> movesOntoColumn(const StrapBody& strap, const ColumnBody& column, bool offSeams) {
  const double station = strap.strap->station;
  const double radius = nailRadius(strap);
  const auto good = [&](double by) {
    return std::all_of(strap.nails.begin(), strap.nails.end(), [&](const NailBody& nail) {
      const NailBody there = shifted(nail, by);
      return lands(there, radius, column) && !(offSeams && onSeam(there, radius, column));
    });
  };
  std::vector<double> moves;
  const auto consider = [&](double by) {
    const bool known =
        std::any_of(moves.begin(), moves.end(), [&](double m) { return std::abs(m - by) < tolerance::same; });
    if (!known && good(by))
      moves.push_back(by);
  };
  for (const NailBody& nail : strap.nails) {
    consider(byToMark(station, column.box.s.from + radius - nail.s));
    consider(byToMark(station, column.box.s.to - radius - nail.s));
    for (const double seam : column.seams)
      for (const double side : {-radius, radius})
        consider(byToMark(station, seam + side - nail.s));
  }
  std::stable_sort(moves.begin(), moves.end(), [](double a, double b) { return std::abs(a) < std::abs(b); });
  // A framer centres a strap that is off; only where that does not do it goes the shortest way.
  const double centre = byToMark(station, column.box.s.middle() - station);
  if (offSeams && good(centre))
    moves.insert(moves.begin(), centre);
  std::vector<Correction> corrections;
  for (const double by : moves)
    corrections.push_back({Field::Station, strap.id, by});
  return corrections;
}

struct NailEdge {
  double distance = std::numeric_limits<double>::infinity();
  double at = 0; // station of the ply's edge
};

// Nearest edge of the ply that the nail is in.
NailEdge nailEdge(const NailBody& nail, const ColumnBody& column) {
  NailEdge nearest;
  const auto consider = [&](double edge) {
    if (std::abs(nail.s - edge) < nearest.distance)
      nearest = {std::abs(nail.s - edge), edge};
  };
  consider(column.box.s.from);
  consider(column.box.s.to);
  for (const double seam : column.seams)
    consider(seam);
  return nearest;
}

Interval leaned(const StrapBody& strap, double z) {
  return around(strap.strap->station + strap.lean * (z - strap.joint), strap.type->plateWidth);
}

// The exposed plate inside an opening: how deep, over which part.
struct Inside {
  double depth = 0;
  Box3 region;
};

Inside insideOpening(const StrapBody& strap, const Opening& opening) {
  const double lowest = -std::numeric_limits<double>::infinity();
  const double foot = opening.kind == OpeningKind::Window ? opening.sillHeight : lowest;
  const Interval z = overlap(strap.plate.z, {foot, opening.headHeight});
  Inside inside;
  if (z.length() < tolerance::same)
    return inside;
  const Interval s{opening.from, opening.to};
  const double low = -gap(leaned(strap, z.from), s);
  const double high = -gap(leaned(strap, z.to), s);
  inside.depth = std::max(low, high);
  inside.region = {overlap(hull(leaned(strap, z.from), leaned(strap, z.to)), s), strap.plate.d, z};
  if (low > 0 && high > 0)
    return inside;
  // Only part of the height is inside: from where the leaning edge crosses the side of the opening.
  const double crossing = z.from + z.length() * low / (low - high);
  (low > 0 ? inside.region.z.to : inside.region.z.from) = crossing;
  return inside;
}

// A strap that belongs to no column: every nail misses.
void reportNoColumn(const WallLayout& layout, const StrapBody& strap, Drafts& drafts) {
  NailGroup all;
  for (const NailBody& nail : strap.nails)
    all.add(nail, nailRadius(strap), strap.plate.d);
  if (all.count > 0)
    report(drafts, layout, RuleId::StrapColumn, Level::Fix, {strap.id},
           {static_cast<double>(all.count), 0, all.box, Wanted::AtMost, Unit::Count, 1});
}

} // namespace

void checkStrapColumn(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const StrapBody& strap : layout.straps) {
    const ColumnBody* column = columnOf(layout, strap);
    if (!column) {
      reportNoColumn(layout, strap, drafts);
      continue;
    }
    NailGroup off;
    for (const NailBody& nail : strap.nails)
      if (!lands(nail, nailRadius(strap), *column))
        off.add(nail, nailRadius(strap), strap.plate.d);
    if (off.count == 0)
      continue;
    Draft& draft = report(drafts, layout, RuleId::StrapColumn, Level::Fix, {strap.id, column->id},
                          {static_cast<double>(off.count), 0, off.box, Wanted::AtMost, Unit::Count});
    draft.corrections = movesOntoColumn(strap, *column, false);
  }
}

void checkStrapNailEdge(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const StrapBody& strap : layout.straps) {
    const ColumnBody* column = columnOf(layout, strap);
    const double diameter = strap.type->nails.nailDiameter;
    if (!column || diameter <= 0)
      continue;
    const double limit = limits[LimitKey::StrapNailEdge] * diameter;
    NailEdge worst;
    NailGroup near;
    for (const NailBody& nail : strap.nails) {
      const NailEdge edge = nailEdge(nail, *column);
      if (!lands(nail, diameter / 2, *column) || onSeam(nail, diameter / 2, *column) || !under(edge.distance, limit))
        continue;
      near.add(nail, diameter / 2, strap.plate.d);
      if (edge.distance < worst.distance)
        worst = edge;
    }
    if (near.count == 0)
      continue;
    Draft& draft = report(drafts, layout, RuleId::StrapNailEdge, Level::Watch, {strap.id, column->id},
                          {worst.distance, limit, near.box});
    const double centre = column->box.s.middle() - strap.strap->station;
    draft.corrections.push_back(move(strap.id, Field::Station, strap.strap->station, centre));
  }
}

void checkStrapSeam(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const StrapBody& strap : layout.straps) {
    const ColumnBody* column = columnOf(layout, strap);
    if (!column)
      continue;
    NailGroup on;
    for (const NailBody& nail : strap.nails)
      if (onSeam(nail, nailRadius(strap), *column))
        on.add(nail, nailRadius(strap), strap.plate.d);
    if (on.count == 0)
      continue;
    Draft& draft = report(drafts, layout, RuleId::StrapSeam, Level::Ask, {strap.id, column->id},
                          {static_cast<double>(on.count), 0, on.box, Wanted::AtMost, Unit::Count});
    draft.corrections = movesOntoColumn(strap, *column, true);
  }
}

// A nail starts at the outer face of the plate; what is left of it behind plate and sheathing is in the column.
void checkStrapNailDepth(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const StrapBody& strap : layout.straps) {
    const ColumnBody* column = columnOf(layout, strap);
    const NailPattern& nails = strap.type->nails;
    if (!column || strap.nails.empty() || nails.nailLength <= 0 || nails.nailDiameter <= 0)
      continue;
    const double tip = strap.plate.d.from + nails.nailLength;
    const double depth = tip - column->box.d.from;
    const double least = limits[LimitKey::StrapNailDepthLeast] * nails.nailDiameter;
    const double full = limits[LimitKey::StrapNailDepthFull] * nails.nailDiameter;
    const bool fix = under(depth, least);
    if (!fix && !under(depth, full))
      continue;
    const double limit = fix ? least : full;
    NailGroup all;
    for (const NailBody& nail : strap.nails)
      all.add(nail, nailRadius(strap), betweenValues(tip, column->box.d.from + limit));
    report(drafts, layout, RuleId::StrapNailDepth, fix ? Level::Fix : Level::Watch, {strap.id, column->id},
           {depth, limit, all.box});
  }
}

void checkStrapLean(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const StrapBody& strap : layout.straps) {
    const ColumnBody* column = columnOf(layout, strap);
    if (!column || strap.lean == 0)
      continue;
    const double radius = nailRadius(strap);
    const double edge = strap.lean > 0 ? column->box.s.to : column->box.s.from;
    double worst = 0;
    Shortfall shortfall;
    for (const NailBody& nail : strap.nails) {
      const double standOff = std::abs(strap.lean) * (nail.z - strap.joint);
      const double room = std::abs(edge - nail.s) - radius;
      if (!lands(nail, radius, *column) || !over(standOff, room) || standOff - room <= worst)
        continue;
      worst = standOff - room;
      const double at = nail.s + strap.lean * (nail.z - strap.joint);
      const double outer = at + (strap.lean > 0 ? radius : -radius);
      shortfall = {
          standOff, room, {betweenValues(edge, outer), strap.plate.d, around(nail.z, 2 * radius)}, Wanted::AtMost};
    }
    if (worst > 0)
      report(drafts, layout, RuleId::StrapLean, Level::Fix, {strap.id, column->id}, shortfall)
          .corrections.push_back(move(strap.id, Field::Station, strap.strap->station, strap.lean > 0 ? -worst : worst));
  }
}

void checkStrapLeanOpening(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const StrapBody& strap : layout.straps)
    for (const Opening& opening : layout.wall->openings) {
      const Inside inside = insideOpening(strap, opening);
      if (!over(inside.depth, 0))
        continue;
      Draft& draft = report(drafts, layout, RuleId::StrapLeanOpening, Level::Fix, {strap.id, opening.id},
                            {inside.depth, 0, inside.region, Wanted::AtMost});
      const Interval plate = hull(leaned(strap, strap.plate.z.from), leaned(strap, strap.plate.z.to));
      draft.corrections = movesApart(strap.id, strap.strap->station, plate, {opening.from, opening.to});
    }
}

} // namespace sillwright
