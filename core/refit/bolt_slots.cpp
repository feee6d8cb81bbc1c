// What keeps a bolt from standing somewhere along its wall, at its depth: wood, openings, steel, its own sill.
#include <algorithm>
#include <cmath>

#include "core/refit/site.h"
#include "core/refit/steel_in_the_way.h"
#include "core/rules/anchor_checks.h"
#include "core/rules/bolts_in_sill.h"
#include "core/rules/measure.h"

namespace sillwright {

namespace {

// A bolt as it would stand on a ground.
struct Stack {
  double bearing = 0; // top of the sill, or the pour line
  double top = 0;     // of bolt and washer, whichever is higher
  Interval washer;    // heights; empty without one
};

class BoltBlocks {
public:
  BoltBlocks(const Site& site, const AnchorBody& bolt, Blocks& blocks)
      : site_(site), layout_(site.layout), limits_(site.limits), bolt_(bolt), blocks_(blocks), nut_(nutBox(bolt)),
        widest_(bolt.washerBox ? *bolt.washerBox : nut_) {}

  void all() {
    openings();
    splices();
    for (const Ground& ground : site_.grounds) {
      onSill(ground);
      underWood(ground);
      besideWashers(ground);
    }
  }

private:
  // Stations at which a box of the bolt and a still one overlap along the wall.
  Interval meeting(const Box3& own, Interval still) const {
    return {still.from - (own.s.to - bolt_.station), still.to + (bolt_.station - own.s.from)};
  }

  Stack stackOn(const Ground& ground) const {
    Stack stack;
    stack.bearing = ground.sill ? layout_.sills[*ground.sill].box.z.to : ground.pour;
    stack.top = std::max(ground.pour + bolt_.bolt->projection, stack.bearing);
    if (bolt_.washer) {
      stack.washer = {stack.bearing, stack.bearing + bolt_.washer->thickness};
      stack.top = std::max(stack.top, stack.washer.to);
    }
    return stack;
  }

  void within(const Ground& ground, RuleId rule, Interval stations, Id by) {
    blocks_.open(rule, overlap(stations, grown(ground.s, 2 * tolerance::same)), by);
  }

  void openings() {
    for (const Opening& opening : layout_.wall->openings)
      if (opening.kind != OpeningKind::Window)
        blocks_.open(RuleId::BoltOpening, grown({opening.from, opening.to}, bolt_.diameter / 2), opening.id);
  }

  void splices() {
    for (const SillPiece& piece : layout_.sills) {
      const double splice = piece.box.s.from;
      const bool joined =
          piece.index > 0 && std::any_of(layout_.sills.begin(), layout_.sills.end(), [&](const SillPiece& other) {
            return other.sill == piece.sill && std::abs(other.box.s.to - splice) < tolerance::same;
          });
      if (joined)
        blocks_.open(RuleId::BoltSplice, meeting(widest_, {splice, splice}), piece.sill);
    }
  }

  void onSill(const Ground& ground) {
    if (!ground.sill) {
      offSill(ground);
      return;
    }
    const SillPiece& piece = layout_.sills[*ground.sill];
    const Interval across = piece.box.d;
    const double edge = across.length() / 2 - std::abs(bolt_.depth - across.middle());
    if (under(edge, across.length() / 3))
      blocks_.closed(RuleId::BoltThird, ground.s, piece.sill);
    const double near = limits_[LimitKey::BoltEndNearDiameters] * bolt_.diameter;
    blocks_.allBut(RuleId::BoltEndNear, grown(piece.box.s, -near), ground.s, piece.sill);
    if (!bolt_.washerBox)
      return;
    const Box3& washer = *bolt_.washerBox;
    if (over(across.from - washer.d.from, 0) || over(washer.d.to - across.to, 0))
      blocks_.closed(RuleId::WasherSill, ground.s, piece.sill);
    const Interval along = wholeSill(layout_, piece);
    blocks_.allBut(RuleId::WasherSill,
                   {along.from + (bolt_.station - washer.s.from), along.to - (washer.s.to - bolt_.station)}, ground.s,
                   piece.sill);
    sheathedEdges(ground, across);
  }

  void offSill(const Ground& ground) {
    if (layout_.sills.empty() || !bolt_.washerBox)
      return;
    std::vector<Interval> doors;
    for (const Opening& opening : layout_.wall->openings)
      if (opening.kind != OpeningKind::Window)
        doors.push_back({opening.from, opening.to});
    for (const Interval bare : withoutOpen(ground.s, doors))
      blocks_.closed(RuleId::WasherSill, bare);
  }

  void sheathedEdges(const Ground& ground, Interval sill) {
    const double strongFrom = limits_[LimitKey::WasherSheathingFrom], limit = limits_[LimitKey::WasherSheathing];
    const Interval washer = bolt_.washerBox->d;
    for (const Panel& panel : layout_.wall->panels) {
      if (!panel.unitShear || !over(*panel.unitShear, strongFrom))
        continue;
      const bool outside = panel.sheathing != Sheathing::Inside && over(washer.from - sill.from, limit);
      const bool inside = panel.sheathing != Sheathing::Outside && over(sill.to - washer.to, limit);
      if (outside || inside)
        blocks_.closed(RuleId::WasherSheathing, overlap({panel.from, panel.to}, ground.s), panel.id);
    }
  }

  void underOne(const Ground& ground, RuleId rule, const Box3& own, const Box3& wood, Id by) {
    if (under(gap(own.d, wood.d), 0) && !under(stackOn(ground).top, wood.z.from))
      within(ground, rule, meeting(own, wood.s), by);
  }

  void underWood(const Ground& ground) {
    for (const StudBody& stud : layout_.studs)
      underOne(ground, RuleId::BoltStud, widest_, stud.box, {});
    for (const ColumnBody& column : layout_.columns) {
      underOne(ground, RuleId::BoltStud, nut_, column.box, column.id);
      if (bolt_.washerBox)
        underOne(ground, RuleId::WasherColumn, *bolt_.washerBox, column.box, column.id);
    }
  }

  void besideWashers(const Ground& ground) {
    if (!bolt_.washerBox)
      return;
    const Interval z = stackOn(ground).washer;
    for (const AnchorBody& other : layout_.anchors)
      if (!other.isRod && other.id != bolt_.id && other.washerBox && !overlap(z, other.washerBox->z).empty() &&
          under(gap(bolt_.washerBox->d, other.washerBox->d), 0))
        within(ground, RuleId::WasherWasher, meeting(*bolt_.washerBox, other.washerBox->s), other.id);
  }

  const Site& site_;
  const WallLayout& layout_;
  const ResolvedLimits& limits_;
  const AnchorBody& bolt_;
  Blocks& blocks_;
  Box3 nut_;
  Box3 widest_;
};

} // namespace

void blockBolt(const Site& site, const AnchorBody& bolt, Blocks& blocks) {
  blockByTheOtherBolts(site, bolt, blocks);
  blockBoltByItself(site, bolt, blocks);
}

void blockBoltByItself(const Site& site, const AnchorBody& bolt, Blocks& blocks) {
  BoltBlocks(site, bolt, blocks).all();
  blockByGaps(site, bolt, blocks);
  blockBySteel(site, bolt, blocks);
  blockByConcrete(site, bolt, blocks);
}

} // namespace sillwright
