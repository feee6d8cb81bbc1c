// Nuts on their threads, each rule at its limit and a sixteenth to either side. On a 3x6 sill (2 1/2) with a 0.229
// washer and a 0.160 cut washer the underside of a 5/8 nut is at 2.889.
#include "bare_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;
using R = RuleId;
constexpr double sixteenth = 1.0 / 16;
constexpr double radius = 0.3125;
constexpr double underside = 2.5 + 0.229 + 0.160; // ASME B18.21.1: cut washer of a 5/8 bolt 0.160

BareWall withThread(double length, double projection = 4) {
  BareWall bare = bareWall();
  editBoltType(bare, [&](BoltType& type) { type.threadLength = length; });
  addBolt(bare, 48, 3.25, projection);
  return bare;
}

// At a projection of 4 the thread must be 4 - 2.889 = 1.111 long.
TEST(BoltNutRules, TheThreadGoesOnUnderTheNut) {
  EXPECT_TRUE(silent(withThread(4 - underside), R::BoltRunOut));
  EXPECT_TRUE(silent(withThread(4 - underside + sixteenth), R::BoltRunOut));
  EXPECT_TRUE(silent(withThread(0), R::BoltRunOut)); // not entered
  const BareWall little = withThread(4 - underside - sixteenth);
  const Id bolt = little.wall.bolts[0].id;
  // A sixteenth lower; then 3 15/16 stand up, and 3 11/16 are needed.
  EXPECT_TRUE(finds(little, R::BoltRunOut,
                    {.pieces = {bolt}, .measured = -sixteenth, .limit = 0,
                     .region = {{48 - radius, 48 + radius}, {3.25 - radius, 3.25 + radius},
                                {underside, underside + sixteenth}},
                     .correction = outOfConcrete(bolt, -sixteenth)}));
}

// Two of three stand up 4; the third may differ by 1/4.
TEST(BoltNutRules, TheBoltsOfAWallStandUpAlike) {
  const auto third = [](double projection) {
    BareWall bare = bareWall();
    addBolts(bare, {10, 48});
    addBolt(bare, 86, 3.25, projection);
    return bare;
  };
  for (const double good : {3.75, 4.0, 4.25})
    EXPECT_TRUE(silent(third(good), R::BoltMatch)) << good;
  const BareWall high = third(4.3125), low = third(3.6875);
  const Id odd = high.wall.bolts[2].id;
  const Interval s{86 - radius, 86 + radius}, d{3.25 - radius, 3.25 + radius};
  EXPECT_TRUE(finds(high, R::BoltMatch, {.level = Level::Watch, .pieces = {odd}, .measured = 0.3125, .limit = 0.25,
                                         .region = {s, d, {4, 4.3125}}, .correction = outOfConcrete(odd, -0.3125)}));
  EXPECT_TRUE(finds(low, R::BoltMatch, {.level = Level::Watch, .pieces = {odd}, .measured = 0.3125, .limit = 0.25,
                                        .region = {s, d, {3.6875, 4}}, .correction = outOfConcrete(odd, 0.3125),
                                        .variant = 1}));
}

// Bolts of a thinner sill stand up less and are no odd ones.
TEST(BoltNutRules, BoltsOfAnotherSillAreNotComparedWithThese) {
  BareWall bare = bareWall(192);
  bare.wall.sills[0].to = 96;
  Sill thin = bare.wall.sills[0];
  thin.id = takeId(bare.job);
  thin.from = 96;
  thin.to = 192;
  thin.nominal = {2, 6};
  bare.wall.sills.push_back(thin);
  addBolts(bare, {10, 48, 86});
  addBolt(bare, 106, 3.25, 3);
  addBolt(bare, 180, 3.25, 3);
  EXPECT_TRUE(silent(bare, R::BoltMatch));
}

} // namespace
} // namespace sillwright
