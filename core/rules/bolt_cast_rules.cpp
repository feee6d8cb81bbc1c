// Bolts in their concrete: apart from each other, under enough of it, and with a hook that holds.
#include <algorithm>
#include <cmath>

#include "core/geometry/clearance.h"
#include "core/rules/anchor_checks.h"
#include "core/rules/concrete_cover.h"
#include "core/rules/measure.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

// The bolt moves, not the rod that hangs on its column; of two bolts the younger.
bool moves(const AnchorBody& a, const AnchorBody& b) { return a.isRod != b.isRod ? !a.isRod : b.id < a.id; }

void checkApart(const WallLayout& layout, const ResolvedLimits& limits, const AnchorBody& mover, const AnchorBody& other,
                Drafts& drafts) {
  const double diameter = std::max(mover.diameter, other.diameter);
  const double along = mover.station - other.station, across = mover.depth - other.depth;
  const double apart = std::hypot(along, across);
  const double least = limits[LimitKey::BoltGap] * diameter, torqued = limits[LimitKey::BoltGapTorqued] * diameter;
  const bool fix = under(apart, least);
  if (!fix && !under(apart, torqued))
    return;
  const double limit = fix ? least : torqued;
  const Interval z = overlap({mover.bottom, mover.pour}, {other.bottom, other.pour});
  if (z.empty())
    return;
  const Box3 region{betweenValues(mover.station, other.station), betweenValues(mover.depth, other.depth), z};
  Draft& draft = report(drafts, layout, RuleId::BoltGap, fix ? Level::Fix : Level::Ask, {mover.id, other.id},
                        {apart, limit, region});
  if (mover.isRod)
    return;
  for (const double want : {torqued, least}) { // as far along as leaves that much between the axes
    const double reach = std::sqrt(std::max(0.0, want * want - across * across));
    if (!fix && want != torqued)
      continue;
    if (along >= -tolerance::same)
      draft.corrections.push_back(move(mover.id, Field::Station, mover.station, reach - along));
    if (along <= tolerance::same) // right over each other: either way
      draft.corrections.push_back(move(mover.id, Field::Station, mover.station, -reach - along));
  }
}

double hookReach(const AnchorBody& bolt) { return bolt.boltType->hookLeg - bolt.diameter / 2; }

void reportHook(const WallLayout& layout, const AnchorBody& bolt, Level level, const Shortfall& shortfall,
                Drafts& drafts) {
  Draft& draft = report(drafts, layout, RuleId::BoltHook, level, {bolt.id}, shortfall);
  if (bolt.bolt->hook != HookDirection::Inward)
    draft.corrections.push_back({Field::Hook, bolt.id, 0});
}

} // namespace

bool hasHook(const AnchorBody& anchor) {
  return !anchor.isRod && anchor.boltType->end != BoltEnd::Headed && anchor.boltType->hookLeg > 0 &&
         !anchor.foot.empty();
}

double outsideConcrete(const WallLayout& layout, const AnchorBody& bolt, const Box3& hook) {
  double most = 0;
  for (const Cover& cover : coversOf(layout, hook, bolt.diameter / 2, 0))
    if (cover.face != CoverFace::Top && cover.face != CoverFace::FootingTop)
      most = std::max(most, -cover.measured);
  return most;
}

// ACI 318-19 Table 17.9.2(a): between the axes of cast-in anchors, by the larger diameter.
void checkBoltGap(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (std::size_t i = 0; i < layout.anchors.size(); ++i)
    for (std::size_t k = i + 1; k < layout.anchors.size(); ++k) {
      const AnchorBody& a = layout.anchors[i];
      const AnchorBody& b = layout.anchors[k];
      if (moves(a, b))
        checkApart(layout, limits, a, b, drafts);
      else
        checkApart(layout, limits, b, a, drafts);
    }
}

void checkBoltCover(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const AnchorBody& bolt : layout.anchors)
    if (!bolt.isRod)
      checkCover(layout, RuleId::BoltCover, bolt, drafts);
}

// Variants: 0 not inward, 1 leg short, 2 leg long, 3 out of the concrete.
void checkBoltHook(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const AnchorBody& bolt : layout.anchors) {
    if (!hasHook(bolt))
      continue;
    const Box3 hook = bounds(bolt.foot.front());
    const double out = outsideConcrete(layout, bolt, hook);
    if (over(out, 0)) {
      reportHook(layout, bolt, Level::Fix, {out, 0, hook, Wanted::AtMost, Unit::Inch, 3}, drafts);
      continue;
    }
    if (bolt.bolt->hook != HookDirection::Inward)
      reportHook(layout, bolt, Level::Watch, {1, 0, hook, Wanted::AtMost, Unit::Count, 0}, drafts);
    const double least = limits[LimitKey::BoltHookLeast] * bolt.diameter;
    const double most = limits[LimitKey::BoltHookMost] * bolt.diameter;
    const double leg = hookReach(bolt);
    if (under(leg, least))
      report(drafts, layout, RuleId::BoltHook, Level::Watch, {bolt.id},
             {leg, least, hook, Wanted::AtLeast, Unit::Inch, 1});
    else if (over(leg, most))
      report(drafts, layout, RuleId::BoltHook, Level::Watch, {bolt.id},
             {leg, most, hook, Wanted::AtMost, Unit::Inch, 2});
  }
}

} // namespace sillwright
