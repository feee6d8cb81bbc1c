#include "core/rules/anchor_checks.h"

#include <algorithm>
#include <cmath>

#include "core/rules/concrete_cover.h"
#include "core/rules/measure.h"
#include "core/standards/cover.h"
#include "core/standards/fasteners.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

struct Nearest {
  double distance = 1e9;
  Box3 own;
  Box3 obstacle;
};

Interval shifted(Interval a, double by) { return {a.from + by, a.to + by}; }

template <class Part> Nearest nearestPart(const AnchorBody& anchor, std::span<const Part> obstacle) {
  Nearest nearest;
  for (const Capsule& own : partsOf(anchor))
    for (const Part& part : obstacle)
      if (const double distance = clearance(own, part).distance; distance < nearest.distance)
        nearest = {distance, bounds(own), bounds(part)};
  return nearest;
}

// The ways of an anchor out of something, by each of these clear distances in turn: along the wall, then across it.
template <class Part> struct WaysClear {
  Id anchor;
  double station = 0;
  double depth = 0;
  std::vector<Capsule> own;
  Box3 ownBox;
  std::vector<Part> obstacle;
  Box3 obstacleBox;
  std::vector<double> wanted;

  bool isClear(double along, double in, double want) const {
    const Box3 moved{shifted(ownBox.s, along), shifted(ownBox.d, in), ownBox.z};
    return apart(moved, obstacleBox, want) || std::all_of(own.begin(), own.end(), [&](Capsule part) {
             for (Point3* end : {&part.a, &part.b})
               *end = {end->s + along, end->d + in, end->z};
             return std::none_of(obstacle.begin(), obstacle.end(),
                                 [&](const Part& other) { return under(clearance(part, other).distance, want); });
           });
  }

  std::vector<Correction> operator()() const {
    std::vector<Correction> ways;
    for (const Field field : {Field::Station, Field::Depth})
      for (const double want : wanted) {
        const bool along = field == Field::Station;
        const auto clear = [&](double by) { return isClear(along ? by : 0, along ? 0 : by, want); };
        for (const double by : movesUntilClear(along ? station : depth, clear))
          ways.push_back({field, anchor, by});
      }
    return ways;
  }
};

template <class Part>
void checkClear(const WallLayout& layout, RuleId rule, double target, const AnchorBody& anchor,
                std::span<const Part> obstacle, const Box3& around, Id other, Drafts& drafts) {
  if (apart(anchor.steelBox, around, target))
    return;
  const Nearest nearest = nearestPart(anchor, obstacle);
  const bool fix = touching(nearest.distance);
  if (!fix && !under(nearest.distance, target))
    return;
  const Box3 region = between(nearest.own, nearest.obstacle);
  Draft& draft = report(drafts, layout, rule, fix ? Level::Fix : Level::Watch, {anchor.id, other},
                        {nearest.distance, fix ? 0 : target, region});
  std::vector<double> wanted{target};
  if (fix)
    wanted.push_back(2 * tolerance::same);
  draft.search = WaysClear<Part>{anchor.id,       anchor.station,   anchor.depth,
                                 partsOf(anchor), anchor.steelBox,  {obstacle.begin(), obstacle.end()},
                                 around,          std::move(wanted)};
}

double valueOf(const AnchorBody& anchor, Field field) {
  return field == Field::Station ? anchor.station : field == Field::Depth ? anchor.depth : projectionOf(anchor);
}

} // namespace

Box3 shankBox(const AnchorBody& anchor, Interval z) {
  return {around(anchor.station, anchor.diameter), around(anchor.depth, anchor.diameter), z};
}

Box3 nutBox(const AnchorBody& anchor) {
  const auto hardware = boltHardware(anchor.diameter);
  const double across = hardware ? hardware->nutAcrossFlats : anchor.diameter;
  return {around(anchor.station, across), around(anchor.depth, across), {anchor.pour, anchor.top}};
}

std::vector<Capsule> partsOf(const AnchorBody& anchor) {
  std::vector<Capsule> parts{anchor.shank};
  parts.insert(parts.end(), anchor.foot.begin(), anchor.foot.end());
  return parts;
}

double projectionOf(const AnchorBody& anchor) { return anchor.isRod ? anchor.rod->projection : anchor.bolt->projection; }

std::optional<ThreadStack> stackOn(const WallLayout& layout, const AnchorBody& anchor, double standoutThreads) {
  if (!anchor.sillPiece)
    return std::nullopt;
  const double threads = anchor.isRod ? anchor.rodType->threadsPerInch : anchor.boltType->threadsPerInch;
  return threadStack({anchor.diameter, threads}, layout.sills[*anchor.sillPiece].box.z.length(), anchor.washer,
                     anchor.bolt && anchor.bolt->cutWasher, standoutThreads);
}

void checkThread(const WallLayout& layout, RuleId rule, const ThreadLimits& limits, const AnchorBody& anchor,
                 Drafts& drafts) {
  const auto stack = stackOn(layout, anchor, limits.standoutThreads);
  if (!stack)
    return;
  const double projection = projectionOf(anchor);
  const double needed = neededProjection(*stack);
  const double spare = projection - needed;
  const bool fix = under(spare, 0);
  if (!fix && !under(spare, limits.spare))
    return;
  const double goal = fix ? needed : needed + limits.spare;
  const Box3 region = shankBox(anchor, betweenValues(anchor.pour + projection, anchor.pour + goal));
  const Shortfall shortfall = fix ? Shortfall{projection, needed, region}
                                  : Shortfall{spare, limits.spare, region, Wanted::AtLeast, Unit::Inch, 1};
  Draft& draft = report(drafts, layout, rule, fix ? Level::Fix : Level::Watch, {anchor.id}, shortfall);
  draft.corrections.push_back(move(anchor.id, Field::Projection, projection, needed + limits.spare - projection));
  if (fix)
    draft.corrections.push_back(move(anchor.id, Field::Projection, projection, -spare));
}

void checkEmbed(const WallLayout& layout, RuleId rule, double least, const AnchorBody& anchor, Drafts& drafts) {
  if (!under(anchor.embedment, least))
    return;
  const Box3 region = shankBox(anchor, betweenValues(anchor.pour - least, anchor.pour - anchor.embedment));
  Draft& draft = report(drafts, layout, rule, Level::Fix, {anchor.id}, {anchor.embedment, least, region});
  if (!anchor.isRod) // how deep a rod goes is its type's
    draft.corrections.push_back(move(anchor.id, Field::Projection, projectionOf(anchor), anchor.embedment - least));
}

void checkOpening(const WallLayout& layout, RuleId rule, const AnchorBody& anchor, Drafts& drafts) {
  for (const Opening& opening : layout.wall->openings) {
    const Interval own = around(anchor.station, anchor.diameter);
    const Interval door{opening.from, opening.to};
    if (opening.kind == OpeningKind::Window || !under(gap(own, door), 0))
      continue;
    Box3 region = shankBox(anchor, {anchor.pour, anchor.top});
    region.s = overlap(own, door);
    Draft& draft = report(drafts, layout, rule, Level::Fix, {anchor.id, opening.id},
                          {-gap(own, door), 0, region, Wanted::AtMost});
    draft.corrections = movesApart(anchor.id, anchor.station, own, door);
  }
}

void checkCover(const WallLayout& layout, RuleId rule, const AnchorBody& anchor, Drafts& drafts) {
  const int number = static_cast<int>(std::lround(anchor.diameter * 8)); // a bar of the same thickness
  Box3 steel = anchor.steelBox;
  steel.z.to = std::min(steel.z.to, anchor.pour);
  const double formed = requiredCover(Exposure::ExposedOrGround, number);
  const double earth = requiredCover(Exposure::CastAgainstEarth, number);
  for (const Cover& cover : coversOf(layout, steel, anchor.diameter / 2, std::max(formed, earth))) {
    const double limit = cover.earth ? earth : formed;
    if (cover.face == CoverFace::Top || cover.face == CoverFace::FootingTop || !under(cover.measured, limit))
      continue;
    Draft& draft = report(drafts, layout, rule, Level::Ask, {anchor.id},
                          {cover.measured, limit, cover.region, Wanted::AtLeast, Unit::Inch,
                           static_cast<std::uint8_t>(cover.face)});
    const Field field = fieldOf(cover.face) == Field::Height ? Field::Projection : fieldOf(cover.face);
    if (field != Field::Projection || !anchor.isRod)
      draft.corrections.push_back(
          move(anchor.id, field, valueOf(anchor, field), wayToMore(cover.face) * (limit - cover.measured)));
  }
}

void checkClearOf(const WallLayout& layout, RuleId rule, double target, const AnchorBody& anchor, const BarBody& bar,
                  Drafts& drafts) {
  checkClear(layout, rule, target, anchor, std::span(&bar.body, 1), bar.box, bar.id, drafts);
}

void checkClearOf(const WallLayout& layout, RuleId rule, double target, const AnchorBody& anchor, const StrapBody& strap,
                  Drafts& drafts) {
  checkClear(layout, rule, target, anchor, std::span(&strap.embedded, 1), strap.embeddedBox, strap.id, drafts);
}

void checkClearOf(const WallLayout& layout, RuleId rule, double target, const AnchorBody& anchor,
                  const AnchorBody& other, Drafts& drafts) {
  if (apart(anchor.steelBox, other.steelBox, target))
    return;
  const std::vector<Capsule> parts = partsOf(other);
  checkClear(layout, rule, target, anchor, std::span<const Capsule>(parts), other.steelBox, other.id, drafts);
}

} // namespace sillwright
