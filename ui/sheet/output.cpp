#include "ui/sheet/output.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QRegularExpression>
#include <filesystem>

#include "core/drawing/writers.h"
#include "core/store/files.h"
#include "ui/paint/painter.h"

namespace sillwright {

namespace {

constexpr int resolution = 1200;

QPageLayout layoutOf(const Page& page) {
  // Draws on the full page from its top left corner; margins are the sheet's own.
  return QPageLayout(QPageSize(QSizeF(page.width, page.height), QPageSize::Point, QString(), QPageSize::ExactMatch),
                     QPageLayout::Portrait, QMarginsF(0, 0, 0, 0), QPageLayout::Point);
}

// The writer puts the time of day into the file: replaced by the date asked for, same length.
void setCreationDate(QByteArray& pdf, const std::string& date) {
  static const QRegularExpression stamp(QStringLiteral("/CreationDate \\(D:\\d{14}"));
  const auto match = stamp.match(QString::fromLatin1(pdf));
  if (!match.hasMatch())
    return;
  QByteArray day = QByteArray::fromStdString(date);
  day.replace("-", "");
  pdf.replace(match.capturedStart(), match.capturedLength(), "/CreationDate (D:" + day + "000000");
}

} // namespace

QByteArray toPdf(const std::vector<Page>& pages, const Document& document) {
  QByteArray bytes;
  if (pages.empty())
    return bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&buffer);
    writer.setResolution(resolution);
    writer.setTitle(QString::fromStdString(document.title));
    writer.setCreator(QStringLiteral("Sillwright"));
    writer.setPageLayout(layoutOf(pages.front()));
    QPainter painter(&writer);
    for (std::size_t i = 0; i < pages.size(); ++i) {
      if (i > 0) {
        writer.setPageLayout(layoutOf(pages[i]));
        writer.newPage();
      }
      painter.resetTransform();
      PaintStyle style;
      style.theme = ThemeName::Print;
      style.scale = resolution / 72.0;
      paint(painter, pages[i].drawing, style);
    }
  }
  buffer.close();
  setCreationDate(bytes, document.date);
  return bytes;
}

Result<Done> writePdf(const std::vector<Page>& pages, const Document& document, const std::string& path) {
  const QByteArray bytes = toPdf(pages, document);
  return writeFile(path, std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

Result<std::vector<std::string>> writeSvg(const std::vector<Page>& pages, const std::string& folder,
                                          const std::string& name) {
  std::error_code error;
  std::filesystem::create_directories(folder, error);
  if (error)
    return Problem{folder, "the folder cannot be made: " + error.message()};
  std::vector<std::string> files;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    const std::string file =
        (std::filesystem::path(folder) / (name + "-" + std::to_string(i + 1) + ".svg")).string();
    const auto written =
        writeFile(file, toSvg(pages[i].drawing, pages[i].width, pages[i].height, ThemeName::Print, pages[i].title));
    if (!written)
      return written.problem();
    files.push_back(file);
  }
  return files;
}

} // namespace sillwright
