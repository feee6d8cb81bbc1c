// Where the close look opens, and what it shows beyond what every elevation does.
#include "core/drawing/close_look.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "core/base/tolerance.h"
#include "core/drawing/cut_drawing.h"
#include "core/drawing/elevation_parts.h"
#include "core/drawing/tape.h"
#include "core/drawing/text_metrics.h"

namespace sillwright::elevation {

namespace {

constexpr double headHigh = 24;
constexpr double rim = 2;              // of the window, pt
constexpr double sixteenth = 1.0 / 16; // in
constexpr double step = 14;            // from one place that is tried to the next, pt
constexpr double air = 8;              // between it and what it may not cover, pt
constexpr double pourLineAt = 0.5;     // of its height, from above
struct Sized {
  double wide, high;
};
// 452 by 310 pt is 520 by 356 px at 100 %.
constexpr Sized sizes[] = {{452, 310}, {452, 250}, {400, 270}, {340, 236},
                           {400, 200}, {340, 200}, {340, 170}, {260, 170}};
constexpr double smaller = 0.35; // what a pt² less of it costs

Bounds roomOf(const Bounds& box) {
  return {box.x0, box.y0 + headHigh, box.x1, box.y1};
}

const Seen* seenInHand(const Scene& scene) {
  const InHand* hand = scene.input.inHand;
  if (!hand || hand->piece.wall != scene.wall.wall->id || hand->kind == InHand::Kind::RubberBand ||
      hand->kind == InHand::Kind::Corner)
    return nullptr;
  const auto at = std::find_if(scene.pieces.begin(), scene.pieces.end(),
                               [&](const Seen& seen) { return seen.id == hand->piece.piece; });
  return at == scene.pieces.end() ? nullptr : &*at;
}

// ---- where it opens -------------------------------------------------------------------------------------------------

double areaOfBoth(const Bounds& a, const Bounds& b) {
  const double x = std::min(a.x1, b.x1) - std::max(a.x0, b.x0), y = std::min(a.y1, b.y1) - std::max(a.y0, b.y0);
  return x > 0 && y > 0 ? x * y : 0;
}

struct Covered {
  Bounds box;
  double cost = 0; // of each pt²
};

struct Obstacles {
  std::vector<Bounds> never;    // flags, labels, the piece in hand and where it was
  std::vector<Covered> covered; // everything else that is written, hardware, lumber, concrete
};

// Of what stands open only the edges and the header are the piece.
std::vector<Bounds> bodyOf(const Scene& scene, const Seen& seen) {
  const Bounds box = scene.box(seen.s, seen.z);
  if (seen.kind != PieceKind::Opening)
    return {box};
  const Opening* opening = findIn(scene.wall.wall->openings, seen.id);
  std::vector<Bounds> body{{box.x0, box.y0, box.x0, box.y1}, {box.x1, box.y0, box.x1, box.y1}};
  if (opening)
    body.push_back(scene.box(seen.s, {opening->headHeight, seen.z.to}));
  return body;
}

Obstacles obstaclesOf(const Scene& scene, const Seen& held, const std::vector<PlacedLabel>& labels) {
  Obstacles all;
  for (const Bounds& flag : scene.flags)
    all.never.push_back(flag.grown(2));
  for (const PlacedLabel& label : labels) {
    if (label.number > 0) {
      all.never.push_back(label.request.flag.grown(12));
      continue;
    }
    all.never.push_back(label.box.grown(2));
    for (std::size_t i = 0; i + 1 < label.leader.size(); ++i) {
      const Point2 a = label.leader[i], b = label.leader[i + 1];
      all.never.push_back(
          {std::min(a.x, b.x) - 2, std::min(a.y, b.y) - 2, std::max(a.x, b.x) + 2, std::max(a.y, b.y) + 2});
    }
  }
  const double moved = scene.input.inHand->moved;
  for (const Bounds& part : bodyOf(scene, held))
    all.never.push_back(part.grown(air));
  const Bounds was = scene.box({held.s.from - moved, held.s.to - moved}, held.z);
  if (held.kind != PieceKind::Opening && scene.input.inHand->before)
    all.never.push_back(was.grown(air));
  for (const TakenBox& taken : scene.drawing.taken())
    if (!taken.name.starts_with("opening") && taken.name != "vial" && taken.name != "pair")
      all.covered.push_back({taken.box, 6});
  for (const Bounds& hardware : scene.keepOff)
    all.covered.push_back({hardware, 12});
  const WallLayout& w = scene.wall;
  for (const Panel& panel : w.wall->panels)
    all.covered.push_back({scene.box({panel.from, panel.to}, {0, panel.height}), 0.4});
  for (const ColumnBody& column : w.columns)
    all.covered.push_back({scene.box(column.box.s, column.box.z), 1});
  for (const PourRun& run : w.pour)
    all.covered.push_back({scene.box(run.s, {w.bottom, run.height}), 0.8});
  const Bounds wall = scene.box(w.concrete, {w.bottom, w.bottom}); // under it the rows
  all.covered.push_back({{wall.x0, wall.y1, wall.x1, scene.frame.y1}, 0.8});
  return all;
}

bool meetsAny(const std::vector<Bounds>& list, const Bounds& box) {
  return std::any_of(list.begin(), list.end(), [&](const Bounds& other) { return other.overlaps(box); });
}

// What it costs to open there: what is covered, how small it is, and a little for the way from the piece.
double costOf(const Obstacles& obstacles, const Bounds& box, const Bounds& held) {
  double cost = smaller * (sizes[0].wide * sizes[0].high - (box.x1 - box.x0) * (box.y1 - box.y0));
  for (const Covered& other : obstacles.covered)
    cost += other.cost * areaOfBoth(other.box, box);
  const double dx = std::max({0.0, held.x0 - box.x1, box.x0 - held.x1});
  const double dy = std::max({0.0, held.y0 - box.y1, box.y0 - held.y1});
  return cost + 4 * std::hypot(dx, dy);
}

std::optional<Bounds> placeOf(const Scene& scene, const Obstacles& obstacles, const Bounds& held) {
  const Bounds window = scene.frame.grown(-6);
  const auto& last = scene.input.lastLook;
  if (last && window.grown(1e-6).contains(last->box) && !meetsAny(obstacles.never, last->box.grown(rim)))
    return last->box;
  std::optional<Bounds> best;
  double least = 0;
  for (const Sized size : sizes)
    for (double y = window.y0; y + size.high <= window.y1; y += step)
      for (double x = window.x0; x + size.wide <= window.x1; x += step) {
        const Bounds box{x, y, x + size.wide, y + size.high};
        if (meetsAny(obstacles.never, box.grown(rim)))
          continue;
        const double cost = costOf(obstacles, box, held);
        if (!best || cost < least) {
          best = box;
          least = cost;
        }
      }
  return best;
}

// ---- what it shows --------------------------------------------------------------------------------------------------

// The end of a piece too long for the window is what counts; the tape stands still while it stays near the middle.
double stationOf(const Scene& scene, const Seen& held, double wide) {
  const InHand& hand = *scene.input.inHand;
  const bool whole = hand.kind == InHand::Kind::Resize || held.s.length() < 0.7 * wide;
  const double station = whole ? hand.station : scene.view.fromInside ? held.s.to : held.s.from;
  const auto& last = scene.input.lastLook;
  return last && std::abs(station - last->station) < 0.22 * wide ? last->station : station;
}

Drawing magnified(const Scene& scene, const CloseLook& look) {
  const Bounds room = roomOf(look.box);
  ElevationInput input = scene.input;
  input.magnified = true;
  input.window = room;
  input.labels = false;
  input.runningDimensions = false;
  input.selection.clear();
  input.proposal = nullptr;
  input.lastLabels.clear();
  input.lastLook.reset();
  input.view.scale = closeLookScale;
  const double along = look.station * closeLookScale;
  input.view.origin.x = (room.x0 + room.x1) / 2 + (input.view.fromInside ? along : -along);
  input.view.origin.y = room.y0 + (room.y1 - room.y0) * pourLineAt + pourAt(scene.wall, look.station) * closeLookScale;
  return cutTo(drawElevation(input).drawing, room);
}

// "slide room 1/4" left, 1/2" right · every target met", of the slot it stands in.
std::string slotWords(const Scene& scene) {
  const InHand& hand = *scene.input.inHand;
  if (hand.offered.empty())
    return {};
  for (const BoundedSlot& slot : hand.offered) {
    if (!grown(slot.stations, tolerance::rounding).contains(hand.station))
      continue;
    double left = std::max(0.0, hand.station - slot.stations.from),
           right = std::max(0.0, slot.stations.to - hand.station);
    if (scene.view.fromInside)
      std::swap(left, right);
    const LengthStyle units = scene.input.job->units;
    const bool met = std::any_of(slot.met.begin(), slot.met.end(), [&](Interval part) {
      return grown(part, tolerance::rounding).contains(hand.station);
    });
    return "slide room " + printMeasure(left, units) + " left, " + printMeasure(right, units) + " right" +
           (met ? " · every target met" : "");
  }
  return "it may not stand here";
}

void drawHead(Scene& scene, const Bounds& box) {
  const InHand& hand = *scene.input.inHand;
  const Bounds head{box.x0, box.y0, box.x1, box.y0 + headHigh};
  scene.drawing.fillRect(head.x0, head.y0, head.x1, head.y1, Ink::Hand);
  const double base = head.y0 + 16.5;
  const std::string name = markOf(*scene.input.job, hand.piece) + " at " + lengthOf(scene, hand.station);
  scene.drawing.text({head.x0 + 10, base}, name, Ink::HandOn, styled(13, Weight::Bold, Anchor::Start));
  const double room = head.x1 - head.x0 - textWidth(name, 13) - 36;
  std::string words = slotWords(scene);
  if (textWidth(words, 10.5) > room) // the sign of the slot says the rest
    words = words.substr(0, words.find(" · "));
  if (!words.empty() && textWidth(words, 10.5) <= room)
    scene.drawing.text({head.x1 - 10, base - 0.5}, words, Ink::HandOn, styled(10.5, Weight::Regular, Anchor::End));
}

bool crossesAny(const std::vector<Bounds>& boxes, Point2 a, Point2 b) {
  return std::any_of(boxes.begin(), boxes.end(), [&](const Bounds& box) {
    return box.contains(a) || box.contains(b) || !clipped({a, b}, rectangle(box.x0, box.y0, box.x1, box.y1)).empty();
  });
}

// Two lines from the window to the piece, and a breath of colour between them; none over anything written.
void drawTies(Scene& scene, const CloseLook& look, const Bounds& held) {
  std::vector<Bounds> keepOff = scene.flags;
  for (const TakenBox& taken : scene.drawing.taken())
    keepOff.push_back(taken.box);
  const Bounds piece = scene.within(held);
  const Bounds& box = look.box;
  if (piece.empty() || (piece.x0 < box.x1 && piece.x1 > box.x0))
    return;
  const bool right = piece.x0 >= box.x1;
  const double from = right ? box.x1 : box.x0, to = right ? piece.x0 - 2 : piece.x1 + 2;
  const Point2 wedge[] = {{from, box.y0 + headHigh}, {to, piece.y0}, {to, piece.y1}, {from, box.y1}};
  const bool upper = !crossesAny(keepOff, wedge[0], wedge[1]), lower = !crossesAny(keepOff, wedge[3], wedge[2]);
  if (upper && lower)
    scene.drawing.fill(wedge, Ink::Hand, 0.07);
  if (upper)
    scene.drawing.line(wedge[0], wedge[1], Ink::Hand, 0.9);
  if (lower)
    scene.drawing.line(wedge[3], wedge[2], Ink::Hand, 0.9);
}

} // namespace

void drawCloseLook(Scene& scene, ElevationDrawing& result) {
  const Seen* held = seenInHand(scene);
  if (scene.paper || scene.input.magnified || !scene.input.job || !held || tapeDivision(scene.view.scale) <= sixteenth)
    return;
  const Obstacles obstacles = obstaclesOf(scene, *held, result.labels);
  const Bounds body = scene.box(held->s, held->z);
  const auto place = placeOf(scene, obstacles, body);
  if (!place)
    return;
  const double wide = (place->x1 - place->x0) / closeLookScale;
  const CloseLook look{*place, stationOf(scene, *held, wide)};
  if (overlap(around(look.station, 0.6 * wide), {0, scene.wall.length}).empty())
    return; // no tape there
  const Bounds& box = look.box;
  drawTies(scene, look, body);
  scene.drawing.fillRect(box.x0, box.y0, box.x1, box.y1, Ink::Paper);
  scene.drawing.add(magnified(scene, look));
  drawHead(scene, box);
  scene.drawing.rect(box.x0, box.y0, box.x1, box.y1, Ink::Hand, rim);
  scene.drawing.take("close look", box);
  result.look = look;
}

// The edges of the piece in hand from top to bottom, and where they were.
void drawEdgesInHand(Scene& scene) {
  const Seen* held = scene.input.magnified ? seenInHand(scene) : nullptr;
  if (!held)
    return;
  const InHand& hand = *scene.input.inHand;
  const Bounds& f = scene.frame;
  const bool end = hand.kind == InHand::Kind::Resize;
  const std::vector<double> edges = end ? std::vector{hand.station} : std::vector{held->s.from, held->s.to};
  for (const double edge : edges) {
    const double was = scene.x(edge - hand.moved), is = scene.x(edge);
    const bool first = edge == edges.front();
    const Anchor outer = first != scene.view.fromInside ? Anchor::End : Anchor::Start;
    const double side = outer == Anchor::End ? -5 : 5;
    if (hand.before && std::abs(hand.moved) > tolerance::same && was > f.x0 && was < f.x1) {
      const Point2 line[] = {{was, f.y0}, {was, f.y1}};
      scene.drawing.dashed(line, 5, 3, Ink::Hand, 1.1);
      say(scene, "look was", {was + side, f.y1 - 8}, "was", Ink::Hand,
          styled(10.5, Weight::Regular, outer, Ink::Concrete));
    }
    if (is > f.x0 && is < f.x1)
      scene.drawing.line({is, f.y0}, {is, f.y1}, Ink::Hand, 1.6);
  }
}

// "V16 found" and its station beside the bars that are seen, at the foot.
void nameBars(Scene& scene) {
  if (!scene.input.magnified)
    return;
  for (const BarBody& bar : scene.wall.bars) {
    if (bar.bar->run != BarRun::Upright || !scene.sees(bar.body.a.s))
      continue;
    const double right = scene.x(bar.body.a.s) + bar.body.radius * scene.view.scale + 6;
    const double foot = std::min(scene.frame.y1 - 8, scene.y(std::min(bar.body.a.z, bar.body.b.z)));
    const TextStyle first = styled(10.5, Weight::Bold, Anchor::Start, Ink::Concrete);
    const TextStyle second = styled(10.5, Weight::Regular, Anchor::Start, Ink::Concrete);
    say(scene, "look bar " + bar.bar->mark, {right, foot - 14}, bar.bar->mark + (bar.found ? " found" : " as planned"),
        Ink::Text, first);
    say(scene, "look bar at " + bar.bar->mark, {right, foot}, lengthOf(scene, bar.body.a.s), Ink::Text, second);
  }
}

} // namespace sillwright::elevation
