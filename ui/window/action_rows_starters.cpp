#include "ui/window/action_rows.h"

#include "core/gesture/starters.h"

namespace sillwright {

// Their names are those of core/gesture/starters.
std::vector<ActionRow> starterRows() {
  std::vector<ActionRow> rows;
  for (const Starter& starter : starters()) {
    ActionRow made = row(starter.key.c_str(), "Wall", starter.title.c_str(), {},
                         [&starter](MainWindow& window) { window.openStarter(starter.key); });
    rows.push_back(worded(std::move(made), [&starter](const MainWindow&) {
      return MainWindow::tr("%1…").arg(QString::fromStdString(starter.title));
    }));
  }
  rows.back() = last(rows.back());
  return rows;
}

} // namespace sillwright
