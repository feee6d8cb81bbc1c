#include "core/refit/bolt_stands.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/clearance.h"
#include "core/refit/marks.h"
#include "core/rules/bolts_in_sill.h"
#include "core/rules/measure.h"

namespace sillwright {

namespace {

using sequence::Mark;
using sequence::Stretch;

std::size_t makeOf(WallProblem& out, const Bolt& bolt) {
  for (std::size_t i = 0; i < out.makes.size(); ++i)
    if (sameMake(out.makes[i], bolt))
      return i;
  Bolt make = bolt;
  make.id = {};
  make.mark.clear();
  make.extra.clear();
  make.station = make.depth = 0;
  out.makes.push_back(make);
  return out.makes.size() - 1;
}

std::size_t nearestSill(const WallLayout& layout, double station) {
  std::size_t best = 0;
  double least = 1e9;
  for (std::size_t i = 0; i < layout.sills.size(); ++i)
    if (const double away = gap(layout.sills[i].box.s, {station, station}); away < least) {
      least = away;
      best = i;
    }
  return best;
}

std::vector<SillToLay> sillsOf(const WallLayout& layout) {
  std::vector<SillToLay> sills;
  for (std::size_t i = 0; i < layout.sills.size(); ++i) {
    // Past an inside corner the sill goes on beyond the wall; no bolt of this wall stands there.
    SillToLay sill{i, marksIn(overlap(layout.sills[i].box.s, {0, layout.length})), {}, {}};
    if (!sills.empty() && sill.marks.from <= sills.back().marks.to) // at a splice the mark belongs to the left piece
      sill.marks.from = sills.back().marks.to + 1;
    sills.push_back(sill);
  }
  return sills;
}

void addBefore(Translation& t, std::vector<SillToLay>& sills) {
  for (const AnchorBody& anchor : t.layout.anchors) {
    if (anchor.isRod)
      continue;
    const Bolt& now = *anchor.bolt;
    const bool isFixed = stays(t.wishes, now.id);
    const Bolt* approved = isFixed ? nullptr : findIn(t.reference.bolts, now.id);
    const Bolt& from = approved ? *approved : now;
    const std::size_t sill = anchor.sillPiece ? *anchor.sillPiece : nearestSill(t.layout, now.station);
    sills[sill].bolts.push_back({now.id, makeOf(t.out, now), from.station, from.depth, isFixed});
  }
  for (SillToLay& sill : sills)
    std::stable_sort(sill.bolts.begin(), sill.bolts.end(),
                     [](const BoltBefore& a, const BoltBefore& b) { return a.station < b.station; });
}

// Depths at which a body's washer and axis please the sill, and those at which it also reaches the sheathed edges of
// the panels over the piece.
struct Depths {
  Interval inSill;
  std::vector<Interval> underPanels;
};

Depths depthsOf(const Translation& t, const SillPiece& piece, const AnchorBody& body) {
  const Interval across = piece.box.d;
  Depths depths{grown(across, -across.length() / 3), {}};
  if (!body.washerBox)
    return depths;
  const Interval washer{body.washerBox->d.from - body.depth, body.washerBox->d.to - body.depth};
  depths.inSill = overlap(depths.inSill, {across.from - washer.from, across.to - washer.to});
  const double limit = t.limits[LimitKey::WasherSheathing];
  for (const Panel& panel : t.layout.wall->panels) {
    if (!panel.unitShear || !over(*panel.unitShear, t.limits[LimitKey::WasherSheathingFrom]) ||
        overlap(piece.box.s, {panel.from, panel.to}).empty())
      continue;
    Interval reach = depths.inSill;
    if (panel.sheathing != Sheathing::Inside)
      reach.to = std::min(reach.to, across.from + limit - washer.from);
    if (panel.sheathing != Sheathing::Outside)
      reach.from = std::max(reach.from, across.to - limit - washer.to);
    depths.underPanels.push_back(reach);
  }
  return depths;
}

// In the window, as near as a tape mark allows.
std::optional<double> nearestWithin(Interval window, double depth) {
  if (window.empty() || (!under(depth, window.from) && !over(depth, window.to)))
    return std::nullopt;
  const Stretch marks = marksIn(window);
  if (marks.from > marks.to)
    return window.middle();
  return inchesOf(depth < window.middle() ? marks.from : marks.to);
}

class Stands {
public:
  Stands(Translation& t, BoltsToLay& lay) : t_(t), lay_(lay) {}

  void addFor(SillToLay& sill, std::size_t make, double depth) {
    const AnchorBody body = bodyOf(sill, make, depth);
    add(sill, make, depth, body);
    const Depths depths = depthsOf(t_, t_.layout.sills[sill.piece], body);
    std::vector<Interval> windows{depths.inSill};
    windows.insert(windows.end(), depths.underPanels.begin(), depths.underPanels.end());
    for (const Interval window : windows)
      if (const auto other = nearestWithin(window, depth))
        add(sill, make, *other, bodyOf(sill, make, *other));
  }

private:
  AnchorBody bodyOf(const SillToLay& sill, std::size_t make, double depth) {
    const SillPiece& piece = t_.layout.sills[sill.piece];
    auto wall = std::make_shared<WallLine>(*t_.layout.wall);
    Bolt bolt = t_.out.makes[make];
    bolt.station = piece.box.s.middle();
    bolt.depth = depth;
    wall->bolts = {bolt};
    wall->straps.clear();
    wall->rods.clear();
    wall->bars.clear();
    wall->studs.reset();
    const WallLayout alone = layOut(wall, t_.layout.types, t_.layout.limits, t_.layout.marks, t_.layout.place);
    AnchorBody body = alone.anchors.front();
    body.sillPiece = sill.piece;
    body.bolt = nullptr; // that wall goes; see below
    addProjections(body, make);
    return body;
  }

  // Steel wherever a bolt of the make has it that stands up more or less than the first.
  void addProjections(AnchorBody& body, std::size_t make) const {
    const double first = t_.out.makes[make].projection;
    const std::vector<Capsule> foot = body.foot;
    std::vector<double> told{first};
    for (const Bolt& bolt : t_.layout.wall->bolts) {
      if (!sameMake(bolt, t_.out.makes[make]) || std::find(told.begin(), told.end(), bolt.projection) != told.end())
        continue;
      told.push_back(bolt.projection);
      const double up = bolt.projection - first;
      body.shank.a.z = std::min(body.shank.a.z, foot.empty() ? body.shank.a.z : foot.front().a.z + up);
      body.top = std::max(body.top, body.pour + bolt.projection);
      body.bottom = std::min(body.bottom, body.pour + bolt.projection - body.boltType->length);
      body.shank.b.z = std::max(body.shank.b.z, body.top - body.shank.radius);
      for (Capsule part : foot) {
        part.a.z += up;
        part.b.z += up;
        body.foot.push_back(part);
      }
    }
    for (const Capsule& part : body.foot) {
      const Box3 box = bounds(part);
      body.steelBox = {hull(body.steelBox.s, box.s), hull(body.steelBox.d, box.d), hull(body.steelBox.z, box.z)};
    }
    body.steelBox.z = hull(body.steelBox.z, bounds(body.shank).z);
  }

  void add(SillToLay& sill, std::size_t make, double depth, const AnchorBody& body) {
    const BoltStand stand{make, depth, body.pour};
    std::size_t i = 0;
    while (i < t_.out.stands.size() && !(t_.out.stands[i] == stand && sameBearing(lay_.bodies[i], body)))
      ++i;
    if (i == t_.out.stands.size()) {
      t_.out.stands.push_back(stand);
      lay_.bodies.push_back(body);
    }
    if (std::find(sill.stands.begin(), sill.stands.end(), i) == sill.stands.end())
      sill.stands.push_back(i);
  }

  static bool sameBearing(const AnchorBody& a, const AnchorBody& b) {
    return a.washerBox.has_value() == b.washerBox.has_value() && (!a.washerBox || a.washerBox->z == b.washerBox->z);
  }

  Translation& t_;
  BoltsToLay& lay_;
};

} // namespace

bool sameMake(const Bolt& a, const Bolt& b) {
  return a.type == b.type && a.washer == b.washer && a.hook == b.hook && a.cutWasher == b.cutWasher &&
         a.washerShift == b.washerShift;
}

Result<BoltsToLay> boltsToLay(Translation& t) {
  BoltsToLay lay;
  lay.sills = sillsOf(t.layout);
  for (const SillToLay& sill : lay.sills)
    if (sill.marks.from > sill.marks.to)
      return Problem{"wall " + t.layout.wall->mark,
                     "two sills lie one over the other, or one beyond the end of the wall"};
  addBefore(t, lay.sills);
  const bool anyBefore = !t.out.makes.empty();
  Stands stands(t, lay);
  for (SillToLay& sill : lay.sills)
    for (const BoltBefore& bolt : sill.bolts)
      stands.addFor(sill, bolt.make, bolt.depth);
  for (SillToLay& sill : lay.sills) {
    if (!sill.stands.empty() || boltsNeeded(t.layout, t.limits) < 1)
      continue;
    if (t.wishes.boltToAdd)
      stands.addFor(sill, makeOf(t.out, *t.wishes.boltToAdd), t.wishes.boltToAdd->depth);
    else if (anyBefore)
      stands.addFor(sill, 0, t.out.stands.front().depth);
    else
      return Problem{"wall " + t.layout.wall->mark, "there is no bolt to go by: put one on its sill"};
  }
  for (std::size_t i = 0; i < lay.bodies.size(); ++i)
    lay.bodies[i].bolt = &t.out.makes[t.out.stands[i].make];
  return lay;
}

} // namespace sillwright
