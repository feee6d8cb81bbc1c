#include "ui/panels/finding_line.h"

#include <QPainter>

#include <algorithm>

#include "core/drawing/hatch.h"
#include "core/rules/rule_book.h"
#include "core/rules/wording.h"
#include "ui/panels/look.h"

namespace sillwright {

namespace {

QString text(const std::string& words) { return QString::fromStdString(words); }

QString sentenceCase(QString words) {
  if (!words.isEmpty())
    words[0] = words[0].toUpper();
  return words;
}

} // namespace

FindingLine::FindingLine(Workbench& bench, QWidget* parent)
    : QWidget(parent), bench_(bench), fix_(new WordButton({}, this)), why_(new WordButton(tr("why"), this)) {
  why_->setObjectName(QStringLiteral("why"));
  why_->resize(why_->sizeHint());
  connect(why_, &QPushButton::clicked, this, [this] { emit whyWanted(static_cast<int>(finding_.rule)); });
  connect(fix_, &QPushButton::clicked, this, [this] {
    const Finding finding = finding_; // ours changes under the call
    bench_.applyCorrection(finding);
  });
}

void FindingLine::setFinding(const Finding& finding, bool first) {
  finding_ = finding;
  const Job& job = bench_.job();
  const QString words = sentenceCase(text(correctionWords(job, finding)));
  fix_->setText(words);
  fix_->setAccessibleName(words);
  fix_->setPrimary(first);
  fix_->setVisible(!words.isEmpty());
  fix_->resize(fix_->sizeHint());
  fix_->move(0, 28);
  setFixedHeight(56);
  why_->setAccessibleName(tr("Why: rule %1").arg(QString::fromUtf8(rule(finding.rule).name.data())));
  setAccessibleName(text(message(job, finding)));
  setToolTip(text(message(job, finding)));
  show();
  update();
}

void FindingLine::setTheme(ThemeName theme) {
  theme_ = theme;
  fix_->setTheme(theme);
  why_->setTheme(theme);
  update();
}

// The same place on every finding, so that the hand finds it.
void FindingLine::resizeEvent(QResizeEvent*) { why_->move(std::max(width() - why_->width() - 8, 0), 28); }

void FindingLine::paintEvent(QPaintEvent*) {
  const Job& job = bench_.job();
  QPainter painter(this);
  Drawing drawing;
  LabelText words;
  words.level = finding_.level;
  words.word = word(finding_.level);
  words.measure = label(job, finding_);
  const Bounds box = drawLabel(drawing, words, LabelForm::OneLine, 1, 1, 1.12);
  paintPixels(painter, drawing, theme_);
  const double at = box.x1 + 10;
  if (const std::string advice = adviceWords(finding_); !advice.empty())
    paintWords(painter, theme_, {1, 44}, elided(text(advice), 12, why_->x() - 8.0), 12, Ink::Text);
  if (width() - at > 40)
    paintWords(painter, theme_, {at, 14}, elided(text(sourceWords(job, finding_)), 11, width() - at), 11, Ink::Text2);
}

} // namespace sillwright
