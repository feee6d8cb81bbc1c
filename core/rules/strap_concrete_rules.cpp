// The embedded part of straps against bars and the faces of the concrete.
#include <algorithm>
#include <limits>

#include "core/geometry/clearance.h"
#include "core/geometry/plate_part.h"
#include "core/rules/measure.h"
#include "core/rules/strap_hook.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

Ribbon shifted(Ribbon plate, double by) {
  plate.station += by;
  return plate;
}

constexpr double farthest = std::numeric_limits<double>::infinity();
// What a contact shows: where the two are as good as one.
constexpr double asGoodAsOne = 1.0 / 64;

// The space between plate and bar over the heights where they are nearer than wanted.
Box3 regionBetween(const Ribbon& plate, const Capsule& bar, double within, const Clearance& nearest) {
  const Interval z = heightsNearer(bar, plate, within).value_or(around(nearest.onSecond.z, 0));
  const auto part = partWithin(plate, {-farthest, farthest}, grown(z, tolerance::same));
  Box3 region = between(part.value_or(bounds(plate)), bounds(bar));
  region.z = z;
  return region;
}

void checkSteel(const WallLayout& layout, double target, const StrapBody& strap, const BarBody& bar, Drafts& drafts) {
  if (apart(strap.embeddedBox, bar.box, target))
    return;
  const Clearance nearest = clearance(bar.body, strap.embedded);
  const bool fix = touching(nearest.distance);
  if (!fix && !under(nearest.distance, target))
    return;
  const double within = fix ? std::min(target, asGoodAsOne) : target;
  const Box3 region = regionBetween(strap.embedded, bar.body, within, nearest);
  Draft& draft = report(drafts, layout, RuleId::StrapSteel, fix ? Level::Fix : Level::Watch, {strap.id, bar.id},
                        {nearest.distance, fix ? 0 : target, region});
  draft.search = [=, id = strap.id, station = strap.strap->station, plate = strap.embedded, axis = bar.body] {
    std::vector<Correction> ways;
    for (const double want : {target, 2 * tolerance::same})
      if (fix || want == target)
        for (const double by : movesUntilClear(
                 station, [&](double moved) { return !under(clearance(axis, shifted(plate, moved)).distance, want); }))
          ways.push_back({Field::Station, id, by});
    return ways;
  };
}

} // namespace

void checkStrapSteel(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const StrapBody& strap : layout.straps)
    for (const BarBody& bar : layout.bars)
      checkSteel(layout, limits[LimitKey::StrapSteelTarget], strap, bar, drafts);
}

double hookToBottom(const WallLayout& layout, const Box3& embedded) {
  return embedded.z.from - bottomUnder(layout, embedded);
}

std::optional<Box3> partInStem(const WallLayout& layout, const Ribbon& embedded, double joint) {
  return partWithin(embedded, {-farthest, farthest}, {layout.stemBottom, joint});
}

Cover hookToInside(const WallLayout& layout, const Box3& part) {
  return sideCover(layout, {part}, part.z, layout.across, CoverFace::Inside, false);
}

void checkStrapDepth(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const StrapBody& strap : layout.straps) {
    if (strap.embedded.profile.empty())
      continue;
    const Box3& box = strap.embeddedBox;
    const double cover = hookToBottom(layout, box);
    const double bottom = box.z.from - cover;
    const bool fix = touching(cover);
    const double target = limits[LimitKey::StrapDepthTarget];
    if (!fix && !under(cover, target))
      continue;
    const double within = fix ? asGoodAsOne : target;
    const Box3 near =
        partWithin(strap.embedded, {-farthest, farthest}, {-farthest, bottom + within}).value_or(box);
    report(drafts, layout, RuleId::StrapDepth, fix ? Level::Fix : Level::Watch, {strap.id},
           {cover, fix ? 0 : target, {box.s, near.d, betweenValues(bottom, box.z.from)}});
  }
}

void checkStrapBack(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  const double target = limits[LimitKey::StrapBackTarget];
  for (const StrapBody& strap : layout.straps) {
    if (over(layout.across.to - strap.embeddedBox.d.to, std::max(target, tolerance::same)))
      continue; // a neighbour's concrete can only add to that
    const auto part = partInStem(layout, strap.embedded, strap.joint);
    if (!part)
      continue;
    const Cover back = hookToInside(layout, *part);
    const bool fix = touching(back.measured);
    if (!fix && !under(back.measured, target))
      continue;
    const double within = fix ? asGoodAsOne : target;
    const Box3 near =
        partWithin(strap.embedded, {layout.across.to - within, farthest}, {layout.stemBottom, strap.joint})
            .value_or(*part);
    report(drafts, layout, RuleId::StrapBack, fix ? Level::Fix : Level::Watch, {strap.id},
           {back.measured, fix ? 0 : target, {back.region.s, back.region.d, near.z}});
  }
}

} // namespace sillwright
