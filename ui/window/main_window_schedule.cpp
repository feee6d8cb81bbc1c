// The schedule and the punch list in the window: their filters in the heads, tables and columns that are pasted.
#include "ui/window/main_window.h"

#include <QLineEdit>
#include <QMenu>

#include "core/gesture/pasted_bars.h"
#include "core/rules/rule_book.h"
#include "ui/panels/look.h"
#include "ui/window/paste_dialog.h"

namespace sillwright {

namespace {

constexpr int findWidth = 72;

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

WordButton* headSwitch(const QString& words, const char* name, const QString& tip) {
  auto* button = new WordButton(words, nullptr, 12);
  button->setObjectName(QLatin1String(name));
  button->setCheckable(true);
  button->setToolTip(tip);
  return button;
}

} // namespace

void MainWindow::connectSchedule() {
  find_ = new QLineEdit;
  find_->setObjectName(QStringLiteral("find"));
  find_->setFont(uiFont(12));
  find_->setFixedSize(findWidth, 21);
  find_->setPlaceholderText(tr("find"));
  find_->setAccessibleName(tr("Show only wall ends with these words"));
  find_->setToolTip(find_->accessibleName());
  auto* ends = headSwitch(tr("this wall"), "ends-this-wall", tr("Only the ends of the wall in view"));
  places_.schedule->addToHead(find_);
  places_.schedule->addToHead(ends);
  connect(find_, &QLineEdit::textChanged, schedule_, &Schedule::showWith);
  connect(find_, &QLineEdit::returnPressed, this, [this] { schedule_->setFocus(); });
  connect(ends, &QPushButton::clicked, schedule_, &Schedule::showThisWall);
  connect(schedule_, &Schedule::said, status_, &StatusLine::tell);
  connect(schedule_, &Schedule::shownChanged, this, [this, ends] {
    ends->setChecked(schedule_->ends().thisWall());
    showWords();
  });
  auto* rule = headSwitch(tr("rule…"), "punch-rule", tr("Only what one rule says"));
  auto* wall = headSwitch(tr("this wall"), "punch-this-wall", tr("Only what is on the wall in view"));
  places_.punchList->addToHead(rule);
  places_.punchList->addToHead(wall);
  auto* rules = new QMenu(this);
  rules->setObjectName(QStringLiteral("rules"));
  connect(rule, &QPushButton::clicked, this, [this, rule, rules] {
    rule->setChecked(punchList().shownRule().has_value());
    punchList_->fillRuleMenu(*rules);
    rules->popup(rule->mapToGlobal(QPoint(0, rule->height())));
  });
  connect(wall, &QPushButton::clicked, punchList_, &PunchList::showThisWall);
  connect(punchList_, &PunchList::shownChanged, this, [this, rule, wall] {
    wall->setChecked(punchList().thisWall());
    const auto shown = punchList().shownRule();
    rule->setChecked(shown.has_value());
    rule->setAccessibleName(shown ? tr("Only rule %1").arg(QString::fromUtf8(sillwright::rule(*shown).name.data()))
                                  : rule->text());
    rule->setToolTip(shown ? rule->accessibleName() : tr("Only what one rule says"));
    showWords();
  });
}

void MainWindow::findInSchedule() {
  arrangement_->raisePanel(*places_.schedule);
  find_->setFocus();
  find_->selectAll();
}

void MainWindow::pasteIntoSchedule() {
  arrangement_->raisePanel(*places_.schedule);
  schedule_->setFocus();
  schedule_->pasteRows();
}

void MainWindow::showOnlyThisRule() {
  const auto at = punchList().finding(std::max(punchList_->currentIndex().row(), 0));
  if (punchList().shownRule())
    punchList_->showRule(std::nullopt);
  else if (at)
    punchList_->showRule(at->finding().rule);
}

// ---- bars -------------------------------------------------------------------------------------------------------

void MainWindow::pasteBars() {
  bench_.cancel();
  const auto wall = bench_.wall();
  if (!wall)
    return;
  std::optional<PastedBars> bars;
  const auto read = [&](const QString& typed) -> FormReading {
    bars.reset();
    if (typed.trimmed().isEmpty())
      return {
          tr("One bar a line: where it was found, from the hook. With a mark before it, as V3 2'-4\", the bar that is "
             "there was found at that station."),
          false};
    const Result<PastedBars> pasted =
        sillwright::pasteBars(bench_.session().base(), wall->layout.wall->id, typed.toStdString());
    if (!pasted)
      return {text(pasted.problem().text()), false};
    bars = *pasted;
    return {tr("%1 new bars, %2 that are there").arg(bars->added).arg(bars->found), true};
  };
  PasteDialog form(tr("Bars as found on wall %1").arg(text(wall->layout.wall->mark)), tr("Set bars"), read, this);
  if (form.exec() == QDialog::Accepted && bars)
    bench_.session().apply(bars->job, bars->name, bars->bars);
}

} // namespace sillwright
