// Undo without limit: kept values with a name and the selection that went with them.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/model/job.h"

namespace sillwright {

struct Version {
  Job job;
  Selection selection;
  std::string name;       // of the edit that made it: "Move strap S2 by 3/8\" left"
  std::size_t serial = 0; // differs between any two versions of one history
};

class History {
public:
  explicit History(Job job, Selection selection = {});

  const Version& now() const { return versions_[at_]; }
  // Drops what could have been redone.
  void push(Job job, Selection selection, std::string name);
  bool canUndo() const { return at_ > 0; }
  bool canRedo() const { return at_ + 1 < versions_.size(); }
  // Name of the edit that undo would take back, or redo bring again. Precondition: canUndo, canRedo.
  const std::string& undoName() const { return versions_[at_].name; }
  const std::string& redoName() const { return versions_[at_ + 1].name; }
  void undo();
  void redo();
  void setSelection(Selection selection) { versions_[at_].selection = std::move(selection); }

private:
  std::vector<Version> versions_;
  std::size_t at_ = 0;
  std::size_t nextSerial_ = 1;
};

} // namespace sillwright
