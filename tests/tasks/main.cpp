// Tasks of somebody who lays out walls, played with real events in the real window: how many actions each takes.
// Prints "T1 17" (task, actions) a line; fails where a task does not end as it should.
#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QFile>
#include <QLineEdit>
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

// The plan drawn as a rectangle; then the schedule of 12 panels, typed elsewhere, pasted.
bool houseFromSchedule(const QDir&) {
  Desk desk(newJob());
  QAbstractButton* starter = desk.window.shelf().itemButton(std::string(starterPrefix) + "rectangle");
  if (!starter)
    return complain("T3", "the starter is not on the shelf");
  desk.hand.asked([&] { desk.hand.click(*starter); },
                  [&](QWidget& form) {
                    const auto lines = form.findChildren<QLineEdit*>();
                    desk.hand.retype(*lines[0], QStringLiteral("40'"));
                    desk.hand.retype(*lines[1], QStringLiteral("30'"));
                    desk.hand.key(*lines[1], Qt::Key_Return);
                  });
  desk.settle();
  QString table = QStringLiteral("wall\tpanel\tend\tmark\tfrom\tto\n");
  int panel = 0;
  for (const char wall : {'A', 'B', 'C', 'D'}) {
    const bool side = wall == 'B' || wall == 'D';
    for (const char* stretch : {"0\t6'", side ? "12'\t18'" : "17'\t23'", side ? "24'\t30'" : "34'\t40'"})
      table +=
          QStringLiteral("%1\tP%2\tboth\tHD1\t%3\n").arg(QLatin1Char(wall)).arg(++panel).arg(QLatin1String(stretch));
  }
  QApplication::clipboard()->setText(table);
  Schedule& schedule = desk.window.schedule();
  desk.hand.click(*schedule.viewport());
  desk.hand.key(schedule, Qt::Key_V, Qt::ControlModifier);
  desk.settle();
  std::size_t panels = 0, straps = 0;
  for (std::size_t i = 0; i < desk.bench.job().walls.size(); ++i) {
    panels += desk.bench.job().walls[i].panels.size();
    straps += desk.bench.job().walls[i].straps.size();
  }
  if (panels != 12 || straps != 24)
    return complain("T3", "there are no 12 panels with a strap at each end");
  if (desk.bench.checker().counts().fix != 0)
    return complain("T3", "something is to FIX");
  return done("T3", desk, 120);
}

// The right pier made from the left one by mirror, then the strap that stood there matched with its pair.
bool secondPier(const QDir&) {
  auto job = loadJob(std::string(SILLWRIGHT_SOURCE_DIR) + "/samples/boat-shed-front.sillwright");
  if (!job)
    return complain("T4", job.problem().text().c_str());
  WallLine front = job->walls[0];
  const Opening opening = front.openings.front();
  const auto atRight = [&](double station) { return station > opening.to; };
  std::erase_if(front.bolts, [&](const Bolt& bolt) { return atRight(bolt.station); });
  std::erase_if(front.panels, [&](const Panel& panel) { return atRight(panel.to); });
  std::erase_if(front.straps, [&](const Strap& strap) { return strap.station > opening.to + 12; });
  for (Strap& strap : front.straps)
    if (atRight(strap.station)) {
      strap.station += 0.4375;
      strap.heightOffset = 0.25;
    }
  const Id wall = front.id;
  job->walls.replace(front);
  Desk desk(*job);
  if (desk.bench.checker().counts().fix == 0)
    return complain("T4", "nothing is amiss to begin with");
  ElevationCanvas& elevation = desk.window.elevation();
  desk.hand.click(elevation, desk.middleOf({wall, opening.id}));
  desk.hand.key(elevation, Qt::Key_M, Qt::ControlModifier);
  desk.hand.click(elevation, desk.middleOf({wall, opening.id}));
  desk.hand.key(elevation, Qt::Key_E, Qt::ControlModifier);
  desk.settle();
  const WallLine& after = *desk.bench.job().walls.find(wall);
  const double length = desk.bench.wall()->layout.length;
  std::vector<double> stations;
  for (const Strap& strap : after.straps)
    stations.push_back(strap.station);
  std::sort(stations.begin(), stations.end());
  if (stations.size() != 4 || stations[0] + stations[3] != length || stations[1] + stations[2] != length)
    return complain("T4", "the piers are not alike");
  if (desk.bench.checker().counts().fix != 0)
    return complain("T4", "something is to FIX");
  return done("T4", desk, 4);
}

} // namespace

int playAll() {
  const QTemporaryDir folder;
  const QDir into(folder.path());
  bool good = true;
  for (const auto& task : {frontFromNothing, barMoved, houseFromSchedule, secondPier})
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
