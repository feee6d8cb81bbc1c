// Where findings are, in words.
#include "core/model/lookup.h"
#include "core/rules/word_parts.h"
#include "core/rules/wording.h"

namespace sillwright {

namespace {

using R = RuleId;

// Where the measure falls short, in words.
std::string placeWords(const Job& job, const Finding& f) {
  const std::string other = nameOf(job, f, 1);
  switch (f.rule) {
  case R::StrapEdge:
    return "plate to " + edgeWords(f);
  case R::StrapJoint:
    return f.variant == 1 ? "joint line below the pour line" : "joint line above the pour line";
  case R::StrapPair:
    return "joint not level with " + other;
  case R::StrapLean:
  case R::StrapColumn:
    return other.empty() ? "no column behind it" : "nails past " + other;
  case R::StrapNailEdge:
    return "nails near a ply edge of " + other;
  case R::StrapSeam:
    return "nail row on the seam of " + other;
  case R::StrapSteel:
  case R::BoltSteel:
    return "beside bar " + other;
  case R::BoltStrap:
    return "beside " + other;
  case R::StrapDepth:
    return "hook to the bottom of the concrete";
  case R::StrapBack:
    return "hook to the inside face";
  case R::StrapHang:
    return "hanger on the form board";
  case R::StrapMissing:
  case R::PanelEnds:
    return f.variant == 0 ? "left end of the panel" : "right end of the panel";
  case R::StrapNailDepth:
    return "nails in " + other;
  case R::PanelSlender:
    return "middle of the panel";
  case R::BoltCount:
    return "piece of sill";
  case R::BoltEndFar:
  case R::BoltEndNear:
    return f.variant == 0 ? "bolt to the left end of its sill piece" : "bolt to the right end of its sill piece";
  case R::BoltSpacing:
    return "between " + other + " and " + nameOf(job, f, 0);
  case R::BoltThird:
    return "bolt across the sill";
  case R::BoltEmbed:
    return "bolt in the concrete";
  case R::BoltThread:
    return "thread above the sill";
  case R::BoltRunOut:
    return "thread under the nut";
  case R::BoltGap:
    return "beside " + other;
  case R::BoltCover:
    return "bolt to " + faceWords(f);
  case R::BoltHook:
    return "hook of the bolt";
  case R::BoltMatch:
    return "top of the bolt";
  case R::BoltStud:
    return "under lumber";
  case R::BoltSplice:
    return "splice of the sill";
  case R::WasherSheathing:
    return f.variant == 0 ? "washer to the sheathed outside edge" : "washer to the sheathed inside edge";
  case R::WasherSill:
    return f.variant == 4 ? "beyond the sill" : "edge of the sill";
  case R::WasherColumn:
    return "washer at " + other;
  case R::WasherWasher:
  case R::ColumnOverlap:
    return "with " + other;
  case R::ColumnSill:
    return "foot of the column";
  case R::BarCover:
    return "bar to " + faceWords(f);
  case R::PourForm:
    return "form boards";
  case R::StrapPlumb:
  case R::RodPlumb:
    return "out of plumb as read";
  case R::StrapType:
    return f.variant == 0 ? "type of the strap" : "column behind the strap";
  case R::StrapCapacity:
    return "strap at its mark";
  case R::BoltShear:
    return "bolts under the panel";
  case R::WasherSize:
    return "plate washer";
  case R::WasherSlot:
    return f.variant == 3 ? "washer slid on its bolt" : "slot of the washer";
  case R::RodOffset:
    return "rod to the line of its bracket";
  case R::RodEdge:
  case R::RodCover:
    return "rod to " + faceWords(f);
  case R::RodEmbed:
    return "rod in the concrete";
  case R::RodThread:
    return "thread above the sill";
  case R::RodSteel:
    return "beside bar " + other;
  case R::ColumnPlan:
    return "column at the panel end";
  case R::PanelLever:
    return "between the hold-downs of the panel";
  case R::PanelTie:
    return f.variant == 0 ? "left end of the panel" : "right end of the panel";
  case R::SillCorner:
    return f.variant % 2 == 0 ? "corner on the left" : "corner on the right";
  case R::SillConcrete:
    return f.variant < 4 ? "sill past the concrete" : "sill over the pour line";
  case R::SillMark:
  case R::SillPiece:
    return "piece of sill";
  case R::BarClear:
    return "beside bar " + other;
  case R::BarTop:
    return "top of the concrete";
  case R::BarOpening:
    return f.variant % 2 == 0 ? "left of the opening" : "right of the opening";
  case R::PourShot:
    return "top of the concrete at the shot";
  case R::PourLevel:
    return "between the two shots";
  case R::FormSquare:
    return "diagonal of the forms";
  case R::FormThickness:
    return "between the form boards";
  default:
    return "in opening " + other;
  }
}

double stationOfRegion(const Finding& f) {
  if (f.rule == R::StrapMissing || f.rule == R::PanelEnds || f.rule == R::PanelTie)
    return f.variant == 0 ? f.region.s.from : f.region.s.to;
  return f.region.s.middle();
}

// A piece that stands in one place is there; of one that runs along the wall only the part found counts.
std::optional<double> ownStation(const WallLine& wall, Id id) {
  const auto piece = findPiece(wall, id);
  if (!piece)
    return std::nullopt;
  switch (kindOf(*piece)) {
  case PieceKind::Column:
  case PieceKind::Strap:
  case PieceKind::Bolt:
  case PieceKind::Rod:
    return stationOf(wall, id);
  case PieceKind::Bar:
    return std::get<Bar>(*piece).run == BarRun::Upright ? stationOf(wall, id) : std::nullopt;
  default:
    return std::nullopt;
  }
}

} // namespace

std::string whatFallsShort(const Job& job, const Finding& f) {
  return placeWords(job, f);
}

std::string whereabouts(const Job& job, const Finding& f) {
  const WallLine* wall = job.walls.find(f.wall);
  const auto own = wall && !f.pieces.empty() ? ownStation(*wall, f.pieces.front()) : std::nullopt;
  const double station = own ? *own : stationOfRegion(f);
  return placeWords(job, f) + ", at " + printLength(station, job.units);
}

} // namespace sillwright
