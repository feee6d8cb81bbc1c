// Copy and paste, mirror, repeat, match a pair: what the window asks for and says.
#include "ui/window/main_window.h"

#include <QApplication>
#include <QClipboard>
#include <QCursor>
#include <QMimeData>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/edit/copy_words.h"
#include "core/gesture/repeat_offer.h"
#include "ui/window/form_dialog.h"

namespace sillwright {

namespace {

constexpr const char* piecesMimeType = "application/x-sillwright-pieces";

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

// Says that what is on the clipboard is what the workbench of this program holds.
QByteArray stampOf(const Workbench& bench) {
  return QByteArray::number(QCoreApplication::applicationPid()) + ' ' +
         QByteArray::fromStdString(textOf(bench.copied(), LengthStyle::FeetInches));
}

// What a repeat would make of its first piece.
FormReading readingOf(const Job& job, PieceRef piece, const QString& mark, const Repeat& repeat) {
  constexpr std::size_t mostTold = 6;
  const std::vector<double> stations = repeatStations(job, piece, repeat);
  if (stations.empty())
    return {MainWindow::tr("There is no room for another one that way."), false};
  QStringList told;
  for (std::size_t i = 0; i < stations.size() && i < mostTold; ++i)
    told << text(printLength(stations[i], job.units));
  if (stations.size() > mostTold)
    told << MainWindow::tr("… %1").arg(text(printLength(stations.back(), job.units)));
  const Interval whole = repeatRoom(job, piece)->whole;
  const double left = repeat.toward == Side::Right ? whole.to - stations.back() : stations.back() - whole.from;
  return {MainWindow::tr("%1 more like %2, at %3; the last %4 from the end")
              .arg(stations.size())
              .arg(mark, told.join(QStringLiteral(", ")), text(printMeasure(left, job.units))),
          true};
}

} // namespace

void MainWindow::copyPieces() {
  if (!bench_.copySelected())
    return status_->tell(tr("nothing to copy: select pieces of the wall in view"));
  auto* carried = new QMimeData;
  carried->setText(text(textOf(bench_.copied(), bench_.job().units)));
  carried->setData(QLatin1String(piecesMimeType), stampOf(bench_));
  QApplication::clipboard()->setMimeData(carried); // takes it over
  std::vector<std::string> marks;
  for (const Id piece : bench_.copied().pieces)
    marks.push_back(markOf(bench_.job(), {bench_.session().wall(), piece}));
  status_->tell(
      tr("copied: %1 · to paste select the column of an end, or point at a place").arg(text(marksInWords(marks))));
}

void MainWindow::pastePieces() {
  const QMimeData* carried = QApplication::clipboard()->mimeData();
  if (!carried || !carried->hasFormat(QLatin1String(piecesMimeType)))
    return status_->tell(tr("nothing to paste: the clipboard holds no pieces of a wall"));
  if (carried->data(QLatin1String(piecesMimeType)) != stampOf(bench_))
    return status_->tell(tr("nothing to paste: these pieces were copied in another window, copy them in this one"));
  const QPoint pointer = elevation_->mapFromGlobal(QCursor::pos());
  const double station = elevation_->underMouse() && elevation_->rect().contains(pointer)
                             ? elevation_->view().s(elevation_->toPage(pointer).x)
                             : elevation_->middleStation();
  status_->tell(text(bench_.pasteAt(station)));
}

void MainWindow::mirrorPieces() {
  status_->tell(text(bench_.mirrorSelected()));
}

void MainWindow::matchPair() {
  status_->tell(text(bench_.matchPair()));
}

void MainWindow::repeatPieces() {
  bench_.cancel();
  const auto wall = bench_.wall();
  const auto offer = wall ? repeatOffer(bench_.job(), wall->layout, bench_.selectedHere()) : std::nullopt;
  if (!offer)
    return status_->tell(tr("nothing to repeat: select anchor bolts, straps or upright bars"));
  const Job& job = bench_.job();
  const PieceRef piece{wall->layout.wall->id, offer->piece};
  const QString toRight = tr("to the right"), toLeft = tr("to the left");
  const QString mark = text(markOf(job, piece));
  Repeat repeat = offer->repeat;
  const auto read = [&](const std::vector<QString>& typed) -> FormReading {
    const Result<double> spacing = parseLength(typed[0].toStdString(), job.units);
    if (!spacing)
      return {text(spacing.problem().text()), false};
    if (*spacing < tolerance::tapeMark)
      return {tr("The spacing is at least %1.").arg(text(printMeasure(tolerance::tapeMark, job.units))), false};
    repeat.spacing = *spacing;
    repeat.count.reset();
    if (const QString count = typed[1].trimmed(); !count.isEmpty()) {
      bool whole = false;
      repeat.count = count.toInt(&whole);
      if (!whole || *repeat.count < 1)
        return {tr("How many is a whole number, 1 or more; empty is as many as there is room for."), false};
    }
    repeat.toward = typed[2] == toLeft ? Side::Left : Side::Right;
    return readingOf(job, piece, mark, repeat);
  };
  FormDialog form(tr("Repeat %1").arg(mark),
                  {{tr("Spacing, middle to middle"), text(printLength(repeat.spacing, job.units)), {}},
                   {tr("How many"), {}, tr("to the end")},
                   {tr("Which way"), repeat.toward == Side::Left ? toLeft : toRight, {}, {toRight, toLeft}}},
                  tr("Repeat"), read, this);
  if (form.exec() == QDialog::Accepted)
    status_->tell(text(bench_.repeatSelected(repeat)));
}

} // namespace sillwright
