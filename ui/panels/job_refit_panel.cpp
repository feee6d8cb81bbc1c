#include "ui/panels/job_refit_panel.h"

#include <QContextMenuEvent>
#include <QLabel>
#include <QMenu>
#include <QTimer>

#include <algorithm>

#include "ui/panels/job_refit_rows.h"
#include "ui/panels/panel_frame.h"
#include "ui/panels/refit_parts.h"

namespace sillwright {

// ---- list -------------------------------------------------------------------------------------------------------

JobRefitList::JobRefitList(Workbench& bench, QWidget* parent)
    : TickedList(std::make_unique<JobRefitRowsModel>(bench), parent), bench_(bench) {
  setAccessibleName(tr("Walls of the refit"));
  setWhatsThis(tr("Space takes a wall or leaves it out, Enter shows what moves on it."));
}

void JobRefitList::goToRow(int row) {
  if (const RefitLine* line = rows().line(row))
    bench_.lookAtListed(line->at);
}

// By mouse where it points; by key at the current row.
void JobRefitList::contextMenuEvent(QContextMenuEvent* event) {
  const bool byKey = event->reason() == QContextMenuEvent::Keyboard;
  const QModelIndex index = byKey ? currentIndex() : indexAt(event->pos());
  const RefitLine* line = rows().line(index.row());
  if (!line)
    return;
  setCurrentIndex(index);
  const int row = index.row();
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  if (line->hasTick())
    connect(menu->addAction(line->ticked ? tr("Leave this wall out") : tr("Take this wall in")), &QAction::triggered,
            this, [this, row] { tickRow(row); });
  connect(menu->addAction(tr("Show what moves on it")), &QAction::triggered, this, [this, row] { goToRow(row); });
  menu->popup(byKey ? viewport()->mapToGlobal(visualRect(index).center()) : event->globalPos());
}

// ---- panel ------------------------------------------------------------------------------------------------------

JobRefitPanel::JobRefitPanel(Workbench& bench, QWidget* parent)
    : QWidget(parent), bench_(bench), words_(wrappedLabel(13, true)), hint_(wrappedLabel(11.5, false)),
      list_(new JobRefitList(bench)), accept_(new WordButton({})), again_(new WordButton(tr("Lay out again"))),
      cancel_(new WordButton(tr("Cancel"))), slow_(new QTimer(this)) {
  accept_->setPrimary(true);
  accept_->setObjectName(QStringLiteral("accept"));
  again_->setObjectName(QStringLiteral("again"));
  again_->setAccessibleName(tr("Lay out all walls again"));
  cancel_->setObjectName(QStringLiteral("cancel"));
  cancel_->setAccessibleName(tr("Cancel the refit of all walls"));
  standTogether(*this, {words_, list_, hint_, {accept_, again_, cancel_}}, [this] { Q_EMIT leaveWanted(); });
  slow_->setSingleShot(true);
  slow_->setInterval(patienceOfRefit);
  connect(slow_, &QTimer::timeout, this, [this] {
    late_ = true;
    showWords();
  });
  connect(accept_, &QPushButton::clicked, this, [this] { bench_.jobRefitDesk().accept(); });
  connect(again_, &QPushButton::clicked, this, &JobRefitPanel::againWanted);
  connect(cancel_, &QPushButton::clicked, this, &JobRefitPanel::leaveWanted);
}

void JobRefitPanel::follow() {
  const JobRefitDesk& desk = bench_.jobRefitDesk();
  if (!desk.isBusy()) {
    slow_->stop();
    late_ = false;
  } else if (!late_ && !slow_->isActive()) {
    slow_->start();
  }
  list_->follow();
  showWords();
}

bool JobRefitPanel::outOfDate() const {
  const auto& rows = bench_.jobRefitDesk().rows();
  return std::any_of(rows.begin(), rows.end(),
                     [](const JobRefitRow& row) { return row.now == JobRefitRow::Now::Changed; });
}

QString JobRefitPanel::words() const {
  const JobRefitDesk& desk = bench_.jobRefitDesk();
  if (!desk.isOpen())
    return {};
  if (desk.isBusy())
    return late_ ? tr("Laying out: %1 of %2 walls.").arg(desk.done()).arg(desk.asked()) : QString();
  const auto& rows = desk.rows();
  if (rows.empty())
    return tr("Nothing to do: no piece of any wall has to move.");
  const auto proposed =
      std::count_if(rows.begin(), rows.end(), [](const JobRefitRow& row) { return row.proposal() != nullptr; });
  const auto without = static_cast<std::ptrdiff_t>(rows.size()) - proposed;
  QStringList parts;
  if (proposed > 0)
    parts << (proposed == 1 ? tr("1 wall can be laid out again.")
                            : tr("%1 walls can be laid out again.").arg(proposed));
  if (without > 0)
    parts << (without == 1 ? tr("1 has no layout.") : tr("%1 have no layout.").arg(without));
  return parts.join(QLatin1Char(' '));
}

QString JobRefitPanel::hint() const {
  const JobRefitDesk& desk = bench_.jobRefitDesk();
  if (!desk.isOpen() || desk.isBusy())
    return {};
  QStringList parts;
  if (desk.needNothing() > 0)
    parts << (desk.needNothing() == 1 ? tr("1 wall needs nothing.")
                                      : tr("%1 walls need nothing.").arg(desk.needNothing()));
  if (!desk.rows().empty())
    parts << tr("A wall without its tick is left out. Click one, or press Enter, to see what moves on it.");
  return parts.join(QLatin1Char(' '));
}

void JobRefitPanel::showWords() {
  const JobRefitDesk& desk = bench_.jobRefitDesk();
  words_->setText(words());
  words_->setAccessibleName(words());
  setAccessibleDescription(words());
  hint_->setText(hint());
  hint_->setVisible(!hint_->text().isEmpty());
  const auto& rows = desk.rows();
  const auto proposed = static_cast<std::size_t>(
      std::count_if(rows.begin(), rows.end(), [](const JobRefitRow& row) { return row.mayBeTicked(); }));
  accept_->setVisible(proposed > 0);
  accept_->setEnabled(desk.canAccept());
  accept_->setText(desk.ticked() == rows.size() ? tr("Accept all") : tr("Accept the %1 ticked").arg(desk.ticked()));
  accept_->setAccessibleName(accept_->text());
  accept_->updateGeometry();
  again_->setVisible(outOfDate());
  cancel_->setVisible(desk.isBusy() && late_);
}

QString JobRefitPanel::note() const {
  return tr("all walls");
}

void JobRefitPanel::setTheme(ThemeName theme) {
  list_->setTheme(theme);
  for (WordButton* button : {accept_, again_, cancel_})
    button->setTheme(theme);
}

} // namespace sillwright
