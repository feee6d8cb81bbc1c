// The wall-end schedule of the wall in view: one row a panel end, with the slide room of its hardware. Choosing a row
// goes to that end.
#pragma once

#include <QAbstractTableModel>
#include <QStyledItemDelegate>
#include <QTableView>

#include <array>

#include "core/drawing/theme.h"
#include "core/gesture/workbench.h"
#include "core/refit/slots.h"
#include "core/gesture/wall_ends.h"

namespace sillwright {

class ScheduleModel : public QAbstractTableModel {
  Q_OBJECT

public:
  enum Column { PanelColumn, EndColumn, ColumnColumn, HardwareColumn, AtColumn, RoomColumn, StateColumn, ColumnCount };

  explicit ScheduleModel(Workbench& bench, QObject* parent = nullptr);

  void follow();
  const WallEnd& end(int row) const { return ends_[static_cast<std::size_t>(row)]; }
  // The row of a piece; -1 where none has it.
  int rowOf(Id piece) const;
  PieceRef pieceOf(int row) const;
  // Of the hardware of a row; nothing where it has none. Computed when it is asked for, and only once while the wall
  // stays as it is, so that a change costs no more than the rows that are seen.
  const std::optional<PieceSlots>& slotsOfRow(int row) const;
  int computed() const { return computed_; } // slots so far: tests watch it
  LengthStyle units() const { return bench_.job().units; }
  // In a narrow table the hardware is its mark alone.
  void setNarrow(bool narrow) { narrow_ = narrow; }

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
  QString words(int row, int column) const;
  QString roomTip(int row) const;

  Workbench& bench_;
  std::shared_ptr<const CheckedWall> wall_;
  std::vector<WallEnd> ends_;
  struct RowSlots {
    bool known = false;
    std::optional<PieceSlots> slots;
  };
  mutable std::vector<RowSlots> slots_; // by row
  mutable int computed_ = 0;
  bool narrow_ = false;
};

class ScheduleDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void setTheme(ThemeName theme) { theme_ = theme; }
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
  ThemeName theme_ = ThemeName::Light;
};

class Schedule : public QTableView {
  Q_OBJECT

public:
  explicit Schedule(Workbench& bench, QWidget* parent = nullptr);

  ScheduleModel& ends() { return model_; }
  void follow(const WorkNotice& notice);
  void setTheme(ThemeName theme);
  QString note() const;
  void goToRow(int row);

protected:
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

private:
  Workbench& bench_;
  ScheduleModel model_;
  ScheduleDelegate delegate_;
};

} // namespace sillwright
