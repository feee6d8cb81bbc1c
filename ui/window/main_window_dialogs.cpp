// What the window asks and tells in dialogs.
#include "ui/window/main_window.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>

#include "core/base/length.h"
#include "core/edit/operations.h"
#include "ui/window/form_dialog.h"

namespace sillwright {

namespace {

QString text(const std::string& words) { return QString::fromStdString(words); }

} // namespace

void MainWindow::addRectangle() {
  bench_.cancel();
  const LengthStyle units = bench_.job().units;
  std::vector<double> sides;
  // Says how each length is read: 20 alone is 20 inches, and that is seen before there is a wall.
  const auto read = [&](const std::vector<QString>& typed) -> FormReading {
    sides.clear();
    for (const QString& each : typed) {
      if (each.trimmed().isEmpty())
        return {tr("A plain number is inches: 20' is twenty feet."), false};
      const Result<double> length = parseLength(each.toStdString(), units);
      if (!length)
        return {text(length.problem().text()), false};
      if (*length <= 0)
        return {tr("A wall is longer than nothing."), false};
      sides.push_back(*length);
    }
    return {tr("%1 by %2, outside to outside").arg(text(printLength(sides[0], units)), text(printLength(sides[1], units))),
            true};
  };
  FormDialog form(tr("Add a rectangle of walls"),
                  {{tr("Front, outside to outside"), {}, tr("24' or 24'-6 1/2\"")},
                   {tr("Side, outside to outside"), {}, tr("28' or 336")}},
                  tr("Add walls"), read, this);
  if (form.exec() != QDialog::Accepted || sides.size() != 2)
    return;
  const auto bounds = planBounds(bench_.job());
  const double x = bounds ? bounds->second.x + 120 : 0; // beside what is there
  const double wide = sides[0], deep = sides[1];
  const std::vector<Point2> corners{{x, 0}, {x + wide, 0}, {x + wide, deep}, {x, deep}};
  const Result<Job> added = addOutline(bench_.session().base(), corners, WallLine{});
  if (added)
    bench_.session().apply(*added, tr("Add a rectangle of walls").toStdString());
  else
    files_->tell(tr("The walls were not added."), added.problem());
}

void MainWindow::editTitleBlock() {
  bench_.cancel();
  const TitleBlock now = bench_.job().title;
  FormDialog form(tr("Title block of the sheets"),
                  {{tr("Job"), text(now.job), tr("Boat shed, Heron Slip")},
                   {tr("Address"), text(now.address), {}},
                   {tr("Laid out by"), text(now.by), {}},
                   {tr("Approved plans"), text(now.planSet), tr("set of 2 March 2031")},
                   {tr("Note"), text(now.note), {}}},
                  tr("Set"), {}, this);
  if (form.exec() != QDialog::Accepted)
    return;
  const std::vector<QString> typed = form.typed();
  TitleBlock title = now;
  std::string* const fields[] = {&title.job, &title.address, &title.by, &title.planSet, &title.note};
  for (std::size_t i = 0; i < typed.size(); ++i)
    *fields[i] = typed[i].trimmed().toStdString();
  if (title != now)
    bench_.session().apply(setTitle(bench_.session().base(), title), tr("Set the title block").toStdString());
}

void MainWindow::writeSheet() {
  const QString name = QFileInfo(files_->path()).completeBaseName();
  const QString path = QFileDialog::getSaveFileName(this, tr("Layout sheet"),
                                                    (name.isEmpty() ? tr("layout") : name) + QStringLiteral(".pdf"),
                                                    tr("PDF (*.pdf)"));
  if (path.isEmpty())
    return;
  if (const auto problem = services_.writeSheet(bench_.job(), path.toStdString(), paper_.toStdString()))
    files_->tell(tr("The layout sheet was not written."), *problem);
  else
    status_->tell(tr("layout sheet written: %1").arg(path));
}

void MainWindow::showKeys() {
  QString rows;
  for (const ActionRow& row : actionTable())
    if (!row.keys.isEmpty())
      rows += QStringLiteral("<tr><td>%1&nbsp;&nbsp;&nbsp;</td><td>%2</td></tr>")
                  .arg(row.keys.first().toString(QKeySequence::NativeText).toHtmlEscaped(),
                       Actions::tr(row.text).toHtmlEscaped());
  QMessageBox::information(
      this, tr("Keys"),
      tr("<p>On a canvas: arrows move 1/16\", with Shift 1/8\", with Ctrl 1\". Tab goes from piece to piece. Type a "
         "length and press Enter to set the distance from the hook. Esc puts back what is in hand. Alt: no snapping. "
         "The wheel zooms, the middle button or Space pans.</p><table>%1</table>")
          .arg(rows));
}

void MainWindow::explainWords() {
  const std::pair<QString, QString> rows[] = {
      {tr("FIX"), tr("outside a requirement: put it right before the pour")},
      {tr("ASK"), tr("allowed only with a word from the engineer or the plans")},
      {tr("WATCH"), tr("inside the requirement, but closer than is aimed for")},
      {tr("hook point"), tr("where the tape is hooked: stations of a wall count from there, its left end from outside")},
      {tr("joint"), tr("the line of a strap that belongs on the pour line")},
      {tr("leeway"), tr("how far framing may shift a column")},
      {tr("plf"), tr("pounds on a foot of wall, from the plans")},
      {tr("borrowed"), tr("a published number for something like it; here it is an aim, not a requirement")},
      {tr("from memory"), tr("a number that was not looked up for this program; it never gives FIX")},
      {tr("sample"), tr("invented hardware: enter your own before you build from a sheet")}};
  QString table;
  for (const auto& [name, meaning] : rows)
    table += QStringLiteral("<tr><td><b>%1</b>&nbsp;&nbsp;&nbsp;</td><td>%2</td></tr>").arg(name, meaning);
  QMessageBox::information(this, tr("Words"), QStringLiteral("<table>%1</table>").arg(table));
}

void MainWindow::showAbout() {
  QMessageBox::about(this, tr("About Sillwright"),
                     tr("<p><b>Sillwright</b> lays out hold-down hardware on foundation forms and checks where it "
                        "stands.</p><p>It compares stations with limits and shows what falls short. It does not "
                        "approve anything: the plans, the engineer of record and the inspector decide.</p>"));
}

} // namespace sillwright
