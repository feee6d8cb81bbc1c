#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

#include "core/geometry/clearance.h"
#include "core/refit/steel_in_the_way.h"
#include "core/rules/anchor_checks.h"
#include "core/rules/bar_cover.h"
#include "core/rules/measure.h"
#include "core/rules/strap_hook.h"

namespace sillwright {

namespace {

constexpr double forever = std::numeric_limits<double>::infinity();

Box3 shifted(Box3 box, double along, double up) {
  return {{box.s.from + along, box.s.to + along}, box.d, {box.z.from + up, box.z.to + up}};
}

// Where a box that stands at `now` would come nearer than `least` to an end of the concrete, or to a step while it is
// on the high side of it.
Interval nearerThan(const ConcreteFace& face, const Box3& box, double now, double least, double round) {
  const bool concreteRight = face.concrete == Side::Right;
  const double missing = (least - distanceTo(face, box, round)) * std::hypot(1, face.slant);
  const bool isStep = face.kind == ConcreteFace::Kind::Step;
  const double onIt = face.station - (box.s.middle() - now); // the middle of the box is on the step
  if (concreteRight)
    return {isStep ? onIt : -forever, now + missing};
  return {now - missing, isStep ? onIt : forever};
}

constexpr double every = 0.25; // between two stations that are tried
constexpr double seldom = 2;   // where only what lies before the long faces can change, over the width of a corner

// What is tried near the ends of a wall: all, or, where the distance to the ends is worked out beforehand, only steps
// and corners, and those seldom.
enum class Trying { All, AllButEnds };

std::vector<Interval> stepsAndCorners(const WallLayout& layout) {
  std::vector<Interval> places;
  for (const ConcreteFace& face : layout.faces)
    if (face.kind == ConcreteFace::Kind::Step)
      places.push_back({face.station, face.station});
  const Interval across = hull(layout.across, layout.footingAcross);
  for (const CornerConcrete& corner : layout.corners) {
    Interval reach{corner.corner, corner.corner};
    for (const double depth : {corner.depths.from, corner.depths.to})
      for (const double d : {across.from, across.to}) {
        const double at = stationAt(corner, depth, d);
        reach = hull(reach, {at, at});
      }
    places.push_back(reach);
  }
  return places;
}

// Near the ends of the wall, near its steps and where a neighbour's concrete comes and goes; in between nothing
// changes.
std::vector<Interval> changingStretches(const WallLayout& layout, Trying trying) {
  constexpr double near = 12; // more than any hook is long
  std::vector<Interval> stretches;
  for (const Interval end : trying == Trying::All ? concreteEnds(layout) : stepsAndCorners(layout))
    stretches.push_back(grown(end, near));
  return stretches;
}

// Blocks where it is not good, tried at steps and bisected between: for what grows or falls from one to the next.
void blockWhereNot(const std::function<bool(double)>& good, Interval stretch, double apart, RuleId rule,
                   Blocks& blocks) {
  const int steps = std::max(1, static_cast<int>(std::ceil(stretch.length() / apart)));
  double before = stretch.from;
  bool wasGood = good(before);
  std::optional<double> badFrom;
  if (!wasGood)
    badFrom = before - 2 * tolerance::same;
  for (int i = 1; i <= steps; ++i) {
    const double at = stretch.from + stretch.length() * i / steps;
    const bool isGood = good(at);
    if (isGood != wasGood) {
      double low = before, high = at;
      while (high - low > tolerance::same / 4) {
        const double middle = (low + high) / 2;
        (good(middle) == wasGood ? low : high) = middle;
      }
      if (isGood)
        blocks.open(rule, {*badFrom, high});
      else
        badFrom = low;
    }
    wasGood = isGood;
    before = at;
  }
  if (!wasGood)
    blocks.open(rule, {*badFrom, stretch.to + 2 * tolerance::same});
}

// All of a ground that is free and near an end or a step piece by piece, the rest by its middle.
void tryGround(const Site& site, const Ground& ground, const std::function<bool(double)>& good, RuleId rule,
               Blocks& blocks, Trying trying = Trying::All) {
  const std::vector<Interval> changing = changingStretches(site.layout, trying);
  const double apart = trying == Trying::All ? every : seldom;
  for (const Interval free : blocks.freeOf(ground.s)) {
    for (const Interval same : withoutOpen(free, changing))
      if (!good(same.middle()))
        blocks.closed(rule, same);
    for (const Interval near : changing)
      if (const Interval part = overlap(free, near); !part.empty())
        blockWhereNot(good, part, apart, rule, blocks);
  }
}

} // namespace

std::vector<Interval> concreteEnds(const WallLayout& layout) {
  std::vector<Interval> places = stepsAndCorners(layout);
  for (const ConcreteFace& face : layout.faces)
    if (face.kind != ConcreteFace::Kind::Step)
      places.push_back({face.station, face.station});
  return places;
}

void blockByConcrete(const Site& site, const AnchorBody& bolt, Blocks& blocks) {
  if (!hasHook(bolt))
    return;
  const WallLayout& layout = site.layout;
  const Box3 hook = bounds(bolt.foot.front());
  for (const Ground& ground : site.grounds) {
    const double up = ground.pour - bolt.pour;
    const Box3 here = shifted(hook, 0, up);
    const bool within =
        here.d.from >= layout.across.from && here.d.to <= layout.across.to && here.z.from >= layout.stemBottom;
    if (within) { // then it can only come out at an end
      for (const ConcreteFace& face : layout.faces)
        if (overlap(face.z, here.z).length() >= tolerance::same)
          blocks.open(RuleId::BoltHook,
                      overlap(nearerThan(face, here, bolt.station, -tolerance::same, bolt.diameter / 2),
                              grown(ground.s, 2 * tolerance::same)));
      continue;
    }
    const auto good = [&](double at) {
      return !over(outsideConcrete(layout, bolt, shifted(hook, at - bolt.station, up)), 0);
    };
    tryGround(site, ground, good, RuleId::BoltHook, blocks);
  }
}

void blockByConcrete(const Site& site, const StrapBody& strap, Blocks& blocks) {
  const WallLayout& layout = site.layout;
  const double now = strap.strap->station;
  for (const Ground& ground : site.grounds) {
    const double up = ground.pour + strap.strap->heightOffset - strap.joint;
    const Box3 here = shifted(strap.embeddedBox, 0, up);
    const Interval hook{strap.depthOfHook.from + up, strap.depthOfHook.to + up};
    for (const ConcreteFace& face : layout.faces)
      if (overlap(face.z, hook).length() > tolerance::same)
        blocks.open(RuleId::StrapEdge,
                    overlap(nearerThan(face, here, now, strap.type->edgeMinimum - tolerance::same, 0),
                            grown(ground.s, 2 * tolerance::same)));
    if (strap.embedded.profile.empty())
      continue;
    if (touching(here.z.from - layout.bottom))
      tryGround(
          site, ground, [&](double at) { return !touching(hookToBottom(layout, shifted(here, at - now, 0))); },
          RuleId::StrapDepth, blocks);
    if (!touching(layout.across.to - here.d.to))
      continue;
    const auto behind = [&](double at) {
      Ribbon plate = strap.embedded;
      plate.station = at;
      for (ProfilePoint& point : plate.profile)
        point.z += up;
      const auto part = partInStem(layout, plate, strap.joint + up);
      return !part || !touching(hookToInside(layout, *part).measured);
    };
    tryGround(site, ground, behind, RuleId::StrapBack, blocks);
  }
}

void blockByConcrete(const Site& site, const BarBody& bar, Blocks& blocks) {
  const double now = (bar.body.a.s + bar.body.b.s) / 2;
  const auto good = [&](double at) {
    BarBody there = bar;
    there.body.a.s += at - now;
    there.body.b.s += at - now;
    const BarCovers covers = barCoverOf(site.layout, there);
    return std::none_of(covers.measured.begin(), covers.measured.end(), [&](const Cover& cover) {
      return under(cover.measured, cover.earth ? covers.earth : covers.formed);
    });
  };
  const BarCovers asked = barCoverOf(site.layout, bar);
  const Box3 steel = steelOf(bar);
  const auto ends = [&](const std::vector<ConcreteFace>& faces, double least) {
    for (const ConcreteFace& face : faces)
      if (overlap(face.z, steel.z).length() >= tolerance::same)
        blocks.open(RuleId::BarCover, nearerThan(face, steel, now, least - tolerance::same, asked.round));
  };
  ends(site.layout.faces, asked.formed);
  ends(site.layout.footingEnds, asked.earth);
  for (const Ground& ground : site.grounds)
    tryGround(site, ground, good, RuleId::BarCover, blocks, Trying::AllButEnds);
}

void blockBar(const Site& site, const BarBody& bar, Blocks& blocks) {
  blockByConcrete(site, bar, blocks); // before it is cut up by steel: there are fewer stretches to try
  blockBySteel(site, bar, blocks);
}

} // namespace sillwright
