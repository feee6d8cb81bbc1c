#include "ui/paint/painter.h"

#include <QFont>
#include <QPainterPath>
#include <array>
#include <cmath>
#include <numbers>

#include "core/drawing/text_metrics.h"

namespace sillwright {

namespace {

constexpr int fontPixels = 100; // text is set at this size and scaled, so that it is the same on every device

QPointF device(const PaintStyle& style, Point2 p) {
  return {style.origin.x() + p.x * style.scale, style.origin.y() + p.y * style.scale};
}

// Box of a primitive on the device, with the pixel that antialiasing adds.
QRectF reach(const Prim& prim, const PaintStyle& style) {
  const QRectF box(device(style, {prim.box.x0, prim.box.y0}), device(style, {prim.box.x1, prim.box.y1}));
  return box.adjusted(-1, -1, 1, 1);
}

QPen penOf(const Prim& prim, const PaintStyle& style, const QColor& colour) {
  QPen pen(colour, prim.width * style.scale);
  pen.setCapStyle(prim.cap == Cap::Round ? Qt::RoundCap : Qt::FlatCap);
  pen.setJoinStyle(Qt::MiterJoin);
  pen.setMiterLimit(mitreLimit);
  return pen;
}

void paintFill(QPainter& painter, const Drawing& drawing, const Prim& prim, const PaintStyle& style,
               const QColor& colour) {
  QPainterPath path;
  path.setFillRule(Qt::OddEvenFill);
  for (const auto ring : drawing.ringsOf(prim)) {
    QPolygonF polygon;
    for (const Point2& p : ring)
      polygon << device(style, p);
    path.addPolygon(polygon);
    path.closeSubpath();
  }
  painter.fillPath(path, colour);
}

void paintStroke(QPainter& painter, const Drawing& drawing, const Prim& prim, const PaintStyle& style,
                 const QColor& colour) {
  QPainterPath path;
  const auto points = drawing.pointsOf(prim);
  if (prim.kind == Prim::Kind::Segments) {
    for (std::size_t i = 0; i + 1 < points.size(); i += 2) {
      path.moveTo(device(style, points[i]));
      path.lineTo(device(style, points[i + 1]));
    }
  } else {
    path.moveTo(device(style, points[0]));
    for (const Point2& p : points.subspan(1))
      path.lineTo(device(style, p));
    if (prim.kind == Prim::Kind::Loop)
      path.closeSubpath();
  }
  painter.strokePath(path, penOf(prim, style, colour));
}

// Every disc of one primitive: a Disc may carry many centres.
void paintDiscs(QPainter& painter, const Drawing& drawing, const Prim& prim, const PaintStyle& style,
                const QColor& colour) {
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour);
  const double r = prim.width * style.scale;
  for (const Point2& p : drawing.pointsOf(prim))
    painter.drawEllipse(device(style, p), r, r);
  painter.setBrush(Qt::NoBrush);
}

void paintRing(QPainter& painter, const Drawing& drawing, const Prim& prim, const PaintStyle& style,
               const QColor& colour) {
  const auto points = drawing.pointsOf(prim);
  painter.setPen(penOf(prim, style, colour));
  painter.setBrush(Qt::NoBrush);
  const double r = points[1].x * style.scale;
  painter.drawEllipse(device(style, points[0]), r, r);
}

const QFont& fontOf(Weight weight) {
  static const std::array<QFont, 3> fonts{drawingFont(Weight::Regular), drawingFont(Weight::Bold),
                                          drawingFont(Weight::Italic)};
  return fonts[static_cast<std::size_t>(weight)];
}

double startOf(const TextPrim& text) {
  const double wide = textWidth(text.text, text.style.size);
  return text.style.anchor == Anchor::Start ? 0 : text.style.anchor == Anchor::Middle ? -wide / 2 : -wide;
}

void paintText(QPainter& painter, const Drawing& drawing, const Prim& prim, const PaintStyle& style,
               const QColor& colour) {
  const TextPrim& text = drawing.textOf(prim);
  const QFont& font = fontOf(text.style.weight);
  const QTransform before = painter.transform();
  const QPointF at = device(style, drawing.pointsOf(prim)[0]);
  painter.translate(at);
  painter.rotate(-text.style.turn);
  painter.scale(style.scale, style.scale);
  const double start = startOf(text);
  const auto runs = textRuns(text.text, text.style.size);
  if (text.style.halo != Ink::None) {
    QPainterPath letters;
    for (const TextRun& run : runs) {
      QPainterPath one;
      one.addText(0, 0, font, QString::fromStdString(run.text));
      QTransform place;
      place.translate(start + run.x, -run.rise);
      place.scale(run.size / fontPixels, run.size / fontPixels);
      letters.addPath(place.map(one));
    }
    QPen pen(colourOf(style.theme, text.style.halo), text.style.haloWidth);
    pen.setJoinStyle(Qt::RoundJoin);
    painter.strokePath(letters, pen);
  }
  painter.setFont(font);
  painter.setPen(colour);
  for (const TextRun& run : runs) {
    const QTransform line = painter.transform();
    painter.translate(start + run.x, -run.rise);
    painter.scale(run.size / fontPixels, run.size / fontPixels);
    painter.drawText(QPointF(0, 0), QString::fromStdString(run.text));
    painter.setTransform(line);
  }
  painter.setTransform(before);
}

void paintPrim(QPainter& painter, const Drawing& drawing, const Prim& prim, const PaintStyle& style) {
  QColor colour = colourOf(style.theme, prim.ink);
  if (style.theme != ThemeName::Print)
    colour.setAlphaF(prim.opacity);
  switch (prim.kind) {
  case Prim::Kind::Fill:
    return paintFill(painter, drawing, prim, style, colour);
  case Prim::Kind::Line:
  case Prim::Kind::Loop:
  case Prim::Kind::Segments:
    return paintStroke(painter, drawing, prim, style, colour);
  case Prim::Kind::Disc:
    return paintDiscs(painter, drawing, prim, style, colour);
  case Prim::Kind::Ring:
    return paintRing(painter, drawing, prim, style, colour);
  case Prim::Kind::Text:
    return paintText(painter, drawing, prim, style, colour);
  }
}

} // namespace

QColor colourOf(ThemeName theme, Ink ink) {
  const Rgb rgb = colour(theme, ink);
  return {rgb.r, rgb.g, rgb.b};
}

QFont drawingFont(Weight weight) {
  QFont font;
  font.setFamilies({QStringLiteral("B612"), QStringLiteral("DejaVu Sans")});
  font.setPixelSize(fontPixels);
  font.setBold(weight == Weight::Bold);
  font.setItalic(weight == Weight::Italic);
  font.setHintingPreference(QFont::PreferNoHinting);
  font.setKerning(false);
  return font;
}

void paint(QPainter& painter, const Drawing& drawing, const PaintStyle& style) {
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setRenderHint(QPainter::TextAntialiasing);
  for (const Prim& prim : drawing.prims()) {
    if (prim.count == 0 || prim.ink == Ink::None)
      continue;
    if (!style.clip.isNull() && !reach(prim, style).intersects(style.clip))
      continue;
    paintPrim(painter, drawing, prim, style);
  }
}

} // namespace sillwright
