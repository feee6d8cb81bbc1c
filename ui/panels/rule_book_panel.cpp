#include "ui/panels/rule_book_panel.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/edit/limits.h"
#include "core/rules/limit_words.h"
#include "core/standards/standard_tables.h"
#include "ui/panels/look.h"
#include "ui/panels/rule_page.h"

namespace sillwright {

namespace {

QString text(const std::string& words) { return QString::fromStdString(words); }

FoundByRule countFindings(const Workbench& bench) {
  FoundByRule found(ruleBook().size());
  const WallList& walls = bench.job().walls;
  for (std::size_t i = 0; i < walls.size(); ++i)
    if (const auto wall = bench.checker().wall(walls[i].id))
      for (const Finding& finding : wall->findings)
        ++found[static_cast<std::size_t>(finding.rule)][static_cast<std::size_t>(finding.level)];
  return found;
}

} // namespace

RuleBookPanel::RuleBookPanel(Workbench& bench, QWidget* parent)
    : QWidget(parent), bench_(bench), search_(new QLineEdit), list_(new RuleList), pages_(new QStackedWidget),
      page_(new RulePage), tableTitle_(new QLabel), table_(new QTableWidget), found_(ruleBook().size()) {
  search_->setFont(uiFont(12.5));
  search_->setFixedHeight(26);
  search_->setClearButtonEnabled(true);
  search_->setPlaceholderText(tr("name, meaning, measure or source"));
  search_->setAccessibleName(tr("Search the rule book"));
  search_->installEventFilter(this);
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setFrameShape(QFrame::NoFrame);
  table_->setFont(uiFont(12));
  table_->verticalHeader()->hide();
  table_->horizontalHeader()->setFont(uiFont(11.5));
  table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  table_->setWordWrap(true);
  table_->setAccessibleName(tr("Table of a standard"));
  pages_->addWidget(page_);
  auto* standard = new QWidget;
  auto* under = new QVBoxLayout(standard);
  under->setContentsMargins(0, 10, 0, 0);
  tableTitle_->setFont(uiFont(13, true));
  tableTitle_->setContentsMargins(14, 0, 14, 0);
  tableTitle_->setWordWrap(true);
  under->addWidget(tableTitle_);
  under->addWidget(table_, 1);
  pages_->addWidget(standard);
  auto* top = new QWidget;
  auto* line = new QVBoxLayout(top);
  line->setContentsMargins(8, 6, 8, 6);
  line->addWidget(search_);
  auto* split = new QSplitter(Qt::Vertical);
  split->setHandleWidth(1);
  split->setChildrenCollapsible(false);
  split->addWidget(list_);
  split->addWidget(pages_);
  split->setSizes({320, 480});
  split->setStretchFactor(0, 2);
  split->setStretchFactor(1, 3);
  list_->setMinimumHeight(90);
  pages_->setMinimumHeight(120);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(top);
  column->addWidget(split, 1);
  setFocusProxy(search_);
  connect(search_, &QLineEdit::textChanged, this, &RuleBookPanel::searchFor);
  connect(list_, &QListWidget::currentRowChanged, this, &RuleBookPanel::showChosen);
  connect(page_, &RulePage::changeLimitWanted, this, &RuleBookPanel::changeLimitWanted);
  connect(page_, &RulePage::changeCountsWanted, this, &RuleBookPanel::changeCountsWanted);
  connect(page_, &RulePage::showWanted, this, [this](PieceRef piece) {
    Session& session = bench_.session();
    session.show(piece.wall);
    session.select(piece.piece ? Selection{piece} : Selection{});
    Q_EMIT leaveWanted(); // its card is where the rule book stands
  });
  connect(page_, &RulePage::restoreLimitWanted, this, [this](const QString& limit) {
    Session& session = bench_.session();
    session.apply(restoreLimit(session.base(), limit.toStdString()), tr("Take back a changed limit").toStdString());
  });
  connect(page_, &RulePage::restoreCountsWanted, this, [this](const QString& name) {
    Session& session = bench_.session();
    if (const auto changed = setRuleCounts(session.base(), name.toStdString(), std::nullopt, {}))
      session.apply(*changed, tr("Let a rule count as in the rule book").toStdString());
  });
  auto* leave = new QShortcut(Qt::Key_Escape, this, nullptr, nullptr, Qt::WidgetWithChildrenShortcut);
  connect(leave, &QShortcut::activated, this, [this] {
    if (search_->text().isEmpty())
      Q_EMIT leaveWanted();
    else
      search_->clear();
  });
  list_->chooseFirst();
}

void RuleBookPanel::follow() {
  if (!isVisible() || bench_.session().previewing())
    return;
  found_ = countFindings(bench_);
  list_->setFound(bench_.job(), found_);
  showChosen();
}

void RuleBookPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  follow();
}

void RuleBookPanel::setTheme(ThemeName theme) {
  list_->setTheme(theme);
  page_->setTheme(theme);
}

QString RuleBookPanel::note() const {
  const int shown = list_->shownRules();
  return search_->text().trimmed().isEmpty() ? tr("%1 rules").arg(ruleBook().size())
         : shown == 0                        ? tr("nothing has these words")
                                             : tr("%1 found").arg(shown);
}

void RuleBookPanel::showRule(RuleId id) {
  if (list_->chosenRule() != id || list_->currentItem()->isHidden()) {
    search_->clear();
    list_->choose(id);
  }
  showChosen();
  list_->setFocus(Qt::OtherFocusReason);
}

void RuleBookPanel::focusSearch() {
  search_->setFocus(Qt::ShortcutFocusReason);
  search_->selectAll();
}

void RuleBookPanel::searchFor(const QString& words) {
  list_->search(words);
  if (!list_->currentItem() || list_->currentItem()->isHidden())
    list_->chooseFirst();
  else
    list_->scrollToItem(list_->currentItem());
  Q_EMIT noteChanged();
}

// From the search line, down goes into the list; Enter does, too.
bool RuleBookPanel::eventFilter(QObject* watched, QEvent* event) {
  if (watched == search_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Down || key == Qt::Key_Return || key == Qt::Key_Enter) {
      list_->setFocus(Qt::TabFocusReason);
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

void RuleBookPanel::showChosen() {
  if (const auto id = list_->chosenRule()) {
    page_->show(bench_.job(), *id, found_[static_cast<std::size_t>(*id)]);
    pages_->setCurrentWidget(page_);
  } else if (const auto at = list_->chosenTable()) {
    showTable(*at);
    pages_->setCurrentWidget(table_->parentWidget());
  }
}

// The last column says where each row comes from.
void RuleBookPanel::showTable(std::size_t at) {
  const StandardTable& shown = standardTables()[at];
  const auto columns = static_cast<int>(shown.columns.size());
  table_->clear();
  table_->setColumnCount(columns + 1);
  table_->setRowCount(static_cast<int>(shown.rows.size()));
  QStringList heads;
  for (const std::string& column : shown.columns)
    heads << text(column);
  table_->setHorizontalHeaderLabels(heads << tr("source"));
  for (int r = 0; r < table_->rowCount(); ++r) {
    const StandardRow& row = shown.rows[static_cast<std::size_t>(r)];
    for (int c = 0; c < columns; ++c)
      table_->setItem(r, c, new QTableWidgetItem(text(row.cells[static_cast<std::size_t>(c)])));
    table_->setItem(r, columns, new QTableWidgetItem(text(sourceWithStatus(row.source))));
  }
  tableTitle_->setText(tr("%1: %2").arg(text(shown.title), text(sourceWithStatus(shown.source))));
  table_->setAccessibleDescription(text(shown.title));
  table_->resizeColumnsToContents();
  constexpr int widest = 190;
  for (int c = 0; c <= columns; ++c)
    table_->setColumnWidth(c, std::min(table_->columnWidth(c), widest));
  table_->resizeRowsToContents();
}

} // namespace sillwright
