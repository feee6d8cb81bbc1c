#include "core/drawing/elevation.h"

#include <algorithm>
#include <cmath>

#include "core/drawing/elevation_parts.h"
#include "core/drawing/elevation_proposal.h"
#include "core/drawing/text_metrics.h"

namespace sillwright {

namespace elevation {

Bounds Scene::box(Interval s, Interval z) const {
  const double a = x(s.from);
  const double b = x(s.to);
  return {std::min(a, b), y(z.to), std::max(a, b), y(z.from)};
}

Bounds Scene::within(const Bounds& box) const {
  const Bounds f = frame.grown(4);
  return {std::max(box.x0, f.x0), std::max(box.y0, f.y0), std::min(box.x1, f.x1), std::min(box.y1, f.y1)};
}

Ink inkOf(const Scene& scene, Id piece, Ink otherwise) {
  if (isInHand(scene, piece))
    return Ink::Hand;
  const auto found = scene.worst.find(piece);
  return found == scene.worst.end() || scene.paper ? otherwise : inkOf(found->second);
}

bool isInHand(const Scene& scene, Id piece) {
  const InHand* hand = scene.input.inHand;
  return hand && hand->piece.piece == piece && hand->kind != InHand::Kind::RubberBand;
}

void fillBox(Scene& scene, const Bounds& box, Ink fill, Ink edge, double width) {
  const Bounds b = scene.within(box);
  if (b.empty())
    return;
  scene.drawing.fillRect(b.x0, b.y0, b.x1, b.y1, fill);
  scene.drawing.rect(b.x0, b.y0, b.x1, b.y1, edge, width);
}

Bounds textBox(Point2 at, std::string_view words, const TextStyle& style) {
  const double width = textWidth(words, style.size);
  const double before = style.anchor == Anchor::Start ? 0 : style.anchor == Anchor::Middle ? width / 2 : width;
  const double up = style.size * 0.8;
  const double down = style.size * 0.22;
  if (style.turn != 0)
    return {at.x - up, at.y - width + before, at.x + down, at.y + before};
  return {at.x - before, at.y - up, at.x - before + width, at.y + down};
}

bool say(Scene& scene, std::string name, Point2 at, std::string_view words, Ink ink, const TextStyle& style) {
  return sayWithin(scene, scene.frame, std::move(name), at, words, ink, style);
}

bool sayWithin(Scene& scene, const Bounds& room, std::string name, Point2 at, std::string_view words, Ink ink,
               const TextStyle& style) {
  const Bounds box = textBox(at, words, style);
  if (!room.contains(box) || (scene.silent && scene.silent->overlaps(box)))
    return false;
  for (const TakenBox& other : scene.drawing.taken())
    if (other.box.overlaps(box))
      return false;
  scene.drawing.text(at, words, ink, style);
  scene.drawing.take(std::move(name), box);
  return true;
}

namespace {

// On paper the drawing ends where the stretch cuts the wall; beyond an end of the wall it keeps the margin.
void cutToStretch(Scene& scene) {
  scene.blade = 13;
  const Interval wall = scene.wall.concrete;
  const bool cutLow = scene.input.stations.from > wall.from;
  const bool cutHigh = scene.input.stations.to < wall.to;
  const double low = scene.x(scene.input.stations.from);
  const double high = scene.x(scene.input.stations.to);
  const bool inside = scene.view.fromInside;
  if (inside ? cutHigh : cutLow)
    scene.frame.x0 = std::max(scene.frame.x0, inside ? high : low);
  if (inside ? cutLow : cutHigh)
    scene.frame.x1 = std::min(scene.frame.x1, inside ? low : high);
}

Scene sceneOf(const ElevationInput& input, Drawing& drawing) {
  const WallLayout& wall = input.wall->layout;
  Scene scene{input, wall, input.view, drawing, input.window, {}, input.medium == Medium::Paper, 17, {}, {}, {}, {}};
  const Interval inWindow{std::min(input.view.s(input.window.x0), input.view.s(input.window.x1)),
                          std::max(input.view.s(input.window.x0), input.view.s(input.window.x1))};
  scene.stations = overlap(inWindow, input.stations);
  if (scene.paper)
    cutToStretch(scene);
  if (input.magnified)
    scene.blade = 28;
  return scene;
}

void noteLevels(Scene& scene) {
  for (const Finding& finding : scene.input.wall->findings)
    for (const Id piece : finding.pieces) {
      const auto [at, added] = scene.worst.emplace(piece, finding.level);
      if (!added && finding.level < at->second)
        at->second = finding.level;
    }
}

void drawStanding(Scene& scene) {
  keepOffFolds(scene);
  drawGround(scene);
  drawConcreteBody(scene);
  drawForms(scene);
  drawBars(scene);
  drawFraming(scene);
  drawEmbedded(scene);
  drawPourLine(scene);
  drawFormTop(scene);
  drawPairLinks(scene);
  drawAbove(scene);
  drawFolds(scene);
}

} // namespace
} // namespace elevation

ElevationDrawing drawElevation(const ElevationInput& input) {
  ElevationDrawing result;
  if (!input.wall || input.window.empty() || input.view.scale <= 0)
    return result;
  elevation::Scene scene = elevation::sceneOf(input, result.drawing);
  if (scene.stations.empty())
    return result;
  elevation::noteLevels(scene);
  elevation::collectPieces(scene);
  elevation::drawStanding(scene);
  elevation::drawBreaks(scene);
  elevation::drawFlags(scene);
  const std::vector<elevation::Told> proposed = elevation::drawGhosts(scene);
  elevation::drawEdgesInHand(scene);
  if (input.lastLook)
    scene.silent = input.lastLook->box;
  elevation::drawInHand(scene);
  scene.silent.reset();
  elevation::drawSelection(scene);
  elevation::nameBars(scene);
  elevation::drawMarks(scene);
  elevation::drawDimensions(scene);
  elevation::drawTags(scene, proposed);
  result.bars = std::move(scene.unsaidBars);
  elevation::addHits(scene);
  if (input.labels && input.words && input.job)
    elevation::placeFlagLabels(scene, result);
  elevation::drawCloseLook(scene, result);
  return result;
}

ElevationView fitElevation(const WallLayout& layout, const Bounds& window, bool fromInside, double upTo,
                           std::vector<Interval> folds) {
  // Left and right: room for labels and for the words of the rows. Below: earth and two rows of values, or one.
  constexpr double side = 84;
  constexpr double above = 48;
  constexpr double low = 420;
  const double below = window.y1 - window.y0 < low || !folds.empty() ? 112 : 198;
  const double high = std::max(1.0, upTo - layout.bottom);
  double wide = layout.concrete.length();
  for (const Interval fold : folds)
    wide -= fold.length();
  wide = std::max(1.0, wide);
  const double gaps = foldGap * static_cast<double>(folds.size());
  const double room = std::max(40.0, window.y1 - window.y0 - above - below);
  ElevationView view;
  view.fromInside = fromInside;
  view.scale = std::min(std::max(40.0, window.x1 - window.x0 - 2 * side - gaps) / wide, room / high);
  view.folds = std::move(folds);
  const double middle = (view.along(layout.concrete.from) + view.along(layout.concrete.to)) / 2;
  view.origin.x = (window.x0 + window.x1) / 2 + (fromInside ? middle : -middle);
  // Room to spare goes to the framing, as far as there is any.
  const double framing = std::max(upTo, layout.wall->wallHeight + 2) * view.scale;
  view.origin.y = std::min(window.y0 + above + framing, window.y1 - below + layout.bottom * view.scale);
  return view;
}

} // namespace sillwright
