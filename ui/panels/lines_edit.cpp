#include "ui/panels/lines_edit.h"

#include <QKeyEvent>

#include <algorithm>

namespace sillwright {

namespace {

bool isEntering(const QKeyEvent& event) {
  return (event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter) &&
         event.modifiers().testFlag(Qt::ControlModifier);
}

} // namespace

LinesEdit::LinesEdit(QWidget* parent) : QPlainTextEdit(parent) {
  setTabChangesFocus(true);
  setLineWrapMode(NoWrap);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  connect(this, &QPlainTextEdit::textChanged, this, [this] {
    fitLines();
    if (!putting_)
      Q_EMIT edited();
  });
}

void LinesEdit::putText(const QString& words) {
  putting_ = true;
  if (toPlainText() != words)
    setPlainText(words);
  putting_ = false;
  setModified(false);
  fitLines();
}

// The window has another use for Ctrl+Enter: in here it is ours.
bool LinesEdit::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride && isEntering(*static_cast<QKeyEvent*>(event))) {
    event->accept();
    return true;
  }
  return QPlainTextEdit::event(event);
}

void LinesEdit::keyPressEvent(QKeyEvent* event) {
  if (isEntering(*event))
    Q_EMIT finished();
  else
    QPlainTextEdit::keyPressEvent(event);
}

void LinesEdit::focusOutEvent(QFocusEvent* event) {
  QPlainTextEdit::focusOutEvent(event);
  if (event->reason() != Qt::PopupFocusReason)
    Q_EMIT finished();
}

void LinesEdit::fitLines() {
  constexpr int least = 2, most = 8, around = 14;
  setFixedHeight(fontMetrics().lineSpacing() * std::clamp(blockCount(), least, most) + around);
}

} // namespace sillwright
