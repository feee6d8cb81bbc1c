#include "ui/canvas/canvas.h"

#include <QDragEnterEvent>
#include <QKeyEvent>
#include <QMimeData>
#include <QMouseEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QStringList>
#include <QTimerEvent>
#include <QWheelEvent>

#include <cmath>

#include "core/gesture/shelf_mime.h"
#include "core/rules/wording.h"
#include "ui/paint/painter.h"

namespace sillwright {

namespace {

constexpr double reachPixels = 5;  // how near to a thing counts as on it
constexpr double snapPixels = 7;   // how near to a place counts as there
constexpr double dragPixels = 3;   // a hand that clicks trembles this much
constexpr double wheelStep = 1.2;  // zoom of one notch

Keys keysOf(Qt::KeyboardModifiers held) {
  return {held.testFlag(Qt::ShiftModifier), held.testFlag(Qt::ControlModifier), held.testFlag(Qt::AltModifier)};
}

} // namespace

Canvas::Canvas(Workbench& bench, CanvasKind kind, QWidget* parent) : QWidget(parent), bench_(bench), kind_(kind) {
  setAttribute(Qt::WA_OpaquePaintEvent);
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAcceptDrops(true);
}

void Canvas::setTheme(ThemeName theme) {
  theme_ = theme;
  update();
}

Point2 Canvas::toPage(QPointF pixel) const {
  const QPointF at = (pixel - pan()) / pixelsPerPoint;
  return {at.x(), at.y()};
}

QPointF Canvas::toPixel(Point2 page) const { return QPointF(page.x, page.y) * pixelsPerPoint + pan(); }

Bounds Canvas::pageWindow() const { return {0, 0, width() / pixelsPerPoint, height() / pixelsPerPoint}; }

QRegion Canvas::pixelsOf(const std::vector<Bounds>& boxes) const {
  QRegion region;
  for (const Bounds& box : boxes) {
    const QRectF pixels(toPixel({box.x0, box.y0}), toPixel({box.x1, box.y1}));
    region += pixels.intersected(QRectF(rect())).toAlignedRect().adjusted(-1, -1, 1, 1);
  }
  return region;
}

std::optional<HitArea> Canvas::hitAt(QPointF pixel) {
  refresh();
  return topmostAt(toPage(pixel), reachPixels / pixelsPerPoint);
}

PointerAt Canvas::pointerAt(QPointF pixel, Qt::KeyboardModifiers keys) {
  PointerAt pointer;
  pointer.canvas = kind_;
  pointer.hit = hitAt(pixel);
  pointer.reach = snapPixels / (pixelsPerPoint * pointsPerInch());
  pointer.keys = keysOf(keys);
  locate(toPage(pixel), pointer);
  return pointer;
}

void Canvas::paintDrawing(QPainter& painter, const Drawing& drawing, const QRect& clip) const {
  PaintStyle style;
  style.theme = theme_;
  style.scale = pixelsPerPoint;
  style.origin = pan();
  style.clip = QRectF(clip);
  paint(painter, drawing, style);
}

// ---- keeping up -------------------------------------------------------------------------------------------------

void Canvas::makeStale() {
  stale_ = true;
  if (!later_.isActive())
    later_.start(0, this);
}

void Canvas::refresh() {
  later_.stop();
  if (!stale_)
    return;
  stale_ = false;
  update(redraw());
}

void Canvas::timerEvent(QTimerEvent* event) {
  if (event->timerId() == later_.timerId())
    refresh();
  else
    QWidget::timerEvent(event);
}

void Canvas::paintEvent(QPaintEvent* event) {
  refresh();
  QPainter painter(this);
  const QRect clip = event->rect();
  painter.setClipRegion(event->region());
  painter.fillRect(clip, colourOf(theme_, Ink::Paper));
  paintContent(painter, clip);
}

// ---- the mouse --------------------------------------------------------------------------------------------------

void Canvas::mousePressEvent(QMouseEvent* event) {
  lastAt_ = event->position();
  if (event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && spaceHeld_)) {
    mouse_ = Mouse::Panning;
    setCursor(Qt::ClosedHandCursor);
  } else if (event->button() == Qt::LeftButton) {
    mouse_ = Mouse::Pressed;
    bench_.press(pointerAt(event->position(), event->modifiers()));
  }
}

void Canvas::mouseMoveEvent(QMouseEvent* event) {
  const QPointF at = event->position();
  if (mouse_ == Mouse::Panning) {
    panBy(at - lastAt_);
    lastAt_ = at;
    return;
  }
  if (mouse_ == Mouse::Pressed && (at - lastAt_).manhattanLength() >= dragPixels)
    mouse_ = Mouse::Dragging;
  const PointerAt pointer = pointerAt(at, event->modifiers());
  if (mouse_ == Mouse::Dragging) {
    lastAt_ = at;
    bench_.drag(pointer);
  } else if (mouse_ == Mouse::Free) {
    if (penUp())
      lastAt_ = at;
    bench_.hover(pointer);
    showCursor(at);
  }
  Q_EMIT pointed(wordsFor(pointer));
}

void Canvas::mouseReleaseEvent(QMouseEvent* event) {
  const Mouse was = mouse_;
  if (event->buttons() & (Qt::LeftButton | Qt::MiddleButton))
    return;
  mouse_ = Mouse::Free;
  if (was == Mouse::Pressed || was == Mouse::Dragging)
    bench_.release(pointerAt(event->position(), event->modifiers()));
  showCursor(event->position());
}

void Canvas::showCursor(QPointF pixel) {
  if (spaceHeld_)
    return setCursor(Qt::OpenHandCursor);
  if (penUp())
    return setCursor(Qt::CrossCursor);
  const std::optional<HitArea> hit = hitAt(pixel);
  if (!hit)
    return unsetCursor();
  switch (hit->part) {
  case HitArea::Part::FromEnd:
  case HitArea::Part::ToEnd: return setCursor(Qt::SizeHorCursor);
  case HitArea::Part::Corner: return setCursor(Qt::SizeAllCursor);
  case HitArea::Part::Body:
  case HitArea::Part::Label:
  case HitArea::Part::Name: return setCursor(Qt::PointingHandCursor);
  }
}

void Canvas::leaveEvent(QEvent* event) {
  Q_EMIT pointed({});
  QWidget::leaveEvent(event);
}

void Canvas::wheelEvent(QWheelEvent* event) {
  const double notches = event->angleDelta().y() / 120.0;
  if (notches == 0)
    return event->ignore();
  zoomBy(std::pow(wheelStep, notches), event->position());
  event->accept();
}

// ---- keys -------------------------------------------------------------------------------------------------------

bool Canvas::event(QEvent* event) {
  const bool down = event->type() == QEvent::KeyPress, up = event->type() == QEvent::KeyRelease;
  if ((mouse_ == Mouse::Dragging || penUp()) && (down || up || event->type() == QEvent::ShortcutOverride)) {
    const auto& key = static_cast<QKeyEvent&>(*event);
    if (key.key() == Qt::Key_Alt) {
      event->accept();                            // it is not for the menu bar
      if ((down || up) && !isTyping())            // counts at once, though the hand be still
        bench_.drag(pointerAt(lastAt_, key.modifiers().setFlag(Qt::AltModifier, down)));
      return true;
    }
  }
  if (event->type() == QEvent::KeyPress) { // before the toolkit takes Tab for moving the focus
    const auto& key = static_cast<QKeyEvent&>(*event);
    const bool plain = !(key.modifiers() & (Qt::ControlModifier | Qt::AltModifier));
    if (plain && (key.key() == Qt::Key_Tab || key.key() == Qt::Key_Backtab)) {
      bench_.selectNext(key.key() == Qt::Key_Backtab || key.modifiers().testFlag(Qt::ShiftModifier));
      return true;
    }
  }
  return QWidget::event(event);
}

bool Canvas::penUp() const {
  return kind_ == CanvasKind::Plan && bench_.pen();
}

void Canvas::escape() {
  mouse_ = mouse_ == Mouse::Panning ? mouse_ : Mouse::Free;
  if (penUp())
    bench_.putPen();
  else if (bench_.inHand())
    bench_.cancel();
  else if (!bench_.typed().empty())
    bench_.typeKey(U'\x1b');
  else if (bench_.refitDesk().isOpen())
    bench_.refitDesk().close();
  else if (bench_.jobRefitDesk().isOpen())
    bench_.jobRefitDesk().close();
  else
    bench_.session().select({});
}

bool Canvas::nudgeKey(const QKeyEvent& event) {
  Point2 arrow;
  switch (event.key()) {
  case Qt::Key_Left: arrow.x = -1; break;
  case Qt::Key_Right: arrow.x = 1; break;
  case Qt::Key_Up: arrow.y = 1; break;
  case Qt::Key_Down: arrow.y = -1; break;
  default: return false;
  }
  const Keys held = keysOf(event.modifiers());
  if (penUp()) {
    bench_.penArrow(arrow, held.control ? 1.0 : 12.0);
    return true;
  }
  const double step = held.control ? 1.0 : held.shift ? 1.0 / 8 : 1.0 / 16;
  const Point2 by = nudgeOf(arrow);
  if (by.x != 0 || by.y != 0)
    bench_.nudge(by.x * step, by.y * step);
  return true;
}

bool Canvas::typed(char32_t key) {
  return penUp() ? bench_.penKey(key) : bench_.typeKey(key);
}

bool Canvas::isTyping() const {
  return penUp() ? !bench_.pen()->typed.empty() : !bench_.typed().empty();
}

bool Canvas::lengthKey(const QKeyEvent& event) {
  if (event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter)
    return typed(U'\r');
  if (event.key() == Qt::Key_Backspace)
    return penUp() ? typed(U'\b') || true : isTyping() && typed(U'\b'); // the pen takes nothing else back
  if (event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier))
    return false;
  bool taken = false;
  for (const char32_t key : event.text().toStdU32String())
    taken = (key >= U' ' && typed(key)) || taken;
  return taken;
}

void Canvas::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape)
    return escape();
  if (event->key() == Qt::Key_Space && !isTyping()) {
    spaceHeld_ = true;
    if (mouse_ == Mouse::Free)
      setCursor(Qt::OpenHandCursor);
    return;
  }
  if (nudgeKey(*event) || lengthKey(*event))
    return;
  if (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace)
    return bench_.removeSelected();
  QWidget::keyPressEvent(event);
}

void Canvas::keyReleaseEvent(QKeyEvent* event) {
  if (event->key() != Qt::Key_Space || event->isAutoRepeat())
    return QWidget::keyReleaseEvent(event);
  spaceHeld_ = false;
  if (mouse_ == Mouse::Free)
    unsetCursor();
}

void Canvas::focusOutEvent(QFocusEvent* event) {
  spaceHeld_ = false;
  QWidget::focusOutEvent(event);
}

void Canvas::hideEvent(QHideEvent* event) {
  if (mouse_ == Mouse::Pressed || mouse_ == Mouse::Dragging || placing_)
    bench_.cancel();
  mouse_ = Mouse::Free;
  placing_ = false;
  QWidget::hideEvent(event);
}

// ---- drops from the shelf ---------------------------------------------------------------------------------------

void Canvas::place(const QMimeData& carried, QPointF pixel, Qt::KeyboardModifiers keys) {
  const PointerAt pointer = pointerAt(pixel, keys);
  if (placing_)
    bench_.dragPlace(pointer);
  else
    placing_ = bench_.beginPlace(carried.data(shelfMimeType).toStdString(), pointer);
  Q_EMIT pointed(wordsFor(pointer));
}

void Canvas::dragEnterEvent(QDragEnterEvent* event) {
  if (!event->mimeData()->hasFormat(shelfMimeType))
    return event->ignore();
  place(*event->mimeData(), event->position(), event->modifiers());
  event->acceptProposedAction(); // also where it cannot go yet: the pointer may find a place
}

void Canvas::dragMoveEvent(QDragMoveEvent* event) {
  if (!event->mimeData()->hasFormat(shelfMimeType))
    return event->ignore();
  place(*event->mimeData(), event->position(), event->modifiers());
  event->setAccepted(placing_);
}

void Canvas::dragLeaveEvent(QDragLeaveEvent*) {
  if (placing_)
    bench_.cancel();
  placing_ = false;
}

void Canvas::dropEvent(QDropEvent* event) {
  if (!placing_ || !bench_.inHand()) {
    placing_ = false;
    return event->ignore();
  }
  placing_ = false;
  bench_.dropPlace(pointerAt(event->position(), event->modifiers()));
  setFocus(Qt::MouseFocusReason);
  event->acceptProposedAction();
}

QString findingsInWords(const Job& job, const CheckedWall& wall, Id piece) {
  QStringList words;
  for (const Finding& finding : wall.findings)
    if (!finding.pieces.empty() && finding.pieces.front() == piece)
      words << QString::fromStdString(std::string(word(finding.level)) + " " + label(job, finding));
  return words.join(QStringLiteral("; "));
}

} // namespace sillwright
