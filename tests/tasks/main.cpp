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
    if (!QTest::qWaitForWindowActive(&window))
      std::fprintf(stderr, "the window does not become active\n");
    window.elevation().setFocus();
    window.elevation().zoomToFit();
    settle();
  }
  void settle() const { QTest::qWait(50); }

  // Three actions: the key, the name, Enter.
  bool writeSheet(const QString& path) {
    hand.asked([&] { hand.key(window, Qt::Key_P, Qt::ControlModifier); },
               [&](QWidget& dialog) {
                 QWidget* name = dialog.focusWidget() ? dialog.focusWidget() : &dialog;
                 hand.type(*name, path);
                 hand.key(*name, Qt::Key_Return);
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
                  [&](QWidget& dialog) { desk.hand.key(*dialog.focusWidget(), Qt::Key_Return); });
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

// A bar found 1 1/2 in from where it was → refit → accepted → the sheet again.
bool barMoved(const QDir& folder) {
  const auto job = loadJob(std::string(SILLWRIGHT_SOURCE_DIR) + "/samples/boat-shed-front.sillwright");
  if (!job)
    return complain("T2", job.problem().text().c_str());
  Desk desk(*job);
  const WallLine before = *desk.bench.wall()->layout.wall;
  // The upright that 1 1/2 in to the right brings nearest to a bolt.
  const Bar* moved = nullptr;
  double nearest = 1e9;
  for (const Bar& bar : before.bars)
    for (const Bolt& bolt : before.bolts)
      if (const double off = std::abs(placeOf(bar).a.s + 1.5 - bolt.station);
          bar.run == BarRun::Upright && off < nearest) {
        nearest = off;
        moved = &bar;
      }
  const QPoint from = desk.middleOf({before.id, moved->id});
  const double pixels = 1.5 * desk.window.elevation().view().scale * pixelsPerPoint;
  desk.hand.drag(desk.window.elevation(), from, from + QPoint(qRound(pixels), 0));
  if (desk.bench.checker().counts().fix == 0)
    return complain("T2", "the bar is in nobody's way");
  desk.hand.key(desk.window.elevation(), Qt::Key_F5);
  if (!desk.wait([&] { return desk.bench.refitDesk().canAccept(); }))
    return complain("T2", "nothing is proposed");
  desk.hand.key(desk.window, Qt::Key_F5, Qt::ControlModifier);
  if (desk.bench.checker().counts().fix != 0)
    return complain("T2", "something is to FIX");
  if (desk.bench.wall()->layout.wall->bolts == before.bolts)
    return complain("T2", "no bolt has moved");
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
