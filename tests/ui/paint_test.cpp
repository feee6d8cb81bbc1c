#include "ui/paint/painter.h"

#include <QBuffer>
#include <QFontDatabase>
#include <QImage>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QRegularExpression>

#include <gtest/gtest.h>

#include "core/drawing/hatch.h"
#include "core/drawing/text_metrics.h"

namespace sillwright {
namespace {

constexpr int scale = 4;

QImage painted(const Drawing& drawing, const PaintStyle& style, QSize size = {400, 300}) {
  QImage image(size, QImage::Format_RGB32);
  image.fill(colourOf(style.theme, Ink::Paper));
  QPainter painter(&image);
  paint(painter, drawing, style);
  return image;
}

PaintStyle at(double s, ThemeName theme = ThemeName::Light) {
  return {theme, s, {}, {}};
}

// Pixels that differ from the paper in a box in points.
int inked(const QImage& image, const Bounds& box) {
  const QRgb paper = colourOf(ThemeName::Light, Ink::Paper).rgb();
  int count = 0;
  for (int y = std::max(0, qFloor(box.y0 * scale)); y < std::min(image.height(), qCeil(box.y1 * scale)); ++y)
    for (int x = std::max(0, qFloor(box.x0 * scale)); x < std::min(image.width(), qCeil(box.x1 * scale)); ++x)
      count += image.pixel(x, y) != paper;
  return count;
}

TEST(Paint, PutsEveryKindWhereItSaysAndNowhereElse) {
  Drawing d;
  d.fillRect(10, 10, 20, 20, Ink::Wood);
  d.line({30, 15}, {40, 15}, Ink::Text, 2);
  const Point2 corner[] = {{50, 10}, {60, 20}, {50, 20}};
  d.loop(corner, Ink::Text, 1);
  const Segment2 list[] = {{{10, 30}, {20, 40}}, {{10, 40}, {20, 30}}};
  d.segments(list, Ink::Fix, 1);
  const Point2 dots[] = {{32, 35}, {38, 35}};
  d.discs(dots, 1.5, Ink::ConcreteMark);
  d.disc({45, 35}, 3, Ink::Hand);
  d.ring({60, 35}, 4, Ink::Steel, 1);
  d.text({10, 60}, "20'-2 7/8\"", Ink::Text, {10});
  const QImage image = painted(d, at(scale));
  for (const Prim& p : d.prims())
    EXPECT_GT(inked(image, p.box), 20) << static_cast<int>(p.kind);
  EXPECT_EQ(image.pixelColor(15 * scale, 15 * scale), colourOf(ThemeName::Light, Ink::Wood));
  EXPECT_EQ(image.pixelColor(60 * scale, 35 * scale), colourOf(ThemeName::Light, Ink::Paper)) << "a ring is open";

  QImage rest = image;
  QPainter eraser(&rest);
  for (const Prim& p : d.prims()) {
    const Bounds b = p.box.grown(0.3); // an antialiased pixel
    eraser.fillRect(QRectF(QPointF(b.x0, b.y0) * scale, QPointF(b.x1, b.y1) * scale),
                    colourOf(ThemeName::Light, Ink::Paper));
  }
  eraser.end();
  EXPECT_EQ(inked(rest, {0, 0, 100, 75}), 0);
}

TEST(Paint, LeavesHolesOpen) {
  Drawing d;
  const Polygon2 rings[] = {rectangle(0, 0, 40, 40), rectangle(10, 10, 30, 30)};
  d.fill(std::span<const Polygon2>(rings), Ink::Concrete);
  const QImage image = painted(d, at(scale));
  EXPECT_EQ(image.pixelColor(5 * scale, 5 * scale), colourOf(ThemeName::Light, Ink::Concrete));
  EXPECT_EQ(image.pixelColor(20 * scale, 20 * scale), colourOf(ThemeName::Light, Ink::Paper));
}

TEST(Paint, FollowsThemeOriginAndScale) {
  Drawing d;
  d.fillRect(0, 0, 10, 10, Ink::Hand);
  const QImage image = painted(d, {ThemeName::Dark, 2, {100, 50}, {}});
  EXPECT_EQ(image.pixelColor(110, 60), colourOf(ThemeName::Dark, Ink::Hand));
  EXPECT_EQ(image.pixelColor(99, 60), colourOf(ThemeName::Dark, Ink::Paper));
  EXPECT_EQ(image.pixelColor(121, 60), colourOf(ThemeName::Dark, Ink::Paper));
}

TEST(Paint, SkipsWhatIsOutsideTheClipAndKeepsWhatReachesIn) {
  Drawing d;
  d.fillRect(0, 0, 10, 10, Ink::Hand);
  d.fillRect(50, 0, 60, 10, Ink::Hand);
  PaintStyle style = at(scale);
  style.clip = QRectF(QPointF(40, 0) * scale, QPointF(55, 10) * scale);
  const QImage image = painted(d, style);
  EXPECT_EQ(inked(image, {0, 0, 12, 12}), 0);
  EXPECT_EQ(inked(image, {50, 0, 60, 10}), 10 * scale * 10 * scale);
}

TEST(Paint, APartIsTheSameAsThatPartOfTheWhole) {
  Drawing d;
  drawConcrete(d, rectangle(0, 0, 100, 75), {0, 0});
  drawFlag(d, Level::Fix, {20, 20, 60, 50});
  drawLabel(d, {Level::Watch, "WATCH", "EDGE 3/4\" < 1\"", ""}, LabelForm::OneLine, 5, 55);
  PaintStyle style = at(scale);
  const QImage whole = painted(d, style);
  style.clip = QRectF(QPointF(15, 15) * scale, QPointF(45, 65) * scale);
  const QRect inside(QPoint(15, 15) * scale, QSize(30, 50) * scale);
  EXPECT_EQ(whole.copy(inside), painted(d, style).copy(inside));
}

TEST(Paint, LettersAreAsWideAsTheCoreSays) {
  if (!QFontDatabase::hasFamily(QStringLiteral("B612")))
    GTEST_SKIP() << "B612 is not installed";
  for (const Weight weight : {Weight::Regular, Weight::Bold})
    for (const char* words : {"HHHHHHHHHHHHHHHHHHHH", "20'-2 7/8\" H", "EDGE 3/8\" < 1/2\" H"}) {
      Drawing d;
      d.text({5, 20}, words, Ink::Text, {10, weight});
      const QImage image = painted(d, at(scale), {700, 120});
      double right = 0;
      for (int x = 0; x < image.width(); ++x)
        if (inked(image, {x / 4.0, 0, (x + 1) / 4.0, 30}) > 0)
          right = (x + 1) / 4.0;
      // The H stands within its advance, with its own space on the right (a twentieth to a tenth of the size).
      const double end = 5 + textWidth(words, 10);
      EXPECT_LE(right, end) << words;
      EXPECT_GE(right, end - 1.25) << words;
    }
}

TEST(Paint, BoldIsHeavierThanRegular) {
  const auto ink = [](Weight weight) {
    Drawing d;
    d.text({5, 40}, "HHHH", Ink::Text, {20, weight});
    return inked(painted(d, at(scale)), {0, 0, 100, 75});
  };
  EXPECT_GT(ink(Weight::Bold), 1.3 * ink(Weight::Regular));
}

TEST(Paint, AHaloClearsTheGroundAroundLetters) {
  const auto paperPixels = [](const TextStyle& style) {
    Drawing d;
    d.fillRect(0, 0, 100, 75, Ink::Wood);
    d.text({10, 40}, "S1", Ink::Text, style);
    const QImage image = painted(d, at(scale));
    return image.width() * image.height() - inked(image, {0, 0, 100, 75});
  };
  EXPECT_EQ(paperPixels({20}), 0);
  EXPECT_GT(paperPixels({20, Weight::Regular, Anchor::Start, 0, Ink::Paper, 4}), 500);
}

QByteArray pdfOf(const Drawing& d) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setResolution(1200);
  writer.setPageSize(QPageSize(QPageSize::Letter));
  writer.setPageMargins({0, 0, 0, 0});
  QPainter painter(&writer);
  paint(painter, d, at(1200 / 72.0, ThemeName::Print));
  painter.end();
  return bytes;
}

// Everything in the file, with its compressed streams opened.
QByteArray opened(const QByteArray& pdf) {
  QByteArray all = pdf;
  for (qsizetype from = pdf.indexOf("\nstream\n"); from >= 0; from = pdf.indexOf("\nstream\n", from + 1)) {
    const qsizetype begin = from + 8, end = pdf.indexOf("endstream", begin);
    const QByteArray room("\x00\x10\x00\x00", 4); // what the inflater may need at first: a megabyte
    const QByteArray stream = pdf.mid(begin, end - begin);
    if (stream.startsWith('\x78')) // deflated; embedded fonts and short streams may stand open
      all += qUncompress(room + stream) + '\n';
  }
  return all;
}

Drawing printed() {
  Drawing d;
  drawConcrete(d, rectangle(72, 72, 200, 140), {72, 72});
  drawEarth(d, rectangle(72, 140, 200, 160), {72, 140});
  drawFlag(d, Level::Fix, {90, 90, 140, 120});
  drawFlag(d, Level::Ask, {150, 90, 151, 120});
  drawLabel(d, {Level::Watch, "WATCH", "EDGE 3/4\" < 1\"", "left of the strap"}, LabelForm::TwoLines, 72, 180);
  d.text({72, 240}, "20'-2 7/8\"", Ink::Text, {12, Weight::Bold, Anchor::Start, 0, Ink::Paper, 3});
  return d;
}

TEST(PaintPdf, HasNoPicturesAndNoPatterns) {
  const QByteArray all = opened(pdfOf(printed()));
  ASSERT_TRUE(all.contains(" l\n")) << "the streams were not opened";
  EXPECT_FALSE(all.contains("/Subtype /Image"));
  EXPECT_FALSE(all.contains("/PatternType 1"));
  EXPECT_FALSE(all.contains("/ShadingType"));
}

TEST(PaintPdf, KeepsTextAsTextWithItsLetters) {
  const QByteArray all = opened(pdfOf(printed()));
  EXPECT_TRUE(all.contains("BT\n"));
  EXPECT_TRUE(all.contains("/ToUnicode"));
  EXPECT_TRUE(all.contains("B612") || !QFontDatabase::hasFamily(QStringLiteral("B612")));
  // Every letter that was set can be copied out again: the embedded fonts map a glyph to each.
  const QByteArray lower = all.toLower();
  for (const char letter : {'W', 'A', 'T', 'C', 'H', '7', '8', '/', '"', '\''}) {
    const QByteArray code = '<' + QByteArray::number(letter, 16).rightJustified(4, '0') + '>';
    EXPECT_TRUE(lower.contains(code)) << letter;
  }
}

} // namespace
} // namespace sillwright
