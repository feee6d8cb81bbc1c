#include "ui/panels/panel_frame.h"

#include <QApplication>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

#include "ui/paint/painter.h"
#include "ui/panels/look.h"

namespace sillwright {

namespace {

constexpr int headHeight = 28;
constexpr int activeLine = 3;

} // namespace

PanelFrame::PanelFrame(const QString& title, QWidget* body, QWidget* parent) : QWidget(parent), title_(title), body_(body) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  head_ = new QHBoxLayout;
  head_->setContentsMargins(12, 4, 12, 3);
  head_->setSpacing(8);
  head_->addSpacing(1);
  head_->addStretch(1);
  auto* headBox = new QWidget(this);
  headBox->setFixedHeight(headHeight + 1);
  headBox->setLayout(head_);
  headBox->setAttribute(Qt::WA_TransparentForMouseEvents, false);
  column->addWidget(headBox);
  column->addWidget(body, 1);
  setAccessibleName(title);
  connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
    const bool active = now && (now == body_ || isAncestorOf(now));
    if (active != active_) {
      active_ = active;
      update(0, 0, width(), headHeight + 1);
    }
  });
}

// What is in it gives the keyboard up while it goes; by then it is no frame any more.
PanelFrame::~PanelFrame() {
  if (qApp)
    disconnect(qApp, nullptr, this, nullptr);
}

void PanelFrame::setNote(const QString& note) {
  if (note == note_)
    return;
  note_ = note;
  setAccessibleDescription(note);
  update(0, 0, width(), headHeight + 1);
}

void PanelFrame::addToHead(QWidget* widget) { head_->addWidget(widget); }

void PanelFrame::setTheme(ThemeName theme) {
  theme_ = theme;
  for (WordButton* button : findChildren<WordButton*>())
    button->setTheme(theme);
  update();
}

void PanelFrame::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), colourOf(theme_, Ink::Panel));
  painter.fillRect(0, 0, width(), headHeight, colourOf(theme_, Ink::Chrome));
  painter.fillRect(0, headHeight, width(), 1, colourOf(theme_, Ink::Rule));
  if (active_)
    painter.fillRect(0, 0, width(), activeLine, colourOf(theme_, Ink::Hand));
  const double end = paintWords(painter, theme_, {12, 19}, title_, 13.5, Ink::Text, Weight::Bold);
  double right = width() - 6;
  for (int i = 0; i < head_->count(); ++i)
    if (const QWidget* widget = head_->itemAt(i)->widget(); widget && widget->isVisible())
      right = std::min(right, widget->x() - 8.0);
  const double room = right - end - 11;
  constexpr double least = 60; // less of a note says nothing, or half a number
  if (room >= least || wordsWidth(note_, 12) <= room)
    paintWords(painter, theme_, {end + 12, 19}, elided(note_, 12, room), 12, Ink::Text2);
}

// ---- buttons ----------------------------------------------------------------------------------------------------

namespace {

constexpr double lineHeight = 16, sideRoom = 22; // of a button

} // namespace

double buttonWidth(const QString& words, double size) { return std::ceil(wordsWidth(words, size)) + sideRoom; }

void paintButton(QPainter& painter, ThemeName theme, const ButtonLook& look) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const Ink ground = look.primary ? Ink::Hand : look.pressed ? Ink::HandSoft : Ink::Panel;
  const Ink edge = look.primary || look.pressed ? Ink::Hand : look.enabled ? Ink::Edge : Ink::Rule;
  painter.setPen(QPen(colourOf(theme, edge), 1));
  painter.setBrush(colourOf(theme, ground));
  painter.drawRoundedRect(look.box.adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
  if (look.focused) {
    painter.setPen(QPen(colourOf(theme, look.primary ? Ink::HandOn : Ink::Hand), 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(look.box.adjusted(2.5, 2.5, -2.5, -2.5), 2, 2);
  }
  painter.restore();
  const Ink ink = look.primary ? Ink::HandOn : look.enabled ? Ink::Text : Ink::Text2;
  const QStringList lines = look.words.split(QLatin1Char('\n'));
  const double first = look.box.center().y() - lineHeight * (static_cast<double>(lines.size()) - 1) / 2;
  for (qsizetype i = 0; i < lines.size(); ++i)
    paintWords(painter, theme, {look.box.center().x(), first + lineHeight * static_cast<double>(i) + look.size * 0.365},
               lines[i], look.size, ink, look.primary ? Weight::Bold : Weight::Regular, Anchor::Middle);
}

WordButton::WordButton(const QString& words, QWidget* parent, double size) : QPushButton(words, parent), size_(size) {
  setAccessibleName(words);
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void WordButton::setTheme(ThemeName theme) {
  theme_ = theme;
  update();
}

void WordButton::setPrimary(bool primary) {
  primary_ = primary;
  update();
}

QSize WordButton::sizeHint() const {
  return {static_cast<int>(buttonWidth(text(), size_)) - (size_ < 12.5 ? 4 : 0), size_ < 12.5 ? 19 : 24};
}

void WordButton::setWraps(bool wraps) {
  wraps_ = wraps;
  QSizePolicy policy(wraps ? QSizePolicy::Maximum : QSizePolicy::Fixed, wraps ? QSizePolicy::Preferred : QSizePolicy::Fixed);
  policy.setHeightForWidth(wraps);
  setSizePolicy(policy);
}

int WordButton::heightForWidth(int width) const {
  const auto lines = brokenToFit(text(), size_, width - sideRoom).size();
  return sizeHint().height() + static_cast<int>(lineHeight) * std::max(static_cast<int>(lines) - 1, 0);
}

void WordButton::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  ButtonLook look;
  look.box = QRectF(rect());
  look.words = wraps_ ? brokenToFit(text(), size_, width() - sideRoom).join(QLatin1Char('\n')) : text();
  look.size = size_;
  look.primary = primary_;
  look.pressed = isDown() || isChecked() || (underMouse() && isEnabled() && !primary_);
  look.focused = hasFocus();
  look.enabled = isEnabled();
  paintButton(painter, theme_, look);
}

} // namespace sillwright
