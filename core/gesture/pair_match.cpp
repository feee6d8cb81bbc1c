#include "core/gesture/pair_match.h"

#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"
#include "core/gesture/placing.h"
#include "core/rules/panel_ends.h"

namespace sillwright {

namespace {

struct Ordered {
  StrapPair pair;
  bool leftFirst = true;
};

bool has(const StrapPair& pair, Id strap) {
  return pair.left->id == strap || pair.right->id == strap;
}

// Across an opening before along a panel: what is seen together.
std::vector<StrapPair> openingsFirst(const WallLayout& layout) {
  std::vector<StrapPair> pairs = strapPairs(layout);
  std::stable_partition(pairs.begin(), pairs.end(), [](const StrapPair& pair) { return pair.opening != nullptr; });
  return pairs;
}

Result<Ordered> chosenPair(const WallLayout& layout, const Selection& selected) {
  const WallLine& wall = *layout.wall;
  const std::vector<StrapPair> pairs = openingsFirst(layout);
  const auto first = [&](auto&& wanted) { return std::find_if(pairs.begin(), pairs.end(), wanted); };
  const bool onlyStraps = std::all_of(selected.begin(), selected.end(),
                                      [&](const PieceRef& ref) { return findIn(wall.straps, ref.piece) != nullptr; });
  if (selected.size() == 1 && !onlyStraps) {
    const Id id = selected.front().piece;
    const Opening* opening = findIn(wall.openings, id);
    const Panel* panel = findIn(wall.panels, id);
    if (!opening && !panel)
      return Problem{"", "select one strap or two, or the opening or panel between them"};
    const StrapPair pair = opening ? StrapPair{strapBeside(layout, *opening, Side::Left),
                                               strapBeside(layout, *opening, Side::Right), nullptr, opening}
                                   : StrapPair{strapAtEnd(layout, *panel, Side::Left),
                                               strapAtEnd(layout, *panel, Side::Right), panel, nullptr};
    if (!pair.left || !pair.right || pair.left == pair.right)
      return Problem{"", opening ? opening->mark + " has no strap at each side within 1 ft"
                                 : panel->mark + " has no strap at each end within 1 ft"};
    return Ordered{pair, true};
  }
  if (!onlyStraps || selected.empty() || selected.size() > 2)
    return Problem{"", "select one strap or two, or the opening or panel between them"};
  const Id one = selected.front().piece, two = selected.back().piece;
  const auto found = first([&](const StrapPair& pair) { return has(pair, one) && has(pair, two); });
  if (found != pairs.end())
    return Ordered{*found, found->left->id == one};
  const std::string mark = findIn(wall.straps, one)->mark;
  return Problem{"", one == two ? mark + " has no pair: no strap across an opening or at the other end of a panel"
                                : mark + " and " + findIn(wall.straps, two)->mark +
                                      " are no pair: they are not at both sides of an opening or both ends of a panel"};
}

} // namespace

Result<PairMatch> matchPair(const WallLayout& layout, const Selection& selected) {
  const auto chosen = chosenPair(layout, selected);
  if (!chosen)
    return chosen.problem();
  const StrapPair& pair = chosen->pair;
  const StrapBody& first = chosen->leftFirst ? *pair.left : *pair.right;
  const StrapBody& second = chosen->leftFirst ? *pair.right : *pair.left;
  const double distance = chosen->leftFirst ? pair.leftDistance() : pair.rightDistance();
  const double edge = chosen->leftFirst ? (pair.panel ? pair.panel->to : pair.opening->to)
                                        : (pair.panel ? pair.panel->from : pair.opening->from);
  const double right = chosen->leftFirst == (pair.opening != nullptr) ? 1 : -1; // which way is away from that edge
  PairMatch match{{layout.wall->id, first.id}, {layout.wall->id, second.id}, *second.strap, 0, 0};
  match.matched.station = edge + right * distance;
  match.matched.heightOffset = first.strap->heightOffset;
  match.along = match.matched.station - second.strap->station;
  match.up = match.matched.heightOffset - second.strap->heightOffset;
  if (match.matched.station < -tolerance::same || match.matched.station > layout.length + tolerance::same)
    return Problem{"", match.matched.mark + " would leave the wall"};
  if (const Id under = columnUnder(layout, match.matched.station, 0))
    match.matched.column = under;
  return match;
}

} // namespace sillwright
