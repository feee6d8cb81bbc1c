// The rules of the rule book by subject, each with the signs of its levels and how much it found in this job; below them
// the tables of the standards.
#pragma once

#include <QListWidget>
#include <QStyledItemDelegate>

#include <array>
#include <vector>

#include "core/drawing/theme.h"
#include "core/model/job.h"
#include "core/rules/rule_book.h"

namespace sillwright {

using FoundByRule = std::vector<std::array<int, 3>>; // by RuleId, then Level

class RuleListDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override;

  ThemeName theme = ThemeName::Light;
  FoundByRule found;

private:
  void paintRule(QPainter& painter, const QRect& box, const QModelIndex& index) const;
};

class RuleList : public QListWidget {
  Q_OBJECT

public:
  explicit RuleList(QWidget* parent = nullptr);

  // Only rows in which every word occurs: in a rule's name, meaning, measure, limits or sources, or in a table.
  void search(const QString& words);
  void setFound(const Job& job, FoundByRule found);
  void setTheme(ThemeName theme);
  // Makes it the current row; brings it back where a search hides it.
  void choose(RuleId id);
  void chooseFirst();
  // Empty where the current row is none.
  std::optional<RuleId> chosenRule() const;
  std::optional<std::size_t> chosenTable() const;
  int shownRules() const; // rows that the search leaves, without heads

private:
  void addHead(const QString& title);
  QListWidgetItem* addLine(const QString& title, const QString& second, const QString& searched, int kind, int at);

  RuleListDelegate delegate_;
};

} // namespace sillwright
