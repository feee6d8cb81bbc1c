#include "core/gesture/workbench.h"

#include <algorithm>
#include <cmath>

#include "core/edit/operations.h"
#include "core/gesture/workbench_held.h"

namespace sillwright {

namespace {

bool contains(const Selection& selection, PieceRef ref) {
  return std::find(selection.begin(), selection.end(), ref) != selection.end();
}

// Which end of its stretch a handle holds.
std::optional<Side> endOf(const HitArea& hit) {
  if (hit.part == HitArea::Part::FromEnd)
    return Side::Left;
  return hit.part == HitArea::Part::ToEnd ? std::optional(Side::Right) : std::nullopt;
}

double endStation(const Job& job, PieceRef ref, Side end) {
  const WallLine* wall = job.walls.find(ref.wall);
  const auto s = wall ? stationsOf(job, *wall, ref.piece) : std::nullopt;
  return !s ? 0 : end == Side::Left ? s->from : s->to;
}

} // namespace

Workbench::Workbench(Job job) : session_(std::move(job)) {
  checker_.update(session_.job());
  session_.listen([this](const Notice& notice) { follow(notice); });
  const auto tellRefit = [this] {
    WorkNotice notice;
    notice.refit = true;
    tell(notice);
  };
  refitDesk_.listen([this, tellRefit] {
    jobRefitDesk_.hear(refitDesk_);
    tellRefit();
  });
  jobRefitDesk_.listen(tellRefit);
}

Workbench::~Workbench() = default;

void Workbench::listen(Listener listener) { listeners_.push_back(std::move(listener)); }

void Workbench::tell(const WorkNotice& notice) {
  for (const Listener& listener : listeners_)
    listener(notice);
}

void Workbench::tellGesture() {
  WorkNotice notice;
  notice.gesture = true;
  tell(notice);
}

// The session changed: findings follow, and a gesture whose preview somebody else ended lets go.
void Workbench::follow(const Notice& notice) {
  WorkNotice work;
  work.session = notice;
  if (held_ && held_->moving && held_->grip.kind != InHand::Kind::RubberBand &&
      (!session_.previewing() || session_.token() != held_->token)) {
    held_.reset();
    inHand_.reset();
    typed_.clear();
    typedProblem_.clear();
    work.gesture = true;
  }
  if (notice.file)
    pen_.reset();
  else if (pen_ && notice.job && !session_.previewing())
    sillwright::follow(*pen_, session_.base(), session_.wall());
  if (notice.job || notice.file)
    work.checked = checker_.update(session_.job());
  work.gesture = work.gesture || inHand_.has_value();
  tell(work);
  refitDesk_.follow();
  jobRefitDesk_.follow(work.checked, notice.file);
}

void Workbench::lookAtListed(std::size_t row) {
  if (jobRefitDesk_.isBusy() || row >= jobRefitDesk_.rows().size())
    return;
  const JobRefitRow listed = jobRefitDesk_.rows()[row];
  if (!job().walls.find(listed.id()))
    return;
  cancel();
  session_.show(listed.id());
  refitDesk_.open(RefitDesk::Aim::LeastMoved,
                  listed.now == JobRefitRow::Now::AsAsked ? listed.changes : std::vector<RefitRow>{});
}

bool Workbench::holding() {
  if (held_ && held_->moving && held_->grip.kind != InHand::Kind::RubberBand && session_.token() != held_->token)
    letGo();
  return held_ != nullptr;
}

void Workbench::letGo() {
  held_.reset();
  inHand_.reset();
  typed_.clear();
  typedProblem_.clear();
}

void Workbench::cancel() {
  if (!held_ && typed_.empty())
    return;
  const bool preview = held_ && held_->moving && session_.previewing() && session_.token() == held_->token;
  letGo();
  if (preview)
    session_.dropPreview();
  tellGesture();
}

// ---- press, drag, release -------------------------------------------------------------------------------------------
void Workbench::press(const PointerAt& pointer) {
  cancel();
  if (pen_ && pointer.canvas == CanvasKind::Plan)
    return pressPen(pointer);
  const bool wallHit = pointer.hit && (pointer.hit->part == HitArea::Part::Body || pointer.hit->part == HitArea::Part::Name);
  if (pointer.canvas == CanvasKind::Plan && wallHit) {
    session_.show(pointer.hit->piece.wall);
    session_.select({{pointer.hit->piece.wall, {}}});
    return;
  }
  if (pointer.hit) {
    pressPiece(pointer);
    return;
  }
  if (!pointer.keys.control)
    session_.select({});
  if (pointer.canvas != CanvasKind::Elevation || !wall())
    return;
  held_ = std::make_unique<Held>();
  held_->grip.kind = InHand::Kind::RubberBand;
  held_->grip.start = pointer;
  held_->grip.pieces = session_.selection();
}

void Workbench::pressPiece(const PointerAt& pointer) {
  const HitArea& hit = *pointer.hit;
  const bool corner = hit.part == HitArea::Part::Corner;
  Selection selection = session_.selection();
  const bool already = contains(selection, hit.piece);
  if (!corner) {
    if (pointer.keys.control && already)
      std::erase(selection, hit.piece);
    else if (pointer.keys.control)
      selection.push_back(hit.piece);
    else if (!already)
      selection = {hit.piece};
    session_.select(selection);
  }
  if (hit.part == HitArea::Part::Label || (!corner && !contains(session_.selection(), hit.piece)))
    return;
  if (!corner && !wall())
    return;
  held_ = std::make_unique<Held>();
  Grip& grip = held_->grip;
  grip.start = pointer;
  grip.grabbed = hit.piece;
  grip.base = session_.base();
  held_->onlyClick = already && !pointer.keys.control;
  if (corner) { // without one it is the handle in the middle of the wall
    grip.kind = hit.piece.piece ? InHand::Kind::Corner : InHand::Kind::Wall;
    return;
  }
  grip.layout = wall()->layout;
  if (const auto end = endOf(hit)) {
    grip.kind = InHand::Kind::Resize;
    grip.end = *end;
    grip.before = endStation(grip.base, hit.piece, *end);
    grip.pieces = {hit.piece};
    return;
  }
  grip.kind = InHand::Kind::Move;
  grip.pieces = session_.selection();
  std::erase_if(grip.pieces, [](const PieceRef& ref) { return !ref.piece; });
  const WallLine* line = grip.base.walls.find(hit.piece.wall);
  grip.before = line ? stationOf(*line, hit.piece.piece).value_or(0) : 0;
}

void Workbench::show(Shown shown) {
  shown.hand.typed = typed_;
  const bool onPlan = held_->grip.kind == InHand::Kind::Corner || held_->grip.kind == InHand::Kind::Wall;
  held_->refused = onPlan && !shown.hand.problem.empty();
  if (shown.hand.problem.empty())
    shown.hand.problem = typedProblem_;
  held_->name = shown.name;
  inHand_ = std::move(shown.hand);
  session_.preview(std::move(shown.job));
}

void Workbench::drag(const PointerAt& pointer) {
  hover(pointer);
  if (!holding())
    return;
  const Grip& grip = held_->grip;
  if (grip.kind == InHand::Kind::RubberBand)
    return dragBand(pointer);
  if (!held_->moving) {
    const double moved = pointer.canvas == CanvasKind::Plan
                             ? std::hypot(pointer.plan.x - grip.start.plan.x, pointer.plan.y - grip.start.plan.y)
                             : std::hypot(pointer.at.s - grip.start.at.s, pointer.at.z - grip.start.at.z,
                                          pointer.at.d - grip.start.at.d);
    if (moved < pointer.reach / 2)
      return;
    held_->moving = true;
    if (pointer.canvas == CanvasKind::Elevation)
      held_->grip.offered = slotsFor(grip);
    if (grip.kind == InHand::Kind::Corner || grip.kind == InHand::Kind::Wall)
      lookRound(held_->grip);
    held_->token = session_.beginPreview();
  }
  switch (grip.kind) {
  case InHand::Kind::Resize:
    return show(resizeTo(grip, pointer));
  case InHand::Kind::Corner:
    return show(cornerTo(grip, pointer));
  case InHand::Kind::Wall:
    return show(wallTo(grip, pointer));
  default:
    return show(moveTo(grip, pointer));
  }
}

void Workbench::land() {
  if (inHand_ && inHand_->landing)
    show(moveToStation(held_->grip, *inHand_->landing));
}

void Workbench::dragBand(const PointerAt& pointer) {
  held_->moving = true;
  const Point3 a = held_->grip.start.at, b = pointer.at;
  InHand hand;
  hand.kind = InHand::Kind::RubberBand;
  hand.band = std::pair{a, b};
  inHand_ = std::move(hand);
  Selection selection = held_->grip.pieces;
  if (const auto shown = wall())
    for (const PieceRef& ref : piecesIn(shown->layout, {std::min(a.s, b.s), std::max(a.s, b.s)},
                                        {std::min(a.z, b.z), std::max(a.z, b.z)}))
      if (!contains(selection, ref))
        selection.push_back(ref);
  session_.select(std::move(selection));
  tellGesture();
}

void Workbench::release(const PointerAt& pointer) {
  if (pen_ && pointer.canvas == CanvasKind::Plan)
    releasePen(pointer);
  if (!holding())
    return;
  if (held_->grip.kind == InHand::Kind::RubberBand || !held_->moving) {
    const bool click = held_->onlyClick && !held_->moving;
    const PieceRef piece = held_->grip.grabbed;
    letGo();
    if (click)
      session_.select({piece});
    return tellGesture();
  }
  if (held_->grip.newPiece)
    return dropPlace(pointer);
  land();
  const std::string name = held_->name;
  const bool refused = held_->refused;
  letGo();
  if (refused)
    session_.dropPreview();
  else
    session_.commitPreview(name);
  tellGesture();
}

} // namespace sillwright
