// The schema in resources is the one that the field lists of reader and writer give.
#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

#include "core/store/json_tree.h"
#include "tests/support/job_schema.h"

namespace sillwright {
namespace {

TEST(JobSchema, isWhatReaderAndWriterDo) {
  const std::string path = std::string(SILLWRIGHT_SOURCE_DIR) + "/resources/job.schema.json";
  if (std::getenv("SILLWRIGHT_WRITE_GOLDEN"))
    std::ofstream(path) << support::jobSchema();
  std::ifstream in(path);
  std::ostringstream text;
  text << in.rdbuf();
  EXPECT_EQ(text.str(), support::jobSchema());
  EXPECT_TRUE(parseJson(text.str()));
  for (const char* field : {"\"startCorner\"", "\"heightOffset\"", "\"runs by\"", "\"splices\"", "\"revisions\""})
    EXPECT_NE(text.str().find(field), std::string::npos) << field;
}

} // namespace
} // namespace sillwright
