#include "core/drawing/flags.h"

#include <cmath>
#include <set>

#include <gtest/gtest.h>

#include "core/drawing/text_metrics.h"
#include "core/drawing/writers.h"

namespace sillwright {
namespace {

constexpr Level levels[] = {Level::Fix, Level::Ask, Level::Watch};

// The hatch is the last list of segments, or the one before the dashed edge.
std::vector<Point2> patternOf(const Drawing& d, Level level) {
  const double width = level == Level::Fix ? 0.95 : level == Level::Ask ? 0.85 : 0.9;
  std::vector<Point2> points;
  for (const Prim& p : d.prims())
    if (p.kind == Prim::Kind::Segments && std::abs(static_cast<double>(p.width) - width) < 1e-6)
      points.assign(d.pointsOf(p).begin(), d.pointsOf(p).end());
  return points;
}

std::vector<Point2> pattern(Level level, const Bounds& region, double k = 1) {
  Drawing d;
  drawFlag(d, level, region, k);
  return patternOf(d, level);
}

TEST(FlagArea, StaysInsideTheRegion) {
  const Bounds region{10, 20, 72.3, 59.1};
  for (const Level level : levels) {
    const auto points = pattern(level, region);
    ASSERT_GT(points.size(), 20u);
    for (const Point2 p : points)
      EXPECT_TRUE(region.grown(1e-6).contains(p)) << p.x << ", " << p.y;
  }
}

TEST(FlagArea, IsTheSameWhereverTheRegionIs) {
  for (const Level level : levels)
    for (const Bounds& region : {Bounds{0, 0, 62, 40}, Bounds{0, 0, 4.5, 32}, Bounds{0, 0, 20, 2}}) {
      const auto here = pattern(level, region), there = pattern(level, region.moved(133.7, -41.9));
      ASSERT_EQ(here.size(), there.size());
      for (std::size_t i = 0; i < here.size(); ++i) {
        EXPECT_NEAR(there[i].x, here[i].x + 133.7, 1e-9);
        EXPECT_NEAR(there[i].y, here[i].y - 41.9, 1e-9);
      }
    }
}

TEST(FlagArea, FixLinesCrossAtTheirAngleAndSpacing) {
  const auto points = pattern(Level::Fix, {0, 0, 62, 40});
  std::set<long> offsets;
  for (std::size_t i = 0; i + 1 < points.size(); i += 2) {
    const double dx = points[i + 1].x - points[i].x, dy = points[i + 1].y - points[i].y;
    const double length = std::hypot(dx, dy);
    EXPECT_NEAR(std::abs(dy / dx), std::tan(52 * std::acos(-1.0) / 180), 1e-6);
    // Distance of the line from the middle of the region is a whole number of spacings.
    const double offset = ((points[i].x - 31) * dy - (points[i].y - 20) * dx) / length / 4.8;
    EXPECT_NEAR(offset, std::round(offset), 1e-6);
    offsets.insert(std::lround(offset));
  }
  EXPECT_GE(offsets.size(), 10u);
}

TEST(FlagArea, LiesAlongTheLongSide) {
  for (const Level level : levels) {
    const auto lying = pattern(level, {0, 0, 62, 40}), standing = pattern(level, {0, 0, 40, 62});
    ASSERT_EQ(lying.size(), standing.size());
    if (level == Level::Fix)
      continue; // its two families change places when turned
    for (std::size_t i = 0; i < lying.size(); ++i) {
      EXPECT_NEAR(lying[i].x, standing[i].y, 1e-9);
      EXPECT_NEAR(lying[i].y, standing[i].x, 1e-9);
    }
  }
}

TEST(FlagArea, LevelsDifferByStroke) {
  std::set<std::vector<long>> seen; // rounded points, so that colour cannot tell them apart
  for (const Level level : levels)
    for (const Bounds& region : {Bounds{0, 0, 62, 40}, Bounds{0, 0, 1.125, 20}}) {
      std::vector<long> rounded;
      for (const Point2 p : pattern(level, region)) {
        rounded.push_back(std::lround(p.x * 100));
        rounded.push_back(std::lround(p.y * 100));
      }
      seen.insert(rounded);
    }
  EXPECT_EQ(seen.size(), 6u);
}

TEST(FlagStrip, BeginsBelowNinePoints) {
  Drawing area, strip;
  EXPECT_EQ(drawFlag(area, Level::Fix, {0, 0, 9, 32}), (Bounds{0, 0, 9, 32}));
  const Bounds box = drawFlag(strip, Level::Fix, {0, 0, 8.9, 32});
  EXPECT_NEAR(box.x0, -1.6, 1e-9);
  EXPECT_NEAR(box.x1, 10.5, 1e-9);
  EXPECT_NEAR(box.y0, -4, 1e-9);
  EXPECT_NEAR(box.y1, 36, 1e-9);
}

// Three eighths of an inch at 1/2" = 1'-0" is 1.125 pt: still a row of signs 6 pt wide and 10 pt long at least.
TEST(FlagStrip, HasALeastSize) {
  for (const Level level : levels) {
    Bounds ink;
    for (const Point2 p : pattern(level, {100, 100, 101.125, 103}))
      ink = hull(ink, Bounds{p.x, p.y, p.x, p.y}.grown(1e-9));
    EXPECT_NEAR(ink.x1 - ink.x0, 6.0, 1e-6);
    EXPECT_NEAR((ink.x0 + ink.x1) / 2, 100.5625, 1e-6);
    EXPECT_LE(ink.y1 - ink.y0, 10.0 + 1e-6);
    EXPECT_NEAR((ink.y0 + ink.y1) / 2, 101.5, 1e-6);
  }
}

TEST(FlagStrip, FitsAWholeNumberOfSigns) {
  for (double length = 2.5; length < 80; length += 0.37) {
    const double laid = std::max(length, 10.0);
    const auto crosses = pattern(Level::Fix, {0, 0, 2, length});
    const auto zigzag = pattern(Level::Ask, {0, 0, 2, length});
    const auto ticks = pattern(Level::Watch, {0, 0, 2, length});
    EXPECT_EQ(crosses.size() / 2, 2 * static_cast<std::size_t>(std::lround(laid / 6.0))) << length;
    EXPECT_EQ(zigzag.size() / 2, static_cast<std::size_t>(std::lround(laid / 3.6))) << length;
    EXPECT_EQ(ticks.size() / 2, static_cast<std::size_t>(std::lround(laid / 3.9))) << length;
    // The zigzag runs from end to end; crosses and ticks stand in the middle of equal shares.
    const double middle = length / 2;
    EXPECT_NEAR(zigzag.front().y, middle - laid / 2, 1e-9);
    EXPECT_NEAR(zigzag.back().y, middle + laid / 2, 1e-9);
    const double share = laid / static_cast<double>(ticks.size() / 2);
    EXPECT_NEAR((ticks[0].y + ticks[1].y) / 2, middle - laid / 2 + share / 2, 1e-9);
  }
}

TEST(FlagStrip, ShowsTheExactEdgesAsWitnessLines) {
  Drawing d;
  drawFlag(d, Level::Ask, {10, 10, 11.125, 40});
  std::vector<Point2> witnesses;
  for (const Prim& p : d.prims())
    if (p.kind == Prim::Kind::Segments && p.width == 0.5f)
      witnesses.assign(d.pointsOf(p).begin(), d.pointsOf(p).end());
  ASSERT_EQ(witnesses.size(), 8u);
  std::set<double> edges;
  for (const Point2 p : witnesses)
    edges.insert(p.x);
  EXPECT_EQ(edges, (std::set<double>{10, 11.125}));
}

TEST(Flag, ClearsTheGroundFirst) {
  for (const Level level : levels)
    for (const Bounds& region : {Bounds{0, 0, 62, 40}, Bounds{0, 0, 2, 40}}) {
      Drawing d;
      drawFlag(d, level, region);
      ASSERT_FALSE(d.empty());
      const Prim& first = d.prims()[0];
      EXPECT_EQ(first.kind, Prim::Kind::Fill);
      EXPECT_EQ(first.ink, Ink::Paper);
      EXPECT_TRUE(first.box.contains(region.grown(0.8 - 1e-9)));
      for (std::size_t i = 1; i < d.prims().size(); ++i)
        EXPECT_EQ(d.prims()[i].ink, inkOf(level));
    }
}

TEST(Flag, TakesARegionEitherWayRound) {
  for (const Level level : levels) {
    Drawing a, b;
    drawFlag(a, level, {0, 0, 30, 20});
    drawFlag(b, level, {30, 20, 0, 0});
    EXPECT_EQ(toText(a), toText(b));
  }
}

TEST(Flag, ScalesWithK) {
  for (const Level level : levels) {
    const auto one = pattern(level, {0, 0, 31, 20});
    Drawing d;
    drawFlag(d, level, {0, 0, 62, 40}, 2);
    std::vector<Point2> two;
    for (const Prim& p : d.prims())
      if (p.kind == Prim::Kind::Segments && p.width > 1.5f)
        two.assign(d.pointsOf(p).begin(), d.pointsOf(p).end());
    ASSERT_EQ(one.size(), two.size());
    for (std::size_t i = 0; i < one.size(); ++i)
      EXPECT_NEAR(two[i].x, 2 * one[i].x, 1e-9);
  }
}

LabelText sample(Level level) {
  return {level,
          level == Level::Fix   ? "FIX"
          : level == Level::Ask ? "ASK"
                                : "WATCH",
          "S1 · EDGE 3/8\" < 1/2\"", "move it right 1/8\""};
}

TEST(FlagLabel, EverythingStandsInsideItsBox) {
  for (const Level level : levels)
    for (const LabelForm form : {LabelForm::OneLine, LabelForm::TwoLines, LabelForm::Tall})
      for (const double k : {1.0, 0.86, 1.9}) {
        Drawing d;
        const LabelText text = sample(level);
        const Bounds box = drawLabel(d, text, form, 100, 50, k);
        const Size size = labelSize(text, form, k);
        EXPECT_NEAR(box.x1 - box.x0, size.width, 1e-9);
        EXPECT_NEAR(box.y1 - box.y0, size.height, 1e-9);
        for (const Prim& p : d.prims()) {
          if (p.kind != Prim::Kind::Text) {
            EXPECT_TRUE(box.grown(1.5 * k).contains(p.box));
            continue;
          }
          const TextPrim& t = d.textOf(p);
          const Point2 at = d.pointsOf(p)[0];
          EXPECT_GE(at.x, box.x0 + k) << t.text;
          EXPECT_LE(at.x + textWidth(t.text, t.style.size), box.x1 - k) << t.text;
          EXPECT_GE(at.y - letterRise * t.style.size, box.y0) << t.text;
          EXPECT_LE(at.y, box.y1 - k) << t.text;
        }
      }
}

TEST(FlagLabel, SaysWordMeasureAndHint) {
  const auto words = [](LabelForm form) {
    Drawing d;
    drawLabel(d, sample(Level::Ask), form, 0, 0);
    std::vector<std::string> all;
    for (const Prim& p : d.prims())
      if (p.kind == Prim::Kind::Text)
        all.push_back(d.textOf(p).text);
    return all;
  };
  EXPECT_EQ(words(LabelForm::OneLine), (std::vector<std::string>{"ASK", "S1 · EDGE 3/8\" < 1/2\""}));
  EXPECT_EQ(words(LabelForm::Tall), (std::vector<std::string>{"ASK", "S1 · EDGE 3/8\" < 1/2\""}));
  EXPECT_EQ(words(LabelForm::TwoLines),
            (std::vector<std::string>{"ASK", "S1 · EDGE 3/8\" < 1/2\"", "move it right 1/8\""}));
}

TEST(FlagLabel, WithoutAHintTwoLinesAreOne) {
  LabelText text = sample(Level::Watch);
  text.hint.clear();
  EXPECT_EQ(labelSize(text, LabelForm::TwoLines).height, labelSize(text, LabelForm::OneLine).height);
}

TEST(FlagLabel, TheTallFormIsForNarrowPlaces) {
  for (const Level level : levels) {
    const Size tall = labelSize(sample(level), LabelForm::Tall), flat = labelSize(sample(level), LabelForm::OneLine);
    EXPECT_LT(tall.width, flat.width);
    EXPECT_GT(tall.height, flat.height);
  }
}

// Only the word of the worst level is reversed out of a solid block; numbers never are: they would fill in on a copy.
TEST(FlagLabel, NumbersAreNeverReversed) {
  for (const Level level : levels)
    for (const LabelForm form : {LabelForm::OneLine, LabelForm::TwoLines, LabelForm::Tall}) {
      Drawing d;
      drawLabel(d, sample(level), form, 0, 0);
      for (const Prim& p : d.prims())
        if (p.kind == Prim::Kind::Text) {
          EXPECT_EQ(p.ink, d.textOf(p).text == "FIX" ? Ink::FixOn : Ink::Text);
        }
    }
}

} // namespace
} // namespace sillwright
