// What the window does for the plan.
#include "ui/window/main_window.h"

#include <QMenu>
#include <QMenuBar>

#include <cmath>

#include "core/base/length.h"
#include "core/edit/plan_check.h"
#include "core/edit/plan_edits.h"
#include "core/edit/wall_edits.h"
#include "ui/window/form_dialog.h"

namespace sillwright {

namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

struct TypedLength {
  std::optional<double> value;
  FormReading reading; // why there is none
};

// The wall that a form is about, with the job it stands in.
struct AskedAbout {
  Job base;
  std::shared_ptr<const CheckedWall> wall;
  Id id() const { return wall->layout.wall->id; }
  const WallLine& line() const { return *wall->layout.wall; }
  QString mark() const { return text(line().mark); }
  QString length(double inches) const { return text(printLength(inches, base.units)); }
};

// Nothing without a wall in view; what is in hand is let go of.
std::optional<AskedAbout> askedAbout(Workbench& bench) {
  bench.cancel();
  if (auto wall = bench.wall())
    return AskedAbout{bench.session().base(), std::move(wall)};
  return std::nullopt;
}

TypedLength lengthOf(const QString& typed, LengthStyle units, const QString& whatFor) {
  if (typed.trimmed().isEmpty())
    return {{}, {whatFor, false}};
  const Result<double> length = parseLength(typed.toStdString(), units);
  if (!length)
    return {{}, {text(length.problem().text()), false}};
  return {*length, {}};
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
  plan_->setContextMenuPolicy(Qt::CustomContextMenu);
  connect(plan_, &QWidget::customContextMenuRequested, this, &MainWindow::showPlanMenu);
}

// Of what lies under the pointer: first what can be done just there.
void MainWindow::showPlanMenu(QPoint at) {
  const std::optional<HitArea> hit = bench_.pen() ? std::nullopt : plan_->hitAt(at);
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  menu->setFont(menuBar()->font());
  if (hit) {
    bench_.session().show(hit->piece.wall);
    bench_.session().select({{hit->piece.wall, {}}});
  }
  if (hit && hit->part == HitArea::Part::Corner && hit->piece.piece) {
    QStringList marks;
    for (const Id wall : bench_.job().walls.atCorner(hit->piece.piece))
      marks << text(markOf(bench_.job(), {wall, {}}));
    const QAction* take = menu->addAction(tr("Take the corner of %1 away").arg(marks.join(QLatin1Char('/'))));
    connect(take, &QAction::triggered, this, [this, corner = hit->piece.piece] {
      if (const auto problem = bench_.takeCornerAway(corner))
        status_->tell(tr("the corner stays: %1").arg(text(problem->message)));
    });
  } else if (hit) {
    const double station = std::round(plan_->pointerAt(at, {}).at.s);
    const QAction* split = menu->addAction(
        tr("Split wall %1 here, at %2")
            .arg(text(markOf(bench_.job(), {hit->piece.wall, {}})), text(printLength(station, bench_.job().units))));
    connect(split, &QAction::triggered, this, [this, wall = hit->piece.wall, station] {
      if (const auto problem = bench_.splitWall(wall, station))
        status_->tell(tr("the wall was not split: %1").arg(text(problem->message)));
    });
    for (const char* id : {"split-wall", "move-wall", "take-corner", "remove"})
      menu->addAction((*actions_)[id]);
  }
  menu->addSeparator();
  for (const char* id : {"draw-walls", "fit-selection", "fit"})
    menu->addAction((*actions_)[id]);
  menu->popup(plan_->mapToGlobal(at));
}

void MainWindow::splitWall() {
  const auto asked = askedAbout(bench_);
  if (!asked)
    return;
  const double length = asked->wall->layout.length;
  double station = 0;
  const auto read = [&](const std::vector<QString>& typed) -> FormReading {
    const TypedLength at =
        lengthOf(typed[0], asked->base.units, tr("Where, from the hook: its left end seen from outside."));
    if (!at.value)
      return at.reading;
    station = *at.value;
    const auto split = sillwright::splitWall(asked->base, asked->id(), station);
    if (!split)
      return {text(split.problem().message), false};
    return {tr("%1 on the left, %2 on the right").arg(asked->length(station), asked->length(length - station)), true};
  };
  FormDialog form(tr("Split wall %1, %2").arg(asked->mark(), asked->length(length)),
                  {{tr("At, from the left end"), {}, asked->length(std::round(length / 2))}}, tr("Split"), read, this);
  if (form.exec() == QDialog::Accepted)
    bench_.splitWall(asked->id(), station);
}

void MainWindow::moveWall() {
  const auto asked = askedAbout(bench_);
  if (!asked)
    return;
  const Job& base = asked->base;
  double out = 0;
  const auto read = [&](const std::vector<QString>& typed) -> FormReading {
    const TypedLength by = lengthOf(typed[1], base.units, tr("How far. The walls beside it become longer or shorter."));
    if (!by.value)
      return by.reading;
    out = typed[0] == tr("out") ? *by.value : -*by.value;
    const auto moved = sillwright::moveWall(base, asked->id(), out);
    if (!moved)
      return {text(moved.problem().message), false};
    QStringList lengths;
    for (const Id each : wallsAround(*moved, std::vector<Id>{asked->line().startCorner, asked->line().endCorner}))
      if (const WallLine& line = *moved->walls.find(each); wallLength(*moved, line) != wallLength(base, line))
        lengths << tr("wall %1 %2").arg(text(line.mark), asked->length(wallLength(*moved, line)));
    return {lengths.join(QStringLiteral(", ")), out != 0};
  };
  FormDialog form(tr("Move wall %1").arg(asked->mark()),
                  {{tr("Which way"), tr("out"), {}, {tr("out"), tr("in")}}, {tr("How far"), {}, tr("2' or 6 1/2")}},
                  tr("Move"), read, this);
  if (form.exec() != QDialog::Accepted)
    return;
  if (const auto problem = bench_.moveWall(asked->id(), out))
    status_->tell(tr("the wall stays: %1").arg(text(problem->message)));
}

void MainWindow::takeCornerAway() {
  const auto asked = askedAbout(bench_);
  if (!asked)
    return;
  const Id corners[] = {asked->line().startCorner, asked->line().endCorner};
  const QString names[] = {tr("left end"), tr("right end")};
  Id corner;
  const auto read = [&](const std::vector<QString>& typed) -> FormReading {
    corner = typed[0] == names[0] ? corners[0] : corners[1];
    const auto joined = joinAtCorner(asked->base, corner);
    return joined ? FormReading{tr("The two walls there become one."), true}
                  : FormReading{text(joined.problem().message), false};
  };
  FormDialog form(tr("Take a corner of wall %1 away").arg(asked->mark()),
                  {{tr("Which, seen from outside"), names[1], {}, {names[0], names[1]}}}, tr("Take away"), read, this);
  if (form.exec() != QDialog::Accepted)
    return;
  if (const auto problem = bench_.takeCornerAway(corner))
    status_->tell(tr("the corner stays: %1").arg(text(problem->message)));
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
