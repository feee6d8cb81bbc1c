// Copy, paste, mirror, repeat and match a pair, with the keys and clicks of a person at the window.
// On the front of the boat shed: 24'-0", an opening from 4'-0" to 20'-0", a pier at each side of it.
#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QLineEdit>
#include <QMimeData>
#include <QSettings>
#include <QTest>
#include <QTimer>

#include <algorithm>
#include <cmath>
#include <set>

#include "core/edit/operations.h"
#include "tests/support/sample_jobs.h"
#include "ui/window/form_dialog.h"
#include "ui/window/main_window.h"

namespace sillwright {
namespace {

class CopiesTest : public ::testing::Test {
protected:
  CopiesTest() : bench(support::boatShedFront()), window(bench, Services{}) {
    window.resize(1600, 1000);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    canvas().setFocus();
  }
  ElevationCanvas& canvas() { return window.elevation(); }
  const WallLine& wall() const { return *bench.job().walls.find(bench.session().wall()); }
  PieceRef named(const std::string& mark) const {
    for (const Id id : piecesOf(wall()))
      if (markOf(*findPiece(wall(), id)) == mark)
        return {wall().id, id};
    return {};
  }
  double station(const std::string& mark) const { return stationOf(wall(), named(mark).piece).value_or(-1); }
  Strap strap(const std::string& mark) const { return std::get<Strap>(*findPiece(bench.job(), named(mark))); }
  std::string said() const { return window.status().words().toStdString(); }

  // ---- what a person does; each counts one
  QPoint placeOf(const std::string& mark) {
    const Drawing& drawing = canvas().drawing();
    for (const HitArea& hit : drawing.hits()) {
      const QPointF at = canvas().toPixel({(hit.box.x0 + hit.box.x1) / 2, (hit.box.y0 + hit.box.y1) / 2});
      if (hit.piece != named(mark) || !canvas().rect().contains(at.toPoint()))
        continue;
      const auto there = canvas().hitAt(at);
      if (there && there->piece == hit.piece &&
          (there->part == HitArea::Part::Body || there->part == HitArea::Part::Name))
        return at.toPoint();
    }
    ADD_FAILURE() << mark << " cannot be clicked";
    return {};
  }
  void click(const std::string& mark, Qt::KeyboardModifiers keys = {}) {
    ++actions;
    QTest::mouseClick(&canvas(), Qt::LeftButton, keys, placeOf(mark));
  }
  void key(Qt::Key which, Qt::KeyboardModifiers keys = Qt::ControlModifier) {
    ++actions;
    QTest::keyClick(&canvas(), which, keys);
  }
  void pointAt(double along) {
    const QPoint at = canvas().toPixel({canvas().view().x(along), canvas().view().y(6)}).toPoint();
    QCursor::setPos(canvas().mapToGlobal(at));
    QTest::mouseMove(&canvas(), at);
    QApplication::processEvents();
  }
  // Fills the form that opens and takes it; gives what it read.
  QString withForm(const std::vector<QString>& typed, const std::function<void()>& open) {
    QString reading;
    QTimer typist;
    QObject::connect(&typist, &QTimer::timeout, [&] {
      auto* form = qobject_cast<FormDialog*>(QApplication::activeModalWidget());
      if (!form)
        return;
      for (std::size_t i = 0; i < typed.size(); ++i)
        if (!typed[i].isNull()) {
          form->line(i).setFocus();
          form->line(i).selectAll();
          QTest::keyClicks(&form->line(i), typed[i]);
        }
      reading = form->reading();
      if (form->mayTake())
        QTest::keyClick(form, Qt::Key_Return);
      else
        QTest::keyClick(form, Qt::Key_Escape);
    });
    window.activateWindow(); // keys of actions go to the window in front
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    typist.start(20);
    open();
    typist.stop();
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    return reading;
  }
  void removeIn(Interval stretch, const std::set<std::string>& kept = {}) {
    std::vector<PieceRef> gone;
    for (const Id id : piecesOf(wall()))
      if (const auto own = stationsOf(bench.job(), wall(), id);
          own && own->from >= stretch.from && own->to <= stretch.to && !kept.contains(markOf(*findPiece(wall(), id))))
        gone.push_back({wall().id, id});
    bench.session().apply(removePieces(bench.session().base(), gone), "Remove", {});
  }

  Workbench bench;
  MainWindow window;
  int actions = 0;
};

TEST_F(CopiesTest, theSecondPierIsMadeFromTheFirstAndItsPairMatchedInFourActions) {
  const double second = station("S2");
  Strap third = strap("S3");
  third.station += 0.4375;
  third.heightOffset = 0.25;
  bench.session().apply(replacePiece(bench.session().base(), wall().id, Piece{third}), "Set strap");
  removeIn({240, 288}, {"S3"});
  const Job before = bench.job();
  ASSERT_GT(bench.checker().counts().fix, 0);

  click("O1");
  key(Qt::Key_M);
  EXPECT_NE(said().find("about O1"), std::string::npos) << said();
  EXPECT_NE(said().find("S3 is in the way"), std::string::npos) << said();
  click("O1");
  key(Qt::Key_E);
  EXPECT_NE(said().find("S3 matches S2: 7/16\" left, 1/4\" down"), std::string::npos) << said();
  EXPECT_LE(actions, 4);

  EXPECT_EQ(bench.checker().counts().fix, 0);
  EXPECT_EQ(station("S3"), 288 - second);
  EXPECT_EQ(strap("S3").heightOffset, 0);
  std::vector<double> bolts;
  for (const Bolt& bolt : wall().bolts)
    if (bolt.station > 240)
      bolts.push_back(bolt.station);
  std::sort(bolts.begin(), bolts.end());
  EXPECT_EQ(bolts, (std::vector<double>{250, 268, 277.5}));
  key(Qt::Key_Z);
  key(Qt::Key_Z);
  EXPECT_TRUE(bench.job() == before);
}

TEST_F(CopiesTest, aLeftEndIsPastedAtTheColumnOfTheRightEndTurnedRound) {
  removeIn({240, 288}, {"C4", "L2"});
  click("S1");
  click("B1", Qt::ControlModifier);
  key(Qt::Key_C);
  EXPECT_NE(said().find("copied: S1 and B1"), std::string::npos) << said();
  EXPECT_EQ(QApplication::clipboard()->text(),
            QStringLiteral("strap S1 at 0'-2 3/4\"\nanchor bolt B1 at 0'-10 1/2\"\n"));
  click("C4");
  key(Qt::Key_V);
  EXPECT_NE(said().find("turned round"), std::string::npos) << said();
  EXPECT_EQ(station("S3"), 285.25);
  EXPECT_EQ(strap("S3").column, named("C4").piece);
  EXPECT_EQ(station("B4"), 277.5);
  EXPECT_EQ(bench.session().history().undoName(), "Paste 2 pieces");
  key(Qt::Key_Z);
  EXPECT_FALSE(named("S3").piece);
}

TEST_F(CopiesTest, aPasteGoesUnderThePointerOrElseToTheMiddleOfTheView) {
  const auto pasted = [&] {
    key(Qt::Key_V);
    const Selection& made = bench.session().selection();
    EXPECT_EQ(made.size(), 1u) << said();
    return made.empty() ? -1 : stationOf(wall(), made.front().piece).value_or(-1);
  };
  click("B2");
  key(Qt::Key_C);
  key(Qt::Key_Escape, {});
  pointAt(200);
  EXPECT_NEAR(pasted(), 200, 1);
  pointAt(170);
  EXPECT_NEAR(pasted(), 170, 1);
  key(Qt::Key_Escape, {});
  QCursor::setPos(window.shelf().mapToGlobal(QPoint(20, 60)));
  QTest::mouseMove(&window.shelf(), QPoint(20, 60));
  QApplication::processEvents();
  EXPECT_NEAR(pasted(), canvas().middleStation(), 1.0 / 16);
}

TEST_F(CopiesTest, toAnotherWall) {
  click("B2");
  key(Qt::Key_C);
  key(Qt::Key_PageDown);
  const Id side = bench.session().wall();
  EXPECT_NE(side, bench.job().walls[0].id);
  const std::size_t before = wall().bolts.size();
  key(Qt::Key_V);
  EXPECT_EQ(bench.session().wall(), side);
  EXPECT_EQ(wall().bolts.size(), before + 1);
}

TEST_F(CopiesTest, whatElseLiesOnTheClipboardIsSaid) {
  QApplication::clipboard()->setText(QStringLiteral("twelve studs"));
  const Job before = bench.job();
  key(Qt::Key_V);
  EXPECT_NE(said().find("the clipboard holds no pieces"), std::string::npos) << said();
  auto* other = new QMimeData;
  other->setData(QStringLiteral("application/x-sillwright-pieces"), "1 strap S9 at 0'-1\"\n");
  QApplication::clipboard()->setMimeData(other);
  key(Qt::Key_V);
  EXPECT_NE(said().find("in another window"), std::string::npos) << said();
  EXPECT_TRUE(bench.job() == before);
}

TEST_F(CopiesTest, inAFieldOfTheCardTheKeysAreForItsText) {
  click("S1");
  auto* field = qobject_cast<QLineEdit*>(window.card().editorOf("station"));
  ASSERT_NE(field, nullptr);
  field->setFocus();
  field->selectAll();
  QTest::keyClick(field, Qt::Key_C, Qt::ControlModifier);
  EXPECT_EQ(QApplication::clipboard()->text(), field->text());
  const Job before = bench.job();
  QTest::keyClick(field, Qt::Key_V, Qt::ControlModifier);
  canvas().setFocus();
  EXPECT_TRUE(bench.job() == before);
}

TEST_F(CopiesTest, aBoltIsRepeatedToTheEndOfItsSill) {
  removeIn({15, 47.9}, {});
  click("B1");
  const QString read = withForm({QStringLiteral("12\"")}, [&] { key(Qt::Key_R); });
  EXPECT_TRUE(read.contains(QStringLiteral("2 more like B1, at 1'-10 1/2\", 2'-10 1/2\""))) << read.toStdString();
  EXPECT_TRUE(read.contains(QStringLiteral("13 1/2\" from the end"))) << read.toStdString();
  EXPECT_EQ(station("B2"), 22.5);
  EXPECT_EQ(station("B3"), 34.5);
  EXPECT_EQ(bench.session().history().undoName(), "Repeat 2 pieces");
}

TEST_F(CopiesTest, theFormForARepeatRefusesNonsenseBesideTheLines) {
  click("B1");
  const Job before = bench.job();
  const auto refused = [&](const char* spacing, const char* count) {
    return withForm({QString::fromUtf8(spacing), QString::fromUtf8(count)}, [&] { key(Qt::Key_R); }).toStdString();
  };
  EXPECT_NE(refused("a foot", "").find("character 1"), std::string::npos);
  EXPECT_NE(refused("-12", "").find("at least 1/16"), std::string::npos);
  EXPECT_NE(refused("12", "two").find("whole number"), std::string::npos);
  EXPECT_NE(refused("12", "-1").find("whole number"), std::string::npos);
  EXPECT_NE(refused("40'", "").find("no room"), std::string::npos);
  EXPECT_TRUE(bench.job() == before);
  click("P1");
  key(Qt::Key_R);
  EXPECT_NE(said().find("nothing to repeat"), std::string::npos) << said();
}

TEST_F(CopiesTest, noTwoActionsHaveTheSameKeys) {
  std::set<QString> keys;
  for (const ActionRow& row : actionTable())
    for (const QKeySequence& sequence : row.keys)
      EXPECT_TRUE(keys.insert(sequence.toString()).second) << row.id << " " << sequence.toString().toStdString();
}

} // namespace
} // namespace sillwright
