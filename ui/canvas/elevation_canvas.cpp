#include "ui/canvas/elevation_canvas.h"

#include <QMouseEvent>
#include <QPainter>
#include <QResizeEvent>

#include <algorithm>
#include <unordered_map>

#include "core/base/length.h"
#include "core/drawing/flag_words.h"
#include "core/drawing/text_metrics.h"
#include "core/refit/refit_words.h"
#include "ui/canvas/changed_area.h"
#include "ui/canvas/hit_test.h"

namespace sillwright {

namespace {

constexpr double listLine = 13, listSize = 9.5; // of labels that are listed

constexpr double smallestScale = 0.2; // pt an inch
constexpr double largestScale = 200;
constexpr double selectionScale = 24; // a selection is never shown larger than this by itself
constexpr double aroundSelection = 10; // in, either side
constexpr double aboveHardware = 8;    // in

// Heights above this need not be seen when the whole wall is: the highest hardware and its mark.
double heightWorthSeeing(const WallLayout& layout) {
  double top = 24;
  for (const StrapBody& strap : layout.straps)
    top = std::max(top, strap.plate.z.to + aboveHardware);
  return top;
}

QString text(const std::string& words) { return QString::fromStdString(words); }

} // namespace

ElevationCanvas::ElevationCanvas(Workbench& bench, QWidget* parent) : Canvas(bench, CanvasKind::Elevation, parent) {
  setAccessibleName(tr("Elevation"));
}

void ElevationCanvas::follow(const WorkNotice& notice) {
  if (notice.session.file)
    folded_.clear();
  if (notice.session.file || notice.session.wall)
    fit_ = Fit::Hardware;
  foldAgain();
  makeStale();
}

void ElevationCanvas::showView(ElevationView view) {
  view.scale = std::clamp(view.scale, smallestScale, largestScale);
  if (view == view_)
    return;
  view_ = view;
  makeStale();
  Q_EMIT viewChanged();
}

void ElevationCanvas::zoomToFit() {
  fit_ = Fit::Whole;
  fitAgain();
}

void ElevationCanvas::fitAgain() {
  const auto wall = bench().wall();
  if (fit_ == Fit::None || !wall)
    return;
  const double upTo = fit_ == Fit::Whole ? wall->layout.wall->wallHeight + 2 : heightWorthSeeing(wall->layout);
  showView(fitElevation(wall->layout, pageWindow(), view_.fromInside, upTo, view_.folds));
}

// ---- folds ------------------------------------------------------------------------------------------------------

std::vector<Interval> ElevationCanvas::foldsNow() const {
  std::vector<Interval> folds;
  if (const auto wall = bench().wall())
    for (const Opening& opening : wall->layout.wall->openings)
      if (folded_.contains({wall->layout.wall->id, opening.id}))
        if (const auto fold = foldOf(*wall, opening, bench().session().selection()))
          folds.push_back(*fold);
  std::sort(folds.begin(), folds.end(), [](Interval a, Interval b) { return a.from < b.from; });
  return folds;
}

// Not while something is in hand: the page stands still under it. What else stays in sight stays in the middle.
void ElevationCanvas::foldAgain() {
  if (!bench().inHand()) {
    ElevationView view = view_;
    view.folds = foldsNow();
    if (view.folds != view_.folds) {
      const double middle = pageWindow().x1 / 2, along = view.along(middleStation());
      view.origin.x = middle - (view.fromInside ? -along : along);
      showView(view);
    }
  }
  fitAgain();
}

bool ElevationCanvas::canFold() const {
  const auto wall = bench().wall();
  if (!wall)
    return false;
  const auto& openings = wall->layout.wall->openings;
  return std::any_of(openings.begin(), openings.end(),
                     [&](const Opening& opening) { return foldOf(*wall, opening).has_value(); });
}

void ElevationCanvas::foldOpenings(bool folded) {
  if (const auto wall = bench().wall(); wall && !bench().inHand()) {
    for (const Opening& opening : wall->layout.wall->openings)
      if (folded)
        folded_.insert({wall->layout.wall->id, opening.id});
      else
        folded_.erase({wall->layout.wall->id, opening.id});
    fit_ = Fit::Hardware; // as large as can be
    foldAgain();
  }
  Q_EMIT viewChanged(); // also where nothing could be folded: the switch goes back
}

void ElevationCanvas::mousePressEvent(QMouseEvent* event) {
  const Point2 at = toPage(event->position());
  const auto wall = bench().wall();
  if (wall && event->button() == Qt::LeftButton && !bench().inHand())
    for (const Opening& opening : wall->layout.wall->openings)
      for (const Interval fold : view_.folds)
        if (fold.from > opening.from && fold.to < opening.to &&
            foldBox(view_, wall->layout, pageWindow(), fold).contains(at)) {
          folded_.erase({wall->layout.wall->id, opening.id});
          fit_ = Fit::Hardware;
          foldAgain();
          event->accept();
          return;
        }
  Canvas::mousePressEvent(event);
}

void ElevationCanvas::zoomToSelection() {
  const auto wall = bench().wall();
  if (!wall)
    return;
  std::optional<Interval> seen;
  for (const PieceRef& piece : bench().session().selection()) {
    const auto stations = stationsOf(bench().job(), *wall->layout.wall, piece.piece);
    if (piece.wall == wall->layout.wall->id && stations)
      seen = seen ? hull(*seen, *stations) : *stations;
  }
  if (!seen)
    return zoomToFit();
  fit_ = Fit::None;
  const Interval wide = grown(*seen, aroundSelection);
  const Bounds page = pageWindow();
  ElevationView view = view_;
  view.scale = std::min(selectionScale, page.x1 / wide.length());
  view.origin.x = page.x1 / 2 - (view.fromInside ? -1 : 1) * view.along(wide.middle());
  view.origin.y = page.y1 * 0.5;
  showView(view);
}

void ElevationCanvas::zoomBy(double factor, QPointF about) {
  fit_ = Fit::None;
  const Point2 at = toPage(about);
  ElevationView view = view_;
  const double s = view.s(at.x), z = view.z(at.y);
  view.scale = std::clamp(view.scale * factor, smallestScale, largestScale);
  view.origin = {at.x - (view.fromInside ? -1 : 1) * view.along(s), at.y + z * view.scale};
  showView(view);
}

void ElevationCanvas::panBy(QPointF pixels) {
  fit_ = Fit::None;
  ElevationView view = view_;
  view.origin.x += pixels.x() / pixelsPerPoint;
  view.origin.y += pixels.y() / pixelsPerPoint;
  showView(view);
}

void ElevationCanvas::setFromInside(bool inside) {
  if (inside == view_.fromInside)
    return;
  ElevationView view = view_;
  const double middle = middleStation();
  view.fromInside = inside;
  view.origin.x = pageWindow().x1 / 2 - (inside ? -1 : 1) * view.along(middle); // the same stretch stays in sight
  showView(view);
  fitAgain();
}

double ElevationCanvas::pourLinePixel() const { return toPixel(view_.origin).y(); }

double ElevationCanvas::middleStation() const {
  return view_.shown(view_.s(pageWindow().x1 / 2));
}

void ElevationCanvas::resizeEvent(QResizeEvent* event) {
  Canvas::resizeEvent(event);
  fitAgain();
  makeStale(); // labels stay inside the window
}

// ---- drawing ----------------------------------------------------------------------------------------------------

QRegion ElevationCanvas::redraw() {
  ++drawn_;
  ElevationDrawing next;
  const auto wall = bench().wall();
  if (wall && !pageWindow().empty()) {
    ElevationInput input;
    input.job = &bench().job();
    input.wall = wall.get();
    input.view = view_;
    input.window = pageWindow();
    input.selection = bench().session().selection();
    input.inHand = bench().inHand() ? &*bench().inHand() : nullptr;
    input.proposal = bench().refitDesk().shown();
    input.lastLabels = std::move(shown_.labels);
    input.lastLook = shown_.look;
    input.words = flagWords;
    next = drawElevation(input);
  } else {
    TextStyle style{13, Weight::Regular, Anchor::Middle, 0, Ink::None, 0};
    const Point2 middle{pageWindow().x1 / 2, pageWindow().y1 / 2};
    next.drawing.text(middle, tr("This job has no wall yet.").toStdString(), Ink::Text2, style);
    next.drawing.text(
        {middle.x, middle.y + 20},
        tr("Begin with a starter of the shelf, or draw its walls on the plan (F3).").toStdString(),
        Ink::Text2, style);
  }
  const Bounds listBox = listBoxOver(next);
  const bool listChanged = next.listed != shown_.listed || !(listBox == listBox_);
  listBox_ = listBox;
  const QRegion changed = listChanged ? QRegion(rect()) : pixelsOf(changedArea(shown_.drawing, next.drawing));
  shown_ = std::move(next);
  return changed;
}

// Findings whose label found no place on the drawing, under one another in the corner where they cover the least text;
// in the corner where they were as long as that is free.
Bounds ElevationCanvas::listBoxOver(const ElevationDrawing& drawn) const {
  if (drawn.listed.empty())
    return {};
  double wide = 0;
  for (const std::string& words : drawn.listed)
    wide = std::max(wide, textWidth(words, listSize));
  const Bounds window = pageWindow().grown(-6);
  const double across = wide + 12, down = listLine * static_cast<double>(drawn.listed.size()) + 6;
  const Bounds corners[] = {{window.x0, window.y1 - down, window.x0 + across, window.y1},
                            {window.x0, window.y0, window.x0 + across, window.y0 + down},
                            {window.x1 - across, window.y0, window.x1, window.y0 + down},
                            {window.x1 - across, window.y1 - down, window.x1, window.y1}};
  const auto covered = [&](const Bounds& box) {
    double area = 0;
    for (const TakenBox& taken : drawn.drawing.taken()) {
      const double x = std::min(box.x1, taken.box.x1) - std::max(box.x0, taken.box.x0);
      const double y = std::min(box.y1, taken.box.y1) - std::max(box.y0, taken.box.y0);
      area += x > 0 && y > 0 ? x * y : 0;
    }
    return area;
  };
  const Bounds* best = &corners[0];
  for (const Bounds& corner : corners) {
    const bool before = corner.x0 == listBox_.x0 && std::abs(corner.y1 - listBox_.y1) < listLine;
    if (covered(corner) < covered(*best) || (before && covered(corner) == 0))
      best = &corner;
  }
  return *best;
}

Drawing ElevationCanvas::listedLabels() const {
  Drawing list;
  if (shown_.listed.empty())
    return list;
  const Bounds& box = listBox_;
  list.fillRect(box.x0, box.y0, box.x1, box.y1, Ink::Paper);
  list.rect(box.x0, box.y0, box.x1, box.y1, Ink::Rule, 0.7);
  for (std::size_t i = 0; i < shown_.listed.size(); ++i)
    list.text({box.x0 + 6, box.y0 + 3 + listLine * static_cast<double>(i) + 9}, shown_.listed[i], Ink::Text,
              TextStyle{listSize});
  return list;
}

void ElevationCanvas::paintContent(QPainter& painter, const QRect& clip) {
  paintDrawing(painter, shown_.drawing, clip);
  paintDrawing(painter, listedLabels(), clip);
}

const Drawing& ElevationCanvas::drawing() {
  refresh();
  return shown_.drawing;
}

// ---- the pointer ------------------------------------------------------------------------------------------------

std::optional<HitArea> ElevationCanvas::topmostAt(Point2 page, double reach) const {
  return topmost(shown_.drawing.hits(), page, reach);
}

void ElevationCanvas::locate(Point2 page, PointerAt& pointer) const {
  pointer.at = {view_.shown(view_.s(page.x)), 0, view_.z(page.y)}; // a hand over a fold jumps over what is gone
}

QString ElevationCanvas::wordsFor(const PointerAt& pointer) const {
  const auto wall = bench().wall();
  if (!wall)
    return {};
  const LengthStyle units = bench().job().units;
  const double up = pointer.at.z - pourAt(wall->layout, pointer.at.s);
  const QString along = text(printLength(pointer.at.s, units));
  const QString measure = text(printMeasure(std::abs(up), units));
  return up < 0 ? tr("%1 along, %2 below the pour line").arg(along, measure)
                : tr("%1 along, %2 above the pour line").arg(along, measure);
}

Point2 ElevationCanvas::nudgeOf(Point2 arrow) const { return {view_.fromInside ? -arrow.x : arrow.x, arrow.y}; }

// What a refit would do with a piece.
QString ElevationCanvas::proposedFor(Id piece) const {
  const ShownProposal* proposal = bench().refitDesk().shown();
  const auto wall = bench().wall();
  if (!proposal || !wall || proposal->wall != wall->layout.wall->id)
    return {};
  for (const Change& change : proposal->changes)
    if (pieceOf(change) == piece)
      return tr("proposed: %1").arg(text(changeWords(*wall->layout.wall, change, bench().job().units)));
  return {};
}

std::vector<SpokenPiece> ElevationCanvas::spokenPieces() {
  const auto wall = bench().wall();
  std::vector<SpokenPiece> pieces;
  if (!wall)
    return pieces;
  std::unordered_map<Id, Bounds> boxes;
  for (const HitArea& hit : drawing().hits())
    if (hit.part != HitArea::Part::Label && hit.part != HitArea::Part::Name && hit.piece.wall == wall->layout.wall->id) {
      const auto [at, fresh] = boxes.try_emplace(hit.piece.piece, hit.box);
      if (!fresh)
        at->second = hull(at->second, hit.box);
    }
  const WallLine& line = *wall->layout.wall;
  const Selection& selection = bench().session().selection();
  std::vector<std::pair<double, SpokenPiece>> byStation;
  for (const Id id : piecesOf(line)) {
    const auto box = boxes.find(id);
    if (box == boxes.end())
      continue;
    const Piece piece = *findPiece(line, id);
    const double station = stationOf(line, id).value_or(0);
    SpokenPiece spoken;
    spoken.piece = {line.id, id};
    const std::string kind(tradeName(kindOf(piece)));
    spoken.name = tr("%1, %2, at %3").arg(text(markOf(piece)), text(kind),
                                          text(printLength(station, bench().job().units)));
    spoken.description = findingsInWords(bench().job(), *wall, id);
    if (const QString proposed = proposedFor(id); !proposed.isEmpty())
      spoken.description = spoken.description.isEmpty() ? proposed : tr("%1; %2").arg(proposed, spoken.description);
    spoken.box = pixelsOf({box->second}).boundingRect();
    spoken.selected = std::find(selection.begin(), selection.end(), spoken.piece) != selection.end();
    byStation.emplace_back(station, std::move(spoken));
  }
  std::stable_sort(byStation.begin(), byStation.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  for (auto& [station, piece] : byStation)
    pieces.push_back(std::move(piece));
  return pieces;
}

} // namespace sillwright
