// Shear panels against SDPWS 2021 4.3.3.
#include "sill_wall.h"

namespace sillwright {
namespace {

using namespace published;
constexpr double sixteenth = 1.0 / 16;

std::optional<Level> slender(double height, double length) {
  Job job = jobOf({});
  WallLine wall = job.walls[0];
  wall.panels[0].height = height;
  wall.panels[0].to = length;
  job.walls.replace(wall);
  const Findings found = findingsOf(job, RuleId::PanelSlender);
  EXPECT_LE(found.size(), 1u);
  return found.empty() ? std::nullopt : std::optional(found[0].level);
}

// Height to length at most 3 1/2 to 1; over 2 to 1 less than the full value. A panel 8 ft high: 48 in and, rounded up
// to a sixteenth, 27 7/16 in long; one 10 ft high: 60 and 34 5/16.
TEST(PanelLimits, ThreeAndAHalfToOneAndTwoToOne) {
  const struct { double height, full, least; } panels[] = {{96, 48, 27.4375}, {120, 60, 34.3125}};
  for (const auto& panel : panels) {
    EXPECT_EQ(slender(panel.height, panel.full + sixteenth), std::nullopt);
    EXPECT_EQ(slender(panel.height, panel.full), std::nullopt);
    EXPECT_EQ(slender(panel.height, panel.full - sixteenth), Level::Watch);
    EXPECT_EQ(slender(panel.height, panel.least), Level::Watch);
    EXPECT_EQ(slender(panel.height, panel.least - sixteenth), Level::Ask);
  }
}

} // namespace
} // namespace sillwright
