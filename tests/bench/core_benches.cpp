#include <QJsonDocument>
#include <array>

#include "core/edit/operations.h"
#include "core/rules/checker.h"
#include "core/store/job_json.h"
#include "tests/bench/bench.h"
#include "tests/support/generate_job.h"

namespace sillwright::bench {

namespace {

constexpr std::array<std::size_t, 3> sizes{100, 10'000, 100'000};

// Seconds for checking again after one bolt moved.
double recheckSeconds(std::size_t pieces) {
  Job job = generateJob(1, pieces);
  Checker checker;
  checker.update(job);
  PieceRef moved;
  for (std::size_t w = 0; w < job.walls.size() && !moved.piece; ++w)
    if (!job.walls[w].bolts.empty())
      moved = {job.walls[w].id, job.walls[w].bolts.front().id};
  double step = 1.0 / 16;
  return secondsPerCall([&] {
    const std::array<PieceRef, 1> one{moved};
    job = movePieces(job, one, step);
    step = -step;
    checker.update(job);
  });
}

} // namespace

std::vector<Measure> recheck(int&, char**) {
  std::vector<Measure> measures;
  const double small = recheckSeconds(sizes[0]);
  for (const std::size_t pieces : sizes)
    measures.push_back(
        {"recheck-" + std::to_string(pieces), recheckSeconds(pieces) / small, "times-the-100-piece-job"});
  return measures;
}

std::vector<Measure> load(int&, char**) {
  const std::string text = writeJob(generateJob(1, 10'000));
  const QByteArray bytes = QByteArray::fromStdString(text);
  const double parse = secondsPerCall([&] { QJsonDocument::fromJson(bytes); }, 5);
  const double read = secondsPerCall([&] { (void)readJob(text); }, 5);
  return {{"load-10000", read / parse, "times-the-parser-alone"},
          {"load-10000-bytes", static_cast<double>(text.size()), "bytes"}};
}

} // namespace sillwright::bench
