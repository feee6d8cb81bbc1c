#include "core/drawing/rule_sketch.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/base/length.h"
#include "core/drawing/plain_number.h"
#include "core/drawing/text_metrics.h"
#include "core/rules/limits.h"

namespace sillwright::sketch {

namespace {

constexpr double wordSize = 11, nameSize = 10.7, haloWidth = 4;
constexpr double margin = 1; // so that strokes along the edges of the ground stay in the picture
constexpr double dimensionWidth = 0.8, witnessLine = 0.55;
constexpr double footSize = 5, footWidth = 1.1;
constexpr double shortLength = 15, tailLength = 11; // of a dimension whose crow's feet stand outside
constexpr double wordGap = 4;

} // namespace

Sketch::Sketch(Drawing& drawing, const Bounds& box, Medium medium) : drawing_(drawing), medium_(medium) {
  const double width = box.x1 - box.x0, height = box.y1 - box.y0;
  scale_ = std::min(width / (groundWidth + 2 * margin), height / (groundHeight + 2 * margin));
  origin_ = {(box.x0 + box.x1 - groundWidth * scale_) / 2, (box.y0 + box.y1 - groundHeight * scale_) / 2};
}

Bounds Sketch::at(const Bounds& b) const {
  const Point2 a = at(Point2{b.x0, b.y0}), c = at(Point2{b.x1, b.y1});
  return {a.x, a.y, c.x, c.y};
}

Polygon2 Sketch::at(const Polygon2& points) const {
  Polygon2 moved;
  for (const Point2 p : points)
    moved.push_back(at(p));
  return moved;
}

void Sketch::fill(const Bounds& b, Ink ink) {
  const Bounds m = at(b);
  drawing_.fillRect(m.x0, m.y0, m.x1, m.y1, ink);
}

void Sketch::fill(const Polygon2& outline, Ink ink) {
  drawing_.fill(at(outline), ink);
}

void Sketch::rect(const Bounds& b, Ink ink, double width) {
  const Bounds m = at(b);
  drawing_.rect(m.x0, m.y0, m.x1, m.y1, ink, width * scale_);
}

void Sketch::box(const Bounds& b, Ink ground, Ink line, double width) {
  fill(b, ground);
  rect(b, line, width);
}

void Sketch::loop(const Polygon2& outline, Ink ink, double width) {
  drawing_.loop(at(outline), ink, width * scale_);
}

void Sketch::line(Point2 a, Point2 b, Ink ink, double width) {
  drawing_.line(at(a), at(b), ink, width * scale_);
}

void Sketch::path(const Polygon2& points, Ink ink, double width) {
  drawing_.polyline(at(points), ink, width * scale_);
}

void Sketch::dashed(const Polygon2& points, double on, double off, Ink ink, double width, bool closed) {
  drawing_.dashed(at(points), on * scale_, off * scale_, ink, width * scale_, closed);
}

void Sketch::disc(Point2 centre, double radius, Ink ink) {
  drawing_.disc(at(centre), radius * scale_, ink);
}

void Sketch::ring(Point2 centre, double radius, Ink ink, double width) {
  drawing_.ring(at(centre), radius * scale_, ink, width * scale_);
}

void Sketch::concreteMarks(const Polygon2& outline) {
  drawConcrete(drawing_, at(outline), origin_);
}

void Sketch::earthMarks(const Polygon2& outline) {
  drawEarth(drawing_, at(outline), origin_);
}

void Sketch::woodRings(const Bounds& b) {
  drawWoodCut(drawing_, at(b));
}

void Sketch::hookEnd(Point2 centre, double radius, bool away) {
  drawHookEnd(drawing_, at(centre), radius * scale_, away, Ink::Steel);
}

void Sketch::crowsFoot(Point2 tip, Pointing pointing) {
  const Point2 p = at(tip);
  drawCrowsFoot(drawing_, p.x, p.y, pointing, Ink::Dim, footSize * scale_, footWidth * scale_);
}

void Sketch::flag(Level level, const Bounds& region) {
  drawFlag(drawing_, level, at(region), scale_);
}

void Sketch::say(Point2 place, std::string_view words, Anchor anchor, Ink ground, Weight weight) {
  const double size = weight == Weight::Bold ? wordSize : nameSize;
  drawing_.text(at(place), words, weight == Weight::Bold ? Ink::Text : Ink::Text2,
                {size * scale_, weight, anchor, 0, ground, haloWidth * scale_});
}

void Sketch::name(Point2 place, std::string_view words, Anchor anchor, Ink ground) {
  say(place, words, anchor, ground, Weight::Regular);
}

void Sketch::across(double y, double x0, double x1, std::string_view words, Side side, Ink ground) {
  const bool isShort = x1 - x0 < shortLength;
  if (isShort) {
    line({x0 - tailLength, y}, {x0, y}, Ink::Dim, dimensionWidth);
    line({x1, y}, {x1 + tailLength, y}, Ink::Dim, dimensionWidth);
  } else {
    line({x0, y}, {x1, y}, Ink::Dim, dimensionWidth);
  }
  crowsFoot({x0, y}, isShort ? Pointing::Right : Pointing::Left);
  crowsFoot({x1, y}, isShort ? Pointing::Left : Pointing::Right);
  const double tail = (isShort ? tailLength : 0) + wordGap;
  const double middle = (x0 + x1) / 2, half = textWidth(words, wordSize) / 2;
  const double inside = std::clamp(middle, 3 + half, std::max(3 + half, groundWidth - 3 - half));
  switch (side) {
  case Side::Over:
    return say({inside, y - wordGap}, words, Anchor::Middle, ground);
  case Side::Under:
    return say({inside, y + wordGap + capHeight * wordSize}, words, Anchor::Middle, ground);
  case Side::Left:
    return say({x0 - tail, y + wordSize * capHeight / 2}, words, Anchor::End, ground);
  case Side::Right:
    return say({x1 + tail, y + wordSize * capHeight / 2}, words, Anchor::Start, ground);
  }
}

void Sketch::upright(double x, double y0, double y1, std::string_view words, Side side, Ink ground) {
  const bool isShort = y1 - y0 < shortLength;
  if (isShort) {
    line({x, y0 - tailLength}, {x, y0}, Ink::Dim, dimensionWidth);
    line({x, y1}, {x, y1 + tailLength}, Ink::Dim, dimensionWidth);
  } else {
    line({x, y0}, {x, y1}, Ink::Dim, dimensionWidth);
  }
  crowsFoot({x, y0}, isShort ? Pointing::Down : Pointing::Up);
  crowsFoot({x, y1}, isShort ? Pointing::Up : Pointing::Down);
  const double middle = (y0 + y1) / 2 + wordSize * capHeight / 2, tail = (isShort ? tailLength : 0) + wordGap;
  switch (side) {
  case Side::Over:
    return say({x, y0 - tail}, words, Anchor::Middle, ground);
  case Side::Under:
    return say({x, y1 + tail + wordSize * capHeight}, words, Anchor::Middle, ground);
  case Side::Left:
    return say({x - wordGap - 2, middle}, words, Anchor::End, ground);
  case Side::Right:
    return say({x + wordGap + 2, middle}, words, Anchor::Start, ground);
  }
}

void Sketch::witness(Point2 a, Point2 b) {
  dashed({a, b}, 3, 2, Ink::Dim, witnessLine);
}

void Sketch::leader(Point2 from, Point2 to) {
  line(from, to, Ink::Dim, dimensionWidth);
  disc(to, 1.9, Ink::Dim);
}

void Sketch::arrow(Point2 from, Point2 to, Ink ink) {
  const double length = std::hypot(to.x - from.x, to.y - from.y);
  const Point2 u{(to.x - from.x) / length, (to.y - from.y) / length};
  constexpr double head = 9, half = 4.5;
  const Point2 neck{to.x - u.x * head, to.y - u.y * head};
  line(from, neck, ink, 2.6);
  fill(Polygon2{to, {neck.x - u.y * half, neck.y + u.x * half}, {neck.x + u.y * half, neck.y - u.x * half}}, ink);
}

std::string limitWords(std::string_view name, std::string_view after, std::string_view otherwise) {
  const auto key = limitKey(name);
  if (!key)
    return std::string(otherwise);
  const LimitRow& row = limitTable()[static_cast<std::size_t>(*key)];
  const std::string value = plainNumber(row.value, 3);
  std::string words;
  if (row.unit == "in" && roundTo(row.value, 1.0 / 16) != row.value)
    words = value + "\"";
  else if (row.unit == "in")
    words = row.value > 96 ? plainNumber(row.value / 12, 1) + "'" : inches(row.value);
  else if (row.unit == "d")
    words = value + " diameters";
  else if (row.unit == "ratio")
    words = value + " to 1";
  else
    words = value + " " + std::string(row.unit);
  return after.empty() ? words : words + " " + std::string(after);
}

} // namespace sillwright::sketch
