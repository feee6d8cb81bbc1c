// Everything the window can do, in one table: menus, toolbar and shortcuts are made from it.
#pragma once

#include <QAction>
#include <QKeySequence>
#include <QList>
#include <QObject>

#include <functional>
#include <map>
#include <span>
#include <string_view>

#include "core/drawing/theme.h"

namespace sillwright {

class MainWindow;

struct ActionRow {
  const char* id = nullptr;   // "undo"; stable
  const char* menu = nullptr; // "Edit"
  const char* text = nullptr; // "Undo"
  QList<QKeySequence> keys;
  const char* icon = nullptr;       // of resources/icons
  bool toolbar = false;             // also there
  bool separatorAfter = false;      // in the menu
  std::function<void(MainWindow&)> act;
  std::function<bool(const MainWindow&)> enabled;  // missing: always
  std::function<bool(const MainWindow&)> checked;  // missing: not a switch
  std::function<QString(const MainWindow&)> words; // missing: text; for "Undo: Move strap S2"
};

// In the order of the menus.
std::span<const ActionRow> actionTable();
// Menus in their order.
std::span<const char* const> menuNames();

// The actions of one window.
class Actions : public QObject {
  Q_OBJECT

public:
  explicit Actions(MainWindow& window);

  QAction* operator[](std::string_view id) const;
  // Enabled, checked and worded as the window is now.
  void update();
  void setTheme(ThemeName theme);

private:
  MainWindow& window_;
  std::map<std::string_view, QAction*> actions_;
};

} // namespace sillwright
