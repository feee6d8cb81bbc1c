// The wall-end schedule as a table model: one row a panel end of the job, with the slide room of its hardware.
#pragma once

#include <QAbstractTableModel>

#include <optional>
#include <unordered_map>

#include "core/gesture/wall_end_table.h"
#include "core/gesture/workbench.h"
#include "core/refit/slots.h"
#include "ui/panels/end_rows.h"

namespace sillwright {

class ScheduleModel : public QAbstractTableModel {
  Q_OBJECT

public:
  enum Column {
    WallColumn,
    PanelColumn,
    EndColumn,
    MarkColumn,
    ColumnColumn,
    HardwareColumn,
    AtColumn,
    RoomColumn,
    StateColumn,
    ColumnCount
  };

  explicit ScheduleModel(Workbench& bench, QObject* parent = nullptr);

  void follow(const WorkNotice& notice);
  std::optional<EndRows::Row> end(int row) const { return rows_.row(row); }
  // The row of a piece: hardware, column, or a panel by its left end; -1 where none has it.
  int rowOf(PieceRef piece) const;
  int firstRowOn(Id wall) const;
  PieceRef pieceOf(int row) const; // what going there selects
  // Of the hardware of a row; nothing where it has none. Computed when it is asked for, and only once while the wall
  // stays as it is, so that a change costs no more than the rows that are seen.
  const std::optional<PieceSlots>& slotsOfRow(int row) const;
  int computed() const { return computed_; }    // slots so far, and …
  int looked() const { return rows_.looked(); } // … walls whose ends were worked out: tests watch them
  LengthStyle units() const { return bench_.job().units; }

  // ---- what is shown
  void showThisWall(bool alone);
  bool thisWall() const { return thisWall_; }
  void showWith(const QString& words); // ends that have them in one of their cells
  const QString& shownWith() const { return with_; }
  int hidden() const { return rows_.all() - rows_.size(); }
  // By a column, or as the walls are where there is none (-1). Rows keep their places while they are edited.
  void sortBy(int column, Qt::SortOrder order);
  int sortedBy() const { return sorted_; }
  Qt::SortOrder sortOrder() const { return order_; }
  static bool canSortBy(int column) { return column != RoomColumn; }
  // In a narrow table the hardware is its mark alone and the end a letter.
  void setNarrow(bool narrow) { narrow_ = narrow; }

  static std::optional<EndCell> cellOf(int column); // that can be typed in
  // What stands in a cell when it is opened to be typed in.
  QString typedText(const QModelIndex& index) const;

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
  void startAgain();
  void followWall(Id wall);
  QString words(const WallEnd& end, int column, bool narrow) const;
  QString roomTip(int row) const;
  EndRows::Lets lets() const;
  EndRows::Before before() const;

  Workbench& bench_;
  EndRows rows_;
  struct WallSlots {
    std::shared_ptr<const CheckedWall> wall;
    std::vector<std::optional<std::optional<PieceSlots>>> ends; // known, and there
  };
  mutable std::unordered_map<Id, WallSlots> slots_;
  mutable int computed_ = 0;
  Id inView_;
  QString with_;
  int sorted_ = -1;
  Qt::SortOrder order_ = Qt::AscendingOrder;
  bool thisWall_ = false;
  bool narrow_ = false;
};

} // namespace sillwright
