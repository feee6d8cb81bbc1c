// A proposal of a refit on the elevation: what is said of each change, and that nothing lies over anything.
#include "core/drawing/elevation.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/drawing/flag_words.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

const Bounds window{0, 0, 1000, 560};

class ElevationProposal : public ::testing::Test {
protected:
  ElevationProposal() : job(support::boatShedFrontSteelMoved()), wall(checkAll(job).front()) {}
  const WallLine& line() const { return *wall->layout.wall; }
  template <class List> auto marked(const List& list, const std::string& mark) const {
    return *std::find_if(list.begin(), list.end(), [&](const auto& item) { return item.mark == mark; });
  }
  Change strapMoved(const std::string& mark, double by) const {
    const Strap before = marked(line().straps, mark);
    Strap after = before;
    after.station += by;
    return {before, after};
  }
  Change boltMoved(const std::string& mark, double by, double inward) const {
    const Bolt before = marked(line().bolts, mark);
    Bolt after = before;
    after.station += by;
    after.depth += inward;
    return {before, after};
  }
  Change boltAdded(double station) const {
    Bolt bolt = line().bolts.front();
    bolt.id = {};
    bolt.mark.clear();
    bolt.station = station;
    return {{}, bolt};
  }
  void propose(std::vector<Change> changes) {
    WallLine after = line();
    for (const Change& change : changes)
      after = withChange(after, change);
    shown.wall = line().id;
    shown.changes = std::move(changes);
    shown.after = std::make_shared<const WallLayout>(layOut(job, std::make_shared<const WallLine>(after)));
  }
  // One change of every sort, on both piers.
  void proposeAll() {
    propose({strapMoved("S1", 0.125), boltMoved("B1", 1.5, -0.5), boltMoved("B2", 0, 0.25), boltAdded(30),
             Change{marked(line().bolts, "B3"), std::nullopt}, strapMoved("S2", -0.75), boltMoved("B4", -2, 0),
             strapMoved("S4", -0.375)});
  }
  ElevationDrawing draw(bool fromInside = false, double scale = 0, double pourLine = 300) const {
    ElevationInput in;
    in.job = &job;
    in.wall = wall.get();
    in.window = window;
    in.view = fitElevation(wall->layout, window, fromInside, 30);
    if (scale > 0) {
      in.view.scale = scale;
      in.view.origin = {60, pourLine};
    }
    in.words = flagWords;
    in.proposal = &shown;
    return drawElevation(in);
  }
  static std::vector<TakenBox> tagsOf(const ElevationDrawing& drawn) {
    std::vector<TakenBox> tags;
    for (const TakenBox& taken : drawn.drawing.taken())
      if (taken.name.starts_with("proposal "))
        tags.push_back(taken);
    return tags;
  }
  // All that is written in a tag, from left to right.
  static std::string writtenIn(const ElevationDrawing& drawn, const Bounds& box) {
    std::string words;
    for (const Prim& prim : drawn.drawing.prims())
      if (prim.kind == Prim::Kind::Text &&
          box.contains(Point2{(prim.box.x0 + prim.box.x1) / 2, (prim.box.y0 + prim.box.y1) / 2}))
        words += (words.empty() ? "" : "|") + drawn.drawing.textOf(prim).text;
    return words;
  }
  std::string tagOf(const ElevationDrawing& drawn, Id piece) const {
    for (const TakenBox& tag : tagsOf(drawn))
      if (tag.name == "proposal " + std::to_string(piece.value))
        return writtenIn(drawn, tag.box);
    return "none";
  }
  // Which way the filled head of the arrow in a tag points on the page: + right, - left, 0 none.
  static double headIn(const ElevationDrawing& drawn, const Bounds& box) {
    for (const Prim& prim : drawn.drawing.prims())
      if (prim.kind == Prim::Kind::Fill && prim.count == 3 && box.contains(prim.box))
        return drawn.drawing.pointsOf(prim)[0].x > drawn.drawing.pointsOf(prim)[1].x ? 1 : -1;
    return 0;
  }

  Job job;
  std::shared_ptr<const CheckedWall> wall;
  ShownProposal shown;
};

TEST_F(ElevationProposal, TellsTheAmountOfEveryChange) {
  proposeAll();
  const ElevationDrawing drawn = draw();
  const auto said = [&](const auto& list, const char* mark) { return tagOf(drawn, marked(list, mark).id); };
  EXPECT_EQ(said(line().straps, "S1"), "S1|1/8\"");
  EXPECT_EQ(said(line().bolts, "B1"), "B1|1 1/2\", 1/2\" outward");
  EXPECT_EQ(said(line().bolts, "B2"), "B2|1/4\" inward");
  EXPECT_EQ(said(line().bolts, "B3"), "B3|taken out");
  EXPECT_EQ(said(line().straps, "S2"), "S2|3/4\"");
  EXPECT_EQ(tagsOf(drawn)[3].name, "proposal bolt at 2'-6\"");
  EXPECT_EQ(writtenIn(drawn, tagsOf(drawn)[3].box), "bolt at 2'-6\"");
  EXPECT_EQ(tagsOf(drawn).size(), shown.changes.size());
}

TEST_F(ElevationProposal, ArrowsPointTheWayItGoesOnThePageFromEitherSide) {
  propose({strapMoved("S1", 0.125), strapMoved("S2", -0.75)});
  for (const bool inside : {false, true}) {
    const ElevationDrawing drawn = draw(inside);
    const std::vector<TakenBox> tags = tagsOf(drawn);
    ASSERT_EQ(tags.size(), 2u);
    EXPECT_EQ(headIn(drawn, tags[0].box), inside ? -1 : 1);
    EXPECT_EQ(headIn(drawn, tags[1].box), inside ? 1 : -1);
  }
}

TEST_F(ElevationProposal, NothingWrittenLiesOverAnotherNorOverTheFrame) {
  proposeAll();
  for (const bool inside : {false, true})
    for (const double scale : {0.0, 6.0, 14.0}) {
      const ElevationDrawing drawn = draw(inside, scale);
      for (const TakenBox& tag : tagsOf(drawn)) {
        EXPECT_TRUE(window.contains(tag.box)) << tag.name;
        for (const TakenBox& other : drawn.drawing.taken())
          if (&other != &tag && other.name != tag.name) {
            EXPECT_FALSE(tag.box.overlaps(other.box)) << tag.name << " over " << other.name << ", scale " << scale;
          }
      }
    }
}

TEST_F(ElevationProposal, SaidBesideAPieceThatGoesOnPastTheWindow) {
  propose({strapMoved("S1", 0.125), strapMoved("S2", -0.75)});
  const double scale = 18, pourLine = 180; // the plates end 22 in up, far above the window
  const std::vector<TakenBox> tags = tagsOf(draw(false, scale, pourLine));
  ASSERT_EQ(tags.size(), 2u);
  for (std::size_t i = 0; i < 2; ++i) {
    const StrapBody& strap = wall->layout.straps[i];
    const Bounds plate{60 + strap.plate.s.from * scale, 0, 60 + strap.plate.s.to * scale, pourLine};
    EXPECT_FALSE(tags[i].box.overlaps(plate)) << i;
    EXPECT_LT(std::max(tags[i].box.x0 - plate.x1, plate.x0 - tags[i].box.x1), 40) << i;
  }
}

TEST_F(ElevationProposal, GhostsAreDashedInTheColourOfTheHandWhereThePieceGoes) {
  propose({strapMoved("S1", 3)});
  const ElevationDrawing drawn = draw(false, 14);
  const double left = 60 + (1.625 + 3 - 1.25) * 14, right = left + 2.5 * 14;
  double furthestLeft = 1e9, furthestRight = -1e9;
  for (const Prim& prim : drawn.drawing.prims())
    if (prim.kind == Prim::Kind::Segments && prim.ink == Ink::Hand)
      for (const Point2 point : drawn.drawing.pointsOf(prim)) {
        furthestLeft = std::min(furthestLeft, point.x);
        furthestRight = std::max(furthestRight, point.x);
      }
  EXPECT_NEAR(furthestLeft, left, 1e-6);
  EXPECT_NEAR(furthestRight, right, 1e-6);
}

TEST_F(ElevationProposal, TheOneLookedAtStandsOut) {
  proposeAll();
  const auto solid = [&] {
    std::size_t count = 0;
    const ElevationDrawing drawn = draw();
    for (const TakenBox& tag : tagsOf(drawn))
      for (const Prim& prim : drawn.drawing.prims())
        count += prim.kind == Prim::Kind::Text && prim.ink == Ink::HandOn && tag.box.contains(prim.box);
    return count;
  };
  EXPECT_EQ(solid(), 0u);
  shown.current = 0;
  EXPECT_EQ(solid(), 2u); // its mark and its amount
}

TEST_F(ElevationProposal, TagsAnswerThePointerForTheirPieces) {
  proposeAll();
  const ElevationDrawing drawn = draw();
  const Id strap = marked(line().straps, "S1").id;
  for (const TakenBox& tag : tagsOf(drawn))
    if (tag.name == "proposal " + std::to_string(strap.value)) {
      EXPECT_TRUE(std::any_of(drawn.drawing.hits().begin(), drawn.drawing.hits().end(), [&](const HitArea& hit) {
        return hit.piece.piece == strap && hit.part == HitArea::Part::Name && hit.box == tag.box;
      }));
    }
}

TEST_F(ElevationProposal, ShownOnTheScreenAndOnItsWallOnly) {
  proposeAll();
  shown.wall = Id{9999};
  EXPECT_TRUE(tagsOf(draw()).empty());
  shown.wall = line().id;
  ElevationInput in;
  in.job = &job;
  in.wall = wall.get();
  in.window = window;
  in.view = fitElevation(wall->layout, window, false, 30);
  in.medium = Medium::Paper;
  in.proposal = &shown;
  EXPECT_TRUE(tagsOf(drawElevation(in)).empty());
}

} // namespace
} // namespace sillwright
