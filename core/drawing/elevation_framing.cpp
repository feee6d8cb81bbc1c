// Lumber: sheathed fields, studs, columns, sills, headers, plates; and the break lines that cut framing and wall off.
#include <algorithm>

#include "core/drawing/elevation_parts.h"

namespace sillwright::elevation {

namespace {

constexpr double plateThickness = dressedTwo;

void drawFields(Scene& scene) {
  for (const Panel& panel : scene.wall.wall->panels) {
    const Interval s{panel.from, panel.to};
    if (!scene.sees(s))
      continue;
    const double foot = pourAt(scene.wall, s.middle());
    const Bounds b = scene.within(scene.box(s, {foot, std::max(foot, panel.height)}));
    if (!b.empty())
      scene.drawing.fillRect(b.x0, b.y0, b.x1, b.y1, Ink::Wood2);
    if (isInHand(scene, panel.id))
      scene.drawing.rect(b.x0, b.y0, b.x1, b.y1, Ink::Hand, 1.8);
  }
}

void drawColumn(Scene& scene, const ColumnBody& column) {
  const bool held = isInHand(scene, column.id);
  const Ink edge = inkOf(scene, column.id, Ink::WoodLine);
  fillBox(scene, scene.box(column.box.s, column.box.z), held ? Ink::HandSoft : Ink::Wood, edge,
          edge == Ink::WoodLine ? 0.9 : 1.8);
  for (const double seam : column.seams) {
    const Bounds b = scene.within(scene.box({seam, seam}, column.box.z));
    if (b.y1 > b.y0 && scene.sees(seam))
      scene.drawing.line({b.x0, b.y0}, {b.x0, b.y1}, Ink::WoodLine, 0.6);
  }
}

// The sides of the rough opening, seen also where no trimmer stands there yet.
void roughOpening(Scene& scene, const Opening& opening) {
  const double foot = opening.kind == OpeningKind::Window
                          ? opening.sillHeight
                          : pourAt(scene.wall, (opening.from + opening.to) / 2);
  const Bounds b = scene.within(scene.box({opening.from, opening.to}, {foot, opening.headHeight}));
  const Ink ink = isInHand(scene, opening.id) ? Ink::Hand : Ink::WoodLine;
  for (const double station : {opening.from, opening.to})
    if (scene.sees(station) && b.y1 > b.y0)
      scene.drawing.line({scene.x(station), b.y0}, {scene.x(station), b.y1}, ink, ink == Ink::Hand ? 1.8 : 0.9);
}

void drawHeaders(Scene& scene) {
  for (const Opening& opening : scene.wall.wall->openings) {
    Interval s{opening.from, opening.to};
    if (!scene.sees(s))
      continue;
    for (const ColumnBody& column : scene.wall.columns) // the header bears on the trimmers beside the opening
      if (column.role == ColumnRole::Trimmer && gap(column.box.s, {opening.from, opening.to}) < 1.0)
        s = hull(s, column.box.s);
    fillBox(scene, scene.box(s, {opening.headHeight, opening.headHeight + opening.headerDepth}), Ink::Wood,
            Ink::WoodLine, 1);
    roughOpening(scene, opening);
    if (opening.kind == OpeningKind::Window)
      fillBox(scene, scene.box({opening.from, opening.to}, {opening.sillHeight - plateThickness, opening.sillHeight}),
              Ink::Wood, Ink::WoodLine, 1);
  }
}

void clearOpenings(Scene& scene) {
  for (const Opening& opening : scene.wall.wall->openings) {
    if (opening.kind != OpeningKind::Window || !scene.sees({opening.from, opening.to}))
      continue;
    const Bounds b =
        scene.within(scene.box({opening.from, opening.to}, {opening.sillHeight, opening.headHeight}));
    if (!b.empty())
      scene.drawing.fillRect(b.x0, b.y0, b.x1, b.y1, Ink::Paper);
  }
}

void drawPlates(Scene& scene) {
  const double top = scene.wall.wall->wallHeight;
  for (const double z : {top - 2 * plateThickness, top - plateThickness})
    fillBox(scene, scene.box(overlap({0, scene.wall.length}, scene.stations), {z, z + plateThickness}), Ink::Wood,
            Ink::WoodLine, 0.9);
}

std::vector<Point2> zigzag(Point2 from, Point2 to) {
  constexpr double pitch = 9;
  const bool upright = from.x == to.x;
  const double length = upright ? to.y - from.y : to.x - from.x;
  std::vector<Point2> points;
  for (int i = 0; i * pitch <= length; ++i) {
    const double side = i % 2 == 0 ? 2.5 : -2.5;
    points.push_back(upright ? Point2{from.x + side, from.y + i * pitch} : Point2{from.x + i * pitch, from.y + side});
  }
  return points;
}

// Blanks everything beyond the zigzag, by `out`, and draws it.
void breakLine(Scene& scene, Point2 from, Point2 to, Point2 out) {
  const std::vector<Point2> line = zigzag(from, to);
  if (line.size() < 2)
    return;
  std::vector<Point2> blank = line;
  blank.push_back({line.back().x + out.x, line.back().y + out.y});
  blank.push_back({line.front().x + out.x, line.front().y + out.y});
  scene.drawing.fill(blank, Ink::Paper);
  scene.drawing.polyline(line, Ink::Text, 0.7);
}

} // namespace

void drawFraming(Scene& scene) {
  drawFields(scene);
  clearOpenings(scene);
  for (const StudBody& stud : scene.wall.studs)
    if (scene.sees(stud.box.s))
      fillBox(scene, scene.box(stud.box.s, stud.box.z), Ink::Wood, Ink::WoodLine, 0.6);
  for (const ColumnBody& column : scene.wall.columns)
    if (scene.sees(column.box.s))
      drawColumn(scene, column);
  for (const SillPiece& sill : scene.wall.sills)
    if (scene.sees(sill.box.s))
      fillBox(scene, scene.box(sill.box.s, sill.box.z), isInHand(scene, sill.sill) ? Ink::HandSoft : Ink::Wood,
              inkOf(scene, sill.sill, Ink::WoodLine), 1);
  drawHeaders(scene);
  drawPlates(scene);
}

void drawBreaks(Scene& scene) {
  if (!scene.paper)
    return;
  const Bounds& f = scene.frame;
  const double left = scene.view.fromInside ? scene.wall.concrete.to : scene.wall.concrete.from;
  const double right = scene.view.fromInside ? scene.wall.concrete.from : scene.wall.concrete.to;
  if (scene.y(scene.wall.wall->wallHeight) < f.y0 - 1)
    breakLine(scene, {std::max(f.x0, scene.x(left) - 14), f.y0 + 6}, {std::min(f.x1, scene.x(right) + 14), f.y0 + 6},
              {0, -14});
  const double foot = std::min(f.y1, scene.y(scene.wall.bottom) + 20);
  const double end = scene.x(scene.view.fromInside ? scene.stations.from : scene.stations.to);
  const double start = scene.x(scene.view.fromInside ? scene.stations.to : scene.stations.from);
  if (end < scene.x(right) - 1)
    breakLine(scene, {end - 4, f.y0}, {end - 4, foot}, {60, 0});
  if (start > scene.x(left) + 1)
    breakLine(scene, {start + 4, f.y0}, {start + 4, foot}, {-60, 0});
}

} // namespace sillwright::elevation
