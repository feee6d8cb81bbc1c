#include "ui/panels/refit_panel.h"

#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QMenu>
#include <QTimer>

#include <algorithm>

#include "core/refit/refit_words.h"
#include "ui/panels/panel_frame.h"
#include "ui/panels/refit_parts.h"

namespace sillwright {

namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

} // namespace

// ---- list -------------------------------------------------------------------------------------------------------

RefitList::RefitList(Workbench& bench, QWidget* parent)
    : TickedList(std::make_unique<RefitRowsModel>(bench), parent), bench_(bench) {
  setAccessibleName(tr("Changes of the refit"));
  setWhatsThis(tr("Space takes a change or refuses it, O takes it alone, Enter selects its piece."));
}

void RefitList::follow() {
  TickedList::follow();
  if (const auto current = bench_.refitDesk().current())
    if (const int row = rows().rowOfChange(*current); row >= 0 && row != currentIndex().row())
      setCurrentIndex(rows().index(row));
}

void RefitList::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QListView::currentChanged(current, previous);
  const RefitLine* line = rows().line(current.row());
  if (line && line->kind == RefitLine::Kind::Change)
    bench_.refitDesk().look(line->at);
}

void RefitList::acceptOnly(int row) {
  if (const RefitLine* line = rows().line(row); line && line->kind == RefitLine::Kind::Change)
    bench_.refitDesk().acceptOnly(line->at);
}

void RefitList::goToRow(int row) {
  const RefitLine* line = rows().line(row);
  if (line && !line->pieces.empty())
    bench_.session().select(Selection(line->pieces.begin(), line->pieces.end()));
}

bool RefitList::clickedBeside(int row, QPointF at) {
  const RefitLine* line = rows().line(row);
  if (line->kind != RefitLine::Kind::Change || !line->ticked || rows().rowCount() < 2 ||
      !RefitRowsDelegate::onlyButton(visualRect(rows().index(row))).contains(at))
    return false;
  acceptOnly(row);
  return true;
}

void RefitList::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_O && event->modifiers() == Qt::NoModifier)
    return acceptOnly(currentIndex().row());
  TickedList::keyPressEvent(event);
}

// By mouse where it points; by key at the current row.
void RefitList::contextMenuEvent(QContextMenuEvent* event) {
  const bool byKey = event->reason() == QContextMenuEvent::Keyboard;
  const QModelIndex index = byKey ? currentIndex() : indexAt(event->pos());
  const RefitLine* line = rows().line(index.row());
  if (!line || line->kind == RefitLine::Kind::Title)
    return;
  setCurrentIndex(index);
  const int row = index.row();
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  if (line->kind == RefitLine::Kind::Change) {
    connect(menu->addAction(line->ticked ? tr("Refuse it: it stays where it is") : tr("Take it back in")),
            &QAction::triggered, this, [this, row] { tickRow(row); });
    QAction* only = menu->addAction(tr("Accept only this one"));
    only->setEnabled(line->ticked && bench_.refitDesk().canAccept());
    connect(only, &QAction::triggered, this, [this, row] { acceptOnly(row); });
  }
  QAction* select = menu->addAction(tr("Select in the drawing"));
  select->setEnabled(!line->pieces.empty());
  connect(select, &QAction::triggered, this, [this, row] { goToRow(row); });
  menu->popup(byKey ? viewport()->mapToGlobal(visualRect(index).center()) : event->globalPos());
}

// ---- panel ------------------------------------------------------------------------------------------------------

RefitPanel::RefitPanel(Workbench& bench, QWidget* parent)
    : QWidget(parent), bench_(bench), words_(wrappedLabel(13, true)), hint_(wrappedLabel(11.5, false)),
      list_(new RefitList(bench)), accept_(new WordButton({})), copy_(new WordButton(tr("Copy the question"))),
      slow_(new QTimer(this)) {
  accept_->setPrimary(true);
  accept_->setObjectName(QStringLiteral("accept"));
  copy_->setObjectName(QStringLiteral("copy"));
  copy_->setAccessibleName(tr("Copy the question to the engineer as text"));
  standTogether(*this, {words_, list_, hint_, {accept_, copy_}}, [this] { Q_EMIT leaveWanted(); });
  slow_->setSingleShot(true);
  slow_->setInterval(patienceOfRefit);
  connect(slow_, &QTimer::timeout, this, &RefitPanel::showWords);
  connect(accept_, &QPushButton::clicked, this, [this] { bench_.refitDesk().accept(); });
  connect(copy_, &QPushButton::clicked, this, &RefitPanel::copyQuestion);
}

void RefitPanel::follow() {
  const RefitDesk& desk = bench_.refitDesk();
  if (!desk.isBusy())
    slow_->stop();
  else if (!slow_->isActive())
    slow_->start();
  list_->follow();
  showWords();
}

static QString noLayoutWords(const std::vector<NoLayout>& conflicts) {
  if (conflicts.size() > 1)
    return RefitPanel::tr("No layout exists, for %1 reasons that have nothing to do with each other.")
        .arg(conflicts.size());
  const std::size_t requirements = conflicts.front().requirements.size();
  return requirements == 1 ? RefitPanel::tr("No layout exists: this requirement cannot be met.")
                           : RefitPanel::tr("No layout exists. These %1 requirements cannot hold together; without "
                                            "any one of them they can.")
                                 .arg(requirements);
}

QString RefitPanel::words() const {
  const RefitDesk& desk = bench_.refitDesk();
  if (!desk.isOpen())
    return {};
  if (desk.isBusy() && !slow_->isActive())
    return tr("Laying out …");
  if (!desk.conflicts().empty())
    return noLayoutWords(desk.conflicts());
  if (const Problem* problem = desk.problem())
    return sentence(text(problem->message));
  const Proposal* proposal = desk.proposal();
  if (!proposal)
    return {};
  if (!proposal->changes.empty())
    return sentence(text(proposalWords(*desk.wall()->layout.wall, *proposal, bench_.job().units)));
  if (!desk.rows().empty())
    return tr("With what was refused, nothing else has to move.");
  const int fixes = desk.wall()->counts.fix;
  return fixes == 0 ? tr("Nothing to do: no piece of this wall has to move.")
                    : tr("Nothing to do: no piece of this wall has to move. What there is to FIX on it no move of "
                         "straps, bolts or rods puts right.");
}

void RefitPanel::showWords() {
  const RefitDesk& desk = bench_.refitDesk();
  words_->setText(words());
  words_->setAccessibleName(words());
  setAccessibleDescription(words());
  const auto ticked =
      std::count_if(desk.rows().begin(), desk.rows().end(), [](const RefitRow& row) { return row.ticked; });
  const bool some = ticked < static_cast<std::ptrdiff_t>(desk.rows().size());
  accept_->setVisible((desk.state() == RefitDesk::State::Proposed && !desk.rows().empty()) ||
                      (!desk.conflicts().empty() && ticked > 0));
  accept_->setEnabled(desk.canAccept());
  accept_->setText(some || !desk.conflicts().empty() ? tr("Accept the %1 ticked").arg(ticked) : tr("Accept all"));
  accept_->setAccessibleName(accept_->text());
  accept_->updateGeometry();
  copy_->setText(desk.conflicts().size() > 1 ? tr("Copy the questions") : tr("Copy the question"));
  copy_->updateGeometry();
  copy_->setVisible(!desk.conflicts().empty());
  hint_->setText(hint());
  hint_->setVisible(!hint_->text().isEmpty());
}

QString RefitPanel::hint() const {
  const RefitDesk& desk = bench_.refitDesk();
  if (desk.conflicts().empty())
    return desk.rows().empty() ? QString()
                               : tr("Without its tick a piece stays where it is, and the rest is laid out again.");
  const bool refused = std::any_of(desk.conflicts().begin(), desk.conflicts().end(), [](const NoLayout& conflict) {
    return std::any_of(conflict.requirements.begin(), conflict.requirements.end(),
                       [](const Requirement& requirement) { return requirement.kind == Requirement::Kind::Stays; });
  });
  return refused
             ? tr("What you refused is among them: tick it again, and it may move. What else may give, and by how "
                  "much, is for the engineer to say.")
             : tr("Click a requirement to select its pieces. What may give, and by how much, is for the engineer to "
                  "say.");
}

void RefitPanel::copyQuestion() {
  const RefitDesk& desk = bench_.refitDesk();
  if (desk.conflicts().empty())
    return;
  QStringList lines;
  for (const NoLayout& conflict : desk.conflicts()) {
    if (!lines.isEmpty())
      lines << QString() << QString();
    for (const std::string& line : questionLines(bench_.job(), desk.wall()->layout, desk.limits(), conflict))
      lines << text(line);
  }
  QApplication::clipboard()->setText(lines.join(QLatin1Char('\n')) + QLatin1Char('\n'));
  Q_EMIT told(desk.conflicts().size() > 1 ? tr("The questions are on the clipboard, as text.")
                                          : tr("The question is on the clipboard, as text."));
}

QString RefitPanel::note() const {
  const auto wall = bench_.refitDesk().wall();
  return wall ? tr("wall %1").arg(text(wall->layout.wall->mark)) : QString();
}

void RefitPanel::setTheme(ThemeName theme) {
  list_->setTheme(theme);
  accept_->setTheme(theme);
  copy_->setTheme(theme);
}

} // namespace sillwright
