#include "core/rules/sheathed_edge.h"

#include <algorithm>

#include "core/rules/measure.h"

namespace sillwright {

std::vector<SheathedEdge> sheathedEdges(const WallLayout& layout, const AnchorBody& bolt, double strongFrom) {
  std::vector<SheathedEdge> edges;
  if (bolt.isRod || !bolt.washerBox || !bolt.sillPiece)
    return edges;
  const Interval sill = layout.sills[*bolt.sillPiece].box.d;
  const Interval washer = bolt.washerBox->d;
  for (const Sheathing side : {Sheathing::Outside, Sheathing::Inside}) {
    const bool outside = side == Sheathing::Outside;
    SheathedEdge edge{outside, outside ? Interval{sill.from, washer.from} : Interval{washer.to, sill.to}, false};
    bool any = false;
    for (const Panel& panel : layout.wall->panels) {
      if ((panel.sheathing != side && panel.sheathing != Sheathing::Both) ||
          !Interval{panel.from, panel.to}.contains(bolt.station))
        continue;
      any = true;
      edge.strong = edge.strong || (panel.unitShear && over(*panel.unitShear, strongFrom));
    }
    if (any)
      edges.push_back(edge);
  }
  return edges;
}

} // namespace sillwright
