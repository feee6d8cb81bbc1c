#include "core/geometry/passing.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <vector>

#include <gtest/gtest.h>

#include "core/geometry/clearance.h"
#include "tests/core/clearance_oracle.h"

namespace sillwright {
namespace {

constexpr double endsExact = 1e-7;
constexpr double rounding = 1e-12;

Capsule shifted(Capsule bar, Along along, double by) {
  for (Point3* end : {&bar.a, &bar.b})
    (along == Along::Station ? end->s : end->d) += by;
  return bar;
}

Ribbon shifted(Ribbon plate, Along along, double by) {
  if (along == Along::Station)
    plate.station += by;
  else
    for (ProfilePoint& point : plate.profile)
      point.d += by;
  return plate;
}

double distanceShifted(const Capsule& bar, const Ribbon& plate, Along along, double shift) {
  return clearance(shifted(bar, along, shift), plate).distance;
}
double distanceShifted(const Ribbon& plate, const Capsule& bar, Along along, double shift) {
  return clearance(bar, shifted(plate, along, shift)).distance;
}
template <class First, class Second>
double distanceShifted(const First& first, const Second& second, Along along, double shift) {
  return clearance(shifted(first, along, shift), second).distance;
}

std::vector<BlockedShifts> listed(const std::vector<BlockedShifts>& blocked) {
  return blocked;
}
std::vector<BlockedShifts> listed(const std::optional<BlockedShifts>& blocked) {
  return blocked ? std::vector{*blocked} : std::vector<BlockedShifts>{};
}

bool anyContains(const std::vector<BlockedShifts>& blocked, double shift) {
  return std::any_of(blocked.begin(), blocked.end(), [&](const auto& each) { return each.contains(shift); });
}

struct Counts {
  int blocked = 0;
  int several = 0;
  int free = 0;
  int shiftsBlocked = 0;
  int shiftsFree = 0;
};

// Holds the answer against clearances: on both sides of each end, between the ends, and on marks all over.
template <class First, class Second>
void expectTrue(const First& first, const Second& second, Along along, double within, Counts& counts,
                double noise = rounding) {
  const std::vector<BlockedShifts> blocked = listed(blockedShifts(first, second, along, within));
  const auto holds = [&](double shift) {
    const double clear = distanceShifted(first, second, along, shift);
    if (std::abs(clear - within) <= noise)
      return; // exactly so far apart, up to rounding
    const bool near = anyContains(blocked, shift);
    ++(near ? counts.shiftsBlocked : counts.shiftsFree);
    EXPECT_EQ(near, clear < within) << "shift " << shift << " clear " << clear - within;
  };
  for (std::size_t i = 0; i < blocked.size(); ++i) {
    ASSERT_LT(blocked[i].from, blocked[i].to);
    if (i > 0) {
      ASSERT_LE(blocked[i - 1].to, blocked[i].from);
    }
    for (const double end : {blocked[i].from, blocked[i].to})
      for (const double by : {-1e-3, -endsExact, endsExact, 1e-3})
        holds(end + by);
    for (int part = 1; part < 8; ++part)
      holds(blocked[i].from + (blocked[i].to - blocked[i].from) * part / 8);
  }
  for (double shift = -9; shift <= 9; shift += 0.375)
    holds(shift);
  ++(blocked.empty() ? counts.free : counts.blocked);
  counts.several += blocked.size() > 1;
}

// Shapes as they stand in a wall, and worse: on marks, so that they are parallel, touch, cross or are of no length.
class Things : public oracle::Shapes {
public:
  using oracle::Shapes::Shapes;

  Along along() { return whole(0, 1) == 0 ? Along::Station : Along::Depth; }
  double within() { return std::array{0.0, 0.0, 0.001, 0.125, 0.5, 1.0, 1.5, number(0, 2)}[whole(0, 7)]; }

  Capsule anyBar() {
    const bool grid = whole(0, 1) == 0;
    Capsule made = bar(grid);
    switch (whole(0, 7)) {
    case 0: // upright
      made.b.s = made.a.s;
      made.b.d = made.a.d;
      break;
    case 1: // along the wall
      made.b.d = made.a.d;
      made.b.z = made.a.z;
      break;
    case 2: // one station, as a bolt shank with a bend
      made.b.s = made.a.s;
      break;
    case 3: // one depth, leaning along the wall
      made.b.d = made.a.d;
      break;
    case 4: // nearly upright
      made.b.s = made.a.s + std::pow(10, -number(2, 15));
      made.b.d = made.a.d + std::pow(10, -number(2, 15));
      break;
    case 5: // of no length
      made.b = made.a;
      break;
    default:
      break;
    }
    return made;
  }

  Ribbon anyPlate() {
    Ribbon made = plate(whole(0, 1) == 0);
    if (whole(0, 11) == 0)
      made.profile.clear();
    return made;
  }

  Box3 anyBox() {
    const bool grid = whole(0, 1) == 0;
    const auto side = [&] {
      const double a = coordinate(grid);
      const double b = coordinate(grid);
      return whole(0, 9) == 0 ? Interval{a, b} : Interval{std::min(a, b), std::max(a, b)};
    };
    return {side(), side(), side()};
  }
};

void expectAllKinds(const Counts& counts) {
  EXPECT_GT(counts.blocked, 1000);
  EXPECT_GT(counts.free, 500);
  EXPECT_GT(counts.shiftsBlocked, 10000);
  EXPECT_GT(counts.shiftsFree, 10000);
}

TEST(PassingOfBars, AgreesWithClearance) {
  Things things(71);
  Counts counts;
  for (int i = 0; i < 20000 && !HasFailure(); ++i) {
    SCOPED_TRACE(i);
    const Capsule first = things.anyBar();
    expectTrue(first, things.anyBar(), things.along(), things.within(), counts);
  }
  expectAllKinds(counts);
}

TEST(PassingOfBars, NearlyParallelOnesToo) {
  Things things(72);
  Counts counts;
  for (int i = 0; i < 10000 && !HasFailure(); ++i) {
    SCOPED_TRACE(i);
    const Capsule first = things.anyBar();
    Capsule second = first;
    const double off = std::pow(10, -things.number(1, 15));
    for (double* at : {&second.a.s, &second.a.d, &second.a.z, &second.b.s, &second.b.d, &second.b.z})
      *at += things.whole(-1, 1) * off;
    second.a.z += things.whole(0, 2) * 0.25;
    second.b.z += second.a.z - first.a.z;
    expectTrue(first, second, things.along(), things.within(), counts);
  }
  EXPECT_GT(counts.blocked, 1000);
}

TEST(PassingOfBarAndPlate, AgreesWithClearanceWhicheverMoves) {
  Things things(73);
  Counts counts;
  for (int i = 0; i < 10000 && !HasFailure(); ++i) {
    SCOPED_TRACE(i);
    const Capsule bar = things.anyBar();
    const Ribbon plate = things.anyPlate();
    const Along along = things.along();
    const double within = things.within();
    expectTrue(bar, plate, along, within, counts);
    expectTrue(plate, bar, along, within, counts);
  }
  expectAllKinds(counts);
  EXPECT_GT(counts.several, 100);
}

TEST(PassingOfPlates, AgreesWithClearance) {
  Things things(74);
  Counts counts;
  for (int i = 0; i < 6000 && !HasFailure(); ++i) {
    SCOPED_TRACE(i);
    Ribbon first = things.anyPlate();
    const Ribbon second = things.anyPlate();
    if (i % 2 == 0 && !first.profile.empty()) // small enough to find a place between two pieces of the other
      first = {second.station, 0.25, 0.05, {first.profile.front()}};
    const double within = things.whole(0, 5) == 0 ? -things.whole(1, 4) * 0.125 : things.within();
    expectTrue(first, second, things.along(), within, counts);
  }
  expectAllKinds(counts);
  EXPECT_GT(counts.several, 100);
}

TEST(PassingOfBarAndBox, AgreesWithClearance) {
  Things things(75);
  Counts counts;
  for (int i = 0; i < 20000 && !HasFailure(); ++i) {
    SCOPED_TRACE(i);
    const Capsule bar = things.anyBar();
    expectTrue(bar, things.anyBox(), things.along(), things.within(), counts);
  }
  expectAllKinds(counts);
}

// Far along a long wall no digits that matter are lost, nor on the way there.
TEST(Passing, IsAsTrueFarAlongTheWall) {
  Things things(76);
  Counts counts;
  for (int i = 0; i < 5000 && !HasFailure(); ++i) {
    SCOPED_TRACE(i);
    const Capsule bar = shifted(things.anyBar(), Along::Station, i % 2 == 0 ? 1234.0625 : 0);
    const Along along = things.along();
    const double within = things.within();
    expectTrue(bar, shifted(things.anyBar(), Along::Station, 1234.0625), along, within, counts, 1e-11);
    expectTrue(bar, shifted(things.anyPlate(), Along::Station, 1234.0625), along, within, counts, 1e-11);
  }
  expectAllKinds(counts);
}

TEST(Passing, OfTheOtherShapeIsTheOtherWay) {
  Things things(77);
  int blocked = 0;
  for (int i = 0; i < 5000 && !HasFailure(); ++i) {
    SCOPED_TRACE(i);
    const Capsule first = things.bar(false);
    const Capsule second = things.bar(false);
    const Along along = things.along();
    const auto one = blockedShifts(first, second, along, 1);
    const auto other = blockedShifts(second, first, along, 1);
    ASSERT_EQ(one.has_value(), other.has_value());
    if (!one)
      continue;
    ++blocked;
    EXPECT_NEAR(one->from, -other->to, endsExact);
    EXPECT_NEAR(one->to, -other->from, endsExact);
  }
  EXPECT_GT(blocked, 1000);
}

} // namespace
} // namespace sillwright
