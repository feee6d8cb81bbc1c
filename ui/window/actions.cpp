#include "ui/window/actions.h"

#include "ui/paint/painter.h"
#include "ui/panels/look.h"
#include "ui/window/main_window.h"

namespace sillwright {

Actions::Actions(MainWindow& window) : QObject(&window), window_(window) {
  for (const ActionRow& row : actionTable()) {
    auto* action = new QAction(tr(row.text), this);
    action->setObjectName(QString::fromLatin1(row.id));
    action->setShortcuts(row.keys);
    action->setCheckable(static_cast<bool>(row.checked));
    connect(action, &QAction::triggered, this, [this, &row] {
      row.act(window_);
      update(); // a switch shows what is, not what was clicked
    });
    actions_[row.id] = action;
    window.addAction(action);
  }
}

QAction* Actions::operator[](std::string_view id) const { return actions_.at(id); }

void Actions::update() {
  for (const ActionRow& row : actionTable()) {
    QAction* action = actions_.at(row.id);
    action->setEnabled(!row.enabled || row.enabled(window_));
    if (row.checked)
      action->setChecked(row.checked(window_));
    if (row.words)
      action->setText(row.words(window_));
  }
}

void Actions::setTheme(ThemeName theme) {
  for (const ActionRow& row : actionTable())
    if (row.icon)
      actions_.at(row.id)->setIcon(themedIcon(QString::fromLatin1(row.icon), colourOf(theme, Ink::Text)));
}

} // namespace sillwright
