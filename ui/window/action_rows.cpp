#include "ui/window/action_rows.h"

#include <utility>

namespace sillwright {

ActionRow row(const char* id, const char* menu, const char* text, ActionKeys keys, std::function<void(MainWindow&)> act,
              std::function<bool(const MainWindow&)> enabled) {
  ActionRow made;
  made.id = id;
  made.menu = menu;
  made.text = text;
  made.keys = std::move(keys);
  made.act = std::move(act);
  made.enabled = std::move(enabled);
  return made;
}

ActionRow inToolbar(ActionRow made, const char* icon) {
  made.icon = icon;
  made.toolbar = true;
  return made;
}
ActionRow last(ActionRow made) {
  made.separatorAfter = true;
  return made;
}
ActionRow toggle(ActionRow made, std::function<bool(const MainWindow&)> checked) {
  made.checked = std::move(checked);
  return made;
}
ActionRow worded(ActionRow made, std::function<QString(const MainWindow&)> words) {
  made.words = std::move(words);
  return made;
}

bool hasWall(const MainWindow& window) {
  return window.bench().wall() != nullptr;
}
bool hasWalls(const MainWindow& window) {
  return window.bench().job().walls.size() > 1;
}
bool hasSelection(const MainWindow& window) {
  return !window.bench().session().selection().empty();
}

} // namespace sillwright
