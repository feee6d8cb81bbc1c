// How panels and the window look: type, icons, words with built fractions, in the colours of a theme.
#pragma once

#include <QFont>
#include <QIcon>
#include <QPainter>
#include <QString>
#include <QStringList>

#include "core/drawing/drawing.h"
#include "core/drawing/theme.h"

namespace sillwright {

// The family of the program (B612, or DejaVu Sans where it is missing) at a size in px at 100 % display scaling.
QFont uiFont(double pixels, bool bold = false);

// A drawing of the program's icon set (resources/icons) in one colour, sharp at any scaling; half strength when
// disabled.
QIcon themedIcon(const QString& name, QColor colour);
// Paints it into a square, px.
void paintIcon(QPainter& painter, const QString& name, const QRectF& square, QColor colour);

// Plays a drawing whose points are pixels.
void paintPixels(QPainter& painter, const Drawing& drawing, ThemeName theme, QPointF origin = {});
// One line, its baseline at `at`, fractions built. Returns where it ends.
double paintWords(QPainter& painter, ThemeName theme, QPointF at, const QString& words, double size, Ink ink,
                  Weight weight = Weight::Regular, Anchor anchor = Anchor::Start);
double wordsWidth(const QString& words, double size);
// What lies under a row of a list, and the head of a group of rows.
void paintRowGround(QPainter& painter, ThemeName theme, const QRect& box, bool selected);
void paintRowHead(QPainter& painter, ThemeName theme, const QRect& box, const QString& words);
// Cut with … to fit.
QString elided(const QString& words, double size, double width);
// Broken between words into lines that fit; a word that is too long alone stays whole, so does a length like 2 1/4".
QStringList brokenToFit(const QString& words, double size, double width);

} // namespace sillwright
