// The proposal of a refit, change by change: taken as a whole, one alone, or without some; or why there is no layout.
#pragma once

#include <QWidget>

#include "core/drawing/theme.h"
#include "ui/panels/ticked_list.h"

class QLabel;
class QTimer;

namespace sillwright {

class WordButton;

class RefitList : public TickedList {
  Q_OBJECT

public:
  explicit RefitList(Workbench& bench, QWidget* parent = nullptr);

  void follow();
  void acceptOnly(int row);
  void goToRow(int row) override; // selects its pieces

protected:
  bool clickedBeside(int row, QPointF at) override; // the button that takes a change alone
  void keyPressEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

private:
  Workbench& bench_;
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
