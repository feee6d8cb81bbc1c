#include "ui/panels/punch_list.h"

#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QMouseEvent>
#include <QPainter>

#include "core/drawing/hatch.h"
#include "core/rules/correction.h"
#include "core/rules/rule_book.h"
#include "core/rules/wording.h"
#include "ui/paint/painter.h"
#include "ui/panels/look.h"
#include "ui/panels/panel_frame.h"

namespace sillwright {

namespace {

constexpr int rowHeight = 72;

QString text(const std::string& words) { return QString::fromStdString(words); }

} // namespace

// ---- model ------------------------------------------------------------------------------------------------------

PunchListModel::PunchListModel(Workbench& bench, QObject* parent) : QAbstractListModel(parent), bench_(bench) {
  startAgain();
}

void PunchListModel::startAgain() {
  beginResetModel();
  filter_.wall = thisWall_ ? bench_.session().wall() : Id{};
  rows_.reset(bench_.job(), bench_.checker(), filter_);
  endResetModel();
}

void PunchListModel::showLevels(LevelSet shown) {
  filter_.levels = shown;
  startAgain();
}

void PunchListModel::showThisWall(bool alone) {
  thisWall_ = alone;
  startAgain();
}

void PunchListModel::showRule(std::optional<RuleId> rule) {
  filter_.rule = rule;
  startAgain();
}

int PunchListModel::hidden() const {
  const Counts& all = bench_.checker().counts();
  return all.fix + all.ask + all.watch - rows_.size();
}

void PunchListModel::follow(const WorkNotice& notice) {
  if (notice.session.file || (thisWall_ && filter_.wall != bench_.session().wall()))
    return startAgain();
  using Kind = FindingRows::Change::Kind;
  for (const Id wall : notice.checked) {
    if (!rows_.knows(bench_.job(), wall))
      return startAgain();
    rows_.update(
        wall, bench_.checker().wall(wall),
        [this](const FindingRows::Change& change) {
          const int last = change.first + change.count - 1;
          if (change.kind == Kind::Removed)
            beginRemoveRows({}, change.first, last);
          else
            beginInsertRows({}, change.first, last);
        },
        [this](const FindingRows::Change& change) {
          if (change.kind == Kind::Removed)
            endRemoveRows();
          else if (change.kind == Kind::Inserted)
            endInsertRows();
          else
            Q_EMIT dataChanged(index(change.first), index(change.first + change.count - 1));
        });
  }
}

int PunchListModel::rowAbout(PieceRef piece) const {
  const auto wall = bench_.wall();
  if (!wall || !piece.piece || wall->layout.wall->id != piece.wall)
    return -1;
  for (std::size_t i = 0; i < wall->findings.size(); ++i)
    if (!wall->findings[i].pieces.empty() && wall->findings[i].pieces.front() == piece.piece)
      return rows_.rowOf(piece.wall, i);
  return -1;
}

int PunchListModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : rows_.size(); }

QVariant PunchListModel::data(const QModelIndex& index, int role) const {
  const auto row = rows_.row(index.row());
  if (!row)
    return {};
  const Job& job = bench_.job();
  const Finding& finding = row->finding();
  if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole)
    return tr("%1 %2, %3").arg(text(std::string(word(finding.level))), text(markedLabel(job, finding)),
                               text(whereabouts(job, finding)));
  if (role == Qt::AccessibleDescriptionRole || role == Qt::ToolTipRole)
    return text(message(job, finding) + " " + adviceWords(finding) + (adviceWords(finding).empty() ? "" : "; ") +
                sourceWords(job, finding));
  return {};
}

// ---- a row ------------------------------------------------------------------------------------------------------

QRectF PunchListDelegate::fixButton(const Job& job, const Finding& finding, const QRect& row) {
  const QString words = text(correctionShort(job, finding));
  if (words.isEmpty())
    return {};
  const double width = buttonWidth(words, 12.5);
  return {row.right() + 1 - 12 - width, row.top() + 32.0, width, 24};
}

QRectF PunchListDelegate::waysButton(const Job& job, const Finding& finding, const QRect& row) {
  if (allWays(finding).size() < 2)
    return {};
  const QRectF fix = fixButton(job, finding, row);
  const double width = buttonWidth(PunchList::tr("or…"), 12.5);
  return {fix.x() - 6 - width, fix.y(), width, fix.height()};
}

QSize PunchListDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const { return {200, rowHeight}; }

void PunchListDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const auto* model = qobject_cast<const PunchListModel*>(index.model());
  const auto row = model ? model->finding(index.row()) : std::nullopt;
  if (!row)
    return;
  const Job& job = model->job();
  const Finding& finding = row->finding();
  const QRect box = option.rect;
  const bool selected = option.state.testFlag(QStyle::State_Selected);
  paintRowGround(*painter, theme_, box, selected);

  const double x = box.x(), y = box.y();
  Drawing swatch;
  drawSwatch(swatch, finding.level, x + 16, y + 20, 16, 10, inkOf(finding.level), 1.35);
  paintPixels(*painter, swatch, theme_);
  const QString mark = finding.pieces.empty() ? text(markOf(job, {finding.wall, {}}))
                                              : text(markOf(job, {finding.wall, finding.pieces.front()}));
  const double markEnd = paintWords(*painter, theme_, {x + 40, y + 25}, mark, 13.5, Ink::Text, Weight::Bold);
  const double labelAt = std::max(x + 66, markEnd + 8);
  paintWords(*painter, theme_, {labelAt, y + 25}, elided(text(label(job, finding)), 13.5, box.right() - 10 - labelAt),
             13.5, inkOf(finding.level), finding.level == Level::Fix ? Weight::Bold : Weight::Regular);
  const QRectF button = fixButton(job, finding, box);
  const QRectF ways = waysButton(job, finding, box);
  const double room = (!ways.isEmpty() ? ways.x() : !button.isEmpty() ? button.x() : box.right()) - 10 - (x + 40);
  QString where = text(whereabouts(job, finding));
  if (wordsWidth(where, 12) > room) // the running value stands under the wall, too
    where = text(whatFallsShort(job, finding));
  paintWords(*painter, theme_, {x + 40, y + 43}, elided(where, 12, room), 12, Ink::Text);
  const std::string advice = adviceWords(finding);
  const QString second = text((advice.empty() ? "" : advice + " · ") + sourceWords(job, finding));
  paintWords(*painter, theme_, {x + 40, y + 59}, elided(second, 11.5, room), 11.5, Ink::Text2);
  if (!button.isEmpty()) {
    ButtonLook look;
    look.box = button;
    look.words = text(correctionShort(job, finding));
    look.primary = selected;
    paintButton(*painter, theme_, look);
  }
  if (!ways.isEmpty()) {
    ButtonLook look;
    look.box = ways;
    look.words = PunchList::tr("or…");
    paintButton(*painter, theme_, look);
  }
}

// ---- view -------------------------------------------------------------------------------------------------------

PunchList::PunchList(Workbench& bench, QWidget* parent) : QListView(parent), bench_(bench), model_(bench) {
  setModel(&model_);
  setItemDelegate(&delegate_);
  setUniformItemSizes(true);
  setFrameShape(QFrame::NoFrame);
  setVerticalScrollMode(ScrollPerPixel);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setEditTriggers(NoEditTriggers);
  setAccessibleName(tr("Punch list"));
  setWhatsThis(tr("Enter goes to the finding, F puts it right, O lists the other ways, W opens its rule."));
}

void PunchList::follow(const WorkNotice& notice) {
  model_.follow(notice);
  const Selection& selection = bench_.session().selection();
  const PieceRef piece = selection.empty() ? PieceRef{} : selection.back();
  const auto now = model_.finding(currentIndex().row());
  const bool fits = now && !now->finding().pieces.empty() && now->finding().wall == piece.wall &&
                    now->finding().pieces.front() == piece.piece;
  if (fits && selectionModel()->isSelected(currentIndex()))
    return;
  if (const int row = model_.rowAbout(piece); row >= 0)
    setCurrentIndex(model_.index(row));
  else
    clearSelection();
}

void PunchList::setTheme(ThemeName theme) {
  theme_ = theme;
  delegate_.setTheme(theme);
  viewport()->update();
}

// Findings are copied: what they come from changes under the call.
void PunchList::fixRow(int row, std::size_t way) {
  const auto found = model_.finding(row);
  if (!found)
    return;
  const Finding finding = found->finding();
  const std::vector<Correction> ways = allWays(finding);
  if (way < ways.size())
    bench_.applyWay(finding, ways[way]);
}

void PunchList::goToRow(int row) {
  const auto found = model_.finding(row);
  if (!found)
    return;
  const Finding finding = found->finding();
  bench_.goTo(finding);
  setCurrentIndex(model_.index(row)); // of several about the piece, this one
}

QString PunchList::note() const {
  const auto wall = bench_.wall();
  if (!wall)
    return {};
  const Counts& all = bench_.checker().counts();
  const int here = static_cast<int>(wall->findings.size());
  const int elsewhere = all.fix + all.ask + all.watch - here;
  const QString mark = text(wall->layout.wall->mark);
  if (model_.hidden() > 0)
    return (model_.shownRule() ? QString::fromUtf8(rule(*model_.shownRule()).name.data()) + QStringLiteral(", ")
                               : QString()) +
           tr("%1 shown, %2 hidden").arg(model_.rowCount()).arg(model_.hidden());
  if (here == 0 && elsewhere == 0)
    return tr("nothing found");
  return tr("%1 of %2 on wall %3").arg(here).arg(here + elsewhere).arg(mark); // short: filters stand beside it
}

void PunchList::mouseReleaseEvent(QMouseEvent* event) {
  QListView::mouseReleaseEvent(event);
  const QModelIndex index = indexAt(event->position().toPoint());
  const auto found = model_.finding(index.row());
  if (event->button() != Qt::LeftButton || !index.isValid() || !found)
    return;
  const QRectF button = PunchListDelegate::fixButton(bench_.job(), found->finding(), visualRect(index));
  const QRectF ways = PunchListDelegate::waysButton(bench_.job(), found->finding(), visualRect(index));
  if (button.contains(event->position()))
    fixRow(index.row());
  else if (ways.contains(event->position()))
    askWay(index.row());
  else
    goToRow(index.row());
}

void PunchList::keyPressEvent(QKeyEvent* event) {
  const int row = currentIndex().row();
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
    return goToRow(row);
  if (event->key() == Qt::Key_F && event->modifiers() == Qt::NoModifier)
    return fixRow(row);
  if (event->key() == Qt::Key_O && event->modifiers() == Qt::NoModifier)
    return askWay(row);
  if (event->key() == Qt::Key_W && event->modifiers() == Qt::NoModifier)
    return askWhy(row);
  QListView::keyPressEvent(event);
}

void PunchList::askWhy(int row) {
  if (const auto found = model_.finding(row))
    Q_EMIT whyWanted(static_cast<int>(found->finding().rule));
}

void PunchList::showThisWall(bool alone) {
  model_.showThisWall(alone);
  Q_EMIT shownChanged();
}

void PunchList::showRule(std::optional<RuleId> rule) {
  model_.showRule(rule);
  Q_EMIT shownChanged();
}

void PunchList::fillRuleMenu(QMenu& menu) {
  menu.clear();
  const auto add = [&](const QString& words, std::optional<RuleId> rule) {
    QAction* action = menu.addAction(words);
    action->setCheckable(true);
    action->setChecked(model_.shownRule() == rule);
    connect(action, &QAction::triggered, this, [this, rule] { showRule(rule); });
  };
  add(tr("all rules"), std::nullopt);
  for (std::size_t i = 0; i < model_.byRule().size(); ++i) {
    const auto id = static_cast<RuleId>(i);
    if (model_.byRule()[i] > 0 || model_.shownRule() == id)
      add(tr("%1 (%2)").arg(QString::fromUtf8(rule(id).name.data())).arg(model_.byRule()[i]), id);
  }
}

void PunchList::addWays(QMenu& menu, int row) {
  const auto found = model_.finding(row);
  const std::vector<Correction> ways = allWays(found->finding());
  for (std::size_t i = 0; i < ways.size(); ++i)
    connect(menu.addAction(tr("Put it right: %1").arg(text(wayWords(bench_.job(), found->finding(), ways[i])))),
            &QAction::triggered, this, [this, row, i] { fixRow(row, i); });
}

void PunchList::askWay(int row) {
  const auto found = model_.finding(row);
  if (!found || allWays(found->finding()).size() < 2)
    return;
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  addWays(*menu, row);
  const QRectF button = PunchListDelegate::waysButton(bench_.job(), found->finding(), visualRect(model_.index(row)));
  menu->popup(viewport()->mapToGlobal(button.bottomLeft().toPoint()));
}

// By mouse where it points; by key at the current row.
void PunchList::contextMenuEvent(QContextMenuEvent* event) {
  const bool byKey = event->reason() == QContextMenuEvent::Keyboard;
  const QModelIndex index = byKey ? currentIndex() : indexAt(event->pos());
  const auto found = model_.finding(index.row());
  if (!found)
    return;
  setCurrentIndex(index);
  const int row = index.row();
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  connect(menu->addAction(tr("Go there")), &QAction::triggered, this, [this, row] { goToRow(row); });
  addWays(*menu, row);
  QAction* why = menu->addAction(tr("Why: rule %1").arg(QString::fromUtf8(rule(found->finding().rule).name.data())));
  why->setObjectName(QStringLiteral("why"));
  connect(why, &QAction::triggered, this, [this, row] { askWhy(row); });
  menu->popup(byKey ? viewport()->mapToGlobal(visualRect(index).center()) : event->globalPos());
}

void PunchList::paintEvent(QPaintEvent* event) {
  QListView::paintEvent(event);
  QPainter painter(viewport());
  const int used = model_.rowCount() * rowHeight;
  const QString words = model_.rowCount() > 0 && model_.hidden() > 0 ? tr("filters hide %1").arg(model_.hidden())
                        : model_.rowCount() > 0      ? tr("worst first · click to go there · button puts it right")
                        : bench_.job().walls.empty() ? tr("nothing to check yet")
                        : model_.hidden() > 0        ? tr("nothing to show: filters hide %1").arg(model_.hidden())
                                                     : tr("nothing to put right");
  if (used + 24 < viewport()->height())
    paintWords(painter, theme_, {16, used + 19.0}, elided(words, 11.5, viewport()->width() - 24.0), 11.5, Ink::Text2);
}

} // namespace sillwright
