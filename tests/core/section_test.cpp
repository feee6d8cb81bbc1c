#include "core/drawing/section.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/geometry/clearance.h"
#include "core/model/lookup.h"
#include "demo_wall.h"

namespace sillwright {
namespace {

// One wall with a strap, a J-bolt and an upright and an along bar. Invented.
struct Bench {
  Job job;
  CheckedWall wall;
  Id strap, bolt;
};

Bench bench() {
  Bench b;
  Job& job = b.job;
  Corner from, to;
  from.id = takeId(job);
  to.id = takeId(job);
  to.at = {288, 0};
  job.corners = std::vector<Corner>{from, to};
  HardwareTypes types;
  StrapType strapType;
  strapType.id = takeId(job);
  strapType.plateWidth = 2.5;
  strapType.plateThickness = 0.105;
  strapType.exposedLength = 22;
  strapType.profile = {{0.05, 0}, {0.5, -2}, {3.75, -12}, {5.5, -14}, {5.5, -12.5}};
  BoltType boltType;
  boltType.id = takeId(job);
  boltType.diameter = 0.625;
  boltType.length = 12;
  boltType.threadLength = 5;
  boltType.threadsPerInch = 11;
  boltType.hookLeg = 2.5;
  types.straps.push_back(strapType);
  types.bolts.push_back(boltType);
  job.types = types;
  WallLine wall;
  wall.id = takeId(job);
  wall.startCorner = from.id;
  wall.endCorner = to.id;
  wall.footing = {16, 8, 4};
  wall.formTop = 1.5;
  Strap strap;
  strap.id = b.strap = takeId(job);
  strap.mark = "S1";
  strap.type = strapType.id;
  strap.station = 2;
  Bolt bolt;
  bolt.id = b.bolt = takeId(job);
  bolt.mark = "B1";
  bolt.type = boltType.id;
  bolt.station = 20;
  bolt.depth = 2.4375;
  bolt.projection = 4;
  Bar upright;
  upright.id = takeId(job);
  upright.mark = "V1";
  upright.planned = {{4.25, 4, -28}, {4.25, 4, -2}};
  Bar along;
  along.id = takeId(job);
  along.mark = "H1";
  along.run = BarRun::Along;
  along.planned = {{2, 4.5, -4}, {286, 4.5, -4}};
  wall.straps = {strap};
  wall.bolts = {bolt};
  wall.bars = {upright, along};
  job.walls.add(wall);
  b.wall.layout = layOut(job, job.walls.pointer(0));
  return b;
}

SectionInput through(const Bench& b, Id piece, double station) {
  SectionInput input;
  input.job = &b.job;
  input.wall = &b.wall;
  input.piece = piece;
  input.station = station;
  input.window = {0, 0, 320, 460};
  input.view = fitSection(b.wall, piece, input.window);
  return input;
}

bool says(const Drawing& drawing, const std::string& words) {
  return std::any_of(drawing.taken().begin(), drawing.taken().end(),
                     [&](const TakenBox& t) { return t.name == words; });
}

TEST(Section, StatesTheStrapsMeasures) {
  const Bench b = bench();
  const Drawing drawing = drawSection(through(b, b.strap, 2));
  EXPECT_TRUE(says(drawing, "22\" up"));
  EXPECT_TRUE(says(drawing, "14\" down"));
  EXPECT_TRUE(says(drawing, "2 1/2\" to the inside face")); // 8 − 5 1/2
  EXPECT_TRUE(says(drawing, "form 1 1/2\" up"));
  EXPECT_TRUE(says(drawing, "through S1, looking left"));
}

TEST(Section, ClearancesAreTheTrueOnes) {
  const Bench b = bench();
  const Drawing drawing = drawSection(through(b, b.strap, 2));
  for (const BarBody& bar : b.wall.layout.bars) {
    const double clear = clearance(bar.body, b.wall.layout.straps[0].embedded).distance;
    EXPECT_TRUE(says(drawing, "bar " + bar.bar->mark + " · " + inches(clear))) << bar.bar->mark << " " << clear;
  }
}

TEST(Section, StatesTheBoltsMeasures) {
  const Bench b = bench();
  const Drawing drawing = drawSection(through(b, b.bolt, 20));
  EXPECT_TRUE(says(drawing, "4\" up"));
  EXPECT_TRUE(says(drawing, "8\" in the concrete"));
  EXPECT_TRUE(says(drawing, "2 7/16\" from the outside face"));
}

TEST(Section, ThePieceAnswersThePointerWhereItIs) {
  const Bench b = bench();
  const SectionInput input = through(b, b.bolt, 20);
  const Drawing drawing = drawSection(input);
  const Point2 shank{input.view.x(2.4375), input.view.y(-3)};
  const auto on = [&](Point2 p) {
    return std::any_of(drawing.hits().begin(), drawing.hits().end(),
                       [&](const HitArea& h) { return h.piece.piece == b.bolt && h.box.contains(p); });
  };
  EXPECT_TRUE(on(shank));
  EXPECT_FALSE(on({input.view.x(6.5), input.view.y(-3)}));
}

TEST(Section, TextsDoNotOverlap) {
  const Bench b = bench();
  for (const Id piece : {b.strap, b.bolt, Id{}})
    for (const Medium medium : {Medium::Screen, Medium::Paper}) {
      SectionInput input = through(b, piece, 20);
      input.medium = medium;
      const Drawing drawing = drawSection(input);
      const auto taken = drawing.taken();
      ASSERT_FALSE(taken.empty());
      for (const TakenBox& t : taken)
        EXPECT_TRUE(input.window.contains(t.box)) << t.name << " leaves the window";
      for (std::size_t i = 0; i < taken.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
          EXPECT_FALSE(taken[i].box.overlaps(taken[j].box)) << taken[i].name << " on " << taken[j].name;
    }
}

TEST(Section, TextsDoNotOverlapInAnyWindow) {
  const Job job = test::demoJob();
  const auto wall = checkAll(job).front();
  const WallLine& line = *wall->layout.wall;
  for (const Bounds& window : {Bounds{0, 0, 226, 348}, Bounds{0, 0, 313, 487}, Bounds{0, 0, 500, 300}, Bounds{0, 0, 700, 900}})
    for (const auto& [piece, station] : {std::pair(line.straps[0].id, line.straps[0].station),
                                         std::pair(line.bolts[1].id, line.bolts[1].station), std::pair(Id{}, 100.0)})
      for (const Medium medium : {Medium::Screen, Medium::Paper}) {
        SectionInput input{&job, wall.get(), station, piece, {}, medium, window};
        input.view = fitSection(*wall, piece, window);
        const Drawing drawing = drawSection(input);
        const auto taken = drawing.taken();
        for (std::size_t i = 0; i < taken.size(); ++i) {
          EXPECT_TRUE(window.contains(taken[i].box)) << taken[i].name << " leaves " << window.x1 << " x " << window.y1;
          for (std::size_t j = 0; j < i; ++j)
            EXPECT_FALSE(taken[i].box.overlaps(taken[j].box))
                << taken[i].name << " on " << taken[j].name << " in " << window.x1 << " x " << window.y1;
        }
      }
}

// Thread stack of a 5/8 in bolt on a 3x sill with a 0.229 in plate washer: 3.63 in, computed from ASME B18.2.2, B18.21.1,
// B1.1; 3 11/16 to the tape. The demo bolt stands up 4 in: 5/16 to spare.
TEST(Section, ListsTheStackOnTheThread) {
  const Job job = test::demoJob();
  const auto wall = checkAll(job).front();
  const Bolt& bolt = wall->layout.wall->bolts[1];
  SectionInput input{&job, wall.get(), bolt.station, bolt.id, {}, Medium::Screen, {0, 0, 320, 480}};
  input.view = fitSection(*wall, bolt.id, input.window);
  const Drawing drawing = drawSection(input);
  for (const char* line : {"two threads past · 3/16\"", "nut · 9/16\"", "cut washer · 3/16\"", "plate washer · 1/4\"",
                           "sill 3x6 · 2 1/2\"", "needed · 3 11/16\"", "there · 4\"", "spare · 5/16\""})
    EXPECT_TRUE(says(drawing, line)) << line;
}

TEST(Section, SaysHowFarTheWasherIsFromTheSheathedEdge) {
  Job job = test::demoJob();
  WallLine line = job.walls[0];
  line.panels[0].unitShear = 520;
  job.walls.replace(line);
  const auto wall = checkAll(job).front();
  const Bolt& bolt = line.bolts[0];
  SectionInput input{&job, wall.get(), bolt.station, bolt.id, {}, Medium::Screen, {0, 0, 320, 480}};
  input.view = fitSection(*wall, bolt.id, input.window);
  const Drawing drawing = drawSection(input);
  EXPECT_TRUE(says(drawing, "washer 7/16\" from the")); // 2 7/16 − 1/2 inset − 1 1/2
  EXPECT_TRUE(says(drawing, "sheathed outside edge"));
  EXPECT_TRUE(says(drawing, "limit 1/2\"")); // SDPWS 2021 4.3.6.4.3
}

int rings(const Drawing& drawing) {
  return static_cast<int>(std::count_if(drawing.prims().begin(), drawing.prims().end(),
                                        [](const Prim& p) { return p.kind == Prim::Kind::Ring && p.ink == Ink::Steel; }));
}

TEST(Section, AHookAlongTheWallIsSeenFromItsEnd) {
  Bench b = bench();
  WallLine line = *b.wall.layout.wall;
  for (const HookDirection way : {HookDirection::Inward, HookDirection::Left, HookDirection::Right}) {
    line.bolts[0].hook = way;
    b.job.walls.replace(line);
    b.wall.layout = layOut(b.job, b.job.walls.pointer(0));
    const Drawing drawing = drawSection(through(b, b.bolt, 20));
    EXPECT_EQ(rings(drawing), way == HookDirection::Inward ? 0 : 1);
    EXPECT_TRUE(std::any_of(drawing.taken().begin(), drawing.taken().end(), [&](const TakenBox& t) {
      return t.name.starts_with(way == HookDirection::Inward ? "hook in, "
                                : way == HookDirection::Left ? "hook to the left, "
                                                             : "hook to the right, ");
    }));
  }
}

// A hook 1/2 in too near the inside face: the hatch lies between hook and face, and its label says so.
TEST(Section, FlagsWhatTheCutGoesThrough) {
  Bench b = bench();
  WallLine line = *b.wall.layout.wall;
  line.thickness = 6.5; // the hook reaches in to 5 1/2: 1 in, target 1 1/2
  b.job.walls.replace(line);
  const auto wall = checkAll(b.job).front();
  SectionInput input{&b.job, wall.get(), 2, b.strap, {}, Medium::Screen, {0, 0, 320, 480}};
  input.view = fitSection(*wall, b.strap, input.window);
  const Drawing drawing = drawSection(input);
  EXPECT_TRUE(std::any_of(drawing.taken().begin(), drawing.taken().end(), [](const TakenBox& t) {
    return t.name.starts_with("label S1 · BACK ");
  }));
}

TEST(Section, FitShowsThePieceAndThePourLine) {
  const Bench b = bench();
  for (const Id piece : {b.strap, b.bolt, Id{}}) {
    const SectionInput input = through(b, piece, 20);
    EXPECT_GT(input.view.y(0), input.window.y0);
    EXPECT_LT(input.view.y(0), input.window.y1);
  }
}

} // namespace
} // namespace sillwright
