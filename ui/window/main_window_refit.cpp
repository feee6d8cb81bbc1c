// A refit in the window: asked for, solved beside it, shown in the place of section and card as long as it is open.
#include "ui/window/main_window.h"

namespace sillwright {

void MainWindow::connectRefit() {
  RefitDesk& desk = bench_.refitDesk();
  refitRunner_ = new RefitRunner(
      [&desk](std::size_t number, RefitAnswer answer) { desk.answer(number, std::move(answer)); }, this);
  desk.solveBy([this](const RefitQuestion& question) { refitRunner_->ask(question); });
  connect(refit_, &RefitPanel::leaveWanted, this, [&desk] { desk.close(); });
  connect(refit_, &RefitPanel::told, status_, &StatusLine::tell);
  auto* close = new WordButton(tr("close"), nullptr, 12);
  close->setAccessibleName(tr("Put the proposal away"));
  connect(close, &QPushButton::clicked, this, [&desk] { desk.close(); });
  places_.refit->addToHead(close);
}

void MainWindow::refitWall(RefitDesk::Aim aim) {
  bench_.cancel();
  QWidget* now = focusWidget();
  if (now && !places_.refit->isAncestorOf(now))
    beforeRefit_ = now;
  arrangement_->showRuleBook(false);
  bench_.refitDesk().open(aim);
  if (refitShown())
    refit_->list().setFocus(Qt::OtherFocusReason);
}

// The panel stands there as long as something lies on the desk.
void MainWindow::followRefit() {
  const RefitDesk& desk = bench_.refitDesk();
  refit_->follow();
  if (desk.isOpen() == arrangement_->refitOpen())
    return;
  const bool hadKeyboard = focusWidget() && places_.refit->isAncestorOf(focusWidget());
  arrangement_->showRefit(desk.isOpen());
  alignSection();
  if (desk.isOpen())
    return;
  if (hadKeyboard) {
    QWidget* back = beforeRefit_ && beforeRefit_->isVisible() ? beforeRefit_.data() : elevation_;
    back->setFocus(Qt::OtherFocusReason);
  }
  if (desk.closing() == RefitDesk::Closing::Overtaken)
    status_->tell(tr("The proposal of the refit was put away: what it was made for has changed"));
  else if (desk.closing() == RefitDesk::Closing::Accepted)
    status_->tell(tr("Accepted; undo takes all of it back"));
}

} // namespace sillwright
