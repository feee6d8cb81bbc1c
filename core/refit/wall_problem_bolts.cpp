// Bolts along their pieces of sill: where each may stand by itself, and how they stand to each other.
#include <algorithm>
#include <cmath>

#include "core/refit/bolt_near.h"
#include "core/refit/bolt_stands.h"
#include "core/refit/marks.h"
#include "core/refit/site.h"
#include "core/rules/anchor_checks.h"
#include "core/rules/bolts_in_sill.h"
#include "core/rules/concrete_cover.h"
#include "core/rules/measure.h"
#include "core/rules/rule_book.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

using sequence::Mark;
using sequence::Stretch;
using Kind = Requirement::Kind;

bool isOff(const Translation& t, RuleId rule) {
  return t.limits.counts[static_cast<std::size_t>(rule)].has_value();
}

WallLayout standing(const Translation& t) { // what bolts find there that does not move
  WallLayout bare = t.layout;
  bare.straps.clear();
  bare.anchors.clear();
  std::erase_if(bare.columns, [&](const ColumnBody& column) { return anchoredIndex(t.out, column.id).has_value(); });
  return bare;
}

// A column that may shift uncovers studs as it goes: they count wherever it stands.
void addUncoveredStuds(const Translation& t, WallLayout& bare) {
  WallLine wall = *t.layout.wall;
  wall.straps.clear();
  wall.rods.clear();
  wall.bolts.clear();
  std::erase_if(wall.columns, [&](const Column& column) {
    const auto index = anchoredIndex(t.out, column.id);
    return index && t.out.problem.anchored[*index].own.from < t.out.problem.anchored[*index].own.to;
  });
  if (wall.columns.size() == t.layout.wall->columns.size())
    return;
  const WallLayout without =
      layOut(std::make_shared<const WallLine>(wall), t.layout.types, t.layout.limits, t.layout.marks, t.layout.place);
  const auto uncovers = [&](const Column& column, const StudBody& stud) { // at one end of its leeway or the other
    const Stretch& own = t.out.problem.anchored[*anchoredIndex(t.out, column.id)].own;
    const double half = alongWall(column.makeUp) / 2;
    for (const Mark at : {own.from, own.to})
      if (gap(grown(around(inchesOf(at), 0), half), stud.box.s) >= -tolerance::same)
        return true;
    return false;
  };
  bare.studs.clear();
  for (const StudBody& stud : without.studs) {
    const bool may = std::all_of(t.layout.wall->columns.begin(), t.layout.wall->columns.end(),
                                 [&](const Column& c) { return findIn(wall.columns, c.id) || uncovers(c, stud); });
    if (may)
      bare.studs.push_back(stud);
  }
}

class OneSill {
public:
  OneSill(Translation& t, const SillToLay& sill) : t_(t), sill_(sill), piece_(t.layout.sills[sill.piece]) {}

  Requirement asked(RuleId rule, Id by = {}) const {
    Requirement requirement{Kind::Rule, rule, {piece_.sill}, piece_.index};
    if (by && by != piece_.sill)
      requirement.pieces.push_back(by);
    return requirement;
  }

  // A stud has no id: it is known by where it stands.
  Requirement asked(const WallLayout& bare, const Blocked& blocked) const {
    Requirement requirement = asked(blocked.rule, blocked.by);
    if (blocked.rule == RuleId::BoltStud && !blocked.by) {
      const auto nearest = std::min_element(bare.studs.begin(), bare.studs.end(), [&](const auto& a, const auto& b) {
        return std::abs(a.box.s.middle() - blocked.stations.middle()) <
               std::abs(b.box.s.middle() - blocked.stations.middle());
      });
      if (nearest != bare.studs.end())
        requirement.at = nearest->box.s;
    }
    return requirement;
  }

  void counts(sequence::SillPiece& piece) const {
    const double needed = boltsNeeded(t_.layout, t_.limits);
    if (isOff(t_, RuleId::BoltCount))
      return;
    // Where one will do it stands in the middle third; two that are there stay, anywhere.
    piece.least = needed == 1 && sill_.bolts.size() > 1 ? 2 : static_cast<int>(std::ceil(needed));
    piece.leastNeed = t_.needs.of(asked(RuleId::BoltCount));
    if (piece.least != 1 || needed != 1)
      return;
    const Interval third = around(piece_.box.s.middle(), piece_.box.s.length() / 3);
    for (sequence::Ground& ground : piece.options) {
      t_.needs.block(ground, asked(RuleId::BoltCount), {-1e6, third.from}, sill_.marks);
      t_.needs.block(ground, asked(RuleId::BoltCount), {third.to, 1e6}, sill_.marks);
    }
  }

  void windows(sequence::SillPiece& piece) const {
    if (isOff(t_, RuleId::BoltEndFar))
      return;
    const double far = t_.limits[LimitKey::BoltEndFar];
    const sequence::Need need = t_.needs.of(asked(RuleId::BoltEndFar));
    piece.first = {std::max(0, markUpTo(piece_.box.s.from + far) - sill_.marks.from), need};
    piece.last = {std::max(0, sill_.marks.to - markFrom(piece_.box.s.to - far)), need};
  }

  void spacing(sequence::SillPiece& piece) const {
    if (isOff(t_, RuleId::BoltSpacing))
      return;
    const double base = spacingLimit(t_.layout, t_.limits, {}).inches;
    piece.most.push_back(
        {sill_.marks.from - 1, sill_.marks.to + 1, markUpTo(base), t_.needs.of(asked(RuleId::BoltSpacing))});
    for (const Panel& panel : t_.layout.wall->panels) {
      const auto lower = markedSpacing(t_.layout, panel);
      const Stretch over{markUpTo(panel.from), markFrom(panel.to)};
      if (lower && *lower < base && over.to > sill_.marks.from && over.from < sill_.marks.to)
        piece.most.push_back({over.from, over.to, markUpTo(*lower), t_.needs.of(asked(RuleId::BoltSpacing, panel.id))});
    }
  }

  void torqued(sequence::SillPiece& piece, const BoltsToLay& lay) const {
    double diameter = 0;
    for (const std::size_t stand : sill_.stands)
      diameter = std::max(diameter, lay.bodies[stand].diameter);
    sequence::Ground ground;
    t_.needs.toll(ground, RuleId::BoltGap, Level::Ask,
                  {1, markFrom(t_.limits[LimitKey::BoltGapTorqued] * diameter) - 1});
    piece.gapTolls = ground.tolls;
  }

  void references(sequence::SillPiece& piece) const {
    for (const BoltBefore& bolt : sill_.bolts) {
      sequence::ReferenceBolt reference;
      reference.station = nearestMark(bolt.station);
      reference.set = isSet(*t_.layout.wall, bolt.id);
      if (bolt.isFixed)
        reference.fixed = t_.needs.of({Kind::Stays, RuleId::BoltCount, {bolt.id}});
      reference.shift.assign(t_.out.stands.size(), sequence::kFar);
      for (const std::size_t stand : sill_.stands)
        if (t_.out.stands[stand].make == bolt.make)
          reference.shift[stand] = markFrom(std::abs(t_.out.stands[stand].depth - bolt.depth));
      piece.reference.push_back(reference);
    }
  }

private:
  Translation& t_;
  const SillToLay& sill_;
  const SillPiece& piece_;
};

// ---- where one stands
void blockStand(Translation& t, const WallLayout& bare, const AnchorBody& body, const OneSill& one, Stretch frame,
                sequence::Ground& ground) {
  const Site site = siteOf(bare, t.all);
  Blocks blocks(site);
  blockBoltByItself(site, body, blocks);
  for (const Blocked& each : blocks.take())
    t.needs.block(ground, one.asked(bare, each), each.stations, frame);
}

Stretch within(Stretch marks, Stretch frame) {
  return {std::max(marks.from, frame.from), std::min(marks.to, frame.to)};
}

Stretch marksStrictlyIn(Interval open) {
  const Stretch ends = marksAround(open);
  return {ends.from + 1, ends.to - 1};
}

void tollTargets(Translation& t, const WallLayout& bare, const AnchorBody& body, Stretch frame,
                 sequence::Ground& ground) {
  for (const BarBody& bar : bare.bars)
    for (const Interval near : nearerThan(body, bar, t.limits[LimitKey::BoltSteelTarget] - tolerance::same))
      t.needs.toll(ground, RuleId::BoltSteel, Level::Watch, within(marksStrictlyIn(near), frame));
  if (!body.washerBox)
    return;
  for (const ColumnBody& column : bare.columns)
    if (const auto near =
            underWood(body, *body.washerBox, column.box, t.limits[LimitKey::WasherColumnTarget] - tolerance::same))
      t.needs.toll(ground, RuleId::WasherColumn, Level::Watch, within(marksStrictlyIn(*near), frame));
}

// Cover changes only near ends, steps and corners.
std::vector<Mark> whereCoverIsAsked(const WallLayout& bare, const AnchorBody& body, Stretch frame) {
  constexpr double most = 3.5; // more than any cover asked for
  const double reach = most + std::max(body.station - body.steelBox.s.from, body.steelBox.s.to - body.station);
  std::vector<bool> changing(static_cast<std::size_t>(frame.to - frame.from + 1), false);
  for (const Interval end : concreteEnds(bare)) {
    const Stretch marks = within(marksIn(grown(end, reach)), frame);
    for (Mark mark = marks.from; mark <= marks.to; ++mark)
      changing[static_cast<std::size_t>(mark - frame.from)] = true;
  }
  std::vector<Mark> asked; // each that changes, and the first of those that do not
  for (Mark mark = frame.from; mark <= frame.to; ++mark) {
    const auto at = static_cast<std::size_t>(mark - frame.from);
    if (changing[at] || at == 0 || changing[at - 1])
      asked.push_back(mark);
  }
  return asked;
}

// Faces beside a bolt, not over or under it: those say nothing of where it stands.
std::size_t facesTooNear(const WallLayout& alone, const ResolvedLimits& all) {
  Drafts drafts;
  checkBoltCover(alone, all, drafts);
  return static_cast<std::size_t>(std::count_if(drafts.begin(), drafts.end(), [](const Draft& draft) {
    return fieldOf(static_cast<CoverFace>(draft.finding.variant)) != Correction::Field::Height;
  }));
}

void tollCover(Translation& t, const WallLayout& bare, const AnchorBody& body, Stretch frame,
               sequence::Ground& ground) {
  WallLayout alone = bare;
  alone.anchors = {body};
  const std::vector<Mark> asked = whereCoverIsAsked(bare, body, frame);
  std::size_t running = 0;
  Mark since = frame.from;
  const auto close = [&](Mark upTo) {
    for (std::size_t i = 0; i < running; ++i)
      t.needs.toll(ground, RuleId::BoltCover, Level::Ask, {since, upTo});
  };
  for (const Mark mark : asked) {
    slide(alone.anchors.front(), inchesOf(mark) - alone.anchors.front().station);
    const std::size_t here = facesTooNear(alone, t.all);
    if (here == running)
      continue;
    close(mark - 1);
    running = here;
    since = mark;
  }
  close(frame.to);
}

void addOptions(Translation& t, const BoltsToLay& lay, const WallLayout& bare, const SillToLay& sill,
                const OneSill& one, sequence::SillPiece& piece) {
  piece.options.resize(t.out.stands.size());
  for (std::size_t stand = 0; stand < t.out.stands.size(); ++stand) {
    sequence::Ground& ground = piece.options[stand];
    if (std::find(sill.stands.begin(), sill.stands.end(), stand) == sill.stands.end()) {
      ground.blocked.push_back({-sequence::kFar, sequence::kFar, -1});
      continue;
    }
    AnchorBody body = lay.bodies[stand];
    body.sillPiece = sill.piece;
    blockStand(t, bare, body, one, sill.marks, ground);
    tollTargets(t, bare, body, sill.marks, ground);
    tollCover(t, bare, body, sill.marks, ground);
  }
}

// ---- two in a row
Mark apartForGap(const Translation& t, const AnchorBody& left, const AnchorBody& right) {
  const double least = t.limits[LimitKey::BoltGap] * std::max(left.diameter, right.diameter);
  const auto near = axesNearerThan(left, right, least);
  return near ? markFrom(near->length() / 2) : 1;
}

Mark apartForWashers(const AnchorBody& left, const AnchorBody& right) {
  if (!left.washerBox || !right.washerBox || overlap(left.washerBox->z, right.washerBox->z).empty() ||
      !under(gap(left.washerBox->d, right.washerBox->d), 0))
    return 1;
  return markFrom((left.washerBox->s.to - left.station) + (right.station - right.washerBox->s.from));
}

} // namespace

void addLeastGaps(Translation& t, const BoltsToLay& lay) {
  const int stands = static_cast<int>(lay.bodies.size());
  const sequence::Need gap = isOff(t, RuleId::BoltGap) ? -1 : t.needs.of({Kind::Rule, RuleId::BoltGap, {}});
  const sequence::Need washer =
      isOff(t, RuleId::WasherWasher) ? -1 : t.needs.of({Kind::Rule, RuleId::WasherWasher, {}});
  std::vector<sequence::LeastGap> gaps;
  sequence::LeastGap most{0, 0, 1, -1};
  for (int left = 0; left < stands; ++left)
    for (int right = 0; right < stands; ++right) {
      if (gap >= 0)
        gaps.push_back({left, right, apartForGap(t, lay.bodies[left], lay.bodies[right]), gap});
      if (washer >= 0)
        gaps.push_back({left, right, apartForWashers(lay.bodies[left], lay.bodies[right]), washer});
    }
  for (const sequence::LeastGap& each : gaps)
    if (each.least > most.least)
      most = each;
  // The problem asks only of neighbours: half the largest between any two, and it is kept by those beyond them too.
  for (int left = 0; left < stands; ++left)
    for (int right = 0; right < stands; ++right)
      gaps.push_back({left, right, (most.least + 1) / 2, most.need});
  std::erase_if(gaps, [](const sequence::LeastGap& each) { return each.least <= 1; });
  t.out.problem.leastGaps = std::move(gaps);
}

void addSillPieces(Translation& t, const BoltsToLay& lay) {
  WallLayout bare = standing(t);
  addUncoveredStuds(t, bare);
  for (const SillToLay& sill : lay.sills) {
    const OneSill one(t, sill);
    sequence::SillPiece piece;
    piece.stretch = sill.marks;
    addOptions(t, lay, bare, sill, one, piece);
    one.counts(piece);
    one.windows(piece);
    one.spacing(piece);
    one.torqued(piece, lay);
    one.references(piece);
    t.out.problem.sillPieces.push_back(std::move(piece));
    std::vector<Id> references;
    for (const BoltBefore& bolt : sill.bolts)
      references.push_back(bolt.id);
    t.out.references.push_back(std::move(references));
  }
}

std::optional<Problem> addBolts(Translation& t) {
  const auto lay = boltsToLay(t);
  if (!lay)
    return lay.problem();
  t.out.problem.depthOptions = std::max(1, static_cast<int>(lay->bodies.size()));
  addSillPieces(t, *lay);
  addLeastGaps(t, *lay);
  addBesides(t, *lay);
  return std::nullopt;
}

} // namespace sillwright
