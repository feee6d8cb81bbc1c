// The editor as a program: an application, a workbench and a window.
#pragma once

#include <QString>

#include "ui/window/main_window.h"

namespace sillwright {

// Opens the editor on a job file, or on a new job where the path is empty, and runs until its window is closed.
// Returns what the program should exit with: 0, or 2 where the file could not be read (said in a box; the editor then
// goes on with a new job).
int runEditor(int& argc, char** argv, const QString& jobPath, Services services);

} // namespace sillwright
