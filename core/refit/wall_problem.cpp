#include "core/refit/wall_problem.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/interval_set.h"
#include "core/refit/marks.h"
#include "core/rules/panel_ends.h"

namespace sillwright {

namespace {

constexpr std::uint32_t firstAdded = 0xFFFF0000; // ids for the time being: far above any in a job

Problem about(const WallLine& wall, const std::string& message) {
  return {"wall " + wall.mark, message};
}

std::string named(const std::string& kind, const std::string& mark) {
  return mark.empty() ? kind : kind + " " + mark;
}

bool hasHardware(const WallLine& wall) {
  return !wall.straps.empty() || !wall.bolts.empty() || !wall.rods.empty();
}

std::optional<Problem> wrongWishes(const WallLine& wall, const RefitWishes& wishes) {
  if (wishes.reference && wishes.reference->id != wall.id)
    return about(wall, "the layout to go by is of another wall");
  for (const Id piece : wishes.staying)
    if (!findPiece(wall, piece))
      return about(wall, "a piece that is to stay where it is, is not there");
  return std::nullopt;
}

// The column nearest to a strap that has none, of those that no other strap hangs on; trimmers last.
Id columnFor(const WallLine& wall, const Strap& strap) {
  const Column* best = nullptr;
  const auto rank = [&](const Column& column) {
    return std::pair(column.role == ColumnRole::Trimmer, std::abs(column.station - strap.station));
  };
  for (const Column& column : wall.columns) {
    const bool taken = std::any_of(wall.straps.begin(), wall.straps.end(),
                                   [&](const Strap& other) { return other.column == column.id; });
    if (!taken && (!best || rank(column) < rank(*best)))
      best = &column;
  }
  return best ? best->id : Id{};
}

std::optional<Problem> hangStraps(WallLine& wall) {
  for (Strap& strap : wall.straps) {
    if (findIn(wall.columns, strap.column))
      continue;
    strap.column = columnFor(wall, strap);
    if (!strap.column)
      return about(wall, named("strap", strap.mark) + " has no column to hang on: there are more straps than columns");
  }
  return std::nullopt;
}

std::string endWords(const PanelEnd& end) {
  return named("panel", end.panel->mark) + (end.side == Side::Left ? ", left end" : ", right end");
}

// Straps for the panel ends that call for one and have none, nor one on their column that could come.
std::optional<Problem> addMissingStraps(const WallLayout& layout, WallProblem& out) {
  for (const PanelEnd& end : panelEnds(layout)) {
    if (!end.mark || !findStrapType(*layout.types, end.mark->strapType))
      continue;
    if (!end.column)
      return about(*layout.wall, endWords(end) + ": there is no column there for the strap that mark " +
                                     end.mark->mark + " calls for");
    const bool onIt = std::any_of(out.wall.straps.begin(), out.wall.straps.end(),
                                  [&](const Strap& strap) { return strap.column == end.column->id; });
    if (end.strap || onIt)
      continue;
    Strap strap;
    strap.id = Id{firstAdded + static_cast<std::uint32_t>(out.added.size())};
    strap.type = end.mark->strapType;
    strap.column = end.column->id;
    strap.station = end.column->box.s.middle();
    out.added.push_back(strap.id);
    out.wall.straps.push_back(strap);
  }
  return std::nullopt;
}

std::optional<Problem> wrongSills(const WallLayout& layout) {
  for (const SillPiece& piece : layout.sills) {
    const sequence::Stretch marks = marksIn(piece.box.s);
    if (marks.from > marks.to)
      return about(*layout.wall, "a piece of sill is so short that no tape mark lies on it");
  }
  return std::nullopt;
}

WallLayout laidOut(const WallLayout& as, const WallLine& wall) {
  return layOut(std::make_shared<const WallLine>(wall), as.types, as.limits, as.marks, as.place);
}

} // namespace

bool isSet(const WallLine& wall, Id piece) {
  return std::any_of(wall.readings.begin(), wall.readings.end(), [&](const Reading& reading) {
    return reading.piece == piece && (reading.set || reading.along || reading.inOut);
  });
}

bool stays(const RefitWishes& wishes, Id piece) {
  return std::find(wishes.staying.begin(), wishes.staying.end(), piece) != wishes.staying.end();
}

void slide(AnchorBody& body, double by) {
  const auto along = [&](Interval& stations) { stations = {stations.from + by, stations.to + by}; };
  body.station += by;
  along(body.steelBox.s);
  if (body.washerBox)
    along(body.washerBox->s);
  for (Point3* point : {&body.shank.a, &body.shank.b})
    point->s += by;
  for (Capsule& part : body.foot) {
    part.a.s += by;
    part.b.s += by;
  }
}

void slide(StrapBody& body, Strap& strap, double by) {
  strap.station += by;
  body.strap = &strap;
  for (Interval* stations : {&body.plate.s, &body.embeddedBox.s})
    *stations = {stations->from + by, stations->to + by};
  body.embedded.station += by;
  for (NailBody& nail : body.nails)
    nail.s += by;
}

std::optional<std::size_t> anchoredIndex(const WallProblem& problem, Id piece) {
  const auto found = std::find(problem.anchored.begin(), problem.anchored.end(), piece);
  if (found == problem.anchored.end())
    return std::nullopt;
  return static_cast<std::size_t>(found - problem.anchored.begin());
}

sequence::Need Needs::of(const Requirement& requirement) {
  const auto key = std::tuple(requirement.kind, requirement.rule, requirement.pieces,
                              requirement.sillPiece.value_or(-1), requirement.at ? requirement.at->from : 0.0);
  const auto [known, isNew] = known_.try_emplace(key, static_cast<sequence::Need>(all_.size()));
  if (isNew)
    all_.push_back(requirement);
  return known->second;
}

void Needs::toll(sequence::Ground& ground, RuleId rule, Level level, sequence::Stretch closed) {
  const auto& counts = limits_.counts[static_cast<std::size_t>(rule)];
  if (counts == RuleCounts::None || closed.from > closed.to)
    return;
  const bool ask = level == Level::Ask && counts != RuleCounts::Watch;
  ground.tolls.push_back({closed.from, closed.to, ask ? sequence::Kind::Ask : sequence::Kind::Watch, true, -1});
}

void Needs::block(sequence::Ground& ground, const Requirement& requirement, Interval open, sequence::Stretch frame) {
  sequence::Stretch marks = marksAround(open);
  if (marks.to <= frame.from || marks.from >= frame.to || marks.from >= marks.to)
    return;
  const auto& counts = limits_.counts[static_cast<std::size_t>(requirement.rule)];
  if (counts) {
    const Level level = *counts == RuleCounts::Ask ? Level::Ask : Level::Watch;
    toll(ground, requirement.rule, level, {marks.from + 1, marks.to - 1});
    return;
  }
  if (marks.from < frame.from)
    marks.from = -sequence::kFar;
  if (marks.to > frame.to)
    marks.to = sequence::kFar;
  ground.blocked.push_back({marks.from, marks.to, of(requirement)});
}

Result<WallProblem> wallProblem(const WallLayout& given, const ResolvedLimits& limits, const RefitWishes& wishes,
                                const std::vector<Id>& givers) {
  WallProblem out;
  out.wall = *given.wall;
  if (const auto wrong = wrongWishes(out.wall, wishes))
    return *wrong;
  if (given.sills.empty() && hasHardware(out.wall))
    return about(out.wall, "there is no sill: nothing says where bolts and columns may stand");
  if (const auto wrong = hangStraps(out.wall))
    return *wrong;
  if (const auto wrong = addMissingStraps(laidOut(given, out.wall), out))
    return *wrong;
  const WallLayout layout = laidOut(given, out.wall);
  if (const auto wrong = wrongSills(layout))
    return *wrong;
  ResolvedLimits all = limits;
  all.counts = {};
  Needs needs(limits, out.needs);
  const WallLine& reference = wishes.reference ? *wishes.reference : out.wall;
  Translation t{layout, limits, all, wishes, reference, givers, out, needs};
  out.problem.countWatch = wishes.targets;
  if (const auto wrong = addColumns(t))
    return *wrong;
  addStraps(t);
  addRods(t);
  addPanelLevers(t);
  if (const auto wrong = addBolts(t))
    return *wrong;
  return out;
}

} // namespace sillwright
