// Hardware and marks as a hand uses them: opened by key, a wrong number refused with words, the plan's numbers changed
// and taken back, types added and removed.
#include "ui/panels/types_panel.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QTableWidget>
#include <QTest>

#include <gtest/gtest.h>

#include "core/edit/types.h"
#include "tests/support/sample_jobs.h"
#include "ui/panels/lines_edit.h"
#include "ui/panels/type_form.h"
#include "ui/window/main_window.h"

namespace sillwright {
namespace {

class TypesPanelTest : public ::testing::Test {
protected:
  TypesPanelTest() : bench(support::boatShedFrontSteelMoved()), window(bench, {}) {
    window.resize(1280, 800);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  }
  TypesPanel& panel() { return window.typesPanel(); }
  void open() {
    QTest::keyClick(&window, Qt::Key_F7);
    ASSERT_TRUE(panel().isVisible());
  }
  // Clicks the line of the list.
  void click(Id id) {
    for (int i = 0; i < panel().list().count(); ++i) {
      panel().list().scrollToItem(panel().list().item(i));
      QTest::mouseClick(panel().list().viewport(), Qt::LeftButton, {},
                        panel().list().visualItemRect(panel().list().item(i)).center());
      if (panel().list().chosen() == id)
        return;
    }
    ADD_FAILURE() << "no line of it";
  }
  QLineEdit& editor(const char* key) {
    auto* line = qobject_cast<QLineEdit*>(panel().form().editorOf(key));
    EXPECT_NE(line, nullptr) << key;
    return *line;
  }
  void type(const char* key, const char* value) {
    QLineEdit& line = editor(key);
    panel().form().ensureWidgetVisible(&line);
    QTest::mouseClick(&line, Qt::LeftButton);
    line.selectAll();
    QTest::keyClicks(&line, QString::fromLatin1(value));
  }
  void press(const char* accessibleName) {
    for (QAbstractButton* button : panel().findChildren<QAbstractButton*>())
      if (button->accessibleName() == QLatin1String(accessibleName))
        return QTest::mouseClick(button, Qt::LeftButton);
    ADD_FAILURE() << accessibleName;
  }
  int findings(RuleId id) {
    int found = 0;
    for (std::size_t i = 0; i < bench.job().walls.size(); ++i)
      if (const auto wall = bench.checker().wall(bench.job().walls[i].id))
        for (const Finding& finding : wall->findings)
          found += finding.rule == id;
    return found;
  }
  Id bolt() { return bench.job().types->bolts.front().id; }
  Id strap() { return bench.job().types->straps.front().id; }
  Id mark() { return bench.job().marks->front().id; }
  std::string undoName() { return bench.session().history().canUndo() ? bench.session().history().undoName() : ""; }

  Workbench bench;
  MainWindow window;
};

TEST_F(TypesPanelTest, AKeyOpensItAndEscapeGoesBack) {
  EXPECT_FALSE(panel().isVisible());
  window.punchListView().setFocus();
  open();
  EXPECT_TRUE(panel().list().hasFocus());
  EXPECT_FALSE(window.elevation().isVisible());
  EXPECT_FALSE(window.card().isVisible());
  EXPECT_TRUE(window.shelf().isVisible());
  EXPECT_TRUE(window.actions()["types"]->isChecked());
  QTest::keyClick(&panel().list(), Qt::Key_Escape);
  EXPECT_FALSE(panel().isVisible());
  EXPECT_TRUE(window.elevation().isVisible());
  EXPECT_TRUE(window.card().isVisible());
  EXPECT_TRUE(window.punchListView().hasFocus());
  EXPECT_FALSE(window.actions()["types"]->isChecked());
  open();
  for (QAbstractButton* button : window.findChildren<QAbstractButton*>())
    if (button->accessibleName() == QStringLiteral("Close hardware and marks"))
      QTest::mouseClick(button, Qt::LeftButton);
  EXPECT_FALSE(panel().isVisible());
  open();
  QTest::keyClick(&window, Qt::Key_F9); // the rule book takes its place
  EXPECT_FALSE(panel().isVisible());
  EXPECT_TRUE(window.ruleBookPanel().isVisible());
}

TEST_F(TypesPanelTest, AThreadLongerThanTheBoltIsRefusedWithWords) {
  open();
  click(bolt());
  const Job before = bench.job();
  type("threadLength", "12 1/16");
  EXPECT_EQ(panel().form().errorAt("threadLength"), QStringLiteral("is longer than the bolt")) << "as it is typed";
  EXPECT_TRUE(bench.job() == before);
  QTest::keyClick(&editor("threadLength"), Qt::Key_Return);
  EXPECT_EQ(panel().form().errorAt("threadLength"), QStringLiteral("is longer than the bolt"));
  EXPECT_TRUE(bench.job() == before);
  EXPECT_EQ(undoName(), "");
  QTest::keyClick(&editor("threadLength"), Qt::Key_Escape); // what stands in the job stands here again
  EXPECT_TRUE(panel().isVisible());
  EXPECT_EQ(panel().form().errorAt("threadLength"), QString());
  type("threadLength", "4.5");
  QTest::keyClick(&editor("threadLength"), Qt::Key_Return);
  EXPECT_EQ(findBoltType(*bench.job().types, bolt())->threadLength, 4.5);
  EXPECT_EQ(editor("threadLength").text(), QStringLiteral("4 1/2\""));
  EXPECT_EQ(undoName(), "Change thread of " + bench.job().types->bolts.front().name);
  QTest::keyClick(&editor("threadLength"), Qt::Key_Z, Qt::ControlModifier);
  EXPECT_TRUE(bench.job() == before);
  EXPECT_EQ(editor("threadLength").text(), QString::fromStdString("5\""));
}

TEST_F(TypesPanelTest, AProfileIsTypedPointByPoint) {
  open();
  click(strap());
  auto* lines = qobject_cast<LinesEdit*>(panel().form().editorOf("profile"));
  ASSERT_NE(lines, nullptr);
  EXPECT_EQ(lines->toPlainText().split('\n').size(), 5) << "a point a line";
  const auto typeLines = [&](std::initializer_list<const char*> points) {
    panel().form().ensureWidgetVisible(lines);
    QTest::mouseClick(lines->viewport(), Qt::LeftButton);
    lines->selectAll();
    for (const char* point : points) {
      QTest::keyClicks(lines, QString::fromLatin1(point));
      if (point != *(points.end() - 1))
        QTest::keyClick(lines, Qt::Key_Return);
    }
  };
  const Job before = bench.job();
  typeLines({"0, 0", "1, 4 down", "2, 3 down", "3, 8 down"});
  const QString wrong = QStringLiteral("point 3 goes up before the hook at the end");
  EXPECT_EQ(panel().form().errorAt("profile"), wrong) << "as it is typed";
  QTest::keyClick(lines, Qt::Key_Tab);
  EXPECT_EQ(panel().form().errorAt("profile"), wrong);
  EXPECT_TRUE(bench.job() == before);
  typeLines({"0, 0", "1, 4 down", "4, 10"});
  QTest::keyClick(lines, Qt::Key_Return, Qt::ControlModifier);
  EXPECT_EQ(panel().form().errorAt("profile"), QString());
  EXPECT_EQ(lines->toPlainText(), QStringLiteral("0, 0\n1, 4 down\n4, 10 down"));
  const std::vector<ProfilePoint> expected{{0, 0}, {1, -4}, {4, -10}};
  EXPECT_EQ(findStrapType(*bench.job().types, strap())->profile, expected);
}

TEST_F(TypesPanelTest, ThePlansRequiredCapacityIsComparedAtOnce) {
  open();
  click(strap());
  type("statedCapacity", "4200");
  QTest::keyClick(&editor("statedCapacity"), Qt::Key_Return);
  click(mark());
  ASSERT_TRUE(panel().marks().isVisible());
  EXPECT_EQ(findings(RuleId::StrapCapacity), 0);
  const QString before = panel().marks().item(0, 3)->text();
  type("requiredCapacity", "4500");
  QTest::keyClick(&editor("requiredCapacity"), Qt::Key_Return);
  EXPECT_GT(findings(RuleId::StrapCapacity), 0);
  EXPECT_EQ(panel().marks().item(0, 3)->text(), QStringLiteral("4500"));
  QTest::keyClick(&editor("requiredCapacity"), Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(findings(RuleId::StrapCapacity), 0);
  EXPECT_EQ(panel().marks().item(0, 3)->text(), before);
}

TEST_F(TypesPanelTest, TheScheduleIsEditedInPlace) {
  open();
  click(mark());
  QTableWidget& table = panel().marks();
  const auto typeInto = [&](int column, const char* value) {
    const QPoint at = table.visualItemRect(table.item(0, column)).center();
    QTest::mouseClick(table.viewport(), Qt::LeftButton, {}, at);
    ASSERT_EQ(table.currentColumn(), column);
    QTest::keyClick(&table, Qt::Key_F2);
    QLineEdit* cell = nullptr;
    for (QLineEdit* each : table.viewport()->findChildren<QLineEdit*>())
      if (each->isVisible())
        cell = each;
    ASSERT_NE(cell, nullptr);
    cell->selectAll();
    QTest::keyClicks(cell, QString::fromLatin1(value));
    QTest::keyClick(cell, Qt::Key_Return);
    QApplication::processEvents();
    QTest::qWait(30); // the view takes the value and lets the editor go
  };
  typeInto(4, "3x6");
  EXPECT_EQ(bench.job().marks->front().sill, (Nominal{3, 6}));
  EXPECT_EQ(table.item(0, 4)->text(), QStringLiteral("3x6"));
  typeInto(5, "-16");
  EXPECT_FALSE(bench.job().marks->front().boltSpacing.has_value());
  EXPECT_EQ(table.item(0, 5)->text(), QString());
  EXPECT_EQ(panel().form().errorAt("boltSpacing"), QStringLiteral("must be more than nothing"));
  typeInto(5, "32");
  EXPECT_EQ(bench.job().marks->front().boltSpacing, 32.0);
}

TEST_F(TypesPanelTest, TypesAreCopiedAddedAndRemoved) {
  open();
  click(bolt());
  const Job before = bench.job();
  press("Add a copy of what is chosen");
  ASSERT_EQ(bench.job().types->bolts.size(), before.types->bolts.size() + 1);
  const Id copy = bench.job().types->bolts.back().id;
  EXPECT_EQ(panel().list().chosen(), copy);
  EXPECT_TRUE(editor("name").hasFocus());
  EXPECT_EQ(undoName(), "Add " + before.types->bolts.front().name + " copy");
  press("Remove what is chosen");
  EXPECT_TRUE(*bench.job().types == *before.types);
  EXPECT_NE(panel().list().chosen(), Id{});
  click(bolt());
  press("Remove what is chosen");
  EXPECT_TRUE(*bench.job().types == *before.types);
  EXPECT_TRUE(panel().problem().contains(QStringLiteral("stays: it is used by"))) << panel().problem().toStdString();
  click(mark());
  press("Add a plain one of this kind, to fill in");
  EXPECT_EQ(bench.job().marks->size(), before.marks->size() + 1);
  EXPECT_EQ(panel().marks().rowCount(), static_cast<int>(before.marks->size()) + 1);
  EXPECT_TRUE(panel().problem().isEmpty());
}

TEST_F(TypesPanelTest, TheCardLeadsToTheTypeOfAPiece) {
  const WallLine& wall = bench.job().walls[0];
  const Id wanted = wall.bolts.front().washer;
  bench.session().select({{wall.id, wall.bolts.front().id}});
  auto* button = window.card().findChild<QAbstractButton*>(QStringLiteral("washer shown"));
  ASSERT_NE(button, nullptr);
  window.card().ensureWidgetVisible(button);
  QTest::mouseClick(button, Qt::LeftButton);
  ASSERT_TRUE(panel().isVisible());
  EXPECT_EQ(panel().list().chosen(), wanted);
  QTest::keyClick(&panel().list(), Qt::Key_Escape);
  EXPECT_TRUE(window.card().isVisible());
}

TEST_F(TypesPanelTest, OnlyKeysAreNeeded) {
  open();
  QTest::keyClick(&panel().list(), Qt::Key_Home);
  for (int i = 0; i < 60 && panel().list().chosen() != bolt(); ++i)
    QTest::keyClick(&panel().list(), Qt::Key_Down);
  ASSERT_EQ(panel().list().chosen(), bolt());
  for (int i = 0; i < 40 && window.focusWidget() != panel().form().editorOf("length"); ++i)
    QTest::keyClick(window.focusWidget(), Qt::Key_Tab);
  ASSERT_EQ(window.focusWidget(), panel().form().editorOf("length"));
  QTest::keyClicks(window.focusWidget(), QStringLiteral("14"));
  QTest::keyClick(window.focusWidget(), Qt::Key_Tab);
  EXPECT_EQ(findBoltType(*bench.job().types, bolt())->length, 14);
  EXPECT_EQ(window.focusWidget(), panel().form().editorOf("threadLength"));
  for (QWidget* child : panel().findChildren<QWidget*>())
    if (child->isVisibleTo(&panel()) && (child->focusPolicy() & Qt::TabFocus)) {
      EXPECT_FALSE(child->accessibleName().isEmpty()) << child->metaObject()->className();
    }
}

TEST_F(TypesPanelTest, NothingIsCutOffInASmallWindow) {
  for (const QSize size : {QSize(1100, 700), QSize(1280, 800), QSize(1600, 1000)}) {
    window.resize(size);
    open();
    for (const Listed& each : listed(bench.job())) {
      panel().choose(each.id);
      QApplication::processEvents();
      EXPECT_LE(window.width(), size.width());
      for (const Field& field : listedFields(bench.job(), each.id)) {
        QWidget* editor = panel().form().editorOf(field.key);
        ASSERT_NE(editor, nullptr) << field.key;
        const int right = editor->mapTo(&panel().form(), QPoint(editor->width(), 0)).x();
        EXPECT_LE(right, panel().form().viewport()->width()) << field.key;
        EXPECT_GE(editor->width(), 100) << field.key;
      }
    }
    QTest::keyClick(&window, Qt::Key_F7);
  }
}

} // namespace
} // namespace sillwright
