// Shifts worked out by hand.
#include <cmath>
#include <optional>
#include <vector>

#include <gtest/gtest.h>

#include "core/geometry/clearance.h"
#include "core/geometry/passing.h"

namespace sillwright {
namespace {

void expectBlocked(const std::vector<BlockedShifts>& found, const std::vector<BlockedShifts>& expected) {
  ASSERT_EQ(found.size(), expected.size());
  for (std::size_t i = 0; i < found.size(); ++i) {
    EXPECT_NEAR(found[i].from, expected[i].from, 1e-12);
    EXPECT_NEAR(found[i].to, expected[i].to, 1e-12);
  }
}

void expectBlocked(const std::optional<BlockedShifts>& found, const std::vector<BlockedShifts>& expected) {
  expectBlocked(found ? std::vector{*found} : std::vector<BlockedShifts>{}, expected);
}

const Capsule upright{{103, 4, -20}, {103, 4, 0}, 0.25};

TEST(PassingOfBars, WorkedByHand) {
  // A shank across the wall that crosses the bar's height and depth: radii and the wanted inch on either side.
  expectBlocked(blockedShifts(upright, Capsule{{100, 0, -5}, {100, 8, -5}, 0.25}, Along::Station, 1), {{-4.5, -1.5}});
  // One that ends 3 in before the bar, with a reach of 5: 4 in on either side.
  expectBlocked(blockedShifts(upright, Capsule{{100, 0, -5}, {100, 1, -5}, 0.75}, Along::Station, 4), {{-7, 1}});
  // It may go by exactly at its reach, and is not blocked then.
  expectBlocked(blockedShifts(upright, Capsule{{100, 0, -5}, {100, 1, -5}, 0.75}, Along::Station, 2), {});
  // Across: a bar along the wall that lies under the top of the upright one.
  expectBlocked(blockedShifts(upright, Capsule{{90, 1, -3}, {120, 1, -3}, 0.25}, Along::Depth, 1.5), {{-5, -1}});
  // At 45 degrees along the wall over a shank: the square distance is (15 - t) / sqrt 2.
  expectBlocked(
      blockedShifts(Capsule{{0, 0, 0}, {10, 0, 10}, 0.5}, Capsule{{20, -3, 5}, {20, 3, 5}, 0.25}, Along::Station, 0.25),
      {{15 - std::sqrt(2), 15 + std::sqrt(2)}});
  // In line: from end to end.
  expectBlocked(
      blockedShifts(Capsule{{0, 0, 0}, {10, 0, 0}, 0.25}, Capsule{{20, 0, 0}, {24, 0, 0}, 0.25}, Along::Station, 0),
      {{9.5, 24.5}});
  // Axes alone never come nearer than nothing.
  expectBlocked(blockedShifts(Capsule{{0, 0, 0}, {0, 0, 9}, 0}, Capsule{{5, 0, 0}, {5, 0, 9}, 0}, Along::Station, 0),
                {});
}

TEST(PassingOfBarAndPlate, WorkedByHand) {
  const Ribbon strap{110, 2.5, 0.5, {{0.75, 0}, {0.75, -12}}};
  // The face is 3 in from the axis; a reach of 5 is 4 in beside the edges of 2 1/2 in.
  expectBlocked(blockedShifts(upright, strap, Along::Station, 4.75), {{7 - 5.25, 7 + 5.25}});
  expectBlocked(blockedShifts(strap, upright, Along::Station, 4.75), {{-7 - 5.25, -7 + 5.25}});
  expectBlocked(blockedShifts(upright, strap, Along::Station, 2.75), {});
  expectBlocked(blockedShifts(upright, Ribbon{110, 2.5, 0.5, {}}, Along::Station, 100), {});
  // A trough 10 in wide with a bar along the wall in it: either side of it stops the bar.
  const Ribbon trough{100, 4, 0.5, {{0, 0}, {0, -10}, {10, -10}, {10, 0}}};
  const Capsule level{{90, 4, -2}, {120, 4, -2}, 0.25};
  expectBlocked(blockedShifts(level, trough, Along::Depth, 1), {{-5.5, -2.5}, {4.5, 7.5}});
  expectBlocked(blockedShifts(trough, level, Along::Depth, 1), {{-7.5, -4.5}, {2.5, 5.5}});
  // Near enough to the bottom it is stopped all the way.
  expectBlocked(blockedShifts(level, trough, Along::Depth, 8), {{-12.5, 14.5}});
}

TEST(PassingOfBarAndBox, WorkedByHand) {
  const Box3 box{{30, 32}, {-1, 1}, {-1, 1}};
  // A bar along the wall, from when its end comes to when its other end has gone.
  expectBlocked(blockedShifts(Capsule{{0, 0, 0}, {10, 0, 0}, 0.25}, box, Along::Station, 0.25), {{19.5, 32.5}});
  // At 45 degrees along the wall it meets the upper edge on the left and the lower one on the right.
  const Capsule leaning{{0, 0, -10}, {20, 0, 10}, 0.25};
  expectBlocked(blockedShifts(leaning, box, Along::Station, std::sqrt(2) - 0.25), {{17, 25}});
  // Beside it by 3 with a reach of 5.
  expectBlocked(blockedShifts(Capsule{{27, 9, 0}, {27, 9, 7}, 1}, box, Along::Depth, 4), {{-14, -4}});
}

TEST(PassingOfPlates, WorkedByHand) {
  const Ribbon first{100, 2.5, 0.25, {{1, 0}, {1, -12}}};
  const Ribbon second{104, 1.5, 0.25, {{2, -1}, {2, -9}}};
  expectBlocked(blockedShifts(first, second, Along::Depth, 0), {}); // they pass beside each other
  expectBlocked(blockedShifts(first, second, Along::Station, 0), {});
  expectBlocked(blockedShifts(first, second, Along::Station, 0.75), {}); // exactly so far apart
  expectBlocked(blockedShifts(first, second, Along::Station, 1.25), {{4 - 2 - 1, 4 + 2 + 1}});
  const Ribbon behind{101, 1.5, 0.25, {{2, -1}, {2, -9}}};
  expectBlocked(blockedShifts(first, behind, Along::Depth, 0), {{0.75, 1.25}});
  expectBlocked(blockedShifts(first, behind, Along::Depth, 0.5), {{0.25, 1.75}});
  // Into each other by less than a sixteenth is let through: only deeper than that counts.
  expectBlocked(blockedShifts(first, behind, Along::Depth, -0.0625), {{0.8125, 1.1875}});
}

// A rod without thickness may stand just where two straight pieces meet, in neither.
TEST(PassingOfPlates, StretchesThatOnlyTouchStayApart) {
  const Ribbon rod{0, 2, 0, {{-5, 0}}};
  const Ribbon plate{0, 2, 0.5, {{0, 0}, {1, 0}, {2, 0}}};
  EXPECT_EQ(blockedShifts(rod, plate, Along::Depth, 0), (std::vector<BlockedShifts>{{5, 6}, {6, 7}}));
  EXPECT_EQ(clearance(Ribbon{0, 2, 0, {{1, 0}}}, plate).distance, 0);
  EXPECT_EQ(blockedShifts(rod, plate, Along::Depth, 0.25), (std::vector<BlockedShifts>{{4.75, 7.25}}));
}

} // namespace
} // namespace sillwright
