// Cover over bars as the rule asks for it on a wall. ACI 318-19 Table 20.5.1.3.1.
#include "sill_wall.h"

namespace sillwright {
namespace {

using namespace published;
constexpr double sixteenth = 1.0 / 16;
constexpr double earth = 3;

// A wall 8 in thick and 24 high on a footing 16 x 8 that stands out 4 on either side.
std::optional<double> asksFor(Point3 a, Point3 b, int size) {
  Job job = jobOf({});
  WallLine wall = job.walls[0];
  wall.footing.width = 16;
  wall.footing.depth = 8;
  wall.footing.projection = 4;
  Bar bar;
  bar.id = takeId(job);
  bar.size = size;
  bar.planned = {a, b};
  wall.bars.push_back(bar);
  job.walls.replace(wall);
  const Findings found = findingsOf(job, RuleId::BarCover);
  EXPECT_LE(found.size(), 1u);
  return found.empty() ? std::nullopt : std::optional(found[0].limit);
}

struct Size {
  int number;
  double formed;
  double radius() const { return number / 16.0; }
};
// No. 5 and smaller 1 1/2 in; No. 6 and larger 2 in.
constexpr Size sizes[]{{5, 1.5}, {6, 2}};

// Exposed to weather or in contact with ground: the formed outside face of the stem.
TEST(Cover, FormedFace) {
  for (const Size& size : sizes) {
    const double depth = size.formed + size.radius();
    const auto at = [&](double d) { return asksFor({50, d, -20}, {50, d, -4}, size.number); };
    EXPECT_FALSE(at(depth + sixteenth));
    EXPECT_FALSE(at(depth));
    EXPECT_EQ(at(depth - sixteenth), size.formed);
  }
}

// The same at the top of the stem and at its end.
TEST(Cover, TopAndEndOfTheStem) {
  for (const Size& size : sizes) {
    const double in = size.formed + size.radius();
    EXPECT_FALSE(asksFor({10, 4, -in}, {86, 4, -in}, size.number));
    EXPECT_EQ(asksFor({10, 4, -in + sixteenth}, {86, 4, -in + sixteenth}, size.number), size.formed);
    EXPECT_FALSE(asksFor({in, 4, -20}, {in, 4, -4}, size.number));
    EXPECT_EQ(asksFor({in - sixteenth, 4, -20}, {in - sixteenth, 4, -4}, size.number), size.formed);
  }
}

// Cast against earth: bottom and sides of the footing, 3 in whatever the size.
TEST(Cover, AgainstEarth) {
  for (const Size& size : sizes) {
    const double low = -32 + earth + size.radius();
    const auto at = [&](double d, double z) { return asksFor({10, d, z}, {86, d, z}, size.number); };
    EXPECT_FALSE(at(4, low));
    EXPECT_EQ(at(4, low - sixteenth), earth);
    const double out = -4 + earth + size.radius();
    EXPECT_FALSE(at(out, low));
    EXPECT_EQ(at(out - sixteenth, low), earth);
    const double in = 12 - earth - size.radius();
    EXPECT_FALSE(at(in, low));
    EXPECT_EQ(at(in + sixteenth, low), earth);
  }
}

} // namespace
} // namespace sillwright
