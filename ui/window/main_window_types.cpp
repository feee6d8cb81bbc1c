// Hardware and marks in the window: how the panel is reached and left.
#include "ui/window/main_window.h"

namespace sillwright {

void MainWindow::connectTypes() {
  connect(card_, &Card::typeWanted, this, &MainWindow::openTypes);
  connect(types_, &TypesPanel::leaveWanted, this, &MainWindow::leaveTypes);
  auto* close = new WordButton(tr("close"), nullptr, 12);
  close->setAccessibleName(tr("Close hardware and marks"));
  connect(close, &QPushButton::clicked, this, &MainWindow::leaveTypes);
  places_.types->addToHead(close);
}

void MainWindow::openTypes(Id type) {
  bench_.cancel();
  QWidget* now = focusWidget();
  if (now && !places_.types->isAncestorOf(now))
    beforeTypes_ = now;
  if (!typesShown())
    arrangement_->showTypes(true);
  types_->follow();
  if (type)
    types_->choose(type);
  types_->focusList();
  actions_->update();
}

void MainWindow::leaveTypes() {
  elevation_->setFocus(Qt::OtherFocusReason); // what is half typed is entered before its field goes
  arrangement_->showTypes(false);
  alignSection();
  if (beforeTypes_ && beforeTypes_->isVisible())
    beforeTypes_->setFocus(Qt::OtherFocusReason);
  else
    elevation_->setFocus(Qt::OtherFocusReason);
  actions_->update();
}

} // namespace sillwright
