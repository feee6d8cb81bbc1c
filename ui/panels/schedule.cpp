#include "ui/panels/schedule.h"

#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMouseEvent>
#include <QPainter>
#include <QStyle>

#include <algorithm>
#include <array>
#include <numeric>
#include <set>

#include "ui/paint/painter.h"
#include "ui/panels/look.h"

namespace sillwright {

namespace {

constexpr int rowPixels = 31;
constexpr int headHeight = 25;
using Widths = std::array<int, ScheduleModel::ColumnCount>; // px that the columns need; 0: left out
// The widest that fits is taken, what there is more is shared out alike: the slide room goes first, which the card
// shows too, then words are shortened, then the make-up of the column goes.
constexpr std::array<Widths, 4> widths{{{40, 42, 40, 42, 52, 66, 72, 78, 40},
                                        {40, 42, 38, 42, 54, 68, 74, 0, 40},
                                        {40, 42, 32, 42, 54, 40, 74, 0, 40},
                                        {40, 42, 32, 42, 0, 40, 74, 0, 40}}};

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

// A triangle in the head that the rows are sorted by.
class SortedHead : public QHeaderView {
public:
  SortedHead(const ScheduleModel& model, QWidget* parent) : QHeaderView(Qt::Horizontal, parent), model_(model) {}
  void setTheme(ThemeName theme) { theme_ = theme; }

protected:
  void paintSection(QPainter* painter, const QRect& box, int column) const override {
    painter->save();
    QHeaderView::paintSection(painter, box, column);
    painter->restore();
    if (column != model_.sortedBy())
      return;
    const double x = box.center().x(), y = box.top() + 1, up = model_.sortOrder() == Qt::AscendingOrder ? 1 : -1;
    const double top = up > 0 ? y : y + 4;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(Qt::NoPen);
    painter->setBrush(colourOf(theme_, Ink::Hand));
    painter->drawPolygon(QPolygonF{{x, top}, {x + 5, top + 4 * up}, {x - 5, top + 4 * up}});
    painter->restore();
  }

private:
  const ScheduleModel& model_;
  ThemeName theme_ = ThemeName::Light;
};

} // namespace

Schedule::Schedule(Workbench& bench, QWidget* parent)
    : QTableView(parent), bench_(bench), model_(bench), problem_(new QLabel(viewport())) {
  setModel(&model_);
  setItemDelegate(&delegate_);
  setFrameShape(QFrame::NoFrame);
  setShowGrid(false);
  setSelectionBehavior(SelectRows);
  setSelectionMode(ExtendedSelection);
  setEditTriggers(DoubleClicked | EditKeyPressed | AnyKeyPressed);
  setTabKeyNavigation(false);
  setHorizontalScrollMode(ScrollPerPixel);
  setVerticalScrollMode(ScrollPerPixel);
  verticalHeader()->hide();
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  verticalHeader()->setDefaultSectionSize(rowPixels);
  setHorizontalHeader(new SortedHead(model_, this));
  horizontalHeader()->setFixedHeight(headHeight);
  horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setSectionsClickable(true);
  horizontalHeader()->setFont(uiFont(11.5));
  connect(horizontalHeader(), &QHeaderView::sectionClicked, this, &Schedule::sortBy);
  problem_->setObjectName(QStringLiteral("problem"));
  problem_->setFont(uiFont(12));
  problem_->setTextFormat(Qt::PlainText);
  problem_->setWordWrap(true);
  problem_->setProperty("wrong", true);
  problem_->setAutoFillBackground(true);
  problem_->setContentsMargins(8, 4, 8, 4);
  problem_->hide();
  setObjectName(QStringLiteral("schedule"));
  setAccessibleName(tr("Wall-end schedule"));
  say({});
  setWhatsThis(tr("Enter or F2 types in a cell, Tab goes on to the next, Esc gives up. Ctrl+C copies the rows that are "
                  "selected, Ctrl+V pastes a table of a spreadsheet."));
}

// ---- following the work -----------------------------------------------------------------------------------------

void Schedule::follow(const WorkNotice& notice) {
  if (notice.session.job || notice.session.file)
    say({});
  model_.follow(notice);
  viewport()->update();
  if (notice.session.wall || notice.session.file)
    shareWidth();
  const bool other = notice.session.selection || notice.session.wall;
  if (!other && (!notice.session.job || selectionModel()->hasSelection())) // else rows came anew
    return;
  const Selection& selection = bench_.session().selection();
  const PieceRef piece = selection.empty() ? PieceRef{} : selection.back();
  const int now = currentIndex().row();
  const bool fits = piece.piece && model_.pieceOf(now) == piece;
  if (fits && selectionModel()->isRowSelected(now))
    return;
  const int row = fits ? now : model_.rowOf(piece);
  if (row >= 0) {
    const QModelIndex index = model_.index(row, std::max(currentIndex().column(), 0));
    selectionModel()->setCurrentIndex(index, QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    scrollTo(index);
    return;
  }
  clearSelection();
  if (const int first = model_.firstRowOn(bench_.session().wall()); first >= 0 && notice.session.wall)
    scrollTo(model_.index(first, 0), PositionAtTop);
}

void Schedule::setTheme(ThemeName theme) {
  theme_ = theme;
  delegate_.setTheme(theme);
  static_cast<SortedHead*>(horizontalHeader())->setTheme(theme);
  horizontalHeader()->viewport()->update();
  viewport()->update();
}

QString Schedule::note() const {
  const auto wall = bench_.wall();
  if (!wall)
    return {};
  const QString hidden = model_.hidden() > 0 ? tr(", %1 hidden").arg(model_.hidden()) : QString();
  return model_.thisWall() ? tr("wall %1%2").arg(text(wall->layout.wall->mark), hidden)
                           : tr("%1 ends%2").arg(model_.rowCount()).arg(hidden);
}

void Schedule::goToRow(int row) {
  if (row < 0 || row >= model_.rowCount())
    return;
  const PieceRef piece = model_.pieceOf(row);
  bench_.session().select({piece});
}

// ---- what is shown ----------------------------------------------------------------------------------------------

void Schedule::showThisWall(bool alone) {
  model_.showThisWall(alone);
  shareWidth();
  Q_EMIT shownChanged();
}

void Schedule::showWith(const QString& words) {
  model_.showWith(words);
  Q_EMIT shownChanged();
}

void Schedule::sortBy(int column) {
  if (!ScheduleModel::canSortBy(column))
    return;
  const bool up = model_.sortedBy() == column && model_.sortOrder() == Qt::AscendingOrder;
  const bool down = model_.sortedBy() == column && model_.sortOrder() == Qt::DescendingOrder;
  model_.sortBy(down ? -1 : column, up ? Qt::DescendingOrder : Qt::AscendingOrder);
  horizontalHeader()->viewport()->update();
}

void Schedule::resizeEvent(QResizeEvent* event) {
  shareWidth();
  QTableView::resizeEvent(event);
}

void Schedule::shareWidth() {
  Widths needs{};
  std::size_t form = 0;
  const auto needed = [&] { return std::accumulate(needs.begin(), needs.end(), 0); };
  for (; form < widths.size(); ++form) {
    needs = widths[form];
    if (model_.thisWall())
      needs[ScheduleModel::WallColumn] = 0;
    if (needed() <= viewport()->width() || form + 1 == widths.size())
      break;
  }
  const int all = needed(), width = std::max(viewport()->width(), all); // else it scrolls
  model_.setNarrow(form >= 2);
  int at = 0;
  for (int column = 0; column < ScheduleModel::ColumnCount; ++column) {
    const int need = needs[static_cast<std::size_t>(column)], end = at + need;
    setColumnHidden(column, need == 0);
    if (need > 0)
      horizontalHeader()->resizeSection(column, end * width / all - at * width / all);
    at = end;
  }
}

// ---- mouse and keys ---------------------------------------------------------------------------------------------

// Its own keys for copy and paste come before those of the window.
bool Schedule::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride) {
    auto* key = static_cast<QKeyEvent*>(event);
    if (key->matches(QKeySequence::Copy) || key->matches(QKeySequence::Paste) ||
        key->matches(QKeySequence::SelectAll)) {
      key->accept();
      return true;
    }
  }
  return QTableView::event(event);
}

// A refused cell keeps the keyboard until it is put right or given up: a press elsewhere only gives it back.
QWidget* Schedule::refusedCell() const {
  QWidget* editor = edited_.isValid() ? indexWidget(edited_) : nullptr;
  return editor && editor->property("wrong").toBool() ? editor : nullptr;
}

void Schedule::mousePressEvent(QMouseEvent* event) {
  if (QWidget* refused = refusedCell())
    return refused->setFocus(Qt::OtherFocusReason);
  if (!edited_.isValid())
    say({});
  QTableView::mousePressEvent(event);
}

void Schedule::mouseDoubleClickEvent(QMouseEvent* event) {
  if (QWidget* refused = refusedCell())
    return refused->setFocus(Qt::OtherFocusReason);
  QTableView::mouseDoubleClickEvent(event);
}

void Schedule::mouseReleaseEvent(QMouseEvent* event) {
  QTableView::mouseReleaseEvent(event);
  const bool more = event->modifiers().testFlag(Qt::ShiftModifier) || event->modifiers().testFlag(Qt::ControlModifier);
  const QModelIndex index = indexAt(event->position().toPoint());
  if (event->button() == Qt::LeftButton && index.isValid() && !more && !edited_.isValid())
    goToRow(index.row());
}

void Schedule::keyPressEvent(QKeyEvent* event) {
  if (QWidget* refused = refusedCell(); refused && !refused->hasFocus()) {
    if (event->key() == Qt::Key_Escape)
      closeEditor(refused, QAbstractItemDelegate::RevertModelCache);
    else
      refused->setFocus(Qt::OtherFocusReason);
    return;
  }
  if (event->matches(QKeySequence::Copy))
    return copyRows();
  if (event->matches(QKeySequence::Paste))
    return pasteRows();
  if (event->matches(QKeySequence::SelectAll))
    return selectAll();
  if (event->key() == Qt::Key_Escape && !problem().isEmpty())
    return say({});
  if (state() == EditingState) // what the cell that is typed in leaves over
    return event->ignore();
  const bool plain = event->modifiers() == Qt::NoModifier || event->modifiers() == Qt::KeypadModifier;
  if (plain && (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_F2)) {
    if (!editNear(currentIndex()))
      goToRow(currentIndex().row());
    return;
  }
  const int before = currentIndex().row();
  QTableView::keyPressEvent(event);
  if (plain && currentIndex().row() != before && !edited_.isValid())
    goToRow(currentIndex().row());
}

void Schedule::contextMenuEvent(QContextMenuEvent* event) {
  QMenu menu(this);
  menu.addAction(tr("Copy rows"), this, &Schedule::copyRows)->setEnabled(model_.rowCount() > 0);
  menu.addAction(tr("Paste a table"), this, &Schedule::pasteRows);
  menu.exec(event->globalPos());
}

// ---- typing in cells --------------------------------------------------------------------------------------------

// Opens the cell, or the first one of its row that can be typed in.
bool Schedule::editNear(const QModelIndex& index) {
  if (!index.isValid())
    return false;
  for (int step = 0; step < ScheduleModel::ColumnCount; ++step) {
    const QModelIndex at = index.siblingAtColumn((index.column() + step) % ScheduleModel::ColumnCount);
    if (at.flags().testFlag(Qt::ItemIsEditable) && !isColumnHidden(at.column())) {
      selectionModel()->setCurrentIndex(at, QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
      edit(at);
      return true;
    }
  }
  return false;
}

void Schedule::editBeside(const QModelIndex& index, int step) {
  constexpr int columns = ScheduleModel::ColumnCount;
  const int cells = model_.rowCount() * columns;
  for (int cell = index.row() * columns + index.column() + step; cell >= 0 && cell < cells; cell += step) {
    const QModelIndex at = model_.index(cell / columns, cell % columns);
    if (at.flags().testFlag(Qt::ItemIsEditable) && !isColumnHidden(at.column())) {
      if (at.row() != index.row())
        goToRow(at.row());
      editNear(at);
      return;
    }
  }
}

bool Schedule::edit(const QModelIndex& index, EditTrigger trigger, QEvent* event) {
  const bool open = edited_.isValid();
  if (!QTableView::edit(index, trigger, event))
    return false;
  if (!open)
    edited_ = index;
  return true;
}

std::optional<Problem> Schedule::enter(const QModelIndex& index, const QString& typed) {
  bench_.cancel();
  const auto at = model_.end(index.row());
  const auto cell = ScheduleModel::cellOf(index.column());
  if (!at || !cell)
    return std::nullopt;
  const WallEnd end = *at->end;
  const Result<Job> set = setCell(bench_.session().base(), end, *cell, typed.trimmed().toStdString());
  if (!set)
    return set.problem();
  const QString name = tr("Set %1 of %2, %3 end")
                           .arg(model_.headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                                text(end.panelMark), end.end == Side::Left ? tr("left") : tr("right"));
  bench_.session().apply(*set, name.toStdString());
  return std::nullopt;
}

void Schedule::commitData(QWidget* editor) {
  auto* line = qobject_cast<QLineEdit*>(editor);
  const QModelIndex index = indexAt(editor->geometry().center());
  const QModelIndex at = edited_.isValid() ? QModelIndex(edited_) : index.isValid() ? index : currentIndex();
  if (!line || !at.isValid())
    return;
  const auto problem = enter(at, line->text());
  line->setProperty("wrong", problem.has_value());
  line->style()->unpolish(line);
  line->style()->polish(line);
  const QString words = problem ? tr("%1 %2").arg(text(problem->place), text(problem->message)) : QString();
  line->setToolTip(words);
  line->setAccessibleDescription(words);
  say(words, at.row());
}

// What is refused stays open, with what was typed.
void Schedule::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
  const QModelIndex at = edited_.isValid() ? QModelIndex(edited_) : currentIndex();
  const bool givesUp = hint == QAbstractItemDelegate::RevertModelCache;
  if (!givesUp && editor->property("wrong").toBool())
    return;
  if (givesUp)
    say({});
  edited_ = QPersistentModelIndex();
  QTableView::closeEditor(editor, QAbstractItemDelegate::NoHint);
  if (hint == QAbstractItemDelegate::EditNextItem)
    editBeside(at, 1);
  else if (hint == QAbstractItemDelegate::EditPreviousItem)
    editBeside(at, -1);
}

// ---- copy and paste ---------------------------------------------------------------------------------------------

void Schedule::copyRows() {
  std::set<int> rows;
  for (const QModelIndex& index : selectionModel()->selectedRows(ScheduleModel::PanelColumn))
    rows.insert(index.row());
  if (rows.empty())
    for (int row = 0; row < model_.rowCount(); ++row)
      rows.insert(row);
  std::vector<WallEnd> ends;
  for (const int row : rows)
    if (const auto at = model_.end(row))
      ends.push_back(*at->end);
  if (ends.empty())
    return;
  QApplication::clipboard()->setText(text(endsAsText(bench_.job(), ends)));
  Q_EMIT said(tr("%1 rows copied").arg(ends.size()));
}

void Schedule::pasteRows() {
  bench_.cancel();
  const Result<PastedEnds> pasted = pasteEnds(bench_.session().base(), QApplication::clipboard()->text().toStdString());
  if (!pasted)
    return say(tr("Not pasted: %1").arg(text(pasted.problem().text())));
  bench_.session().apply(pasted->job, pasted->name);
  say({});
  Q_EMIT said(pasted->panels > 0 ? tr("%1 panels made from the table").arg(pasted->panels)
                                 : tr("%1 wall ends set from the table").arg(pasted->ends));
}

// ---- words ------------------------------------------------------------------------------------------------------

QString Schedule::problem() const {
  return problem_->isHidden() ? QString() : problem_->text();
}

void Schedule::say(const QString& problem, int below) {
  problem_->setVisible(!problem.isEmpty());
  problem_->setText(problem);
  const QString told =
      problem.isEmpty() ? tr("Slide room is how far a piece may go left and right without a FIX") : problem;
  if (told != accessibleDescription())
    setAccessibleDescription(told);
  if (problem.isEmpty())
    return;
  const int width = viewport()->width(), height = problem_->heightForWidth(width);
  const QRect row = below >= 0 ? visualRect(model_.index(below, ScheduleModel::PanelColumn)) : QRect();
  int top = viewport()->height() - height;
  if (below >= 0)
    top = row.bottom() + 1 + height <= viewport()->height() ? row.bottom() + 1 : row.top() - height;
  problem_->setGeometry(0, top, width, height);
  problem_->raise();
}

QString Schedule::emptyWords() const {
  if (bench_.job().walls.empty())
    return tr("no walls yet: draw the plan first");
  if (model_.hidden() > 0)
    return tr("filters hide %1 wall ends").arg(model_.hidden());
  return tr(
      "No panels yet. Put one on a wall from the shelf, or paste the plan's schedule here (Ctrl+V) as a spreadsheet "
      "copies it, with a head over the columns:\n\nwall   panel   end   mark   from   to\nA   P1   both   HD1   0'   "
      "6'\n\nend is left, right or both, from and to are stations of the panel; column and at may be there, too.");
}

void Schedule::paintEvent(QPaintEvent* event) {
  QTableView::paintEvent(event);
  if (model_.rowCount() > 0)
    return;
  QPainter painter(viewport());
  double y = 22;
  for (const QString& line : emptyWords().split(QLatin1Char('\n'))) {
    if (const QStringList cells = line.split(QStringLiteral("   ")); cells.size() > 1) { // rows of the example
      for (qsizetype i = 0; i < cells.size(); ++i)
        paintWords(painter, theme_, {14.0 + 48.0 * static_cast<double>(i), y}, cells[i], 12, Ink::Text);
      y += 17;
      continue;
    }
    const QStringList lines =
        line.isEmpty() ? QStringList{QString()} : brokenToFit(line, 12, viewport()->width() - 28.0);
    for (const QString& each : lines) {
      paintWords(painter, theme_, {14, y}, each, 12, Ink::Text2);
      y += line.isEmpty() ? 8 : 17;
    }
  }
}

} // namespace sillwright
