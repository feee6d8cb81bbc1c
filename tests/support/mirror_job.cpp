#include "tests/support/mirror_job.h"

#include <algorithm>

#include "core/model/lookup.h"

namespace sillwright {

namespace {

Side mirrored(Side side) {
  return side == Side::Left ? Side::Right : Side::Left;
}

HookDirection mirrored(HookDirection hook) {
  if (hook == HookDirection::Left)
    return HookDirection::Right;
  return hook == HookDirection::Right ? HookDirection::Left : hook;
}

class Mirror {
public:
  explicit Mirror(double length) : length_(length) {}

  void operator()(PourStep& step) const { stretch(step); }
  void operator()(Opening& opening) const { stretch(opening); }
  void operator()(Column& column) const { station(column.station); }
  void operator()(Strap& strap) const { station(strap.station); }
  void operator()(Rod& rod) const { rod.side = mirrored(rod.side); }
  void operator()(GradeShot& shot) const { station(shot.station); }
  void operator()(Sill& sill) const {
    stretch(sill);
    std::reverse(sill.splices.begin(), sill.splices.end());
    for (double& splice : sill.splices)
      station(splice);
  }
  void operator()(Panel& panel) const {
    stretch(panel);
    std::swap(panel.leftMark, panel.rightMark);
  }
  void operator()(Bolt& bolt) const {
    station(bolt.station);
    bolt.hook = mirrored(bolt.hook);
  }
  void operator()(Bar& bar) const {
    place(bar, bar.planned);
    if (bar.found)
      place(bar, *bar.found);
  }

private:
  void station(double& s) const { s = length_ - s; }
  template <class Stretch> void stretch(Stretch& piece) const {
    const double from = piece.from;
    piece.from = length_ - piece.to;
    piece.to = length_ - from;
  }
  void place(const Bar& bar, BarPlace& at) const {
    station(at.a.s);
    station(at.b.s);
    if (bar.run == BarRun::Along)
      std::swap(at.a, at.b);
  }

  double length_;
};

bool slotAlongWall(const HardwareTypes& types, const Bolt& bolt) {
  const WasherType* washer = findWasherType(types, bolt.washer);
  return washer && washer->slot && washer->slot->direction == SlotDirection::Along;
}

WallLine mirrored(WallLine wall, double length, const HardwareTypes& types) {
  for (Bolt& bolt : wall.bolts)
    if (slotAlongWall(types, bolt))
      bolt.washerShift = -bolt.washerShift;
  for (Reading& reading : wall.readings) {
    if (reading.along)
      *reading.along = length - *reading.along;
    if (reading.plumb)
      *reading.plumb = -*reading.plumb;
  }
  std::swap(wall.startCorner, wall.endCorner);
  std::swap(wall.startFraming, wall.endFraming);
  if (wall.studs)
    wall.studs->from = mirrored(wall.studs->from);
  forEachList(wall, [&](auto& list) {
    for (auto& piece : list)
      Mirror{length}(piece);
  });
  std::reverse(wall.sills.begin(), wall.sills.end()); // neighbours ask for the first and the last
  return wall;
}

} // namespace

Job mirrored(const Job& job) {
  Job other = job;
  other.corners.edit([](std::vector<Corner>& corners) {
    for (Corner& corner : corners)
      corner.at.x = -corner.at.x;
  });
  other.types.edit([](HardwareTypes& types) {
    for (StrapType& type : types.straps)
      for (double& row : type.nails.rows)
        row = -row;
  });
  std::vector<WallLine> walls;
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    walls.push_back(mirrored(job.walls[i], wallLength(job, job.walls[i]), *job.types));
  other.walls = WallList(std::move(walls));
  return other;
}

} // namespace sillwright
