#include "core/gesture/workbench.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/edit/fields.h"
#include "core/edit/operations.h"
#include "core/gesture/held.h"
#include "core/rules/correction.h"
#include "core/rules/wording.h"

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

std::string utf8(char32_t c) {
  std::string out;
  if (c < 0x80) {
    out += static_cast<char>(c);
  } else if (c < 0x800) {
    out += static_cast<char>(0xC0 | (c >> 6));
    out += static_cast<char>(0x80 | (c & 0x3F));
  } else {
    out += static_cast<char>(0xE0 | ((c >> 12) & 0x0F));
    out += static_cast<char>(0x80 | ((c >> 6) & 0x3F));
    out += static_cast<char>(0x80 | (c & 0x3F));
  }
  return out;
}

void dropLast(std::string& text) {
  while (!text.empty() && (static_cast<unsigned char>(text.back()) & 0xC0) == 0x80)
    text.pop_back();
  if (!text.empty())
    text.pop_back();
}

// Signs a length can begin with, and can go on with.
bool beginsLength(char32_t key) { return (key >= U'0' && key <= U'9') || key == U'.' || key == U'½' || key == U'¼' || key == U'¾'; }

bool continuesLength(char32_t key) {
  static constexpr std::u32string_view signs = U" '\"/.-’′”″⁄½¼¾⅛⅜⅝⅞mcftin";
  return beginsLength(key) || signs.find(key) != std::u32string_view::npos;
}

} // namespace

struct Workbench::Held {
  Grip grip;
  std::size_t token = 0;
  bool moving = false;       // past the first few pixels: a preview runs
  bool onlyClick = false;    // a press that a release without a drag turns into a plain selection
  std::string shelfKey;
  std::string name;          // of the edit as now shown
  bool refused = false;      // what is shown cannot stay
};

Workbench::Workbench(Job job) : session_(std::move(job)) {
  checker_.update(session_.job());
  session_.listen([this](const Notice& notice) { follow(notice); });
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
  if (notice.job || notice.file)
    work.checked = checker_.update(session_.job());
  work.gesture = work.gesture || inHand_.has_value();
  tell(work);
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
  if (pointer.canvas == CanvasKind::Plan && pointer.hit && pointer.hit->part == HitArea::Part::Body) {
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
  if (corner) {
    grip.kind = InHand::Kind::Corner;
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
  if (shown.hand.problem.empty())
    shown.hand.problem = typedProblem_;
  held_->refused = held_->grip.kind == InHand::Kind::Corner && !shown.hand.problem.empty();
  held_->name = shown.name;
  inHand_ = std::move(shown.hand);
  session_.preview(std::move(shown.job));
}

void Workbench::drag(const PointerAt& pointer) {
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
    held_->token = session_.beginPreview();
  }
  switch (grip.kind) {
  case InHand::Kind::Resize:
    return show(resizeTo(grip, pointer));
  case InHand::Kind::Corner:
    return show(cornerTo(grip, pointer));
  default:
    return show(moveTo(grip, pointer));
  }
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
  const std::string name = held_->name;
  const bool refused = held_->refused;
  letGo();
  if (refused)
    session_.dropPreview();
  else
    session_.commitPreview(name);
  tellGesture();
}

// ---- from the shelf -------------------------------------------------------------------------------------------------
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

// ---- typing ---------------------------------------------------------------------------------------------------------
bool Workbench::typeKey(char32_t key) {
  const bool band = held_ && held_->grip.kind == InHand::Kind::RubberBand;
  const bool onePiece = session_.selection().size() == 1 && session_.selection().front().piece;
  const bool target = held_ ? held_->moving && !band && held_->grip.kind != InHand::Kind::Corner : onePiece;
  if (!target)
    return false;
  if (key == U'\r' || key == U'\n')
    return enterTyped();
  if (key == U'\x1b') {
    if (typed_.empty())
      return false;
    typed_.clear();
    typedProblem_.clear();
  } else if (key == U'\b') {
    if (typed_.empty())
      return false;
    dropLast(typed_);
    typedProblem_.clear();
  } else {
    if (!(typed_.empty() ? beginsLength(key) : continuesLength(key)))
      return false;
    typed_ += utf8(key);
    typedProblem_.clear();
  }
  if (inHand_) {
    inHand_->typed = typed_;
    inHand_->problem = typedProblem_;
  }
  tellGesture();
  return true;
}

bool Workbench::enterTyped() {
  if (typed_.empty())
    return false;
  const auto length = parseLength(typed_, job().units);
  const auto shown = wall();
  const double most = shown ? shown->layout.length : 0;
  if (!length)
    typedProblem_ = length.problem().text();
  else if (*length < 0 || *length > most)
    typedProblem_ = printLength(*length, job().units) + " is outside the wall (0 … " + printLength(most, job().units) + ")";
  if (!typedProblem_.empty()) {
    if (inHand_)
      inHand_->problem = typedProblem_;
    tellGesture();
    return true;
  }
  setTyped(*length);
  return true;
}

void Workbench::setTyped(double station) {
  typed_.clear();
  typedProblem_.clear();
  if (held_ && holding()) {
    const bool place = held_->grip.newPiece;
    show(held_->grip.kind == InHand::Kind::Resize ? resizeToStation(held_->grip, station)
                                                  : moveToStation(held_->grip, station));
    const std::string name = held_->name;
    const Selection selection = place ? held_->grip.pieces : session_.selection();
    letGo();
    session_.commitPreview(name, selection);
    return tellGesture();
  }
  const PieceRef piece = session_.selection().front();
  session_.apply(setStation(session_.base(), piece, station),
                 "Set " + calledIn(job(), piece) + " at " + printLength(station, job().units));
}

// ---- actions on the selection ---------------------------------------------------------------------------------------
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
  cancel();
  const WallLine* line = job().walls.find(finding.wall);
  if (!line || !finding.correction)
    return;
  const PieceRef piece{finding.wall, finding.correction->piece};
  session_.apply(replaceWall(session_.base(), corrected(*line, *finding.correction)),
                 "Put right " + calledIn(job(), piece) + ": " + correctionShort(job(), finding), {piece});
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
