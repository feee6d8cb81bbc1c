// Refitting the whole of a house in which every bar turned out to be elsewhere, beside one painting of the window.
#include <QApplication>
#include <QPixmap>
#include <QStandardPaths>
#include <algorithm>
#include <atomic>
#include <random>

#include "core/refit/refit_job.h"
#include "core/rules/rule_book.h"
#include "tests/bench/refit_measures.h"
#include "tests/support/sample_jobs.h"
#include "ui/paint/fonts.h"
#include "ui/window/main_window.h"

namespace sillwright::bench {

namespace {

Job everyBarMoved(Job job) {
  std::mt19937 random(1);
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    WallLine wall = job.walls[i];
    for (Bar& bar : wall.bars) {
      if (bar.run != BarRun::Upright)
        continue;
      const double along = (static_cast<double>(random() % 49) - 24) / 16; // up to 1 1/2 in either way
      BarPlace found = bar.planned;
      found.a.s += along;
      found.b.s += along;
      bar.found = found;
    }
    job.walls.replace(std::move(wall));
  }
  return job;
}

} // namespace

std::vector<Measure> refitOfAHouse(int& argc, char** argv) {
  leaveOutMonospacedNamesake();
  QStandardPaths::setTestModeEnabled(true);
  const QApplication application(argc, argv);
  const Job job = everyBarMoved(support::ridgeHouse());
  const ResolvedLimits limits = resolve(*job.limits);
  std::vector<WallLayout> walls;
  double bars = 0;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    walls.push_back(layOut(job, job.walls.pointer(i)));
    bars += static_cast<double>(walls.back().bars.size());
  }
  double laidOut = 0;
  const auto refitAll = [&] {
    laidOut = 0;
    const std::atomic<bool> cancelled{false};
    for (const WallRefit& wall : refitJob(walls, limits, {}, {}, cancelled))
      laidOut += wall.refit && wall.refit->ok() && std::holds_alternative<Proposal>(wall.refit->value());
  };
  const WallLayout& longest =
      *std::max_element(walls.begin(), walls.end(), [](const auto& a, const auto& b) { return a.length < b.length; });
  const auto refitLongest = [&] { return refit(longest, limits).ok(); };
  Workbench bench(job);
  MainWindow window(bench, Services{});
  window.resize(1600, 1000);
  window.show();
  for (int i = 0; i < 5; ++i)
    QApplication::processEvents();
  const auto paint = [&] { window.grab(); };
  return {
      {"house-walls", static_cast<double>(walls.size()), "walls"},
      {"house-bars", bars, "bars"},
      {"house-refit", secondsAgainst(refitAll, paint, 7).ofLeast, "paintings of the window, all walls on all cores"},
      {"house-longest", secondsAgainst(refitLongest, paint, 7).ofLeast, "paintings of the window, its longest wall"},
      {"house-laid-out", laidOut, "walls of it that have a layout"}};
}

} // namespace sillwright::bench
