#include <gtest/gtest.h>

#include "core/edit/operations.h"
#include "core/store/job_json.h"

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

} // namespace
} // namespace sillwright
