// Rods of bracket hold-downs: beside their column, in their concrete, up through the sill.
#include <cmath>

#include "core/rules/anchor_checks.h"
#include "core/rules/concrete_cover.h"
#include "core/rules/measure.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

template <class Visit> void forEachRod(const WallLayout& layout, Visit&& visit) {
  for (const AnchorBody& anchor : layout.anchors)
    if (anchor.isRod)
      visit(anchor);
}

Box3 axisOf(const AnchorBody& rod) {
  return {{rod.station, rod.station}, {rod.depth, rod.depth}, {rod.bottom, rod.pour}};
}

} // namespace

void checkRodOffset(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  const double limit = limits[LimitKey::RodOffset];
  forEachRod(layout, [&](const AnchorBody& rod) {
    const double off = rod.rod->offset - rod.rodType->bracketOffset; // + too far from its column
    if (rod.rodType->bracketOffset <= 0 || !over(std::abs(off), limit))
      return;
    const double right = rod.rod->side == Side::Right ? 1 : -1;
    const double wanted = rod.station - right * off;
    Draft& draft = report(drafts, layout, RuleId::RodOffset, Level::Fix, {rod.id, rod.rod->column},
                          {std::abs(off),
                           limit,
                           {betweenValues(rod.station, wanted), around(rod.depth, rod.diameter), {rod.pour, rod.top}},
                           Wanted::AtMost,
                           Unit::Inch,
                           static_cast<std::uint8_t>(off < 0)});
    draft.corrections.push_back({Field::Station, rod.id, -right * off});
  });
}

// Of the axis, not of the steel.
void checkRodEdge(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  forEachRod(layout, [&](const AnchorBody& rod) {
    const double limit = limits[LimitKey::RodEdge] * rod.diameter;
    for (const Cover& cover : coversOf(layout, axisOf(rod), 0, limit)) {
      const Field field = fieldOf(cover.face);
      if (field == Field::Height || !under(cover.measured, limit))
        continue;
      const bool along = field == Field::Station;
      Box3 region = cover.region;
      Interval& across = along ? region.d : region.s; // as wide as the rod, unless the nearest is an edge beside it
      if (across.length() < tolerance::same)
        across = around(along ? rod.depth : rod.station, rod.diameter);
      Draft& draft = report(drafts, layout, RuleId::RodEdge, Level::Ask, {rod.id},
                            {cover.measured, limit, region, Wanted::AtLeast, Unit::Inch,
                             static_cast<std::uint8_t>(cover.face)});
      draft.corrections.push_back(move(rod.id, field, along ? rod.station : rod.depth,
                                       wayToMore(cover.face) * (limit - cover.measured)));
    }
  });
}

void checkRodEmbed(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  forEachRod(layout, [&](const AnchorBody& rod) {
    checkEmbed(layout, RuleId::RodEmbed, limits[LimitKey::RodEmbed], rod, drafts);
  });
}

void checkRodThread(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  const ThreadLimits wanted{limits[LimitKey::BoltStandoutThreads], limits[LimitKey::BoltThreadSpare]};
  forEachRod(layout, [&](const AnchorBody& rod) { checkThread(layout, RuleId::RodThread, wanted, rod, drafts); });
}

void checkRodSteel(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  forEachRod(layout, [&](const AnchorBody& rod) {
    for (const BarBody& bar : layout.bars)
      checkClearOf(layout, RuleId::RodSteel, limits[LimitKey::RodSteelTarget], rod, bar, drafts);
  });
}

void checkRodCover(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  forEachRod(layout, [&](const AnchorBody& rod) { checkCover(layout, RuleId::RodCover, rod, drafts); });
}

void checkRodOpening(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  forEachRod(layout, [&](const AnchorBody& rod) { checkOpening(layout, RuleId::RodOpening, rod, drafts); });
}

void checkRodPlumb(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  constexpr double gauge = 24;
  forEachRod(layout, [&](const AnchorBody& rod) {
    const double out = std::abs(rod.lean) * gauge, limit = limits[LimitKey::RodPlumb];
    if (!over(out, limit))
      return;
    const double top = rod.station + rod.lean * (rod.top - rod.pour);
    report(drafts, layout, RuleId::RodPlumb, Level::Watch, {rod.id},
           {out,
            limit,
            {grown(betweenValues(rod.station, top), rod.diameter / 2), around(rod.depth, rod.diameter), {rod.pour, rod.top}},
            Wanted::AtMost,
            Unit::Inch,
            static_cast<std::uint8_t>(rod.lean < 0)});
  });
}

} // namespace sillwright
