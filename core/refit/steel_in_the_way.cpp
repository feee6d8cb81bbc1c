#include "core/refit/steel_in_the_way.h"

#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"
#include "core/geometry/passing.h"
#include "core/rules/anchor_checks.h"
#include "core/rules/measure.h"

namespace sillwright {

namespace {

constexpr double touch = tolerance::same; // nearer than that two solids meet

// Just at the end the distance is that much but for rounding: the slot begins clear of it.
Interval blockedAt(double station, const BlockedShifts& shift) {
  return grown({station + shift.from, station + shift.to}, tolerance::rounding);
}

std::vector<double> heightsOfPour(const Site& site) {
  std::vector<double> heights;
  for (const Ground& ground : site.grounds)
    if (std::find(heights.begin(), heights.end(), ground.pour) == heights.end())
      heights.push_back(ground.pour);
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

// A piece of steel that stands at a station, as it is at one height of the pour line. Only what it can meet where it is
// still free to stand is looked at.
template <class Shape> class Standing {
public:
  Standing(const Site& site, double station, double pour, std::vector<Shape> parts, Blocks& blocks)
      : site_(site), station_(station), pour_(pour), parts_(std::move(parts)), blocks_(blocks) {
    for (const Shape& part : parts_)
      boxes_.push_back(bounds(part));
    const std::vector<Interval> free = blocks.freeOf(site.whole);
    if (!free.empty())
      free_ = {free.front().from, free.back().to};
  }

  template <class Still> void against(RuleId rule, const Still& still, const Box3& box, Id by) {
    for (std::size_t i = 0; i < parts_.size(); ++i) {
      const Interval reached{free_.from + boxes_[i].s.from - station_, free_.to + boxes_[i].s.to - station_};
      if (gap(boxes_[i].d, box.d) > touch || gap(boxes_[i].z, box.z) > touch || gap(reached, box.s) > touch)
        continue;
      for (const BlockedShifts& shift : shiftsOf(parts_[i], still))
        file(rule, blockedAt(station_, shift), by);
    }
  }

private:
  void file(RuleId rule, Interval stations, Id by) {
    for (const Ground& ground : site_.grounds)
      if (ground.pour == pour_ && gap(ground.s, stations) < 0)
        blocks_.open(rule, overlap(stations, grown(ground.s, 2 * tolerance::same)), by);
  }

  const Site& site_;
  double station_;
  double pour_;
  std::vector<Shape> parts_;
  std::vector<Box3> boxes_;
  Interval free_{0, -1};
  Blocks& blocks_;
};

// Shank and foot, without a copy.
template <class Visit> void forEachPart(const AnchorBody& anchor, Visit&& visit) {
  visit(anchor.shank);
  for (const Capsule& part : anchor.foot)
    visit(part);
}

} // namespace

void blockBySteel(const Site& site, const AnchorBody& anchor, Blocks& blocks) {
  const WallLayout& layout = site.layout;
  for (const double pour : heightsOfPour(site)) {
    std::vector<Capsule> parts = partsOf(anchor);
    for (Capsule& part : parts)
      part = raised(part, pour - anchor.pour);
    Standing<Capsule> standing(site, anchor.station, pour, std::move(parts), blocks);
    for (const BarBody& bar : layout.bars)
      standing.against(anchor.isRod ? RuleId::RodSteel : RuleId::BoltSteel, bar.body, bar.box, bar.id);
    for (const AnchorBody& other : layout.anchors)
      if (other.isRod != anchor.isRod)
        forEachPart(other,
                    [&](const Capsule& part) { standing.against(RuleId::BoltStrap, part, other.steelBox, other.id); });
    if (!anchor.isRod)
      for (const StrapBody& strap : layout.straps)
        if (strap.embedded.profile.size() > 1)
          standing.against(RuleId::BoltStrap, strap.embedded, strap.embeddedBox, strap.id);
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
      standing.against(RuleId::StrapSteel, bar.body, bar.box, bar.id);
    if (strap.embedded.profile.size() > 1)
      for (const AnchorBody& bolt : layout.anchors)
        if (!bolt.isRod)
          forEachPart(bolt,
                      [&](const Capsule& part) { standing.against(RuleId::BoltStrap, part, bolt.steelBox, bolt.id); });
  }
}

// A bar stands where it does at every height of the pour line.
void blockBySteel(const Site& site, const BarBody& bar, Blocks& blocks) {
  const double station = (bar.body.a.s + bar.body.b.s) / 2;
  const auto file = [&](RuleId rule, const std::vector<BlockedShifts>& shifts, Id by) {
    for (const BlockedShifts& shift : shifts)
      blocks.open(rule, blockedAt(station, shift), by);
  };
  const auto meets = [&](const Box3& box) { return gap(bar.box.d, box.d) <= touch && gap(bar.box.z, box.z) <= touch; };
  for (const AnchorBody& anchor : site.layout.anchors)
    if (meets(anchor.steelBox))
      forEachPart(anchor, [&](const Capsule& part) {
        file(anchor.isRod ? RuleId::RodSteel : RuleId::BoltSteel, shiftsOf(bar.body, part), anchor.id);
      });
  for (const StrapBody& strap : site.layout.straps)
    if (meets(strap.embeddedBox))
      file(RuleId::StrapSteel, shiftsOf(bar.body, strap.embedded), strap.id);
}

} // namespace sillwright
