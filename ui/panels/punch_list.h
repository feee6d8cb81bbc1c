// The punch list: every finding of the job, worst first. A click goes there, the button puts it right.
#pragma once

#include <QAbstractListModel>
#include <QListView>
#include <QStyledItemDelegate>

#include "core/drawing/theme.h"
#include "core/gesture/workbench.h"
#include "ui/panels/finding_rows.h"

class QMenu;

namespace sillwright {

class PunchListModel : public QAbstractListModel {
  Q_OBJECT

public:
  explicit PunchListModel(Workbench& bench, QObject* parent = nullptr);

  void follow(const WorkNotice& notice);
  void showLevels(LevelSet shown);
  const LevelSet& levels() const { return filter_.levels; }
  // Of the wall in view alone, whichever that is.
  void showThisWall(bool alone);
  bool thisWall() const { return thisWall_; }
  void showRule(std::optional<RuleId> rule); // missing: all
  std::optional<RuleId> shownRule() const { return filter_.rule; }
  // How many findings of the job each rule has, shown or not; by RuleId.
  const std::vector<int>& byRule() const { return rows_.byRule(); }
  int hidden() const;
  std::optional<FindingRows::Row> finding(int row) const { return rows_.row(row); }
  // The first row that is about this piece of the wall in view; -1 where none is.
  int rowAbout(PieceRef piece) const;
  const Job& job() const { return bench_.job(); }

  int rowCount(const QModelIndex& parent = {}) const override;
  // DisplayRole: the whole row as one line of words.
  QVariant data(const QModelIndex& index, int role) const override;

private:
  void startAgain();

  Workbench& bench_;
  FindingRows rows_;
  FindingFilter filter_;
  bool thisWall_ = false;
};

class PunchListDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void setTheme(ThemeName theme) { theme_ = theme; }
  // Where the fix button of a row is painted; empty where there is nothing to press.
  static QRectF fixButton(const Job& job, const Finding& finding, const QRect& row);
  // The button beside it that lists the other ways; empty where there are none.
  static QRectF waysButton(const Job& job, const Finding& finding, const QRect& row);

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override;

private:
  ThemeName theme_ = ThemeName::Light;
};

class PunchList : public QListView {
  Q_OBJECT

public:
  explicit PunchList(Workbench& bench, QWidget* parent = nullptr);

  PunchListModel& findings() { return model_; }
  void follow(const WorkNotice& notice);
  void setTheme(ThemeName theme);
  void fixRow(int row, std::size_t way = 0); // of allWays
  void goToRow(int row);
  // Lists every way out of a row in a menu.
  void askWay(int row);
  // Asks for the page of the rule behind a row.
  void askWhy(int row);
  void showThisWall(bool alone);
  void showRule(std::optional<RuleId> rule);
  // The rules that speak on this job, to choose one of.
  void fillRuleMenu(QMenu& menu);
  // "3 on wall A, 1 elsewhere"
  QString note() const;

Q_SIGNALS:
  void whyWanted(int rule); // a RuleId
  void shownChanged();

protected:
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

private:
  void addWays(QMenu& menu, int row);

  Workbench& bench_;
  PunchListModel model_;
  PunchListDelegate delegate_;
  ThemeName theme_ = ThemeName::Light;
};

} // namespace sillwright
