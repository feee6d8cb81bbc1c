// Where the piece in hand may stand: brackets under the tape, with what stops it at each end, and where it would land.
#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"
#include "core/drawing/elevation_parts.h"
#include "core/drawing/text_metrics.h"
#include "core/refit/slot_words.h"

namespace sillwright::elevation {

namespace {

constexpr double deep = 17; // of a bracket, pt

double underBlade(const Scene& scene, double station) {
  return scene.y(pourAt(scene.wall, station)) + scene.blade;
}

// One slot over a stretch of level pour line. Its ends are open where it only leaves the frame there.
void bracket(Scene& scene, const BoundedSlot& slot) {
  const double from = scene.x(slot.stations.from), to = scene.x(slot.stations.to);
  const double left = std::max(std::min(from, to), scene.frame.x0),
               right = std::min(std::max(from, to), scene.frame.x1);
  const double y = underBlade(scene, slot.stations.middle());
  if (right < left)
    return;
  if (right - left > 1)
    scene.drawing.fillRect(left, y, right, y + deep, Ink::HandSoft, 0.75);
  for (const double end : {from, to})
    if (end >= scene.frame.x0 && end <= scene.frame.x1)
      scene.drawing.line({end, y}, {end, y + deep}, Ink::Hand, 2);
  scene.drawing.line({left, y + deep}, {right, y + deep}, Ink::Hand, 2);
}

// What stops it at an end, read outward from it: under the bracket, so that the tape stays free.
void stopAtEnd(Scene& scene, const BoundedSlot& slot, const std::optional<Stop>& stop, bool leftEnd) {
  const double station = leftEnd ? slot.stations.from : slot.stations.to;
  if (!stop || !scene.sees(station))
    return;
  const double x = scene.x(station), y = underBlade(scene, slot.stations.middle()) + deep + 12;
  const bool wide = std::abs(scene.x(slot.stations.to) - scene.x(slot.stations.from)) > 90;
  const bool endsLeft = leftEnd != scene.view.fromInside;
  const Anchor anchor = (endsLeft == wide) ? Anchor::Start : Anchor::End; // inward where there is room
  say(scene, std::string("slot ") + (leftEnd ? "from" : "to"), {x, y}, stopWords(*scene.wall.wall, *stop), Ink::Hand,
      {10, Weight::Regular, anchor, 0, Ink::Paper, 4});
}

void landing(Scene& scene, double station) {
  if (!scene.sees(station))
    return;
  const double x = scene.x(station), y = underBlade(scene, station);
  const Point2 line[] = {{x, y - scene.blade - 40}, {x, y + deep}};
  scene.drawing.dashed(line, 5, 3, Ink::Hand, 1.6);
  say(scene, "landing", {x, y - scene.blade - 46}, "drops to " + lengthOf(scene, station), Ink::Hand,
      {11, Weight::Bold, Anchor::Middle, 0, Ink::Paper, 4});
}

} // namespace

void drawSlots(Scene& scene, const InHand& hand) {
  for (const BoundedSlot& slot : hand.offered)
    if (scene.sees(slot.stations))
      bracket(scene, slot);
  // The words of the slot it is in, or would land in; of all of them they would be a thicket.
  const double at = hand.landing.value_or(hand.station);
  for (const BoundedSlot& slot : hand.offered)
    if (grown(slot.stations, tolerance::rounding).contains(at)) {
      stopAtEnd(scene, slot, slot.left, true);
      stopAtEnd(scene, slot, slot.right, false);
    }
  if (hand.landing)
    landing(scene, *hand.landing);
}

} // namespace sillwright::elevation
