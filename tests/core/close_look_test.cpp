// The close look while something is dragged: where it opens, what it may never cover, what it shows.
#include "core/drawing/close_look.h"

#include <algorithm>
#include <optional>
#include <random>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/drawing/elevation.h"
#include "core/drawing/flag_words.h"
#include "core/drawing/tape.h"
#include "core/drawing/writers.h"
#include "core/gesture/workbench.h"
#include "golden.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

// A canvas without a window: drags a piece and draws every frame after the one before.
struct Hand {
  Workbench bench;
  Bounds window{0, 0, 923, 508};
  bool fromInside = false;
  double upTo = 30;
  std::optional<double> scale;
  ElevationDrawing shown;
  ElevationView view;

  explicit Hand(Job job) : bench(std::move(job)) {}

  PieceRef named(const std::string& mark) const {
    const WallLine& wall = *bench.job().walls.find(bench.session().wall());
    for (const Id id : piecesOf(wall))
      if (markOf(bench.job(), {wall.id, id}) == mark)
        return {wall.id, id};
    return {};
  }
  void take(PieceRef piece) {
    PointerAt pointer;
    pointer.at = {*stationOf(*bench.job().walls.find(piece.wall), piece.piece), 0, 6};
    HitArea hit;
    hit.piece = piece;
    pointer.hit = hit;
    bench.press(pointer);
  }
  void to(double station) {
    PointerAt pointer;
    pointer.at = {station, 0, 6};
    bench.drag(pointer);
    draw();
  }
  void draw() {
    const auto wall = bench.wall();
    ElevationInput input;
    input.job = &bench.job();
    input.wall = wall.get();
    input.window = window;
    input.view = fitElevation(wall->layout, window, fromInside, upTo);
    if (scale) {
      input.view.scale = *scale;
      input.view.origin.x = (window.x0 + window.x1) / 2 - (fromInside ? -1 : 1) * bench.inHand()->station * *scale;
    }
    view = input.view;
    input.selection = bench.session().selection();
    input.inHand = bench.inHand() ? &*bench.inHand() : nullptr;
    input.words = flagWords;
    input.lastLabels = std::move(shown.labels);
    input.lastLook = shown.look;
    shown = drawElevation(input);
  }
  // What the close look itself drew: it is the last, from its ground on.
  std::vector<Prim> ofTheLook() const {
    const auto all = shown.drawing.prims();
    const auto ground = std::find_if(all.rbegin(), all.rend(), [&](const Prim& prim) {
      return prim.kind == Prim::Kind::Fill && prim.ink == Ink::Paper && prim.box == shown.look->box;
    });
    return std::vector<Prim>(ground.base(), all.end());
  }
  std::string textOfTheLook() const {
    std::string text;
    for (const Prim& prim : ofTheLook())
      if (prim.kind == Prim::Kind::Text)
        text += shown.drawing.textOf(prim).text + "\n";
    return text;
  }
};

// Whether it may stand there in this frame.
bool coversSomething(const Hand& hand, const Bounds& look) {
  const PieceRef held = hand.bench.inHand()->piece;
  for (const PlacedLabel& label : hand.shown.labels)
    if (label.request.flag.overlaps(look) || (label.number == 0 && label.box.overlaps(look)))
      return true;
  for (const HitArea& hit : hand.shown.drawing.hits())
    if (hit.piece == held && hit.part != HitArea::Part::Name && hit.box.overlaps(look))
      return true;
  return false;
}

TEST(CloseLook, ShowsSixteenthsAndWhatCountsForAStrapInHand) {
  Hand hand(support::boatShedFrontSteelMoved());
  hand.window = {0, 0, 1392, 835};
  hand.upTo = 96;
  hand.take(hand.named("S3"));
  hand.to(243.8);
  ASSERT_TRUE(hand.shown.look);
  const std::string text = hand.textOfTheLook();
  for (const char* words : {"S3 at 20'-3 13/16\"", "slide room", "nails off C3", "bar V16", "V16 found", "20'-5 3/8\"",
                            "edge to the step", "clear of bar V16", "right of column centre", "was"})
    EXPECT_NE(text.find(words), std::string::npos) << words << "\n" << text;
  EXPECT_EQ(tapeDivision(closeLookScale), 1.0 / 16);
}

TEST(CloseLook, IsNotThereWhereTheTapeShowsSixteenthsNorWithEmptyHands) {
  Hand hand(support::boatShedFront());
  hand.draw();
  EXPECT_FALSE(hand.shown.look);
  hand.take(hand.named("S3"));
  hand.to(243.4);
  EXPECT_TRUE(hand.shown.look);
  hand.scale = 54.5;
  hand.to(243.5);
  EXPECT_FALSE(hand.shown.look);
  hand.scale = 20;
  hand.to(243.4);
  EXPECT_TRUE(hand.shown.look);
  hand.bench.cancel();
  hand.scale.reset();
  hand.draw();
  EXPECT_FALSE(hand.shown.look);
}

TEST(CloseLook, StaysWhereItIsInASlowDragAsLongAsItMay) {
  Hand hand(support::boatShedFront());
  hand.take(hand.named("S3"));
  hand.to(243.4);
  ASSERT_TRUE(hand.shown.look);
  int moves = 0;
  for (double s = 243.4; s < 250; s += 1.0 / 16) {
    const Bounds before = hand.shown.look->box;
    hand.to(s);
    ASSERT_TRUE(hand.shown.look) << s;
    if (!(hand.shown.look->box == before)) {
      ++moves;
      EXPECT_TRUE(coversSomething(hand, before.grown(12))) << s;
    }
  }
  EXPECT_LE(moves, 3);
}

struct LookCase {
  const char* name;
  Job (*job)();
};
void PrintTo(const LookCase& tested, std::ostream* out) {
  *out << tested.name;
}

class CloseLookOn : public ::testing::TestWithParam<LookCase> {};

TEST_P(CloseLookOn, CoversNoLabelNoFlagAndNotThePieceAndDrawsNothingOutsideItself) {
  std::mt19937 random(11);
  int looks = 0;
  for (int drag = 0; drag < 24; ++drag) {
    Hand hand(GetParam().job());
    const auto& walls = hand.bench.job().walls;
    hand.bench.session().show(walls[random() % walls.size()].id);
    const WallLine& wall = *hand.bench.job().walls.find(hand.bench.session().wall());
    const std::vector<Id> pieces = piecesOf(wall);
    if (pieces.empty())
      continue;
    hand.fromInside = random() % 2 == 0;
    hand.upTo = random() % 2 == 0 ? 30 : 96;
    if (random() % 3 == 0)
      hand.window = {0, 0, 620, 380};
    if (random() % 3 == 0)
      hand.scale = 3 + static_cast<double>(random() % 30);
    const PieceRef held{wall.id, pieces[random() % pieces.size()]};
    hand.take(held);
    double station = *stationOf(wall, held.piece);
    for (int frame = 0; frame < 5; ++frame) {
      station += static_cast<double>(random() % 64) / 16 - 2;
      hand.to(station);
      if (!hand.bench.inHand() || !hand.shown.look)
        continue;
      ++looks;
      const Bounds look = hand.shown.look->box;
      EXPECT_TRUE(hand.window.contains(look));
      EXPECT_GT(hand.ofTheLook().size(), 10u);
      EXPECT_FALSE(coversSomething(hand, look)) << markOf(hand.bench.job(), held) << " at " << station;
      for (const Prim& prim : hand.ofTheLook())
        EXPECT_TRUE(look.grown(1.5).contains(prim.box))
            << markOf(hand.bench.job(), held) << " kind " << static_cast<int>(prim.kind);
    }
  }
  EXPECT_GT(looks, 20);
}

// Letters without their halo.
Bounds lettersOf(const Drawing& drawing, const Prim& prim) {
  const TextStyle& style = drawing.textOf(prim).style;
  return prim.box.grown(-0.16 * style.size - (style.halo == Ink::None ? 0 : style.haloWidth / 2));
}

TEST_P(CloseLookOn, WritesNothingOverSomethingWritten) {
  std::mt19937 random(12);
  for (int drag = 0; drag < 16; ++drag) {
    Hand hand(GetParam().job());
    const WallLine& wall = *hand.bench.job().walls.find(hand.bench.session().wall());
    const std::vector<Id> pieces = piecesOf(wall);
    const PieceRef held{wall.id, pieces[random() % pieces.size()]};
    hand.fromInside = random() % 2 == 0;
    hand.take(held);
    hand.to(*stationOf(wall, held.piece) + static_cast<double>(random() % 64) / 16 - 2);
    if (!hand.shown.look)
      continue;
    std::vector<Prim> texts;
    for (const Prim& prim : hand.ofTheLook())
      if (prim.kind == Prim::Kind::Text)
        texts.push_back(prim);
    for (std::size_t i = 0; i < texts.size(); ++i)
      for (std::size_t j = 0; j < i; ++j)
        EXPECT_FALSE(lettersOf(hand.shown.drawing, texts[i]).overlaps(lettersOf(hand.shown.drawing, texts[j]), 0.5))
            << hand.shown.drawing.textOf(texts[i]).text << " over " << hand.shown.drawing.textOf(texts[j]).text;
  }
}

INSTANTIATE_TEST_SUITE_P(Samples, CloseLookOn,
                         ::testing::Values(LookCase{"boatShedFront", support::boatShedFront},
                                           LookCase{"steelMoved", support::boatShedFrontSteelMoved},
                                           LookCase{"ridgeHouse", support::ridgeHouse},
                                           LookCase{"practice", support::punchListPractice}),
                         [](const auto& tested) { return tested.param.name; });

TEST(CloseLook, Golden) {
  Hand hand(support::boatShedFrontSteelMoved());
  hand.take(hand.named("S3"));
  hand.to(243.4);
  ASSERT_TRUE(hand.shown.look);
  const std::string all = toText(hand.shown.drawing); // one line a primitive
  auto from = all.size();
  for (auto left = hand.ofTheLook().size() + 1; left > 0; --left)
    from = all.rfind('\n', from - 1);
  const std::string text = all.substr(from + 1);
  test::expectGolden("close_look.txt", text);
}

} // namespace
} // namespace sillwright
