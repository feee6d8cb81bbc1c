// Where the piece in hand may stand: brackets under the tape, with what stops it at each end, and where it would land.
#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "core/base/tolerance.h"
#include "core/drawing/elevation_parts.h"
#include "core/drawing/text_metrics.h"
#include "core/refit/slot_words.h"

namespace sillwright::elevation {

namespace {

constexpr double deep = 17;     // of a bracket, pt
constexpr double wordSize = 10; // of what stops a piece, pt
constexpr double rowHigh = 14;  // from one row of words to the next, pt

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

// A diamond in the middle of each part where every target is met; none over another.
void diamonds(Scene& scene, const BoundedSlot& slot) {
  constexpr double half = 7;
  double last = -1e9;
  std::vector<double> middles;
  for (const Interval met : slot.met)
    if (scene.sees(met.middle()))
      middles.push_back(scene.x(met.middle()));
  std::sort(middles.begin(), middles.end());
  const double y = underBlade(scene, slot.stations.middle()) + deep / 2;
  for (const double x : middles) {
    if (x < last + 2 * half + 2)
      continue;
    const Point2 diamond[] = {{x, y - half}, {x + half, y}, {x, y + half}, {x - half, y}};
    scene.drawing.fill(diamond, Ink::Hand);
    last = x;
  }
}

// The stretch of the page that the piece in hand covers under the tape, a little wider.
Interval coveredBy(const Scene& scene, const InHand& hand) {
  for (const Seen& seen : scene.pieces)
    if (seen.id == hand.piece.piece) {
      const Bounds box = scene.box(seen.s, seen.z);
      return {box.x0 - 4, box.x1 + 4};
    }
  return {};
}

struct Place {
  Point2 at;
  Anchor anchor = Anchor::Start;
};

enum class KeepOff { Hardware, Hand, Words };

bool isFree(const Scene& scene, const Bounds& box, Interval hand, KeepOff what) {
  const auto meets = [&](const Bounds& other) { return other.overlaps(box); };
  if (!scene.frame.contains(box))
    return false;
  if (what != KeepOff::Words && box.x0 < hand.to && box.x1 > hand.from)
    return false;
  if (what == KeepOff::Hardware && std::any_of(scene.keepOff.begin(), scene.keepOff.end(), meets))
    return false;
  return std::none_of(scene.drawing.taken().begin(), scene.drawing.taken().end(),
                      [&](const TakenBox& taken) { return meets(taken.box.grown(3)); });
}

// At the first place where they lie over no hardware, else over nothing in hand, else over no other words.
std::optional<Place> sayAtFirst(Scene& scene, const std::string& name, const std::vector<Place>& places, Interval hand,
                                const std::string& words, double size, Weight weight) {
  for (const KeepOff what : {KeepOff::Hardware, KeepOff::Hand, KeepOff::Words})
    for (const Place& place : places) {
      const TextStyle style{size, weight, place.anchor, 0, Ink::Paper, 4};
      if (isFree(scene, textBox(place.at, words, style), hand, what) &&
          say(scene, name, place.at, words, Ink::Hand, style))
        return place;
    }
  return std::nullopt;
}

double widthOnPage(const Scene& scene, const BoundedSlot& slot) {
  return std::abs(scene.x(slot.stations.to) - scene.x(slot.stations.from));
}

std::string stopWordsOf(const Scene& scene, const std::optional<Stop>& stop) {
  return stop ? stopWords(*scene.wall.wall, *stop) : std::string();
}

// What stops it at an end: under the bracket, so that the tape stays free; inward where both ends have room for that,
// else outward; where that is not free a row lower or past the piece in hand, with a line that leads back.
void stopAtEnd(Scene& scene, const BoundedSlot& slot, bool from, Interval hand) {
  const double station = from ? slot.stations.from : slot.stations.to;
  const std::string words = stopWordsOf(scene, from ? slot.left : slot.right);
  if (words.empty() || !scene.sees(station))
    return;
  const double x = scene.x(station), base = underBlade(scene, slot.stations.middle()) + deep;
  const double out = from != scene.view.fromInside ? -1 : 1;
  if (scene.input.magnified) // beside the bracket, where it is
    say(scene, from ? "slot from at" : "slot to at", {x + 6 * out, base - 5}, lengthOf(scene, station), Ink::Hand,
        styled(10.5, Weight::Bold, out < 0 ? Anchor::End : Anchor::Start, Ink::Paper));
  const Anchor outward = out < 0 ? Anchor::End : Anchor::Start, inward = out < 0 ? Anchor::Start : Anchor::End;
  const double wide = widthOnPage(scene, slot), own = textWidth(words, wordSize) + 8;
  const double both =
      textWidth(stopWordsOf(scene, slot.left), wordSize) + textWidth(stopWordsOf(scene, slot.right), wordSize) + 20;
  std::vector<Place> places;
  for (int row = 0; row < 2; ++row) {
    const double y = base + 12 + row * rowHigh;
    if (both < wide)
      places.push_back({{x - 4 * out, y}, inward});
    places.push_back({{x + 4 * out, y}, outward});
    if (own < wide)
      places.push_back({{x - 4 * out, y}, inward});
    if (hand.contains(x + 4 * out) || hand.contains(x + out * own))
      places.push_back({{out < 0 ? hand.from : hand.to, y}, outward});
  }
  const double past = out < 0 ? std::max(x + 4, hand.to) : std::min(x - 4, hand.from); // at the edge of the window
  for (int row = 1; row < 3; ++row)
    places.push_back({{hand.contains(x) ? past : x - 4 * out, base + 12 + row * rowHigh}, inward});
  const auto said =
      sayAtFirst(scene, std::string("slot ") + (from ? "from" : "to"), places, hand, words, wordSize, Weight::Regular);
  if (said && (said->at.y > base + 12 || std::abs(said->at.x - x) > 5)) {
    const double y = said->at.y - 3.5, side = said->anchor == Anchor::Start ? -3 : 3;
    const Point2 line[] = {{said->at.x + side, y}, {x, y}, {x, base}};
    scene.drawing.polyline(line, Ink::Hand, 0.9);
  }
}

// Where it goes when let go: a line through the tape, and a row below what stops it the words, on the side of it away
// from the hand; above the tape where nothing is free below.
void landing(Scene& scene, double station, Interval hand) {
  if (!scene.sees(station))
    return;
  const double x = scene.x(station), y = underBlade(scene, station);
  const std::string words = "drops to " + lengthOf(scene, station);
  const bool right = x >= hand.middle();
  const Place above{{x, y - scene.blade - 46}, Anchor::Middle};
  const auto besideIt = [&](bool toRight) {
    const double past =
        toRight ? std::max(x + 5, x > hand.to ? x : hand.to) : std::min(x - 5, x < hand.from ? x : hand.from);
    std::vector<Place> places;
    for (int row = 1; row < 5; ++row)
      places.push_back({{past, y + deep + 13 + row * rowHigh}, toRight ? Anchor::Start : Anchor::End});
    return places;
  };
  std::optional<Place> said;
  for (const std::vector<Place>& places : {besideIt(right), besideIt(!right), std::vector{above}})
    if (!said)
      said = sayAtFirst(scene, "landing", places, hand, words, 11, Weight::Bold);
  const bool below = said && said->anchor != Anchor::Middle;
  scene.drawing.line({x, y - scene.blade - 40}, {x, below ? said->at.y - 4 : y + deep}, Ink::Hand, 1.6);
  if (below)
    scene.drawing.line({x, said->at.y - 4}, {said->at.x - (said->at.x > x ? 2 : -2), said->at.y - 4}, Ink::Hand, 1.6);
}

} // namespace

void drawSlots(Scene& scene, const InHand& hand) {
  for (const BoundedSlot& slot : hand.offered)
    if (scene.sees(slot.stations)) {
      bracket(scene, slot);
      diamonds(scene, slot);
    }
  // The words of the slot it is in, or would land in; of all of them they would be a thicket.
  const double at = hand.landing.value_or(hand.station);
  const Interval covered = coveredBy(scene, hand);
  for (const BoundedSlot& slot : hand.offered)
    if (grown(slot.stations, tolerance::rounding).contains(at)) {
      stopAtEnd(scene, slot, true, covered);
      if (widthOnPage(scene, slot) > 8 || stopWordsOf(scene, slot.left) != stopWordsOf(scene, slot.right))
        stopAtEnd(scene, slot, false, covered);
    }
  if (hand.landing)
    landing(scene, *hand.landing, covered);
}

} // namespace sillwright::elevation
