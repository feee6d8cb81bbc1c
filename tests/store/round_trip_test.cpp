#include <gtest/gtest.h>

#include "core/edit/operations.h"
#include "core/store/job_json.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

TEST(JobJson, aNewJobComesBackEqual) {
  const Job job = newJob();
  ASSERT_FALSE(checkJob(job)) << checkJob(job)->text();
  const std::string text = writeJob(job);
  const auto read = readJob(text);
  ASSERT_TRUE(read) << read.problem().text();
  EXPECT_TRUE(*read == job);
  EXPECT_EQ(writeJob(*read), text);
}

TEST(JobJson, whatIsSeldomThereComesBackToo) {
  Job job = support::boatShedFront();
  const Id corners[]{job.corners->front().id, job.corners->back().id};
  job.diagonals = Shared<std::vector<Diagonal>>({Diagonal{takeId(job), corners[0], corners[1], 312.25, {}}});
  job.limits.edit([](JobLimits& limits) {
    limits.topBar = true;
    limits.openingBars = true;
    limits.rules = {{"strap.seam", RuleCounts::None, "screwed plies", "EOR", "2031-05-14", {}}};
  });
  WallLine wall = job.walls[0];
  Panel panel;
  panel.id = takeId(job);
  panel.mark = "P9";
  panel.to = 48;
  panel.designShear = 310;
  panel.deadLoad = 120;
  panel.lever = 41.5;
  wall.panels.push_back(panel);
  GradeShot shot;
  shot.id = takeId(job);
  shot.mark = "G9";
  shot.width = 8.25;
  wall.shots.push_back(shot);
  Reading reading;
  reading.piece = shot.id;
  reading.plumb = -0.125;
  wall.readings.push_back(reading);
  job.walls.replace(wall);
  ASSERT_FALSE(checkJob(job)) << checkJob(job)->text();
  const auto read = readJob(writeJob(job));
  ASSERT_TRUE(read) << read.problem().text();
  EXPECT_TRUE(*read == job);
}

TEST(JobJson, aReadingIsOfAPieceOfItsOwnWall) {
  Job job = support::boatShedFront();
  WallLine wall = job.walls[0];
  Reading reading;
  reading.piece = job.corners->front().id;
  wall.readings.push_back(reading);
  job.walls.replace(wall);
  const auto problem = checkJob(job);
  ASSERT_TRUE(problem);
  EXPECT_NE(problem->text().find("readings"), std::string::npos) << problem->text();
}

} // namespace
} // namespace sillwright
