// Bolts in height and against what stands or lies in their way.
#include <algorithm>
#include <cmath>

#include "core/rules/anchor_checks.h"
#include "core/rules/measure.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

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

} // namespace

void checkBoltEmbed(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const AnchorBody& bolt : layout.anchors)
    if (!bolt.isRod) {
      const double ofType = std::max(limits[LimitKey::BoltEmbed], bolt.boltType->minimumEmbedment);
      checkEmbed(layout, RuleId::BoltEmbed, ownOr(limits, LimitKey::BoltEmbed, ofType), bolt, drafts);
    }
}

void checkBoltThread(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  const ThreadLimits wanted{limits[LimitKey::BoltStandoutThreads], limits[LimitKey::BoltThreadSpare]};
  for (const AnchorBody& bolt : layout.anchors)
    if (!bolt.isRod)
      checkThread(layout, RuleId::BoltThread, wanted, bolt, drafts);
}

void checkBoltOpening(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const AnchorBody& bolt : layout.anchors)
    if (!bolt.isRod)
      checkOpening(layout, RuleId::BoltOpening, bolt, drafts);
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
        checkClearOf(layout, RuleId::BoltSteel, limits[LimitKey::BoltSteelTarget], bolt, bar, drafts);
}

void checkBoltStrap(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  const double target = limits[LimitKey::BoltStrapTarget];
  for (const AnchorBody& bolt : layout.anchors) {
    if (bolt.isRod)
      continue;
    for (const StrapBody& strap : layout.straps)
      if (strap.embedded.profile.size() > 1)
        checkClearOf(layout, RuleId::BoltStrap, target, bolt, strap, drafts);
    for (const AnchorBody& rod : layout.anchors)
      if (rod.isRod)
        checkClearOf(layout, RuleId::BoltStrap, target, bolt, rod, drafts);
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
