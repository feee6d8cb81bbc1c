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

// US Army Engineer School, subcourse EN 5466A "Concrete Engineering" (September 1992), p. 3-13, example problem 1: a
// wall 40 ft x 2 ft, 10 ft high, 1 cubic yard every 10 minutes, 70 °F; plan area 80 sq ft. They read 400 psf off a
// chart (p. 3-5) whose scale goes by the hundred: ours has to lie within a quarter of that.
TEST(FormPressure, ArmyExampleReadOffAChart) {
  const double rate = 27.0 * 6 / 80;
  const auto pressure = wallFormula({.rate = rate, .temperature = 70, .height = 10});
  ASSERT_TRUE(pressure);
  EXPECT_NEAR(*pressure, 400, 25);
}

// University of Florida, BCN 4423 Temporary Structures (Fall 2014), week 7 "Wall Forms", example problem: a wall 15 ft
// high, 10 ft/h, 80 °F, 150 pcf: 1,042 psf, of 2,250 psf as a liquid.
TEST(FormPressure, FloridaWallForm) {
  const FormPour pour{.rate = 10, .temperature = 80, .height = 15};
  EXPECT_NEAR(*wallFormula(pour), 1042, 0.5);
  EXPECT_NEAR(*formPressure(pour), 1042, 0.5);
  EXPECT_EQ(liquidHead(150, 15), 2250);
}

// The same course, week 8 "Column Forms", problem: 10 ft at 150 pcf, filled at once: 1,500 psf.
TEST(FormPressure, FloridaColumnForm) {
  EXPECT_EQ(liquidHead(150, 10), 1500);
}

// ACI 347R-14: not under 600 C_w, never over w h.
TEST(FormPressure, NeitherUnderSixHundredNorOverTheHead) {
  EXPECT_DOUBLE_EQ(*formPressure({.rate = 2, .temperature = 70, .height = 3}), 450);   // 3 ft of liquid
  EXPECT_DOUBLE_EQ(*formPressure({.rate = 6, .temperature = 60, .height = 10}), 1050); // 150 + 9000 x 6 / 60
  EXPECT_DOUBLE_EQ(*formPressure({.rate = 1, .temperature = 90, .height = 8, .weightCoefficient = 1.1}), 660);
  EXPECT_DOUBLE_EQ(*formPressure({.rate = 6, .temperature = 60, .height = 10, .chemistryCoefficient = 1.2}), 1260);
}

// ACI 347R-14: one formula for walls placed slower than 7 ft/h and up to 14 ft high, another up to 15 ft/h; beyond that
// concrete is a liquid.
TEST(FormPressure, WhereWhichFormulaHolds) {
  const auto psf = [](double rate, double height) {
    return wallFormula({.rate = rate, .temperature = 70, .height = height}).value_or(0);
  };
  EXPECT_NEAR(psf(6.3, 14), 960, 1e-9);                         // 150 + 9000 x 6.3 / 70
  EXPECT_NEAR(psf(7, 14), 150 + 620 + 280, 1e-9);               // 43400 / 70 = 620, 2800 x 7 / 70 = 280
  EXPECT_NEAR(psf(6.3, 14 + 1.0 / 192), 150 + 620 + 252, 1e-9); // a sixteenth over 14 ft
  EXPECT_NEAR(psf(15, 20), 150 + 620 + 600, 1e-9);
  EXPECT_EQ(psf(15.01, 20), 0);
  EXPECT_FALSE(wallFormula({.rate = 0, .temperature = 70, .height = 8}));
  EXPECT_FALSE(wallFormula({.rate = 2, .temperature = 0, .height = 8}));
  EXPECT_FALSE(formPressure({.rate = 16, .temperature = 70, .height = 8}));
}

} // namespace
} // namespace sillwright
