// The proposal of a refit, change by change: taken as a whole, one alone, or without some; or why there is no layout.
#pragma once

#include <QListView>
#include <QWidget>

#include "core/drawing/theme.h"
#include "ui/panels/refit_rows.h"

class QLabel;
class QTimer;

namespace sillwright {

class WordButton;

class RefitList : public QListView {
  Q_OBJECT

public:
  explicit RefitList(Workbench& bench, QWidget* parent = nullptr);

  RefitRowsModel& rows() { return model_; }
  void follow();
  void setTheme(ThemeName theme);
  void tickRow(int row); // or take the tick away
  void acceptOnly(int row);
  void goToRow(int row); // selects its pieces

protected:
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

private:
  Workbench& bench_;
  RefitRowsModel model_;
  RefitRowsDelegate delegate_;
};

class RefitPanel : public QWidget {
  Q_OBJECT

public:
  explicit RefitPanel(Workbench& bench, QWidget* parent = nullptr);

  void follow();
  void setTheme(ThemeName theme);
  QString note() const;  // "wall A"
  QString words() const; // what it says above the rows
  QString hint() const;
  RefitList& list() const { return *list_; }
  void copyQuestion(); // to the engineer, as text

Q_SIGNALS:
  void leaveWanted();              // Esc
  void told(const QString& words); // what has been done, for the status line

private:
  void showWords();

  Workbench& bench_;
  QLabel* words_;
  QLabel* hint_;
  RefitList* list_;
  WordButton* accept_;
  WordButton* copy_;
  QTimer* slow_; // a refit that takes no time says nothing of being at work
};

} // namespace sillwright
