#include "core/refit/refit.h"

#include <algorithm>
#include <cmath>

#include "core/refit/marks.h"
#include "core/refit/wall_parts.h"
#include "core/rules/proof.h"
#include "core/rules/rule_book.h"

namespace sillwright {

namespace {

using sequence::Mark;

bool isAt(double station, Mark mark) {
  return std::abs(station - inchesOf(mark)) < tolerance::same;
}

// A piece that stands off the tape's marks counts as at the nearest; whether it also goes there when it need not move.
enum class OffMarks { Stay, GoToMarks };

class Way {
public:
  Way(const WallLine& given, const WallProblem& asked, const sequence::Layout& layout, OffMarks offMarks)
      : given_(given), asked_(asked), layout_(layout), offMarks_(offMarks) {}

  std::vector<Change> changes() {
    columns();
    straps();
    rods();
    bolts();
    removed();
    sortByStation();
    return std::move(changes_);
  }

private:
  // The new station, where it is one.
  std::optional<double> moved(double now, Mark to) const {
    const bool stays = offMarks_ == OffMarks::Stay ? nearestMark(now) == to : isAt(now, to);
    return stays ? std::nullopt : std::optional(inchesOf(to));
  }
  std::optional<Mark> markOf(Id piece) const {
    const auto index = anchoredIndex(asked_, piece);
    return index ? std::optional(layout_.anchored[*index]) : std::nullopt;
  }

  void columns() {
    columns_ = given_.columns;
    for (Column& column : columns_) {
      const auto mark = markOf(column.id);
      const auto to = mark ? moved(column.station, *mark) : std::nullopt;
      if (!to)
        continue;
      const Column before = column;
      column.station = *to;
      changes_.push_back({Piece{before}, Piece{column}});
    }
  }

  void straps() {
    for (const Strap& strap : asked_.wall.straps) {
      const auto mark = markOf(strap.id);
      if (!mark)
        continue;
      const Strap* before = findIn(given_.straps, strap.id);
      Strap after = strap;
      after.station = moved(strap.station, *mark).value_or(strap.station);
      if (!before) {
        after.id = {};
        after.station = inchesOf(*mark);
        changes_.push_back({std::nullopt, Piece{after}});
      } else if (!(after == *before)) {
        changes_.push_back({Piece{*before}, Piece{after}});
      }
    }
  }

  void rods() {
    for (const Rod& rod : given_.rods) {
      const auto mark = markOf(rod.id);
      const auto now = stationOf(given_, rod.id);
      const Column* column = findIn(columns_, rod.column);
      if (!mark || !now || !column)
        continue;
      Rod after = rod;
      const double station = moved(*now, *mark).value_or(*now);
      after.offset = std::abs(station - column->station) - alongWall(column->makeUp) / 2;
      if (std::abs(after.offset - rod.offset) > tolerance::same)
        changes_.push_back({Piece{rod}, Piece{after}});
    }
  }

  Bolt placed(const sequence::PlacedBolt& bolt) const {
    const BoltStand& stand = asked_.stands[static_cast<std::size_t>(bolt.option)];
    Bolt after = asked_.makes[stand.make];
    if (bolt.reference)
      after = *findIn(given_.bolts, asked_.references[bolt.sillPiece][*bolt.reference]);
    else
      after.station = inchesOf(bolt.station);
    after.station = moved(after.station, bolt.station).value_or(after.station);
    after.depth = stand.depth;
    return after;
  }

  void bolts() {
    for (const sequence::PlacedBolt& bolt : layout_.bolts) {
      const Bolt after = placed(bolt);
      const Bolt* before = bolt.reference ? findIn(given_.bolts, after.id) : nullptr;
      if (!before)
        changes_.push_back({std::nullopt, Piece{after}});
      else if (!(after == *before))
        changes_.push_back({Piece{*before}, Piece{after}});
    }
  }

  void removed() {
    for (const sequence::RemovedBolt& bolt : layout_.removed)
      changes_.push_back(
          {Piece{*findIn(given_.bolts, asked_.references[bolt.sillPiece][bolt.reference])}, std::nullopt});
  }

  void sortByStation() {
    const auto where = [&](const Change& change) {
      const auto after = standAfter(given_, change);
      return after ? after->station : standBefore(given_, change)->station;
    };
    std::stable_sort(changes_.begin(), changes_.end(),
                     [&](const Change& a, const Change& b) { return where(a) < where(b); });
  }

  const WallLine& given_;
  const WallProblem& asked_;
  const sequence::Layout& layout_;
  OffMarks offMarks_;
  std::vector<Column> columns_;
  std::vector<Change> changes_;
};

WallLayout withChanges(const WallLayout& layout, const std::vector<Change>& changes) {
  WallLine wall = *layout.wall;
  std::uint32_t next = 0xFFFF8000; // added pieces get ids for the time being
  for (Change change : changes) {
    if (!change.before)
      std::visit([&](auto& piece) { piece.id = Id{next++}; }, *change.after);
    wall = withChange(wall, change);
  }
  return layOut(std::make_shared<const WallLine>(std::move(wall)), layout.types, layout.limits, layout.marks,
                layout.place);
}

// What a refit can do something about: all of position, but where bars lie and what only framing could change.
bool isItsOwn(const WallLine& wall, const Finding& finding) {
  return finding.level == Level::Fix && isOfPosition(finding.rule) &&
         std::any_of(finding.pieces.begin(), finding.pieces.end(), [&](Id piece) {
           const Column* column = findIn(wall.columns, piece);
           return findIn(wall.straps, piece) || findIn(wall.bolts, piece) || findIn(wall.rods, piece) ||
                  (column && column->leeway >= tolerance::tapeMark) ||
                  (finding.rule == RuleId::BoltCount && findIn(wall.sills, piece));
         });
}

std::optional<RuleId> objection(const WallLayout& layout, const ResolvedLimits& limits) {
  for (const Draft& draft : draftsOf(layout, limits))
    if (isItsOwn(*layout.wall, draft.finding) || draft.finding.rule == RuleId::StrapMissing)
      return draft.finding.rule;
  return std::nullopt;
}

struct Best {
  WallProblem asked;
  sequence::Layout layout;
};

void add(const Best& part, Proposal& proposal) {
  const sequence::Cost& cost = part.layout.cost;
  proposal.movement += inchesOf(static_cast<Mark>(cost.movement));
  proposal.room = std::min(proposal.room, inchesOf(part.layout.room));
  proposal.cost.ask += cost.ask;
  proposal.cost.pieces += cost.pieces;
  proposal.cost.setMoved += cost.setMoved;
  proposal.cost.watch += cost.watch;
  proposal.cost.movement += cost.movement;
}

Proposal proposalOf(const WallLine& wall, const std::vector<Best>& parts, OffMarks offMarks) {
  Proposal proposal;
  proposal.wall = wall.id;
  proposal.room = inchesOf(sequence::kMostRoom);
  for (const Best& part : parts) {
    const std::vector<Change> changes = Way(wall, part.asked, part.layout, offMarks).changes();
    proposal.changes.insert(proposal.changes.end(), changes.begin(), changes.end());
    add(part, proposal);
  }
  return proposal;
}

// A strap that is still to be added goes by its column.
Id named(const WallProblem& asked, Id piece) {
  const bool isAdded = std::find(asked.added.begin(), asked.added.end(), piece) != asked.added.end();
  return isAdded ? findIn(asked.wall.straps, piece)->column : piece;
}

// A distance to an end or edge gives up to that end, not past it.
double mostThatGives(const WallLayout& layout, const Requirement& requirement) {
  const Strap* strap = requirement.pieces.empty() ? nullptr : findIn(layout.wall->straps, requirement.pieces[0]);
  const StrapType* type = strap ? findStrapType(*layout.types, strap->type) : nullptr;
  if (requirement.kind == Requirement::Kind::Rule && requirement.rule == RuleId::StrapEdge && type)
    return type->edgeMinimum;
  return 1e9;
}

NoLayout noLayoutOf(const WallLayout& layout, const WallProblem& asked, const sequence::Conflict& conflict) {
  NoLayout none{layout.wall->id, {}};
  for (const sequence::Relaxation& relaxation : conflict.needs) {
    Requirement requirement = asked.needs[static_cast<std::size_t>(relaxation.need)];
    if (relaxation.by && inchesOf(*relaxation.by) <= mostThatGives(layout, requirement))
      requirement.by = inchesOf(*relaxation.by);
    for (Id& piece : requirement.pieces)
      piece = named(asked, piece);
    none.requirements.push_back(std::move(requirement));
  }
  return none;
}

sequence::Conflict conflictIn(const sequence::Problem& problem) {
  auto answer = sequence::layInOrder(problem);
  auto* conflict = std::get_if<sequence::Conflict>(&answer);
  return conflict ? std::move(*conflict) : sequence::Conflict{};
}

// Columns of the straps and rods that collide, and those that bolts collide with.
std::vector<Id> columnsIn(const WallLine& wall, const NoLayout& conflict) {
  std::vector<Id> columns;
  const auto take = [&](Id id) {
    if (findIn(wall.columns, id) && std::find(columns.begin(), columns.end(), id) == columns.end())
      columns.push_back(id);
  };
  for (const Requirement& requirement : conflict.requirements)
    for (const Id piece : requirement.pieces) {
      take(piece);
      if (const Strap* strap = findIn(wall.straps, piece))
        take(strap->column);
      if (const Rod* rod = findIn(wall.rods, piece))
        take(rod->column);
    }
  return columns;
}

bool isAskedOf(const NoLayout& conflict, const Requirement& requirement) {
  return std::any_of(conflict.requirements.begin(), conflict.requirements.end(), [&](const Requirement& other) {
    return other.kind == requirement.kind && other.rule == requirement.rule && other.pieces == requirement.pieces &&
           other.sillPiece == requirement.sillPiece && other.at == requirement.at;
  });
}

// Nails and brackets keep what collides on its column. Where that stays they are not asked of: it goes nowhere else.
bool keepsOnColumn(const NoLayout& conflict, const Requirement& requirement) {
  const bool keeps = requirement.rule == RuleId::StrapColumn || requirement.rule == RuleId::StrapLean ||
                     requirement.rule == RuleId::RodOffset;
  return keeps && requirement.kind == Requirement::Kind::Rule && !requirement.pieces.empty() &&
         std::any_of(conflict.requirements.begin(), conflict.requirements.end(), [&](const Requirement& other) {
           return std::find(other.pieces.begin(), other.pieces.end(), requirement.pieces.front()) != other.pieces.end();
         });
}

// What framing might give is asked with what collides already.
bool isAskedWithFraming(const WallProblem& part, const NoLayout& conflict, Requirement requirement) {
  for (Id& piece : requirement.pieces)
    piece = named(part, piece);
  return requirement.kind == Requirement::Kind::Leeway || isAskedOf(conflict, requirement) ||
         keepsOnColumn(conflict, requirement);
}

sequence::Conflict withAmounts(const sequence::Problem& problem, sequence::Conflict conflict) {
  for (sequence::Relaxation& each : conflict.needs)
    each.by = sequence::leastGiving(problem, each.need);
  return conflict;
}

sequence::Conflict smallestIn(const WallProblem& part) {
  for (const WallProblem& smaller : smallerPartsOf(part))
    if (!sequence::canBeLaid(smaller.problem))
      return withAmounts(part.problem, conflictIn(smaller.problem));
  return conflictIn(part.problem);
}

// What collides, once more, with what framing might give among it; only of what collides already, so that it stays a
// smallest set. Where framing has no say in it, as it was.
NoLayout withFraming(const WallLayout& layout, const ResolvedLimits& limits, const RefitWishes& wishes,
                     NoLayout conflict) {
  const auto asked = wallProblem(layout, limits, wishes, columnsIn(*layout.wall, conflict));
  if (!asked)
    return conflict;
  for (WallProblem& part : partsOf(*asked)) {
    sequence::Problem fewer = part.problem;
    for (const sequence::Need need : sequence::needsOf(part.problem))
      if (!isAskedWithFraming(part, conflict, part.needs[static_cast<std::size_t>(need)]))
        fewer = sequence::without(fewer, need);
    if (sequence::canBeLaid(fewer))
      continue;
    WallProblem asking = part;
    asking.problem = std::move(fewer);
    const sequence::Conflict smallest = smallestIn(asking);
    if (std::any_of(smallest.needs.begin(), smallest.needs.end(), [&](const sequence::Relaxation& each) {
          return part.needs[static_cast<std::size_t>(each.need)].kind == Requirement::Kind::Leeway;
        }))
      return noLayoutOf(layout, part, withAmounts(part.problem, smallest));
  }
  return conflict;
}

NoLayout whyNot(const WallLayout& layout, const ResolvedLimits& limits, const RefitWishes& wishes,
                const WallProblem& part) {
  return withFraming(layout, limits, wishes, noLayoutOf(layout, part, smallestIn(part)));
}

// Of the parts that have a layout; none where the rules object to it.
std::vector<Change> soundChanges(const WallLayout& layout, const ResolvedLimits& limits,
                                 const std::vector<Best>& parts) {
  for (const OffMarks offMarks : {OffMarks::Stay, OffMarks::GoToMarks}) {
    std::vector<Change> changes = proposalOf(*layout.wall, parts, offMarks).changes;
    const Drafts drafts = draftsOf(withChanges(layout, changes), limits);
    const bool objects = std::any_of(drafts.begin(), drafts.end(), [&](const Draft& draft) {
      return isItsOwn(*layout.wall, draft.finding) &&
             std::any_of(changes.begin(), changes.end(), [&](const Change& each) {
               const auto& pieces = draft.finding.pieces;
               return each.before && std::find(pieces.begin(), pieces.end(), pieceOf(each)) != pieces.end();
             });
    });
    if (!objects)
      return changes;
  }
  return {};
}

} // namespace

Result<Refit> refit(const WallLayout& layout, const ResolvedLimits& limits, const RefitWishes& wishes) {
  const auto asked = wallProblem(layout, limits, wishes);
  if (!asked)
    return asked.problem();
  std::vector<Best> parts;
  std::optional<NoLayout> none;
  for (WallProblem& part : partsOf(*asked)) {
    if (sequence::canBeLaid(part.problem)) {
      sequence::Layout best = std::get<sequence::Layout>(sequence::layInOrder(part.problem));
      parts.push_back({std::move(part), std::move(best)});
    } else if (!none) {
      none = whyNot(layout, limits, wishes, part);
    }
  }
  if (none) {
    none->elsewhere = soundChanges(layout, limits, parts);
    return Refit{std::move(*none)};
  }
  std::optional<RuleId> against;
  for (const OffMarks offMarks : {OffMarks::Stay, OffMarks::GoToMarks}) {
    const Proposal proposal = proposalOf(*layout.wall, parts, offMarks);
    against = objection(withChanges(layout, proposal.changes), limits);
    if (!against)
      return Refit{proposal};
  }
  return Problem{"wall " + layout.wall->mark, "the layout found does not satisfy " + std::string(rule(*against).name) +
                                                  ": please lay this wall out by hand"};
}

std::vector<NoLayout> furtherConflicts(const WallLayout& layout, const ResolvedLimits& limits,
                                       const RefitWishes& wishes) {
  const auto asked = wallProblem(layout, limits, wishes);
  if (!asked)
    return {};
  std::vector<NoLayout> conflicts;
  bool first = true; // that is what refit tells
  for (const WallProblem& part : partsOf(*asked)) {
    if (sequence::canBeLaid(part.problem))
      continue;
    if (!first)
      conflicts.push_back(whyNot(layout, limits, wishes, part));
    first = false;
  }
  return conflicts;
}

Result<sequence::Problem> refitProblem(const WallLayout& layout, const ResolvedLimits& limits,
                                       const RefitWishes& wishes) {
  const auto asked = wallProblem(layout, limits, wishes);
  return asked ? Result<sequence::Problem>(asked->problem) : Result<sequence::Problem>(asked.problem());
}

} // namespace sillwright
