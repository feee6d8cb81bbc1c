// Sills at their corners and on their concrete. Geometry worked by hand; an eighth at corners is common practice.
#include "said.h"

namespace sillwright {
namespace {

using namespace published;
using R = RuleId;
constexpr Interval wide{0, 5.5}, high{0, 1.5}; // a 2x6 at the outside face

// The wall in question, 96 long, comes after a wall of 120 with a 2x6 sill of its own at the outside face that ends
// `short` of the corner. At an outside corner that wall comes down from above, at an inside corner up from below.
Job afterAnother(double from, bool inside, double endsShort = 0) {
  return with(jobOf({}), [&](Job& job, WallLine& wall) {
    WallLine before;
    before.id = takeId(job);
    before.startCorner = takeId(job);
    before.endCorner = wall.startCorner;
    job.corners.edit([&](std::vector<Corner>& corners) {
      corners.push_back({before.startCorner, {0, inside ? -120.0 : 120.0}, {}});
    });
    Sill sill;
    sill.id = takeId(job);
    sill.to = 120 - endsShort;
    before.sills.push_back(sill);
    wall.sills[0].from = from;
    wall.startFraming = inside ? EndFraming::RunsBy : EndFraming::Butts;
    job.walls.add(before);
  });
}

// Outside corner: the other sill runs by to the corner, 5 1/2 wide; this one butts at 5 1/2.
TEST(Sills, AButtingSillMeetsTheOneThatRunsBy) {
  for (const double right : {5.375, 5.4375, 5.5, 5.5625, 5.625})
    EXPECT_TRUE(silent(afterAnother(right, false), R::SillCorner)) << right;
  EXPECT_TRUE(
      says(afterAnother(5.6875, false), R::SillCorner, {Level::Fix, 0.1875, 0.125, {{5.5, 5.6875}, wide, high}}));
  EXPECT_TRUE(
      says(afterAnother(5.3125, false), R::SillCorner, {Level::Fix, 0.1875, 0.125, {{5.3125, 5.5}, wide, high}}));
}

// There the other one stops 3/16 short of the corner: its wall, 120 long, tells that, and its own end is to go on.
TEST(Sills, TheSillThatRunsByReachesTheCorner) {
  EXPECT_TRUE(silent(afterAnother(5.5, false, 0.125), R::SillCorner));
  EXPECT_TRUE(findingsOf(afterAnother(5.5, false, 0.125), R::SillCorner, 1).empty());
  const Job job = afterAnother(5.5, false, 0.1875);
  EXPECT_TRUE(silent(job, R::SillCorner));
  const Findings found = findingsOf(job, R::SillCorner, 1);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_TRUE(alike(saidOf(found[0]), {Level::Fix, 0.1875, 0.125, {{119.8125, 120}, wide, high}}, 1e-9))
      << text(saidOf(found[0]));
  ASSERT_TRUE(found[0].correction);
  EXPECT_EQ(found[0].correction->field, Correction::Field::RightEnd);
  EXPECT_NEAR(found[0].correction->by, 0.1875, 1e-9);
}

// Inside corner: this sill goes on over the other's end, which lies at -5 1/2 to 0, and ends with its far edge.
TEST(Sills, AtAnInsideCornerOneGoesOnPastTheOther) {
  EXPECT_TRUE(silent(afterAnother(-5.5, true), R::SillCorner));
  EXPECT_TRUE(silent(afterAnother(-5.375, true), R::SillCorner));
  EXPECT_TRUE(
      says(afterAnother(-5.3125, true), R::SillCorner, {Level::Fix, 0.1875, 0.125, {{-5.5, -5.3125}, wide, high}}));
}

// Both stop at the corner: the 5 1/2 by 5 1/2 between them is bare.
TEST(Sills, ACornerLeftBare) {
  EXPECT_TRUE(says(afterAnother(0, true), R::SillCorner, {Level::Fix, 5.5, 0.125, {{-5.5, 0}, wide, high}}));
  EXPECT_TRUE(says(afterAnother(5.5, false, 5.5), R::SillCorner, {Level::Fix, 5.5, 0.125, {{0, 5.5}, wide, high}}));
}

// On concrete 5 1/2 thick a sill 5 1/2 wide lies wholly; a sixteenth less, or an inset of a sixteenth, and it hangs
// over.
TEST(Sills, WhollyOnTheConcreteAcross) {
  const auto on = [](double thickness, double inset) {
    return with(jobOf({}), [&](Job&, WallLine& wall) {
      wall.thickness = thickness;
      wall.sillInset = inset;
    });
  };
  EXPECT_TRUE(silent(on(5.5 + sixteenth, sixteenth), R::SillConcrete));
  EXPECT_TRUE(silent(on(5.5, 0), R::SillConcrete));
  EXPECT_TRUE(
      says(on(5.5 - sixteenth, 0), R::SillConcrete, {Level::Fix, sixteenth, 0, {{0, 96}, {5.4375, 5.5}, high}}));
  EXPECT_TRUE(says(on(8, -sixteenth), R::SillConcrete, {Level::Fix, sixteenth, 0, {{0, 96}, {-sixteenth, 0}, high}}));
}

// Past an end of the concrete; the plans may allow so much of an overhang.
TEST(Sills, WhollyOnTheConcreteAlong) {
  const auto from = [](double station, double allowed = 0) {
    return with(jobOf({}), [&](Job& job, WallLine& wall) {
      wall.sills[0].from = station;
      job.limits.edit([&](JobLimits& limits) { limits.sillOverhang = allowed; });
    });
  };
  EXPECT_TRUE(silent(from(0), R::SillConcrete));
  EXPECT_TRUE(says(from(-sixteenth), R::SillConcrete, {Level::Fix, sixteenth, 0, {{-sixteenth, 0}, wide, high}}));
  EXPECT_TRUE(silent(from(-0.5, 0.5), R::SillConcrete));
  EXPECT_TRUE(says(from(-0.5625, 0.5), R::SillConcrete, {Level::Fix, 0.5625, 0.5, {{-0.5625, 0}, wide, high}}));
  // The concrete of a wall that comes up from below goes on by its 8 in at this inside corner.
  EXPECT_TRUE(silent(afterAnother(-8, true), R::SillConcrete));
  EXPECT_TRUE(says(afterAnother(-8 - sixteenth, true), R::SillConcrete,
                   {Level::Fix, sixteenth, 0, {{-8.0625, -8}, wide, high}}));
}

} // namespace
} // namespace sillwright
