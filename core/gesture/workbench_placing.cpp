// A piece of the shelf on its way to a place.
#include "core/edit/operations.h"
#include "core/gesture/workbench_held.h"

namespace sillwright {

bool Workbench::beginPlace(const std::string& shelfKey, const PointerAt& pointer) {
  cancel();
  const auto shown = wall();
  if (!shown || pointer.canvas != CanvasKind::Elevation)
    return false;
  const auto piece = newPiece(session_.base(), shown->layout, shelfKey, pointer.at.s, pointer.reach);
  if (!piece && piece.problem().place == "shelf")
    return false;
  held_ = std::make_unique<Held>();
  held_->shelfKey = shelfKey;
  held_->moving = true;
  held_->grip.newPiece = true;
  held_->grip.layout = shown->layout;
  held_->grip.start = pointer;
  held_->token = session_.beginPreview();
  dragPlace(pointer);
  return held_ != nullptr;
}

void Workbench::dragPlace(const PointerAt& pointer) {
  if (!holding() || !held_->grip.newPiece)
    return;
  Grip& grip = held_->grip;
  const auto piece = newPiece(session_.settled(), grip.layout, held_->shelfKey, pointer.at.s, pointer.reach);
  if (!piece) { // it cannot stand here: nothing is shown but why
    grip.grabbed = {};
    InHand hand;
    hand.kind = InHand::Kind::Place;
    hand.station = pointer.at.s;
    hand.problem = piece.problem().message;
    inHand_ = std::move(hand);
    held_->refused = true;
    session_.preview(session_.settled());
    return;
  }
  if (!grip.grabbed.piece) {
    auto [job, id] = addPiece(session_.base(), session_.wall(), *piece);
    grip.base = std::move(job);
    grip.grabbed = {session_.wall(), id};
    grip.pieces = {grip.grabbed};
    grip.offered = slotsFor(grip);
  } else { // the same id and mark at another place, without looking at the whole job again
    Piece again = *piece;
    const auto placed = findPiece(grip.base, grip.grabbed);
    std::visit(
        [&](auto& item) {
          item.id = grip.grabbed.piece;
          item.mark = markOf(*placed);
        },
        again);
    grip.base = replacePiece(grip.base, grip.grabbed.wall, again);
  }
  const WallLine* line = grip.base.walls.find(grip.grabbed.wall);
  grip.before = stationOf(*line, grip.grabbed.piece).value_or(pointer.at.s);
  grip.start = pointer;
  show(moveTo(grip, pointer));
  held_->refused = false;
}

void Workbench::dropPlace(const PointerAt& pointer) {
  dragPlace(pointer);
  if (!holding() || !held_->grip.newPiece)
    return;
  const bool refused = held_->refused || !held_->grip.grabbed.piece;
  if (!refused) {
    land();
    if (held_->shelfKey == "panel")
      session_.preview(withEndsLaidOut(job(), held_->grip.grabbed));
  }
  const std::string name = held_->name;
  const Selection selection = held_->grip.pieces;
  letGo();
  if (refused)
    session_.dropPreview();
  else
    session_.commitPreview(name, selection);
  tellGesture();
}

bool Workbench::placeAt(const std::string& shelfKey, double station) {
  PointerAt pointer;
  pointer.at.s = station;
  pointer.reach = 3;
  if (!beginPlace(shelfKey, pointer))
    return false;
  const bool placed = held_->grip.grabbed.piece && !held_->refused;
  dropPlace(pointer);
  return placed;
}

std::vector<ShelfItem> Workbench::shelf() const { return shelfOf(job()); }

} // namespace sillwright
