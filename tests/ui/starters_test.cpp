// Starters in the real window: from the shelf and from the menu, typed and taken.
#include <gtest/gtest.h>

#include <QApplication>
#include <QLineEdit>
#include <QTest>
#include <QTimer>

#include "core/edit/operations.h"
#include "core/edit/plan_edits.h"
#include "ui/window/main_window.h"
#include "ui/window/starter_form.h"

namespace sillwright {
namespace {

class StarterWindow : public ::testing::Test {
protected:
  explicit StarterWindow(Job job = newJob()) : bench(std::move(job)), window(bench, {}) {
    window.resize(1280, 800);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  }

  // Opens a starter and does something in its form once it is there.
  template <class Then> void open(const char* key, Then then) {
    QTimer waiting;
    bool there = false;
    QObject::connect(&waiting, &QTimer::timeout, [&] {
      auto* form = qobject_cast<FormDialog*>(QApplication::activeModalWidget());
      if (there || !form || !form->isActiveWindow() || !form->focusWidget())
        return;
      there = true;
      then(*form);
    });
    waiting.start(10);
    QTest::mouseClick(window.shelf().itemButton(std::string(starterPrefix) + key), Qt::LeftButton);
    EXPECT_TRUE(there);
  }
  void retype(FormDialog& form, std::size_t line, const char* typed) {
    form.line(line).selectAll();
    QTest::keyClicks(&form.line(line), QString::fromUtf8(typed));
  }

  Workbench bench;
  MainWindow window;
};

TEST_F(StarterWindow, AClickAndEnterLayOutAFrontAsOneStep) {
  open("two-piers", [](FormDialog& form) {
    EXPECT_TRUE(form.mayTake());
    EXPECT_TRUE(form.reading().contains(QStringLiteral("Nothing to FIX"))) << form.reading().toStdString();
    QTest::keyClick(form.focusWidget(), Qt::Key_Return);
  });
  ASSERT_EQ(bench.job().walls.size(), 4u);
  EXPECT_EQ(bench.checker().counts().fix, 0);
  EXPECT_EQ(bench.wall()->layout.wall->openings.size(), 1u);
  EXPECT_EQ(bench.session().history().undoName(), "Opening with two piers");
  window.actions()["undo"]->trigger();
  EXPECT_TRUE(bench.job().walls.empty());
}

TEST_F(StarterWindow, WhatIsTypedIsReadAtOnceAndTheLineIsNamed) {
  open("two-piers", [this](FormDialog& form) {
    retype(form, 2, "twelve");
    EXPECT_FALSE(form.mayTake());
    EXPECT_TRUE(form.reading().startsWith(QStringLiteral("Width of the opening: "))) << form.reading().toStdString();
    retype(form, 2, "40'");
    EXPECT_FALSE(form.mayTake());
    EXPECT_TRUE(form.reading().contains(QStringLiteral("there is room for"))) << form.reading().toStdString();
    retype(form, 2, "-5");
    EXPECT_FALSE(form.mayTake());
    retype(form, 2, "16'");
    retype(form, 3, "3'-6\"");
    EXPECT_TRUE(form.mayTake()) << form.reading().toStdString();
    QTest::keyClick(&form.line(3), Qt::Key_Return);
  });
  ASSERT_EQ(bench.job().walls.size(), 4u);
  EXPECT_EQ(bench.wall()->layout.wall->openings.front().from, 42);
}

TEST_F(StarterWindow, EscLeavesTheJobAsItWas) {
  open("door", [](FormDialog& form) { QTest::keyClick(&form, Qt::Key_Escape); });
  EXPECT_TRUE(bench.job().walls.empty());
  EXPECT_FALSE(bench.session().history().canUndo());
}

TEST_F(StarterWindow, OnABlankWallInViewOnlyItsOwnLengthsAreAsked) {
  const Point2 corners[] = {{0, 0}, {240, 0}, {240, 240}, {0, 240}};
  bench.session().apply(*addOutline(bench.session().base(), corners, wallToDraw(bench.job())), "Draw");
  const Id front = bench.job().walls[0].id;
  bench.session().show(front);
  open("door", [](FormDialog& form) {
    EXPECT_EQ(form.typed().size(), 3u);
    EXPECT_TRUE(form.mayTake()) << form.reading().toStdString();
    form.accept();
  });
  EXPECT_EQ(bench.job().walls.size(), 4u);
  EXPECT_EQ(bench.job().walls.find(front)->openings.size(), 1u);
  EXPECT_TRUE(isBlank(bench.job().walls[1]));
}

TEST_F(StarterWindow, TheShelfBeginsWithStartersUntilThereAreWalls) {
  const auto starterAt = [this] {
    return window.shelf().itemButton(std::string(starterPrefix) + "rectangle")->geometry().top();
  };
  const auto pieceAt = [this] { return window.shelf().itemButton(bench.shelf().front().key)->geometry().top(); };
  EXPECT_LT(starterAt(), pieceAt());
  open("rectangle", [](FormDialog& form) { form.accept(); });
  EXPECT_GT(starterAt(), pieceAt());
}

TEST_F(StarterWindow, EveryStarterIsInTheMenu) {
  for (const Starter& starter : starters()) {
    QAction* action = window.actions()[starter.key];
    ASSERT_NE(action, nullptr) << starter.key;
    EXPECT_TRUE(action->text().startsWith(QString::fromStdString(starter.title)));
  }
}

} // namespace
} // namespace sillwright
