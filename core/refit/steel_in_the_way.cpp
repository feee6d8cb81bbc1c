#include "core/refit/steel_in_the_way.h"

#include <cmath>
#include <set>

#include "core/base/tolerance.h"
#include "core/geometry/passing.h"
#include "core/rules/anchor_checks.h"
#include "core/rules/measure.h"

namespace sillwright {

namespace {

constexpr double touch = tolerance::same; // nearer than that two solids meet

std::set<double> heightsOfPour(const Site& site) {
  std::set<double> heights;
  for (const Ground& ground : site.grounds)
    heights.insert(ground.pour);
  return heights;
}

Capsule raised(Capsule part, double by) {
  part.a.z += by;
  part.b.z += by;
  return part;
}

Ribbon raised(Ribbon plate, double by) {
  for (ProfilePoint& point : plate.profile)
    point.z += by;
  return plate;
}

std::vector<BlockedShifts> shiftsOf(const Capsule& own, const Capsule& still) {
  const auto blocked = blockedShifts(own, still, Along::Station, touch);
  return blocked ? std::vector{*blocked} : std::vector<BlockedShifts>{};
}
std::vector<BlockedShifts> shiftsOf(const Capsule& own, const Ribbon& still) {
  return blockedShifts(own, still, Along::Station, touch);
}
std::vector<BlockedShifts> shiftsOf(const Ribbon& own, const Capsule& still) {
  return blockedShifts(own, still, Along::Station, touch);
}

// A piece of steel that stands at a station, as it is at one height of the pour line.
template <class Shape> class Standing {
public:
  Standing(const Site& site, double station, double pour, std::vector<Shape> parts, Blocks& blocks)
      : site_(site), station_(station), pour_(pour), parts_(std::move(parts)), blocks_(blocks) {}

  template <class Still> void against(RuleId rule, const Still& still, Id by) {
    for (const Shape& own : parts_)
      for (const BlockedShifts& shift : shiftsOf(own, still))
        file(rule, {station_ + shift.from, station_ + shift.to}, by);
  }

private:
  void file(RuleId rule, Interval stations, Id by) {
    for (const Ground& ground : site_.grounds)
      if (ground.pour == pour_)
        blocks_.open(rule, overlap(stations, grown(ground.s, 2 * tolerance::same)), by);
  }

  const Site& site_;
  double station_;
  double pour_;
  std::vector<Shape> parts_;
  Blocks& blocks_;
};

} // namespace

void blockBySteel(const Site& site, const AnchorBody& anchor, Blocks& blocks) {
  const WallLayout& layout = site.layout;
  for (const double pour : heightsOfPour(site)) {
    std::vector<Capsule> parts = partsOf(anchor);
    for (Capsule& part : parts)
      part = raised(part, pour - anchor.pour);
    Standing<Capsule> standing(site, anchor.station, pour, std::move(parts), blocks);
    for (const BarBody& bar : layout.bars)
      standing.against(anchor.isRod ? RuleId::RodSteel : RuleId::BoltSteel, bar.body, bar.id);
    for (const AnchorBody& other : layout.anchors)
      if (other.isRod != anchor.isRod)
        for (const Capsule& part : partsOf(other))
          standing.against(RuleId::BoltStrap, part, other.id);
    if (!anchor.isRod)
      for (const StrapBody& strap : layout.straps)
        if (strap.embedded.profile.size() > 1)
          standing.against(RuleId::BoltStrap, strap.embedded, strap.id);
  }
}

void blockByGaps(const Site& site, const AnchorBody& anchor, Blocks& blocks) {
  for (const AnchorBody& other : site.layout.anchors) {
    const double least = site.limits[LimitKey::BoltGap] * std::max(anchor.diameter, other.diameter);
    const double across = anchor.depth - other.depth;
    if (other.id == anchor.id || !under(std::abs(across), least))
      continue;
    const Interval stations = around(other.station, 2 * std::sqrt(least * least - across * across));
    for (const Ground& ground : site.grounds) {
      const double foot = anchor.bottom - anchor.pour + ground.pour;
      if (!overlap({foot, ground.pour}, {other.bottom, other.pour}).empty())
        blocks.open(RuleId::BoltGap, overlap(stations, grown(ground.s, 2 * tolerance::same)), other.id);
    }
  }
}

void blockBySteel(const Site& site, const StrapBody& strap, Blocks& blocks) {
  const WallLayout& layout = site.layout;
  const double pourNow = strap.joint - strap.strap->heightOffset;
  for (const double pour : heightsOfPour(site)) {
    Standing<Ribbon> standing(site, strap.strap->station, pour, {raised(strap.embedded, pour - pourNow)}, blocks);
    for (const BarBody& bar : layout.bars)
      standing.against(RuleId::StrapSteel, bar.body, bar.id);
    if (strap.embedded.profile.size() > 1)
      for (const AnchorBody& bolt : layout.anchors)
        if (!bolt.isRod)
          for (const Capsule& part : partsOf(bolt))
            standing.against(RuleId::BoltStrap, part, bolt.id);
  }
}

} // namespace sillwright
