#include "core/drawing/in_hand.h"

namespace sillwright {

std::string_view words(SnapReason reason) {
  switch (reason) {
  case SnapReason::None:
    return "";
  case SnapReason::TapeMark:
    return "tape mark";
  case SnapReason::ColumnCentre:
    return "column centre";
  case SnapReason::PairHeight:
    return "level with its pair";
  case SnapReason::PourLine:
    return "pour line";
  case SnapReason::BarMiddle:
    return "middle between bars";
  case SnapReason::StudMiddle:
    return "middle between studs";
  case SnapReason::WallEnd:
    return "wall end";
  case SnapReason::OpeningEdge:
    return "opening edge";
  case SnapReason::CornerLine:
    return "in line with a corner";
  case SnapReason::FirstCorner:
    return "the first corner";
  case SnapReason::LastCorner:
    return "the last corner";
  case SnapReason::WallFace:
    return "face of a wall";
  case SnapReason::SquareCorner:
    return "square to the wall before";
  }
  return "";
}

} // namespace sillwright
