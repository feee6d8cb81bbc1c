#include "ui/panels/refit_parts.h"

#include <QLabel>
#include <QShortcut>
#include <QVBoxLayout>

#include "ui/panels/look.h"

namespace sillwright {

void standTogether(QWidget& panel, const RefitParts& parts, const std::function<void()>& leave) {
  parts.hint->setProperty("second", true);
  auto* top = new QWidget;
  auto* said = new QVBoxLayout(top);
  said->setContentsMargins(16, 10, 12, 10);
  said->addWidget(parts.words);
  auto* bottom = new QWidget;
  auto* under = new QVBoxLayout(bottom);
  under->setContentsMargins(16, 8, 12, 12);
  under->setSpacing(8);
  under->addWidget(parts.hint);
  auto* row = new QHBoxLayout;
  for (QWidget* button : parts.buttons)
    row->addWidget(button);
  row->addStretch(1);
  under->addLayout(row);
  auto* column = new QVBoxLayout(&panel);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(top);
  column->addWidget(parts.list, 1);
  column->addWidget(bottom);
  panel.setFocusProxy(parts.list);
  auto* escape = new QShortcut(Qt::Key_Escape, &panel, nullptr, nullptr, Qt::WidgetWithChildrenShortcut);
  QObject::connect(escape, &QShortcut::activated, &panel, leave);
}

QLabel* wrappedLabel(double size, bool bold) {
  auto* label = new QLabel;
  label->setFont(uiFont(size, bold));
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setMinimumWidth(1);
  return label;
}

QString sentence(QString words) {
  if (!words.isEmpty())
    words[0] = words[0].toUpper();
  return words.isEmpty() || words.endsWith(QLatin1Char('.')) ? words : words + QLatin1Char('.');
}

} // namespace sillwright
