#include "ui/canvas/plan_canvas.h"

#include <QPainter>
#include <QResizeEvent>

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/base/length.h"
#include "core/drawing/shown_pen.h"
#include "core/drawing/text_metrics.h"
#include "core/geometry/wall_frame.h"
#include "ui/canvas/hit_test.h"

namespace sillwright {

namespace {

constexpr double smallestScale = 0.005; // pt an inch
constexpr double largestScale = 60;
constexpr double aroundSelection = 48; // in
constexpr double marks = 40; // pt: marks and signs stand this far off their wall at most

QString text(const std::string& words) { return QString::fromStdString(words); }

// Where what is in hand is on the plan.
Point2 handAt(const Job& job, const InHand& hand) {
  if (const Corner* corner = findCorner(job, hand.piece.piece))
    return corner->at;
  const WallLine* wall = job.walls.find(hand.piece.wall);
  const Corner* from = wall ? findCorner(job, wall->startCorner) : nullptr;
  const Corner* to = wall ? findCorner(job, wall->endCorner) : nullptr;
  return from && to ? Point2{(from->at.x + to->at.x) / 2, (from->at.y + to->at.y) / 2} : Point2{};
}

// Room for a house on an empty plan, with the zero of the plan at the lower left.
PlanView emptyView(const Bounds& window) {
  constexpr double wide = 60 * 12, deep = 44 * 12, before = 8 * 12; // in
  PlanView view;
  view.scale = std::max(1e-3, std::min(window.x1 / wide, window.y1 / deep));
  view.origin = {before * view.scale, window.y1 - before * view.scale};
  return view;
}

} // namespace

PlanCanvas::PlanCanvas(Workbench& bench, QWidget* parent) : Canvas(bench, CanvasKind::Plan, parent) {
  setAccessibleName(tr("Plan"));
  takeAllWalls();
}

PlanStyle PlanCanvas::style() const {
  PlanStyle style;
  style.view.scale = scale_;
  style.shown = bench().session().wall();
  style.selection = bench().session().selection();
  return style;
}

Point2 PlanCanvas::planAt(QPointF pixel) const {
  const Point2 page = toPage(pixel);
  return {page.x / scale_, -page.y / scale_};
}

QPointF PlanCanvas::pixelOf(Point2 plan) const { return toPixel({plan.x * scale_, -plan.y * scale_}); }

// ---- which walls ------------------------------------------------------------------------------------------------

void PlanCanvas::takeAllWalls() {
  grid_.clear();
  drawings_.clear();
  old_.clear();
  const Job& job = bench().job();
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    touchWall(job.walls[i].id);
}

void PlanCanvas::touchWall(Id wall) {
  const auto checked = bench().checker().wall(wall);
  if (!checked)
    return grid_.remove(wall);
  const WallPlace& place = checked->layout.place;
  const double wide = checked->layout.wall->thickness + checked->layout.wall->footing.width;
  grid_.set(wall, Bounds{std::min(place.from.x, place.to.x), std::min(place.from.y, place.to.y),
                         std::max(place.from.x, place.to.x), std::max(place.from.y, place.to.y)}
                      .grown(wide));
  if (drawings_.contains(wall))
    old_.insert(wall);
}

Bounds PlanCanvas::planWindow(const QRectF& pixels) const {
  const Point2 a = planAt(pixels.bottomLeft()), b = planAt(pixels.topRight());
  return Bounds{a.x, a.y, b.x, b.y}.grown(marks / scale_);
}

std::vector<Id> PlanCanvas::wallsIn(const QRectF& pixels) const { return grid_.inside(planWindow(pixels)); }

void PlanCanvas::follow(const WorkNotice& notice) {
  if (notice.session.file) {
    takeAllWalls();
    fitted_ = true;
    update();
  }
  for (const Id wall : notice.checked)
    touchWall(wall);
  const Session& session = bench().session();
  if (shownWall_ != session.wall() || shownSelection_ != session.selection()) {
    for (const PieceRef& piece : std::exchange(shownSelection_, session.selection()))
      touchWall(piece.wall);
    for (const PieceRef& piece : shownSelection_)
      touchWall(piece.wall);
    touchWall(std::exchange(shownWall_, session.wall()));
    touchWall(shownWall_);
  }
  if (fitted_ && !session.previewing() && !fitCorners_.same(bench().job().corners))
    zoomToFit();
  makeStale();
}

// ---- the view ---------------------------------------------------------------------------------------------------

void PlanCanvas::setScale(double scale) {
  scale = std::clamp(scale, smallestScale, largestScale);
  if (scale == scale_)
    return;
  scale_ = scale;
  drawings_.clear(); // marks keep their size, so every wall in sight is drawn again, when it is painted
  old_.clear();
}

void PlanCanvas::zoomToFit() {
  fitted_ = true;
  fitCorners_ = bench().job().corners;
  if (pageWindow().empty())
    return;
  const PlanView view = bench().job().walls.empty() ? emptyView(pageWindow()) : fitPlan(bench().job(), pageWindow());
  const QPointF pan = QPointF(view.origin.x, view.origin.y) * pixelsPerPoint;
  if (view.scale == scale_ && pan == pan_)
    return;
  setScale(view.scale);
  pan_ = pan;
  update();
  Q_EMIT viewChanged();
}

void PlanCanvas::zoomToSelection() {
  const auto wall = bench().wall();
  if (!wall)
    return zoomToFit();
  fitted_ = false;
  const Point2 a = wall->layout.place.from, b = wall->layout.place.to;
  const double wide = std::abs(b.x - a.x) + 2 * aroundSelection, high = std::abs(b.y - a.y) + 2 * aroundSelection;
  setScale(std::min(pageWindow().x1 / wide, pageWindow().y1 / high));
  const QPointF middle = QPointF(a.x + b.x, -(a.y + b.y)) / 2 * scale_ * pixelsPerPoint;
  pan_ = QPointF(width(), height()) / 2 - middle;
  update();
  Q_EMIT viewChanged();
}

void PlanCanvas::zoomBy(double factor, QPointF about) {
  fitted_ = false;
  const Point2 at = planAt(about);
  setScale(scale_ * factor);
  pan_ += about - pixelOf(at);
  update();
  Q_EMIT viewChanged();
}

void PlanCanvas::panBy(QPointF pixels) {
  fitted_ = false;
  pan_ += pixels;
  update();
  Q_EMIT viewChanged();
}

void PlanCanvas::resizeEvent(QResizeEvent* event) {
  Canvas::resizeEvent(event);
  if (fitted_)
    zoomToFit();
}

QString PlanCanvas::sizeWords() {
  const Job& job = bench().job();
  if (sizeCorners_.same(job.corners) && sizeUnits_ == job.units)
    return size_;
  sizeCorners_ = job.corners;
  sizeUnits_ = job.units;
  size_.clear();
  if (job.corners->empty())
    return size_;
  Point2 low = job.corners->front().at, high = low;
  for (const Corner& corner : *job.corners) {
    low = {std::min(low.x, corner.at.x), std::min(low.y, corner.at.y)};
    high = {std::max(high.x, corner.at.x), std::max(high.y, corner.at.y)};
  }
  const QString wide = text(printLength(high.x - low.x, job.units)), deep = text(printLength(high.y - low.y, job.units));
  size_ = high.y - low.y < 1 ? wide : high.x - low.x < 1 ? deep : tr("%1 × %2").arg(wide, deep);
  return size_;
}

// ---- drawing ----------------------------------------------------------------------------------------------------

QRegion PlanCanvas::drawWall(Id wall) {
  std::vector<Bounds> changed;
  if (const auto before = drawings_.find(wall); before != drawings_.end())
    changed.push_back(before->second.bounds());
  const auto checked = bench().checker().wall(wall);
  if (!checked) {
    drawings_.erase(wall);
  } else {
    const Drawing& now = drawings_[wall] = drawPlanWall(bench().job(), *checked, style());
    changed.push_back(now.bounds());
    ++drawnCount_;
  }
  return pixelsOf(changed);
}

bool PlanCanvas::frameStale() const {
  return frameScale_ != scale_ || frameWall_ != shownWall_ || !frameCorners_.same(bench().job().corners);
}

const Drawing& PlanCanvas::frame() {
  const Job& job = bench().job();
  if (frameStale()) {
    frameScale_ = scale_;
    frameWall_ = shownWall_; // it carries the hook
    frameCorners_ = job.corners;
    frame_ = drawPlanFrame(job, style());
  }
  return frame_;
}

Drawing PlanCanvas::inHandWords() const {
  Drawing words;
  if (bench().pen())
    words.add(drawPen(shownOf(*bench().pen()), style().view));
  const auto& hand = bench().inHand();
  if (!hand || (hand->kind != InHand::Kind::Corner && hand->kind != InHand::Kind::Wall))
    return words;
  for (const Segment2& line : hand->inLineWith) {
    const Point2 ends[] = {style().view.page(line.a), style().view.page(line.b)};
    words.dashed(ends, 5, 4, Ink::Hand, 0.9);
  }
  const Job& job = bench().job();
  const TextStyle bold{11.5, Weight::Bold, Anchor::Middle, 0, Ink::Paper, 4};
  const TextStyle plain{11, Weight::Regular, Anchor::Middle, 0, Ink::Paper, 4};
  for (const Id id : hand->changing) {
    const WallLine* wall = job.walls.find(id);
    const Corner* from = wall ? findCorner(job, wall->startCorner) : nullptr;
    const Corner* to = wall ? findCorner(job, wall->endCorner) : nullptr;
    if (from && to)
      words.text({(from->at.x + to->at.x) / 2 * scale_, -(from->at.y + to->at.y) / 2 * scale_},
                 printLength(wallLength(job, *wall), job.units), Ink::Hand, id == hand->lengthOf ? bold : plain);
  }
  Point2 at = handAt(job, *hand);
  at = {at.x * scale_, -at.y * scale_ - 14};
  const auto say = [&](const std::string& line, Ink ink) {
    if (!line.empty())
      words.text(at, line, ink, bold);
    at.y -= line.empty() ? 0 : 15;
  };
  if (hand->kind == InHand::Kind::Wall)
    say(printLength(std::abs(hand->moved), job.units) + (hand->moved < 0 ? " in" : " out"), Ink::Hand);
  say(hand->typed.empty() ? std::string() : hand->typed + "  Enter", Ink::Hand);
  say(hand->problem, Ink::Fix);
  return words;
}

QRegion PlanCanvas::redraw() {
  QRegion changed;
  const Bounds inSight = planWindow(QRectF(rect()));
  for (const Id wall : std::exchange(old_, {})) {
    if (grid_.touches(wall, inSight) || !bench().checker().wall(wall))
      changed += drawWall(wall);
    else if (const auto before = drawings_.extract(wall); !before.empty()) // drawn again when it is painted
      changed += pixelsOf({before.mapped().bounds()});
  }
  if (frameStale()) {
    changed += pixelsOf({frame_.bounds()});
    changed += pixelsOf({frame().bounds()});
  }
  changed += pixelsOf({words_.bounds()});
  words_ = inHandWords();
  changed += pixelsOf({words_.bounds()});
  if (bench().job().walls.empty()) // the hint comes and goes
    changed += rect();
  return changed;
}

void PlanCanvas::paintContent(QPainter& painter, const QRect& clip) {
  const std::vector<Id> walls = wallsIn(QRectF(clip));
  for (const Id wall : walls)
    if (!drawings_.contains(wall))
      drawWall(wall);
  for (const Id wall : walls)
    if (const auto found = drawings_.find(wall); found != drawings_.end() && wall != shownWall_)
      paintDrawing(painter, found->second, clip);
  if (const auto found = drawings_.find(shownWall_); found != drawings_.end())
    paintDrawing(painter, found->second, clip);
  if (!bench().job().walls.empty())
    paintDrawing(painter, frame(), clip);
  else if (!bench().pen() || !bench().pen()->at)
    paintHint(painter);
  paintDrawing(painter, words_, clip);
}

// On an empty plan: what to do.
void PlanCanvas::paintHint(QPainter& painter) const {
  constexpr double size = 13, lineHeight = 20, room = 16;
  const QString words = bench().pen() ? tr("Click where the first corner stands.")
                                      : tr("Nothing is drawn yet. Draw walls: F3, or the button above.");
  const Bounds window = pageWindow();
  const std::vector<std::string> lines = wrapped(words.toStdString(), size, window.x1 - room);
  const Point2 corner = toPage({0, 0});
  Point2 at{corner.x + window.x1 / 2,
            corner.y + window.y1 / 2 - lineHeight * (static_cast<double>(lines.size()) - 1) / 2};
  Drawing hint;
  for (const std::string& line : lines) {
    hint.text(at, line, Ink::Text2, TextStyle{size, Weight::Regular, Anchor::Middle, 0, Ink::None, 0});
    at.y += lineHeight;
  }
  paintDrawing(painter, hint, rect());
}

std::size_t PlanCanvas::takeDrawnCount() { return std::exchange(drawnCount_, 0); }

// ---- the pointer ------------------------------------------------------------------------------------------------

std::optional<HitArea> PlanCanvas::topmostAt(Point2 page, double reach) const {
  const QPointF pixel = toPixel(page);
  const double around = reach * pixelsPerPoint;
  std::vector<HitArea> areas;
  for (const Id wall : wallsIn(QRectF(pixel - QPointF(around, around), QSizeF(2 * around, 2 * around))))
    if (const auto found = drawings_.find(wall); found != drawings_.end())
      areas.insert(areas.end(), found->second.hits().begin(), found->second.hits().end());
  return topmost(areas, page, reach);
}

void PlanCanvas::locate(Point2 page, PointerAt& pointer) const {
  pointer.plan = {page.x / scale_, -page.y / scale_};
  if (const auto wall = bench().wall(); wall && wall->layout.length > 0) {
    const Point2 at = toWall(wallFrame(wall->layout.place.from, wall->layout.place.to), pointer.plan);
    pointer.at = {at.x, at.y, 0};
  }
}

QString PlanCanvas::wordsFor(const PointerAt& pointer) const {
  const LengthStyle units = bench().job().units;
  return tr("%1 to the right, %2 up the plan")
      .arg(text(printLength(pointer.plan.x, units)), text(printLength(pointer.plan.y, units)));
}

// An arrow moves along the wall in view when it points more or less that way.
Point2 PlanCanvas::nudgeOf(Point2 arrow) const {
  const auto wall = bench().wall();
  if (!wall || wall->layout.length <= 0)
    return {};
  const Point2 a = wall->layout.place.from, b = wall->layout.place.to;
  const double along = (arrow.x * (b.x - a.x) + arrow.y * (b.y - a.y)) / wall->layout.length;
  return {std::abs(along) > 0.5 ? std::copysign(1.0, along) : 0, 0};
}

std::vector<SpokenPiece> PlanCanvas::spokenPieces() {
  refresh();
  std::vector<SpokenPiece> pieces;
  const Job& job = bench().job();
  for (const Id id : wallsIn(QRectF(rect()))) {
    const auto checked = bench().checker().wall(id);
    if (!checked)
      continue;
    const WallLine& wall = *checked->layout.wall;
    SpokenPiece spoken;
    spoken.piece = {id, {}};
    spoken.name = tr("wall %1, %2, %3").arg(text(wall.mark), text(wall.title),
                                            text(printLength(checked->layout.length, job.units)));
    spoken.description = tr("%1 FIX, %2 ASK, %3 WATCH")
                             .arg(checked->counts.fix).arg(checked->counts.ask).arg(checked->counts.watch);
    const Point2 a = checked->layout.place.from, b = checked->layout.place.to;
    spoken.box = QRectF(pixelOf(a), pixelOf(b)).normalized().toAlignedRect().adjusted(-2, -2, 2, 2);
    spoken.selected = id == bench().session().wall();
    pieces.push_back(std::move(spoken));
  }
  return pieces;
}

} // namespace sillwright
