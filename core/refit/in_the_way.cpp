#include "core/refit/in_the_way.h"

#include <algorithm>

#include "core/model/lookup.h"

namespace sillwright {

namespace {

std::string stopWords(const WallLine& wall, const Blocked& stop) {
  using R = RuleId;
  const auto piece = findPiece(wall, stop.by);
  const std::string name = piece ? markOf(*piece) : std::string();
  const auto with = [&](const char* words) { return name.empty() ? std::string(words) : words + (" " + name); };
  switch (stop.rule) {
  case R::StrapEdge:
    return "end of the concrete";
  case R::StrapLean:
    return with("leans off");
  case R::StrapColumn:
    return with("nails off");
  case R::StrapLeanOpening:
  case R::BoltOpening:
  case R::RodOpening:
    return with("opening");
  case R::StrapSteel:
  case R::BoltSteel:
  case R::RodSteel:
    return with("bar");
  case R::StrapDepth:
    return "bottom of the concrete";
  case R::StrapBack:
    return "inside face";
  case R::StrapMissing:
    return with("end of panel");
  case R::BoltCount:
    return "bolts of the sill";
  case R::BoltEndFar:
    return "far from the sill end";
  case R::BoltEndNear:
    return "near the sill end";
  case R::BoltSpacing:
    return with("spacing to");
  case R::BoltThird:
    return "middle third";
  case R::BoltStud:
    return name.empty() ? std::string("stud") : with("column");
  case R::BoltStrap:
    return piece && kindOf(*piece) == PieceKind::Strap ? with("strap") : with("anchor");
  case R::BoltSplice:
    return "splice";
  case R::BoltGap:
    return with("gap to");
  case R::BoltHook:
    return "hook";
  case R::WasherSheathing:
    return "sheathed edge";
  case R::WasherSill:
    return "washer off the sill";
  case R::WasherColumn:
    return with("washer at");
  case R::WasherWasher:
    return with("washer of");
  case R::RodOffset:
    return "bracket";
  default:
    return {};
  }
}

} // namespace

std::string inTheWay(const WallLayout& layout, const ResolvedLimits& limits, Id piece) {
  const auto at = stationOf(*layout.wall, piece);
  std::vector<std::string> reasons;
  for (const Blocked& each : at ? blockedStretches(layout, limits, piece) : std::vector<Blocked>{}) {
    if (*at <= each.stations.from || *at >= each.stations.to)
      continue;
    std::string words = stopWords(*layout.wall, each);
    if (std::find(reasons.begin(), reasons.end(), words) == reasons.end())
      reasons.push_back(std::move(words));
  }
  std::string all;
  for (const std::string& reason : reasons)
    all += (all.empty() ? "" : ", ") + reason;
  return all;
}

} // namespace sillwright
