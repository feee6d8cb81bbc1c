// A refit of the whole job: how far it is, then a row for each wall that needs something. Walls without their tick are
// left out of what is accepted.
#pragma once

#include <QWidget>

#include "ui/panels/ticked_list.h"

class QLabel;
class QTimer;

namespace sillwright {

class WordButton;

class JobRefitList : public TickedList {
  Q_OBJECT

public:
  explicit JobRefitList(Workbench& bench, QWidget* parent = nullptr);

  void goToRow(int row) override; // shows the wall with what is proposed for it

protected:
  void contextMenuEvent(QContextMenuEvent* event) override;

private:
  Workbench& bench_;
};

class JobRefitPanel : public QWidget {
  Q_OBJECT

public:
  explicit JobRefitPanel(Workbench& bench, QWidget* parent = nullptr);

  void follow();
  void setTheme(ThemeName theme);
  QString note() const;
  QString words() const; // what it says above the rows
  QString hint() const;
  JobRefitList& list() const { return *list_; }

Q_SIGNALS:
  void leaveWanted(); // Esc, or the button that cancels
  void againWanted();

private:
  void showWords();
  bool outOfDate() const;

  Workbench& bench_;
  QLabel* words_;
  QLabel* hint_;
  JobRefitList* list_;
  WordButton* accept_;
  WordButton* again_;
  WordButton* cancel_;
  QTimer* slow_; // one that takes no time says nothing of being at work
  bool late_ = false;
};

} // namespace sillwright
