// A refit in the window: asked for by key, looked at, refused and accepted with mouse and keys.
#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QMenu>
#include <QTest>

#include <algorithm>

#include "core/edit/operations.h"
#include "core/refit/refit_words.h"
#include "tests/support/sample_jobs.h"
#include "ui/window/main_window.h"

namespace sillwright {
namespace {

class RefitWindow : public ::testing::Test {
protected:
  RefitWindow() : bench(support::boatShedFrontSteelMoved()), before(bench.job()), window(bench, Services{}) {
    window.resize(1600, 1000);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    window.elevation().setFocus();
  }
  RefitDesk& desk() { return bench.refitDesk(); }
  RefitPanel& panel() { return window.refitPanel(); }
  RefitList& list() { return panel().list(); }
  const WallLine& front() const { return bench.session().settled().walls[0]; }
  std::string said(int row) { return list().rows().index(row).data().toString().toStdString(); }
  bool ticked(int row) { return list().rows().index(row).data(Qt::CheckStateRole).toInt() == Qt::Checked; }
  WordButton& accept() { return *panel().findChild<WordButton*>(QStringLiteral("accept")); }
  WordButton& copy() { return *panel().findChild<WordButton*>(QStringLiteral("copy")); }
  int fixes() const { return bench.wall()->counts.fix; }
  Strap strap(const char* mark) const {
    for (const Strap& strap : front().straps)
      if (strap.mark == mark)
        return strap;
    ADD_FAILURE() << "no strap " << mark;
    return {};
  }
  Change moved(const char* mark, double along) const {
    Strap after = strap(mark);
    after.station += along;
    return {strap(mark), after};
  }
  // Answers every question with these changes, but for the pieces that have to stay.
  void answerWith(std::vector<Change> changes) {
    desk().solveBy([this, changes](const RefitQuestion& question) {
      Proposal proposal;
      proposal.wall = front().id;
      for (const Change& change : changes)
        if (std::find(question.wishes.staying.begin(), question.wishes.staying.end(), pieceOf(change)) ==
            question.wishes.staying.end())
          proposal.changes.push_back(change);
      desk().answer(question.number, {.refit = Refit{proposal}});
    });
  }
  void answerWith(NoLayout none, std::vector<NoLayout> further = {}) {
    none.wall = front().id;
    desk().solveBy([this, none, further](const RefitQuestion& question) {
      desk().answer(question.number, {.refit = Refit{none}, .further = further});
    });
  }
  void press(Qt::Key key, Qt::KeyboardModifiers with = {}) {
    QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : &window, key, with);
  }
  void open() {
    press(Qt::Key_F5);
    ASSERT_TRUE(QTest::qWaitFor([this] { return desk().isOpen() && !desk().isBusy(); }, 20000));
  }
  void clickRow(int row, int x, int y) {
    const QRect box = list().visualRect(list().rows().index(row));
    QTest::mouseClick(list().viewport(), Qt::LeftButton, {}, box.topLeft() + QPoint(x, y));
  }
  void clickTick(int row) {
    const QRect box = list().visualRect(list().rows().index(row));
    QTest::mouseClick(list().viewport(), Qt::LeftButton, {}, RefitRowsDelegate::tickBox(box).center());
  }
  bool drawsProposal() {
    const auto taken = window.elevation().drawing().taken();
    return std::any_of(taken.begin(), taken.end(),
                       [](const TakenBox& box) { return box.name.starts_with("proposal "); });
  }

  Workbench bench;
  Job before;
  MainWindow window;
};

TEST_F(RefitWindow, TheSampleIsLaidOutByKeysAlone) {
  ASSERT_GT(fixes(), 0);
  open();
  ASSERT_EQ(desk().state(), RefitDesk::State::Proposed);
  ASSERT_GT(list().rows().rowCount(), 0);
  EXPECT_TRUE(window.refitShown());
  EXPECT_TRUE(drawsProposal());
  EXPECT_TRUE(list().hasFocus());
  EXPECT_EQ(list().currentIndex().row(), 0);
  EXPECT_EQ(desk().current(), 0u);
  EXPECT_EQ(bench.session().settled(), before); // only proposed
  press(Qt::Key_F5, Qt::ControlModifier);
  EXPECT_FALSE(window.refitShown());
  EXPECT_FALSE(drawsProposal());
  EXPECT_EQ(fixes(), 0);
  EXPECT_EQ(bench.session().history().undoName(), "Refit wall A");
  EXPECT_TRUE(window.elevation().hasFocus());
  press(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(front(), before.walls[0]);
  EXPECT_FALSE(bench.session().history().canUndo());
}

TEST_F(RefitWindow, DoneAgainOnItsOwnResultThereIsNothingToDo) {
  open();
  press(Qt::Key_F5, Qt::ControlModifier);
  const Job laidOut = bench.session().settled();
  open();
  EXPECT_EQ(desk().state(), RefitDesk::State::Proposed);
  EXPECT_EQ(list().rows().rowCount(), 0);
  EXPECT_TRUE(panel().words().startsWith(QStringLiteral("Nothing to do"))) << panel().words().toStdString();
  EXPECT_FALSE(accept().isVisible());
  EXPECT_EQ(bench.session().settled(), laidOut);
}

TEST_F(RefitWindow, WithoutItsTickAPieceStays) {
  answerWith({moved("S1", 0.125), moved("S2", -0.5), moved("S4", -0.375)});
  open();
  ASSERT_EQ(list().rows().rowCount(), 3);
  EXPECT_EQ(accept().text(), QStringLiteral("Accept all"));
  clickTick(1);
  EXPECT_FALSE(ticked(1));
  EXPECT_EQ(list().rows().rowCount(), 3); // it stays in the list
  EXPECT_EQ(accept().text(), QStringLiteral("Accept the 2 ticked"));
  EXPECT_EQ(list().rows().index(1).data(Qt::AccessibleTextRole).toString().toStdString(),
            said(1) + ", refused: it stays at 3'-8 1/2\"");
  clickTick(1);
  EXPECT_TRUE(ticked(1));
  list().setCurrentIndex(list().rows().index(1));
  press(Qt::Key_Space);
  EXPECT_FALSE(ticked(1));
  EXPECT_EQ(list().currentIndex().row(), 1);
  QTest::mouseClick(&accept(), Qt::LeftButton);
  EXPECT_EQ(strap("S1").station, 1.75);
  EXPECT_EQ(strap("S2").station, 44.5);
  EXPECT_EQ(strap("S4").station, 285.25 - 0.375);
}

TEST_F(RefitWindow, OneAloneIsAcceptedByKeyByMouseAndFromItsMenu) {
  answerWith({moved("S1", 0.125), moved("S2", -0.5), moved("S3", 1), moved("S4", -0.375)});
  open();
  const auto remaining = [this](std::vector<Change> changes) { answerWith(std::move(changes)); };
  list().setCurrentIndex(list().rows().index(0));
  remaining({moved("S2", -0.5), moved("S3", 1), moved("S4", -0.375)});
  press(Qt::Key_O);
  EXPECT_EQ(strap("S1").station, 1.75);
  EXPECT_EQ(strap("S2").station, 44.5);
  ASSERT_EQ(list().rows().rowCount(), 3);
  EXPECT_TRUE(window.refitShown());
  list().setCurrentIndex(list().rows().index(0));
  remaining({moved("S3", 1), moved("S4", -0.375)});
  const QRect row = list().visualRect(list().rows().index(0));
  QTest::mouseClick(list().viewport(), Qt::LeftButton, {}, RefitRowsDelegate::onlyButton(row).center().toPoint());
  EXPECT_EQ(strap("S2").station, 44);
  remaining({moved("S4", -0.375)});
  const QPoint at = list().visualRect(list().rows().index(0)).center();
  QContextMenuEvent asked(QContextMenuEvent::Mouse, at, list().viewport()->mapToGlobal(at));
  QApplication::sendEvent(list().viewport(), &asked);
  QMenu* menu = list().findChild<QMenu*>();
  ASSERT_NE(menu, nullptr);
  for (QAction* action : menu->actions())
    if (action->text() == QStringLiteral("Accept only this one"))
      action->trigger();
  EXPECT_EQ(strap("S3").station, 242.875 + 1);
  for (int i = 0; i < 3; ++i) // one step each
    bench.session().undo();
  EXPECT_EQ(front(), before.walls[0]);
}

TEST_F(RefitWindow, EscapeFromListOrDrawingAndTheButtonPutItAway) {
  answerWith({moved("S1", 0.125)});
  open();
  press(Qt::Key_Escape);
  EXPECT_FALSE(window.refitShown());
  EXPECT_TRUE(window.elevation().hasFocus());
  open();
  window.elevation().setFocus();
  press(Qt::Key_Escape);
  EXPECT_FALSE(window.refitShown());
  open();
  for (WordButton* button : window.findChildren<WordButton*>())
    if (button->accessibleName() == QStringLiteral("Put the proposal away"))
      QTest::mouseClick(button, Qt::LeftButton);
  EXPECT_FALSE(window.refitShown());
  EXPECT_EQ(bench.session().settled(), before);
}

TEST_F(RefitWindow, AnotherEditPutsItAwayAndSaysSo) {
  answerWith({moved("S1", 0.125)});
  open();
  bench.session().select({{front().id, strap("S2").id}});
  EXPECT_TRUE(window.refitShown());
  window.elevation().setFocus();
  press(Qt::Key_Right); // nudged
  EXPECT_FALSE(window.refitShown());
  EXPECT_TRUE(window.status().words().contains(QStringLiteral("put away"))) << window.status().words().toStdString();
  open();
  press(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_FALSE(window.refitShown());
  open();
  press(Qt::Key_PageDown, Qt::ControlModifier); // another wall
  EXPECT_FALSE(window.refitShown());
}

TEST_F(RefitWindow, ARowThatIsClickedIsSelectedInTheDrawing) {
  answerWith({moved("S1", 0.125), moved("S2", -0.5)});
  open();
  clickRow(1, 120, 16);
  ASSERT_EQ(bench.session().selection().size(), 1u);
  EXPECT_EQ(bench.session().selection()[0].piece, strap("S2").id);
  EXPECT_EQ(desk().current(), 1u);
  list().setCurrentIndex(list().rows().index(0));
  press(Qt::Key_Return);
  EXPECT_EQ(bench.session().selection()[0].piece, strap("S1").id);
}

TEST_F(RefitWindow, WhereNoLayoutExistsTheRequirementsAreThere) {
  NoLayout none;
  const Id bar = front().bars.front().id;
  none.requirements = {{Requirement::Kind::Rule, RuleId::StrapSteel, {strap("S1").id, bar}, {}, {}, 0.4375},
                       {Requirement::Kind::Leeway, RuleId::StrapEdge, {front().columns.front().id}}};
  answerWith(none);
  open();
  EXPECT_EQ(desk().state(), RefitDesk::State::Conflict);
  EXPECT_TRUE(panel().words().startsWith(QStringLiteral("No layout exists")));
  EXPECT_FALSE(accept().isVisible());
  ASSERT_TRUE(copy().isVisible());
  ASSERT_EQ(list().rows().rowCount(), 3); // a title over two requirements
  EXPECT_EQ(list().currentIndex().row(), 1);
  EXPECT_EQ(said(1),
            "1. " + requirementWords(desk().wall()->layout, desk().limits(), none.requirements[0], bench.job().units));
  clickRow(1, 120, 16);
  EXPECT_EQ(bench.session().selection(), (Selection{{front().id, strap("S1").id}, {front().id, bar}}));
  EXPECT_TRUE(window.refitShown());
  const std::vector<std::string> lines =
      questionLines(bench.job(), desk().wall()->layout, desk().limits(), desk().conflicts().front());
  QTest::mouseClick(&copy(), Qt::LeftButton);
  const std::string copied = QApplication::clipboard()->text().toStdString();
  EXPECT_EQ(copied.substr(0, lines[0].size() + 1), lines[0] + "\n");
  EXPECT_EQ(std::count(copied.begin(), copied.end(), '\n'), static_cast<std::ptrdiff_t>(lines.size()));
}

TEST_F(RefitWindow, AllThatCollidesIsListedAndAsked) {
  NoLayout first, second;
  const Id bar = front().bars.front().id;
  first.requirements = {{Requirement::Kind::Rule, RuleId::StrapSteel, {strap("S1").id, bar}, {}, {}, 0.4375},
                        {Requirement::Kind::Leeway, RuleId::StrapEdge, {front().columns.front().id}}};
  second.requirements = {{Requirement::Kind::Rule, RuleId::StrapEdge, {strap("S2").id}}};
  answerWith(first, {second});
  open();
  EXPECT_TRUE(panel().words().contains(QStringLiteral("for 2 reasons"))) << panel().words().toStdString();
  ASSERT_EQ(list().rows().rowCount(), 5); // two titles
  EXPECT_EQ(said(4), "1. " + requirementWords(desk().wall()->layout, desk().limits(), second.requirements[0],
                                              bench.job().units));
  clickRow(4, 120, 16);
  EXPECT_EQ(bench.session().selection(), (Selection{{front().id, strap("S2").id}}));
  QTest::mouseClick(&copy(), Qt::LeftButton);
  const std::string copied = QApplication::clipboard()->text().toStdString();
  for (const NoLayout& conflict : {first, second}) {
    NoLayout asked = conflict;
    asked.wall = front().id;
    std::string words;
    for (const std::string& line : questionLines(bench.job(), desk().wall()->layout, desk().limits(), asked))
      words += line + "\n";
    EXPECT_NE(copied.find(words), std::string::npos) << copied;
  }
}

TEST_F(RefitWindow, AProblemIsSaidInItsSentence) {
  desk().solveBy([this](const RefitQuestion& question) {
    desk().answer(question.number, {.refit = Problem{"wall A", "there is no sill to bolt down"}});
  });
  open();
  EXPECT_EQ(panel().words(), QStringLiteral("There is no sill to bolt down."));
  EXPECT_FALSE(accept().isVisible());
  EXPECT_FALSE(copy().isVisible());
}

TEST_F(RefitWindow, TheWindowGoesInTheMiddleOfASolving) {
  Workbench other(support::boatShedFrontSteelMoved());
  {
    MainWindow second(other, Services{});
    second.show();
    second.refitWall(RefitDesk::Aim::LeastMoved);
    EXPECT_TRUE(other.refitDesk().isOpen());
  }
  QApplication::processEvents();
  EXPECT_FALSE(other.refitDesk().isOpen());
  other.refitDesk().open(RefitDesk::Aim::LeastMoved); // with nobody left to do it elsewhere: on the spot
  EXPECT_FALSE(other.refitDesk().isBusy());
}

TEST_F(RefitWindow, TheRuleBookStandsBeforeIt) {
  answerWith({moved("S1", 0.125)});
  open();
  press(Qt::Key_F9);
  EXPECT_TRUE(window.ruleBookShown());
  EXPECT_FALSE(window.refitShown());
  window.leaveRuleBook();
  EXPECT_TRUE(window.refitShown());
  press(Qt::Key_F9);
  press(Qt::Key_F5); // asked for again: it is what is wanted now
  EXPECT_TRUE(window.refitShown());
}

TEST_F(RefitWindow, EverythingInItIsNamed) {
  answerWith({moved("S1", 0.125), moved("S2", -0.5)});
  open();
  EXPECT_FALSE(list().accessibleName().isEmpty());
  EXPECT_FALSE(list().whatsThis().isEmpty());
  EXPECT_FALSE(accept().accessibleName().isEmpty());
  EXPECT_EQ(panel().accessibleDescription(), panel().words());
  for (const SpokenPiece& piece : window.elevation().spokenPieces())
    EXPECT_EQ(piece.description.startsWith(QStringLiteral("proposed: ")),
              piece.piece.piece == strap("S1").id || piece.piece.piece == strap("S2").id)
        << piece.name.toStdString();
  EXPECT_EQ(window.actions()["refit"]->shortcut(), QKeySequence(Qt::Key_F5));
  EXPECT_FALSE(window.actions()["lay-out"]->shortcut().isEmpty());
}

} // namespace
} // namespace sillwright
