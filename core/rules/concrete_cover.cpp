#include "core/rules/concrete_cover.h"

#include <algorithm>
#include <limits>
#include <optional>

#include "core/rules/measure.h"

namespace sillwright {

namespace {

constexpr double noEnd = std::numeric_limits<double>::max();

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

class Covers {
public:
  Covers(const WallLayout& layout, const Box3& steel) : layout_(layout), steel_(steel) {}

  std::vector<Cover> all() {
    sides({layout_.stemBottom, noEnd}, layout_.across, false);
    if (!layout_.footingAcross.empty()) { // footings are cast against earth
      sides({-noEnd, layout_.stemBottom}, layout_.footingAcross, true);
      footingEnds();
      footingTop();
    }
    top();
    add(CoverFace::Bottom, true, steel_.z.from - layout_.bottom,
        {steel_.s, steel_.d, betweenValues(layout_.bottom, steel_.z.from)});
    ends();
    return std::move(found_);
  }

private:
  void add(CoverFace face, bool earth, double measured, const Box3& region) {
    found_.push_back({face, earth, measured, region});
  }

  void sides(Interval z, Interval concrete, bool earth) {
    const Interval own = overlap(steel_.z, z);
    if (own.length() < tolerance::same)
      return;
    add(CoverFace::Outside, earth, steel_.d.from - concrete.from,
        {steel_.s, betweenValues(concrete.from, steel_.d.from), own});
    add(CoverFace::Inside, earth, concrete.to - steel_.d.to,
        {steel_.s, betweenValues(steel_.d.to, concrete.to), own});
  }

  void top() {
    double lowest = pourAt(layout_, steel_.s.middle());
    for (const PourRun& run : layout_.pour)
      if (overlap(run.s, steel_.s).length() > tolerance::same)
        lowest = std::min(lowest, run.height);
    add(CoverFace::Top, false, lowest - steel_.z.to, {steel_.s, steel_.d, betweenValues(steel_.z.to, lowest)});
  }

  void footingEnds() {
    const Interval own = overlap(steel_.z, {layout_.bottom, layout_.stemBottom});
    if (own.length() < tolerance::same)
      return;
    const Interval ends = layout_.footingAlong;
    add(CoverFace::Left, true, steel_.s.from - ends.from, {betweenValues(ends.from, steel_.s.from), steel_.d, own});
    add(CoverFace::Right, true, ends.to - steel_.s.to, {betweenValues(steel_.s.to, ends.to), steel_.d, own});
  }

  // Beside the stem; steel that stands up through it there is out of the stem's faces.
  void footingTop() {
    const auto across = beyond(steel_.d, layout_.across);
    const auto along = beyond(steel_.s, layout_.concrete);
    if (over(steel_.z.to, layout_.stemBottom) || (!across && !along))
      return;
    const Interval high = betweenValues(steel_.z.to, layout_.stemBottom);
    add(CoverFace::FootingTop, false, layout_.stemBottom - steel_.z.to,
        across ? Box3{steel_.s, *across, high} : Box3{*along, steel_.d, high});
  }

  void ends() {
    for (const ConcreteFace& each : layout_.faces) {
      const bool right = each.concrete == Side::Right;
      const double away = (steel_.s.middle() - each.station) * (right ? 1 : -1);
      // Footing and stem end in different places.
      const Interval stem = layout_.footingAcross.empty() ? each.z : overlap(each.z, {layout_.stemBottom, noEnd});
      const Interval z = overlap(stem, steel_.z);
      if (z.length() < tolerance::same || (each.kind == ConcreteFace::Kind::Step && away < 0))
        continue;
      const double edge = right ? steel_.s.from : steel_.s.to;
      add(right ? CoverFace::Left : CoverFace::Right, false, right ? edge - each.station : each.station - edge,
          {betweenValues(edge, each.station), steel_.d, z});
    }
  }

  const WallLayout& layout_;
  const Box3& steel_;
  std::vector<Cover> found_;
};

} // namespace

std::vector<Cover> coversOf(const WallLayout& layout, const Box3& steel) { return Covers(layout, steel).all(); }

Correction::Field fieldOf(CoverFace face) {
  switch (face) {
  case CoverFace::Left:
  case CoverFace::Right:
    return Correction::Field::Station;
  case CoverFace::Outside:
  case CoverFace::Inside:
    return Correction::Field::Depth;
  default:
    return Correction::Field::Height;
  }
}

double wayToMore(CoverFace face) {
  return face == CoverFace::Left || face == CoverFace::Outside || face == CoverFace::Bottom ? 1 : -1;
}

} // namespace sillwright
