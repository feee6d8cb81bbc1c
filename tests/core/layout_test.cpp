#include <gtest/gtest.h>

#include "core/model/layout.h"
#include "core/model/lookup.h"

namespace sillwright {
namespace {

// Corners 1 … n of an outline, walls 101 … between them.
Job outline(const std::vector<Point2>& points, const WallLine& like = {}) {
  Job job;
  const auto count = static_cast<std::uint32_t>(points.size());
  job.corners.edit([&](std::vector<Corner>& corners) {
    for (std::uint32_t i = 0; i < count; ++i)
      corners.push_back({{i + 1}, points[i], ""});
  });
  for (std::uint32_t i = 0; i < count; ++i) {
    WallLine wall = like;
    wall.id = {101 + i};
    wall.startCorner = {i + 1};
    wall.endCorner = {(i + 1) % count + 1};
    job.walls.add(wall);
  }
  job.nextId = 1000;
  return job;
}

WallLayout layOutWall(const Job& job, std::uint32_t id) { return layOut(job, job.walls.findPointer({id})); }

TEST(Place, knowsItsNeighboursAndTheirTurns) {
  const Job job = outline({{0, 0}, {288, 0}, {288, 336}, {0, 336}});
  const WallPlace place = placeOf(job, *job.walls.find({101}));
  EXPECT_DOUBLE_EQ(place.length, 288);
  ASSERT_TRUE(place.atStart && place.atEnd);
  EXPECT_EQ(place.atStart->wall, Id{104});
  EXPECT_EQ(place.atEnd->wall, Id{102});
  EXPECT_NEAR(place.atEnd->turn, 90, 1e-9);
  EXPECT_FALSE(place.atEnd->insideCorner);
}

TEST(Layout, concreteGoesOnPastAnInsideCornerAndEndsAtAnOutsideOne) {
  WallLine like;
  like.thickness = 8;
  // An L: the corner at (120, 120) is an inside corner.
  const Job job = outline({{0, 0}, {240, 0}, {240, 120}, {120, 120}, {120, 240}, {0, 240}}, like);
  const WallLayout before = layOutWall(job, 103); // (240,120) to (120,120): ends at the inside corner
  EXPECT_DOUBLE_EQ(before.concrete.from, 0);
  EXPECT_DOUBLE_EQ(before.concrete.to, 120 + 8);
  const WallLayout after = layOutWall(job, 104); // starts at it
  EXPECT_DOUBLE_EQ(after.concrete.from, -8);
  EXPECT_DOUBLE_EQ(after.concrete.to, 120);
}

TEST(Layout, concreteEndsAtTheEndOfAWallThatStandsAlone) {
  Job job = outline({{0, 0}, {100, 0}, {100, 100}});
  job.walls.remove({102});
  job.walls.remove({103});
  const WallLayout layout = layOutWall(job, 101);
  EXPECT_EQ(layout.concrete, (Interval{0, 100}));
  EXPECT_EQ(layout.faces.front().kind, ConcreteFace::Kind::End);
}

TEST(Layout, pourLineStepsWhereItIsToldTo) {
  WallLine like;
  like.steps.push_back({{201}, "D1", 48, 240, -8, ""});
  const Job job = outline({{0, 0}, {288, 0}, {288, 336}, {0, 336}}, like);
  const WallLayout layout = layOutWall(job, 101);
  ASSERT_EQ(layout.pour.size(), 3u);
  EXPECT_DOUBLE_EQ(pourAt(layout, 10), 0);
  EXPECT_DOUBLE_EQ(pourAt(layout, 48), 0); // at the riser: the higher side
  EXPECT_DOUBLE_EQ(pourAt(layout, 48.01), -8);
  EXPECT_DOUBLE_EQ(pourAt(layout, 240), 0);
  EXPECT_DOUBLE_EQ(pourAt(layout, -5), 0);
  ASSERT_EQ(layout.faces.size(), 4u);
  EXPECT_EQ(layout.faces[1].kind, ConcreteFace::Kind::Step);
  EXPECT_EQ(layout.faces[1].concrete, Side::Left); // the riser faces the opening
  EXPECT_EQ(layout.faces[2].concrete, Side::Right);
  EXPECT_EQ(layout.faces[1].z, (Interval{-8, 0}));
}

TEST(Layout, overlappingStepsTakeTheLowest) {
  WallLine like;
  like.steps.push_back({{201}, "D1", 40, 120, -8, ""});
  like.steps.push_back({{202}, "D2", 100, 200, -4, ""});
  const Job job = outline({{0, 0}, {288, 0}, {288, 336}, {0, 336}}, like);
  const WallLayout layout = layOutWall(job, 101);
  EXPECT_DOUBLE_EQ(pourAt(layout, 110), -8);
  EXPECT_DOUBLE_EQ(pourAt(layout, 150), -4);
}

TEST(Layout, sillsAreCutAtDoorsAndSplicesAndGoOnUnderWindows) {
  WallLine like;
  like.sillInset = 0.5;
  like.sills.push_back({{201}, "L1", 0, 288, {3, 6}, "", {200}, ""});
  Opening door;
  door.id = {202};
  door.kind = OpeningKind::Door;
  door.from = 40;
  door.to = 80;
  Opening window = door;
  window.id = {203};
  window.kind = OpeningKind::Window;
  window.from = 120;
  window.to = 160;
  like.openings = {door, window};
  const Job job = outline({{0, 0}, {288, 0}, {288, 336}, {0, 336}}, like);
  const WallLayout layout = layOutWall(job, 101);
  ASSERT_EQ(layout.sills.size(), 3u);
  EXPECT_EQ(layout.sills[0].box.s, (Interval{0, 40}));
  EXPECT_EQ(layout.sills[1].box.s, (Interval{80, 200}));
  EXPECT_EQ(layout.sills[2].box.s, (Interval{200, 288}));
  EXPECT_EQ(layout.sills[0].box.d, (Interval{0.5, 6.0}));
  EXPECT_EQ(layout.sills[0].box.z, (Interval{0, 2.5}));
}

TEST(Layout, studsStandAtTheirMarksButNotInColumnsOrDoors) {
  WallLine like;
  like.sills.push_back({{201}, "L1", 0, 288, {2, 6}, "", {}, ""});
  like.studs = StudLayout{};
  Column column;
  column.id = {202};
  column.station = 48;
  column.makeUp = {2, {2, 6}};
  like.columns.push_back(column);
  Opening door;
  door.id = {203};
  door.from = 60;
  door.to = 100;
  like.openings.push_back(door);
  const Job job = outline({{0, 0}, {288, 0}, {288, 336}, {0, 336}}, like);
  std::vector<double> marks;
  for (const StudBody& stud : layOutWall(job, 101).studs)
    marks.push_back(stud.box.s.middle());
  EXPECT_EQ(marks, (std::vector<double>{16, 32, 112, 128, 144, 160, 176, 192, 208, 224, 240, 256, 272, 288}));
}

TEST(Layout, studsCountFromTheRightWhenLaidOutFromThere) {
  WallLine like;
  like.sills.push_back({{201}, "L1", 0, 100, {2, 6}, "", {}, ""});
  like.studs = StudLayout{Side::Right, 24, 24, {2, 4}};
  const Job job = outline({{0, 0}, {100, 0}, {100, 100}, {0, 100}}, like);
  std::vector<double> marks;
  for (const StudBody& stud : layOutWall(job, 101).studs)
    marks.push_back(stud.box.s.middle());
  EXPECT_EQ(marks, (std::vector<double>{4, 28, 52, 76}));
}

TEST(Layout, aStrapHangsFromThePourLineAtItsStation) {
  Job job;
  StrapType type;
  type.id = {50};
  type.plateWidth = 2.5;
  type.plateThickness = 0.1;
  type.profile = {{0.05, 0}, {0.5, -2}, {3.75, -12}};
  type.exposedLength = 22;
  type.nails.rows = {-0.5, 0.5};
  type.nails.first = 5;
  type.nails.spacing = 1;
  type.nails.count = 3;
  type.nails.staggered = true;
  WallLine like;
  like.steps.push_back({{201}, "D1", 48, 240, -8, ""});
  like.straps.push_back({{202}, "S1", {50}, 100, 0.25, {}, ""});
  job = outline({{0, 0}, {288, 0}, {288, 336}, {0, 336}}, like);
  job.types.edit([&](HardwareTypes& types) { types.straps.push_back(type); });
  const WallLayout layout = layOutWall(job, 101);
  ASSERT_EQ(layout.straps.size(), 1u);
  const StrapBody& strap = layout.straps[0];
  EXPECT_DOUBLE_EQ(strap.joint, -7.75);
  EXPECT_EQ(strap.plate.s, (Interval{98.75, 101.25}));
  EXPECT_EQ(strap.plate.z, (Interval{-7.75, 14.25}));
  EXPECT_DOUBLE_EQ(strap.depthOfHook.from, -19.75);
  ASSERT_EQ(strap.nails.size(), 3u);
  EXPECT_DOUBLE_EQ(strap.nails[1].s, 100.5);
  EXPECT_DOUBLE_EQ(strap.nails[1].z, -1.75);
}

TEST(Layout, aHookPointsWhereItIsTurned) {
  WallLine like;
  Bolt bolt;
  bolt.id = {202};
  bolt.type = {60};
  bolt.station = 20;
  bolt.depth = 2.5;
  bolt.projection = 4;
  for (const auto& [direction, tip] :
       std::vector<std::pair<HookDirection, Point3>>{{HookDirection::Inward, {20, 2.5 + 2.25, -5.75}},
                                                     {HookDirection::Outward, {20, 2.5 - 2.25, -5.75}},
                                                     {HookDirection::Left, {20 - 2.25, 2.5, -5.75}},
                                                     {HookDirection::Right, {20 + 2.25, 2.5, -5.75}}}) {
    bolt.hook = direction;
    like.bolts = {bolt};
    Job job = outline({{0, 0}, {288, 0}, {288, 336}, {0, 336}}, like);
    job.types.edit([](HardwareTypes& types) {
      BoltType type;
      type.id = {60};
      type.diameter = 0.5;
      type.length = 10;
      type.hookLeg = 2.5;
      types.bolts.push_back(type);
    });
    const WallLayout layout = layOutWall(job, 101);
    ASSERT_EQ(layout.anchors.size(), 1u);
    const AnchorBody& body = layout.anchors[0];
    EXPECT_DOUBLE_EQ(body.embedment, 6);
    EXPECT_DOUBLE_EQ(body.bottom, -6);
    ASSERT_EQ(body.foot.size(), 1u);
    EXPECT_EQ(body.foot[0].b, tip);
  }
}

TEST(Layout, aRodStandsOffTheFaceOfItsColumn) {
  WallLine like;
  Column column;
  column.id = {201};
  column.station = 100;
  column.makeUp = {1, {4, 6}};
  like.columns.push_back(column);
  like.rods.push_back({{202}, "R1", {70}, {201}, Side::Left, 1.5, 4, 8, ""});
  Job job = outline({{0, 0}, {288, 0}, {288, 336}, {0, 336}}, like);
  job.types.edit([](HardwareTypes& types) {
    RodType type;
    type.id = {70};
    type.diameter = 0.625;
    types.rods.push_back(type);
  });
  const WallLayout layout = layOutWall(job, 101);
  ASSERT_EQ(layout.anchors.size(), 1u);
  EXPECT_DOUBLE_EQ(layout.anchors[0].station, 100 - 1.75 - 1.5);
  EXPECT_TRUE(layout.anchors[0].isRod);
}

} // namespace
} // namespace sillwright
