// Straps against published text: how deep their nails go, and how far they stay from bars and faces (borrowed from
// what is asked of bars).
#include "core/standards/fasteners.h"
#include "sill_wall.h"

namespace sillwright {
namespace {

using namespace published;
constexpr double sixteenth = 1.0 / 16;

// A 4x6 post at 48 and on it a strap 2 1/2 x 0.1, down 10 at the outside face and level inward to `tip`. Its plate is
// at the outside face, so a nail is its length less 0.1 in the post.
struct OneStrap {
  double nailDiameter = 0.148;
  double nailLength = 3;
  double tip = 5;
  double thickness = 8;             // of the wall
  double stemHeight = 24;           // no footing
  std::optional<double> barDepth{}; // of a No. 4 along the wall, 5 down
};

std::optional<Level> levelOf(const OneStrap& plain, RuleId rule) {
  Job job = jobOf({});
  StrapType type;
  type.id = takeId(job);
  type.plateWidth = 2.5;
  type.plateThickness = 0.1;
  type.profile = {{-0.05, 0}, {-0.05, -10}, {plain.tip, -10}};
  type.exposedLength = 20;
  type.nails.rows = {0};
  type.nails.first = 5;
  type.nails.spacing = 1;
  type.nails.count = 8;
  type.nails.nailDiameter = plain.nailDiameter;
  type.nails.nailLength = plain.nailLength;
  job.types.edit([&](HardwareTypes& types) { types.straps.push_back(type); });
  WallLine wall = job.walls[0];
  wall.thickness = plain.thickness;
  wall.stemHeight = plain.stemHeight;
  Column post;
  post.id = takeId(job);
  post.station = 48;
  post.makeUp = {1, {4, 6}};
  wall.columns.push_back(post);
  Strap strap;
  strap.id = takeId(job);
  strap.type = type.id;
  strap.station = 48;
  strap.column = post.id;
  wall.straps.push_back(strap);
  if (plain.barDepth) {
    Bar bar;
    bar.id = takeId(job);
    bar.run = BarRun::Along;
    bar.planned = {{2, *plain.barDepth, -5}, {94, *plain.barDepth, -5}};
    wall.bars.push_back(bar);
  }
  job.walls.replace(wall);
  const Findings found = findingsOf(job, rule);
  EXPECT_LE(found.size(), 1u);
  return found.empty() ? std::nullopt : std::optional(found[0].level);
}

// NDS 2018 12.1.6.4: 6 D at least, 10 D for the full value. In the post: 0.786 and 1.31 for 8d, 0.888 and 1.48 for 10d,
// 0.972 and 1.62 in for 16d common nails. The plate takes 0.1 of a nail.
TEST(StrapLimits, NailsSixDiametersInTheColumnAndTenForTheirFullValue) {
  const struct {
    double diameter, least, full;
  } nails[] = {{0.131, 0.786, 1.31}, {0.148, 0.888, 1.48}, {0.162, 0.972, 1.62}};
  for (const auto& nail : nails) {
    const auto level = [&](double inColumn) {
      return levelOf({.nailDiameter = nail.diameter, .nailLength = inColumn + 0.1}, RuleId::StrapNailDepth);
    };
    EXPECT_EQ(level(nail.full + sixteenth), std::nullopt);
    EXPECT_EQ(level(nail.full), std::nullopt);
    EXPECT_EQ(level(nail.full - sixteenth), Level::Watch);
    EXPECT_EQ(level(nail.least), Level::Watch);
    EXPECT_EQ(level(nail.least - sixteenth), Level::Fix);
  }
}

// Common nails (ASTM F1667) are all longer than 10 D and the plate: 1.15 in of the 3d is 14 D, 3.4 in of the 16d 21 D.
TEST(StrapLimits, CommonNailsReachTheirFullValueBehindABarePlate) {
  for (const NailSize& nail : commonNails())
    EXPECT_EQ(levelOf({.nailDiameter = nail.diameter, .nailLength = nail.length}, RuleId::StrapNailDepth), std::nullopt)
        << nail.name;
}

// ACI 318-19 25.2.1, borrowed: 1 in clear of bars is aimed for; contact is put right. The bar's near side is its depth
// less 1/4, the plate's inner face at depth 0.
TEST(StrapLimits, AnInchFromBars) {
  const auto level = [](double clear) { return levelOf({.barDepth = clear + 0.25}, RuleId::StrapSteel); };
  EXPECT_EQ(level(1 + sixteenth), std::nullopt);
  EXPECT_EQ(level(1), std::nullopt);
  EXPECT_EQ(level(1 - sixteenth), Level::Watch);
  EXPECT_EQ(level(sixteenth), Level::Watch);
  EXPECT_EQ(level(0), Level::Fix);
}

// ACI 318-19 Table 20.5.1.3.1, borrowed: 3 in against earth under the hook, whose underside is 10.05 down.
TEST(StrapLimits, ThreeInchesOverEarth) {
  const auto level = [](double cover) { return levelOf({.stemHeight = 10.05 + cover}, RuleId::StrapDepth); };
  EXPECT_EQ(level(3 + sixteenth), std::nullopt);
  EXPECT_EQ(level(3), std::nullopt);
  EXPECT_EQ(level(3 - sixteenth), Level::Watch);
  EXPECT_EQ(level(-sixteenth), Level::Fix);
}

// The same table, formed faces, No. 5 and smaller: 1 1/2 in behind the tip of the hook, 5 in.
TEST(StrapLimits, AnInchAndAHalfBehindTheHook) {
  const auto level = [](double cover) { return levelOf({.thickness = 5 + cover}, RuleId::StrapBack); };
  EXPECT_EQ(level(1.5 + sixteenth), std::nullopt);
  EXPECT_EQ(level(1.5), std::nullopt);
  EXPECT_EQ(level(1.5 - sixteenth), Level::Watch);
  EXPECT_EQ(level(-sixteenth), Level::Fix);
}

} // namespace
} // namespace sillwright
