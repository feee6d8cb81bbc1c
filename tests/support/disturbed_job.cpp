#include "tests/support/disturbed_job.h"

#include "core/model/lookup.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {

Job disturbed(Job job, std::mt19937& random) {
  const auto by = [&](int marks) { return (static_cast<int>(random() % (2 * marks + 1)) - marks) / 16.0; };
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    WallLine wall = job.walls[i];
    for (Bar& bar : wall.bars)
      if (bar.run == BarRun::Upright && random() % 2 == 0) {
        BarPlace found = bar.planned;
        const double along = by(48), across = by(8);
        for (Point3* end : {&found.a, &found.b})
          *end = {end->s + along, end->d + across, end->z};
        bar.found = found;
      }
    for (Column& column : wall.columns)
      column.leeway = random() % 3 == 0 ? static_cast<double>(random() % 9) / 16 : 0;
    for (Strap& strap : wall.straps)
      if (random() % 2 == 0)
        strap.station += by(16);
    for (Bolt& bolt : wall.bolts) {
      if (random() % 2 == 0)
        bolt.station += by(40);
      if (random() % 6 == 0)
        bolt.depth += by(8);
      if (random() % 8 == 0)
        wall.readings.push_back({bolt.id, bolt.station, {}, {}, {}, 24, {}, true, {}, {}, {}});
    }
    if (random() % 3 == 0 && !wall.straps.empty())
      wall.straps.erase(wall.straps.begin() + static_cast<int>(random() % wall.straps.size()));
    if (random() % 3 == 0 && !wall.bolts.empty())
      wall.bolts.erase(wall.bolts.begin() + static_cast<int>(random() % wall.bolts.size()));
    std::erase_if(wall.readings, [&](const Reading& reading) { return !findPiece(wall, reading.piece); });
    job.walls.replace(wall);
  }
  return job;
}

Job soundJob(std::uint64_t seed) {
  return seed % 3 == 0 ? support::ridgeHouse() : seed % 3 == 1 ? support::boatShedFront() : generateJob(seed, 80);
}

} // namespace sillwright
