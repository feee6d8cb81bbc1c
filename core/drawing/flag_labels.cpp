#include <algorithm>

#include "core/drawing/flags.h"
#include "core/drawing/text_metrics.h"

namespace sillwright {
namespace {

constexpr double lineHeight = 17, textSize = 10, pad = 4, swatchWidth = 12, swatchHeight = 8.4;
constexpr double hintSize = 0.84 * textSize, hintStep = 1.36 * hintSize;
constexpr double tallRow = 0.94 * lineHeight;
constexpr double askPoint = 6;    // how far a label of this level is pointed at both ends
constexpr double askIndent = 2.5; // of its word, into the point
constexpr double frameWidth = 1.5, tagWidth = 1.1, barWidth = 0.7, ruleWidth = 1.2;

// Everything is worked out at k = 1 from the label's own corner and scaled when drawn.
struct Pen {
  Drawing& drawing;
  double x, y, k;
  Ink ink;

  Point2 at(double dx, double dy) const { return {x + dx * k, y + dy * k}; }
  void fill(double x0, double y0, double x1, double y1, Ink ground) const {
    const Point2 a = at(x0, y0), b = at(x1, y1);
    drawing.fillRect(a.x, a.y, b.x, b.y, ground);
  }
  void line(Point2 a, Point2 b, double width) const { drawing.line(at(a.x, a.y), at(b.x, b.y), ink, width * k); }
  void swatch(Level level, double dx, double dy, Ink sign) const {
    const Point2 p = at(dx, dy);
    drawSwatch(drawing, level, p.x, p.y, swatchWidth * k, swatchHeight * k, sign, k);
  }
  void text(double dx, double dy, const std::string& words, double size, bool bold, Ink letters) const {
    drawing.text(at(dx, dy), words, letters, {size * k, bold ? Weight::Bold : Weight::Regular});
  }
};

void drawShape(const Pen& pen, Level level, const Size& size, double solidWidth, double solidHeight) {
  const double w = size.width, h = size.height;
  if (level == Level::Ask) {
    Polygon2 outline{pen.at(0, h / 2), pen.at(askPoint, 0),     pen.at(w - askPoint, 0),
                     pen.at(w, h / 2), pen.at(w - askPoint, h), pen.at(askPoint, h)};
    pen.drawing.fill(std::span<const Point2>(outline), Ink::Paper);
    pen.drawing.loop(outline, pen.ink, tagWidth * pen.k);
    return;
  }
  pen.fill(0, 0, w, h, Ink::Paper);
  if (level == Level::Watch) {
    pen.line({0, h - ruleWidth / 2}, {w, h - ruleWidth / 2}, ruleWidth);
    return;
  }
  pen.fill(0, 0, solidWidth, solidHeight, pen.ink);
  const Point2 a = pen.at(frameWidth / 2, frameWidth / 2), b = pen.at(w - frameWidth / 2, h - frameWidth / 2);
  pen.drawing.rect(a.x, a.y, b.x, b.y, pen.ink, frameWidth * pen.k);
}

double wordCell(const LabelText& t) {
  const double indent = t.level == Level::Ask ? askIndent : 0;
  return indent + pad + swatchWidth + pad * 0.9 + textWidth(t.word, textSize) + pad * 1.1;
}

bool hasHint(const LabelText& t, LabelForm form) {
  return form == LabelForm::TwoLines && !t.hint.empty();
}

Size flatSize(const LabelText& t, bool hint) {
  double body = textWidth(t.measure, textSize);
  if (hint)
    body = std::max(body, textWidth(t.hint, hintSize));
  body += pad * 2.4 + (t.level == Level::Ask ? 4 : 0);
  return {wordCell(t) + body, lineHeight + (hint ? hintStep : 0)};
}

Size tallSize(const LabelText& t) {
  const double word = swatchWidth + pad * 2.9 + textWidth(t.word, textSize);
  const double measure = textWidth(t.measure, textSize) + pad * 2.2;
  return {std::max(word, measure) + (t.level == Level::Ask ? 2 * askPoint : 0), 2 * tallRow};
}

void drawFlat(const Pen& pen, const LabelText& t, const Size& size, bool hint) {
  const double cell = wordCell(t), middle = size.height / 2;
  const bool fix = t.level == Level::Fix, watch = t.level == Level::Watch;
  const double lift = watch ? ruleWidth / 2 : 0; // the rule stands under the text
  const double indent = watch ? pad * 0.5 : pad + (t.level == Level::Ask ? askIndent : 0);
  drawShape(pen, t.level, size, cell, size.height);
  if (t.level == Level::Ask)
    pen.line({cell, 0}, {cell, size.height}, barWidth);
  pen.swatch(t.level, indent, middle - lift, fix ? Ink::FixOn : pen.ink);
  pen.text(indent + swatchWidth + pad * 0.9, middle + textSize * capHeight / 2 - lift, t.word, textSize, true,
           fix ? Ink::FixOn : Ink::Text);
  const double bodyX = (watch ? cell - pad * 0.8 : cell) + pad * 1.2;
  const double base = (lineHeight + textSize * capHeight) / 2 - lift;
  pen.text(bodyX, base, t.measure, textSize, fix, Ink::Text);
  if (hint)
    pen.text(bodyX, base + hintStep, t.hint, hintSize, false, Ink::Text);
}

void drawTall(const Pen& pen, const LabelText& t, const Size& size) {
  const bool fix = t.level == Level::Fix;
  const double left = pad + (t.level == Level::Ask ? askPoint : 0), base = tallRow / 2 + textSize * capHeight / 2;
  drawShape(pen, t.level, size, size.width, tallRow);
  pen.swatch(t.level, left, tallRow / 2, fix ? Ink::FixOn : pen.ink);
  pen.text(left + swatchWidth + pad * 0.9, base, t.word, textSize, true, fix ? Ink::FixOn : Ink::Text);
  pen.text(left, base + tallRow - (t.level == Level::Watch ? 0.8 : 0), t.measure, textSize, fix, Ink::Text);
}

} // namespace

Size labelSize(const LabelText& text, LabelForm form, double k) {
  const Size size = form == LabelForm::Tall ? tallSize(text) : flatSize(text, hasHint(text, form));
  return {size.width * k, size.height * k};
}

Bounds drawLabel(Drawing& drawing, const LabelText& text, LabelForm form, double x, double y, double k) {
  const Pen pen{drawing, x, y, k, inkOf(text.level)};
  const Size size = labelSize(text, form);
  if (form == LabelForm::Tall)
    drawTall(pen, text, size);
  else
    drawFlat(pen, text, size, hasHint(text, form));
  return {x, y, x + size.width * k, y + size.height * k};
}

} // namespace sillwright
