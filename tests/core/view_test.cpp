// Stations and page points with stretches folded away.
#include "core/drawing/view.h"

#include <random>

#include <gtest/gtest.h>

namespace sillwright {
namespace {

ElevationView randomView(std::mt19937& random) {
  std::uniform_real_distribution<double> step(1, 120);
  ElevationView view;
  view.scale = std::uniform_real_distribution<double>(0.2, 60)(random);
  view.origin = {step(random), step(random)};
  view.fromInside = random() % 2 == 0;
  double at = 0;
  for (unsigned i = random() % 4; i > 0; --i) {
    const double from = at + step(random), to = from + step(random);
    view.folds.push_back({from, to});
    at = to;
  }
  return view;
}

TEST(ElevationView, StationsAndPagePointsAreTheInverseOfEachOther) {
  std::mt19937 random(5);
  std::uniform_real_distribution<double> station(-40, 700), page(-2000, 8000);
  for (int i = 0; i < 2000; ++i) {
    const ElevationView view = randomView(random);
    const double s = station(random), x = page(random);
    EXPECT_NEAR(view.s(view.x(s)), s, 1e-8);
    EXPECT_NEAR(view.x(view.s(x)), x, 1e-8);
  }
}

TEST(ElevationView, StationsRunOneWayAcrossFolds) {
  std::mt19937 random(6);
  std::uniform_real_distribution<double> station(-40, 700);
  for (int i = 0; i < 2000; ++i) {
    const ElevationView view = randomView(random);
    double a = station(random), b = station(random);
    if (a > b)
      std::swap(a, b);
    if (b - a > 1e-6) {
      EXPECT_GT(view.fromInside ? view.x(a) - view.x(b) : view.x(b) - view.x(a), 0);
    }
  }
}

TEST(ElevationView, AFoldIsOneGapWide) {
  ElevationView view;
  view.scale = 6;
  view.folds = {{60, 228}};
  EXPECT_EQ(view.x(60), 360);
  EXPECT_EQ(view.x(228), 360 + foldGap);
  EXPECT_EQ(view.x(288), 360 + foldGap + 360);
  EXPECT_TRUE(view.hides({61, 227}));
  EXPECT_FALSE(view.hides({60, 227}));
  EXPECT_EQ(view.shown(100), 60);
  EXPECT_EQ(view.shown(200), 228);
  EXPECT_EQ(view.shown(30), 30);
}

TEST(ElevationView, TheShownPartsAndTheFoldsMakeUpTheStretch) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> station(0, 700);
  for (int i = 0; i < 1000; ++i) {
    const ElevationView view = randomView(random);
    Interval stretch{station(random), station(random)};
    if (stretch.from > stretch.to)
      std::swap(stretch.from, stretch.to);
    double shown = 0, hidden = 0;
    for (const Interval part : view.shownParts(stretch)) {
      EXPECT_GE(part.length(), 0);
      shown += part.length();
      for (const Interval fold : view.folds)
        EXPECT_GE(gap(part, fold), -1e-9);
    }
    for (const Interval fold : view.folds)
      hidden += std::max(0.0, overlap(fold, stretch).length());
    EXPECT_NEAR(shown + hidden, stretch.length(), 1e-8);
  }
}

} // namespace
} // namespace sillwright
