#include "core/rules/correction.h"

#include "core/model/lookup.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

template <class Stretch> void moveStretch(Stretch& piece, Field field, double by) {
  if (field != Field::Station)
    return;
  piece.from += by;
  piece.to += by;
}

void apply(PourStep& step, Field field, double by) {
  moveStretch(step, field, by);
  if (field == Field::Height)
    step.height += by;
}

void apply(Sill& sill, Field field, double by) {
  moveStretch(sill, field, by);
  if (field == Field::Station)
    for (double& splice : sill.splices)
      splice += by;
}

void apply(Opening& opening, Field field, double by) {
  moveStretch(opening, field, by);
}
void apply(Panel& panel, Field field, double by) {
  moveStretch(panel, field, by);
}

void apply(Column& column, Field field, double by) {
  if (field == Field::Station)
    column.station += by;
}

void apply(Strap& strap, Field field, double by) {
  if (field == Field::Station)
    strap.station += by;
  if (field == Field::Height)
    strap.heightOffset += by;
}

void apply(Bolt& bolt, Field field, double by) {
  if (field == Field::Station)
    bolt.station += by;
  if (field == Field::Depth)
    bolt.depth += by;
  if (field == Field::Projection)
    bolt.projection += by;
  if (field == Field::Hook)
    bolt.hook = HookDirection::Inward;
}

void apply(Rod& rod, Field field, double by) {
  if (field == Field::Station)
    rod.offset += rod.side == Side::Right ? by : -by;
  if (field == Field::Depth)
    rod.depth += by;
  if (field == Field::Projection)
    rod.projection += by;
}

void apply(Bar& bar, Field field, double by) {
  BarPlace& place = bar.found ? *bar.found : bar.planned;
  for (Point3* end : {&place.a, &place.b}) {
    if (field == Field::Station)
      end->s += by;
    if (field == Field::Depth)
      end->d += by;
    if (field == Field::Height)
      end->z += by;
  }
}

void apply(GradeShot& shot, Field field, double by) {
  if (field == Field::Station)
    shot.station += by;
}

} // namespace

WallLine corrected(const WallLine& wall, const Correction& correction) {
  WallLine changed = wall;
  forEachList(changed, [&](auto& list) {
    if (auto* piece = findIn(list, correction.piece))
      apply(*piece, correction.field, correction.by);
  });
  return changed;
}

} // namespace sillwright
