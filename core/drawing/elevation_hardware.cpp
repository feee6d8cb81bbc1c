// Straps, bolts and rods: cast in below, standing above; and the level between the straps of a pair.
#include <algorithm>
#include <cmath>

#include "core/drawing/elevation_parts.h"
#include "core/drawing/text_metrics.h"

namespace sillwright::elevation {

namespace {

double edgeWidth(const Scene& scene, Id piece, double otherwise) {
  return inkOf(scene, piece, Ink::Steel) == Ink::Steel ? otherwise : 1.8;
}

double shankWidth(const Scene& scene, const AnchorBody& anchor) {
  return std::max(anchor.diameter * scene.view.scale, 2.2);
}

void strapBelow(Scene& scene, const StrapBody& strap) {
  const Bounds b = scene.within(scene.box(strap.plate.s, strap.depthOfHook));
  if (b.empty())
    return;
  const Ink edge = inkOf(scene, strap.id, Ink::Steel);
  scene.drawing.fillRect(b.x0, b.y0, b.x1, b.y1, Ink::SteelFace, scene.paper ? 1 : 0.82);
  scene.drawing.rect(b.x0, b.y0, b.x1, b.y1, edge, edgeWidth(scene, strap.id, 1));
  const auto& profile = strap.embedded.profile;
  const auto across = [&](double z) { return scene.y(z) > b.y0 && scene.y(z) < b.y1; };
  if (profile.size() > 2 && across(profile[1].z)) // the bend away from the form
    scene.drawing.line({b.x0, scene.y(profile[1].z)}, {b.x1, scene.y(profile[1].z)}, edge, 0.5);
  if (profile.size() > 2 && profile.back().z > strap.depthOfHook.from && across(profile.back().z)) {
    const double y = scene.y(profile.back().z); // the tip of the hook, turned up behind
    const Point2 tip[] = {{b.x0, y}, {b.x1, y}};
    scene.drawing.dashed(tip, 2.4, 1.8, edge, 0.8);
  }
  scene.keepOff.push_back(b);
}

void strapAbove(Scene& scene, const StrapBody& strap) {
  const Bounds b = scene.within(scene.box(strap.plate.s, strap.plate.z));
  if (!b.empty()) {
    const Ink edge = inkOf(scene, strap.id, Ink::Steel);
    if (scene.input.magnified && isInHand(scene, strap.id)) // what it hangs on is seen through it
      scene.drawing.fillRect(b.x0, b.y0, b.x1, b.y1, Ink::Hand, 0.26);
    else
      fillBox(scene, b, isInHand(scene, strap.id) ? Ink::Hand : Ink::Steel, edge, edgeWidth(scene, strap.id, 0.8));
    std::vector<Point2> nails;
    for (const NailBody& nail : strap.nails)
      if (scene.frame.contains(Point2{scene.x(nail.s), scene.y(nail.z)}))
        nails.push_back({scene.x(nail.s), scene.y(nail.z)});
    const double diameter = strap.type->nails.nailDiameter;
    scene.drawing.discs(nails, std::max(0.7, diameter * scene.view.scale / 2), Ink::Paper);
    scene.keepOff.push_back(b);
  }
  const double y = scene.y(strap.joint);
  const Bounds joint = scene.box(strap.plate.s, {strap.joint, strap.joint});
  scene.drawing.line({joint.x0 - 4, y}, {joint.x1 + 4, y}, inkOf(scene, strap.id, Ink::Steel), 2.2);
}

void hookEnd(Scene& scene, const AnchorBody& anchor, bool away, Ink edge) {
  const Point2 at{scene.x(anchor.station), scene.y(anchor.bottom + anchor.diameter / 2)};
  drawHookEnd(scene.drawing, at, std::max(shankWidth(scene, anchor) * 0.78, 3.0), away, edge);
}

void footAlong(Scene& scene, const AnchorBody& anchor, Ink edge) {
  for (const Capsule& part : anchor.foot) {
    const Interval s{std::min(part.a.s, part.b.s) - part.radius, std::max(part.a.s, part.b.s) + part.radius};
    const Interval z{std::min(part.a.z, part.b.z) - part.radius, std::max(part.a.z, part.b.z) + part.radius};
    if (part.a.s != part.b.s || part.a.z != part.b.z)
      fillBox(scene, scene.box(s, z), scene.paper ? Ink::Paper : Ink::SteelSoft, edge, 0.9);
  }
}

void anchorBelow(Scene& scene, const AnchorBody& anchor) {
  const Ink edge = inkOf(scene, anchor.id, Ink::Steel);
  const double half = shankWidth(scene, anchor) / 2;
  const double x = scene.x(anchor.station);
  const Bounds shank{x - half, scene.y(anchor.pour), x + half, scene.y(anchor.bottom)};
  fillBox(scene, shank, scene.paper ? Ink::Paper : Ink::SteelSoft, edge, 0.9);
  scene.keepOff.push_back(shank.grown(2));
  if (!anchor.bolt || anchor.boltType->end == BoltEnd::Headed || anchor.bolt->hook == HookDirection::Left ||
      anchor.bolt->hook == HookDirection::Right)
    return footAlong(scene, anchor, edge);
  const bool inward = anchor.bolt->hook == HookDirection::Inward;
  hookEnd(scene, anchor, inward != scene.view.fromInside, edge);
}

void anchorAbove(Scene& scene, const AnchorBody& anchor) {
  const Ink steel = inkOf(scene, anchor.id, Ink::Steel);
  const double scale = scene.view.scale;
  const double x = scene.x(anchor.station);
  const double half = shankWidth(scene, anchor) / 2;
  const Bounds stub{x - half, scene.y(anchor.top), x + half, scene.y(anchor.pour)};
  fillBox(scene, stub, scene.paper ? Ink::Steel : Ink::SteelSoft, steel, 0.7);
  double on = anchor.sillPiece ? scene.y(scene.wall.sills[*anchor.sillPiece].box.z.to) : scene.y(anchor.pour);
  if (anchor.washerBox) {
    const Bounds plate = scene.box(anchor.washerBox->s, anchor.washerBox->z);
    const double thick = std::max(anchor.washer->thickness * scale, 1.8);
    scene.drawing.fillRect(plate.x0, on - thick, plate.x1, on, steel);
    on -= thick;
    scene.keepOff.push_back({plate.x0, on, plate.x1, plate.y1});
  }
  const double wide = std::max(1.5 * anchor.diameter * scale, 4.4);
  const double high = std::max(0.87 * anchor.diameter * scale, 2.8);
  scene.drawing.fillRect(x - wide / 2, on - high, x + wide / 2, on, steel);
  scene.keepOff.push_back(stub.grown(1));
}

// The bracket a rod will hold: a seat and a leg against its column.
void bracketHint(Scene& scene, const AnchorBody& anchor) {
  if (!anchor.rod)
    return;
  const auto column = std::find_if(scene.wall.columns.begin(), scene.wall.columns.end(),
                                   [&](const ColumnBody& c) { return c.id == anchor.rod->column; });
  if (column == scene.wall.columns.end())
    return;
  const double face = scene.x(anchor.rod->side == Side::Right ? column->box.s.to : column->box.s.from);
  const double foot = scene.y(column->box.z.from + 1);
  const Point2 bracket[] = {{scene.x(anchor.station), foot}, {face, foot}, {face, foot - 10 * scene.view.scale}};
  scene.drawing.dashed(bracket, 3, 2, Ink::Steel, 1);
}

bool seesStrap(const Scene& scene, const StrapBody& strap) { return scene.sees(strap.plate.s); }

// The strap next to a side of an opening, within a column's reach.
const StrapBody* strapBeside(const Scene& scene, double station, Side side) {
  const StrapBody* nearest = nullptr;
  double reach = 12;
  for (const StrapBody& strap : scene.wall.straps) {
    const double away = side == Side::Left ? station - strap.strap->station : strap.strap->station - station;
    if (away >= 0 && away < reach) {
      reach = away;
      nearest = &strap;
    }
  }
  return nearest;
}

void drawVial(Scene& scene, Point2 at, double off) {
  const Bounds b{at.x - 18, at.y - 6.5, at.x + 18, at.y + 6.5};
  const Point2 glass[] = {{b.x0 + 4, b.y0}, {b.x1 - 4, b.y0}, {b.x1, b.y0 + 4}, {b.x1, b.y1 - 4},
                          {b.x1 - 4, b.y1}, {b.x0 + 4, b.y1}, {b.x0, b.y1 - 4}, {b.x0, b.y0 + 4}};
  scene.drawing.fill(glass, Ink::Paper);
  scene.drawing.loop(glass, Ink::Text2, 1.1);
  for (const double x : {at.x - 6.5, at.x + 6.5})
    scene.drawing.line({x, b.y0}, {x, b.y1}, Ink::Text2, 1);
  scene.drawing.disc({at.x + off, at.y}, 3.8, Ink::Text2);
  scene.drawing.take("vial", b);
}

void drawPairLink(Scene& scene, const Opening& opening) {
  const StrapBody* left = strapBeside(scene, opening.from, Side::Left);
  const StrapBody* right = strapBeside(scene, opening.to, Side::Right);
  if (!left || !right || !scene.sees({opening.from, opening.to}))
    return;
  const Point2 line[] = {{scene.x(opening.from), scene.y(left->joint)}, {scene.x(opening.to), scene.y(right->joint)}};
  const Interval seen = overlap({opening.from, opening.to}, scene.stations);
  const Point2 shown[] = {{scene.x(seen.from), line[0].y}, {scene.x(seen.to), line[1].y}};
  scene.drawing.dashed(shown, 2, 3, Ink::Text2, 0.8);
  const double apart = right->joint - left->joint;
  const bool level = std::abs(apart) <= 0.125;
  const double toHigh = (apart > 0) != scene.view.fromInside ? 11.0 : -11.0;
  // Where it is seen, on one side of a fold, and with its words beside it.
  Interval part{0, 0};
  for (const Interval shownPart : scene.view.shownParts(seen))
    part = shownPart.length() > part.length() ? shownPart : part;
  const double x0 = std::max(std::min(scene.x(part.from), scene.x(part.to)), scene.frame.x0);
  const double x1 = std::min(std::max(scene.x(part.from), scene.x(part.to)), scene.frame.x1);
  Point2 at{x0 + (x1 - x0) * 0.35, 0};
  at.y = line[0].y + (line[1].y - line[0].y) * (at.x - line[0].x) / (line[1].x - line[0].x);
  if (!scene.frame.contains(at) || x1 - x0 < 60 || scene.input.magnified)
    return;
  // Where the pour line does not step down in the opening, its tape lies along the link: the vial floats above.
  const double tape = scene.y(pourAt(scene.wall, scene.view.s(at.x)));
  if (at.y + 8 > tape && at.y - 8 < tape + scene.blade)
    at.y = tape - std::max(0.0, scene.wall.wall->formTop) * scene.view.scale - 12;
  drawVial(scene, at, level ? apart * 20 * (scene.view.fromInside ? -1 : 1) : toHigh);
  const std::string words = left->strap->mark + " and " + right->strap->mark + ": joints " +
                            (level ? "level" : inches(std::abs(apart)) + " out of level");
  if (at.x + 25 + textWidth(words, 11) < x1) // else they would run into the tape beyond the opening
    say(scene, "pair", {at.x + 25, at.y + 4}, words, Ink::Text2,
        {11, Weight::Regular, Anchor::Start, 0, Ink::Paper, 6});
}

} // namespace

void drawEmbedded(Scene& scene) {
  for (const StrapBody& strap : scene.wall.straps)
    if (seesStrap(scene, strap))
      strapBelow(scene, strap);
  for (const AnchorBody& anchor : scene.wall.anchors)
    if (scene.sees(anchor.station))
      anchorBelow(scene, anchor);
}

void drawAbove(Scene& scene) {
  for (const AnchorBody& anchor : scene.wall.anchors)
    if (scene.sees(anchor.station)) {
      bracketHint(scene, anchor);
      anchorAbove(scene, anchor);
    }
  for (const StrapBody& strap : scene.wall.straps)
    if (seesStrap(scene, strap))
      strapAbove(scene, strap);
}

void drawPairLinks(Scene& scene) {
  for (const Opening& opening : scene.wall.wall->openings)
    drawPairLink(scene, opening);
}

} // namespace sillwright::elevation
