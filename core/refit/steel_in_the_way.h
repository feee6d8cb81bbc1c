// Cast-in steel against cast-in steel, and against the faces of the concrete, along the wall.
#pragma once

#include "core/refit/site.h"

namespace sillwright {

// Bars, straps and the other kind of anchors, at every height of the pour line that the wall has.
void blockBySteel(const Site& site, const AnchorBody& anchor, Blocks& blocks);
void blockBySteel(const Site& site, const StrapBody& strap, Blocks& blocks);
// Straps and anchors. A bar stays at its height.
void blockBySteel(const Site& site, const BarBody& bar, Blocks& blocks);

// Other anchors, by the distance between the axes.
void blockByGaps(const Site& site, const AnchorBody& anchor, Blocks& blocks);

// Where the hook of a bolt would come out of the concrete.
void blockByConcrete(const Site& site, const AnchorBody& bolt, Blocks& blocks);
// Where a strap would come too near to the ends and steps, or its hook out of the bottom or the inside face.
void blockByConcrete(const Site& site, const StrapBody& strap, Blocks& blocks);

// Where a bar would have too little concrete over it.
void blockByConcrete(const Site& site, const BarBody& bar, Blocks& blocks);

} // namespace sillwright
