// The wall-end schedule and the filters of the punch list, with real keys and clicks.
#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QLineEdit>
#include <QMenu>
#include <QPlainTextEdit>
#include <QTest>
#include <QTimer>

#include "core/edit/operations.h"
#include "core/rules/rule_book.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"
#include "ui/panels/look.h"
#include "ui/window/main_window.h"
#include "ui/window/paste_dialog.h"

namespace sillwright {
namespace {

class ScheduleTest : public ::testing::Test {
protected:
  explicit ScheduleTest(Job job = support::ridgeHouse()) : bench(std::move(job)), window(bench, Services{}) {
    window.resize(1600, 1000);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    window.elevation().setFocus();
  }
  Schedule& table() const { return window.schedule(); }
  ScheduleModel& rows() const { return window.schedule().ends(); }
  const WallEnd& end(int row) const { return *rows().end(row)->end; }
  QRect cell(int row, int column) const {
    table().scrollTo(rows().index(row, column));
    return table().visualRect(rows().index(row, column));
  }
  void click(int row, int column) {
    QTest::mouseClick(table().viewport(), Qt::LeftButton, {}, cell(row, column).center());
    table().setFocus();
  }
  QLineEdit* editor() const {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    return table().findChild<QLineEdit*>(QStringLiteral("cell"));
  }
  void key(Qt::Key key, Qt::KeyboardModifiers with = {}) {
    QWidget* at = QApplication::focusWidget();
    QTest::keyClick(at ? at : &window, key, with);
    QCoreApplication::processEvents(); // an editor is closed by a queued call
    QCoreApplication::processEvents();
  }
  void typeOver(const QString& words) {
    QLineEdit* line = editor();
    ASSERT_NE(line, nullptr);
    line->selectAll();
    QTest::keyClicks(line, words);
  }
  int rowWith(const std::function<bool(const WallEnd&)>& holds) const {
    for (int row = 0; row < rows().rowCount(); ++row)
      if (holds(end(row)))
        return row;
    ADD_FAILURE() << "no such row";
    return 0;
  }
  int strapRow() const {
    return rowWith([](const WallEnd& each) { return each.hardwareKind == "strap"; });
  }
  QAbstractButton* button(const char* name) const {
    return window.findChild<QAbstractButton*>(QLatin1String(name));
  }
  std::size_t panels() const {
    std::size_t count = 0;
    for (std::size_t i = 0; i < bench.job().walls.size(); ++i)
      count += bench.job().walls[i].panels.size();
    return count;
  }
  bool canUndo() const { return bench.session().history().canUndo(); }

  Workbench bench;
  MainWindow window;
};

TEST_F(ScheduleTest, EveryPanelEndOfTheJobIsARow) {
  ASSERT_GT(panels(), 4u);
  EXPECT_EQ(rows().rowCount(), static_cast<int>(2 * panels()));
  std::set<std::string> walls;
  for (int row = 0; row < rows().rowCount(); ++row)
    walls.insert(end(row).wallMark);
  EXPECT_GT(walls.size(), 1u);
}

TEST_F(ScheduleTest, NoCellIsCutOffBesideTheScrollBar) {
  for (const QSize size : {QSize(1600, 1000), QSize(1280, 800)}) {
    window.resize(size);
    QCoreApplication::processEvents();
    EXPECT_EQ(table().isColumnHidden(ScheduleModel::RoomColumn), size.width() < 1600);
    EXPECT_LE(table().horizontalHeader()->length(), table().viewport()->width());
    for (int column = 0; column < ScheduleModel::ColumnCount; ++column)
      for (int row = 0; row < rows().rowCount() && !table().isColumnHidden(column); ++row) {
        const QString words = rows().index(row, column).data().toString();
        const double room = table().columnWidth(column) - (column == 0 ? 16.0 : 8.0);
        if (column != ScheduleModel::RoomColumn && column != ScheduleModel::StateColumn) {
          EXPECT_LE(wordsWidth(words, 12.5), room) << words.toStdString();
        }
      }
  }
}

TEST_F(ScheduleTest, ARowOfAnotherWallShowsThatWallAndChoosesItsHardware) {
  const Id before = bench.session().wall();
  const int row = rowWith([&](const WallEnd& each) { return each.wall != before && each.hardware; });
  const WallEnd wanted = end(row);
  click(row, ScheduleModel::PanelColumn);
  EXPECT_EQ(bench.session().wall(), wanted.wall);
  EXPECT_EQ(bench.session().selection(), (Selection{{wanted.wall, wanted.hardware}}));
  EXPECT_EQ(table().currentIndex().row(), row);
  key(Qt::Key_Down);
  EXPECT_EQ(table().currentIndex().row(), row + 1);
  EXPECT_EQ(bench.session().selection(), (Selection{rows().pieceOf(row + 1)}));
}

TEST_F(ScheduleTest, TheSwitchLeavesTheRowsOfTheWallInView) {
  QTest::mouseClick(button("ends-this-wall"), Qt::LeftButton);
  ASSERT_TRUE(rows().thisWall());
  const WallLine& first = *bench.job().walls.find(bench.session().wall());
  EXPECT_EQ(rows().rowCount(), static_cast<int>(2 * first.panels.size()));
  EXPECT_TRUE(table().isColumnHidden(ScheduleModel::WallColumn));
  key(Qt::Key_PageDown, Qt::ControlModifier);
  const WallLine& second = *bench.job().walls.find(bench.session().wall());
  ASSERT_NE(first.id, second.id);
  EXPECT_EQ(rows().rowCount(), static_cast<int>(2 * second.panels.size()));
  QTest::mouseClick(button("ends-this-wall"), Qt::LeftButton);
  EXPECT_EQ(rows().rowCount(), static_cast<int>(2 * panels()));
}

TEST_F(ScheduleTest, WordsThatAreTypedLeaveTheRowsThatHaveThem) {
  key(Qt::Key_F, Qt::ControlModifier);
  auto* find = qobject_cast<QLineEdit*>(QApplication::focusWidget());
  ASSERT_NE(find, nullptr);
  const QString mark = QString::fromStdString(end(2).panelMark);
  QTest::keyClicks(find, mark.toLower());
  ASSERT_GT(rows().rowCount(), 0);
  EXPECT_LT(rows().rowCount(), static_cast<int>(2 * panels()));
  for (int row = 0; row < rows().rowCount(); ++row)
    EXPECT_TRUE(QString::fromStdString(end(row).panelMark + end(row).hardwareMark).contains(mark)) << row;
  EXPECT_TRUE(table().note().contains(QStringLiteral("hidden"))) << table().note().toStdString();
  QTest::keyClicks(find, QStringLiteral("zz"));
  EXPECT_EQ(rows().rowCount(), 0);
  find->clear();
  EXPECT_EQ(rows().rowCount(), static_cast<int>(2 * panels()));
}

TEST_F(ScheduleTest, AClickOnAHeadSortsAndAThirdOnePutsItBack) {
  const auto stations = [&] {
    std::vector<double> all;
    for (int row = 0; row < rows().rowCount(); ++row)
      all.push_back(end(row).station.value_or(1e9));
    return all;
  };
  const auto natural = stations();
  const auto clickHead = [&](int column) {
    const QHeaderView* head = table().horizontalHeader();
    QTest::mouseClick(head->viewport(), Qt::LeftButton, {},
                      {head->sectionViewportPosition(column) + head->sectionSize(column) / 2, head->height() / 2});
  };
  clickHead(ScheduleModel::AtColumn);
  auto sorted = stations();
  EXPECT_TRUE(std::is_sorted(sorted.begin(), sorted.end()));
  EXPECT_NE(sorted, natural);
  // A row that is edited keeps its place, and what is chosen on the elevation is found in it.
  const int row = strapRow();
  const WallEnd strap = end(row);
  bench.session().apply(setStation(bench.session().base(), {strap.wall, strap.hardware}, *strap.station + 1), "Move");
  EXPECT_EQ(end(row).hardware, strap.hardware);
  bench.session().select({{strap.wall, strap.hardware}});
  EXPECT_EQ(table().currentIndex().row(), row);
  clickHead(ScheduleModel::AtColumn);
  sorted = stations();
  EXPECT_TRUE(std::is_sorted(sorted.rbegin(), sorted.rend()));
  clickHead(ScheduleModel::AtColumn);
  EXPECT_EQ(rows().sortedBy(), -1);
  EXPECT_EQ(end(0).wall, bench.job().walls[0].id);
}

// ---- typing in cells --------------------------------------------------------------------------------------------

TEST_F(ScheduleTest, AStationIsTypedInItsCellAsOneStep) {
  const int row = strapRow();
  const WallEnd before = end(row);
  click(row, ScheduleModel::AtColumn);
  key(Qt::Key_F2);
  typeOver(QString::fromStdString(printLength(*before.station + 0.25, LengthStyle::FeetInches)));
  key(Qt::Key_Return);
  EXPECT_EQ(editor(), nullptr);
  EXPECT_EQ(end(row).station, *before.station + 0.25);
  EXPECT_TRUE(table().hasFocus());
  window.undo();
  EXPECT_EQ(end(row).station, before.station);
  EXPECT_FALSE(canUndo());
}

TEST_F(ScheduleTest, EnterDoubleClickAndAKeyBeginAndEscGivesUp) {
  const int row = strapRow();
  const WallEnd before = end(row);
  click(row, ScheduleModel::AtColumn);
  key(Qt::Key_Return);
  typeOver(QStringLiteral("3'"));
  key(Qt::Key_Escape);
  EXPECT_EQ(editor(), nullptr);
  click(row, ScheduleModel::MarkColumn);
  QTest::mouseDClick(table().viewport(), Qt::LeftButton, {}, cell(row, ScheduleModel::MarkColumn).center());
  ASSERT_NE(editor(), nullptr);
  EXPECT_EQ(editor()->text().toStdString(), before.mark);
  key(Qt::Key_Escape);
  click(row, ScheduleModel::AtColumn);
  key(Qt::Key_7); // as in a spreadsheet, over what is there
  ASSERT_NE(editor(), nullptr);
  EXPECT_EQ(editor()->text(), QStringLiteral("7"));
  key(Qt::Key_Escape);
  EXPECT_EQ(end(row).station, before.station);
  EXPECT_FALSE(canUndo());
}

TEST_F(ScheduleTest, TabGoesOnToTheNextCellThatCanBeTypedIn) {
  const int row = strapRow();
  click(row, ScheduleModel::MarkColumn);
  key(Qt::Key_F2);
  typeOver(QStringLiteral("none"));
  key(Qt::Key_Tab);
  EXPECT_EQ(end(row).mark, "");
  ASSERT_NE(editor(), nullptr);
  EXPECT_EQ(table().currentIndex().column(), ScheduleModel::ColumnColumn);
  EXPECT_EQ(editor()->text().toStdString(), end(row).columnMakeUp);
  key(Qt::Key_Tab);
  EXPECT_EQ(table().currentIndex().column(), ScheduleModel::AtColumn);
  key(Qt::Key_Tab);
  EXPECT_EQ(table().currentIndex().row(), row + 1);
  EXPECT_EQ(table().currentIndex().column(), ScheduleModel::MarkColumn);
  EXPECT_EQ(bench.session().selection(), (Selection{rows().pieceOf(row + 1)}));
  key(Qt::Key_Backtab, Qt::ShiftModifier);
  EXPECT_EQ(table().currentIndex().row(), row);
  EXPECT_EQ(table().currentIndex().column(), ScheduleModel::AtColumn);
  key(Qt::Key_Escape);
  window.undo();
  EXPECT_FALSE(canUndo()); // the cells that were passed were no steps
}

TEST_F(ScheduleTest, WhatCannotBeStaysOpenWithItsSentence) {
  const int row = strapRow();
  const Job before = bench.job();
  click(row, ScheduleModel::AtColumn);
  key(Qt::Key_F2);
  typeOver(QStringLiteral("900'"));
  key(Qt::Key_Return);
  ASSERT_NE(editor(), nullptr);
  EXPECT_EQ(editor()->text(), QStringLiteral("900'"));
  EXPECT_EQ(table().problem(), QStringLiteral("at is outside the wall"));
  EXPECT_EQ(editor()->toolTip(), table().problem());
  EXPECT_EQ(bench.job(), before);
  QTest::mouseClick(table().viewport(), Qt::LeftButton, {}, cell(row + 1, ScheduleModel::PanelColumn).center());
  QCoreApplication::processEvents();
  ASSERT_NE(editor(), nullptr); // elsewhere, too, and the keyboard stays with it
  EXPECT_EQ(editor()->text(), QStringLiteral("900'"));
  EXPECT_TRUE(editor()->hasFocus());
  QTest::mouseDClick(table().viewport(), Qt::LeftButton, {}, cell(row + 1, ScheduleModel::MarkColumn).center());
  QCoreApplication::processEvents();
  ASSERT_NE(editor(), nullptr);
  EXPECT_TRUE(editor()->hasFocus());
  EXPECT_LE(table().selectionModel()->selectedRows(ScheduleModel::PanelColumn).size(), 1);
  table().setFocus();
  key(Qt::Key_A);
  EXPECT_TRUE(editor()->hasFocus());
  table().setFocus();
  key(Qt::Key_Escape);
  EXPECT_EQ(editor(), nullptr);
  EXPECT_EQ(table().problem(), QString());
  click(row, ScheduleModel::MarkColumn);
  key(Qt::Key_F2);
  typeOver(QStringLiteral("HD77"));
  key(Qt::Key_Tab);
  ASSERT_NE(editor(), nullptr);
  EXPECT_TRUE(table().problem().startsWith(QStringLiteral("mark expected a mark"))) << table().problem().toStdString();
  typeOver(QString::fromStdString(bench.job().marks->front().mark));
  key(Qt::Key_Return);
  EXPECT_EQ(editor(), nullptr);
  EXPECT_EQ(table().problem(), QString());
}

// ---- copy and paste ---------------------------------------------------------------------------------------------

TEST_F(ScheduleTest, RowsAreCopiedAndPastedAsOneStep) {
  click(0, ScheduleModel::PanelColumn);
  key(Qt::Key_A, Qt::ControlModifier);
  key(Qt::Key_C, Qt::ControlModifier);
  const QString copied = QApplication::clipboard()->text();
  EXPECT_EQ(copied.count(QLatin1Char('\n')), rows().rowCount() + 1);
  EXPECT_TRUE(copied.startsWith(QStringLiteral("wall\tpanel\tend\tmark"))) << copied.toStdString();
  const Job before = bench.job();
  key(Qt::Key_V, Qt::ControlModifier);
  EXPECT_EQ(bench.job(), before);
  EXPECT_FALSE(canUndo());
  QString changed = copied;
  QApplication::clipboard()->setText(changed.replace(QStringLiteral("\tHD1\t"), QStringLiteral("\tnone\t")));
  key(Qt::Key_V, Qt::ControlModifier);
  for (int row = 0; row < rows().rowCount(); ++row)
    EXPECT_NE(end(row).mark, "HD1");
  EXPECT_EQ(table().problem(), QString());
  window.undo();
  EXPECT_EQ(bench.job(), before);
  EXPECT_FALSE(canUndo());
  QApplication::clipboard()->setText(QString(copied).replace(QStringLiteral("left"), QStringLiteral("west")));
  key(Qt::Key_V, Qt::ControlModifier);
  EXPECT_EQ(bench.job(), before);
  EXPECT_EQ(table().problem(), QStringLiteral("Not pasted: row 2, end: expected left, right or both"));
  key(Qt::Key_Escape);
  EXPECT_EQ(table().problem(), QString());
  click(3, ScheduleModel::PanelColumn);
  key(Qt::Key_C, Qt::ControlModifier);
  EXPECT_EQ(QApplication::clipboard()->text().count(QLatin1Char('\n')), 2);
}

TEST(SchedulePanels, AHouseIsTypedInFromThePlansSchedule) {
  const Point2 corners[] = {{0, 0}, {480, 0}, {480, 360}, {0, 360}};
  Workbench bench(*addOutline(newJob(), corners, WallLine{}));
  MainWindow window(bench, Services{});
  window.resize(1600, 1000);
  window.show();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
  QString table = QStringLiteral("wall\tpanel\tend\tmark\tfrom\tto\n");
  for (int i = 0; i < 4; ++i)
    table += QStringLiteral("%1\tP%2\tboth\tHD1\t10'\t16'\n").arg(QChar('A' + i)).arg(i + 1);
  QApplication::clipboard()->setText(table);
  QTest::mouseClick(window.schedule().viewport(), Qt::LeftButton);
  window.schedule().setFocus();
  QTest::keyClick(&window.schedule(), Qt::Key_V, Qt::ControlModifier);
  EXPECT_EQ(window.schedule().problem(), QString());
  ASSERT_EQ(window.schedule().ends().rowCount(), 8);
  EXPECT_EQ(bench.checker().counts().fix, 0);
  for (int row = 0; row < 8; ++row)
    EXPECT_EQ(window.schedule().ends().end(row)->end->hardwareKind, "strap");
  window.undo();
  EXPECT_EQ(window.schedule().ends().rowCount(), 0);
  EXPECT_FALSE(bench.session().history().canUndo());
}

TEST(SchedulePanels, OneChangedWallIsOneWallsWork) {
  Workbench bench(generateJob(5, 6000));
  MainWindow window(bench, Services{});
  window.resize(1600, 1000);
  window.show();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
  ScheduleModel& rows = window.schedule().ends();
  ASSERT_GT(bench.job().walls.size(), 30u);
  QCoreApplication::processEvents();
  const auto moves = [&](double by) {
    std::size_t last = bench.job().walls.size() - 1;
    while (bench.job().walls[last].bolts.empty())
      --last;
    const WallLine& far = bench.job().walls[last];
    const int before = rows.looked();
    bench.session().apply(setStation(bench.session().base(), {far.id, far.bolts.front().id},
                                     far.bolts.front().station + by),
                          "Move");
    QCoreApplication::processEvents();
    return rows.looked() - before;
  };
  EXPECT_LE(moves(0.25), 2);
  window.schedule().sortBy(ScheduleModel::AtColumn);
  EXPECT_LE(moves(0.25), 2);
  window.schedule().showWith(QStringLiteral("left"));
  EXPECT_LE(moves(-0.25), 4);
}

TEST(SchedulePanels, RowsStayRightWhilePanelsComeAndGo) {
  Workbench bench(support::ridgeHouse());
  MainWindow window(bench, Services{});
  ScheduleModel& rows = window.schedule().ends();
  const auto agrees = [&] {
    std::vector<std::pair<std::string, Side>> wanted, shown;
    for (std::size_t i = 0; i < bench.job().walls.size(); ++i)
      for (const WallEnd& end : wallEnds(*bench.checker().wall(bench.job().walls[i].id)))
        wanted.emplace_back(end.panelMark, end.end);
    for (int row = 0; row < rows.rowCount(); ++row)
      shown.emplace_back(rows.end(row)->end->panelMark, rows.end(row)->end->end);
    if (rows.sortedBy() >= 0) {
      std::sort(wanted.begin(), wanted.end());
      std::sort(shown.begin(), shown.end());
    }
    return wanted == shown;
  };
  for (const int sorted : {-1, static_cast<int>(ScheduleModel::StateColumn)}) {
    rows.sortBy(sorted, Qt::AscendingOrder);
    EXPECT_TRUE(agrees());
    for (std::size_t i = 0; i < bench.job().walls.size(); ++i) {
      const WallLine& wall = bench.job().walls[i];
      if (wall.panels.empty())
        continue;
      bench.session().apply(removePieces(bench.session().base(), std::vector<PieceRef>{{wall.id, wall.panels[0].id}}),
                            "Remove");
      EXPECT_TRUE(agrees());
    }
    while (bench.session().undo())
      EXPECT_TRUE(agrees());
  }
}

// ---- bars -------------------------------------------------------------------------------------------------------

TEST_F(ScheduleTest, BarsFromAPastedColumnAreOneStep) {
  QApplication::clipboard()->setText(QStringLiteral("1'-1\"\n2'-1\"\n"));
  const std::size_t before = bench.job().walls.find(bench.session().wall())->bars.size();
  QString refused;
  QTimer::singleShot(0, [&] {
    auto* form = qobject_cast<PasteDialog*>(QApplication::activeModalWidget());
    ASSERT_NE(form, nullptr);
    EXPECT_TRUE(form->mayTake()) << form->reading().toStdString();
    EXPECT_EQ(form->lines().toPlainText(), QStringLiteral("1'-1\"\n2'-1\"\n"));
    form->lines().moveCursor(QTextCursor::End);
    QTest::keyClicks(&form->lines(), QStringLiteral("west"));
    refused = form->reading();
    EXPECT_FALSE(form->mayTake());
    for (int i = 0; i < 4; ++i)
      QTest::keyClick(&form->lines(), Qt::Key_Backspace);
    EXPECT_TRUE(form->mayTake());
    form->accept();
  });
  window.actions()["paste-bars"]->trigger();
  EXPECT_TRUE(refused.startsWith(QStringLiteral("line 3"))) << refused.toStdString();
  EXPECT_EQ(bench.job().walls.find(bench.session().wall())->bars.size(), before + 2);
  EXPECT_EQ(bench.session().selection().size(), 2u);
  window.undo();
  EXPECT_EQ(bench.job().walls.find(bench.session().wall())->bars.size(), before);
  EXPECT_FALSE(canUndo());
}

// ---- punch list -------------------------------------------------------------------------------------------------

class PunchFilterTest : public ScheduleTest {
protected:
  PunchFilterTest() : ScheduleTest(support::punchListPractice()) {}
  PunchListModel& list() const { return window.punchList(); }
};

TEST_F(PunchFilterTest, OneWallAlone) {
  const int all = list().rowCount();
  QTest::mouseClick(button("punch-this-wall"), Qt::LeftButton);
  EXPECT_EQ(list().rowCount(), static_cast<int>(bench.wall()->findings.size()));
  for (int row = 0; row < list().rowCount(); ++row)
    EXPECT_EQ(list().finding(row)->finding().wall, bench.session().wall());
  key(Qt::Key_PageDown, Qt::ControlModifier);
  EXPECT_EQ(list().rowCount(), static_cast<int>(bench.wall()->findings.size()));
  EXPECT_EQ(list().rowCount() + list().hidden(), all);
  QTest::mouseClick(button("punch-this-wall"), Qt::LeftButton);
  EXPECT_EQ(list().rowCount(), all);
}

TEST_F(PunchFilterTest, OneRuleAloneAndF8StaysWithinIt) {
  const int all = list().rowCount();
  ASSERT_GT(all, 3);
  QTest::mouseClick(button("punch-rule"), Qt::LeftButton);
  auto* menu = window.findChild<QMenu*>(QStringLiteral("rules"));
  ASSERT_NE(menu, nullptr);
  int sum = 0;
  for (const int count : list().byRule())
    sum += count;
  EXPECT_EQ(sum, all);
  const RuleId wanted = list().finding(all - 1)->finding().rule;
  for (QAction* action : menu->actions())
    if (action->text().startsWith(QString::fromUtf8(rule(wanted).name.data()) + QLatin1Char(' ')))
      action->trigger();
  menu->close();
  ASSERT_EQ(list().shownRule(), wanted);
  EXPECT_EQ(list().rowCount(), list().byRule()[static_cast<std::size_t>(wanted)]);
  EXPECT_TRUE(window.punchListView().note().contains(QStringLiteral("hidden")));
  for (int i = 0; i < all; ++i) {
    key(Qt::Key_F8);
    const auto now = list().finding(window.punchListView().currentIndex().row());
    ASSERT_TRUE(now);
    EXPECT_EQ(now->finding().rule, wanted);
    EXPECT_EQ(bench.session().wall(), now->finding().wall);
  }
  window.actions()["punch-this-rule"]->trigger();
  EXPECT_EQ(list().rowCount(), all);
}

TEST_F(PunchFilterTest, FiltersFollowTheWork) {
  QTest::mouseClick(button("punch-this-wall"), Qt::LeftButton);
  const auto finding = list().finding(0);
  ASSERT_TRUE(finding);
  window.punchListView().showRule(finding->finding().rule);
  const int before = list().rowCount();
  ASSERT_GT(before, 0);
  const Id wall = bench.session().wall();
  bench.session().apply(removePieces(bench.session().base(),
                                     std::vector<PieceRef>{{wall, finding->finding().pieces.front()}}),
                        "Remove");
  const auto& findings = bench.wall()->findings;
  int now = 0;
  for (const Finding& each : findings)
    now += each.rule == *list().shownRule();
  EXPECT_EQ(list().rowCount(), now);
  for (int row = 0; row < now; ++row)
    EXPECT_EQ(list().rowAbout({wall, list().finding(row)->finding().pieces.front()}) >= 0, true);
  window.undo();
  EXPECT_EQ(list().rowCount(), before);
}

} // namespace
} // namespace sillwright
