// What keeps a strap from hanging somewhere along its wall, at its height.
#include <algorithm>
#include <cmath>
#include <limits>

#include "core/base/tolerance.h"
#include "core/refit/site.h"
#include "core/refit/steel_in_the_way.h"
#include "core/rules/measure.h"
#include "core/rules/panel_ends.h"

namespace sillwright {

namespace {

class StrapBlocks {
public:
  StrapBlocks(const Site& site, const StrapBody& strap, Blocks& blocks)
      : site_(site), layout_(site.layout), strap_(strap), blocks_(blocks), now_(strap.strap->station) {}

  void all() {
    for (const Ground& ground : site_.grounds) {
      const double up = ground.pour + strap_.strap->heightOffset - strap_.joint;
      onColumn(ground, up);
      openings(ground, up);
    }
  }

  // A panel end that this strap holds, and that no other would: it stays within reach of it.
  void panelEnds() {
    for (const PanelEnd& end : sillwright::panelEnds(layout_)) {
      if (!end.strap || end.strap->id != strap_.id || !end.mark ||
          !findStrapType(*layout_.types, end.mark->strapType) || anotherHolds(end))
        continue;
      blocks_.allBut(RuleId::StrapMissing, grown(reachOf(end), tolerance::same), site_.whole, end.panel->id);
    }
  }

private:
  // Every nail, lean included, within the column.
  void onColumn(const Ground& ground, double up) {
    if (strap_.nails.empty())
      return;
    if (!strap_.column) {
      blocks_.closed(RuleId::StrapColumn, ground.s);
      return;
    }
    const ColumnBody& column = layout_.columns[*strap_.column];
    const double radius = strap_.type->nails.nailDiameter / 2;
    Interval kept{-1e9, 1e9}, plumb = kept;
    for (const NailBody& nail : strap_.nails) {
      if (under(nail.z + up - radius, column.box.z.from) || over(nail.z + up + radius, column.box.z.to))
        kept = {0, -1};
      const double along = nail.s - now_;
      kept = overlap(kept, grown({column.box.s.from - along, column.box.s.to - along}, -radius));
      const double standOff = std::abs(strap_.lean) * (nail.z - strap_.joint);
      Interval& room = plumb;
      if (strap_.lean > 0)
        room.to = std::min(room.to, column.box.s.to - along - radius - standOff);
      if (strap_.lean < 0)
        room.from = std::max(room.from, column.box.s.from - along + radius + standOff);
    }
    blocks_.allBut(RuleId::StrapColumn, kept, ground.s, column.id);
    blocks_.allBut(RuleId::StrapLean, plumb, ground.s, column.id);
  }

  // The exposed plate leans from the joint line up; both ends of what is beside the opening count.
  void openings(const Ground& ground, double up) {
    const Interval plate{strap_.plate.z.from + up, strap_.plate.z.to + up};
    const double joint = strap_.joint + up;
    for (const Opening& opening : layout_.wall->openings) {
      const double foot = opening.kind == OpeningKind::Window ? opening.sillHeight : -1e9;
      const Interval z = overlap(plate, {foot, opening.headHeight});
      if (z.length() < tolerance::same)
        continue;
      for (const double height : {z.from, z.to}) {
        const double lean = strap_.lean * (height - joint);
        const Interval inside{opening.from - lean, opening.to - lean};
        blocks_.open(RuleId::StrapLeanOpening,
                     overlap(grown(inside, strap_.type->plateWidth / 2), grown(ground.s, 2 * tolerance::same)),
                     opening.id);
      }
    }
  }

  static Interval reachOf(const PanelEnd& end) {
    const Panel& panel = *end.panel;
    const double middle = (panel.from + panel.to) / 2;
    return end.side == Side::Left ? Interval{panel.from, std::min(middle, panel.from + endReach)}
                                  : Interval{std::max(middle, panel.to - endReach), panel.to};
  }

  bool anotherHolds(const PanelEnd& end) const {
    return std::any_of(layout_.straps.begin(), layout_.straps.end(), [&](const StrapBody& other) {
      return other.id != strap_.id && grown(reachOf(end), tolerance::same).contains(other.strap->station);
    });
  }

  const Site& site_;
  const WallLayout& layout_;
  const StrapBody& strap_;
  Blocks& blocks_;
  double now_;
};

} // namespace

void blockStrap(const Site& site, const StrapBody& strap, Blocks& blocks) {
  StrapBlocks(site, strap, blocks).all();
  blockBySteel(site, strap, blocks);
  blockByConcrete(site, strap, blocks);
}

void blockByPanelEnds(const Site& site, const StrapBody& strap, Blocks& blocks) {
  StrapBlocks(site, strap, blocks).panelEnds();
}

} // namespace sillwright
