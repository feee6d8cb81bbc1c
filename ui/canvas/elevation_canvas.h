// The elevation of the wall in view: the main canvas.
#pragma once

#include <set>

#include "core/drawing/elevation.h"
#include "ui/canvas/canvas.h"

namespace sillwright {

class ElevationCanvas : public Canvas {
  Q_OBJECT

public:
  explicit ElevationCanvas(Workbench& bench, QWidget* parent = nullptr);

  void follow(const WorkNotice& notice) override;
  void zoomToFit() override;
  void zoomToSelection() override;
  void zoomBy(double factor, QPointF about) override;
  void panBy(QPointF pixels) override;

  bool fromInside() const { return view_.fromInside; }
  void setFromInside(bool inside);
  // Openings with nothing to set in them are shown as two zigzags; remembered for every wall. What is set, found or
  // selected in one opens it as long as it is there.
  void foldOpenings(bool folded);
  bool canFold() const;
  bool isFolded() const { return !view_.folds.empty(); }
  const ElevationView& view() const { return view_; }
  // Height of station 0's pour line on the widget, px.
  double pourLinePixel() const;
  // In the middle of what is seen: where a piece placed by key goes, in.
  double middleStation() const;
  const Drawing& drawing();
  std::vector<SpokenPiece> spokenPieces() override;
  // How often the wall was drawn, for tests.
  std::size_t drawn() const { return drawn_; }

protected:
  QRegion redraw() override;
  void paintContent(QPainter& painter, const QRect& clip) override;
  std::optional<HitArea> topmostAt(Point2 page, double reach) const override;
  double pointsPerInch() const override { return view_.scale; }
  void locate(Point2 page, PointerAt& pointer) const override;
  QString wordsFor(const PointerAt& pointer) const override;
  Point2 nudgeOf(Point2 arrow) const override;
  void resizeEvent(QResizeEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override; // on a fold opens it

private:
  void showView(ElevationView view);
  Bounds listBoxOver(const ElevationDrawing& drawn) const;
  Drawing listedLabels() const;
  QString proposedFor(Id piece) const;

  ElevationView view_;
  // The view follows the size of the widget until somebody zooms or pans: all hardware as large as can be, or the whole
  // wall with its framing.
  enum class Fit { None, Hardware, Whole } fit_ = Fit::Hardware;
  void fitAgain();
  std::set<PieceRef> folded_; // openings
  std::vector<Interval> foldsNow() const;
  void foldAgain();
  ElevationDrawing shown_;
  Bounds listBox_; // of the labels that are listed
  std::size_t drawn_ = 0;
};

} // namespace sillwright
