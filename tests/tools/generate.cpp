// Writes a job of any size to standard output: generate SEED PIECES
#include <cstdio>
#include <cstdlib>

#include "core/store/job_json.h"
#include "tests/support/generate_job.h"

int main(int argc, char** argv) {
  if (argc != 3) {
    std::fprintf(stderr, "usage: generate SEED PIECES\n");
    return 2;
  }
  const auto job = sillwright::generateJob(std::strtoull(argv[1], nullptr, 10), std::strtoull(argv[2], nullptr, 10));
  const std::string text = sillwright::writeJob(job);
  return std::fwrite(text.data(), 1, text.size(), stdout) == text.size() ? 0 : 2;
}
