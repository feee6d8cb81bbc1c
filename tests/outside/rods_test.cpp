// Rods of bracket hold-downs: ACI 318-19 Table 17.9.2(a) (edges), Table 20.5.1.3.1 (cover) and 25.2.1 (clear of bars,
// borrowed), IRC 2024 R403.1.6 (embedment, borrowed), ASME B18.2.2 and B1.1 (thread), the type's own bracket, common
// practice (plumb).
#include "said.h"

namespace sillwright {
namespace {

using namespace published;
using R = RuleId;

// A rod beside a 4x6 post (3 1/2 along the wall) at 40: its right face is at 41 3/4, the bracket's line 1 1/2 farther,
// at 43 1/4. The foot of the rod is no wider than the rod itself. Sill 2x6, no footing, 24 in of concrete.
struct OneRod {
  double diameter = 0.75;
  double threads = 10;
  double offset = 1.5;
  double depth = 4;
  double projection = 6;
  double embedment = 12;
  double thickness = 8; // of the wall
  int sill = 2;         // its nominal thickness
};
constexpr double at = 43.25;

Job job(const OneRod& plain) {
  return with(jobOf({.sill = {plain.sill, 6}}), [&](Job& changed, WallLine& wall) {
    RodType type;
    type.id = takeId(changed);
    type.diameter = type.footWidth = plain.diameter;
    type.footThickness = 0.5;
    type.embedment = plain.embedment;
    type.threadLength = 8;
    type.threadsPerInch = plain.threads;
    type.bracketOffset = 1.5;
    changed.types.edit([&](HardwareTypes& types) { types.rods.push_back(type); });
    wall.thickness = plain.thickness;
    Column post;
    post.id = takeId(changed);
    post.station = 40;
    post.makeUp = {1, {4, 6}};
    wall.columns.push_back(post);
    Rod rod;
    rod.id = takeId(changed);
    rod.type = type.id;
    rod.column = post.id;
    rod.offset = plain.offset;
    rod.depth = plain.depth;
    rod.projection = plain.projection;
    wall.rods.push_back(rod);
  });
}

// Type: the bracket holds the rod 1 1/2 from its column; an eighth either way.
TEST(Rods, TheBracketsLineWithinAnEighth) {
  for (const double right : {1.375, 1.4375, 1.5, 1.5625, 1.625})
    EXPECT_TRUE(silent(job({.offset = right}), R::RodOffset));
  EXPECT_TRUE(says(job({.offset = 1.6875}), R::RodOffset,
                   {Level::Fix, 0.1875, 0.125, {{at, at + 0.1875}, {3.625, 4.375}, {0, 6}}}));
  EXPECT_TRUE(says(job({.offset = 1.3125}), R::RodOffset,
                   {Level::Fix, 0.1875, 0.125, {{at - 0.1875, at}, {3.625, 4.375}, {0, 6}}}));
}

// ACI 318-19 Table 17.9.2(a): 6 d from the axis of a torqued anchor to an edge: 3, 3 3/4, 4 1/2, 5 1/4 and 6 in. In a
// wall twice as thick the middle just has it on both sides; the rod goes 12 1/2 down.
TEST(Rods, SixDiametersFromTheAxisToTheEdges) {
  const double least[][2]{{0.5, 3}, {0.625, 3.75}, {0.75, 4.5}, {0.875, 5.25}, {1, 6}};
  for (const auto& [diameter, edge] : least) {
    const auto in = [&, d = diameter, e = edge](double depth) {
      return job({.diameter = d, .depth = depth, .thickness = 2 * e + sixteenth});
    };
    const Interval along{at - diameter / 2, at + diameter / 2};
    EXPECT_TRUE(silent(in(edge), R::RodEdge));
    EXPECT_TRUE(silent(in(edge + sixteenth), R::RodEdge));
    EXPECT_TRUE(says(in(edge - sixteenth), R::RodEdge,
                     {Level::Ask, edge - sixteenth, edge, {along, {0, edge - sixteenth}, {-12.5, 0}}}));
    EXPECT_TRUE(says(in(edge + 2 * sixteenth), R::RodEdge,
                     {Level::Ask, edge - sixteenth, edge, {along, {edge + 0.125, 2 * edge + sixteenth}, {-12.5, 0}}}));
  }
}

// The same to the end of the wall: the rod moved so that it is that far from its left end.
TEST(Rods, SixDiametersToTheEndOfTheConcrete) {
  const auto away = [](double from) {
    return with(job({.diameter = 0.75, .depth = 6, .thickness = 12}),
                [&](Job&, WallLine& wall) { wall.columns[0].station = from - 3.25; });
  };
  EXPECT_TRUE(silent(away(4.5), R::RodEdge));
  EXPECT_TRUE(silent(away(4.5 + sixteenth), R::RodEdge));
  EXPECT_TRUE(
      says(away(4.5 - sixteenth), R::RodEdge, {Level::Ask, 4.4375, 4.5, {{0, 4.4375}, {5.625, 6.375}, {-12.5, 0}}}));
}

// IRC 2024 R403.1.6, borrowed from sill bolts: 7 in, to the bearing of the foot, which is 1/2 thick.
TEST(Rods, SevenInchesDeep) {
  EXPECT_TRUE(silent(job({.embedment = 7 + sixteenth}), R::RodEmbed));
  EXPECT_TRUE(silent(job({.embedment = 7}), R::RodEmbed));
  const Findings found = findingsOf(job({.embedment = 7 - sixteenth}), R::RodEmbed);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].level, Level::Fix);
  EXPECT_DOUBLE_EQ(found[0].measured, 6.9375);
  EXPECT_DOUBLE_EQ(found[0].limit, 7);
}

// ASME B18.2.2 and B1.1: sill, nut .559, .665, .776 and two threads of 11, 10 and 9 (the last from memory) to the inch:
// 1 1/2 + .559 + .182 = 2.241, 2.365 and 2.498, on the tape 2 1/4, 2 3/8 and 2 1/2; an inch more on a 3x sill.
TEST(Rods, ThreadForSillNutAndTwoThreads) {
  const struct { double diameter, threads, needed; } rods[] = {{0.625, 11, 2.25}, {0.75, 10, 2.375}, {0.875, 9, 2.5}};
  for (const auto& rod : rods)
    for (const int sill : {2, 3}) {
      const double needed = rod.needed + (sill - 2);
      const double half = rod.diameter / 2;
      const auto up = [&](double by) {
        return job({.diameter = rod.diameter, .threads = rod.threads, .projection = by, .sill = sill});
      };
      const auto region = [&](double from, double to) {
        return Box3{{at - half, at + half}, {4 - half, 4 + half}, {from, to}};
      };
      EXPECT_TRUE(silent(up(needed + 0.25), R::RodThread));
      EXPECT_TRUE(says(up(needed + 0.1875), R::RodThread,
                       {Level::Watch, 0.1875, 0.25, region(needed + 0.1875, needed + 0.25)}));
      EXPECT_TRUE(says(up(needed), R::RodThread, {Level::Watch, 0, 0.25, region(needed, needed + 0.25)}));
      EXPECT_TRUE(says(up(needed - sixteenth), R::RodThread,
                       {Level::Fix, needed - sixteenth, needed, region(needed - sixteenth, needed)}));
    }
}

// ACI 318-19 25.2.1, borrowed: 1 in clear of a No. 4 is aimed for; contact is put right. Rod 3/4 and bar 1/2 thick.
TEST(Rods, AnInchFromBars) {
  const auto clear = [](double by) {
    return with(job({}), [&](Job& changed, WallLine& wall) {
      Bar bar;
      bar.id = takeId(changed);
      const double station = at + 0.375 + by + 0.25;
      bar.planned = {{station, 4, -10}, {station, 4, -3}};
      wall.bars.push_back(bar);
    });
  };
  const auto levelOf = [&](double by) -> std::optional<Level> {
    const Findings found = findingsOf(clear(by), R::RodSteel);
    EXPECT_LE(found.size(), 1u);
    if (found.empty())
      return std::nullopt;
    EXPECT_NEAR(found[0].measured, by, 1e-9);
    EXPECT_NEAR(found[0].region.s.from, at + 0.375, 1e-9);
    EXPECT_NEAR(found[0].region.s.to, at + 0.375 + by, 1e-9);
    return found[0].level;
  };
  EXPECT_EQ(levelOf(1 + sixteenth), std::nullopt);
  EXPECT_EQ(levelOf(1), std::nullopt);
  EXPECT_EQ(levelOf(1 - sixteenth), Level::Watch);
  EXPECT_EQ(levelOf(sixteenth), Level::Watch);
  EXPECT_EQ(levelOf(0), Level::Fix);
}

// ACI 318-19 Table 20.5.1.3.1, as over a bar as thick: formed faces 1 1/2 in up to 5/8, 2 in from 3/4 on.
TEST(Rods, CoverOfABarAsThick) {
  const double least[][2]{{0.5, 1.5}, {0.625, 1.5}, {0.75, 2}, {0.875, 2}, {1, 2}};
  for (const auto& [diameter, cover] : least) {
    const auto covered = [&, d = diameter](double by) { return job({.diameter = d, .depth = by + d / 2}); };
    const Interval along{at - diameter / 2, at + diameter / 2};
    EXPECT_TRUE(silent(covered(cover + sixteenth), R::RodCover));
    EXPECT_TRUE(silent(covered(cover), R::RodCover));
    EXPECT_TRUE(says(covered(cover - sixteenth), R::RodCover,
                     {Level::Ask, cover - sixteenth, cover, {along, {0, cover - sixteenth}, {-12.5, 0}}}));
  }
}

// The same table, against earth: 3 in under the foot, whatever the thickness. 24 in of concrete without a footing.
TEST(Rods, ThreeInchesOverEarth) {
  for (const double diameter : {0.625, 0.875}) {
    const auto over = [&](double by) { return job({.diameter = diameter, .embedment = 24 - 0.5 - by}); };
    const Interval along{at - diameter / 2, at + diameter / 2}, across{4 - diameter / 2, 4 + diameter / 2};
    EXPECT_TRUE(silent(over(3 + sixteenth), R::RodCover));
    EXPECT_TRUE(silent(over(3), R::RodCover));
    EXPECT_TRUE(says(over(3 - sixteenth), R::RodCover, {Level::Ask, 2.9375, 3, {along, across, {-24, -21.0625}}}));
  }
}

// Geometry: a rod 3/4 thick reaches to 43 5/8. A door from there on touches it; a sixteenth nearer it stands in it.
TEST(Rods, NoneInADoor) {
  const auto door = [](double from) {
    return with(job({}), [&](Job& changed, WallLine& wall) {
      Opening opening;
      opening.id = takeId(changed);
      opening.from = from;
      opening.to = 80;
      wall.openings.push_back(opening);
    });
  };
  EXPECT_TRUE(silent(door(43.625 + sixteenth), R::RodOpening));
  EXPECT_TRUE(silent(door(43.625), R::RodOpening));
  EXPECT_TRUE(says(door(43.625 - sixteenth), R::RodOpening,
                   {Level::Fix, sixteenth, 0, {{43.5625, 43.625}, {3.625, 4.375}, {0, 6}}}));
}

// Common practice: 1/8 in 24. A rod that stands up 6 is off by 6 / 24 of it at its top.
TEST(Rods, AnEighthInTwentyFourOutOfPlumb) {
  const auto read = [](double plumb, double gauge) {
    return with(job({}), [&](Job&, WallLine& wall) {
      Reading reading;
      reading.piece = wall.rods[0].id;
      reading.plumb = plumb;
      reading.gauge = gauge;
      wall.readings.push_back(reading);
    });
  };
  EXPECT_TRUE(silent(read(0.125 - sixteenth, 24), R::RodPlumb));
  EXPECT_TRUE(silent(read(0.125, 24), R::RodPlumb));
  EXPECT_TRUE(silent(read(sixteenth, 12), R::RodPlumb));
  EXPECT_TRUE(says(read(0.1875, 24), R::RodPlumb,
                   {Level::Watch, 0.1875, 0.125, {{42.875, 43.625 + 0.046875}, {3.625, 4.375}, {0, 6}}}));
  EXPECT_TRUE(says(read(-0.125, 12), R::RodPlumb,
                   {Level::Watch, 0.25, 0.125, {{42.875 - 0.0625, 43.625}, {3.625, 4.375}, {0, 6}}}));
}

} // namespace
} // namespace sillwright
