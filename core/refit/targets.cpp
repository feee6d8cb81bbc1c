#include "core/refit/targets.h"

#include <algorithm>

#include "core/geometry/interval_set.h"
#include "core/refit/bolt_near.h"
#include "core/refit/marks.h"
#include "core/refit/site.h"
#include "core/refit/wall_problem.h"
#include "core/rules/measure.h"
#include "core/rules/rule_book.h"

namespace sillwright {

namespace {

using sequence::Mark;
using sequence::Stretch;

// Whether the job looks at the rule at all.
bool counts(const ResolvedLimits& limits, RuleId id) {
  return limits.counts[static_cast<std::size_t>(id)] != RuleCounts::None;
}

class Missed {
public:
  Missed(const WallLayout& layout, const ResolvedLimits& limits, Interval slot)
      : layout_(layout), limits_(limits), slot_(slot) {}

  std::vector<Interval> met() {
    std::vector<Interval> parts;
    for (const Interval part : withoutOpen(slot_, open_))
      if (const Stretch marks = marksIn(part); marks.from <= marks.to)
        parts.push_back(part);
    return parts;
  }

  void take(RuleId id, const std::vector<Interval>& open) {
    if (counts(limits_, id))
      open_.insert(open_.end(), open.begin(), open.end());
  }
  void take(RuleId id, const std::optional<Interval>& open) {
    if (open)
      take(id, std::vector{*open});
  }

  // Mark by mark, where nothing can be said in one go: what a rule says of the piece alone. `at` makes that layout.
  template <class At>
  void probe(std::initializer_list<RuleId> rules, const std::vector<Interval>& where, const At& at) {
    for (const Interval part : where) {
      const Stretch marks = marksIn(overlap(part, slot_));
      for (Mark mark = marks.from; mark <= marks.to; ++mark)
        if (saysAnything(rules, at(inchesOf(mark))))
          open_.push_back(grown(around(inchesOf(mark), 0), tolerance::tapeMark - tolerance::same));
    }
  }

  void bolt(AnchorBody body) {
    for (const BarBody& bar : layout_.bars)
      take(RuleId::BoltSteel, nearerThan(body, bar, limits_[LimitKey::BoltSteelTarget] - tolerance::same));
    for (const StrapBody& strap : layout_.straps)
      take(RuleId::BoltStrap, nearerThan(body, strap, limits_[LimitKey::BoltStrapTarget] - tolerance::same));
    for (const AnchorBody& other : layout_.anchors)
      if (other.id != body.id)
        anchor(body, other);
    if (body.washerBox)
      for (const ColumnBody& column : layout_.columns)
        take(RuleId::WasherColumn,
             underWood(body, *body.washerBox, column.box, limits_[LimitKey::WasherColumnTarget] - tolerance::same));
    cover(std::move(body));
  }

  void strap(const StrapBody& body) {
    for (const AnchorBody& bolt : layout_.anchors)
      if (!bolt.isRod)
        for (const Interval near : nearerThan(bolt, body, limits_[LimitKey::BoltStrapTarget] - tolerance::same)) {
          const double now = body.strap->station; // the bolt stands, the strap goes the other way
          take(RuleId::BoltStrap, Interval{bolt.station + now - near.to, bolt.station + now - near.from});
        }
  }

  void rod(const AnchorBody& body) {
    for (const AnchorBody& other : layout_.anchors)
      if (other.id != body.id)
        anchor(body, other);
  }

private:
  void anchor(const AnchorBody& body, const AnchorBody& other) {
    const double diameter = std::max(body.diameter, other.diameter);
    take(RuleId::BoltGap, axesNearerThan(body, other, limits_[LimitKey::BoltGapTorqued] * diameter - tolerance::same));
    if (body.isRod != other.isRod)
      take(RuleId::BoltStrap, nearerThan(body, other, limits_[LimitKey::BoltStrapTarget] - tolerance::same));
  }

  void cover(AnchorBody body) {
    constexpr double most = 3.5; // more than any cover asked for
    const double reach = most + std::max(body.station - body.steelBox.s.from, body.steelBox.s.to - body.station);
    std::vector<Interval> where;
    for (const Interval end : concreteEnds(layout_))
      where.push_back(grown(end, reach));
    WallLayout alone = layout_;
    alone.straps.clear();
    alone.anchors = {std::move(body)};
    probe({RuleId::BoltCover}, where, [&](double station) -> const WallLayout& {
      slide(alone.anchors.front(), station - alone.anchors.front().station);
      return alone;
    });
  }

  bool saysAnything(std::initializer_list<RuleId> rules, const WallLayout& alone) const {
    return std::any_of(rules.begin(), rules.end(), [&](RuleId id) {
      if (!counts(limits_, id))
        return false;
      Drafts drafts;
      rule(id).check(alone, limits_, drafts);
      return std::any_of(drafts.begin(), drafts.end(),
                         [](const Draft& draft) { return draft.finding.level != Level::Fix; });
    });
  }

  const WallLayout& layout_;
  const ResolvedLimits& limits_;
  Interval slot_;
  std::vector<Interval> open_;
};

} // namespace

std::vector<Interval> targetsMet(const WallLayout& layout, const ResolvedLimits& limits, Id piece, Interval slot,
                                 std::optional<std::size_t> column) {
  Missed missed(layout, limits, slot);
  for (const AnchorBody& anchor : layout.anchors) {
    if (anchor.id != piece)
      continue;
    if (!anchor.isRod) {
      missed.bolt(anchor);
      continue;
    }
    missed.rod(anchor);
    WallLayout alone = layout;
    alone.straps.clear();
    alone.anchors = {anchor};
    missed.probe({RuleId::RodSteel, RuleId::RodEdge, RuleId::RodCover}, {slot},
                 [&](double station) -> const WallLayout& {
                   slide(alone.anchors.front(), station - alone.anchors.front().station);
                   return alone;
                 });
  }
  for (const StrapBody& strap : layout.straps) {
    if (strap.id != piece)
      continue;
    missed.strap(strap);
    WallLayout alone = layout;
    alone.anchors.clear();
    alone.straps = {strap};
    if (column)
      alone.straps.front().column = column;
    Strap moved = *strap.strap;
    missed.probe({RuleId::StrapEdge, RuleId::StrapSteel, RuleId::StrapDepth, RuleId::StrapBack, RuleId::StrapSeam,
                  RuleId::StrapNailEdge},
                 {slot}, [&](double station) -> const WallLayout& {
                   slide(alone.straps.front(), moved, station - moved.station);
                   return alone;
                 });
  }
  return missed.met();
}

} // namespace sillwright
