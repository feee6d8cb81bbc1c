// Forms and pour line: US residential workmanship guideline (level, square), US government guide specification with the
// values of ACI 117 (thickness), common practice (grade shots, straps' plumb, lumber).
#include "said.h"

namespace sillwright {
namespace {

using namespace published;
using R = RuleId;

Job shots(const SillWall& plain, const std::vector<std::pair<double, double>>& heights) {
  return with(jobOf(plain), [&](Job& job, WallLine& wall) {
    for (const auto& [station, height] : heights) {
      GradeShot shot;
      shot.id = takeId(job);
      shot.station = station;
      shot.reading = height;
      wall.shots.push_back(shot);
    }
  });
}

// Common practice: a grade shot within 1/8 in of the pour line. An inch of the form is hatched.
TEST(Forms, ShotsWithinAnEighth) {
  for (const double right : {-0.125, -sixteenth, 0.0, sixteenth, 0.125})
    EXPECT_TRUE(silent(shots({}, {{40, right}}), R::PourShot));
  EXPECT_TRUE(
      says(shots({}, {{40, 0.1875}}), R::PourShot, {Level::Fix, 0.1875, 0.125, {{39.5, 40.5}, {0, 8}, {0, 0.1875}}}));
  EXPECT_TRUE(
      says(shots({}, {{40, -0.1875}}), R::PourShot, {Level::Fix, 0.1875, 0.125, {{39.5, 40.5}, {0, 8}, {-0.1875, 0}}}));
}

// Workmanship guideline: no point more than 1/2 in above or below another within 20 ft.
TEST(Forms, HalfAnInchWithinTwentyFeet) {
  const auto apart = [](double inches, double drop) {
    return shots({.length = 360}, {{20, 0.0625}, {20 + inches, 0.0625 - drop}});
  };
  EXPECT_TRUE(silent(apart(240, 0.5 - sixteenth), R::PourLevel));
  EXPECT_TRUE(silent(apart(240, 0.5), R::PourLevel));
  EXPECT_TRUE(silent(apart(240 + sixteenth, 0.5625), R::PourLevel));
  EXPECT_TRUE(says(apart(240, 0.5625), R::PourLevel, {Level::Watch, 0.5625, 0.5, {{20, 260}, {0, 8}, {-0.5, 0.0625}}}));
  // Three shots, each within 1/2 in of the next: the outer two are 5/8 apart, and 20 ft.
  const Job falling = shots({.length = 360}, {{20, 0.25}, {140, 0}, {260, -0.375}});
  EXPECT_TRUE(says(falling, R::PourLevel, {Level::Watch, 0.625, 0.5, {{20, 260}, {0, 8}, {-0.375, 0.25}}}));
}

// The corner of two walls taped from 3-4-5 triangles: `foot` along the first wall, `across` along the second.
Job taped(double foot, double across, double measured) {
  Job job = jobOf({.length = foot});
  const Id far = takeId(job);
  job.corners.edit([&](std::vector<Corner>& corners) { corners.push_back({far, {foot, across}, {}}); });
  Diagonal diagonal;
  diagonal.id = takeId(job);
  diagonal.from = job.walls[0].startCorner;
  diagonal.to = far;
  diagonal.measured = measured;
  job.diagonals = Shared<std::vector<Diagonal>>({diagonal});
  return job;
}

// Workmanship guideline: 1/2 in on the 20 ft of a 12-16-20 triangle; half of it is aimed for (common practice). The
// foot of the diagonal is hatched.
TEST(Forms, TwelveSixteenTwenty) {
  const Box3 foot{{0, 12}, {0, 8}, {-1, 0}};
  for (const double right : {239.75, 240.0, 240.25})
    EXPECT_TRUE(silent(taped(192, 144, right), R::FormSquare)) << right;
  for (const double off : {-0.3125, 0.3125, -0.5, 0.5})
    EXPECT_TRUE(says(taped(192, 144, 240 + off), R::FormSquare, {Level::Watch, std::abs(off), 0.25, foot})) << off;
  for (const double off : {-0.5625, 0.5625})
    EXPECT_TRUE(says(taped(192, 144, 240 + off), R::FormSquare, {Level::Watch, 0.5625, 0.5, foot})) << off;
}

// The same triangle half as large, 6-8-10, has half of it, twice as large, 24-32-40, twice.
TEST(Forms, TrianglesOfOtherSizes) {
  const Box3 foot{{0, 12}, {0, 8}, {-1, 0}};
  EXPECT_TRUE(silent(taped(96, 72, 120.125), R::FormSquare));
  EXPECT_TRUE(says(taped(96, 72, 120.25), R::FormSquare, {Level::Watch, 0.25, 0.125, foot}));
  EXPECT_TRUE(says(taped(96, 72, 120.3125), R::FormSquare, {Level::Watch, 0.3125, 0.25, foot}));
  EXPECT_TRUE(silent(taped(384, 288, 480.5), R::FormSquare));
  EXPECT_TRUE(says(taped(384, 288, 481), R::FormSquare, {Level::Watch, 1, 0.5, foot}));
  EXPECT_TRUE(says(taped(384, 288, 481.0625), R::FormSquare, {Level::Watch, 1.0625, 1, foot}));
}

// Canadian Wood-Frame House Construction (CMHC), placement of the house, figure 28: as many times 12 in along one side
// of a corner as 16 in along the other make as many times 20 in across when it is square.
TEST(Forms, MultiplesOfTwelveSixteenAndTwenty) {
  for (const double times : {3.0, 5.0, 9.0, 12.0, 24.0}) {
    EXPECT_TRUE(silent(taped(16 * times, 12 * times, 20 * times), R::FormSquare)) << times;
    // 1/4 in on 240 aimed for is 1/48 in on 20: twice that is seen, to either side.
    for (const double off : {-times / 24, times / 24})
      EXPECT_TRUE(says(taped(16 * times, 12 * times, 20 * times + off), R::FormSquare,
                       {Level::Watch, times / 24, times / 48, {{0, 12}, {0, 8}, {-1, 0}}}))
          << times;
  }
}

// Guide specification: walls up to 12 in thick, 3/8 in more or 1/4 in less. Forms 24 high.
TEST(Forms, ThreeEighthsThickerAQuarterThinner) {
  for (const double thickness : {6.0, 8.0, 12.0}) {
    const auto width = [&](double off) {
      return with(shots({}, {{40, 0}}), [&](Job&, WallLine& wall) {
        wall.thickness = thickness;
        wall.shots[0].width = thickness + off;
      });
    };
    for (const double right : {-0.25, -0.1875, 0.0, 0.3125, 0.375})
      EXPECT_TRUE(silent(width(right), R::FormThickness)) << right;
    EXPECT_TRUE(says(width(0.4375), R::FormThickness,
                     {Level::Watch, 0.4375, 0.375, {{39.5, 40.5}, {thickness, thickness + 0.4375}, {-24, 0}}}));
    EXPECT_TRUE(says(width(-0.3125), R::FormThickness,
                     {Level::Watch, 0.3125, 0.25, {{39.5, 40.5}, {thickness - 0.3125, thickness}, {-24, 0}}}));
  }
}

// Common practice: a strap within 1/8 in of plumb over 24. 2 1/2 wide and 20 high it is 20 / 24 of what was read off at
// its top.
TEST(Forms, AStrapAnEighthInTwentyFourOutOfPlumb) {
  const auto read = [](double plumb, double gauge = 24) {
    return with(jobOf({}), [&](Job& job, WallLine& wall) {
      StrapType type;
      type.id = takeId(job);
      type.plateWidth = 2.5;
      type.plateThickness = 0.1;
      type.profile = {{-0.05, 0}, {-0.05, -10}};
      type.exposedLength = 20;
      job.types.edit([&](HardwareTypes& types) { types.straps.push_back(type); });
      Strap strap;
      strap.id = takeId(job);
      strap.type = type.id;
      strap.station = 40;
      wall.straps.push_back(strap);
      Reading reading;
      reading.piece = strap.id;
      reading.plumb = plumb;
      reading.gauge = gauge;
      wall.readings.push_back(reading);
    });
  };
  for (const double right : {-0.125, -sixteenth, 0.0, sixteenth, 0.125})
    EXPECT_TRUE(silent(read(right), R::StrapPlumb)) << right;
  EXPECT_TRUE(silent(read(sixteenth, 12), R::StrapPlumb));
  EXPECT_TRUE(
      says(read(0.1875), R::StrapPlumb, {Level::Watch, 0.1875, 0.125, {{38.75, 41.25 + 0.15625}, {-0.1, 0}, {0, 20}}}));
  EXPECT_TRUE(says(read(-0.125, 16), R::StrapPlumb, // 3/16 in 24
                   {Level::Watch, 0.1875, 0.125, {{38.75 - 0.15625, 41.25}, {-0.1, 0}, {0, 20}}}));
}

// Common practice: no piece of sill longer than 20 ft; a splice makes two of it.
TEST(Forms, SillsOfTwentyFeet) {
  EXPECT_TRUE(silent(jobOf({.length = 240 - sixteenth}), R::SillPiece));
  EXPECT_TRUE(silent(jobOf({.length = 240}), R::SillPiece));
  EXPECT_TRUE(says(jobOf({.length = 240 + sixteenth}), R::SillPiece,
                   {Level::Watch, 240.0625, 240, {{0, 240.0625}, {0, 5.5}, {0, 1.5}}}));
  EXPECT_TRUE(silent(jobOf({.length = 480, .splices = {240}}), R::SillPiece));
  EXPECT_TRUE(says(jobOf({.length = 480, .splices = {240 - sixteenth}}), R::SillPiece,
                   {Level::Watch, 240.0625, 240, {{239.9375, 480}, {0, 5.5}, {0, 1.5}}}));
}

} // namespace
} // namespace sillwright
