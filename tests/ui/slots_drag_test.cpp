// Slots while a piece is dragged on the elevation: what is drawn, where it drops, and what Alt, Esc and Undo do to it.
//
// Worked by hand on the front wall of the boat shed, left pier, in inches (more of it in slide_room_test.cpp):
//   S1 at 2 3/4, plate 2 1/2 wide, 1/2 from the end of the concrete: from 1 3/4; nails on C1: to 4 7/8. Held 1 3/4 left
//      of where it stood it is at 1, and 1 3/4 is the nearest mark.
//   B2 at 20. A stud at 16, 1 1/2 wide, washer 3 wide: from 16 + 3/4 + 1 1/2 = 18 1/4; V2 at 24: to 23 3/8. Held 3 left
//      it is at 17, on the stud, and 18 1/4 is the nearest mark.
#include <gtest/gtest.h>

#include <QApplication>
#include <QMouseEvent>
#include <QTest>

#include <algorithm>
#include <cmath>
#include <memory>
#include <ostream>

#include "core/base/tolerance.h"
#include "core/model/lookup.h"
#include "tests/support/sample_jobs.h"
#include "ui/window/main_window.h"

namespace sillwright {
namespace {

struct Case {
  const char* mark;
  double at, held, lands, slotFrom, slotTo;
  const char* stopLeft;
  const char* stopRight;
  const char* landsAt;
};
void PrintTo(const Case& tested, std::ostream* out) {
  *out << tested.mark;
}
constexpr Case strap{"S1", 2.75, 1, 1.75, 1.75, 4.926, "end of the concrete", "nails off C1", "0'-1 3/4\""};
constexpr Case bolt{"B2", 20, 17, 18.25, 18.25, 23.4375, "stud", "bar V2", "1'-6 1/4\""};

class SlotsDrag : public ::testing::TestWithParam<Case> {
protected:
  SlotsDrag()
      : bench(support::boatShedFront()), opened(std::make_unique<MainWindow>(bench, Services{})), window(*opened) {
    window.resize(1600, 1000);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    canvas().setFocus();
    bench.session().select({piece()});
    canvas().zoomToSelection(); // so that an inch is many pixels, and nothing else holds it
  }
  ElevationCanvas& canvas() { return window.elevation(); }
  PieceRef piece() const {
    const WallLine& front = bench.job().walls[0];
    for (const Id id : piecesOf(front))
      if (markOf(bench.job(), {front.id, id}) == GetParam().mark)
        return {front.id, id};
    ADD_FAILURE() << "there is no such piece";
    return {};
  }
  double station() const { return *stationOf(bench.job().walls[0], piece().piece); }
  QPointF middle() {
    for (const HitArea& hit : canvas().drawing().hits())
      if (hit.piece == piece() && hit.part == HitArea::Part::Body)
        return canvas().toPixel({(hit.box.x0 + hit.box.x1) / 2, (hit.box.y0 + hit.box.y1) / 2});
    ADD_FAILURE() << "it is not on the canvas";
    return {};
  }
  void send(QEvent::Type type, QPointF at, Qt::KeyboardModifiers keys = {}) {
    const bool move = type == QEvent::MouseMove;
    const Qt::MouseButtons down = type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton;
    QMouseEvent event(type, at, canvas().mapToGlobal(at), move ? Qt::NoButton : Qt::LeftButton, down, keys);
    QApplication::sendEvent(&canvas(), &event);
  }
  // Presses it and holds it where the case says; gives where the hand then is.
  QPointF hold(Qt::KeyboardModifiers keys = {}) {
    const QPointF from = middle();
    const double inches = (GetParam().held - GetParam().at) * (canvas().view().fromInside ? -1 : 1);
    const QPointF way(inches * canvas().view().scale * pixelsPerPoint, 0);
    send(QEvent::MouseButtonPress, from, keys);
    for (int i = 1; i <= 8; ++i)
      send(QEvent::MouseMove, from + way * i / 8, keys);
    return from + way;
  }
  std::string written(const std::string& name) {
    for (const TakenBox& taken : canvas().drawing().taken())
      if (taken.name == name)
        for (const Prim& prim : canvas().drawing().prims())
          if (prim.kind == Prim::Kind::Text && prim.box.overlaps(taken.box))
            return canvas().drawing().textOf(prim).text;
    return {};
  }
  // What is said of its slots lies beside what is in hand.
  void expectWordsOffThePiece() {
    for (const HitArea& hit : canvas().drawing().hits())
      for (const TakenBox& taken : canvas().drawing().taken()) {
        const bool ofSlots = taken.name == "slot from" || taken.name == "slot to" || taken.name == "landing";
        EXPECT_FALSE(ofSlots && hit.piece == piece() && hit.box.overlaps(taken.box)) << taken.name;
      }
  }
  // An upright stroke in the ink of the hand that begins under the tape at a station.
  bool endOfBracketAt(double s) {
    const ElevationView& view = canvas().view();
    for (const Prim& prim : canvas().drawing().prims()) {
      const auto points = canvas().drawing().pointsOf(prim);
      if (prim.kind == Prim::Kind::Line && prim.ink == Ink::Hand && points.size() == 2 && points[0].x == points[1].x &&
          std::abs(points[0].x - view.x(s)) < 0.3 && points[0].y > view.y(0) + 13 && points[1].y > points[0].y + 8)
        return true;
    }
    return false;
  }

  Workbench bench;
  std::unique_ptr<MainWindow> opened;
  MainWindow& window;
};

TEST_P(SlotsDrag, BracketsAndWhatStopsItAreShownWhileItIsInHand) {
  EXPECT_FALSE(endOfBracketAt(GetParam().slotFrom));
  hold();
  ASSERT_TRUE(bench.inHand());
  EXPECT_EQ(station(), GetParam().held) << "while in hand it is where the hand is";
  EXPECT_TRUE(endOfBracketAt(GetParam().slotFrom));
  EXPECT_TRUE(endOfBracketAt(GetParam().slotTo));
  EXPECT_EQ(written("slot from"), GetParam().stopLeft);
  EXPECT_EQ(written("slot to"), GetParam().stopRight);
  EXPECT_EQ(written("landing"), std::string("drops to ") + GetParam().landsAt);
  expectWordsOffThePiece();
  QTest::keyClick(&canvas(), Qt::Key_Escape);
  EXPECT_FALSE(endOfBracketAt(GetParam().slotFrom));
  EXPECT_EQ(written("slot from") + written("landing"), "");
}

TEST_P(SlotsDrag, FromInsideTheWordsAreAtTheSameEnds) {
  canvas().setFromInside(true);
  canvas().zoomToSelection();
  hold();
  EXPECT_EQ(station(), GetParam().held);
  EXPECT_TRUE(endOfBracketAt(GetParam().slotFrom));
  EXPECT_TRUE(endOfBracketAt(GetParam().slotTo));
  EXPECT_EQ(written("slot from"), GetParam().stopLeft);
  EXPECT_EQ(written("slot to"), GetParam().stopRight);
  EXPECT_EQ(written("landing"), std::string("drops to ") + GetParam().landsAt);
  expectWordsOffThePiece();
}

TEST_P(SlotsDrag, LetGoItStandsAtTheNearestMarkOfTheSlotAsOneStep) {
  const QPointF at = hold();
  send(QEvent::MouseButtonRelease, at);
  EXPECT_FALSE(bench.inHand());
  EXPECT_EQ(station(), GetParam().lands);
  QTest::keyClick(&canvas(), Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(station(), GetParam().at);
  EXPECT_FALSE(bench.session().history().canUndo());
}

TEST_P(SlotsDrag, WithAltItStaysWhereTheHandWas) {
  const QPointF at = hold(Qt::AltModifier);
  EXPECT_TRUE(endOfBracketAt(GetParam().slotFrom)) << "the slots are shown all the same";
  EXPECT_EQ(written("landing"), "");
  const double shown = station();
  EXPECT_NEAR(shown, GetParam().held, 1.0 / 64);
  send(QEvent::MouseButtonRelease, at, Qt::AltModifier);
  EXPECT_EQ(station(), shown);
  QTest::keyClick(&canvas(), Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(station(), GetParam().at);
}

TEST_P(SlotsDrag, AltCountsAlsoWhileTheHandIsStill) {
  const QPointF at = hold();
  EXPECT_NE(written("landing"), "");
  QTest::keyPress(&canvas(), Qt::Key_Alt, Qt::AltModifier);
  EXPECT_EQ(written("landing"), "");
  QTest::keyRelease(&canvas(), Qt::Key_Alt);
  EXPECT_TRUE(canvas().hasFocus()) << "the menu bar takes no keys while something is in hand";
  EXPECT_NE(written("landing"), "");
  QTest::keyPress(&canvas(), Qt::Key_Alt, Qt::AltModifier);
  send(QEvent::MouseButtonRelease, at, Qt::AltModifier);
  EXPECT_NEAR(station(), GetParam().held, 1.0 / 64);
  QTest::keyRelease(&canvas(), Qt::Key_Alt);
}

TEST_P(SlotsDrag, EscPutsItBack) {
  const QPointF at = hold();
  QTest::keyClick(&canvas(), Qt::Key_Escape);
  EXPECT_EQ(station(), GetParam().at);
  send(QEvent::MouseButtonRelease, at);
  EXPECT_EQ(station(), GetParam().at);
  EXPECT_FALSE(bench.session().history().canUndo());
}

TEST_P(SlotsDrag, AWindowThatGoesInMidDragLetsItGo) {
  hold();
  ASSERT_TRUE(bench.inHand());
  opened.reset();
  EXPECT_FALSE(bench.inHand());
  EXPECT_EQ(station(), GetParam().at);
}

TEST_P(SlotsDrag, TheStatusLineSaysWhereItDrops) {
  const QString drops = QStringLiteral("drops to ") + QString::fromUtf8(GetParam().landsAt);
  EXPECT_FALSE(window.status().words().contains(QStringLiteral("drops to")));
  hold();
  EXPECT_TRUE(window.status().words().contains(drops)) << window.status().words().toStdString();
  EXPECT_EQ(window.status().accessibleDescription(), window.status().words());
  QTest::keyClick(&canvas(), Qt::Key_Escape);
  EXPECT_FALSE(window.status().words().contains(QStringLiteral("drops to")));
}

INSTANTIATE_TEST_SUITE_P(Pieces, SlotsDrag, ::testing::Values(strap, bolt),
                         [](const auto& tested) { return std::string(tested.param.mark); });

} // namespace
} // namespace sillwright
