// What a panel brings with it when it is put down.
#include <algorithm>

#include "core/base/tolerance.h"
#include "core/edit/operations.h"
#include "core/gesture/placing.h"
#include "core/refit/refit.h"
#include "core/refit/slots.h"
#include "core/rules/rule_book.h"

namespace sillwright {

namespace {

bool hasBolt(const WallLayout& layout, std::size_t sillPiece) {
  return std::any_of(layout.anchors.begin(), layout.anchors.end(),
                     [&](const AnchorBody& anchor) { return anchor.bolt && anchor.sillPiece == sillPiece; });
}

// Where pieces that come with the panel may stand: over it and the pieces of sill under it.
Interval reachOf(const WallLayout& layout, const Panel& panel) {
  Interval reach{panel.from, panel.to};
  for (const SillPiece& sill : layout.sills)
    if (sill.box.s.to > panel.from + tolerance::same && sill.box.s.from < panel.to - tolerance::same)
      reach = hull(reach, sill.box.s);
  return reach;
}

RefitWishes allStay(const WallLine& wall) {
  RefitWishes wishes;
  const auto stay = [&](const auto& list) {
    for (const auto& piece : list)
      wishes.staying.push_back(piece.id);
  };
  stay(wall.columns);
  stay(wall.straps);
  stay(wall.bolts);
  stay(wall.rods);
  return wishes;
}

// One of what stays breaks a rule where it is: nothing that is added would help.
bool isInItsOwnWay(const Findings& findings, const std::vector<Id>& staying) {
  return std::any_of(findings.begin(), findings.end(), [&](const Finding& finding) {
    return finding.level == Level::Fix && isOfPosition(finding.rule) && !finding.pieces.empty() &&
           std::find(staying.begin(), staying.end(), finding.pieces.front()) != staying.end();
  });
}

} // namespace

std::optional<Bolt> boltToAdd(const Job& job, const WallLayout& layout) {
  const auto& types = layout.types->bolts;
  if (types.empty() || layout.sills.empty())
    return std::nullopt;
  std::size_t bare = 0;
  while (bare < layout.sills.size() && hasBolt(layout, bare))
    ++bare;
  const SillPiece& sill = layout.sills[bare < layout.sills.size() ? bare : 0];
  const auto made = newPiece(job, layout, "bolt:" + std::to_string(types.front().id.value), sill.box.s.middle(), 0);
  return made ? std::optional(std::get<Bolt>(*made)) : std::nullopt;
}

Job withEndsLaidOut(const Job& job, PieceRef ref) {
  const auto wall = job.walls.findPointer(ref.wall);
  const Panel* panel = wall ? findIn(wall->panels, ref.piece) : nullptr;
  if (!panel || (panel->leftMark.empty() && panel->rightMark.empty()))
    return job;
  const WallLayout layout = layOut(job, wall);
  const ResolvedLimits limits = resolve(*job.limits);
  RefitWishes wishes = allStay(*wall);
  if (isInItsOwnWay(checkWall(layout, limits), wishes.staying))
    return job;
  wishes.boltToAdd = boltToAdd(job, layout);
  const auto answer = refit(layout, limits, wishes);
  const Proposal* proposal = answer ? std::get_if<Proposal>(&*answer) : nullptr;
  if (!proposal)
    return job;
  const Interval reach = reachOf(layout, *panel);
  std::vector<PieceChange> changes;
  for (const Change& change : proposal->changes)
    if (const auto stand = standAfter(*wall, change); stand && !change.before && reach.contains(stand->station))
      changes.push_back({std::nullopt, change.after});
  return changePieces(job, ref.wall, changes);
}

} // namespace sillwright
