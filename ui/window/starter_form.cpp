#include "ui/window/starter_form.h"

#include <QPaintEvent>

#include "core/base/length.h"
#include "core/drawing/elevation.h"
#include "core/drawing/flag_words.h"
#include "ui/canvas/canvas.h"
#include "ui/panels/look.h"

namespace sillwright {

namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

std::shared_ptr<const CheckedWall> checkedOf(const Started& started) {
  auto wall = std::make_shared<CheckedWall>();
  wall->layout = layOut(started.job, started.job.walls.findPointer(started.wall));
  wall->findings = checkWall(wall->layout, resolve(*started.job.limits));
  wall->counts = countsOf(wall->findings);
  return wall;
}

QString nameOf(const Starter& starter, const std::string& key) {
  for (const StarterLength& asked : starter.lengths)
    if (asked.key == key)
      return text(asked.name);
  return text(key);
}

// "4 straps, 6 bolts on wall A; nothing to FIX, 2 to ASK, 3 to WATCH"
QString summary(const Started& started, const Counts& counts) {
  const WallLine& wall = *started.job.walls.find(started.wall);
  return StarterPicture::tr("Wall %1: %2 straps, %3 bolts. Nothing to FIX, %4 to ASK, %5 to WATCH.")
      .arg(text(wall.mark))
      .arg(wall.straps.size())
      .arg(wall.bolts.size())
      .arg(counts.ask)
      .arg(counts.watch);
}

} // namespace

StarterPicture::StarterPicture(ThemeName theme, QWidget* parent) : QWidget(parent), theme_(theme) {
  setMinimumSize(420, 220);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  setAccessibleName(tr("Picture of the wall that these lengths make"));
}

void StarterPicture::show(std::optional<Started> started) {
  started_ = std::move(started);
  wall_ = started_ ? checkedOf(*started_) : nullptr;
  update();
}

void StarterPicture::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), colourOf(theme_, Ink::Paper));
  if (!wall_)
    return;
  ElevationInput input;
  input.job = &started_->job;
  input.wall = wall_.get();
  input.window = {0, 0, width() / pixelsPerPoint, height() / pixelsPerPoint};
  input.view = fitElevation(wall_->layout, input.window, false, wall_->layout.wall->wallHeight);
  input.labels = false;
  input.words = flagWords;
  PaintStyle style;
  style.theme = theme_;
  style.scale = pixelsPerPoint;
  paint(painter, drawElevation(input).drawing, style);
}

std::optional<Started> askStarter(const Job& job, const Starter& starter, Id onto, ThemeName theme, QWidget* parent) {
  const std::size_t first = onto ? kOutlineLengths : 0;
  std::vector<FormLine> lines;
  for (std::size_t i = first; i < starter.lengths.size(); ++i) {
    const StarterLength& asked = starter.lengths[i];
    lines.push_back(
        {text(asked.name), asked.usual ? text(printLength(*asked.usual, job.units)) : QString(), text(asked.without)});
  }
  std::optional<Started> made;
  auto* picture = new StarterPicture(theme);
  const auto read = [&](const std::vector<QString>& typed) -> FormReading {
    made.reset();
    picture->show(std::nullopt);
    std::vector<std::optional<double>> lengths(starter.lengths.size());
    for (std::size_t i = 0; i < typed.size(); ++i) {
      if (typed[i].trimmed().isEmpty())
        continue;
      const Result<double> length = parseLength(typed[i].toStdString(), job.units);
      if (!length)
        return {StarterPicture::tr("%1: %2").arg(lines[i].name, text(length.problem().message)), false};
      lengths[first + i] = *length;
    }
    Result<Started> started = start(job, starter, lengths, onto);
    if (!started)
      return {
          StarterPicture::tr("%1: %2").arg(nameOf(starter, started.problem().place), text(started.problem().message)),
          false};
    made = *std::move(started);
    picture->show(made);
    return {summary(*made, checkedOf(*made)->counts), true};
  };
  FormDialog form(text(starter.title), lines, StarterPicture::tr("Lay out"), read, parent);
  form.setPicture(picture);
  return form.exec() == QDialog::Accepted ? made : std::nullopt;
}

} // namespace sillwright
