#include "core/drawing/label_placement.h"

#include <algorithm>
#include <random>
#include <set>

#include <gtest/gtest.h>

namespace sillwright {
namespace {

PlacementInput randomInput(std::mt19937& random) {
  std::uniform_real_distribution<double> x(20, 980), y(20, 580), size(2, 60);
  std::uniform_int_distribution<int> count(1, 10), level(0, 2);
  PlacementInput in;
  in.window = {0, 0, 1000, 600};
  const int requests = count(random);
  for (int i = 0; i < requests; ++i) {
    LabelRequest request;
    request.text = {static_cast<Level>(level(random)), "FIX", "S1 · EDGE 3/8\" < 1/2\"", i % 3 ? "move it right 1/8\"" : ""};
    const double left = x(random), top = y(random);
    request.flag = {left, top, left + size(random) / 3, top + size(random)};
    request.key = "finding " + std::to_string(i);
    in.requests.push_back(request);
  }
  for (int i = 0; i < 3 * requests; ++i) {
    const double left = x(random), top = y(random);
    in.taken.push_back({left, top, left + size(random), top + size(random) / 3});
    in.outlines.push_back({left + 30, top, left + 40, top + 90});
    in.grounds.push_back({{left - 50, top - 50, left, top}, i % 4 ? 20.0 : 0.0});
  }
  return in;
}

TEST(LabelPlacement, NeverOverlapsNorLeavesTheWindowAndDropsNothing) {
  std::mt19937 random(7);
  int found = 0;
  for (int round = 0; round < 300; ++round) {
    const PlacementInput in = randomInput(random);
    const auto labels = placeLabels(in);
    ASSERT_EQ(labels.size(), in.requests.size());
    std::set<std::string> keys;
    for (std::size_t i = 0; i < labels.size(); ++i) {
      keys.insert(labels[i].request.key);
      if (labels[i].number > 0)
        continue;
      ++found;
      EXPECT_TRUE(in.window.contains(labels[i].box));
      EXPECT_GE(labels[i].leader.size(), 2u);
      EXPECT_LE(labels[i].leader.size(), 3u);
      for (const Bounds& taken : in.taken)
        EXPECT_FALSE(taken.overlaps(labels[i].box));
      for (const LabelRequest& request : in.requests)
        EXPECT_FALSE(request.flag.overlaps(labels[i].box));
      for (std::size_t j = 0; j < i; ++j)
        if (labels[j].number == 0) {
          EXPECT_FALSE(labels[j].box.overlaps(labels[i].box));
        }
    }
    EXPECT_EQ(keys.size(), in.requests.size());
  }
  EXPECT_GT(found, 1000); // most of them find a place
}

TEST(LabelPlacement, GivesEqualPlacesForEqualInputInAnyOrder) {
  std::mt19937 random(8);
  for (int round = 0; round < 40; ++round) {
    PlacementInput in = randomInput(random);
    const auto first = placeLabels(in);
    std::reverse(in.requests.begin(), in.requests.end());
    const auto second = placeLabels(in);
    ASSERT_EQ(first.size(), second.size());
    for (std::size_t i = 0; i < first.size(); ++i) {
      EXPECT_EQ(first[i].request.key, second[i].request.key);
      EXPECT_EQ(first[i].box, second[i].box);
      EXPECT_EQ(first[i].leader, second[i].leader);
      EXPECT_EQ(first[i].number, second[i].number);
    }
  }
}

TEST(LabelPlacement, KeepsItsPlaceWhileTheFlagMovesALittle) {
  PlacementInput in;
  in.window = {0, 0, 1000, 600};
  LabelRequest request;
  request.text = {Level::Fix, "FIX", "S1 · EDGE 3/8\" < 1/2\"", ""};
  request.key = "edge";
  request.flag = {500, 300, 506, 340};
  in.requests = {request};
  const auto before = placeLabels(in);
  for (int i = 1; i <= 10; ++i) {
    in.last = placeLabels(in);
    in.requests[0].flag = request.flag.moved(i * 0.5, 0);
    EXPECT_EQ(placeLabels(in)[0].box, before[0].box) << i;
  }
}

TEST(LabelPlacement, NumbersWhatFindsNoPlace) {
  PlacementInput in;
  in.window = {0, 0, 300, 200};
  in.taken = {{0, 0, 300, 90}, {0, 110, 300, 200}};
  LabelRequest request;
  request.text = {Level::Ask, "ASK", "S2 · 8 NAILS ON THE SEAM", ""};
  request.flag = {140, 95, 150, 105};
  in.requests = {request};
  const auto labels = placeLabels(in);
  ASSERT_EQ(labels.size(), 1u);
  EXPECT_EQ(labels[0].number, 1);
}

} // namespace
} // namespace sillwright
