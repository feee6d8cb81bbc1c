// Cast-in anchors as the rules ask for them. ACI 318-19 Table 17.9.2(a) (spacing), 17.6.3.2.2 (hooked bolts), Table
// 20.5.1.3.1 (cover) and 25.2.1 (clear of bars, borrowed).
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

// The limit of a finding of cover on a headed bolt, its shank that far in from the outside face.
std::optional<double> coverAskedFor(double diameter, double cover) {
  Job job = jobOf({.boltDiameter = diameter, .bolts = {40}, .depth = cover + diameter / 2});
  job.types.edit([](HardwareTypes& types) { types.bolts[0].end = BoltEnd::Headed; });
  const Findings found = findingsOf(job, RuleId::BoltCover);
  EXPECT_LE(found.size(), 1u);
  return found.empty() ? std::nullopt : std::optional(found[0].limit);
}

// As over bars: 1 1/2 in to a formed face up to the thickness of a No. 5, 2 in from that of a No. 6.
TEST(Anchors, CoverOfABarAsThick) {
  const double limits[][2]{{0.5, 1.5}, {0.625, 1.5}, {0.75, 2}};
  for (const auto& [diameter, cover] : limits) {
    EXPECT_EQ(coverAskedFor(diameter, cover + sixteenth), std::nullopt);
    EXPECT_EQ(coverAskedFor(diameter, cover), std::nullopt);
    EXPECT_EQ(coverAskedFor(diameter, cover - sixteenth), cover);
  }
}

// Against earth 3 in: a bolt down into a footing whose outside face is flush with the wall's.
TEST(Anchors, ThreeInchesAgainstEarth) {
  const auto found = [](double under) {
    Job job = jobOf({.boltDiameter = 0.625, .boltLength = 12, .bolts = {40}, .depth = 4, .projection = 4});
    job.types.edit([](HardwareTypes& types) { types.bolts[0].end = BoltEnd::Headed; });
    WallLine wall = job.walls[0];
    wall.stemHeight = 2;
    wall.footing.width = 16;
    wall.footing.projection = 4;
    wall.footing.depth = 6 + under; // 8 in of bolt in the concrete
    job.walls.replace(wall);
    return findingsOf(job, RuleId::BoltCover).size();
  };
  EXPECT_EQ(found(3 + sixteenth), 0u);
  EXPECT_EQ(found(3), 0u);
  EXPECT_EQ(found(3 - sixteenth), 1u);
}

// 1 in clear of a No. 4 is aimed for; contact is put right.
TEST(Anchors, AnInchFromBars) {
  const auto level = [](double clear) -> std::optional<Level> {
    Job job = jobOf({.boltDiameter = 0.625, .bolts = {40}, .depth = 4});
    job.types.edit([](HardwareTypes& types) { types.bolts[0].end = BoltEnd::Headed; });
    WallLine wall = job.walls[0];
    Bar bar;
    bar.id = takeId(job);
    const double station = 40 + 0.3125 + 0.25 + clear;
    bar.planned = {{station, 4, -20}, {station, 4, -3}};
    wall.bars.push_back(bar);
    job.walls.replace(wall);
    const Findings found = findingsOf(job, RuleId::BoltSteel);
    return found.empty() ? std::nullopt : std::optional(found[0].level);
  };
  EXPECT_EQ(level(1 + sixteenth), std::nullopt);
  EXPECT_EQ(level(1), std::nullopt);
  EXPECT_EQ(level(1 - sixteenth), Level::Watch);
  EXPECT_EQ(level(sixteenth), Level::Watch);
  EXPECT_EQ(level(0), Level::Fix);
}

} // namespace
} // namespace sillwright
