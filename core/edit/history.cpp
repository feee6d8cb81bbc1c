#include "core/edit/history.h"

#include <utility>

namespace sillwright {

History::History(Job job, Selection selection) {
  versions_.push_back({std::move(job), std::move(selection), {}, 0});
}

void History::push(Job job, Selection selection, std::string name) {
  versions_.resize(at_ + 1);
  versions_.push_back({std::move(job), std::move(selection), std::move(name), nextSerial_++});
  ++at_;
}

void History::undo() {
  if (canUndo())
    --at_;
}

void History::redo() {
  if (canRedo())
    ++at_;
}

} // namespace sillwright
