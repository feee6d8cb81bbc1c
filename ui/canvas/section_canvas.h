// The cut across the wall through the selected piece, its pour line at the height of the elevation's.
#pragma once

#include "core/drawing/section.h"
#include "ui/canvas/canvas.h"

namespace sillwright {

class SectionCanvas : public Canvas {
  Q_OBJECT

public:
  explicit SectionCanvas(Workbench& bench, QWidget* parent = nullptr);

  void follow(const WorkNotice& notice) override;
  void zoomToFit() override;
  void zoomToSelection() override { zoomToFit(); }
  void zoomBy(double factor, QPointF about) override;
  void panBy(QPointF pixels) override;

  // The pour line of the canvas beside this one, px; nothing where there is none in sight.
  void alignPourLine(std::optional<double> pixel);
  // What is cut, in words: "through S1, looking left".
  QString cutWords() const;
  const Drawing& drawing();
  std::vector<SpokenPiece> spokenPieces() override;

protected:
  QRegion redraw() override;
  void paintContent(QPainter& painter, const QRect& clip) override;
  std::optional<HitArea> topmostAt(Point2 page, double reach) const override;
  double pointsPerInch() const override { return view_.scale; }
  void locate(Point2 page, PointerAt& pointer) const override;
  QString wordsFor(const PointerAt& pointer) const override;
  Point2 nudgeOf(Point2 arrow) const override { return {0, arrow.y}; }
  void resizeEvent(QResizeEvent* event) override;

private:
  // Which piece and station is cut: the selection's, or the last one, or the first hardware of the wall.
  void chooseCut();
  void showView(const SectionView& view);

  SectionView view_;
  bool fitted_ = true;
  std::optional<double> pourLine_; // px
  Id piece_;
  double station_ = 0;
  Drawing shown_;
};

} // namespace sillwright
