// Bars: apart from each other, one near the top, one beside each opening.
#include <algorithm>
#include <cmath>

#include "core/geometry/clearance.h"
#include "core/rules/measure.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

Interval lengthwise(const BarBody& bar) {
  return bar.bar->run == BarRun::Upright ? betweenValues(bar.body.a.z, bar.body.b.z)
                                         : betweenValues(bar.body.a.s, bar.body.b.s);
}

// One goes on where the other ends: each has an end beside the other.
bool lapped(const BarBody& a, const BarBody& b) {
  const Interval own = lengthwise(a), other = lengthwise(b);
  return (under(own.from, other.from) && under(own.to, other.to)) ||
         (over(own.from, other.from) && over(own.to, other.to));
}

Draft& addMoves(Draft& draft, const BarBody& mover, const BarBody& other, double limit) {
  const bool upright = mover.bar->run == BarRun::Upright;
  const double own = upright ? mover.body.a.s : mover.body.a.z;
  const double their = upright ? other.body.a.s : other.body.a.z;
  const double reach = limit + mover.body.radius + other.body.radius;
  const double across = mover.body.a.d - other.body.a.d;
  const double side = std::sqrt(std::max(0.0, reach * reach - across * across));
  const double ways[]{their + side - own, their - side - own};
  const bool secondFirst = std::abs(ways[1]) < std::abs(ways[0]);
  for (const double by : {ways[secondFirst], ways[!secondFirst]})
    draft.corrections.push_back(move(mover.id, upright ? Field::Station : Field::Height, own, by));
  return draft;
}

void checkPair(const WallLayout& layout, double least, const BarBody& mover, const BarBody& other, Drafts& drafts) {
  const double limit = std::max({least, 2 * mover.body.radius, 2 * other.body.radius});
  if (mover.bar->run != other.bar->run || lapped(mover, other) ||
      apart(mover.box, other.box, limit))
    return;
  const double clear = clearance(mover.body, other.body).distance;
  if (!under(clear, limit))
    return;
  const Box3 region = between(mover.box, other.box);
  addMoves(report(drafts, layout, RuleId::BarClear, Level::Watch, {mover.id, other.id}, {clear, limit, region}), mover,
           other, limit);
}

// Stretches of `whole` that none of the others covers.
std::vector<Interval> uncovered(Interval whole, std::vector<Interval> others) {
  std::sort(others.begin(), others.end(), [](Interval a, Interval b) { return a.from < b.from; });
  std::vector<Interval> open;
  double from = whole.from;
  for (const Interval other : others) {
    if (other.from > from + tolerance::same)
      open.push_back({from, std::min(other.from, whole.to)});
    from = std::max(from, other.to);
  }
  if (from < whole.to - tolerance::same)
    open.push_back({from, whole.to});
  std::erase_if(open, [](Interval part) { return part.length() <= tolerance::same; });
  return open;
}

void checkOpeningSide(const WallLayout& layout, double limit, const Opening& opening, Side side, Drafts& drafts) {
  const double edge = side == Side::Left ? opening.from : opening.to;
  if (edge <= layout.concrete.from + tolerance::same || edge >= layout.concrete.to - tolerance::same)
    return; // no concrete beside it
  double nearest = 1e9;
  for (const BarBody& bar : layout.bars) {
    const double away = side == Side::Left ? edge - bar.body.a.s : bar.body.a.s - edge;
    if (bar.bar->run == BarRun::Upright && away >= -tolerance::same)
      nearest = std::min(nearest, away);
  }
  if (!over(nearest, limit))
    return;
  const bool none = nearest >= 1e9;
  const Interval s = side == Side::Left ? Interval{edge - limit, edge} : Interval{edge, edge + limit};
  report(drafts, layout, RuleId::BarOpening, Level::Watch, {opening.id},
         {none ? 0 : nearest, none ? 1 : limit, {s, layout.across, {layout.bottom, pourAt(layout, s.middle())}},
          none ? Wanted::AtLeast : Wanted::AtMost, none ? Unit::Count : Unit::Inch, static_cast<std::uint8_t>((side == Side::Right ? 1 : 0) + (none ? 2 : 0))});
}

} // namespace

// ACI 318-19 25.2.1: of parallel bars that do not lap, the younger moves.
void checkBarClear(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  std::vector<const BarBody*> bars;
  for (const BarBody& bar : layout.bars)
    bars.push_back(&bar);
  // Upright bars from left to right: only neighbours within reach are compared.
  std::stable_sort(bars.begin(), bars.end(),
                   [](const BarBody* a, const BarBody* b) { return a->box.s.from < b->box.s.from; });
  constexpr double reach = 2; // in, more than any limit between axes
  for (std::size_t i = 0; i < bars.size(); ++i)
    for (std::size_t k = i + 1; k < bars.size(); ++k) {
      if (bars[k]->box.s.from > bars[i]->box.s.to + reach)
        break;
      const bool firstMoves = bars[k]->id < bars[i]->id;
      checkPair(layout, limits[LimitKey::BarClear], *bars[firstMoves ? i : k], *bars[firstMoves ? k : i], drafts);
    }
}

void checkBarTop(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  constexpr int smallest = 4;   // No. 4
  constexpr double ends = 3;    // in that a bar may stop short of the end of the concrete: its cover
  if (!layout.limits->topBar)
    return;
  const double within = limits[LimitKey::BarTop];
  for (const PourRun& run : layout.pour) {
    std::vector<Interval> covered;
    for (const BarBody& bar : layout.bars) {
      const double lower = std::min(bar.body.a.z, bar.body.b.z), upper = std::max(bar.body.a.z, bar.body.b.z);
      if (bar.bar->run == BarRun::Along && bar.bar->size >= smallest && !over(run.height - lower, within) &&
          !over(upper, run.height))
        covered.push_back(grown(lengthwise(bar), ends));
    }
    for (const Interval open : uncovered(run.s, covered))
      report(drafts, layout, RuleId::BarTop, Level::Fix, {layout.wall->id},
             {open.length(), 0, {open, layout.across, {run.height - within, run.height}}, Wanted::AtMost});
  }
}

void checkBarOpening(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  if (!layout.limits->openingBars)
    return;
  for (const Opening& opening : layout.wall->openings)
    if (opening.kind != OpeningKind::Window) // a window does not reach the concrete
      for (const Side side : {Side::Left, Side::Right})
        checkOpeningSide(layout, limits[LimitKey::BarOpening], opening, side, drafts);
}

} // namespace sillwright
