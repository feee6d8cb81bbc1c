// Edits of corners and what belongs to the whole job.
#include <cmath>

#include "core/base/tolerance.h"
#include "core/edit/operations.h"

namespace sillwright {

Job moveCorner(const Job& job, Id corner, Point2 to) {
  if (!findCorner(job, corner) || !std::isfinite(to.x) || !std::isfinite(to.y))
    return job;
  for (const Id id : job.walls.atCorner(corner)) {
    const WallLine& wall = *job.walls.find(id);
    const Corner* other = findCorner(job, wall.startCorner == corner ? wall.endCorner : wall.startCorner);
    if (other && std::hypot(other->at.x - to.x, other->at.y - to.y) < tolerance::tapeMark)
      return job;
  }
  Job next = job;
  next.corners.edit([&](std::vector<Corner>& list) { findIn(list, corner)->at = to; });
  return next;
}

Job replaceWall(const Job& job, WallLine wall) {
  Job next = job;
  if (job.walls.find(wall.id))
    next.walls.replace(std::move(wall));
  return next;
}

Job setTitle(const Job& job, TitleBlock title) {
  Job next = job;
  next.title = std::move(title);
  return next;
}

Job setUnits(const Job& job, LengthStyle units) {
  Job next = job;
  next.units = units;
  return next;
}

Job setLimits(const Job& job, JobLimits limits) {
  Job next = job;
  next.limits = Shared<JobLimits>(std::move(limits));
  return next;
}

Job setTypes(const Job& job, HardwareTypes types) {
  Job next = job;
  next.types = Shared<HardwareTypes>(std::move(types));
  return next;
}

} // namespace sillwright
