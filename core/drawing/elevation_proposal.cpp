// What a refit proposes: ghosts where pieces would stand, an arrow with the amount for each that moves, a plus for each
// that is added, a stroke through each that is taken out.
#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "core/base/tolerance.h"
#include "core/drawing/elevation_parts.h"
#include "core/drawing/elevation_proposal.h"

namespace sillwright::elevation {

namespace {

// ---- ghosts ---------------------------------------------------------------------------------------------------------

void outline(Scene& scene, const Bounds& box, bool current) {
  const Bounds b = scene.within(box);
  if (b.empty())
    return;
  if (current)
    scene.drawing.fillRect(b.x0, b.y0, b.x1, b.y1, Ink::HandSoft, 0.6);
  scene.drawing.dashedRect(b.x0, b.y0, b.x1, b.y1, 5, 3, Ink::Hand, current ? 1.6 : 1.1);
}

Bounds wideEnough(const Bounds& box) {
  const double more = std::max(0.0, 5 - (box.x1 - box.x0)) / 2;
  return {box.x0 - more, box.y0, box.x1 + more, box.y1};
}

Bounds ghostOf(Scene& scene, const StrapBody& strap, bool current) {
  const Bounds above = scene.box(strap.plate.s, strap.plate.z);
  outline(scene, above, current);
  outline(scene, scene.box(strap.plate.s, {strap.depthOfHook.from, strap.joint}), current);
  return above;
}

Bounds ghostOf(Scene& scene, const AnchorBody& anchor, bool current) {
  const Bounds shank = wideEnough(scene.box(around(anchor.station, anchor.diameter), {anchor.bottom, anchor.top}));
  outline(scene, shank, current);
  if (anchor.washerBox) {
    const Bounds plate = scene.box(anchor.washerBox->s, anchor.washerBox->z);
    const Point2 line[] = {{plate.x0, plate.y0}, {plate.x1, plate.y0}};
    scene.drawing.dashed(line, 5, 3, Ink::Hand, 1.6);
  }
  return shank;
}

Bounds ghostOf(Scene& scene, const ColumnBody& column, bool current) {
  const Bounds box = scene.box(column.box.s, column.box.z);
  outline(scene, box, current);
  return box;
}

// The body of a piece in a wall: added ones have no id yet and are known by their station.
template <class Bodies, class StationOf>
auto* bodyIn(const Bodies& bodies, Id id, double station, StationOf&& stationOfBody) {
  const auto at = std::find_if(bodies.begin(), bodies.end(), [&](const auto& body) {
    return body.id == id && (id || std::abs(stationOfBody(body) - station) < tolerance::same);
  });
  return at == bodies.end() ? nullptr : &*at;
}

// What of a piece stands above the pour line, on the page; draws its ghost where asked. Nothing for what has no body.
std::optional<Bounds> standing(Scene& scene, const WallLayout& wall, const Piece& piece, double station, bool ghost,
                               bool current) {
  const Id id = idOf(piece);
  switch (kindOf(piece)) {
  case PieceKind::Strap:
    if (const auto* strap = bodyIn(wall.straps, id, station, [](const StrapBody& b) { return b.strap->station; }))
      return ghost ? ghostOf(scene, *strap, current) : scene.box(strap->plate.s, strap->plate.z);
    return std::nullopt;
  case PieceKind::Bolt:
  case PieceKind::Rod:
    if (const auto* anchor = bodyIn(wall.anchors, id, station, [](const AnchorBody& b) { return b.station; }))
      return ghost ? ghostOf(scene, *anchor, current)
                   : scene.box(around(anchor->station, anchor->diameter), {anchor->pour, anchor->top});
    return std::nullopt;
  case PieceKind::Column:
    if (const auto* column = bodyIn(wall.columns, id, station, [](const ColumnBody& b) { return b.box.s.middle(); }))
      return ghost ? ghostOf(scene, *column, current) : scene.box(column->box.s, column->box.z);
    return std::nullopt;
  default:
    return std::nullopt;
  }
}

// ---- on the drawing itself ------------------------------------------------------------------------------------------

void head(Scene& scene, Point2 tip, double toRight) {
  const Point2 triangle[] = {tip, {tip.x - 6 * toRight, tip.y - 3.4}, {tip.x - 6 * toRight, tip.y + 3.4}};
  scene.drawing.fill(triangle, Ink::Hand);
}

void arrow(Scene& scene, double from, double to, double y) {
  const double toRight = to > from ? 1 : -1;
  scene.drawing.line({from, y}, {to - 5 * toRight, y}, Ink::Hand, 1.6);
  head(scene, {to, y}, toRight);
}

// From middle to middle, where that is long enough to be seen.
void arrowOnWall(Scene& scene, const Told& told) {
  if (!told.before || !told.after)
    return;
  const double from = scene.x(told.before->station), y = std::max(told.top, scene.frame.y0) + 7;
  if (std::abs(told.x - from) > 9 && scene.frame.contains(Point2{told.x, y}) && scene.frame.contains(Point2{from, y}))
    arrow(scene, from, told.x, y);
}

void strike(Scene& scene, Id piece) {
  for (const Seen& seen : scene.pieces)
    if (seen.id == piece) {
      const Bounds box = scene.box(seen.s, seen.z);
      const double half = std::max(8.0, (box.x1 - box.x0) / 2 + 4), x = (box.x0 + box.x1) / 2;
      const Bounds b = scene.within({x - half, box.y0 - 2, x + half, box.y1 + 2});
      scene.drawing.line({b.x0, b.y1}, {b.x1, b.y0}, Ink::Paper, 4.4);
      scene.drawing.line({b.x0, b.y1}, {b.x1, b.y0}, Ink::Hand, 2.2);
    }
}

// Draws the ghost of a piece that goes somewhere, strikes out one that is taken away.
std::optional<Told> tell(Scene& scene, const ShownProposal& proposal, std::size_t i) {
  const Change& change = proposal.changes[i];
  Told told{change, proposal.current == i, standBefore(*scene.wall.wall, change),
            standAfter(*proposal.after->wall, change)};
  const bool goes = told.after.has_value();
  const double station = goes ? told.after->station : told.before->station;
  const auto box = goes ? standing(scene, *proposal.after, *change.after, station, true, told.current)
                        : standing(scene, scene.wall, *change.before, station, false, false);
  if (!box)
    return std::nullopt;
  if (!goes)
    strike(scene, pieceOf(change));
  told.x = scene.x(station);
  told.top = box->y0;
  told.covered = {box->x0, box->x1};
  if (goes && told.before)
    told.covered = hull(told.covered, around(scene.x(told.before->station), told.covered.length()));
  return told;
}

} // namespace

std::vector<Told> drawGhosts(Scene& scene) {
  std::vector<Told> all;
  const ShownProposal* proposal = scene.input.proposal;
  if (!proposal || scene.paper || proposal->wall != scene.wall.wall->id)
    return all;
  for (std::size_t i = 0; i < proposal->changes.size(); ++i)
    if (const auto told = tell(scene, *proposal, i);
        told && told->x > scene.frame.x0 - 20 && told->x < scene.frame.x1 + 20)
      all.push_back(*told);
  for (const Told& told : all)
    arrowOnWall(scene, told);
  return all;
}

} // namespace sillwright::elevation
