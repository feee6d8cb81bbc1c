// Sizes of what is bought and how far it may be off: lumber, bars, hooks, laps, nuts, washers, nails, cover, tolerances.
// Document and status beside each table.
#include <gtest/gtest.h>

#include "core/standards/bar_ends.h"
#include "core/standards/bars.h"
#include "core/standards/cover.h"
#include "core/standards/fasteners.h"
#include "core/standards/lumber.h"
#include "core/standards/set_out.h"
#include "core/standards/washers.h"

namespace sillwright {
namespace {

// PS 20 (published).
TEST(Standards, DressedLumber) {
  EXPECT_EQ(dressed(2), 1.5);
  EXPECT_EQ(dressed(3), 2.5);
  EXPECT_EQ(dressed(4), 3.5);
  EXPECT_EQ(dressed(6), 5.5);
  EXPECT_EQ(dressed(8), 7.25);
  EXPECT_EQ(dressed(10), 9.25);
  EXPECT_EQ(dressed(12), 11.25);
  EXPECT_FALSE(dressed(5));
  EXPECT_FALSE(dressed(0));
  EXPECT_EQ(dressedThickness({3, 6}), 2.5);
  EXPECT_EQ(dressedWidth({3, 6}), 5.5);
}

TEST(Standards, NominalSizesAreReadAsWritten) {
  for (const auto* written : {"3x6", "3 x 6", "3X6", "3×6", " 3x6 "})
    EXPECT_EQ(parseNominal(written), (Nominal{3, 6})) << written;
  for (const auto* wrong : {"", "x", "3x", "x6", "36", "3x5", "3x6x8", "-3x6", "3.0x6", "3y6"})
    EXPECT_FALSE(parseNominal(wrong)) << wrong;
  for (const int thickness : nominalSizes())
    for (const int width : nominalSizes())
      EXPECT_EQ(parseNominal(print(Nominal{thickness, width})), (Nominal{thickness, width}));
}

// ASTM A615 (published): No. 3 to 8.
TEST(Standards, BarDiametersAndWeights) {
  const struct {
    int number;
    double diameter, weight;
  } table[] = {{3, 0.375, 0.376}, {4, 0.500, 0.668}, {5, 0.625, 1.043},
               {6, 0.750, 1.502}, {7, 0.875, 2.044}, {8, 1.000, 2.670}};
  for (const auto& row : table) {
    ASSERT_TRUE(barSize(row.number));
    EXPECT_EQ(barSize(row.number)->diameter, row.diameter);
    EXPECT_EQ(barSize(row.number)->weight, row.weight);
    EXPECT_EQ(row.diameter, row.number / 8.0); // the number of a bar counts eighths
  }
  EXPECT_FALSE(barSize(2));
  EXPECT_FALSE(barSize(9));
}

// ACI 318-19 Table 20.5.1.3.1 (published).
TEST(Standards, ConcreteCover) {
  for (int number = 3; number <= 8; ++number) {
    EXPECT_EQ(requiredCover(Exposure::CastAgainstEarth, number), 3);
    EXPECT_EQ(requiredCover(Exposure::ExposedOrGround, number), number <= 5 ? 1.5 : 2.0);
    EXPECT_EQ(requiredCover(Exposure::Sheltered, number), 0.75);
  }
}

// ACI 318-19 Table 25.3.1 (published): 90 degrees, 6 d inside the bend, 12 d beyond it.
TEST(Standards, NinetyDegreeHooks) {
  const struct {
    int number;
    double bend, extension;
  } table[] = {{3, 2.25, 4.5}, {4, 3, 6}, {5, 3.75, 7.5}, {6, 4.5, 9}, {7, 5.25, 10.5}, {8, 6, 12}};
  for (const auto& row : table) {
    ASSERT_TRUE(standardHook(row.number));
    EXPECT_EQ(standardHook(row.number)->insideBendDiameter, row.bend);
    EXPECT_EQ(standardHook(row.number)->extension, row.extension);
  }
  EXPECT_FALSE(standardHook(9));
}

// IRC 2024 Table R608.5.4(1) (published).
TEST(Standards, LapsInFoundationWalls) {
  EXPECT_EQ(lapLength(4), 30);
  EXPECT_EQ(lapLength(5), 38);
  EXPECT_EQ(lapLength(6), 45);
  EXPECT_FALSE(lapLength(3));
  EXPECT_FALSE(lapLength(7));
}

// ASME B18.2.2, smallest thickness (published).
TEST(Standards, ThinnestHexNuts) {
  EXPECT_EQ(boltHardware(0.5)->nutThicknessLeast, 0.427);
  EXPECT_EQ(boltHardware(0.625)->nutThicknessLeast, 0.535);
  EXPECT_EQ(boltHardware(0.75)->nutThicknessLeast, 0.617);
  EXPECT_EQ(boltHardware(0.875)->nutThicknessLeast, 0.724);
  EXPECT_EQ(boltHardware(1.0)->nutThicknessLeast, 0.831);
}

// IRC 2024 R602.11.1: 0.229 x 3 x 3. IBC 2006 2305.3.11: the slot 3/16 wider than the bolt, 1 3/4 long (both published).
TEST(Standards, PlateWashersAndTheirSlots) {
  EXPECT_EQ(plateWasherThickness.value, 0.229);
  EXPECT_EQ(plateWasherSide.value, 3);
  EXPECT_EQ(washerSlotOverBolt.value, 0.1875);
  EXPECT_EQ(washerSlotLength.value, 1.75);
}

// US government guide specification with the values of ACI 117; US residential workmanship guideline; ACI 117-90 2.3;
// AISC 303 7.5 (all published).
TEST(Standards, SettingOut) {
  EXPECT_EQ(formThicker.value, 0.375);
  EXPECT_EQ(formThinner.value, 0.25);
  EXPECT_EQ(formedElevation.value, 0.75);
  EXPECT_EQ(foundationLevel.value, 0.5);
  EXPECT_EQ(foundationLevelWithin.value, 20 * 12);
  EXPECT_EQ(squareDiagonal.value, 0.5);
  EXPECT_EQ(squareTriangle, (std::array<double, 3>{12 * 12, 16 * 12, 20 * 12}));
  EXPECT_EQ(embeddedItems.value, 1);
  EXPECT_EQ(rodsInGroup.value, 0.125);
  EXPECT_EQ(rodGroups.value, 0.25);
  // The triangle is a right one.
  EXPECT_EQ(squareTriangle[0] * squareTriangle[0] + squareTriangle[1] * squareTriangle[1],
            squareTriangle[2] * squareTriangle[2]);
}

// ASME B18.2.2, largest thickness (published); across flats ASME B18.2.2 (from memory).
TEST(Standards, HexNuts) {
  EXPECT_EQ(boltHardware(0.5)->nutThickness, 0.448);
  EXPECT_EQ(boltHardware(0.625)->nutThickness, 0.559);
  EXPECT_EQ(boltHardware(0.75)->nutThickness, 0.665);
  EXPECT_EQ(boltHardware(0.875)->nutThickness, 0.776);
  EXPECT_EQ(boltHardware(1.0)->nutThickness, 0.887);
  for (const auto& row : boltHardwareTable())
    EXPECT_EQ(row.nutAcrossFlats, row.diameter * 1.5);
  EXPECT_FALSE(boltHardware(0.6));
}

// ASME B1.1, UNC (published for 1/2, 5/8, 3/4; 7/8 and 1 from memory).
TEST(Standards, ThreadsPerInch) {
  EXPECT_EQ(boltHardware(0.5)->threadsPerInch, 13);
  EXPECT_EQ(boltHardware(0.625)->threadsPerInch, 11);
  EXPECT_EQ(boltHardware(0.75)->threadsPerInch, 10);
  EXPECT_EQ(boltHardware(0.875)->threadsPerInch, 9);
  EXPECT_EQ(boltHardware(1.0)->threadsPerInch, 8);
}

// ASME B18.21.1, type A wide, largest thickness (published).
TEST(Standards, CutWashers) {
  EXPECT_EQ(boltHardware(0.5)->cutWasherThickness, 0.132);
  EXPECT_EQ(boltHardware(0.625)->cutWasherThickness, 0.160);
  EXPECT_EQ(boltHardware(0.75)->cutWasherThickness, 0.177);
  EXPECT_EQ(boltHardware(0.5)->cutWasherOutsideDiameter, 1.375);
  EXPECT_EQ(boltHardware(0.625)->cutWasherOutsideDiameter, 1.750);
  EXPECT_EQ(boltHardware(0.75)->cutWasherOutsideDiameter, 2.000);
}

// ASTM F1667, NDS Table L4 (published; 3d from memory).
TEST(Standards, CommonNails) {
  const struct {
    std::string_view name;
    double diameter, length;
  } table[] = {{"3d common", 0.080, 1.25},
               {"6d common", 0.113, 2},
               {"8d common", 0.131, 2.5},
               {"10d common", 0.148, 3},
               {"16d common", 0.162, 3.5}};
  ASSERT_EQ(commonNails().size(), std::size(table));
  for (std::size_t i = 0; i < std::size(table); ++i) {
    EXPECT_EQ(commonNails()[i].name, table[i].name);
    EXPECT_EQ(commonNails()[i].diameter, table[i].diameter);
    EXPECT_EQ(commonNails()[i].length, table[i].length);
  }
}

} // namespace
} // namespace sillwright
