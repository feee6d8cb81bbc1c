// Cast-in anchors as the rules ask for them. ACI 318-19 Table 17.9.2(a) (spacing) and 17.6.3.2.2 (hooked bolts).
#include "sill_wall.h"

namespace sillwright {
namespace {

using namespace published;
constexpr double sixteenth = 1.0 / 16;
constexpr double diameters[]{0.5, 0.625, 0.75};

std::optional<Level> gapLevel(double diameter, double apart) {
  const Findings found = findingsOf(jobOf({.boltDiameter = diameter, .bolts = {40, 40 + apart}}), RuleId::BoltGap);
  EXPECT_LE(found.size(), 1u);
  return found.empty() ? std::nullopt : std::optional(found[0].level);
}

// Between the axes: 4 d untorqued, 6 d torqued. 2, 2 1/2 and 3 in; 3, 3 3/4 and 4 1/2 in.
TEST(Anchors, SpacingOfFourAndSixDiameters) {
  for (const double d : diameters) {
    EXPECT_EQ(gapLevel(d, 6 * d + sixteenth), std::nullopt) << d;
    EXPECT_EQ(gapLevel(d, 6 * d), std::nullopt) << d;
    EXPECT_EQ(gapLevel(d, 6 * d - sixteenth), Level::Ask) << d;
    EXPECT_EQ(gapLevel(d, 4 * d), Level::Ask) << d;
    EXPECT_EQ(gapLevel(d, 4 * d - sixteenth), Level::Fix) << d;
  }
}

std::size_t hooksFound(double diameter, double reach) {
  Job job = jobOf({.boltDiameter = diameter, .bolts = {40}});
  job.types.edit([&](HardwareTypes& types) {
    types.bolts[0].end = BoltEnd::J;
    types.bolts[0].hookLeg = reach + diameter / 2; // ours is from the axis, e_h from the inner face of the shaft
  });
  return findingsOf(job, RuleId::BoltHook).size();
}

// 3 d <= e_h <= 4.5 d.
TEST(Anchors, HookFromThreeToFourAndAHalfDiameters) {
  for (const double d : diameters) {
    for (const double inside : {3 * d, 3 * d + sixteenth, 4.5 * d - sixteenth, 4.5 * d})
      EXPECT_EQ(hooksFound(d, inside), 0u) << d << " " << inside;
    for (const double beyond : {3 * d - sixteenth, 4.5 * d + sixteenth})
      EXPECT_EQ(hooksFound(d, beyond), 1u) << d << " " << beyond;
  }
}

} // namespace
} // namespace sillwright
