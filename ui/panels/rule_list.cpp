#include "ui/panels/rule_list.h"

#include <QPainter>

#include <algorithm>

#include "core/drawing/hatch.h"
#include "core/rules/limit_words.h"
#include "core/rules/wording.h"
#include "core/standards/standard_tables.h"
#include "ui/paint/painter.h"
#include "ui/panels/look.h"

namespace sillwright {

namespace {

constexpr int headHeight = 25;
constexpr int lineHeight = 41;

enum Role { Kind = Qt::UserRole, At, Second, Searched, Changed };
enum KindOfRow { Head, Rule, Table };

QString text(std::string_view words) { return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size())); }

QString subjectWords(std::string_view subject) {
  const std::pair<std::string_view, QString> named[] = {
      {"strap", RuleList::tr("Straps")},   {"bolt", RuleList::tr("Bolts")},       {"washer", RuleList::tr("Washers")},
      {"rod", RuleList::tr("Rods")},       {"column", RuleList::tr("Columns")},   {"panel", RuleList::tr("Shear panels")},
      {"sill", RuleList::tr("Sills")},     {"bar", RuleList::tr("Bars")},         {"pour", RuleList::tr("Pour line")},
      {"form", RuleList::tr("Forms")}};
  for (const auto& [name, words] : named)
    if (name == subject)
      return words;
  return text(subject);
}

QString searchedIn(const RuleRow& row) {
  QString all = text(row.name) + ' ' + text(row.meaning) + ' ' + text(row.measure) + ' ' +
                text(sourceWithStatus(row.source));
  for (const LimitRow& limit : limitTable())
    if (limit.rule == row.id)
      all += ' ' + text(limit.name) + ' ' + text(sourceWithStatus(limit.source));
  return all;
}

QString searchedIn(const StandardTable& table) {
  QString all = text(table.title) + ' ' + text(sourceWithStatus(table.source));
  for (const std::string& column : table.columns)
    all += ' ' + text(column);
  for (const StandardRow& row : table.rows)
    if (!row.cells.empty())
      all += ' ' + text(row.cells.front());
  return all;
}

// In the order in which the book first speaks of them.
std::vector<std::string_view> subjects() {
  std::vector<std::string_view> all;
  for (const RuleRow& row : ruleBook())
    if (std::find(all.begin(), all.end(), row.subject) == all.end())
      all.push_back(row.subject);
  return all;
}

bool changedIn(const Job& job, const RuleRow& row) {
  const auto& rules = job.limits->rules;
  if (std::any_of(rules.begin(), rules.end(), [&](const RuleOverride& change) { return change.rule == row.name; }))
    return true;
  const auto& limits = job.limits->overrides;
  return std::any_of(limits.begin(), limits.end(), [&](const LimitOverride& change) {
    const auto key = limitKey(change.key);
    return key && limitTable()[static_cast<std::size_t>(*key)].rule == row.id;
  });
}

} // namespace

// ---- a row ------------------------------------------------------------------------------------------------------

QSize RuleListDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
  return {120, index.data(Kind).toInt() == Head ? headHeight : lineHeight};
}

void RuleListDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const QRect box = option.rect;
  const double x = box.x(), y = box.y();
  if (index.data(Kind).toInt() == Head)
    return paintRowHead(*painter, theme, box, index.data(Qt::DisplayRole).toString());
  paintRowGround(*painter, theme, box, option.state.testFlag(QStyle::State_Selected));
  const double room = box.right() - 8 - (x + 14);
  paintWords(*painter, theme, {x + 14, y + 33}, elided(index.data(Second).toString(), 11.5, room), 11.5, Ink::Text2);
  if (index.data(Kind).toInt() == Rule)
    return paintRule(*painter, box, index);
  paintWords(*painter, theme, {x + 14, y + 17}, elided(index.data(Qt::DisplayRole).toString(), 12.5, room), 12.5,
             Ink::Text);
}

// Name at the left; at the right the signs of its levels, each with how many it found.
void RuleListDelegate::paintRule(QPainter& painter, const QRect& box, const QModelIndex& index) const {
  const RuleRow& row = ruleBook()[static_cast<std::size_t>(index.data(At).toInt())];
  const double y = box.y();
  double right = box.right() - 8;
  for (auto level = row.levels.rbegin(); level != row.levels.rend(); ++level) {
    const auto at = static_cast<std::size_t>(row.id);
    const int count = at < found.size() ? found[at][static_cast<std::size_t>(*level)] : 0;
    const QString number = QString::number(count);
    right -= wordsWidth(number, 12);
    paintWords(painter, theme, {right, y + 17}, number, 12, count > 0 ? Ink::Text : Ink::Text2,
               count > 0 ? Weight::Bold : Weight::Regular);
    right -= 20;
    Drawing sign;
    drawSwatch(sign, *level, right, y + 12.5, 15, 9, inkOf(*level), 1.25);
    paintPixels(painter, sign, theme);
    right -= 9;
  }
  const double end = paintWords(painter, theme, {box.x() + 14.0, y + 17}, text(row.name), 12.5, Ink::Text, Weight::Bold);
  const QString changed = RuleList::tr("changed");
  if (index.data(Changed).toBool() && end + 8 + wordsWidth(changed, 11) < right)
    paintWords(painter, theme, {end + 8, y + 17}, changed, 11, Ink::Hand);
}

// ---- the list ---------------------------------------------------------------------------------------------------

RuleList::RuleList(QWidget* parent) : QListWidget(parent) {
  setItemDelegate(&delegate_);
  setFrameShape(NoFrame);
  setVerticalScrollMode(ScrollPerPixel);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setAccessibleName(tr("Rules"));
  for (const std::string_view subject : subjects()) {
    addHead(subjectWords(subject));
    for (std::size_t i = 0; i < ruleBook().size(); ++i)
      if (const RuleRow& row = ruleBook()[i]; row.subject == subject)
        addLine(text(row.name), text(row.meaning), searchedIn(row), Rule, static_cast<int>(i));
  }
  addHead(tr("Tables of standards"));
  for (std::size_t i = 0; i < standardTables().size(); ++i) {
    const StandardTable& table = standardTables()[i];
    addLine(text(table.title), text(sourceWithStatus(table.source)), searchedIn(table), Table, static_cast<int>(i));
  }
}

void RuleList::addHead(const QString& title) {
  auto* head = new QListWidgetItem(title, this);
  head->setFlags(Qt::NoItemFlags);
  head->setData(Kind, Head);
}

QListWidgetItem* RuleList::addLine(const QString& title, const QString& second, const QString& searched, int kind,
                                   int at) {
  auto* line = new QListWidgetItem(title, this);
  line->setData(Kind, kind);
  line->setData(At, at);
  line->setData(Second, second);
  line->setData(Searched, searched);
  line->setToolTip(second);
  line->setData(Qt::AccessibleTextRole, tr("%1. %2").arg(title, second));
  return line;
}

void RuleList::search(const QString& words) {
  const QStringList wanted = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  QListWidgetItem* head = nullptr;
  for (int i = 0; i < count(); ++i) {
    QListWidgetItem* line = item(i);
    if (line->data(Kind).toInt() == Head) {
      head = line;
      head->setHidden(true);
      continue;
    }
    const QString text = line->data(Searched).toString();
    const bool fits = std::all_of(wanted.begin(), wanted.end(), [&](const QString& word) {
      return text.contains(word, Qt::CaseInsensitive);
    });
    line->setHidden(!fits);
    if (fits && head)
      head->setHidden(false);
  }
}

void RuleList::setFound(const Job& job, FoundByRule found) {
  for (int i = 0; i < count(); ++i) {
    QListWidgetItem* line = item(i);
    if (line->data(Kind).toInt() != Rule)
      continue;
    const RuleRow& row = ruleBook()[static_cast<std::size_t>(line->data(At).toInt())];
    const bool changed = changedIn(job, row);
    line->setData(Changed, changed);
    const auto& counts = found[static_cast<std::size_t>(row.id)];
    QString spoken = tr("%1. %2").arg(text(row.name), text(row.meaning));
    for (const Level level : row.levels)
      spoken += tr(" %1: %2.").arg(text(word(level))).arg(counts[static_cast<std::size_t>(level)]);
    line->setData(Qt::AccessibleTextRole, changed ? tr("%1 Changed for this job.").arg(spoken) : spoken);
  }
  delegate_.found = std::move(found);
  viewport()->update();
}

void RuleList::setTheme(ThemeName theme) {
  delegate_.theme = theme;
  viewport()->update();
}

void RuleList::choose(RuleId id) {
  for (int i = 0; i < count(); ++i)
    if (item(i)->data(Kind).toInt() == Rule &&
        ruleBook()[static_cast<std::size_t>(item(i)->data(At).toInt())].id == id) {
      if (item(i)->isHidden())
        search({});
      setCurrentRow(i);
      scrollToItem(item(i), PositionAtCenter);
    }
}

void RuleList::chooseFirst() {
  for (int i = 0; i < count(); ++i)
    if (item(i)->data(Kind).toInt() != Head && !item(i)->isHidden())
      return setCurrentRow(i);
}

std::optional<RuleId> RuleList::chosenRule() const {
  const QListWidgetItem* line = currentItem();
  if (!line || line->data(Kind).toInt() != Rule)
    return std::nullopt;
  return ruleBook()[static_cast<std::size_t>(line->data(At).toInt())].id;
}

std::optional<std::size_t> RuleList::chosenTable() const {
  const QListWidgetItem* line = currentItem();
  if (!line || line->data(Kind).toInt() != Table)
    return std::nullopt;
  return static_cast<std::size_t>(line->data(At).toInt());
}

int RuleList::shownRules() const {
  int shown = 0;
  for (int i = 0; i < count(); ++i)
    shown += item(i)->data(Kind).toInt() != Head && !item(i)->isHidden();
  return shown;
}

} // namespace sillwright
