// The wall-end schedule as text: copied, changed, pasted, and panels made from rows.
#include <gtest/gtest.h>

#include <random>

#include "core/edit/text_table.h"
#include "core/gesture/wall_end_table.h"
#include "core/rules/wording.h"
#include "tests/core/edit_jobs.h"
#include "tests/support/broken_job.h"
#include "tests/support/disturbed_job.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

std::vector<WallEnd> allEnds(const Job& job) {
  std::vector<WallEnd> all;
  for (const auto& wall : checkAll(job))
    for (WallEnd& end : wallEnds(*wall))
      all.push_back(std::move(end));
  return all;
}

std::string errorOf(const Job& job, const std::string& text) {
  const auto pasted = pasteEnds(job, text);
  return pasted ? "taken" : pasted.problem().text();
}

Job rectangle(double front = 480, double side = 360) {
  const Point2 corners[] = {{0, 0}, {front, 0}, {front, side}, {0, side}};
  return *addOutline(newJob(), corners, WallLine{});
}

// ---- text -------------------------------------------------------------------------------------------------------

TEST(TextTable, ReadsWhatSpreadsheetsGive) {
  const auto rows =
      readTextTable("\xEF\xBB\xBFwall\tat\r\n\r\nA\t \"2'-4\"\"\" \nB\t\"12'-3 5/8\"\"\"\n\"two\nlines\"\t3\"\r");
  ASSERT_EQ(rows.size(), 4u);
  EXPECT_EQ(rows[0].cells, (std::vector<std::string>{"wall", "at"}));
  EXPECT_EQ(rows[1].line, 3);                  // the empty line counts
  EXPECT_EQ(rows[1].cells[1], "\"2'-4\"\"\""); // a blank before it: not quoted by a spreadsheet
  EXPECT_EQ(rows[2].cells[1], "12'-3 5/8\"");
  EXPECT_EQ(rows[3].line, 5);
  EXPECT_EQ(rows[3].cells, (std::vector<std::string>{"two\nlines", "3\""}));
}

TEST(TextTable, WhatIsWrittenIsReadAgain) {
  std::mt19937 random(5);
  const std::string letters = "a \"\t\n'1/\r";
  for (int i = 0; i < 3000; ++i) {
    std::vector<std::string> cells;
    for (unsigned cell = 0; cell < 1 + random() % 4; ++cell) {
      std::string word = "x";
      for (unsigned letter = 0; letter < random() % 6; ++letter)
        word += letters[random() % letters.size()];
      if (random() % 2)
        word = "\"" + word + "x";
      while (word.back() == ' ' || word.back() == '\n' || word.back() == '\r')
        word.pop_back();
      cells.push_back(word + "y");
    }
    const auto rows = readTextTable(writeTextRow(cells) + "\n");
    ASSERT_EQ(rows.size(), 1u) << writeTextRow(cells);
    EXPECT_EQ(rows[0].cells, cells) << writeTextRow(cells);
  }
}

// ---- there and back ---------------------------------------------------------------------------------------------

TEST(WallEndTable, AnEndIsALine) {
  const Job job = support::boatShedFront();
  const auto ends = allEnds(job);
  const auto rows = readTextTable(endsAsText(job, ends));
  ASSERT_EQ(rows.size(), ends.size() + 1);
  EXPECT_EQ(rows[0].cells,
            (std::vector<std::string>{"wall", "panel", "end", "mark", "column", "hardware", "at", "state"}));
  EXPECT_EQ(rows[1].cells,
            (std::vector<std::string>{"A", "P1", "left", "HD1", "6x6", "S1 strap", "0'-2 3/4\"", "clear"}));
}

// On samples, sound jobs and jobs disturbed and broken at random; with and without the head, and in millimetres.
TEST(WallEndTable, CopiedAndPastedNothingChanges) {
  std::vector<Job> jobs{support::boatShedFront(), support::boatShedFrontSteelMoved(), support::ridgeHouse(),
                        support::punchListPractice(), generateJob(3, 400)};
  std::mt19937 random(11);
  for (std::uint64_t seed = 0; seed < 24; ++seed) {
    jobs.push_back(disturbed(soundJob(seed), random));
    jobs.push_back(broken(soundJob(seed), random));
  }
  std::size_t pasted = 0;
  for (Job& job : jobs)
    for (const LengthStyle units : {LengthStyle::FeetInches, LengthStyle::Millimetres}) {
      job.units = units;
      const auto ends = allEnds(job);
      std::string text = endsAsText(job, ends);
      if (ends.empty())
        continue;
      for (const bool head : {true, false}) {
        const auto again = pasteEnds(job, text);
        ASSERT_TRUE(again) << again.problem().text() << "\n" << text;
        EXPECT_EQ(again->job, job);
        EXPECT_EQ(again->ends, static_cast<int>(ends.size()));
        ++pasted;
        if (head)
          text.erase(0, text.find('\n') + 1);
      }
    }
  EXPECT_GT(pasted, 100u);
}

// Cells set one at a time by the card's fields are what a table with those cells sets.
TEST(WallEndTable, ATableSetsWhatItsCellsSetOneByOne) {
  std::mt19937 random(7);
  int set = 0;
  for (int round = 0; round < 60; ++round) {
    const Job job = round % 2 ? support::ridgeHouse() : soundJob(static_cast<std::uint64_t>(round));
    const auto ends = allEnds(job);
    std::string text = "at\tend\tcolumn\twall\tmark\tpanel\n"; // in any order
    Job oneByOne = job;
    for (std::size_t i = 0; i < ends.size(); ++i) {
      const WallEnd& end = ends[i];
      if (random() % 2)
        continue;
      std::string at, column, mark;
      if (canSet(end, EndCell::Station) && random() % 2)
        at = printLength(*end.station + static_cast<double>(random() % 9) / 8 - 0.5, job.units, 64);
      if (canSet(end, EndCell::Column) && random() % 3 == 0)
        column = random() % 2 ? "4x6" : "2-2x6";
      if (random() % 2)
        mark = random() % 3 ? job.marks->front().mark : "none";
      text += at + "\t" + (end.end == Side::Left ? "Left" : "right") + "\t" + column + "\t" + end.wallMark + "\t" +
              mark + "\t" + end.panelMark + "\n";
      for (const auto& [cell, typed] :
           {std::pair(EndCell::Mark, mark), std::pair(EndCell::Column, column), std::pair(EndCell::Station, at)})
        if (!typed.empty()) {
          const auto ofNow = allEnds(oneByOne); // a changed end may be held by another strap
          const auto next = setCell(oneByOne, ofNow[i], cell, typed);
          ASSERT_TRUE(next) << next.problem().text();
          oneByOne = *next;
          ++set;
        }
    }
    if (text.find('\n') + 1 == text.size())
      continue;
    const auto pasted = pasteEnds(job, text);
    ASSERT_TRUE(pasted) << pasted.problem().text() << "\n" << text;
    EXPECT_EQ(pasted->job, oneByOne) << text;
  }
  EXPECT_GT(set, 200);
}

TEST(WallEndTable, ARodGoesAlongItsColumnAndStaysInTheWall) {
  Job job = soundJob(0);
  for (std::uint64_t seed = 1; seed < 40; ++seed) {
    job = soundJob(seed);
    const auto ends = allEnds(job);
    const auto rod = std::find_if(ends.begin(), ends.end(), [](const WallEnd& e) { return e.hardwareKind == "rod"; });
    if (rod == ends.end())
      continue;
    const double wanted = *rod->station + (rod->end == Side::Left ? 0.5 : -0.5);
    const auto set = setCell(job, *rod, EndCell::Station, printLength(wanted, job.units, 64));
    ASSERT_TRUE(set);
    for (const WallEnd& end : allEnds(*set))
      if (end.hardware == rod->hardware) {
        EXPECT_NEAR(*end.station, wanted, 1e-9);
      }
    const auto outside = setCell(job, *rod, EndCell::Station, "1000'");
    ASSERT_FALSE(outside);
    EXPECT_EQ(outside.problem().text(), "at: is outside the wall");
    return;
  }
  FAIL() << "no job with a rod";
}

// ---- refused ----------------------------------------------------------------------------------------------------

TEST(WallEndTable, WhatCannotBeReadIsRefusedAsAWholeWithItsPlace) {
  const Job job = support::boatShedFront();
  const std::string head = "wall\tpanel\tend\tmark\tcolumn\tat\n", good = "A\tP1\tleft\t\t\t0'-3\"\n";
  EXPECT_EQ(errorOf(job, head + good), "taken");
  EXPECT_EQ(errorOf(job, ""), "there is no text to paste");
  EXPECT_EQ(errorOf(job, "\n \t \n"), "there is no text to paste");
  EXPECT_EQ(errorOf(job, head), "row 1: is the head, and no row follows it");
  EXPECT_EQ(errorOf(job, "A\tP1\tleft\n"),
            "row 1: has 3 columns. Put a head over them, or give all of these: wall, panel, "
            "end, mark, column, hardware, at, state");
  EXPECT_EQ(
      errorOf(job, "wall\tpanel\tend\tbolts\n" + good),
      "row 1, column 4: 'bolts' is none of the schedule; there are wall, panel, end, mark, column, at, and from and "
      "to for new panels");
  EXPECT_EQ(
      errorOf(job, "wall\tpanel\tend\t\n" + good),
      "row 1, column 4: has no name; there are wall, panel, end, mark, column, at, and from and to for new panels");
  EXPECT_EQ(errorOf(job, "wall\tpanel\tend\tWALL\nA\tP1\tleft\n"), "row 1, column 4: 'WALL' stands there twice");
  EXPECT_EQ(errorOf(job, "wall\tpanel\tat\nA\tP1\t3\n"), "row 1: the column 'end' is missing");
  EXPECT_EQ(errorOf(job, "wall\tpanel\tend\tfrom\nA\tP1\tleft\t3\n"), "row 1: from and to come together");
  EXPECT_EQ(errorOf(job, head + good + "A\tP2\tleft\t\t\t\t\t9\n"), "row 3: has 8 cells, the table has 6 columns");
  EXPECT_EQ(errorOf(job, head + "\tP1\tleft\n"), "row 2, wall: is empty");
  EXPECT_EQ(errorOf(job, head + good + "Q\tP1\tleft\n"), "row 3, wall: there is no wall 'Q'");
  EXPECT_EQ(errorOf(job, head + "A\t\tleft\n"), "row 2, panel: is empty");
  EXPECT_EQ(errorOf(job, head + "A\tP9\tleft\n"),
            "row 2, panel: there is no panel 'P9' on this wall; with columns from and to it would be made");
  EXPECT_EQ(errorOf(job, head + "A\tP1\n"), "row 2, end: expected left, right or both");
  EXPECT_EQ(errorOf(job, head + "A\tP1\tmiddle\n"), "row 2, end: expected left, right or both");
  EXPECT_EQ(errorOf(job, head + good + "A\tP1\tboth\n"), "row 3, end: the same end as in row 2");
  EXPECT_EQ(errorOf(job, head + "A\tP1\tleft\tHD9\n"),
            "row 2, mark: expected a mark of the plan's schedule: HD1, HD2 or none");
  EXPECT_EQ(errorOf(job, head + "A\tP1\tleft\t\tbig\n"), "row 2, column: expected a make-up such as 4x6 or 2-2x6");
  EXPECT_EQ(errorOf(job, head + good + "A\tP1\tright\t\t\ttwo\n").substr(0, 10), "row 3, at:");
  EXPECT_EQ(errorOf(job, head + "A\tP1\tright\t\t\t-3\"\n"), "row 2, at: is outside the wall");
}

TEST(WallEndTable, WhatStandsNowhereIsRefused) {
  Job job = support::boatShedFront();
  const WallLine& front = job.walls[0];
  const Id strap = front.straps[0].id, column = front.columns[0].id;
  job = removePieces(job, std::vector<PieceRef>{{front.id, strap}, {front.id, column}});
  EXPECT_EQ(errorOf(job, "wall\tpanel\tend\tat\nA\tP1\tleft\t3\n"),
            "row 2, at: neither strap nor rod stands at this end");
  EXPECT_EQ(errorOf(job, "wall\tpanel\tend\tcolumn\nA\tP1\tleft\t4x6\n"),
            "row 2, column: no column stands at this end");
}

// ---- panels from rows -------------------------------------------------------------------------------------------

TEST(WallEndTable, APanelThatIsNotThereIsMade) {
  const Job job = rectangle();
  const auto pasted = pasteEnds(job, "wall\tpanel\tend\tmark\tcolumn\tfrom\tto\n"
                                     "A\tP1\tleft\tHD1\t6x6\t0\t6'\n"
                                     "A\tP1\tright\tHD1\t\t\t\n"
                                     "C\tP2\tboth\tHD1\t\t10'\t16'\n");
  ASSERT_TRUE(pasted) << pasted.problem().text();
  EXPECT_EQ(pasted->panels, 2);
  EXPECT_EQ(pasted->name, "Paste 2 panels");
  const auto ends = allEnds(pasted->job);
  ASSERT_EQ(ends.size(), 4u);
  for (const WallEnd& end : ends) {
    EXPECT_EQ(end.mark, "HD1");
    EXPECT_EQ(end.hardwareKind, "strap") << end.panelMark;
    EXPECT_FALSE(end.worst == Level::Fix) << end.panelMark;
  }
  EXPECT_EQ(ends[0].columnMakeUp, "6x6");
  EXPECT_EQ(ends[1].columnMakeUp, "4x6");
  const WallLine& a = pasted->job.walls[0];
  ASSERT_EQ(a.sills.size(), 1u);
  EXPECT_EQ(a.panels[0].from, 0);
  EXPECT_EQ(a.panels[0].to, 72);
  EXPECT_FALSE(a.bolts.empty());
}

TEST(WallEndTable, PanelsThatCannotStandAreRefused) {
  const Job job = rectangle();
  const std::string head = "wall\tpanel\tend\tmark\tat\tfrom\tto\n", good = "A\tP1\tboth\tHD1\t\t0\t6'\n";
  EXPECT_EQ(errorOf(job, head + good), "taken");
  EXPECT_EQ(errorOf(job, head + "A\tP1\tboth\tHD1\t\t\t6'\n"), "row 2, from: is empty: a new panel needs it");
  EXPECT_EQ(errorOf(job, head + "A\tP1\tboth\tHD1\t\t0\t\n"), "row 2, to: is empty: a new panel needs it");
  EXPECT_EQ(errorOf(job, head + "A\tP1\tboth\tHD1\t\t0\twide\n").substr(0, 10), "row 2, to:");
  EXPECT_EQ(errorOf(job, head + "A\tP1\tboth\tHD1\t\t0\t50'\n"),
            "row 2, to: is outside the wall, which is 40'-0\" long");
  EXPECT_EQ(errorOf(job, head + "A\tP1\tboth\tHD1\t\t-4'\t6'\n"),
            "row 2, from: is outside the wall, which is 40'-0\" long");
  EXPECT_EQ(errorOf(job, head + "A\tP1\tboth\tHD1\t\t7'\t6'\n"),
            "row 2, to: the left end must stay left of the right end");
  EXPECT_EQ(errorOf(job, head + good + "A\tP2\tboth\tHD1\t\t5'\t9'\n"),
            "row 3, from: the panel would stand over the panel P1");
  EXPECT_EQ(errorOf(job, head + good + "B\tP1\tboth\tHD1\t\t5'\t9'\n"),
            "row 3, panel: 'P1' is on another wall in this table");
  EXPECT_EQ(errorOf(job, head + "A\tP1\tleft\tHD1\t\t0\t6'\nA\tP1\tright\tHD1\t\t0\t7'\n"),
            "row 3, to: is another one than in the row of its other end");
  EXPECT_EQ(errorOf(job, head + "A\tP1\tboth\tHD7\t\t0\t6'\n"),
            "row 2, mark: expected a mark of the plan's schedule: HD1 or none");
  const Job shed = support::boatShedFront();
  EXPECT_EQ(errorOf(shed, head + "A\tP9\tboth\tHD1\t\t10'\t12'\n"),
            "row 2, from: the panel would stand over the opening O1");
  EXPECT_EQ(errorOf(shed, head + "B\tP1\tboth\tHD1\t\t0'\t4'\n"), "row 2, panel: 'P1' stands on wall A");
}

TEST(WallEndTable, AStationOfANewPanelIsTheOneOfItsStrap) {
  const std::string head = "wall\tpanel\tend\tmark\tat\tfrom\tto\n";
  const auto pasted = pasteEnds(rectangle(), head + "A\tP1\tleft\tHD1\t2 3/8\"\t0\t6'\nA\tP1\tright\tHD1\t\t0\t6'\n");
  ASSERT_TRUE(pasted) << pasted.problem().text();
  EXPECT_EQ(allEnds(pasted->job)[0].station, 2.375);
  EXPECT_EQ(errorOf(rectangle(), head + "A\tP1\tleft\t\t2 3/8\"\t0\t6'\n"), // no mark, so nothing holds it down
            "row 2, at: neither strap nor rod stands at this end");
}

// Bolts stood where posts and straps of the new panels have to be.
TEST(WallEndTable, PanelsAreMadeOnAWallThatHasItsBolts) {
  const auto first = pasteEnds(rectangle(), "wall\tpanel\tend\tmark\tfrom\tto\nA\tP1\tboth\tHD1\t1'\t39'\n");
  ASSERT_TRUE(first);
  Job bolted = first->job; // the sill and its bolts are left
  const WallLine& full = bolted.walls[0];
  std::vector<PieceRef> gone{{full.id, full.panels[0].id}};
  for (const Strap& strap : full.straps)
    gone.push_back({full.id, strap.id});
  for (const Column& column : full.columns)
    gone.push_back({full.id, column.id});
  bolted = removePieces(bolted, gone);
  const WallLine& left = bolted.walls[0];
  ASSERT_GT(left.bolts.size(), 6u);
  for (std::size_t i = 1; i + 2 < left.bolts.size(); ++i) { // a post would stand on the washer of one of them
    const std::string from = printLength(left.bolts[i].station - 1, LengthStyle::FeetInches);
    const std::string to = printLength(left.bolts[i].station + 71, LengthStyle::FeetInches);
    const auto pasted =
        pasteEnds(bolted, "wall\tpanel\tend\tmark\tfrom\tto\nA\tP1\tboth\tHD1\t" + from + "\t" + to + "\n");
    ASSERT_TRUE(pasted) << pasted.problem().text();
    const auto walls = checkAll(pasted->job);
    EXPECT_EQ(walls[0]->counts.fix, 0) << from;
    EXPECT_EQ(walls[0]->layout.straps.size(), 2u) << from;
  }
}

// The plan's schedule of a house of 12 panels, three a wall.
TEST(WallEndTable, TwelvePanelsFromThePlansScheduleHaveNoFix) {
  const Job job = rectangle();
  std::string text = "wall\tpanel\tend\tmark\tfrom\tto\n";
  int panel = 0;
  for (const char* wall : {"A", "B", "C", "D"}) {
    const bool side = *wall == 'B' || *wall == 'D';
    for (const char* stretch : {"0\t6'", side ? "12'\t18'" : "17'\t23'", side ? "24'\t30'" : "34'\t40'"})
      text += std::string(wall) + "\tP" + std::to_string(++panel) + "\tboth\tHD1\t" + stretch + "\n";
  }
  const auto pasted = pasteEnds(job, text);
  ASSERT_TRUE(pasted) << pasted.problem().text();
  EXPECT_EQ(pasted->panels, 12);
  int straps = 0;
  for (const auto& wall : checkAll(pasted->job)) {
    straps += static_cast<int>(wall->layout.straps.size());
    EXPECT_EQ(wall->counts.fix, 0);
    for (const Finding& finding : wall->findings)
      if (finding.level == Level::Fix)
        ADD_FAILURE() << wall->layout.wall->mark << ": " << message(pasted->job, finding);
  }
  EXPECT_EQ(straps, 24);
}

} // namespace
} // namespace sillwright
