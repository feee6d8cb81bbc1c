#include "core/drawing/tape.h"

#include <cmath>
#include <map>

#include <gtest/gtest.h>

#include "core/drawing/text_metrics.h"

namespace sillwright {
namespace {

TapeSpec tapeAt(double scale, Interval stations) {
  TapeSpec tape;
  tape.stations = stations;
  tape.scale = scale;
  tape.xOf = [scale](double s) { return s * scale; };
  tape.y = 100;
  return tape;
}

// Lengths of the marks by where they stand, in stations.
std::map<double, double> marks(const Drawing& d, double scale) {
  std::map<double, double> all;
  for (const Prim& p : d.prims())
    if (p.kind == Prim::Kind::Segments)
      for (std::size_t i = 0; i < p.count; i += 2)
        all[std::round(d.pointsOf(p)[i].x / scale * 64) / 64] = d.pointsOf(p)[i + 1].y - d.pointsOf(p)[i].y;
  return all;
}

std::map<std::string, Bounds> numbers(const Drawing& d) {
  std::map<std::string, Bounds> all;
  for (const Prim& p : d.prims())
    if (p.kind == Prim::Kind::Text) {
      const TextPrim& t = d.textOf(p);
      const double w = textWidth(t.text, t.style.size), x = d.pointsOf(p)[0].x, y = d.pointsOf(p)[0].y;
      all[t.text] = {x - w / 2, y - capHeight * t.style.size, x + w / 2, y};
    }
  return all;
}

std::vector<Bounds> footBlocks(const Drawing& d) {
  std::vector<Bounds> all;
  for (const Prim& p : d.prims())
    if (p.kind == Prim::Kind::Fill && p.ink == Ink::BladeFoot)
      all.push_back(p.box);
  return all;
}

TEST(Tape, ShowsADivisionOnceItsMarksAreFarEnoughApart) {
  EXPECT_EQ(tapeDivision(54.4), 1.0 / 16);
  EXPECT_EQ(tapeDivision(54.3), 1.0 / 8);
  EXPECT_EQ(tapeDivision(27.2), 1.0 / 8);
  EXPECT_EQ(tapeDivision(13.6), 1.0 / 4);
  EXPECT_EQ(tapeDivision(6.8), 1.0 / 2);
  EXPECT_EQ(tapeDivision(3.4), 1.0);
  EXPECT_EQ(tapeDivision(3.3), 3.0);
  EXPECT_EQ(tapeDivision(0.6), 6.0);
  EXPECT_EQ(tapeDivision(0.3), 12.0);
  EXPECT_EQ(tapeDivision(0.15), 24.0);
  for (double scale = 0.01; scale < 60; scale *= 1.07)
    EXPECT_GE(scale * tapeDivision(scale), 3.4 - 1e-9) << scale;
}

TEST(Tape, MarksEverySixteenthOnceAndNothingElse) {
  Drawing d;
  drawTape(d, tapeAt(60, {10, 14}));
  const auto all = marks(d, 60);
  ASSERT_EQ(all.size(), 4u * 16 + 1);
  EXPECT_NEAR(all.at(12), 17, 1e-9);
  EXPECT_NEAR(all.at(11), 0.46 * 17, 1e-9);
  EXPECT_NEAR(all.at(11.5), 0.36 * 17, 1e-9);
  EXPECT_NEAR(all.at(11.25), 0.28 * 17, 1e-9);
  EXPECT_NEAR(all.at(11.375), 0.20 * 17, 1e-9);
  EXPECT_NEAR(all.at(11.4375), 0.13 * 17, 1e-9);
}

TEST(Tape, BeginsWhereItsStretchBegins) {
  Drawing d;
  drawTape(d, tapeAt(4, {10.3, 14.7}));
  const auto all = marks(d, 4);
  ASSERT_EQ(all.size(), 4u);
  EXPECT_EQ(all.begin()->first, 11);
  EXPECT_EQ(all.rbegin()->first, 14);
}

TEST(Tape, NumbersFeetRightOfTheirMarks) {
  Drawing d;
  drawTape(d, tapeAt(4.75, {0, 96}));
  const auto all = numbers(d);
  EXPECT_EQ(all.size(), 8u); // 0 is the hook's
  for (int f = 1; f <= 7; ++f)
    EXPECT_GT(all.at(std::to_string(f) + "'").x0, f * 12 * 4.75);
}

TEST(Tape, LeavesOutFeetUntilBlocksStandApart) {
  for (const double scale : {0.2, 0.5, 1.0, 1.6, 2.5, 4.0}) {
    Drawing d;
    drawTape(d, tapeAt(scale, {0, 1200}));
    const auto blocks = footBlocks(d);
    ASSERT_GE(blocks.size(), 2u);
    for (std::size_t i = 1; i < blocks.size(); ++i)
      EXPECT_GE(blocks[i].x0, blocks[i - 1].x1 + 1);
  }
}

TEST(Tape, AFootChangesSidesWhereAPieceStandsInFront) {
  TapeSpec tape = tapeAt(4.75, {0, 48});
  const double mark = 24 * 4.75;
  tape.avoid = {{mark + 2, mark + 8}};
  Drawing d;
  drawTape(d, tape);
  EXPECT_LT(numbers(d).at("2'").x1, mark);
  EXPECT_GT(numbers(d).at("3'").x0, 36 * 4.75);
}

TEST(Tape, AFootAtTheEndOfTheBladeStandsLeftOfItsMark) {
  Drawing d;
  drawTape(d, tapeAt(4.75, {0, 48}));
  EXPECT_LT(numbers(d).at("4'").x1, 48 * 4.75);
}

TEST(Tape, NumbersInchesAsTheScaleAllows) {
  const auto inches = [](double scale) {
    Drawing d;
    drawTape(d, tapeAt(scale, {12, 23.9}));
    std::string list;
    for (int i = 1; i < 12; ++i)
      if (numbers(d).contains(std::to_string(i)))
        list += std::to_string(i) + ' ';
    return list;
  };
  EXPECT_EQ(inches(6.3), "");
  EXPECT_EQ(inches(6.4), "4 8 ");
  EXPECT_EQ(inches(9.5), "4 6 8 10 "); // 2 is under the block of the foot
  EXPECT_EQ(inches(29), "1 2 3 4 5 6 7 8 9 10 11 ");
}

TEST(Tape, NoNumberUnderABlockOrAPieceOrOffTheBlade) {
  for (double scale = 6.4; scale < 60; scale *= 1.3) {
    TapeSpec tape = tapeAt(scale, {3, 40});
    tape.avoid = {{17 * scale - 2, 17 * scale + 2}};
    Drawing d;
    drawTape(d, tape);
    const auto blocks = footBlocks(d);
    for (const auto& [text, box] : numbers(d)) {
      EXPECT_GE(box.x0, 3 * scale);
      EXPECT_LE(box.x1, 40 * scale);
      EXPECT_GE(box.y0, tape.y);
      EXPECT_LE(box.y1, tape.y + tape.blade);
      if (text.ends_with('\''))
        continue;
      for (const Bounds& block : blocks)
        EXPECT_FALSE(box.overlaps(block)) << text << " at " << scale;
      EXPECT_FALSE(box.overlaps({tape.avoid[0].from, 0, tape.avoid[0].to, 1000})) << text << " at " << scale;
    }
  }
}

TEST(Tape, SeenFromInsideRunsTheOtherWay) {
  TapeSpec tape = tapeAt(10, {0, 36});
  tape.xOf = [](double s) { return 360 - 10 * s; };
  Drawing d;
  drawTape(d, tape);
  EXPECT_EQ(d.prims()[0].box, (Bounds{0, 100, 360, 117}));
  // Past the mark in the direction the numbers grow.
  EXPECT_LT(numbers(d).at("1'").x1, 360 - 120);
  EXPECT_LT(numbers(d).at("2'").x1, 360 - 240);
}

TEST(Tape, DrawsNothingOfAnEmptyStretch) {
  Drawing d;
  drawTape(d, tapeAt(10, {5, 4}));
  drawTape(d, tapeAt(0, {0, 4}));
  EXPECT_TRUE(d.empty());
}

TEST(CrowsFoot, TheInkOfItsPointStandsOnTheMark) {
  const struct {
    Pointing pointing;
    double Bounds::*side;
  } cases[] = {{Pointing::Down, &Bounds::y1},
               {Pointing::Up, &Bounds::y0},
               {Pointing::Left, &Bounds::x0},
               {Pointing::Right, &Bounds::x1}};
  for (const auto& c : cases) {
    Drawing d;
    drawCrowsFoot(d, 0, 0, c.pointing, Ink::Dim, 6, 1.2);
    EXPECT_NEAR(d.bounds().*c.side, 0, 1e-9);
    const double tip = 0.6 * std::hypot(1, 0.46) / 0.46; // of the mitre past the middle line
    EXPECT_NEAR(std::max(d.bounds().x1 - d.bounds().x0, d.bounds().y1 - d.bounds().y0), 6 + tip + 0.6, 1e-9);
  }
}

TEST(Hook, GripsTheEndOfTheConcrete) {
  Drawing left, right;
  drawHook(left, 50, 100, 17, Ink::BladeInk, Ink::Blade);
  EXPECT_NEAR(left.bounds().x0, 50 - 4.4, 1e-9);
  EXPECT_NEAR(left.bounds().x1, 50 + 13 * 1.1, 1e-9);
  EXPECT_NEAR(left.bounds().y1 - left.bounds().y0, 17 + 9 * 1.1, 1e-9);
  drawHook(right, 50, 100, 17, Ink::BladeInk, Ink::Blade, false);
  EXPECT_NEAR(right.bounds().x0, 50 - 13 * 1.1, 1e-9);
  EXPECT_NEAR(right.bounds().x1, 50 + 4.4, 1e-9);
}

} // namespace
} // namespace sillwright
