// The plan as a hand uses it: real mouse and key events on the real window.
#include "ui/window/main_window.h"

#include <QAbstractButton>
#include <QApplication>
#include <QStandardPaths>
#include <QTest>

#include <gtest/gtest.h>

#include "core/edit/operations.h"
#include "core/edit/plan_edits.h"
#include "core/gesture/wall_pen.h"
#include "core/model/lookup.h"

namespace sillwright {
namespace {

class PlanTest : public ::testing::Test {
protected:
  explicit PlanTest(Job job = newJob()) : bench(std::move(job)), window(bench, {}) {
    window.resize(1600, 1000);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  }
  PlanCanvas& plan() { return window.plan(); }
  QPoint pixel(double x, double y) { return plan().pixelOf({x, y}).toPoint(); }
  void move(double x, double y) { QTest::mouseMove(&plan(), pixel(x, y)); }
  void click(double x, double y, Qt::KeyboardModifiers keys = {}) {
    move(x, y);
    QTest::mouseClick(&plan(), Qt::LeftButton, keys, pixel(x, y));
  }
  void drag(QPoint from, QPoint to, bool letGo = true) {
    QTest::mousePress(&plan(), Qt::LeftButton, {}, from);
    for (int i = 1; i <= 6; ++i)
      QTest::mouseMove(&plan(), from + (to - from) * i / 6);
    if (letGo)
      QTest::mouseRelease(&plan(), Qt::LeftButton, {}, to);
  }
  void type(const char* keys) { QTest::keyClicks(&plan(), QString::fromUtf8(keys)); }
  void enter() { QTest::keyClick(&plan(), Qt::Key_Return); }
  double length(std::size_t wall) { return wallLength(bench.job(), bench.job().walls[wall]); }
  bool says(const char* words) { return window.status().words().contains(QLatin1String(words)); }

  Workbench bench;
  MainWindow window;
};

// A house of 24 by 20 ft.
class HouseTest : public PlanTest {
protected:
  HouseTest() : PlanTest(house()) {}
  static Job house() {
    const std::vector<Point2> corners{{0, 0}, {288, 0}, {288, 240}, {0, 240}};
    return addWalls(newJob(), corners, true, wallToDraw(newJob()))->job;
  }
  Point2 at(std::size_t corner) { return (*bench.job().corners)[corner].at; }
};

TEST_F(PlanTest, AnEmptyPlanSaysWhatToDoAndTheKeyTakesThePen) {
  QTest::keyClick(&window, Qt::Key_F3);
  ASSERT_TRUE(bench.pen());
  EXPECT_TRUE(plan().hasFocus());
  EXPECT_TRUE(says("click the first corner"));
  move(0, 0);
  EXPECT_EQ(plan().cursor().shape(), Qt::CrossCursor);
  QTest::keyClick(&plan(), Qt::Key_Escape);
  EXPECT_FALSE(bench.pen());
}

TEST_F(PlanTest, TheButtonInTheHeadTakesThePenAndPutsItDown) {
  QAbstractButton* button = nullptr;
  for (auto* each : window.findChildren<QAbstractButton*>())
    if (each->accessibleName() == QLatin1String("draw walls"))
      button = each;
  ASSERT_TRUE(button);
  QTest::mouseClick(button, Qt::LeftButton);
  EXPECT_TRUE(bench.pen());
  EXPECT_TRUE(button->isChecked());
  EXPECT_TRUE(plan().hasFocus());
  QTest::mouseClick(button, Qt::LeftButton);
  EXPECT_FALSE(bench.pen());
  EXPECT_FALSE(button->isChecked());
}

TEST_F(PlanTest, ClicksAndTypedLengthsDrawAHouseAsOneStep) {
  QTest::keyClick(&window, Qt::Key_F3);
  click(0, 0);
  move(200, 4);
  type("24-6");
  EXPECT_TRUE(says("set to 24-6, Enter"));
  EXPECT_EQ(bench.pen()->at->x - bench.pen()->corners[0].x, 294) << "shown before it is set";
  enter();
  const Point2 first = bench.pen()->corners[0];
  move(first.x + 298, first.y + 100);
  type("12' ");
  enter();
  move(first.x + 100, first.y + 150);
  type("24' 6\"");
  enter();
  EXPECT_TRUE(bench.job().walls.empty());
  click(first.x, first.y);
  EXPECT_FALSE(bench.pen());
  ASSERT_EQ(bench.job().walls.size(), 4u);
  EXPECT_EQ(length(0), 294);
  EXPECT_EQ(length(1), 144);
  EXPECT_TRUE(bench.wall()) << "the first of them is on the elevation";
  EXPECT_EQ(bench.checker().counts().fix, 0);
  window.actions()["undo"]->trigger();
  EXPECT_TRUE(bench.job().walls.empty());
}

TEST_F(PlanTest, AWallIsDrawnWithTheButtonDownToo) {
  QTest::keyClick(&window, Qt::Key_F3);
  drag(pixel(0, 0), pixel(200, 0));
  ASSERT_TRUE(bench.pen());
  EXPECT_EQ(bench.pen()->corners.size(), 2u);
  enter();
  ASSERT_EQ(bench.job().walls.size(), 1u);
}

TEST_F(PlanTest, AltLeavesTheSquareAtOnceThoughTheHandIsStill) {
  QTest::keyClick(&window, Qt::Key_F3);
  click(0, 0);
  move(150, 90);
  EXPECT_EQ(bench.pen()->at->y, bench.pen()->corners[0].y);
  QTest::keyPress(&plan(), Qt::Key_Alt);
  EXPECT_GT(bench.pen()->at->y, bench.pen()->corners[0].y + 60);
  QTest::keyRelease(&plan(), Qt::Key_Alt);
  EXPECT_EQ(bench.pen()->at->y, bench.pen()->corners[0].y);
}

TEST_F(PlanTest, BackspaceAndUndoTakeACornerBack) {
  QTest::keyClick(&window, Qt::Key_F3);
  click(0, 0);
  click(200, 0);
  click(200, 100);
  QTest::keyClick(&plan(), Qt::Key_Backspace);
  EXPECT_EQ(bench.pen()->corners.size(), 2u);
  window.actions()["undo"]->trigger();
  EXPECT_EQ(bench.pen()->corners.size(), 1u);
  EXPECT_TRUE(window.actions()["undo"]->isEnabled());
}

TEST_F(PlanTest, ADoubleClickOnTheLastCornerLeavesTheWallsOpen) {
  QTest::keyClick(&window, Qt::Key_F3);
  click(0, 0);
  click(200, 0);
  move(200, 120);
  QTest::mouseClick(&plan(), Qt::LeftButton, {}, pixel(200, 120));
  QTest::mouseDClick(&plan(), Qt::LeftButton, {}, pixel(200, 120));
  EXPECT_FALSE(bench.pen());
  ASSERT_EQ(bench.job().walls.size(), 2u);
  EXPECT_EQ(bench.session().history().undoName(), "Draw 2 walls");
}

TEST_F(PlanTest, TheKeyboardAloneDrawsAnOutline) {
  QTest::keyClick(&window, Qt::Key_F3);
  enter();
  for (const auto& [key, typed] : std::vector<std::pair<Qt::Key, const char*>>{
           {Qt::Key_Right, "20'"}, {Qt::Key_Up, "12'"}, {Qt::Key_Left, "20'"}}) {
    QTest::keyClick(&plan(), key);
    type(typed);
    enter();
  }
  type("c");
  ASSERT_EQ(bench.job().walls.size(), 4u);
  EXPECT_EQ(length(0), 240);
}

TEST_F(PlanTest, AnOutlineThatWouldCrossItselfIsRefusedWithASentence) {
  QTest::keyClick(&window, Qt::Key_F3);
  click(0, 0);
  click(200, 0);
  click(200, 100);
  click(100, 100);
  move(100, -40);
  EXPECT_TRUE(says("the outline would cross itself"));
  click(100, -40);
  EXPECT_EQ(bench.pen()->corners.size(), 4u);
}

TEST_F(HouseTest, AClickOnAWallOpensItsElevationAndDeleteTakesItAway) {
  click(288 - 4, 100);
  EXPECT_EQ(bench.session().wall(), bench.job().walls[1].id);
  QTest::keyClick(&plan(), Qt::Key_Delete);
  EXPECT_EQ(bench.job().walls.size(), 3u);
  window.actions()["undo"]->trigger();
  EXPECT_EQ(bench.job().walls.size(), 4u);
}

TEST_F(HouseTest, ADraggedCornerSnapsIntoLineAndEscapePutsItBack) {
  const QPoint from = pixel(288, 240);
  drag(from, from + QPoint(30, 2), false);
  ASSERT_TRUE(bench.inHand());
  EXPECT_GT(at(2).x, 310);
  EXPECT_EQ(at(2).y, 240) << "in line with the other corner";
  EXPECT_TRUE(says("in line with a corner"));
  QTest::keyClick(&plan(), Qt::Key_Escape);
  EXPECT_EQ(at(2).x, 288);
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, from + QPoint(30, 2));
  EXPECT_EQ(at(2).x, 288);
  EXPECT_FALSE(bench.session().history().canUndo());
  drag(from, from + QPoint(30, 2));
  EXPECT_GT(at(2).x, 310);
  window.actions()["undo"]->trigger();
  EXPECT_EQ(at(2).x, 288);
}

} // namespace
} // namespace sillwright
