#include "core/drawing/type_pen.h"

#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"
#include "core/drawing/materials.h"
#include "core/drawing/plain_number.h"
#include "core/drawing/tape.h"
#include "core/drawing/text_metrics.h"

namespace sillwright::type_picture {

namespace {

constexpr double shortLength = 14, tailLength = 10;

} // namespace

std::string Pen::measure(double inches) const {
  constexpr int finest = 64;
  if (units == LengthStyle::Millimetres)
    return plainNumber(inches * 25.4, 2) + " mm";
  if (std::abs(roundTo(inches, 1.0 / finest) - inches) > tolerance::same)
    return plainNumber(inches, 4) + "\"";
  return sillwright::inches(inches, finest);
}

void Pen::concrete(double top, double x0, double x1, double bottom) {
  if (bottom <= top || x1 <= x0)
    return;
  const Polygon2 block{{x0, top}, {x1, top}, {x1, bottom}, {x0, bottom}};
  drawing.fill(block, Ink::Concrete);
  drawConcrete(drawing, block, {x0, top});
  drawing.line({x0, top}, {x1, top}, Ink::ConcreteLine, 1.2);
}

void Pen::shank(double radius, double from, double to, double threadFrom, double threadsPerInch) {
  drawing.fillRect(x(-radius), y(to), x(radius), y(from), Ink::SteelSoft);
  drawing.rect(x(-radius), y(to), x(radius), y(from), Ink::Steel, 1);
  const double pitch = std::max(2.2, scale / std::max(threadsPerInch, 1.0));
  for (double py = y(to) + pitch; py < y(threadFrom); py += pitch)
    drawing.line({x(-radius), py}, {x(radius), py - 0.8}, Ink::Steel, 0.6);
}

void Pen::say(Point2 baseline, std::string_view words, Anchor anchor, Ink ink, Ink ground) {
  const double width = textWidth(words, wordSize);
  const double start = anchor == Anchor::Start ? baseline.x
                       : anchor == Anchor::End ? baseline.x - width
                                               : baseline.x - width / 2;
  const double inside = std::clamp(start, box.x0 + 2, std::max(box.x0 + 2, box.x1 - 2 - width));
  drawing.text({inside, baseline.y}, words, ink, {wordSize, Weight::Regular, Anchor::Start, 0, ground, 3});
}

void Pen::across(double py, double x0, double x1, std::string_view words) {
  const bool isShort = x1 - x0 < shortLength;
  if (isShort) {
    drawing.line({x0 - tailLength, py}, {x0, py}, Ink::Dim, 0.8);
    drawing.line({x1, py}, {x1 + tailLength, py}, Ink::Dim, 0.8);
  } else {
    drawing.line({x0, py}, {x1, py}, Ink::Dim, 0.8);
  }
  drawCrowsFoot(drawing, x0, py, isShort ? Pointing::Right : Pointing::Left, Ink::Dim);
  drawCrowsFoot(drawing, x1, py, isShort ? Pointing::Left : Pointing::Right, Ink::Dim);
  say({(x0 + x1) / 2, py - wordGap - 1}, words, Anchor::Middle, Ink::Text);
}

void Pen::upright(double px, double y0, double y1, std::string_view words, bool left) {
  const bool isShort = y1 - y0 < shortLength;
  if (isShort) {
    drawing.line({px, y0 - tailLength}, {px, y0}, Ink::Dim, 0.8);
    drawing.line({px, y1}, {px, y1 + tailLength}, Ink::Dim, 0.8);
  } else {
    drawing.line({px, y0}, {px, y1}, Ink::Dim, 0.8);
  }
  drawCrowsFoot(drawing, px, y0, isShort ? Pointing::Down : Pointing::Up, Ink::Dim);
  drawCrowsFoot(drawing, px, y1, isShort ? Pointing::Up : Pointing::Down, Ink::Dim);
  const double middle = (y0 + y1) / 2 + wordSize * capHeight / 2;
  say({px + (left ? -wordGap - 3 : wordGap + 3), middle}, words, left ? Anchor::End : Anchor::Start, Ink::Text);
}

void Pen::witness(Point2 a, Point2 b) {
  const Point2 ends[] = {a, b};
  drawing.dashed(ends, 3, 2, Ink::Dim, 0.6);
}

} // namespace sillwright::type_picture
