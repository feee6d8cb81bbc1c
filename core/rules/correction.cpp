#include "core/rules/correction.h"

#include "core/model/lookup.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

template <class Stretch> void moveStretch(Stretch& piece, Field field, double by) {
  if (field == Field::Station || field == Field::LeftEnd)
    piece.from += by;
  if (field == Field::Station || field == Field::RightEnd)
    piece.to += by;
}

void apply(PourStep& step, const Correction& c) {
  moveStretch(step, c.field, c.by);
  if (c.field == Field::Height)
    step.height += c.by;
}

void apply(Sill& sill, const Correction& c) {
  moveStretch(sill, c.field, c.by);
  if (c.field == Field::Station)
    for (double& splice : sill.splices)
      splice += c.by;
}

void apply(Opening& opening, const Correction& c) {
  moveStretch(opening, c.field, c.by);
}
void apply(Panel& panel, const Correction& c) {
  moveStretch(panel, c.field, c.by);
}

void apply(Column& column, const Correction& c) {
  if (c.field == Field::Station)
    column.station += c.by;
}

void apply(Strap& strap, const Correction& c) {
  if (c.field == Field::Station)
    strap.station += c.by;
  if (c.field == Field::Height)
    strap.heightOffset += c.by;
}

void apply(Bolt& bolt, const Correction& c) {
  if (c.field == Field::Station)
    bolt.station += c.by;
  if (c.field == Field::Depth)
    bolt.depth += c.by;
  if (c.field == Field::Projection)
    bolt.projection += c.by;
  if (c.field == Field::Hook)
    bolt.hook = HookDirection::Inward;
  if (c.field == Field::Washer) {
    bolt.washer = c.type;
    bolt.washerShift = c.by;
  }
  if (c.field == Field::CutWasher || (c.field == Field::Washer && c.by != 0))
    bolt.cutWasher = true;
}

void apply(Rod& rod, const Correction& c) {
  if (c.field == Field::Station)
    rod.offset += rod.side == Side::Right ? c.by : -c.by;
  if (c.field == Field::Depth)
    rod.depth += c.by;
  if (c.field == Field::Projection)
    rod.projection += c.by;
}

void apply(Bar& bar, const Correction& c) {
  BarPlace& place = bar.found ? *bar.found : bar.planned;
  for (Point3* end : {&place.a, &place.b}) {
    if (c.field == Field::Station)
      end->s += c.by;
    if (c.field == Field::Depth)
      end->d += c.by;
    if (c.field == Field::Height)
      end->z += c.by;
  }
}

void apply(GradeShot& shot, const Correction& c) {
  if (c.field == Field::Station)
    shot.station += c.by;
}

} // namespace

WallLine corrected(const WallLine& wall, const Correction& correction) {
  WallLine changed = wall;
  forEachList(changed, [&](auto& list) {
    if (auto* piece = findIn(list, correction.piece))
      apply(*piece, correction);
  });
  return changed;
}

std::vector<Correction> allWays(const Finding& finding) {
  std::vector<Correction> ways;
  if (finding.correction)
    ways.push_back(*finding.correction);
  ways.insert(ways.end(), finding.otherWays.begin(), finding.otherWays.end());
  return ways;
}

std::optional<Correction> firstWay(const Finding& finding) {
  if (finding.correction || finding.otherWays.empty())
    return finding.correction;
  return finding.otherWays.front();
}

} // namespace sillwright
