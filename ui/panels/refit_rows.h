// What a refit says, row by row: the changes it proposes with a tick each, the refused ones among them; where no layout
// exists, the requirements that cannot hold together.
#pragma once

#include <QAbstractListModel>
#include <QStyledItemDelegate>

#include <vector>

#include "core/drawing/theme.h"
#include "core/gesture/workbench.h"

namespace sillwright {

struct RefitLine {
  enum class Kind { Title, Change, Requirement, Wall };
  Kind kind = Kind::Title;
  std::size_t at = 0;    // of the rows on the desk, or of the requirements of one conflict
  int number = 0;        // of a requirement, from 1
  bool ticked = true;    // of a change or a wall
  bool tickable = false; // of a wall: something of it may be taken over
  bool faint = false;    // left out, or over and done with
  QString words;
  QString second; // where from and where to, or what alone would do
  std::vector<PieceRef> pieces;
  bool hasTick() const { return kind == Kind::Change || (kind == Kind::Wall && tickable); }
  bool operator==(const RefitLine&) const = default;
};

class RefitRowsModel : public QAbstractListModel {
  Q_OBJECT

public:
  explicit RefitRowsModel(Workbench& bench, QObject* parent = nullptr);

  void follow();
  // Null where there is no such row.
  const RefitLine* line(int row) const;
  int rowOfChange(std::size_t at) const; // -1 where it is none

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override; // a tick
  Qt::ItemFlags flags(const QModelIndex& index) const override;

protected:
  virtual std::vector<RefitLine> linesNow() const;
  virtual void tick(std::size_t at, bool ticked);
  Workbench& bench_;

private:
  std::vector<RefitLine> lines_;
};

class RefitRowsDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void setTheme(ThemeName theme) { theme_ = theme; }
  void setWidth(int width) { width_ = width; } // of the list
  // Where the tick of a change is; where the button of the current row is that takes it alone.
  static QRect tickBox(const QRect& row);
  static QRectF onlyButton(const QRect& row);

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
  ThemeName theme_ = ThemeName::Light;
  int width_ = 300;
};

} // namespace sillwright
