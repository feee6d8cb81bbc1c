// Refits in the window: asked for, solved beside it, shown in the place of section and card as long as one is open. A
// wall of the list of all walls is looked at in front of the list.
#include "ui/window/main_window.h"

namespace sillwright {

void MainWindow::connectRefit() {
  RefitDesk& desk = bench_.refitDesk();
  JobRefitDesk& all = bench_.jobRefitDesk();
  refitRunner_ = new RefitRunner(
      [&desk](std::size_t number, RefitAnswer answer) { desk.answer(number, std::move(answer)); }, this);
  desk.solveBy([this](const RefitQuestion& question) { refitRunner_->ask(question); });
  jobRefitRunner_ = new JobRefitRunner(
      [&all](std::size_t number, std::vector<WallRefit> found) { all.answer(number, std::move(found)); },
      [&all](std::size_t number, std::size_t done) { all.progress(number, done); }, this);
  all.solveBy([this](const JobRefitQuestion& question) { jobRefitRunner_->ask(question); });
  connect(refit_, &RefitPanel::leaveWanted, this, &MainWindow::putRefitAway);
  connect(refit_, &RefitPanel::told, status_, &StatusLine::tell);
  connect(jobRefit_, &JobRefitPanel::leaveWanted, this, &MainWindow::putRefitAway);
  connect(jobRefit_, &JobRefitPanel::againWanted, this, &MainWindow::refitAllWalls);
  leaveRefit_ = new WordButton({}, nullptr, 12);
  connect(leaveRefit_, &QPushButton::clicked, this, &MainWindow::putRefitAway);
  places_.refit->addToHead(leaveRefit_);
}

void MainWindow::startRefit() {
  bench_.cancel();
  QWidget* now = focusWidget();
  if (now && !places_.refit->isAncestorOf(now))
    beforeRefit_ = now;
  arrangement_->showRuleBook(false);
}

void MainWindow::refitWall(RefitDesk::Aim aim) {
  startRefit();
  bench_.refitDesk().open(aim);
  if (refitShown())
    refit_->list().setFocus(Qt::OtherFocusReason);
}

void MainWindow::refitAllWalls() {
  startRefit();
  bench_.refitDesk().close();
  bench_.jobRefitDesk().open();
  if (jobRefitShown()) {
    jobRefit_->list().setFocus(Qt::OtherFocusReason);
    jobRefit_->list().follow(); // what is there already has a current row now
  }
}

bool MainWindow::canAcceptRefit() const {
  const RefitDesk& desk = bench_.refitDesk();
  return desk.isOpen() ? desk.canAccept() : bench_.jobRefitDesk().canAccept();
}

void MainWindow::acceptRefit() {
  if (bench_.refitDesk().isOpen())
    bench_.refitDesk().accept();
  else
    bench_.jobRefitDesk().accept();
}

void MainWindow::putRefitAway() {
  if (bench_.refitDesk().isOpen())
    bench_.refitDesk().close();
  else
    bench_.jobRefitDesk().close();
}

// The panel stands there as long as something lies on a desk.
void MainWindow::followRefit() {
  const bool one = bench_.refitDesk().isOpen(), all = bench_.jobRefitDesk().isOpen();
  refit_->follow();
  const bool hadKeyboard = focusWidget() && places_.refit->isAncestorOf(focusWidget());
  QWidget* const front = all && !one ? static_cast<QWidget*>(jobRefit_) : refit_;
  if (one || all)
    if (refitPlace_->currentWidget() != front || !refitPlace_->focusProxy()) {
      refitPlace_->setCurrentWidget(front);
      refitPlace_->setFocusProxy(front);
      if (hadKeyboard)
        front->setFocus(Qt::OtherFocusReason);
    }
  leaveRefit_->setText(one && all ? tr("all walls") : tr("close"));
  leaveRefit_->setAccessibleName(one && all ? tr("Back to the list of all walls") : tr("Put the proposal away"));
  leaveRefit_->updateGeometry();
  if ((one || all) != arrangement_->refitOpen()) {
    arrangement_->showRefit(one || all);
    alignSection();
    if (hadKeyboard && !one && !all) {
      QWidget* back = beforeRefit_ && beforeRefit_->isVisible() ? beforeRefit_.data() : elevation_;
      back->setFocus(Qt::OtherFocusReason);
    }
  }
  tellHowRefitEnded();
}

void MainWindow::tellHowRefitEnded() {
  const RefitDesk& desk = bench_.refitDesk();
  const JobRefitDesk& all = bench_.jobRefitDesk();
  const bool oneEnded = refitWasOpen_ && !desk.isOpen(), allEnded = jobRefitWasOpen_ && !all.isOpen();
  refitWasOpen_ = desk.isOpen();
  jobRefitWasOpen_ = all.isOpen();
  if ((oneEnded && desk.closing() == RefitDesk::Closing::Overtaken) ||
      (allEnded && all.closing() == JobRefitDesk::Closing::Overtaken))
    status_->tell(tr("The proposal of the refit was put away: what it was made for has changed"));
  else if (oneEnded && desk.closing() == RefitDesk::Closing::Accepted)
    status_->tell(tr("Accepted; undo takes all of it back"));
  else if (allEnded && all.closing() == JobRefitDesk::Closing::Cancelled)
    status_->tell(tr("The refit of all walls was cancelled: nothing has changed"));
  else if (allEnded && all.closing() == JobRefitDesk::Closing::Accepted)
    status_->tell((all.accepted() == 1 ? tr("1 wall accepted; undo takes all of it back")
                                       : tr("%1 walls accepted; undo takes all of it back").arg(all.accepted())) +
                  (all.leftOut() == 0 ? QString() : tr(" · %1 left out: out of date").arg(all.leftOut())));
}

} // namespace sillwright
