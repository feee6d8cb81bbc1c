#include "core/drawing/elevation.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/drawing/flag_words.h"
#include "core/drawing/writers.h"
#include "demo_wall.h"
#include "rules_wall.h"

namespace sillwright {
namespace {

const Bounds window{0, 0, 1600, 960};

struct Demo {
  Job job = test::demoJob();
  std::shared_ptr<const CheckedWall> wall = test::demoWall(job);

  ElevationInput input(double scale, bool fromInside = false) const {
    ElevationInput in;
    in.job = &job;
    in.wall = wall.get();
    in.window = window;
    in.view = fitElevation(wall->layout, window, fromInside, 96);
    if (scale > 0)
      in.view.scale = scale;
    in.words = test::demoWords;
    return in;
  }
};

TEST(Elevation, GivesEveryPieceOfTheWallAPlaceForThePointer) {
  const Demo demo;
  const ElevationDrawing drawn = drawElevation(demo.input(0));
  for (const Id piece : piecesOf(*demo.wall->layout.wall)) {
    bool found = false;
    for (const HitArea& hit : drawn.drawing.hits())
      found = found || (hit.piece.piece == piece && hit.part == HitArea::Part::Body);
    EXPECT_TRUE(found) << piece.value;
  }
}

TEST(Elevation, PutsTheHitOfAStrapWhereTheStrapIs) {
  const Demo demo;
  const ElevationInput in = demo.input(0);
  const ElevationDrawing drawn = drawElevation(in);
  const StrapBody& strap = demo.wall->layout.straps[2];
  for (const HitArea& hit : drawn.drawing.hits())
    if (hit.piece.piece == strap.id && hit.part != HitArea::Part::Name) {
      EXPECT_NEAR(hit.box.x0, in.view.x(strap.plate.s.from), 1e-9);
      EXPECT_NEAR(hit.box.y0, in.view.y(22), 1e-9);
      EXPECT_NEAR(hit.box.y1, in.view.y(-14), 1e-9);
    }
  // The strap lies on top of its column.
  const Point2 at{in.view.x(strap.strap->station), in.view.y(10)};
  const HitArea* top = nullptr;
  for (const HitArea& hit : drawn.drawing.hits())
    if (hit.box.contains(at))
      top = &hit;
  ASSERT_NE(top, nullptr);
  EXPECT_EQ(top->piece.piece, strap.id);
}

// A drag in the open part of an opening is a rubber band, not a move of the opening.
TEST(Elevation, AnOpeningAnswersAtItsHeaderAndItsNameOnly) {
  const Demo demo;
  const ElevationInput in = demo.input(0);
  const ElevationDrawing drawn = drawElevation(in);
  const Opening& opening = demo.wall->layout.wall->openings[0];
  const auto answers = [&](Point2 at) {
    return std::any_of(drawn.drawing.hits().begin(), drawn.drawing.hits().end(),
                       [&](const HitArea& hit) { return hit.piece.piece == opening.id && hit.box.contains(at); });
  };
  const double middle = (opening.from + opening.to) / 2;
  EXPECT_TRUE(answers({in.view.x(middle), in.view.y(opening.headHeight + 1)}));
  EXPECT_FALSE(answers({in.view.x(middle), in.view.y(opening.headHeight / 2)}));
  EXPECT_TRUE(answers({in.view.x(opening.from), in.view.y(40)})); // its left end
}

TEST(Elevation, MarksAnswerForTheirPieces) {
  const Demo demo;
  const ElevationDrawing drawn = drawElevation(demo.input(0));
  for (const Bolt& bolt : demo.wall->layout.wall->bolts) {
    const auto named = std::find_if(drawn.drawing.hits().begin(), drawn.drawing.hits().end(), [&](const HitArea& hit) {
      return hit.piece.piece == bolt.id && hit.part == HitArea::Part::Name;
    });
    ASSERT_NE(named, drawn.drawing.hits().end()) << bolt.mark;
    const auto written = std::find_if(drawn.drawing.taken().begin(), drawn.drawing.taken().end(),
                                      [&](const TakenBox& box) { return box.name == "mark " + bolt.mark; });
    ASSERT_NE(written, drawn.drawing.taken().end());
    EXPECT_EQ(named->box, written->box);
  }
}

TEST(Elevation, FromInsideALabelSaysWhoseRightIsMeant) {
  const auto demo = testing_support::wallWithStrapsAt(1.625, 44.5, 242.875, 285.25);
  const auto wall = checkAll(demo.job).front();
  for (const bool inside : {false, true}) {
    ElevationInput in;
    in.job = &demo.job;
    in.wall = wall.get();
    in.window = window;
    in.view = fitElevation(wall->layout, window, inside, 96);
    in.words = flagWords;
    const std::string text = toText(drawElevation(in).drawing);
    EXPECT_NE(text.find("move it right 1/2\""), std::string::npos); // S2 off the seam
    EXPECT_EQ(text.find("seen from outside") != std::string::npos, inside);
  }
}

TEST(Elevation, MirrorsTheHitsFromInside) {
  const Demo demo;
  const ElevationInput outside = demo.input(0);
  const ElevationInput inside = demo.input(0, true);
  const ElevationDrawing a = drawElevation(outside);
  const ElevationDrawing b = drawElevation(inside);
  ASSERT_EQ(a.drawing.hits().size(), b.drawing.hits().size());
  for (std::size_t i = 0; i < a.drawing.hits().size(); ++i) {
    const HitArea& left = a.drawing.hits()[i];
    const HitArea& right = b.drawing.hits()[i];
    EXPECT_EQ(left.piece, right.piece);
    EXPECT_NEAR(left.box.x0 - outside.view.origin.x, inside.view.origin.x - right.box.x1, 1e-9);
    EXPECT_NEAR(left.box.y0, right.box.y0, 1e-9);
  }
}

TEST(Elevation, NeverWritesOverItselfNorOutOfTheWindow) {
  const Demo demo;
  for (const bool fromInside : {false, true})
    for (const double scale : {0.0, 2.0, 3.3, 4.75, 7.3, 15.0, 60.0})
      for (const Medium medium : {Medium::Screen, Medium::Paper}) {
        ElevationInput in = demo.input(scale, fromInside);
        in.medium = medium;
        const ElevationDrawing drawn = drawElevation(in);
        const auto taken = drawn.drawing.taken();
        EXPECT_FALSE(taken.empty());
        for (std::size_t i = 0; i < taken.size(); ++i) {
          EXPECT_TRUE(window.contains(taken[i].box)) << taken[i].name;
          for (std::size_t j = 0; j < i; ++j)
            EXPECT_FALSE(taken[i].box.overlaps(taken[j].box))
                << taken[i].name << " over " << taken[j].name << " at " << scale;
        }
      }
}

TEST(Elevation, WritesTheStationOfEveryPieceOfHardware) {
  const Demo demo;
  const std::string text = toText(drawElevation(demo.input(0)).drawing);
  for (const char* value : {"0'-1 5/8\"", "3'-8 1/2\"", "20'-2 7/8\"", "23'-9 1/4\"", "1'-8\"", "23'-7 1/8\"",
                            "16'-0\" rough opening", "S2 and S3: joints level"})
    EXPECT_NE(text.find(value), std::string::npos) << value;
}

TEST(Elevation, DrawsOnlyWhatTheWindowShows) {
  const Demo demo;
  ElevationInput in = demo.input(60);
  in.view.origin = {800, 480}; // only the left end is near
  const ElevationDrawing drawn = drawElevation(in);
  for (const HitArea& hit : drawn.drawing.hits())
    EXPECT_NE(hit.piece.piece, demo.wall->layout.straps[3].id);
  for (const Prim& prim : drawn.drawing.prims())
    if (prim.kind == Prim::Kind::Text) {
      EXPECT_TRUE(window.grown(40).overlaps(prim.box)) << drawn.drawing.textOf(prim).text;
    }
}

TEST(Elevation, LabelsEveryFlagBesideTheHardware) {
  const Demo demo;
  const ElevationInput in = demo.input(0);
  const ElevationDrawing drawn = drawElevation(in);
  ASSERT_EQ(drawn.labels.size(), 3u);
  EXPECT_TRUE(drawn.listed.empty());
  for (const PlacedLabel& label : drawn.labels) {
    EXPECT_EQ(label.number, 0) << label.request.text.measure;
    for (const StrapBody& strap : demo.wall->layout.straps)
      EXPECT_GE(std::max({label.box.x0 - in.view.x(strap.plate.s.to), in.view.x(strap.plate.s.from) - label.box.x1,
                          label.box.y0 - in.view.y(-14), in.view.y(22) - label.box.y1}),
                0);
  }
  ElevationInput again = in;
  again.lastLabels = drawn.labels;
  const ElevationDrawing next = drawElevation(again);
  for (std::size_t i = 0; i < 3; ++i)
    EXPECT_EQ(next.labels[i].box, drawn.labels[i].box);
}

// Zoomed in on the tape, what is found far below it is still told, at the edge toward it.
TEST(Elevation, TellsWhatIsFoundBelowTheWindow) {
  const Demo demo;
  ElevationInput in = demo.input(40);
  const Finding* steel = nullptr;
  for (const Finding& finding : demo.wall->findings)
    if (finding.rule == RuleId::StrapSteel)
      steel = &finding;
  ASSERT_NE(steel, nullptr);
  // The finding's stations in the middle, its heights a foot below the window.
  in.view.origin.x += window.x1 / 2 - in.view.x(steel->region.s.middle());
  in.view.origin.y += window.y1 + 12 * in.view.scale - in.view.y(steel->region.z.to);
  ASSERT_GT(in.view.y(steel->region.z.to), window.y1);
  const ElevationDrawing drawn = drawElevation(in);
  const auto told = std::find_if(drawn.labels.begin(), drawn.labels.end(), [](const PlacedLabel& label) {
    return label.request.text.measure.find("V18") != std::string::npos;
  });
  ASSERT_NE(told, drawn.labels.end());
  EXPECT_TRUE(told->number > 0 || window.contains(Point2{told->box.x0, told->box.y0}));
}

TEST(Elevation, FitsTheWholeWallIntoTheWindow) {
  const Demo demo;
  for (const bool fromInside : {false, true}) {
    const ElevationView view = fitElevation(demo.wall->layout, window, fromInside, 96);
    for (const double s : {-4.0, 292.0}) {
      EXPECT_GT(view.x(s), window.x0 + 40);
      EXPECT_LT(view.x(s), window.x1 - 40);
    }
    EXPECT_GT(view.y(96), window.y0 + 40);
    EXPECT_LT(view.y(-32), window.y1 - 150);
  }
}

TEST(Elevation, ShowsWhereThePieceInHandWasAndHowFarItIsFromWhatMatters) {
  const Demo demo;
  ElevationInput in = demo.input(0);
  InHand hand;
  hand.piece = {demo.wall->layout.wall->id, demo.wall->layout.straps[2].id};
  hand.before = findPiece(demo.job, hand.piece);
  hand.station = 242.875;
  hand.moved = 0.9375;
  hand.snap = SnapReason::ColumnCentre;
  in.inHand = &hand;
  in.view.scale = 15;
  in.view.origin.x = 800 - 240 * 15;
  const std::string text = toText(drawElevation(in).drawing);
  for (const char* value : {"1 5/8\"", "bar V16", "to the step", "column centre"})
    EXPECT_NE(text.find(value), std::string::npos) << value;
}

} // namespace
} // namespace sillwright
