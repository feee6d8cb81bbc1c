// Sill bolts against the published text. Document and clause beside each case.
#include "core/rules/thread_stack.h"
#include "sill_wall.h"

namespace sillwright {
namespace {

using namespace published;
using R = RuleId;
constexpr double sixteenth = 1.0 / 16;

// Computed from ASME B18.2.2, B18.21.1, B1.1: 2x sill, 0.229 in plate, cut washer, nut, two threads.
TEST(SillBolts, ThreadStack) {
  const WasherType plate;
  const double expected[][3] = {{0.5, 2.46, 3.46}, {0.625, 2.63, 3.63}, {0.75, 2.77, 3.77}};
  for (const auto& row : expected) {
    BoltType type;
    type.diameter = row[0];
    EXPECT_NEAR(total(*threadStack({type.diameter, type.threadsPerInch}, 1.5, &plate, true, 2)), row[1], 0.005);
    EXPECT_NEAR(total(*threadStack({type.diameter, type.threadsPerInch}, 2.5, &plate, true, 2)), row[2], 0.005);
  }
}

// The same figures, as the rule asks for them on a wall: the next sixteenth over the stack passes, a sixteenth under
// that is short. 2.46 2.63 2.77 and 3.46 3.63 3.77 lie under 2 1/2, 2 11/16, 2 13/16 and 3 1/2, 3 11/16, 3 13/16.
TEST(SillBolts, ThreadOnAWall) {
  const double expected[][3] = {{0.5, 2.5, 3.5}, {0.625, 2.6875, 3.6875}, {0.75, 2.8125, 3.8125}};
  for (const auto& row : expected)
    for (const int thickness : {2, 3}) {
      const double needed = thickness == 2 ? row[1] : row[2];
      const auto fixes = [&](double projection) {
        SillWall wall{.sill = {thickness, 6}, .boltDiameter = row[0], .bolts = {12}, .projection = projection};
        const Findings found = findingsOf(jobOf(wall), R::BoltThread);
        return !found.empty() && found[0].level == Level::Fix;
      };
      EXPECT_FALSE(fixes(needed));
      EXPECT_TRUE(fixes(needed - sixteenth));
    }
}

// Common practice: on a 3x sill with a 1/4 in plate at least 3 1/4 in. The stack of the smallest bolt asks for more.
TEST(SillBolts, ThreadOfTheTrade) {
  SillWall wall{.sill = {3, 6}, .boltDiameter = 0.5, .bolts = {12}, .projection = 3.25};
  wall.washer.thickness = 0.25;
  const Findings found = findingsOf(jobOf(wall), R::BoltThread);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_GE(found[0].limit, 3.25);
}

// IRC 2024 R403.1.6: an 8 ft sill with bolts 12 in from its ends has enough with two, 72 in apart.
TEST(SillBolts, TwoBoltsTwelveFromTheEndsHoldEightFeet) {
  for (const R rule : {R::BoltCount, R::BoltEndFar, R::BoltEndNear, R::BoltSpacing, R::BoltThird, R::BoltEmbed})
    EXPECT_EQ(count({.bolts = {12, 84}}, rule), 0u);
}

// IRC 2024 R403.1.6: with the end bolts at 6 in it needs three.
TEST(SillBolts, BoltsSixFromTheEndsNeedAThird) {
  EXPECT_EQ(count({.bolts = {6, 90}}, R::BoltSpacing), 1u);
  EXPECT_EQ(count({.bolts = {6, 48, 90}}, R::BoltSpacing), 0u);
}

// IRC 2024 R403.1.6: at most 12 in from each end of each section.
TEST(SillBolts, AtMostTwelveFromTheEnds) {
  EXPECT_EQ(count({.bolts = {12, 84}}, R::BoltEndFar), 0u);
  EXPECT_EQ(count({.bolts = {12 + sixteenth, 84}}, R::BoltEndFar), 1u);
  EXPECT_EQ(count({.bolts = {12, 84 - sixteenth}}, R::BoltEndFar), 1u);
  EXPECT_EQ(count({.bolts = {12, 36, 60, 84}, .splices = {48}}, R::BoltEndFar), 0u);
  EXPECT_EQ(count({.bolts = {12, 36 - sixteenth, 60 + sixteenth, 84}, .splices = {48}}, R::BoltEndFar), 2u);
}

// IRC 2024 R403.1.6: at least seven diameters from the ends: 3 1/2, 4 3/8, 5 1/4 in for 1/2, 5/8, 3/4.
TEST(SillBolts, AtLeastSevenDiametersFromTheEnds) {
  const double table[][2]{{0.5, 3.5}, {0.625, 4.375}, {0.75, 5.25}};
  for (const auto& row : table) {
    const double least = row[1];
    const auto found = [&](double away) {
      return count({.boltDiameter = row[0], .bolts = {away, 48, 96 - away}}, R::BoltEndNear);
    };
    EXPECT_EQ(found(least + sixteenth), 0u);
    EXPECT_EQ(found(least), 0u);
    EXPECT_EQ(found(least - sixteenth), 2u);
  }
}

// IRC 2024 R403.1.6: at most 6 ft; R403.1.6.1: at most 4 ft over two storeys.
TEST(SillBolts, SixFeetApartOrFourOverTwoStoreys) {
  const auto found = [](double apart, int storeys) {
    return count({.length = apart + 12, .bolts = {6, 6 + apart}, .storeys = storeys}, R::BoltSpacing);
  };
  EXPECT_EQ(found(72, 2), 0u);
  EXPECT_EQ(found(72 + sixteenth, 2), 1u);
  EXPECT_EQ(found(48, 3), 0u);
  EXPECT_EQ(found(48 + sixteenth, 3), 1u);
}

// IRC 2024 R403.1.6: at least 7 in deep. A 12 in bolt that stands up 5 is.
TEST(SillBolts, SevenDeep) {
  EXPECT_EQ(count({.bolts = {12}, .projection = 5}, R::BoltEmbed), 0u);
  EXPECT_EQ(count({.bolts = {12}, .projection = 5 + sixteenth}, R::BoltEmbed), 1u);
  EXPECT_EQ(count({.boltLength = 10, .bolts = {12}, .projection = 3}, R::BoltEmbed), 0u);
  EXPECT_EQ(count({.boltLength = 10, .bolts = {12}, .projection = 3 + sixteenth}, R::BoltEmbed), 1u);
}

// IRC 2024 R403.1.6: in the middle third of the width: 1 1/6 to 2 1/3, 1 5/6 to 3 2/3, 2 5/12 to 4 5/6 in for 4, 6, 8.
TEST(SillBolts, InTheMiddleThird) {
  const struct {
    int nominal;
    double from, to;
  } table[]{{4, 7.0 / 6, 7.0 / 3}, {6, 11.0 / 6, 11.0 / 3}, {8, 29.0 / 12, 29.0 / 6}};
  for (const auto& row : table) {
    const auto found = [&](double depth) {
      return count({.sill = {2, row.nominal}, .bolts = {12}, .depth = depth}, R::BoltThird);
    };
    for (const double inside : {row.from, (row.from + row.to) / 2, row.to})
      EXPECT_EQ(found(inside), 0u);
    EXPECT_EQ(found(row.from - sixteenth), 1u);
    EXPECT_EQ(found(row.to + sixteenth), 1u);
  }
}

// IRC 2024 R403.1.6: at least two bolts in each plate section.
TEST(SillBolts, TwoInEachSection) {
  EXPECT_EQ(count({.bolts = {12}}, R::BoltCount), 1u);
  EXPECT_EQ(count({.bolts = {12, 84}, .splices = {48}}, R::BoltCount), 2u);
  EXPECT_EQ(count({.bolts = {12, 36, 60, 84}, .splices = {48}}, R::BoltCount), 0u);
}

// IRC 2024 R403.1.6, exceptions: a wall of up to 24 in that joins two others one bolt in its centre third, up to 12 in
// none.
TEST(SillBolts, ShortWallsBetweenOthers) {
  const auto found = [](double length, std::vector<double> bolts, bool joins = true) {
    return count({.length = length, .bolts = std::move(bolts), .joinsTwoWalls = joins}, R::BoltCount);
  };
  EXPECT_EQ(found(24, {8}), 0u);
  EXPECT_EQ(found(24, {16}), 0u);
  EXPECT_EQ(found(24, {8 - sixteenth}), 1u);
  EXPECT_EQ(found(24, {16 + sixteenth}), 1u);
  EXPECT_EQ(found(24 + sixteenth, {12}), 1u);
  EXPECT_EQ(found(24, {12}, false), 1u);
  EXPECT_EQ(found(12, {}), 0u);
  EXPECT_EQ(found(12 + sixteenth, {}), 1u);
  EXPECT_EQ(found(12, {}, false), 1u);
}

} // namespace
} // namespace sillwright
