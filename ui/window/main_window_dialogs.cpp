// What the window asks and tells in dialogs.
#include "ui/window/main_window.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>

#include <algorithm>
#include <cmath>

#include "core/base/length.h"
#include "core/edit/operations.h"
#include "ui/window/form_dialog.h"

namespace sillwright {

namespace {

QString text(const std::string& words) { return QString::fromStdString(words); }

struct CornerPair {
  Id from, to;
  QString name; // "A/B to C/D": the walls that meet there
  double planned = 0;
  std::optional<double> taped;
};

QString cornerName(const Job& job, Id corner) {
  QStringList marks;
  for (const Id wall : job.walls.atCorner(corner))
    marks << text(markOf(job, {wall, {}}));
  return marks.join(QLatin1Char('/'));
}

// Corners that no wall joins, those taped already in front; not more than a list can show.
std::vector<CornerPair> diagonalsOf(const Job& job) {
  constexpr std::size_t most = 60;
  std::vector<CornerPair> pairs;
  const std::vector<Corner>& corners = *job.corners;
  for (std::size_t i = 0; i < corners.size(); ++i)
    for (std::size_t k = i + 1; k < corners.size() && pairs.size() < most; ++k) {
      const Id a = corners[i].id, b = corners[k].id;
      const auto joins = [&](Id wall) {
        const WallLine* line = job.walls.find(wall);
        return line && (line->startCorner == b || line->endCorner == b);
      };
      const std::vector<Id> walls = job.walls.atCorner(a);
      if (walls.empty() || job.walls.atCorner(b).empty() || std::any_of(walls.begin(), walls.end(), joins))
        continue;
      CornerPair pair{a, b, MainWindow::tr("%1 to %2").arg(cornerName(job, a), cornerName(job, b)),
                      std::hypot(corners[k].at.x - corners[i].at.x, corners[k].at.y - corners[i].at.y), {}};
      for (const Diagonal& taped : *job.diagonals)
        if ((taped.from == a && taped.to == b) || (taped.from == b && taped.to == a))
          pair.taped = taped.measured;
      pairs.push_back(std::move(pair));
    }
  std::stable_sort(pairs.begin(), pairs.end(),
                   [](const CornerPair& a, const CornerPair& b) { return a.taped.has_value() > b.taped.has_value(); });
  return pairs;
}

} // namespace

void MainWindow::tapeDiagonal() {
  bench_.cancel();
  const LengthStyle units = bench_.job().units;
  const std::vector<CornerPair> pairs = diagonalsOf(bench_.job());
  if (pairs.empty())
    return files_->tell(tr("No two corners lie across from each other."), Problem{});
  std::vector<QString> names;
  for (const CornerPair& pair : pairs)
    names.push_back(pair.name);
  const CornerPair* chosen = &pairs.front();
  std::optional<double> measured;
  const auto read = [&](const std::vector<QString>& typed) -> FormReading {
    for (const CornerPair& pair : pairs)
      if (pair.name == typed[0])
        chosen = &pair;
    const QString planned = text(printLength(chosen->planned, units));
    measured.reset();
    if (typed[1].trimmed().isEmpty())
      return {chosen->taped ? tr("On the plan it is %1. With nothing typed the measure is taken away.").arg(planned)
                            : tr("On the plan it is %1. Type what the tape says.").arg(planned),
              chosen->taped.has_value()};
    const Result<double> length = parseLength(typed[1].toStdString(), units);
    if (!length)
      return {text(length.problem().text()), false};
    if (*length <= 0 || *length > 12000)
      return {tr("A diagonal is longer than nothing and shorter than 1,000 feet."), false};
    measured = *length;
    const double off = *length - chosen->planned;
    return {tr("%1 as taped, %2 on the plan: %3 %4")
                .arg(text(printLength(*length, units)), planned, text(printMeasure(std::abs(off), units)),
                     off < 0 ? tr("short") : tr("long")),
            true};
  };
  const QString now = chosen->taped ? text(printLength(*chosen->taped, units)) : QString();
  FormDialog form(tr("Diagonal as taped on the forms"),
                  {{tr("Corners, by the walls that meet there"), names.front(), {}, names},
                   {tr("Taped, outside to outside"), now, text(printLength(chosen->planned, units))}},
                  tr("Set"), read, this);
  if (form.exec() == QDialog::Accepted)
    bench_.session().apply(sillwright::tapeDiagonal(bench_.session().base(), chosen->from, chosen->to, measured),
                           tr("Set a diagonal as taped").toStdString());
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
