// Plate washers as such. IRC 2024 R602.11.1 and SDPWS 2021 4.3.6.4.3 (size), IBC 2006 2305.3.11 (slot; that R602.11.1
// has the same sentence is from memory).
#include "said.h"

namespace sillwright {
namespace {

using namespace published;
using R = RuleId;

// A bolt in the middle of a 2x6 sill, at station 48: its washer lies on z 1 1/2 and reaches half its size to every
// side.
Job washer(double along, double across, double thickness) {
  SillWall wall{.bolts = {48}};
  wall.washer.along = along;
  wall.washer.across = across;
  wall.washer.thickness = thickness;
  return jobOf(wall);
}

// At least 0.229 x 3 x 3 in: a sixteenth of side, a thousandth of thickness.
TEST(Washers, ThreeByThreeBy229Thousandths) {
  EXPECT_TRUE(silent(washer(3, 3, 0.229), R::WasherSize));
  EXPECT_TRUE(silent(washer(3 + sixteenth, 3 + sixteenth, 0.23), R::WasherSize));
  EXPECT_TRUE(says(washer(3 - sixteenth, 3, 0.229), R::WasherSize,
                   {Level::Fix, 2.9375, 3, {{46.53125, 49.46875}, {1.25, 4.25}, {1.5, 1.729}}}));
  EXPECT_TRUE(says(washer(3, 3 - sixteenth, 0.229), R::WasherSize,
                   {Level::Fix, 2.9375, 3, {{46.5, 49.5}, {1.28125, 4.21875}, {1.5, 1.729}}}));
  EXPECT_TRUE(
      says(washer(3, 3, 0.228), R::WasherSize, {Level::Fix, 0.228, 0.229, {{46.5, 49.5}, {1.25, 4.25}, {1.5, 1.728}}}));
}

// Only where the job's options call for plate washers; there a bolt without one is found as well.
TEST(Washers, WhereTheJobCallsForThem) {
  Job job = with(washer(2, 2, 0.125), [](Job& changed, WallLine& wall) {
    wall.bolts[0].washer = {};
    changed.limits.edit([](JobLimits& limits) { limits.plateWashers = true; });
  });
  // What is missing: 3 x 3 about the bolt, from the concrete to its end 4 up.
  EXPECT_TRUE(says(job, R::WasherSize, {Level::Fix, 0, 3, {{46.5, 49.5}, {1.25, 4.25}, {0, 4}}}));
  job.limits.edit([](JobLimits& limits) { limits.plateWashers = false; });
  EXPECT_TRUE(silent(job, R::WasherSize));
}

Job slotted(double diameter, double width, double length, bool cutWasher = true) {
  SillWall wall{.boltDiameter = diameter, .bolts = {48}};
  wall.washer.slot = WasherSlot{width, length, SlotDirection::Across, {}};
  return with(jobOf(wall), [&](Job&, WallLine& line) { line.bolts[0].cutWasher = cutWasher; });
}

constexpr Box3 plate{{46.5, 49.5}, {1.25, 4.25}, {1.5, 1.729}};

// Up to 3/16 wider than the bolt: 11/16, 13/16 and 15/16 in for 1/2, 5/8 and 3/4.
TEST(Washers, ASlotThreeSixteenthsWiderThanTheBolt) {
  const double widest[][2]{{0.5, 0.6875}, {0.625, 0.8125}, {0.75, 0.9375}};
  for (const auto& [diameter, width] : widest) {
    EXPECT_TRUE(silent(slotted(diameter, width - sixteenth, 1.75), R::WasherSlot));
    EXPECT_TRUE(silent(slotted(diameter, width, 1.75), R::WasherSlot));
    EXPECT_TRUE(
        says(slotted(diameter, width + sixteenth, 1.75), R::WasherSlot, {Level::Fix, width + sixteenth, width, plate}));
  }
}

// Up to 1 3/4 in long.
TEST(Washers, ASlotOneAndThreeQuartersLong) {
  EXPECT_TRUE(silent(slotted(0.625, 0.8125, 1.75 - sixteenth), R::WasherSlot));
  EXPECT_TRUE(silent(slotted(0.625, 0.8125, 1.75), R::WasherSlot));
  EXPECT_TRUE(says(slotted(0.625, 0.8125, 1.75 + sixteenth), R::WasherSlot, {Level::Fix, 1.8125, 1.75, plate}));
}

// A standard cut washer between the plate washer and the nut.
TEST(Washers, ACutWasherOverTheSlot) {
  EXPECT_TRUE(says(slotted(0.625, 0.8125, 1.75, false), R::WasherSlot, {Level::Fix, 1, 0, plate}));
}

} // namespace
} // namespace sillwright
