// Cover of bars, and forms against the pour line.
#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "core/rules/measure.h"
#include "core/rules/subjects.h"
#include "core/standards/cover.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

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

// The part of an interval that lies beyond another one; all of it where it does on both sides.
std::optional<Interval> beyond(Interval own, Interval inner) {
  const bool below = under(own.from, inner.from);
  const bool above = over(own.to, inner.to);
  if (below && above)
    return own;
  if (below)
    return Interval{own.from, std::min(own.to, inner.from)};
  if (above)
    return Interval{std::max(own.from, inner.to), own.to};
  return std::nullopt;
}

struct CoverCheck {
  const WallLayout& layout;
  const BarBody& bar;
  Box3 steel;
  double formed;
  Drafts& drafts;

  // side: 0 left, 1 right, 2 outside, 3 inside, 4 top, 5 bottom, 6 top of the footing. sign: which way more cover is.
  void face(double cover, double limit, const Box3& region, int side, Field field, double value, double sign) const {
    if (!under(cover, limit))
      return;
    Draft& draft = report(drafts, layout, RuleId::BarCover, Level::Fix, {bar.id},
                          {cover, limit, region, Wanted::AtLeast, Unit::Inch, static_cast<std::uint8_t>(side)});
    draft.corrections.push_back(move(bar.id, field, value, sign * (limit - cover)));
  }

  void sides(Interval z, Interval concrete, double limit) const {
    if (overlap(steel.z, z).length() < tolerance::same)
      return;
    const Interval own = overlap(steel.z, z);
    const double d = placeOf(*bar.bar).a.d;
    face(steel.d.from - concrete.from, limit, {steel.s, betweenValues(concrete.from, steel.d.from), own}, 2,
         Field::Depth, d, 1);
    face(concrete.to - steel.d.to, limit, {steel.s, betweenValues(steel.d.to, concrete.to), own}, 3, Field::Depth, d,
         -1);
  }

  void top() const {
    double lowest = pourAt(layout, steel.s.middle());
    for (const PourRun& run : layout.pour)
      if (overlap(run.s, steel.s).length() > tolerance::same)
        lowest = std::min(lowest, run.height);
    face(lowest - steel.z.to, formed, {steel.s, steel.d, betweenValues(steel.z.to, lowest)}, 4, Field::Height,
         placeOf(*bar.bar).a.z, -1);
  }

  void bottom() const {
    face(steel.z.from - layout.bottom, requiredCover(Exposure::CastAgainstEarth, bar.bar->size),
         {steel.s, steel.d, betweenValues(layout.bottom, steel.z.from)}, 5, Field::Height, placeOf(*bar.bar).a.z, 1);
  }

  // Footing and stem end in different places.
  Interval stemPart(Interval z) const {
    return layout.footingAcross.empty() ? z : overlap(z, {layout.stemBottom, std::numeric_limits<double>::max()});
  }

  void footingEnds(double limit) const {
    const Interval own = overlap(steel.z, {layout.bottom, layout.stemBottom});
    if (own.length() < tolerance::same)
      return;
    const double s = placeOf(*bar.bar).a.s;
    const Interval ends = layout.footingAlong;
    face(steel.s.from - ends.from, limit, {betweenValues(ends.from, steel.s.from), steel.d, own}, 0, Field::Station, s, 1);
    face(ends.to - steel.s.to, limit, {betweenValues(steel.s.to, ends.to), steel.d, own}, 1, Field::Station, s, -1);
  }

  // Beside the stem; a bar that stands up through it there is out of the stem's faces.
  void footingTop() const {
    const auto across = beyond(steel.d, layout.across);
    const auto along = beyond(steel.s, layout.concrete);
    if (over(steel.z.to, layout.stemBottom) || (!across && !along))
      return;
    const Interval high = betweenValues(steel.z.to, layout.stemBottom);
    const Box3 region = across ? Box3{steel.s, *across, high} : Box3{*along, steel.d, high};
    face(layout.stemBottom - steel.z.to, formed, region, 6, Field::Height, placeOf(*bar.bar).a.z, -1);
  }

  void ends() const {
    const double s = placeOf(*bar.bar).a.s;
    for (const ConcreteFace& each : layout.faces) {
      const bool right = each.concrete == Side::Right;
      const double away = (steel.s.middle() - each.station) * (right ? 1 : -1);
      const Interval z = overlap(stemPart(each.z), steel.z);
      if (z.length() < tolerance::same || (each.kind == ConcreteFace::Kind::Step && away < 0))
        continue;
      const double edge = right ? steel.s.from : steel.s.to;
      face(right ? edge - each.station : each.station - edge, formed, {betweenValues(edge, each.station), steel.d, z},
           right ? 0 : 1, Field::Station, s, right ? 1 : -1);
    }
  }
};

} // namespace

void checkBarCover(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const BarBody& bar : layout.bars) {
    const CoverCheck check{layout, bar, steelOf(bar), requiredCover(Exposure::ExposedOrGround, bar.bar->size), drafts};
    const double deepest = std::numeric_limits<double>::lowest();
    const double earth = requiredCover(Exposure::CastAgainstEarth, bar.bar->size);
    check.sides({layout.stemBottom, std::numeric_limits<double>::max()}, layout.across, check.formed);
    if (!layout.footingAcross.empty()) { // footings are cast against earth
      check.sides({deepest, layout.stemBottom}, layout.footingAcross, earth);
      check.footingEnds(earth);
      check.footingTop();
    }
    check.top();
    check.bottom();
    check.ends();
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
