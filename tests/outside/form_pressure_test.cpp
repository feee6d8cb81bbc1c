// Pressure of fresh concrete on forms.
#include <gtest/gtest.h>

#include "core/standards/form_pressure.h"

namespace sillwright {
namespace {

// Trade text (Concrete Construction, questions and answers): 8 ft at 150 pcf, 1,200 psf, 8.33 psi.
TEST(FormPressure, LiquidHeadOfEightFeet) {
  EXPECT_DOUBLE_EQ(liquidHead(150, 8), 1200);
  EXPECT_NEAR(liquidHead(150, 8) / 144, 8.33, 0.005);
}

// ACI 347R-14: 2.0 ft/h at 70 °F, 407 psf by the formula; the pressure to build for is 600 psf at least.
TEST(FormPressure, TwoFeetAnHourAtSeventyDegrees) {
  const FormPour pour{.rate = 2, .temperature = 70, .height = 8};
  EXPECT_NEAR(*wallFormula(pour), 407, 0.5);
  EXPECT_DOUBLE_EQ(*formPressure(pour), 600);
}

// US Army Engineer School, subcourse EN 5466A "Concrete Engineering", p. 3-13, example problem 1: a wall 40 ft x 2 ft,
// 10 ft high, 1 cubic yard every 10 minutes, 70 °F; plan area 80 sq ft. They read 400 psf off a chart.
TEST(FormPressure, ArmyExampleReadOffAChart) {
  const double rate = 27.0 * 6 / 80;
  const auto pressure = wallFormula({.rate = rate, .temperature = 70, .height = 10});
  ASSERT_TRUE(pressure);
  EXPECT_NEAR(*pressure, 400, 25); // half of the chart's step of 50 psf
}

// ACI 347R-14: not under 600 C_w, never over w h.
TEST(FormPressure, NeitherUnderSixHundredNorOverTheHead) {
  EXPECT_DOUBLE_EQ(*formPressure({.rate = 2, .temperature = 70, .height = 3}), 450);   // 3 ft of liquid
  EXPECT_DOUBLE_EQ(*formPressure({.rate = 6, .temperature = 60, .height = 10}), 1050); // 150 + 9000 x 6 / 60
  EXPECT_DOUBLE_EQ(*formPressure({.rate = 1, .temperature = 90, .height = 8, .weightCoefficient = 1.1}), 660);
  EXPECT_DOUBLE_EQ(*formPressure({.rate = 6, .temperature = 60, .height = 10, .chemistryCoefficient = 1.2}), 1260);
}

// ACI 347R-14: for walls, under 7 ft/h, up to 14 ft.
TEST(FormPressure, OnlyWhereTheFormulaHolds) {
  EXPECT_TRUE(wallFormula({.rate = 6.99, .temperature = 70, .height = 14}));
  EXPECT_FALSE(wallFormula({.rate = 7, .temperature = 70, .height = 14}));
  EXPECT_FALSE(wallFormula({.rate = 2, .temperature = 70, .height = 14 + 1.0 / 192}));
  EXPECT_FALSE(wallFormula({.rate = 0, .temperature = 70, .height = 8}));
  EXPECT_FALSE(wallFormula({.rate = 2, .temperature = 0, .height = 8}));
}

} // namespace
} // namespace sillwright
