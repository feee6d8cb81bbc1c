// What keeps a rod from standing somewhere along its wall: its bracket, openings, steel and other anchors.
#include "core/refit/site.h"
#include "core/refit/steel_in_the_way.h"
#include "core/rules/measure.h"

namespace sillwright {

void blockRod(const Site& site, const AnchorBody& rod, Blocks& blocks) {
  const WallLayout& layout = site.layout;
  if (rod.rodType->bracketOffset > 0) {
    const double toRight = rod.rod->side == Side::Right ? 1 : -1;
    const double wanted = rod.station - toRight * (rod.rod->offset - rod.rodType->bracketOffset);
    blocks.allBut(RuleId::RodOffset, around(wanted, 2 * site.limits[LimitKey::RodOffset]), site.whole, rod.rod->column);
  }
  for (const Opening& opening : layout.wall->openings)
    if (opening.kind != OpeningKind::Window)
      blocks.open(RuleId::RodOpening, grown({opening.from, opening.to}, rod.diameter / 2), opening.id);
  blockByGaps(site, rod, blocks);
  blockBySteel(site, rod, blocks);
}

} // namespace sillwright
