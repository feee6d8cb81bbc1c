#include "core/gesture/wall_ends.h"

#include <algorithm>
#include <cmath>

#include "core/model/lookup.h"
#include "core/rules/panel_ends.h"

namespace sillwright {

namespace {

std::optional<Level> worstOf(const Findings& findings, const WallEnd& end) {
  std::optional<Level> worst;
  for (const Finding& finding : findings) {
    if (finding.pieces.empty())
      continue;
    const Id first = finding.pieces.front();
    const bool ofTheEnd = finding.rule == RuleId::StrapMissing || finding.rule == RuleId::PanelEnds;
    const bool missing =
        ofTheEnd && first == end.panel && finding.variant == static_cast<std::uint8_t>(end.end == Side::Right);
    if (first && (missing || first == end.hardware || first == end.column) && (!worst || finding.level < *worst))
      worst = finding.level;
  }
  return worst;
}

} // namespace

namespace {

WallEnd standing(const WallLine& wall, const PanelEnd& at) {
  WallEnd end;
  end.wall = wall.id;
  end.wallMark = wall.mark;
  end.panel = at.panel->id;
  end.panelMark = at.panel->mark;
  end.end = at.side;
  end.mark = at.side == Side::Left ? at.panel->leftMark : at.panel->rightMark;
  if (at.column) {
    end.column = at.column->id;
    end.columnMakeUp = print(at.column->makeUp);
  }
  if (at.strap) {
    end.hardware = at.strap->id;
    end.hardwareMark = at.strap->strap->mark;
    end.hardwareKind = tradeName(PieceKind::Strap);
    end.station = at.strap->strap->station;
  } else if (at.rod) {
    end.hardware = at.rod->id;
    end.hardwareMark = at.rod->rod->mark;
    end.hardwareKind = tradeName(PieceKind::Rod);
    end.station = at.rod->station;
  }
  return end;
}

} // namespace

std::vector<WallEnd> wallEnds(const WallLayout& layout) {
  std::vector<WallEnd> ends;
  for (const PanelEnd& at : panelEnds(layout))
    ends.push_back(standing(*layout.wall, at));
  return ends;
}

std::vector<WallEnd> wallEnds(const CheckedWall& wall) {
  std::vector<WallEnd> ends = wallEnds(wall.layout);
  for (WallEnd& end : ends)
    end.worst = worstOf(wall.findings, end);
  return ends;
}

} // namespace sillwright
