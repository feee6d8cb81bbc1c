// Whatever can be typed into a field can be kept in a job file: the two know the same limits.
#include <gtest/gtest.h>

#include "core/edit/fields.h"
#include "core/edit/types.h"
#include "core/store/job_json.h"
#include "tests/core/edit_jobs.h"

using namespace sillwright;
using namespace sillwright::testing_jobs;

TEST(TypedFields, whatIsTakenPassesTheCheckOfJobFiles) {
  Shed s = shed();
  Opening window;
  window.kind = OpeningKind::Window;
  window.from = 245;
  window.to = 280;
  window.sillHeight = 40;
  window.headHeight = 80;
  put(s.job, s.wall, window);
  ASSERT_EQ(checkJob(s.job), std::nullopt);
  const std::vector<std::string> values{
      "",         "0",      "1/64\"", "1/16\"", "-1/16\"", "0.0001",  "1\"",    "-1\"", "3\"", "8\"",
      "8 1/64\"", "12\"",   "-24\"",  "40\"",   "80\"",    "83.75",   "4'",     "10'",  "20'", "24'",
      "24.1'",    "100'",   "101'",   "-101'",  "9999'",   "10', 5'", "5', 5'", "30'",  "2x6", "3x5",
      "0-2x6",    "10-2x6", "9-2x6",  "1e300",  "-490",    "100001",  "nan",    "none", "B"};
  int taken = 0;
  int refused = 0;
  std::vector<Id> all = piecesOf(*s.job.walls.find(s.wall));
  all.push_back({});
  for (const Id piece : all)
    for (const Field& field : fieldsOf(s.job, {s.wall, piece})) {
      std::vector<std::string> tried = values;
      tried.insert(tried.end(), field.choices.begin(), field.choices.end());
      for (const std::string& typed : tried) {
        const auto set = setField(s.job, {s.wall, piece}, field.key, typed);
        ++(set.ok() ? taken : refused);
        if (!set.ok())
          continue;
        const auto problem = checkJob(*set);
        EXPECT_FALSE(problem.has_value()) << field.key << " = " << typed << ": " << problem->text();
      }
    }
  EXPECT_GT(taken, 500);
  EXPECT_GT(refused, 500);
}

TEST(TypedFields, whatIsTakenOfTypesAndMarksPassesToo) {
  Shed s = shed();
  const std::vector<std::string> values{
      "",      "0",     "1/64\"", "-1/16\"", "0.0001",         "1\"",     "3\"",   "4\"",  "5/8\"", "12\"",
      "-24\"", "101'",  "1200",   "1201",    "1e300",          "nan",     "1000001", "80",   "81",   "2x6",
      "3x5",   "9-2x6", "10-2x6", "any",     "0, 0; 0, 3 down", "0, 0; 1, 2 down; 3, 1 down; 4, 8 down",
      "0, 0",  "1/2 left, 1/2 right", "3 left", "middle", "1/2 x 2 along", "1/2 x 3", "4 x 1", "\t", "16d common"};
  int taken = 0;
  int refused = 0;
  for (const ListedKind kind :
       {ListedKind::Strap, ListedKind::Bolt, ListedKind::Rod, ListedKind::Washer, ListedKind::Mark})
    s.job = addListed(s.job, kind, {}).first;
  ASSERT_EQ(checkJob(s.job), std::nullopt);
  for (const Listed& each : listed(s.job))
    for (const Field& field : listedFields(s.job, each.id)) {
      std::vector<std::string> tried = values;
      tried.insert(tried.end(), field.choices.begin(), field.choices.end());
      for (const std::string& typed : tried) {
        const auto set = setListedField(s.job, each.id, field.key, typed);
        ++(set.ok() ? taken : refused);
        if (!set.ok())
          continue;
        const auto problem = checkJob(*set);
        EXPECT_FALSE(problem.has_value()) << field.key << " = " << typed << ": " << problem->text();
      }
      const auto removed = removeListed(s.job, each.id);
      if (removed) {
        EXPECT_EQ(checkJob(*removed), std::nullopt) << each.name;
      }
    }
  EXPECT_GT(taken, 500);
  EXPECT_GT(refused, 500);
}
