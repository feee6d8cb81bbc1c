#include "ui/panels/finding_line.h"

#include <QPainter>

#include "core/drawing/hatch.h"
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
    : QWidget(parent), bench_(bench), fix_(new WordButton({}, this)) {
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
  setFixedHeight(words.isEmpty() ? 44 : 56);
  setAccessibleName(text(message(job, finding)));
  setToolTip(text(message(job, finding)));
  show();
  update();
}

void FindingLine::setTheme(ThemeName theme) {
  theme_ = theme;
  fix_->setTheme(theme);
  update();
}

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
    paintWords(painter, theme_, {1, 38}, text(advice), 12, Ink::Text);
  if (width() - at > 40)
    paintWords(painter, theme_, {at, 14}, elided(text(sourceWords(job, finding_)), 11, width() - at), 11, Ink::Text2);
}

} // namespace sillwright
