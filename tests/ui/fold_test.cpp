// Folding the openings, and the close look, with a real mouse and keys on the front wall of the boat shed: 24'-0" with
// an opening from 4'-0" to 20'-0", of which 5'-0" to 19'-0" folds away.
#include <gtest/gtest.h>

#include <QApplication>
#include <QMouseEvent>
#include <QTest>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>
#include <memory>
#include <string>

#include "core/model/lookup.h"
#include "tests/support/sample_jobs.h"
#include "ui/window/main_window.h"

namespace sillwright {
namespace {

class FoldTest : public ::testing::Test {
protected:
  explicit FoldTest(Job job = support::boatShedFront())
      : bench(std::move(job)), opened(std::make_unique<MainWindow>(bench, Services{})), window(*opened) {
    window.resize(1600, 1000);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    canvas().setFocus();
  }
  ElevationCanvas& canvas() { return window.elevation(); }
  const ElevationView& view() { return canvas().view(); }
  const WallLine& front() const { return bench.job().walls[0]; }
  void foldByKey() { QTest::keyClick(&canvas(), Qt::Key_8, Qt::ControlModifier); }
  QPoint pixelAt(double s, double z) { return canvas().toPixel({view().x(s), view().y(z)}).toPoint(); }
  void send(QEvent::Type type, QPointF at) {
    const bool move = type == QEvent::MouseMove;
    const Qt::MouseButtons down = type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton;
    QMouseEvent event(type, at, canvas().mapToGlobal(at), move ? Qt::NoButton : Qt::LeftButton, down, {});
    QApplication::sendEvent(&canvas(), &event);
  }
  void dragTo(QPointF from, QPointF to) {
    send(QEvent::MouseButtonPress, from);
    for (int i = 1; i <= 8; ++i)
      send(QEvent::MouseMove, from + (to - from) * i / 8);
  }
  PieceRef named(const std::string& mark) const {
    for (const Id id : piecesOf(front()))
      if (markOf(bench.job(), {front().id, id}) == mark)
        return {front().id, id};
    ADD_FAILURE() << "there is no " << mark;
    return {};
  }
  QPointF middleOf(const std::string& mark) {
    const PieceRef piece = named(mark);
    for (const HitArea& hit : canvas().drawing().hits())
      if (hit.piece == piece && hit.part == HitArea::Part::Body)
        return canvas().toPixel({(hit.box.x0 + hit.box.x1) / 2, (hit.box.y0 + hit.box.y1) / 2});
    ADD_FAILURE() << mark << " is not on the canvas";
    return {};
  }
  double station(const std::string& mark) const { return *stationOf(front(), named(mark).piece); }
  bool isWritten(const std::string& words) {
    const Drawing& drawing = canvas().drawing();
    return std::any_of(drawing.prims().begin(), drawing.prims().end(), [&](const Prim& prim) {
      return prim.kind == Prim::Kind::Text && drawing.textOf(prim).text.find(words) != std::string::npos;
    });
  }

  Workbench bench;
  std::unique_ptr<MainWindow> opened;
  MainWindow& window;
};

class RidgeFoldTest : public FoldTest {
protected:
  RidgeFoldTest() : FoldTest(support::ridgeHouse()) {}
};

TEST_F(FoldTest, TheKeyFoldsTheOpeningAndTwoPiersShareTheCanvas) {
  const double whole = view().scale;
  foldByKey();
  ASSERT_TRUE(canvas().isFolded());
  EXPECT_EQ(view().folds, (std::vector<Interval>{{60, 228}}));
  EXPECT_GT(view().scale, 1.6 * whole);
  EXPECT_TRUE(isWritten("14'-0\" of opening folded away"));
  EXPECT_GT(canvas().toPixel({view().x(0), 0}).x(), 0);
  EXPECT_LT(canvas().toPixel({view().x(288), 0}).x(), canvas().width());
  foldByKey();
  EXPECT_FALSE(canvas().isFolded());
  EXPECT_EQ(view().scale, whole);
}

TEST_F(FoldTest, AClickOnTheZigzagUnfolds) {
  foldByKey();
  ASSERT_TRUE(canvas().isFolded());
  QTest::mouseClick(&canvas(), Qt::LeftButton, {}, pixelAt(144, 10));
  EXPECT_FALSE(canvas().isFolded());
  EXPECT_TRUE(bench.session().selection().empty());
  EXPECT_FALSE(bench.session().history().canUndo()) << "it is a way of seeing, no edit";
}

TEST_F(FoldTest, TheSwitchInTheHeadOfThePanelSaysAndDoesTheSame) {
  QPushButton* button = nullptr;
  for (QPushButton* each : window.findChildren<QPushButton*>())
    if (each->text() == QLatin1String("openings folded"))
      button = each;
  ASSERT_NE(button, nullptr);
  EXPECT_FALSE(button->isChecked());
  QTest::mouseClick(button, Qt::LeftButton);
  EXPECT_TRUE(canvas().isFolded());
  EXPECT_TRUE(button->isChecked());
  foldByKey();
  EXPECT_FALSE(button->isChecked());
}

TEST_F(FoldTest, APieceIsDraggedAndHitOnTheFarSideOfAFold) {
  foldByKey();
  const double before = station("B5");
  const QPointF from = middleOf("B5");
  dragTo(from, from + QPointF(2 * view().scale * pixelsPerPoint, 0));
  ASSERT_TRUE(bench.inHand());
  EXPECT_NEAR(bench.inHand()->station, before + 2, 0.1);
  const double lands = bench.inHand()->landing.value_or(bench.inHand()->station);
  EXPECT_TRUE(canvas().isFolded());
  send(QEvent::MouseButtonRelease, from + QPointF(2 * view().scale * pixelsPerPoint, 0));
  EXPECT_EQ(station("B5"), lands);
}

TEST_F(FoldTest, ADragAcrossAFoldJumpsOverWhatIsGone) {
  foldByKey();
  const QPointF from = middleOf("S2");
  const double held = station("S2");
  // Into the gap by a third: the hand is at the near side of the fold; by two thirds: at the far side.
  const double y = from.y();
  dragTo(from, {canvas().toPixel({view().x(60) + foldGap / 3, 0}).x(), y});
  ASSERT_TRUE(bench.inHand());
  EXPECT_NEAR(bench.inHand()->station, 60, 1.5);
  send(QEvent::MouseMove, {canvas().toPixel({view().x(60) + foldGap * 2 / 3, 0}).x(), y});
  EXPECT_NEAR(bench.inHand()->station, 228, 1.5);
  QTest::keyClick(&canvas(), Qt::Key_Escape);
  EXPECT_EQ(station("S2"), held);
  EXPECT_TRUE(canvas().isFolded());
}

TEST_F(FoldTest, WhatIsSetInItOpensIt) {
  foldByKey();
  bench.session().select({named("S2")});
  canvas().setFocus();
  QTest::keyClicks(&canvas(), QStringLiteral("10-0")); // typed on a selection: its station from the hook
  QTest::keyClick(&canvas(), Qt::Key_Return);
  ASSERT_EQ(station("S2"), 120);
  EXPECT_FALSE(canvas().isFolded());
  QTest::keyClick(&canvas(), Qt::Key_Z, Qt::ControlModifier);
  EXPECT_TRUE(canvas().isFolded()) << "what stood in its way is gone";
}

TEST_F(FoldTest, ARubberBandRunsAcrossAFold) {
  foldByKey();
  dragTo(pixelAt(-4, 12), pixelAt(292, -6));
  send(QEvent::MouseButtonRelease, pixelAt(292, -6));
  std::size_t straps = 0;
  for (const PieceRef& piece : bench.session().selection())
    for (const Strap& strap : front().straps)
      straps += strap.id == piece.piece ? 1 : 0;
  EXPECT_EQ(straps, 4u);
}

TEST_F(FoldTest, TheWheelKeepsThePlaceUnderThePointerBesideAFold) {
  foldByKey();
  const QPoint at = pixelAt(262, 4);
  QWheelEvent wheel(at, canvas().mapToGlobal(QPointF(at)), {}, {0, 120}, Qt::NoButton, {}, Qt::NoScrollPhase, false);
  const double scale = view().scale;
  QApplication::sendEvent(&canvas(), &wheel);
  EXPECT_GT(view().scale, scale);
  EXPECT_NEAR(view().s(canvas().toPage(at).x), 262, 0.2);
  EXPECT_TRUE(canvas().isFolded());
}

TEST_F(RidgeFoldTest, EveryWallRemembersItsFolds) {
  const auto& walls = bench.job().walls;
  Id foldable, other;
  for (std::size_t i = 0; i < walls.size(); ++i) {
    bench.session().show(walls[i].id);
    if (canvas().canFold() && !foldable)
      foldable = walls[i].id;
    else if (foldable && !other)
      other = walls[i].id;
  }
  ASSERT_TRUE(foldable && other);
  bench.session().show(foldable);
  foldByKey();
  ASSERT_TRUE(canvas().isFolded());
  bench.session().show(other);
  EXPECT_FALSE(canvas().isFolded());
  bench.session().show(foldable);
  EXPECT_TRUE(canvas().isFolded());
}

TEST_F(FoldTest, TheCloseLookIsThereAsLongAsSomethingIsInHand) {
  const auto look = [&] {
    for (const TakenBox& taken : canvas().drawing().taken())
      if (taken.name == "close look")
        return true;
    return false;
  };
  EXPECT_FALSE(look());
  const QPointF from = middleOf("S3"), way(3 * view().scale * pixelsPerPoint, 0);
  dragTo(from, from + way);
  EXPECT_TRUE(look());
  send(QEvent::MouseButtonRelease, from + way);
  EXPECT_FALSE(look());
}

} // namespace
} // namespace sillwright
