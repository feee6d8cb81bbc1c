// What the window does for the plan.
#include "ui/window/main_window.h"

#include "core/base/length.h"
#include "core/edit/plan_check.h"
#include "core/edit/plan_edits.h"
#include "ui/window/form_dialog.h"

namespace sillwright {

namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

} // namespace

void MainWindow::makePlanHead() {
  QAction* draw = (*actions_)["draw-walls"];
  auto* button = new WordButton(tr("draw walls"), nullptr, 12);
  button->setCheckable(true);
  button->setFocusPolicy(Qt::TabFocus); // the keyboard goes to the plan, where lengths are typed
  button->setToolTip(draw->toolTip());
  connect(button, &QPushButton::clicked, draw, &QAction::trigger);
  connect(draw, &QAction::changed, button, [draw, button] { button->setChecked(draw->isChecked()); });
  places_.plan->addToHead(button);
}

void MainWindow::drawWalls() {
  if (bench_.pen())
    return bench_.putPen();
  arrangement_->raisePanel(*places_.plan);
  plan_->setFocus();
  bench_.takePen();
}

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
    return {
        tr("%1 by %2, outside to outside").arg(text(printLength(sides[0], units)), text(printLength(sides[1], units))),
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
  const Job base = bench_.session().base();
  const auto added = addWalls(base, corners, true, wallToDraw(base, bench_.session().wall()));
  if (!added)
    return files_->tell(tr("The walls were not added."), added.problem());
  if (const auto clash = clashIn(added->job, added->walls))
    return files_->tell(tr("The walls were not added."), Problem{"", sillwright::words(added->job, *clash)});
  bench_.session().apply(added->job, tr("Add a rectangle of walls").toStdString());
}

} // namespace sillwright
