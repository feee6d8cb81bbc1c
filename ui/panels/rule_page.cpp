#include "ui/panels/rule_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include "core/drawing/hatch.h"
#include "core/drawing/rule_diagram.h"
#include "core/rules/limit_words.h"
#include "core/rules/wording.h"
#include "ui/panels/look.h"
#include "ui/panels/panel_frame.h"

namespace sillwright {

namespace {

QString text(std::string_view words) { return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size())); }

// The sign of a level with its word.
class LevelMark : public QWidget {
public:
  LevelMark(Level level, ThemeName theme) : level_(level), theme_(theme) {
    setFixedSize(72, 18);
    setAccessibleName(text(word(level)));
  }

protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    Drawing sign;
    drawSwatch(sign, level_, 0, 9, 16, 10, inkOf(level_), 1.35);
    paintPixels(painter, sign, theme_);
    paintWords(painter, theme_, {22, 13.5}, text(word(level_)), 12, inkOf(level_),
               level_ == Level::Fix ? Weight::Bold : Weight::Regular);
  }

private:
  Level level_;
  ThemeName theme_;
};

// The picture of a rule, as large as the page is wide.
class RulePicture : public QWidget {
public:
  RulePicture(const RuleRow& row, ThemeName theme) : row_(row), theme_(theme) {
    setMinimumHeight(150);
    setMaximumHeight(190);
    setAccessibleName(RulePage::tr("Picture: %1").arg(text(row.measure)));
  }

protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    paintPixels(painter, ruleDiagram(row_.name, {0, 0, double(width()), double(height())}), theme_);
  }

private:
  const RuleRow& row_;
  ThemeName theme_;
};

template <class Change> QString grounds(const Change& change) {
  return text(groundsWords(change.reason, change.who, change.date));
}

} // namespace

RulePage::RulePage(QWidget* parent) : QScrollArea(parent) {
  setWidgetResizable(true);
  setFrameShape(NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::StrongFocus); // the keyboard scrolls it
  setAccessibleName(tr("Rule"));
}

void RulePage::show(const Job& job, RuleId id, const std::array<int, 3>& found) {
  std::vector<Waiting> waits = waitsFor(job, id);
  if (id_ == id && found_ == found && waits_ == waits && *job_.limits == *job.limits && job_.units == job.units)
    return;
  const bool other = id_ != id;
  job_ = job;
  id_ = id;
  found_ = found;
  waits_ = std::move(waits);
  build();
  if (other)
    ensureVisible(0, 0);
}

void RulePage::setTheme(ThemeName theme) {
  theme_ = theme;
  if (id_)
    build();
}

// The keyboard stays where it was, though every widget of the page is a new one.
void RulePage::build() {
  const QWidget* at = widget() ? widget()->focusWidget() : nullptr;
  const QString focused = at && at->hasFocus() ? at->objectName() : QString();
  if (QWidget* old = takeWidget()) {
    old->hide();
    old->deleteLater(); // one of its buttons may have brought us here
  }
  const RuleRow& row = rule(*id_);
  auto* sheet = new QWidget;
  column_ = new QVBoxLayout(sheet);
  column_->setContentsMargins(14, 10, 14, 12);
  column_->setSpacing(6);
  addWords(text(row.name), 15, true);
  addWords(text(row.meaning), 13);
  if (!ruleDiagram(row.name, {0, 0, 220, 130}).empty())
    column_->addWidget(new RulePicture(row, theme_));
  addWords(tr("Measured: %1").arg(text(row.measure)), 12, false, true);
  for (const LimitRow& limit : limitTable())
    if (limit.rule == *id_)
      addLimit(limit);
  addCounts(row);
  column_->addStretch(1);
  setWidget(sheet);
  sheet->show();
  if (focused.isEmpty())
    return;
  if (auto* same = sheet->findChild<QWidget*>(focused))
    same->setFocus();
  else
    setFocus();
}

void RulePage::addWords(const QString& words, double size, bool bold, bool second) {
  auto* label = new QLabel(words);
  label->setTextFormat(Qt::PlainText);
  label->setFont(uiFont(size, bold));
  label->setWordWrap(true);
  label->setProperty("second", second);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  column_->addWidget(label);
}

namespace {

QWidget* ruleLine(ThemeName theme) {
  auto* line = new QWidget;
  line->setFixedHeight(1);
  line->setAutoFillBackground(true);
  const Rgb ink = colour(theme, Ink::Rule2);
  line->setStyleSheet(QStringLiteral("background: rgb(%1, %2, %3);").arg(ink.r).arg(ink.g).arg(ink.b));
  return line;
}

WordButton* button(const QString& words, const QString& name, const QString& spoken, ThemeName theme) {
  auto* made = new WordButton(words, nullptr, 12);
  made->setObjectName(name);
  made->setAccessibleName(spoken);
  made->setTheme(theme);
  return made;
}

} // namespace

// One limit: its value here, the book's where it differs, level, source, grounds, and the two ways to change it.
void RulePage::addLimit(const LimitRow& row) {
  const LimitOverride* change = nullptr;
  for (const LimitOverride& each : job_.limits->overrides)
    if (each.key == row.name)
      change = &each;
  const QString name = text(row.name);
  column_->addWidget(ruleLine(theme_));
  auto* head = new QHBoxLayout;
  auto* value = new QLabel(tr("%1 %2").arg(text(sideWords(row.wanted)),
                                           text(limitWords(job_, row, change ? change->value : row.value))));
  value->setFont(uiFont(13, true));
  head->addWidget(value);
  head->addStretch(1);
  if (row.wanted != Wanted::None)
    head->addWidget(new LevelMark(row.level, theme_));
  column_->addLayout(head);
  addWords(name, 11.5, false, true);
  addWords(tr("Source: %1").arg(text(sourceWithStatus(row.source))), 12, false, true);
  if (change) {
    addWords(tr("Changed for this job; the rule book says %1.").arg(text(limitWords(job_, row, row.value))), 12);
    addWords(tr("Reason: %1").arg(grounds(*change)), 12);
  }
  auto* buttons = new QVBoxLayout;
  buttons->setSpacing(4);
  auto* set = button(tr("Change this limit…"), "change " + name, tr("Change the limit %1").arg(name), theme_);
  connect(set, &QPushButton::clicked, this, [this, name] { Q_EMIT changeLimitWanted(name); });
  buttons->addWidget(set, 0, Qt::AlignLeft);
  if (change) {
    auto* back = button(tr("Back to the rule book's value"), "restore " + name,
                        tr("The rule book's value for %1").arg(name), theme_);
    connect(back, &QPushButton::clicked, this, [this, name] { Q_EMIT restoreLimitWanted(name); });
    buttons->addWidget(back, 0, Qt::AlignLeft);
  }
  column_->addLayout(buttons);
}

// The rule as a whole: its source, what it found, and how far that counts in this job.
void RulePage::addCounts(const RuleRow& row) {
  const RuleOverride* change = nullptr;
  for (const RuleOverride& each : job_.limits->rules)
    if (each.rule == row.name)
      change = &each;
  const QString name = text(row.name);
  column_->addWidget(ruleLine(theme_));
  addWords(tr("The rule: %1").arg(text(sourceWithStatus(row.source))), 12, false, true);
  QStringList found;
  for (const Level level : {Level::Fix, Level::Ask, Level::Watch})
    if (const int count = found_[static_cast<std::size_t>(level)]; count > 0)
      found << tr("%1 %2").arg(count).arg(text(word(level)));
  addWords(found.isEmpty() ? tr("Found in this job: nothing.") : tr("Found in this job: %1.").arg(found.join(", ")), 12);
  for (const Waiting& waiting : waits_)
    addWaiting(waiting);
  if (change) {
    addWords(tr("Counts in this job: %1.").arg(text(countsWords(change->counts))), 12, true);
    addWords(tr("Reason: %1").arg(grounds(*change)), 12);
  }
  auto* set = button(tr("How far it counts…"), "counts", tr("How far %1 counts in this job").arg(name), theme_);
  connect(set, &QPushButton::clicked, this, [this, name] { Q_EMIT changeCountsWanted(name); });
  column_->addWidget(set, 0, Qt::AlignLeft);
  if (change) {
    auto* back = button(tr("Let it count as in the rule book"), "restore counts",
                        tr("Let %1 count as in the rule book").arg(name), theme_);
    connect(back, &QPushButton::clicked, this, [this, name] { Q_EMIT restoreCountsWanted(name); });
    column_->addWidget(back, 0, Qt::AlignLeft);
  }
}

// What this job does not say yet, and the way to the first piece that lacks it.
void RulePage::addWaiting(const Waiting& waiting) {
  addWords(text(waitingWords(waiting)), 12);
  if (waiting.first.empty() || !waiting.first.front().at.wall)
    return;
  const PieceRef at = waiting.first.front().at;
  const QString name = text(waiting.first.front().name);
  auto* go = button(tr("Show %1").arg(name), "waits for " + text(waiting.input), tr("Show %1").arg(name), theme_);
  connect(go, &QPushButton::clicked, this, [this, at] { Q_EMIT showWanted(at); });
  column_->addWidget(go, 0, Qt::AlignLeft);
}

QString RulePage::words() const {
  QStringList all;
  if (widget())
    for (const QLabel* label : widget()->findChildren<QLabel*>())
      all << label->text();
  return all.join(QLatin1Char('\n'));
}

} // namespace sillwright
