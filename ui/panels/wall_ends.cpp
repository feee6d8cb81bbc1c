#include "ui/panels/wall_ends.h"

#include <algorithm>
#include <cmath>

#include "core/model/lookup.h"

namespace sillwright {

namespace {

constexpr double columnReach = 12; // in
constexpr double strapReach = 6;

const ColumnBody* columnAt(const WallLayout& layout, double station) {
  const ColumnBody* nearest = nullptr;
  double least = columnReach;
  for (const ColumnBody& column : layout.columns) {
    if (column.role == ColumnRole::Trimmer)
      continue;
    const double away = std::max(gap(column.box.s, {station, station}), 0.0);
    if (away < least) {
      least = away;
      nearest = &column;
    }
  }
  return nearest;
}

void takeHardware(const WallLayout& layout, double station, WallEnd& end) {
  const StrapBody* nearest = nullptr;
  double least = strapReach;
  for (const StrapBody& strap : layout.straps) {
    const double away = end.column && strap.strap->column == end.column ? 0 : std::abs(strap.strap->station - station);
    if (away < least) {
      least = away;
      nearest = &strap;
    }
  }
  if (nearest) {
    end.hardware = nearest->id;
    end.hardwareMark = nearest->strap->mark;
    end.hardwareKind = tradeName(PieceKind::Strap);
    end.station = nearest->strap->station;
    return;
  }
  for (const AnchorBody& anchor : layout.anchors)
    if (anchor.isRod && end.column && anchor.rod->column == end.column) {
      end.hardware = anchor.id;
      end.hardwareMark = anchor.rod->mark;
      end.hardwareKind = tradeName(PieceKind::Rod);
      end.station = anchor.station;
    }
}

std::optional<Level> worstOf(const Findings& findings, const WallEnd& end) {
  std::optional<Level> worst;
  for (const Finding& finding : findings) {
    if (finding.pieces.empty())
      continue;
    const Id first = finding.pieces.front();
    if (first && (first == end.hardware || first == end.column) && (!worst || finding.level < *worst))
      worst = finding.level;
  }
  return worst;
}

} // namespace

std::vector<WallEnd> wallEnds(const CheckedWall& wall) {
  std::vector<const Panel*> panels;
  for (const Panel& panel : wall.layout.wall->panels)
    panels.push_back(&panel);
  std::stable_sort(panels.begin(), panels.end(), [](const Panel* a, const Panel* b) { return a->from < b->from; });
  std::vector<WallEnd> ends;
  for (const Panel* panel : panels)
    for (const Side side : {Side::Left, Side::Right}) {
      const double station = side == Side::Left ? panel->from : panel->to;
      WallEnd end;
      end.panel = panel->id;
      end.panelMark = panel->mark;
      end.end = side;
      if (const ColumnBody* column = columnAt(wall.layout, station)) {
        end.column = column->id;
        end.columnMakeUp = print(column->makeUp);
      }
      takeHardware(wall.layout, station, end);
      end.worst = worstOf(wall.findings, end);
      ends.push_back(std::move(end));
    }
  return ends;
}

} // namespace sillwright
