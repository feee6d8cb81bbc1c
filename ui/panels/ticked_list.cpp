#include "ui/panels/ticked_list.h"

#include <QKeyEvent>
#include <QMouseEvent>

#include <utility>

namespace sillwright {

TickedList::TickedList(std::unique_ptr<RefitRowsModel> model, QWidget* parent)
    : QListView(parent), model_(std::move(model)) {
  setModel(model_.get());
  setItemDelegate(&delegate_);
  setFrameShape(QFrame::NoFrame);
  setResizeMode(Adjust);
  setVerticalScrollMode(ScrollPerPixel);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setEditTriggers(NoEditTriggers);
}

void TickedList::follow() {
  model_->follow();
  if (currentIndex().isValid() || !hasFocus()) // else the keyboard is waiting for the answer
    return;
  for (int row = 0; row < model_->rowCount() && !currentIndex().isValid(); ++row)
    if (model_->line(row)->kind != RefitLine::Kind::Title)
      setCurrentIndex(model_->index(row));
}

void TickedList::setTheme(ThemeName theme) {
  delegate_.setTheme(theme);
  viewport()->update();
}

void TickedList::resizeEvent(QResizeEvent* event) {
  delegate_.setWidth(viewport()->width());
  QListView::resizeEvent(event);
  scheduleDelayedItemsLayout(); // rows are as high as their words are at this width
}

void TickedList::tickRow(int row) {
  if (const RefitLine* line = model_->line(row); line && line->hasTick())
    model_->setData(model_->index(row), line->ticked ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
}

bool TickedList::clickedBeside(int, QPointF) {
  return false;
}

void TickedList::mouseReleaseEvent(QMouseEvent* event) {
  QListView::mouseReleaseEvent(event);
  const QModelIndex index = indexAt(event->position().toPoint());
  const RefitLine* line = model_->line(index.row());
  if (event->button() != Qt::LeftButton || !line)
    return;
  const QRect tick = RefitRowsDelegate::tickBox(visualRect(index));
  if (line->hasTick() && tick.adjusted(-8, -6, 6, 6).contains(event->position().toPoint()))
    tickRow(index.row());
  else if (!clickedBeside(index.row(), event->position()))
    goToRow(index.row());
}

void TickedList::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space)
    return tickRow(currentIndex().row());
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
    return goToRow(currentIndex().row());
  QListView::keyPressEvent(event);
}

} // namespace sillwright
