// Tasks of somebody who lays out walls, played with real events in the real window: how many actions each takes.
// Prints "T1 17" (task, actions) a line; fails where a task does not end as it should.
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <cstdio>
#include <cstring>
#include <functional>

#include "app/services.h"
#include "core/edit/operations.h"
#include "core/store/files.h"
#include "tests/tasks/hand.h"
#include "ui/canvas/canvas.h"
#include "ui/paint/fonts.h"
#include "ui/window/main_window.h"

namespace sillwright::tasks {

namespace {

struct Desk {
  Workbench bench;
  MainWindow window;
  Hand hand;

  explicit Desk(Job job) : bench(std::move(job)), window(bench, fileServices()) {
    window.resize(1600, 1000);
    window.show();
    window.elevation().setFocus();
    window.elevation().zoomToFit();
    settle();
  }
  void settle() {
    window.activateWindow(); // after a dialog this platform gives it back to nobody
    if (!QTest::qWaitForWindowActive(&window))
      std::fprintf(stderr, "the window does not become active\n");
    QTest::qWait(50);
  }

  // Three actions: the key, the name, Enter.
  bool writeSheet(const QString& path) {
    hand.asked([&] { hand.key(window, Qt::Key_P, Qt::ControlModifier); },
               [&](QWidget& dialog) {
                 hand.type(*dialog.focusWidget(), path);
                 hand.key(*dialog.focusWidget(), Qt::Key_Return);
               });
    settle();
    QFile file(path);
    return file.open(QIODevice::ReadOnly) && file.read(5) == "%PDF-";
  }

  QPoint middleOf(PieceRef piece) const {
    for (const HitArea& hit : window.elevation().drawing().hits())
      if (hit.piece == piece && hit.part == HitArea::Part::Body)
        return window.elevation().toPixel({(hit.box.x0 + hit.box.x1) / 2, (hit.box.y0 + hit.box.y1) / 2}).toPoint();
    return {};
  }

  bool wait(const std::function<bool()>& until) const { return QTest::qWaitFor(until, 20'000); }
};

bool complain(const char* task, const char* what) {
  std::fprintf(stderr, "%s: %s\n", task, what);
  return false;
}

bool done(const char* task, const Desk& desk, int most) {
  std::printf("%s %d\n", task, desk.hand.actions());
  return desk.hand.actions() <= most || complain(task, "more actions than it may take");
}

// An empty job → a front with two piers, laid out without a FIX → a PDF.
bool frontFromNothing(const QDir& folder) {
  Desk desk(newJob());
  QAbstractButton* starter = desk.window.shelf().itemButton(std::string(starterPrefix) + "two-piers");
  if (!starter)
    return complain("T1", "the starter is not on the shelf");
  desk.hand.asked([&] { desk.hand.click(*starter); },
                  [&](QWidget& form) { desk.hand.key(*form.focusWidget(), Qt::Key_Return); });
  desk.settle();
  const auto wall = desk.bench.wall();
  if (!wall || wall->layout.wall->openings.size() != 1 || wall->layout.wall->straps.size() != 4)
    return complain("T1", "there is no front with an opening between two strapped piers");
  if (desk.bench.checker().counts().fix != 0)
    return complain("T1", "something is to FIX");
  if (!desk.writeSheet(folder.filePath(QStringLiteral("front.pdf"))))
    return complain("T1", "no sheet was written");
  return done("T1", desk, 20);
}

Counts countsOf(const Job& job) {
  Counts counts;
  for (const auto& wall : checkAll(job))
    counts += wall->counts;
  return counts;
}

// A tape's breadth to either side too: the hand is not exact.
bool isInTheWay(const Job& job, PieceRef bar, double along) {
  const Counts before = countsOf(job);
  for (const double off : {-0.25, 0.0, 0.25})
    if (countsOf(movePieces(job, {&bar, 1}, along + off)).fix <= before.fix)
      return false;
  return true;
}

std::optional<PieceRef> barInTheWay(const Job& job, double along) {
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    for (const Bar& bar : job.walls[i].bars)
      if (const PieceRef ref{job.walls[i].id, bar.id}; bar.run == BarRun::Upright && isInTheWay(job, ref, along))
        return ref;
  return std::nullopt;
}

// A bar found 1 1/2 in from where it was → refit → accepted → the sheet again.
bool barMoved(const QDir& folder) {
  const auto job = loadJob(std::string(SILLWRIGHT_SOURCE_DIR) + "/samples/ridge-house.sillwright");
  if (!job)
    return complain("T2", job.problem().text().c_str());
  const auto moved = barInTheWay(*job, 1.5);
  if (!moved)
    return complain("T2", "no bar would be in the way");
  Desk desk(*job);
  desk.bench.session().show(moved->wall);
  desk.settle();
  const WallLine before = *desk.bench.wall()->layout.wall;
  ElevationCanvas& elevation = desk.window.elevation(); // the task begins with that end of the wall in view
  elevation.zoomBy(4, desk.middleOf(*moved));
  desk.settle();
  const QPoint from = desk.middleOf(*moved);
  const double pixels = 1.5 * elevation.view().scale * pixelsPerPoint;
  // Alt: steel is where it is, not where a rule would have it.
  desk.hand.drag(elevation, from, from + QPoint(qRound(pixels), 0), Qt::AltModifier);
  const auto stationOf = [&](const WallLine& wall) { return placeOf(*findIn(wall.bars, moved->piece)).a.s; };
  if (std::abs(stationOf(*desk.bench.wall()->layout.wall) - stationOf(before) - 1.5) > 0.25)
    return complain("T2", "the bar was not moved by 1 1/2 in");
  if (desk.bench.checker().counts().fix == 0)
    return complain("T2", "the bar is in nobody's way");
  desk.hand.key(elevation, Qt::Key_F5);
  if (!desk.wait([&] { return desk.bench.refitDesk().canAccept(); }))
    return complain("T2", "nothing is proposed");
  desk.hand.key(desk.window, Qt::Key_F5, Qt::ControlModifier);
  if (desk.bench.checker().counts().fix != 0)
    return complain("T2", "something is to FIX");
  const WallLine& after = *desk.bench.wall()->layout.wall;
  if (after.bolts == before.bolts && after.straps == before.straps)
    return complain("T2", "nothing has moved");
  if (!desk.writeSheet(folder.filePath(QStringLiteral("moved.pdf"))))
    return complain("T2", "no sheet was written");
  return done("T2", desk, 6);
}

} // namespace

int playAll() {
  const QTemporaryDir folder;
  const QDir into(folder.path());
  bool good = true;
  for (const auto& task : {frontFromNothing, barMoved})
    good = task(into) && good;
  return good ? 0 : 1;
}

} // namespace sillwright::tasks

int main(int count, char** words) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
    qputenv("QT_QPA_PLATFORM", "offscreen");
  sillwright::leaveOutMonospacedNamesake();
  QStandardPaths::setTestModeEnabled(true);
  QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
  QApplication application(count, words);
  return sillwright::tasks::playAll();
}
