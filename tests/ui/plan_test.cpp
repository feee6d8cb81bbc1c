// The plan as a hand uses it: real mouse and key events on the real window.
#include "ui/window/form_dialog.h"
#include "ui/window/main_window.h"

#include <QAbstractButton>
#include <QApplication>
#include <QContextMenuEvent>
#include <QLineEdit>
#include <QMenu>
#include <QTest>
#include <QTimer>

#include <cmath>

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
  void takePen() {
    QTest::keyClick(&window, Qt::Key_F3);
    for (int i = 0; i < 5; ++i)
      QApplication::processEvents(); // the plan becomes large
  }
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
  takePen();
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
  takePen();
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
  takePen();
  drag(pixel(0, 0), pixel(200, 0));
  ASSERT_TRUE(bench.pen());
  EXPECT_EQ(bench.pen()->corners.size(), 2u);
  enter();
  ASSERT_EQ(bench.job().walls.size(), 1u);
}

TEST_F(PlanTest, AltLeavesTheSquareAtOnceThoughTheHandIsStill) {
  takePen();
  click(0, 0);
  move(150, 90);
  EXPECT_EQ(bench.pen()->at->y, bench.pen()->corners[0].y);
  QTest::keyPress(&plan(), Qt::Key_Alt);
  EXPECT_GT(bench.pen()->at->y, bench.pen()->corners[0].y + 60);
  QTest::keyRelease(&plan(), Qt::Key_Alt);
  EXPECT_EQ(bench.pen()->at->y, bench.pen()->corners[0].y);
}

TEST_F(PlanTest, BackspaceAndUndoTakeACornerBack) {
  takePen();
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
  takePen();
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
  takePen();
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
  takePen();
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

TEST_F(PlanTest, ThePlanIsLargeWhileWallsAreDrawn) {
  const int before = plan().width();
  takePen();
  EXPECT_GT(plan().width(), 2 * before);
  EXPECT_FALSE(window.elevation().isVisible());
  QTest::keyClick(&plan(), Qt::Key_Escape);
  QApplication::processEvents();
  EXPECT_EQ(plan().width(), before);
  EXPECT_TRUE(window.elevation().isVisible());
}

TEST_F(HouseTest, ALengthTypedWhileACornerIsInHandSetsTheWallItIsDrawnAlong) {
  const QPoint from = pixel(288, 240);
  drag(from, from + QPoint(30, 1), false);
  type("26'");
  EXPECT_TRUE(says("set to 26', Enter"));
  enter();
  EXPECT_FALSE(bench.inHand());
  EXPECT_EQ(length(2), 312);
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, from + QPoint(30, 1));
  EXPECT_EQ(length(2), 312);
}

TEST_F(HouseTest, ACornerDraggedAcrossTheOutlineIsRefusedWithASentence) {
  drag(pixel(288, 240), pixel(100, -60), false);
  EXPECT_TRUE(says("would cross"));
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, pixel(100, -60));
  EXPECT_EQ(at(2).x, 288);
  EXPECT_FALSE(bench.session().history().canUndo());
}

TEST_F(HouseTest, TheDiamondMovesTheWallAndATypedLengthSaysHowFar) {
  click(100, 4);
  ASSERT_EQ(bench.session().wall(), bench.job().walls[0].id);
  drag(pixel(144, 4), pixel(144, 4) + QPoint(0, 24), false);
  ASSERT_TRUE(bench.inHand());
  EXPECT_LT(at(0).y, -10);
  EXPECT_TRUE(says("out"));
  type("3'");
  enter();
  EXPECT_EQ(at(0).y, -36);
  EXPECT_EQ(at(1).y, -36);
  EXPECT_EQ(length(1), 276);
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, pixel(144, -20));
  window.actions()["undo"]->trigger();
  EXPECT_EQ(at(0).y, 0);
}

TEST_F(HouseTest, TheMenuUnderThePointerSplitsTheWallThereAndTakesTheCornerAway) {
  const auto choose = [&](QPoint pixel, const char* words) {
    QContextMenuEvent event(QContextMenuEvent::Mouse, pixel, plan().mapToGlobal(pixel));
    QApplication::sendEvent(&plan(), &event);
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_TRUE(menu);
    for (QAction* action : menu->actions())
      if (action->text().contains(QLatin1String(words))) {
        action->trigger();
        menu->close();
        return;
      }
    ADD_FAILURE() << words;
  };
  choose(pixel(120, 4), "Split wall A here");
  ASSERT_EQ(bench.job().walls.size(), 5u);
  EXPECT_NEAR(length(0), 120, 2);
  EXPECT_EQ(length(0), std::round(length(0))) << "the menu rounds to an inch";
  EXPECT_EQ(length(0) + length(4), 288);
  const Point2 corner = at(4);
  EXPECT_EQ(bench.job().walls[4].mark, "E");
  drag(pixel(corner.x, 0), pixel(corner.x, 0) + QPoint(0, 20)); // the new corner is like any other
  EXPECT_LT(at(4).y, -5);
  window.actions()["undo"]->trigger();
  choose(pixel(corner.x, 0), "Take the corner of A/E away");
  EXPECT_EQ(bench.job().walls.size(), 4u);
  EXPECT_EQ(length(0), 288);
}

TEST_F(HouseTest, FormsSplitMoveAndJoinByTheKeyboardAlone) {
  QStringList seen;
  const auto fill = [&](const char* action, std::vector<std::pair<std::size_t, const char*>> lines) {
    QTimer typist;
    QObject::connect(&typist, &QTimer::timeout, [&] {
      auto* form = qobject_cast<FormDialog*>(QApplication::activeModalWidget());
      if (!form)
        return;
      for (const auto& [line, typed] : lines) {
        form->line(line).setText(QString::fromUtf8(typed));
        seen << form->reading();
      }
      form->accept();
    });
    typist.start(20);
    window.actions()[action]->trigger();
  };
  fill("split-wall", {{0, "30'"}, {0, "x"}, {0, "10'"}});
  ASSERT_EQ(seen.size(), 3);
  EXPECT_TRUE(seen[0].contains(QStringLiteral("not within the wall")));
  EXPECT_TRUE(seen[1].contains(QStringLiteral("character 1")));
  EXPECT_EQ(seen[2], QStringLiteral("10'-0\" on the left, 14'-0\" on the right"));
  ASSERT_EQ(bench.job().walls.size(), 5u);
  fill("take-corner", {});
  ASSERT_EQ(bench.job().walls.size(), 4u);
  fill("move-wall", {{1, "2'"}});
  EXPECT_EQ(at(0).y, -24);
}

} // namespace
} // namespace sillwright
