// The fold: what may be folded away, and what the elevation then looks like.
#include <algorithm>

#include <gtest/gtest.h>

#include "core/drawing/elevation.h"
#include "core/drawing/flag_words.h"
#include "core/drawing/writers.h"
#include "core/edit/operations.h"
#include "golden.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

std::shared_ptr<const CheckedWall> checked(const Job& job) {
  return checkAll(job).front();
}

std::optional<Interval> foldIn(const CheckedWall& wall, const Selection& selection = {}) {
  return foldOf(wall, wall.layout.wall->openings[0], selection);
}

Job changed(void (*change)(WallLine&)) {
  Job job = support::boatShedFront();
  WallLine wall = job.walls[0];
  change(wall);
  job.walls.replace(wall);
  return job;
}

TEST(Fold, AFootIsKeptOnEitherSideOfTheOpening) {
  const auto wall = checked(support::boatShedFront());
  ASSERT_TRUE(foldIn(*wall));
  EXPECT_EQ(*foldIn(*wall), (Interval{60, 228}));
}

TEST(Fold, NothingThatIsSetIsFoldedAway) {
  const Job bolted = changed([](WallLine& wall) { wall.bolts[0].station = 120; });
  EXPECT_FALSE(foldIn(*checked(bolted)));
  const Job strapped = changed([](WallLine& wall) { wall.straps[1].station = 61; }); // an edge of it
  EXPECT_FALSE(foldIn(*checked(strapped)));
  const Job posted = changed([](WallLine& wall) { wall.columns[0].station = 140; });
  EXPECT_FALSE(foldIn(*checked(posted)));
  const Job shot = changed([](WallLine& wall) {
    GradeShot taken;
    taken.id = Id{9001};
    taken.station = 100;
    wall.shots.push_back(taken);
  });
  EXPECT_FALSE(foldIn(*checked(shot)));
  const Job stepped = changed([](WallLine& wall) { wall.steps[0].to = 150; }); // the pour line rises there
  EXPECT_FALSE(foldIn(*checked(stepped)));
}

TEST(Fold, ANarrowOpeningIsNotWorthIt) {
  const Job narrow = changed([](WallLine& wall) { wall.openings[0].to = wall.openings[0].from + 47; });
  EXPECT_FALSE(foldIn(*checked(narrow)));
}

TEST(Fold, WhatIsFoundOrSelectedThereIsNotHidden) {
  const Job job = support::boatShedFront();
  auto wall = std::make_shared<CheckedWall>(*checked(job));
  const BarBody* inside = nullptr;
  for (const BarBody& bar : wall->layout.bars)
    if (bar.bar->run == BarRun::Upright && bar.body.a.s > 100 && bar.body.a.s < 180)
      inside = &bar;
  ASSERT_NE(inside, nullptr) << "bars fold with it";
  ASSERT_TRUE(foldIn(*wall));
  EXPECT_FALSE(foldIn(*wall, {{wall->layout.wall->id, inside->id}}));
  EXPECT_TRUE(foldIn(*wall, {{wall->layout.wall->id, wall->layout.wall->straps[0].id}}));
  Finding finding;
  finding.region = {{100, 101}, {2, 4}, {-20, -10}};
  wall->findings.push_back(finding);
  EXPECT_FALSE(foldIn(*wall));
}

struct Folded {
  Job job = support::boatShedFrontSteelMoved();
  std::shared_ptr<const CheckedWall> wall = checked(job);

  ElevationInput input(const Bounds& window, double scale = 0, bool fromInside = false, double upTo = 30) const {
    ElevationInput in;
    in.job = &job;
    in.wall = wall.get();
    in.window = window;
    in.view = fitElevation(wall->layout, window, fromInside, upTo, {*foldIn(*wall)});
    if (scale > 0) {
      in.view.scale = scale;
      in.view.origin.x = (window.x0 + window.x1) / 2 + (fromInside ? 1 : -1) * in.view.along(144);
    }
    in.words = flagWords;
    return in;
  }
};
const Bounds canvas{0, 0, 923, 508}; // 1062 by 584 px

TEST(Fold, TwoPiersShareOneCanvasAtMoreThanTwiceTheSize) {
  const Folded folded;
  const double whole = fitElevation(folded.wall->layout, canvas, false, 30).scale;
  const ElevationView view = folded.input(canvas).view;
  EXPECT_GT(view.scale, 2 * whole);
  EXPECT_GT(view.x(0), 60);
  EXPECT_LT(view.x(288), 923 - 60);
}

TEST(Fold, SaysHowMuchIsGoneAndShowsNothingOfIt) {
  const Folded folded;
  for (const bool inside : {false, true}) {
    const ElevationInput in = folded.input(canvas, 0, inside);
    const ElevationDrawing drawn = drawElevation(in);
    EXPECT_NE(toText(drawn.drawing).find("14'-0\" of opening folded away"), std::string::npos);
    const Bounds box = foldBox(in.view, folded.wall->layout, canvas, in.view.folds[0]);
    ASSERT_FALSE(box.empty());
    EXPECT_NEAR(box.x1 - box.x0, foldGap, 1e-9);
    for (const HitArea& hit : drawn.drawing.hits())
      for (const BarBody& bar : folded.wall->layout.bars)
        if (bar.id == hit.piece.piece && bar.bar->run == BarRun::Upright) {
          EXPECT_FALSE(in.view.hides(bar.box.s));
        }
    for (const PlacedLabel& label : drawn.labels)
      EXPECT_FALSE(label.number == 0 && label.box.overlaps(box));
    for (const TakenBox& taken : drawn.drawing.taken())
      EXPECT_FALSE(taken.name != "fold" && taken.box.overlaps(box)) << taken.name;
  }
}

TEST(Fold, StationsStayTrue) {
  const Folded folded;
  const ElevationInput in = folded.input(canvas);
  const ElevationDrawing drawn = drawElevation(in);
  for (const StrapBody& strap : folded.wall->layout.straps) {
    const auto hit = std::find_if(drawn.drawing.hits().begin(), drawn.drawing.hits().end(),
                                  [&](const HitArea& h) { return h.piece.piece == strap.id; });
    ASSERT_NE(hit, drawn.drawing.hits().end());
    EXPECT_NEAR(in.view.s((hit->box.x0 + hit->box.x1) / 2), strap.strap->station, 1e-9);
    EXPECT_NEAR(hit->box.x1 - hit->box.x0, 2.5 * in.view.scale, 1e-9);
  }
  const std::string text = toText(drawn.drawing);
  for (const char* value : {"20'-2 7/8\"", "23'-9 1/4\"", " 23'", " 24'", " 19'"})
    EXPECT_NE(text.find(value), std::string::npos) << value;
}

TEST(Fold, NothingIsWrittenOverSomethingWritten) {
  const Folded folded;
  const Bounds large{0, 0, 1600, 960};
  for (const bool inside : {false, true})
    for (const double scale : {0.0, 2.0, 4.0, 7.3, 15.0, 40.0})
      for (const Bounds& window : {canvas, large})
        for (const double upTo : {30.0, 96.0}) {
          const ElevationDrawing drawn = drawElevation(folded.input(window, scale, inside, upTo));
          const auto taken = drawn.drawing.taken();
          for (std::size_t i = 0; i < taken.size(); ++i)
            for (std::size_t j = 0; j < i; ++j)
              EXPECT_FALSE(taken[i].box.overlaps(taken[j].box))
                  << taken[i].name << " over " << taken[j].name << " at " << scale;
        }
}

TEST(Fold, Golden) {
  const Folded folded;
  test::expectGolden("elevation_folded.txt", toText(drawElevation(folded.input({0, 0, 700, 420})).drawing));
}

} // namespace
} // namespace sillwright
