// Plate washers of bolts on their sill.
#include <algorithm>
#include <cmath>

#include "core/rules/bolts_in_sill.h"
#include "core/rules/measure.h"
#include "core/rules/sheathed_edge.h"
#include "core/rules/subjects.h"
#include "core/standards/fasteners.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

bool hasWasher(const AnchorBody& anchor) {
  return !anchor.isRod && anchor.washerBox.has_value();
}

void checkSheathedEdge(const WallLayout& layout, double limit, const AnchorBody& bolt, const SheathedEdge& edge,
                       Drafts& drafts) {
  const Box3& washer = *bolt.washerBox;
  if (!over(edge.strip.length(), limit))
    return;
  const double by = edge.strip.length() - limit;
  const Interval sill = layout.sills[*bolt.sillPiece].box.d;
  Draft& draft = report(drafts, layout, RuleId::WasherSheathing, Level::Fix, {bolt.id},
                        {edge.strip.length(),
                         limit,
                         {washer.s, edge.strip, washer.z},
                         Wanted::AtMost,
                         Unit::Inch,
                         static_cast<std::uint8_t>(edge.outside ? 0 : 1)});
  draft.finding.window = boltWindow(sill.length(), bolt.washer->across, limit);
  draft.corrections.push_back(move(bolt.id, Field::Depth, bolt.depth, edge.outside ? -by : by));
  for (const Correction& other : washersThatReach(layout, bolt, edge, limit))
    draft.corrections.push_back(other);
}

// Parts of the washer beyond the sill, across (depth) and along (station).
void checkOnSill(const WallLayout& layout, const AnchorBody& bolt, Drafts& drafts) {
  const Box3& washer = *bolt.washerBox;
  const SillPiece& piece = layout.sills[*bolt.sillPiece];
  const Interval along = wholeSill(layout, piece);
  const Interval across = piece.box.d;
  const auto off = [&](double by, const Box3& region, Field field, double value, double correction, int side) {
    if (!over(by, 0))
      return;
    Draft& draft = report(drafts, layout, RuleId::WasherSill, Level::Fix, {bolt.id, piece.sill},
                          {by, 0, region, Wanted::AtMost, Unit::Inch, static_cast<std::uint8_t>(side)});
    draft.corrections.push_back(move(bolt.id, field, value, correction));
  };
  const double out = across.from - washer.d.from;
  const double in = washer.d.to - across.to;
  const double left = along.from - washer.s.from;
  const double right = washer.s.to - along.to;
  off(out, {washer.s, {washer.d.from, across.from}, washer.z}, Field::Depth, bolt.depth, out, 0);
  off(in, {washer.s, {across.to, washer.d.to}, washer.z}, Field::Depth, bolt.depth, -in, 1);
  off(left, {{washer.s.from, along.from}, washer.d, washer.z}, Field::Station, bolt.station, left, 2);
  off(right, {{along.to, washer.s.to}, washer.d, washer.z}, Field::Station, bolt.station, -right, 3);
}

// A bolt that no sill lies on, on a wall that has sills; one in a doorway is bolt.opening's.
void reportNoSill(const WallLayout& layout, const AnchorBody& bolt, Drafts& drafts) {
  const bool inDoor = std::any_of(layout.wall->openings.begin(), layout.wall->openings.end(), [&](const Opening& o) {
    return o.kind != OpeningKind::Window && Interval{o.from, o.to}.contains(bolt.station);
  });
  if (layout.sills.empty() || inDoor)
    return;
  const Box3& washer = *bolt.washerBox;
  report(drafts, layout, RuleId::WasherSill, Level::Fix, {bolt.id},
         {washer.s.length(), 0, washer, Wanted::AtMost, Unit::Inch, 4});
}

// The nut itself under the column is bolt.stud's.
bool nutUnder(const AnchorBody& bolt, const Box3& column) {
  const auto hardware = boltHardware(bolt.diameter);
  const double across = hardware ? hardware->nutAcrossFlats : bolt.diameter;
  return under(planGap({around(bolt.station, across), around(bolt.depth, across), {}}, column), 0);
}

} // namespace

void checkWasherSheathing(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const AnchorBody& bolt : layout.anchors)
    for (const SheathedEdge& edge : sheathedEdges(layout, bolt, limits[LimitKey::WasherSheathingFrom]))
      if (edge.strong)
        checkSheathedEdge(layout, limits[LimitKey::WasherSheathing], bolt, edge, drafts);
}

void checkWasherSill(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const AnchorBody& bolt : layout.anchors) {
    if (!hasWasher(bolt))
      continue;
    if (bolt.sillPiece)
      checkOnSill(layout, bolt, drafts);
    else
      reportNoSill(layout, bolt, drafts);
  }
}

void checkWasherColumn(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const AnchorBody& bolt : layout.anchors)
    for (const ColumnBody& column : layout.columns) {
      if (!hasWasher(bolt) || nutUnder(bolt, column.box) || belowFoot(layout, bolt, column.box))
        continue;
      const double clear = planGap(*bolt.washerBox, column.box);
      const double target = limits[LimitKey::WasherColumnTarget];
      const bool fix = under(clear, 0);
      if (!fix && !under(clear, target))
        continue;
      Box3 region = between(*bolt.washerBox, column.box);
      region.z = bolt.washerBox->z;
      Draft& draft = report(drafts, layout, RuleId::WasherColumn, fix ? Level::Fix : Level::Watch, {bolt.id, column.id},
                            {clear, fix ? 0 : target, region});
      draft.corrections = movesApart(bolt.id, bolt.station, bolt.washerBox->s, column.box.s, target);
      if (fix)
        for (const Correction& least : movesApart(bolt.id, bolt.station, bolt.washerBox->s, column.box.s))
          draft.corrections.push_back(least);
    }
}

void checkWasherWasher(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (std::size_t i = 0; i < layout.anchors.size(); ++i)
    for (std::size_t k = i + 1; k < layout.anchors.size(); ++k) {
      const AnchorBody* mover = &layout.anchors[i];
      const AnchorBody* other = &layout.anchors[k];
      if (!hasWasher(*mover) || !hasWasher(*other))
        continue;
      if (mover->id < other->id)
        std::swap(mover, other);
      const double clear = planGap(*mover->washerBox, *other->washerBox);
      if (!under(clear, 0) || overlap(mover->washerBox->z, other->washerBox->z).empty())
        continue;
      Draft& draft = report(drafts, layout, RuleId::WasherWasher, Level::Fix, {mover->id, other->id},
                            {clear, 0, overlapOf(*mover->washerBox, *other->washerBox)});
      draft.corrections = movesApart(mover->id, mover->station, mover->washerBox->s, other->washerBox->s);
    }
}

} // namespace sillwright
