// Actions on what is selected, each one undo step.
#include <algorithm>

#include "core/edit/fields.h"
#include "core/edit/operations.h"
#include "core/gesture/workbench_held.h"
#include "core/rules/correction.h"
#include "core/rules/wording.h"

namespace sillwright {

void Workbench::nudge(double along, double up) {
  cancel();
  Selection pieces = session_.selection();
  std::erase_if(pieces, [](const PieceRef& ref) { return !ref.piece; });
  if (pieces.empty())
    return;
  const Job base = session_.base();
  const Interval room = roomAlong(base, pieces);
  const double by = std::clamp(along, std::min(room.from, 0.0), std::max(room.to, 0.0));
  session_.apply(movePieces(base, pieces, by, 0, up), moveName(base, pieces, "Nudge", by, 0, up));
}

void Workbench::removeSelected() {
  cancel();
  Selection pieces = session_.selection();
  if (pieces.empty())
    return;
  const std::string name =
      "Remove " + (pieces.size() == 1 ? calledIn(job(), pieces.front()) : std::to_string(pieces.size()) + " pieces");
  session_.apply(removePieces(session_.base(), pieces), name, {});
}

void Workbench::selectNext(bool backwards) {
  const auto shown = wall();
  if (!shown)
    return;
  const WallLine& line = *shown->layout.wall;
  std::vector<Id> order = piecesOf(line);
  std::stable_sort(order.begin(), order.end(), [&](Id a, Id b) {
    return stationOf(line, a).value_or(0) < stationOf(line, b).value_or(0);
  });
  if (order.empty())
    return;
  const Selection& selection = session_.selection();
  const auto at = selection.empty() ? order.end() : std::find(order.begin(), order.end(), selection.back().piece);
  std::size_t next = backwards ? order.size() - 1 : 0;
  if (at != order.end()) {
    const auto i = static_cast<std::size_t>(at - order.begin());
    next = backwards ? (i + order.size() - 1) % order.size() : (i + 1) % order.size();
  }
  session_.select({{line.id, order[next]}});
}

void Workbench::selectAllOfKind() {
  const Selection& selection = session_.selection();
  const auto first = selection.empty() ? std::nullopt : findPiece(job(), selection.front());
  const WallLine* line = selection.empty() ? nullptr : job().walls.find(selection.front().wall);
  if (!first || !line)
    return;
  Selection all;
  for (const Id id : piecesOf(*line))
    if (kindOf(*findPiece(*line, id)) == kindOf(*first))
      all.push_back({line->id, id});
  session_.select(std::move(all));
}

void Workbench::applyCorrection(const Finding& finding) {
  if (const auto way = firstWay(finding))
    applyWay(finding, *way);
}

void Workbench::applyWay(const Finding& finding, const Correction& way) {
  cancel();
  const WallLine* line = job().walls.find(finding.wall);
  if (!line)
    return;
  const PieceRef piece{finding.wall, way.piece};
  session_.apply(replaceWall(session_.base(), corrected(*line, way)),
                 "Put right " + calledIn(job(), piece) + ": " + wayShort(job(), finding, way), {piece});
}

void Workbench::goTo(const Finding& finding) {
  cancel();
  session_.show(finding.wall);
  session_.select({{finding.wall, finding.pieces.empty() ? Id{} : finding.pieces.front()}});
}

std::optional<Problem> Workbench::setFieldOfSelected(std::string_view key, std::string_view typed) {
  cancel();
  Job changed = session_.base();
  std::string title(key);
  bool any = false;
  for (const PieceRef& ref : session_.selection()) {
    const auto fields = fieldsOf(changed, ref);
    const auto field = std::find_if(fields.begin(), fields.end(), [key](const Field& f) { return f.key == key; });
    if (field == fields.end())
      continue;
    auto result = setField(changed, ref, key, typed);
    if (!result)
      return result.problem();
    title = field->title;
    changed = std::move(result.value());
    any = true;
  }
  if (any) {
    const Selection& selection = session_.selection();
    session_.apply(std::move(changed),
                   "Set " + title + " of " +
                       (selection.size() == 1 ? calledIn(job(), selection.front()) : std::to_string(selection.size()) + " pieces"));
  }
  return std::nullopt;
}

} // namespace sillwright
