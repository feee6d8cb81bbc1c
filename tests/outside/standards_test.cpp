// Sizes of what is bought: lumber, bars, nuts, washers, nails, concrete cover. Document and status beside each table.
#include <gtest/gtest.h>

#include "core/standards/bars.h"
#include "core/standards/cover.h"
#include "core/standards/fasteners.h"
#include "core/standards/lumber.h"

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
