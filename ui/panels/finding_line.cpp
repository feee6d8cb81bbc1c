#include "ui/panels/finding_line.h"

#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

#include "core/drawing/hatch.h"
#include "core/rules/correction.h"
#include "core/rules/rule_book.h"
#include "core/rules/wording.h"
#include "ui/panels/look.h"

namespace sillwright {

namespace {

constexpr int labelHeight = 26;

QString text(const std::string& words) { return QString::fromStdString(words); }

QString sentenceCase(QString words) {
  if (!words.isEmpty())
    words[0] = words[0].toUpper();
  return words;
}

QLabel* wrapped(double size) {
  auto* label = new QLabel;
  label->setFont(uiFont(size));
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setMinimumWidth(1);
  return label;
}

} // namespace

FindingLine::FindingLine(Workbench& bench, QWidget* parent)
    : QWidget(parent), bench_(bench), sentence_(wrapped(12)), source_(wrapped(11.5)), ways_(new QVBoxLayout),
      why_(new WordButton(tr("why"), this)) {
  source_->setProperty("second", true);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, labelHeight, 8, 4);
  column->setSpacing(2);
  column->addWidget(sentence_);
  column->addWidget(source_);
  ways_->setContentsMargins(0, 2, 0, 0);
  ways_->setSpacing(4);
  column->addLayout(ways_);
  why_->setObjectName(QStringLiteral("why"));
  why_->resize(why_->sizeHint());
  connect(why_, &QPushButton::clicked, this, [this] { Q_EMIT whyWanted(static_cast<int>(finding_.rule)); });
}

void FindingLine::setFinding(const Finding& finding, bool first) {
  finding_ = finding;
  const Job& job = bench_.job();
  const QString sentence = text(message(job, finding));
  const QString advice = sentenceCase(text(adviceWords(finding)));
  sentence_->setText(advice.isEmpty() ? sentence : tr("%1 %2.").arg(sentence, advice));
  source_->setText(text(sourceWords(job, finding)));
  showWays(first);
  why_->setAccessibleName(tr("Why: rule %1").arg(QString::fromUtf8(rule(finding.rule).name.data())));
  setAccessibleName(sentence);
  show();
  update();
}

void FindingLine::showWays(bool first) {
  const std::vector<Correction> ways = allWays(finding_);
  while (buttons_.size() > ways.size()) {
    buttons_.back()->hide();
    buttons_.back()->deleteLater(); // it may be what brought us here
    buttons_.pop_back();
  }
  while (buttons_.size() < ways.size()) {
    auto* made = new WordButton({});
    made->setWraps(true);
    made->setTheme(theme_);
    const std::size_t at = buttons_.size();
    connect(made, &QPushButton::clicked, this, [this, at] {
      const Finding finding = finding_; // ours changes under the call
      bench_.applyWay(finding, allWays(finding)[at]);
    });
    ways_->addWidget(made);
    made->show();
    buttons_.push_back(made);
  }
  for (std::size_t i = 0; i < ways.size(); ++i) {
    const QString words = text(wayWords(bench_.job(), finding_, ways[i]));
    const QString said = i == 0 ? sentenceCase(words) : tr("or %1").arg(words);
    buttons_[i]->setText(said);
    buttons_[i]->setAccessibleName(said);
    buttons_[i]->setPrimary(first && i == 0);
    buttons_[i]->updateGeometry();
  }
}

void FindingLine::setTheme(ThemeName theme) {
  theme_ = theme;
  for (WordButton* button : buttons_)
    button->setTheme(theme);
  why_->setTheme(theme);
  update();
}

// The same place on every finding, so that the hand finds it.
void FindingLine::resizeEvent(QResizeEvent*) { why_->move(std::max(width() - why_->width() - 8, 0), 0); }

void FindingLine::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  Drawing drawing;
  LabelText words;
  words.level = finding_.level;
  words.word = word(finding_.level);
  words.measure = label(bench_.job(), finding_);
  drawLabel(drawing, words, LabelForm::OneLine, 1, 1, 1.12);
  paintPixels(painter, drawing, theme_);
}

} // namespace sillwright
