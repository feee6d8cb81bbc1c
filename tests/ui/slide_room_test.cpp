// Slide room where it is read: on the card, in the wall-end schedule and in the setting table of the layout sheet.
//
// Worked by hand on the front wall of the boat shed, left pier, in inches:
//   S1 at 2 3/4 on C1, a 6x6 over 0 … 5 1/2. Plate 2 1/2 wide, 1/2 from the end of the concrete at 0: not left of
//      1/2 + 1 1/4 = 1 3/4. Nails 1/2 to both sides, 0.148 thick, all on the column: not right of 5.5 - 0.5 - 0.074 =
//      4.926, last mark 4 7/8. So 2 3/4 - 1 3/4 = 1 left, 4 7/8 - 2 3/4 = 2 1/8 right.
//   B1 at 10 1/2. V1, 1/2 thick, at 8, and the bolt, 5/8 thick, with its hook past it, touch at 8 + 1/4 + 5/16 = 8 9/16:
//      not left of the next mark, 8 5/8. First bolt within 12 of the end of the sill at 0. So 1 7/8 left, 1 1/2 right.
//   B2 at 20. Stud at 16, 1 1/2 wide, washer 3 wide: not left of 16 + 3/4 + 1 1/2 = 18 1/4. V2 at 24, touched at
//      24 - 9/16 = 23 7/16: not right of 23 3/8. So 1 3/4 left, 3 3/8 right.
//   B3 at 38. Last bolt within 12 of the end of the sill at 48: not left of 36. V3 at 40, touched at 39 7/16: not right
//      of 39 3/8. So 2 left, 1 3/8 right.
//   S2 at 45 on C2, 2-2x6 over 43 1/2 … 46 1/2: from 43.5 + 0.574 = 44.074, first mark 44 1/8, to 46.5 - 0.574
//   = 45.926,
//      last mark 45 7/8. So 7/8 to both sides.
// The right pier is the left one in a mirror: S3 like S2, S4 like S1.
#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QTest>
#include <map>

#include "core/edit/operations.h"
#include "tests/support/sample_jobs.h"
#include "ui/panels/look.h"
#include "ui/sheet/pages.h"
#include "ui/sheet/setting_table.h"
#include "ui/window/main_window.h"

namespace sillwright {
namespace {

struct Worked {
  const char* mark;
  double at, left, right;
};
constexpr Worked leftPier[] = {{"S1", 2.75, 1, 2 + 1. / 8},
                               {"B1", 10.5, 1 + 7. / 8, 1.5},
                               {"B2", 20, 1.75, 3 + 3. / 8},
                               {"B3", 38, 2, 1 + 3. / 8},
                               {"S2", 45, 7. / 8, 7. / 8}};

std::string inchesOf(double value) {
  return printMeasure(value, LengthStyle::FeetInches);
}
std::string stationOf(double value) {
  return printLength(value, LengthStyle::FeetInches);
}

class SlideRoom : public ::testing::Test {
protected:
  SlideRoom() : bench(support::boatShedFront()), window(bench, Services{}) {
    window.resize(1600, 1000);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    window.elevation().setFocus();
  }
  const WallLine& front() const { return bench.job().walls[0]; }
  PieceRef ref(const std::string& mark) const {
    Id found;
    forEachList(front(), [&](const auto& list) {
      for (const auto& item : list)
        if constexpr (requires { item.mark; })
          if (item.mark == mark)
            found = item.id;
    });
    return {front().id, found};
  }
  void select(const std::string& mark) { bench.session().select({ref(mark)}); }
  QLabel* label(const char* name) const {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); // rows of the piece before
    return window.card().findChild<QLabel*>(QLatin1String(name));
  }
  std::string told(const char* name) const {
    const QLabel* found = label(name);
    return found && found->isVisible() ? found->accessibleName().toStdString() : std::string();
  }
  QPoint middleOf(PieceRef piece) {
    for (const HitArea& hit : window.elevation().drawing().hits())
      if (hit.piece == piece && hit.part == HitArea::Part::Body)
        return window.elevation().toPixel({(hit.box.x0 + hit.box.x1) / 2, (hit.box.y0 + hit.box.y1) / 2}).toPoint();
    ADD_FAILURE() << "it is not on the canvas";
    return {};
  }
  std::string inSchedule(int row, int role = Qt::AccessibleTextRole) {
    ScheduleModel& rows = window.schedule().ends();
    return rows.data(rows.index(row, ScheduleModel::RoomColumn), role).toString().toStdString();
  }

  Workbench bench;
  MainWindow window;
};

TEST_F(SlideRoom, TheCardTellsSlotAndRoomOfThePieceThatIsSelected) {
  for (const Worked& piece : leftPier) {
    select(piece.mark);
    EXPECT_EQ(told("slide room"), "slide room: " + inchesOf(piece.left) + " left, " + inchesOf(piece.right) + " right")
        << piece.mark;
    const std::string slot = "slot: " + stationOf(piece.at - piece.left) + " to " + stationOf(piece.at + piece.right);
    EXPECT_EQ(told("slot").substr(0, slot.size()), slot) << piece.mark;
  }
}

TEST_F(SlideRoom, TheOtherSlotsAreBesideItForEyeAndEar) {
  select("B3"); // right of V3, which it touches at 40 9/16, until its washer meets C2: 43 1/2 - 1 1/2 = 42
  EXPECT_EQ(told("slot"), "slot: 3'-0\" to 3'-3 3/8\", one of 2");
  const QString others = label("slot")->toolTip();
  EXPECT_TRUE(others.contains(QStringLiteral("3'-4 5/8\" to 3'-6\""))) << others.toStdString();
  EXPECT_FALSE(others.contains(QStringLiteral("3'-0\" to"))) << others.toStdString();
  EXPECT_EQ(label("slot")->accessibleDescription(), others);
  select("S1"); // it has only the one
  EXPECT_EQ(told("slot"), "slot: 0'-1 3/4\" to 0'-4 7/8\"");
  EXPECT_TRUE(label("slot")->toolTip().isEmpty());
}

TEST_F(SlideRoom, AnUprightBarOnlyPlannedHasSomeToo) {
  select("V2"); // at 24, B2 at 20 and its hook: clear of the bolt from 20 + 9/16
  EXPECT_NE(told("slot"), "");
  EXPECT_NE(told("slide room"), "");
}

TEST_F(SlideRoom, WhatHasNoSlotsHasNoSuchRows) {
  select("S1");
  EXPECT_FALSE(label("slot")->isHidden());
  for (const char* mark : {"C1", "O1", "P1"}) {
    select(mark);
    EXPECT_EQ(told("slot") + told("slide room"), "") << mark;
  }
  bench.session().select({ref("S1"), ref("S2")});
  EXPECT_EQ(told("slot") + told("slide room"), "");
  bench.session().select({});
  EXPECT_EQ(told("slot") + told("slide room"), "");
}

TEST_F(SlideRoom, TheCardFollowsADragAndComputesOnePieceAStep) {
  select("S1");
  window.elevation().zoomToSelection(); // so that an inch is many pixels, and the column's centre does not hold it
  const QPoint from = middleOf(ref("S1"));
  const double inch = window.elevation().view().scale * pixelsPerPoint;
  QTest::mousePress(&window.elevation(), Qt::LeftButton, {}, from);
  int moved = 0;
  for (int i = 1; i <= 8; ++i) {
    const int before = window.card().slotRows().computed();
    QTest::mouseMove(&window.elevation(), from + QPoint(qRound(1.75 * inch * i / 8), 0));
    EXPECT_LE(window.card().slotRows().computed(), before + 1);
    const double at = front().straps.front().station;
    if (!bench.inHand() || at == 2.75 || at >= 4.875)
      continue;
    ++moved;
    EXPECT_EQ(told("slide room"), "slide room: " + inchesOf(at - 1.75) + " left, " + inchesOf(4.875 - at) + " right");
  }
  EXPECT_GT(moved, 0);
  QTest::keyClick(&window.elevation(), Qt::Key_Escape);
  EXPECT_EQ(told("slide room"), "slide room: 1\" left, 2 1/8\" right");
}

TEST_F(SlideRoom, WhereItStandsInNoneTheCardSaysWhyAndWhichIsNearest) {
  select("S1");
  auto* at = qobject_cast<QLineEdit*>(window.card().editorOf("station"));
  ASSERT_NE(at, nullptr);
  at->setFocus();
  at->selectAll();
  QTest::keyClicks(at, "1 1/2"); // the plate begins 1/4 from the end, 1/2 is needed
  QTest::keyClick(at, Qt::Key_Return);
  ASSERT_EQ(front().straps.front().station, 1.5);
  EXPECT_EQ(told("slide room"), "slide room: none here, end of the concrete");
  EXPECT_EQ(told("slot"), "slot: 0'-1 3/4\" to 0'-4 7/8\", nearest");
  EXPECT_EQ(inSchedule(0), "none here");
  EXPECT_NE(inSchedule(0, Qt::ToolTipRole).find("end of the concrete"), std::string::npos);
}

TEST_F(SlideRoom, TheRowsAreReachedAndCopiedByKeyboard) {
  select("S1");
  QLabel* slot = label("slot");
  QWidget* at = window.card().editorOf("station");
  at->setFocus();
  for (int i = 0; i < 20 && !slot->hasFocus(); ++i)
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  ASSERT_TRUE(slot->hasFocus());
  QTest::keyClick(slot, Qt::Key_A, Qt::ControlModifier);
  QTest::keyClick(slot, Qt::Key_C, Qt::ControlModifier);
  EXPECT_EQ(QApplication::clipboard()->text().replace(QChar(0x00a0), QLatin1Char(' ')),
            QStringLiteral("0'-1 3/4\" to 0'-4 7/8\""));
  EXPECT_EQ(front().straps.front().station, 2.75);
}

TEST_F(SlideRoom, TheScheduleHasItForEveryWallEnd) {
  ASSERT_EQ(window.schedule().ends().rowCount(), 4);
  EXPECT_EQ(inSchedule(0), "1\" left, 2 1/8\" right");
  EXPECT_EQ(inSchedule(1), "7/8\" left, 7/8\" right");
  EXPECT_EQ(inSchedule(2), "7/8\" left, 7/8\" right");
  EXPECT_EQ(inSchedule(3), "2 1/8\" left, 1\" right");
}

// Words of the columns that are seen, and their heads, fit into them however narrow the panel is.
TEST_F(SlideRoom, NothingInTheScheduleIsCutOff) {
  Schedule& schedule = window.schedule();
  ScheduleModel& rows = schedule.ends();
  for (const int width : {1600, 1440, 1280, 1200, 1000}) {
    window.resize(width, 850);
    QCoreApplication::processEvents();
    for (int column = 0; column < ScheduleModel::ColumnCount; ++column) {
      if (schedule.isColumnHidden(column))
        continue;
      const QString head = rows.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
      EXPECT_LE(QFontMetrics(schedule.horizontalHeader()->font()).horizontalAdvance(head) + (column == 0 ? 16 : 8),
                schedule.columnWidth(column))
          << width << ", " << head.toStdString();
      if (column == ScheduleModel::RoomColumn)
        continue; // its amounts are set smaller
      const double room = schedule.columnWidth(column) - (column == 0                            ? 16
                                                          : column == ScheduleModel::StateColumn ? 0
                                                                                                 : 8);
      for (int row = 0; row < rows.rowCount(); ++row) {
        const QString words = rows.data(rows.index(row, column), Qt::DisplayRole).toString();
        EXPECT_EQ(elided(words, 12.5, room).toStdString(), words.toStdString()) << width << ", column " << column;
      }
    }
    const bool hasRoom = !schedule.isColumnHidden(ScheduleModel::RoomColumn);
    EXPECT_TRUE(hasRoom || width < 1600); // the first to go
    if (hasRoom) {
      EXPECT_GE(schedule.columnWidth(ScheduleModel::RoomColumn), 78) << width;
    }
    if (width >= 1280) { // nor is there anything to scroll to
      EXPECT_LE(schedule.horizontalHeader()->length(), schedule.viewport()->width()) << width;
    }
  }
}

TEST_F(SlideRoom, AClickOnItInTheScheduleGoesToThePiece) {
  ScheduleModel& rows = window.schedule().ends();
  const QRect cell = window.schedule().visualRect(rows.index(1, ScheduleModel::RoomColumn));
  ASSERT_FALSE(cell.isEmpty());
  QTest::mouseClick(window.schedule().viewport(), Qt::LeftButton, {}, cell.center());
  EXPECT_EQ(bench.session().selection(), Selection{ref("S2")});
  EXPECT_EQ(told("slide room"), "slide room: 7/8\" left, 7/8\" right");
}

TEST_F(SlideRoom, AnotherWallCostsTheScheduleNothingAndThisOneAtMostItsRows) {
  ScheduleModel& rows = window.schedule().ends();
  for (int row = 0; row < rows.rowCount(); ++row)
    inSchedule(row);
  const int before = rows.computed();
  const WallLine& other = bench.job().walls[1];
  ASSERT_FALSE(other.bolts.empty());
  const double elsewhere = other.bolts.front().station + 0.25;
  bench.session().apply(setStation(bench.session().base(), {other.id, other.bolts.front().id}, elsewhere), "Move bolt");
  for (int row = 0; row < rows.rowCount(); ++row)
    inSchedule(row);
  EXPECT_EQ(rows.computed(), before);
  bench.session().apply(setStation(bench.session().base(), ref("S2"), 45.5), "Move strap");
  for (int again = 0; again < 3; ++again)
    EXPECT_EQ(inSchedule(1), "1 3/8\" left, 3/8\" right"); // 45 1/2 - 44 1/8 and 45 7/8 - 45 1/2
  EXPECT_LE(rows.computed(), before + rows.rowCount());
}

// ---- on the layout sheet ----------------------------------------------------------------------------------------

TEST(SlideRoomOnTheSheet, StandsInTheSettingTableAsWorkedByHand) {
  const Job job = support::boatShedFront();
  const auto walls = checkAll(job);
  const sheet::Table table = sheet::settingTable(job, *walls[0], {0, 48});
  ASSERT_EQ(table.rows.size(), std::size(leftPier));
  const auto column = std::find_if(table.columns.begin(), table.columns.end(),
                                   [](const sheet::TableColumn& each) { return each.slide; });
  ASSERT_NE(column, table.columns.end());
  EXPECT_EQ(column->english, "SLIDE ROOM");
  EXPECT_EQ(column->spanish, "holgura");
  const auto at = static_cast<std::size_t>(column - table.columns.begin());
  for (std::size_t i = 0; i < table.rows.size(); ++i) {
    EXPECT_EQ(table.rows[i][1], leftPier[i].mark);
    EXPECT_EQ(table.rows[i][at], inchesOf(leftPier[i].left) + " | " + inchesOf(leftPier[i].right));
  }
}

TEST(SlideRoomOnTheSheet, ANailOffTheColumnIsNoneHere) {
  Job job = support::boatShedFront();
  // S2 at 44: its left nails at 43 1/2, half over the edge of C2.
  job = setStation(job, {job.walls[0].id, job.walls[0].straps[1].id}, 44);
  const auto walls = checkAll(job);
  const sheet::Table table = sheet::settingTable(job, *walls[0], {43, 46});
  ASSERT_EQ(table.rows.size(), 1u);
  EXPECT_EQ(table.rows[0][8], "none here");
}

struct Said {
  std::string words;
  Point2 at;
  double size;
  Bounds box;
};

std::vector<Said> saidOn(const Page& page) {
  std::vector<Said> all;
  for (const Prim& prim : page.drawing.prims())
    if (prim.kind == Prim::Kind::Text) {
      const TextPrim& text = page.drawing.textOf(prim);
      all.push_back({text.text, page.drawing.pointsOf(prim)[0], text.style.size, prim.box});
    }
  return all;
}

// Every piece to set has its two amounts, or the words that it has none, in its row under the head; in letters that a
// copier keeps, and inside the ruled table.
TEST(SlideRoomOnTheSheet, FitsOnSmallPaper) {
  constexpr double leastSize = 9.2; // pt; figures of a fraction are then 6.4
  for (const Job& job : {support::boatShedFront(), support::boatShedFrontSteelMoved(), support::ridgeHouse(),
                         support::punchListPractice()})
    for (const char* paper : {"letter", "tabloid"}) {
      SheetOptions options;
      options.paper = *paperByKey(paper);
      options.date = "2031-05-14";
      int rows = 0;
      for (const Page& page : composeSheets(job, options)) {
        const std::vector<Said> said = saidOn(page);
        const auto find = [&](const char* words) {
          return std::find_if(said.begin(), said.end(), [&](const Said& each) { return each.words == words; });
        };
        const auto head = find("SLIDE ROOM"), next = find("AS SET"), mark = find("MARK");
        if (head == said.end())
          continue;
        ASSERT_NE(next, said.end());
        for (const Said& each : said) {
          if (std::abs(each.at.x - mark->at.x) > 0.01 || each.at.y < head->at.y + 20)
            continue; // no mark of the table
          ++rows;
          std::vector<Said> cell;
          for (const Said& other : said)
            if (std::abs(other.at.y - each.at.y) < 1.5 && other.box.x0 > head->at.x - 6 &&
                other.box.x1 < next->at.x - 2)
              cell.push_back(other);
          EXPECT_TRUE(cell.size() == 2 || (cell.size() == 1 && cell[0].words == "none here"))
              << paper << ", " << page.title << ", " << each.words << ": " << cell.size();
          for (const Said& other : said)
            if (std::abs(other.at.y - each.at.y) < 3 && other.box.x1 < next->at.x) {
              EXPECT_GE(other.size, leastSize) << paper << ", " << page.title << ": " << other.words;
            }
        }
      }
      int pieces = 0;
      for (std::size_t i = 0; i < job.walls.size(); ++i)
        pieces += static_cast<int>(job.walls[i].straps.size() + job.walls[i].bolts.size() + job.walls[i].rods.size());
      EXPECT_GE(rows, pieces) << paper;
    }
}

} // namespace
} // namespace sillwright
