// The rule book as a hand uses it: reached from a finding, searched, a limit changed with a reason and taken back.
#include "ui/window/form_dialog.h"
#include "ui/window/main_window.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QContextMenuEvent>
#include <QLineEdit>
#include <QMenu>
#include <QTableWidget>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

#include "core/edit/limits.h"
#include "core/rules/correction.h"
#include "core/rules/wording.h"
#include "tests/support/sample_jobs.h"
#include "ui/panels/finding_line.h"
#include "ui/panels/rule_page.h"

namespace sillwright {
namespace {

// Works in the form that `open` opens, and closes it.
void workInForm(const std::function<void()>& open, const std::function<void(FormDialog&)>& work) {
  QTimer typist;
  bool worked = false;
  QObject::connect(&typist, &QTimer::timeout, [&] {
    auto* form = qobject_cast<FormDialog*>(QApplication::activeModalWidget());
    if (!form || worked)
      return;
    worked = true;
    work(*form);
    form->close();
  });
  typist.start(20);
  open();
  EXPECT_TRUE(worked);
}

class RuleBookTest : public ::testing::Test {
protected:
  RuleBookTest() : bench(support::boatShedFrontSteelMoved()), window(bench, {}) {
    window.resize(1280, 800);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  }
  // Puts the punch list on a finding of that rule and the keyboard into it.
  void standOn(RuleId id) {
    window.punchListView().setFocus();
    for (int row = 0; row < window.punchList().rowCount(); ++row)
      if (window.punchList().finding(row)->finding().rule == id)
        return window.punchListView().setCurrentIndex(window.punchList().index(row));
    ADD_FAILURE() << "no finding of " << rule(id).name;
  }
  RuleBookPanel& book() { return window.ruleBookPanel(); }
  QAbstractButton* pageButton(const char* name) {
    for (QAbstractButton* button : book().page().findChildren<QAbstractButton*>(QString::fromLatin1(name)))
      if (button->isVisible())
        return button;
    return nullptr;
  }
  // Opens the form behind a button of the page and works in it.
  void inForm(const char* name, const std::function<void(FormDialog&)>& work) {
    QAbstractButton* button = pageButton(name);
    ASSERT_NE(button, nullptr) << name;
    book().page().ensureWidgetVisible(button);
    workInForm([&] { QTest::mouseClick(button, Qt::LeftButton); }, work);
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  }
  static QAbstractButton* takingButton(FormDialog& form) {
    for (QAbstractButton* button : form.findChildren<QAbstractButton*>())
      if (button->text() == QStringLiteral("Change it") || button->text() == QStringLiteral("Set"))
        return button;
    return nullptr;
  }

  Workbench bench;
  MainWindow window;
};

TEST_F(RuleBookTest, AKeyOnAFindingOpensItsRuleAndEscapeGoesBack) {
  standOn(RuleId::StrapSteel);
  EXPECT_FALSE(book().isVisible());
  QTest::keyClick(&window.punchListView(), Qt::Key_W);
  EXPECT_TRUE(book().isVisible());
  EXPECT_EQ(book().list().chosenRule(), RuleId::StrapSteel);
  EXPECT_TRUE(book().list().hasFocus());
  EXPECT_TRUE(book().page().words().contains(QStringLiteral("A strap does not touch the bars.")));
  EXPECT_TRUE(book().page().words().contains(QStringLiteral("Found in this job: 1 WATCH.")));
  EXPECT_FALSE(window.card().isVisible());
  QTest::keyClick(&book().list(), Qt::Key_Escape);
  EXPECT_FALSE(book().isVisible());
  EXPECT_TRUE(window.card().isVisible());
  EXPECT_TRUE(window.punchListView().hasFocus());
}

TEST_F(RuleBookTest, TheMenuOfAFindingAndTheCardLeadToIt) {
  standOn(RuleId::StrapSeam);
  PunchList& list = window.punchListView();
  const QPoint at = list.visualRect(list.currentIndex()).center();
  QContextMenuEvent event(QContextMenuEvent::Mouse, at, list.viewport()->mapToGlobal(at));
  QApplication::sendEvent(list.viewport(), &event);
  auto* why = list.findChild<QAction*>(QStringLiteral("why"));
  ASSERT_NE(why, nullptr);
  why->trigger();
  EXPECT_EQ(book().list().chosenRule(), RuleId::StrapSeam);
  window.actions()["rule-book"]->trigger();
  EXPECT_FALSE(book().isVisible());
  list.goToRow(0);
  const RuleId first = window.punchList().finding(0)->finding().rule;
  auto* line = window.card().findChild<FindingLine*>();
  ASSERT_NE(line, nullptr);
  QTest::mouseClick(line->findChild<QAbstractButton*>(QStringLiteral("why")), Qt::LeftButton);
  EXPECT_EQ(book().list().chosenRule(), first);
}

TEST_F(RuleBookTest, ItIsSearchedByNameMeaningMeasureAndSource) {
  QTest::keyClick(&window, Qt::Key_F9);
  ASSERT_TRUE(book().searchLine().hasFocus());
  const auto finds = [&](const char* words, RuleId id) {
    book().searchLine().clear();
    QTest::keyClicks(&book().searchLine(), QString::fromLatin1(words));
    EXPECT_LT(book().list().shownRules(), static_cast<int>(ruleBook().size())) << words;
    book().list().setCurrentRow(-1);
    book().list().chooseFirst();
    EXPECT_EQ(book().list().chosenRule(), id) << words;
  };
  finds("washer.sheathing", RuleId::WasherSheathing);
  finds("seam between two plies", RuleId::StrapSeam);
  finds("NAILS OFF the column", RuleId::StrapColumn);
  finds("12.1.6.4", RuleId::StrapNailDepth);
  book().searchLine().setText(QStringLiteral("dressed lumber"));
  QTest::keyClick(&book().searchLine(), Qt::Key_Down);
  EXPECT_TRUE(book().list().hasFocus());
  ASSERT_TRUE(book().list().chosenTable());
  bool twoBySix = false; // PS 20: a nominal 6 is dressed to 5 1/2
  for (int row = 0; row < book().table().rowCount(); ++row)
    twoBySix = twoBySix || (book().table().item(row, 0)->text() == QStringLiteral("6") &&
                            book().table().item(row, 1)->text() == QStringLiteral("5 1/2"));
  EXPECT_TRUE(twoBySix);
  book().searchLine().setText(QStringLiteral("no such words"));
  EXPECT_EQ(book().list().shownRules(), 0);
  EXPECT_EQ(book().note(), QStringLiteral("nothing has these words"));
}

TEST_F(RuleBookTest, ALimitIsChangedOnlyWithAReasonAndTakenBack) {
  standOn(RuleId::StrapSteel);
  QTest::keyClick(&window.punchListView(), Qt::Key_W);
  const int before = bench.checker().counts().watch;
  inForm("change strap.steel target", [&](FormDialog& form) {
    EXPECT_FALSE(form.mayTake()); // the book's own value is no change
    form.line(0).setText(QStringLiteral("1 1/2"));
    EXPECT_FALSE(form.mayTake());
    EXPECT_TRUE(form.reading().contains(QStringLiteral("Say why")));
    QTest::keyClick(&form.line(0), Qt::Key_Return);
    EXPECT_TRUE(form.isVisible());
    form.line(1).setText(QStringLiteral("   "));
    EXPECT_FALSE(form.mayTake());
    QTest::mouseClick(takingButton(form), Qt::LeftButton);
    EXPECT_TRUE(form.isVisible());
    form.line(1).setText(QStringLiteral("letter"));
    form.line(3).setText(QStringLiteral("2031-02-30"));
    EXPECT_FALSE(form.mayTake());
  });
  EXPECT_FALSE(bench.session().history().canUndo());
  inForm("change strap.steel target", [&](FormDialog& form) {
    form.line(0).setText(QStringLiteral("1 1/2"));
    QTest::keyClicks(&form.line(1), QStringLiteral("letter of the engineer"));
    form.line(2).setText(QStringLiteral("R. Alder"));
    form.line(3).setText(QStringLiteral("2031-05-14"));
    EXPECT_TRUE(form.mayTake());
    QTest::mouseClick(takingButton(form), Qt::LeftButton);
  });
  ASSERT_EQ(bench.job().limits->overrides.size(), 1u);
  EXPECT_EQ(bench.job().limits->overrides[0],
            (LimitOverride{"strap.steel target", 1.5, "letter of the engineer", "R. Alder", "2031-05-14", ""}));
  EXPECT_EQ(bench.session().history().undoName(), "Change a limit");
  EXPECT_GT(bench.checker().counts().watch, before);
  const QString page = book().page().words();
  for (const char* shown : {"at least 1 1/2\"", "the rule book says 1\"", "letter of the engineer (R. Alder, 2031-05-14)"})
    EXPECT_TRUE(page.contains(QString::fromUtf8(shown))) << shown << "\n" << page.toStdString();
  bool onFinding = false;
  for (int row = 0; row < window.punchList().rowCount(); ++row)
    if (window.punchList().finding(row)->finding().rule == RuleId::StrapSteel)
      onFinding = sourceWords(bench.job(), window.punchList().finding(row)->finding()).find("letter of the engineer") !=
                  std::string::npos;
  EXPECT_TRUE(onFinding);
  QAbstractButton* back = pageButton("restore strap.steel target");
  ASSERT_NE(back, nullptr);
  book().page().ensureWidgetVisible(back);
  QTest::mouseClick(back, Qt::LeftButton);
  EXPECT_TRUE(bench.job().limits->overrides.empty());
  QTest::keyClick(&book().list(), Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(bench.job().limits->overrides.size(), 1u);
  QTest::keyClick(&book().list(), Qt::Key_Z, Qt::ControlModifier);
  EXPECT_TRUE(bench.job().limits->overrides.empty());
  EXPECT_EQ(bench.checker().counts().watch, before);
  EXPECT_TRUE(book().page().words().contains(QStringLiteral("at least 1\"")));
}

TEST_F(RuleBookTest, ARuleCountsLessOnlyWithAReason) {
  standOn(RuleId::StrapSeam);
  window.actions()["why"]->trigger();
  inForm("counts", [&](FormDialog& form) {
    form.choice(0).setCurrentIndex(2);
    EXPECT_EQ(form.typed()[0], QStringLiteral("WATCH at most"));
    EXPECT_FALSE(form.mayTake());
    form.line(1).setText(QStringLiteral("asked by phone"));
    EXPECT_TRUE(form.mayTake());
    QTest::mouseClick(takingButton(form), Qt::LeftButton);
  });
  ASSERT_EQ(bench.job().limits->rules.size(), 1u);
  EXPECT_EQ(bench.job().limits->rules[0].rule, "strap.seam");
  EXPECT_EQ(bench.job().limits->rules[0].counts, RuleCounts::Watch);
  EXPECT_TRUE(book().page().words().contains(QStringLiteral("asked by phone")));
  QAbstractButton* back = pageButton("restore counts");
  ASSERT_NE(back, nullptr);
  book().page().ensureWidgetVisible(back);
  QTest::mouseClick(back, Qt::LeftButton);
  EXPECT_TRUE(bench.job().limits->rules.empty());
}

TEST_F(RuleBookTest, OptionsFromThePlansAreSetAsOneStep) {
  QTimer typist;
  QObject::connect(&typist, &QTimer::timeout, [&] {
    auto* form = qobject_cast<FormDialog*>(QApplication::activeModalWidget());
    if (!form)
      return;
    form->line(0).setText(QStringLiteral("many"));
    EXPECT_FALSE(form->mayTake());
    form->line(0).setText(QStringLiteral("3"));
    form->choice(1).setCurrentText(QStringLiteral("D1"));
    form->line(5).setText(QStringLiteral("4'"));
    EXPECT_TRUE(form->mayTake());
    form->accept();
  });
  typist.start(20);
  const Job before = bench.job();
  window.actions()["job-options"]->trigger();
  typist.stop();
  EXPECT_EQ(bench.job().limits->storeys, 3);
  EXPECT_EQ(bench.job().limits->seismicCategory, "D1");
  EXPECT_EQ(bench.job().limits->planBoltSpacing, 48);
  EXPECT_EQ(bench.job().limits->concreteStrength, before.limits->concreteStrength);
  window.actions()["undo"]->trigger();
  EXPECT_EQ(*bench.job().limits, *before.limits);
}

TEST_F(RuleBookTest, EverythingInItHasANameAndTheKeyboardReachesIt) {
  for (const QSize size : {QSize(1024, 700), QSize(1920, 1080)}) {
    window.resize(size);
    for (const RuleRow& row : ruleBook()) {
      window.showRule(row.id);
      for (const QAbstractButton* button : book().page().findChildren<QAbstractButton*>())
        if (button->isVisible()) {
          EXPECT_FALSE(button->accessibleName().isEmpty()) << row.name;
          EXPECT_TRUE(button->focusPolicy() & Qt::TabFocus) << row.name;
          EXPECT_LE(button->geometry().right(), book().page().viewport()->width()) << row.name;
        }
    }
    window.leaveRuleBook();
  }
  window.openRuleBook();
  window.focusPanel(-1);
  window.focusPanel(1);
  EXPECT_TRUE(book().isAncestorOf(QApplication::focusWidget()));
}

TEST_F(RuleBookTest, SaysWhatARuleWaitsForAndGoesThere) {
  window.openRuleBook();
  book().showRule(RuleId::StrapPlumb);
  EXPECT_TRUE(book().page().words().contains("Waits for a plumb reading of 4 straps: S1, wall A; S2")) << book().page().words().toStdString();
  QAbstractButton* go = pageButton("waits for a plumb reading");
  ASSERT_NE(go, nullptr);
  book().page().ensureWidgetVisible(go);
  QTest::mouseClick(go, Qt::LeftButton);
  ASSERT_EQ(bench.session().selection().size(), 1u);
  EXPECT_EQ(markOf(bench.job(), bench.session().selection().front()), "S1");
  EXPECT_FALSE(window.ruleBookShown()) << "the card, where it is entered, stands there";
}

// The trap of the 5 1/2 in sill: three ways out on the card, each by its own button.
TEST(WaysOut, TheCardOffersEveryWayOutOfTheWasherTrap) {
  Workbench bench(support::punchListPractice());
  MainWindow window(bench, {});
  window.resize(1280, 800);
  window.show();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
  const auto trap = [&]() -> std::optional<Finding> {
    for (int row = 0; row < window.punchList().rowCount(); ++row)
      if (const Finding f = window.punchList().finding(row)->finding(); f.window)
        return f;
    return std::nullopt;
  };
  ASSERT_TRUE(trap());
  ASSERT_EQ(trap()->otherWays.size(), 2u);
  const Job before = bench.job();
  for (std::size_t way = 0; way < 3; ++way) {
    const Finding finding = *trap();
    bench.goTo(finding);
    QString words = QString::fromStdString(wayWords(bench.job(), finding, allWays(finding)[way]));
    QAbstractButton* button = nullptr;
    for (QAbstractButton* each : window.findChildren<QAbstractButton*>())
      if (each->isVisible() && each->text().endsWith(words.mid(1)) && qobject_cast<FindingLine*>(each->parentWidget()))
        button = each;
    ASSERT_NE(button, nullptr) << words.toStdString();
    QTest::mouseClick(button, Qt::LeftButton);
    EXPECT_FALSE(trap() && trap()->pieces == finding.pieces) << words.toStdString();
    EXPECT_TRUE(QString::fromStdString(bench.session().history().undoName()).startsWith("Put right"));
    window.undo();
    EXPECT_EQ(bench.job(), before);
  }
}

TEST(WaysOut, AKeyInThePunchListListsThemAndOneIsTaken) {
  Workbench bench(support::punchListPractice());
  MainWindow window(bench, {});
  window.resize(1280, 800);
  window.show();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
  PunchList& list = window.punchListView();
  int row = 0;
  while (!window.punchList().finding(row)->finding().window)
    ++row;
  const Finding finding = window.punchList().finding(row)->finding();
  list.setFocus();
  list.setCurrentIndex(window.punchList().index(row));
  QTest::keyClick(&list, Qt::Key_O);
  auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
  ASSERT_NE(menu, nullptr);
  ASSERT_EQ(menu->actions().size(), 3);
  EXPECT_TRUE(menu->actions()[2]->text().contains("3 x 4 1/2")) << menu->actions()[2]->text().toStdString();
  menu->setActiveAction(menu->actions()[2]);
  QTest::keyClick(menu, Qt::Key_Return);
  const WallLine* wall = bench.job().walls.find(finding.wall);
  EXPECT_EQ(findIn(wall->bolts, finding.pieces.front())->washer, finding.otherWays[1].type);
  menu->close();
}

// The diagonal of the practice job is 3/4 long; taped again as it is on the plan there is nothing to find.
TEST(TapedDiagonal, IsEnteredInAFormAndChecked) {
  Workbench bench(support::punchListPractice());
  MainWindow window(bench, {});
  window.show();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
  const auto square = [&] {
    int found = 0;
    for (int row = 0; row < window.punchList().rowCount(); ++row)
      found += window.punchList().finding(row)->finding().rule == RuleId::FormSquare;
    return found;
  };
  ASSERT_EQ(square(), 1);
  const auto typed = [&](const char* length) {
    workInForm([&] { window.tapeDiagonal(); },
               [&](FormDialog& form) {
                 form.line(1).selectAll();
                 QTest::keyClicks(&form.line(1), QString::fromLatin1(length));
                 if (form.mayTake())
                   form.accept();
               });
  };
  const Job before = bench.job();
  typed("31'-2 7/8");
  EXPECT_EQ(square(), 0);
  EXPECT_EQ(bench.job().diagonals->size(), 1u);
  EXPECT_DOUBLE_EQ(bench.job().diagonals->front().measured, 31 * 12 + 2.875);
  window.undo();
  EXPECT_EQ(bench.job(), before);
  EXPECT_EQ(square(), 1);
  typed("-3");
  typed("none");
  EXPECT_EQ(bench.job(), before);
}

TEST(PunchListRows, TheRowThatWasGoneToStaysTheCurrentOne) {
  Workbench bench(support::punchListPractice());
  MainWindow window(bench, {});
  window.resize(1280, 800);
  window.show();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
  for (const int row : {window.punchList().rowCount() - 1, 0, 2, 14, 1})
    if (row < window.punchList().rowCount()) {
      window.punchListView().setFocus();
      window.punchListView().setCurrentIndex(window.punchList().index(row));
      QTest::keyClick(&window.punchListView(), Qt::Key_Return);
      EXPECT_EQ(window.punchListView().currentIndex().row(), row);
    }
}

} // namespace
} // namespace sillwright
