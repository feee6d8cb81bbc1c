// Whatever is wrong with a job file: one problem that names the place, and nothing loaded. And saving that loses nothing.
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <random>
#include <sstream>

#include "core/store/files.h"
#include "core/store/job_json.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

namespace fs = std::filesystem;

// The sample's text with the first occurrence of `what` after `after` replaced.
std::string with(const std::string& after, const std::string& what, const std::string& by) {
  std::string text = writeJob(support::boatShedFront());
  const auto from = text.find(after);
  EXPECT_NE(from, std::string::npos) << after;
  const auto at = text.find(what, from);
  EXPECT_NE(at, std::string::npos) << what;
  return text.replace(at, what.size(), by);
}

struct Case {
  const char* name;
  std::string text;
  std::string place; // part of it
  std::string message;
};

TEST(BadInput, namesThePlaceAndLoadsNothing) {
  const std::string good = writeJob(support::boatShedFront());
  const std::vector<Case> cases{
      {"wrong type", with("\"straps\": [\n", "\"station\": 2.75", "\"station\": \"2.75\""), "station", ""},
      {"outside the wall", with("\"S1\"", "\"station\": 2.75", "\"station\": -3"), "walls[0].straps[0].station", "-3 is outside 0 … 288"},
      {"missing", with("\"S1\"", "\"station\": 2.75, ", ""), "walls[0].straps[0].station", "missing"},
      {"not a number", with("\"S1\"", "\"station\": 2.75", "\"station\": 1e999"), "", ""},
      {"dangling type", with("\"S1\"", "\"type\": ", "\"type\": 9999"), "walls[0].straps[0].type", ""},
      {"duplicate key", with("\"S1\"", "\"station\": 2.75", "\"station\": 2.75, \"station\": 3"), "station", ""},
      {"bad word", with("\"walls\"", "\"runs by\"", "\"leans over\""), "walls[0]", "leans over"},
      {"not JSON", good.substr(0, good.size() / 2), "line", ""},
      {"junk behind", good + "x", "line", ""},
      {"empty", "", "", ""},
      {"a list", "[1, 2]", "", ""},
  };
  for (const Case& each : cases) {
    SCOPED_TRACE(each.name);
    const auto read = readJob(each.text);
    ASSERT_FALSE(read);
    const Problem& problem = read.problem();
    EXPECT_NE(problem.place.find(each.place), std::string::npos) << problem.text();
    EXPECT_NE(problem.message.find(each.message), std::string::npos) << problem.text();
    EXPECT_FALSE(problem.text().empty());
    EXPECT_EQ(problem.text().find('\n'), std::string::npos);
  }
}

TEST(BadInput, aWallOfNoLengthIsRefused) {
  Job job = support::boatShedFront();
  job.corners.edit([](std::vector<Corner>& corners) { corners[1].at = corners[0].at; });
  EXPECT_TRUE(checkJob(job));
  EXPECT_FALSE(readJob(writeJob(job)));
}

TEST(BadInput, anOverrideWithoutReasonOrOfNoRuleIsRefused) {
  for (const LimitOverride& change : {LimitOverride{"strap.edge target", 0.75, "", "me", "2031-01-02", ""},
                                      LimitOverride{"strap.luck", 1, "because", "me", "2031-01-02", ""},
                                      LimitOverride{"strap.edge target", 0.75, "engineer's letter", "me", "2031-02-30", ""}}) {
    Job job = support::boatShedFront();
    job.limits.edit([&](JobLimits& limits) { limits.overrides = {change}; });
    EXPECT_TRUE(checkJob(job)) << change.key << change.reason << change.date;
  }
}

struct TypeCase {
  const char* name;
  std::function<void(HardwareTypes&)> spoil;
  std::string problem;
};

TEST(BadInput, hardwareThatCannotBeMadeIsRefusedWithItsPlace) {
  const std::vector<TypeCase> cases{
      {"long thread", [](HardwareTypes& t) { t.bolts[0].threadLength = t.bolts[0].length + 1.0 / 16; },
       "types.bolts[0].threadLength: is longer than the bolt"},
      {"no hook", [](HardwareTypes& t) { t.bolts[0].hookLeg = t.bolts[0].diameter / 2; },
       "types.bolts[0].hookLeg: does not stand out from the bolt"},
      {"above", [](HardwareTypes& t) { t.straps[0].profile = {{0, 0}, {1, 0.5}}; },
       "types.straps[0].profile[1]: is above the joint line"},
      {"up before the hook", [](HardwareTypes& t) { t.straps[0].profile = {{0, 0}, {1, -4}, {2, -3}, {3, -8}}; },
       "types.straps[0].profile[2]: goes up before the hook at the end"},
      {"out of the concrete", [](HardwareTypes& t) { t.straps[0].profile = {{0, 0}, {1, -4}, {2, 0}}; },
       "types.straps[0].profile[2]: comes up to the joint line again"},
      {"never down", [](HardwareTypes& t) { t.straps[0].profile = {{0, 0}, {1, 0}}; },
       "types.straps[0].profile: does not go down"},
      {"negative spacing", [](HardwareTypes& t) { t.straps[0].nails.spacing = -1; },
       "types.straps[0].nails.spacing: -1 is outside 0 … 1200"},
      {"nail beside the plate", [](HardwareTypes& t) { t.straps[0].nails.rows = {-0.5, 2}; },
       "types.straps[0].nails.rows[1]: is beside the plate"},
      {"hanger", [](HardwareTypes& t) { t.straps[0].hangerReach = {2, 1}; },
       "types.straps[0].hangerReach: ends below where it begins"},
      {"big hole", [](HardwareTypes& t) { t.washers[0].hole = 3; }, "types.washers[0].hole: is bigger than the washer"},
      {"long slot", [](HardwareTypes& t) { t.washers[0].slot = WasherSlot{0.5, 3, SlotDirection::Across, {}}; },
       "types.washers[0].slot.length: is longer than the washer"},
  };
  for (const TypeCase& each : cases) {
    SCOPED_TRACE(each.name);
    Job job = support::boatShedFront();
    job.types.edit([&](HardwareTypes& types) { each.spoil(types); });
    const auto problem = checkJob(job);
    ASSERT_TRUE(problem);
    EXPECT_EQ(problem->text(), each.problem);
    const auto read = readJob(writeJob(job));
    ASSERT_FALSE(read);
    EXPECT_EQ(read.problem().text(), each.problem);
  }
}

TEST(BadInput, aHookMayTurnUpAndAFlatFootMayFollow) {
  for (const std::vector<ProfilePoint>& good :
       {std::vector<ProfilePoint>{{0, 0}, {0, -8}, {4, -8}}, std::vector<ProfilePoint>{{0, 0}, {1, -8}, {2, -7}, {3, -6}, {4, -6}},
        std::vector<ProfilePoint>{{0, 0}, {0.5, 0}, {1, -8}}}) {
    Job job = support::boatShedFront();
    job.types.edit([&](HardwareTypes& types) { types.straps[0].profile = good; });
    EXPECT_EQ(checkJob(job), std::nullopt);
  }
}

TEST(BadInput, aMarkCallsForAStrapOrARod) {
  Job job = support::boatShedFront();
  ASSERT_FALSE(job.marks->empty());
  RodType rod;
  rod.id = takeId(job);
  rod.name = "rod";
  rod.diameter = 0.625;
  rod.embedment = 12;
  rod.threadsPerInch = 11;
  job.types.edit([&](HardwareTypes& types) { types.rods.push_back(rod); });
  job.marks.edit([&](std::vector<WallEndMark>& marks) {
    marks[0].strapType = job.types->straps[0].id;
    marks[0].rodType = rod.id;
  });
  const auto problem = checkJob(job);
  ASSERT_TRUE(problem);
  EXPECT_EQ(problem->place, "marks[0].rodType");
}

TEST(BadInput, anyCorruptedByteGivesAJobOrOneProblem) {
  const std::string good = writeJob(generateJob(5, 60));
  std::mt19937 random(3);
  for (int i = 0; i < 3000; ++i) {
    std::string text = good;
    text[random() % text.size()] = static_cast<char>(random() % 256);
    const auto read = readJob(text);
    if (!read) {
      EXPECT_FALSE(read.problem().message.empty());
    }
  }
}

TEST(BadInput, unknownFieldsAreKept) {
  const std::string text = with("\"S1\"", "\"station\": 2.75", "\"station\": 2.75, \"colour\": {\"deep\": [1, 2]}");
  const auto read = readJob(text);
  ASSERT_TRUE(read) << read.problem().text();
  EXPECT_NE(writeJob(*read).find("\"colour\""), std::string::npos);
  EXPECT_NE(writeJob(*read).find("\"deep\""), std::string::npos);
}

class FilesOnDisk : public ::testing::Test {
protected:
  void SetUp() override {
    folder = fs::temp_directory_path() / ("sillwright-files-" + std::to_string(::getpid()) + "-" +
                                          ::testing::UnitTest::GetInstance()->current_test_info()->name());
    fs::remove_all(folder);
    fs::create_directories(folder);
    path = (folder / "job.sillwright").string();
  }
  void TearDown() override { fs::remove_all(folder); }
  static std::string contents(const std::string& file) {
    std::ifstream in(file, std::ios::binary);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
  }
  fs::path folder;
  std::string path;
};

TEST_F(FilesOnDisk, keepsThePreviousVersionPermissionsAndLinks) {
  const Job first = support::boatShedFront(), second = support::ridgeHouse();
  const std::string link = (folder / "link.sillwright").string();
  ASSERT_TRUE(saveJob(first, path));
  ::chmod(path.c_str(), 0640);
  fs::create_symlink(path, link);
  ASSERT_TRUE(saveJob(second, link));
  EXPECT_TRUE(fs::is_symlink(link));
  EXPECT_TRUE(*loadJob(path) == second);
  struct stat status {};
  ::stat(path.c_str(), &status);
  EXPECT_EQ(status.st_mode & 0777, 0640u);
  EXPECT_TRUE(*loadJob(previousPath(link)) == first);
}

TEST_F(FilesOnDisk, aDamagedFileIsNeverOverwritten) {
  std::ofstream(path) << "{ somebody's work, cut off";
  EXPECT_FALSE(saveJob(support::boatShedFront(), path));
  EXPECT_EQ(contents(path), "{ somebody's work, cut off");
}

TEST_F(FilesOnDisk, aFolderThatIsNotThereIsOneProblem) {
  const auto saved = saveJob(support::boatShedFront(), (folder / "no" / "where.sillwright").string());
  ASSERT_FALSE(saved);
  EXPECT_NE(saved.problem().text().find("where.sillwright"), std::string::npos);
  EXPECT_FALSE(loadJob(folder.string()));
}

TEST_F(FilesOnDisk, aFullDiskLeavesTheOldFileWhole) {
  const std::string disk = (folder / "disk").string();
  fs::create_directories(disk);
  if (::getuid() != 0 || std::system(("mount -t tmpfs -o size=256k tmpfs " + disk + " 2> /dev/null").c_str()) != 0)
    GTEST_SKIP() << "a small file system can only be mounted by root";
  const std::string file = disk + "/job.sillwright";
  const Job small = support::boatShedFront();
  const bool first = saveJob(small, file).ok();
  const auto second = saveJob(generateJob(1, 20'000), file);
  const bool whole = first && loadJob(file).ok() && *loadJob(file) == small;
  EXPECT_EQ(std::system(("umount " + disk).c_str()), 0);
  EXPECT_TRUE(first);
  EXPECT_FALSE(second);
  EXPECT_TRUE(whole);
}

TEST_F(FilesOnDisk, aKillInTheMiddleOfSavingLeavesAWholeFile) {
  const Job a = support::boatShedFront(), b = support::ridgeHouse();
  ASSERT_TRUE(saveJob(a, path));
  for (int round = 0; round < 12; ++round) {
    const pid_t child = ::fork();
    if (child == 0) {
      for (;;) {
        (void)saveJob(b, path);
        (void)saveJob(a, path);
      }
    }
    ::usleep(static_cast<useconds_t>(3000 + round * 1700));
    ::kill(child, SIGKILL);
    ::waitpid(child, nullptr, 0);
    const auto read = loadJob(path);
    ASSERT_TRUE(read) << read.problem().text();
    EXPECT_TRUE(*read == a || *read == b);
  }
}

TEST_F(FilesOnDisk, aSecondHolderIsToldWhoHasTheJob) {
  std::string holder;
  const auto first = JobLock::take(path, holder);
  ASSERT_NE(first, nullptr);
  EXPECT_EQ(JobLock::take(path, holder), nullptr);
  EXPECT_NE(holder.find(std::to_string(::getpid())), std::string::npos);
}

} // namespace
} // namespace sillwright
