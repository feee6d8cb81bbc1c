// Where pieces answer the pointer, and how a selected one and one in hand are shown.
#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"
#include "core/drawing/elevation_parts.h"
#include "core/drawing/text_metrics.h"

namespace sillwright::elevation {

namespace {

constexpr double handle = 6; // width of the end of a stretch, pt

void collect(Scene& scene, Id id, PieceKind kind, Interval s, Interval z) {
  if (scene.sees(s))
    scene.pieces.push_back({id, kind, s, z});
}

void collectStretches(Scene& scene) {
  const WallLine& line = *scene.wall.wall;
  for (const PourStep& step : line.steps)
    collect(scene, step.id, PieceKind::Step, {step.from, step.to}, {step.height - 3, step.height + 1});
  for (const Opening& opening : line.openings) {
    const double foot = opening.kind == OpeningKind::Window ? opening.sillHeight
                                                            : pourAt(scene.wall, (opening.from + opening.to) / 2);
    collect(scene, opening.id, PieceKind::Opening, {opening.from, opening.to},
            {foot, opening.headHeight + opening.headerDepth});
  }
  for (const Panel& panel : line.panels)
    collect(scene, panel.id, PieceKind::Panel, {panel.from, panel.to}, {0, panel.height});
}

Interval reach(double a, double b, double radius) { return {std::min(a, b) - radius, std::max(a, b) + radius}; }

bool hasEnds(const Scene& scene, const Seen& seen) {
  switch (seen.kind) {
  case PieceKind::Step:
  case PieceKind::Opening:
  case PieceKind::Sill:
  case PieceKind::Panel:
    return true;
  case PieceKind::Bar: {
    const Bar* bar = findIn(scene.wall.wall->bars, seen.id);
    return bar && bar->run == BarRun::Along;
  }
  default:
    return false;
  }
}

// Thin pieces are still easy to take hold of.
Bounds grip(const Scene& scene, const Seen& seen) {
  Bounds box = scene.box(seen.s, seen.z);
  const double wide = std::max(0.0, handle - (box.x1 - box.x0)) / 2;
  const double high = std::max(0.0, handle - (box.y1 - box.y0)) / 2;
  return {box.x0 - wide, box.y0 - high, box.x1 + wide, box.y1 + high};
}

void brackets(Scene& scene, const Bounds& b) {
  const double leg = 8;
  for (const double sx : {1.0, -1.0})
    for (const double sy : {1.0, -1.0}) {
      const Point2 at{sx > 0 ? b.x0 : b.x1, sy > 0 ? b.y0 : b.y1};
      const Point2 corner[] = {{at.x + leg * sx, at.y}, at, {at.x, at.y + leg * sy}};
      if (scene.frame.contains(at))
        scene.drawing.polyline(corner, Ink::Hand, 2.2);
    }
}

// The words end or begin at the piece's edge, so that they never lie over what is in the hand.
void liveDistance(Scene& scene, Interval s, double pieceEdge, double y, const std::string& to) {
  const double a = std::min(scene.x(s.from), scene.x(s.to));
  const double b = std::max(scene.x(s.from), scene.x(s.to));
  if (b - a < 1)
    return;
  scene.drawing.line({a, y}, {b, y}, Ink::Hand, 0.9);
  drawCrowsFoot(scene.drawing, a, y, Pointing::Left, Ink::Hand, 6, 1.3);
  drawCrowsFoot(scene.drawing, b, y, Pointing::Right, Ink::Hand, 6, 1.3);
  const std::string words = printMeasure(s.length(), scene.input.job->units);
  const double widest = std::max(textWidth(words, 12), textWidth(to, 9));
  const bool left = std::abs(scene.x(pieceEdge) - b) < std::abs(scene.x(pieceEdge) - a);
  const bool fits = widest + 4 < b - a;
  const auto write = [&](Anchor anchor, double x) {
    const bool said =
        say(scene, "live " + to, {x, y - 5}, words, Ink::Hand, {12, Weight::Bold, anchor, 0, Ink::Paper, 4});
    return say(scene, "live to " + to, {x, y + 13}, to, Ink::Text2, {9, Weight::Regular, anchor, 0, Ink::Paper, 4}) ||
           said;
  };
  const Anchor outward = left ? Anchor::End : Anchor::Start;
  if (!write(fits ? Anchor::Middle : outward, fits   ? (a + b) / 2
                                              : left ? b - 8
                                                     : a + 8) &&
      scene.input.magnified && !fits)
    write(left ? Anchor::Start : Anchor::End, left ? b + 8 : a - 8); // on the piece, which is seen through
}

struct Nearest {
  double away = 1e9;
  Interval between;
  std::string name;
};

void consider(Nearest& nearest, Interval piece, Interval other, std::string name) {
  const double away = gap(piece, other);
  if (away <= 0 || away >= nearest.away)
    return;
  nearest.away = away;
  nearest.between = other.from >= piece.to ? Interval{piece.to, other.from} : Interval{other.to, piece.from};
  nearest.name = std::move(name);
}

// A bolt or rod is set by its centre, and its limits count from there; everything else by its edge.
bool isSetByCentre(PieceKind kind) { return kind == PieceKind::Bolt || kind == PieceKind::Rod; }

Nearest nearestFace(const Scene& scene, const Seen& seen) {
  Nearest nearest;
  const bool centre = isSetByCentre(seen.kind);
  const Interval piece = centre ? Interval{seen.s.middle(), seen.s.middle()} : seen.s;
  for (const ConcreteFace& face : scene.wall.faces)
    consider(nearest, piece, {face.station, face.station},
             std::string(centre ? "centre" : "edge") +
                 (face.kind == ConcreteFace::Kind::Step ? " to the step" : " to the end"));
  return nearest;
}

Nearest nearestBar(const Scene& scene, Interval piece) {
  Nearest nearest;
  for (const BarBody& bar : scene.wall.bars)
    if (bar.bar->run == BarRun::Upright)
      consider(nearest, piece, around(bar.body.a.s, 2 * bar.body.radius), "clear of bar " + bar.bar->mark);
  return nearest;
}

Nearest nearestPiece(const Scene& scene, Interval piece, Id self) {
  Nearest nearest;
  for (const StrapBody& strap : scene.wall.straps)
    if (strap.id != self)
      consider(nearest, piece, strap.plate.s, "clear of " + strap.strap->mark);
  for (const AnchorBody& anchor : scene.wall.anchors)
    if (anchor.id != self)
      consider(nearest, piece, around(anchor.station, anchor.diameter),
               "clear of " + (anchor.bolt ? anchor.bolt->mark : anchor.rod->mark));
  return nearest;
}

std::string offColumnCentre(const Scene& scene, const Seen& seen) {
  const double station = seen.s.middle();
  for (const ColumnBody& column : scene.wall.columns) {
    if (!column.box.s.contains(station) || column.id == seen.id)
      continue;
    const double off = station - column.box.s.middle();
    if (std::abs(off) < 1.0 / 64)
      return "on the column centre";
    return printMeasure(std::abs(off), scene.input.job->units) +
           ((off > 0) != scene.view.fromInside ? " right" : " left") + " of column centre";
  }
  return {};
}

// To the right of it, else to the left, in a close look else over it.
void sayBeside(Scene& scene, const Seen& seen, const std::string& name, double y, const std::string& words) {
  const Bounds box = scene.box(seen.s, seen.z);
  TextStyle style{11, Weight::Regular, Anchor::Start, 0, Ink::Paper, 4};
  if (say(scene, name, {box.x1 + 8, y}, words, Ink::Hand, style))
    return;
  style.anchor = Anchor::End;
  if (say(scene, name, {box.x0 - 8, y}, words, Ink::Hand, style) || !scene.input.magnified)
    return;
  style.anchor = Anchor::Middle;
  say(scene, name, {(box.x0 + box.x1) / 2, y}, words, Ink::Hand, style);
}

// The rows that distances stand in, from the lowest on.
struct Rows {
  double lowest = 0, next = 36; // y of the lowest, pt from one to the next, up
  double words = 0;             // y of what is said about the place itself
  bool shared = false;          // by one to the left and one to the right
};

// Over the piece; in a close look over its tape, where there is no more room.
Rows rowsFor(const Scene& scene, const Seen& seen) {
  constexpr double row = 36, line = 15;
  if (scene.input.magnified) {
    const double tape = scene.y(pourAt(scene.wall, std::clamp(seen.s.middle(), 0.0, scene.wall.length)));
    return {tape - 44, row, tape - 10, true};
  }
  const double highest = scene.frame.y0 + 24 + 2 * row;
  const double y =
      std::clamp(scene.y(seen.z.to) - 34 - 2 * line, highest, std::max(highest, scene.frame.y1 - 60 - 2 * line));
  return {y, row, y + row, false};
}

// Distances one over the other, under them what it snapped to, all inside the window.
void liveDistances(Scene& scene, const Seen& seen, SnapReason snap) {
  const Rows rows = rowsFor(scene, seen);
  const std::string centre = offColumnCentre(scene, seen);
  if (!centre.empty())
    sayBeside(scene, seen, "live centre", rows.words, centre);
  else if (snap != SnapReason::None)
    sayBeside(scene, seen, "snap", rows.words, std::string(words(snap)));
  int onLeft = 0, onRight = 0;
  for (const Nearest& nearest :
       {nearestFace(scene, seen), nearestBar(scene, seen.s), nearestPiece(scene, seen.s, seen.id)}) {
    const bool cutOff = nearest.between.from < scene.stations.from || nearest.between.to > scene.stations.to;
    if (nearest.away >= 60 || (scene.input.magnified && cutOff))
      continue;
    const bool left = nearest.between.to <= seen.s.middle() + tolerance::same;
    int& own = left || !rows.shared ? onLeft : onRight;
    if (const double y = rows.lowest - rows.next * own++; !rows.shared || y - 18 > scene.frame.y0)
      liveDistance(scene, nearest.between, left ? seen.s.from : seen.s.to, y, nearest.name);
  }
}

void ghost(Scene& scene, const Seen& seen, const InHand& hand) {
  if (!hand.before || std::abs(hand.moved) < 1e-9)
    return;
  if (hand.kind == InHand::Kind::Resize) {
    const double x = scene.x(hand.station - hand.moved);
    const Point2 line[] = {{x, scene.y(seen.z.to)}, {x, scene.y(seen.z.from)}};
    scene.drawing.dashed(line, 5, 3, Ink::Hand, 1.1);
    return;
  }
  const Bounds b = scene.box({seen.s.from - hand.moved, seen.s.to - hand.moved}, seen.z);
  scene.drawing.dashedRect(b.x0, b.y0, b.x1, b.y1, 5, 3, Ink::Hand, 1.1);
}

void rubberBand(Scene& scene, const InHand& hand) {
  const Interval s{std::min(hand.band->first.s, hand.band->second.s), std::max(hand.band->first.s, hand.band->second.s)};
  const Interval z{std::min(hand.band->first.z, hand.band->second.z), std::max(hand.band->first.z, hand.band->second.z)};
  const Bounds b = scene.within(scene.box(s, z));
  if (b.empty())
    return;
  scene.drawing.fillRect(b.x0, b.y0, b.x1, b.y1, Ink::HandSoft, 0.35);
  scene.drawing.dashedRect(b.x0, b.y0, b.x1, b.y1, 4, 3, Ink::Hand, 1);
}

Bounds headerOf(const Scene& scene, const Seen& opening) {
  const Opening* made = findIn(scene.wall.wall->openings, opening.id);
  return made ? scene.box(opening.s, {made->headHeight, made->headHeight + made->headerDepth})
              : scene.box(opening.s, opening.z);
}

} // namespace

void collectPieces(Scene& scene) {
  collectStretches(scene);
  for (const BarBody& bar : scene.wall.bars)
    collect(scene, bar.id, PieceKind::Bar, reach(bar.body.a.s, bar.body.b.s, bar.body.radius),
            reach(bar.body.a.z, bar.body.b.z, bar.body.radius));
  for (const SillPiece& sill : scene.wall.sills)
    collect(scene, sill.sill, PieceKind::Sill, sill.box.s, sill.box.z);
  for (const ColumnBody& column : scene.wall.columns)
    collect(scene, column.id, PieceKind::Column, column.box.s, column.box.z);
  for (const GradeShot& shot : scene.wall.wall->shots)
    collect(scene, shot.id, PieceKind::Shot, around(shot.station, 0.5), around(shot.reading, 0.5));
  for (const AnchorBody& anchor : scene.wall.anchors)
    collect(scene, anchor.id, anchor.isRod ? PieceKind::Rod : PieceKind::Bolt, around(anchor.station, anchor.diameter),
            {anchor.bottom, anchor.top});
  for (const StrapBody& strap : scene.wall.straps)
    collect(scene, strap.id, PieceKind::Strap, strap.plate.s, hull(strap.plate.z, strap.depthOfHook));
}

void addHits(Scene& scene) {
  const Id wall = scene.wall.wall->id;
  for (const Seen& seen : scene.pieces) {
    const Bounds box = grip(scene, seen);
    // What stands open is no piece to take hold of: an opening answers at its header and its name.
    scene.drawing.hit({wall, seen.id}, seen.kind == PieceKind::Opening ? headerOf(scene, seen) : box);
    if (!hasEnds(scene, seen))
      continue;
    const double from = scene.x(seen.s.from);
    const double to = scene.x(seen.s.to);
    scene.drawing.hit({wall, seen.id}, {from - handle / 2, box.y0, from + handle / 2, box.y1}, HitArea::Part::FromEnd);
    scene.drawing.hit({wall, seen.id}, {to - handle / 2, box.y0, to + handle / 2, box.y1}, HitArea::Part::ToEnd);
  }
  for (const auto& [piece, box] : scene.named)
    scene.drawing.hit({wall, piece}, box, HitArea::Part::Name);
}

void drawSelection(Scene& scene) {
  for (const PieceRef& selected : scene.input.selection) {
    if (selected.wall != scene.wall.wall->id)
      continue;
    for (const Seen& seen : scene.pieces)
      if (seen.id == selected.piece)
        brackets(scene, scene.box(seen.s, seen.z).grown(5));
  }
}

void drawInHand(Scene& scene) {
  const InHand* hand = scene.input.inHand;
  if (!hand)
    return;
  if (hand->kind == InHand::Kind::RubberBand && hand->band)
    return rubberBand(scene, *hand);
  for (const Seen& seen : scene.pieces)
    if (seen.id == hand->piece.piece && hand->piece.wall == scene.wall.wall->id) {
      ghost(scene, seen, *hand);
      drawSlots(scene, *hand);
      liveDistances(scene, seen, hand->snap);
      return;
    }
}

} // namespace sillwright::elevation
