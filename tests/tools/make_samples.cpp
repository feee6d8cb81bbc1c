// Writes the sample jobs into a folder: make_samples FOLDER
#include <cstdio>
#include <filesystem>

#include "core/store/files.h"
#include "core/store/job_json.h"
#include "tests/support/sample_jobs.h"

int main(int argc, char** argv) {
  using namespace sillwright;
  if (argc != 2) {
    std::fprintf(stderr, "usage: make_samples FOLDER\n");
    return 2;
  }
  const std::filesystem::path folder = argv[1];
  const std::pair<const char*, Job> samples[] = {{"boat-shed-front", support::boatShedFront()},
                                                 {"boat-shed-front-steel-moved", support::boatShedFrontSteelMoved()},
                                                 {"boat-shed-front-no-room", support::boatShedFrontNoRoom()},
                                                 {"ridge-house", support::ridgeHouse()},
                                                 {"punch-list-practice", support::punchListPractice()}};
  for (const auto& [name, job] : samples) {
    if (const auto problem = checkJob(job)) {
      std::fprintf(stderr, "%s: %s\n", name, problem->text().c_str());
      return 2;
    }
    const auto written = writeFile((folder / (std::string(name) + ".sillwright")).string(), writeJob(job));
    if (!written) {
      std::fprintf(stderr, "%s\n", written.problem().text().c_str());
      return 2;
    }
  }
  return 0;
}
