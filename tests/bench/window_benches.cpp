#include <QApplication>
#include <QElapsedTimer>
#include <QMainWindow>
#include <QStandardPaths>
#include <array>

#include "tests/bench/bench.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"
#include "ui/paint/fonts.h"
#include "ui/window/main_window.h"

namespace sillwright::bench {

namespace {

// A bolt or strap of the wall in view, held where it stands.
PointerAt gripOn(const Workbench& bench) {
  const WallLine& wall = *bench.job().walls.find(bench.session().wall());
  PointerAt pointer;
  HitArea hit;
  hit.piece = {wall.id, wall.straps.empty() ? wall.bolts.front().id : wall.straps.front().id};
  pointer.at.s = wall.straps.empty() ? wall.bolts.front().station : wall.straps.front().station;
  pointer.hit = hit;
  return pointer;
}

// Seconds of one frame of a drag in the whole window: edit, check, drawings, panels, paint.
double frameSeconds(std::size_t pieces) {
  Workbench bench(generateJob(1, pieces));
  MainWindow window(bench, Services{});
  window.resize(1600, 1000);
  window.show();
  for (int i = 0; i < 5; ++i)
    QApplication::processEvents();
  PointerAt pointer = gripOn(bench);
  bench.press(pointer);
  const double from = pointer.at.s;
  int step = 0;
  const double seconds = secondsPerCall([&] {
    pointer.at.s = from + 2 + (step++ % 16) / 4.0;
    bench.drag(pointer);
    QApplication::processEvents();
  });
  bench.cancel();
  return seconds;
}

template <class Window> double firstPaint(Window& window) {
  QElapsedTimer timer;
  timer.start();
  window.resize(1600, 1000);
  window.show();
  for (int i = 0; i < 3; ++i)
    QApplication::processEvents();
  return static_cast<double>(timer.nsecsElapsed()) * 1e-9;
}

} // namespace

std::vector<Measure> drag(int& argc, char** argv) {
  leaveOutMonospacedNamesake();
  QStandardPaths::setTestModeEnabled(true);
  const QApplication application(argc, argv);
  std::vector<Measure> measures;
  const double small = frameSeconds(100);
  for (const std::size_t pieces : {std::size_t{100}, std::size_t{10'000}, std::size_t{100'000}})
    measures.push_back({"drag-frame-" + std::to_string(pieces), frameSeconds(pieces) / small, "times-the-100-piece-job"});
  return measures;
}

std::vector<Measure> start(int& argc, char** argv) {
  leaveOutMonospacedNamesake();
  QStandardPaths::setTestModeEnabled(true);
  const QApplication application(argc, argv);
  { // fonts and the style are loaded once, whoever asks first
    QMainWindow warm;
    firstPaint(warm);
  }
  std::array<double, 5> ratios{};
  for (double& ratio : ratios) {
    QMainWindow empty;
    const double plain = firstPaint(empty);
    QElapsedTimer timer;
    timer.start();
    Workbench bench(support::boatShedFront());
    MainWindow window(bench, Services{});
    firstPaint(window);
    ratio = static_cast<double>(timer.nsecsElapsed()) * 1e-9 / plain;
  }
  std::sort(ratios.begin(), ratios.end());
  return {{"start-to-first-paint", ratios[2], "times-an-empty-window"}};
}

} // namespace sillwright::bench
