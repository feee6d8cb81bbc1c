// A refit of the whole job in the window: asked for, looked at wall by wall, accepted and cancelled with mouse and
// keys.
#include <gtest/gtest.h>

#include <QApplication>
#include <QMenu>
#include <QTest>

#include <random>

#include "core/edit/operations.h"
#include "core/refit/refit_words.h"
#include "tests/support/disturbed_job.h"
#include "tests/support/sample_jobs.h"
#include "ui/window/main_window.h"

namespace sillwright {
namespace {

// A house whose steel turned out to be elsewhere: on seven walls something has to move, one has no layout, two need
// nothing.
Job disturbedHouse() {
  std::mt19937 random(10);
  return disturbed(support::ridgeHouse(), random);
}

class JobRefitWindow : public ::testing::Test {
protected:
  JobRefitWindow() : bench(disturbedHouse()), before(bench.job()), window(bench, Services{}) {
    window.resize(1280, 800);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    window.elevation().setFocus();
  }
  JobRefitDesk& desk() { return bench.jobRefitDesk(); }
  JobRefitPanel& panel() { return window.jobRefitPanel(); }
  JobRefitList& list() { return panel().list(); }
  const Job& job() const { return bench.session().settled(); }
  std::string said(int row, int role = Qt::DisplayRole) {
    return list().rows().index(row).data(role).toString().toStdString();
  }
  QVariant tickOf(int row) { return list().rows().index(row).data(Qt::CheckStateRole); }
  int rowOf(const char* wall) {
    for (int row = 0; row < list().rows().rowCount(); ++row)
      if (said(row).starts_with(std::string(wall) + ": "))
        return row;
    ADD_FAILURE() << "wall " << wall << " is not listed";
    return -1;
  }
  WordButton& button(const char* name) { return *panel().findChild<WordButton*>(QLatin1String(name)); }
  WordButton* headButton(const char* name) {
    for (WordButton* each : window.findChildren<WordButton*>())
      if (each->accessibleName() == QLatin1String(name) && each->isVisible())
        return each;
    return nullptr;
  }
  void press(Qt::Key key, Qt::KeyboardModifiers with = {}) {
    QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : &window, key, with);
  }
  void open() {
    press(Qt::Key_F5, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(QTest::qWaitFor([this] { return desk().isOpen() && !desk().isBusy(); }, 60000));
  }
  void clickRow(int row, QPoint at) {
    const QRect box = list().visualRect(list().rows().index(row));
    QTest::mouseClick(list().viewport(), Qt::LeftButton, {}, box.topLeft() + at);
  }
  bool waitForOne() {
    return QTest::qWaitFor([this] { return bench.refitDesk().isOpen() && !bench.refitDesk().isBusy(); }, 20000);
  }
  bool drawsProposal() {
    const auto taken = window.elevation().drawing().taken();
    return std::any_of(taken.begin(), taken.end(),
                       [](const TakenBox& box) { return box.name.starts_with("proposal "); });
  }
  void nudge(const char* mark) {
    for (std::size_t i = 0; i < job().walls.size(); ++i)
      if (const WallLine& wall = job().walls[i]; wall.mark == mark) {
        const PieceRef piece[] = {{wall.id, wall.bolts.front().id}};
        return bench.session().apply(movePieces(bench.session().base(), piece, 0.5), "Move");
      }
  }

  Workbench bench;
  Job before;
  MainWindow window;
};

TEST_F(JobRefitWindow, AHouseIsLaidOutByKeysAlone) {
  const int fixes = bench.checker().counts().fix;
  open();
  EXPECT_TRUE(window.jobRefitShown());
  EXPECT_TRUE(list().hasFocus());
  ASSERT_EQ(list().rows().rowCount(), 8);
  EXPECT_EQ(list().currentIndex().row(), 0);
  EXPECT_EQ(panel().words(), QStringLiteral("7 walls can be laid out again. 1 has no layout."));
  EXPECT_TRUE(panel().hint().startsWith(QStringLiteral("2 walls need nothing.")));
  const JobRefitRow& first = desk().rows()[0];
  EXPECT_EQ(said(0), "A: " + movesWords(*first.proposal(), job().units));
  EXPECT_EQ(said(0, Qt::AccessibleTextRole), said(0) + ", " + targetsWords(*first.proposal(), job().units));
  EXPECT_EQ(job(), before); // only proposed
  press(Qt::Key_F5, Qt::ControlModifier);
  EXPECT_FALSE(window.refitShown());
  EXPECT_EQ(bench.session().history().undoName(), "Refit 7 walls");
  EXPECT_TRUE(window.status().words().startsWith(QStringLiteral("7 walls accepted")))
      << window.status().words().toStdString();
  EXPECT_LT(bench.checker().counts().fix, fixes);
  EXPECT_TRUE(window.elevation().hasFocus());
  press(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(job().walls, before.walls);
  EXPECT_FALSE(bench.session().history().canUndo());
}

TEST_F(JobRefitWindow, AWallIsLeftOutByKeyByMouseAndFromItsMenu) {
  open();
  EXPECT_EQ(button("accept").text(), QStringLiteral("Accept the 7 ticked"));
  press(Qt::Key_Space);
  EXPECT_EQ(tickOf(0).toInt(), Qt::Unchecked);
  EXPECT_EQ(list().currentIndex().row(), 0);
  clickRow(1, {24, 17});
  EXPECT_EQ(tickOf(1).toInt(), Qt::Unchecked);
  EXPECT_FALSE(bench.refitDesk().isOpen()); // a click on the tick is only that
  const QPoint at = list().visualRect(list().rows().index(2)).center();
  QContextMenuEvent asked(QContextMenuEvent::Mouse, at, list().viewport()->mapToGlobal(at));
  QApplication::sendEvent(list().viewport(), &asked);
  QMenu* menu = list().findChild<QMenu*>();
  ASSERT_NE(menu, nullptr);
  for (QAction* action : menu->actions())
    if (action->text() == QStringLiteral("Leave this wall out"))
      action->trigger();
  EXPECT_EQ(tickOf(2).toInt(), Qt::Unchecked);
  EXPECT_EQ(button("accept").text(), QStringLiteral("Accept the 4 ticked"));
  QTest::mouseClick(&button("accept"), Qt::LeftButton);
  EXPECT_EQ(bench.session().history().undoName(), "Refit 4 walls");
  for (std::size_t i = 0; i < 3; ++i)
    EXPECT_EQ(job().walls[i], before.walls[i]);
  EXPECT_NE(job().walls[4], before.walls[4]);
}

TEST_F(JobRefitWindow, AWallIsShownAndLeftAgainByKeys) {
  open();
  const int row = rowOf("F");
  list().setCurrentIndex(list().rows().index(row));
  press(Qt::Key_Return);
  ASSERT_TRUE(waitForOne());
  EXPECT_EQ(bench.wall()->layout.wall->mark, "F");
  EXPECT_TRUE(window.refitShown());
  EXPECT_FALSE(window.jobRefitShown());
  EXPECT_TRUE(drawsProposal());
  EXPECT_TRUE(window.refitPanel().list().hasFocus());
  press(Qt::Key_Space); // the first move is refused
  ASSERT_TRUE(waitForOne());
  const std::size_t refused = bench.refitDesk().rows().size();
  press(Qt::Key_Escape);
  EXPECT_TRUE(window.jobRefitShown());
  EXPECT_FALSE(drawsProposal());
  EXPECT_TRUE(list().hasFocus());
  EXPECT_EQ(list().currentIndex().row(), row);
  EXPECT_EQ(desk().rows()[static_cast<std::size_t>(row)].changes.size(), refused);
  press(Qt::Key_Escape);
  EXPECT_FALSE(window.refitShown());
  EXPECT_TRUE(window.elevation().hasFocus());
  EXPECT_EQ(job(), before);
}

TEST_F(JobRefitWindow, AWallIsShownAcceptedAndLeftByMouse) {
  open();
  const int row = rowOf("F");
  clickRow(row, {200, 17});
  ASSERT_TRUE(waitForOne());
  EXPECT_EQ(bench.wall()->layout.wall->mark, "F");
  WordButton* back = headButton("Back to the list of all walls");
  ASSERT_NE(back, nullptr);
  QTest::mouseClick(back, Qt::LeftButton);
  EXPECT_TRUE(window.jobRefitShown());
  clickRow(row, {200, 17});
  ASSERT_TRUE(waitForOne());
  QTest::mouseClick(window.refitPanel().findChild<WordButton*>(QStringLiteral("accept")), Qt::LeftButton);
  EXPECT_TRUE(window.jobRefitShown());
  EXPECT_EQ(said(row), "F: accepted");
  EXPECT_FALSE(tickOf(row).isValid());
  QTest::mouseClick(headButton("Put the proposal away"), Qt::LeftButton);
  EXPECT_FALSE(window.refitShown());
  EXPECT_EQ(bench.session().history().undoName(), "Refit wall F");
}

TEST_F(JobRefitWindow, AWallWithoutALayoutShowsWhatCollides) {
  open();
  const int row = rowOf("I");
  EXPECT_TRUE(said(row).starts_with("I: no layout exists: ")) << said(row);
  EXPECT_EQ(tickOf(row).toInt(), Qt::Unchecked);
  list().setCurrentIndex(list().rows().index(row));
  press(Qt::Key_Return);
  ASSERT_TRUE(waitForOne());
  EXPECT_EQ(bench.refitDesk().state(), RefitDesk::State::Conflict);
  EXPECT_TRUE(window.refitPanel().words().startsWith(QStringLiteral("No layout exists")));
}

TEST_F(JobRefitWindow, AWallThatIsEditedIsOutOfDateAndLeftOut) {
  open();
  EXPECT_FALSE(button("again").isVisible());
  const int row = rowOf("J");
  nudge("J");
  EXPECT_TRUE(window.jobRefitShown());
  EXPECT_EQ(said(row), "J: out of date");
  EXPECT_FALSE(tickOf(row).isValid());
  EXPECT_TRUE(button("again").isVisible());
  const WallLine edited = job().walls[9];
  press(Qt::Key_F5, Qt::ControlModifier);
  EXPECT_EQ(job().walls[9], edited);
  EXPECT_TRUE(window.status().words().contains(QStringLiteral("1 left out"))) << window.status().words().toStdString();
  press(Qt::Key_Z, Qt::ControlModifier);
  open();
  nudge("J");
  QTest::mouseClick(&button("again"), Qt::LeftButton);
  ASSERT_TRUE(QTest::qWaitFor([this] { return desk().isOpen() && !desk().isBusy(); }, 60000));
  EXPECT_TRUE(tickOf(rowOf("J")).isValid());
  EXPECT_TRUE(list().hasFocus());
}

// The solving is held up here, so that it is seen at work.
TEST_F(JobRefitWindow, HowFarItIsIsSaidAndItIsCancelledByButtonAndKey) {
  std::vector<JobRefitQuestion> asked;
  desk().solveBy([&](const JobRefitQuestion& question) { asked.push_back(question); });
  const auto begin = [&] {
    press(Qt::Key_F5, Qt::ControlModifier | Qt::ShiftModifier);
    desk().progress(asked.back().number, 7);
    return QTest::qWaitFor([this] { return button("cancel").isVisible(); }, 5000);
  };
  const auto cancelled = [&] {
    return !window.refitShown() && *asked.back().cancelled &&
           window.status().words().contains(QStringLiteral("cancelled: nothing has changed"));
  };
  ASSERT_TRUE(begin());
  EXPECT_EQ(panel().words(), QStringLiteral("Laying out: 7 of 10 walls."));
  EXPECT_EQ(panel().accessibleDescription(), panel().words());
  EXPECT_FALSE(button("accept").isVisible());
  QTest::mouseClick(&button("cancel"), Qt::LeftButton);
  EXPECT_TRUE(cancelled());
  ASSERT_TRUE(begin());
  press(Qt::Key_Escape); // in the list
  EXPECT_TRUE(cancelled());
  ASSERT_TRUE(begin());
  window.elevation().setFocus();
  press(Qt::Key_PageDown, Qt::ControlModifier); // the window is of use in the meantime
  EXPECT_EQ(bench.wall()->layout.wall->mark, "B");
  EXPECT_TRUE(desk().isBusy());
  press(Qt::Key_Escape);
  EXPECT_TRUE(cancelled());
  desk().answer(asked.back().number, {}); // too late
  EXPECT_FALSE(desk().isOpen());
  EXPECT_EQ(job(), before);
}

TEST_F(JobRefitWindow, TheWindowGoesInTheMiddleOfASolving) {
  Workbench other(disturbedHouse());
  {
    MainWindow second(other, Services{});
    second.show();
    second.refitAllWalls();
    EXPECT_TRUE(other.jobRefitDesk().isBusy());
  }
  QApplication::processEvents();
  EXPECT_FALSE(other.jobRefitDesk().isOpen());
}

TEST_F(JobRefitWindow, WhereNothingIsToBeDoneItSaysSo) {
  Workbench sound(support::ridgeHouse());
  MainWindow second(sound, Services{});
  sound.jobRefitDesk().solveBy({});
  second.show();
  second.refitAllWalls();
  EXPECT_TRUE(second.jobRefitPanel().words().startsWith(QStringLiteral("Nothing to do")));
  EXPECT_EQ(second.jobRefitPanel().hint(), QStringLiteral("10 walls need nothing."));
  EXPECT_FALSE(second.jobRefitPanel().findChild<WordButton*>(QStringLiteral("accept"))->isVisible());
}

TEST_F(JobRefitWindow, AnotherJobPutsItAway) {
  open();
  bench.session().open(support::boatShedFront());
  EXPECT_FALSE(window.refitShown());
  EXPECT_TRUE(window.status().words().contains(QStringLiteral("put away"))) << window.status().words().toStdString();
}

TEST_F(JobRefitWindow, EverythingInItIsNamedAndItsKeyIsItsOwn) {
  open();
  EXPECT_FALSE(list().accessibleName().isEmpty());
  EXPECT_FALSE(list().whatsThis().isEmpty());
  for (const char* name : {"accept", "again", "cancel"})
    EXPECT_FALSE(button(name).accessibleName().isEmpty());
  const QKeySequence keys(Qt::CTRL | Qt::SHIFT | Qt::Key_F5);
  int holders = 0;
  for (const ActionRow& row : actionTable())
    holders += row.keys.contains(keys);
  EXPECT_EQ(holders, 1);
  EXPECT_EQ(window.actions()["refit-all"]->shortcut(), keys);
}

} // namespace
} // namespace sillwright
