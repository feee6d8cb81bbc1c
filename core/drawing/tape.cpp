#include "core/drawing/tape.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/drawing/text_metrics.h"

namespace sillwright {
namespace {

constexpr double markGap = 3.4; // marks stand at least this far apart
constexpr double pourLine = 1.5, edgeLine = 0.8, footMark = 1.3, inchMark = 0.9, fineMark = 0.7;
constexpr double blockGap = 1.2; // between a foot mark and its block

struct Mark {
  double length, width; // share of the blade; pt
};

// Which mark stands at a station counted in steps of a tape division.
Mark markOf(long k, double step) {
  if (step >= 12)
    return {1.0, footMark};
  if (step >= 1) {
    const long inch = k * std::lround(step);
    if (inch % 12 == 0)
      return {1.0, footMark};
    if (step > 1)
      return {inch % 6 == 0 ? 0.45 : 0.37, inchMark};
    return {inch % 4 == 0 ? 0.50 : inch % 2 == 0 ? 0.34 : 0.26, inchMark};
  }
  const long perInch = std::lround(1 / step);
  if (k % (12 * perInch) == 0)
    return {1.0, footMark};
  if (k % perInch == 0)
    return {0.46, inchMark};
  const auto falls = [&](long denominator) { return denominator <= perInch && k % (perInch / denominator) == 0; };
  return {falls(2) ? 0.36 : falls(4) ? 0.28 : falls(8) ? 0.20 : 0.13, fineMark};
}

long firstMultiple(double from, double step) {
  return static_cast<long>(std::ceil(from / step - 1e-9));
}
long lastMultiple(double to, double step) {
  return static_cast<long>(std::floor(to / step + 1e-9));
}

bool touches(Interval a, const std::vector<Interval>& list, double slack = 0) {
  return std::any_of(list.begin(), list.end(), [&](Interval b) { return gap(a, b) < slack; });
}

// Extent of the blade on the page.
Interval bladeOf(const TapeSpec& tape) {
  const double a = tape.xOf(tape.stations.from), b = tape.xOf(tape.stations.to);
  return {std::min(a, b), std::max(a, b)};
}

void drawMarks(Drawing& drawing, const TapeSpec& tape) {
  const double step = tapeDivision(tape.scale);
  std::vector<Segment2> fine, inch, foot;
  for (long k = firstMultiple(tape.stations.from, step); k <= lastMultiple(tape.stations.to, step); ++k) {
    const Mark mark = markOf(k, step);
    const double x = tape.xOf(static_cast<double>(k) * step);
    auto& list = mark.width == footMark ? foot : mark.width == inchMark ? inch : fine;
    list.push_back({{x, tape.y}, {x, tape.y + mark.length * tape.blade}});
  }
  drawing.segments(fine, Ink::BladeInk, fineMark);
  drawing.segments(inch, Ink::BladeInk, inchMark);
  drawing.segments(foot, Ink::BladeInk, footMark);
}

// Where the block of a foot stands: past its mark in the direction the numbers grow, on the other side where a piece
// stands in front or the blade ends. Empty when neither side has room.
Interval footBlock(const TapeSpec& tape, Interval blade, double x, double width, const std::vector<Interval>& blocks) {
  const Interval right{x + blockGap, x + blockGap + width}, left{x - blockGap - width, x - blockGap};
  const bool rising = tape.xOf(tape.stations.to) >= tape.xOf(tape.stations.from);
  std::array<Interval, 2> sides = rising ? std::array{right, left} : std::array{left, right};
  if (touches(sides[0], tape.avoid) && !touches(sides[1], tape.avoid))
    std::swap(sides[0], sides[1]);
  for (const Interval side : sides)
    if (side.from > blade.from && side.to < blade.to - 1 && !touches(side, blocks, 1))
      return side;
  return {1, 0};
}

// Draws the numbers of the feet and returns what their blocks cover.
std::vector<Interval> drawFeet(Drawing& drawing, const TapeSpec& tape, Interval blade) {
  const double size = tape.numberSize, foot = tape.y + tape.blade, top = foot - size * 1.12;
  long every = 1;
  while (tape.scale * 12 * static_cast<double>(every) < size * 2.9)
    every *= 2;
  std::vector<Interval> blocks;
  for (long f = firstMultiple(tape.stations.from, 12); f <= lastMultiple(tape.stations.to, 12); ++f) {
    if (f % every != 0 || f == 0) // the hook says where zero is
      continue;
    const std::string number = std::to_string(f) + '\'';
    const double x = tape.xOf(static_cast<double>(f) * 12);
    const Interval block = footBlock(tape, blade, x, textWidth(number, size) + size * 0.5, blocks);
    if (block.empty())
      continue;
    blocks.push_back(block);
    drawing.fillRect(block.from, top, block.to, foot, Ink::BladeFoot);
    drawing.text({block.middle(), foot - 2.6}, number, Ink::BladeFootInk, {size, Weight::Bold, Anchor::Middle});
  }
  return blocks;
}

// Sixteen inches, the common stud spacing, falls on 4 and 8.
int inchNumbersEvery(double scale) {
  return scale >= 13 ? 1 : scale >= 9.5 ? 2 : scale >= 6.4 ? 4 : 0;
}

void drawInchNumbers(Drawing& drawing, const TapeSpec& tape, Interval blade, const std::vector<Interval>& blocks) {
  const int every = inchNumbersEvery(tape.scale);
  if (every == 0)
    return;
  const double size = tape.numberSize * (every == 1 ? 0.92 : 0.84);
  for (long i = firstMultiple(tape.stations.from, 1); i <= lastMultiple(tape.stations.to, 1); ++i) {
    const long inch = (i % 12 + 12) % 12;
    if (inch == 0 || inch % every != 0)
      continue;
    const std::string number = std::to_string(inch);
    const Interval place = around(tape.xOf(static_cast<double>(i)), textWidth(number, size));
    const bool onBlade = place.from >= blade.from + 2 && place.to <= blade.to - 2;
    if (onBlade && !touches(place, blocks, 1) && !touches(place, tape.avoid))
      drawing.text({place.middle(), tape.y + tape.blade - 2.6}, number, Ink::BladeInk,
                   {size, Weight::Regular, Anchor::Middle});
  }
}

} // namespace

double tapeDivision(double scale) {
  for (const double step : {1.0 / 16, 1.0 / 8, 1.0 / 4, 1.0 / 2, 1.0, 3.0, 6.0})
    if (scale * step >= markGap)
      return step;
  double step = 12;
  while (scale > 0 && scale * step < markGap)
    step *= 2;
  return step;
}

void drawTape(Drawing& drawing, const TapeSpec& tape) {
  if (tape.stations.empty() || tape.scale <= 0)
    return;
  const Interval blade = bladeOf(tape);
  const double foot = tape.y + tape.blade;
  drawing.fillRect(blade.from, tape.y, blade.to, foot, Ink::Blade);
  drawing.line({blade.from, foot}, {blade.to, foot}, Ink::BladeEdge, edgeLine);
  drawing.line({blade.from, tape.y}, {blade.to, tape.y}, Ink::BladeInk, pourLine);
  drawMarks(drawing, tape);
  drawInchNumbers(drawing, tape, blade, drawFeet(drawing, tape, blade));
}

void drawCrowsFoot(Drawing& drawing, double x, double y, Pointing pointing, Ink ink, double size, double width) {
  const double half = size * 0.46;
  // The mitre of the stroke reaches past the middle line of the V; its tip is what stands on the mark.
  const double tip = half > 0 ? width / 2 * std::hypot(size, half) / half : 0;
  const auto at = [&](double back, double aside) {
    switch (pointing) {
    case Pointing::Down:
      return Point2{x + aside, y - back};
    case Pointing::Up:
      return Point2{x + aside, y + back};
    case Pointing::Left:
      return Point2{x + back, y + aside};
    case Pointing::Right:
      return Point2{x - back, y + aside};
    }
    return Point2{x, y};
  };
  const Point2 v[] = {at(tip + size, -half), at(tip, 0), at(tip + size, half)};
  drawing.polyline(v, ink, width);
}

void drawHookEnd(Drawing& drawing, Point2 at, double radius, bool away, Ink ink) {
  drawing.disc(at, radius, Ink::Concrete);
  drawing.ring(at, radius, ink, 1.1);
  const double q = radius * 0.707;
  const Segment2 cross[] = {{{at.x - q, at.y - q}, {at.x + q, at.y + q}}, {{at.x - q, at.y + q}, {at.x + q, at.y - q}}};
  if (away)
    drawing.segments(cross, ink, 0.9);
  else
    drawing.disc(at, std::max(1.0, radius * 0.4), ink);
}

void drawHook(Drawing& drawing, double x, double y, double bladeHeight, Ink ink, Ink ground, bool toTheRight) {
  const double h = bladeHeight, k = std::max(1.1, h / 19), side = toTheRight ? 1 : -1;
  const auto at = [&](double dx, double dy) { return Point2{x + side * dx * k, y + dy}; };
  const double shoulder = 0.5 + h * 0.22, heel = shoulder + h * 0.5;
  const Point2 tang[] = {
      at(0, 0.5), at(11, 0.5), at(13, shoulder), at(13, heel), at(11, heel + h * 0.22), at(0, heel + h * 0.22)};
  drawing.fill(std::span<const Point2>(tang), ink);
  const Point2 rivets[] = {at(4.6, h * 0.48), at(9, h * 0.48)};
  drawing.discs(rivets, 1.15 * k, ground);
  const double top = -2 * k, bottom = h + 7 * k;
  const Point2 plate[] = {at(0, top), at(0, bottom), at(-4, bottom), at(-4, 0), at(-2, top)};
  drawing.fill(std::span<const Point2>(plate), ink);
}

} // namespace sillwright
