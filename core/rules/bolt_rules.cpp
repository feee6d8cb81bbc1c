// Bolts in height and against what stands or lies in their way.
#include <algorithm>
#include <cmath>
#include <span>

#include "core/geometry/clearance.h"
#include "core/rules/measure.h"
#include "core/rules/subjects.h"
#include "core/rules/thread_stack.h"
#include "core/standards/fasteners.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

Box3 shankBox(const AnchorBody& bolt, Interval z) {
  return {around(bolt.station, bolt.diameter), around(bolt.depth, bolt.diameter), z};
}

Box3 nutBox(const AnchorBody& bolt) {
  const auto hardware = boltHardware(bolt.diameter);
  const double across = hardware ? hardware->nutAcrossFlats : bolt.diameter;
  return {around(bolt.station, across), around(bolt.depth, across), {bolt.pour, bolt.top}};
}

Draft* reportUnder(const WallLayout& layout, const AnchorBody& bolt, const Box3& own, const Box3& wood, Id column,
                   Drafts& drafts) {
  if (!under(planGap(own, wood), 0) || belowFoot(layout, bolt, wood))
    return nullptr;
  const Box3 region{overlap(own.s, wood.s), overlap(own.d, wood.d), own.z};
  Shortfall shortfall{planGap(own, wood), 0, region};
  shortfall.variant = column ? 1 : 0;
  Draft& draft = column ? report(drafts, layout, RuleId::BoltStud, Level::Fix, {bolt.id, column}, shortfall)
                        : report(drafts, layout, RuleId::BoltStud, Level::Fix, {bolt.id}, shortfall);
  draft.corrections = movesApart(bolt.id, bolt.station, own.s, wood.s);
  return &draft;
}

std::vector<Capsule> partsOf(const AnchorBody& anchor) {
  std::vector<Capsule> parts{anchor.shank};
  parts.insert(parts.end(), anchor.foot.begin(), anchor.foot.end());
  return parts;
}

struct Nearest {
  double distance = 1e9;
  Box3 own;
  Box3 obstacle;
};

template <class Part> Nearest nearestPart(const AnchorBody& bolt, std::span<const Part> obstacle, double by = 0) {
  Nearest nearest;
  for (Capsule own : partsOf(bolt)) {
    own.a.s += by;
    own.b.s += by;
    for (const Part& part : obstacle)
      if (const double distance = clearance(own, part).distance; distance < nearest.distance)
        nearest = {distance, bounds(own), bounds(part)};
  }
  return nearest;
}

template <class Part> bool farFrom(const AnchorBody& bolt, std::span<const Part> obstacle, double distance) {
  return std::all_of(obstacle.begin(), obstacle.end(), [&](const Part& part) {
    return gap(bounds(part).s, around(bolt.station, 0)) > distance;
  });
}

template <class Part>
void checkClear(const WallLayout& layout, RuleId rule, double target, const AnchorBody& bolt,
                std::span<const Part> obstacle, Id other, Drafts& drafts) {
  if (farFrom(bolt, obstacle, target + 12))
    return;
  const Nearest nearest = nearestPart(bolt, obstacle);
  const bool fix = touching(nearest.distance);
  if (!fix && !under(nearest.distance, target))
    return;
  const Box3 region = between(nearest.own, nearest.obstacle);
  Draft& draft = report(drafts, layout, rule, fix ? Level::Fix : Level::Watch, {bolt.id, other},
                        {nearest.distance, fix ? 0 : target, region});
  const auto clear = [&](double by) { return nearestPart(bolt, obstacle, by).distance; };
  for (const double want : {target, 2 * tolerance::same})
    if (fix || want == target)
      for (const double by : movesUntilClear(bolt.station, want, clear))
        draft.corrections.push_back({Field::Station, bolt.id, by});
}

} // namespace

void checkBoltEmbed(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const AnchorBody& bolt : layout.anchors) {
    if (bolt.isRod)
      continue;
    const double embedded =
        ownOr(limits, LimitKey::BoltEmbed, std::max(limits[LimitKey::BoltEmbed], bolt.boltType->minimumEmbedment));
    if (!under(bolt.embedment, embedded))
      continue;
    const Box3 region = shankBox(bolt, {bolt.pour - embedded, bolt.bottom});
    Draft& draft = report(drafts, layout, RuleId::BoltEmbed, Level::Fix, {bolt.id}, {bolt.embedment, embedded, region});
    draft.corrections.push_back(move(bolt.id, Field::Projection, bolt.bolt->projection, bolt.embedment - embedded));
  }
}

void checkBoltThread(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const AnchorBody& bolt : layout.anchors) {
    if (bolt.isRod || !bolt.sillPiece)
      continue;
    const Box3& sill = layout.sills[*bolt.sillPiece].box;
    const auto stack = threadStack(*bolt.boltType, sill.z.length(), bolt.washer, bolt.bolt->cutWasher,
                                   limits[LimitKey::BoltStandoutThreads]);
    if (!stack)
      continue;
    const double projection = bolt.bolt->projection;
    const double needed = neededProjection(*stack);
    const double spare = projection - needed;
    const double wanted = limits[LimitKey::BoltThreadSpare];
    const bool fix = under(spare, 0);
    if (!fix && !under(spare, wanted))
      continue;
    const double goal = fix ? needed : needed + wanted;
    const Box3 region = shankBox(bolt, betweenValues(bolt.pour + projection, bolt.pour + goal));
    const Shortfall shortfall =
        fix ? Shortfall{projection, needed, region} : Shortfall{spare, wanted, region, Wanted::AtLeast, Unit::Inch, 1};
    Draft& draft = report(drafts, layout, RuleId::BoltThread, fix ? Level::Fix : Level::Watch, {bolt.id}, shortfall);
    draft.corrections.push_back(move(bolt.id, Field::Projection, projection, needed + wanted - projection));
    if (fix)
      draft.corrections.push_back(move(bolt.id, Field::Projection, projection, -spare));
  }
}

void checkBoltOpening(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const AnchorBody& bolt : layout.anchors)
    for (const Opening& opening : layout.wall->openings) {
      const Interval own = around(bolt.station, bolt.diameter);
      const Interval door{opening.from, opening.to};
      if (bolt.isRod || opening.kind == OpeningKind::Window || !under(gap(own, door), 0))
        continue;
      Box3 region = shankBox(bolt, {bolt.pour, bolt.top});
      region.s = overlap(own, door);
      Draft& draft = report(drafts, layout, RuleId::BoltOpening, Level::Fix, {bolt.id, opening.id},
                            {-gap(own, door), 0, region, Wanted::AtMost});
      draft.corrections = movesApart(bolt.id, bolt.station, own, door);
    }
}

void checkBoltStud(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  const double washerClear = limits[LimitKey::WasherColumnTarget];
  for (const AnchorBody& bolt : layout.anchors) {
    if (bolt.isRod)
      continue;
    const Box3 nut = nutBox(bolt);
    const Box3 widest = bolt.washerBox ? *bolt.washerBox : nut;
    for (const StudBody& stud : layout.studs)
      reportUnder(layout, bolt, widest, stud.box, {}, drafts);
    for (const ColumnBody& column : layout.columns) {
      Draft* draft = reportUnder(layout, bolt, nut, column.box, column.id, drafts);
      if (draft && bolt.washerBox) // the nut clear of the column leaves the washer under it
        for (const Correction& both : movesApart(bolt.id, bolt.station, widest.s, column.box.s, washerClear))
          draft->corrections.push_back(both);
    }
  }
}

void checkBoltSteel(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const AnchorBody& bolt : layout.anchors)
    if (!bolt.isRod)
      for (const BarBody& bar : layout.bars)
        checkClear(layout, RuleId::BoltSteel, limits[LimitKey::BoltSteelTarget], bolt, std::span(&bar.body, 1), bar.id,
                   drafts);
}

void checkBoltStrap(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  const double target = limits[LimitKey::BoltStrapTarget];
  for (const AnchorBody& bolt : layout.anchors) {
    if (bolt.isRod)
      continue;
    for (const StrapBody& strap : layout.straps)
      if (strap.embedded.profile.size() > 1)
        checkClear(layout, RuleId::BoltStrap, target, bolt, std::span(&strap.embedded, 1), strap.id, drafts);
    for (const AnchorBody& rod : layout.anchors)
      if (rod.isRod) {
        const std::vector<Capsule> parts = partsOf(rod);
        checkClear(layout, RuleId::BoltStrap, target, bolt, std::span<const Capsule>(parts), rod.id, drafts);
      }
  }
}

void checkBoltSplice(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const AnchorBody& bolt : layout.anchors) {
    if (bolt.isRod)
      continue;
    const Box3 own = bolt.washerBox ? *bolt.washerBox : nutBox(bolt);
    for (const SillPiece& piece : layout.sills) {
      if (piece.index == 0)
        continue;
      const double splice = piece.box.s.from;
      const bool joined = std::any_of(layout.sills.begin(), layout.sills.end(), [&](const SillPiece& other) {
        return other.sill == piece.sill && std::abs(other.box.s.to - splice) < tolerance::same;
      });
      const double left = own.s.from - splice;
      const double right = splice - own.s.to;
      const double clear = std::max(left, right);
      if (!joined || !under(clear, 0))
        continue;
      const Box3 region{left > right ? Interval{own.s.from, splice} : Interval{splice, own.s.to}, own.d, own.z};
      Draft& draft = report(drafts, layout, RuleId::BoltSplice, Level::Fix, {bolt.id, piece.sill}, {clear, 0, region});
      draft.corrections = movesApart(bolt.id, bolt.station, own.s, {splice, splice});
    }
  }
}

} // namespace sillwright
