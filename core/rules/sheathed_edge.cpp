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

Interval boltWindow(double sillWidth, double washerAcross, double limit) {
  const double half = washerAcross / 2;
  return {std::max(sillWidth / 3, half), std::min(2 * sillWidth / 3, half + limit)};
}

std::vector<Correction> washersThatReach(const WallLayout& layout, const AnchorBody& bolt, const SheathedEdge& edge,
                                         double limit) {
  const Interval sill = layout.sills[*bolt.sillPiece].box.d;
  const double axis = edge.outside ? bolt.depth - sill.from : sill.to - bolt.depth; // from the sheathed edge
  std::optional<Correction> slid, larger;
  double slidWidth = 0, largerWidth = 0;
  for (const WasherType& type : layout.types->washers) {
    const bool across = type.slot && type.slot->direction == SlotDirection::Across;
    const double room = across ? std::max(0.0, (type.slot->length - bolt.diameter) / 2) : 0;
    const double missing = axis - type.across / 2 - limit; // that it has to be slid to reach
    const double shift = std::max(0.0, byToMark(0, missing));
    const bool reaches = type.id != bolt.bolt->washer && !over(shift, room) && !under(axis - shift, type.across / 2);
    std::optional<Correction>& best = across ? slid : larger;
    double& width = across ? slidWidth : largerWidth;
    if (!reaches || (best && type.across >= width))
      continue;
    best = Correction{Correction::Field::Washer, bolt.id, edge.outside ? -shift : shift, type.id};
    width = type.across;
  }
  std::vector<Correction> ways;
  for (const auto& way : {slid, larger})
    if (way)
      ways.push_back(*way);
  return ways;
}

} // namespace sillwright
