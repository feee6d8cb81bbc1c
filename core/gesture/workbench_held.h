// What a workbench holds while a gesture runs; used by the parts of the workbench only.
#pragma once

#include "core/gesture/held.h"
#include "core/gesture/workbench.h"

namespace sillwright {

struct Workbench::Held {
  Grip grip;
  std::size_t token = 0;
  bool moving = false;       // past the first few pixels: a preview runs
  bool onlyClick = false;    // a press that a release without a drag turns into a plain selection
  std::string shelfKey;
  std::string name;          // of the edit as now shown
  bool refused = false;      // what is shown cannot stay
};

} // namespace sillwright
