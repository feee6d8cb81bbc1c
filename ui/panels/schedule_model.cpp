#include "ui/panels/schedule_model.h"

#include <QCollator>
#include <QStringList>

#include "core/base/length.h"
#include "core/refit/in_the_way.h"
#include "core/refit/slot_words.h"
#include "core/rules/wording.h"

namespace sillwright {

namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

} // namespace

ScheduleModel::ScheduleModel(Workbench& bench, QObject* parent) : QAbstractTableModel(parent), bench_(bench) {
  startAgain();
}

// ---- following the work -----------------------------------------------------------------------------------------

void ScheduleModel::startAgain() {
  beginResetModel();
  inView_ = bench_.session().wall();
  rows_.reset(bench_.job(), bench_.checker(), thisWall_ ? inView_ : Id{}, lets(), before());
  endResetModel();
}

void ScheduleModel::follow(const WorkNotice& notice) {
  if (notice.session.file) {
    slots_.clear();
    return startAgain();
  }
  if (thisWall_ && inView_ != bench_.session().wall())
    return startAgain();
  for (const Id wall : notice.checked) {
    if (!rows_.knows(bench_.job(), wall))
      return startAgain();
    followWall(wall);
  }
}

void ScheduleModel::followWall(Id wall) {
  const auto now = bench_.checker().wall(wall);
  const EndRows::Change change = rows_.changeOf(wall, now);
  if (change.all) {
    beginResetModel();
    rows_.take(wall, now);
    endResetModel();
    return;
  }
  const int behind = change.first + change.kept;
  if (change.gone > 0)
    beginRemoveRows({}, behind, behind + change.gone - 1);
  else if (change.come > 0)
    beginInsertRows({}, behind, behind + change.come - 1);
  rows_.take(wall, now);
  if (change.gone > 0)
    endRemoveRows();
  else if (change.come > 0)
    endInsertRows();
  if (change.kept > 0)
    Q_EMIT dataChanged(index(change.first, 0), index(behind - 1, ColumnCount - 1));
  for (const int row : change.rows)
    Q_EMIT dataChanged(index(row, 0), index(row, ColumnCount - 1));
}

// ---- what is shown ----------------------------------------------------------------------------------------------

void ScheduleModel::showThisWall(bool alone) {
  thisWall_ = alone;
  startAgain();
}

void ScheduleModel::showWith(const QString& words) {
  with_ = words.trimmed();
  startAgain();
}

void ScheduleModel::sortBy(int column, Qt::SortOrder order) {
  sorted_ = column;
  order_ = order;
  startAgain();
}

EndRows::Lets ScheduleModel::lets() const {
  if (with_.isEmpty())
    return {};
  return [this](const WallEnd& end) {
    for (int column = 0; column < ColumnCount; ++column)
      if (column != RoomColumn && words(end, column, false).contains(with_, Qt::CaseInsensitive))
        return true;
    return false;
  };
}

EndRows::Before ScheduleModel::before() const {
  if (sorted_ < 0)
    return {};
  QCollator collator;
  collator.setNumericMode(true); // P2 before P10
  const auto comes = [this, collator](const WallEnd& a, const WallEnd& b) {
    if (sorted_ == AtColumn)
      return a.station.value_or(1e9) < b.station.value_or(1e9);
    if (sorted_ == StateColumn)
      return (a.worst ? static_cast<int>(*a.worst) : 9) < (b.worst ? static_cast<int>(*b.worst) : 9);
    if (sorted_ == EndColumn)
      return a.end < b.end;
    return collator.compare(words(a, sorted_, false), words(b, sorted_, false)) < 0;
  };
  if (order_ == Qt::AscendingOrder)
    return comes;
  return [comes](const WallEnd& a, const WallEnd& b) { return comes(b, a); };
}

// ---- rows -------------------------------------------------------------------------------------------------------

int ScheduleModel::rowOf(PieceRef piece) const {
  if (!piece.piece)
    return -1;
  return rows_.rowOf(piece.wall, [&](const WallEnd& end) {
    return end.hardware == piece.piece || end.column == piece.piece || end.panel == piece.piece;
  });
}

int ScheduleModel::firstRowOn(Id wall) const {
  return rows_.rowOf(wall, [](const WallEnd&) { return true; });
}

PieceRef ScheduleModel::pieceOf(int row) const {
  const auto at = rows_.row(row);
  return at ? PieceRef{at->end->wall, at->end->hardware ? at->end->hardware
                                      : at->end->column ? at->end->column
                                                        : at->end->panel}
            : PieceRef{};
}

const std::optional<PieceSlots>& ScheduleModel::slotsOfRow(int row) const {
  static const std::optional<PieceSlots> none;
  const auto at = rows_.row(row);
  if (!at)
    return none;
  WallSlots& kept = slots_[at->end->wall];
  if (kept.wall != at->wall) {
    kept.wall = at->wall;
    kept.ends.assign(at->wall->layout.wall->panels.size() * 2, std::nullopt);
  }
  auto& known = kept.ends[at->of];
  if (!known) {
    known.emplace();
    if (at->end->hardware) {
      *known = slotsOf(at->wall->layout, resolve(*at->wall->layout.limits), at->end->hardware);
      ++computed_;
    }
  }
  return *known;
}

int ScheduleModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : rows_.size();
}

int ScheduleModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

// ---- cells ------------------------------------------------------------------------------------------------------

std::optional<EndCell> ScheduleModel::cellOf(int column) {
  switch (column) {
  case MarkColumn:
    return EndCell::Mark;
  case ColumnColumn:
    return EndCell::Column;
  case AtColumn:
    return EndCell::Station;
  default:
    return std::nullopt;
  }
}

QString ScheduleModel::typedText(const QModelIndex& index) const {
  const auto at = rows_.row(index.row());
  const auto cell = cellOf(index.column());
  return at && cell ? text(cellText(bench_.job(), *at->end, *cell)) : QString();
}

Qt::ItemFlags ScheduleModel::flags(const QModelIndex& index) const {
  const auto at = rows_.row(index.row());
  const auto cell = cellOf(index.column());
  const Qt::ItemFlags all = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
  return at && cell && canSet(*at->end, *cell) ? all | Qt::ItemIsEditable : all;
}

QString ScheduleModel::words(const WallEnd& end, int column, bool narrow) const {
  switch (column) {
  case WallColumn:
    return text(end.wallMark);
  case PanelColumn:
    return text(end.panelMark);
  case EndColumn:
    if (narrow)
      return end.end == Side::Left ? tr("L", "left end") : tr("R", "right end");
    return end.end == Side::Left ? tr("left") : tr("right");
  case MarkColumn:
    return end.mark.empty() ? tr("none") : text(end.mark);
  case ColumnColumn:
    return text(end.columnMakeUp);
  case HardwareColumn:
    return !end.hardware ? tr("none")
           : narrow      ? text(end.hardwareMark)
                         : text(end.hardwareMark + " " + end.hardwareKind);
  case AtColumn:
    return end.station ? text(printLength(*end.station, units())) : QString();
  case StateColumn:
    return end.worst ? text(std::string(word(*end.worst))) : tr("clear");
  default:
    return {};
  }
}

// What the narrow column has no room to say.
QString ScheduleModel::roomTip(int row) const {
  const std::optional<PieceSlots>& slots = slotsOfRow(row);
  if (!slots)
    return {};
  const WallLayout& layout = rows_.row(row)->wall->layout;
  QStringList lines{text(roomWords(*slots, units()))};
  if (!slots->room)
    lines += text(inTheWay(layout, resolve(*layout.limits), slots->piece));
  lines += tr("slots: %1").arg(text(slotWords(*slots, units())));
  return lines.join(QLatin1Char('\n'));
}

QVariant ScheduleModel::data(const QModelIndex& index, int role) const {
  const auto at = rows_.row(index.row());
  if (!at)
    return {};
  if (role == Qt::ToolTipRole && index.column() == RoomColumn)
    return roomTip(index.row());
  if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole)
    return {};
  if (index.column() == RoomColumn)
    return slotsOfRow(index.row()) ? text(roomWords(*slotsOfRow(index.row()), units())) : QString();
  return words(*at->end, index.column(), narrow_ && role == Qt::DisplayRole);
}

QVariant ScheduleModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (role == Qt::TextAlignmentRole)
    return int(Qt::AlignVCenter | (section == AtColumn     ? Qt::AlignRight
                                   : section == RoomColumn ? Qt::AlignHCenter
                                                           : Qt::AlignLeft));
  if (role == Qt::ToolTipRole && section == RoomColumn)
    return tr("How far a piece may go left and right without a FIX; a diamond where every target is met");
  if (role == Qt::ToolTipRole)
    return section == MarkColumn ? tr("Mark of the plan's wall-end schedule; a click sorts")
                                 : tr("A click sorts, a third one puts the rows back in the order of the walls");
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
    return {};
  switch (section) {
  case WallColumn:
    return tr("wall");
  case PanelColumn:
    return tr("panel");
  case EndColumn:
    return tr("end");
  case MarkColumn:
    return tr("mark");
  case ColumnColumn:
    return tr("column");
  case HardwareColumn:
    return narrow_ ? tr("what") : tr("hardware");
  case AtColumn:
    return tr("at");
  case RoomColumn:
    return tr("slide room");
  case StateColumn:
    return tr("state");
  default:
    return {};
  }
}

} // namespace sillwright
