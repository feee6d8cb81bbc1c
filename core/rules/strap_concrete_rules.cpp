// The embedded part of straps against bars and the faces of the concrete.
#include <algorithm>
#include <limits>

#include "core/geometry/clearance.h"
#include "core/rules/measure.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

Ribbon shifted(Ribbon plate, double by) {
  plate.station += by;
  return plate;
}

// Depths of the plate between two heights.
Interval depthsBetween(const Ribbon& plate, Interval z) {
  Interval depths{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
  const double half = plate.thickness / 2;
  for (std::size_t i = 0; i + 1 < plate.profile.size(); ++i) {
    const ProfilePoint& a = plate.profile[i];
    const ProfilePoint& b = plate.profile[i + 1];
    const Interval part = overlap(betweenValues(a.z, b.z), z);
    if (part.empty())
      continue;
    const double rise = b.z - a.z;
    const auto depthAt = [&](double height) { return a.d + (b.d - a.d) * (height - a.z) / rise; };
    const bool level = std::abs(rise) < tolerance::same;
    const Interval own = level ? betweenValues(a.d, b.d) : betweenValues(depthAt(part.from), depthAt(part.to));
    depths = {std::min(depths.from, own.from - half), std::max(depths.to, own.to + half)};
  }
  return depths;
}

// The space between plate and bar over the heights where they are nearer than wanted.
Box3 regionBetween(const Ribbon& plate, const Capsule& bar, double within, const Clearance& nearest) {
  const Interval z = heightsNearer(bar, plate, within).value_or(around(nearest.onSecond.z, 0));
  Box3 plateBox = bounds(plate);
  const Interval depths = depthsBetween(plate, z);
  if (!depths.empty())
    plateBox.d = depths;
  Box3 region = between(plateBox, bounds(bar));
  region.z = z;
  return region;
}

bool farApart(const StrapBody& strap, const BarBody& bar, double target) {
  return gap(strap.plate.s, grown(betweenValues(bar.body.a.s, bar.body.b.s), bar.body.radius)) > target;
}

void checkSteel(const WallLayout& layout, double target, const StrapBody& strap, const BarBody& bar, Drafts& drafts) {
  if (farApart(strap, bar, target))
    return;
  const Clearance nearest = clearance(bar.body, strap.embedded);
  const bool fix = touching(nearest.distance);
  if (!fix && !under(nearest.distance, target))
    return;
  // On contact the region is where steel and steel are as good as one.
  const double within = fix ? std::min(target, 1.0 / 64) : target;
  const Box3 region = regionBetween(strap.embedded, bar.body, within, nearest);
  Draft& draft = report(drafts, layout, RuleId::StrapSteel, fix ? Level::Fix : Level::Watch, {strap.id, bar.id},
                        {nearest.distance, fix ? 0 : target, region});
  const auto clear = [&](double by) { return clearance(bar.body, shifted(strap.embedded, by)).distance; };
  const double station = strap.strap->station;
  for (const double want : {target, 2 * tolerance::same})
    if (fix || want == target)
      for (const double by : movesUntilClear(station, want, clear))
        draft.corrections.push_back({Field::Station, strap.id, by});
}

} // namespace

void checkStrapSteel(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const StrapBody& strap : layout.straps)
    for (const BarBody& bar : layout.bars)
      checkSteel(layout, limits[LimitKey::StrapSteelTarget], strap, bar, drafts);
}

void checkStrapDepth(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const StrapBody& strap : layout.straps) {
    if (strap.embedded.profile.empty())
      continue;
    const Box3 box = bounds(strap.embedded);
    const double cover = box.z.from - layout.bottom;
    const bool fix = touching(cover);
    const double target = limits[LimitKey::StrapDepthTarget];
    if (!fix && !under(cover, target))
      continue;
    const Interval z = betweenValues(layout.bottom, box.z.from);
    report(drafts, layout, RuleId::StrapDepth, fix ? Level::Fix : Level::Watch, {strap.id},
           {cover, fix ? 0 : target, {box.s, depthsBetween(strap.embedded, {box.z.from, box.z.from + 1}), z}});
  }
}

void checkStrapBack(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const StrapBody& strap : layout.straps) {
    // Below the top of the footing the concrete goes on behind the stem.
    const Box3 box = bounds(strap.embedded);
    const Interval depths = depthsBetween(strap.embedded, {layout.stemBottom, strap.joint});
    if (depths.empty())
      continue;
    const double cover = layout.across.to - depths.to;
    const bool fix = touching(cover);
    const double target = limits[LimitKey::StrapBackTarget];
    if (!fix && !under(cover, target))
      continue;
    const Interval z = overlap(box.z, {layout.stemBottom, strap.joint});
    report(drafts, layout, RuleId::StrapBack, fix ? Level::Fix : Level::Watch, {strap.id},
           {cover, fix ? 0 : target, {box.s, betweenValues(depths.to, layout.across.to), z}});
  }
}

} // namespace sillwright
