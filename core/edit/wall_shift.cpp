#include "core/edit/wall_shift.h"

#include "core/model/lookup.h"

namespace sillwright {

namespace {

void shift(PourStep& piece, double by) {
  piece.from += by, piece.to += by;
}
void shift(Opening& piece, double by) {
  piece.from += by, piece.to += by;
}
void shift(Panel& piece, double by) {
  piece.from += by, piece.to += by;
}
void shift(Sill& piece, double by) {
  piece.from += by;
  piece.to += by;
  for (double& splice : piece.splices)
    splice += by;
}
void shift(Column& piece, double by) {
  piece.station += by;
}
void shift(Strap& piece, double by) {
  piece.station += by;
}
void shift(Bolt& piece, double by) {
  piece.station += by;
}
void shift(GradeShot& piece, double by) {
  piece.station += by;
}
void shift(Rod&, double) {}
void shift(Bar& piece, double by) {
  for (BarPlace* place : {&piece.planned, piece.found ? &*piece.found : nullptr})
    if (place) {
      place->a.s += by;
      place->b.s += by;
    }
}

} // namespace

void shiftWall(WallLine& wall, double by) {
  forEachList(wall, [&](auto& list) {
    for (auto& piece : list)
      shift(piece, by);
  });
  for (Reading& reading : wall.readings)
    if (reading.along)
      *reading.along += by;
}

} // namespace sillwright
