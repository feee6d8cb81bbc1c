// The rule book: every rule and every table of a standard, found by subject or by a word, with the page of the one
// chosen below.
#pragma once

#include <QWidget>

#include "core/gesture/workbench.h"
#include "ui/panels/rule_list.h"

class QLabel;
class QLineEdit;
class QStackedWidget;
class QTableWidget;

namespace sillwright {

class RulePage;

class RuleBookPanel : public QWidget {
  Q_OBJECT

public:
  explicit RuleBookPanel(Workbench& bench, QWidget* parent = nullptr);

  // What it shows follows the job while it is visible; a preview in mid-gesture is left out.
  void follow();
  void setTheme(ThemeName theme);
  // "41 rules" or how many a search leaves
  QString note() const;
  void showRule(RuleId id);
  void focusSearch();

  QLineEdit& searchLine() const { return *search_; }
  RuleList& list() const { return *list_; }
  RulePage& page() const { return *page_; }
  QTableWidget& table() const { return *table_; }

Q_SIGNALS:
  void changeLimitWanted(const QString& limit);
  void changeCountsWanted(const QString& rule);
  void noteChanged();
  void leaveWanted(); // Esc

protected:
  void showEvent(QShowEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void showChosen();
  void showTable(std::size_t at);
  void searchFor(const QString& words);

  Workbench& bench_;
  QLineEdit* search_;
  RuleList* list_;
  QStackedWidget* pages_;
  RulePage* page_;
  QLabel* tableTitle_;
  QTableWidget* table_;
  FoundByRule found_;
};

} // namespace sillwright
