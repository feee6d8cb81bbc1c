// Rows with ticks, by mouse and by key: a click on a tick or Space takes it away, a click on the row or Enter goes to
// what it is about.
#pragma once

#include <QListView>

#include <memory>

#include "core/drawing/theme.h"
#include "ui/panels/refit_rows.h"

namespace sillwright {

class TickedList : public QListView {
  Q_OBJECT

public:
  explicit TickedList(std::unique_ptr<RefitRowsModel> model, QWidget* parent = nullptr);

  RefitRowsModel& rows() const { return *model_; }
  void follow();
  void setTheme(ThemeName theme);
  void tickRow(int row); // or take the tick away
  virtual void goToRow(int row) = 0;

protected:
  // Something else in a row that was clicked; false where there is nothing.
  virtual bool clickedBeside(int row, QPointF at);
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

private:
  std::unique_ptr<RefitRowsModel> model_;
  RefitRowsDelegate delegate_;
};

} // namespace sillwright
