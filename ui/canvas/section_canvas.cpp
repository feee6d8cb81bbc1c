#include "ui/canvas/section_canvas.h"

#include <QPainter>
#include <QResizeEvent>

#include <algorithm>

#include "core/base/length.h"
#include "ui/canvas/changed_area.h"
#include "ui/canvas/hit_test.h"

namespace sillwright {

namespace {

constexpr double smallestScale = 0.5; // pt an inch
constexpr double largestScale = 200;
constexpr double leastBelow = 0.3; // of the canvas: a pour line lower than this leaves no room for the foundation

QString text(const std::string& words) { return QString::fromStdString(words); }

Id firstHardware(const WallLayout& layout) {
  if (!layout.straps.empty())
    return layout.straps.front().id;
  return layout.anchors.empty() ? Id{} : layout.anchors.front().id;
}

std::optional<double> stationOfPiece(const WallLayout& layout, Id piece) {
  for (const AnchorBody& anchor : layout.anchors) // a rod's station is its column's
    if (anchor.id == piece)
      return anchor.station;
  return stationOf(*layout.wall, piece);
}

} // namespace

SectionCanvas::SectionCanvas(Workbench& bench, QWidget* parent) : Canvas(bench, CanvasKind::Section, parent) {
  setAccessibleName(tr("Section"));
}

void SectionCanvas::chooseCut() {
  const auto wall = bench().wall();
  if (!wall)
    return;
  const WallLayout& layout = wall->layout;
  Id wanted = piece_;
  for (const PieceRef& piece : bench().session().selection())
    if (piece.piece && piece.wall == layout.wall->id)
      wanted = piece.piece;
  if (!wanted || !findPiece(*layout.wall, wanted))
    wanted = firstHardware(layout);
  piece_ = wanted;
  station_ = std::clamp(stationOfPiece(layout, piece_).value_or(layout.length / 2), 0.0, layout.length);
}

void SectionCanvas::follow(const WorkNotice& notice) {
  if (notice.session.file || notice.session.wall) {
    piece_ = {};
    fitted_ = true;
  }
  chooseCut();
  if (fitted_)
    zoomToFit();
  makeStale();
}

void SectionCanvas::showView(const SectionView& view) {
  view_ = view;
  makeStale();
  Q_EMIT viewChanged();
}

// The foundation below a pour line that is given from beside must still be seen: the scale gives way.
void SectionCanvas::zoomToFit() {
  fitted_ = true;
  const auto wall = bench().wall();
  const Bounds page = pageWindow();
  if (!wall || page.empty())
    return;
  SectionView view = fitSection(*wall, piece_, page);
  const double y = pourLine_ ? *pourLine_ / pixelsPerPoint : view.origin.y;
  const double below = (page.y1 - y) / page.y1;
  if (below > leastBelow && below < 1) {
    const double shrink = std::min(1.0, (page.y1 - y) / (-heightsOfCut(*wall, piece_).from * view.scale));
    const double middle = page.x1 / 2;
    view.origin = {middle + (view.origin.x - middle) * shrink, y};
    view.scale *= shrink;
  }
  showView(view);
}

void SectionCanvas::alignPourLine(std::optional<double> pixel) {
  if (pourLine_ == pixel)
    return;
  pourLine_ = pixel;
  if (fitted_)
    zoomToFit();
}

void SectionCanvas::zoomBy(double factor, QPointF about) {
  fitted_ = false;
  const Point2 at = toPage(about);
  SectionView view = view_;
  const double d = view.d(at.x), z = view.z(at.y);
  view.scale = std::clamp(view.scale * factor, smallestScale, largestScale);
  view.origin = {at.x - d * view.scale, at.y + z * view.scale};
  showView(view);
}

void SectionCanvas::panBy(QPointF pixels) {
  fitted_ = false;
  SectionView view = view_;
  view.origin.x += pixels.x() / pixelsPerPoint;
  view.origin.y += pixels.y() / pixelsPerPoint;
  showView(view);
}

void SectionCanvas::resizeEvent(QResizeEvent* event) {
  Canvas::resizeEvent(event);
  if (fitted_)
    zoomToFit();
  makeStale();
}

QString SectionCanvas::cutWords() const {
  const auto wall = bench().wall();
  if (!wall)
    return {};
  const std::string mark = markOf(bench().job(), {wall->layout.wall->id, piece_});
  return mark.empty() ? tr("at %1, looking left").arg(text(printLength(station_, bench().job().units)))
                      : tr("through %1, looking left").arg(text(mark));
}

QRegion SectionCanvas::redraw() {
  Drawing next;
  const auto wall = bench().wall();
  if (wall && !pageWindow().empty()) {
    chooseCut();
    SectionInput input;
    input.job = &bench().job();
    input.wall = wall.get();
    input.station = station_;
    input.piece = piece_;
    input.view = view_;
    input.window = pageWindow();
    input.title = false; // the panel's head says it
    next = drawSection(input);
  }
  const QRegion changed = pixelsOf(changedArea(shown_, next));
  shown_ = std::move(next);
  return changed;
}

void SectionCanvas::paintContent(QPainter& painter, const QRect& clip) { paintDrawing(painter, shown_, clip); }

const Drawing& SectionCanvas::drawing() {
  refresh();
  return shown_;
}

std::optional<HitArea> SectionCanvas::topmostAt(Point2 page, double reach) const {
  return topmost(shown_.hits(), page, reach);
}

void SectionCanvas::locate(Point2 page, PointerAt& pointer) const {
  pointer.at = {station_, view_.d(page.x), view_.z(page.y)};
}

QString SectionCanvas::wordsFor(const PointerAt& pointer) const {
  const auto wall = bench().wall();
  if (!wall)
    return {};
  const LengthStyle units = bench().job().units;
  const double up = pointer.at.z - pourAt(wall->layout, station_);
  const QString in = text(printMeasure(pointer.at.d, units));
  const QString measure = text(printMeasure(std::abs(up), units));
  return up < 0 ? tr("%1 in from the outside face, %2 below the pour line").arg(in, measure)
                : tr("%1 in from the outside face, %2 above the pour line").arg(in, measure);
}

std::vector<SpokenPiece> SectionCanvas::spokenPieces() {
  const auto wall = bench().wall();
  const auto piece = wall ? findPiece(*wall->layout.wall, piece_) : std::nullopt;
  if (!piece)
    return {};
  SpokenPiece spoken;
  spoken.piece = {wall->layout.wall->id, piece_};
  spoken.name = tr("%1, %2, cut").arg(text(markOf(*piece)), text(std::string(tradeName(kindOf(*piece)))));
  spoken.description = findingsInWords(bench().job(), *wall, piece_);
  spoken.box = rect();
  for (const HitArea& hit : drawing().hits())
    if (hit.piece.piece == piece_)
      spoken.box = pixelsOf({hit.box}).boundingRect();
  const Selection& selection = bench().session().selection();
  spoken.selected = std::find(selection.begin(), selection.end(), spoken.piece) != selection.end();
  return {spoken};
}

} // namespace sillwright
