// The foundation from above. Every wall has a drawing of its own, kept until that wall changes: a frame of a drag draws
// the walls that changed and paints where they are, however large the job is.
#pragma once

#include <unordered_map>
#include <unordered_set>

#include "core/drawing/plan.h"
#include "ui/canvas/canvas.h"
#include "ui/canvas/plan_grid.h"

namespace sillwright {

class PlanCanvas : public Canvas {
  Q_OBJECT

public:
  explicit PlanCanvas(Workbench& bench, QWidget* parent = nullptr);

  void follow(const WorkNotice& notice) override;
  void zoomToFit() override;
  void zoomToSelection() override;
  void zoomBy(double factor, QPointF about) override;
  void panBy(QPointF pixels) override;

  // Outside to outside of the whole plan: "24'-0\" × 28'-0\""; empty without walls. Looks at the corners only when
  // they are others than the last time.
  QString sizeWords();
  // The plan point under a pixel, in.
  Point2 planAt(QPointF pixel) const;
  QPointF pixelOf(Point2 plan) const;
  // How many walls were drawn since the last call: tests watch that it does not grow with the job.
  std::size_t takeDrawnCount();
  std::vector<SpokenPiece> spokenPieces() override;

protected:
  QRegion redraw() override;
  void paintContent(QPainter& painter, const QRect& clip) override;
  std::optional<HitArea> topmostAt(Point2 page, double reach) const override;
  double pointsPerInch() const override { return scale_; }
  void locate(Point2 page, PointerAt& pointer) const override;
  QString wordsFor(const PointerAt& pointer) const override;
  Point2 nudgeOf(Point2 arrow) const override;
  QPointF pan() const override { return pan_; }
  void resizeEvent(QResizeEvent* event) override;

private:
  PlanStyle style() const;
  Bounds planWindow(const QRectF& pixels) const;
  std::vector<Id> wallsIn(const QRectF& pixels) const;
  void takeAllWalls();
  void touchWall(Id wall);     // where it is, and that its drawing is old
  QRegion drawWall(Id wall);   // again; what must be painted
  const Drawing& frame();      // what belongs to the whole
  Drawing inHandWords() const; // the length of the walls at a dragged corner, or what the pen draws
  void paintHint(QPainter& painter) const;
  void setScale(double scale);

  double scale_ = 0.5; // pt an inch
  QPointF pan_;        // px of plan (0, 0)
  bool fitted_ = true;
  PlanGrid grid_;
  std::unordered_map<Id, Drawing> drawings_;
  std::unordered_set<Id> old_; // drawn, but not as it is now
  Shared<std::vector<Corner>> fitCorners_; // of the last fit
  Shared<std::vector<Corner>> sizeCorners_;
  LengthStyle sizeUnits_ = LengthStyle::FeetInches;
  QString size_;
  Shared<std::vector<Corner>> frameCorners_;
  double frameScale_ = 0;
  Id frameWall_;
  bool frameStale() const;
  Drawing frame_;
  Drawing words_;
  Id shownWall_;
  Selection shownSelection_;
  std::size_t drawnCount_ = 0;
};

} // namespace sillwright
