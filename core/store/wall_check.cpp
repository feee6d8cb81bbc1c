#include "core/base/tolerance.h"
#include "core/model/lookup.h"
#include "core/model/sill_reach.h"
#include "core/store/field_checker.h"
#include "core/store/job_check.h"

namespace sillwright {
namespace {

struct Checking {
  const Job& job;
  const WallLine& wall;
  double length;
  Interval sills; // stations a sill may take up: into the neighbour's concrete at an inside corner
  Problems& problems;

  void inside(double value, Interval range, const FilePlace& at) const {
    const Interval allowed = grown(range, tolerance::same);
    problems.require(allowed.contains(value), at, [&] { return outsideWords(value, range.from, range.to); });
  }
  template <class Stretch> void stretch(const Stretch& item, Interval range, const FilePlace& at) const {
    inside(item.from, range, at.field("from"));
    inside(item.to, range, at.field("to"));
    problems.require(item.to - item.from > tolerance::same, at.field("to"), "is not to the right of where it begins");
  }
  Interval along() const { return {0, length}; }
  Interval across() const { return {0, wall.thickness}; }

  void operator()(const PourStep& step, const FilePlace& at) const {
    stretch(step, along(), at);
    problems.require(step.height > -wall.stemHeight, at.field("height"), "goes down to the bottom of the wall");
  }
  void operator()(const Sill& sill, const FilePlace& at) const {
    stretch(sill, sills, at);
    const FilePlace splices = at.field("splices");
    double before = sill.from;
    for (std::size_t i = 0; i < sill.splices.size(); ++i) {
      const double splice = sill.splices[i];
      problems.require(splice > sill.from && splice < sill.to, splices.item(i),
                       [&] { return outsideWords(splice, sill.from, sill.to); });
      problems.require(splice > before, splices.item(i), "is not to the right of the one before");
      before = splice;
    }
  }
  void operator()(const Opening& opening, const FilePlace& at) const {
    stretch(opening, along(), at);
    problems.require(opening.headHeight > opening.sillHeight, at.field("headHeight"), "is not above the sill");
  }
  void operator()(const Panel& panel, const FilePlace& at) const { stretch(panel, along(), at); }
  void operator()(const Column& column, const FilePlace& at) const { inside(column.station, along(), at.field("station")); }
  void operator()(const Strap& strap, const FilePlace& at) const { inside(strap.station, along(), at.field("station")); }
  void operator()(const GradeShot& shot, const FilePlace& at) const { inside(shot.station, along(), at.field("station")); }
  void operator()(const Bolt& bolt, const FilePlace& at) const {
    inside(bolt.station, along(), at.field("station"));
    inside(bolt.depth, across(), at.field("depth"));
    const BoltType* type = findBoltType(*job.types, bolt.type);
    if (type)
      problems.require(bolt.projection < type->length, at.field("projection"), "is more than the length of the bolt");
  }
  void operator()(const Rod& rod, const FilePlace& at) const {
    inside(rod.depth, across(), at.field("depth"));
    const auto station = stationOf(wall, rod.id);
    problems.require(station && grown(along(), tolerance::same).contains(*station), at.field("offset"), [&] {
      return "puts the rod at a station that " + outsideWords(station.value_or(0), 0, length).substr(0);
    });
  }
  void operator()(const Bar& bar, const FilePlace& at) const {
    direction(bar.run, bar.planned, at.field("planned"));
    if (bar.found)
      direction(bar.run, *bar.found, at.field("found"));
  }
  // Bars may run past the wall, so only the way they run is looked at.
  void direction(BarRun run, const BarPlace& place, const FilePlace& at) const {
    if (run == BarRun::Upright)
      problems.require(place.b.z - place.a.z > tolerance::same, at, "does not go from below to above");
    else
      problems.require(place.b.s - place.a.s > tolerance::same, at, "does not go from left to right");
  }
};

template <class Item>
void each(const std::vector<Item>& list, const FilePlace& at, const Checking& check) {
  for (std::size_t i = 0; i < list.size() && !check.problems; ++i) {
    const FilePlace item = at.item(i);
    check(list[i], item);
  }
}

} // namespace

void checkWall(const Job& job, const WallLine& wall, const FilePlace& place, Problems& problems) {
  const WallPlace stands = placeOf(job, wall);
  problems.require(wall.startCorner != wall.endCorner, place.field("endCorner"), "is the corner where the wall begins");
  problems.require(stands.length > tolerance::same, place, "has no length: its two corners are at one point");
  if (problems)
    return;
  const Checking check{job, wall, stands.length, sillReach(stands), problems};
  each(wall.steps, place.field("steps"), check);
  each(wall.sills, place.field("sills"), check);
  each(wall.openings, place.field("openings"), check);
  each(wall.columns, place.field("columns"), check);
  each(wall.panels, place.field("panels"), check);
  each(wall.straps, place.field("straps"), check);
  each(wall.bolts, place.field("bolts"), check);
  each(wall.rods, place.field("rods"), check);
  each(wall.bars, place.field("bars"), check);
  each(wall.shots, place.field("shots"), check);
}

} // namespace sillwright
