// A place where a job is seen and handled by hand: turns the toolkit's events into the workbench's gestures, and paints
// what is visible. What it shows is for the elevation, plan and section canvases to say.
// Pixels are the widget's own (x right, y down, origin top left); the page is in pt; pixelsPerPoint joins the two.
#pragma once

#include <QBasicTimer>
#include <QRegion>
#include <QString>
#include <QWidget>

#include <optional>
#include <vector>

#include "core/drawing/theme.h"
#include "core/gesture/workbench.h"

class QMimeData;
class QPainter;

namespace sillwright {

inline constexpr double pixelsPerPoint = 1.15; // at 100 % display scaling

// A piece as somebody who does not see the canvas meets it.
struct SpokenPiece {
  PieceRef piece;
  QString name;        // "S1, strap, at 0'-1 5/8\""
  QString description; // its findings
  QRect box;           // px
  bool selected = false;
};

class Canvas : public QWidget {
  Q_OBJECT

public:
  Canvas(Workbench& bench, CanvasKind kind, QWidget* parent = nullptr);

  CanvasKind kind() const { return kind_; }
  Workbench& bench() const { return bench_; }
  ThemeName theme() const { return theme_; }
  void setTheme(ThemeName theme);

  // Something changed on the workbench: the drawing follows before the next paint.
  virtual void follow(const WorkNotice& notice) = 0;
  virtual void zoomToFit() = 0;
  virtual void zoomToSelection() = 0;
  // The place under `about` (px) stays under it.
  virtual void zoomBy(double factor, QPointF about) = 0;
  virtual void panBy(QPointF pixels) = 0;

  Point2 toPage(QPointF pixel) const;
  QPointF toPixel(Point2 page) const;
  std::optional<HitArea> hitAt(QPointF pixel);
  PointerAt pointerAt(QPointF pixel, Qt::KeyboardModifiers keys);
  // Brings the drawing in line with the job now, and asks for a paint of what changed.
  void refresh();
  // In the order they are met from left to right.
  virtual std::vector<SpokenPiece> spokenPieces() = 0;

Q_SIGNALS:
  void pointed(const QString& words); // where the pointer is, in words; empty when it left
  void viewChanged();

protected:
  // The drawing no longer fits the job.
  void makeStale();
  // Draws again; gives what must be painted, px.
  virtual QRegion redraw() = 0;
  virtual void paintContent(QPainter& painter, const QRect& clip) = 0;
  virtual std::optional<HitArea> topmostAt(Point2 page, double reach) const = 0;
  virtual double pointsPerInch() const = 0;
  // Fills in the place in inches.
  virtual void locate(Point2 page, PointerAt& pointer) const = 0;
  virtual QString wordsFor(const PointerAt& pointer) const = 0;
  // What an arrow key means here: x to the right, y up, in units of one step; gives along the wall and up.
  virtual Point2 nudgeOf(Point2 arrow) const = 0;
  // px the page is moved by, beyond what the drawing itself knows.
  virtual QPointF pan() const { return {}; }
  void paintDrawing(QPainter& painter, const Drawing& drawing, const QRect& clip) const;
  QRegion pixelsOf(const std::vector<Bounds>& boxes) const;
  Bounds pageWindow() const; // what the widget shows of it, pt

  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void timerEvent(QTimerEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dragMoveEvent(QDragMoveEvent* event) override;
  void dragLeaveEvent(QDragLeaveEvent* event) override;
  void dropEvent(QDropEvent* event) override;

private:
  enum class Mouse { Free, Pressed, Dragging, Panning };
  bool nudgeKey(const QKeyEvent& event);
  bool lengthKey(const QKeyEvent& event);
  bool penUp() const;       // … and this is its paper
  bool typed(char32_t key); // to the pen, or to what is in hand or selected
  bool isTyping() const;
  void escape();
  void showCursor(QPointF pixel);
  void place(const QMimeData& carried, QPointF pixel, Qt::KeyboardModifiers keys);

  Workbench& bench_;
  CanvasKind kind_;
  ThemeName theme_ = ThemeName::Light;
  bool stale_ = true;
  QBasicTimer later_;
  Mouse mouse_ = Mouse::Free;
  bool spaceHeld_ = false;
  bool placing_ = false;
  QPointF lastAt_;
};

// Findings of one piece of a wall, one after the other, in words.
QString findingsInWords(const Job& job, const CheckedWall& wall, Id piece);

} // namespace sillwright
