#include "core/edit/copy_room.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/base/tolerance.h"
#include "core/geometry/clearance.h"
#include "core/standards/bars.h"

namespace sillwright {

namespace {

bool same(double a, double b) {
  return std::abs(a - b) < tolerance::same;
}
bool same(const Point3& a, const Point3& b) {
  return same(a.s, b.s) && same(a.d, b.d) && same(a.z, b.z);
}

// Side by side they may touch.
bool overlapping(Interval a, Interval b) {
  return overlap(a, b).length() > tolerance::same;
}

template <class Stretch> Interval stretch(const Stretch& piece) {
  return {piece.from, piece.to};
}

double diameterOf(const HardwareTypes& types, const Bolt& bolt) {
  const BoltType* type = findBoltType(types, bolt.type);
  return type ? type->diameter : 0;
}

Capsule bodyOf(const Bar& bar, const BarPlace& place) {
  const auto size = barSize(bar.size);
  return {place.a, place.b, size ? size->diameter / 2 : 0};
}

template <class Stretch> bool sameEnds(const Stretch& a, const Stretch& b) {
  return same(a.from, b.from) && same(a.to, b.to);
}

struct StandsThere {
  bool operator()(const PourStep& a, const PourStep& b) const { return sameEnds(a, b) && same(a.height, b.height); }
  bool operator()(const Sill& a, const Sill& b) const { return sameEnds(a, b) && a.nominal == b.nominal; }
  bool operator()(const Opening& a, const Opening& b) const { return sameEnds(a, b) && a.kind == b.kind; }
  bool operator()(const Panel& a, const Panel& b) const { return sameEnds(a, b); }
  bool operator()(const Column& a, const Column& b) const { return same(a.station, b.station) && a.makeUp == b.makeUp; }
  bool operator()(const Strap& a, const Strap& b) const {
    return same(a.station, b.station) && same(a.heightOffset, b.heightOffset) && a.type == b.type;
  }
  bool operator()(const Bolt& a, const Bolt& b) const {
    return same(a.station, b.station) && same(a.depth, b.depth) && a.type == b.type;
  }
  bool operator()(const Rod& a, const Rod& b) const { return same(a.offset, b.offset) && a.type == b.type; }
  bool operator()(const Bar& a, const Bar& b) const {
    return a.size == b.size && same(a.planned.a, b.planned.a) && same(a.planned.b, b.planned.b);
  }
  template <class A, class B> bool operator()(const A&, const B&) const { return false; }
};

} // namespace

bool isStretch(PieceKind kind) {
  return kind == PieceKind::Step || kind == PieceKind::Sill || kind == PieceKind::Opening || kind == PieceKind::Panel;
}

Interval stationsTaken(const PourStep& piece, const HardwareTypes&) {
  return stretch(piece);
}
Interval stationsTaken(const Sill& piece, const HardwareTypes&) {
  return stretch(piece);
}
Interval stationsTaken(const Opening& piece, const HardwareTypes&) {
  return stretch(piece);
}
Interval stationsTaken(const Panel& piece, const HardwareTypes&) {
  return stretch(piece);
}
Interval stationsTaken(const Column& piece, const HardwareTypes&) {
  return around(piece.station, alongWall(piece.makeUp));
}
Interval stationsTaken(const Strap& piece, const HardwareTypes& types) {
  const StrapType* type = findStrapType(types, piece.type);
  return around(piece.station, type ? type->plateWidth : 0);
}
Interval stationsTaken(const Bolt& piece, const HardwareTypes& types) {
  return around(piece.station, diameterOf(types, piece));
}
Interval stationsTaken(const Bar& piece, const HardwareTypes&) {
  return {std::min(piece.planned.a.s, piece.planned.b.s), std::max(piece.planned.a.s, piece.planned.b.s)};
}
Interval stationsTaken(const GradeShot& piece, const HardwareTypes&) {
  return {piece.station, piece.station};
}

bool inTheWay(const PourStep& there, const PourStep& piece, const HardwareTypes&) {
  return overlapping(stretch(there), stretch(piece));
}
bool inTheWay(const Sill& there, const Sill& piece, const HardwareTypes&) {
  return overlapping(stretch(there), stretch(piece));
}
bool inTheWay(const Opening& there, const Opening& piece, const HardwareTypes&) {
  return overlapping(stretch(there), stretch(piece));
}
bool inTheWay(const Panel& there, const Panel& piece, const HardwareTypes&) {
  return overlapping(stretch(there), stretch(piece));
}
bool inTheWay(const Column& there, const Column& piece, const HardwareTypes& types) {
  return overlapping(stationsTaken(there, types), stationsTaken(piece, types));
}
bool inTheWay(const Strap& there, const Strap& piece, const HardwareTypes& types) {
  return same(there.station, piece.station) || overlapping(stationsTaken(there, types), stationsTaken(piece, types));
}
bool inTheWay(const Bolt& there, const Bolt& piece, const HardwareTypes& types) {
  const double apart = std::hypot(there.station - piece.station, there.depth - piece.depth);
  return apart < std::max((diameterOf(types, there) + diameterOf(types, piece)) / 2, tolerance::same);
}
bool inTheWay(const Rod& there, const Rod& piece, const HardwareTypes&) {
  return there.column == piece.column && there.side == piece.side;
}
bool inTheWay(const Bar& there, const Bar& piece, const HardwareTypes&) {
  if (there.run != piece.run)
    return false;
  const Capsule body = bodyOf(piece, piece.planned);
  const auto lies = [&](const BarPlace& place) {
    return clearance(bodyOf(there, place), body).distance < -tolerance::same;
  };
  return lies(there.planned) || (there.found && lies(*there.found));
}
bool inTheWay(const GradeShot& there, const GradeShot& piece, const HardwareTypes&) {
  return same(there.station, piece.station);
}

bool standsThere(const Piece& there, const Piece& piece) {
  return std::visit(StandsThere{}, there, piece);
}

double pourOf(const std::vector<PourStep>& steps, double station) {
  std::optional<double> height;
  for (const PourStep& step : steps)
    if (station > step.from && station < step.to)
      height = std::min(height.value_or(step.height), step.height);
  return height.value_or(0);
}

double bottomOf(const WallLine& wall) {
  return -(wall.stemHeight + wall.footing.depth);
}

} // namespace sillwright
