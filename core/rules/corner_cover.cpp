#include "core/rules/corner_cover.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/rules/measure.h"

namespace sillwright {

namespace {

constexpr double farthest = 96; // in from a corner: past any neighbour's concrete and the cover beside it

struct Point {
  double s = 0, d = 0;
};

// The space beyond a face of this wall that a neighbour leaves free: a wedge, its edge where the two walls meet.
class Wedge {
public:
  Wedge(const CornerConcrete& neighbour, const RoundedBox& steel, double face, CoverFace side)
      : neighbour_(neighbour), steel_(steel.box), round_(steel.round), face_(face), side_(side),
        inward_(side == CoverFace::Inside ? 1 : -1),
        plane_(neighbour.insideCorner ? neighbour.depths.from : neighbour.depths.to) {
    core_ = {grown(steel_.s, -round_), grown(steel_.d, -round_), steel_.z};
    edge_ = {stationAt(neighbour, plane_, face), face};
  }

  Cover cover(Interval z, bool earth) const {
    const double toFace = inward_ > 0 ? face_ - steel_.d.to : steel_.d.from - face_;
    const Point near = nearestToNeighbour();
    const double toNeighbour = -intoAir(near) - round_;
    const Point beside = nearestToEdge(steel_);
    if (const auto toEdge = distanceToEdge())
      return {side_, earth, *toEdge, {betweenValues(beside.s, edge_.s), betweenValues(beside.d, face_), z}};
    if (toFace >= toNeighbour)
      return {side_, earth, toFace, {beforeEdge(), betweenValues(inward_ > 0 ? steel_.d.to : steel_.d.from, face_), z}};
    const Interval reach = inward_ > 0 ? Interval{std::max(steel_.d.from, face_), steel_.d.to}
                                       : Interval{steel_.d.from, std::min(steel_.d.to, face_)};
    return {away() > 0 ? CoverFace::CornerRight : CoverFace::CornerLeft,
            earth,
            toNeighbour,
            {betweenValues(away() > 0 ? steel_.s.to : steel_.s.from, stationAt(neighbour_, plane_, near.d)),
             betweenValues(reach.from, reach.to), z}};
  }

private:
  // +1 where the wedge lies to the right of the neighbour.
  double away() const { return neighbour_.end == Side::Left ? 1 : -1; }
  // How far past the neighbour's face; less than zero inside it.
  double intoAir(Point p) const {
    const double past = depthIn(neighbour_, p.s, p.d) - plane_;
    return neighbour_.insideCorner ? -past : past;
  }
  Point nearestToNeighbour() const {
    const Point best{away() > 0 ? core_.s.to : core_.s.from, core_.d.from};
    const Point other{best.s, core_.d.to};
    return intoAir(other) > intoAir(best) ? other : best;
  }
  // The stretch of the steel that is opposite the free part of the face.
  Interval beforeEdge() const {
    return away() > 0 ? Interval{std::min(std::max(steel_.s.from, edge_.s), steel_.s.to), steel_.s.to}
                      : Interval{steel_.s.from, std::max(std::min(steel_.s.to, edge_.s), steel_.s.from)};
  }
  Point nearestToEdge(const Box3& box) const {
    return {std::max(box.s.from, std::min(edge_.s, box.s.to)), std::max(box.d.from, std::min(edge_.d, box.d.to))};
  }
  // Where the edge itself is nearest.
  std::optional<double> distanceToEdge() const {
    const Point own = nearestToEdge(core_);
    const Point to{edge_.s - own.s, edge_.d - own.d};
    // In terms of the two normals, both into the wedge: a to the face, b to the neighbour's plane.
    const double normal = away() * std::abs(neighbour_.sine);
    const double b = to.s / normal;
    const double a = (to.d - b * (intoAir({0, 1}) - intoAir({0, 0}))) * inward_;
    if (a <= tolerance::same || b <= tolerance::same)
      return std::nullopt;
    return std::hypot(to.s, to.d) - round_;
  }

  const CornerConcrete& neighbour_;
  const Box3& steel_;
  double round_;
  double face_;
  CoverFace side_;
  double inward_;
  double plane_; // of the neighbour: its depth
  Box3 core_;    // what the rounding goes round
  Point edge_;
};

// Heights where the set of neighbours beside the steel stays the same.
std::vector<Interval> pieces(Interval own, const std::vector<const CornerConcrete*>& neighbours) {
  std::vector<double> cuts{own.from, own.to};
  for (const CornerConcrete* each : neighbours)
    for (const double z : {each->z.from, each->z.to})
      if (over(z, own.from) && under(z, own.to))
        cuts.push_back(z);
  std::sort(cuts.begin(), cuts.end());
  std::vector<Interval> parts;
  for (std::size_t i = 0; i + 1 < cuts.size(); ++i)
    if (over(cuts[i + 1], cuts[i]))
      parts.push_back({cuts[i], cuts[i + 1]});
  return parts;
}

bool asGood(const Cover& a, const Cover& b) {
  return a.face == b.face && std::abs(a.measured - b.measured) < tolerance::same;
}

} // namespace

Cover sideCover(const WallLayout& layout, const RoundedBox& rounded, Interval own, Interval concrete, CoverFace side,
                bool earth) {
  const Box3& steel = rounded.box;
  const bool inside = side == CoverFace::Inside;
  const double face = inside ? concrete.to : concrete.from;
  const double plain = inside ? face - steel.d.to : steel.d.from - face;
  const Box3 before{steel.s, betweenValues(inside ? steel.d.to : steel.d.from, face), own};
  std::vector<const CornerConcrete*> neighbours;
  for (const CornerConcrete& each : layout.corners)
    if (each.insideCorner != inside && overlap(each.z, own).length() > tolerance::same &&
        gap(steel.s, {each.corner, each.corner}) < farthest)
      neighbours.push_back(&each);
  if (neighbours.empty())
    return {side, earth, plain, before};
  std::optional<Cover> least;
  for (const Interval z : pieces(own, neighbours)) {
    Cover most{side, earth, plain, before};
    most.region.z = z;
    for (const CornerConcrete* each : neighbours) {
      if (each->z.from > z.middle() || each->z.to < z.middle())
        continue;
      const Cover cover = Wedge(*each, rounded, face, side).cover(z, earth);
      if (asGood(cover, most)) // the face between the two
        most.region.s = betweenValues(std::max(most.region.s.from, cover.region.s.from),
                                      std::min(most.region.s.to, cover.region.s.to));
      else if (over(cover.measured, most.measured))
        most = cover;
    }
    if (least && asGood(*least, most))
      least->region = {hull(least->region.s, most.region.s), hull(least->region.d, most.region.d),
                       hull(least->region.z, most.region.z)};
    else if (!least || under(most.measured, least->measured))
      least = most;
  }
  return *least;
}

double bottomUnder(const WallLayout& layout, const Box3& box) {
  double bottom = layout.bottom;
  for (const CornerConcrete& each : layout.corners)
    if (holds(each, box))
      bottom = std::min(bottom, each.z.from);
  return bottom;
}

} // namespace sillwright
