// Walls split, joined and moved on the plan.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "core/edit/operations.h"
#include "core/edit/plan_check.h"
#include "core/edit/wall_edits.h"
#include "core/gesture/workbench.h"
#include "core/model/layout.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

// Plan point of a station of a wall.
Point2 onPlan(const Job& job, const WallLine& wall, double station) {
  const Point2 a = findCorner(job, wall.startCorner)->at, b = findCorner(job, wall.endCorner)->at;
  const double part = station / wallLength(job, wall);
  return {a.x + (b.x - a.x) * part, a.y + (b.y - a.y) * part};
}

// Every piece of the job but stretches, where it stands on the plan.
std::map<Id, Point2> pointsOf(const Job& job) {
  std::map<Id, Point2> found;
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    for (const Id id : piecesOf(job.walls[i])) {
      const Piece piece = *findPiece(job.walls[i], id);
      const bool stretch = std::holds_alternative<Sill>(piece) || std::holds_alternative<PourStep>(piece) ||
                           (std::holds_alternative<Bar>(piece) && std::get<Bar>(piece).run == BarRun::Along);
      if (!stretch)
        found[id] = onPlan(job, job.walls[i], *stationOf(job.walls[i], id));
    }
  return found;
}

std::vector<double> studPlaces(const Job& job, const WallLine& wall) {
  std::vector<double> places;
  for (const StudBody& stud : layOut(job, std::make_shared<const WallLine>(wall)).studs)
    places.push_back(onPlan(job, wall, stud.box.s.middle()).x);
  return places;
}

// The first station of the front at which it may be split, if any.
std::optional<double> splitPlace(const Job& job, const WallLine& wall, double from) {
  for (double s = from; s < wallLength(job, wall) - 1; s += 1)
    if (splitWall(job, wall.id, s))
      return s;
  return std::nullopt;
}

TEST(SplitWall, everyPieceStaysWhereItStandsOnThePlan) {
  for (const Job& job : {support::boatShedFront(), support::punchListPractice(), generateJob(7, 120)})
    for (std::size_t i = 0; i < std::min<std::size_t>(job.walls.size(), 4); ++i) {
      const WallLine& wall = job.walls[i];
      const auto at = splitPlace(job, wall, wallLength(job, wall) / 3);
      if (!at)
        continue;
      const SplitWall made = *splitWall(job, wall.id, *at);
      const auto before = pointsOf(job), after = pointsOf(made.job);
      ASSERT_EQ(before.size(), after.size()) << wall.mark;
      for (const auto& [id, point] : before) {
        EXPECT_NEAR(after.at(id).x, point.x, 1e-9) << id.value;
        EXPECT_NEAR(after.at(id).y, point.y, 1e-9) << id.value;
      }
      const WallLine &left = *made.job.walls.find(wall.id), &right = *made.job.walls.find(made.second);
      EXPECT_NEAR(wallLength(made.job, left), *at, 1e-9);
      EXPECT_NEAR(wallLength(made.job, left) + wallLength(made.job, right), wallLength(job, wall), 1e-9);
      EXPECT_EQ(left.readings.size() + right.readings.size(), wall.readings.size());
      EXPECT_EQ(misfitIn(made.job, std::vector<Id>{wall.id, made.second}), "");
      EXPECT_FALSE(clashIn(made.job, std::vector<Id>{wall.id, made.second}));
    }
}

TEST(SplitWall, sillsStepsAndBarsAlongAreCutAndStudsKeepTheirPlaces) {
  Job job = *addOutline(newJob(), std::vector<Point2>{{0, 0}, {288, 0}, {288, 240}, {0, 240}}, WallLine{});
  WallLine wall = job.walls[0];
  wall.studs = StudLayout{};
  job = replaceWall(job, wall);
  Sill sill;
  sill.from = 2;
  sill.to = 286;
  sill.splices = {60, 150, 250};
  job = addPiece(job, wall.id, sill).first;
  for (const double z : {-4.0, -20.0}) {
    Bar bar;
    bar.run = BarRun::Along;
    bar.planned = {{3, 4, z}, {285, 4, z}};
    job = addPiece(job, wall.id, bar).first;
  }
  const SplitWall made = *splitWall(job, wall.id, 100);
  const WallLine &left = *made.job.walls.find(wall.id), &right = *made.job.walls.find(made.second);
  ASSERT_EQ(left.sills.size(), 1u);
  ASSERT_EQ(right.sills.size(), 1u);
  EXPECT_EQ(left.sills[0].to, 100);
  EXPECT_EQ(left.sills[0].splices, std::vector<double>{60});
  EXPECT_EQ(right.sills[0].from, 0);
  EXPECT_EQ(right.sills[0].to, 186);
  EXPECT_EQ(right.sills[0].splices, (std::vector<double>{50, 150}));
  ASSERT_EQ(right.bars.size(), 2u);
  EXPECT_NE(right.bars[0].mark, right.bars[1].mark);
  EXPECT_EQ(right.bars[0].planned.a, (Point3{0, 4, -4}));
  EXPECT_EQ(left.bars[1].planned.b, (Point3{100, 4, -20}));
  EXPECT_EQ(right.mark, "E");
  std::vector<double> places = studPlaces(made.job, left), more = studPlaces(made.job, right);
  places.insert(places.end(), more.begin(), more.end());
  for (const double before : studPlaces(job, *job.walls.find(wall.id)))
    EXPECT_TRUE(std::any_of(places.begin(), places.end(), [&](double p) { return std::abs(p - before) < 1e-9; }))
        << before;
}

TEST(SplitWall, refusesWhereAPieceStandsAcross) {
  const Job job = support::boatShedFront();
  const Id front = job.walls[0].id;
  const auto split = splitWall(job, front, 144);
  ASSERT_FALSE(split);
  EXPECT_EQ(split.problem().message, "opening O1 stands across 12'-0\"");
  EXPECT_FALSE(splitWall(job, front, 0));
  EXPECT_FALSE(splitWall(job, front, 288));
  EXPECT_FALSE(splitWall(job, front, -5));
}

TEST(JoinAtCorner, takesASplitBack) {
  Job job = support::boatShedFront();
  WallLine back = job.walls[2];
  back.studs = StudLayout{Side::Right, 16, 14, {2, 6}};
  job = replaceWall(job, back);
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const WallLine& wall = job.walls[i];
    const auto at = splitPlace(job, wall, 40);
    if (!at)
      continue;
    const SplitWall made = *splitWall(job, wall.id, *at);
    const auto joined = joinAtCorner(made.job, made.corner);
    ASSERT_TRUE(joined) << joined.problem().message;
    EXPECT_EQ(joined->walls.size(), job.walls.size());
    EXPECT_EQ(*joined->corners, *job.corners);
    const WallLine& whole = *joined->walls.find(wall.id);
    EXPECT_EQ(pieceCount(whole), pieceCount(wall)) << wall.mark;
    EXPECT_EQ(whole.studs, wall.studs);
    const auto before = pointsOf(job), after = pointsOf(*joined);
    ASSERT_EQ(before.size(), after.size());
    for (const auto& [id, point] : before)
      EXPECT_NEAR(after.at(id).x, point.x, 1e-9) << id.value;
    for (std::size_t k = 0; k < wall.sills.size(); ++k)
      EXPECT_EQ(whole.sills[k].to, wall.sills[k].to);
  }
}

TEST(JoinAtCorner, makesOneStraightWallOrSaysWhyNot) {
  const std::vector<Point2> corners{{0, 0}, {200, 0}, {288, 60}, {288, 240}, {0, 240}};
  Job job = *addOutline(newJob(), corners, WallLine{});
  const auto joined = joinAtCorner(job, job.walls[1].startCorner);
  ASSERT_TRUE(joined);
  EXPECT_EQ(joined->walls.size(), 4u);
  EXPECT_NEAR(wallLength(*joined, *joined->walls.find(job.walls[0].id)), std::hypot(288, 60), 1e-9);
  WallLine thick = job.walls[1];
  thick.thickness = 10;
  EXPECT_EQ(joinAtCorner(replaceWall(job, thick), thick.startCorner).problem().message,
            "walls A and B are not alike: thickness");
  for (const auto& [wall, station] : std::vector<std::pair<std::size_t, double>>{{0, 195}, {1, 5}}) {
    Column column;
    column.station = station;
    job = addPiece(job, job.walls[wall].id, column).first;
  }
  EXPECT_NE(joinAtCorner(job, job.walls[1].startCorner).problem().message.find("find no room on one wall"),
            std::string::npos);
  const Job triangle = *addOutline(newJob(), std::vector<Point2>{{0, 0}, {200, 0}, {100, 150}}, WallLine{});
  EXPECT_EQ(joinAtCorner(triangle, triangle.walls[0].startCorner).problem().message, "an outline needs three corners");
}

TEST(MoveWall, cornersGoAlongTheWallsBeside) {
  const std::vector<Point2> corners{{0, 0}, {288, 0}, {308, 240}, {0, 240}};
  const Job job = *addOutline(newJob(), corners, WallLine{});
  const auto moved = moveWall(job, job.walls[0].id, 24);
  ASSERT_TRUE(moved);
  EXPECT_EQ((*moved->corners)[0].at, (Point2{0, -24}));
  EXPECT_NEAR((*moved->corners)[1].at.x, 286, 1e-9);
  EXPECT_NEAR((*moved->corners)[1].at.y, -24, 1e-9);
  EXPECT_EQ((*moved->corners)[2].at, corners[2]);
  EXPECT_EQ(moveWall(job, job.walls[0].id, -240).problem().message, "wall D would be gone");
  const SplitWall split = *splitWall(job, job.walls[0].id, 100);
  EXPECT_EQ(moveWall(split.job, job.walls[0].id, 24).problem().message,
            "wall E is in line with wall A: it cannot stay straight");
}

TEST(MoveWall, refusesWhatWouldStandPastAnEnd) {
  const Job job = support::boatShedFront();
  const auto moved = moveWall(job, job.walls[1].id, -100);
  ASSERT_FALSE(moved);
  EXPECT_NE(moved.problem().message.find("past the end of wall"), std::string::npos) << moved.problem().message;
}

// ---- by hand
// ------------------------------------------------------------------------------------------------------------
struct PlanHand {
  Workbench bench;
  PointerAt pointer;
  explicit PlanHand(const std::vector<Point2>& corners = {{0, 0}, {288, 0}, {288, 240}, {0, 240}})
      : bench(*addOutline(newJob(), corners, WallLine{})) {
    pointer.canvas = CanvasKind::Plan;
    pointer.reach = 2;
  }
  Point2 corner(std::size_t i) const { return (*bench.job().corners)[i].at; }
  double length(std::size_t wall) const { return wallLength(bench.job(), bench.job().walls[wall]); }
  void grab(std::size_t wall, Id corner, Point2 at) {
    pointer.plan = at;
    pointer.hit = HitArea{{bench.job().walls[wall].id, corner}, HitArea::Part::Corner, {}};
    bench.press(pointer);
  }
  void drag(double x, double y) {
    pointer.plan = {x, y};
    bench.drag(pointer);
  }
  void type(const std::u32string& keys) {
    for (const char32_t key : keys)
      EXPECT_TRUE(bench.typeKey(key));
  }
};

TEST(PlanHand, aTypedLengthSetsTheWallTheCornerIsDrawnAlong) {
  PlanHand hand;
  hand.grab(1, (*hand.bench.job().corners)[2].id, {288, 240});
  hand.drag(310, 241);
  ASSERT_TRUE(hand.bench.inHand());
  EXPECT_EQ(hand.bench.inHand()->lengthOf, hand.bench.job().walls[2].id);
  EXPECT_EQ(hand.bench.inHand()->inLineWith.size(), 1u);
  hand.type(U"25-6\r");
  EXPECT_FALSE(hand.bench.inHand());
  EXPECT_EQ(hand.length(2), 306);
  EXPECT_EQ(hand.corner(2), (Point2{306, 240}));
  EXPECT_EQ(hand.bench.session().history().undoName(), "Move a corner");
  hand.bench.session().undo();
  EXPECT_EQ(hand.corner(2), (Point2{288, 240}));
}

TEST(PlanHand, aCornerThatWouldMakeTheOutlineCrossIsRefused) {
  PlanHand hand;
  const Job before = hand.bench.job();
  hand.grab(1, (*before.corners)[2].id, {288, 240});
  hand.drag(100, -100);
  ASSERT_TRUE(hand.bench.inHand());
  EXPECT_NE(hand.bench.inHand()->problem, "");
  hand.bench.release(hand.pointer);
  EXPECT_TRUE(hand.bench.job() == before);
  EXPECT_FALSE(hand.bench.session().history().canUndo());
  hand.grab(1, (*before.corners)[2].id, {288, 240});
  hand.drag(300, 240);
  hand.type(U"2000'\r");
  EXPECT_NE(hand.bench.inHand()->problem.find("1,000 feet"), std::string::npos);
  EXPECT_TRUE(hand.bench.inHand()) << "what was typed stays";
}

TEST(PlanHand, theMiddleOfAWallMovesItParallelAndATypedLengthSaysHowFar) {
  PlanHand hand;
  hand.grab(0, {}, {144, 4});
  hand.drag(150, -19);
  ASSERT_TRUE(hand.bench.inHand());
  EXPECT_EQ(hand.bench.inHand()->kind, InHand::Kind::Wall);
  EXPECT_EQ(hand.corner(0), (Point2{0, -23}));
  hand.type(U"2'\r");
  EXPECT_EQ(hand.corner(0), (Point2{0, -24}));
  EXPECT_EQ(hand.corner(1), (Point2{288, -24}));
  EXPECT_EQ(hand.bench.session().history().undoName(), "Move wall A 2'-0\" out");
  hand.grab(0, {}, {144, -20});
  hand.drag(144, 232);
  EXPECT_NE(hand.bench.inHand()->problem, "") << "the two long walls would be nearer than they are thick";
  hand.bench.release(hand.pointer);
  EXPECT_EQ(hand.corner(0), (Point2{0, -24}));
}

TEST(PlanHand, splitJoinAndMoveAreOneStepEachAndRefusedWithASentence) {
  PlanHand hand;
  const Job before = hand.bench.job();
  const Id front = before.walls[0].id;
  EXPECT_FALSE(hand.bench.splitWall(front, 100));
  EXPECT_EQ(hand.bench.session().history().undoName(), "Split wall A at 8'-4\"");
  const Id corner = hand.bench.job().corners->back().id;
  EXPECT_TRUE(hand.bench.moveWall(front, 12)) << "in line with the other half";
  EXPECT_FALSE(hand.bench.takeCornerAway(corner));
  EXPECT_EQ(hand.bench.job().walls.size(), 4u);
  EXPECT_FALSE(hand.bench.moveWall(front, 12));
  EXPECT_EQ(hand.bench.session().history().undoName(), "Move wall A 1'-0\" out");
  EXPECT_TRUE(hand.bench.moveWall(front, -245));
  for (int i = 0; i < 3; ++i)
    hand.bench.session().undo();
  EXPECT_TRUE(hand.bench.job() == before);
  EXPECT_FALSE(hand.bench.session().history().canUndo());
}

} // namespace
} // namespace sillwright
