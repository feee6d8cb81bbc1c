#include "ui/panels/schedule.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <numeric>

#include "core/base/length.h"
#include "core/drawing/hatch.h"
#include "core/drawing/slide_sign.h"
#include "core/refit/in_the_way.h"
#include "core/refit/slot_words.h"
#include "core/rules/wording.h"
#include "ui/paint/painter.h"
#include "ui/panels/look.h"

namespace sillwright {

namespace {

constexpr int rowPixels = 31;
constexpr int headHeight = 25;
// px that the columns need; what there is more is shared out alike. In a narrow table the make-up of the column, which
// the elevation shows too, is left out.
constexpr std::array<int, ScheduleModel::ColumnCount> wideColumns{52, 40, 56, 68, 74, 98, 42};
constexpr std::array<int, ScheduleModel::ColumnCount> narrowColumns{50, 38, 0, 38, 72, 78, 38};
constexpr int narrowBelow = 400;

QString text(const std::string& words) { return QString::fromStdString(words); }

} // namespace

ScheduleModel::ScheduleModel(Workbench& bench, QObject* parent) : QAbstractTableModel(parent), bench_(bench) {
  follow();
}

void ScheduleModel::follow() {
  const auto wall = bench_.wall();
  if (wall == wall_)
    return;
  std::vector<WallEnd> ends = wall ? wallEnds(*wall) : std::vector<WallEnd>{};
  const bool sameRows = ends.size() == ends_.size();
  if (!sameRows)
    beginResetModel();
  wall_ = wall;
  ends_ = std::move(ends);
  slots_.assign(ends_.size(), {});
  if (!sameRows)
    endResetModel();
  else if (!ends_.empty())
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

int ScheduleModel::rowOf(Id piece) const {
  const auto found = std::find_if(ends_.begin(), ends_.end(), [&](const WallEnd& end) {
    return piece && (end.hardware == piece || end.column == piece);
  });
  return found == ends_.end() ? -1 : static_cast<int>(found - ends_.begin());
}

PieceRef ScheduleModel::pieceOf(int row) const {
  const WallEnd& at = end(row);
  return {wall_->layout.wall->id, at.hardware ? at.hardware : at.column ? at.column : at.panel};
}

const std::optional<PieceSlots>& ScheduleModel::slotsOfRow(int row) const {
  RowSlots& kept = slots_[static_cast<std::size_t>(row)];
  if (!kept.known && end(row).hardware) {
    kept.slots = slotsOf(wall_->layout, resolve(*wall_->layout.limits), end(row).hardware);
    ++computed_;
  }
  kept.known = true;
  return kept.slots;
}

int ScheduleModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(ends_.size());
}

int ScheduleModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QString ScheduleModel::words(int row, int column) const {
  const WallEnd& end = this->end(row);
  switch (column) {
  case PanelColumn: return text(end.panelMark);
  case EndColumn: return end.end == Side::Left ? tr("left") : tr("right");
  case ColumnColumn: return text(end.columnMakeUp);
  case HardwareColumn:
    return !end.hardware ? tr("none")
           : narrow_     ? text(end.hardwareMark)
                         : text(end.hardwareMark + " " + end.hardwareKind);
  case AtColumn: return end.station ? text(printLength(*end.station, bench_.job().units)) : QString();
  case RoomColumn: return slotsOfRow(row) ? text(roomWords(*slotsOfRow(row), units())) : QString();
  case StateColumn: return end.worst ? text(std::string(word(*end.worst))) : tr("clear");
  default: return {};
  }
}

// What the narrow column has no room to say.
QString ScheduleModel::roomTip(int row) const {
  const std::optional<PieceSlots>& slots = slotsOfRow(row);
  if (!slots)
    return {};
  QStringList lines{text(roomWords(*slots, units()))};
  if (!slots->room)
    lines += text(inTheWay(wall_->layout, resolve(*wall_->layout.limits), slots->piece));
  lines += tr("slots: %1").arg(text(slotWords(*slots, units())));
  return lines.join(QLatin1Char('\n'));
}

QVariant ScheduleModel::data(const QModelIndex& index, int role) const {
  if (index.isValid() && role == Qt::ToolTipRole && index.column() == RoomColumn)
    return roomTip(index.row());
  if (!index.isValid() || (role != Qt::DisplayRole && role != Qt::AccessibleTextRole))
    return {};
  return words(index.row(), index.column());
}

QVariant ScheduleModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (role == Qt::TextAlignmentRole)
    return int(Qt::AlignVCenter | (section == AtColumn     ? Qt::AlignRight
                                   : section == RoomColumn ? Qt::AlignHCenter
                                                           : Qt::AlignLeft));
  if (role == Qt::ToolTipRole && section == RoomColumn)
    return tr("How far a piece may go left and right without a FIX; a diamond where every target is met");
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
    return {};
  switch (section) {
  case PanelColumn: return tr("panel");
  case EndColumn: return tr("end");
  case ColumnColumn: return tr("column");
  case HardwareColumn:
    return narrow_ ? tr("what") : tr("hardware");
  case AtColumn: return tr("at");
  case RoomColumn: return tr("slide room");
  case StateColumn: return tr("state");
  default: return {};
  }
}

// ---- a cell -----------------------------------------------------------------------------------------------------

namespace {

// Left amount, sign, right amount; smaller where the column is narrow, never cut off.
void paintRoom(QPainter& painter, ThemeName theme, const QRect& box, const PieceSlots& slots, LengthStyle units,
               bool targetsMet) {
  constexpr double size = 12, signScale = 0.8, sign = slideSignReach * signScale;
  const QPointF middle(box.x() + box.width() / 2.0, box.y() + 16.0);
  const std::optional<Room> room = roomInMarks(slots);
  if (!room) {
    const QString words = text(roomWords(slots, units));
    const double fits = std::min(1.0, (box.width() - 4) / wordsWidth(words, size));
    paintWords(painter, theme, {middle.x(), box.y() + 20.0}, words, size * fits, Ink::Text2, Weight::Regular,
               Anchor::Middle);
    return;
  }
  const QString left = text(printMeasure(room->left, units)), right = text(printMeasure(room->right, units));
  const double wide = std::max(wordsWidth(left, size), wordsWidth(right, size)) + sign + 3;
  const double fits = std::min(1.0, (box.width() / 2.0 - 2) / wide);
  Drawing drawing;
  (targetsMet ? drawSlideDiamond : drawSlideArrow)(drawing, {middle.x(), middle.y()}, Ink::Hand, signScale * fits);
  paintPixels(painter, drawing, theme);
  const double out = (sign + 3) * fits, base = box.y() + 16 + 4 * fits;
  paintWords(painter, theme, {middle.x() - out, base}, left, size * fits, Ink::Text, Weight::Regular, Anchor::End);
  paintWords(painter, theme, {middle.x() + out, base}, right, size * fits, Ink::Text);
}

} // namespace

void ScheduleDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const auto* model = qobject_cast<const ScheduleModel*>(index.model());
  if (!model)
    return;
  const QRect box = option.rect;
  const bool selected = option.state.testFlag(QStyle::State_Selected);
  painter->fillRect(box, colourOf(theme_, selected ? Ink::Select : Ink::Panel));
  if (selected && index.column() == 0)
    painter->fillRect(box.x(), box.y(), 4, box.height(), colourOf(theme_, Ink::Hand));
  painter->fillRect(box.x(), box.bottom(), box.width(), 1, colourOf(theme_, Ink::Rule2));
  const double base = box.y() + 20;
  const WallEnd& end = model->end(index.row());
  if (index.column() == ScheduleModel::RoomColumn) {
    if (const auto& slots = model->slotsOfRow(index.row()))
      paintRoom(*painter, theme_, box, *slots, model->units(), !end.worst);
    return;
  }
  const QString words = index.data().toString();
  if (index.column() == ScheduleModel::StateColumn && end.worst) {
    Drawing swatch;
    drawSwatch(swatch, *end.worst, box.center().x() - 8, box.center().y(), 16, 9, inkOf(*end.worst), 1.2);
    paintPixels(*painter, swatch, theme_);
  } else if (index.column() == ScheduleModel::StateColumn) {
    paintWords(*painter, theme_, {box.center().x() + 0.0, base}, words, 12, Ink::Text2, Weight::Regular,
               Anchor::Middle);
  } else if (index.column() == ScheduleModel::AtColumn) {
    paintWords(*painter, theme_, {box.right() - 4.0, base}, words, 12.5, Ink::Text, Weight::Bold, Anchor::End);
  } else {
    const double inset = index.column() == 0 ? 14 : 6;
    paintWords(*painter, theme_, {box.x() + inset, base}, elided(words, 12.5, box.width() - inset - 2), 12.5,
               end.hardware || index.column() != ScheduleModel::HardwareColumn ? Ink::Text : Ink::Text2);
  }
}

// ---- view -------------------------------------------------------------------------------------------------------

Schedule::Schedule(Workbench& bench, QWidget* parent) : QTableView(parent), bench_(bench), model_(bench) {
  setModel(&model_);
  setItemDelegate(&delegate_);
  setFrameShape(QFrame::NoFrame);
  setShowGrid(false);
  setSelectionBehavior(SelectRows);
  setSelectionMode(SingleSelection);
  setEditTriggers(NoEditTriggers);
  setTabKeyNavigation(false);
  setHorizontalScrollMode(ScrollPerPixel);
  verticalHeader()->hide();
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  verticalHeader()->setDefaultSectionSize(rowPixels);
  horizontalHeader()->setFixedHeight(headHeight);
  horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setFont(uiFont(11.5));
  setObjectName(QStringLiteral("schedule"));
  setAccessibleName(tr("Wall-end schedule"));
  setAccessibleDescription(tr("Slide room is how far a piece may go left and right without a FIX"));
}

void Schedule::follow(const WorkNotice& notice) {
  model_.follow();
  if (!notice.session.selection && !notice.session.wall && !notice.session.job)
    return;
  const Selection& selection = bench_.session().selection();
  const int row = selection.empty() ? -1 : model_.rowOf(selection.back().piece);
  if (row >= 0 && currentIndex().row() != row)
    selectRow(row);
  else if (row < 0)
    clearSelection();
}

void Schedule::setTheme(ThemeName theme) {
  delegate_.setTheme(theme);
  viewport()->update();
}

QString Schedule::note() const {
  const auto wall = bench_.wall();
  return wall ? tr("wall %1").arg(text(wall->layout.wall->mark)) : QString();
}

void Schedule::goToRow(int row) {
  if (row < 0 || row >= model_.rowCount())
    return;
  const PieceRef piece = model_.pieceOf(row);
  bench_.session().select({piece});
}

void Schedule::mouseReleaseEvent(QMouseEvent* event) {
  QTableView::mouseReleaseEvent(event);
  if (const QModelIndex index = indexAt(event->position().toPoint()); index.isValid())
    goToRow(index.row());
}

void Schedule::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
    return goToRow(currentIndex().row());
  QTableView::keyPressEvent(event);
}

void Schedule::resizeEvent(QResizeEvent* event) {
  const bool narrow = viewport()->width() < narrowBelow;
  const auto& columns = narrow ? narrowColumns : wideColumns;
  const int needed = std::accumulate(columns.begin(), columns.end(), 0);
  const int width = std::max(viewport()->width(), needed); // else it scrolls
  model_.setNarrow(narrow);
  setColumnHidden(ScheduleModel::ColumnColumn, narrow);
  int at = 0;
  for (int column = 0; column < ScheduleModel::ColumnCount; ++column) {
    const int end = at + columns[static_cast<std::size_t>(column)];
    if (!isColumnHidden(column))
      horizontalHeader()->resizeSection(column, end * width / needed - at * width / needed);
    at = end;
  }
  QTableView::resizeEvent(event);
}

} // namespace sillwright
