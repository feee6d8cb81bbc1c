#include <gtest/gtest.h>

#include <map>
#include <random>

#include "core/edit/operations.h"
#include "core/edit/plan_edits.h"
#include "core/gesture/starters.h"
#include "core/rules/checker.h"
#include "core/rules/wording.h"

namespace sillwright {
namespace {

const Starter& starter(const std::string& key) {
  for (const Starter& each : starters())
    if (each.key == key)
      return each;
  ADD_FAILURE() << key;
  return starters().front();
}

std::vector<std::optional<double>> usual(const Starter& which) {
  std::vector<std::optional<double>> lengths;
  for (const StarterLength& asked : which.lengths)
    lengths.push_back(asked.usual);
  return lengths;
}

std::string fixesOf(const Job& job) {
  std::string all;
  const auto walls = checkAll(job);
  for (const auto& wall : walls)
    for (const Finding& finding : wall->findings)
      if (finding.level == Level::Fix)
        all += wall->layout.wall->mark + ": " + message(job, finding) + "\n";
  return all;
}

class EachStarter : public testing::TestWithParam<std::size_t> {};

TEST_P(EachStarter, withItsUsualLengthsHasNoFix) {
  const Starter& which = starters()[GetParam()];
  const auto started = start(newJob(), which, usual(which));
  ASSERT_TRUE(started) << started.problem().text();
  EXPECT_EQ(fixesOf(started->job), "");
  EXPECT_EQ(started->job.walls.size(), 4u);
  for (std::size_t i = 0; i < 4; ++i) {
    EXPECT_FALSE(started->job.walls[i].sills.empty());
    EXPECT_GE(started->job.walls[i].bolts.size(), 2u);
  }
}
INSTANTIATE_TEST_SUITE_P(Starters, EachStarter, testing::Values(0, 1, 2, 3));

TEST(Starters, piersHaveAStrapAtBothEndsOfTheirPanels) {
  const auto started = start(newJob(), starter("two-piers"), usual(starter("two-piers")));
  ASSERT_TRUE(started) << started.problem().text();
  const WallLine& front = *started->job.walls.find(started->wall);
  ASSERT_EQ(front.openings.size(), 1u);
  EXPECT_EQ(front.openings[0].kind, OpeningKind::GarageDoor);
  EXPECT_EQ(front.openings[0].to - front.openings[0].from, 192);
  EXPECT_EQ(front.openings[0].from, 288 - front.openings[0].to); // in the middle, as it is taped
  ASSERT_EQ(front.panels.size(), 2u);
  EXPECT_EQ(front.sills.size(), 2u);
  EXPECT_EQ(front.straps.size(), 4u);
}

bool namesALengthOrAWall(const Starter& which, const Problem& problem) {
  if (problem.message.empty())
    return false;
  for (const StarterLength& asked : which.lengths)
    if (asked.key == problem.place)
      return true;
  return problem.place.starts_with("wall ");
}

TEST(Starters, aBlankWallOfTheJobIsLaidOutAndTheOthersStayAsTheyAre) {
  const Job plan = start(newJob(), starter("rectangle"), usual(starter("rectangle")))->job;
  const Point2 corners[] = {{600, 0}, {1000, 0}, {1000, 300}, {600, 300}};
  const Job job = addOutline(plan, corners, wallToDraw(plan)).value();
  const WallLine& blank = job.walls[6];
  ASSERT_TRUE(isBlank(blank));
  std::vector<std::optional<double>> lengths = usual(starter("door"));
  lengths[0] = lengths[1] = std::nullopt; // those of the plan
  const auto started = start(job, starter("door"), lengths, blank.id);
  ASSERT_TRUE(started) << started.problem().text();
  EXPECT_EQ(started->wall, blank.id);
  EXPECT_EQ(started->job.walls.size(), job.walls.size());
  EXPECT_EQ(started->job.walls.find(blank.id)->openings.size(), 1u);
  EXPECT_FALSE(isBlank(*started->job.walls.find(blank.id)));
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    if (job.walls[i].id != blank.id) {
      EXPECT_EQ(started->job.walls[i], job.walls[i]);
    }
  EXPECT_EQ(fixesOf(started->job), "");
}

TEST(Starters, newWallsStandBesideThoseThereAreAndAreLikeThem) {
  Job first = start(newJob(), starter("rectangle"), usual(starter("rectangle")))->job;
  WallLine thicker = first.walls[0];
  thicker.thickness = 10;
  first = replaceWall(first, thicker);
  const auto second = start(first, starter("two-piers"), usual(starter("two-piers")));
  ASSERT_TRUE(second) << second.problem().text();
  ASSERT_EQ(second->job.walls.size(), 8u);
  const WallLine& front = *second->job.walls.find(second->wall);
  EXPECT_EQ(front.mark, "E");
  EXPECT_EQ(front.thickness, 10);
  EXPECT_GT(findCorner(second->job, front.startCorner)->at.x, 288);
}

TEST(Starters, aPierFromTheLeftIsAsWideAsTyped) {
  std::vector<std::optional<double>> lengths = usual(starter("two-piers"));
  lengths[3] = 30;
  const auto started = start(newJob(), starter("two-piers"), lengths);
  ASSERT_TRUE(started) << started.problem().text();
  EXPECT_EQ(started->job.walls.find(started->wall)->openings[0].from, 30);
}

TEST(Starters, whatCannotBeNamesItsLength) {
  const Starter& piers = starter("two-piers");
  const auto placeWith = [&](std::size_t i, std::optional<double> length) {
    std::vector<std::optional<double>> lengths = usual(piers);
    lengths[i] = length;
    const auto started = start(newJob(), piers, lengths);
    return started ? std::string("laid out") : started.problem().place;
  };
  EXPECT_EQ(placeWith(0, std::nullopt), "front");
  EXPECT_EQ(placeWith(0, -5), "front");
  EXPECT_EQ(placeWith(2, 0), "opening");
  EXPECT_EQ(placeWith(2, 280), "opening");
  EXPECT_EQ(placeWith(3, 100), "left");
  EXPECT_EQ(placeWith(4, 95), "head");
  EXPECT_EQ(placeWith(2, 262), "wall A"); // piers too narrow for the bolts
  EXPECT_EQ(placeWith(3, 40), "laid out");
}

// Whatever is typed: what comes out has no FIX, or a sentence says why not and names a length or a wall.
TEST(Starters, anyLengthsGiveNoFixOrASentence) {
  std::mt19937 random(7);
  const auto inches = [&](int from, int to) {
    return std::uniform_int_distribution<int>(from * 4, to * 4)(random) / 4.0;
  };
  std::map<std::string, int> laid, refused;
  for (int k = 0; k < 120; ++k) {
    const Starter& which = starters()[static_cast<std::size_t>(k) % starters().size()];
    std::vector<std::optional<double>> lengths = usual(which);
    lengths[0] = inches(96, 480);
    lengths[1] = inches(96, 480);
    for (std::size_t i = kOutlineLengths; i < lengths.size(); ++i)
      if (which.lengths[i].key == "left")
        lengths[i] = k % 3 ? std::nullopt : std::optional(inches(10, 60));
      else if (which.lengths[i].key != "head")
        lengths[i] = inches(18, 220);
    const auto started = start(newJob(), which, lengths);
    if (started)
      EXPECT_EQ(fixesOf(started->job), "");
    else
      EXPECT_TRUE(namesALengthOrAWall(which, started.problem())) << started.problem().text();
    ++(started ? laid : refused)[which.key];
  }
  for (const Starter& each : starters())
    EXPECT_GT(laid[each.key], 5) << each.key << " refused " << refused[each.key];
}

} // namespace
} // namespace sillwright
