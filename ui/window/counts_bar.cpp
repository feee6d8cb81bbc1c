#include "ui/window/counts_bar.h"

#include <QAbstractButton>
#include <QHBoxLayout>
#include <QPainter>

#include <cmath>

#include "core/drawing/hatch.h"
#include "core/rules/wording.h"
#include "ui/paint/painter.h"
#include "ui/panels/look.h"

namespace sillwright {

namespace {

constexpr double labelScale = 1.2;
constexpr int caption = 84;

LabelText wordsOf(Level level, int count) {
  LabelText words;
  words.level = level;
  words.word = word(level);
  words.measure = std::to_string(count);
  return words;
}

} // namespace

class CountsBar::Count final : public QAbstractButton {
public:
  Count(Level level, QWidget* parent) : QAbstractButton(parent), level_(level) {
    setCheckable(true);
    setChecked(true);
    setFocusPolicy(Qt::TabFocus);
    set(0);
  }
  void set(int count) {
    count_ = count;
    const QString name = QString::fromStdString(std::string(word(level_)));
    setText(name);
    setAccessibleName(CountsBar::tr("%1: %2 on this job").arg(name).arg(count));
    setToolTip(CountsBar::tr("Show %1 in the punch list").arg(name));
    updateGeometry();
    update();
  }
  ThemeName theme = ThemeName::Light;

  QSize sizeHint() const override {
    const Size size = labelSize(wordsOf(level_, count_), LabelForm::OneLine, labelScale);
    return {static_cast<int>(std::ceil(size.width)) + 6, static_cast<int>(std::ceil(size.height)) + 6};
  }

protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    if (!isChecked())
      painter.setOpacity(0.4);
    Drawing drawing;
    drawLabel(drawing, wordsOf(level_, count_), LabelForm::OneLine, 3, 3, labelScale);
    paintPixels(painter, drawing, theme);
    painter.setOpacity(1);
    if (hasFocus()) {
      painter.setPen(QPen(colourOf(theme, Ink::Hand), 1.5));
      painter.drawRect(QRectF(rect()).adjusted(0.75, 0.75, -0.75, -0.75));
    }
  }

private:
  Level level_;
  int count_ = 0;
};

CountsBar::CountsBar(QWidget* parent) : QWidget(parent) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(caption, 0, 8, 0);
  row->setSpacing(6);
  for (const Level level : {Level::Fix, Level::Ask, Level::Watch}) {
    auto* count = buttons_[static_cast<std::size_t>(level)] = new Count(level, this);
    row->addWidget(count);
    connect(count, &QAbstractButton::toggled, this, &CountsBar::shownChanged);
  }
  setAccessibleName(tr("Findings on this job"));
}

void CountsBar::setCounts(const Counts& counts) {
  buttons_[0]->set(counts.fix);
  buttons_[1]->set(counts.ask);
  buttons_[2]->set(counts.watch);
}

void CountsBar::setTheme(ThemeName theme) {
  theme_ = theme;
  for (Count* count : buttons_)
    count->theme = theme;
  update();
}

QAbstractButton* CountsBar::button(Level level) const { return buttons_[static_cast<std::size_t>(level)]; }

std::array<bool, 3> CountsBar::shown() const {
  return {buttons_[0]->isChecked(), buttons_[1]->isChecked(), buttons_[2]->isChecked()};
}

void CountsBar::setShown(Level level, bool on) { button(level)->setChecked(on); }

void CountsBar::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintWords(painter, theme_, {caption - 8.0, height() / 2.0 + 4.5}, tr("on this job"), 12, Ink::Text2,
             Weight::Regular, Anchor::End);
}

} // namespace sillwright
