#include "ui/panels/look.h"

#include <QFile>
#include <QGuiApplication>
#include <QIconEngine>
#include <QPixmap>
#include <QScreen>
#include <QSvgRenderer>

#include "core/drawing/text_metrics.h"
#include "ui/paint/painter.h"

namespace sillwright {

namespace {

QByteArray iconText(const QString& name, QColor colour) {
  QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
  if (!file.open(QIODevice::ReadOnly))
    return {};
  return file.readAll().replace("currentColor", colour.name().toLatin1());
}

class ThemedIconEngine final : public QIconEngine {
public:
  ThemedIconEngine(QString name, QColor colour) : name_(std::move(name)), colour_(colour) {}

  void paint(QPainter* painter, const QRect& square, QIcon::Mode mode, QIcon::State) override {
    painter->save();
    if (mode == QIcon::Disabled)
      painter->setOpacity(0.42);
    paintIcon(*painter, name_, QRectF(square), colour_);
    painter->restore();
  }
  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    QPixmap pixmap(size);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    paint(&painter, QRect(QPoint(), size), mode, state);
    return pixmap;
  }
  QIconEngine* clone() const override { return new ThemedIconEngine(name_, colour_); }

private:
  QString name_;
  QColor colour_;
};

} // namespace

QFont uiFont(double pixels, bool bold) {
  const QScreen* screen = QGuiApplication::primaryScreen();
  QFont font(drawingFont(Weight::Regular).family());
  font.setPointSizeF(pixels * 72.0 / (screen ? screen->logicalDotsPerInchY() : 96.0));
  font.setBold(bold);
  return font;
}

QIcon themedIcon(const QString& name, QColor colour) { return QIcon(new ThemedIconEngine(name, colour)); }

void paintIcon(QPainter& painter, const QString& name, const QRectF& square, QColor colour) {
  QSvgRenderer renderer(iconText(name, colour));
  if (renderer.isValid())
    renderer.render(&painter, square);
}

void paintPixels(QPainter& painter, const Drawing& drawing, ThemeName theme, QPointF origin) {
  PaintStyle style;
  style.theme = theme;
  style.origin = origin;
  paint(painter, drawing, style);
}

double paintWords(QPainter& painter, ThemeName theme, QPointF at, const QString& words, double size, Ink ink,
                  Weight weight, Anchor anchor) {
  Drawing line;
  TextStyle style;
  style.size = size;
  style.weight = weight;
  style.anchor = anchor;
  const Bounds box = line.text({at.x(), at.y()}, words.toStdString(), ink, style);
  paintPixels(painter, line, theme);
  return box.x1;
}

double wordsWidth(const QString& words, double size) { return textWidth(words.toStdString(), size); }

void paintRowGround(QPainter& painter, ThemeName theme, const QRect& box, bool selected) {
  painter.fillRect(box, colourOf(theme, selected ? Ink::Select : Ink::Panel));
  if (selected)
    painter.fillRect(box.x(), box.y(), 4, box.height(), colourOf(theme, Ink::Hand));
  painter.fillRect(box.x(), box.bottom(), box.width(), 1, colourOf(theme, Ink::Rule2));
}

void paintRowHead(QPainter& painter, ThemeName theme, const QRect& box, const QString& words) {
  painter.fillRect(box, colourOf(theme, Ink::Chrome));
  paintWords(painter, theme, {box.x() + 14.0, box.y() + 17.0}, words, 12, Ink::Text2, Weight::Bold);
}

QString elided(const QString& words, double size, double width) {
  if (wordsWidth(words, size) <= width)
    return words;
  QString cut = words;
  while (!cut.isEmpty() && wordsWidth(cut + QChar(0x2026), size) > width)
    cut.chop(1);
  return cut.trimmed() + QChar(0x2026);
}

QStringList brokenToFit(const QString& words, double size, double width) {
  QStringList whole; // a fraction stays with its inches
  for (const QString& word : words.split(QLatin1Char(' '), Qt::SkipEmptyParts))
    if (!whole.isEmpty() && whole.back().back().isDigit() && word.front().isDigit() && word.contains(QLatin1Char('/')))
      whole.back() += QLatin1Char(' ') + word;
    else
      whole << word;
  QStringList lines;
  for (const QString& word : whole)
    if (!lines.isEmpty() && wordsWidth(lines.back() + QLatin1Char(' ') + word, size) <= width)
      lines.back() += QLatin1Char(' ') + word;
    else
      lines << word;
  return lines;
}

} // namespace sillwright
