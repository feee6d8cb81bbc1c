// The window as a hand uses it: real mouse and key events on the real window.
#include "ui/window/form_dialog.h"
#include "ui/window/main_window.h"

#include <map>

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QDragEnterEvent>
#include <QLineEdit>
#include <QMessageBox>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QWheelEvent>

#include <gtest/gtest.h>

#include "core/base/length.h"
#include "core/edit/operations.h"
#include "core/gesture/shelf_mime.h"

namespace sillwright {
namespace {

// A 24 ft wall with one strap far from everything.
Job strapJob() {
  Job job = newJob();
  WallLine like;
  like.footing = {16, 8, 4};
  job = *addOutline(job, std::vector<Point2>{{0, 0}, {288, 0}, {288, 240}, {0, 240}}, like);
  const Id wall = job.walls[0].id;
  Column column;
  column.station = 60;
  job = addPiece(job, wall, column).first;
  Strap strap;
  strap.type = job.types->straps.front().id;
  strap.station = 60;
  strap.column = job.walls.find(wall)->columns.front().id;
  return addPiece(job, wall, strap).first;
}

class WindowTest : public ::testing::Test {
protected:
  WindowTest() : bench(strapJob()), window(bench, services()) {
    window.resize(1600, 1000);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    canvas().setFocus();
  }
  Services services() {
    Services made;
    made.loadJob = [this](const std::string& path) -> Result<Job> {
      if (const auto found = disk.find(path); found != disk.end())
        return found->second;
      return Problem{path, "there is no such file"};
    };
    made.saveJob = [this](const Job& job, const std::string& path) -> std::optional<Problem> {
      if (diskFull)
        return Problem{path, "the disk is full"};
      disk[path] = job;
      return std::nullopt;
    };
    return made;
  }
  ElevationCanvas& canvas() { return window.elevation(); }
  const WallLine& wall() const { return *bench.job().walls.find(bench.session().wall()); }
  const Strap& strap() const { return wall().straps.front(); }
  PieceRef strapRef() const { return {wall().id, strap().id}; }
  QPoint strapAt() {
    for (const HitArea& hit : canvas().drawing().hits())
      if (hit.piece == strapRef() && hit.part == HitArea::Part::Body)
        return canvas().toPixel({(hit.box.x0 + hit.box.x1) / 2, (hit.box.y0 + hit.box.y1) / 2}).toPoint();
    ADD_FAILURE() << "the strap is not on the canvas";
    return {};
  }
  void drag(QPoint from, QPoint to) {
    QTest::mousePress(&canvas(), Qt::LeftButton, {}, from);
    for (int i = 1; i <= 8; ++i)
      QTest::mouseMove(&canvas(), from + (to - from) * i / 8);
  }
  double pixelsPerInch() { return canvas().view().scale * pixelsPerPoint; }

  std::map<std::string, Job> disk;
  bool diskFull = false;
  Workbench bench;
  MainWindow window;
};

TEST_F(WindowTest, DraggingAStrapMovesItAsOneStep) {
  const QPoint from = strapAt(), to = from + QPoint(qRound(12 * pixelsPerInch()), 0);
  drag(from, to);
  EXPECT_TRUE(bench.inHand().has_value());
  EXPECT_NEAR(strap().station, 72, 3);
  QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, to);
  EXPECT_FALSE(bench.inHand().has_value());
  EXPECT_NEAR(strap().station, 72, 3);
  EXPECT_EQ(strap().station, roundTo(strap().station, 1.0 / 16));
  window.actions()["undo"]->trigger();
  EXPECT_EQ(strap().station, 60);
  EXPECT_FALSE(bench.session().history().canUndo());
}

TEST_F(WindowTest, TheCountsStayOnTheBarDownTo1060) {
  for (const int wide : {1600, 1180, 1179, 1060}) {
    window.resize(wide, 800);
    QApplication::processEvents();
    EXPECT_TRUE(window.counts().isVisible()) << wide;
    EXPECT_LE(window.counts().mapTo(&window, QPoint(window.counts().width(), 0)).x(), wide) << wide;
  }
}

TEST_F(WindowTest, EscapeAndUndoInMidDragPutItBack) {
  const QPoint from = strapAt(), to = from + QPoint(90, 0);
  drag(from, to);
  QTest::keyClick(&canvas(), Qt::Key_Escape);
  EXPECT_EQ(strap().station, 60);
  QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, to);
  EXPECT_EQ(strap().station, 60);
  drag(from, to);
  window.actions()["undo"]->trigger();
  QTest::mouseMove(&canvas(), to + QPoint(20, 0));
  QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, to);
  EXPECT_EQ(strap().station, 60);
  EXPECT_FALSE(bench.session().history().canUndo());
}

TEST_F(WindowTest, ATypedLengthWhileDraggingSetsTheStation) {
  const QPoint from = strapAt();
  drag(from, from + QPoint(60, 0));
  QTest::keyClicks(&canvas(), "5'-6 1/2\"");
  QTest::keyClick(&canvas(), Qt::Key_Return);
  QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, from + QPoint(60, 0));
  EXPECT_EQ(strap().station, 66.5);
}

TEST_F(WindowTest, ArrowsNudgeASixteenthAnEighthAnInch) {
  QTest::mouseClick(&canvas(), Qt::LeftButton, {}, strapAt());
  QTest::keyClick(&canvas(), Qt::Key_Right);
  EXPECT_EQ(strap().station, 60 + 1.0 / 16);
  QTest::keyClick(&canvas(), Qt::Key_Right, Qt::ShiftModifier);
  EXPECT_EQ(strap().station, 60 + 3.0 / 16);
  QTest::keyClick(&canvas(), Qt::Key_Left, Qt::ControlModifier);
  EXPECT_EQ(strap().station, 59 + 3.0 / 16);
}

TEST_F(WindowTest, TheWheelKeepsThePlaceUnderThePointer) {
  const QPointF at(400, 200);
  const Point2 page = canvas().toPage(at);
  const double s = canvas().view().s(page.x), z = canvas().view().z(page.y), scale = canvas().view().scale;
  QWheelEvent wheel(at, canvas().mapToGlobal(at), {}, {0, 240}, Qt::NoButton, {}, Qt::NoScrollPhase, false);
  QApplication::sendEvent(&canvas(), &wheel);
  EXPECT_NEAR(canvas().view().scale, scale * 1.44, 1e-9);
  EXPECT_NEAR(canvas().view().s(canvas().toPage(at).x), s, 1e-9);
  EXPECT_NEAR(canvas().view().z(canvas().toPage(at).y), z, 1e-9);
}

TEST_F(WindowTest, APieceOfTheShelfIsDroppedWhereThePointerIs) {
  std::unique_ptr<QMimeData> carried;
  window.shelf().setStartDrag([&](QWidget&, std::unique_ptr<QMimeData> data, const QPixmap&) { carried = std::move(data); });
  const std::string key = "strap:" + std::to_string(bench.job().types->straps.front().id.value);
  QAbstractButton* button = window.shelf().itemButton(key);
  ASSERT_NE(button, nullptr);
  QTest::mousePress(button, Qt::LeftButton, {}, {10, 10});
  QTest::mouseMove(button, {40, 40});
  QTest::mouseRelease(button, Qt::LeftButton, {}, {40, 40});
  ASSERT_NE(carried, nullptr);
  EXPECT_EQ(carried->data(shelfMimeType).toStdString(), key);
  EXPECT_EQ(wall().straps.size(), 1u); // a drag is no click
  const QPoint at = canvas().toPixel({canvas().view().x(150), canvas().view().y(4)}).toPoint();
  QDragEnterEvent enter(at, Qt::CopyAction, carried.get(), Qt::LeftButton, {});
  QApplication::sendEvent(&canvas(), &enter);
  QDragMoveEvent move(at, Qt::CopyAction, carried.get(), Qt::LeftButton, {});
  QApplication::sendEvent(&canvas(), &move);
  QDropEvent drop(at, Qt::CopyAction, carried.get(), Qt::LeftButton, {});
  QApplication::sendEvent(&canvas(), &drop);
  ASSERT_EQ(wall().straps.size(), 2u);
  EXPECT_NEAR(wall().straps.back().station, 150, 2);
  window.actions()["undo"]->trigger();
  EXPECT_EQ(wall().straps.size(), 1u);
}

TEST_F(WindowTest, APullOnTheShelfBesideItsPiecesCarriesNothing) {
  bool started = false;
  window.shelf().setStartDrag([&](QWidget&, std::unique_ptr<QMimeData>, const QPixmap&) { started = true; });
  QWidget* sheet = window.shelf().widget();
  const QPoint beside{2, sheet->height() - 2};
  ASSERT_EQ(sheet->childAt(beside), nullptr);
  QTest::mousePress(sheet, Qt::LeftButton, {}, beside);
  QTest::mouseMove(sheet, beside + QPoint{60, -40});
  QTest::mouseRelease(sheet, Qt::LeftButton, {}, beside + QPoint{60, -40});
  EXPECT_FALSE(started);
}

TEST_F(WindowTest, EnterOnTheShelfPutsAPieceInTheMiddle) {
  const std::string key = "strap:" + std::to_string(bench.job().types->straps.front().id.value);
  QTest::keyClick(window.shelf().itemButton(key), Qt::Key_Return);
  EXPECT_EQ(wall().straps.size(), 2u);
}

TEST_F(WindowTest, TheCardSetsAFieldAndKeepsWhatItCannotRead) {
  bench.session().select({strapRef()});
  auto* line = qobject_cast<QLineEdit*>(window.card().editorOf("station"));
  ASSERT_NE(line, nullptr);
  line->setFocus();
  line->selectAll();
  QTest::keyClicks(line, "5 feet or so");
  QTest::keyClick(line, Qt::Key_Return);
  EXPECT_EQ(strap().station, 60);
  EXPECT_EQ(line->text(), QStringLiteral("5 feet or so"));
  EXPECT_FALSE(window.card().errorAt("station").isEmpty());
  line->selectAll();
  QTest::keyClicks(line, "5'-3 3/8\"");
  QTest::keyClick(line, Qt::Key_Return);
  EXPECT_EQ(strap().station, 63.375);
  EXPECT_TRUE(window.card().errorAt("station").isEmpty());
}

TEST_F(WindowTest, TheFixButtonPutsAFindingRightAndUndoBringsItBack) {
  bench.session().apply(setStation(bench.session().base(), strapRef(), 1.5), "Move strap");
  PunchListModel& list = window.punchList();
  int row = -1;
  for (int i = 0; i < list.rowCount(); ++i)
    if (list.finding(i)->finding().rule == RuleId::StrapEdge)
      row = i;
  ASSERT_GE(row, 0);
  PunchList& view = window.punchListView();
  const Finding finding = list.finding(row)->finding();
  view.scrollTo(list.index(row));
  const QRect box = view.visualRect(list.index(row));
  QTest::mouseClick(view.viewport(), Qt::LeftButton, {}, box.topLeft() + QPoint(60, 20));
  EXPECT_EQ(bench.session().selection(), (Selection{strapRef()}));
  const QRectF button = PunchListDelegate::fixButton(bench.job(), finding, box);
  QTest::mouseClick(view.viewport(), Qt::LeftButton, {}, button.center().toPoint());
  EXPECT_GT(strap().station, 1.5);
  window.actions()["undo"]->trigger();
  EXPECT_EQ(strap().station, 1.5);
}

TEST_F(WindowTest, SavingFailsAloudAndLosesNothing) {
  const auto answer = [] {
    QTimer::singleShot(50, [] {
      if (auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget()))
        box->button(QMessageBox::Ok)->click();
    });
  };
  disk["/jobs/one.sillwright"] = strapJob();
  EXPECT_TRUE(window.files().openPath("/jobs/one.sillwright"));
  bench.session().apply(setStation(bench.session().base(), strapRef(), 80), "Move strap");
  EXPECT_TRUE(window.isWindowModified());
  diskFull = true;
  answer();
  EXPECT_FALSE(window.files().save());
  EXPECT_TRUE(window.files().unsaved());
  diskFull = false;
  EXPECT_TRUE(window.files().save());
  EXPECT_FALSE(window.isWindowModified());
  EXPECT_EQ(disk["/jobs/one.sillwright"].walls[0].straps.front().station, 80);
  answer();
  EXPECT_FALSE(window.files().openPath("/jobs/missing.sillwright"));
  EXPECT_EQ(strap().station, 80);
}

TEST_F(WindowTest, UndoWorksWhileTheKeyboardIsInTheCard) {
  bench.session().select({strapRef()});
  auto* field = qobject_cast<QLineEdit*>(window.card().editorOf("station"));
  ASSERT_NE(field, nullptr);
  field->setFocus();
  field->selectAll();
  QTest::keyClicks(field, QStringLiteral("5'-3\""));
  QTest::keyClick(field, Qt::Key_Return);
  ASSERT_EQ(strap().station, 63);
  QTest::keyClick(field, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(strap().station, 60);
}

TEST_F(WindowTest, ADragOverNothingIsARubberBand) {
  bench.session().select({});
  const QPoint piece = strapAt();
  const QPoint from = piece + QPoint(-150, 30), to = piece + QPoint(150, -30);
  QTest::mousePress(&canvas(), Qt::LeftButton, {}, from);
  for (int step = 1; step <= 5; ++step)
    QTest::mouseMove(&canvas(), from + (to - from) * step / 5);
  ASSERT_TRUE(bench.inHand());
  EXPECT_EQ(bench.inHand()->kind, InHand::Kind::RubberBand);
  QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, to);
  const Selection& selection = bench.session().selection();
  EXPECT_NE(std::find(selection.begin(), selection.end(), strapRef()), selection.end());
  EXPECT_EQ(strap().station, 60);
  EXPECT_FALSE(bench.session().history().canUndo());
}

TEST_F(WindowTest, ClosingInMidDragAsksNothingWhenNothingIsUnsaved) {
  const QPoint from = strapAt();
  drag(from, from + QPoint(60, 0));
  EXPECT_TRUE(window.close());
  EXPECT_FALSE(bench.session().previewing());
  EXPECT_EQ(strap().station, 60);
}

TEST_F(WindowTest, ARectangleOfWallsIsAskedForAndAddedAsOneStep) {
  QStringList seen;
  QTimer typist;
  QObject::connect(&typist, &QTimer::timeout, [&] {
    auto* form = qobject_cast<FormDialog*>(QApplication::activeModalWidget());
    if (!form)
      return;
    form->line(1).setText(QStringLiteral("12'-6\""));
    for (const char* typed : {"", "twenty", "20", "20'"}) {
      form->line(0).setText(QString::fromUtf8(typed));
      seen << form->reading();
    }
    form->accept();
  });
  typist.start(20);
  window.actions()["add-rectangle"]->trigger();
  typist.stop();
  ASSERT_EQ(seen.size(), 4);
  EXPECT_TRUE(seen[0].contains(QStringLiteral("20' is twenty feet")));
  EXPECT_TRUE(seen[1].contains(QStringLiteral("character 1")));
  EXPECT_TRUE(seen[2].startsWith(QStringLiteral("1'-8\" by"))); // a plain number is inches, and it says so
  EXPECT_TRUE(seen[3].startsWith(QStringLiteral("20'-0\" by 12'-6\"")));
  ASSERT_EQ(bench.job().walls.size(), 8u);
  EXPECT_EQ(wallLength(bench.job(), bench.job().walls[4]), 240);
  EXPECT_EQ(wallLength(bench.job(), bench.job().walls[5]), 150);
  window.actions()["undo"]->trigger();
  EXPECT_EQ(bench.job().walls.size(), 4u);
}

TEST_F(WindowTest, TheTitleBlockIsFilledInAsOneStep) {
  QTimer typist;
  QObject::connect(&typist, &QTimer::timeout, [&] {
    auto* form = qobject_cast<FormDialog*>(QApplication::activeModalWidget());
    if (!form)
      return;
    form->line(0).setText(QStringLiteral("Carport, Mill Lane"));
    form->line(2).setText(QStringLiteral("R. Alder"));
    form->accept();
  });
  typist.start(20);
  const std::string before = bench.job().title.by;
  window.actions()["title-block"]->trigger();
  EXPECT_EQ(bench.job().title.job, "Carport, Mill Lane");
  EXPECT_EQ(bench.job().title.by, "R. Alder");
  window.actions()["undo"]->trigger();
  EXPECT_EQ(bench.job().title.by, before);
}

TEST_F(WindowTest, ThemesChangeEveryColour) {
  window.chooseTheme(ThemeChoice::Light);
  const QColor light = canvas().grab().toImage().pixelColor(2, 2);
  window.chooseTheme(ThemeChoice::Dark);
  const QColor dark = canvas().grab().toImage().pixelColor(2, 2);
  EXPECT_GT(light.lightness(), 200);
  EXPECT_LT(dark.lightness(), 60);
}

TEST_F(WindowTest, TheCanvasSpeaksOfEveryPiece) {
  bench.session().select({strapRef()});
  QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(&canvas());
  ASSERT_NE(spoken, nullptr);
  bool found = false;
  for (int i = 0; i < spoken->childCount(); ++i) {
    QAccessibleInterface* child = spoken->child(i);
    if (child->text(QAccessible::Name).startsWith(QString::fromStdString(strap().mark))) {
      found = true;
      EXPECT_TRUE(child->state().selected);
      EXPECT_TRUE(child->rect().isValid());
    }
  }
  EXPECT_TRUE(found);
}

TEST_F(WindowTest, ADragDrawsOnlyTheWallThatChanges) {
  window.plan().grab();
  window.plan().takeDrawnCount();
  const QPoint from = strapAt();
  drag(from, from + QPoint(40, 0));
  window.plan().refresh();
  EXPECT_LE(window.plan().takeDrawnCount(), 1u);
  QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, from + QPoint(40, 0));
}

} // namespace
} // namespace sillwright
