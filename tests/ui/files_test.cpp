// The job's file and the copy that is kept of unsaved work, on a real disk.
#include "ui/window/files.h"

#include <QAbstractButton>
#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QMessageBox>
#include <QTemporaryDir>
#include <QTimer>

#include <gtest/gtest.h>

#include "core/store/files.h"
#include "tests/support/sample_jobs.h"
#include "ui/window/main_window.h"

namespace sillwright {
namespace {

Services realFiles() {
  Services services;
  services.loadJob = loadJob;
  services.saveJob = [](const Job& job, const std::string& path) -> std::optional<Problem> {
    const auto done = saveJob(job, path);
    return done ? std::nullopt : std::optional(done.problem());
  };
  return services;
}

// Answers the next question of the window with the button of that name.
struct Answer {
  QTimer timer;
  QString asked;
  explicit Answer(const QString& button) {
    QObject::connect(&timer, &QTimer::timeout, [this, button] {
      auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
      if (!box)
        return;
      asked = box->text();
      for (QAbstractButton* each : box->buttons())
        if (each->text().remove(QLatin1Char('&')) == button)
          return each->click();
      ADD_FAILURE() << "no button " << button.toStdString() << " under: " << asked.toStdString();
      box->reject();
    });
    timer.start(20);
  }
};

double firstStrap(const Workbench& bench) { return bench.job().walls[0].straps[0].station; }

// Work on the file, kept as a copy, and then nothing: as after a crash.
void workAndDie(const QString& path, double by) {
  Workbench bench(support::boatShedFront());
  MainWindow window(bench, realFiles());
  ASSERT_TRUE(window.files().openPath(path));
  const WallLine& wall = bench.job().walls[0];
  bench.session().select({{wall.id, wall.straps[0].id}});
  bench.nudge(by, 0);
  window.files().keepCopy();
}

TEST(FilesOnDisk, WorkThatWasNotSavedIsOfferedAtTheNextStart) {
  for (const bool take : {false, true}) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("shed.sillwright"));
    ASSERT_TRUE(saveJob(support::boatShedFront(), path.toStdString()));
    workAndDie(path, 0.25);
    ASSERT_TRUE(QFileInfo::exists(path + QStringLiteral(".autosave")));
    Workbench bench(support::boatShedFront());
    MainWindow window(bench, realFiles());
    const double before = firstStrap(bench);
    Answer answer(take ? QStringLiteral("Take it up") : QStringLiteral("Leave it"));
    ASSERT_TRUE(window.files().openPath(path));
    EXPECT_TRUE(answer.asked.contains(QStringLiteral("was not saved last time"))) << answer.asked.toStdString();
    EXPECT_EQ(firstStrap(bench), before + (take ? 0.25 : 0));
    EXPECT_EQ(window.files().unsaved(), take);
    // Taken up it is kept until it is saved: the program may die again.
    EXPECT_EQ(QFileInfo::exists(path + QStringLiteral(".autosave")), take);
    if (take) {
      window.undo();
      EXPECT_EQ(firstStrap(bench), before);
      window.redo();
      ASSERT_TRUE(window.files().save());
    }
    EXPECT_FALSE(QFileInfo::exists(path + QStringLiteral(".autosave")));
    EXPECT_FALSE(QFileInfo::exists(path + QStringLiteral(".autosave.previous")));
  }
}

TEST(FilesOnDisk, TheSecondProgramOnAFileIsTold) {
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("shed.sillwright"));
  ASSERT_TRUE(saveJob(support::boatShedFront(), path.toStdString()));
  Services services = realFiles();
  services.lock = [](const std::string& file, std::string& holder) {
    return std::shared_ptr<void>(JobLock::take(file, holder));
  };
  Workbench first(support::boatShedFront()), second(support::boatShedFront());
  auto window = std::make_unique<MainWindow>(first, services);
  MainWindow other(second, services);
  ASSERT_TRUE(window->files().openPath(path));
  {
    Answer answer(QStringLiteral("OK"));
    ASSERT_TRUE(other.files().openPath(path)); // told, and open all the same
    EXPECT_TRUE(answer.asked.contains(QStringLiteral("open in another program"))) << answer.asked.toStdString();
  }
  window.reset();
  EXPECT_TRUE(other.files().newJob());
  EXPECT_TRUE(other.files().openPath(path)); // a question here would wait for ever
}

TEST(FilesOnDisk, NothingIsOfferedOfWorkThatWasSaved) {
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("shed.sillwright"));
  ASSERT_TRUE(saveJob(support::boatShedFront(), path.toStdString()));
  Workbench bench(support::boatShedFront());
  MainWindow window(bench, realFiles());
  ASSERT_TRUE(window.files().openPath(path));
  const WallLine& wall = bench.job().walls[0];
  bench.session().select({{wall.id, wall.straps[0].id}});
  bench.nudge(0.25, 0);
  window.files().keepCopy();
  ASSERT_TRUE(window.files().save());
  EXPECT_FALSE(QFileInfo::exists(path + QStringLiteral(".autosave")));
  ASSERT_TRUE(window.files().openPath(path)); // a question here would wait for ever
  EXPECT_FALSE(window.files().unsaved());
}

} // namespace
} // namespace sillwright
