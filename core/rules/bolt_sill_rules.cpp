// Bolts in their sill pieces: how many, how far from the ends and from each other, where across.
#include <algorithm>
#include <cmath>

#include "core/rules/bolts_in_sill.h"
#include "core/rules/measure.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

using Field = Correction::Field;
using Bolts = std::vector<const AnchorBody*>;

Bolts boltsIn(const WallLayout& layout, std::size_t piece) {
  Bolts bolts;
  for (const AnchorBody& anchor : layout.anchors)
    if (!anchor.isRod && anchor.sillPiece == piece)
      bolts.push_back(&anchor);
  std::sort(bolts.begin(), bolts.end(), [](const AnchorBody* a, const AnchorBody* b) {
    return a->station != b->station ? a->station < b->station : a->id < b->id;
  });
  return bolts;
}

// The exceptions of R403.1.6 are for short walls between two others.
bool shortWall(const WallLayout& layout, double upTo) {
  return layout.place.atStart && layout.place.atEnd && !over(layout.length, upTo);
}

void checkFarEnd(const WallLayout& layout, double limit, const SillPiece& piece, const AnchorBody& bolt, Side end,
                 Drafts& drafts) {
  const double at = end == Side::Left ? piece.box.s.from : piece.box.s.to;
  const double away = std::abs(bolt.station - at);
  if (!over(away, limit))
    return;
  const Box3 region{betweenValues(at, bolt.station), piece.box.d, piece.box.z};
  Draft& draft = report(drafts, layout, RuleId::BoltEndFar, Level::Fix, {bolt.id, piece.sill},
                        {away, limit, region, Wanted::AtMost, Unit::Inch, static_cast<std::uint8_t>(end)});
  draft.corrections.push_back(
      move(bolt.id, Field::Station, bolt.station, end == Side::Left ? limit - away : away - limit));
}

} // namespace

double boltsNeeded(const WallLayout& layout, const ResolvedLimits& limits) {
  if (shortWall(layout, limits[LimitKey::BoltNoWall]))
    return 0;
  return shortWall(layout, limits[LimitKey::BoltShortWall]) ? 1 : limits[LimitKey::BoltCount];
}

std::optional<double> markedSpacing(const WallLayout& layout, const Panel& panel) {
  std::optional<double> least;
  for (const WallEndMark& mark : *layout.marks)
    if (mark.boltSpacing && (mark.mark == panel.leftMark || mark.mark == panel.rightMark))
      least = std::min(least.value_or(*mark.boltSpacing), *mark.boltSpacing);
  return least;
}

SpacingLimit spacingLimit(const WallLayout& layout, const ResolvedLimits& limits, Interval between) {
  const bool tall = layout.limits->storeys > 2;
  SpacingLimit limit{limits[tall ? LimitKey::BoltSpacingTall : LimitKey::BoltSpacing], false};
  const auto lower = [&](std::optional<double> plans) {
    if (plans && *plans < limit.inches)
      limit = {*plans, true};
  };
  lower(layout.limits->planBoltSpacing);
  for (const Panel& panel : layout.wall->panels)
    if (gap(between, {panel.from, panel.to}) <= -tolerance::same)
      lower(markedSpacing(layout, panel));
  return limit;
}

Interval wholeSill(const WallLayout& layout, const SillPiece& piece) {
  Interval whole = piece.box.s;
  bool grew = true;
  while (grew) {
    grew = false;
    for (const SillPiece& other : layout.sills)
      if (other.sill == piece.sill && gap(whole, other.box.s) < tolerance::same &&
          !(hull(whole, other.box.s) == whole)) {
        whole = hull(whole, other.box.s);
        grew = true;
      }
  }
  return whole;
}

void checkBoltCount(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  const double needed = boltsNeeded(layout, limits);
  for (std::size_t i = 0; i < layout.sills.size(); ++i) {
    const SillPiece& piece = layout.sills[i];
    const Bolts bolts = boltsIn(layout, i);
    const double count = static_cast<double>(bolts.size());
    if (count < needed)
      report(drafts, layout, RuleId::BoltCount, Level::Fix, {piece.sill},
             {count, needed, piece.box, Wanted::AtLeast, Unit::Count});
    const double third = piece.box.s.length() / 6;
    if (needed != 1 || bolts.size() != 1)
      continue;
    const double off = bolts[0]->station - piece.box.s.middle();
    if (!over(std::abs(off), third))
      continue;
    const double edge = piece.box.s.middle() + (off > 0 ? third : -third);
    Draft& draft = report(drafts, layout, RuleId::BoltCount, Level::Fix, {bolts[0]->id, piece.sill},
                          {std::abs(off),
                           third,
                           {betweenValues(edge, bolts[0]->station), piece.box.d, piece.box.z},
                           Wanted::AtMost,
                           Unit::Inch,
                           1});
    draft.corrections.push_back(move(bolts[0]->id, Field::Station, bolts[0]->station, edge - bolts[0]->station));
  }
}

void checkBoltEndFar(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (std::size_t i = 0; i < layout.sills.size(); ++i) {
    const Bolts bolts = boltsIn(layout, i);
    if (bolts.empty())
      continue;
    checkFarEnd(layout, limits[LimitKey::BoltEndFar], layout.sills[i], *bolts.front(), Side::Left, drafts);
    checkFarEnd(layout, limits[LimitKey::BoltEndFar], layout.sills[i], *bolts.back(), Side::Right, drafts);
  }
}

void checkBoltEndNear(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (std::size_t i = 0; i < layout.sills.size(); ++i) {
    const SillPiece& piece = layout.sills[i];
    for (const AnchorBody* bolt : boltsIn(layout, i))
      for (const Side end : {Side::Left, Side::Right}) {
        const double at = end == Side::Left ? piece.box.s.from : piece.box.s.to;
        const double away = end == Side::Left ? bolt->station - at : at - bolt->station;
        const double limit = limits[LimitKey::BoltEndNearDiameters] * bolt->diameter;
        if (!under(away, limit))
          continue;
        const Box3 region{betweenValues(at, bolt->station), piece.box.d, piece.box.z};
        Draft& draft = report(drafts, layout, RuleId::BoltEndNear, Level::Fix, {bolt->id, piece.sill},
                              {away, limit, region, Wanted::AtLeast, Unit::Inch, static_cast<std::uint8_t>(end)});
        draft.corrections.push_back(
            move(bolt->id, Field::Station, bolt->station, end == Side::Left ? limit - away : away - limit));
      }
  }
}

void checkBoltSpacing(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (std::size_t i = 0; i < layout.sills.size(); ++i) {
    const Bolts bolts = boltsIn(layout, i);
    for (std::size_t k = 0; k + 1 < bolts.size(); ++k) {
      const AnchorBody& left = *bolts[k];
      const AnchorBody& right = *bolts[k + 1];
      const Interval stretch{left.station, right.station};
      const SpacingLimit limit = spacingLimit(layout, limits, stretch);
      const double excess = stretch.length() - limit.inches;
      if (!over(excess, 0))
        continue;
      const SillPiece& piece = layout.sills[i];
      Draft& draft = report(drafts, layout, RuleId::BoltSpacing, Level::Fix, {left.id, right.id},
                            {stretch.length(),
                             limit.inches,
                             {stretch, piece.box.d, piece.box.z},
                             Wanted::AtMost,
                             Unit::Inch,
                             static_cast<std::uint8_t>(limit.fromPlans)});
      draft.corrections = {move(left.id, Field::Station, left.station, excess),
                           move(right.id, Field::Station, right.station, -excess)};
    }
  }
}

void checkBoltThird(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  for (const AnchorBody& bolt : layout.anchors) {
    if (bolt.isRod || !bolt.sillPiece)
      continue;
    const SillPiece& piece = layout.sills[*bolt.sillPiece];
    const double third = piece.box.d.length() / 3;
    const double off = bolt.depth - piece.box.d.middle();
    const double edge = piece.box.d.length() / 2 - std::abs(off);
    if (!under(edge, third))
      continue;
    const double goal = off > 0 ? piece.box.d.to - third : piece.box.d.from + third;
    const Box3 region{around(bolt.station, bolt.diameter), betweenValues(bolt.depth, goal), piece.box.z};
    Draft& draft = report(drafts, layout, RuleId::BoltThird, Level::Fix, {bolt.id}, {edge, third, region});
    draft.corrections.push_back(move(bolt.id, Field::Depth, bolt.depth, goal - bolt.depth));
  }
}

} // namespace sillwright
