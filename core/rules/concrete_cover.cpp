#include "core/rules/concrete_cover.h"

#include <algorithm>
#include <limits>
#include <optional>

#include "core/rules/corner_cover.h"
#include "core/rules/measure.h"

namespace sillwright {

namespace {

constexpr double noEnd = std::numeric_limits<double>::max();

// The part of an interval that lies beyond another one; all of it where it does on both sides.
std::optional<Interval> beyond(Interval own, Interval inner) {
  const bool below = under(own.from, inner.from);
  const bool above = over(own.to, inner.to);
  if (below && above)
    return own;
  if (below)
    return Interval{own.from, std::min(own.to, inner.from)};
  if (above)
    return Interval{std::max(own.from, inner.to), own.to};
  return std::nullopt;
}

class Covers {
public:
  Covers(const WallLayout& layout, const Box3& steel, double round, double enough)
      : layout_(layout), steel_(steel), round_(round), enough_(enough) {}

  std::vector<Cover> all() {
    sides({layout_.stemBottom, noEnd}, layout_.across, false);
    if (!layout_.footingAcross.empty()) { // footings are cast against earth
      sides({-noEnd, layout_.stemBottom}, layout_.footingAcross, true);
      footingEnds();
      footingTop();
    }
    top();
    const double foot = bottomUnder(layout_, steel_);
    add(CoverFace::Bottom, true, steel_.z.from - foot, {steel_.s, steel_.d, betweenValues(foot, steel_.z.from)});
    ends();
    return std::move(found_);
  }

private:
  void keep(const Cover& cover) {
    if (!over(cover.measured, enough_))
      found_.push_back(cover);
  }

  void add(CoverFace face, bool earth, double measured, const Box3& region) {
    keep({face, earth, measured, region});
  }

  void sides(Interval z, Interval concrete, bool earth) {
    const Interval own = overlap(steel_.z, z);
    if (own.length() < tolerance::same)
      return;
    // A neighbour's concrete can only add to what lies before the face.
    if (!over(steel_.d.from - concrete.from, enough_))
      keep(sideCover(layout_, {steel_, round_}, own, concrete, CoverFace::Outside, earth));
    if (!over(concrete.to - steel_.d.to, enough_))
      keep(sideCover(layout_, {steel_, round_}, own, concrete, CoverFace::Inside, earth));
  }

  void top() {
    double lowest = pourAt(layout_, steel_.s.middle());
    for (const PourRun& run : layout_.pour)
      if (overlap(run.s, steel_.s).length() > tolerance::same)
        lowest = std::min(lowest, run.height);
    for (const CornerConcrete& neighbour : layout_.corners) // under a higher one it is the neighbour's
      if (!neighbour.footing && holds(neighbour, steel_))
        lowest = std::max(lowest, neighbour.z.to);
    add(CoverFace::Top, false, lowest - steel_.z.to, {steel_.s, steel_.d, betweenValues(steel_.z.to, lowest)});
  }

  void footingEnds() {
    for (const Side side : {Side::Left, Side::Right})
      nearestEnd(layout_.footingEnds, side, true);
  }

  // Beside the stem; steel that stands up through it there is out of the stem's faces, and under a neighbour's stem
  // there is no top.
  void footingTop() {
    const auto across = beyond(steel_.d, layout_.across);
    const auto along = beyond(steel_.s, layout_.concrete);
    if (over(steel_.z.to, layout_.stemBottom) || (!across && !along))
      return;
    const Interval high = betweenValues(steel_.z.to, layout_.stemBottom);
    const Box3 bare = across ? Box3{steel_.s, *across, high} : Box3{*along, steel_.d, high};
    for (const CornerConcrete& neighbour : layout_.corners)
      if (!neighbour.footing && over(neighbour.z.to, layout_.stemBottom) && holds(neighbour, bare))
        return;
    add(CoverFace::FootingTop, false, layout_.stemBottom - steel_.z.to, bare);
  }

  void ends() {
    for (const Side side : {Side::Left, Side::Right})
      nearestEnd(layout_.faces, side, false);
    for (const ConcreteFace& face : layout_.faces) {
      const double away = (steel_.s.middle() - face.station) * (face.concrete == Side::Right ? 1 : -1);
      if (face.kind == ConcreteFace::Kind::Step && away >= 0 && beside(face).length() >= tolerance::same)
        keep(endCover(face, false));
    }
  }

  // At an inside corner an end may lie elsewhere above and below the neighbour's concrete: the nearest counts.
  void nearestEnd(const std::vector<ConcreteFace>& faces, Side side, bool earth) {
    std::optional<Cover> nearest;
    for (const ConcreteFace& face : faces) {
      if (face.kind == ConcreteFace::Kind::Step || (face.concrete == Side::Right) != (side == Side::Left) ||
          beside(face).length() < tolerance::same)
        continue;
      const Cover cover = endCover(face, earth);
      if (!nearest || under(cover.measured, nearest->measured))
        nearest = cover;
    }
    if (nearest)
      keep(*nearest);
  }

  Interval beside(const ConcreteFace& face) const { return overlap(face.z, steel_.z); }

  Cover endCover(const ConcreteFace& face, bool earth) const {
    const bool left = face.concrete == Side::Right;
    const Interval s = betweenValues(left ? steel_.s.from : steel_.s.to, stationToward(face, steel_));
    return {left ? CoverFace::Left : CoverFace::Right,
            earth,
            distanceTo(face, steel_, round_),
            {s, steel_.d, beside(face)}};
  }

  const WallLayout& layout_;
  const Box3& steel_;
  double round_;
  double enough_;
  std::vector<Cover> found_;
};

} // namespace

std::vector<Cover> coversOf(const WallLayout& layout, const Box3& steel, double round, double enough) {
  return Covers(layout, steel, round, enough).all();
}

Correction::Field fieldOf(CoverFace face) {
  switch (face) {
  case CoverFace::Left:
  case CoverFace::Right:
  case CoverFace::CornerLeft:
  case CoverFace::CornerRight:
    return Correction::Field::Station;
  case CoverFace::Outside:
  case CoverFace::Inside:
    return Correction::Field::Depth;
  default:
    return Correction::Field::Height;
  }
}

double wayToMore(CoverFace face) {
  const bool up = face == CoverFace::Left || face == CoverFace::CornerLeft || face == CoverFace::Outside ||
                  face == CoverFace::Bottom;
  return up ? 1 : -1;
}

} // namespace sillwright
