// What one bolt carries, against NDS 2018: dowel bearing (Tables 12.3.3, 12.3.3A), the six yield modes (12.3.1) and
// cells of Table 12E (sill on concrete, 6 in in the concrete).
#include <gtest/gtest.h>

#include <cmath>

#include "core/standards/bolt_value.h"

namespace sillwright {
namespace {

Species species(std::string_view name) {
  const auto found = speciesByName(name);
  EXPECT_TRUE(found) << name;
  return found.value_or(Species{});
}

// NDS 2018 Table 12.3.3A (published).
TEST(BoltValue, SpecificGravity) {
  const struct {
    std::string_view name;
    double gravity;
  } table[] = {{"Southern Pine", 0.55},   {"Douglas Fir-Larch", 0.50}, {"Hem-Fir", 0.43},
               {"Spruce-Pine-Fir", 0.42}, {"Redwood", 0.37},           {"Spruce-Pine-Fir (South)", 0.36}};
  ASSERT_EQ(speciesTable().size(), std::size(table));
  for (std::size_t i = 0; i < std::size(table); ++i) {
    EXPECT_EQ(speciesTable()[i].name, table[i].name);
    EXPECT_EQ(speciesTable()[i].specificGravity, table[i].gravity);
  }
}

// The ways the trade writes them.
TEST(BoltValue, SpeciesAsPeopleWriteThem) {
  for (const auto* written : {"Douglas Fir-Larch", "douglas fir larch", "DF-L", "DFL", "df", " Doug Fir "})
    EXPECT_EQ(species(written).name, "Douglas Fir-Larch") << written;
  for (const auto* written : {"Hem-Fir", "HEM FIR", "HF", "h-f"})
    EXPECT_EQ(species(written).name, "Hem-Fir") << written;
  for (const auto* written : {"SPF", "S-P-F", "Spruce-Pine-Fir"})
    EXPECT_EQ(species(written).name, "Spruce-Pine-Fir") << written;
  for (const auto* written : {"SPF-S", "SPF (South)", "spruce pine fir south"})
    EXPECT_EQ(species(written).name, "Spruce-Pine-Fir (South)") << written;
  EXPECT_EQ(species("SYP").name, "Southern Pine");
  EXPECT_EQ(species("redwood").name, "Redwood");
  for (const auto* unknown : {"", "-", "oak", "D", "fir"})
    EXPECT_FALSE(speciesByName(unknown)) << unknown;
}

// NDS 2018 Table 12.3.3 (published formulas, worked by hand): 11,200 G; 6,100 G^1.45 / sqrt(D); 16,600 G^1.84; to 50
// psi.
TEST(BoltValue, DowelBearing) {
  EXPECT_EQ(bearingAlong(0.50, 0.5), 5600);
  EXPECT_EQ(bearingAlong(0.55, 0.5), 6150);    // 6,160
  EXPECT_EQ(bearingAlong(0.43, 0.625), 4800);  // 4,816
  EXPECT_EQ(bearingAlong(0.42, 1), 4700);      // 4,704
  EXPECT_EQ(bearingAcross(0.50, 0.5), 3150);   // 6,100 x 0.36602 / 0.70711 = 3,158
  EXPECT_EQ(bearingAcross(0.50, 0.625), 2800); // 6,100 x 0.36602 / 0.79057 = 2,824
  EXPECT_EQ(bearingAcross(0.50, 1), 2250);     // 2,233
  EXPECT_EQ(bearingAlong(0.50, 0.25), 5600);
  EXPECT_EQ(bearingAlong(0.50, 0.148), 4650); // 16,600 x 0.27932 = 4,637
  EXPECT_EQ(bearingAcross(0.50, 0.148), 4650);
  EXPECT_EQ(concreteBearing.value, 7500);
  EXPECT_EQ(boltBendingYield.value, 45000);
}

// NDS 2018 12.3.4: at 45° the harmonic mean of along and across: 2 x 5,600 x 3,150 / 8,750 = 4,032.
TEST(BoltValue, BearingAtAnAngle) {
  EXPECT_NEAR(bearingAtAngle(0.50, 0.5, 0), 5600, 1e-9);
  EXPECT_NEAR(bearingAtAngle(0.50, 0.5, 45), 4032, 1e-6);
  EXPECT_NEAR(bearingAtAngle(0.50, 0.5, 90), 3150, 1e-9);
}

// 1/2 in bolt, 1 1/2 in Douglas Fir-Larch on 6 in of concrete, along the grain. NDS 2018 12.3.1; the modes were worked
// out apart from this program.
TEST(BoltValue, SixModesOfAHalfInchBolt) {
  const auto value =
      boltValue({.diameter = 0.5, .mainLength = 6, .sideLength = 1.5, .mainBearing = 7500, .sideBearing = 5600});
  ASSERT_TRUE(value);
  const double expected[] = {5625, 1050, 2011, 2268, 648, 766};
  for (std::size_t i = 0; i < std::size(expected); ++i)
    EXPECT_NEAR(value->modes[i], expected[i], 0.5) << yieldModeNames[i];
  EXPECT_EQ(value->governing, YieldMode::IIIs);
  EXPECT_NEAR(value->reference(), 648, 0.5);
}

double toTen(double lb) {
  return 10 * std::round(lb / 10);
}

// Table 12E prints to the nearest 10 lb. Douglas Fir-Larch 650 and 930 along the grain (published). Spruce-Pine-Fir 590
// and 850 (from a public review of the table, which gives them times 1.6: 944 and 1,360).
TEST(BoltValue, Table12E) {
  const struct {
    std::string_view name;
    double diameter, value;
  } cells[] = {{"Douglas Fir-Larch", 0.5, 650},
               {"Douglas Fir-Larch", 0.625, 930},
               {"Spruce-Pine-Fir", 0.5, 590},
               {"Spruce-Pine-Fir", 0.625, 850}};
  for (const auto& cell : cells) {
    const auto value = sillBoltValue(cell.diameter, 1.5, species(cell.name), 6);
    ASSERT_TRUE(value);
    EXPECT_EQ(toTen(value->reference()), cell.value) << cell.name << " " << cell.diameter;
    EXPECT_EQ(value->governing, YieldMode::IIIs);
  }
}

// More cells of Table 12E, from memory.
TEST(BoltValue, Table12EFromMemory) {
  const struct {
    std::string_view name;
    double diameter, along, across;
  } cells[] = {{"Southern Pine", 0.5, 680, 410},     {"Southern Pine", 0.625, 970, 580},
               {"Douglas Fir-Larch", 0.5, 650, 380}, {"Douglas Fir-Larch", 0.625, 930, 530},
               {"Hem-Fir", 0.5, 590, 340},           {"Hem-Fir", 0.625, 860, 420},
               {"Spruce-Pine-Fir", 0.5, 590, 340},   {"Spruce-Pine-Fir", 0.625, 850, 410}};
  for (const auto& cell : cells) {
    EXPECT_EQ(toTen(sillBoltValue(cell.diameter, 1.5, species(cell.name), 6)->reference()), cell.along) << cell.name;
    EXPECT_EQ(toTen(sillBoltValue(cell.diameter, 1.5, species(cell.name), 6, 90)->reference()), cell.across)
        << cell.name;
  }
}

// Load duration 1.6 for wind and earthquake, NDS 2018 Table 2.3.2: 650 x 1.6 = 1,040, 930 x 1.6 = 1,488. At 20 in on
// centre 1,488 lb make 893 plf (published review of the same table).
TEST(BoltValue, WindOrSeismic) {
  EXPECT_DOUBLE_EQ(650 * windOrSeismicDuration.value, 1040);
  EXPECT_DOUBLE_EQ(930 * windOrSeismicDuration.value, 1488);
  const auto value = sillBoltValue(0.625, 1.5, species("DF-L"), 6);
  const double each = toTen(value->reference()) * windOrSeismicDuration.value;
  EXPECT_NEAR(each / (20.0 / 12), 893, 0.5);
}

// Deeper than Table 12E has it changes nothing where III_s governs; the code asks for 7 in.
TEST(BoltValue, DeeperInTheConcrete) {
  const Species sill = species("DF-L");
  EXPECT_EQ(sillBoltValue(0.5, 1.5, sill, 6)->reference(), sillBoltValue(0.5, 1.5, sill, 7)->reference());
}

// The reduction terms hold for 1/4 to 1 in; at an angle they grow to 5, 4.5 and 4.
TEST(BoltValue, OnlyWhereTheEquationsHold) {
  const Species sill = species("DF-L");
  for (const double diameter : {0.0, -0.5, 0.24, 1.01, std::nan("")})
    EXPECT_FALSE(sillBoltValue(diameter, 1.5, sill, 6)) << diameter;
  EXPECT_FALSE(sillBoltValue(0.5, 0, sill, 6));
  EXPECT_FALSE(sillBoltValue(0.5, 1.5, sill, 0));
  EXPECT_FALSE(sillBoltValue(0.5, 1.5, sill, 6, 91));
  const SingleShear joint{
      .diameter = 0.5, .mainLength = 6, .sideLength = 1.5, .mainBearing = 7500, .sideBearing = 5600};
  SingleShear turned = joint;
  turned.angle = 90;
  for (std::size_t i = 0; i < 6; ++i)
    EXPECT_NEAR(boltValue(joint)->modes[i] / boltValue(turned)->modes[i], 1.25, 1e-12);
}

} // namespace
} // namespace sillwright
