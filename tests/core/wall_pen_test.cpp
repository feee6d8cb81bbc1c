// The pen on the plan, without a window.
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/edit/operations.h"
#include "core/gesture/workbench.h"
#include "core/model/lookup.h"
#include "core/model/plan_concrete.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

PointerAt over(double x, double y, double reach = 4) {
  PointerAt pointer;
  pointer.canvas = CanvasKind::Plan;
  pointer.plan = {x, y};
  pointer.reach = reach;
  return pointer;
}

struct Hand {
  Workbench bench;
  explicit Hand(Job job = newJob()) : bench(std::move(job)) { bench.takePen(); }

  void move(double x, double y) { bench.hover(over(x, y)); }
  void click(double x, double y) {
    bench.hover(over(x, y));
    bench.press(over(x, y));
    bench.release(over(x, y));
  }
  void type(const std::u32string& keys) {
    for (const char32_t key : keys)
      EXPECT_TRUE(bench.penKey(key)) << static_cast<int>(key);
  }
  // To the right, up and back, by typed lengths.
  void threeSides(const std::u32string& front, const std::u32string& side) {
    click(0, 0);
    move(100, 3);
    type(front);
    move(pen().corners.back().x + 6, 50);
    type(side);
    move(100, pen().corners.back().y - 4);
    type(front);
  }
  const WallPen& pen() const { return *bench.pen(); }
  ShownPen shown() const { return shownOf(pen()); }
  double length(std::size_t wall) const { return wallLength(bench.job(), bench.job().walls[wall]); }
  Point2 corner(std::size_t wall) const { return findCorner(bench.job(), bench.job().walls[wall].startCorner)->at; }
};

TEST(WallPen, theTypedLengthOfTheLastWallClosesTheOutline) {
  Hand hand;
  hand.threeSides(U"20'\r", U"10'\r");
  hand.move(3, 60);
  hand.type(U"10'");
  EXPECT_TRUE(hand.shown().closes);
  EXPECT_EQ(hand.shown().problem, "");
  hand.type(U"\r");
  EXPECT_FALSE(hand.bench.pen());
  ASSERT_EQ(hand.bench.job().walls.size(), 4u);
  EXPECT_EQ(hand.length(3), 120);
}

TEST(WallPen, aRectangleByTypedLengthsIsOneStepThatSaysSo) {
  Hand hand;
  hand.threeSides(U"24-6\r", U"12'\r");
  EXPECT_TRUE(hand.bench.job().walls.empty()) << "nothing of the job changes before it is finished";
  hand.type(U"\r");
  EXPECT_FALSE(hand.bench.pen()) << hand.shown().problem;
  ASSERT_EQ(hand.bench.job().walls.size(), 4u);
  const double lengths[] = {294, 144, 294, 144};
  for (std::size_t i = 0; i < 4; ++i) {
    EXPECT_EQ(hand.length(i), lengths[i]);
    EXPECT_EQ(hand.bench.job().walls[i].mark, std::string(1, static_cast<char>('A' + i)));
  }
  EXPECT_EQ(hand.bench.session().history().undoName(), "Draw 4 walls");
  EXPECT_EQ(hand.bench.session().wall(), hand.bench.job().walls[0].id);
  EXPECT_EQ(hand.bench.checker().counts().fix, 0);
  hand.bench.session().undo();
  EXPECT_TRUE(hand.bench.job() == newJob());
  EXPECT_FALSE(hand.bench.session().history().canUndo());
}

TEST(WallPen, newWallsHaveFootingAndStudsAndAreLikeTheOneInView) {
  Hand hand;
  for (const Point2 p : {Point2{0, 0}, {240, 0}, {240, 120}, {0, 120}, {0, 0}})
    hand.click(p.x, p.y);
  ASSERT_EQ(hand.bench.job().walls.size(), 4u);
  for (std::size_t i = 0; i < 4; ++i) {
    const WallLine& wall = hand.bench.job().walls[i];
    EXPECT_EQ(wall.footing.width, 16);
    ASSERT_TRUE(wall.studs);
    EXPECT_EQ(wall.studs->spacing, 16);
  }
  WallLine thick = hand.bench.job().walls[1];
  thick.thickness = 10;
  thick.title = "side";
  hand.bench.session().apply(replaceWall(hand.bench.session().base(), thick), "Thicker");
  hand.bench.session().show(thick.id);
  hand.bench.takePen();
  hand.click(400, 0);
  hand.click(500, 0);
  hand.type(U"\r");
  ASSERT_EQ(hand.bench.job().walls.size(), 5u);
  EXPECT_EQ(hand.bench.job().walls[4].thickness, 10);
  EXPECT_EQ(hand.bench.job().walls[4].title, "");
  EXPECT_EQ(hand.bench.job().walls[4].mark, "E");
  EXPECT_EQ(hand.bench.session().history().undoName(), "Draw a wall");
}

TEST(WallPen, runsCounterclockwiseWhicheverWayItIsDrawn) {
  Hand hand;
  for (const Point2 p : {Point2{0, 0}, {0, 120}, {240, 120}, {240, 0}, {0, 0}})
    hand.click(p.x, p.y);
  ASSERT_EQ(hand.bench.job().walls.size(), 4u);
  EXPECT_EQ(ringOf(hand.bench.job(), hand.bench.job().walls[0].id).size(), 4u);
  EXPECT_EQ(hand.length(0), 120) << "the wall drawn first is A";
  EXPECT_EQ(hand.corner(0).y, 120);
  EXPECT_EQ(hand.length(1), 240);
  EXPECT_EQ(hand.corner(1).x, 0);
  EXPECT_EQ(hand.corner(1).y, 0);
}

TEST(WallPen, staysSquareUnlessAltIsHeld) {
  Hand hand;
  hand.click(0, 0);
  hand.move(101, 30);
  EXPECT_EQ(hand.pen().at->y, 0);
  EXPECT_EQ(hand.pen().at->x, 101);
  PointerAt free = over(101, 30);
  free.keys.alt = true;
  hand.bench.hover(free);
  EXPECT_NEAR(hand.pen().at->x, 101, 0.02);
  EXPECT_NEAR(hand.pen().at->y, 30, 0.02);
  hand.bench.press(free);
  ASSERT_EQ(hand.pen().corners.size(), 2u);
  hand.move(80, 95); // square to the wall before, about
  const Point2 a = hand.pen().corners[1], b = *hand.pen().at;
  EXPECT_NEAR((b.x - a.x) * 101 + (b.y - a.y) * 30, 0, 2);
  EXPECT_TRUE(hand.shown().squareBefore);
}

TEST(WallPen, stopsInLineWithAnotherCornerAndSaysSo) {
  Hand hand;
  hand.click(13, 0);
  hand.click(200, 0);
  hand.click(200, 100);
  hand.move(15.5, 101);
  EXPECT_EQ(hand.pen().at->x, 13);
  EXPECT_EQ(hand.pen().at->y, 100);
  EXPECT_EQ(hand.pen().snap, SnapReason::CornerLine);
  ASSERT_EQ(hand.pen().inLineWith.size(), 1u);
  EXPECT_EQ(hand.pen().inLineWith[0].a, (Point2{13, 0}));
  EXPECT_EQ(hand.shown().words, "in line with a corner");
}

TEST(WallPen, backspaceTakesTheLastCornerBackAndEscapeAll) {
  Hand hand;
  hand.click(0, 0);
  hand.click(200, 0);
  hand.move(200, 50);
  hand.type(U"12'");
  hand.type(U"\b\b\b"); // what is typed goes first
  EXPECT_EQ(hand.pen().corners.size(), 2u);
  hand.type(U"\b");
  EXPECT_EQ(hand.pen().corners.size(), 1u);
  EXPECT_TRUE(hand.bench.takePenBack());
  EXPECT_FALSE(hand.bench.takePenBack());
  EXPECT_TRUE(hand.bench.pen());
  hand.bench.putPen();
  EXPECT_FALSE(hand.bench.pen());
  EXPECT_FALSE(hand.bench.session().history().canUndo());
}

TEST(WallPen, refusesAWallThatCrossesAnotherOfTheOutline) {
  Hand hand;
  for (const Point2 p : {Point2{0, 0}, {200, 0}, {200, 100}, {100, 100}})
    hand.click(p.x, p.y);
  hand.move(100, -60);
  EXPECT_EQ(hand.shown().problem, "the outline would cross itself");
  hand.click(100, -60);
  EXPECT_EQ(hand.pen().corners.size(), 4u);
  hand.click(100, 60);
  EXPECT_EQ(hand.pen().corners.size(), 5u);
}

TEST(WallPen, saysWhyAnOutlineCannotBeClosed) {
  Hand hand;
  hand.click(0, 0);
  hand.click(200, 0);
  hand.type(U"c");
  EXPECT_EQ(hand.shown().problem, "an outline needs three corners");
  hand.click(200, 100);
  hand.click(300, 100);
  hand.click(300, -100);
  hand.type(U"c"); // straight back through the second wall? no: below it
  EXPECT_FALSE(hand.bench.pen());
  ASSERT_EQ(hand.bench.job().walls.size(), 5u);

  Hand other;
  for (const Point2 p : {Point2{0, 0}, {200, 0}, {200, -100}, {100, -100}, {100, -50}, {300, -50}})
    other.click(p.x, p.y);
  EXPECT_EQ(other.pen().corners.size(), 5u) << "the last one crosses";
  other.click(100, -14);
  EXPECT_EQ(other.pen().corners.size(), 6u);
  other.click(104, -14); // nothing is wrong before it is closed
  other.type(U"c");
  EXPECT_TRUE(other.bench.pen());
  EXPECT_FALSE(other.shown().problem.empty());
  EXPECT_TRUE(other.bench.job().walls.empty());
  EXPECT_GE(other.pen().corners.size(), 6u) << "nothing is lost";
}

TEST(WallPen, refusesWhatLiesOverAWallThatStands) {
  Hand hand(support::boatShedFront());
  const std::size_t before = hand.bench.job().walls.size();
  hand.click(60, 60);
  hand.move(60, -60);
  EXPECT_EQ(hand.shown().problem, "it would cross wall A");
  hand.click(60, -60);
  EXPECT_EQ(hand.pen().corners.size(), 1u);
  EXPECT_EQ(hand.bench.job().walls.size(), before);
}

TEST(WallPen, anInsideWallRunsFromFaceToFace) {
  Hand hand(support::boatShedFront());
  const double deep =
      bounds(std::vector<Point2>{(*hand.bench.job().corners)[0].at, (*hand.bench.job().corners)[2].at})->second.y;
  hand.click(120, 10); // near the inside of the front
  EXPECT_EQ(hand.pen().corners.front().y, 8);
  hand.move(123, deep - 10);
  EXPECT_EQ(hand.pen().at->y, deep - 8);
  EXPECT_EQ(hand.pen().snap, SnapReason::WallFace);
  hand.click(123, deep - 10);
  hand.click(120, deep - 8); // the last corner again: it stays open
  EXPECT_FALSE(hand.bench.pen());
  const WallLine& wall = hand.bench.job().walls[hand.bench.job().walls.size() - 1];
  EXPECT_EQ(wallLength(hand.bench.job(), wall), deep - 16);
  EXPECT_EQ(hand.bench.session().history().undoName(), "Draw a wall");
}

TEST(WallPen, theKeyboardAloneDrawsARectangle) {
  Hand hand;
  hand.type(U"\r"); // the first corner where the plan begins
  ASSERT_EQ(hand.pen().corners.size(), 1u);
  for (const auto& [arrow, length] :
       std::vector<std::pair<Point2, std::u32string>>{{{1, 0}, U"20'\r"}, {{0, 1}, U"12'\r"}, {{-1, 0}, U"20'\r"}}) {
    hand.bench.penArrow(arrow, 12);
    EXPECT_TRUE(hand.shown().lengthOpen);
    hand.type(length);
  }
  EXPECT_EQ(hand.pen().corners.size(), 4u);
  hand.type(U"\r");
  ASSERT_EQ(hand.bench.job().walls.size(), 4u);
  EXPECT_EQ(hand.length(0), 240);
  EXPECT_EQ(hand.length(3), 144);
}

TEST(WallPen, nonsenseTypedIsNamedAndNothingIsLost) {
  Hand hand;
  hand.click(0, 0);
  hand.move(100, 0);
  hand.type(U"12'-'\r");
  EXPECT_NE(hand.shown().problem.find("character"), std::string::npos) << hand.shown().problem;
  EXPECT_EQ(hand.shown().typed, "12'-'");
  EXPECT_EQ(hand.pen().corners.size(), 1u);
  hand.type(U"\b\b\b\b\b0\r");
  EXPECT_EQ(hand.shown().problem, "a wall is longer than nothing");
  hand.type(U"\b2000'\r");
  EXPECT_EQ(hand.shown().problem, "a wall is not longer than 1,000 feet");
  EXPECT_FALSE(hand.bench.penKey(U'x'));
}

TEST(WallPen, staysUpWhileOtherThingsAreDoneAndKnowsTheNewJob) {
  Hand hand(support::boatShedFront());
  hand.click(600, 0);
  hand.click(700, 0);
  const WallLine front = hand.bench.job().walls[0];
  hand.bench.session().apply(removePieces(hand.bench.session().base(), std::vector<PieceRef>{{front.id, {}}}), "Remove",
                             {});
  ASSERT_TRUE(hand.bench.pen());
  EXPECT_EQ(hand.pen().corners.size(), 2u);
  EXPECT_EQ(hand.pen().standing.size(), hand.bench.job().walls.size());
  hand.bench.session().undo();
  hand.type(U"\r");
  EXPECT_EQ(hand.bench.job().walls[4].mark, "E");
  hand.bench.takePen();
  hand.bench.session().open(newJob());
  EXPECT_FALSE(hand.bench.pen());
}

TEST(WallPen, whatRandomHandsDrawStandsClear) {
  std::mt19937 random(17);
  const auto number = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
  Hand hand;
  std::size_t outlines = 0;
  for (int i = 0; i < 6000; ++i) {
    PointerAt pointer = over(number(80) * 10, number(80) * 10, 1 + number(10));
    pointer.keys.alt = number(5) == 0;
    if (number(40) == 0 && hand.bench.pen() && !hand.pen().corners.empty())
      pointer.plan = hand.pen().corners.front();
    while (hand.bench.pen() && hand.pen().typed.size() > 3)
      hand.bench.penKey(U'\b');
    while (hand.bench.pen() && hand.pen().corners.size() > 6)
      hand.bench.takePenBack();
    switch (number(10)) {
    case 9:
      hand.bench.penKey(U"co\r"[number(3)]);
      break;
    case 0:
      hand.bench.penKey(U"0123456789'-\r\bco"[number(16)]);
      break;
    case 1:
      hand.bench.penArrow({number(2) ? 1.0 : 0.0, 1.0}, 12);
      break;
    case 2:
      hand.bench.penKey(U'\b');
      break;
    case 3:
      hand.bench.release(pointer);
      break;
    case 4:
      hand.bench.drag(pointer);
      break;
    case 5:
      hand.bench.hover(pointer);
      break;
    default:
      hand.bench.press(pointer);
    }
    if (hand.bench.pen())
      continue;
    ++outlines;
    std::vector<Id> all;
    for (std::size_t w = 0; w < hand.bench.job().walls.size(); ++w)
      all.push_back(hand.bench.job().walls[w].id);
    const auto clash = clashIn(hand.bench.job(), all);
    ASSERT_FALSE(clash) << words(hand.bench.job(), *clash);
    if (number(3))
      hand.bench.session().undo();
    hand.bench.takePen();
  }
  EXPECT_GT(outlines, 20u);
}

} // namespace
} // namespace sillwright
