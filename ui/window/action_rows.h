// What rows of the action table are made with. A group of rows for one subject has a file of its own
// (action_rows_SUBJECT.cpp) and is listed in action_table.cpp.
#pragma once

#include <functional>
#include <vector>

#include "ui/window/actions.h"
#include "ui/window/main_window.h"

namespace sillwright {

using ActionKeys = QList<QKeySequence>;

// Texts are marked with QT_TRANSLATE_NOOP("sillwright::Actions", …).
ActionRow row(const char* id, const char* menu, const char* text, ActionKeys keys, std::function<void(MainWindow&)> act,
              std::function<bool(const MainWindow&)> enabled = {});
ActionRow inToolbar(ActionRow made, const char* icon);
ActionRow last(ActionRow made); // of a group in its menu
ActionRow toggle(ActionRow made, std::function<bool(const MainWindow&)> checked);
ActionRow worded(ActionRow made, std::function<QString(const MainWindow&)> words);

// Rows of one subject, each in a file of its own.
std::vector<ActionRow> planRows();
std::vector<ActionRow> copyRows();
std::vector<ActionRow> scheduleRows();
std::vector<ActionRow> punchFilterRows();
std::vector<ActionRow> foldRows();
std::vector<ActionRow> starterRows();

bool hasWall(const MainWindow& window);
bool hasWalls(const MainWindow& window); // more than one
bool hasSelection(const MainWindow& window);

} // namespace sillwright
