// Walls as they are drawn with the pen.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/drawing/plan_placer.h"
#include "core/drawing/shown_pen.h"
#include "core/drawing/text_metrics.h"
#include "core/geometry/wall_frame.h"

namespace sillwright {

namespace {

constexpr double cornerHalf = 3.2; // of the square at a corner
constexpr double lineOff = 15;     // of a dimension line from its wall
constexpr double footLong = 6, footWide = 2.6;
constexpr double squareSign = 9; // legs of the sign of a right angle

struct Leg {
  Point2 from, to; // page
  Point2 along;    // unit
  Point2 out;      // unit, away from the inside of what is drawn
  double length = 0;
};

std::optional<Leg> legOf(Point2 a, Point2 b, bool counterclockwise) {
  const double length = std::hypot(b.x - a.x, b.y - a.y);
  if (length < 1e-9)
    return std::nullopt;
  const Point2 along{(b.x - a.x) / length, (b.y - a.y) / length};
  // The page has y down: to the right of the direction of travel is (-y, x).
  const Point2 right{-along.y, along.x};
  return Leg{a, b, along, counterclockwise ? right : Point2{-right.x, -right.y}, length};
}

Point2 at(const Leg& leg, double along, double out) {
  return {leg.from.x + leg.along.x * along + leg.out.x * out, leg.from.y + leg.along.y * along + leg.out.y * out};
}

// A carpenter's V with its point on the mark.
void drawFoot(Drawing& drawing, const Leg& leg, double along, double out, double way) {
  const Point2 foot[] = {at(leg, along + way * footLong, out - footWide), at(leg, along, out),
                         at(leg, along + way * footLong, out + footWide)};
  drawing.polyline(foot, Ink::Hand, 1.2);
}

void drawLength(Drawing& drawing, const Leg& leg, const std::string& words, bool inHand) {
  const double size = inHand ? 12.5 : 10.5;
  const double width = textWidth(words, size);
  const bool fits = leg.length > width + 12;
  if (!fits && !inHand)
    return;
  if (inHand) {
    for (const double end : {0.0, leg.length})
      drawing.line(at(leg, end, 3), at(leg, end, lineOff + 4), Ink::Hand, 0.6);
    drawing.line(at(leg, 0, lineOff), at(leg, leg.length, lineOff), Ink::Hand, 0.8);
    drawFoot(drawing, leg, 0, lineOff, 1);
    drawFoot(drawing, leg, leg.length, lineOff, -1);
  }
  const double turn = readable(std::atan2(-leg.along.y, leg.along.x) * 180 / std::numbers::pi);
  const Point2 middle = at(leg, leg.length / 2, inHand ? lineOff + size : size);
  PlanText text{words, middle, turn, size, inHand ? Weight::Bold : Weight::Regular};
  drawPlanText(drawing, text, inHand ? Ink::Hand : Ink::Text2);
}

void drawCorner(Drawing& drawing, Point2 p, bool solid) {
  drawing.fillRect(p.x - cornerHalf, p.y - cornerHalf, p.x + cornerHalf, p.y + cornerHalf,
                   solid ? Ink::Hand : Ink::Paper);
  drawing.rect(p.x - cornerHalf, p.y - cornerHalf, p.x + cornerHalf, p.y + cornerHalf, Ink::Hand, 1.4);
}

void drawSquareSign(Drawing& drawing, const Leg& before, const Leg& leg) {
  if (before.length < 2 * squareSign || leg.length < 2 * squareSign)
    return;
  const Point2 c = leg.from;
  const auto point = [&](double back, double on) {
    return Point2{c.x - before.along.x * back + leg.along.x * on, c.y - before.along.y * back + leg.along.y * on};
  };
  const Point2 sign[] = {point(squareSign, 0), point(squareSign, squareSign), point(0, squareSign)};
  drawing.polyline(sign, Ink::Hand, 1);
}

// On the side of the pointer where the dimension is not.
void drawWords(Drawing& drawing, const ShownPen& pen, Point2 at, bool below) {
  TextStyle style{11, Weight::Bold, Anchor::Start, 0, Ink::Paper, 4};
  double y = below ? at.y + 20 : at.y - 10;
  const auto say = [&](const std::string& words, Ink ink) {
    if (words.empty())
      return;
    drawing.text({at.x + 12, y}, words, ink, style);
    y += below ? 15 : -15;
    style.weight = Weight::Regular;
  };
  say(pen.problem, Ink::Fix);
  say(pen.typed.empty() ? std::string() : pen.typed + "  Enter", Ink::Hand);
  if (pen.problem.empty())
    say(pen.words, Ink::Hand);
}

} // namespace

Drawing drawPen(const ShownPen& pen, const PlanView& view) {
  Drawing drawing;
  const Ink ink = pen.problem.empty() ? Ink::Hand : Ink::Fix;
  for (const Polygon2& outline : pen.concrete) {
    Polygon2 page;
    for (const Point2 p : outline)
      page.push_back(view.page(p));
    drawing.fill(page, Ink::HandSoft, 0.75);
    drawing.loop(page, ink, 0.8);
  }
  for (const Segment2& line : pen.inLineWith) {
    const Point2 ends[] = {view.page(line.a), view.page(line.b)};
    drawing.dashed(ends, 5, 4, Ink::Hand, 0.9);
  }
  std::vector<Point2> chain = pen.corners;
  if (pen.at && !chain.empty() && distance(chain.back(), *pen.at) > 1e-9)
    chain.push_back(*pen.at);
  const bool counterclockwise = signedArea(chain) >= 0;
  std::optional<Leg> before;
  for (std::size_t i = 0; i + 1 < chain.size(); ++i) {
    const auto leg = legOf(view.page(chain[i]), view.page(chain[i + 1]), counterclockwise);
    if (!leg)
      continue;
    const bool inHand = i + 1 == pen.corners.size();
    const Point2 line[] = {leg->from, leg->to};
    if (inHand && pen.lengthOpen)
      drawing.dashed(line, 6, 4, Ink::Hand, 2);
    else
      drawing.line(leg->from, leg->to, inHand ? ink : Ink::Hand, inHand ? 2.4 : 2);
    if (inHand && pen.squareBefore && before)
      drawSquareSign(drawing, *before, *leg);
    drawLength(drawing, *leg,
               inHand && pen.lengthOpen ? "type its length" : printLength(distance(chain[i], chain[i + 1]), pen.units),
               inHand);
    before = leg;
  }
  for (const Point2 corner : pen.corners)
    drawCorner(drawing, view.page(corner), false);
  if (pen.closes && pen.at)
    drawing.ring(view.page(*pen.at), 9, ink, 1.6);
  if (pen.at && !pen.lengthOpen)
    drawCorner(drawing, view.page(*pen.at), true);
  if (pen.at)
    drawWords(drawing, pen, view.page(*pen.at), before && before->out.y < 0.1);
  return drawing;
}

} // namespace sillwright
