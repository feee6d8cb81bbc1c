// The rule book in the window: how it is reached and left, and the forms that change what it says for a job.
#include "ui/window/main_window.h"

#include <QDate>

#include <algorithm>

#include "core/edit/limits.h"
#include "core/rules/limit_words.h"
#include "core/rules/word_parts.h"
#include "ui/window/form_dialog.h"

namespace sillwright {

namespace {

QString text(std::string_view words) { return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size())); }

// The last three lines of a form that changes the rule book.
Grounds groundsOf(const std::vector<QString>& typed) {
  return {typed[1].toStdString(), typed[2].toStdString(), typed[3].toStdString()};
}

QString today() { return QDate::currentDate().toString(Qt::ISODate); }

// What is wrong, for somebody at a form.
FormReading refused(const Problem& problem) {
  if (problem.place == "reason")
    return {MainWindow::tr("Say why: the reason is shown with every finding and printed on the sheet."), false};
  return {text(problem.message), false};
}

template <class Change> std::vector<FormLine> groundsLines(const Change* change, const Job& job) {
  return {{MainWindow::tr("Reason"), change ? text(change->reason) : QString(), MainWindow::tr("letter of the engineer, 2 March")},
          {MainWindow::tr("Who says so"), text(change ? change->who : job.title.by), {}},
          {MainWindow::tr("Date"), change && !change->date.empty() ? text(change->date) : today(), MainWindow::tr("2031-03-02")}};
}

} // namespace

// ---- reached and left -------------------------------------------------------------------------------------------

void MainWindow::connectRuleBook() {
  connect(punchList_, &PunchList::whyWanted, this, [this](int rule) { showRule(static_cast<RuleId>(rule)); });
  connect(card_, &Card::whyWanted, this, [this](int rule) { showRule(static_cast<RuleId>(rule)); });
  connect(ruleBook_, &RuleBookPanel::leaveWanted, this, &MainWindow::leaveRuleBook);
  connect(ruleBook_, &RuleBookPanel::noteChanged, this, [this] { places_.ruleBook->setNote(ruleBook_->note()); });
  connect(ruleBook_, &RuleBookPanel::changeLimitWanted, this, &MainWindow::changeLimitOfJob);
  connect(ruleBook_, &RuleBookPanel::changeCountsWanted, this, &MainWindow::changeCountsOfRule);
  auto* close = new WordButton(tr("close"), nullptr, 12);
  close->setAccessibleName(tr("Close the rule book"));
  connect(close, &QPushButton::clicked, this, &MainWindow::leaveRuleBook);
  places_.ruleBook->addToHead(close);
}

void MainWindow::raiseRuleBook() {
  QWidget* now = focusWidget();
  if (now && !places_.ruleBook->isAncestorOf(now))
    beforeRuleBook_ = now;
  if (!ruleBookShown())
    arrangement_->showRuleBook(true);
}

void MainWindow::openRuleBook() {
  raiseRuleBook();
  ruleBook_->focusSearch();
  actions_->update();
}

void MainWindow::leaveRuleBook() {
  arrangement_->showRuleBook(false);
  alignSection();
  QWidget* back = beforeRuleBook_ && beforeRuleBook_->isVisible() ? beforeRuleBook_.data() : elevation_;
  back->setFocus(Qt::OtherFocusReason);
  actions_->update();
}

void MainWindow::showRule(RuleId id) {
  raiseRuleBook();
  ruleBook_->showRule(id);
  actions_->update();
}

void MainWindow::explainFinding() { punchList_->askWhy(std::max(punchList_->currentIndex().row(), 0)); }

// ---- forms ------------------------------------------------------------------------------------------------------

void MainWindow::changeLimitOfJob(const QString& limit) {
  bench_.cancel();
  const std::string name = limit.toStdString();
  const auto key = limitKey(name);
  if (!key)
    return;
  const LimitRow& row = limitTable()[static_cast<std::size_t>(*key)];
  const Job& job = bench_.job();
  const LimitOverride* change = nullptr; // the job stays as it is while the form is open
  for (const LimitOverride& each : job.limits->overrides)
    if (each.key == name)
      change = &each;
  const double now = change ? change->value : row.value;
  const QString book = text(limitWords(job, row, row.value));
  const auto read = [&](const std::vector<QString>& typed) -> FormReading {
    const Result<double> value = readLimit(job, row, typed[0].toStdString());
    if (value && *value == row.value)
      return {change ? tr("%1 is the rule book's own value: the change is taken back.").arg(book)
                     : tr("%1 is the rule book's own value: nothing to change.").arg(book),
              change != nullptr};
    const Result<Job> changed = changeLimit(bench_.session().base(), name, typed[0].toStdString(), groundsOf(typed));
    if (!changed)
      return refused(changed.problem());
    return {tr("%1 %2 in this job; the rule book says %3.")
                .arg(text(sideWords(row.wanted)), text(limitWords(job, row, *value)), book),
            true};
  };
  const QString unit = row.unit == "in" ? tr("Value") : tr("Value, %1").arg(row.unit == "d" ? tr("diameters") : text(row.unit));
  std::vector<FormLine> lines{{unit, row.unit == "in" ? text(limitWords(job, row, now)) : text(numberWords(now)), book}};
  for (FormLine& line : groundsLines(change, job))
    lines.push_back(std::move(line));
  FormDialog form(tr("Change a limit: %1").arg(limit), lines, tr("Change it"), read, this);
  if (form.exec() != QDialog::Accepted)
    return;
  const std::vector<QString> typed = form.typed();
  if (const Result<Job> changed = changeLimit(bench_.session().base(), name, typed[0].toStdString(), groundsOf(typed)))
    bench_.session().apply(*changed, tr("Change a limit").toStdString());
}

void MainWindow::changeCountsOfRule(const QString& rule) {
  bench_.cancel();
  const std::string name = rule.toStdString();
  const Job& job = bench_.job();
  const RuleOverride* change = nullptr;
  for (const RuleOverride& each : job.limits->rules)
    if (each.rule == name)
      change = &each;
  const QString asInBook = tr("as in the rule book");
  std::vector<QString> choices{asInBook};
  for (const RuleCounts counts : {RuleCounts::Ask, RuleCounts::Watch, RuleCounts::None})
    choices.push_back(text(countsWords(counts)));
  const auto chosen = [&](const QString& words) -> std::optional<RuleCounts> {
    for (const RuleCounts counts : {RuleCounts::Ask, RuleCounts::Watch, RuleCounts::None})
      if (words == text(countsWords(counts)))
        return counts;
    return std::nullopt;
  };
  const auto read = [&](const std::vector<QString>& typed) -> FormReading {
    const auto counts = chosen(typed[0]);
    const Result<Job> changed = setRuleCounts(bench_.session().base(), name, counts, groundsOf(typed));
    if (!changed)
      return refused(changed.problem());
    return {!counts                      ? tr("What it finds counts as the rule book says.")
            : *counts == RuleCounts::None ? tr("The rule is not looked at in this job, and the sheet says so.")
                                          : tr("What it finds is %1 in this job.").arg(typed[0]),
            true};
  };
  std::vector<FormLine> lines{{tr("In this job"), change ? text(countsWords(change->counts)) : asInBook, {}, choices}};
  for (FormLine& line : groundsLines(change, job))
    lines.push_back(std::move(line));
  FormDialog form(tr("How far a rule counts: %1").arg(rule), lines, tr("Set"), read, this);
  if (form.exec() != QDialog::Accepted)
    return;
  const std::vector<QString> typed = form.typed();
  if (const Result<Job> changed =
          setRuleCounts(bench_.session().base(), name, chosen(typed[0]), groundsOf(typed)))
    bench_.session().apply(*changed, tr("Change how far a rule counts").toStdString());
}

void MainWindow::editJobOptions() {
  bench_.cancel();
  const std::vector<Field> options = jobOptions(bench_.job());
  std::vector<FormLine> lines;
  for (const Field& option : options) {
    FormLine line{tr("%1 (%2)").arg(text(option.title), text(option.note)), text(option.text), {}};
    for (const std::string& choice : option.choices)
      line.choices.push_back(text(choice));
    lines.push_back(std::move(line));
  }
  const auto made = [&](const std::vector<QString>& typed) -> Result<Job> {
    Job job = bench_.session().base();
    for (std::size_t i = 0; i < options.size(); ++i) {
      Result<Job> changed = setJobOption(job, options[i].key, typed[i].trimmed().toStdString());
      if (!changed)
        return changed.problem();
      job = std::move(changed.value());
    }
    return job;
  };
  const auto read = [&](const std::vector<QString>& typed) -> FormReading {
    const Result<Job> job = made(typed);
    if (!job)
      return {text(job.problem().text()), false};
    return {tr("These say which clauses apply. They are entered from the approved plans."), true};
  };
  FormDialog form(tr("Options from the plans"), lines, tr("Set"), read, this);
  if (form.exec() != QDialog::Accepted)
    return;
  if (const Result<Job> job = made(form.typed()))
    bench_.session().apply(*job, tr("Set the options of the job").toStdString());
}

} // namespace sillwright
