// Makes the pictures of the README: make_pictures FOLDER. Without a display: QT_QPA_PLATFORM=offscreen.
#include <QApplication>
#include <QLineEdit>
#include <QMouseEvent>
#include <QPainter>
#include <QPixmap>
#include <QStandardPaths>
#include <QTimer>

#include <algorithm>
#include <cstdio>
#include <random>

#include "core/edit/operations.h"
#include "core/model/lookup.h"
#include "core/rules/rule_book.h"
#include "tests/support/disturbed_job.h"
#include "tests/support/sample_jobs.h"
#include "ui/paint/fonts.h"
#include "ui/paint/painter.h"
#include "ui/panels/look.h"
#include "ui/sheet/pages.h"
#include "ui/window/form_dialog.h"
#include "ui/window/main_window.h"

namespace sillwright {
namespace {

QString folder;

void settle() {
  for (int i = 0; i < 10; ++i)
    QApplication::processEvents();
}

void save(const QPixmap& picture, const char* name) {
  const QString path = folder + QLatin1Char('/') + QLatin1String(name) + QLatin1String(".png");
  if (!picture.save(path))
    std::fprintf(stderr, "%s cannot be written\n", path.toLocal8Bit().constData());
}

struct OpenWindow {
  Workbench bench;
  MainWindow window;
  OpenWindow(Job job, QSize size, ThemeChoice theme) : bench(std::move(job)), window(bench, {}) {
    window.resize(size);
    window.chooseTheme(theme);
    window.show();
    settle();
  }
};

PieceRef pieceOf(const Job& job, const std::string& mark) {
  PieceRef found;
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    for (const Id id : piecesOf(job.walls[i]))
      if (markOf(job, {job.walls[i].id, id}) == mark)
        found = {job.walls[i].id, id};
  return found;
}

void wholeWindow(const char* name, ThemeChoice theme) {
  OpenWindow open(support::boatShedFrontSteelMoved(), {1600, 1000}, theme);
  open.bench.session().select({pieceOf(open.bench.job(), "S1")});
  settle();
  save(open.window.grab(), name);
}

void ruleBook(const char* name) {
  OpenWindow open(support::punchListPractice(), {1600, 1000}, ThemeChoice::Light);
  open.bench.goTo(open.window.punchList().finding(0)->finding());
  for (int row = 0; row < open.window.punchList().rowCount(); ++row)
    if (const Finding finding = open.window.punchList().finding(row)->finding(); finding.window) {
      open.bench.goTo(finding);
      open.window.showRule(finding.rule);
      break;
    }
  settle();
  save(open.window.grab(), name);
}

void hardware(const char* name) {
  OpenWindow open(support::punchListPractice(), {1280, 800}, ThemeChoice::Light);
  open.window.openTypes(open.bench.job().types->straps.front().id);
  settle();
  save(open.window.grab(), name);
}

// The wall-end schedule of a house, sorted, with a station typed that cannot be.
void schedule(const char* name) {
  OpenWindow open(support::ridgeHouse(), {1600, 1000}, ThemeChoice::Light);
  Schedule& table = open.window.schedule();
  table.sortBy(ScheduleModel::AtColumn);
  table.setCurrentIndex(table.ends().index(1, ScheduleModel::AtColumn));
  table.goToRow(1);
  table.setFocus();
  const auto press = [](QWidget& on, Qt::Key key, const QString& words = {}) {
    QKeyEvent event(QEvent::KeyPress, key, Qt::NoModifier, words);
    QApplication::sendEvent(&on, &event);
    settle();
  };
  press(table, Qt::Key_F2);
  if (auto* cell = table.findChild<QLineEdit*>(QStringLiteral("cell"))) {
    cell->setText(QStringLiteral("90'"));
    press(*cell, Qt::Key_Return, QStringLiteral("\r"));
  }
  save(open.window.grab(), name);
}

// One finding of each subject on the elevation, worst first, two beside each other.
void findings(const char* name) {
  OpenWindow open(support::punchListPractice(), {1280, 800}, ThemeChoice::Light);
  ElevationCanvas& canvas = open.window.elevation();
  std::vector<std::string_view> subjects;
  for (const RuleRow& row : sillwright::ruleBook())
    if (std::find(subjects.begin(), subjects.end(), row.subject) == subjects.end())
      subjects.push_back(row.subject);
  std::vector<QPixmap> tiles;
  for (const std::string_view subject : subjects)
    for (int row = 0; row < open.window.punchList().rowCount(); ++row) {
      const Finding finding = open.window.punchList().finding(row)->finding();
      if (rule(finding.rule).subject != subject)
        continue;
      open.bench.goTo(finding);
      canvas.zoomToSelection();
      if (subject == "strap" || subject == "rod") // down to what is in the concrete
        canvas.zoomBy(0.45, QRectF(canvas.rect()).center());
      settle();
      tiles.push_back(canvas.grab());
      break;
    }
  const int wide = tiles.front().width(), high = tiles.front().height(), gap = 12;
  const int rows = (static_cast<int>(tiles.size()) + 1) / 2;
  QPixmap all(2 * wide + gap, rows * (high + gap) - gap);
  all.fill(Qt::white);
  QPainter painter(&all);
  for (std::size_t i = 0; i < tiles.size(); ++i)
    painter.drawPixmap(static_cast<int>(i % 2) * (wide + gap), static_cast<int>(i / 2) * (high + gap), tiles[i]);
  painter.end();
  save(all, name);
}

// A piece held at its middle on the elevation, zoomed to it and then out again; zoom 0: in the view there is.
class Held {
public:
  Held(OpenWindow& open, PieceRef piece, double zoom, Qt::KeyboardModifiers keys = {})
      : canvas_(open.window.elevation()), keys_(keys) {
    open.bench.session().select({piece});
    if (zoom > 0) {
      canvas_.zoomToSelection();
      canvas_.zoomBy(zoom, QRectF(canvas_.rect()).center());
    }
    settle();
    for (const HitArea& hit : canvas_.drawing().hits())
      if (hit.piece == piece && hit.part == HitArea::Part::Body)
        at_ = canvas_.toPixel({(hit.box.x0 + hit.box.x1) / 2, (hit.box.y0 + hit.box.y1) / 2});
    send(QEvent::MouseButtonPress, 0);
  }
  void moveTo(double inches) { send(QEvent::MouseMove, inches); } // from where it was
  QPixmap picture() const { return canvas_.grab(); }

private:
  void send(QEvent::Type type, double inches) {
    const QPointF to = at_ + QPointF(inches * canvas_.view().scale * pixelsPerPoint, 0);
    const Qt::MouseButton button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
    QMouseEvent event(type, to, canvas_.mapToGlobal(to), button, Qt::LeftButton, keys_);
    QApplication::sendEvent(&canvas_, &event);
    settle();
  }
  ElevationCanvas& canvas_;
  Qt::KeyboardModifiers keys_;
  QPointF at_;
};

QPixmap stacked(const std::vector<QPixmap>& moments) {
  const int high = moments.front().height(), gap = 8, count = static_cast<int>(moments.size());
  QPixmap all(moments.front().width(), count * (high + gap) - gap);
  all.fill(Qt::white);
  QPainter painter(&all);
  for (int i = 0; i < count; ++i)
    painter.drawPixmap(0, i * (high + gap), moments[static_cast<std::size_t>(i)]);
  return all;
}

// A strap dragged across a bar: three moments of one drag, one above the other.
void drag(const char* name) {
  OpenWindow open(support::boatShedFrontSteelMoved(), {1600, 1000}, ThemeChoice::Light);
  Held held(open, pieceOf(open.bench.job(), "S3"), 0.36);
  std::vector<QPixmap> moments;
  for (int step = 1; step <= 12; ++step) {
    held.moveTo(step * 0.25);
    if (step == 2 || step == 7 || step == 11)
      moments.push_back(held.picture());
  }
  open.bench.cancel();
  save(stacked(moments), name);
}

// A piece held where it may not stand: its slots, what stops it at their ends, and where it drops.
void slotsOfPiece(const char* name, const Job& job, const char* mark, double inches, double zoom) {
  OpenWindow open(job, {1600, 1000}, ThemeChoice::Light);
  Held held(open, pieceOf(open.bench.job(), mark), zoom);
  for (int step = 1; step <= 8; ++step)
    held.moveTo(inches * step / 8);
  save(held.picture(), name);
  open.bench.cancel();
}

// The opening folded away, so that two piers share the canvas.
void fold(const char* name) {
  OpenWindow open(support::boatShedFrontSteelMoved(), {1600, 1000}, ThemeChoice::Light);
  open.bench.session().select({pieceOf(open.bench.job(), "S1")});
  open.window.elevation().foldOpenings(true);
  settle();
  save(open.window.grab(), name);
}

// The whole wall with a strap in hand: a window on it at a scale with sixteenths. In daylight and in the dark.
void closeLook(const char* name) {
  std::vector<QPixmap> themes;
  for (const ThemeChoice theme : {ThemeChoice::Light, ThemeChoice::Dark}) {
    OpenWindow open(support::boatShedFrontSteelMoved(), {1900, 1300}, theme);
    open.window.elevation().zoomToFit();
    Held held(open, pieceOf(open.bench.job(), "S3"), 0);
    for (int step = 1; step <= 8; ++step) // out and back: at this scale half an inch is no drag yet
      held.moveTo(step);
    held.moveTo(0.5);
    themes.push_back(held.picture());
    open.bench.cancel();
  }
  save(stacked(themes), name);
}

// The form of a starter as it opens on a job without walls.
void starter(const char* name, const char* key) {
  OpenWindow open(newJob(), {1280, 800}, ThemeChoice::Light);
  QTimer waiting;
  QObject::connect(&waiting, &QTimer::timeout, [&] {
    auto* form = qobject_cast<FormDialog*>(QApplication::activeModalWidget());
    if (!form)
      return;
    form->resize(760, 620);
    settle();
    save(form->grab(), name);
    form->reject();
  });
  waiting.start(50);
  open.window.openStarter(key);
}

// What is proposed for the wall in view, with the first change looked at.
void refit(const char* name, const Job& job) {
  OpenWindow open(job, {1600, 1000}, ThemeChoice::Light);
  open.bench.refitDesk().solveBy({}); // here, not beside the window: the picture waits for it
  open.window.refitWall(RefitDesk::Aim::LeastMoved);
  RefitList& list = open.window.refitPanel().list();
  const int row = !open.bench.refitDesk().conflicts().empty() ? 2 : 0;
  list.setCurrentIndex(list.rows().index(row));
  list.goToRow(row);
  settle();
  save(open.window.grab(), name);
}

// A house whose steel turned out to be elsewhere, laid out again wall by wall.
void refitAllWalls(const char* name) {
  std::mt19937 random(10);
  OpenWindow open(disturbed(support::ridgeHouse(), random), {1280, 800}, ThemeChoice::Light);
  open.bench.jobRefitDesk().solveBy({});
  open.window.refitAllWalls();
  JobRefitList& list = open.window.jobRefitPanel().list();
  list.setCurrentIndex(list.rows().index(0));
  settle();
  save(open.window.grab(), name);
}

// A house on the way: five corners set, the next one in line with the first.
void drawPlan(const char* name) {
  OpenWindow open(newJob(), {1280, 800}, ThemeChoice::Light);
  open.window.drawWalls();
  settle();
  PointerAt pointer;
  pointer.canvas = CanvasKind::Plan;
  pointer.reach = 4;
  for (const Point2 corner : {Point2{0, 0}, {294, 0}, {294, 216}, {174, 216}, {174, 324}}) {
    pointer.plan = corner;
    open.bench.hover(pointer);
    open.bench.press(pointer);
  }
  pointer.plan = {2, 325};
  open.bench.hover(pointer);
  settle();
  save(open.window.grab(), name);
}

// The first page of a kind on Tabloid.
QPixmap pageOf(const Job& job, PageKind kind, double dotsPerInch) {
  SheetOptions options;
  options.paper = *paperByKey("tabloid");
  options.date = "2031-05-14";
  options.kinds = {kind};
  const std::vector<Page> pages = composeSheets(job, options);
  const Page& page = pages.front();
  const double scale = dotsPerInch / 72;
  QPixmap picture(static_cast<int>(page.width * scale), static_cast<int>(page.height * scale));
  picture.fill(Qt::white);
  QPainter painter(&picture);
  painter.setRenderHint(QPainter::Antialiasing);
  PaintStyle style;
  style.theme = ThemeName::Print;
  style.scale = scale;
  paint(painter, page.drawing, style);
  painter.end();
  return picture;
}

// From the bar that turns out to be elsewhere to the sheet: five moments of the left pier, each with its words.
class Sequence {
public:
  Sequence() : open_(support::boatShedFront(), {1600, 1000}, ThemeChoice::Light), canvas_(open_.window.elevation()) {
    open_.bench.refitDesk().solveBy({});
  }
  QPixmap picture() {
    look();
    moveBar();
    add(canvas_.grab(), "2  … and is in the way");
    open_.bench.refitDesk().open(RefitDesk::Aim::LeastMoved);
    settle();
    add(canvas_.grab(), "3  Refit: what has to move, and how far");
    open_.bench.refitDesk().accept();
    settle();
    add(canvas_.grab(), "4  Accepted, in one step");
    const QPixmap page = pageOf(open_.bench.job(), PageKind::Elevation, 110);
    addTile(page.copy(40, 530, tileWide, tileHigh), "5  What the crew sets from");
    return together();
  }

private:
  static constexpr int tileWide = 720, tileHigh = 480, captionHigh = 34, gap = 16;
  static constexpr double movedBy = -3.75; // in

  void moveBar() {
    const PieceRef ref = pieceOf(open_.bench.job(), "V2");
    Held held(open_, ref, 0, Qt::AltModifier); // where it was found, not where it might go
    for (int step = 1; step <= 8; ++step)
      held.moveTo(movedBy * step / 8);
    add(held.picture(), "1  A bar turns out to be elsewhere …");
    open_.bench.cancel();
    Bar bar = std::get<Bar>(*findPiece(open_.bench.job(), ref));
    bar.found = bar.planned;
    for (Point3* end : {&bar.found->a, &bar.found->b})
      end->s += movedBy;
    open_.bench.session().apply(replacePiece(open_.bench.session().base(), ref.wall, bar), "Bar found", {});
    settle();
  }
  void look() {
    open_.bench.session().select({pieceOf(open_.bench.job(), "S1"), pieceOf(open_.bench.job(), "S2")});
    canvas_.zoomToSelection();
    canvas_.zoomBy(0.4, QRectF(canvas_.rect()).center());
    open_.bench.session().select({});
    settle();
  }
  void add(const QPixmap& canvas, const char* words) {
    const double left = canvas_.toPixel({canvas_.view().x(-24), 0}).x();
    addTile(canvas.copy(static_cast<int>(left), 0, tileWide, tileHigh), words);
  }
  void addTile(const QPixmap& picture, const char* words) { tiles_.push_back({picture, QString::fromUtf8(words)}); }
  QPixmap together() const {
    constexpr int high = tileHigh + captionHigh + gap;
    QPixmap all(2 * tileWide + gap, 3 * high - gap);
    all.fill(Qt::white);
    QPainter painter(&all);
    for (std::size_t i = 0; i < tiles_.size(); ++i) {
      const int x = static_cast<int>(i % 2) * (tileWide + gap), y = static_cast<int>(i / 2) * high;
      paintWords(painter, ThemeName::Light, {x + 2.0, y + 22.0}, tiles_[i].second, 16, Ink::Text, Weight::Bold);
      painter.drawPixmap(x, y + captionHigh, tiles_[i].first);
      painter.setPen(Qt::lightGray);
      painter.drawRect(x, y + captionHigh, tileWide - 1, tileHigh - 1);
    }
    return all;
  }

  OpenWindow open_;
  ElevationCanvas& canvas_;
  std::vector<std::pair<QPixmap, QString>> tiles_;
};

} // namespace
} // namespace sillwright

int main(int argc, char** argv) {
  using namespace sillwright;
  if (argc != 2) {
    std::fprintf(stderr, "usage: make_pictures FOLDER\n");
    return 2;
  }
  leaveOutMonospacedNamesake();
  QStandardPaths::setTestModeEnabled(true);
  QApplication application(argc, argv);
  folder = QString::fromLocal8Bit(argv[1]);
  wholeWindow("window", ThemeChoice::Light);
  wholeWindow("window-dark", ThemeChoice::Dark);
  ruleBook("rule-book");
  findings("findings");
  hardware("hardware");
  schedule("schedule");
  drawPlan("draw-plan");
  drag("drag");
  fold("fold");
  closeLook("close-look");
  slotsOfPiece("slots-strap", support::boatShedFront(), "S1", -1.75, 0.5);
  slotsOfPiece("slots-bolt", support::boatShedFront(), "B2", -3, 0.5);
  refit("refit-proposal", support::boatShedFrontSteelMoved());
  refit("refit-conflict", support::boatShedFrontNoRoom());
  starter("starter", "two-piers");
  refitAllWalls("refit-all-walls");
  save(Sequence().picture(), "refit-sequence");
  save(pageOf(support::boatShedFrontSteelMoved(), PageKind::Elevation, 110), "sheet");
  save(pageOf(support::boatShedFrontNoRoom(), PageKind::Question, 110), "question");
  return 0;
}
