// The one way of a drawing onto a screen, a picture, a PDF or a printer.
#pragma once

#include <QColor>
#include <QPainter>
#include <QPointF>
#include <QRectF>

#include "core/drawing/drawing.h"
#include "core/drawing/theme.h"

namespace sillwright {

struct PaintStyle {
  ThemeName theme = ThemeName::Light;
  double scale = 1; // device pixels per point
  QPointF origin;   // device position of the drawing's (0, 0)
  QRectF clip;      // device; primitives wholly outside are passed over; null: everything is painted
};

// Replays the drawing in order. Text is set in B612 (DejaVu Sans where it is missing) run by run at the places that
// core/drawing/text_metrics gives, and stays text in a PDF. Needs a QGuiApplication.
void paint(QPainter& painter, const Drawing& drawing, const PaintStyle& style);

QColor colourOf(ThemeName theme, Ink ink);

// The family of the program, screen and sheets alike.
QFont drawingFont(Weight weight);

} // namespace sillwright
