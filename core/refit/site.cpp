#include "core/refit/site.h"

#include <algorithm>

#include "core/base/tolerance.h"

namespace sillwright {

namespace {

constexpr double hair = 2 * tolerance::same;

std::vector<Ground> groundsOf(const WallLayout& layout) {
  std::vector<double> cuts{0, layout.length};
  const auto cut = [&](double at) {
    if (at > tolerance::same && at < layout.length - tolerance::same)
      cuts.push_back(at);
  };
  for (const PourRun& run : layout.pour)
    cut(run.s.to);
  for (const SillPiece& piece : layout.sills) {
    cut(piece.box.s.from);
    cut(piece.box.s.to);
  }
  std::sort(cuts.begin(), cuts.end());
  std::vector<Ground> grounds;
  for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
    const Interval s{cuts[i], cuts[i + 1]};
    if (s.length() > tolerance::same)
      grounds.push_back({s, pourAt(layout, s.middle()), sillAt(layout, s.middle())});
  }
  return grounds;
}

} // namespace

Site siteOf(const WallLayout& layout, const ResolvedLimits& limits) {
  return {layout, limits, {0, layout.length}, groundsOf(layout)};
}

void Blocks::open(RuleId rule, Interval stations, Id by) {
  const bool counts =
      !site_.limits.counts[static_cast<std::size_t>(rule)]; // a rule set for the job never counts as FIX
  if (counts && stations.length() > 0 && stations.to > site_.whole.from && stations.from < site_.whole.to)
    found_.push_back({stations, rule, by});
}

void Blocks::closed(RuleId rule, Interval stations, Id by) {
  if (!stations.empty())
    open(rule, grown(stations, hair), by);
}

void Blocks::allBut(RuleId rule, Interval stations, Interval bounds, Id by) {
  const Interval kept = overlap(stations, bounds);
  if (kept.empty()) {
    closed(rule, bounds, by);
    return;
  }
  open(rule, {bounds.from - (kept.from > bounds.from ? hair : 0), kept.from}, by);
  open(rule, {kept.to, bounds.to + (kept.to < bounds.to ? hair : 0)}, by);
}

std::vector<Interval> Blocks::freeOf(Interval stretch) const {
  std::vector<Interval> open;
  for (const Blocked& each : found_)
    open.push_back(each.stations);
  return withoutOpen(stretch, std::move(open));
}

} // namespace sillwright
