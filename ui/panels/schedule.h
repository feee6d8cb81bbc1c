// The wall-end schedule of the job: one row a panel end, typed in place, sorted, filtered, copied to and pasted from a
// spreadsheet. Choosing a row goes to that end.
#pragma once

#include <QTableView>

#include "core/drawing/theme.h"
#include "core/gesture/workbench.h"
#include "ui/panels/schedule_delegate.h"
#include "ui/panels/schedule_model.h"

class QLabel;
class QLineEdit;

namespace sillwright {

class Schedule : public QTableView {
  Q_OBJECT

public:
  explicit Schedule(Workbench& bench, QWidget* parent = nullptr);

  ScheduleModel& ends() { return model_; }
  const ScheduleModel& ends() const { return model_; }
  void follow(const WorkNotice& notice);
  void setTheme(ThemeName theme);
  QString note() const;
  void goToRow(int row);

  void showThisWall(bool alone);
  void showWith(const QString& words);
  void sortBy(int column); // up, then down, then as the walls are
  // The selected rows, or all that are shown, as text for a spreadsheet.
  void copyRows();
  // The table on the clipboard into the job; says why not where it cannot be.
  void pasteRows();
  // Why the last cell or table was refused; empty while nothing is wrong.
  QString problem() const;

Q_SIGNALS:
  void said(const QString& words); // what was done
  void shownChanged();

protected:
  bool event(QEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void commitData(QWidget* editor) override;
  void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
  using QTableView::edit;
  bool edit(const QModelIndex& index, EditTrigger trigger, QEvent* event) override;

private:
  void shareWidth();
  QWidget* refusedCell() const; // the cell that is open with what cannot be; null where none is
  bool editNear(const QModelIndex& index);
  void editBeside(const QModelIndex& index, int step);
  std::optional<Problem> enter(const QModelIndex& index, const QString& typed);
  void say(const QString& problem, int below = -1); // under a row, or at the foot
  QString emptyWords() const;

  Workbench& bench_;
  ScheduleModel model_;
  ScheduleDelegate delegate_;
  QLabel* problem_;
  ThemeName theme_ = ThemeName::Light;
  QPersistentModelIndex edited_;
};

} // namespace sillwright
