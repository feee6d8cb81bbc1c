// Cover of bars, and forms against the pour line.
#include <algorithm>
#include <cmath>

#include "core/rules/bar_cover.h"
#include "core/rules/concrete_cover.h"
#include "core/rules/measure.h"
#include "core/rules/subjects.h"
#include "core/standards/cover.h"

namespace sillwright {

namespace {

double valueOf(const BarBody& bar, Correction::Field field) {
  const Point3& at = placeOf(*bar.bar).a;
  return field == Correction::Field::Station ? at.s : field == Correction::Field::Depth ? at.d : at.z;
}

} // namespace

// The steel itself: a bar ends flat, not in the rounded ends of its capsule.
Box3 steelOf(const BarBody& bar) {
  const Point3& a = bar.body.a;
  const Point3& b = bar.body.b;
  const double length = std::sqrt((b.s - a.s) * (b.s - a.s) + (b.d - a.d) * (b.d - a.d) + (b.z - a.z) * (b.z - a.z));
  const auto extent = [&](double from, double to) {
    const double along = length > 0 ? (to - from) / length : 0;
    return grown(betweenValues(from, to), bar.body.radius * std::sqrt(std::max(0.0, 1 - along * along)));
  };
  return {extent(a.s, b.s), extent(a.d, b.d), extent(a.z, b.z)};
}

BarCovers barCoverOf(const WallLayout& layout, const BarBody& bar) {
  BarCovers covers;
  covers.formed = requiredCover(Exposure::ExposedOrGround, bar.bar->size);
  covers.earth = requiredCover(Exposure::CastAgainstEarth, bar.bar->size);
  const bool plumb = std::hypot(bar.body.a.s - bar.body.b.s, bar.body.a.d - bar.body.b.d) < tolerance::same;
  covers.round = plumb ? bar.body.radius : 0;
  covers.measured = coversOf(layout, steelOf(bar), covers.round, std::max(covers.formed, covers.earth));
  return covers;
}

void checkBarCover(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const BarBody& bar : layout.bars) {
    const BarCovers covers = barCoverOf(layout, bar);
    for (const Cover& cover : covers.measured) {
      const double limit = cover.earth ? covers.earth : covers.formed;
      if (!under(cover.measured, limit))
        continue;
      Draft& draft = report(drafts, layout, RuleId::BarCover, Level::Fix, {bar.id},
                            {cover.measured, limit, cover.region, Wanted::AtLeast, Unit::Inch,
                             static_cast<std::uint8_t>(cover.face)});
      const Correction::Field field = fieldOf(cover.face);
      draft.corrections.push_back(
          move(bar.id, field, valueOf(bar, field), wayToMore(cover.face) * (limit - cover.measured)));
    }
  }
}

void checkPourForm(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  // The form boards step with the pour line, each stretch as high over its own.
  const double above = layout.wall->formTop;
  const double limit = limits[LimitKey::PourForm];
  if (!under(above, limit))
    return;
  for (const PourRun& run : layout.pour)
    report(drafts, layout, RuleId::PourForm, Level::Fix, {layout.wall->id},
           {above, limit, {run.s, layout.across, {run.height + above, run.height + limit}}});
}

} // namespace sillwright
