// Tie forces of shear panels against published examples.
#include <gtest/gtest.h>

#include "core/standards/statics.h"

namespace sillwright {
namespace {

// Wood Products Council, five-storey wood-frame design example, December 2017: the top two storeys of a wall 29 ft
// long, storeys 10 ft, storey forces 12,989 and 11,311 lb, d 27.04 ft, dead load 156 and 646 plf over both storeys.
// T = (0.7 M_OT - 0.43 M_R) / d, M_R = w L^2 / 2.
struct Storey {
  double overturning, shear, deadLoad, tie;
};
constexpr Storey storeys[]{{129887, 314, 156, 2319}, {372889, 587, 646, 5333}};
constexpr double wallFeet = 29;
constexpr double lever = 27.04 * 12;

TEST(PanelForces, TieForcesOfTheTopTwoStoreys) {
  for (const Storey& storey : storeys) {
    const double resisting = storey.deadLoad * wallFeet * wallFeet / 2;
    EXPECT_NEAR(tieForce({storey.overturning, resisting, 0.7, 0.43}, lever), storey.tie, 1);
  }
}

// The moments and unit shears that come before: forces times heights above the storey's foot, 0.7 of force over length.
TEST(PanelForces, MomentsAndShearsBehindThem) {
  EXPECT_NEAR(12989 * 10.0, storeys[0].overturning, 5);
  EXPECT_NEAR(12989 * 20.0 + 11311 * 10.0, storeys[1].overturning, 5);
  EXPECT_NEAR(0.7 * 12989 / wallFeet, storeys[0].shear, 0.6);
  EXPECT_NEAR(0.7 * (12989 + 11311) / wallFeet, storeys[1].shear, 0.6);
}

// The top storey again from its unit shear: v L h / d - w' L^2 / 2 / d with w' = 0.43 x 156 plf.
TEST(PanelForces, FromUnitShear) {
  const double v = 0.7 * 12989 / wallFeet;
  EXPECT_NEAR(tieForce(v, 120, wallFeet * 12, lever, 0.43 * 156), 2319, 1);
}

// SDPWS 4.3.6.1: T = C = v h for a single full-height wall with the lever its own length; with dead load less w b / 2
// (wood design manual M14.3). 400 plf, 8 ft high: 3,200 lb, whatever the length; 6 ft long under 100 plf: 300 lb less.
TEST(PanelForces, UnitShearTimesHeight) {
  for (const double length : {32.0, 72.0, 144.0})
    EXPECT_NEAR(tieForce(400, 96, length, length), 3200, 1e-9);
  EXPECT_NEAR(tieForce(400, 96, 72, 72, 100), 2900, 1e-9);
}

// A strap that moves in 3 in from a lever of 48 in makes the tie force 48 / 45 as great (statics).
TEST(PanelForces, AShorterLeverPullsHarder) {
  EXPECT_NEAR(tieForce(400, 96, 54, 45) / tieForce(400, 96, 54, 48), 48.0 / 45, 1e-12);
}

} // namespace
} // namespace sillwright
