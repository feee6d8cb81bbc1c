// Where straps hang: edges of the concrete, joint heights, hangers, panel ends without one.
#include <algorithm>
#include <cmath>

#include "core/geometry/clearance.h"
#include "core/model/lookup.h"
#include "core/rules/measure.h"
#include "core/rules/panel_ends.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

double signOf(Side side) {
  return side == Side::Left ? -1.0 : 1.0;
}

struct Edge {
  const ConcreteFace* face = nullptr;
  double distance = 0; // from the plate's edge to the face, negative where the plate is past it
};

// A riser counts only for what stands on its high side; an end also for what hangs past it.
bool counts(const ConcreteFace& face, Side side, const StrapBody& strap) {
  const bool facesStrap = face.concrete == (side == Side::Left ? Side::Right : Side::Left);
  const bool onItsConcrete = (strap.strap->station - face.station) * signOf(side) <= 0;
  const Interval shared = overlap(face.z, strap.depthOfHook);
  return facesStrap && shared.length() > tolerance::same && (face.kind != ConcreteFace::Kind::Step || onItsConcrete);
}

Edge nearestEdge(const WallLayout& layout, const StrapBody& strap, Side side) {
  const Box3& body = strap.embeddedBox;
  Edge nearest;
  for (const ConcreteFace& face : layout.faces) {
    if (!counts(face, side, strap))
      continue;
    const double distance = distanceTo(face, body);
    if (!nearest.face || distance < nearest.distance)
      nearest = {&face, distance};
  }
  return nearest;
}

void checkEdge(const WallLayout& layout, const ResolvedLimits& limits, const StrapBody& strap, Side side,
               Drafts& drafts) {
  const Edge edge = nearestEdge(layout, strap, side);
  if (!edge.face)
    return;
  const double least = strap.type->edgeMinimum;
  const double target = ownOr(limits, LimitKey::StrapEdgeTarget, strap.type->edgeTarget);
  const bool fix = under(edge.distance, least);
  if (!fix && !under(edge.distance, target))
    return;
  const double limit = fix ? least : target;
  const double plateEdge = strap.strap->station + signOf(side) * strap.type->plateWidth / 2;
  const Box3& body = strap.embeddedBox;
  const Box3 region{betweenValues(plateEdge, stationToward(*edge.face, body)), body.d,
                    overlap(edge.face->z, strap.depthOfHook)};
  const auto variant = static_cast<std::uint8_t>((side == Side::Right ? 1 : 0) + 2 * static_cast<int>(edge.face->kind));
  Draft& draft = report(drafts, layout, RuleId::StrapEdge, fix ? Level::Fix : Level::Watch, {strap.id},
                        {edge.distance, limit, region, Wanted::AtLeast, Unit::Inch, variant});
  const double by = (edge.distance - limit) * std::hypot(1, edge.face->slant) * signOf(side);
  draft.corrections.push_back(move(strap.id, Field::Station, strap.strap->station, by));
}

double abovePour(const StrapBody& strap) {
  return strap.strap->heightOffset;
}

// Heights above the own pour line are compared, so that a step between two straps does not count.
void checkPair(const WallLayout& layout, double limit, const StrapBody& a, const StrapBody& b, Drafts& drafts) {
  const double apart = std::abs(abovePour(a) - abovePour(b));
  if (!over(apart, limit))
    return;
  const double offA = std::abs(abovePour(a));
  const double offB = std::abs(abovePour(b));
  const bool moveA = offA > offB + tolerance::same || (offA > offB - tolerance::same && a.id < b.id);
  const StrapBody& mover = moveA ? a : b;
  const StrapBody& other = moveA ? b : a;
  const double goal = mover.joint - abovePour(mover) + abovePour(other);
  const Box3 region{mover.plate.s, mover.plate.d, betweenValues(mover.joint, goal)};
  Draft& draft = report(drafts, layout, RuleId::StrapPair, Level::Fix, {mover.id, other.id},
                        {apart, limit, region, Wanted::AtMost});
  draft.corrections.push_back({Field::Height, mover.id, goal - mover.joint});
}

void checkMissing(const WallLayout& layout, const PanelEnd& panelEnd, Drafts& drafts) {
  const Panel& panel = *panelEnd.panel;
  const Side end = panelEnd.side;
  const StrapType* type = panelEnd.mark ? findStrapType(*layout.types, panelEnd.mark->strapType) : nullptr;
  if (!type || panelEnd.strap)
    return;
  const double at = (end == Side::Left ? panel.from : panel.to) - signOf(end) * type->plateWidth / 2;
  const double pour = pourAt(layout, at);
  Box3 region{around(at, type->plateWidth), {0, type->plateThickness}, {pour, pour + type->exposedLength}};
  if (!type->profile.empty()) {
    const Box3 embedded = bounds(Ribbon{at, type->plateWidth, type->plateThickness, type->profile});
    region.d = embedded.d;
    region.z.from += embedded.z.from;
  }
  report(drafts, layout, RuleId::StrapMissing, Level::Fix, {panel.id},
         {0, 1, region, Wanted::AtLeast, Unit::Count, static_cast<std::uint8_t>(end == Side::Right)});
}

} // namespace

void checkStrapEdge(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const StrapBody& strap : layout.straps)
    for (const Side side : {Side::Left, Side::Right})
      checkEdge(layout, limits, strap, side, drafts);
}

void checkStrapJoint(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const StrapBody& strap : layout.straps) {
    const double limit = ownOr(limits, LimitKey::StrapJoint, strap.type->jointTolerance);
    const double off = abovePour(strap);
    if (!over(std::abs(off), limit))
      continue;
    const Box3 region{strap.plate.s, strap.plate.d, betweenValues(strap.joint, strap.joint - off)};
    Draft& draft =
        report(drafts, layout, RuleId::StrapJoint, Level::Fix, {strap.id},
               {std::abs(off), limit, region, Wanted::AtMost, Unit::Inch, static_cast<std::uint8_t>(off < 0)});
    draft.corrections.push_back({Field::Height, strap.id, -off});
  }
}

void checkStrapPair(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const StrapPair& pair : strapPairs(layout))
    checkPair(layout, limits[LimitKey::StrapPair], *pair.left, *pair.right, drafts);
}

void checkStrapHang(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const StrapBody& strap : layout.straps) {
    const Interval reach = strap.type->hangerReach;
    if (reach == Interval{0, 0}) // not entered
      continue;
    const double formTop = layout.wall->formTop - strap.strap->heightOffset;
    const bool low = under(formTop, reach.from);
    if (!low && !over(formTop, reach.to))
      continue;
    const double limit = low ? reach.from : reach.to;
    const Box3 region{
        strap.plate.s, {-layout.wall->forms.outside, 0}, betweenValues(strap.joint + formTop, strap.joint + limit)};
    report(drafts, layout, RuleId::StrapHang, Level::Fix, {strap.id},
           {formTop, limit, region, low ? Wanted::AtLeast : Wanted::AtMost});
  }
}

void checkStrapMissing(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const PanelEnd& end : panelEnds(layout))
    checkMissing(layout, end, drafts);
}

} // namespace sillwright
