#include "ui/canvas/changed_area.h"
#include "ui/canvas/hit_test.h"
#include "ui/canvas/plan_grid.h"

#include <algorithm>
#include <random>

#include <gtest/gtest.h>

namespace sillwright {
namespace {

TEST(HitTest, TheTopmostBodyAnswersAndAnEndGoesBeforeIt) {
  const std::vector<HitArea> areas{
      {{Id{1}, Id{10}}, HitArea::Part::ToEnd, {8, 0, 10, 10}},
      {{Id{1}, Id{10}}, HitArea::Part::Body, {0, 0, 10, 10}},
      {{Id{1}, Id{11}}, HitArea::Part::Body, {4, 4, 6, 6}},
  };
  EXPECT_EQ(topmost(areas, {5, 5}, 0)->piece.piece, Id{11});
  EXPECT_EQ(topmost(areas, {2, 5}, 0)->piece.piece, Id{10});
  EXPECT_EQ(topmost(areas, {9, 5}, 0)->part, HitArea::Part::ToEnd);
}

TEST(HitTest, ReachFindsTheNearestAndNoFarther) {
  const std::vector<HitArea> areas{{{Id{1}, Id{10}}, HitArea::Part::Body, {0, 0, 10, 10}},
                                   {{Id{1}, Id{11}}, HitArea::Part::Body, {16, 0, 20, 10}}};
  EXPECT_EQ(topmost(areas, {12, 5}, 5)->piece.piece, Id{10});
  EXPECT_EQ(topmost(areas, {15, 5}, 5)->piece.piece, Id{11});
  EXPECT_FALSE(topmost(areas, {30, 5}, 5).has_value());
}

bool covered(const std::vector<Bounds>& boxes, Point2 p) {
  return std::any_of(boxes.begin(), boxes.end(), [&](const Bounds& box) { return box.contains(p); });
}

TEST(ChangedArea, NothingForEqualDrawings) {
  Drawing drawing;
  drawing.fillRect(0, 0, 10, 10, Ink::Steel);
  drawing.text({20, 20}, "S1", Ink::Text, {});
  EXPECT_TRUE(changedArea(drawing, drawing).empty());
}

TEST(ChangedArea, CoversWhereAThingWasAndWhereItIsButNotWhatStays) {
  Drawing before, after;
  before.fillRect(100, 100, 110, 110, Ink::Wood);
  before.fillRect(0, 0, 10, 10, Ink::Steel);
  after.fillRect(100, 100, 110, 110, Ink::Wood);
  after.fillRect(40, 0, 50, 10, Ink::Steel);
  const std::vector<Bounds> changed = changedArea(before, after);
  EXPECT_TRUE(covered(changed, {5, 5}));
  EXPECT_TRUE(covered(changed, {45, 5}));
  EXPECT_FALSE(covered(changed, {105, 105}));
}

TEST(ChangedArea, SeesAnotherColourAndOtherWords) {
  Drawing red, blue;
  red.fillRect(0, 0, 10, 10, Ink::Fix);
  blue.fillRect(0, 0, 10, 10, Ink::Ask);
  EXPECT_FALSE(changedArea(red, blue).empty());
  Drawing one, other;
  one.text({5, 5}, "S1", Ink::Text, {});
  other.text({5, 5}, "S2", Ink::Text, {});
  EXPECT_FALSE(changedArea(one, other).empty());
}

TEST(ChangedArea, NeverMoreBoxesThanAskedAndStillAllCovered) {
  Drawing before, after;
  for (int i = 0; i < 50; ++i)
    after.fillRect(i * 20, i * 7 % 90, i * 20 + 5, i * 7 % 90 + 5, Ink::Steel);
  const std::vector<Bounds> changed = changedArea(before, after, 4);
  EXPECT_LE(changed.size(), 4u);
  for (int i = 0; i < 50; ++i)
    EXPECT_TRUE(covered(changed, {i * 20 + 2.5, i * 7 % 90 + 2.5})) << i;
}

bool touches(const Bounds& a, const Bounds& b) { return a.x0 <= b.x1 && b.x0 <= a.x1 && a.y0 <= b.y1 && b.y0 <= a.y1; }

// Against looking at every box, also after moves and removals.
TEST(PlanGrid, FindsExactlyTheBoxesInAWindow) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> place(-3000, 3000), size(0, 900);
  PlanGrid grid;
  std::vector<std::pair<Id, Bounds>> all;
  const auto box = [&] {
    const double x = place(random), y = place(random);
    return Bounds{x, y, x + size(random), y + size(random)};
  };
  for (std::uint32_t i = 1; i <= 300; ++i) {
    all.emplace_back(Id{i}, box());
    grid.set(all.back().first, all.back().second);
  }
  all.emplace_back(Id{1000}, Bounds{-1e6, -1e6, 1e6, 1e6}); // larger than any list of squares
  grid.set(all.back().first, all.back().second);
  for (int round = 0; round < 200; ++round) {
    auto& moved = all[random() % all.size()];
    moved.second = box();
    grid.set(moved.first, moved.second);
    const Bounds window = box();
    std::vector<Id> wanted;
    for (const auto& [id, where] : all)
      if (touches(where, window))
        wanted.push_back(id);
    std::sort(wanted.begin(), wanted.end());
    ASSERT_EQ(grid.inside(window), wanted);
  }
  grid.remove(all.front().first);
  EXPECT_EQ(grid.size(), all.size() - 1);
}

} // namespace
} // namespace sillwright
