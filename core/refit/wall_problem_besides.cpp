// Bolts beside what may itself move: columns with leeway, straps, rods. All as differences of two stations.
#include <algorithm>

#include "core/refit/bolt_near.h"
#include "core/refit/bolt_stands.h"
#include "core/refit/marks.h"
#include "core/rules/anchor_checks.h"
#include "core/rules/measure.h"

namespace sillwright {

namespace {

using sequence::Mark;
using Kind = Requirement::Kind;

constexpr sequence::Stretch anywhere{-sequence::kFar, sequence::kFar};

// What one bolt stand has to do with one anchored piece.
class Pair {
public:
  Pair(Translation& t, Id piece, double station, const AnchorBody& bolt, sequence::Ground& ground)
      : t_(t), piece_(piece), station_(station), bolt_(bolt), ground_(ground) {}

  void block(RuleId rule, Interval open) {
    t_.needs.block(ground_, {Kind::Rule, rule, {Id{}, piece_}}, apart(open), anywhere);
  }
  void toll(RuleId rule, Level level, Interval open) {
    const sequence::Stretch marks = marksAround(apart(open));
    t_.needs.toll(ground_, rule, level, {marks.from + 1, marks.to - 1});
  }

  void column(const ColumnBody& column) {
    if (const auto under = underWood(bolt_, nutBox(bolt_), column.box, 0))
      block(RuleId::BoltStud, *under);
    if (!bolt_.washerBox)
      return;
    if (const auto under = underWood(bolt_, *bolt_.washerBox, column.box, 0))
      block(RuleId::WasherColumn, *under);
    if (const auto near =
            underWood(bolt_, *bolt_.washerBox, column.box, t_.limits[LimitKey::WasherColumnTarget] - tolerance::same))
      toll(RuleId::WasherColumn, Level::Watch, *near);
  }

  template <class Steel> void steel(const Steel& still) {
    for (const Interval near : nearerThan(bolt_, still, tolerance::same))
      block(RuleId::BoltStrap, near);
    for (const Interval near : nearerThan(bolt_, still, t_.limits[LimitKey::BoltStrapTarget] - tolerance::same))
      toll(RuleId::BoltStrap, Level::Watch, near);
  }

  void axes(const AnchorBody& rod) {
    const double diameter = std::max(bolt_.diameter, rod.diameter);
    if (const auto near = axesNearerThan(bolt_, rod, t_.limits[LimitKey::BoltGap] * diameter))
      block(RuleId::BoltGap, *near);
    if (const auto near = axesNearerThan(bolt_, rod, t_.limits[LimitKey::BoltGapTorqued] * diameter - tolerance::same))
      toll(RuleId::BoltGap, Level::Ask, *near);
  }

private:
  // The piece counts from its nearest mark.
  Interval apart(Interval open) const { return {open.from - station_, open.to - station_}; }

  Translation& t_;
  Id piece_;
  double station_;
  const AnchorBody& bolt_;
  sequence::Ground& ground_;
};

template <class Measure>
void addBeside(Translation& t, const BoltsToLay& lay, Id piece, double station, const Measure& measure) {
  const auto index = anchoredIndex(t.out, piece);
  if (!index)
    return;
  sequence::Beside beside;
  beside.anchored = static_cast<int>(*index);
  beside.options.resize(std::max<std::size_t>(1, lay.bodies.size()));
  bool any = false;
  for (std::size_t stand = 0; stand < lay.bodies.size(); ++stand) {
    Pair pair(t, piece, station, lay.bodies[stand], beside.options[stand]);
    measure(pair);
    any = any || !beside.options[stand].blocked.empty() || !beside.options[stand].tolls.empty();
  }
  if (any)
    t.out.problem.besides.push_back(std::move(beside));
}

} // namespace

void addBesides(Translation& t, const BoltsToLay& lay) {
  for (const ColumnBody& column : t.layout.columns)
    addBeside(t, lay, column.id, column.box.s.middle(), [&](Pair& pair) { pair.column(column); });
  for (const StrapBody& strap : t.layout.straps)
    addBeside(t, lay, strap.id, strap.strap->station, [&](Pair& pair) { pair.steel(strap); });
  for (const AnchorBody& rod : t.layout.anchors)
    if (rod.isRod)
      addBeside(t, lay, rod.id, rod.station, [&](Pair& pair) {
        pair.steel(rod);
        pair.axes(rod);
      });
}

} // namespace sillwright
