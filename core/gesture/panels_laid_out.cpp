#include "core/gesture/panels_laid_out.h"

#include <algorithm>
#include <set>

#include "core/base/tolerance.h"
#include "core/edit/operations.h"
#include "core/gesture/placing.h"
#include "core/gesture/starter_framing.h"
#include "core/model/layout.h"
#include "core/refit/refit.h"
#include "core/refit/slots.h"
#include "core/rules/panel_ends.h"
#include "core/rules/rule_book.h"

namespace sillwright {

namespace {

constexpr Nominal usualSill{2, 6};

const WallEndMark* markOfEnd(const Job& job, const Panel& panel, Side side) {
  return findMark(job, side == Side::Left ? panel.leftMark : panel.rightMark);
}

// A sill over the free stretch round the panel, as the plan's marks ask for it.
Job withSillUnder(const Job& job, Id wall, const Panel& panel) {
  const WallLine& line = *job.walls.find(wall);
  const bool stands = std::any_of(line.sills.begin(), line.sills.end(), [&](const Sill& sill) {
    return sill.to > panel.from + tolerance::same && sill.from < panel.to - tolerance::same;
  });
  const WallLayout layout = layOut(job, job.walls.findPointer(wall));
  const auto made = stands ? Result<Piece>(Problem{})
                           : newPiece(job, layout, "sill:" + print(usualSill), (panel.from + panel.to) / 2, 0);
  if (!made)
    return job;
  Sill sill = std::get<Sill>(*made);
  const Interval within = overlap({sill.from, sill.to}, framingOf(job, line));
  if (within.empty())
    return job;
  sill.from = within.from;
  sill.to = within.to;
  for (const Side side : {Side::Left, Side::Right})
    if (const WallEndMark* mark = markOfEnd(job, panel, side); mark && mark->sill)
      sill.nominal = *mark->sill;
  return addPiece(job, wall, sill).first;
}

// A column inside the panel, near enough to its end to hold it.
bool hasPost(const WallLine& wall, const Panel& panel, Side side) {
  const double end = side == Side::Left ? panel.from : panel.to;
  const Interval near = side == Side::Left ? Interval{end, std::min(end + endReach, (panel.from + panel.to) / 2)}
                                           : Interval{std::max(end - endReach, (panel.from + panel.to) / 2), end};
  return std::any_of(wall.columns.begin(), wall.columns.end(), [&](const Column& column) {
    return column.role != ColumnRole::Trimmer && near.contains(column.station);
  });
}

// A post flush with the end, or as near to it as the framing and the columns that stand there let it.
Job withPost(const Job& job, Id wall, const Panel& panel, Side side, const std::optional<MakeUp>& asked) {
  const WallLine& line = *job.walls.find(wall);
  if (hasPost(line, panel, side))
    return job;
  const WallEndMark* mark = markOfEnd(job, panel, side);
  Column post;
  const int width = line.sills.empty() ? usualSill.width : line.sills.front().nominal.width;
  post.makeUp = asked ? *asked : mark && mark->column ? *mark->column : MakeUp{1, {4, width}};
  const Interval framing = framingOf(job, line);
  const double wide = alongWall(post.makeUp), inward = side == Side::Left ? 1 : -1;
  double face = side == Side::Left ? std::max(panel.from, framing.from) : std::min(panel.to, framing.to);
  const auto inTheWay = [&](const Column& other) {
    return gap(around(face + inward * wide / 2, wide), around(other.station, alongWall(other.makeUp))) <
           -tolerance::same;
  };
  for (std::size_t i = 0; i < line.columns.size(); ++i) // each moves it past one column at most
    if (const auto other = std::find_if(line.columns.begin(), line.columns.end(), inTheWay);
        other != line.columns.end())
      face = other->station + inward * alongWall(other->makeUp) / 2;
  post.station = face + inward * wide / 2;
  return addPiece(job, wall, post).first;
}

std::vector<Id> allBut(const WallLine& wall, const std::set<Id>& free) {
  std::vector<Id> staying;
  const auto stay = [&](const auto& list) {
    for (const auto& piece : list)
      if (!free.contains(piece.id))
        staying.push_back(piece.id);
  };
  stay(wall.columns);
  stay(wall.straps);
  stay(wall.bolts);
  stay(wall.rods);
  return staying;
}

std::set<Id> boltsThatMayMove(const WallLine& wall) {
  std::set<Id> free;
  for (const Bolt& bolt : wall.bolts)
    free.insert(bolt.id);
  for (const Reading& reading : wall.readings)
    if (reading.set)
      free.erase(reading.piece);
  return free;
}

bool isInTheWay(const Findings& findings, const std::vector<Id>& staying) {
  return std::any_of(findings.begin(), findings.end(), [&](const Finding& finding) {
    return finding.level == Level::Fix && isOfPosition(finding.rule) && !finding.pieces.empty() &&
           std::find(staying.begin(), staying.end(), finding.pieces.front()) != staying.end();
  });
}

// What is missing, with all that stands where it is; or else with the bolts free to move.
Job withHardware(const Job& job, Id wall) {
  const auto line = job.walls.findPointer(wall);
  const WallLayout layout = layOut(job, line);
  const ResolvedLimits limits = resolve(*job.limits);
  const Findings findings = checkWall(layout, limits);
  RefitWishes wishes;
  wishes.boltToAdd = boltToAdd(job, layout);
  for (const std::set<Id>& free : {std::set<Id>{}, boltsThatMayMove(*line)}) {
    wishes.staying = allBut(*line, free);
    if (isInTheWay(findings, wishes.staying))
      continue;
    const auto answer = refit(layout, limits, wishes);
    const Proposal* proposal = answer ? std::get_if<Proposal>(&*answer) : nullptr;
    if (!proposal)
      continue;
    std::vector<PieceChange> changes;
    for (const Change& change : proposal->changes)
      changes.push_back({change.before, change.after});
    return changePieces(job, wall, changes);
  }
  return job;
}

} // namespace

Job withPanels(const Job& job, const std::vector<PanelToMake>& panels) {
  Job next = job;
  std::vector<Id> walls;
  for (const PanelToMake& each : panels) {
    next = addPiece(next, each.wall, each.panel).first;
    if (std::find(walls.begin(), walls.end(), each.wall) == walls.end())
      walls.push_back(each.wall);
  }
  for (const PanelToMake& each : panels) {
    next = withSillUnder(next, each.wall, each.panel);
    next = withPost(next, each.wall, each.panel, Side::Left, each.left);
    next = withPost(next, each.wall, each.panel, Side::Right, each.right);
  }
  for (const Id wall : walls)
    next = withHardware(next, wall);
  return next;
}

} // namespace sillwright
