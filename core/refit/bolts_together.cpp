// What the bolts of a sill leave to one of them: enough in each piece, near its ends, not too far from each other.
#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"
#include "core/refit/site.h"
#include "core/rules/bolts_in_sill.h"
#include "core/rules/measure.h"

namespace sillwright {

namespace {

using Bolts = std::vector<const AnchorBody*>;

Bolts boltsOn(const WallLayout& layout, std::size_t piece, Id but) {
  Bolts bolts;
  for (const AnchorBody& anchor : layout.anchors)
    if (!anchor.isRod && anchor.sillPiece == piece && anchor.id != but)
      bolts.push_back(&anchor);
  std::sort(bolts.begin(), bolts.end(), [](const AnchorBody* a, const AnchorBody* b) {
    return a->station != b->station ? a->station < b->station : a->id < b->id;
  });
  return bolts;
}

class Together {
public:
  Together(const Site& site, const AnchorBody& bolt, Blocks& blocks)
      : site_(site), layout_(site.layout), limits_(site.limits), bolt_(bolt), blocks_(blocks),
        needed_(boltsNeeded(layout_, limits_)), far_(limits_[LimitKey::BoltEndFar]),
        base_(spacingLimit(layout_, limits_, {}).inches) {
    for (const Panel& panel : layout_.wall->panels)
      if (const auto lower = markedSpacing(layout_, panel))
        lower_.push_back({{panel.from, panel.to}, *lower});
  }

  void all() {
    std::optional<RuleId> missed;
    if (bolt_.sillPiece)
      missed = missedWithout(*bolt_.sillPiece);
    for (const Ground& ground : site_.grounds) {
      if (missed && ground.sill != bolt_.sillPiece)
        blocks_.closed(*missed, ground.s);
      if (ground.sill)
        onPiece(*ground.sill, ground.s);
    }
  }

private:
  bool tooFar(double left, double right) const {
    return over(right - left, spacingLimit(layout_, limits_, {left, right}).inches);
  }

  bool isNextToIt(const Bolts& others, std::size_t left, std::size_t piece) const { // the bolt stands between these two
    return bolt_.sillPiece == piece && others[left]->station <= bolt_.station &&
           bolt_.station <= others[left + 1]->station;
  }

  // A rule that its sill piece would break with the bolt gone, and does not break now.
  std::optional<RuleId> missedWithout(std::size_t piece) const {
    const Bolts others = boltsOn(layout_, piece, bolt_.id);
    const double left = static_cast<double>(others.size());
    if (left < needed_ && left + 1 >= needed_)
      return RuleId::BoltCount;
    if (others.empty())
      return std::nullopt;
    const Interval sill = layout_.sills[piece].box.s;
    if (becomesFirst(others, sill, piece) || becomesLast(others, sill, piece))
      return RuleId::BoltEndFar;
    for (std::size_t i = 0; i + 1 < others.size(); ++i)
      if (isNextToIt(others, i, piece) && tooFar(others[i]->station, others[i + 1]->station))
        return RuleId::BoltSpacing;
    if (needed_ == 1 && others.size() == 1 && over(std::abs(others[0]->station - sill.middle()), sill.length() / 6))
      return RuleId::BoltCount;
    return std::nullopt;
  }

  // Too far in as the first of its piece, which it is not now.
  bool becomesFirst(const Bolts& others, Interval sill, std::size_t piece) const {
    const bool isFirstNow = bolt_.sillPiece != piece || others.front()->station < bolt_.station;
    return over(std::abs(others.front()->station - sill.from), far_) && !isFirstNow;
  }
  bool becomesLast(const Bolts& others, Interval sill, std::size_t piece) const {
    const bool isLastNow = bolt_.sillPiece != piece || others.back()->station > bolt_.station;
    return over(std::abs(sill.to - others.back()->station), far_) && !isLastNow;
  }

  void onPiece(std::size_t piece, Interval ground) {
    const Interval sill = layout_.sills[piece].box.s;
    const Bolts others = boltsOn(layout_, piece, bolt_.id);
    if (others.empty()) {
      alone(sill, ground);
      return;
    }
    for (std::size_t before = 0; before <= others.size(); ++before) {
      const double from = before == 0 ? ground.from : others[before - 1]->station;
      const double to = before == others.size() ? ground.to : others[before]->station;
      const Interval between = overlap({from, to}, ground);
      if (!between.empty())
        among(others, before, piece, between);
    }
  }

  void alone(Interval sill, Interval ground) {
    blocks_.allBut(RuleId::BoltEndFar, {sill.to - far_, sill.from + far_}, ground);
    if (needed_ == 1)
      blocks_.allBut(RuleId::BoltCount, around(sill.middle(), sill.length() / 3), ground);
  }

  // With `before` of the others to its left.
  void among(const Bolts& others, std::size_t before, std::size_t piece, Interval between) {
    const Interval sill = layout_.sills[piece].box.s;
    const bool first = before == 0, last = before == others.size();
    if (first)
      blocks_.allBut(RuleId::BoltEndFar, {sill.from - far_, sill.from + far_}, between);
    else if (becomesFirst(others, sill, piece))
      blocks_.closed(RuleId::BoltEndFar, between, others.front()->id);
    if (last)
      blocks_.allBut(RuleId::BoltEndFar, {sill.to - far_, sill.to + far_}, between);
    else if (becomesLast(others, sill, piece))
      blocks_.closed(RuleId::BoltEndFar, between, others.back()->id);
    if (!first)
      blocks_.open(RuleId::BoltSpacing, {farthestRightOf(others[before - 1]->station), between.to + tolerance::same},
                   others[before - 1]->id);
    if (!last)
      blocks_.open(RuleId::BoltSpacing, {between.from - tolerance::same, farthestLeftOf(others[before]->station)},
                   others[before]->id);
    for (std::size_t i = 0; i + 1 < others.size(); ++i) // a gap that it fills now, left open
      if (i + 1 != before && isNextToIt(others, i, piece) && tooFar(others[i]->station, others[i + 1]->station))
        blocks_.closed(RuleId::BoltSpacing, between, others[i]->id);
  }

  struct Lower { // a limit under a panel
    Interval panel;
    double inches = 0;
  };

  // The farthest station to the right of a bolt at which the next may stand: a lower limit begins to count where the
  // stretch between them comes under its panel.
  double farthestRightOf(double left) const {
    double right = left + base_;
    for (const Lower& lower : lower_)
      if (lower.panel.to > left + tolerance::same)
        right = std::min(right, std::max(lower.panel.from, left + lower.inches));
    return right;
  }
  double farthestLeftOf(double right) const {
    double left = right - base_;
    for (const Lower& lower : lower_)
      if (lower.panel.from < right - tolerance::same)
        left = std::max(left, std::min(lower.panel.to, right - lower.inches));
    return left;
  }

  const Site& site_;
  const WallLayout& layout_;
  const ResolvedLimits& limits_;
  const AnchorBody& bolt_;
  Blocks& blocks_;
  double needed_;
  double far_;
  double base_;
  std::vector<Lower> lower_;
};

} // namespace

void blockByTheOtherBolts(const Site& site, const AnchorBody& bolt, Blocks& blocks) {
  Together(site, bolt, blocks).all();
}

} // namespace sillwright
