// The real window on a real (virtual) display, with real pointer and key events from outside the process.
#include <gtest/gtest.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QHashSeed>
#include <QProcess>
#include <QStandardPaths>
#include <QTest>

#include "core/model/lookup.h"
#include "core/store/files.h"
#include "ui/paint/fonts.h"
#include "ui/window/main_window.h"

namespace sillwright {
namespace {

// Runs the pointer tool while the window goes on living.
void pointer(const QStringList& words) {
  QProcess tool;
  tool.start(QStringLiteral("xdotool"), words);
  QElapsedTimer waited;
  waited.start();
  while (tool.state() != QProcess::NotRunning && waited.elapsed() < 10'000)
    QTest::qWait(10);
  ASSERT_EQ(tool.exitStatus(), QProcess::NormalExit);
  ASSERT_EQ(tool.exitCode(), 0) << tool.readAllStandardError().toStdString();
  QTest::qWait(30);
}

QStringList at(QPoint p) { return {QString::number(p.x()), QString::number(p.y())}; }

// One call for the whole drag: while a shelf drag runs, the toolkit does not come back to us.
void dragBetween(QPoint from, QPoint to) {
  QStringList words = QStringList{QStringLiteral("mousemove")} + at(from) +
                      QStringList{QStringLiteral("mousedown"), QStringLiteral("1"), QStringLiteral("sleep"), QStringLiteral("0.1")};
  for (int i = 1; i <= 10; ++i)
    words += QStringList{QStringLiteral("mousemove")} + at(from + (to - from) * i / 10) +
             QStringList{QStringLiteral("sleep"), QStringLiteral("0.04")};
  words += QStringList{QStringLiteral("sleep"), QStringLiteral("0.1"), QStringLiteral("mouseup"), QStringLiteral("1")};
  pointer(words);
  QTest::qWait(200);
}

bool edgeToFix(const Workbench& bench, Id wall) {
  for (const Finding& finding : bench.checker().wall(wall)->findings)
    if (finding.rule == RuleId::StrapEdge && finding.level == Level::Fix)
      return true;
  return false;
}

class RealWindow : public ::testing::Test {
protected:
  RealWindow() : bench(*loadJob(std::string(SILLWRIGHT_SOURCE_DIR) + "/samples/boat-shed-front-steel-moved.sillwright")),
                 window(bench, Services{}) {
    window.setGeometry(0, 0, 1500, 950);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&window));
    QTest::qWait(300);
  }
  const WallLine& wall() const { return *bench.job().walls.find(bench.session().wall()); }
  const Strap& strap(const std::string& mark) const {
    for (const Strap& each : wall().straps)
      if (each.mark == mark)
        return each;
    return wall().straps.front();
  }
  QPoint onScreen(Id piece) {
    ElevationCanvas& canvas = window.elevation();
    for (const HitArea& hit : canvas.drawing().hits())
      if (hit.piece.piece == piece && hit.part == HitArea::Part::Body)
        return canvas.mapToGlobal(
            canvas.toPixel({(hit.box.x0 + hit.box.x1) / 2, hit.box.y0 + (hit.box.y1 - hit.box.y0) * 0.2}).toPoint());
    ADD_FAILURE() << "the piece is not on the canvas";
    return {};
  }
  Workbench bench;
  MainWindow window;
};

TEST_F(RealWindow, aDragMovesAStrapAndCtrlZPutsItBack) {
  ASSERT_TRUE(edgeToFix(bench, wall().id));
  const double before = strap("S1").station;
  const QPoint from = onScreen(strap("S1").id);
  const int inch = qRound(window.elevation().view().scale * pixelsPerPoint);
  dragBetween(from, from + QPoint(2 * inch, 0));
  EXPECT_GT(strap("S1").station, before);
  EXPECT_FALSE(edgeToFix(bench, wall().id)); // far enough from the end now
  EXPECT_TRUE(bench.session().history().canUndo());
  pointer({QStringLiteral("key"), QStringLiteral("ctrl+z")});
  QTest::qWait(100);
  EXPECT_EQ(strap("S1").station, before);
  EXPECT_TRUE(edgeToFix(bench, wall().id));
  EXPECT_FALSE(bench.session().history().canUndo());
}

TEST_F(RealWindow, aPieceOfTheShelfIsDroppedOnTheWall) {
  const std::size_t before = wall().bolts.size();
  std::string key;
  for (const ShelfItem& item : bench.shelf())
    if (item.kind == PieceKind::Bolt && key.empty())
      key = item.key;
  QAbstractButton* button = window.shelf().itemButton(key);
  ASSERT_NE(button, nullptr);
  const QPoint to = onScreen(strap("S3").id) + QPoint(60, 0);
  dragBetween(button->mapToGlobal(button->rect().center()), to);
  EXPECT_EQ(wall().bolts.size(), before + 1);
}

} // namespace
} // namespace sillwright

int main(int argc, char** argv) {
  ::testing::InitGoogleTest(&argc, argv);
  QHashSeed::setDeterministicGlobalSeed();
  QStandardPaths::setTestModeEnabled(true);
  sillwright::leaveOutMonospacedNamesake();
  QApplication application(argc, argv);
  return RUN_ALL_TESTS();
}
