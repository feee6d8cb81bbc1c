// What belongs to a column: straps on it, rods beside it, and panels whose lever arm they make.
#include <algorithm>
#include <cmath>

#include "core/geometry/interval_set.h"
#include "core/refit/marks.h"
#include "core/refit/site.h"
#include "core/refit/wall_problem.h"
#include "core/rules/measure.h"
#include "core/rules/panel_ends.h"
#include "core/rules/panel_loads.h"
#include "core/rules/rule_book.h"

namespace sillwright {

namespace {

using sequence::Mark;
using sequence::Stretch;
using Kind = Requirement::Kind;

struct Owner {
  Id id;
  int column = -1; // among the anchored, where that may shift
  double columnAt = 0;
};

Owner ownerOf(const Translation& t, Id id, Id column) {
  Owner owner{id, -1, 0};
  if (const Column* found = findIn(t.layout.wall->columns, column))
    owner.columnAt = found->station;
  if (const auto index = anchoredIndex(t.out, column))
    owner.column = static_cast<int>(*index);
  return owner;
}

double columnGives(const Translation& t, const Owner& owner) {
  if (owner.column < 0)
    return 0;
  const Stretch& marks = t.out.problem.anchored[owner.column].outermost;
  return std::max(owner.columnAt - inchesOf(marks.from), inchesOf(marks.to) - owner.columnAt);
}

// Which of its requirements go with the column, as it shifts.
bool goesWithColumn(RuleId rule) {
  switch (rule) {
  case RuleId::StrapColumn:
  case RuleId::StrapLean:
  case RuleId::StrapSeam:
  case RuleId::StrapNailEdge:
  case RuleId::RodOffset:
    return true;
  default:
    return false;
  }
}

void place(Translation& t, const Owner& owner, double now, std::optional<double> before, Interval frame,
           sequence::Anchored& piece) {
  piece.own = marksIn(frame);
  const Mark mark = nearestMark(now);
  const bool isFixed = stays(t.wishes, owner.id);
  if (isFixed)
    piece.own = {std::min(piece.own.from, mark), std::max(piece.own.to, mark)};
  if (piece.own.from > piece.own.to) // beyond the wall: it will not hold there
    piece.own = {mark, mark};
  piece.outermost = piece.own;
  piece.ownNeed = t.needs.of({Kind::Rule, RuleId::StrapColumn, {owner.id}});
  const bool isAdded = std::find(t.out.added.begin(), t.out.added.end(), owner.id) != t.out.added.end();
  if (!isAdded)
    piece.reference = before && !isFixed ? nearestMark(*before) : mark;
  piece.set = isSet(*t.layout.wall, owner.id);
  if (isFixed)
    piece.fixed = t.needs.of({Kind::Stays, RuleId::StrapColumn, {owner.id}});
}

Requirement asked(const Blocked& blocked, Id of) {
  Requirement requirement{Kind::Rule, blocked.rule, {of}};
  if (blocked.by)
    requirement.pieces.push_back(blocked.by);
  return requirement;
}

// Blocked for the strap with its column where it is: of the difference of the two where the column may shift.
void file(Translation& t, const std::vector<Blocked>& blocked, const Owner& owner, Interval frame,
          sequence::Anchored& piece) {
  std::vector<Interval> offColumn;
  std::optional<Requirement> onColumn;
  for (const Blocked& each : blocked) {
    if (owner.column < 0 || !goesWithColumn(each.rule)) {
      t.needs.block(piece.ground, asked(each, owner.id), each.stations, piece.outermost);
      continue;
    }
    if (t.limits.counts[static_cast<std::size_t>(each.rule)])
      continue;
    offColumn.push_back(each.stations);
    if (!onColumn)
      onColumn = asked(each, owner.id);
  }
  if (!onColumn)
    return;
  sequence::Distance distance;
  distance.left = owner.column;
  distance.right = static_cast<int>(t.out.problem.anchored.size());
  distance.need = t.needs.of(*onColumn);
  for (const Interval free : withoutOpen(frame, offColumn)) {
    const Stretch marks = marksIn({free.from - owner.columnAt, free.to - owner.columnAt});
    if (marks.from <= marks.to)
      distance.allowed.push_back(marks);
  }
  t.out.problem.distances.push_back(distance);
}

// ---- what the rules would say of the piece alone, mark by mark
using Rules = std::initializer_list<RuleId>;

struct Tolls {
  int ask = 0;
  int watch = 0;
  bool operator==(const Tolls&) const = default;
};

Tolls tollsOf(const WallLayout& alone, const ResolvedLimits& all, RuleId id) {
  Drafts drafts;
  rule(id).check(alone, all, drafts);
  Tolls tolls;
  for (const Draft& draft : drafts) {
    tolls.ask += draft.finding.level == Level::Ask;
    tolls.watch += draft.finding.level == Level::Watch;
  }
  return tolls;
}

void fileTolls(Translation& t, RuleId id, const Tolls& tolls, Stretch marks, const Owner& owner,
               sequence::Anchored& piece) {
  sequence::Ground& ground = piece.ground;
  sequence::Ground relative;
  const bool isRelative = owner.column >= 0 && goesWithColumn(id);
  sequence::Ground& into = isRelative ? relative : ground;
  for (int i = 0; i < tolls.ask; ++i)
    t.needs.toll(into, id, Level::Ask, marks);
  for (int i = 0; i < tolls.watch; ++i)
    t.needs.toll(into, id, Level::Watch, marks);
  if (relative.tolls.empty())
    return;
  const Mark column = nearestMark(owner.columnAt);
  for (sequence::Toll& toll : relative.tolls) {
    toll.from -= column;
    toll.to -= column;
  }
  const int self = static_cast<int>(t.out.problem.anchored.size());
  auto& distances = t.out.problem.distances;
  const auto own = std::find_if(distances.begin(), distances.end(), [&](const sequence::Distance& distance) {
    return distance.left == owner.column && distance.right == self;
  });
  if (own != distances.end())
    own->tolls.insert(own->tolls.end(), relative.tolls.begin(), relative.tolls.end());
}

bool isBlocked(const sequence::Ground& ground, Mark mark) {
  return std::any_of(ground.blocked.begin(), ground.blocked.end(),
                     [&](const sequence::Blocked& each) { return each.from < mark && mark < each.to; });
}

// Each stretch of marks in which a rule says the same becomes a toll. `at` makes the layout with the piece at a
// station.
template <class At>
void probe(Translation& t, Rules rules, const Owner& owner, const At& at, sequence::Anchored& piece) {
  for (const RuleId id : rules) {
    Tolls running;
    Mark since = piece.outermost.from;
    for (Mark mark = piece.outermost.from; mark <= piece.outermost.to + 1; ++mark) {
      Tolls here;
      if (mark <= piece.outermost.to && !isBlocked(piece.ground, mark))
        here = tollsOf(at(inchesOf(mark)), t.all, id);
      if (here == running)
        continue;
      fileTolls(t, id, running, {since, mark - 1}, owner, piece);
      running = here;
      since = mark;
    }
  }
}

WallLayout without(const WallLayout& layout) {
  WallLayout bare = layout;
  bare.straps.clear();
  bare.anchors.clear();
  return bare;
}

// ---- straps
void addPanelEnds(Translation& t, const StrapBody& strap, sequence::Anchored& piece) {
  for (const PanelEnd& end : panelEnds(t.layout)) {
    if (!end.mark || !findStrapType(*t.layout.types, end.mark->strapType) || !end.column)
      continue;
    const bool isIts = end.strap ? end.strap->id == strap.id : end.column->id == strap.strap->column;
    if (!isIts)
      continue;
    const Panel& panel = *end.panel;
    const double middle = (panel.from + panel.to) / 2;
    const Interval reach = end.side == Side::Left ? Interval{panel.from, std::min(middle, panel.from + endReach)}
                                                  : Interval{std::max(middle, panel.to - endReach), panel.to};
    const Requirement requirement{Kind::Rule, RuleId::StrapMissing, {strap.id, panel.id}};
    t.needs.block(piece.ground, requirement, {-1e6, reach.from - tolerance::same}, piece.outermost);
    t.needs.block(piece.ground, requirement, {reach.to + tolerance::same, 1e6}, piece.outermost);
  }
}

void addStrap(Translation& t, const StrapBody& strap, const WallLayout& bare) {
  const Owner owner = ownerOf(t, strap.id, strap.strap->column);
  const Strap* before = findIn(t.reference.straps, strap.id);
  const double now = strap.strap->station;
  const Interval column = t.layout.columns[*strap.column].box.s;
  const Interval frame = overlap(grown(column, columnGives(t, owner)), {0, t.layout.length});
  sequence::Anchored piece;
  place(t, owner, now, before ? std::optional(before->station) : std::nullopt, frame, piece);
  const Site site = siteOf(bare, t.all);
  Blocks blocks(site);
  blockStrap(site, strap, blocks);
  file(t, blocks.take(), owner, grown(column, 1e3), piece);
  addPanelEnds(t, strap, piece);

  WallLayout alone = bare;
  alone.straps = {strap};
  Strap moved = *strap.strap;
  const auto at = [&](double station) -> const WallLayout& {
    slide(alone.straps.front(), moved, station - moved.station);
    return alone;
  };
  probe(t,
        {RuleId::StrapEdge, RuleId::StrapSteel, RuleId::StrapDepth, RuleId::StrapBack, RuleId::StrapSeam,
         RuleId::StrapNailEdge},
        owner, at, piece);
  t.out.anchored.push_back(strap.id);
  t.out.problem.anchored.push_back(std::move(piece));
}

// ---- rods
void addRod(Translation& t, const AnchorBody& rod, const WallLayout& bare) {
  const Owner owner = ownerOf(t, rod.id, rod.rod->column);
  const auto before = stationOf(t.reference, rod.id);
  // A bracket says where; else it may be slid by half a foot.
  const double reach = rod.rodType->bracketOffset > 0 ? framingGives : endReach / 2;
  const Interval frame = overlap(grown(around(rod.station, 0), reach + columnGives(t, owner)), {0, t.layout.length});
  sequence::Anchored piece;
  place(t, owner, rod.station, before, frame, piece);
  const Site site = siteOf(bare, t.all);
  Blocks blocks(site);
  blockRod(site, rod, blocks);
  file(t, blocks.take(), owner, grown(frame, 1e3), piece);
  WallLayout alone = bare;
  alone.anchors = {rod};
  const auto at = [&](double station) -> const WallLayout& {
    slide(alone.anchors.front(), station - alone.anchors.front().station);
    return alone;
  };
  probe(t, {RuleId::RodSteel, RuleId::RodEdge, RuleId::RodCover}, owner, at, piece);
  t.out.anchored.push_back(rod.id);
  t.out.problem.anchored.push_back(std::move(piece));
}

void keepApart(Translation& t, const AnchorBody& a, const AnchorBody& b) {
  const double least = t.limits[LimitKey::BoltGap] * std::max(a.diameter, b.diameter);
  const double across = std::abs(a.depth - b.depth);
  if (!under(across, least) || t.limits.counts[static_cast<std::size_t>(RuleId::BoltGap)] ||
      overlap({a.bottom, a.pour}, {b.bottom, b.pour}).empty())
    return;
  const Mark apart = markFrom(std::sqrt(least * least - across * across));
  const int left = static_cast<int>(*anchoredIndex(t.out, a.id)), right = static_cast<int>(*anchoredIndex(t.out, b.id));
  t.out.problem.distances.push_back({left,
                                     right,
                                     {{-sequence::kFar, -apart}, {apart, sequence::kFar}},
                                     {},
                                     t.needs.of({Kind::Rule, RuleId::BoltGap, {a.id, b.id}})});
}

// ---- panels
// The hold-down of an end, where that is a piece that may move.
std::optional<int> holdDownOf(const Translation& t, const PanelEnd& end) {
  Id id;
  if (end.strap)
    id = end.strap->id;
  else if (end.rod)
    id = end.rod->id;
  else if (end.column)
    for (const Strap& strap : t.layout.wall->straps) // on its way here
      if (strap.column == end.column->id)
        id = strap.id;
  const auto index = anchoredIndex(t.out, id);
  return index ? std::optional(static_cast<int>(*index)) : std::nullopt;
}

// Nearer together than that the force grows by more than so many per cent.
Mark lastTooNear(double planned, double percent) {
  return markFrom(planned / (1 + percent / 100) - tolerance::same) - 1;
}

} // namespace

void addStraps(Translation& t) {
  const WallLayout bare = without(t.layout);
  for (const StrapBody& strap : t.layout.straps)
    addStrap(t, strap, bare);
}

void addRods(Translation& t) {
  const WallLayout bare = without(t.layout);
  std::vector<const AnchorBody*> rods;
  for (const AnchorBody& anchor : t.layout.anchors)
    if (anchor.isRod) {
      addRod(t, anchor, bare);
      rods.push_back(&anchor);
    }
  for (std::size_t i = 0; i < rods.size(); ++i)
    for (std::size_t k = i + 1; k < rods.size(); ++k)
      keepApart(t, *rods[i], *rods[k]);
}

void addPanelLevers(Translation& t) {
  const std::vector<PanelEnd> ends = panelEnds(t.layout);
  for (std::size_t i = 0; i + 1 < ends.size(); i += 2) {
    const auto left = holdDownOf(t, ends[i]), right = holdDownOf(t, ends[i + 1]);
    const auto planned = plannedLever(ends[i], ends[i + 1]);
    if (!left || !right || *left == *right || !planned)
      continue;
    const Mark ask = lastTooNear(*planned, t.limits[LimitKey::PanelLeverMost]);
    const Mark watch = lastTooNear(*planned, t.limits[LimitKey::PanelLever]);
    sequence::Ground ground;
    t.needs.toll(ground, RuleId::PanelLever, Level::Ask, {1, ask});
    t.needs.toll(ground, RuleId::PanelLever, Level::Watch, {std::max(1, ask + 1), watch});
    if (!ground.tolls.empty())
      t.out.problem.distances.push_back({*left, *right, {{-sequence::kFar, sequence::kFar}}, ground.tolls, -1});
  }
}

} // namespace sillwright
